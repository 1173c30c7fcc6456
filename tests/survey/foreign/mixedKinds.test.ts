import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { areaOf } from "../area";
import { againstTruth, firstAnswers, rowsRead, type CountedRow } from "./foreignSheets";

type Cells = CellValue[];

/** A cordon of an invented season: its numbers follow from where it stands, no two neighbours alike. */
interface Counted {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  readonly side: "left" | "right";
  readonly inches: number;
  readonly positions: number;
  readonly live: number;
}

/** Two blocks with two rows of eight vines, a cordon left and right: 64 cordons. */
const SEASON: readonly Counted[] = ["North Bench", "Creek Side"].flatMap((block, b) =>
  [1, 2].flatMap((row) =>
    Array.from({ length: 8 }, (_, i) => i + 1).flatMap((vine) =>
      (["left", "right"] as const).map((side, s): Counted => {
        const seed = b * 131 + row * 37 + vine * 17 + s * 29;
        const positions = 6 + (seed % 4);
        return {
          block,
          row,
          vine,
          side,
          inches: 5 * positions + (seed % 5),
          positions,
          live: positions - [0, 1, 1, 2, 3, 2, 0][seed % 7],
        };
      }),
    ),
  ),
);

/** A cordon as `rows` writes it; an inch is 0.0254 m. */
const truthOf = ({ block, row, vine, side, inches, positions, live }: Counted): CountedRow => ({
  block,
  vine_row: row,
  vine,
  side,
  length: inches * 0.0254,
  positions,
  live_spurs: live,
});
const HEADS = ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (in)", "Positions", "Live spurs"];
const trunk = ({ side }: Counted) => (side === "left" ? 1 : 2);
const name = ({ side }: Counted) => (side === "left" ? "A" : "B");
const cells = (c: Counted): Cells => [
  c.block,
  c.row,
  c.vine,
  c.side,
  name(c),
  trunk(c),
  c.inches,
  c.positions,
  c.live,
];
const ROWS = SEASON.map(cells);
/** The rows of vines of both blocks. */
const GROUPS = ["North Bench", "Creek Side"].flatMap((block) =>
  [1, 2].map((row) => ({ block, row, own: SEASON.filter((c) => c.block === block && c.row === row) })),
);
/** Both cordons of each vine, left before right. */
const VINES = SEASON.flatMap((c, i) => (i % 2 === 0 ? [[c, SEASON[i + 1]] as const] : []));
const tally = (count: number) =>
  [...Array<string>(Math.floor(count / 5)).fill("||||/"), "|".repeat(count % 5)].join(" ").trim();
const comma = (value: number) => String(Math.round(value * 100) / 100).replace(".", ",");

interface Kind {
  readonly areas: readonly SheetArea[] | Promise<readonly SheetArea[]>;
  readonly wanted: "exact" | "ask";
  readonly truth?: (row: CountedRow) => CountedRow;
  /** Metres to which the sheet's lengths are rounded. */
  readonly roughly?: number;
}

const csv = async (text: string, bytes = new TextEncoder().encode(text)) => [
  await (await openWorkbookBytes("counts.csv", bytes)).readSheet("counts"),
];

const KINDS: Readonly<Record<string, Kind>> = {
  "keys merged over their cordons, units below the heads, lengths in inches": {
    areas: [
      {
        ...areaOf("Winter", [
          HEADS.map((head) => head.replace(" (in)", "")),
          [null, null, null, "L/R", null, "no.", "inches", "no.", "no."],
          ...SEASON.map((c, i): Cells => {
            const [block, row, vine, ...rest] = cells(c);
            return [
              i % 32 === 0 ? block : null,
              i % 16 === 0 ? row : null,
              i % 2 === 0 ? vine : null,
              ...rest,
            ];
          }),
        ]),
        merged: [
          ...[0, 32].map((at) => ({ row: at + 2, column: 0, rows: 32, columns: 1 })),
          ...[0, 16, 32, 48].map((at) => ({ row: at + 2, column: 1, rows: 16, columns: 1 })),
          ...VINES.map((_, at) => ({ row: 2 * at + 2, column: 2, rows: 2, columns: 1 })),
        ],
      },
    ],
    wanted: "exact",
  },
  "a line a vine, last year's columns before this year's": {
    areas: [
      areaOf("Counts 2026", [
        [
          ...["Block", "Row", "Vine"],
          ...["Left", "Right"].flatMap((side) =>
            ["spurs 2025", "spurs 2026", "positions", "length (in)"].map((head) => `${side} ${head}`),
          ),
        ],
        ...VINES.map((vine): Cells => [
          ...cells(vine[0]).slice(0, 3),
          ...vine.flatMap(({ live, positions, inches }) => [9, live, positions, inches]),
        ]),
      ]),
    ],
    wanted: "exact",
  },
  "Spanish captions, replants with letters": {
    areas: [
      areaOf("Conteo", [
        ["Planta", "Lado", "Brazo", "Tronco", "Longitud (pulgadas)", "Posiciones", "Pitones vivos"],
        ...GROUPS.flatMap(({ block, row, own }): Cells[] => [
          [`Cuartel ${block} – hilera ${row}`],
          ...own.map((c): Cells => [
            c.vine % 4 === 0 ? `${c.vine - 1}a` : c.vine,
            c.side === "left" ? "izq." : "der.",
            ...cells(c).slice(4),
          ]),
        ]),
      ]),
    ],
    wanted: "exact",
    truth: (row) => (Number(row.vine) % 4 === 0 ? { ...row, vine: `${Number(row.vine) - 1}a` } : row),
  },
  "French heads over three lines, centimetres with commas": {
    areas: [
      areaOf("Comptage", [
        ["Lieu", null, null, "Bras", null, null, "Longueur", "Emplace-", "Coursons"],
        ["Parcelle", "Rang", "Cep", "Côté", "Cordon", "Tronc", "(cm)", "ments", "vivants"],
        [null, null, null, "G/D", null, "no", null, null, null],
        ...SEASON.map((c): Cells => [
          ...cells(c).slice(0, 3),
          c.side === "left" ? "G" : "D",
          ...cells(c).slice(4, 6),
          comma(c.inches * 2.54),
          ...cells(c).slice(7),
        ]),
      ]),
    ],
    wanted: "exact",
    roughly: 0.0001,
  },
  "a block beside the other, the second with its columns in another order": {
    areas: [
      areaOf("Both", [
        [...HEADS, null, ...[...HEADS].reverse()],
        ...ROWS.slice(0, 32).map((row, i): Cells => [...row, null, ...[...ROWS[i + 32]].reverse()]),
      ]),
    ],
    wanted: "exact",
  },
  "right before left, from the far end of every row, newest rows first": {
    areas: [
      areaOf("Counts", [[...HEADS].reverse(), ...[...ROWS].reverse().map((row) => [...row].reverse())]),
    ],
    wanted: "exact",
  },
  "rows with letters in the names of the sheets": {
    areas: GROUPS.map(({ block, row, own }) =>
      areaOf(`${block} row ${"AB"[row - 1]}`, [HEADS.slice(2), ...own.map((c) => cells(c).slice(2))]),
    ),
    wanted: "exact",
    truth: (row) => ({ ...row, vine_row: "AB"[Number(row.vine_row) - 1] }),
  },
  "strokes, with a total below every row of vines": {
    areas: [
      areaOf("Tally", [
        HEADS,
        ...GROUPS.flatMap(({ row, own }): Cells[] => [
          ...own.map((c) => cells(c).map((cell, at) => (at === 8 ? tally(c.live) : cell))),
          [
            `Total row ${row}`,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            own.reduce((sum, c) => sum + c.live, 0),
          ],
        ]),
      ]),
    ],
    wanted: "exact",
  },
  "dead and missing spurs in place of live ones, plans and cuts beside them": {
    areas: [
      areaOf("Counts", [
        [...HEADS.slice(0, 8), "Dead spurs", "Missing spurs", "Spurs to leave", "Spurs cut off"],
        ...SEASON.map((c): Cells => {
          const gone = c.positions - c.live;
          return [...cells(c).slice(0, 8), Math.floor(gone / 2), Math.ceil(gone / 2), 4, 3];
        }),
      ]),
    ],
    wanted: "exact",
  },
  "two winters under heads such as 24/25, dated": {
    areas: [
      areaOf("Counts", [
        [...HEADS.slice(0, 8), "Live spurs 2024/25", "Live spurs 2025/26", "Date"],
        ...SEASON.map((c): Cells => [...cells(c).slice(0, 8), 9, c.live, 46034 + c.row]),
      ]),
    ],
    wanted: "exact",
  },
  "a csv with a preamble, semicolons and commas as decimals": {
    areas: csv(
      [
        "Invierno 2026;;;;;;;;",
        "Finca: Recodo, ladera norte;;;;;;;;",
        "Cuartel;Hilera;Planta;Lado;Brazo;Tronco;Longitud (m);Posiciones;Pitones vivos",
        ...SEASON.map((c) =>
          cells(c)
            .map((cell, at) =>
              at === 6
                ? String(c.inches * 0.0254)
                    .slice(0, 6)
                    .replace(".", ",")
                : cell,
            )
            .join(";"),
        ),
      ].join("\r\n"),
    ),
    wanted: "exact",
    roughly: 0.0001,
  },
  "a label of block, row and vine, arrows, feet and inches": {
    areas: [
      areaOf("Counts", [
        ["Vine", ...HEADS.slice(3, 6), "Length", ...HEADS.slice(7)],
        ...SEASON.map((c): Cells => [
          `${c.block}/R${c.row}/V${c.vine}`,
          c.side === "left" ? "←" : "→",
          ...cells(c).slice(4, 6),
          `${Math.floor(c.inches / 12)}' ${c.inches % 12}"`,
          ...cells(c).slice(7),
        ]),
      ]),
    ],
    wanted: "exact",
  },
  "a page a row, printed one below the other, with its own title, heads and total": {
    areas: [
      areaOf(
        "Pages",
        GROUPS.flatMap(({ block, row, own }, page): Cells[] => [
          [`Page ${page + 1} of 4`],
          ["Block:", block, null, "Row:", row],
          HEADS.slice(2),
          ...own.map((c) => cells(c).slice(2)),
          ["Total", null, null, null, null, own.reduce((sum, c) => sum + c.positions, 0)],
          [],
        ]),
      ),
    ],
    wanted: "exact",
  },
  "abbreviated heads, lengths named only by their unit": {
    areas: [
      areaOf("Counts", [["Blk", "Rw", "Vn", "Sd", "Crd", "Trk", "Len in", "Pos", "Liv spurs"], ...ROWS]),
    ],
    wanted: "ask",
  },
  "spurs under a word of the farm's own": {
    areas: [areaOf("Counts", [[...HEADS.slice(0, 8), "Fruiting spurs"], ...ROWS])],
    wanted: "ask",
  },
  "sheets named after block and row without a word for either": {
    areas: GROUPS.map(({ block, row, own }) =>
      areaOf(`${block} ${row}`, [HEADS.slice(2), ...own.map((c) => cells(c).slice(2))]),
    ),
    wanted: "ask",
  },
};

test.each(Object.keys(KINDS))("%s: exact, or exact after one answer", async (kind) => {
  const { wanted, truth = (row: CountedRow) => row, roughly = 1e-9 } = KINDS[kind];
  const areas = await KINDS[kind].areas;
  const counted = SEASON.map(truthOf).map(truth);
  const season = readSeason(areas);
  const before = againstTruth(rowsRead(season), counted, roughly);
  expect(season.account.questions).toHaveLength(wanted === "exact" ? 0 : 1);
  if (season.account.questions.every(({ code }) => code !== "keys")) expect(before.wrong).toEqual([]);
  const after = wanted === "exact" ? season : readSeason(areas, { answers: firstAnswers(season) });
  expect(after.account.questions).toEqual([]);
  const read = rowsRead(after);
  expect(againstTruth(read, counted, roughly)).toEqual({ wrong: [], missing: [] });
  expect(read.filter((row) => Object.keys(counted[0]).some((column) => !(column in row)))).toEqual([]);
  const causes = new Map<string, number>();
  for (const { code } of findingGroups(allFindings(season), season))
    causes.set(code, (causes.get(code) ?? 0) + 1);
  expect([...causes].filter(([, of]) => of > 3)).toEqual([]);
});
