import type { Finding } from "../../src/survey/checks/finding";
import { findingSentence } from "../../src/survey/checks/findingSentence";

/** A finding as the command line writes it as JSON, without file and cell. */
export function shownFinding(finding: Finding) {
  return {
    code: finding.code,
    severity: finding.severity,
    sheet: finding.sheet,
    row: finding.row,
    column: finding.column,
    facts: JSON.parse(JSON.stringify(finding.facts)) as unknown,
    sentence: findingSentence(finding, "en"),
  };
}
