import type {
  CandidateCordon,
  Condition,
  FixedChoice,
  VineToDecide,
} from "../../domain/choice/candidateCordon";
import { metres } from "../../domain/units";
import type { SettingValues } from "../settings/settings";
import { cellName } from "../sheets/cellName";
import type { Season, SurveyColumn, SurveyTable } from "../season/season";
import type { RowFault } from "../season/usedRows";
import { winterOfSeason } from "../season/winterOfSeason";
import { youngVines } from "../season/youngVines";
import { sideOfVine } from "../season/sideOfVine";
import type { VinePlaces } from "../season/vinePlaces";
import { choiceId, NO_PLACE, placeOf } from "../season/vinePlaces";

/** A vine of the survey, with the sheet rows that its candidates stand in. */
export interface SurveyVine {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  readonly toDecide: VineToDecide;
  /** One for each candidate. */
  readonly rows: readonly { readonly table: SurveyTable; readonly index: number }[];
  /** Cells for which the vine must be counted again before it is decided. */
  readonly recount: readonly RowFault[];
}

/**
 * Every vine that has candidate cordons, in the order in which a crew walks: blocks as they first appear, rows and vines
 * by number. Training and vine spacing come from the Blocks sheet, status, live trunks and the year planted of a young vine from the Vines sheet. A cell that
 * is blank or cannot be used is left out; a vine with a row that cannot be used is to be recounted.
 *
 * @param survey sheets as read; rows that name no block, row and vine are passed over
 */
export function vinesToDecide(season: Season): SurveyVine[] {
  const places = season.places;
  const winter = winterOfSeason(season);
  const yearOf = youngVines(season);
  const byVine = new Map<number, { table: SurveyTable; index: number }[]>();
  for (const table of season.tables("cordons")) {
    const keys = places.keysOf(table);
    for (let index = 0; index < keys.length; index++) {
      if (keys[index] === NO_PLACE) continue;
      const rows = byVine.get(keys[index]);
      if (rows) rows.push({ table, index });
      else byVine.set(keys[index], [{ table, index }]);
    }
  }
  const blockOrder = new Map<number, number>();
  for (const key of byVine.keys()) {
    const { block } = placeOf(key);
    if (!blockOrder.has(block)) blockOrder.set(block, blockOrder.size);
  }
  const readers = new Map<SurveyTable, (index: number) => CandidateCordon>();
  const readerOf = (table: SurveyTable) => {
    const known = readers.get(table);
    if (known) return known;
    const made = candidateReader(table, season.settings, winter);
    readers.set(table, made);
    return made;
  };
  return [...byVine]
    .map(([key, rows]): SurveyVine & { blockOrder: number } => {
      const place = placeOf(key);
      const recount = season.used.faultsOf(key);
      return {
        block: season.words.wordOf(place.block),
        row: place.row,
        vine: place.vine,
        toDecide: {
          candidates: rows.map(({ table, index }) => readerOf(table)(index)),
          ...aroundVine(places, key, season.settings, yearOf(key)),
          ...(recount.length === 0 ? {} : { recount: recount.map(cellOfFault) }),
        },
        rows,
        recount,
        blockOrder: blockOrder.get(place.block)!,
      };
    })
    .sort(
      (first, second) =>
        first.blockOrder - second.blockOrder || first.row - second.row || first.vine - second.vine,
    );
}

/** What the other sheets say of a vine. */
function aroundVine(
  places: VinePlaces,
  key: number,
  settings: SettingValues,
  yearOfGrowth: VineToDecide["yearOfGrowth"],
): Omit<VineToDecide, "candidates"> {
  const { block } = placeOf(key);
  const { training, wire } = sideOfVine(places, block, settings);
  const status = places.statusOf(key) as VineToDecide["status"];
  const vine = places.register().get(key);
  const liveTrunks = vine && numberAt(vine.table.column("liveTrunks"), vine.index);
  return {
    ...(training ? { training } : {}),
    ...(wire === undefined ? {} : { sideLength: wire }),
    ...(status ? { status } : {}),
    ...(yearOfGrowth ? { yearOfGrowth } : {}),
    ...(liveTrunks === undefined ? {} : { liveTrunks }),
  };
}

function cellOfFault({ sheet, sheetRow, sheetColumn }: RowFault): string {
  return `${sheet} ${cellName(sheetRow, sheetColumn)}`;
}

const COUNTS = [
  "positions",
  "liveSpurs",
  "longestGap",
  "gapFrom",
  "canesNearHead",
  "spursDown",
  "spursLevel",
  "spursUp",
] as const;

/**
 * Reads the candidate in a row of a Cordons table; cells that are blank or cannot be used are left out.
 *
 * @param winter year in which the winter of the counts ends, from which a trunk's age is known; 0 where no date tells
 */
export function candidateReader(
  table: SurveyTable,
  settings: SettingValues,
  winter = 0,
): (index: number) => CandidateCordon {
  const columns = {
    side: table.column("side"),
    cordon: table.column("cordon"),
    trunk: table.column("trunk"),
    length: table.column("length"),
    diameter: table.column("diameter"),
    spurHeight: table.column("spurHeight"),
    condition: table.column("condition"),
    trunkCondition: table.column("trunkCondition"),
    trunkYear: table.column("trunkYear"),
    fixedChoice: table.column("fixedChoice"),
  };
  const counts = COUNTS.map((id) => [id, table.column(id)] as const);
  const blankIsSound = settings.blankCondition === "sound";
  return (index) => {
    const word = (column: SurveyColumn | undefined) => column && choiceId(column, index);
    const letter = columns.cordon?.raw.at(index);
    const name = typeof letter === "string" || typeof letter === "number" ? String(letter).trim() : "";
    const condition = word(columns.condition) ?? (blankIsSound ? "sound" : undefined);
    const trunkCondition = word(columns.trunkCondition);
    const fixedChoice = word(columns.fixedChoice);
    const trunk = numberAt(columns.trunk, index);
    const trunkYear = numberAt(columns.trunkYear, index);
    const length = numberAt(columns.length, index);
    const diameter = numberAt(columns.diameter, index);
    const spurHeight = numberAt(columns.spurHeight, index);
    const counted: { -readonly [Count in (typeof COUNTS)[number]]?: number } = {};
    for (const [id, column] of counts) {
      const value = numberAt(column, index);
      if (value !== undefined) counted[id] = value;
    }
    return {
      side: word(columns.side) ?? "",
      cordon: name === "" ? `#${index + 1}` : name,
      ...(trunk === undefined ? {} : { trunk }),
      ...(length === undefined ? {} : { length: metres(length) }),
      ...counted,
      ...(diameter === undefined ? {} : { diameter: metres(diameter) }),
      ...(spurHeight === undefined ? {} : { spurHeight: metres(spurHeight) }),
      ...(condition ? { condition: condition as Condition } : {}),
      ...(trunkCondition ? { trunkCondition: trunkCondition as Condition } : {}),
      ...(trunkYear === undefined || trunkYear > winter ? {} : { trunkAge: winter - trunkYear }),
      ...(fixedChoice && fixedChoice !== "recount" ? { fixedChoice: fixedChoice as FixedChoice } : {}),
    };
  };
}

function numberAt(column: SurveyColumn | undefined, index: number): number | undefined {
  const value = column?.usable[index];
  return Number.isNaN(value) ? undefined : value;
}
