import { html, nothing, type TemplateResult } from "lit";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { Season } from "../../survey/season/season";
import { CHECK_TEXTS, DECIDE_TEXTS } from "../../texts/pane";
import { OVERRULE_TEXTS } from "../../texts/overrule";
import { RESULT_SHEET_TEXTS } from "../../texts/resultSheets";
import { choiceSheet } from "../../workbook/results/choiceSheet";
import { changePage } from "../changePage";
import { choiceField, textField } from "../fields";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { progressBar } from "../progressBar";
import { usedRowsLine } from "../usedRowsLine";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import { acceptView } from "./acceptView";
import { decide } from "./decide";
import { countVines, progressByBlock, vineKey, type DecideState, type VinesShown } from "./decideState";
import { rowPicture } from "./rowPicture";
import { vineView } from "./vineView";
import { firstVine, vineFound, vineWalk, type VineWalk } from "./vineWalk";
import { riskView } from "./whatIfView";

export { decideAnew } from "./decide";

const SHOWN: readonly VinesShown[] = ["ask", "lay", "trunks", "all"];

/** The page on which it is decided, one vine after the other, which cordon stays on each side. */
export function decidePage(pane: Pane): TemplateResult {
  const page = pane.state.decide;
  return html`<h1>${pane.say(DECIDE_TEXTS.title)}</h1>
    ${page.result === undefined ? html`<p class="quiet">${pane.say(DECIDE_TEXTS.intro)}</p>` : nothing}
    ${page.progress === undefined ? nothing : progressBar(pane, pane.say(DECIDE_TEXTS.progress), page.progress)}
    ${
      page.progress === undefined && page.result === undefined
        ? html`<div class="buttons">
            <fluent-button
              id="decide"
              appearance="primary"
              @click=${() => pane.start((signal) => decide(pane, signal))}
              >${pane.say(DECIDE_TEXTS.decide)}</fluent-button
            >
          </div>`
        : nothing
    }
    ${page.result === undefined || page.progress !== undefined ? nothing : result(pane, page, page.result)}`;
}

function result(
  pane: Pane,
  page: DecideState,
  { season, vines }: NonNullable<DecideState["result"]>,
): TemplateResult {
  const walk = vineWalk(vines, page);
  if (walk === undefined)
    return html`<fluent-message-bar intent="info" layout="singleline"
      >${pane.say(DECIDE_TEXTS.none)}</fluent-message-bar
    >`;
  const walkThrough = (shown: VinesShown, block: string) =>
    changePage(pane, "decide", {
      shown,
      block,
      at: firstVine(vines, { shown, block }),
    });
  const counts = countVines(vines);
  const blocks = [...new Set(vines.map(({ block }) => block))];
  return html`<p id="decide-result" class="small">${pane.say(DECIDE_TEXTS.sum, counts)}</p>
    ${searchField(pane, page, vines)} ${walkView(pane, walk)} ${vineView(pane, season, walk.vine)}
    ${rowPicture(pane, vines, walk.vine)}
    ${choiceField({
      id: "decide-shown",
      label: pane.say(DECIDE_TEXTS.show),
      value: page.shown,
      options: SHOWN.map((value) => ({
        value,
        label: pane.say(DECIDE_TEXTS[value], { count: counts[value] }),
      })),
      onChoose: (value) =>
        changePage(pane, "decide", {
          shown: value as VinesShown,
          at: undefined,
        }),
    })}
    ${choiceField({
      id: "decide-block",
      label: pane.say(DECIDE_TEXTS.block),
      value: page.block,
      options: [
        { value: "", label: pane.say(CHECK_TEXTS.all) },
        ...blocks.map((name) => ({ value: name, label: name })),
      ],
      onChoose: (block) => walkThrough(page.shown, block),
    })}
    ${acceptView(pane, page, vines)}
    <ul id="decide-progress" class="small plain">
      ${progressByBlock(vines).map((count) => html`<li>${pane.say(OVERRULE_TEXTS.progress, { ...count })}</li>`)}
    </ul>
    ${usedRowsLine(pane, season.used.account())}
    <p class="small">${pane.say(DECIDE_TEXTS.caution)}</p>
    <div class="buttons">
      <fluent-button
        id="write-choice"
        size="small"
        @click=${() => void currentOnly(pane, "decide", () => writeChoice(pane, season, vines))}
        >${pane.say(DECIDE_TEXTS.write)}</fluent-button
      >
    </div>
    ${riskView(pane, page, season, vines)}`;
}

/** Finds a vine by block, row and vine while it is typed. */
function searchField(pane: Pane, page: DecideState, vines: readonly DecidedVine[]): TemplateResult {
  const { search } = page;
  const isLost = search.trim() !== "" && vineFound(vines, search) === undefined;
  const [{ block, row, vine }] = vines;
  return html`${textField({
      id: "find-vine",
      type: "search",
      label: pane.say(DECIDE_TEXTS.find),
      value: search,
      onInput: (words) => {
        const found = vineFound(vines, words);
        changePage(pane, "decide", {
          search: words,
          ...(found ? { at: vineKey(found) } : {}),
        });
      },
    })}
    <div role="status" class="small">
      ${
        isLost
          ? html`<p id="vine-not-found">
              ${pane.say(DECIDE_TEXTS.notFound, { search, example: `${block} ${row} ${vine}` })}
            </p>`
          : nothing
      }
    </div>`;
}

/** The name of the vine that is shown, between the way to the one before and the way to the next. */
function walkView(pane: Pane, { vine, at, of, previous, next }: VineWalk): TemplateResult {
  const { block, row, vine: number } = vine;
  const step = (id: string, to: DecidedVine | undefined, sign: string, name: string) =>
    html`<fluent-button
      id=${id}
      icon-only
      aria-label=${name}
      ?disabled=${to === undefined}
      @click=${() => to && changePage(pane, "decide", { at: vineKey(to) })}
      >${sign}</fluent-button
    >`;
  return html`<div class="beside">
    ${step("previous-vine", previous, "‹", pane.say(DECIDE_TEXTS.previous))}
    <div class="wide" role="status" style="text-align:center">
      <h2 id="vine-shown">${pane.say(DECIDE_TEXTS.vine, { block, row, vine: number })}</h2>
      <span id="vine-position" class="small quiet"
        >${at === undefined ? pane.say(DECIDE_TEXTS.notListed, { of }) : pane.say(DECIDE_TEXTS.position, { at, of })}</span
      >
    </div>
    ${step("next-vine", next, "›", pane.say(DECIDE_TEXTS.next))}
  </div>`;
}

async function writeChoice(pane: Pane, season: Season, vines: readonly DecidedVine[]): Promise<void> {
  const { language } = pane.state;
  const content = choiceSheet(vines, language, season.unitSystem, writtenDate(pane.today, language));
  await writeResult(pane, content, RESULT_SHEET_TEXTS.choice);
}
