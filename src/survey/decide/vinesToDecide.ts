import type {
  CandidateCordon,
  Condition,
  FixedChoice,
  Training,
  VineToDecide,
} from "../../domain/choice/candidateCordon";
import { metres, metresFromFeet, type Metres } from "../../domain/units";
import type { SettingValues } from "../settings/setting";
import type { Season, SurveyColumn, SurveyTable } from "../season/season";
import { choiceId, NO_PLACE, placeOf, VinePlaces } from "../season/vinePlaces";

/** A vine of the survey, with the sheet rows that its candidates stand in. */
export interface SurveyVine {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  readonly toDecide: VineToDecide;
  /** One for each candidate. */
  readonly rows: readonly { readonly table: SurveyTable; readonly index: number }[];
  /** Counts that cannot be true together and were therefore taken as not written down: "liveSpurs A". */
  readonly contradictions: readonly string[];
}

/**
 * Every vine that has candidate cordons, in the order in which a crew walks: blocks as they first appear, rows and vines
 * by number. Training and vine spacing come from the Blocks sheet, status and live trunks from the Vines sheet. A count
 * that is blank, unreadable or no count at all is left out; counts that contradict each other are left out too, so
 * that nothing is decided by them.
 *
 * @param survey sheets as read; rows that name no block, row and vine are passed over
 */
export function vinesToDecide(season: Season): SurveyVine[] {
  const places = new VinePlaces(season);
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
  const readers = new Map<SurveyTable, (index: number) => ReadCandidate>();
  const readerOf = (table: SurveyTable) => {
    const known = readers.get(table);
    if (known) return known;
    const made = candidateReader(table, season.settings);
    readers.set(table, made);
    return made;
  };
  return [...byVine]
    .map(([key, rows]): SurveyVine & { blockOrder: number } => {
      const place = placeOf(key);
      const read = rows.map(({ table, index }) => readerOf(table)(index));
      return {
        block: season.words.wordOf(place.block),
        row: place.row,
        vine: place.vine,
        toDecide: {
          candidates: read.map(({ candidate }) => candidate),
          ...aroundVine(places, key, season.settings),
        },
        rows,
        contradictions: read.flatMap(({ candidate, contradictions }) =>
          contradictions.map((count) => `${count} ${candidate.cordon}`),
        ),
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
): Omit<VineToDecide, "candidates"> {
  const { block } = placeOf(key);
  const entry = places.blockRows().get(block);
  const trainingColumn = entry?.table.column("training");
  const training = entry && trainingColumn && (choiceId(trainingColumn, entry.index) as Training | undefined);
  const sideLength = wireOfASide(places.blockNumber(block, "vineSpacing"), training, settings);
  const status = places.statusOf(key) as VineToDecide["status"];
  const vine = places.register().get(key);
  const liveTrunks = vine && wholeNumber(vine.table.column("liveTrunks"), vine.index);
  return {
    ...(training ? { training } : {}),
    ...(sideLength === undefined ? {} : { sideLength }),
    ...(status ? { status } : {}),
    ...(liveTrunks === undefined ? {} : { liveTrunks }),
  };
}

/**
 * Half of the vine spacing, or all of it for a single cordon, less the space between neighbouring cordons. In a divided
 * canopy the spacing does not tell how much wire a cordon fills, so there its own length stands alone.
 */
function wireOfASide(
  vineSpacing: number,
  training: Training | undefined,
  settings: SettingValues,
): Metres | undefined {
  if (!(vineSpacing > 0) || training === "divided") return undefined;
  const between = metresFromFeet(Number(settings.get("Space between neighbouring cordons")) / 12);
  const sides = Number(settings.get("Cordons on a vine")) >= 1.5 ? 2 : 1;
  const length = (vineSpacing - between) / sides;
  return length > 0 ? metres(length) : undefined;
}

export interface ReadCandidate {
  readonly candidate: CandidateCordon;
  readonly contradictions: readonly string[];
}

const COUNTS = ["positions", "liveSpurs", "longestGap", "spursDown", "spursLevel", "spursUp"] as const;
const LONGEST_CORDON = 30;
const THICKEST_CORDON = 1;

export function candidateReader(
  table: SurveyTable,
  settings: SettingValues,
): (index: number) => ReadCandidate {
  const columns = {
    side: table.column("side"),
    cordon: table.column("cordon"),
    trunk: table.column("trunk"),
    length: table.column("length"),
    diameter: table.column("diameter"),
    condition: table.column("condition"),
    trunkCondition: table.column("trunkCondition"),
    fixedChoice: table.column("fixedChoice"),
  };
  const counts = COUNTS.map((id) => [id, table.column(id)] as const);
  const blankIsSound = settings.get("Blank condition") === "sound";
  return (index) => {
    const word = (column: SurveyColumn | undefined) => column && choiceId(column, index);
    const letter = columns.cordon?.raw.at(index);
    const condition = word(columns.condition) ?? (blankIsSound ? "sound" : undefined);
    const trunkCondition = word(columns.trunkCondition);
    const fixedChoice = word(columns.fixedChoice);
    const trunk = wholeNumber(columns.trunk, index);
    const length = numberUpTo(columns.length, index, LONGEST_CORDON);
    const diameter = numberUpTo(columns.diameter, index, THICKEST_CORDON);
    const counted: { -readonly [Count in (typeof COUNTS)[number]]?: number } = {};
    for (const [id, column] of counts) {
      const value = wholeNumber(column, index);
      if (value !== undefined) counted[id] = value;
    }
    const contradictions = contradictionsIn(counted);
    for (const count of contradictions) delete counted[count];
    return {
      candidate: {
        side: word(columns.side) ?? "",
        cordon:
          typeof letter === "string" || typeof letter === "number" ? String(letter).trim() : `#${index + 1}`,
        ...(trunk !== undefined && trunk >= 1 && trunk <= 99 ? { trunk } : {}),
        ...(length === undefined ? {} : { length: metres(length) }),
        ...counted,
        ...(diameter === undefined ? {} : { diameter: metres(diameter) }),
        ...(condition ? { condition: condition as Condition } : {}),
        ...(trunkCondition ? { trunkCondition: trunkCondition as Condition } : {}),
        ...(fixedChoice ? { fixedChoice: fixedChoice as FixedChoice } : {}),
      },
      contradictions,
    };
  };
}

const DIRECTIONS = ["spursDown", "spursLevel", "spursUp"] as const;

/** Counts of one cordon that cannot be true together: neither is known to be the right one. */
function contradictionsIn(
  counted: Readonly<Partial<Record<(typeof COUNTS)[number], number>>>,
): (typeof COUNTS)[number][] {
  const { positions, liveSpurs, longestGap } = counted;
  const wrong = new Set<(typeof COUNTS)[number]>();
  if (positions !== undefined && liveSpurs !== undefined && liveSpurs > positions)
    wrong.add("positions").add("liveSpurs");
  const pointing = DIRECTIONS.reduce((sum, way) => sum + (counted[way] ?? 0), 0);
  if (liveSpurs !== undefined && pointing > liveSpurs) {
    wrong.add("liveSpurs");
    DIRECTIONS.forEach((way) => wrong.add(way));
  }
  const empty = wrong.has("positions") || positions === undefined ? Infinity : positions - (liveSpurs ?? 0);
  if (longestGap !== undefined && longestGap > empty) wrong.add("longestGap");
  return [...wrong].filter((count) => counted[count] !== undefined);
}

function wholeNumber(column: SurveyColumn | undefined, index: number): number | undefined {
  const value = column?.numbers[index];
  return value !== undefined && Number.isInteger(value) && value >= 0 && value <= 500 ? value : undefined;
}

function numberUpTo(column: SurveyColumn | undefined, index: number, most: number): number | undefined {
  const value = column?.numbers[index];
  return value !== undefined && value >= 0 && value <= most ? value : undefined;
}
