import { shrunkRatio, shrunkShare, type ShrunkYears } from "../../domain/outlook/shrunkYears";
import { blockFigures } from "../season/blockFigures";
import { harvestRows, type HarvestRow } from "../season/harvestRows";
import type { Season } from "../season/season";
import type { SettingId } from "../settings/settings";
import type { VinePlaces } from "../season/vinePlaces";

/** A figure that the farm's harvests can teach. */
export type FarmFigureId = "clustersPerShoot" | "budbreak" | "clusterWeight" | "lagMultiplier";

/** What the harvests of a cultivar say of one figure, and where it would be written. */
export interface FarmFigure {
  readonly figure: FarmFigureId;
  /** Cultivar, or the block where no cultivar is given; "" for all of the farm. */
  readonly cultivar: string;
  readonly blocks: readonly string[];
  /** Figure of each year, oldest first: the mean of the blocks that wrote one down. */
  readonly years: readonly { readonly year: number; readonly value: number }[];
  /** In force now. */
  readonly now: number;
  /** What it is drawn towards while years are few. */
  readonly usual: number;
  readonly proposed: ShrunkYears;
  /** Column of the Blocks sheet, or row of the Settings sheet, that would take the proposed value. */
  readonly writeTo: { readonly column: string } | { readonly setting: SettingId };
}

/**
 * The farm's own clusters a shoot, budbreak, cluster weight and lag-phase multiplier by cultivar, from the rows of the Harvest
 * sheet, drawn towards the usual value while years are few (shrunkRatio, shrunkShare). A proposal only: nothing is written
 * until a person says so. What a figure is drawn towards never comes from the farm's own Blocks sheet, so that taking a
 * proposal does not count the same years again. The multiplier is taken over the whole farm, because the Settings sheet holds one.
 */
export function farmFigures(season: Season): readonly FarmFigure[] {
  const { settings } = season;
  const groups = cultivars(season);
  const harvests = harvestRows(season);
  const figures: FarmFigure[] = [];
  for (const group of groups) {
    const blockFigure = (column: string) =>
      mean(group.codes.map((code) => group.places.blockNumber(code, column)));
    const add = (
      figure: "clustersPerShoot" | "budbreak" | "clusterWeight",
      usual: number,
      proposed: (years: readonly number[], usual: number) => ShrunkYears,
    ) => {
      const years = yearsOf(harvests, group.codes, (at) => at(figure));
      if (years.length === 0) return;
      figures.push({
        figure,
        cultivar: group.name,
        blocks: group.blocks,
        years,
        now: blockFigure(figure) ?? usual,
        usual,
        proposed: proposed(
          years.map(({ value }) => value),
          usual,
        ),
        writeTo: { column: figure },
      });
    };
    const ratio =
      (yearSpread: number, farmSpread: number = settings.spreadBetweenFarms) =>
      (years: readonly number[], value: number) =>
        shrunkRatio(years, { value, yearSpread, farmSpread });
    add("clustersPerShoot", settings.usualClustersAShoot, ratio(settings.clustersAShootYearToYear));
    add("budbreak", settings.usualBudbreak, (years, value) =>
      shrunkShare(years, {
        value,
        yearSpread: settings.budbreakYearToYear,
        farmSpread: settings.budbreakBetweenFarms,
      }),
    );
    add(
      "clusterWeight",
      settings.usualClusterWeight,
      ratio(settings.clusterWeightYearToYear, settings.clusterWeightBetweenCultivars),
    );
  }
  const all = groups.flatMap(({ codes }) => codes);
  const years = yearsOf(harvests, all, (at) => at("clusterWeight") / at("lagWeight"));
  const usual = settings.lagPhaseMultiplier;
  if (years.length > 0)
    figures.push({
      figure: "lagMultiplier",
      cultivar: "",
      blocks: groups.flatMap(({ blocks }) => blocks),
      years,
      now: usual,
      usual: PUBLISHED_MULTIPLIER,
      proposed: shrunkRatio(
        years.map(({ value }) => value),
        {
          value: PUBLISHED_MULTIPLIER,
          yearSpread: settings.lagPhaseMultiplierYearToYear,
          farmSpread: settings.lagPhaseMultiplierBetweenFarms,
        },
      ),
      writeTo: { setting: "lagPhaseMultiplier" },
    });
  return figures;
}

/** Iowa State University Extension, Wine Grower News 247, 2013. */
export const PUBLISHED_MULTIPLIER = 2;

interface Cultivar {
  readonly name: string;
  readonly codes: number[];
  readonly blocks: string[];
  readonly places: VinePlaces;
}

function cultivars(season: Season): readonly Cultivar[] {
  const places = season.places;
  const groups = new Map<string, Cultivar>();
  const figures = blockFigures(season);
  for (const code of places.blockRows().keys()) {
    const block = season.words.wordOf(code);
    const name = figures(code).secondaryWorth.cultivar || block;
    const group = groups.get(name.toLowerCase()) ?? { name, codes: [], blocks: [], places };
    groups.set(name.toLowerCase(), group);
    group.codes.push(code);
    group.blocks.push(block);
  }
  return [...groups.values()];
}

function yearsOf(
  harvests: readonly HarvestRow[],
  codes: readonly number[],
  figure: (at: (column: string) => number) => number,
): { year: number; value: number }[] {
  const wanted = new Set(codes);
  const years = new Map<number, number[]>();
  for (const { block, year, at } of harvests) {
    const value = figure(at);
    if (!wanted.has(block) || !(value > 0 && value < Infinity)) continue;
    years.set(year, [...(years.get(year) ?? []), value]);
  }
  return [...years]
    .sort(([one], [other]) => one - other)
    .map(([year, values]) => ({ year, value: mean(values)! }));
}

function mean(values: readonly number[]): number | undefined {
  const known = values.filter((value) => value > 0);
  return known.length > 0 ? known.reduce((sum, value) => sum + value, 0) / known.length : undefined;
}
