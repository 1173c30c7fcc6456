import type { UnitSystem } from "../../domain/units";
import type { CellValue } from "../sheets/cell";
import type { SheetId } from "../sheets/column";
import type { SettingValues } from "../settings/settings";
import type { Words } from "../sheets/words";
import type { ReadingAccount } from "../reading/readingAccount";
import type { SurveyTable } from "./surveyTable";
import type { UsedRows } from "./usedRows";
import type { VinePlaces } from "./vinePlaces";

export {
  CELL,
  type CellList,
  type Codes,
  type Numbers,
  type OtherColumn,
  type SurveyColumn,
  type SurveyTable,
  type TotalRow,
} from "./surveyTable";

/** Everything read from the sheets of one workbook. */
export interface Season {
  /** Tables of this season; a table that tells no season belongs to it. */
  tables(id: SheetId): readonly SurveyTable[];
  /** Tables of earlier seasons, the latest first. */
  pastTables(id: SheetId): readonly SurveyTable[];
  /** Tables of this season and of earlier ones. */
  readonly allTables: readonly SurveyTable[];
  /** Sheets in which no table was recognised. */
  readonly otherSheets: readonly string[];
  readonly settings: SettingValues;
  readonly settingProblems: readonly SettingProblem[];
  readonly unitSystem: UnitSystem;
  /** Numbers of block names, initials and other words, the same in every table. */
  readonly words: Words;
  /** Where each row stands in the vineyard, and the register of vines. */
  readonly places: VinePlaces;
  /** Which rows of the Cordons sheets every result is worked out from, and why not the others. */
  readonly used: UsedRows;
  /** What was done, asked and left out when the sheets were read. */
  readonly account: ReadingAccount;
}

/** A row of the Settings sheet that could not be taken as it stands; the default is in force instead. */
export interface SettingProblem {
  readonly reason: "unknown" | "notANumber" | "outside" | "notAChoice" | "wrongUnit" | "twice";
  readonly sheet: string;
  readonly sheetRow: number;
  readonly sheetColumn: number;
  readonly header: string;
  readonly setting: string;
  readonly value: CellValue;
  readonly expected: string;
  /** For "twice": unit of the value, and the row whose value is in force. */
  readonly unit?: string;
  readonly first?: SettingRow;
}

/** A row of a Settings sheet with a value that is in force. */
export interface SettingRow {
  readonly sheet: string;
  readonly sheetRow: number;
  /** As the cell has it, in the unit that stands beside it. */
  readonly value: CellValue;
  readonly unit: string;
}
