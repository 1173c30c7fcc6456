import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { DESK_TEXTS } from "../texts/desk";
import { say, type Language, type Text } from "../texts/language";
import type { AcceptedWords } from "../workbook/desk/acceptedWords";
import type { SelectedCell } from "../workbook/desk/openDesk";

export interface Notice {
  readonly kind: "refused" | "done" | "asked";
  readonly text: string;
  /** What a person may answer; without answers the notice is only closed. */
  readonly answers?: readonly { readonly label: string; act(): void }[];
}

/** Work that takes so long that a person is told, and can stop it. */
export interface UnderWay {
  readonly sentence: string;
  /** How far it has come; undefined where that is not known yet. */
  readonly at: string | undefined;
  stop(): void;
}

/** What stands above the grid. */
export interface HeaderState {
  readonly language: Language;
  readonly samples: readonly { readonly id: string; readonly name: Text }[];
  /** The sample or the person's own file that is on the page; undefined before the first is open. */
  readonly opened: { readonly sampleId: string } | { readonly file: string } | undefined;
  /** What a person is told about a file: why it could not be opened, or what became of a copy. */
  readonly notice: Notice | undefined;
  readonly underWay: UnderWay | undefined;
}

export interface HeaderActions {
  chooseSample(id: string): void;
  chooseFile(file: File): void;
  saveCopy(): void;
  printSheet(): void;
  closeNotice(): void;
}

/** The line above the grid: which workbook, a file of one's own. */
export function headerView(state: HeaderState, actions: HeaderActions): TemplateResult {
  const { language, opened } = state;
  const ownFile = opened && "file" in opened ? opened.file : undefined;
  const sampleId = opened && "sampleId" in opened ? opened.sampleId : undefined;
  return html`
    <h1>${say(DESK_TEXTS.appName, language)}</h1>
    <label>
      ${say(DESK_TEXTS.workbook, language)}
      <select
        id="workbook"
        .value=${live(ownFile === undefined ? (sampleId ?? "") : "own")}
        @change=${(event: Event) => actions.chooseSample((event.target as HTMLSelectElement).value)}
      >
        ${ownFile === undefined ? nothing : html`<option value="own" selected>${ownFile}</option>`}
        ${state.samples.map(
          ({ id, name }) =>
            html`<option value=${id} ?selected=${id === sampleId}>${say(name, language)}</option>`,
        )}
      </select>
    </label>
    <button type="button" @click=${() => pickFile(actions.chooseFile)}>
      ${say(DESK_TEXTS.openFile, language)}
    </button>
    <button id="save-copy" type="button" @click=${actions.saveCopy}>
      ${say(DESK_TEXTS.saveCopy, language)}
    </button>
    <button id="print-sheet" type="button" @click=${actions.printSheet}>
      ${say(DESK_TEXTS.printSheet, language)}
    </button>
    ${state.underWay === undefined ? nothing : underWayView(state.underWay, language)}
    ${
      state.notice === undefined
        ? nothing
        : html`<div id="notice" class="notice ${state.notice.kind}" role="alert">
            <p>${state.notice.text}</p>
            ${(
              state.notice.answers ?? [{ label: say(DESK_TEXTS.close, language), act: actions.closeNotice }]
            ).map(({ label, act }) => html`<button type="button" @click=${act}>${label}</button>`)}
          </div>`
    }
  `;
}

/** Only the sentence is read out: the rest changes several times a second. */
function underWayView({ sentence, at, stop }: UnderWay, language: Language): TemplateResult {
  return html`<div id="under-way" class="notice">
    <p><span role="status">${sentence}</span> ${at ?? nothing}</p>
    <button type="button" @click=${stop}>${say(DESK_TEXTS.stop, language)}</button>
  </div>`;
}

/**
 * The line below the grid: the selected cell in words, for those who cannot see the grid or the whole of it, and the words
 * that it takes.
 */
export function statusView(
  selected: SelectedCell | undefined,
  language: Language,
  typeWord: (word: string) => void,
): TemplateResult {
  return html`<p role="status">
      ${
        selected === undefined
          ? say(DESK_TEXTS.idle, language)
          : html`<b>${selected.place}</b> <span>${selected.shown}</span> ${selected.sentence ?? nothing}`
      }
    </p>
    ${selected?.accepted === undefined ? nothing : acceptedView(selected.shown, selected.accepted, language, typeWord)}`;
}

function acceptedView(
  shown: string,
  { words, help }: AcceptedWords,
  language: Language,
  typeWord: (word: string) => void,
): TemplateResult {
  const known = words.find((word) => word.toLowerCase() === shown.trim().toLowerCase());
  return html`<label>
    ${say(DESK_TEXTS.acceptedWords, language)}
    <select
      id="accepted-words"
      aria-describedby="accepted-help"
      aria-keyshortcuts="Alt+ArrowDown"
      .value=${live(known ?? "")}
      @change=${(event: Event) => typeWord((event.target as HTMLSelectElement).value)}
    >
      <option value="" ?selected=${known === undefined}></option>
      ${words.map((word) => html`<option value=${word} ?selected=${word === known}>${word}</option>`)}
    </select>
    <span id="accepted-help">${help}</span>
  </label>`;
}

/** Lets a person choose a file of their own. */
export function pickFile(chooseFile: (file: File) => void): void {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = ".xlsx,.xlsm,.csv,.tsv,.txt";
  input.addEventListener("change", () => {
    if (input.files?.[0]) chooseFile(input.files[0]);
  });
  input.click();
}
