import { CORDON_HEADS } from "../cordonHeads";

type Cells = readonly (readonly (string | number | null)[])[];

/** Two cordons of each of the first vines of an invented row, unlike each other. */
const counts = (vines: number): (string | number | null)[][] =>
  Array.from({ length: vines }, (_, at) => at + 1).flatMap((vine) => [
    ["North Bench", 1, vine, "left", "A", 1, [3.2, 3.4, 3.1, 3.3, 3.5][vine % 5], 9, 7 + ((2 * vine) % 3)],
    ["North Bench", 1, vine, "right", "B", 1, [3.3, 3.1, 3.5, 3.2][vine % 4], 9, 7 + (vine % 3)],
  ]);

const withoutLast = (rows: Cells): Cells => [...rows.slice(0, -1), [...rows.at(-1)!.slice(0, -1), null]];

/**
 * A workbook of which a part is read: sixteen rows of eight vines, one of them without live spurs, and a line of totals;
 * the same vines a winter ago, a hidden copy, counts under heads that nobody knows, and a list of tanks.
 */
export const UNREAD_PARTS: Readonly<Record<string, Cells>> = {
  "Cordons 2026": [
    CORDON_HEADS,
    ...withoutLast(counts(8)),
    ["Total", null, null, null, null, null, null, 144, 121],
  ],
  "Cordons 2025": [CORDON_HEADS, ...counts(4)],
  Spare: [CORDON_HEADS, ...counts(2)],
  Pond: [
    ["Fld", "Rw", "Vn", "Sd", "Cd", "Tk", "Lg", "Ps", "Lv"],
    ...counts(6).map(([, ...rest]) => ["Pond", ...rest]),
  ],
  Tanks: [
    ["Tank", "Litres", "Level"],
    ["T1", 5000, "full"],
    ["T2", 3000, "half"],
  ],
};

/** The sheet of those that is hidden. */
export const HIDDEN = "Spare";

/** Counted by hand: sixteen rows under nine heads; two rows of the last vine are not used. */
export const READ_LINE =
  "Read: 1 file, 1 sheet, 1 table, 9 columns, 16 rows. Not read: Spare (hidden); Pond (other heads); Tanks (no counts); 8 rows of Cordons 2025 (a past winter); 1 line of totals. 2 questions are open.";
export const USED_LINE =
  "Worked out from 14 of 16 rows of the Cordons sheets. Left out: 1 beside those on the same vines; 1 where Live spurs is blank (first in Cordons 2026, row 17).";
