import { html, nothing, type TemplateResult } from "lit";
import type { BlockStands } from "../../survey/decide/plan/seasonStands";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import type { Paper } from "../../workbook/results/cardsHtml";
import { changePage } from "../changePage";
import { choiceField } from "../fields";
import type { TextFacts } from "../../texts/language";
import { goToCell } from "../goToCell";
import { isCurrent } from "../pageAge";
import type { Pane } from "../pane";
import { pictureSeason } from "./pictureSeason";
import { percent } from "../percent";
import { remembered } from "../ownView";
import { usedRowsLine } from "../usedRowsLine";
import { emptyView } from "./emptyView";
import { openPage } from "../openPage";
import { paperOf, printCountSheets } from "./printCountSheets";
import { seasonBeingRead } from "./seasonBeingRead";
import type { SeasonPicture } from "./seasonState";

export { pictureSeason } from "./pictureSeason";
export { wrongNotice } from "./wrongNotice";

/** A piece of work that is open, in the order of the work. */
type OpenWork = keyof typeof SEASON_TEXTS.open;

const STEPS = ["counted", "checked", "decided", "printed", "pruned"] as const;

/** The page on which the pane opens: where the work stands, and the next step. */
export function seasonPage(pane: Pane): TemplateResult {
  const { picture } = pane.state.season;
  if (picture === undefined) return seasonBeingRead(pane);
  if (picture.blocks.length === 0 && picture.wrong.length === 0) return emptyView(pane, picture);
  const [next, ...then] = openWork(picture);
  const facts = workFacts(picture);
  return html`<h1>${pane.say(SEASON_TEXTS.title)}</h1>
    <div id="season-next" class="card next stack">
      <h2 class="small quiet">${pane.say(SEASON_TEXTS.next)}</h2>
      <p><strong>${pane.say(SEASON_TEXTS.open[next], facts)}</strong></p>
      ${
        next === "count"
          ? choiceField({
              id: "count-paper",
              label: pane.say(SEASON_TEXTS.countSheet.paper),
              value: paperOf(pane, picture.season),
              options: ["Letter", "A4"].map((value) => ({ value, label: value })),
              onChoose: (paper) => changePage(pane, "season", { paper: paper as Paper }),
            })
          : nothing
      }
      <div class="buttons">
        <fluent-button
          id="next-step"
          appearance="primary"
          @click=${() => pane.start((signal) => takeStep(pane, next, signal))}
          >${pane.say(SEASON_TEXTS.go[next])}</fluent-button
        >
      </div>
    </div>
    ${
      then.length === 0
        ? nothing
        : html`<section class="stack" aria-labelledby="season-then">
            <h2 id="season-then">${pane.say(SEASON_TEXTS.then)}</h2>
            <ol id="season-open" class="small">
              ${then.map((work) => html`<li>${pane.say(SEASON_TEXTS.open[work], facts)}</li>`)}
            </ol>
          </section>`
    }
    <section class="stack" aria-labelledby="season-blocks">
      <h2 id="season-blocks">${pane.say(SEASON_TEXTS.picture)}</h2>
      <p class="small quiet">
        ${pane.say(SEASON_TEXTS.sum, { vines: sum(picture.blocks, "vines"), blocks: picture.blocks.length })}
      </p>
      <table id="season-picture" class="small stands">
        <thead>
          <tr>
            ${STEPS.map((step) => html`<th scope="col">${pane.say(SEASON_TEXTS.steps[step])}</th>`)}
          </tr>
        </thead>
        ${picture.blocks.map((block) => blockRows(pane, block))}
      </table>
      ${usedRowsLine(pane, picture.rowsUsed)}
    </section>`;
}

function blockRows(pane: Pane, block: BlockStands): TemplateResult {
  const number = new Intl.NumberFormat(pane.state.language, { maximumFractionDigits: 1 });
  const stopped = pane.say(SEASON_TEXTS.stopped, { wrong: block.wrong });
  return html`<tbody>
    <tr>
      <th scope="rowgroup" colspan="3"><strong>${block.block}</strong></th>
      <td colspan="2" class="number">
        ${block.hours === 0 ? nothing : pane.say(SEASON_TEXTS.hours, { hours: number.format(block.hours) })}
      </td>
    </tr>
    <tr>
      ${STEPS.map((step) => {
        const done = block.vines === 0 ? 0 : block[step] / block.vines;
        const stop = step === "checked" && block.wrong > 0;
        return html`<td title=${pane.say(SEASON_TEXTS.share, { done: block[step], vines: block.vines })}>
          <div class=${stop ? "bar stop" : "bar"}><i style=${`inline-size:${100 * done}%`}></i></div>
          ${carefulPercent(pane, done)}${stop ? html`<span class="unseen">${stopped}</span><b aria-hidden="true"> !</b>` : nothing}
        </td>`;
      })}
    </tr>
    ${
      block.wrong === 0
        ? nothing
        : html`<tr class="said">
            <td colspan="5">! ${stopped}</td>
          </tr>`
    }
  </tbody>`;
}

/** A share in whole per cents that never says all, or nothing, of what is not quite so. */
function carefulPercent(pane: Pane, share: number): string {
  return percent(pane, share > 0 && share < 0.01 ? 0.01 : share > 0.99 && share < 1 ? 0.99 : share);
}

/** What is open, in the order of the work; a few vines without a count hold up no block that has its counts. */
function openWork({ blocks, wrong, cardsToPrint }: SeasonPicture): OpenWork[] {
  const [vines, counted, decided] = [sum(blocks, "vines"), sum(blocks, "counted"), sum(blocks, "decided")];
  if (counted === 0) return wrong.length > 0 ? ["mend", "count"] : ["count"];
  const open: OpenWork[] = [];
  if (wrong.length > 0) open.push("mend");
  if (counted > decided) open.push("decide");
  if (decided > sum(blocks, "accepted")) open.push("accept");
  if (counted < vines) open.push("count");
  if (cardsToPrint > 0) open.push("print");
  if (sum(blocks, "pruned") < vines) open.push("prune");
  return open.length === 0 ? ["harvest"] : open;
}

function workFacts({ blocks, wrong, cardsToPrint }: SeasonPicture): TextFacts {
  const [vines, counted, decided] = [sum(blocks, "vines"), sum(blocks, "counted"), sum(blocks, "decided")];
  return {
    uncounted: vines - counted,
    wrong: wrong.length,
    asks: counted - decided,
    toAccept: decided - sum(blocks, "accepted"),
    cards: cardsToPrint,
    toPrune: vines - sum(blocks, "pruned"),
  };
}

/**
 * Takes the next step of what the workbook holds at this moment: an older picture is made anew first, and where another
 * step has become the next one it is shown instead.
 */
async function takeStep(pane: Pane, wanted: OpenWork, signal: AbortSignal): Promise<void> {
  if (!(await isCurrent(pane, "season"))) await pictureSeason(pane, signal);
  const { picture } = pane.state.season;
  if (picture !== undefined && openWork(picture)[0] === wanted) await go(pane, wanted, picture);
}

/** Leads to where the work is done. */
async function go(
  pane: Pane,
  work: OpenWork,
  { season, wrong, firstAsked, blocks }: SeasonPicture,
): Promise<void> {
  if (work === "mend") {
    const [{ sheet, row, columnNumber }] = wrong;
    openPage(pane, "check");
    await goToCell(pane, { sheet, row, column: Math.max(1, columnNumber) });
  } else if (work === "decide") {
    changePage(pane, "decide", { shown: "ask", block: "" });
    openPage(pane, "decide");
    const [first] = firstAsked?.rows ?? [];
    if (first !== undefined)
      await pane.workbook.selectCell(first.table.sheet, first.table.sheetRow(first.index), 1);
  } else if (work === "accept") {
    const block = blocks.find(({ decided, accepted }) => decided > accepted)?.block ?? "";
    const accepting = block === "" ? {} : { accepting: { block, by: remembered("name") } };
    changePage(pane, "decide", { shown: "all", block, ...accepting });
    openPage(pane, "decide");
  } else if (work === "print") openPage(pane, "crew");
  else if (work === "count") await printCountSheets(pane, season);
  else {
    const [table] = season.tables(work === "prune" ? "vines" : "harvest");
    if (table !== undefined)
      await goToCell(pane, { sheet: table.sheet, row: table.headerRow + 1, column: 1 });
  }
}

function sum(blocks: readonly BlockStands[], what: Exclude<keyof BlockStands, "block">): number {
  return blocks.reduce((total, block) => total + block[what], 0);
}
