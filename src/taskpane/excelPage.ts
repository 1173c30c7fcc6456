import { EXCEL_PAGE } from "../texts/excelPage";
import { languageOf, say, type Text, type TextFacts } from "../texts/language";
import { associateFunctions } from "../workbook/excel/associateFunctions";
import { missingFromFloor } from "../workbook/excel/excelFloor";

/** How long the answer of Excel is waited for before the page says that it does not come. */
const PATIENCE_MS = 10_000;

const element = document.getElementById("pane") as HTMLElement;

function tell(text: Text, language = languageOf(navigator.language), facts: TextFacts = {}): void {
  element.lang = language;
  element.setAttribute("role", "alert");
  element.style.cssText = "font: 14px/1.5 system-ui, sans-serif; padding: 12px 44px 12px 12px";
  element.textContent = say(text, language, facts);
}

/**
 * Binds the functions before anything can refuse: what isSetSupported answers is not reliable, and a cell that asks for
 * a function that is not bound stays at #BUSY!. Only the pane asks what this Excel supports; its own script is fetched
 * after that.
 */
async function start(): Promise<void> {
  if (typeof Office === "undefined") return tell(EXCEL_PAGE.noOffice);
  const waiting = setTimeout(() => tell(EXCEL_PAGE.notInExcel), PATIENCE_MS);
  const { host } = await Office.onReady();
  clearTimeout(waiting);
  if (host !== Office.HostType.Excel) return tell(EXCEL_PAGE.notInExcel);
  const language = languageOf(Office.context.displayLanguage);
  document.documentElement.lang = language;
  associateFunctions(CustomFunctions, () => language);
  const missing = missingFromFloor((set, version) =>
    Office.context.requirements.isSetSupported(set, version),
  );
  if (missing.length > 0) return tell(EXCEL_PAGE.tooOld, language, { missing });
  const { excelExtras, ExcelWorkbook, mountPane } = await import(
    /* webpackChunkName: "pane" */ "./excelPane"
  );
  element.removeAttribute("role");
  element.removeAttribute("style");
  mountPane(element, new ExcelWorkbook(), { language, excel: excelExtras() });
}

void start();
