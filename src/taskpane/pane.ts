import type { UnitSystem } from "../domain/units";
import type { SurveyWorkbook } from "../workbook/surveyWorkbook";
import type { Language, Text, TextFacts } from "../texts/language";
import type { ExcelExtras } from "../workbook/excel/excelExtras";
import type { HeldSeason } from "./heldSeason";
import type { PageStates } from "./pageStates";

export type PageId = keyof PageStates;

/** Everything the pane shows, as data. Pages change it only through `Pane.change`. */
export interface PaneState extends PageStates {
  readonly page: PageId;
  /** Version of what the workbook's sheets hold, as far as the pane has read them. */
  readonly version: number;
  /** The version for which results are, or last were, worked out anew without being asked for. */
  readonly anew?: { readonly version: number; readonly failed: boolean };
  readonly language: Language;
  /** Width of the pane in CSS pixels, for the tabs that fit. */
  readonly width: number;
  /** The sentence at the top, until the next action or until it is closed. */
  readonly message?: PaneMessage;
  /** Step of the walk that shows somebody around, while they are on it. */
  readonly walk?: number;
  /** What was read out last. */
  readonly announced: string;
}

export interface PaneMessage {
  readonly intent: "success" | "warning" | "error" | "info";
  readonly text: string;
}

/** Ways from an empty workbook to a filled one. */
export interface WaysOn {
  /** Opens a filled season to look at. */
  sample(): Promise<void>;
  /** Opens an empty season in the units and language of its sheets. */
  begin(units: UnitSystem, language: Language): Promise<void>;
  /** Lets a person choose a file of their own, where the page opens files. */
  readonly file?: () => void;
}

/** What a page gets: the workbook, the state, and the ways to change it. */
export interface Pane {
  readonly workbook: SurveyWorkbook;
  /** The season of the workbook, the same for every page. */
  readonly held: HeldSeason;
  /** What only Excel has; undefined on the page without it. */
  readonly excel?: ExcelExtras;
  readonly ways?: WaysOn;
  /** Puts the keyboard into the sheet, where the host can. */
  readonly enterSheet?: () => void;
  readonly state: PaneState;
  /** Today as a spreadsheet date, so that checks of dates can be repeated. */
  readonly today: number;
  /** Where the pane is drawn; for moving the focus. */
  readonly root: ShadowRoot;
  change(next: (state: PaneState) => PaneState): void;
  /** A text in the pane's language. */
  say(text: Text, facts?: TextFacts): string;
  /** Shows everything in another language, once its texts are fetched. */
  showLanguage(language: Language): Promise<void>;
  /** Runs an action; if it fails, the pane shows one sentence and nothing else happens. */
  attempt(action: () => Promise<void> | void): Promise<void>;
  /** As `attempt`, for an action that takes its time and that `stop` can end; a new one ends the one before. */
  start(action: (signal: AbortSignal) => Promise<void>): void;
  stop(): void;
  /** Keeps the function that ends a watch, until `endWatch` or until the pane is taken away. */
  keepWatch(name: string, stop: () => Promise<void>): void;
  endWatch(name: string): Promise<void>;
  /** Shows a sentence at the top. */
  tell(intent: PaneMessage["intent"], text: Text, facts?: TextFacts): void;
  /** Has a sentence read out without showing it. */
  announce(sentence: string): void;
}
