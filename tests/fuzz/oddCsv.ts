import type { Dice } from "./dice";
import { CORDON_HEADS } from "../survey/cordonHeads";

const HEADS = [...CORDON_HEADS];
const CELLS = [
  "=1+1",
  "\uff1dcmd",
  "+1",
  "-",
  "@x",
  "a;=1+1",
  '"quoted"',
  'a "quote" inside',
  "North\u001b[31mBench",
  "left\u0007",
  "\u009b2J",
  "\u202eleft",
  "0x10",
  "-0",
  "1,5",
  "1.250",
  "1.250,5",
  "1E999",
  "x".repeat(40_000),
  "Vi\u00f1edo",
  "Ch\u00e2teau d\u2019\u00c9t\u00e9",
  "__proto__",
  "",
  " ",
  "7 spurs",
  "31/12/2025",
  "\u{1f347}",
];

/** A file of counts as text, odd in its cells, signs, line ends, quotes or bytes. */
export function oddCsv(dice: Dice): Uint8Array {
  const delimiter = dice.one([",", ";", "\t", "|"]);
  const end = dice.one(["\n", "\r\n", "\r"]);
  const heads = dice.chance(0.9) ? HEADS : dice.some(HEADS, 1, 9);
  const quoted = (cell: string) =>
    dice.chance(0.95) && (/["\r\n]/.test(cell) || cell.includes(delimiter))
      ? `"${cell.replace(/"/g, '""')}"`
      : cell;
  const lines = Array.from({ length: dice.size(60) }, (_, i) => {
    const cells = [
      "North Bench",
      String(1 + (i >> 4)),
      String(1 + ((i % 16) >> 1)),
      i % 2 ? "right" : "left",
      i % 2 ? "B" : "A",
      "1",
      dice.one(["3", "3.5", "2,5"]),
      "8",
      String(dice.whole(0, 9)),
    ];
    if (dice.chance(0.15)) cells[dice.whole(0, cells.length - 1)] = dice.one(CELLS);
    if (dice.chance(0.04)) cells.splice(dice.whole(0, cells.length), 0, dice.one(CELLS));
    if (dice.chance(0.04)) cells.pop();
    if (dice.chance(0.02)) cells[dice.whole(0, 8)] += dice.one(["\r", "\n", '"', "\0", "\u0085", "\u2028"]);
    return cells.map(quoted).join(delimiter);
  });
  if (dice.chance(0.1)) lines.splice(dice.whole(0, lines.length), 0, heads.join(delimiter));
  if (dice.chance(0.05))
    lines.push(
      dice.one([
        '"never closed',
        delimiter.repeat(dice.size(20_000)),
        "a".repeat(dice.size(300_000)),
        '""'.repeat(dice.size(60_000)),
      ]),
    );
  const text =
    dice.one(["", "", "", `sep=${delimiter}${end}`, `Counted by AB${end}${end}`]) +
    [heads.map(quoted).join(delimiter), ...lines].join(end) +
    dice.one(["", end, end + end]);
  const bytes = encoded(text, dice);
  if (dice.chance(0.05))
    for (let n = dice.size(20); n > 0; n--) bytes[dice.whole(0, bytes.length - 1)] = dice.whole(0, 255);
  return dice.chance(0.03) ? bytes.subarray(0, dice.whole(0, bytes.length)) : bytes;
}

function encoded(text: string, dice: Dice): Uint8Array {
  const bytes = dice.one<() => Buffer>([
    () => Buffer.from(text),
    () => Buffer.from(text),
    () => Buffer.from(`\ufeff${text}`),
    () => Buffer.from(text, "latin1"),
    () => Buffer.from(`\ufeff${text}`, "utf16le"),
    () => Buffer.from(text, "utf16le"),
    () => Buffer.from(`\ufeff${text}`, "utf16le").swap16(),
  ])();
  return new Uint8Array(bytes);
}
