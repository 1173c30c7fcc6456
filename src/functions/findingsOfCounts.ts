import type { UnitSystem } from "../domain/units";
import { allFindings } from "../survey/checks/checkSeason";
import { findingSentence } from "../survey/checks/findingSentence";
import { SEVERITY_TEXTS } from "../texts/findings";
import { NO_FINDINGS } from "../texts/functions/checks";
import { say, type Language } from "../texts/language";
import type { ResultRow } from "./cordonFunction";
import { seasonOfTables, type GivenTables } from "./seasonOfTables";

const SHEETS_OF = { counts: "any", settings: "settings", blocks: "blocks", vines: "vines" } as const;

/**
 * Findings of a table of counts, in the order of its rows, by all checks of the survey; without the register of
 * vines, what only the register can show stays unsaid. A clean table gives one line that says how many rows were read.
 *
 * @param given the tables `counts` and, where they are given, `settings`, `blocks` and `vines`
 * @example
 * findingsOfCounts({ counts: readTable(functionNamed("CHECKCOUNTS").parameters[0], [["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (ft)", "Positions", "Live spurs"], ["A", 1, 1, "left", "A", 1, 3, 8, 9]]) }, undefined, "en")[0].row // 2
 */
export function findingsOfCounts(
  given: GivenTables,
  unitSystem: UnitSystem | undefined,
  language: Language,
): readonly ResultRow[] {
  const season = seasonOfTables(given, SHEETS_OF, unitSystem);
  const findings = allFindings(season).filter(({ sheet }) => sheet === "counts");
  const rows = season.allTables.find(({ sheet }) => sheet === "counts")!.rowCount;
  if (findings.length === 0) return [{ finding: say(NO_FINDINGS, language, { rows }) }];
  return findings.map((finding) => ({
    row: finding.row,
    column: finding.column,
    severity: SEVERITY_TEXTS[finding.severity][language],
    finding: findingSentence(finding, language),
  }));
}
