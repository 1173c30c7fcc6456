import { html, nothing, type TemplateResult } from "lit";
import { countingRisk } from "../../domain/choice/countingRisk";
import { whatWouldTurn, type Turn } from "../../domain/choice/whatWouldTurn";
import { seededRandom } from "../../domain/random";
import { choiceRules } from "../../survey/decide/choice/choiceRules";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { Season } from "../../survey/season/season";
import { SIDE_WORDS } from "../../texts/choice";
import { FIGURE_NAMES, OVERRULE_TEXTS } from "../../texts/overrule";
import { CHECK_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { vineKey, type DecideState } from "./decideState";

const DRAWS = 10;
const MOST_VINES = 2000;
const SEED = 20260112;
const TURNS_TOLD = 5;

/** What the decision of one vine hangs on: a button, and once it was asked the answer. */
export function turnsView(pane: Pane, season: Season, vine: DecidedVine): TemplateResult {
  const { turns } = pane.state.decide;
  const key = vineKey(vine);
  const found = turns.get(key);
  if (found !== undefined) return turnList(pane, found);
  return html`<div class="buttons">
    <fluent-button
      class="what-turns"
      size="small"
      @click=${() => {
        const answer = whatWouldTurn(vine.toDecide, choiceRules(season.settings));
        pane.change((state) => ({
          ...state,
          decide: { ...state.decide, turns: new Map([...state.decide.turns, [key, answer]]) },
        }));
      }}
      >${pane.say(OVERRULE_TEXTS.whatTurns)}</fluent-button
    >
  </div>`;
}

function turnList(pane: Pane, turns: readonly Turn[]): TemplateResult {
  if (turns.length === 0) return html`<p class="small">${pane.say(OVERRULE_TEXTS.nothingTurns)}</p>`;
  return html`<h3>${pane.say(OVERRULE_TEXTS.whatTurns)}</h3>
    <ul class="small turns">
      ${turns.slice(0, TURNS_TOLD).map((turn) => html`<li>${turnSentence(pane, turn)}</li>`)}
    </ul>`;
}

function turnSentence(pane: Pane, turn: Turn): string {
  if (turn.kind === "figure")
    return pane.say(OVERRULE_TEXTS.figure, { ...turn, figure: FIGURE_NAMES[turn.figure] });
  const side = SIDE_WORDS[turn.side] ? pane.say(SIDE_WORDS[turn.side]) : turn.side;
  return pane.say(OVERRULE_TEXTS[turn.count], { ...turn, side });
}

/** How much the decisions of the shown block hang on counting: a button, and once it was asked the answer. */
export function riskView(
  pane: Pane,
  { block, risk }: DecideState,
  season: Season,
  vines: readonly DecidedVine[],
): TemplateResult {
  const percent = new Intl.NumberFormat(pane.state.language, { style: "percent", maximumFractionDigits: 1 });
  const name = block === "" ? pane.say(CHECK_TEXTS.all) : block;
  const ask = () => {
    const chosen = vines.filter((vine) => block === "" || vine.block === block);
    const step = Math.max(1, Math.ceil(chosen.length / MOST_VINES));
    const counted = chosen.filter((_, index) => index % step === 0).map(({ toDecide }) => toDecide);
    const found = countingRisk(counted, choiceRules(season.settings), seededRandom(SEED), DRAWS);
    pane.change((state) => ({
      ...state,
      decide: { ...state.decide, risk: { block, found, of: counted.length } },
    }));
  };
  return html`<div class="buttons">
      <fluent-button id="counting-risk" size="small" @click=${ask}
        >${pane.say(OVERRULE_TEXTS.risk)}</fluent-button
      >
    </div>
    ${
      risk === undefined || risk.block !== block
        ? nothing
        : html`<p id="risk-found" class="small" role="status">
            ${pane.say(OVERRULE_TEXTS.riskFound, {
              block: name,
              flips: percent.format(risk.found.flips),
              decided: percent.format(risk.found.flipsDecided),
              of: risk.of,
              draws: DRAWS,
            })}
          </p>`
    }`;
}
