import { Refusal } from "../domain/refusal";
import type { UnitSystem } from "../domain/units";
import { allFindings } from "../survey/checkSurvey";
import { findingSentence } from "../survey/findingSentence";
import { readSurvey } from "../survey/readSurvey";
import { SEVERITY_TEXTS } from "../texts/findings";
import { NO_FINDINGS } from "../texts/functions/checks";
import { say, type Language } from "../texts/language";
import type { ResultRow } from "./cordonFunction";
import type { TableArgument } from "./parameter";

/** Which sheet each table of a check is read as, where its headings leave a choice. */
const SHEET_OF = { counts: "cordons", settings: "settings", blocks: "blocks", vines: "vines" } as const;

/** The tables of one check: the counts, and what they are held against where it is given. */
export type CountTables = { readonly counts: TableArgument } & {
  readonly [Name in Exclude<keyof typeof SHEET_OF, "counts">]?: TableArgument | undefined;
};

/**
 * Findings of a table of counts, in the order of its rows, by all checks of the survey; without the register of
 * vines, what only the register can show stays unsaid. A clean table gives one line that says how many rows were read.
 *
 * @example
 * findingsOfCounts({ counts: readTable(functionNamed("CHECKCOUNTS").parameters[0], [["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (ft)", "Positions", "Live spurs"], ["A", 1, 1, "left", "A", 1, 3, 8, 9]]) }, undefined, "en")[0].row // 2
 */
export function findingsOfCounts(
  given: CountTables,
  unitSystem: UnitSystem | undefined,
  language: Language,
): readonly ResultRow[] {
  const names = Object.keys(SHEET_OF) as (keyof typeof SHEET_OF)[];
  const areas = names.flatMap((sheet) => (given[sheet] ? [{ ...given[sheet].area, sheet }] : []));
  const survey = readSurvey(areas, unitSystem ? { unitSystem } : {});
  for (const sheet of survey.otherSheets)
    throw new Refusal("invalid", "notOurTable", {
      argument: sheet,
      sheet: SHEET_OF[sheet as keyof CountTables],
    });
  const findings = allFindings(survey).filter(({ sheet }) => sheet === "counts");
  const rows = survey.allTables.find(({ sheet }) => sheet === "counts")!.rowCount;
  if (findings.length === 0) return [{ finding: say(NO_FINDINGS, language, { rows }) }];
  return findings.map((finding) => ({
    row: finding.row,
    column: finding.column,
    severity: SEVERITY_TEXTS[finding.severity][language],
    finding: findingSentence(finding, language),
  }));
}
