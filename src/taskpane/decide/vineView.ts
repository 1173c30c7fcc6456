import { html, nothing, type TemplateResult } from "lit";
import type { CordonDecision } from "../../domain/choice/vineDecision";
import { caneToLay } from "../../domain/renewal/caneToLay";
import type { PlannedCut } from "../../domain/plan/vinePlan";
import { reasonSentence, strongestAgainst } from "../../survey/decide/choice/reasonSentence";
import { cutSentence, sideSentences, vineNoteSentence } from "../../survey/decide/choice/vineSentences";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { renewalRules } from "../../survey/decide/renewal/renewalRules";
import { caneSentence, renewalSentences } from "../../survey/decide/renewal/renewalSentence";
import type { Season } from "../../survey/season/season";
import { SIDE_WORDS, VERDICT_WORDS } from "../../texts/choice";
import type { Language } from "../../texts/language";
import { OVERRULE_TEXTS } from "../../texts/overrule";
import { DECIDE_TEXTS } from "../../texts/pane";
import { changePage } from "../changePage";
import { textField } from "../fields";
import { jumpButton } from "../jumpButton";
import type { Pane } from "../pane";
import { vinePicture } from "../vinePicture";
import { vineKey } from "./decideState";
import { fixChoice, lastOn, takeBackChoice } from "./fixChoice";
import { fixedNow, overrules, type Outcome } from "./outcome";
import { outcomeWords } from "./outcomeWords";
import { turnsView } from "./whatIfView";

/**
 * One vine: its picture, what stays, is kept and is cut, why and what speaks against it, and a button for every outcome;
 * of a vine that more rows name than a vine has cordons only where to look.
 */
export function vineView(pane: Pane, season: Season, vine: DecidedVine): TemplateResult {
  const { language } = pane.state;
  const { decision, plan, recount } = vine;
  const isOverfull = decision.cordons.length > season.settings.cordonsAVineMost;
  return html`<div class="stack vine" data-key=${vineKey(vine)}>
    ${isOverfull ? nothing : vinePicture(vine, language, season.unitSystem)} ${wayBack(pane, vine)}
    ${sideSentences(plan, language).map((words) => html`<p><strong>${words}</strong></p>`)}
    ${againstLine(pane, season, vine)}
    ${
      recount.length === 0
        ? nothing
        : html`<p>${pane.say(DECIDE_TEXTS.recountCells)}</p>
            <div class="buttons">
              ${recount.map(({ sheet, sheetRow, sheetColumn }) => jumpButton(pane, { sheet, row: sheetRow, column: sheetColumn }))}
            </div>`
    }
    ${keptView(pane, vine)}
    ${
      plan.cuts.length === 0
        ? nothing
        : html`<h3>${pane.say(DECIDE_TEXTS.cut)}</h3>
            <ol class="cuts">
              ${plan.cuts.map((cut) => html`<li>${cutSentence(cut, language)}</li>`)}
            </ol>`
    }
    ${decision.notes.map((note) => html`<p>${vineNoteSentence(note, language)}</p>`)}
    ${renewalWords(vine, season, language).map((words) => html`<p class="small">${words}</p>`)}
    ${isOverfull ? nothing : [choicesView(pane, season, vine), turnsView(pane, season, vine)]}
  </div>`;
}

/** What speaks most against the cordons that stay; a sentence too where nothing does. */
function againstLine(pane: Pane, season: Season, { decision }: DecidedVine): TemplateResult | typeof nothing {
  const kept = decision.sides.flatMap(({ side, cordon }) =>
    decision.cordons.filter((one) => one.side === side && one.cordon === cordon),
  );
  if (kept.length === 0) return nothing;
  const against = kept.flatMap((one) => {
    const argument = strongestAgainst(one, pane.state.language, season.unitSystem);
    const rival = one.reason.rival ?? "";
    return argument === undefined ? [] : [{ cordon: one.cordon, rival, argument }];
  });
  return html`<div class="against small quiet">
    ${
      against.length === 0
        ? html`<p>${pane.say(DECIDE_TEXTS.nothingAgainst)}</p>`
        : against.map((facts) => html`<p>${pane.say(DECIDE_TEXTS.against, facts)}</p>`)
    }
  </div>`;
}

/** The wood that is kept for later although its cordon goes. */
function keptView(pane: Pane, { plan, rows }: DecidedVine): TemplateResult | typeof nothing {
  const canes = [...plan.canes, ...plan.keeps.map(({ side, orCane }) => ({ side, source: orCane?.source }))];
  const laid = canes.flatMap(({ side, source }) => (source ? [{ ...source, forSide: side }] : []));
  const kept = plan.cuts.flatMap((cut: PlannedCut) => {
    const { cordon, side, trunk, backTo, renews } = cut;
    if (backTo === "spur") return [pane.say(DECIDE_TEXTS.keptSpur, { cordon, trunk: trunk ?? "" })];
    if (backTo !== "cane") return [];
    if (renews.length > 0) return [pane.say(DECIDE_TEXTS.keptWood, { cordon, renews })];
    const cane = laid.find((source) => source.cordon === cordon && source.side === side);
    return cane
      ? [
          pane.say(DECIDE_TEXTS.keptCane, {
            cordon,
            side: sideWord(pane, cane.forSide),
          }),
        ]
      : [];
  });
  if (kept.length === 0 || rows.length === 0) return nothing;
  return html`<h3>${pane.say(DECIDE_TEXTS.kept)}</h3>
    <ul class="kept">
      ${kept.map((words) => html`<li>${words}</li>`)}
    </ul>`;
}

function sideWord(pane: Pane, side: string): string {
  return SIDE_WORDS[side] ? pane.say(SIDE_WORDS[side]) : side;
}

/** What the cordons that stay need, and which cane to look for where one is laid. */
function renewalWords({ toDecide, plan }: DecidedVine, season: Season, language: Language): string[] {
  const { thickShare } = renewalRules(season.settings);
  const { sideLength } = toDecide;
  const cordons = renewalSentences(plan, language, season.unitSystem);
  const cane =
    plan.canes.length > 0
      ? caneSentence(caneToLay({ sideLength, thickShare }), language, season.unitSystem)
      : "";
  return cane === "" ? cordons : [...cordons, cane];
}

/** What a person decided on this vine, with the way back. */
function wayBack(pane: Pane, vine: DecidedVine): TemplateResult | typeof nothing {
  const last = lastOn(pane.state.decide.past, vine);
  const button = (id: string, words: string, press: () => Promise<void>) =>
    html`<div class="buttons">
      <fluent-button id=${id} size="small" @click=${() => void pane.attempt(press)}>${words}</fluent-button>
    </div>`;
  if (last)
    return button(
      "take-back",
      pane.say(OVERRULE_TEXTS.takeBack, {
        outcome: outcomeWords(pane, vine, last.outcome),
      }),
      () => takeBackChoice(pane, last),
    );
  return fixedNow(vine).some((fixed) => fixed !== undefined)
    ? button("ask-again", pane.say(DECIDE_TEXTS.outcomes.free), () => fixChoice(pane, vine, { kind: "free" }))
    : nothing;
}

/** Each cordon with its reason and what can be decided of it, side by side, and what holds for the whole vine. */
function choicesView(pane: Pane, season: Season, vine: DecidedVine): TemplateResult {
  const { cordons, sides } = vine.decision;
  const named = [...new Set(cordons.map(({ side }) => side))].sort(
    (one, other) => Number(isAskedSide(other)) - Number(isAskedSide(one)),
  );
  function isAskedSide(side: string): boolean {
    return sides.some((answer) => answer.side === side && answer.ask);
  }
  const settled = named.some((side) => overrules({ kind: "none", side }, vine));
  return html`<h3>${pane.say(DECIDE_TEXTS.decideVine)}</h3>
    ${
      settled
        ? textField({
            id: "reason",
            label: pane.say(OVERRULE_TEXTS.reason),
            value: pane.state.decide.reason,
            onInput: (reason) => changePage(pane, "decide", { reason }),
          })
        : nothing
    }
    ${named.map(
      (side) =>
        html`<section
          class="stack"
          aria-label=${pane.say(DECIDE_TEXTS.sideChoices, { side: sideWord(pane, side) })}
        >
          <ul class="plain">
            ${cordons.map((cordon, place) => (cordon.side === side ? cordonLine(pane, season, vine, place) : nothing))}
          </ul>
          <div class="buttons">${outcomeButton(pane, vine, { kind: "none", side })}</div>
        </section>`,
    )}
    <div class="buttons">${outcomeButton(pane, vine, { kind: "recount" })}</div>`;
}

function cordonLine(pane: Pane, season: Season, vine: DecidedVine, place: number): TemplateResult {
  const cordon = vine.decision.cordons[place];
  const { table, index } = vine.rows[place];
  const column = table.column("cordon")?.sheetColumn ?? 1;
  const isDead = vine.toDecide.candidates[place].condition === "dead";
  const isAskedAbove = vine.decision.cordons.slice(0, place).some((above) => isSameQuestion(above, cordon));
  return html`<li class="finding">
    <div class="beside">
      ${jumpButton(pane, { sheet: table.sheet, row: table.sheetRow(index), column })}
      <span>${pane.say(VERDICT_WORDS[cordon.verdict])}</span>
    </div>
    ${isAskedAbove ? nothing : html`<p>${reasonSentence(cordon, pane.state.language, season.unitSystem)}</p>`}
    <div class="buttons">
      ${outcomeButton(pane, vine, { kind: "stays", place })}
      ${isDead ? nothing : outcomeButton(pane, vine, { kind: "cane", place })}
    </div>
  </li>`;
}

/** True where two cordons are in one question: that of the whole vine, or that between the two. */
function isSameQuestion(one: CordonDecision, other: CordonDecision): boolean {
  if (one.reason.question !== undefined && other.reason.question !== undefined) return true;
  return (
    one.verdict === "ask" &&
    one.side === other.side &&
    one.reason.code === other.reason.code &&
    one.reason.rival === other.cordon &&
    other.reason.rival === one.cordon
  );
}

/** A button for one outcome; where it overrules an answer that had no question, a reason is asked for first. */
function outcomeButton(pane: Pane, vine: DecidedVine, outcome: Outcome): TemplateResult {
  const { decision } = vine;
  const isProposed =
    outcome.kind === "stays" &&
    decision.sides.some(
      ({ side, cordon, ask }) =>
        ask &&
        side === decision.cordons[outcome.place].side &&
        cordon === decision.cordons[outcome.place].cordon,
    );
  const press = () => {
    const { reason } = pane.state.decide;
    const isOverruled = overrules(outcome, vine);
    if (isOverruled && reason.trim() === "") {
      pane.tell("warning", OVERRULE_TEXTS.noReason);
      return;
    }
    void pane.attempt(() => fixChoice(pane, vine, outcome, isOverruled ? reason : undefined));
  };
  return html`<fluent-button
    class=${`outcome ${outcome.kind}`}
    size="small"
    appearance=${isProposed ? "primary" : "outline"}
    @click=${press}
    >${outcomeWords(pane, vine, outcome)}</fluent-button
  >`;
}
