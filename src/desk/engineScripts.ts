import type { Language } from "../texts/language";
import type { EngineWords } from "../workbook/desk/startEngine";

/** Fetches the spreadsheet engine; afterwards the page's bundle finds its packages. */
export async function fetchEngine(): Promise<void> {
  await engineScript("engine");
}

/** The engine's own menus and help, which stand ready in a script per language. */
export async function engineWords(language: Language): Promise<EngineWords> {
  const words = (await engineScript(`words-${language}`)) as { default: EngineWords };
  return words.default;
}

function engineScript(name: string): Promise<unknown> {
  return import(/* webpackIgnore: true */ new URL(`engine/${name}.js`, document.baseURI).href);
}
