import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { caneToLay } from "../../domain/renewal/caneToLay";
import { renewalRules } from "../../survey/decide/renewal/renewalRules";
import { caneSentence, cordonRenewalSentence } from "../../survey/decide/renewal/renewalSentence";
import type { Language } from "../../texts/language";
import { reasonSentence } from "../../survey/decide/choice/reasonSentence";
import { cutSentence, sideSentences, vineNoteSentence } from "../../survey/decide/choice/vineSentences";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { Season } from "../../survey/season/season";
import { VERDICT_WORDS } from "../../texts/choice";
import { CHECK_TEXTS, DECIDE_TEXTS } from "../../texts/pane";
import { RESULT_SHEET_TEXTS } from "../../texts/resultSheets";
import { choiceSheet } from "../../workbook/results/choiceSheet";
import { OVERRULE_TEXTS } from "../../texts/overrule";
import { choiceField, textField } from "../fields";
import { foldsOf } from "../folds";
import { jumpButton } from "../jumpButton";
import { moreButton } from "../moreButton";
import { changePage } from "../changePage";
import { usedRowsLine } from "../usedRowsLine";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { progressBar } from "../progressBar";
import { vinePicture } from "../vinePicture";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import {
  VINES_LISTED,
  countVines,
  isAsked,
  progressByBlock,
  vineKey,
  vinesToShow,
  type DecideState,
  type VinesShown,
} from "./decideState";
import { acceptView } from "./acceptView";
import { decide } from "./decide";
import { fixChoice, takeBackChoice } from "./fixChoice";
import { riskView, turnsView } from "./whatIfView";

export { decideAnew } from "./decide";

const SHOWN: readonly VinesShown[] = ["ask", "lay", "trunks", "all"];

/** The page on which it is decided which cordon stays on each side. */
export function decidePage(pane: Pane): TemplateResult {
  const page = pane.state.decide;
  return html`<h1>${pane.say(DECIDE_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(DECIDE_TEXTS.intro)}</p>
    ${
      page.progress === undefined
        ? html`<div class="buttons">
            <fluent-button
              id="decide"
              appearance="primary"
              @click=${() => pane.start((signal) => decide(pane, signal))}
              >${pane.say(page.result === undefined ? DECIDE_TEXTS.decide : DECIDE_TEXTS.again)}</fluent-button
            >
          </div>`
        : progressBar(pane, pane.say(DECIDE_TEXTS.progress), page.progress)
    }
    ${page.result === undefined || page.progress !== undefined ? nothing : result(pane, page, page.result)}`;
}

function result(
  pane: Pane,
  page: DecideState,
  { season, vines }: NonNullable<DecideState["result"]>,
): TemplateResult {
  if (vines.length === 0)
    return html`<fluent-message-bar intent="info" layout="singleline"
      >${pane.say(DECIDE_TEXTS.none)}</fluent-message-bar
    >`;
  const counts = countVines(vines);
  const shown = vinesToShow(vines, page.shown, page.block);
  const blocks = [...new Set(vines.map(({ block }) => block))];
  return html`<fluent-message-bar
      id="decide-result"
      intent=${counts.ask > 0 ? "warning" : "success"}
      layout="singleline"
      >${pane.say(DECIDE_TEXTS.sum, counts)}</fluent-message-bar
    >
    ${usedRowsLine(pane, season.used.account())}
    <ul id="decide-progress" class="small plain">
      ${progressByBlock(vines).map((count) => html`<li>${pane.say(OVERRULE_TEXTS.progress, { ...count })}</li>`)}
    </ul>
    ${
      page.last === undefined
        ? nothing
        : html`<div class="buttons">
            <fluent-button
              id="take-back"
              size="small"
              @click=${() => void pane.attempt(() => takeBackChoice(pane))}
              >${pane.say(OVERRULE_TEXTS.takeBack, { cordon: page.last.cordon })}</fluent-button
            >
          </div>`
    }
    <p class="small">${pane.say(DECIDE_TEXTS.caution)}</p>
    <div class="buttons">
      <fluent-button
        id="write-choice"
        size="small"
        @click=${() => void currentOnly(pane, "decide", () => writeChoice(pane, season, vines))}
        >${pane.say(DECIDE_TEXTS.write)}</fluent-button
      >
    </div>
    ${choiceField({
      id: "decide-shown",
      label: pane.say(DECIDE_TEXTS.show),
      value: page.shown,
      options: SHOWN.map((value) => ({
        value,
        label: pane.say(DECIDE_TEXTS[value], { count: counts[value] }),
      })),
      onChoose: (value) => changePage(pane, "decide", { shown: value as VinesShown, listed: VINES_LISTED }),
    })}
    ${choiceField({
      id: "decide-block",
      label: pane.say(DECIDE_TEXTS.block),
      value: page.block,
      options: [
        { value: "", label: pane.say(CHECK_TEXTS.all) },
        ...blocks.map((name) => ({ value: name, label: name })),
      ],
      onChoose: (block) => changePage(pane, "decide", { block, listed: VINES_LISTED }),
    })}
    ${acceptView(pane, page, vines)} ${riskView(pane, page, season, vines)}
    <fluent-accordion
      @change=${(event: Event) =>
        changePage(pane, "decide", {
          open: new Set(foldsOf(event).flatMap(([key, open]) => (open ? [key] : []))),
        })}
    >
      ${repeat(shown.slice(0, page.listed), vineKey, (vine) => vineItem(pane, page, season, vine))}
    </fluent-accordion>
    ${moreButton(pane, { all: shown.length, listed: page.listed, stretch: VINES_LISTED }, () =>
      changePage(pane, "decide", { listed: page.listed + VINES_LISTED }),
    )}`;
}

async function writeChoice(pane: Pane, season: Season, vines: readonly DecidedVine[]): Promise<void> {
  const { language } = pane.state;
  const content = choiceSheet(vines, language, season.unitSystem, writtenDate(pane.today, language));
  await writeResult(pane, content, RESULT_SHEET_TEXTS.choice);
}

function vineItem(pane: Pane, page: DecideState, season: Season, vine: DecidedVine): TemplateResult {
  const key = vineKey(vine);
  const open = page.open.has(key);
  const { block, row, vine: number } = vine;
  return html`<fluent-accordion-item
    block
    marker-position="end"
    headinglevel="2"
    data-key=${key}
    .expanded=${open}
  >
    <span slot="heading" class="heading">
      ${
        isAsked(vine)
          ? html`<fluent-badge appearance="tint" color="warning"
              >${pane.say(VERDICT_WORDS.ask)}</fluent-badge
            >`
          : nothing
      }
      ${pane.say(DECIDE_TEXTS.vine, { block, row, vine: number })}
    </span>
    ${open ? vineDetail(pane, season, vine) : nothing}
  </fluent-accordion-item>`;
}

function vineDetail(pane: Pane, season: Season, vine: DecidedVine): TemplateResult {
  const { language } = pane.state;
  const { decision, plan } = vine;
  return html`<div class="stack">
    ${vinePicture(vine, language, season.unitSystem)}
    ${sideSentences(plan, language).map((words) => html`<p><strong>${words}</strong></p>`)}
    <ul class="plain">
      ${decision.cordons.map((_cordon, place) => cordonLine(pane, season, vine, place))}
    </ul>
    ${
      plan.cuts.length === 0
        ? nothing
        : html`<h3>${pane.say(DECIDE_TEXTS.cuts)}</h3>
            <ol>
              ${plan.cuts.map((cut) => html`<li>${cutSentence(cut, language)}</li>`)}
            </ol>`
    }
    ${decision.notes.map((note) => html`<p>${vineNoteSentence(note, language)}</p>`)}
    ${renewalWords(vine, season, language).map((words) => html`<p class="small">${words}</p>`)}
    ${turnsView(pane, season, vine)} ${overruleView(pane, vine)}
  </div>`;
}

/** What the cordons that stay need, and which cane to look for where one is laid. */
function renewalWords({ toDecide, plan }: DecidedVine, season: Season, language: Language): string[] {
  const { thickShare } = renewalRules(season.settings);
  const { sideLength } = toDecide;
  const cordons = plan.keeps
    .filter(({ ask, renewal }) => !ask && renewal.action !== "keep")
    .map(({ cordon, renewal }) => cordonRenewalSentence(renewal, cordon, language, season.unitSystem));
  const cane =
    plan.canes.length > 0
      ? caneSentence(caneToLay({ sideLength, thickShare }), language, season.unitSystem)
      : "";
  return cane === "" ? cordons : [...cordons, cane];
}

/** Lets a person keep a cordon that was to go, with the reason beside it. */
function overruleView(pane: Pane, vine: DecidedVine): TemplateResult | typeof nothing {
  const places = vine.decision.cordons.flatMap(({ verdict }, place) => (verdict === "goes" ? [place] : []));
  if (places.length === 0) return nothing;
  const { reason } = pane.state.decide;
  return html`<h3>${pane.say(OVERRULE_TEXTS.heading)}</h3>
    ${textField({
      id: `reason-${vineKey(vine)}`,
      label: pane.say(OVERRULE_TEXTS.reason),
      value: reason,
      onInput: (words) => changePage(pane, "decide", { reason: words }),
    })}
    <div class="buttons">
      ${places.map(
        (place) =>
          html`<fluent-button
            class="overrule"
            size="small"
            @click=${() =>
              reason.trim() === ""
                ? pane.tell("warning", OVERRULE_TEXTS.noReason)
                : void pane.attempt(() => fixChoice(pane, vine, place, reason))}
            >${pane.say(OVERRULE_TEXTS.overrule, { cordon: vine.decision.cordons[place].cordon })}</fluent-button
          >`,
      )}
    </div>`;
}

function cordonLine(pane: Pane, season: Season, vine: DecidedVine, place: number): TemplateResult {
  const { language } = pane.state;
  const cordon = vine.decision.cordons[place];
  const { table, index } = vine.rows[place];
  const row = table.sheetRow(index);
  const column = table.column("cordon")?.sheetColumn ?? 1;
  const sideIsAsked = vine.decision.cordons.some(
    ({ side, verdict }) => side === cordon.side && verdict === "ask",
  );
  const isAskedAbove =
    cordon.reason.question !== undefined &&
    vine.decision.cordons.findIndex(({ reason }) => reason.question !== undefined) < place;
  return html`<li class="finding">
    <div class="beside">
      ${jumpButton(pane, { sheet: table.sheet, row, column })}
      <span>${pane.say(VERDICT_WORDS[cordon.verdict])}</span>
    </div>
    ${isAskedAbove ? "" : html`<p>${reasonSentence(cordon, language, season.unitSystem)}</p>`}
    ${
      sideIsAsked && cordon.verdict === "ask"
        ? html`<div class="buttons">
            <fluent-button
              class="fix"
              size="small"
              @click=${() => void pane.attempt(() => fixChoice(pane, vine, place))}
              >${pane.say(DECIDE_TEXTS.fix, { cordon: cordon.cordon })}</fluent-button
            >
          </div>`
        : nothing
    }
  </li>`;
}
