import { inventedFarm } from "../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../sample-workbooks/make/randomSource";
import { SEED } from "../../sample-workbooks/make/sampleWorkbooks";
import { seededRandom } from "../../src/domain/random";
import { blockOutlook } from "../../src/survey/crop/blockOutlook";
import { outlookInputs } from "../../src/survey/crop/outlookInputs";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { blockBudgets } from "../../src/survey/decide/plan/blockBudgets";
import { plannedNodes } from "../../src/survey/decide/plan/plannedNodes";
import { STRICKLAND_YIELDS } from "../published/strickland1932";
import { seasonOfFarm } from "../survey/decide/cards/season";

const farm = inventedFarm(randomSource(SEED));
const season = seasonOfFarm(farm);
const decided = [...decideSeason(season)];
const names = farm.blocks.map(({ block }) => String(block));

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;

/** Coefficient of variation within groups: each value against the mean of its own group. */
function spreadWithin(groups: readonly (readonly number[])[]): number {
  const squares = groups.flatMap((group) => group.map((value) => (value / mean(group) - 1) ** 2));
  return Math.sqrt(sum(squares) / (squares.length - groups.length));
}

const counted = (column: string, of = farm) =>
  names.map((block) =>
    of.vines.flatMap((vine) => {
      const value = vine[column];
      return vine.block === block && typeof value === "number" && value > 0 ? [value] : [];
    }),
  );

describe("vines differ as those of Strickland's trial (1932, 125 vines, 2.585 lb about 5.944 lb: 0.4349)", () => {
  const trial = STRICKLAND_YIELDS.flat().filter((pounds) => !Number.isNaN(pounds));

  test("the trial is the one of that figure", () => {
    expect(spreadWithin([trial])).toBeCloseTo(2.585019 / 5.944, 5);
  });

  /** Where the spread of as many vines in as many blocks, drawn from the trial, lies 19 times in 20. */
  function middleOfTrial(sizes: readonly number[]): readonly [number, number] {
    const random = seededRandom(1932);
    const draw = () => trial[Math.floor(random() * trial.length)];
    const spreads = Array.from({ length: 2000 }, () =>
      spreadWithin(sizes.map((size) => Array.from({ length: size }, draw))),
    ).sort((a, b) => a - b);
    return [spreads[50], spreads[1949]];
  }

  test.each([
    ["crop, clusters times the block's cluster weight", "clusters"],
    ["prunings", "prunings"],
  ])("%s", (_what, column) => {
    const groups = counted(column);
    expect(Math.min(...groups.map((group) => group.length))).toBeGreaterThanOrEqual(10);
    const [low, high] = middleOfTrial(groups.map((group) => group.length));
    expect(spreadWithin(groups)).toBeGreaterThan(low);
    expect(spreadWithin(groups)).toBeLessThan(high);
  });

  test("and so do sixty other farms, on average within three standard errors of 0.008", () => {
    const others = Array.from({ length: 60 }, (_, at) => inventedFarm(randomSource(SEED + 1 + at)));
    const spread = spreadWithin(others.flatMap((other) => counted("clusters", other)));
    expect(Math.abs(spread - 2.585019 / 5.944)).toBeLessThan(0.024);
  });
});

describe.each(names)("%s", (name) => {
  const { leave, spurs } = blockBudgets(season, decided).blocks.find(({ block }) => block === name)!;
  const inputs = outlookInputs(season, { decided }).find(({ block }) => block === name)!;
  const { stages } = blockOutlook(inputs, season.settings, ["light", "middle", "heavy"]);

  test("has spurs for its budget: three nodes on each of the mean vine's hold it, and one node in twenty finds no room", () => {
    expect(leave.nodes).toBeLessThanOrEqual(3 * spurs!.mean);
    expect(season.settings.planMostNodesASpur).toBe(3);
    const planOf = plannedNodes(season);
    const plans = decided.filter(({ block }) => block === name).flatMap((vine) => planOf(vine) ?? []);
    expect(plans.length).toBeGreaterThan(140);
    const short = sum(plans.map((plan) => plan.short));
    expect(short / (short + sum(plans.map(({ nodes }) => nodes)))).toBeLessThan(0.05);
  });

  test("has stages that agree: the likely crop of each lies in the range of every other", () => {
    expect(stages.map(({ stage }) => stage)).toEqual(["winter", "shoots", "clusters"]);
    for (const { block: one } of stages)
      for (const { block: other } of stages) {
        expect(one.likely).toBeGreaterThan(other.low);
        expect(one.likely).toBeLessThan(other.high);
      }
  });

  test("has four harvests, all within the range of the winter's crop", () => {
    expect(inputs.harvests!.years).toHaveLength(4);
    expect(inputs.harvests!.least).toBeGreaterThan(stages[0].block.low);
    expect(inputs.harvests!.most).toBeLessThan(stages[0].block.high);
  });
});
