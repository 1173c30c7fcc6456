import type { CellValue } from "../../src/survey/sheets/cell";
import type { SheetId } from "../../src/survey/sheets/column";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { Farm, FarmRow } from "./farm";
import { serialDay } from "./inventedFarm";

/** One mistake of the season that is meant to be checked: what it is, and how it gets into the sheets. */
export interface Mistake {
  /** Code of the finding that must name it. */
  readonly code: string;
  /** What is wrong, as the first sheet of the workbook says it. */
  readonly what: string;
  /** Column id, or one of OWN_COUNTS, where the finding must point; "" when it is about the whole row. */
  readonly column: string;
  readonly sheet: SheetId;
  /** Makes the mistake and answers the row that carries it. */
  readonly plant: (farm: Farm) => FarmRow;
}

/** Where a planted mistake ended up: the sheet's row as a person sees it. */
export interface PlantedMistake extends Mistake {
  readonly sheetRow: number;
}

/** Columns of the farm's own on the Vines sheet that is to be checked: canes thicker than a pencil, thinner ones, and all. */
export const OWN_COUNTS = ["Thick canes", "Thin canes", "Canes in all"] as const;
const [THICK, THIN, ALL] = OWN_COUNTS;

/** Number of the sheet's column where the finding must point, from 1; 0 when it is about the whole row. */
export function columnNumberOf({ sheet, column }: Mistake): number {
  const columns = SHEETS[sheet].columns.map(({ id }) => id);
  return [...columns, ...OWN_COUNTS].indexOf(column) + 1;
}

/** Plants every mistake and answers where each one stands. The farm is changed. */
export function plantMistakes(farm: Farm, mistakes: readonly Mistake[] = MISTAKES): PlantedMistake[] {
  const planted = mistakes.map((mistake) => ({ mistake, row: mistake.plant(farm) }));
  return planted.map(({ mistake, row }) => ({
    ...mistake,
    sheetRow: farm[mistake.sheet].indexOf(row) + 2,
  }));
}

type Where = Partial<Record<string, CellValue>>;

/** The first row that carries the given values; of a row's vines, the lowest number from the given one on. */
function rowWhere(rows: readonly FarmRow[], where: Where): FarmRow {
  const { vine, ...rest } = where;
  const found = rows
    .filter((row) => Object.entries(rest).every(([id, value]) => row[id] === value))
    .filter((row) => vine === undefined || Number(row.vine) >= Number(vine));
  if (found.length === 0) throw new Error(`No row where ${JSON.stringify(where)}`);
  return found.reduce((best, row) =>
    vine !== undefined && Number(row.vine) < Number(best.vine) ? row : best,
  );
}

/** Changes one cell of the row found. */
function change(
  sheet: Mistake["sheet"],
  where: Where,
  column: string,
  value: CellValue | ((row: FarmRow) => CellValue),
) {
  return (farm: Farm): FarmRow => {
    const row = rowWhere(farm[sheet], where);
    row[column] = typeof value === "function" ? value(row) : value;
    return row;
  };
}

const rowsOfVine = (rows: readonly FarmRow[], { block, row, vine }: FarmRow) =>
  rows.filter((own) => own.block === block && own.row === row && own.vine === vine);

const northBench = (row: number, vine: number): Where => ({ block: "North Bench", row, vine });
const creekSide = (row: number, vine: number): Where => ({ block: "Creek Side", row, vine });
const schoolhouse = (row: number, vine: number): Where => ({ block: "Schoolhouse", row, vine });

/** The first sound cordon of a row of Creek Side that has a gap of two positions or more. */
function soundCordonWithGap(farm: Farm, row: number): FarmRow {
  return farm.cordons.find(
    (cordon) =>
      cordon.block === "Creek Side" &&
      cordon.row === row &&
      cordon.condition === "sound" &&
      Number(cordon.longestGap) >= 2,
  )!;
}

/** A second copy of the row found, just below it. */
function repeat(sheet: Mistake["sheet"], where: Where) {
  return (farm: Farm): FarmRow => {
    const rows = farm[sheet];
    const row = rowWhere(rows, where);
    const copy = { ...row };
    rows.splice(rows.indexOf(row) + 1, 0, copy);
    return copy;
  };
}

/** Moves every row of one vine to behind the vine that stands `places` further on in the same row. */
function moveBehind(sheet: Mistake["sheet"], where: Where, places: number) {
  return (farm: Farm): FarmRow => {
    const rows = farm[sheet];
    const first = rowWhere(rows, where);
    const standsAt = (row: FarmRow, vine: number) =>
      row.block === first.block && row.row === first.row && row.vine === vine;
    const moved = rows.filter((row) => standsAt(row, Number(first.vine)));
    const rest = rows.filter((row) => !moved.includes(row));
    const behind = rest.reduce(
      (last, row, index) => (standsAt(row, Number(first.vine) + places) ? index : last),
      -1,
    );
    if (behind < 0) throw new Error(`No vine ${places} places behind ${JSON.stringify(where)}`);
    rows.splice(0, rows.length, ...rest.slice(0, behind + 1), ...moved, ...rest.slice(behind + 1));
    return moved[0];
  };
}

/** The bearing vines with canes counted on each; the same ones every time. */
function vinesWithCanes(farm: Farm): FarmRow[] {
  const bearing = farm.vines.filter(({ status }) => status === "bearing");
  bearing.forEach((vine, at) => {
    vine[THICK] ??= 9 + ((at * 5) % 8);
    vine[THIN] ??= 2 + ((at * 3) % 5);
    vine[ALL] ??= Number(vine[THICK]) + Number(vine[THIN]);
  });
  return bearing;
}

/** The mistakes of the season that is meant to be checked, at least one for each kind of finding. */
const MISTAKES: readonly Mistake[] = [
  {
    code: "missingValue",
    sheet: "cordons",
    column: "liveSpurs",
    what: "Live spurs left blank.",
    plant: change("cordons", northBench(1, 4), "liveSpurs", null),
  },
  {
    code: "notANumber",
    sheet: "cordons",
    column: "positions",
    what: "A word where the number of positions belongs.",
    plant: change("cordons", northBench(1, 9), "positions", "about eight"),
  },
  {
    code: "numberAsText",
    sheet: "cordons",
    column: "longestGap",
    what: "The number is text, so a spreadsheet does not count it.",
    plant: change("cordons", northBench(2, 3), "longestGap", (row) => String(row.longestGap)),
  },
  {
    code: "outsideLimits",
    sheet: "cordons",
    column: "spursDown",
    what: "A count below zero.",
    plant: change("cordons", northBench(2, 12), "spursDown", -3),
  },
  {
    code: "notWhole",
    sheet: "cordons",
    column: "trunk",
    what: "A trunk number with a fraction.",
    plant: change("cordons", northBench(3, 5), "trunk", 1.5),
  },
  {
    code: "spursAbovePositions",
    sheet: "cordons",
    column: "liveSpurs",
    what: "More live spurs than places for one.",
    plant: (farm) => {
      const row = rowWhere(farm.cordons, { ...northBench(3, 18), condition: "sound" });
      const more = Number(row.positions) + 2 - Number(row.liveSpurs);
      row.liveSpurs = Number(row.liveSpurs) + more;
      row.spursDown = Number(row.spursDown) + more;
      row.longestGap = 0;
      return row;
    },
  },
  {
    code: "gapTooLong",
    sheet: "cordons",
    column: "longestGap",
    what: "A longer gap than there are places without a spur.",
    plant: change(
      "cordons",
      { ...northBench(4, 7), condition: "sound" },
      "longestGap",
      (row) => Number(row.positions) - Number(row.liveSpurs) + 2,
    ),
  },
  {
    code: "directionsDoNotAddUp",
    sheet: "cordons",
    column: "liveSpurs",
    what: "Spurs down, level and up do not add up to the live spurs.",
    plant: (farm) => {
      const row = rowWhere(farm.cordons, { ...northBench(4, 21), condition: "sound" });
      row.spursLevel = Number(row.spursLevel) + 2;
      return row;
    },
  },
  {
    code: "spursTooClose",
    sheet: "cordons",
    column: "positions",
    what: "More positions than fit on a cordon of that length.",
    plant: change("cordons", { ...northBench(5, 6), condition: "sound" }, "positions", 38),
  },
  {
    code: "unknownBlock",
    sheet: "cordons",
    column: "block",
    what: "A block that the Blocks sheet does not have.",
    plant: change("cordons", northBench(5, 16), "block", "North Bnech"),
  },
  {
    code: "unknownVine",
    sheet: "cordons",
    column: "vine",
    what: "A vine number past the end of the row.",
    plant: (farm) => {
      const last = farm.cordons.filter((row) => row.block === "North Bench" && row.row === 7).slice(-1)[0];
      last.vine = 41;
      return last;
    },
  },
  {
    code: "sameCordonTwice",
    sheet: "cordons",
    column: "cordon",
    what: "The same cordon stands in the sheet twice.",
    plant: repeat("cordons", northBench(6, 11)),
  },
  {
    code: "outOfWalkOrder",
    sheet: "cordons",
    column: "vine",
    what: "The vine stands five places behind where the crew passed it.",
    plant: moveBehind("cordons", northBench(8, 10), 5),
  },
  {
    code: "unlikeItsBlock",
    sheet: "vines",
    column: "prunings",
    what: "A weight ten times too small: the decimal point has slipped.",
    plant: (farm) => {
      const row = farm.vines.find(
        (vine) => vine.block === "Creek Side" && typeof vine.prunings === "number",
      )!;
      row.prunings = Math.round(Number(row.prunings) * 10) / 100;
      return row;
    },
  },
  {
    code: "cordonTooLong",
    sheet: "cordons",
    column: "length",
    what: "A length of 5.8 where the vine spacing leaves three feet a side and no vine beside it is missing.",
    plant: change("cordons", { ...creekSide(1, 6), condition: "sound" }, "length", 5.8),
  },
  {
    code: "cordonTooShort",
    sheet: "cordons",
    column: "length",
    what: "A sound cordon of a third of a foot: three and a half feet with the point in the wrong place.",
    plant: change("cordons", { ...schoolhouse(4, 5), condition: "sound" }, "length", 0.3),
  },
  {
    code: "dateOtherYear",
    sheet: "cordons",
    column: "countedOn",
    what: "Last year's number still in the date.",
    plant: change("cordons", schoolhouse(4, 12), "countedOn", (row) => Number(row.countedOn) - 365),
  },
  {
    code: "dateOutOfSeason",
    sheet: "cordons",
    column: "countedOn",
    what: "A count of dormant cordons dated in October, before leaf fall.",
    plant: change("cordons", schoolhouse(5, 8), "countedOn", serialDay(2025, 10, 4)),
  },
  {
    code: "placesDiffer",
    sheet: "blocks",
    column: "vines",
    what: "Five vine places more than the Vines sheet lists.",
    plant: change("blocks", { block: "Schoolhouse" }, "vines", (row) => Number(row.vines) + 5),
  },
  {
    code: "diameterUnusual",
    sheet: "cordons",
    column: "diameter",
    what: "A cordon thinner than any that carries spurs.",
    plant: change("cordons", { ...schoolhouse(1, 4), condition: "sound" }, "diameter", 0.09),
  },
  {
    code: "nodesUnusual",
    sheet: "cordons",
    column: "nodesPerSpur",
    what: "Twelve nodes on a spur where two are cut.",
    plant: change("cordons", { ...schoolhouse(1, 10), condition: "sound" }, "nodesPerSpur", 12),
  },
  {
    code: "missingAsZero",
    sheet: "vines",
    column: "clusters",
    what: "A missing vine counted with no clusters, so that the block would lose it twice.",
    plant: change("vines", { block: "North Bench", status: "missing" }, "clusters", 0),
  },
  {
    code: "missingVineCounted",
    sheet: "vines",
    column: "shoots",
    what: "Shoots counted on a vine that is called missing.",
    plant: change("vines", { block: "Creek Side", status: "missing" }, "shoots", 31),
  },
  {
    code: "trunksUnusual",
    sheet: "cordons",
    column: "trunk",
    what: "A seventh trunk, which no vine here has.",
    plant: change("cordons", { ...schoolhouse(3, 6), condition: "sound" }, "trunk", 7),
  },
  {
    code: "deadCordonStays",
    sheet: "cordons",
    column: "fixedChoice",
    what: "A dead cordon that somebody has decided to keep.",
    plant: (farm) => {
      const row = farm.cordons.find(
        (cordon) => cordon.block === "Schoolhouse" && cordon.condition === "dead",
      )!;
      row.fixedChoice = "stays";
      return row;
    },
  },
  {
    code: "sickCordonStays",
    sheet: "cordons",
    column: "fixedChoice",
    what: "A diseased cordon that somebody has decided to keep.",
    plant: (farm) => {
      const row = farm.cordons.find(
        (cordon) => cordon.block === "Schoolhouse" && cordon.condition === "diseased",
      )!;
      row.fixedChoice = "stays";
      return row;
    },
  },
  {
    code: "deadWithSpurs",
    sheet: "cordons",
    column: "condition",
    what: "A dead cordon with live spurs.",
    plant: change("cordons", { ...creekSide(1, 15), condition: "sound" }, "condition", "dead"),
  },
  {
    code: "unknownWord",
    sheet: "cordons",
    column: "side",
    what: "A side that is none of the accepted words.",
    plant: change("cordons", creekSide(2, 8), "side", "uphill"),
  },
  {
    code: "errorCell",
    sheet: "cordons",
    column: "diameter",
    what: "A formula that fails stands where the diameter belongs.",
    plant: change("cordons", creekSide(2, 17), "diameter", { error: "#DIV/0!" }),
  },
  {
    code: "cordonOnMissingVine",
    sheet: "cordons",
    column: "vine",
    what: "The Vines sheet says that this vine is missing, yet a cordon was counted on it.",
    plant: (farm) => {
      const counted = rowWhere(farm.cordons, creekSide(3, 12));
      const vine = rowWhere(farm.vines, creekSide(3, Number(counted.vine)));
      vine.status = "missing";
      vine.liveTrunks = 0;
      vine.prunings = vine.clusters = vine.shoots = null;
      return counted;
    },
  },
  {
    code: "sameVineTwice",
    sheet: "vines",
    column: "vine",
    what: "The same vine stands in the register twice.",
    plant: repeat("vines", creekSide(4, 9)),
  },
  {
    code: "outsideLimits",
    sheet: "vines",
    column: "prunings",
    what: "A weight of prunings that no vine gives.",
    plant: change("vines", schoolhouse(2, 5), "prunings", 160),
  },
  {
    code: "aliveAboveCut",
    sheet: "budCuts",
    column: "primariesAlive",
    what: "More live primaries than nodes cut.",
    plant: change("budCuts", { block: "Schoolhouse", cane: "3" }, "primariesAlive", 9),
  },
  {
    code: "notADate",
    sheet: "budCuts",
    column: "countedOn",
    what: "A date as text that can be read two ways, four weeks from the other days either way.",
    plant: change("budCuts", { block: "Creek Side", cane: "5" }, "countedOn", "02/04/2026"),
  },
  {
    code: "gapBeyondEnd",
    sheet: "cordons",
    column: "gapFrom",
    what: "A gap that begins so far out that it ends beyond the cordon.",
    plant: (farm) => {
      const row = soundCordonWithGap(farm, 4);
      row.gapFrom = Number(row.positions) - Number(row.longestGap) + 2;
      return row;
    },
  },
  {
    code: "gapTooShort",
    sheet: "cordons",
    column: "longestGap",
    what: "No gap, although places without a spur were counted.",
    plant: (farm) => {
      const row = soundCordonWithGap(farm, 5);
      row.longestGap = 0;
      return row;
    },
  },
  {
    code: "unknownRow",
    sheet: "budCuts",
    column: "row",
    what: "A row that the block does not have.",
    plant: change("budCuts", { block: "Creek Side", cane: "9" }, "row", 70),
  },
  {
    code: "deadTrunkLiveCordon",
    sheet: "cordons",
    column: "trunkCondition",
    what: "A trunk called dead that carries a cordon with live spurs.",
    plant: change("cordons", { ...creekSide(5, 20), condition: "sound" }, "trunkCondition", "dead"),
  },
  {
    code: "sameHarvestTwice",
    sheet: "harvest",
    column: "year",
    what: "The same block and year twice.",
    plant: repeat("harvest", { block: "Schoolhouse", year: 2024 }),
  },
  {
    code: "missingVineCounted",
    sheet: "vines",
    column: "prunings",
    what: "A weight of prunings on a vine that is called missing.",
    plant: change("vines", { block: "Schoolhouse", status: "missing" }, "prunings", 1.4),
  },
  {
    code: "sideWithoutCordon",
    sheet: "cordons",
    column: "side",
    what: "Every cordon of the vine is written left.",
    plant: (farm) => {
      const vine = rowsOfVine(farm.cordons, rowWhere(farm.cordons, northBench(6, 22)));
      for (const row of vine) row.side = "left";
      return vine[1];
    },
  },
  {
    code: "harvestUnusual",
    sheet: "harvest",
    column: "picked",
    what: "A harvest ten times too large.",
    plant: change("harvest", { block: "Creek Side", year: 2023 }, "picked", (row) => Number(row.picked) * 10),
  },
  {
    code: "countLeftOut",
    sheet: "cordons",
    column: "diameter",
    what: "The only diameter that nobody wrote down.",
    plant: change("cordons", { ...northBench(7, 8), condition: "sound" }, "diameter", null),
  },
  {
    code: "copiedDown",
    sheet: "cordons",
    column: "",
    what: "A vine filled down from the one before it.",
    plant: (farm) => {
      const one = rowsOfVine(farm.cordons, rowWhere(farm.cordons, northBench(7, 18)));
      const at = farm.cordons.indexOf(one[0]) + one.length;
      const other = rowsOfVine(farm.cordons, farm.cordons[at]);
      const copies = one.map((row) => ({ ...row, vine: other[0].vine }));
      farm.cordons.splice(at, other.length, ...copies);
      return copies[0];
    },
  },
  {
    code: "unknownWord",
    sheet: "blocks",
    column: "nodeRule",
    what: "A node rule that there is none of that name.",
    plant: change("blocks", { block: "Schoolhouse" }, "nodeRule", "by lenght"),
  },
  {
    code: "digitsSwapped",
    sheet: "cordons",
    column: "length",
    what: "Digits exchanged: 1.3 for 3.1.",
    plant: change("cordons", { ...northBench(3, 24), condition: "sound", length: 3.1 }, "length", 1.3),
  },
  {
    code: "settingNotUsable",
    sheet: "settings",
    column: "value",
    what: "A word where a setting needs a number.",
    plant: change("settings", { setting: "Least distance between spurs" }, "value", "two inches"),
  },
  {
    code: "settingUnknown",
    sheet: "settings",
    column: "setting",
    what: "A setting that there is none of that name.",
    plant: (farm) => {
      const row: FarmRow = { setting: "Spur spaceing", value: 5, unit: "in", source: "ours", meaning: null };
      farm.settings.push(row);
      return row;
    },
  },
  {
    code: "settingTwice",
    sheet: "settings",
    column: "setting",
    what: "The same setting twice, so that nobody can tell which value holds.",
    plant: repeat("settings", { setting: "Unlike its block: spread" }),
  },
  {
    code: "trunkNotOfVine",
    sheet: "cordons",
    column: "trunk",
    what: "A third trunk on a vine that has two.",
    plant: (farm) => {
      const isAlone = (row: FarmRow) =>
        row.trunk === 2 && rowsOfVine(farm.cordons, row).filter(({ trunk }) => trunk === 2).length === 1;
      const isSound = (row: FarmRow) =>
        rowsOfVine(farm.vines, row)[0].liveTrunks === 2 &&
        rowsOfVine(farm.cordons, row).every(
          ({ condition, trunk }) => condition === "sound" && Number(trunk) <= 2,
        );
      const row = farm.cordons.find(
        (own) => own.block === "Schoolhouse" && Number(own.row) > 5 && isAlone(own) && isSound(own),
      )!;
      row.trunk = 3;
      return row;
    },
  },
  {
    code: "totalUnlikeParts",
    sheet: "vines",
    column: ALL,
    what: "A total of the farm's own columns, two above what they add up to.",
    plant: (farm) => {
      const vine = vinesWithCanes(farm).find((row) => row.block === "North Bench" && row.row === 2)!;
      vine[ALL] = Number(vine[ALL]) + 2;
      return vine;
    },
  },
  {
    code: "vineWithoutCount",
    sheet: "vines",
    column: "",
    what: "A vine on which no cane was counted, where they were counted on every other.",
    plant: (farm) => {
      const vine = vinesWithCanes(farm).find((row) => row.block === "North Bench" && row.row === 4)!;
      for (const column of OWN_COUNTS) vine[column] = null;
      return vine;
    },
  },
];
