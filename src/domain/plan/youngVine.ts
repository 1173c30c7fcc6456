import type { Training } from "../choice/trainingSystems";
import { mustBeWhole, Refusal } from "../refusal";
import type { SourceId } from "../sources";

/** Years of growth in which a vine is built up; the year of planting is the first. */
export type YearOfGrowth = 1 | 2 | 3 | 4;

/** What a publication says of a vine in one of those years. */
export type YoungVineRuleCode =
  /** shoots kept over the first summer, the best two of them led to the wire */
  | "shoots"
  /** most flower clusters left on the vine */
  | "clusters"
  /** the two best shoots become the cordons */
  | "cordons"
  /** most of a cane that is laid in one year, as a share: its outer half is thin and weak */
  | "growOn"
  /** shoots from the cordon are grown */
  | "shootsOfCordon"
  /** spurs on each cordon */
  | "spurs"
  /** nodes on each spur */
  | "nodesASpur"
  /** nodes on each cordon, spurs times nodes a spur */
  | "nodesACordon";

export interface YoungVineRule {
  readonly rule: YoungVineRuleCode;
  readonly least?: number;
  readonly most?: number;
  /** Left out for a figure of the farm's own. */
  readonly source?: SourceId;
}

/** Most clusters that a farm leaves on a vine, by its year of growth. */
export type YoungClusters = Readonly<Partial<Record<YearOfGrowth, number>>>;

/** What to leave on a vine that is being built up. */
export interface YoungVine {
  readonly year: YearOfGrowth;
  readonly rules: readonly YoungVineRule[];
}

const GROW_ON: YoungVineRule = { rule: "growOn", most: 0.5, source: "klodd2020" };

const RULES: Readonly<Record<YearOfGrowth, readonly YoungVineRule[]>> = {
  1: [
    { rule: "shoots", least: 3, most: 6, source: "amberg" },
    { rule: "clusters", most: 0, source: "uw2016" },
  ],
  2: [{ rule: "cordons", least: 2, most: 2, source: "vanDerLinden2010" }, GROW_ON],
  3: [
    { rule: "shootsOfCordon", source: "vanDerLinden2010" },
    GROW_ON,
    { rule: "clusters", most: 10, source: "winegrowersUk" },
  ],
  4: [
    { rule: "spurs", least: 8, most: 15, source: "ncState" },
    { rule: "nodesASpur", least: 2, most: 2, source: "ncState" },
    { rule: "nodesACordon", least: 16, most: 30, source: "ncState" },
  ],
};

/**
 * The year of growth that follows this winter, while a vine is being built up; undefined for an older vine, which is
 * pruned by the rules for bearing ones, and for one that is not planted yet.
 *
 * @param planted year in which the vine was planted
 * @param season year in which the winter ends
 * @example
 * yearOfGrowth(2024, 2026) // 3
 */
export function yearOfGrowth(planted: number, season: number): YearOfGrowth | undefined {
  const year = season - planted + 1;
  return year === 1 || year === 2 || year === 3 || year === 4 ? year : undefined;
}

/**
 * What publications say is left on a vine in its first four years, and how far its cordons grow on: 3 to 6 shoots (a
 * nursery's guide) without fruit (University of Wisconsin-Madison 2016) in the first; the two best become the cordons in
 * the second and bear shoots in the third (van der Linden, University of Minnesota 2010), laid no further than the thick
 * half of a cane a year (Klodd, University of Minnesota 2020), with at most about 10 clusters in the first year that
 * bears (winegrowers.info); from the fourth on a high-wire cordon has 8 to 15 spurs of 2 nodes (NC State). No publication
 * seen gives nodes for the first three years, or clusters for the second and fourth: nothing stands in for them. The
 * fourth year of other training systems is not covered. The farm's own most clusters go before those published.
 *
 * @example
 * youngVine(1, undefined).rules[0] // {"rule": "shoots", "least": 3, "most": 6, "source": "amberg"}
 * @example
 * youngVine(4, "upright").rules // []
 * @example
 * youngVine(3, "upright", { 3: 6 }).rules.at(-1) // {"rule": "clusters", "most": 6}
 */
export function youngVine(
  year: YearOfGrowth,
  training: Training | undefined,
  ownClusters: YoungClusters = {},
): YoungVine {
  const published = year === 4 && training !== "highWire" ? [] : RULES[year];
  const own = ownClusters[year];
  if (own === undefined || published.some(({ rule, most }) => rule === "clusters" && most === own))
    return { year, rules: published };
  const others = published.filter(({ rule }) => rule !== "clusters");
  return { year, rules: [...others, { rule: "clusters", most: own }] };
}

/**
 * The same by the years in which the vine was planted and is harvested, for a worksheet.
 *
 * @throws Refusal "vineNotYoung" before the first and after the fourth year, "youngVineTraining" where the source for the
 * fourth year is of another training system, "notWhole" or "outside" for an impossible year
 * @example
 * youngVineIn(2024, 2026, "highWire").rules.map(({ rule }) => rule) // ["shootsOfCordon", "growOn", "clusters"]
 */
export function youngVineIn(planted: number, season: number, training: Training): YoungVine {
  mustBeWhole("planted", planted, 1850, 2100);
  mustBeWhole("season", season, 1850, 2100);
  const year = yearOfGrowth(planted, season);
  if (year === undefined)
    throw new Refusal("notAvailable", "vineNotYoung", { planted: String(planted), season: String(season) });
  const vine = youngVine(year, training);
  if (vine.rules.length === 0) throw new Refusal("notAvailable", "youngVineTraining");
  return vine;
}

/**
 * Nodes for a high-wire cordon of the fourth year by its spurs: 2 a spur, on 8 to 15 spurs (NC State).
 *
 * @param spurs live spurs of each cordon that stays
 * @example
 * fourthYearNodes([10, 18]) // 50
 * @example
 * fourthYearNodes([6]) // 16
 */
export function fourthYearNodes(spurs: readonly number[]): number {
  return spurs.reduce((sum, count) => sum + 2 * Math.min(15, Math.max(8, count)), 0);
}
