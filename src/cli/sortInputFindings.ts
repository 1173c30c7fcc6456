import type { Finding } from "../survey/checks/finding";
import { findingIdentity, partFindings, type PartedFindings } from "../survey/checks/setAside";
import type { Inputs } from "./readInputs";

/**
 * Parts findings into open ones and those that were set aside in the workbook in which they are. With several files as
 * one farm the sheets carry their file's name, which the workbook itself does not know: each finding is held against
 * the entries of its own file under the sheet's own name.
 */
export function sortInputFindings(
  findings: readonly Finding[],
  { origin, setAside }: Pick<Inputs, "origin" | "setAside">,
): PartedFindings {
  const entries = new Map(
    [...setAside].map(([file, kept]) => [file, new Map(kept.map((entry) => [entry.identity, entry]))]),
  );
  return partFindings(findings, (finding) => {
    const { file, sheet } = origin.get(finding.sheet) ?? { file: "", sheet: finding.sheet };
    return entries.get(file)?.get(findingIdentity({ ...finding, sheet }));
  });
}
