import { publishedOfGrape, type GrapeFigures, type GrapeKind } from "../../domain/grapeFigures";
import { isSameFigure, type SettingSource } from "../settings/setting";
import { settingOf, shownValue, type SettingId } from "../settings/settings";
import type { Season } from "./season";
import { choiceId } from "./vinePlaces";

/** Figures that a block may have of its own: their column of the Blocks sheet, and the setting that stands in. */
const FIGURES = {
  nodeRule: { setting: "nodeRule", published: "nodeRule" },
  mostNodes: { setting: "mostNodesAVine", published: "mostNodes" },
  nodesASpur: { setting: "nodesASpur", published: undefined },
  secondaryWorth: { setting: "worthOfASecondaryShoot", published: "secondaryWorth" },
  basalShoots: { setting: "basalShootsASpur", published: undefined },
  basalWorth: { setting: "worthOfABasalShoot", published: "basalWorth" },
  clustersPerShoot: { setting: "usualClustersAShoot", published: undefined },
  budbreak: { setting: "usualBudbreak", published: undefined },
} as const satisfies Readonly<
  Record<string, { setting: SettingId; published: keyof GrapeFigures | undefined }>
>;

export type BlockFigureId = keyof typeof FIGURES;

/** A figure of a block and where it is from. */
export interface BlockFigure<Value = number> {
  readonly id: BlockFigureId;
  readonly value: Value;
  /** Its own cell of the Blocks sheet, the farm's Settings, or what is published of its cultivar or kind of grape. */
  readonly from: "block" | "settings" | "cultivar" | "kind";
  /** Of a published figure or of a setting that still holds its source's; undefined for the farm's own. */
  readonly source: SettingSource | undefined;
  readonly cultivar: string;
  readonly kind: GrapeKind | undefined;
}

/** Everything that a block may have of its own. */
export type BlockFigures = { readonly [Id in Exclude<BlockFigureId, "nodeRule">]: BlockFigure } & {
  readonly nodeRule: BlockFigure<string>;
};

/**
 * The figures in force in a block, by the number of its name: its own cell in the Blocks sheet, else a setting that the
 * farm has changed, else what is published of its cultivar or of its kind of grape, else Settings.
 */
export function blockFigures(season: Season): (block: number) => BlockFigures {
  const known = new Map<number, BlockFigures>();
  return (block) => {
    const figures = known.get(block) ?? figuresOf(season, block);
    known.set(block, figures);
    return figures;
  };
}

function figuresOf(season: Season, block: number): BlockFigures {
  const ids = Object.keys(FIGURES) as BlockFigureId[];
  return Object.fromEntries(ids.map((id) => [id, figureOf(season, block, id)])) as unknown as BlockFigures;
}

function figureOf(season: Season, block: number, id: BlockFigureId): BlockFigure<number | string> {
  const entry = season.places.blockRows().get(block);
  const { setting, published } = FIGURES[id];
  const cultivar = writtenIn(entry, "cultivar");
  const kindColumn = entry?.table.column("grapeKind");
  const kind = entry && kindColumn && (choiceId(kindColumn, entry.index) as GrapeKind | undefined);
  const about = { id, cultivar, kind };
  const own = id === "nodeRule" ? writtenIn(entry, id) : season.places.blockNumber(block, id);
  if (own !== "" && (typeof own === "string" || own >= 0))
    return { ...about, value: own, from: "block", source: undefined };
  const row = settingOf(setting);
  const value = season.settings[setting];
  const untouched = isSameFigure(shownValue(setting, season.settings), row.value);
  const grape = untouched && published ? publishedOfGrape(published, cultivar, kind) : undefined;
  if (!grape) return { ...about, value, from: "settings", source: untouched ? row.source : undefined };
  return { ...about, ...grape.figure, from: grape.of, kind: grape.kind };
}

function writtenIn(entry: ReturnType<ReturnType<Season["places"]["blockRows"]>["get"]>, id: string): string {
  const cell = entry?.table.column(id)?.raw.at(entry.index);
  return typeof cell === "string" || typeof cell === "number" ? String(cell).trim() : "";
}
