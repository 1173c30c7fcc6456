import { html, type TemplateResult } from "lit";
import type { SheetId } from "../../survey/sheets/column";
import { SHEETS } from "../../survey/sheets/sheets";
import type { ReadingAnswers } from "../../survey/reading/readingAccount";
import type { Text } from "../../texts/language";
import { HEADS_TEXTS, PANE_TEXTS } from "../../texts/pane";
import { choiceField } from "../fields";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import type { CheckState, HeadsStep } from "./checkState";
import { lookForTables } from "./lookForTables";
import { keepHeads } from "../../workbook/actions/keepAnswers";
import { mappableColumns, openColumns, openUnits, proposeHeads, type OpenUnit } from "./ownHeads";
import { tellLost } from "../tellLost";

const SHAPES = Object.values(SHEETS).filter(({ id }) => id !== "settings");

/** Opens the step in which a person says what their own column heads mean. */
export function openHeads(pane: Pane, sheet: string): void {
  const { looked, tables = [] } = pane.state.check;
  const isOfSheet = (answer: { readonly sheet: string }) => answer.sheet === sheet;
  const kept = looked?.answers.heads?.filter(isOfSheet) ?? [];
  const asked = looked?.season.account.questions.find(
    ({ code, sheet: on }) => code === "heads" && on === sheet,
  );
  const known = kept.length > 0 ? kept : (asked?.proposals[0]?.heads ?? []);
  const shape = known[0]?.shape ?? tables.find((table) => table.sheet === sheet)?.shape ?? "cordons";
  const told = known.flatMap(({ columns }) => Object.entries(columns).map(([head, id]) => [id, head]));
  const units = looked?.answers.units?.filter(isOfSheet) ?? [];
  changeStep(pane, {
    sheet,
    shape,
    headers: known.length > 0 ? Object.fromEntries(told) : proposed(pane, shape, sheet),
    units: Object.fromEntries(units.map(({ column, unit }) => [column, unit])),
  });
}

function proposed(pane: Pane, shape: SheetId, sheet: string): Record<string, string> {
  const heads = pane.state.check.headsOf?.find((one) => one.sheet === sheet);
  return heads ? proposeHeads(shape, heads) : {};
}

function changeStep(pane: Pane, heads: HeadsStep | undefined): void {
  changePage(pane, "check", { heads });
}

/** The step in which a person says what their own column heads mean. */
export function headsStep(pane: Pane, step: HeadsStep, { headsOf = [], looked }: CheckState): TemplateResult {
  const available = headsOf.find(({ sheet }) => sheet === step.sheet)?.headers ?? [];
  const isKept = looked?.answers.heads?.some(({ sheet }) => sheet === step.sheet) === true;
  const open = openColumns(step.shape, step.headers);
  const asked = unitsAsked(pane, step);
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
          headers: proposed(pane, shape as SheetId, step.sheet),
          units: {},
        }),
    })}
    ${mappableColumns(step.shape).map((column) => {
      const head = pane.say(column.header);
      const ofUnit = asked.find(({ column: own }) => own === column);
      return html`${choiceField({
        id: `heads-${step.shape}-${column.id}`,
        label: column.required ? pane.say(HEADS_TEXTS.needed, { head }) : head,
        value: step.headers[column.id] ?? "",
        options: [
          { value: "", label: pane.say(HEADS_TEXTS.absent) },
          ...available.map((header) => ({ value: header, label: header })),
        ],
        onChoose: (header) =>
          changeStep(pane, { ...step, headers: withHead(step.headers, column.id, header) }),
      })}
      ${ofUnit ? unitField(pane, step, ofUnit) : ""}`;
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
        isKept
          ? html`<fluent-button
              id="forget-heads"
              @click=${() => void pane.attempt(() => leave(pane, step, {}, HEADS_TEXTS.forgotten))}
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

/** One head means one column: chosen for another it leaves the one before. */
function withHead(headers: Readonly<Record<string, string>>, column: string, header: string) {
  const others = Object.entries(headers).filter(([id, own]) => id !== column && own !== header);
  return Object.fromEntries(header === "" ? others : [...others, [column, header]]);
}

/** Measured columns whose heads name no unit. */
function unitsAsked(pane: Pane, step: HeadsStep): OpenUnit[] {
  const { headsOf = [], looked } = pane.state.check;
  const heads = headsOf.find(({ sheet }) => sheet === step.sheet);
  return heads && looked ? openUnits(step, heads, looked.season.unitSystem) : [];
}

/** The unit of a measured column, the likely one first, with the reason. */
function unitField(pane: Pane, step: HeadsStep, { column, head, units, middle }: OpenUnit): TemplateResult {
  const reason = middle === undefined ? HEADS_TEXTS.unitOfOthers : HEADS_TEXTS.unitByWire;
  return html`${choiceField({
      id: `heads-unit-${column.id}`,
      label: pane.say(HEADS_TEXTS.unit, { head }),
      value: step.units[column.id] ?? units[0],
      options: units.map((unit) => ({ value: unit, label: unit })),
      onChoose: (unit) => changeStep(pane, { ...step, units: { ...step.units, [column.id]: unit } }),
    })}
    <p class="quiet">${pane.say(reason, { unit: units[0], middle: middle ?? 0 })}</p>`;
}

async function keep(pane: Pane, step: HeadsStep): Promise<void> {
  const open = openColumns(step.shape, step.headers);
  if (open.length === SHEETS[step.shape].columns.filter(({ required }) => required).length) {
    pane.tell("warning", HEADS_TEXTS.missing, { heads: open.map((column) => pane.say(column.header)) });
    return;
  }
  const { sheet, shape } = step;
  const columns = Object.fromEntries(Object.entries(step.headers).map(([id, head]) => [head, id]));
  const asked = unitsAsked(pane, step).map(({ column: { id }, units: [likely] }) => [
    id,
    step.units[id] ?? likely,
  ]);
  const others = Object.entries(step.units).filter(([id]) => !(id in step.headers));
  const units = [...others, ...asked].map(([column, unit]) => ({ sheet, column, unit }));
  await leave(pane, step, { heads: [{ sheet, shape, columns }], units }, HEADS_TEXTS.kept);
}

/** Keeps what was told of a sheet, with what was kept before at hand to take it back, and closes the step. */
async function leave(
  pane: Pane,
  { sheet }: HeadsStep,
  told: Pick<ReadingAnswers, "heads" | "units">,
  said: Text,
): Promise<void> {
  const { before, lost } = await keepHeads(pane.workbook, sheet, told, pane.state.language);
  await lookForTables(pane, new AbortController().signal);
  changePage(pane, "check", { heads: undefined, answered: before });
  pane.tell("success", said, { sheet });
  tellLost(pane, lost);
}
