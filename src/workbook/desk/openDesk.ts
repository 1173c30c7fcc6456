import { ICommandService, mergeLocales, type Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  FormulaExecuteStageType,
  IEditorBridgeService,
  ILayoutService,
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
} from "@univerjs/preset-sheets-core";
import type { CordonFunction } from "../../functions/cordonFunction";
import { DESK_TEXTS } from "../../texts/desk";
import { decimalSign, say, type Language } from "../../texts/language";
import type { CsvReading } from "../file/csvReading";
import { isCsvName } from "../file/openWorkbook";
import { acceptedWords, type AcceptedWords } from "./acceptedWords";
import { cellDataOf } from "./cellData";
import { readDecimalCommas, showDecimalCommas } from "./decimalComma";
import { DeskWorkbook } from "./deskWorkbook";
import { ErrorSentences } from "./errorSentences";
import { doubtfulComma } from "./formulaWithPoints";
import { withStyles } from "./loadWorkbook";
import type { Pace } from "./pace";
import type { FileContent } from "./readContent";
import { describeFunctions, registerFunctions } from "./registerFunctions";
import { savedCopy, savedCsvCopy, type SavedCopy } from "./savedCopy";
import { repeatMutation, watchMutations, type Step } from "./steps";
import { LOCALES, type EngineWords } from "./startEngine";
import { workbookData } from "./workbookData";

/** The selected cell: its place ("Cordons!B7"), what it shows, and why a CORDON function gave an error in it, or what in its formula could be read two ways. */
export interface SelectedCell {
  readonly place: string;
  readonly shown: string;
  readonly sentence: string | undefined;
  /** The words that its column takes, with what the column is for. */
  readonly accepted: AcceptedWords | undefined;
}

/** What a sheet shows, as far as it is filled; the first rows are its head. */
export interface ShownSheet {
  readonly name: string;
  readonly headRows: number;
  readonly rows: readonly (readonly string[])[];
}

/** Cells go elsewhere with these, and the selected one shows another. */
const MOVING = /^sheet\.mutation\.(?:(?:insert|remove|move)-(?:rows?|cols?|columns|range)|reorder-range)$/;

/** After these, another cell is selected or the selected one may show something else. */
const TELLING: ReadonlySet<string> = new Set([
  SetSelectionsOperation.id,
  SetWorksheetActiveOperation.id,
  SetRangeValuesMutation.id,
]);

/** How many formulas of a calculation are worked out. */
export interface Calculated {
  readonly done: number;
  readonly all: number;
}

/** The desk: one workbook at a time over one engine, with every CORDON function in its formula language. */
export class OpenDesk {
  private readonly sentences = new ErrorSentences();
  private opened:
    { id: string; file: string; bytes: Uint8Array; csv?: CsvReading; workbook: DeskWorkbook } | undefined;
  private telling: number | undefined;
  /** Asked for every cell that is drawn, and found once a language. */
  private hasCommas = false;

  constructor(
    private readonly engine: FUniver,
    private readonly functions: readonly CordonFunction[],
    private language: Language,
    private readonly onSelection: (selected: SelectedCell) => void,
  ) {}

  /**
   * Opens a file in place of the one before; where it cannot be shown or is stopped, that one stays as it is.
   *
   * @param bytes the whole file
   * @param content what was read from it
   * @param steps what was done to it before, to be done again
   * @param onStep is told of everything that is done to it from now on
   */
  async open(
    bytes: Uint8Array,
    content: FileContent,
    pace: Pace,
    steps: readonly Step[] = [],
    onStep: (step: Step) => void = () => {},
  ): Promise<DeskWorkbook> {
    const { file } = content;
    const loaded = await withStyles(content, bytes);
    const data = await workbookData(loaded, pace);
    await pace.breathe();
    const isFirst = this.opened === undefined;
    if (this.opened) this.engine.disposeUnit(this.opened.id);
    const workbook = this.engine.createWorkbook(data);
    const desk = new DeskWorkbook(this.engine, workbook, isCsvName(file), loaded.sheets);
    for (const [key, value] of loaded.flags) await desk.writeFlag(key, value);
    this.opened = { id: workbook.getId(), file, bytes, csv: loaded.csv, workbook: desk };
    const injector = workbook.getActiveSheet().getInject();
    if (isFirst) this.begin(injector);
    this.formatNumbers();
    for (const step of steps) await repeat(step, desk, injector, workbook.getId());
    desk.onStep = onStep;
    watchMutations(injector, workbook.getId(), onStep);
    return desk;
  }

  /** Numbers with a format are shown in the way of the language, or in the English one where decimals are points. */
  private formatNumbers(): void {
    this.hasCommas = decimalSign(this.language, navigator.languages) === ",";
    this.engine.getActiveWorkbook()?.setNumfmtLocal(this.hasCommas ? this.language : "en");
  }

  /** The engine's formula part is there only when a first workbook is open. */
  private begin(injector: Injector): void {
    registerFunctions(injector, this.functions, () => this.language, this.sentences.take);
    const hasCommas = () => this.hasCommas;
    readDecimalCommas(injector, hasCommas);
    showDecimalCommas(injector, hasCommas);
    injector.get(ICommandService).onCommandExecuted(({ id }) => {
      if (MOVING.test(id)) this.refreshFormulaBar(injector);
      if (TELLING.has(id) || MOVING.test(id)) this.tellSoon();
    });
  }

  /** A word of the open csv file that another code page would read otherwise, where nothing in the file tells which. */
  get csvDoubt(): CsvReading["doubt"] {
    return this.opened?.csv?.doubt;
  }

  /** A copy of the open file with everything that was changed on the page; a csv file stays one. */
  async saveCopy(): Promise<SavedCopy> {
    const { file, bytes, workbook } = this.opened!;
    return (isCsvName(file) ? savedCsvCopy : savedCopy)(file, bytes, workbook);
  }

  /** Tells of a calculation as long as it goes on, and how far it has come where that is known; "ended" at its end. */
  watchCalculation(onProgress: (calculated: Calculated | "ended" | undefined) => void): void {
    this.engine.getFormula().calculationProcessing((now) => {
      switch (now.stage) {
        case FormulaExecuteStageType.IDLE:
        case FormulaExecuteStageType.CALCULATION_COMPLETED:
          return onProgress("ended");
        case FormulaExecuteStageType.CURRENTLY_CALCULATING:
          return onProgress({ done: now.completedFormulasCount, all: now.totalFormulasToCalculate });
        default:
          return onProgress(undefined);
      }
    });
  }

  /** Ends a calculation; formulas that it has not reached keep what they showed. */
  stopCalculation(): void {
    this.engine.getFormula().stopCalculation();
  }

  /** Puts the keyboard into the grid: the next key types into the selected cell. */
  enterGrid(): void {
    this.engine.getActiveWorkbook()?.getActiveSheet().getInject().get(ILayoutService).focus();
  }

  /** Types a word into the selected cell. */
  typeWord(word: string): void {
    this.engine.getActiveWorkbook()?.getActiveCell()?.setValue(cellDataOf(word));
  }

  /** The sheet in front as it is shown. */
  shownSheet(): ShownSheet | undefined {
    const sheet = this.engine.getActiveWorkbook()?.getActiveSheet();
    if (!sheet) return undefined;
    const rows = sheet.getDataRange().getDisplayValues();
    return { name: sheet.getSheetName(), headRows: Math.max(1, sheet.getFreeze()?.ySplit ?? 0), rows };
  }

  /** True while a cell is typed into. */
  get isTyping(): boolean {
    return this.engine.getActiveWorkbook()?.isCellEditing() === true;
  }

  /** Light letters on dark ground, or the other way round; the workbook's own colours are turned with them. */
  setDark(isDark: boolean): void {
    this.engine.toggleDarkMode(isDark);
  }

  /** Another language for menus, function help and the sentences of errors; the workbook stays as it is. */
  setLanguage(language: Language, words: EngineWords): void {
    this.language = language;
    const locale = LOCALES[language];
    this.engine.loadLocales(locale, mergeLocales(...words));
    this.engine.setLocale(locale);
    const injector = this.engine.getActiveWorkbook()?.getActiveSheet().getInject();
    if (!injector) return;
    this.formatNumbers();
    describeFunctions(injector, this.functions, language);
    this.engine.getFormula().executeCalculation();
  }

  /** The engine shows the cell that stood there before, until another one is selected. */
  private refreshFormulaBar(injector: Injector): void {
    if (!this.isTyping) queueMicrotask(() => injector.get(IEditorBridgeService).refreshEditCellState());
  }

  private tellSoon(): void {
    this.telling ??= requestAnimationFrame(() => {
      this.telling = undefined;
      this.tellSelection();
    });
  }

  private tellSelection(): void {
    const workbook = this.engine.getActiveWorkbook();
    const cell = workbook?.getActiveCell();
    if (!workbook || !cell) return;
    const sheet = workbook.getActiveSheet();
    this.onSelection({
      place: `${sheet.getSheetName()}!${cell.getA1Notation()}`,
      shown: String(cell.getDisplayValue() ?? ""),
      sentence:
        this.sentences.at(workbook.getId(), sheet.getSheetId(), cell.getRow(), cell.getColumn()) ??
        this.commaSentence(cell.getFormula()),
      accepted: acceptedWords(sheet, cell.getRow(), cell.getColumn(), this.language),
    });
  }

  private commaSentence(formula: string): string | undefined {
    const written = this.hasCommas ? doubtfulComma(formula) : undefined;
    if (written === undefined) return undefined;
    return say(DESK_TEXTS.doubtfulComma, this.language, { written, point: written.replace(",", ".") });
  }
}

/** Does again what was done to a workbook. */
async function repeat(step: Step, desk: DeskWorkbook, injector: Injector, unitId: string): Promise<void> {
  switch (step.is) {
    case "mutation":
      return repeatMutation(injector, unitId, step.id, step.params);
    case "ownSheet":
      return desk.keepOwnSheet(step.content);
    case "flag":
      return desk.writeFlag(step.key, step.value);
  }
}
