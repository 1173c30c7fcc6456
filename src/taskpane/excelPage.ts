import { EXCEL_PAGE } from "../texts/excelPage";
import { languageOf, say, type Text, type TextFacts } from "../texts/language";
import { bringTexts } from "../texts/texts";
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
 * The functions stand in this very script, but nothing of theirs runs before their sentences are there. Binds them before anything can refuse: what isSetSupported answers is not reliable, and a cell that asks for
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
  await bringTexts("functions", language);
  const { associateFunctions } = await import(
    /* webpackMode: "eager" */ "../workbook/excel/associateFunctions"
  );
  associateFunctions(CustomFunctions, () => language);
  const missing = missingFromFloor((set, version) =>
    Office.context.requirements.isSetSupported(set, version),
  );
  if (missing.length > 0) return tell(EXCEL_PAGE.tooOld, language, { missing });
  const [{ openPane }] = await Promise.all([
    import(/* webpackChunkName: "pane" */ "./openPane"),
    bringTexts("firstPage", language),
  ]);
  element.removeAttribute("role");
  element.removeAttribute("style");
  await openPane(element, language);
}

void start().catch((failure: Error) => {
  if (failure.name !== "ChunkLoadError") throw failure;
  tell(EXCEL_PAGE.notFetched);
});
