import { render } from "lit";
import { FUNCTIONS } from "../functions/registry";
import { mountPane, type MountedPane } from "../taskpane/mountPane";
import { fetchAhead } from "../taskpane/pages";
import { COMMAND_LINE } from "../texts/commandLine";
import { DESK_TEXTS } from "../texts/desk";
import { say, type Language, type Text } from "../texts/language";
import { EarlyWorkbook } from "../workbook/desk/earlyWorkbook";
import type { OpenDesk, SelectedCell } from "../workbook/desk/openDesk";
import type { Pace } from "../workbook/desk/pace";
import type { Step } from "../workbook/desk/steps";
import { isCsvName } from "../workbook/file/openWorkbook";
import type { SurveyWorkbook } from "../workbook/surveyWorkbook";
import { engineWords, fetchEngine } from "./engineScripts";
import { fileProblemSentence } from "./fileProblemSentence";
import { FIRST_FILE, readLeft } from "./first";
import type { KeptFile, LeftWork, WorkKeeper } from "./keptWork";
import { keyboardWalk } from "./keyboardWalk";
import { keepOffline } from "./offline/keepOffline";
import { ASKED } from "./pageAddress";
import { firstLanguage, keepLanguage } from "./pageLanguage";
import { printSheet } from "./printSheet";
import { headerView, pickFile, statusView, type HeaderState, type Notice } from "./pageView";
import { readFile, readSample, type Reading } from "./reading";
import type { ReadFile } from "./readerMessages";
import { FIRST_SAMPLE, sampleFile } from "./sampleFile";
import { emptySample, sampleOf, SAMPLES } from "./samples";

const WORKBOOK_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** Milliseconds after which work is told of, and between two steps that it tells. */
const NOTICED = 500;
const BETWEEN_STEPS = 250;

const part = (id: string) => document.getElementById(id) as HTMLElement;
const [top, grid, paneArea, status] = [part("top"), part("grid"), part("pane"), part("status")];

let language = firstLanguage();

let header: HeaderState = {
  language,
  samples: SAMPLES,
  opened: undefined,
  notice: undefined,
  underWay: undefined,
};
/** What is said once the notice that stands is closed. */
let toTell: Text | undefined;
/** Ends the opening of a file that is under way. */
let underWay: AbortController | undefined;
/** The grid; undefined until the engine is there. */
let desk: OpenDesk | undefined;
let tellStarted: (desk: OpenDesk) => void;
const started = new Promise<OpenDesk>((resolve) => (tellStarted = resolve));
/** The first file, while the pane stands over it and the grid does not. */
let early: { readonly workbook: EarlyWorkbook; readonly pace: Pace } | undefined;
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
  desk?.typeWord(word);
  desk?.enterGrid();
}

function printShownSheet(): void {
  const sheet = desk?.shownSheet();
  if (sheet) void printSheet(sheet, language).catch((problem: unknown) => refuse(problem, String));
}

function waitFor(name: string): void {
  grid.dataset.waiting = say(DESK_TEXTS.loading, language, { name });
  grid.classList.add("waiting");
}

async function chooseSample(id: string | null, first?: Reading): Promise<void> {
  const sample = sampleOf(id);
  const reading = first?.file === sampleFile(sample.id) ? first : readSample(sample.id);
  await opening(say(sample.name, language), DESK_TEXTS.sampleMissing, reading, (file) =>
    open(file, sample.id, reading.pace),
  );
}

async function chooseFile(chosen: File): Promise<void> {
  const reading = readFile(chosen.name, { chosen });
  await opening(chosen.name, DESK_TEXTS.notOpened, reading, (file) => open(file, undefined, reading.pace));
}

/**
 * Opens a file in place of what is being opened; if that fails or is stopped, the page says so in one sentence and stays as
 * it was.
 */
async function opening(
  name: string,
  failed: Text,
  { control, pace, read }: Reading,
  action: (file: ReadFile) => Promise<void>,
): Promise<void> {
  if (hasUnsavedWork && !confirm(say(DESK_TEXTS.unsaved, language))) {
    control.abort();
    return showHeader({});
  }
  underWay?.abort();
  underWay = control;
  waitFor(name);
  const work = followWork(
    () => say(DESK_TEXTS.loading, language, { name }),
    () => control.abort(),
    ({ kind }) => kind !== "asked",
  );
  pace.onProgress = ({ sheet, row }) =>
    work.at(sheet === undefined ? undefined : say(DESK_TEXTS.openingRow, language, { sheet, row }));
  try {
    await action(await read);
  } catch (problem) {
    dropEarly();
    if (underWay !== control) return;
    if (control.signal.aborted) tellOfStop(say(DESK_TEXTS.stopped, language, { name }));
    else refuse(problem, (reason) => say(failed, language, { name, problem: reason }));
  } finally {
    work.end();
    if (underWay === control) {
      underWay = undefined;
      grid.classList.remove("waiting");
    }
  }
}

/**
 * Shows what is under way and how far it has come, once it takes long enough to be noticed.
 *
 * @param replaces whether a notice that stands then is of no use any more; any other stays until somebody closes it
 */
function followWork(sentence: () => string, stop: () => void, replaces: (notice: Notice) => boolean) {
  let next = Infinity;
  let shown: string | undefined;
  const show = () => {
    next = performance.now() + BETWEEN_STEPS;
    const notice = header.notice && replaces(header.notice) ? undefined : header.notice;
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
function tellOfStop(text: string): Notice {
  const hadFocus = top.querySelector("#under-way")?.contains(document.activeElement) === true;
  const notice: Notice = { kind: "done", text };
  showHeader({ underWay: undefined, notice });
  if (hadFocus) top.querySelector<HTMLElement>("#notice button")?.focus();
  return notice;
}

/** Long calculations are told of, and can be stopped. */
function followCalculations(desk: OpenDesk): void {
  let work: ReturnType<typeof followWork> | undefined;
  let isStopped = false;
  let toldOfStop: Notice | undefined;
  const stop = () => {
    isStopped = true;
    desk.stopCalculation();
    toldOfStop = tellOfStop(say(DESK_TEXTS.calculationStopped, language));
  };
  desk.watchCalculation((calculated) => {
    if (calculated === "ended") {
      work?.end();
      work = undefined;
      isStopped = false;
      return;
    }
    if (isStopped) return;
    work ??= followWork(
      () => say(DESK_TEXTS.calculating, language),
      stop,
      (notice) => notice === toldOfStop,
    );
    work.at(calculated && say(DESK_TEXTS.calculated, language, { ...calculated }));
  });
}

async function saveCopy(): Promise<void> {
  if (!desk) return;
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
  { bytes, content }: ReadFile,
  sampleId: string | undefined,
  pace: Pace,
  left?: LeftWork,
): Promise<void> {
  const { file } = content;
  const keep = keeping({ file, bytes, sampleId }, left !== undefined);
  const workbook = await (await started).open(bytes, content, pace, left?.steps, keep);
  if (!left) await keeper.forget();
  if (early?.pace === pace) early.workbook.arrive(workbook);
  else showPane(workbook);
  early = undefined;
  openedFile = file;
  hasUnsavedWork = left !== undefined;
  await stopWatching?.();
  stopWatching = await workbook.watchCells(() => (hasUnsavedWork = true));
  const doubt = desk?.csvDoubt;
  const text = doubt && say(COMMAND_LINE.csvDoubt, language, { file, ...doubt });
  showHeader({
    opened: sampleId ? { sampleId } : { file },
    notice: text === undefined ? undefined : { kind: "refused", text },
  });
  showStatus();
}

function showPane(workbook: SurveyWorkbook): void {
  pane?.unmount();
  paneArea.replaceChildren(document.createElement("div"));
  pane = mountPane(paneArea.firstElementChild as HTMLElement, workbook, {
    language,
    onLanguage: (chosen) => void chooseLanguage(chosen),
    enterSheet: () => desk?.enterGrid(),
    ways: {
      sample: () => chooseSample(FIRST_SAMPLE),
      begin: (units, of) => chooseSample(emptySample(units, of).id),
      file: () => pickFile((file) => void chooseFile(file)),
    },
  });
}

/** Shows the pane over the cells of a file before the grid stands. */
function showEarly({ rows, pace }: Reading): void {
  const workbook = new EarlyWorkbook(rows);
  early = { workbook, pace };
  showPane(workbook);
}

/** Takes away the pane of a file that does not come to stand in the grid. */
function dropEarly(): void {
  if (!early) return;
  early = undefined;
  pane?.unmount();
  pane = undefined;
  paneArea.replaceChildren();
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

/** Opens what an earlier visit left behind, says so, and offers to do without it. */
async function restore(left: LeftWork, reading: Reading): Promise<void> {
  const { sampleId, at } = left;
  const name = nameOf(left);
  const discard = async () => {
    hasUnsavedWork = false;
    closeNotice();
    const again = readLeft(left);
    await opening(name, DESK_TEXTS.notOpened, again, (file) => open(file, sampleId, again.pace));
  };
  await opening(name, DESK_TEXTS.notRestored, reading, async (file) => {
    await open(file, sampleId, reading.pace, left);
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
  if (header.opened !== undefined) return;
  const forget = keeper.leave();
  const { notice } = header;
  await chooseSample(ASKED.get("workbook"));
  if (!notice) return;
  const close = { label: say(DESK_TEXTS.close, language), act: closeNotice };
  const giveUp = { label: say(DESK_TEXTS.discard, language), act: () => (void forget(), closeNotice()) };
  showHeader({ notice: { ...notice, answers: [close, giveUp] } });
}

function nameOf({ file, sampleId }: Pick<KeptFile, "file" | "sampleId">): string {
  const sample = SAMPLES.find(({ id }) => id === sampleId);
  return sample ? say(sample.name, language) : file;
}

async function chooseLanguage(chosen: Language): Promise<void> {
  language = chosen;
  keepLanguage(chosen);
  nameParts();
  showHeader({ language });
  const words = await engineWords(chosen);
  desk?.setLanguage(chosen, words);
}

function nameParts(): void {
  document.documentElement.lang = language;
  grid.setAttribute("aria-label", say(DESK_TEXTS.gridLabel, language));
  grid.dataset.drop = say(DESK_TEXTS.dropHere, language);
  paneArea.setAttribute("aria-label", say(DESK_TEXTS.paneLabel, language));
}

/** Says once that the page opens without a network from now on, and whenever a newer one waits; after what stands there. */
function tellKept(text: Text): void {
  toTell = text;
  if (header.notice === undefined) closeNotice();
}

function closeNotice(): void {
  const text = toTell;
  toTell = undefined;
  showHeader({ notice: text && { kind: "done", text: say(text, language) } });
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
function openWordsByKey(isTyping: () => boolean): void {
  addEventListener(
    "keydown",
    (event) => {
      const list = status.querySelector<HTMLSelectElement>("#accepted-words");
      const asks = event.altKey && event.key === "ArrowDown" && grid.contains(document.activeElement);
      if (!list || !asks || isTyping()) return;
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
function keepKeyboardOnSheet(enterGrid: () => void): void {
  const tabOf = (place: EventTarget | null) =>
    (place as Element | null)?.closest("[data-u-comp=slide-tab-item]");
  let timer: ReturnType<typeof setTimeout> | undefined;
  const follow = () => {
    const end = performance.now() + TAB_SETTLES;
    const enter = () => {
      const { activeElement } = document;
      const isElsewhere = activeElement !== document.body && !tabOf(activeElement);
      if (!isElsewhere && !(activeElement as HTMLElement).isContentEditable) enterGrid();
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
function followColours(desk: OpenDesk): void {
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

async function startGrid(): Promise<void> {
  nameParts();
  showHeader({});
  const gridElement = document.createElement("div");
  gridElement.className = "engine";
  grid.append(gridElement);
  const [words, { OpenDesk: Desk }, { startEngine }] = await Promise.all([
    engineWords(language),
    import(/* webpackMode: "eager" */ "../workbook/desk/openDesk"),
    import(/* webpackMode: "eager" */ "../workbook/desk/startEngine"),
  ]);
  const begun = new Desk(startEngine(gridElement, language, words), FUNCTIONS, language, showStatus);
  desk = begun;
  followColours(begun);
  followCalculations(begun);
  acceptDroppedFiles();
  guardUnsavedWork();
  const enterGrid = () => begun.enterGrid();
  const isTyping = () => begun.isTyping;
  keyboardWalk(
    [
      { element: top, enter: () => top.querySelector<HTMLElement>("select")?.focus() },
      { element: grid, enter: enterGrid },
      { element: paneArea, enter: () => pane?.focus() },
    ],
    grid,
    isTyping,
  );
  openWordsByKey(isTyping);
  keepKeyboardOnSheet(enterGrid);
  tellStarted(begun);
}

/**
 * Starts the page. The browser makes the engine's megabytes ready beside it; meanwhile the first file is read and the pane
 * shown over it.
 */
async function start(): Promise<void> {
  // The pane fetches again what did not arrive, and says so.
  const ahead = fetchAhead("season").catch(() => {});
  const { keeper: opened, left, reading } = await FIRST_FILE;
  keeper = opened;
  if (!left) showEarly(reading);
  await ahead;
  await Promise.all([fetchEngine(), engineWords(language)]);
  await startGrid();
  if (!underWay) await (left ? restore(left, reading) : chooseSample(ASKED.get("workbook"), reading));
  performance.mark("cordonbook-ready");
  const { worker } = document.documentElement.dataset;
  if (worker !== undefined)
    await keepOffline(worker, {
      ready: () => tellKept(DESK_TEXTS.keptOffline),
      newer: () => tellKept(DESK_TEXTS.newerPage),
    });
}

void start();
