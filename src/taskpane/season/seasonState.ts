import type { RowsUsed } from "../../survey/season/usedRows";
import type { Season } from "../../survey/season/season";
import type { SeasonStands } from "../../survey/decide/plan/seasonStands";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { Language } from "../../texts/language";
import type { UnitSystem } from "../../domain/units";
import type { Paper } from "../../workbook/results/cardsHtml";
import type { Progress } from "../progress";

/** What the page on which the pane opens shows. */
export interface SeasonPicture extends SeasonStands {
  readonly season: Season;
  readonly rowsUsed: RowsUsed;
  /** The first vine in walking order that has a question. */
  readonly firstAsked?: DecidedVine;
}

declare module "../pageStates" {
  interface PageStates {
    readonly season: SeasonState;
  }
}

/** A block that is to be laid out, as typed so far. */
export interface LayOutForm {
  readonly block: string;
  readonly rows: string;
  readonly vinesARow: string;
  readonly cordonsAVine: string;
  readonly training: string;
  readonly rowSpacing: string;
  readonly vineSpacing: string;
  /** True where every second row is counted on the way back. */
  readonly backAndForth: boolean;
  /** Why it could not be laid out. */
  readonly problem?: string;
}

/** The page on which the pane opens, as data. */
export interface SeasonState {
  /** Version of the workbook that the picture was made from. */
  readonly version?: number;
  readonly progress?: Progress;
  readonly picture?: SeasonPicture;
  /** How a season is begun, as chosen so far; the language is the pane's until another is chosen. */
  readonly begin: { readonly units: UnitSystem; readonly language?: Language };
  readonly layOut: LayOutForm;
  /** Paper of the count sheets; that of the sheets' units where nobody has chosen. */
  readonly paper?: Paper;
}

export const EMPTY_FORM: LayOutForm = {
  block: "",
  rows: "",
  vinesARow: "",
  cordonsAVine: "2",
  training: "",
  rowSpacing: "",
  vineSpacing: "",
  backAndForth: true,
};

export const FIRST_SEASON_STATE: SeasonState = { begin: { units: "US" }, layOut: EMPTY_FORM };
