import type { TextFacts } from "../texts/language";

/** A mistake in how a formula is written; its sentence stands in src/texts/functions/formulaProblems.ts. */
export class FormulaProblem extends Error {
  constructor(
    readonly code: string,
    readonly facts: TextFacts = {},
  ) {
    super(`${code} ${JSON.stringify(facts)}`);
    this.name = "FormulaProblem";
  }
}

export type Operator = "+" | "-" | "*" | "/";

/** A parsed formula. Positions count characters of the formula from 1. */
export type Expression =
  | { readonly is: "value"; readonly value: number | string | boolean }
  | { readonly is: "error"; readonly error: string }
  | { readonly is: "array"; readonly rows: readonly (readonly Expression[])[] }
  | { readonly is: "reference"; readonly name: string; readonly position: number }
  | {
      readonly is: "call";
      readonly name: string;
      readonly position: number;
      /** null where an argument is left out between commas. */
      readonly args: readonly (Expression | null)[];
    }
  | { readonly is: "percent" | "negative"; readonly of: Expression }
  | {
      readonly is: "operation";
      readonly operator: Operator;
      readonly left: Expression;
      readonly right: Expression;
    };

/**
 * Reads one formula in the spreadsheet's own notation: numbers, percentages, texts in quotation marks, TRUE and FALSE,
 * lists in braces (comma across, semicolon down), references, calls, + - * / and parentheses.
 *
 * Throws a FormulaProblem with the position of the mistake.
 *
 * @example
 * parseFormula("=1+50%").is // "operation"
 */
export function parseFormula(formula: string): Expression {
  return new Reader(formula).formula();
}

interface Token {
  readonly kind: "number" | "text" | "name" | "error" | "sign" | "end";
  readonly text: string;
  readonly position: number;
}

const PATTERNS: readonly (readonly [Token["kind"], RegExp])[] = [
  ["number", /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y],
  ["text", /"(?:[^"]|"")*"/y],
  ["error", /#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)/y],
  ["name", /(?:'(?:[^']|'')*'!)?[\p{L}_$\\][\p{L}\p{N}_.$:!\\]*(?:\[(?:[^[\]]|\[[^[\]]*\])*\])?#?/uy],
  ["name", /\[@(?:[^[\]]|\[[^[\]]*\])*\]/y],
  ["sign", /[-+*/%(){},;]/y],
];

function tokensOf(formula: string): Token[] {
  const tokens: Token[] = [];
  let at = /^\s*=?/.exec(formula)![0].length;
  for (;;) {
    at += /^\s*/.exec(formula.slice(at))![0].length;
    if (at >= formula.length) break;
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return [...tokens, { kind: "end", text: "", position: formula.length + 1 }];
}

function tokenAt(formula: string, at: number): Token {
  for (const [kind, pattern] of PATTERNS) {
    pattern.lastIndex = at;
    const found = pattern.exec(formula);
    if (found) return { kind, text: found[0], position: at + 1 };
  }
  if (formula[at] === '"') throw new FormulaProblem("unclosedText", { position: at + 1 });
  const found = String.fromCodePoint(formula.codePointAt(at)!);
  throw new FormulaProblem("unexpected", { found, position: at + 1 });
}

/** What a spreadsheet takes of a formula: characters, and calls and parentheses inside one another. */
const MOST_CHARACTERS = 8192;
const MOST_DEPTH = 64;

class Reader {
  private readonly tokens: readonly Token[];
  private next = 0;
  private depth = 0;

  constructor(formula: string) {
    if (formula.length > MOST_CHARACTERS) throw new FormulaProblem("tooLong", { most: MOST_CHARACTERS });
    this.tokens = tokensOf(formula);
    if (this.tokens.length === 1) throw new FormulaProblem("empty");
  }

  formula(): Expression {
    const whole = this.sum();
    if (this.token.kind !== "end") this.unexpected();
    return whole;
  }

  private get token(): Token {
    return this.tokens[this.next];
  }

  private take(sign: string): Token | undefined {
    if (this.token.kind !== "sign" || this.token.text !== sign) return undefined;
    return this.tokens[this.next++];
  }

  private sum(): Expression {
    return this.joined(["+", "-"], () => this.product());
  }

  private product(): Expression {
    return this.joined(["*", "/"], () => this.signed());
  }

  private joined(operators: readonly Operator[], part: () => Expression): Expression {
    let left = part();
    for (;;) {
      const operator = operators.find((sign) => this.take(sign));
      if (!operator) return left;
      left = { is: "operation", operator, left, right: part() };
    }
  }

  /** Everything that goes a level deeper comes through here. */
  private signed(): Expression {
    if (++this.depth > MOST_DEPTH)
      throw new FormulaProblem("tooDeep", { most: MOST_DEPTH, position: this.token.position });
    const value = this.signedPart();
    this.depth--;
    return value;
  }

  private signedPart(): Expression {
    if (this.take("-")) return { is: "negative", of: this.signed() };
    if (this.take("+")) return this.signed();
    let value = this.single();
    while (this.take("%")) value = { is: "percent", of: value };
    return value;
  }

  private single(): Expression {
    const token = this.token;
    const open = this.take("(");
    if (open) return this.inParentheses(open);
    const brace = this.take("{");
    if (brace) return this.array(brace);
    if (token.kind === "end") throw new FormulaProblem("unexpectedEnd", { position: token.position });
    if (token.kind === "sign") this.unexpected();
    this.next += 1;
    switch (token.kind) {
      case "number":
        return { is: "value", value: Number(token.text) };
      case "text":
        return { is: "value", value: token.text.slice(1, -1).replaceAll('""', '"') };
      case "error":
        return { is: "error", error: token.text };
      default:
        return this.named(token);
    }
  }

  private inParentheses(open: Token): Expression {
    const inside = this.sum();
    if (!this.take(")")) this.unclosed("unclosedParenthesis", open);
    return inside;
  }

  private named(token: Token): Expression {
    const logical = token.text.toUpperCase();
    const open = this.take("(");
    if (open) return { is: "call", name: token.text, position: token.position, args: this.args(open) };
    if (logical === "TRUE" || logical === "FALSE") return { is: "value", value: logical === "TRUE" };
    if (/^_?\w*CORDON[._]/i.test(token.text))
      throw new FormulaProblem("missingParenthesis", { name: token.text, position: this.token.position });
    return { is: "reference", name: token.text, position: token.position };
  }

  private args(open: Token): (Expression | null)[] {
    if (this.take(")")) return [];
    const args: (Expression | null)[] = [];
    for (;;) {
      args.push(this.isAtSign(",", ")") ? null : this.sum());
      if (this.take(")")) return args;
      if (!this.take(",")) this.unclosed("unclosedParenthesis", open);
    }
  }

  private array(open: Token): Expression {
    const rows: Expression[][] = [[]];
    for (;;) {
      rows[rows.length - 1].push(this.isAtSign(",", ";", "}") ? { is: "value", value: "" } : this.signed());
      if (this.take("}")) break;
      if (this.take(";")) rows.push([]);
      else if (!this.take(",")) this.unclosed("unclosedBrace", open);
    }
    if (rows.some((row) => row.length !== rows[0].length))
      throw new FormulaProblem("raggedArray", { position: open.position });
    return { is: "array", rows };
  }

  private isAtSign(...signs: readonly string[]): boolean {
    return this.token.kind === "sign" && signs.includes(this.token.text);
  }

  private unclosed(code: string, open: Token): never {
    if (this.token.kind === "end") throw new FormulaProblem(code, { position: open.position });
    return this.unexpected();
  }

  private unexpected(): never {
    throw new FormulaProblem("unexpected", { found: this.token.text, position: this.token.position });
  }
}
