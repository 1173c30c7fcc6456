import type { SourceId } from "./sources";

/** Kinds of grape for which figures are published apart. */
export const GRAPE_KINDS = ["american", "frenchHybrid", "newHybrid", "vinifera", "table"] as const;
export type GrapeKind = (typeof GRAPE_KINDS)[number];

/** A figure with the work that gives it. */
export interface Published<Value> {
  readonly value: Value;
  readonly source: SourceId;
}

/** What is published of a kind of grape or a cultivar; a figure that no source seen gives is left out. */
export interface GrapeFigures {
  /** How its nodes are budgeted: "20+10". */
  readonly nodeRule?: Published<string>;
  /** Crop of a secondary shoot over that of a primary one. */
  readonly secondaryWorth?: Published<number>;
  /** Clusters of a shoot from a basal bud over those of a counted one. */
  readonly basalWorth?: Published<number>;
  /** Count nodes above which a vine of usual size is overcropped. */
  readonly mostNodes?: Published<number>;
}

const KINDS: Readonly<Record<GrapeKind, GrapeFigures>> = {
  american: {
    nodeRule: { value: "30+10", source: "ohio2023" },
    secondaryWorth: { value: 0.35, source: "howell" },
  },
  frenchHybrid: {
    nodeRule: { value: "20+10", source: "ohio2023" },
    secondaryWorth: { value: 0.38, source: "winesVines2015" },
  },
  newHybrid: {
    nodeRule: { value: "20+20", source: "ohio2023" },
    secondaryWorth: { value: 0.38, source: "winesVines2015" },
  },
  vinifera: { nodeRule: { value: "20+20", source: "ohio2023" } },
  table: { nodeRule: { value: "30+10", source: "ohio2023" } },
};

const CULTIVARS: Readonly<Record<string, GrapeFigures & { readonly kind: GrapeKind }>> = {
  concord: { kind: "american", mostNodes: { value: 100, source: "batesConcord" } },
  niagara: { kind: "american" },
  norton: {
    kind: "american",
    secondaryWorth: { value: 0, source: "vinews2023" },
    basalWorth: { value: 0, source: "vinews2020" },
  },
  marquette: { kind: "newHybrid", secondaryWorth: { value: 0.53, source: "frioni2017" } },
  traminette: { kind: "frenchHybrid", nodeRule: { value: "40+10", source: "odaniel2012" } },
};

/** What is published of a block's grape: of the cultivar where one is, else of its kind. */
export interface PublishedOfGrape<Id extends keyof GrapeFigures = keyof GrapeFigures> {
  readonly of: "cultivar" | "kind";
  readonly kind: GrapeKind | undefined;
  readonly figure: NonNullable<GrapeFigures[Id]>;
}

/**
 * The published figure of a grape: that of the cultivar before that of its kind. Node rules are those of Smith, Ohio State
 * University 2023, by kind of grape; 40+10 for Traminette is what O'Daniel, Archbold and Kurtural 2012 recommend. A
 * secondary shoot bears 0.35 of a primary's crop on Concord and Niagara (Howell, Michigan State), about nothing on Norton
 * (University of Missouri, Vinews 2023 No. 1), 0.53 on Marquette (worked out from Frioni et al. 2017), and 0.38 on most
 * eastern and Midwest cultivars (worked out from Wines & Vines 2015); none was seen for vinifera and table grapes.
 *
 * `cultivar`: its name, upper or lower case; one without a figure of its own counts by `kind`, which goes before the kind
 * that a known cultivar is of.
 *
 * @example
 * publishedOfGrape("secondaryWorth", "Niagara").figure.value // 0.35
 * publishedOfGrape("secondaryWorth", "", "vinifera") // undefined
 */
export function publishedOfGrape<Id extends keyof GrapeFigures>(
  id: Id,
  cultivar: string,
  kind?: GrapeKind,
): PublishedOfGrape<Id> | undefined {
  const name = cultivar.trim().toLowerCase();
  const known = Object.hasOwn(CULTIVARS, name) ? CULTIVARS[name] : undefined;
  const own = known?.[id];
  if (own) return { of: "cultivar", kind: known.kind, figure: own };
  const kindInForce = kind ?? known?.kind;
  const ofKind = kindInForce && KINDS[kindInForce][id];
  return ofKind && { of: "kind", kind: kindInForce, figure: ofKind };
}
