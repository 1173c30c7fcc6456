import type { FarmRow } from "../farm";
import type { Season } from "../season";
import { has, num, rounded, type Field, type Mistake } from "./mistake";
import { northBench } from "./places";

/** The rows of one counter, and the first of them, where the finding stands. */
function counterRows(season: Season, field: Field): FarmRow[] | undefined {
  const counters = [...new Set(season.cordons.rows.map((row) => row.countedBy))].filter(
    (name) => name !== null,
  );
  if (counters.length < 2) return undefined;
  const counter = field.random.oneOf(counters);
  return season.cordons.rows.filter((row) => row.countedBy === counter);
}

/** Columns of the farm's own: canes thicker than a pencil, thinner ones, and all. */
const CANES = ["Thick canes", "Thin canes", "Canes in all"] as const;
const [THICK, THIN, ALL] = CANES;

/** Canes counted on each bearing vine; the same ones every time. */
function withCanes({ vines }: Season): void {
  if (has(vines, THICK)) return;
  vines.columns = [...vines.columns, ...CANES];
  for (const [at, vine] of vines.rows.filter(({ status }) => status === "bearing").entries()) {
    const [thick, thin] = [9 + ((at * 5) % 8), 2 + ((at * 3) % 5)];
    Object.assign(vine, { [THICK]: thick, [THIN]: thin, [ALL]: thick + thin });
  }
}

/** Habits of one counter, whole blocks, missing and doubled columns. */
export const SHEET_MISTAKES: readonly Mistake[] = [
  {
    code: "digitPreference",
    group: "sheet",
    plant(season, field) {
      const rows = counterRows(season, field);
      const faithful = field.random.number(0.7, 1, 2);
      for (const row of rows ?? [])
        if (field.random.chance(faithful)) row.length = Math.max(0.5, Math.round(num(row, "length") * 2) / 2);
      return rows && { sheet: season.cordons, rows: rows.slice(0, 3) };
    },
  },
  {
    code: "counterUnlikeOthers",
    group: "sheet",
    plant(season, field) {
      const rows = counterRows(season, field);
      const habit = field.random.whole(0, 2);
      const factor = field.random.number(1.3, 1.7, 2);
      for (const row of rows ?? []) {
        if (habit === 0) row.positions = Math.round(num(row, "positions") * factor);
        else if (habit === 1) row.length = rounded(num(row, "length") / factor, 1);
        else if (typeof row.diameter === "number") row.diameter = rounded(row.diameter * factor, 2);
      }
      if (habit === 2 && !has(season.cordons, "diameter")) return undefined;
      return rows && { sheet: season.cordons, rows: rows.slice(0, 3) };
    },
  },
  {
    code: "blockUnlikeSpacing",
    group: "sheet",
    plant(season, field) {
      const block = field.random.oneOf(season.blocks.rows);
      const rows = season.cordons.rows.filter((row) => row.block === block.block);
      for (const row of rows) row.length = rounded(num(row, "length") * 0.3048, 2);
      return { sheet: season.cordons, rows: rows.slice(0, 1) };
    },
  },
  {
    code: "countLeftOut",
    group: "sheet",
    plant(season, field) {
      const vines = season.vines.rows.filter((row) => row.status === "bearing");
      for (const row of vines) row.clusters ??= field.random.whole(40, 60);
      const row = field.random.oneOf(vines);
      row.clusters = null;
      return { sheet: season.vines, rows: [row] };
    },
  },
  {
    code: "vineWithoutCount",
    group: "sheet",
    inSample: [
      {
        what: "A vine on which no cane was counted, where they were counted on every other.",
        column: "",
        at: northBench(4, 1),
      },
    ],
    plant(season, field) {
      withCanes(season);
      const row = field.row(season.vines, (own) => own.status === "bearing");
      for (const head of CANES) row![head] = null;
      return { sheet: season.vines, rows: [row!] };
    },
  },
  {
    code: "totalUnlikeParts",
    group: "sheet",
    inSample: [
      {
        what: "A total of the farm's own columns that is not what they add up to.",
        column: ALL,
        at: northBench(2, 1),
      },
    ],
    plant(season, field) {
      withCanes(season);
      const row = field.row(season.vines, (own) => own.status === "bearing")!;
      const head = field.column(THICK, ALL);
      row[head] = num(row, head) + field.random.whole(1, 3);
      return { sheet: season.vines, rows: [row] };
    },
  },
  {
    code: "unlikeItsBlock",
    also: "unitSlip",
    group: "sheet",
    plant(season, { random }) {
      const weighed = season.vines.rows.filter((row) => typeof row.prunings === "number");
      const [row, ...others] = weighed.slice(0, 8);
      for (const own of weighed.slice(8)) own.prunings = null;
      others.forEach((own, at) => (own.prunings = rounded(0.6 + 0.2 * at, 1)));
      row.prunings = random.number(17, 22, 1);
      return weighed.length < 8 ? undefined : { sheet: season.vines, rows: [row] };
    },
  },
  {
    code: "unknownWord",
    group: "sheet",
    inSample: [
      {
        what: "A node rule that there is none of that name.",
        column: "nodeRule",
        at: { block: "North Bench" },
      },
    ],
    plant(season, field) {
      for (const row of season.blocks.rows) row.nodeRule ??= "30+10";
      const row = field.row(season.blocks)!;
      row.nodeRule = field.random.oneOf(["30x10", "by lenght", "as usual"]);
      return { sheet: season.blocks, rows: [row] };
    },
  },
  {
    code: "missingColumn",
    group: "sheet",
    plant(season, field) {
      const gone = field.random.oneOf(["trunk", "cordon", "side"]);
      season.cordons.columns = season.cordons.columns.filter((id) => id !== gone);
      return { sheet: season.cordons, rows: [] };
    },
  },
  {
    code: "columnTwice",
    group: "sheet",
    plant(season) {
      season.vines.columns = [...season.vines.columns, "status"];
      return { sheet: season.vines, rows: [] };
    },
  },
];
