import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import type { CellValue } from "../../src/survey/sheets/cell";
import { readSeason } from "../../src/survey/reading/readSeason";
import { textDate } from "../../src/survey/reading/serialDate";
import type { Season } from "../../src/survey/season/season";
import type { TextFacts } from "../../src/texts/language";
import { areaOf } from "./area";

/** A finding that a case expects: where, which and its figures, never its wording. */
export interface ExpectedFinding {
  readonly sheet: string;
  readonly row: number;
  readonly column: string;
  readonly code: string;
  /** All facts but the place, which the test reads from the row itself. */
  readonly facts: TextFacts;
  /** Where a figure does not stand in the row as it is: the arithmetic by hand. */
  readonly because?: string;
}

/** A folder of tests/survey/cases: a csv a sheet, and what must be found in them. */
export interface SurveyCase {
  readonly name: string;
  readonly why: string;
  readonly season: Season;
  readonly today: number | undefined;
  readonly findings: readonly ExpectedFinding[];
  /** Rows that come close to a mistake and are none. */
  readonly nearMisses: readonly { readonly sheet: string; readonly row: number; readonly why: string }[];
  /** A cell of the csv under a header, with or without the unit behind it; undefined where there is none. */
  cellUnder(header: string, sheet: string, row: number): CellValue | undefined;
}

const CASES = join(__dirname, "cases");

/** Names of all cases: a new folder is a new case. */
export function caseNames(): string[] {
  return readdirSync(CASES, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name);
}

/**
 * Reads a case. In the csv files a cell that looks like a number is one; a leading apostrophe makes it text, as in a
 * spreadsheet; #N/A and the like are error cells; with `isText` they are read as csv files and not as sheets. `formulas` in findings.json gives formulas by sheet and "row:column", `marked` cells that are struck out or commented.
 */
export function readCase(name: string): SurveyCase {
  const folder = join(CASES, name);
  const expected = JSON.parse(readFileSync(join(folder, "findings.json"), "utf8"));
  const areas = readdirSync(folder)
    .filter((file) => file.endsWith(".csv"))
    .map((file) => {
      const sheet = file === "sheet.csv" ? "Cordons" : file.slice(0, -".csv".length);
      const { data } = Papa.parse<string[]>(readFileSync(join(folder, file), "utf8").trimEnd());
      return areaOf(
        sheet,
        data.map((row) => row.map(cellOf)),
        { formulas: expected.formulas?.[sheet], isText: expected.isText, marked: expected.marked?.[sheet] },
      );
    });
  if (areas.length === 0 || !existsSync(join(folder, "findings.json")))
    throw new Error(`The case ${name} needs a csv and findings.json`);
  const day = expected.today === undefined ? undefined : textDate(expected.today);
  return {
    name,
    why: expected.why,
    season: readSeason(areas, { unitSystem: expected.unitSystem }),
    today: day && "serial" in day ? day.serial : undefined,
    findings: expected.findings,
    nearMisses: expected.nearMisses ?? [],
    cellUnder(header, sheet, row) {
      const values = areas.find((area) => area.sheet === sheet)!.values;
      const index = values[0].findIndex((head) => String(head).replace(/ \(.*\)$/, "") === header);
      return index < 0 ? undefined : values[row - 1][index];
    },
  };
}

function cellOf(text: string): CellValue {
  if (text === "") return null;
  if (text.startsWith("'")) return text.slice(1);
  if (/^#(N\/A|DIV\/0!|VALUE!|REF!|NAME\?|NUM!)$/.test(text)) return { error: text };
  if (/^-?\d+(\.\d+)?$/.test(text)) return Number(text);
  if (text === "TRUE" || text === "FALSE") return text === "TRUE";
  return text;
}
