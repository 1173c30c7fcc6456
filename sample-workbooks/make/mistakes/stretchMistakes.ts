import type { FarmRow } from "../farm";
import { bearing, has, num, repeated, rounded, type Mistake } from "./mistake";
import { northBench } from "./places";

/** Mistakes that run over several rows. */
export const STRETCH_MISTAKES: readonly Mistake[] = [
  {
    code: "rowNeverCounted",
    group: "stretch",
    plant(season, field) {
      const block = field.random.oneOf(season.blocks.rows);
      const row = field.random.whole(2, num(block, "rows") - 1);
      const inRow = (own: FarmRow) => own.block === block.block && own.row === row;
      season.cordons.rows = season.cordons.rows.filter((own) => !inRow(own));
      return { sheet: season.vines, rows: season.vines.rows.filter(inRow) };
    },
  },
  {
    code: "copiedDown",
    group: "stretch",
    plant(season, field) {
      const stretch = field.stretch(10, 24);
      if (!stretch) return undefined;
      const vines = [...new Set(stretch.map((row) => row.vine))].slice(1, -1);
      const [first, ...others] = vines.map((vine) => stretch.filter((row) => row.vine === vine));
      if (!first || others.length < 1) return undefined;
      const copies = others.flatMap((vine) =>
        first.map((row) => ({
          ...row,
          vine: vine[0].vine,
          countedBy: vine[0].countedBy,
          countedOn: vine[0].countedOn,
        })),
      );
      const { rows } = season.cordons;
      rows.splice(rows.indexOf(others[0][0]), others.flat().length, ...copies);
      return { sheet: season.cordons, rows: copies };
    },
  },
  {
    code: "copiedDown",
    group: "stretch",
    inSample: [{ what: "A vine filled down from the one before it.", column: "", at: northBench(7, 18) }],
    plant(season, field) {
      const run = field.stretch(12, 12) ?? [];
      const vines = [...new Set(run.map((row) => row.vine))].slice(1, -1);
      const [one, other] = vines.map((vine) => run.filter((row) => row.vine === vine));
      if (!other || one.length < 2) return undefined;
      const { vine, countedBy, countedOn } = other[0];
      const copies = one.map((row) => ({ ...row, vine, countedBy, countedOn }));
      season.cordons.rows.splice(season.cordons.rows.indexOf(other[0]), other.length, ...copies);
      return { sheet: season.cordons, rows: copies };
    },
  },
  {
    code: "cordonsAboveMost",
    group: "stretch",
    plant(season, field) {
      const stretch = field.stretch(32, 44);
      const rows = stretch?.filter(({ vine }) => vine !== stretch[0].vine) ?? [];
      if (rows.length < 26) return undefined;
      for (const row of rows) row.vine = rows[0].vine;
      return { sheet: season.cordons, rows };
    },
  },
  {
    code: "columnsSwapped",
    group: "stretch",
    plant(season, field) {
      const pairs = [
        ["positions", "liveSpurs"],
        ...(has(season.cordons, "spursDown") ? [["liveSpurs", "longestGap"]] : []),
        ["length", "positions"],
        ["liveSpurs", "spursDown"],
      ].filter((pair) => has(season.cordons, ...pair));
      const [one, other] = field.random.oneOf(pairs);
      const stretch = field.stretch(8, 25);
      if (!stretch) return undefined;
      for (const row of stretch) [row[one], row[other]] = [row[other], row[one]];
      return { sheet: season.cordons, rows: stretch };
    },
  },
  {
    code: "unitSlip",
    group: "stretch",
    plant(season, field) {
      const metres = field.random.chance(0.6) || !has(season.cordons, "diameter");
      const stretch = field.stretch(metres ? 12 : 15, 30);
      if (!stretch) return undefined;
      for (const row of stretch) {
        if (metres) row.length = rounded(num(row, "length") * 0.3048, 2);
        else if (typeof row.diameter === "number") row.diameter = rounded(row.diameter * 2.54, 1);
      }
      return { sheet: season.cordons, rows: stretch };
    },
  },
  {
    code: "unitSlip",
    group: "stretch",
    plant(season, field) {
      const row = field.row(season.cordons, bearing(season));
      if (!row) return undefined;
      row.length = Math.round(num(row, "length") * 12);
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "totalDiffers",
    group: "stretch",
    plant(season, field) {
      const sum = season.cordons.rows.reduce((total, row) => total + Number(row.liveSpurs ?? 0), 0);
      const total = {
        block: "Total",
        liveSpurs: sum + field.random.whole(1, 40) * (field.random.chance(0.5) ? 1 : -1),
      };
      season.cordons.below.push(total);
      return { sheet: season.cordons, rows: [total] };
    },
  },
  {
    code: "sameBlockTwice",
    group: "stretch",
    plant: ({ blocks }, { random }) => repeated(blocks, random.oneOf(blocks.rows), {}, blocks.rows.length),
  },
  {
    code: "sameHarvestTwice",
    group: "stretch",
    inSample: [
      {
        what: "The same block and year twice.",
        column: "year",
        at: { block: "Schoolhouse", year: 2024 },
      },
    ],
    plant({ harvest }, field) {
      const row = field.row(harvest);
      return row && repeated(harvest, row, { picked: field.random.whole(300, 900) });
    },
  },
  {
    code: "settingTwice",
    group: "stretch",
    inSample: [
      {
        what: "The same setting twice, so that nobody can tell which value holds.",
        column: "setting",
        at: { setting: "Unlike its block: spread" },
      },
    ],
    plant({ settings }, field) {
      const row = field.row(settings, ({ value }) => value !== "");
      return row && repeated(settings, row);
    },
  },
];
