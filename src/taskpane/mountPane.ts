import { html, render } from "lit";
import "./fluent";
import { failureSentence, isAbort, isUnforeseen } from "./failureSentence";
import { FIRST_CHECK_STATE } from "./check/firstCheckState";
import { FIRST_NODES_STATE } from "./nodes/nodesState";
import { FIRST_SEASON_STATE } from "./season/seasonState";
import { FIRST_GAPS_STATE } from "./gaps/gapsState";
import { FIRST_CREW_STATE } from "./crew/crewState";
import { FIRST_DECIDE_STATE } from "./decide/decideState";
import { FIRST_OUTLOOK_STATE } from "./outlook/outlookState";
import { FIRST_CARE_STATE } from "./care/careState";
import { FIRST_SETTINGS_STATE } from "./settings/settingsState";
import type { ExcelExtras } from "../workbook/excel/excelExtras";
import { FIRST_FUNCTIONS_STATE } from "./functions/functionsState";
import { HeldSeason } from "./heldSeason";
import { HeldSheets } from "./heldSheets";
import { followWorkbook } from "./pageAge";
import { fetchPage, fetchRest, PAGES } from "./pages";
import { paneView } from "./paneView";
import { tellOfColleagues } from "./readDecisions";
import { PANE_STYLES } from "./paneStyles";
import { followTheme, type PaneTheme } from "./paneTheme";
import type { PageId, Pane, PaneState, WaysOn } from "./pane";
import { languageOf, say, type Language } from "../texts/language";
import { PANE_TEXTS } from "../texts/pane";
import { bringLanguage, bringTexts } from "../texts/texts";
import type { SurveyWorkbook } from "../workbook/surveyWorkbook";

export interface PaneOptions {
  /** Language of the texts; the browser's where it is left out. */
  readonly language?: Language;
  /** Today as a spreadsheet date (days since 1899-12-30); the machine's where it is left out. */
  readonly today?: number;
  /** Light or dark; the system's where it is left out. */
  readonly theme?: PaneTheme;
  /** The page to open on; Season where it is left out. */
  readonly page?: PageId;
  /** Ways from an empty workbook to a filled one, where the host has them. */
  readonly ways?: WaysOn;
  /** Puts the keyboard into the sheet, where the host can: the next key types into the selected cell. */
  readonly enterSheet?: () => void;
  /** Told when a person chooses another language in the pane. */
  readonly onLanguage?: (language: Language) => void;
  /** What only Excel has. */
  readonly excel?: ExcelExtras;
}

export interface MountedPane {
  setLanguage(language: Language): void;
  /** Puts the keyboard on the tab of the page that is shown. */
  focus(): void;
  /** Takes the pane away again. */
  unmount(): void;
}

/**
 * Draws the pane into an element, over any workbook: the same in Excel and on the page without Excel.
 *
 * @param element an empty element of the page, at least 320 px wide
 */
export function mountPane(
  element: HTMLElement,
  workbook: SurveyWorkbook,
  options: PaneOptions = {},
): MountedPane {
  const root = element.shadowRoot ?? element.attachShadow({ mode: "open" });
  const styles = new CSSStyleSheet();
  styles.replaceSync(PANE_STYLES);
  root.adoptedStyleSheets = [styles];
  const stopFollowing = followTheme(element, options.theme);

  let state: PaneState = {
    page: options.page ?? "season",
    version: 0,
    language: options.language ?? languageOf(navigator.language),
    width: element.clientWidth,
    announced: "",
    season: FIRST_SEASON_STATE,
    check: FIRST_CHECK_STATE,
    nodes: FIRST_NODES_STATE,
    gaps: FIRST_GAPS_STATE,
    decide: FIRST_DECIDE_STATE,
    crew: FIRST_CREW_STATE,
    outlook: FIRST_OUTLOOK_STATE,
    settings: FIRST_SETTINGS_STATE,
    functions: FIRST_FUNCTIONS_STATE,
    care: FIRST_CARE_STATE,
  };
  let mounted = true;
  let running: AbortController | undefined;
  const watches = new Map<string, () => Promise<void>>();
  let drawing: Promise<void> | undefined;

  const today = options.today ?? spreadsheetDate(new Date());
  const held = new HeldSeason(
    new HeldSheets(
      workbook,
      () => pane.change((now) => ({ ...now, version: held.version })),
      (changes) => tellOfColleagues(pane, changes),
    ),
    today,
  );
  const pane: Pane = {
    workbook,
    held,
    excel: options.excel,
    ways: options.ways,
    enterSheet: options.enterSheet,
    root,
    today,
    get state() {
      return state;
    },
    change(next) {
      const before = state.language;
      state = next(state);
      if (state.language !== before) options.onLanguage?.(state.language);
      drawing ??= Promise.resolve().then(draw);
    },
    say: (text, facts) => say(text, state.language, facts),
    async showLanguage(language) {
      await bringLanguage(language);
      pane.change((now) => ({ ...now, language }));
    },
    async attempt(action) {
      pane.change(({ message: _message, ...rest }) => rest);
      try {
        await bringRest();
        await action();
      } catch (failure) {
        const text = failureSentence(failure, state.language);
        pane.change((now) => ({
          ...now,
          message:
            text === undefined
              ? { intent: "info", text: say(PANE_TEXTS.cancelled, now.language) }
              : { intent: isAbort(failure) ? "info" : "error", text },
        }));
        if (isUnforeseen(failure)) reportError(failure);
      }
    },
    start(action) {
      running?.abort();
      const { signal } = (running = new AbortController());
      void pane.attempt(() => action(signal));
    },
    stop: () => running?.abort(),
    keepWatch: (name, stop) => void watches.set(name, stop),
    async endWatch(name) {
      const stop = watches.get(name);
      watches.delete(name);
      await stop?.();
    },
    tell: (intent, text, facts) =>
      pane.change((now) => ({ ...now, message: { intent, text: pane.say(text, facts) } })),
    announce: (sentence) => pane.change((now) => ({ ...now, announced: sentence })),
  };

  let rest: Promise<void> | undefined;
  /** Fetched once the pane stands, and again for the next action if it did not arrive. */
  function bringRest(): Promise<void> {
    return (rest ??= bringTexts("pages", state.language)
      .then(fetchRest)
      .catch((failure) => {
        rest = undefined;
        throw failure;
      }));
  }

  function draw() {
    drawing = undefined;
    if (!mounted) return;
    element.lang = state.language;
    render(paneView(pane), root);
    void fetchPage(pane, state.page);
    followWorkbook(pane, PAGES);
  }

  draw();
  void pane.attempt(() => undefined);
  const watchWidth = new ResizeObserver(() => {
    const width = element.clientWidth;
    if (mounted && width !== state.width) pane.change((now) => ({ ...now, width }));
  });
  watchWidth.observe(element);
  return {
    setLanguage: (language) => void pane.attempt(() => pane.showLanguage(language)),
    focus: () => root.querySelector<HTMLElement>('fluent-tab[aria-selected="true"]')?.focus(),
    unmount() {
      mounted = false;
      running?.abort();
      void pane.attempt(() => held.stop());
      for (const name of [...watches.keys()]) void pane.attempt(() => pane.endWatch(name));
      stopFollowing();
      watchWidth.disconnect();
      render(html``, root);
    },
  };
}

/** A day as the spreadsheet counts it. */
function spreadsheetDate(day: Date): number {
  return Math.round(
    (Date.UTC(day.getFullYear(), day.getMonth(), day.getDate()) - Date.UTC(1899, 11, 30)) / 86_400_000,
  );
}
