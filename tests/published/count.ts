import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { KINDS, kindOf, type CheckRow } from "./checkRows";

/** Counts the check values by where they come from, without running them. */
const counted = new Map<string, Map<string, number>>();
let file = "";

const isRow = (one: unknown): one is CheckRow =>
  typeof one === "object" && one !== null && "source" in one && "published" in one;

const each = (rows: readonly unknown[]) => () => {
  const kinds = counted.get(file)!;
  for (const row of rows.filter(isRow)) kinds.set(kindOf(row), (kinds.get(kindOf(row)) ?? 0) + 1);
};
const describing = (_title: string, body: () => void) => body();
const describingEach = (rows: readonly unknown[]) => (_title: string, body: (row: unknown) => void) =>
  rows.forEach((row) => body(row));
Object.assign(globalThis, {
  test: Object.assign(() => undefined, { each }),
  describe: Object.assign(describing, { each: describingEach }),
});

async function main(): Promise<void> {
  const folder = resolve("tests/published");
  const line = (name: string, figures: readonly (string | number)[]) =>
    process.stdout.write(`${name.padEnd(18)}${figures.map((one) => String(one).padStart(19)).join("")}\n`);
  line("check values", [...KINDS, "all"]);
  for (const name of readdirSync(folder).filter((one) => one.endsWith(".test.ts"))) {
    file = name;
    counted.set(file, new Map());
    await import(pathToFileURL(resolve(folder, name)).href);
  }
  const sum = (figures: readonly number[]) => figures.reduce((total, one) => total + one, 0);
  const table = [...counted].map(([name, kinds]) => ({
    name,
    figures: KINDS.map((kind) => kinds.get(kind) ?? 0),
  }));
  for (const { name, figures } of table) line(name.replace(".test.ts", ""), [...figures, sum(figures)]);
  const totals = KINDS.map((_, at) => sum(table.map(({ figures }) => figures[at])));
  line("all", [...totals, sum(totals)]);
}

void main();
