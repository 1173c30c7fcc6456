import { creekSide, northBench, schoolhouse } from "./places";
import { serialDay } from "../inventedFarm";
import type { RandomSource } from "../randomSource";
import type { SeasonSheet } from "../season";
import type { FarmRow } from "../farm";
import { grown, has, num, rounded, type Change, type Field, type InSample, type Mistake } from "./mistake";
import type { SheetId } from "../../../src/survey/sheets/column";

interface Where {
  readonly sheet?: SheetId;
  readonly fits?: (row: FarmRow, sheet: SeasonSheet) => boolean;
  /** Columns without which nobody can make the mistake. */
  readonly needs?: readonly string[];
  readonly also?: string;
}

/** A mistake in one row; of the cordons unless another sheet is named, and there on one that carries some spurs. */
function inRow(
  code: string,
  change: Change,
  { sheet: id = "cordons", fits = id === "cordons" ? grown : () => true, needs = [], also }: Where = {},
  ...inSample: readonly InSample[]
): Mistake {
  return {
    code,
    also,
    group: "cell",
    inSample,
    plant(season, field) {
      const sheet = season[id];
      const row = has(sheet, ...needs) ? field.row(sheet, (own) => fits(own, sheet)) : undefined;
      if (!row) return undefined;
      change(row, field, season);
      return { sheet, rows: [row] };
    },
  };
}

const sound = { condition: "sound", trunkCondition: "sound" };

/** Swapped neighbours, a letter left out or doubled: what fingers do to a word. */
function mistyped(word: string, random: RandomSource): string {
  const letters = [...word].flatMap((letter, at) =>
    at > 0 && at < word.length - 1 && letter !== " " ? [at] : [],
  );
  const at = random.oneOf(letters);
  const slip = random.whole(0, 2);
  const typed =
    slip === 0
      ? word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2)
      : slip === 1
        ? word.slice(0, at) + word.slice(at + 1)
        : word.slice(0, at) + word[at] + word.slice(at);
  return typed === word ? word.slice(0, -1) : typed;
}

const WRONG_WORDS: Readonly<Record<string, readonly string[]>> = {
  side: ["lfet", "up", "x", "mid"],
  condition: ["so-so", "weak", "??"],
};

function beyondLimits(row: FarmRow, field: Field): void {
  const id = field.column("liveSpurs", "positions", "length", "trunk");
  if (id === "positions")
    row.positions = Number(`${row.positions}${field.random.whole(0, 9)}${row.positions}`);
  else if (id === "length") row.length = rounded(num(row, "length") * 10, 0) + 1;
  else if (id === "trunk") row.trunk = 0;
  else row[id] = -num(row, id);
}

/** Mistakes in single cells and rows. */
export const CELL_MISTAKES: readonly Mistake[] = [
  inRow(
    "missingValue",
    (row, field) => {
      row[field.column("positions", "liveSpurs", "length", "side", "trunk", "cordon")] = null;
    },
    {},
    { what: "Live spurs left blank.", column: "liveSpurs", at: northBench(1, 4) },
  ),
  inRow(
    "numberAsText",
    (row, field) => {
      const id = field.column("positions", "liveSpurs", "length", "trunk", "longestGap");
      row[id] = id === "length" ? String(row[id]).replace(".", ",") : `${row[id]}`;
    },
    { fits: (row) => grown(row) && row.longestGap !== null },
    {
      what: "The number is text, so a spreadsheet does not count it.",
      column: "longestGap",
      at: northBench(2, 3),
    },
  ),
  inRow(
    "notANumber",
    (row, field) => {
      row[field.column("positions", "liveSpurs", "length")] = field.random.oneOf([
        "7?",
        "ca. 8",
        "n/a",
        "-",
        "8 or 9",
      ]);
    },
    {},
    { what: "Words where the number of positions belongs.", column: "positions", at: northBench(1, 9) },
  ),
  inRow(
    "notADate",
    (row, { random }) => {
      row.countedOn = random.oneOf(["3/4/26", "Feb", "Tuesday", "02/03/2026", "31.2.2026"]);
    },
    {},
    {
      what: "No date, or one as text that can be read in more than one way.",
      column: "countedOn",
      at: creekSide(6, 9),
    },
  ),
  inRow(
    "unknownWord",
    (row, field) => {
      const id = field.column("side", "condition");
      row[id] = field.random.oneOf(WRONG_WORDS[id]);
    },
    {},
    { what: "A side that is none of the accepted words.", column: "side", at: creekSide(2, 8) },
  ),
  inRow(
    "errorCell",
    (row, field) => {
      const error = field.random.oneOf(["#DIV/0!", "#N/A", "#VALUE!"]);
      row[field.column("positions", "liveSpurs", "length")] = { error };
    },
    {},
    {
      what: "A formula that fails stands where the length belongs.",
      column: "length",
      at: creekSide(2, 17),
    },
  ),
  inRow(
    "outsideLimits",
    beyondLimits,
    { fits: (row) => grown(row) && num(row, "length") >= 2 },
    { what: "A count below zero.", column: "liveSpurs", at: northBench(2, 12) },
  ),
  inRow(
    "notWhole",
    (row, field) => {
      row[field.column("positions", "liveSpurs", "trunk")] = field.random.whole(1, 7) + 0.5;
    },
    {},
    { what: "A trunk number with a fraction.", column: "trunk", at: northBench(3, 5) },
  ),
  inRow(
    "spursAbovePositions",
    (row, { random }) => {
      const more = num(row, "positions") + random.whole(1, 3) - num(row, "liveSpurs");
      row.liveSpurs = num(row, "liveSpurs") + more;
      row.spursDown = num(row, "spursDown") + more;
      row.longestGap = 0;
    },
    {},
    { what: "More live spurs than places for one.", column: "liveSpurs", at: northBench(3, 18) },
  ),
  inRow(
    "gapTooLong",
    (row, { random }) => {
      row.longestGap = num(row, "positions") - num(row, "liveSpurs") + random.whole(1, 3);
    },
    {},
    {
      what: "A longer gap than there are places without a spur.",
      column: "longestGap",
      at: { ...northBench(4, 7), ...sound },
    },
  ),
  inRow(
    "gapBeyondEnd",
    (row, { random }) => {
      row.gapFrom = num(row, "positions") - num(row, "longestGap") + random.whole(1, 4);
    },
    { fits: (row) => num(row, "longestGap") >= 1 },
    {
      what: "A gap that begins so far out that it ends beyond the cordon.",
      column: "gapFrom",
      at: { block: "Creek Side", row: 4, ...sound },
    },
  ),
  inRow(
    "gapTooShort",
    (row, { random }) => {
      const missing = num(row, "positions") - num(row, "liveSpurs");
      row.longestGap = random.whole(0, Math.ceil(missing / (num(row, "liveSpurs") + 1)) - 1);
    },
    { fits: (row) => num(row, "positions") - num(row, "liveSpurs") >= 1 && num(row, "liveSpurs") >= 1 },
    {
      what: "No gap, or one too short for the places without a spur that were counted.",
      column: "longestGap",
      at: { block: "Creek Side", row: 5, ...sound },
    },
  ),
  inRow(
    "directionsDoNotAddUp",
    (row, { random }) => {
      const id = random.oneOf(["spursDown", "spursLevel", "spursUp"]);
      row[id] = num(row, id) + random.whole(1, 2) * (num(row, id) >= 2 && random.chance(0.5) ? -1 : 1);
    },
    { needs: ["spursDown", "spursLevel", "spursUp"] },
    {
      what: "Spurs down, level and up do not add up to the live spurs.",
      column: "liveSpurs",
      at: { ...northBench(4, 21), ...sound },
    },
  ),
  inRow(
    "spursTooClose",
    (row, { random }) => {
      row.positions = Math.min(60, Math.floor((num(row, "length") * 12) / 2) + 2 + random.whole(0, 10));
    },
    {},
    {
      what: "More positions than fit on a cordon of that length.",
      column: "positions",
      at: { ...northBench(5, 6), ...sound },
    },
  ),
  inRow(
    "deadWithSpurs",
    (row) => (row.condition = "dead"),
    {},
    { what: "A dead cordon with live spurs.", column: "condition", at: { ...creekSide(1, 15), ...sound } },
  ),
  inRow(
    "deadTrunkLiveCordon",
    (row) => (row.trunkCondition = "dead"),
    { needs: ["trunkCondition"] },
    {
      what: "A trunk called dead that carries a cordon with live spurs.",
      column: "trunkCondition",
      at: { ...creekSide(5, 20), ...sound },
    },
  ),
  inRow(
    "deadCordonStays",
    (row) => (row.fixedChoice = "stays"),
    { fits: (row) => row.condition === "dead" || row.liveSpurs === 0 },
    {
      what: "A dead cordon that somebody has decided to keep.",
      column: "fixedChoice",
      at: { block: "Schoolhouse", condition: "dead" },
    },
  ),
  inRow(
    "sickCordonStays",
    (row) => (row.fixedChoice = "stays"),
    { fits: (row) => row.condition === "diseased" && num(row, "liveSpurs") > 0 },
    {
      what: "A diseased cordon that somebody has decided to keep.",
      column: "fixedChoice",
      at: { block: "Schoolhouse" },
    },
  ),
  inRow(
    "diameterUnusual",
    (row, { random }) => {
      row.diameter = random.chance(0.5) ? random.number(0.05, 0.2, 2) : random.number(3.2, 5.5, 1);
    },
    { needs: ["diameter"] },
    {
      what: "A cordon thinner or thicker than any that carries spurs.",
      column: "diameter",
      at: { ...schoolhouse(1, 4), ...sound },
    },
  ),
  inRow(
    "countLeftOut",
    (row) => (row.diameter = null),
    { fits: (row, { rows }) => grown(row) && rows.every(({ diameter }) => typeof diameter === "number") },
    {
      what: "The only diameter that nobody wrote down.",
      column: "diameter",
      at: { ...northBench(7, 8), ...sound },
    },
  ),
  inRow(
    "nodesUnusual",
    (row, { random }) => (row.nodesPerSpur = random.whole(5, 12)),
    { needs: ["nodesPerSpur"] },
    {
      what: "Many more nodes on a spur than the two that are cut.",
      column: "nodesPerSpur",
      at: { ...schoolhouse(1, 10), ...sound },
    },
  ),
  inRow(
    "trunksUnusual",
    (row, { random }) => (row.trunk = random.whole(5, 8)),
    {},
    {
      what: "A fifth trunk or a later one, which no vine here has.",
      column: "trunk",
      at: { ...schoolhouse(3, 6), ...sound },
    },
  ),
  inRow(
    "unknownBlock",
    (row, { random }) => (row.block = mistyped(String(row.block), random)),
    {},
    { what: "A block that the Blocks sheet does not have.", column: "block", at: northBench(5, 16) },
  ),
  inRow(
    "unknownRow",
    (row, { random }) => (row.row = num(row, "row") * 10 + random.whole(1, 9) + 10),
    {},
    { what: "A row that the block does not have.", column: "row", at: creekSide(7, 12) },
  ),
  inRow(
    "unknownVine",
    (row, { random }) => (row.vine = num(row, "vine") + random.whole(4, 9) * 10),
    {},
    { what: "A vine number past the end of the row.", column: "vine", at: northBench(7, 29) },
  ),
  inRow("dateInFuture", (row, { season }) => {
    row.countedOn = season.today + 1 + (num(row, "vine") % 9) * 40;
  }),
  inRow(
    "dateOtherYear",
    (row, { random }) => {
      row.countedOn = serialDay(random.oneOf([2024, 2025]), random.whole(1, 3), random.whole(1, 28));
    },
    {},
    { what: "A year of before still in the date.", column: "countedOn", at: schoolhouse(4, 12) },
  ),
  inRow(
    "dateOutOfSeason",
    (row, { random }) => {
      row.countedOn = serialDay(2025, 10, random.whole(1, 28));
    },
    {},
    {
      what: "A count of dormant cordons dated in October, before leaf fall.",
      column: "countedOn",
      at: schoolhouse(5, 8),
    },
  ),
  inRow(
    "dateOutOfWalkOrder",
    (row, { random }) => {
      const day = num(row, "countedOn") + random.whole(3, 25) * (random.chance(0.5) ? 1 : -1);
      row.countedOn = Math.max(day, serialDay(2025, 11, 2));
    },
    { fits: (row) => num(row, "vine") > 3 && num(row, "vine") < 14 },
  ),
  inRow(
    "outsideLimits",
    (row) => (row.prunings = 88),
    { sheet: "vines", fits: ({ prunings }) => typeof prunings === "number" },
    {
      what: "A weight of prunings that no vine gives.",
      column: "prunings",
      at: { block: "Schoolhouse", row: 2 },
    },
  ),
  inRow(
    "unlikeItsBlock",
    (row, field) => {
      const counted = (["prunings", "clusters"] as const).filter((id) => typeof row[id] === "number");
      const id = field.column(...counted);
      row[id] = rounded(num(row, id) * field.random.oneOf([0.1, 10]), id === "clusters" ? 0 : 2);
    },
    {
      sheet: "vines",
      fits: (row) => num(row, "prunings") < 4.4 && (num(row, "prunings") > 0 || num(row, "clusters") > 0),
      also: "unitSlip",
    },
    {
      what: "A weight ten times too small or too large: the decimal point has slipped.",
      column: "prunings",
      at: { block: "Creek Side", clusters: null },
    },
  ),
  inRow(
    "missingVineCounted",
    (row, field) => {
      const id = field.column("prunings", "shoots");
      row[id] = id === "shoots" ? 31 : 1.4;
    },
    { sheet: "vines", fits: ({ status }) => status === "missing" },
    {
      what: "Shoots counted on a vine that is called missing.",
      column: "shoots",
      at: { block: "Creek Side" },
    },
    {
      what: "A weight of prunings on a vine that is called missing.",
      column: "prunings",
      at: { block: "Schoolhouse" },
    },
  ),
  inRow(
    "missingAsZero",
    (row, field) => (row[field.column("clusters", "shoots", "prunings")] = 0),
    { sheet: "vines", fits: ({ status }) => status === "missing" },
    {
      what: "A missing vine counted with no clusters, so that the block would lose it twice.",
      column: "clusters",
      at: { block: "North Bench" },
    },
  ),
  inRow(
    "harvestUnusual",
    (row) => (row.picked = num(row, "picked") * 10),
    { sheet: "harvest" },
    { what: "A harvest ten times too large.", column: "picked", at: { block: "Creek Side", year: 2023 } },
  ),
  inRow(
    "aliveAboveCut",
    (row, { random }) => {
      row.primariesAlive = num(row, "nodesCut") + random.whole(1, 3);
      row.secondariesAlive = row.primariesAlive;
    },
    { sheet: "budCuts" },
    {
      what: "More live primaries than nodes cut.",
      column: "primariesAlive",
      at: { block: "Schoolhouse", cane: "3" },
    },
  ),
  inRow(
    "placesDiffer",
    (row, { random }) => {
      row.vines = num(row, "vines") + random.oneOf([-10, -1, 1, 5, 100]);
    },
    { sheet: "blocks" },
    {
      what: "More or fewer vine places than the Vines sheet lists.",
      column: "vines",
      at: { block: "Schoolhouse" },
    },
  ),
  inRow(
    "settingNotUsable",
    (row, { random }) => (row.value = random.oneOf(["two inches", "about 5", "see below"])),
    { sheet: "settings", fits: ({ value }) => typeof value === "number" },
    {
      what: "Words where a setting needs a number.",
      column: "value",
      at: { setting: "Least distance between spurs" },
    },
  ),
  inRow(
    "settingUnknown",
    (row, { random }) => (row.setting = mistyped(String(row.setting), random)),
    { sheet: "settings" },
    {
      what: "A setting that there is none of that name.",
      column: "setting",
      at: { setting: "Spur spacing" },
    },
  ),
];
