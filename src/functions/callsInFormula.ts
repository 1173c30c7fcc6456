import type { CordonFunction } from "./cordonFunction";
import { functionNamed, NAMESPACE } from "./registry";
import { repairFormula } from "./repairFormula";

/** A call of one of our functions as it stands in a formula. */
export interface CallInFormula {
  readonly called: CordonFunction;
  readonly text: string;
  /** As written, in order; "" for one left out between commas. */
  readonly args: readonly string[];
}

const PARTS = new RegExp(
  [
    String.raw`"(?:[^"]|"")*"`,
    String.raw`'(?:[^']|'')*'`,
    String.raw`\[(?:[^[\]]|\[[^[\]]*\])*\]`,
    String.raw`(?<![\p{L}\p{N}_.])${NAMESPACE}\.(?<id>[A-Z0-9_]+)(?=\s*\()`,
    "[(){},]",
  ].join("|"),
  "giu",
);

interface Draft {
  readonly called: CordonFunction;
  readonly start: number;
  readonly args: string[];
  argument: number;
  end: number;
}

/**
 * The calls of our functions in a formula, whatever stands around them, in the order in which they begin: an outer one
 * before those in its arguments.
 *
 * @example
 * callsInFormula('=IF(A1>0,CORDON.CLUSTERS(CORDON.SHOOTS(8,2,0.9),B2),"")').map(({ args }) => args) // [["CORDON.SHOOTS(8,2,0.9)", "B2"], ["8", "2", "0.9"]]
 */
export function callsInFormula(written: string): CallInFormula[] {
  const { formula } = repairFormula(written);
  const drafts: Draft[] = [];
  const open: (Draft | undefined)[] = [];
  let named: Draft | undefined;
  for (const { 0: part, index, groups } of formula.matchAll(PARTS)) {
    const after = index + part.length;
    const inside = open.at(-1);
    const called = groups?.id === undefined ? undefined : functionNamed(groups.id);
    if (called) named = { called, start: index, args: [], argument: 0, end: formula.length };
    else if (part === "(" || part === "{") {
      open.push(named);
      if (named) {
        drafts.push(named);
        named.argument = after;
      }
      named = undefined;
    } else if (part === "," && inside) {
      inside.args.push(formula.slice(inside.argument, index).trim());
      inside.argument = after;
    } else if (part === ")" || part === "}") {
      const closed = open.pop();
      if (!closed) continue;
      const last = formula.slice(closed.argument, index).trim();
      if (last !== "" || closed.args.length > 0) closed.args.push(last);
      closed.end = after;
    }
  }
  return drafts.map(({ called, start, end, args }) => ({ called, args, text: formula.slice(start, end) }));
}
