import type { FarmRow } from "../farm";
import type { Season } from "../season";
import {
  bearing,
  grown,
  num,
  repeated,
  rounded,
  rowsOfVine,
  statusOf,
  vineOf,
  withoutGap,
  type Mistake,
} from "./mistake";
import { creekSide, northBench, schoolhouse } from "./places";

/** Mistakes about a vine as a whole. */
export const VINE_MISTAKES: readonly Mistake[] = [
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
    inSample: [
      {
        what: "A trunk number that the vine does not have.",
        column: "trunk",
        at: { block: "Schoolhouse", row: 6, condition: "sound" },
      },
    ],
    plant(season, field) {
      const above = (own: FarmRow) => {
        const rows = rowsOfVine(season, own);
        const living = rows.filter((row) => num(row, "liveSpurs") > 0).map((row) => num(row, "trunk"));
        const dead = new Set(rows.map((row) => num(row, "trunk")).filter((trunk) => !living.includes(trunk)));
        const known = vineOf(season, own)?.liveTrunks;
        return 1 + Math.max(...rows.map((row) => num(row, "trunk")), Number(known ?? Infinity) + dead.size);
      };
      const isAlone = (own: FarmRow) =>
        rowsOfVine(season, own).filter(({ trunk }) => trunk === own.trunk).length === 1;
      const row = field.row(season.cordons, (own) => grown(own) && above(own) <= 4 && isAlone(own));
      if (!row) return undefined;
      row.trunk = above(row);
      return { sheet: season.cordons, rows: [row, ...rowsOfVine(season, row)] };
    },
  },
  {
    code: "digitsSwapped",
    also: "cordonTooLong",
    group: "vine",
    inSample: [
      {
        what: "Digits of a length exchanged, such as 1.3 for 3.1.",
        column: "length",
        at: { ...northBench(3, 24), condition: "sound" },
      },
    ],
    plant(season, field) {
      const swapped = (own: FarmRow) => Number([...String(own.length)].reverse().join(""));
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
    inSample: [
      {
        what: "The Vines sheet says that this vine is missing, yet a cordon was counted on it.",
        column: "vine",
        at: creekSide(3, 12),
      },
    ],
    plant(season, field) {
      const vine = field.row(season.vines, (own) => rowsOfVine(season, own).some(grown));
      if (!vine) return undefined;
      Object.assign(vine, { status: "missing", liveTrunks: 0, prunings: null, clusters: null, shoots: null });
      return { sheet: season.cordons, rows: rowsOfVine(season, vine) };
    },
  },
  {
    code: "sameCordonTwice",
    group: "vine",
    inSample: [
      {
        what: "The same cordon stands in the sheet twice.",
        column: "cordon",
        at: northBench(6, 11),
      },
    ],
    plant(season, field) {
      const row = field.row(season.cordons, (own) => own.cordon === "B");
      const other = row && rowsOfVine(season, row).find((own) => own !== row && own.side === row.side);
      if (!row || !other || field.random.chance(0.5)) return row && repeated(season.cordons, row);
      row.cordon = other.cordon;
      return { sheet: season.cordons, rows: [row, other] };
    },
  },
  {
    code: "sameVineTwice",
    group: "vine",
    inSample: [{ what: "The same vine stands in the register twice.", column: "vine", at: creekSide(4, 9) }],
    plant(season, field) {
      const row = field.row(season.vines);
      return row && repeated(season.vines, row, {}, field.random.whole(1, 20));
    },
  },
  {
    code: "outOfWalkOrder",
    group: "vine",
    inSample: [
      {
        what: "The vine stands places away from where the crew passed it.",
        column: "vine",
        at: northBench(8, 8),
      },
    ],
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
    inSample: [{ what: "Every cordon of the vine is written left.", column: "side", at: northBench(6, 22) }],
    plant(season, field) {
      const row = field.row(season.cordons, (own) => {
        const sides = new Set(rowsOfVine(season, own).map(({ side }) => side));
        return sides.has("left") && sides.has("right");
      });
      if (!row) return undefined;
      const rows = rowsOfVine(season, row);
      for (const own of rows) own.side = "left";
      return { sheet: season.cordons, rows: [rows[1], ...rows] };
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
    inSample: [
      {
        what: "Much longer than the spacing leaves to a side, and no vine beside it is missing.",
        column: "length",
        at: { ...creekSide(1, 6), condition: "sound" },
      },
    ],
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
      const most = (row: FarmRow) => Math.floor((num(row, "length") * 12) / 2) + 1;
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
    inSample: [
      {
        what: "A sound cordon of a third of a foot: three and a half feet with the point in the wrong place.",
        column: "length",
        at: schoolhouse(4, 5),
      },
    ],
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

function sameCordon(season: Season, old: FarmRow): FarmRow | undefined {
  return season.cordons.rows.find((own) =>
    ["block", "row", "vine", "side", "cordon"].every((id) => own[id] === old[id]),
  );
}
