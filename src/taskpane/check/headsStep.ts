import { html, type TemplateResult } from "lit";
import type { SheetId } from "../../survey/sheets/column";
import { SHEETS } from "../../survey/sheets/sheets";
import { HEADS_TEXTS } from "../../texts/pane";
import { PANE_TEXTS } from "../../texts/pane";
import { choiceField } from "../fields";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { CheckState, HeadsStep } from "./checkState";
import { lookForTables } from "./lookForTables";
import { forgetHeads, keepHeads } from "../../workbook/actions/ownHeads";
import { mappableColumns, openColumns, proposeHeads } from "./ownHeads";

const SHAPES = Object.values(SHEETS).filter(({ id }) => id !== "settings");

/** Opens the step in which a person says what their own column heads mean. */
export function openHeads(pane: Pane, sheet: string): void {
  const { headsOf = [], mapping = [], tables = [] } = pane.state.check;
  const kept = mapping.find((one) => one.sheet === sheet);
  const shape = kept?.shape ?? tables.find((table) => table.sheet === sheet)?.shape ?? "cordons";
  const available = headsOf.find((heads) => heads.sheet === sheet)?.headers ?? [];
  changeStep(pane, { sheet, shape, headers: kept?.headers ?? proposeHeads(shape, available) });
}

function changeStep(pane: Pane, heads: HeadsStep | undefined): void {
  changePage(pane, "check", { heads });
}

/** The step in which a person says what their own column heads mean. */
export function headsStep(
  pane: Pane,
  step: HeadsStep,
  { headsOf = [], mapping = [] }: CheckState,
): TemplateResult {
  const available = headsOf.find(({ sheet }) => sheet === step.sheet)?.headers ?? [];
  const open = openColumns(step.shape, step.headers);
  return html`<section class="stack" aria-labelledby="heads-title">
    <h2 id="heads-title">${pane.say(HEADS_TEXTS.title)}</h2>
    <p class="quiet">${pane.say(HEADS_TEXTS.intro)}</p>
    ${choiceField({
      id: "heads-sheet",
      label: pane.say(HEADS_TEXTS.sheet),
      value: step.sheet,
      options: headsOf.map(({ sheet }) => ({ value: sheet, label: sheet })),
      onChoose: (sheet) => openHeads(pane, sheet),
    })}
    ${choiceField({
      id: "heads-shape",
      label: pane.say(HEADS_TEXTS.shape),
      value: step.shape,
      options: SHAPES.map((shape) => ({ value: shape.id, label: pane.say(shape.rowIs) })),
      onChoose: (shape) =>
        changeStep(pane, {
          ...step,
          shape: shape as SheetId,
          headers: proposeHeads(shape as SheetId, available),
        }),
    })}
    ${mappableColumns(step.shape).map((column) => {
      const head = pane.say(column.header);
      return choiceField({
        id: `heads-${step.shape}-${column.id}`,
        label: column.required ? pane.say(HEADS_TEXTS.needed, { head }) : head,
        value: step.headers[column.id] ?? "",
        options: [
          { value: "", label: pane.say(HEADS_TEXTS.absent) },
          ...available.map((header) => ({ value: header, label: header })),
        ],
        onChoose: (header) =>
          changeStep(pane, { ...step, headers: withHead(step.headers, column.id, header) }),
      });
    })}
    ${
      open.length === 0
        ? ""
        : html`<p>
            ${pane.say(HEADS_TEXTS.missing, { heads: open.map((column) => pane.say(column.header)) })}
          </p>`
    }
    <div class="buttons">
      <fluent-button
        id="keep-heads"
        appearance="primary"
        @click=${() => void pane.attempt(() => keep(pane, step))}
        >${pane.say(HEADS_TEXTS.keep)}</fluent-button
      >
      ${
        mapping.some(({ sheet }) => sheet === step.sheet)
          ? html`<fluent-button id="forget-heads" @click=${() => void pane.attempt(() => forget(pane, step))}
              >${pane.say(HEADS_TEXTS.forget)}</fluent-button
            >`
          : ""
      }
      <fluent-button id="close-heads" @click=${() => changeStep(pane, undefined)}
        >${pane.say(PANE_TEXTS.cancel)}</fluent-button
      >
    </div>
  </section>`;
}

function withHead(headers: Readonly<Record<string, string>>, column: string, header: string) {
  const { [column]: _before, ...rest } = headers;
  return header === "" ? rest : { ...rest, [column]: header };
}

async function keep(pane: Pane, step: HeadsStep): Promise<void> {
  const open = openColumns(step.shape, step.headers);
  if (open.length === SHEETS[step.shape].columns.filter(({ required }) => required).length) {
    pane.tell("warning", HEADS_TEXTS.missing, { heads: open.map((column) => pane.say(column.header)) });
    return;
  }
  await keepHeads(pane.workbook, step);
  await leave(pane, pane.say(HEADS_TEXTS.kept, { sheet: step.sheet }));
}

async function forget(pane: Pane, step: HeadsStep): Promise<void> {
  await forgetHeads(pane.workbook, step.sheet);
  await leave(pane, pane.say(HEADS_TEXTS.forgotten, { sheet: step.sheet }));
}

async function leave(pane: Pane, text: string): Promise<void> {
  await lookForTables(pane, new AbortController().signal);
  pane.change((state) => ({
    ...state,
    message: { intent: "success", text },
    check: { ...state.check, heads: undefined },
  }));
}
