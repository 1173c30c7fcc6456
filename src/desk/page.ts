import { render } from "lit";
import { FUNCTIONS } from "../functions/registry";
import { mountPane, type MountedPane } from "../taskpane/mountPane";
import type { UnitSystem } from "../domain/units";
import { COMMAND_LINE } from "../texts/commandLine";
import { DESK_TEXTS, SAMPLE_NAMES } from "../texts/desk";
import { emptySeasonFile, SAMPLE_SEASON_FILE } from "../texts/emptySeasonFile";
import { LANGUAGES, languageOf, sameText, say, withTexts, type Language, type Text } from "../texts/language";
import { TEXTS } from "../texts/texts";
import { OpenDesk, type SelectedCell } from "../workbook/desk/openDesk";
import { Pace, type Opened } from "../workbook/desk/pace";
import type { Step } from "../workbook/desk/steps";
import { startEngine, type EngineWords } from "../workbook/desk/startEngine";
import { isCsvName } from "../workbook/file/openWorkbook";
import { WorkbookProblem } from "../workbook/surveyWorkbook";
import { fileProblemSentence } from "./fileProblemSentence";
import { WorkKeeper, type KeptFile, type LeftWork } from "./keptWork";
import { keyboardWalk } from "./keyboardWalk";
import { keepOffline } from "./offline/keepOffline";
import { printSheet } from "./printSheet";
import { headerView, pickFile, statusView, type HeaderState } from "./pageView";

/** A workbook that comes with the project. */
export interface Sample {
  readonly id: string;
  readonly file: string;
  readonly name: Text;
}

const LANGUAGE_NAMES: Readonly<Record<Language, string>> = TEXTS.language.name;
const UNIT_SYSTEMS = ["US", "metric"] as const;

/** An empty season to fill in, by the units and the language of its sheets. */
function emptySample(units: UnitSystem, of: Language): Sample {
  const file = emptySeasonFile(units, of);
  return {
    id: file.replace("-season", "").replace(".xlsx", ""),
    file,
    name: withTexts(SAMPLE_NAMES.empty, {
      units: SAMPLE_NAMES[units],
      language: sameText(LANGUAGE_NAMES[of]),
    }),
  };
}

/** The first one is opened when the page starts. */
const SAMPLES: readonly Sample[] = [
  { id: "clean", file: SAMPLE_SEASON_FILE, name: SAMPLE_NAMES.clean },
  { id: "mistakes", file: "larkmoor-mistakes.xlsx", name: SAMPLE_NAMES.mistakes },
  ...LANGUAGES.flatMap((of) => UNIT_SYSTEMS.map((units) => emptySample(units, of))),
];

const WORKBOOK_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** Bytes of the largest file that is taken into memory. */
const MOST_BYTES = 256 * 1024 ** 2;
/** Milliseconds after which work is told of, and between two steps that it tells. */
const NOTICED = 500;
const BETWEEN_STEPS = 250;
const LANGUAGE_KEY = "cordonbook.language";

const part = (id: string) => document.getElementById(id) as HTMLElement;
const [top, grid, paneArea, status] = [part("top"), part("grid"), part("pane"), part("status")];

const asked = new URLSearchParams(location.search);
let language: Language =
  LANGUAGES.find(
    (candidate) => candidate === (asked.get("language") ?? localStorage.getItem(LANGUAGE_KEY)),
  ) ?? languageOf(navigator.language);

let header: HeaderState = {
  language,
  samples: SAMPLES,
  opened: undefined,
  notice: undefined,
  underWay: undefined,
};
/** Ends the opening of a file that is under way. */
let underWay: AbortController | undefined;
let desk: OpenDesk;
let pane: MountedPane | undefined;
let openedFile = "";
let hasUnsavedWork = false;
let stopWatching: (() => Promise<void>) | undefined;
let keeper: WorkKeeper;

function showHeader(change: Partial<HeaderState>): void {
  header = { ...header, ...change };
  render(
    headerView(header, { chooseSample, chooseFile, saveCopy, printSheet: printShownSheet, closeNotice }),
    top,
  );
}

function showStatus(selected?: SelectedCell): void {
  render(statusView(selected, language, typeWord), status);
}

/** Types a word that the cell takes, and gives the keyboard back to the grid. */
function typeWord(word: string): void {
  desk.typeWord(word);
  desk.enterGrid();
}

function printShownSheet(): void {
  const sheet = desk.shownSheet();
  if (sheet) void printSheet(sheet, language).catch((problem: unknown) => refuse(problem, String));
}

function waitFor(name: string): void {
  grid.dataset.waiting = say(DESK_TEXTS.loading, language, { name });
  grid.classList.add("waiting");
}

async function chooseSample(id: string): Promise<void> {
  const sample = SAMPLES.find((candidate) => candidate.id === id) ?? SAMPLES[0];
  const name = say(sample.name, language);
  await opening(name, DESK_TEXTS.sampleMissing, async (pace, signal) => {
    const response = await fetch(`sample-workbooks/${sample.file}`, { signal });
    if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
    await open(sample.file, new Uint8Array(await response.arrayBuffer()), sample.id, pace);
  });
}

function chooseFile(file: File): Promise<void> {
  return opening(file.name, DESK_TEXTS.notOpened, async (pace) => {
    if (file.size > MOST_BYTES) throw new WorkbookProblem("tooLargeToHold", { file: file.name });
    await open(file.name, new Uint8Array(await file.arrayBuffer()), undefined, pace);
  });
}

/**
 * Opens something in place of what is being opened; if that fails or is stopped, the page says so in one sentence and
 * stays as it was.
 */
async function opening(
  name: string,
  failed: Text,
  action: (pace: Pace, signal: AbortSignal) => Promise<void>,
): Promise<void> {
  if (hasUnsavedWork && !confirm(say(DESK_TEXTS.unsaved, language))) return showHeader({});
  underWay?.abort();
  const mine = (underWay = new AbortController());
  waitFor(name);
  const work = followWork(
    () => say(DESK_TEXTS.loading, language, { name }),
    () => mine.abort(),
  );
  const tell = ({ sheet, row }: Opened) =>
    work.at(sheet === undefined ? undefined : say(DESK_TEXTS.openingRow, language, { sheet, row }));
  try {
    await action(new Pace(mine.signal, tell), mine.signal);
  } catch (problem) {
    if (underWay !== mine) return;
    if (mine.signal.aborted) tellOfStop(say(DESK_TEXTS.stopped, language, { name }));
    else refuse(problem, (reason) => say(failed, language, { name, problem: reason }));
  } finally {
    work.end();
    if (underWay === mine) {
      underWay = undefined;
      grid.classList.remove("waiting");
    }
  }
}

/** Shows what is under way and how far it has come, once it takes long enough to be noticed. */
function followWork(sentence: () => string, stop: () => void) {
  let next = Infinity;
  let shown: string | undefined;
  const show = () => {
    next = performance.now() + BETWEEN_STEPS;
    const notice = header.notice?.kind === "asked" ? header.notice : undefined;
    showHeader({ underWay: { sentence: sentence(), at: shown, stop }, notice });
  };
  const timer = setTimeout(show, NOTICED);
  return {
    at: (step: string | undefined) => {
      shown = step;
      if (performance.now() >= next) show();
    },
    end: () => {
      clearTimeout(timer);
      if (header.underWay?.stop === stop) showHeader({ underWay: undefined });
    },
  };
}

/** Says in place of what was under way that it was stopped. */
function tellOfStop(text: string): void {
  const hadFocus = top.querySelector("#under-way")?.contains(document.activeElement) === true;
  showHeader({ underWay: undefined, notice: { kind: "done", text } });
  if (hadFocus) top.querySelector<HTMLElement>("#notice button")?.focus();
}

/** Long calculations are told of, and can be stopped. */
function followCalculations(): void {
  let work: ReturnType<typeof followWork> | undefined;
  let isStopped = false;
  const stop = () => {
    isStopped = true;
    desk.stopCalculation();
    tellOfStop(say(DESK_TEXTS.calculationStopped, language));
  };
  desk.watchCalculation((calculated) => {
    if (calculated === "ended") {
      work?.end();
      work = undefined;
      isStopped = false;
      return;
    }
    if (isStopped) return;
    work ??= followWork(() => say(DESK_TEXTS.calculating, language), stop);
    work.at(calculated && say(DESK_TEXTS.calculated, language, { ...calculated }));
  });
}

async function saveCopy(): Promise<void> {
  const [name, ending] = [openedFile.replace(/\.[^.]*$/, ""), /\.[^.]*$/.exec(openedFile)?.[0] ?? ""];
  try {
    const { bytes, notKept } = await desk.saveCopy();
    const save = () => {
      const copy = say(DESK_TEXTS.copyName, language, { name, ending });
      offerDownload(copy, bytes);
      hasUnsavedWork = false;
      showHeader({ notice: { kind: "done", text: say(DESK_TEXTS.saved, language, { name: copy }) } });
    };
    if (notKept.size === 0) return save();
    const parts = [...notKept].map(([what, where]) =>
      say(DESK_TEXTS.notKeptParts[what], language, { where: [...where] }),
    );
    const answers = [
      { label: say(DESK_TEXTS.saveAnyway, language), act: save },
      { label: say(DESK_TEXTS.doNotSave, language), act: closeNotice },
    ];
    showHeader({
      notice: {
        kind: "asked",
        text: say(DESK_TEXTS.notKept, language, { parts: parts.join("; ") }),
        answers,
      },
    });
  } catch (problem) {
    refuse(problem, (reason) => say(DESK_TEXTS.notSaved, language, { problem: reason }));
  }
}

/** A sentence for what went wrong with a file; what nobody foresaw is also reported as a mistake of the program. */
function refuse(problem: unknown, unforeseen: (reason: string) => string): void {
  const known = fileProblemSentence(problem, language);
  const reason = problem instanceof Error ? problem.message : String(problem);
  showHeader({ notice: { kind: "refused", text: known ?? unforeseen(reason) } });
  if (known === undefined) reportError(problem);
}

function offerDownload(name: string, bytes: Uint8Array): void {
  const link = document.createElement("a");
  const type = isCsvName(name) ? "text/csv" : WORKBOOK_TYPE;
  link.href = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

async function open(
  file: string,
  bytes: Uint8Array,
  sampleId: string | undefined,
  pace: Pace,
  left?: LeftWork,
): Promise<void> {
  const keep = keeping({ file, bytes, sampleId }, left !== undefined);
  const workbook = await desk.open(file, bytes, pace, left?.steps, keep);
  if (!left) await keeper.forget();
  pane?.unmount();
  paneArea.replaceChildren(document.createElement("div"));
  pane = mountPane(paneArea.firstElementChild as HTMLElement, workbook, {
    language,
    onLanguage: (chosen) => void chooseLanguage(chosen),
    enterSheet: () => desk.enterGrid(),
    ways: {
      sample: () => chooseSample("clean"),
      begin: (units, of) => chooseSample(emptySample(units, of).id),
      file: () => pickFile((file) => void chooseFile(file)),
    },
  });
  openedFile = file;
  hasUnsavedWork = left !== undefined;
  await stopWatching?.();
  stopWatching = await workbook.watchCells(() => (hasUnsavedWork = true));
  const doubt = desk.csvDoubt;
  const text = doubt && say(COMMAND_LINE.csvDoubt, language, { file, ...doubt });
  showHeader({
    opened: sampleId ? { sampleId } : { file },
    notice: text === undefined ? undefined : { kind: "refused", text },
  });
  showStatus();
}

/** Keeps what is done to a file from the first change of a cell on, with what was done before it. */
function keeping(file: KeptFile, isKept: boolean): (step: Step) => void {
  let isWorth = isKept;
  let waiting: Step[] = [];
  const keep = () => {
    isWorth ||= hasUnsavedWork;
    if (!isWorth || waiting.length === 0) return;
    keeper.keep(file, waiting);
    waiting = [];
  };
  return (step) => {
    waiting.push(step);
    queueMicrotask(keep);
  };
}

/** Opens what an earlier visit left behind, says so, and offers to do without it; false where there is nothing. */
async function restore(): Promise<boolean> {
  const left = await keeper.takeUp();
  if (!left) return false;
  const { file, bytes, sampleId, at } = left;
  const discard = async () => {
    hasUnsavedWork = false;
    closeNotice();
    await opening(name, DESK_TEXTS.notOpened, (pace) => open(file, bytes, sampleId, pace));
  };
  const name = nameOf(left);
  await opening(name, DESK_TEXTS.notRestored, async (pace) => {
    await open(file, bytes, sampleId, pace, left);
    const when = new Intl.DateTimeFormat(language, { dateStyle: "medium", timeStyle: "short" }).format(at);
    showHeader({
      notice: {
        kind: "asked",
        text: say(DESK_TEXTS.restored, language, { name, when }),
        answers: [
          { label: say(DESK_TEXTS.goOn, language), act: closeNotice },
          { label: say(DESK_TEXTS.discard, language), act: () => void discard() },
        ],
      },
    });
  });
  if (header.opened !== undefined) return true;
  const forget = keeper.leave();
  const { notice } = header;
  await chooseSample(asked.get("workbook") ?? SAMPLES[0].id);
  if (!notice) return true;
  const close = { label: say(DESK_TEXTS.close, language), act: closeNotice };
  const giveUp = { label: say(DESK_TEXTS.discard, language), act: () => (void forget(), closeNotice()) };
  showHeader({ notice: { ...notice, answers: [close, giveUp] } });
  return true;
}

function nameOf({ file, sampleId }: Pick<KeptFile, "file" | "sampleId">): string {
  const sample = SAMPLES.find(({ id }) => id === sampleId);
  return sample ? say(sample.name, language) : file;
}

async function chooseLanguage(chosen: Language): Promise<void> {
  language = chosen;
  localStorage.setItem(LANGUAGE_KEY, chosen);
  nameParts();
  showHeader({ language });
  desk.setLanguage(chosen, await engineWords(chosen));
}

/** The engine's own menus and help, which stand ready in a script per language. */
async function engineWords(of: Language): Promise<EngineWords> {
  const words: { default: EngineWords } = await import(
    /* webpackIgnore: true */ new URL(`engine/words-${of}.js`, document.baseURI).href
  );
  return words.default;
}

function nameParts(): void {
  document.documentElement.lang = language;
  grid.setAttribute("aria-label", say(DESK_TEXTS.gridLabel, language));
  grid.dataset.drop = say(DESK_TEXTS.dropHere, language);
  paneArea.setAttribute("aria-label", say(DESK_TEXTS.paneLabel, language));
}

/** Says once that the page opens without a network from now on, and whenever a newer one waits. */
function tellKept(text: Text): void {
  if (header.notice === undefined) showHeader({ notice: { kind: "done", text: say(text, language) } });
}

function closeNotice(): void {
  showHeader({ notice: undefined });
}

function acceptDroppedFiles(): void {
  const isFile = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  document.addEventListener("dragover", (event) => {
    if (!isFile(event)) return;
    event.preventDefault();
    document.body.classList.add("dropping");
  });
  document.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) document.body.classList.remove("dropping");
  });
  document.addEventListener("drop", (event) => {
    if (!isFile(event)) return;
    event.preventDefault();
    document.body.classList.remove("dropping");
    const file = event.dataTransfer?.files[0];
    if (file) void chooseFile(file);
  });
}

/** Alt and the arrow down open the list of the words that the selected cell takes. */
function openWordsByKey(): void {
  addEventListener(
    "keydown",
    (event) => {
      const list = status.querySelector<HTMLSelectElement>("#accepted-words");
      const asks = event.altKey && event.key === "ArrowDown" && grid.contains(document.activeElement);
      if (!list || !asks || desk.isTyping) return;
      event.preventDefault();
      event.stopPropagation();
      list.focus();
      list.showPicker();
    },
    { capture: true },
  );
}

/** Milliseconds after a click on a tab in which the engine may still give the keyboard back to it. */
const TAB_SETTLES = 3000;

/** After a click on a sheet's tab the next key types into the sheet, unless the tab is being renamed. */
function keepKeyboardOnSheet(): void {
  const tabOf = (place: EventTarget | null) =>
    (place as Element | null)?.closest("[data-u-comp=slide-tab-item]");
  let timer: ReturnType<typeof setTimeout> | undefined;
  const follow = () => {
    const end = performance.now() + TAB_SETTLES;
    const enter = () => {
      const { activeElement } = document;
      const isElsewhere = activeElement !== document.body && !tabOf(activeElement);
      if (!isElsewhere && !(activeElement as HTMLElement).isContentEditable) desk.enterGrid();
      if (performance.now() < end) timer = setTimeout(enter, 50);
    };
    timer = setTimeout(enter);
  };
  // The engine may draw its tabs anew before the button is up, and then the tab gets no click.
  grid.addEventListener("pointerdown", ({ target, button }) => {
    clearTimeout(timer);
    if (button === 0 && tabOf(target)) addEventListener("pointerup", follow, { once: true, capture: true });
  });
  addEventListener("keydown", () => clearTimeout(timer), { capture: true });
}

/** The grid is light or dark as the system is, like the page around it. */
function followColours(): void {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const apply = () => desk.setDark(dark.matches);
  apply();
  dark.addEventListener("change", apply);
}

/** The browser asks before a page is left with work that is neither saved nor kept. */
function guardUnsavedWork(): void {
  addEventListener("beforeunload", (event) => {
    if (hasUnsavedWork && !keeper.holdsAll) event.preventDefault();
  });
}

async function start(): Promise<void> {
  nameParts();
  showHeader({});
  const [words, opened] = await Promise.all([engineWords(language), WorkKeeper.open()]);
  keeper = opened;
  const gridElement = document.createElement("div");
  gridElement.className = "engine";
  grid.append(gridElement);
  desk = new OpenDesk(startEngine(gridElement, language, words), FUNCTIONS, language, showStatus);
  followColours();
  followCalculations();
  acceptDroppedFiles();
  guardUnsavedWork();
  keyboardWalk(
    [
      { element: top, enter: () => top.querySelector<HTMLElement>("select")?.focus() },
      { element: grid, enter: () => desk.enterGrid() },
      { element: paneArea, enter: () => pane?.focus() },
    ],
    grid,
    () => desk.isTyping,
  );
  openWordsByKey();
  keepKeyboardOnSheet();
  if (!(await restore())) await chooseSample(asked.get("workbook") ?? SAMPLES[0].id);
  performance.mark("cordonbook-ready");
  const { worker } = document.documentElement.dataset;
  if (worker !== undefined)
    await keepOffline(worker, {
      ready: () => tellKept(DESK_TEXTS.keptOffline),
      newer: () => tellKept(DESK_TEXTS.newerPage),
    });
}

void start();
