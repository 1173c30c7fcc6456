import { chooseCordons } from "../../src/domain/choice/chooseCordons";
import { countingRisk } from "../../src/domain/choice/countingRisk";
import { liveSpursOf } from "../../src/domain/choice/liveSpurs";
import { stayingKey, withCounts } from "../../src/domain/choice/whatWouldTurn";
import { seededRandom } from "../../src/domain/random";
import { choiceRules } from "../../src/survey/decide/choice/choiceRules";
import { vinesToDecide } from "../../src/survey/decide/vinesToDecide";
import { inventedFarm } from "../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import { SEED } from "../../sample-workbooks/make/sampleWorkbooks";
import { seasonOfFarm } from "../survey/decide/cards/season";

/** What a block's counting does to its decisions, over the vines that are decided at all. */
export interface Questions {
  readonly vines: number;
  readonly asked: number;
  /** Decided without a question, and another cordon would stay if one spur of one cordon had been counted more or less. */
  readonly turnOnASpur: number;
  /** Vines with a question, beside it. */
  readonly askedTurnOnASpur: number;
  /** Share of draws, every count one off, in which another cordon would stay on a vine that is decided. */
  readonly everyCountOff: number;
}

/** Asks every vine of a season what one spur more or less on any one of its cordons would make of it. */
export function questionsOf(season: Parameters<typeof vinesToDecide>[0]): Questions {
  const rules = choiceRules(season.settings);
  const vines = vinesToDecide(season).map(({ toDecide }) => toDecide);
  const decided = vines.filter((vine) => chooseCordons(vine, rules).sides.length > 0);
  let asked = 0;
  let turnOnASpur = 0;
  let askedTurnOnASpur = 0;
  for (const vine of decided) {
    const now = stayingKey(vine, rules);
    const isAsked = chooseCordons(vine, rules).sides.some(({ ask }) => ask);
    const turns = vine.candidates.some((candidate, index) => {
      const live = liveSpursOf(candidate);
      if (live === undefined || candidate.condition === "dead") return false;
      return [live - 1, live + 1].some(
        (liveSpurs) => liveSpurs >= 0 && stayingKey(withCounts(vine, index, { liveSpurs }), rules) !== now,
      );
    });
    if (isAsked) asked++;
    if (turns && isAsked) askedTurnOnASpur++;
    if (turns && !isAsked) turnOnASpur++;
  }
  const { flipsDecided } = countingRisk(decided, rules, seededRandom(1), 20);
  return { vines: decided.length, asked, turnOnASpur, askedTurnOnASpur, everyCountOff: flipsDecided };
}

/** `npm run bench -- questions`: how many vines of the sample are asked about, and how firm the others stand. */
export function run(): void {
  const seen = questionsOf(seasonOfFarm(inventedFarm(randomSource(SEED))));
  const percent = (part: number, of: number) => `${part} of ${of} (${((100 * part) / of).toFixed(1)} %)`;
  const decided = seen.vines - seen.asked;
  console.log(`asked: ${percent(seen.asked, seen.vines)}`);
  console.log(`decided, and one spur counted otherwise turns it: ${percent(seen.turnOnASpur, decided)}`);
  console.log(
    `asked, and one spur counted otherwise turns it: ${percent(seen.askedTurnOnASpur, seen.asked)}`,
  );
  console.log(
    `decided, every count one off: another cordon in ${(100 * seen.everyCountOff).toFixed(1)} % of draws`,
  );
}
