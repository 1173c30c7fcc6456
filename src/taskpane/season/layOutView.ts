import { html, type TemplateResult } from "lit";
import { SHEETS } from "../../survey/sheets/sheets";
import type { SurveyTable } from "../../survey/season/season";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import { changePage } from "../changePage";
import { choiceField, textField, tickField } from "../fields";
import type { Pane } from "../pane";
import { layOutSheets } from "./layOutSheets";
import type { LayOutForm } from "./seasonState";

const TEXTS = SEASON_TEXTS.layOut;

/** What is asked for to lay out a block. */
export function layOutView(pane: Pane, blocks: SurveyTable): TemplateResult {
  const form = pane.state.season.layOut;
  const set = (part: Partial<LayOutForm>) =>
    changePage(pane, "season", { layOut: { ...form, problem: undefined, ...part } });
  const field = (id: "block" | "rows" | "vinesARow", label: string) =>
    textField({ id: `lay-out-${id}`, label, value: form[id], onInput: (value) => set({ [id]: value }) });
  const spacing = (id: "rowSpacing" | "vineSpacing") =>
    textField({
      id: `lay-out-${id}`,
      label:
        blocks.column(id)?.header ??
        pane.say(SHEETS.blocks.columns.find((column) => column.id === id)!.header),
      value: form[id],
      onInput: (value) => set({ [id]: value }),
    });
  const training = SHEETS.blocks.columns.find(({ id }) => id === "training")?.choices ?? [];
  return html`<section class="card next stack" aria-labelledby="lay-out">
    <h2 id="lay-out">${pane.say(TEXTS.title)}</h2>
    <p class="small quiet">${pane.say(TEXTS.why)}</p>
    ${field("block", pane.say(TEXTS.block))}
    <div class="pair">
      ${field("rows", pane.say(TEXTS.rows))} ${field("vinesARow", pane.say(TEXTS.vinesARow))}
    </div>
    ${choiceField({
      id: "lay-out-cordons",
      label: pane.say(TEXTS.cordonsAVine),
      value: form.cordonsAVine,
      options: ["1", "2", "3", "4", "5", "6"].map((value) => ({ value, label: value })),
      onChoose: (cordonsAVine) => set({ cordonsAVine }),
    })}
    ${choiceField({
      id: "lay-out-training",
      label: pane.say(TEXTS.training),
      value: form.training,
      options: [
        { value: "", label: pane.say(TEXTS.notSaid) },
        ...training.map(({ id, word }) => ({ value: id, label: pane.say(word) })),
      ],
      onChoose: (chosen) => set({ training: chosen }),
    })}
    <div class="pair">${spacing("rowSpacing")} ${spacing("vineSpacing")}</div>
    ${tickField({
      id: "lay-out-back",
      label: pane.say(TEXTS.backAndForth),
      ticked: form.backAndForth,
      onTick: () => set({ backAndForth: !form.backAndForth }),
    })}
    <p id="lay-out-problem" role="alert">${form.problem ?? ""}</p>
    <div class="buttons">
      <fluent-button
        id="lay-out-make"
        appearance="primary"
        @click=${() => void pane.attempt(() => layOutSheets(pane))}
        >${pane.say(TEXTS.make, { block: form.block.trim() })}</fluent-button
      >
    </div>
  </section>`;
}
