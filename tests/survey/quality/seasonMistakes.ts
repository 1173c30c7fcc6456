import type { RandomSource } from "../../../sample-workbooks/make/randomSource";
import { serialOf } from "../../../src/survey/reading/serialDate";
import type { Season, WinterRow, SeasonSheet } from "./plausibleSeason";

/** Where a planted mistake ended up. */
export interface Planted {
  readonly sheet: SeasonSheet;
  /** Rows of the sheet, one of which the finding must name; none for a finding at the headers. */
  readonly rows: readonly WinterRow[];
}

/** A realistic mistake of one kind. */
export interface SeasonMistake {
  /** Code of the finding that must name it. */
  readonly code: string;
  /** Another kind that says the same as rightly: a weight ten times too large may as well be ounces. */
  readonly also?: string;
  /** Mistakes of different groups are planted in different copies of a season: cells, stretches, whole sheets. */
  readonly group: "cell" | "vine" | "stretch" | "sheet";
  /** Makes the mistake on rows that carry none yet; undefined where this season offers no place for it. */
  plant(season: Season, field: Field): Planted | undefined;
}

/** Picks rows at random, each only once, so that two mistakes do not hide each other. */
export class Field {
  private readonly taken = new Set<string>();
  private readonly changed = new WeakSet<WinterRow>();

  constructor(
    readonly season: Season,
    readonly random: RandomSource,
  ) {}

  /** A row of the sheet whose vine carries no mistake yet. */
  row(sheet: SeasonSheet, fits: (row: WinterRow) => boolean = () => true): WinterRow | undefined {
    const row = this.quickly(sheet, fits) ?? this.thoroughly(sheet, fits);
    if (!row) return undefined;
    this.take(sheet, row);
    return row;
  }

  private quickly(sheet: SeasonSheet, fits: (row: WinterRow) => boolean): WinterRow | undefined {
    for (let attempt = 0; attempt < 30 && sheet.rows.length > 0; attempt++) {
      const row = this.random.oneOf(sheet.rows);
      if (this.isFree(sheet, row) && fits(row)) return row;
    }
    return undefined;
  }

  private thoroughly(sheet: SeasonSheet, fits: (row: WinterRow) => boolean): WinterRow | undefined {
    const free = sheet.rows.filter((row) => this.isFree(sheet, row) && fits(row));
    return free.length === 0 ? undefined : this.random.oneOf(free);
  }

  take(sheet: SeasonSheet, row: WinterRow): void {
    this.taken.add(this.keyOf(sheet, row));
    this.changed.add(row);
  }

  isFree(sheet: SeasonSheet, row: WinterRow): boolean {
    return !this.changed.has(row) && !this.taken.has(this.keyOf(sheet, row));
  }

  /** A run of cordon rows of one row of the vineyard, none of which carries a mistake. */
  stretch(least: number, most: number): WinterRow[] | undefined {
    const { rows } = this.season.cordons;
    const wanted = this.random.whole(least, most);
    for (let attempt = 0; attempt < 40; attempt++) {
      const first = this.random.whole(0, Math.max(0, rows.length - wanted));
      const run = rows.slice(first, first + wanted);
      const [head] = run;
      const together = run.every((row) => row.block === head.block && row.row === head.row);
      if (run.length < wanted || !together) continue;
      if (run.some((row) => !this.isFree(this.season.cordons, row))) continue;
      for (const row of run) this.take(this.season.cordons, row);
      return run;
    }
    return undefined;
  }

  private keyOf(sheet: SeasonSheet, row: WinterRow): string {
    const place = sheet.shape === "cordons" || sheet.shape === "vines" ? "vine" : sheet.name;
    return row.vine
      ? `${place} ${row.block} ${row.row} ${row.vine}`
      : `${sheet.name} ${sheet.rows.indexOf(row)}`;
  }
}

type Change = (row: WinterRow, field: Field, season: Season) => void;

const num = (row: WinterRow, id: string) => Number(row[id]);
const grown = (row: WinterRow) => num(row, "liveSpurs") >= 3 && num(row, "positions") >= 5;
const has = (sheet: SeasonSheet, ...ids: string[]) => ids.every((id) => sheet.columns.includes(id));

/** A mistake in one row of the cordon sheet. */
function inCordon(
  code: string,
  change: Change,
  fits: (row: WinterRow) => boolean = grown,
  needs: readonly string[] = [],
): SeasonMistake {
  return {
    code,
    group: "cell",
    plant(season, field) {
      if (!has(season.cordons, ...needs)) return undefined;
      const row = field.row(season.cordons, fits);
      if (!row) return undefined;
      change(row, field, season);
      return { sheet: season.cordons, rows: [row] };
    },
  };
}

/** A mistake in one row of another sheet. */
function inSheet(
  code: string,
  id: "vines" | "blocks" | "budCuts" | "harvest",
  change: Change,
  fits: (row: WinterRow) => boolean = () => true,
  group: SeasonMistake["group"] = "cell",
): SeasonMistake {
  return {
    code,
    group,
    plant(season, field) {
      const row = field.row(season[id], fits);
      if (!row) return undefined;
      change(row, field, season);
      return { sheet: season[id], rows: [row] };
    },
  };
}

const vineKey = (row: WinterRow, step = 0) => `${row.block} ${row.row} ${num(row, "vine") + step}`;

/** The rows of each vine as the season stood before any mistake. */
const indexes = new WeakMap<Season, { vines: Map<string, WinterRow>; cordons: Map<string, WinterRow[]> }>();

function indexOf(season: Season) {
  const known = indexes.get(season);
  if (known) return known;
  const cordons = new Map<string, WinterRow[]>();
  for (const row of season.cordons.rows)
    cordons.set(vineKey(row), [...(cordons.get(vineKey(row)) ?? []), row]);
  const index = { vines: new Map(season.vines.rows.map((row) => [vineKey(row), row])), cordons };
  indexes.set(season, index);
  return index;
}

function statusOf(season: Season, row: WinterRow, step = 0): string | undefined {
  return indexOf(season).vines.get(vineKey(row, step))?.status as string | undefined;
}

const rowsOfVine = (season: Season, vine: WinterRow) => indexOf(season).cordons.get(vineKey(vine)) ?? [];

const bearing = (season: Season) => (row: WinterRow) => grown(row) && statusOf(season, row) === "bearing";
const withoutGap = (season: Season) => (row: WinterRow) =>
  bearing(season)(row) && statusOf(season, row, 1) !== "missing" && statusOf(season, row, -1) !== "missing";

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

function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}

/** Mistakes in single cells and rows. */
const CELL_MISTAKES: readonly SeasonMistake[] = [
  inCordon("missingValue", (row, { random }) => {
    row[random.oneOf(["positions", "liveSpurs", "length", "side", "trunk", "cordon"])] = null;
  }),
  inCordon("numberAsText", (row, { random }) => {
    const id = random.oneOf(["positions", "liveSpurs", "length", "trunk"]);
    row[id] = id === "length" ? String(row[id]).replace(".", ",") : `${row[id]}`;
  }),
  inCordon("notANumber", (row, { random }) => {
    row[random.oneOf(["positions", "liveSpurs", "length"])] = random.oneOf([
      "7?",
      "ca. 8",
      "n/a",
      "-",
      "8 or 9",
    ]);
  }),
  inCordon("notADate", (row, { random }) => {
    row.countedOn = random.oneOf(["3/4/26", "Feb", "Tuesday", "02/03/2026", "31.2.2026"]);
  }),
  inCordon("unknownWord", (row, { random }) => {
    if (random.chance(0.5)) row.side = random.oneOf(["lfet", "up", "x", "mid"]);
    else row.condition = random.oneOf(["so-so", "weak", "??"]);
  }),
  inCordon("errorCell", (row, { random }) => {
    row[random.oneOf(["positions", "liveSpurs", "length"])] = {
      error: random.oneOf(["#N/A", "#VALUE!", "#REF!"]),
    };
  }),
  inCordon(
    "outsideLimits",
    (row, { random }) => {
      const slip = random.whole(0, 3);
      if (slip === 0) row.liveSpurs = -num(row, "liveSpurs");
      else if (slip === 1) row.positions = Number(`${row.positions}${random.whole(0, 9)}${row.positions}`);
      else if (slip === 2) row.length = rounded(num(row, "length") * 10, 0) + 1;
      else row.trunk = 0;
    },
    (row) => grown(row) && num(row, "length") >= 2,
  ),
  inCordon("notWhole", (row, { random }) => {
    row[random.oneOf(["positions", "liveSpurs", "trunk"])] = random.whole(1, 7) + 0.5;
  }),
  inCordon("spursAbovePositions", (row, { random }) => {
    row.liveSpurs = num(row, "positions") + random.whole(1, 3);
  }),
  inCordon("gapTooLong", (row, { random }) => {
    row.longestGap = num(row, "positions") - num(row, "liveSpurs") + random.whole(1, 3);
  }),
  inCordon(
    "gapBeyondEnd",
    (row, { random }) => {
      row.gapFrom = num(row, "positions") - num(row, "longestGap") + random.whole(1, 4);
    },
    (row) => num(row, "longestGap") >= 1,
  ),
  inCordon(
    "gapTooShort",
    (row, { random }) => {
      const missing = num(row, "positions") - num(row, "liveSpurs");
      row.longestGap = random.whole(0, Math.ceil(missing / (num(row, "liveSpurs") + 1)) - 1);
    },
    (row) => num(row, "positions") - num(row, "liveSpurs") >= 1 && num(row, "liveSpurs") >= 1,
  ),
  inCordon(
    "directionsDoNotAddUp",
    (row, { random }) => {
      const id = random.oneOf(["spursDown", "spursLevel", "spursUp"]);
      row[id] = num(row, id) + random.whole(1, 2) * (num(row, id) >= 2 && random.chance(0.5) ? -1 : 1);
    },
    grown,
    ["spursDown", "spursLevel", "spursUp"],
  ),
  inCordon("spursTooClose", (row, { random }) => {
    row.positions = Math.min(60, Math.floor((num(row, "length") * 12) / 2) + 2 + random.whole(0, 10));
  }),
  inCordon("deadWithSpurs", (row) => (row.condition = "dead")),
  inCordon("deadTrunkLiveCordon", (row) => (row.trunkCondition = "dead"), grown, ["trunkCondition"]),
  inCordon(
    "deadCordonStays",
    (row) => (row.fixedChoice = "stays"),
    (row) => row.condition === "dead" || row.liveSpurs === 0,
  ),
  inCordon(
    "sickCordonStays",
    (row) => (row.fixedChoice = "stays"),
    (row) => row.condition === "diseased" && num(row, "liveSpurs") > 0,
  ),
  inCordon(
    "diameterUnusual",
    (row, { random }) => {
      row.diameter = random.chance(0.5) ? random.number(0.05, 0.2, 2) : random.number(3.2, 5.5, 1);
    },
    grown,
    ["diameter"],
  ),
  inCordon("nodesUnusual", (row, { random }) => (row.nodesPerSpur = random.whole(5, 12)), grown, [
    "nodesPerSpur",
  ]),
  inCordon("trunksUnusual", (row, { random }) => (row.trunk = random.whole(5, 8))),
  inCordon("unknownBlock", (row, { random }) => (row.block = mistyped(String(row.block), random))),
  inCordon("unknownRow", (row, { random }) => (row.row = num(row, "row") * 10 + random.whole(1, 9) + 10)),
  inCordon("unknownVine", (row, { random }) => (row.vine = num(row, "vine") + random.whole(4, 9) * 10)),
  inCordon("dateInFuture", (row, { season }) => {
    row.countedOn = season.today + 1 + (num(row, "vine") % 9) * 40;
  }),
  inCordon("dateOtherYear", (row, { random }) => {
    row.countedOn = serialOf(random.oneOf([2024, 2025]), random.whole(1, 3), random.whole(1, 28))!;
  }),
  inCordon("dateOutOfSeason", (row, { random }) => {
    row.countedOn = serialOf(2025, 10, random.whole(1, 28))!;
  }),
  inCordon(
    "dateOutOfWalkOrder",
    (row, { random }) => {
      const day = num(row, "countedOn") + random.whole(3, 25) * (random.chance(0.5) ? 1 : -1);
      row.countedOn = Math.max(day, serialOf(2025, 11, 2)!);
    },
    (row) => num(row, "vine") > 3 && num(row, "vine") < 14,
  ),
  inSheet(
    "outsideLimits",
    "vines",
    (row) => (row.prunings = 88),
    (row) => typeof row.prunings === "number",
  ),
  {
    ...inSheet(
      "unlikeItsBlock",
      "vines",
      (row, { random }) => {
        const id = random.oneOf(["prunings", "clusters"].filter((own) => typeof row[own] === "number"));
        row[id] = rounded(num(row, id) * random.oneOf([0.1, 10]), id === "clusters" ? 0 : 2);
      },
      (row) => num(row, "prunings") < 4.4 && (num(row, "prunings") > 0 || num(row, "clusters") > 0),
    ),
    also: "unitSlip",
  },
  inSheet(
    "missingVineCounted",
    "vines",
    (row) => (row.prunings = 1.4),
    (row) => row.status === "missing",
  ),
  inSheet(
    "missingAsZero",
    "vines",
    (row, { random }) => (row[random.oneOf(["clusters", "shoots", "prunings"])] = 0),
    (row) => row.status === "missing",
  ),
  inSheet("harvestUnusual", "harvest", (row) => (row.picked = num(row, "picked") * 10)),
  inSheet("aliveAboveCut", "budCuts", (row, { random }) => {
    row.primariesAlive = num(row, "nodesCut") + random.whole(1, 3);
    row.secondariesAlive = row.primariesAlive;
  }),
  inSheet("placesDiffer", "blocks", (row, { random }) => {
    row.vines = num(row, "vines") + random.oneOf([-10, -1, 1, 5, 100]);
  }),
];

/** Mistakes about a vine as a whole. */
const VINE_MISTAKES: readonly SeasonMistake[] = [
  {
    code: "twoStayOnSide",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.cordons, (own) => {
        const beside = rowsOfVine(season, own).filter((other) => other.side === own.side && grown(other));
        return grown(own) && own.condition === "sound" && beside.length >= 2 && beside[1] === own;
      });
      if (!row) return undefined;
      const [first] = rowsOfVine(season, row).filter((other) => other.side === row.side && grown(other));
      first.fixedChoice = row.fixedChoice = "stays";
      return { sheet: season.cordons, rows: [row, first] };
    },
  },
  {
    code: "sideFromOneTrunk",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.cordons, (own) => {
        const vine = rowsOfVine(season, own).filter((other) => num(other, "liveSpurs") > 0);
        const side = vine.filter((other) => other.side === own.side);
        const opposite = vine.filter((other) => other.side !== own.side);
        return side.length === 2 && side[1] === own && opposite.some((other) => other.trunk === own.trunk);
      });
      if (!row) return undefined;
      const side = rowsOfVine(season, row).filter(
        (other) => other.side === row.side && num(other, "liveSpurs") > 0,
      );
      row.trunk = side[0].trunk;
      return { sheet: season.cordons, rows: side };
    },
  },
  {
    code: "trunkNotOfVine",
    also: "trunksAboveRegister",
    group: "vine",
    plant(season, field) {
      const above = (own: WinterRow) => {
        const rows = rowsOfVine(season, own);
        const living = rows.filter((row) => num(row, "liveSpurs") > 0).map((row) => num(row, "trunk"));
        const dead = new Set(rows.map((row) => num(row, "trunk")).filter((trunk) => !living.includes(trunk)));
        const known = indexOf(season).vines.get(vineKey(own))?.liveTrunks;
        return 1 + Math.max(...rows.map((row) => num(row, "trunk")), Number(known ?? Infinity) + dead.size);
      };
      const row = field.row(season.cordons, (own) => grown(own) && above(own) <= 4);
      if (!row) return undefined;
      row.trunk = above(row);
      return { sheet: season.cordons, rows: rowsOfVine(season, row) };
    },
  },
  {
    code: "digitsSwapped",
    also: "cordonTooLong",
    group: "vine",
    plant(season, field) {
      const swapped = (own: WinterRow) => Number([...String(own.length)].reverse().join(""));
      const row = field.row(
        season.cordons,
        (own) => withoutGap(season)(own) && Math.abs(Math.log(swapped(own) / num(own, "length"))) > 0.3,
      );
      if (!row) return undefined;
      row.length = swapped(row);
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "trunksAboveRegister",
    group: "vine",
    plant(season, field) {
      const vine = field.row(season.vines, (own) => {
        const alive = rowsOfVine(season, own).filter((row) => num(row, "liveSpurs") > 0);
        return own.liveTrunks === 2 && new Set(alive.map((row) => row.trunk)).size === 2;
      });
      if (!vine) return undefined;
      vine.liveTrunks = 1;
      return { sheet: season.cordons, rows: rowsOfVine(season, vine) };
    },
  },
  {
    code: "cordonOnMissingVine",
    group: "vine",
    plant(season, field) {
      const missing = field.row(season.vines, (vine) => vine.status === "missing");
      const row =
        missing &&
        field.row(
          season.cordons,
          (own) => own.block === missing.block && own.row === missing.row && grown(own),
        );
      if (!row) return undefined;
      row.vine = missing.vine;
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "sameCordonTwice",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.cordons, (own) => own.cordon === "B");
      if (!row) return undefined;
      if (field.random.chance(0.5)) {
        const copy = { ...row };
        season.cordons.rows.splice(season.cordons.rows.indexOf(row) + 1, 0, copy);
        return { sheet: season.cordons, rows: [copy] };
      }
      const other = rowsOfVine(season, row).find((own) => own !== row && own.side === row.side);
      if (!other) {
        const copy = { ...row, liveSpurs: row.liveSpurs };
        season.cordons.rows.splice(season.cordons.rows.indexOf(row) + 1, 0, copy);
        return { sheet: season.cordons, rows: [copy] };
      }
      row.cordon = other.cordon;
      return { sheet: season.cordons, rows: [row, other] };
    },
  },
  {
    code: "sameVineTwice",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.vines);
      if (!row) return undefined;
      const copy = { ...row };
      season.vines.rows.splice(season.vines.rows.indexOf(row) + field.random.whole(1, 20), 0, copy);
      return { sheet: season.vines, rows: [copy] };
    },
  },
  {
    code: "outOfWalkOrder",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.cordons, (own) => num(own, "vine") > 4 && num(own, "vine") < 10);
      if (!row) return undefined;
      const moved = rowsOfVine(season, row);
      const { rows } = season.cordons;
      rows.splice(rows.indexOf(moved[0]), moved.length);
      const inRow = rows.filter((own) => own.block === row.block && own.row === row.row);
      const later = inRow.filter((own) => Math.abs(num(own, "vine") - num(row, "vine")) >= 3);
      const behind = field.random.oneOf(later);
      const last = rows.indexOf(rowsOfVine(season, behind).at(-1)!);
      rows.splice(last + 1, 0, ...moved);
      return { sheet: season.cordons, rows: moved };
    },
  },
  {
    code: "sideWithoutCordon",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.cordons, (own) => {
        const sides = new Set(rowsOfVine(season, own).map(({ side }) => side));
        return sides.has("left") && sides.has("right");
      });
      if (!row) return undefined;
      const rows = rowsOfVine(season, row);
      for (const own of rows) own.side = "left";
      return { sheet: season.cordons, rows };
    },
  },
  {
    code: "vineNeverCounted",
    group: "vine",
    plant(season, field) {
      const vine = field.row(season.vines, (own) => own.status === "bearing");
      if (!vine) return undefined;
      const dropped = new Set(rowsOfVine(season, vine));
      season.cordons.rows = season.cordons.rows.filter((row) => !dropped.has(row));
      return { sheet: season.vines, rows: [vine] };
    },
  },
  {
    code: "cordonTooLong",
    group: "vine",
    plant(season, field) {
      const row = field.row(season.cordons, (own) => withoutGap(season)(own) && num(own, "length") > 2.3);
      if (!row) return undefined;
      row.length = rounded(num(row, "length") * field.random.number(1.8, 3.5, 2), 1);
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "positionsUnlikeLength",
    group: "vine",
    plant(season, field) {
      const most = (row: WinterRow) => Math.floor((num(row, "length") * 12) / 2) + 1;
      const row = field.row(
        season.cordons,
        (own) => bearing(season)(own) && own.condition === "sound" && num(own, "positions") + 10 <= most(own),
      );
      if (!row) return undefined;
      row.positions = num(row, "positions") + 10;
      row.longestGap = null;
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "cordonTooShort",
    group: "vine",
    plant(season, field) {
      const row = field.row(
        season.cordons,
        (own) => bearing(season)(own) && own.condition === "sound" && own.trunkCondition === "sound",
      );
      if (!row) return undefined;
      row.length = rounded(num(row, "length") / 10, 1);
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "cordonIntoGap",
    group: "vine",
    plant(season, field) {
      const row = field.row(
        season.cordons,
        (own) => bearing(season)(own) && num(own, "length") > 2.5 && statusOf(season, own, 1) === "missing",
      );
      if (!row) return undefined;
      row.length = rounded(num(row, "length") * 1.7, 1);
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "positionsAppeared",
    group: "vine",
    plant(season, field) {
      const old = season.past && field.row(season.past.cordons, grown);
      const row = old && sameCordon(season, old);
      if (!row) return undefined;
      old.positions = num(row, "positions") - field.random.whole(3, 5);
      old.length = row.length;
      return num(old, "positions") < 1 ? undefined : { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "trunkChangedPlace",
    group: "vine",
    plant(season, field) {
      const old = season.past && field.row(season.past.cordons, (own) => num(own, "trunk") <= 2);
      const row = old && sameCordon(season, old);
      if (!row) return undefined;
      old.trunk = num(row, "trunk") === 1 ? 2 : 1;
      return { sheet: season.cordons, rows: [row] };
    },
  },
  {
    code: "vineCameBack",
    group: "vine",
    plant(season, field) {
      const vine = season.past && field.row(season.vines, (own) => own.status === "bearing");
      const old = season.past?.vines.rows.find(
        (own) => vine && own.block === vine.block && own.row === vine.row && own.vine === vine.vine,
      );
      if (!vine || !old) return undefined;
      old.status = "missing";
      return { sheet: season.vines, rows: [vine] };
    },
  },
];

function sameCordon(season: Season, old: WinterRow): WinterRow | undefined {
  return season.cordons.rows.find((own) =>
    ["block", "row", "vine", "side", "cordon"].every((id) => own[id] === old[id]),
  );
}

/** Mistakes that run over several rows. */
const STRETCH_MISTAKES: readonly SeasonMistake[] = [
  {
    code: "rowNeverCounted",
    group: "stretch",
    plant(season, field) {
      const block = field.random.oneOf(season.blocks.rows);
      const row = field.random.whole(2, num(block, "rows") - 1);
      const inRow = (own: WinterRow) => own.block === block.block && own.row === row;
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
    plant(season, field) {
      const run = field.stretch(9, 9) ?? [];
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
    plant(season, field) {
      const copy = { ...field.random.oneOf(season.blocks.rows) };
      season.blocks.rows.push(copy);
      return { sheet: season.blocks, rows: [copy] };
    },
  },
  {
    code: "sameHarvestTwice",
    group: "stretch",
    plant(season, field) {
      const copy = { ...field.random.oneOf(season.harvest.rows), picked: field.random.whole(300, 900) };
      season.harvest.rows.push(copy);
      return { sheet: season.harvest, rows: [copy] };
    },
  },
];

/** The rows of one counter, and the first of them, where the finding stands. */
function counterRows(season: Season, field: Field): WinterRow[] | undefined {
  const counters = [...new Set(season.cordons.rows.map((row) => row.countedBy))].filter(
    (name) => name !== null,
  );
  if (counters.length < 2) return undefined;
  const counter = field.random.oneOf(counters);
  return season.cordons.rows.filter((row) => row.countedBy === counter);
}

/** Habits of one counter, whole blocks, missing and doubled columns. */
const SHEET_MISTAKES: readonly SeasonMistake[] = [
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
    plant(season, field) {
      const vines = season.vines.rows.filter((row) => row.status === "bearing");
      for (const row of vines) {
        row.clusters ??= field.random.whole(40, 60);
        row.shoots ??= field.random.whole(28, 38);
      }
      const row = field.random.oneOf(vines);
      row.clusters = row.shoots = null;
      field.random.oneOf(vines.filter((other) => other !== row)).clusters = null;
      return { sheet: season.vines, rows: [row] };
    },
  },
  {
    code: "totalUnlikeParts",
    group: "sheet",
    plant(season, { random }) {
      season.cordons.columns = [...season.cordons.columns, "Strong", "Weak", "Blind", "All shoots"];
      for (const row of season.cordons.rows) {
        const [strong, weak, blind] = [random.whole(0, 9), random.whole(0, 5), random.whole(0, 2)];
        Object.assign(row, { Strong: strong, Weak: weak, Blind: blind, "All shoots": strong + weak + blind });
      }
      const row = random.oneOf(season.cordons.rows);
      const id = random.oneOf(["Strong", "All shoots"]);
      row[id] = num(row, id) + random.whole(1, 3);
      return { sheet: season.cordons, rows: [row] };
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
    plant(season, { random }) {
      season.blocks.columns = [...season.blocks.columns, "nodeRule"];
      for (const row of season.blocks.rows) row.nodeRule = "30+10";
      const row = random.oneOf(season.blocks.rows);
      row.nodeRule = random.oneOf(["30x10", "by lenght", "as usual"]);
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

/** Every mistake that the measurement plants; settings have no seasons and are held by their cases alone. */
export const SEASON_MISTAKES: readonly SeasonMistake[] = [
  ...CELL_MISTAKES,
  ...VINE_MISTAKES,
  ...STRETCH_MISTAKES,
  ...SHEET_MISTAKES,
];
