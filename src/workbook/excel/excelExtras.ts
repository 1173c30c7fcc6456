import { PROJECT_VERSION } from "../../functions/version";
import type { ValuesOnlyCopy } from "../actions/valuesOnlyCopy";
import { hearCalls } from "./associateFunctions";
import { excelFile } from "./excelFile";
import type { ReportedExcel, ReportingPage } from "./excelReport";
import { ExcelWorkbook } from "./excelWorkbook";
import type { ReportRow } from "./reportPages";
import { setStartsAtOpening, startsAtOpening } from "./openingWithAddin";
import { askFunctions, supportedAbilities, type FunctionsAnswer, type ExcelAbility } from "./excelAbilities";

/** What the pane can do in Excel only. */
export interface ExcelExtras {
  /** What this copy of Excel supports of what the add-in uses. */
  abilities(): readonly ExcelAbility[];
  /** What a cell shows that asks for a function of ours. */
  askFunctions(): Promise<FunctionsAnswer>;
  startsAtOpening(): Promise<boolean>;
  setStartsAtOpening(on: boolean): Promise<void>;
  /** What this Excel does, beside what is expected of it, a line at a time. */
  report(page: ReportingPage): AsyncGenerator<ReportRow, void>;
  /** Opens a copy of the workbook with values in place of our functions. */
  openValuesOnlyCopy(): Promise<ValuesOnlyCopy>;
  /** Opens a workbook that comes with the add-in as a new one, beside the open one. */
  openSupplied(file: string): Promise<void>;
}

/** A file of the add-in that did not arrive. */
export class NotFetched extends Error {
  override readonly name = "NotFetched";
}

/** The extras of the Excel that this page runs in. */
export function excelExtras(): ExcelExtras {
  return {
    abilities: () =>
      supportedAbilities((set, version) => Office.context.requirements.isSetSupported(set, version)),
    askFunctions: () => askFunctions((batch) => Excel.run(batch), PROJECT_VERSION),
    startsAtOpening: () => startsAtOpening(Office.addin),
    setStartsAtOpening: (on) => setStartsAtOpening(Office.addin, on),
    async *report(page) {
      const { excelReport } = await import(/* webpackChunkName: "report" */ "./excelReport");
      const { requirements, diagnostics, document } = Office.context;
      const excel: ReportedExcel = {
        run: (batch, options) => Excel.run({ ...options }, batch),
        supports: (set, version) => requirements.isSetSupported(set, version),
        workbook: new ExcelWorkbook(),
        diagnostics: { version: diagnostics.version, platform: String(diagnostics.platform) },
        document,
        hear: hearCalls,
      };
      yield* excelReport(excel, page);
    },
    async openValuesOnlyCopy() {
      const { valuesOnlyCopy } = await import("../actions/valuesOnlyCopy");
      const copy = await valuesOnlyCopy("workbook.xlsx", await excelFile(Office.context.document));
      await Excel.createWorkbook(base64(copy.bytes));
      return copy;
    },
    async openSupplied(file) {
      const response = await fetch(`sample-workbooks/${file}`).catch(() => undefined);
      if (!response?.ok) throw new NotFetched(file);
      await Excel.createWorkbook(base64(new Uint8Array(await response.arrayBuffer())));
    },
  };
}

function base64(bytes: Uint8Array): string {
  const PIECE = 0x8000;
  let text = "";
  for (let at = 0; at < bytes.length; at += PIECE)
    text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
}
