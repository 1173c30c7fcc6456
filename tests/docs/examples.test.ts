import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { z } from "zod";
import { Refusal } from "../../src/domain/refusal";

const ROOT = resolve(__dirname, "../../src");
/** Layers whose doc-block examples are run. */
const LAYERS = ["domain", "texts", "survey", "functions", "workbook", "taskpane", "desk", "cli"];
/** Layers in which every file that exports a function shows it in use. */
const SHOWN = new Set(["domain", "functions"]);

interface Example {
  readonly file: string;
  readonly expression: string;
  readonly expected: string;
}

const files = (folder: string) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join(folder, name))
    .sort();

/** The lines `expression // value` under each @example; an expression may run over several lines. */
function examplesOf(file: string): Example[] {
  const examples: Example[] = [];
  for (const [, block] of readFileSync(join(ROOT, file), "utf8").matchAll(/\/\*\*(.*?)\*\//gs))
    for (const part of block.split("@example").slice(1)) {
      let expression = "";
      for (const line of part.split(/^\s*@/m)[0].split("\n")) {
        const text = line.replace(/^\s*\*? ?/, "");
        const at = text.indexOf(" // ");
        expression += `${at < 0 ? text : text.slice(0, at)}\n`;
        if (at < 0) continue;
        examples.push({ file, expression: expression.trim(), expected: text.slice(at + 4).trim() });
        expression = "";
      }
      if (expression.trim()) examples.push({ file, expression: expression.trim(), expected: "" });
    }
  return examples;
}

const evaluate = (expression: string, scope: Record<string, unknown>): unknown =>
  new Function(...Object.keys(scope), `"use strict"; return (${expression});`)(...Object.values(scope));

/** A number printed with decimals stands for every number that rounds to it; a whole number for itself. */
function agrees(actual: unknown, expected: unknown): boolean {
  if (typeof expected === "number" && typeof actual === "number") {
    if (Object.is(actual, expected)) return true;
    const decimals = (String(expected).split(".")[1] ?? "").length;
    return Math.abs(actual - expected) <= (decimals ? 0.5000001 * 10 ** -decimals : 1e-9);
  }
  if (typeof expected !== "object" || expected === null) return Object.is(actual, expected);
  if (typeof actual !== "object" || actual === null) return false;
  const [given, wanted] = [Object.entries(actual), Object.entries(expected)];
  const keys = new Set([...given, ...wanted].map(([key]) => key));
  return [...keys].every((key) =>
    agrees((actual as Record<string, unknown>)[key], (expected as Record<string, unknown>)[key]),
  );
}

/** Files by the names that they export; of a name that several export, the layers further down come first. */
const EXPORTED = new Map<string, string>();
for (const file of LAYERS.flatMap(files))
  for (const [, name] of readFileSync(join(ROOT, file), "utf8").matchAll(
    /^export (?:async )?(?:function\*?|const|class) (\w+)/gm,
  ))
    if (!EXPORTED.has(name)) EXPORTED.set(name, file);

/** What an example may name: exports of its own file first, then of any layer. */
function scopeOf({ file, expression }: Example): Record<string, unknown> {
  const scope: Record<string, unknown> = { z };
  for (const name of new Set(expression.match(/[A-Za-z_]\w*/g)))
    if (EXPORTED.has(name)) scope[name] = load(EXPORTED.get(name)!)[name];
  return { ...scope, ...load(file) };
}

const load = (file: string) => jest.requireActual<Record<string, unknown>>(join(ROOT, file));

describe.each(LAYERS)("examples in the doc blocks of src/%s", (layer) => {
  const examples = files(layer).flatMap(examplesOf);

  test("every exported function of a layer that calculates has an example", () => {
    const without = files(layer).filter((file) => {
      const code = readFileSync(join(ROOT, file), "utf8");
      return SHOWN.has(layer) && /^export function/m.test(code) && !code.includes("@example");
    });
    expect(without).toEqual([]);
  });

  if (examples.length === 0) return;

  test.each(examples)("$file: $expression // $expected", (example) => {
    const { expression, expected } = example;
    const scope = scopeOf(example);
    if (expected.startsWith("Refusal ")) {
      let refusal: unknown;
      try {
        evaluate(expression, scope);
      } catch (thrown) {
        refusal = thrown;
      }
      expect(refusal).toBeInstanceOf(Refusal);
      expect(`Refusal ${(refusal as Refusal).code}`).toBe(expected);
      return;
    }
    const actual = evaluate(expression, scope);
    const wanted = evaluate(expected, scope);
    if (!agrees(actual, wanted)) expect(actual).toEqual(wanted);
  });
});

describe("the example runner itself", () => {
  test.each([
    [806.6667, 806.67, true],
    [806.6, 806.67, false],
    [50.1, 50, false],
    [{ a: 1 }, { a: 1, b: 2 }, false],
    [{ a: 1, b: 2 }, { a: 1 }, false],
    [[1, { c: 0.333333 }], [1, { c: 0.33 }], true],
    [undefined, undefined, true],
  ])("%p against the printed %p: %p", (actual, expected, verdict) => {
    expect(agrees(actual, expected)).toBe(verdict);
  });
});
