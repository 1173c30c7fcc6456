import type { Finding, Severity } from "./finding";
import type { Season } from "../season/season";
import { placeOfLabel } from "../reading/placeLabel";

/** How many findings of each severity. */
export type SeverityCounts = Readonly<Record<Severity, number>>;

export interface RowCounts extends SeverityCounts {
  readonly block: string;
  readonly row: number | string;
}

export interface CounterCounts extends SeverityCounts {
  readonly counter: string;
  /** Rows of the sheets that this person counted. */
  readonly counted: number;
  /** Findings "wrong" or "ask" on a hundred rows counted. */
  readonly perHundred: number;
}

/** Findings by row of the vineyard, in the order of blocks and rows; findings without a row are left out. */
export function countsByRow(findings: readonly Finding[]): RowCounts[] {
  const rows = new Map<string, { block: string; row: number | string } & Record<Severity, number>>();
  for (const { facts, severity } of findings) {
    const { block, row } = facts;
    if (typeof block !== "string" || (typeof row !== "number" && typeof row !== "string")) continue;
    const key = `${block.toLowerCase()}\n${row}`;
    let counts = rows.get(key);
    if (!counts) rows.set(key, (counts = { block, row, wrong: 0, ask: 0, note: 0 }));
    counts[severity]++;
  }
  return [...rows.values()].sort((a, b) => a.block.localeCompare(b.block) || placeIn(a.row) - placeIn(b.row));
}

const placeIn = (row: number | string) => (typeof row === "number" ? row : (placeOfLabel(row, "") ?? 0));

/** Findings by whoever counted, most findings on a hundred rows first; people without a finding are there too. */
export function countsByCounter(findings: readonly Finding[], season: Season): CounterCounts[] {
  const people = new Map<string, { counter: string; counted: number } & Record<Severity, number>>();
  const countsOf = (counter: string) => {
    const key = counter.toLowerCase();
    let counts = people.get(key);
    if (!counts) people.set(key, (counts = { counter, counted: 0, wrong: 0, ask: 0, note: 0 }));
    return counts;
  };
  for (const table of season.allTables) {
    const codes = table.column("countedBy")?.codes ?? [];
    for (const code of codes) if (code >= 0) countsOf(season.words.wordOf(code)).counted++;
  }
  for (const { facts, severity } of findings)
    if (typeof facts["countedBy"] === "string") countsOf(facts["countedBy"])[severity]++;
  return [...people.values()]
    .map((counts) => ({
      ...counts,
      perHundred: counts.counted > 0 ? (100 * (counts.wrong + counts.ask)) / counts.counted : 0,
    }))
    .sort((a, b) => b.perHundred - a.perHundred || a.counter.localeCompare(b.counter));
}
