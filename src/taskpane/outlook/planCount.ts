import { countPlan, type Counted } from "../../survey/crop/countPlan";
import { textNumber } from "../../survey/reading/textNumber";
import { COUNT_PLAN_TEXTS } from "../../texts/countPlan";
import type { Pane } from "../pane";
import type { PlannedCount } from "./outlookState";

const LEAST_PERCENT = 1;
const MOST_PERCENT = 50;

/** What may be counted on a drawn vine. */
export const COUNTED: readonly Counted[] = ["clusters", "shoots", "prunings"];

/** Plans a count of the block, or plans it again with what was changed; nothing is written. */
export function planCount(pane: Pane, block: string, part: Partial<PlannedCount> = {}): void {
  const { season, count } = pane.state.outlook;
  if (season === undefined) return;
  const usual = season.settings.marginOfACount * 100;
  const first: PlannedCount = { counted: "clusters", typed: String(Math.round(usual)), seed: 1, block };
  const wanted: PlannedCount = { ...first, ...count, ...part, block, plan: undefined, problem: undefined };
  const percent = textNumber(wanted.typed.replace("%", ""));
  pane.change((state) => ({
    ...state,
    outlook: {
      ...state.outlook,
      count:
        percent !== undefined && percent >= LEAST_PERCENT && percent <= MOST_PERCENT
          ? planned(pane, season, wanted, percent / 100)
          : {
              ...wanted,
              problem: pane.say(COUNT_PLAN_TEXTS.badMargin, {
                least: LEAST_PERCENT,
                most: MOST_PERCENT,
                value: wanted.typed,
              }),
            },
    },
  }));
}

function planned(
  pane: Pane,
  season: Parameters<typeof countPlan>[0],
  wanted: PlannedCount,
  margin: number,
): PlannedCount {
  const plan = countPlan(season, wanted.block, wanted.counted, wanted.seed, undefined, margin);
  return plan === undefined
    ? { ...wanted, problem: pane.say(COUNT_PLAN_TEXTS.noVines, { block: wanted.block }) }
    : { ...wanted, plan };
}
