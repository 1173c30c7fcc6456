import type { Finding } from "../survey/finding";
import { findingIdentity, type SetAside } from "../survey/setAside";
import type { Inputs } from "./readInputs";

/** A finding that somebody let stand, with the reason, the name and the day. */
export interface AsideFinding {
  readonly finding: Finding;
  readonly entry: SetAside;
}

/**
 * Parts findings into open ones and those that were set aside in the workbook in which they are. With several files as
 * one farm the sheets carry their file's name, which the workbook itself does not know: each finding is held against
 * the entries of its own file under the sheet's own name.
 */
export function sortInputFindings(
  findings: readonly Finding[],
  { origin, setAside }: Pick<Inputs, "origin" | "setAside">,
): { open: Finding[]; aside: AsideFinding[] } {
  const entries = new Map(
    [...setAside].map(([file, kept]) => [file, new Map(kept.map((entry) => [entry.identity, entry]))]),
  );
  const open: Finding[] = [];
  const aside: AsideFinding[] = [];
  for (const finding of findings) {
    const { file, sheet } = origin.get(finding.sheet) ?? { file: "", sheet: finding.sheet };
    const entry = entries.get(file)?.get(findingIdentity({ ...finding, sheet }));
    if (entry) aside.push({ finding, entry });
    else open.push(finding);
  }
  return { open, aside };
}
