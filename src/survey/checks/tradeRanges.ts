import type { Check, CheckContext, FindingKind } from "./check";
import type { SheetId } from "../sheets/column";

const diameterUnusual: FindingKind = { code: "diameterUnusual", severity: "ask", action: "lookAtVine" };
const nodesUnusual: FindingKind = { code: "nodesUnusual", severity: "ask", action: "lookAtVine" };
const trunksUnusual: FindingKind = { code: "trunksUnusual", severity: "ask", action: "lookAtVine" };

interface Range {
  readonly sheet: SheetId;
  readonly column: string;
  readonly kind: FindingKind;
  /** Limits in metric units. */
  readonly least: (context: CheckContext) => number;
  readonly most: (context: CheckContext) => number;
}

const RANGES: readonly Range[] = [
  {
    sheet: "cordons",
    column: "diameter",
    kind: diameterUnusual,
    least: (context) => context.season.settings.cordonDiameterLeast,
    most: (context) => context.season.settings.cordonDiameterMost,
  },
  {
    sheet: "cordons",
    column: "nodesPerSpur",
    kind: nodesUnusual,
    least: (context) => context.season.settings.nodesASpurLeast,
    most: (context) => context.season.settings.nodesASpurMost,
  },
  {
    sheet: "cordons",
    column: "trunk",
    kind: trunksUnusual,
    least: () => 1,
    most: (context) => context.season.settings.trunksAVineMost,
  },
  {
    sheet: "vines",
    column: "liveTrunks",
    kind: trunksUnusual,
    least: () => 0,
    most: (context) => context.season.settings.trunksAVineMost,
  },
];

/** Values that a vine can have but that the trade does not make: very thin cordons, five nodes a spur, six trunks. */
export const TRADE_RANGES: Check = {
  id: "tradeRanges",
  kinds: [diameterUnusual, nodesUnusual, trunksUnusual],
  sheets: ["cordons", "vines"],
  scope: "row",
  prepare(table, context) {
    const judged = RANGES.filter((range) => range.sheet === table.shape.id).flatMap((range) => {
      const column = table.column(range.column);
      return column
        ? [{ column, kind: range.kind, least: range.least(context), most: range.most(context) }]
        : [];
    });
    return (from, to, report) => {
      for (const { column, kind, least, most } of judged) {
        const { least: bottom = -Infinity, most: top = Infinity } = column.column;
        for (let i = from; i < to; i++) {
          const value = column.numbers[i];
          if (!(value < least - 1e-9 || value > most + 1e-9) || value < bottom || value > top) continue;
          report(kind, i, column, {
            value: column.raw.at(i) as number,
            least: Number((least / column.perUnit).toPrecision(3)),
            most: Number((most / column.perUnit).toPrecision(3)),
            unit: column.unit?.id ?? "",
          });
        }
      }
    };
  },
};
