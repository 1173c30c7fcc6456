import { render } from "lit";
import { FUNCTIONS } from "../functions/registry";
import { mountPane, type MountedPane } from "../taskpane/mountPane";
import { DESK_TEXTS, SAMPLE_NAMES } from "../texts/desk";
import { LANGUAGES, languageOf, say, type Language, type Text } from "../texts/language";
import { OpenDesk, type SelectedCell } from "../workbook/desk/openDesk";
import { startEngine, type EngineWords } from "../workbook/desk/startEngine";
import { fileProblemSentence } from "./fileProblemSentence";
import { headerView, statusView, type HeaderState } from "./pageView";

/** A workbook that comes with the project. */
export interface Sample {
  readonly id: string;
  readonly file: string;
  readonly name: Text;
}

/** The first one is opened when the page starts. */
const SAMPLES: readonly Sample[] = [
  { id: "clean", file: "larkmoor-clean.xlsx", name: SAMPLE_NAMES.clean },
  { id: "mistakes", file: "larkmoor-mistakes.xlsx", name: SAMPLE_NAMES.mistakes },
  { id: "empty", file: "empty-season.xlsx", name: SAMPLE_NAMES.empty },
];

const LANGUAGE_KEY = "cordonbook.language";

const part = (id: string) => document.getElementById(id) as HTMLElement;
const [top, grid, paneArea, status] = [part("top"), part("grid"), part("pane"), part("status")];

const asked = new URLSearchParams(location.search);
let language: Language =
  LANGUAGES.find(
    (candidate) => candidate === (asked.get("language") ?? localStorage.getItem(LANGUAGE_KEY)),
  ) ?? languageOf(navigator.language);

let header: HeaderState = { language, samples: SAMPLES, opened: undefined, notice: undefined };
let desk: OpenDesk;
let pane: MountedPane | undefined;

function showHeader(change: Partial<HeaderState>): void {
  header = { ...header, ...change };
  render(headerView(header, { chooseSample, chooseFile, closeNotice }), top);
}

function showStatus(selected?: SelectedCell): void {
  render(statusView(selected, language), status);
}

function waitFor(name: string): void {
  grid.dataset.waiting = say(DESK_TEXTS.loading, language, { name });
  grid.classList.add("waiting");
}

async function chooseSample(id: string): Promise<void> {
  const sample = SAMPLES.find((candidate) => candidate.id === id) ?? SAMPLES[0];
  const name = say(sample.name, language);
  waitFor(name);
  try {
    const response = await fetch(`sample-workbooks/${sample.file}`);
    if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
    await open(sample.file, new Uint8Array(await response.arrayBuffer()), sample.id);
  } catch (problem) {
    const known = fileProblemSentence(problem, language);
    showHeader({
      notice: known ?? say(DESK_TEXTS.sampleMissing, language, { name, problem: (problem as Error).message }),
    });
    if (!known) reportError(problem);
  } finally {
    grid.classList.remove("waiting");
  }
}

async function chooseFile(file: File): Promise<void> {
  waitFor(file.name);
  try {
    await open(file.name, new Uint8Array(await file.arrayBuffer()), undefined);
  } catch (problem) {
    const known = fileProblemSentence(problem, language);
    showHeader({
      notice: known ?? say(DESK_TEXTS.notOpened, language, { name: file.name, problem: String(problem) }),
    });
    if (!known) reportError(problem);
  } finally {
    grid.classList.remove("waiting");
  }
}

async function open(file: string, bytes: Uint8Array, sampleId: string | undefined): Promise<void> {
  const workbook = await desk.open(file, bytes);
  pane?.unmount();
  paneArea.replaceChildren(document.createElement("div"));
  pane = mountPane(paneArea.firstElementChild as HTMLElement, workbook, {
    language,
    onLanguage: (chosen) => void chooseLanguage(chosen),
  });
  showHeader({ opened: sampleId ? { sampleId } : { file }, notice: undefined });
  showStatus();
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
    /* webpackIgnore: true */ `${location.origin}/engine/words-${of}.js`
  );
  return words.default;
}

function nameParts(): void {
  document.documentElement.lang = language;
  grid.setAttribute("aria-label", say(DESK_TEXTS.gridLabel, language));
  grid.dataset.drop = say(DESK_TEXTS.dropHere, language);
  paneArea.setAttribute("aria-label", say(DESK_TEXTS.paneLabel, language));
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

async function start(): Promise<void> {
  nameParts();
  showHeader({});
  const words = await engineWords(language);
  const gridElement = document.createElement("div");
  gridElement.className = "engine";
  grid.append(gridElement);
  desk = new OpenDesk(startEngine(gridElement, language, words), FUNCTIONS, language, showStatus);
  acceptDroppedFiles();
  await chooseSample(asked.get("workbook") ?? SAMPLES[0].id);
  performance.mark("cordonbook-ready");
}

void start();
