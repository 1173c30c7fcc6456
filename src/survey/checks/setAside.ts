import { keptEntries, listOf } from "../reading/keptEntries";
import type { Finding } from "./finding";

/** A finding that a person has looked at and lets stand, with the reason and the name; it stays with the workbook. */
export interface SetAside {
  /** See findingIdentity. */
  readonly identity: string;
  readonly reason: string;
  readonly by: string;
  /** Day, year-month-day. */
  readonly on: string;
}

/** Facts that say which vine a finding is about. */
const PLACE_FACTS = ["block", "row", "vine", "side", "cordon"] as const;
/** Facts that were judged: when one of them changes, the finding is a new one. */
const JUDGED_FACTS = [
  "value",
  "spurs",
  "positions",
  "gap",
  "sum",
  "places",
  "length",
  "alive",
  "cut",
  "setting",
  "reason",
  "trunk",
  "condition",
  "choice",
  "status",
  "total",
  "before",
  "now",
] as const;

/**
 * What makes a finding the same in the next check: its kind, sheet, column, vine and the values that were judged, but
 * neither its sheet row nor what the rest of the block looks like. Sorting the sheet or adding rows does not change
 * it; correcting the cell does.
 */
export function findingIdentity(finding: Finding): string {
  const { facts } = finding;
  const place = PLACE_FACTS.map((name) => facts[name] ?? "");
  const judged = JUDGED_FACTS.flatMap((name) => (facts[name] === undefined ? [] : [name, facts[name]]));
  const row = place.every((part) => part === "") ? finding.row : "";
  return JSON.stringify([finding.code, finding.sheet, finding.column, ...place, row, ...judged]);
}

/** A finding that somebody let stand, with the reason, the name and the day. */
export interface AsideFinding {
  readonly finding: Finding;
  readonly entry: SetAside;
}

/** Findings still open, and those set aside. */
export interface PartedFindings {
  readonly open: readonly Finding[];
  readonly aside: readonly AsideFinding[];
}

/** Parts findings into open ones and ones for which there is an entry. */
export function partFindings(
  findings: readonly Finding[],
  entryOf: (finding: Finding) => SetAside | undefined,
): PartedFindings {
  const open: Finding[] = [];
  const aside: AsideFinding[] = [];
  for (const finding of findings) {
    const entry = entryOf(finding);
    if (entry) aside.push({ finding, entry });
    else open.push(finding);
  }
  return { open, aside };
}

/**
 * Parts the findings of a check into open ones and ones that somebody set aside before, and names the entries whose
 * finding is gone.
 */
export function sortFindings(
  findings: readonly Finding[],
  entries: readonly SetAside[],
): PartedFindings & { readonly gone: readonly SetAside[] } {
  const byIdentity = new Map(entries.map((entry) => [entry.identity, entry]));
  const { open, aside } = partFindings(findings, (finding) => byIdentity.get(findingIdentity(finding)));
  const met = new Set(aside.map(({ entry }) => entry.identity));
  return { open, aside, gone: entries.filter(({ identity }) => !met.has(identity)) };
}

/** The entries with one more; undefined when reason or name is blank, since both are what makes it trustworthy. */
export function putAside(
  entries: readonly SetAside[],
  finding: Finding,
  entry: Omit<SetAside, "identity">,
): readonly SetAside[] | undefined {
  if (entry.reason.trim() === "" || entry.by.trim() === "") return undefined;
  const identity = findingIdentity(finding);
  return [
    ...entries.filter((other) => other.identity !== identity),
    { identity, reason: entry.reason.trim(), by: entry.by.trim(), on: entry.on },
  ];
}

/** The entries without that of a finding, which is then open again. */
export function takeBack(entries: readonly SetAside[], finding: Finding): readonly SetAside[] {
  const identity = findingIdentity(finding);
  return entries.filter((entry) => entry.identity !== identity);
}

/** The entries as a text that a workbook can keep. */
export function writeSetAside(entries: readonly SetAside[]): string {
  return JSON.stringify(entries.map(({ identity, reason, by, on }) => [identity, reason, by, on]));
}

const ENTRY = listOf<[string, string, string, string]>("string", "string", "string", "string");

/** Entries from the text of writeSetAside; anything that is not one is left out. */
export function readSetAside(text: string | undefined): SetAside[] {
  return keptEntries(text, ENTRY).map(([identity, reason, by, on]) => ({ identity, reason, by, on }));
}
