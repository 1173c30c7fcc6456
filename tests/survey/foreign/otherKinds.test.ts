import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { serialOf } from "../../../src/survey/reading/serialDate";
import { questionSentence } from "../../../src/survey/reading/readingSentence";
import { usedSentence } from "../../../src/survey/season/usedSentence";
import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { areaOf } from "../area";
import { againstTruth, firstAnswers, rowsRead, TRUTH, type CountedRow } from "./foreignSheets";
import { CORDON_HEADS } from "../cordonHeads";

type Cells = CellValue[];

/** Feet as the crew's tape showed them, to a tenth. */
const feet = ({ length }: CountedRow) => Math.round((Number(length) / 0.3048) * 10) / 10;
const day = ({ counted_on }: CountedRow) => {
  const [year, month, date] = String(counted_on).split("-").map(Number);
  return serialOf(year, month, date)!;
};
const HEADS = [...CORDON_HEADS, "Longest gap", "Condition", "Counted by", "Date"];
const cells = (row: CountedRow): Cells =>
  [
    row.block,
    row.vine_row,
    row.vine,
    row.side,
    row.cordon,
    row.trunk,
    feet(row),
    row.positions,
    row.live_spurs,
    row.longest_gap,
    row.condition,
    row.counted_by,
    day(row),
  ] as Cells;
const ROWS = TRUTH.map(cells);
const at = (head: string) => HEADS.indexOf(head);
/** The rows with some columns written otherwise. */
const written = (changes: Readonly<Record<string, (row: CountedRow, cell: CellValue) => CellValue>>) =>
  TRUTH.map((row, i) => ROWS[i].map((cell, column) => changes[HEADS[column]]?.(row, cell) ?? cell));
const without = (rows: readonly Cells[], ...heads: string[]) =>
  rows.map((row) => row.filter((_, i) => !heads.some((head) => at(head) === i)));
const headsWithout = (...heads: string[]) => HEADS.filter((head) => !heads.includes(head));
/** Runs of rows with the same row of vines. */
const groups = (): { block: string; row: number; from: number; to: number }[] => {
  const found: { block: string; row: number; from: number; to: number }[] = [];
  TRUTH.forEach((counted, i) => {
    const last = found.at(-1);
    if (last?.block === counted.block && last?.row === counted.vine_row) last!.to = i + 1;
    else found.push({ block: String(counted.block), row: Number(counted.vine_row), from: i, to: i + 1 });
  });
  return found;
};
/** Vines in the order of the walk with their cordons. */
const vines = (): CountedRow[][] => {
  const found: CountedRow[][] = [];
  for (const row of TRUTH) {
    const last = found.at(-1)?.[0];
    if (last && last.block === row.block && last.vine_row === row.vine_row && last.vine === row.vine)
      found.at(-1)!.push(row);
    else found.push([row]);
  }
  return found;
};
/** Initials of a row's block. */
const short = ({ block }: CountedRow) =>
  String(block)
    .split(" ")
    .map((word) => word[0])
    .join("");
const label = (row: CountedRow) => `${short(row)}-${row.vine_row}-${row.vine}`;
const MONTHS_ES = ["ene", "feb"];

interface Kind {
  readonly areas: readonly SheetArea[];
  /** "unplaced": the place of the rows is open, and asked or found. */
  readonly wanted: "exact" | "ask" | "named" | "unplaced";
  readonly truth?: (row: CountedRow) => CountedRow;
  readonly roughly?: number;
  readonly says?: readonly string[];
  readonly finds?: readonly string[];
}

const KINDS: Readonly<Record<string, Kind>> = {
  "French heads, commas in texts, G and D": {
    areas: [
      areaOf("Comptage", [
        [
          "Parcelle",
          "Rang",
          "Cep",
          "Côté",
          "Cordon",
          "Tronc",
          "Longueur (m)",
          "Emplacements",
          "Coursons vivants",
          "Plus long vide",
          "État",
          "Compté par",
          "Date",
        ],
        ...written({
          Side: ({ side }) => (side === "left" ? "G" : "D"),
          "Length (ft)": ({ length }) => String(length).replace(".", ","),
          Condition: ({ condition }) => (condition === "sound" ? "sain" : "gelé"),
        }),
      ]),
    ],
    wanted: "exact",
    says: ["textNumbers"],
  },
  "rows with letters": {
    areas: [areaOf("Counts", [HEADS, ...written({ Row: ({ vine_row }) => "ABCD"[Number(vine_row) - 1] })])],
    wanted: "exact",
    truth: (row) => ({ ...row, vine_row: "ABCD"[Number(row.vine_row) - 1] }),
  },
  "lettered replants": {
    areas: [
      areaOf("Counts", [
        HEADS,
        ...written({ Vine: ({ vine }) => (Number(vine) % 7 === 0 ? `${Number(vine) - 1}a` : vine!) }),
      ]),
    ],
    wanted: "exact",
    truth: (row) => ({ ...row, vine: Number(row.vine) % 7 === 0 ? `${Number(row.vine) - 1}a` : row.vine! }),
  },
  "a table in the middle of a page under a title, units in a line of their own": {
    areas: [
      areaOf(
        "Pruning 2026",
        [
          ["Winter counts", null, "Weather:", "cold, clear"],
          [],
          HEADS.map((head) => head.replace(" (ft)", "")),
          HEADS.map((head) => (head === "Length (ft)" ? "ft" : null)),
          ...ROWS,
        ],
        { firstRow: 6, firstColumn: 3 },
      ),
    ],
    wanted: "exact",
  },
  "pages printed one below the other": {
    areas: [
      areaOf(
        "Counts",
        groups().flatMap(({ from, to }, page): Cells[] => [
          ...(page > 0 ? [[], [`Page ${page + 1} of 7`]] : []),
          HEADS,
          ...ROWS.slice(from, to),
        ]),
      ),
    ],
    wanted: "exact",
  },
  "Spanish captions": {
    areas: [
      areaOf("Conteo", [
        headsWithout("Block", "Row"),
        ...groups().flatMap(({ block, row, from, to }): Cells[] => [
          [`Cuartel ${block}, hilera ${row}`],
          ...without(ROWS.slice(from, to), "Block", "Row"),
        ]),
      ]),
    ],
    wanted: "exact",
    says: ["captions"],
  },
  "lengths in feet and inches": {
    areas: [
      areaOf("Counts", [
        HEADS.map((head) => head.replace(" (ft)", "")),
        ...written({
          "Length (ft)": (row) => {
            const inches = Math.round(feet(row) * 12);
            return `${Math.floor(inches / 12)}'${inches % 12}"`;
          },
        }),
      ]),
    ],
    wanted: "exact",
    roughly: 0.0254 / 2 + 0.0001,
    says: ["ownUnits"],
  },
  "missing spurs in place of live ones": {
    areas: [
      areaOf("Counts", [
        HEADS.map((head) => (head === "Live spurs" ? "Spurs missing" : head)),
        ...written({ "Live spurs": ({ positions, live_spurs }) => Number(positions) - Number(live_spurs) }),
      ]),
    ],
    wanted: "exact",
    says: ["liveDerived"],
  },
  "per cents of live spurs": {
    areas: [
      areaOf("Counts", [
        HEADS.map((head) => (head === "Live spurs" ? "Live spurs %" : head)),
        ...written({ "Live spurs": ({ positions, live_spurs }) => Number(live_spurs) / Number(positions) }),
      ]),
    ],
    wanted: "named",
  },
  "the same vines counted a year before in a sheet beside": {
    areas: [
      areaOf("2026", [HEADS, ...ROWS]),
      areaOf("2025", [HEADS, ...written({ "Live spurs": () => 3, Date: (row) => day(row) - 365 })]),
    ],
    wanted: "exact",
    says: ["pastWinter"],
  },
  "totals below each row and a grand total": {
    areas: [
      areaOf("Counts", [
        HEADS,
        ...groups().flatMap(({ row, from, to }): Cells[] => [
          ...ROWS.slice(from, to),
          HEADS.map((head) =>
            head === "Block"
              ? `Total row ${row}`
              : head === "Live spurs"
                ? TRUTH.slice(from, to).reduce((sum, { live_spurs }) => sum + Number(live_spurs), 0)
                : null,
          ),
        ]),
        ["Grand total", null, null, null, null, null, null, null, 2800],
      ]),
    ],
    wanted: "exact",
    says: ["totalLines"],
  },
  "dates in Spanish months, arrows for sides, R1 and V12": {
    areas: [
      areaOf("Counts", [
        HEADS,
        ...written({
          Row: ({ vine_row }) => `R${vine_row}`,
          Vine: ({ vine }) => `V${String(vine).padStart(2, "0")}`,
          Side: ({ side }) => (side === "left" ? "←" : "→"),
          Date: ({ counted_on }) =>
            String(counted_on).replace(
              /^(\d{4})-0(\d)-(\d\d)$/,
              (_, year: string, month: string, date: string) =>
                `${date}-${MONTHS_ES[Number(month) - 1]}-${year.slice(2)}`,
            ),
        }),
      ]),
    ],
    wanted: "exact",
  },
  "days as 20260112": {
    areas: [
      areaOf("Counts", [
        HEADS,
        ...written({ Date: ({ counted_on }) => Number(String(counted_on).replace(/-/g, "")) }),
      ]),
    ],
    wanted: "exact",
  },
  "left arm and right arm side by side under merged heads": {
    areas: [
      (() => {
        const own = vines().filter((vine) => new Set(vine.map(({ side }) => side)).size === vine.length);
        const of = (vine: CountedRow[], side: string): Cells => {
          const arm = vine.find((row) => row.side === side);
          return arm ? ([feet(arm), arm.live_spurs, arm.longest_gap] as Cells) : [null, null, null];
        };
        return {
          ...areaOf("Counts", [
            ["Block", "Row", "Vine", "Left arm", null, null, "Right arm", null, null],
            [
              null,
              null,
              null,
              "Length (ft)",
              "Live spurs",
              "Longest gap",
              "Length (ft)",
              "Live spurs",
              "Longest gap",
            ],
            ...own.map((vine): Cells => [
              vine[0].block as CellValue,
              vine[0].vine_row as CellValue,
              vine[0].vine as CellValue,
              ...of(vine, "left"),
              ...of(vine, "right"),
            ]),
          ]),
          merged: [
            { row: 0, column: 3, rows: 1, columns: 3 },
            { row: 0, column: 6, rows: 1, columns: 3 },
          ],
        };
      })(),
    ],
    wanted: "exact",
    says: ["turned"],
  },
  "each block in its own unit": {
    areas: [
      areaOf("East", [HEADS, ...ROWS.filter(([block]) => block === "East Slope")]),
      areaOf("Pond", [
        HEADS.map((head) => head.replace("(ft)", "[cm]")),
        ...written({ "Length (ft)": ({ length }) => Math.round(Number(length) * 1000) / 10 }).filter(
          ([block]) => block === "Pond Field",
        ),
      ]),
    ],
    wanted: "exact",
    roughly: 0.0006,
  },
  "vines across and cordons down": {
    areas: [
      areaOf("Counts", [
        [
          "Vine",
          ...vines()
            .slice(0, 20)
            .map(([{ vine }]) => vine as CellValue),
        ],
        [
          "Left A",
          ...vines()
            .slice(0, 20)
            .map((vine) => vine[0].live_spurs as CellValue),
        ],
        [
          "Right B",
          ...vines()
            .slice(0, 20)
            .map((vine) => (vine[1]?.live_spurs ?? null) as CellValue),
        ],
      ]),
    ],
    wanted: "named",
    says: ["notCounts"],
  },
  "planned and last winter's spurs beside the live ones": {
    areas: [
      areaOf("Counts", [
        [...HEADS, "Spurs to leave", "Live spurs last year", "Spurs removed"],
        ...ROWS.map((row): Cells => [...row, 4, 9, 2]),
      ]),
    ],
    wanted: "exact",
    says: ["qualifier"],
  },
  "a running number first, under No., and a post number beside the vine": {
    areas: [
      areaOf("Counts", [
        ["No.", ...HEADS.slice(0, 3), "Post", ...HEADS.slice(3)],
        ...ROWS.map((row, i): Cells => [
          i + 1,
          ...row.slice(0, 3),
          1 + Math.floor(Number(row[2]) / 4),
          ...row.slice(3),
        ]),
      ]),
    ],
    wanted: "exact",
  },
  "blank columns between all columns and a blank line below every vine": {
    areas: [
      areaOf(
        "Counts",
        [HEADS, ...vines().flatMap((vine): Cells[] => [...vine.map(cells), []])].map((row) =>
          row.flatMap((cell): Cells => [cell, null]),
        ),
      ),
    ],
    wanted: "exact",
  },
  "heads with line breaks and the unit on its own line in the cell": {
    areas: [areaOf("Counts", [HEADS.map((head) => head.replace(/ /g, "\n")), ...ROWS])],
    wanted: "exact",
  },
  "row and vine in one label, R2 V14": {
    areas: [
      areaOf("Counts", [
        headsWithout("Row"),
        ...without(written({ Vine: ({ vine_row, vine }) => `R${vine_row} V${vine}` }), "Row"),
      ]),
    ],
    wanted: "exact",
  },
  "block, row and vine in one label, East Slope-2-14": {
    areas: [
      areaOf("Counts", [
        headsWithout("Block", "Row"),
        ...without(
          written({ Vine: ({ block, vine_row, vine }) => `${block}-${vine_row}-${vine}` }),
          "Block",
          "Row",
        ),
      ]),
    ],
    wanted: "exact",
    says: ["labels"],
  },
  "block, row and vine in one label, ES-2-14, under a head that is not known": {
    areas: [
      areaOf("Counts", [
        ["Place", ...headsWithout("Block", "Row", "Vine")],
        ...TRUTH.map((row, i): Cells => [label(row), ...without([ROWS[i]], "Block", "Row", "Vine")[0]]),
      ]),
      areaOf("Blocks", [
        ["Block", "Training", "Vine spacing (ft)"],
        ["East Slope", "bilateral cordon", 6],
        ["Pond Field", "bilateral cordon", 6],
      ]),
    ],
    wanted: "exact",
    truth: (row) => ({ ...row, block: short(row) }),
    says: ["labels"],
    finds: ["unknownBlock"],
  },
  "side and cordon in one word, LA and RB": {
    areas: [
      areaOf("Counts", [
        headsWithout("Side"),
        ...without(
          written({ Cordon: ({ side, cordon }) => `${side === "left" ? "L" : "R"}${cordon}` }),
          "Side",
        ),
      ]),
    ],
    wanted: "exact",
    truth: (row) => ({ ...row, cordon: `${row.side === "left" ? "L" : "R"}${row.cordon}` }),
    says: ["sidesOfNames"],
  },
  "live of all places as 6/8": {
    areas: [
      areaOf("Counts", [
        headsWithout("Positions"),
        ...without(
          written({ "Live spurs": ({ live_spurs, positions }) => `${live_spurs}/${positions}` }),
          "Positions",
        ),
      ]),
    ],
    wanted: "named",
    says: ["oddCounts"],
  },
  "live and dead in words, 6 live 2 dead": {
    areas: [
      areaOf("Counts", [
        HEADS,
        ...written({
          "Live spurs": ({ live_spurs, positions }) =>
            `${live_spurs} live ${Number(positions) - Number(live_spurs)} dead`,
        }),
      ]),
    ],
    wanted: "named",
    finds: ["notANumber"],
  },
  "all spurs, dead and alive, under Spurs, with the live ones beside": {
    areas: [
      areaOf("Counts", [
        [...HEADS.map((head) => (head === "Live spurs" ? "Spurs" : head)), "Alive"],
        ...TRUTH.map((row, i): Cells => [
          ...ROWS[i].map((cell, c) => (HEADS[c] === "Live spurs" ? (row.positions as CellValue) : cell)),
          row.live_spurs as CellValue,
        ]),
      ]),
    ],
    wanted: "exact",
    finds: ["columnTwice"],
  },
  "compass sides, N and S": {
    areas: [areaOf("Counts", [HEADS, ...written({ Side: ({ side }) => (side === "left" ? "N" : "S") })])],
    wanted: "exact",
    truth: (row) => ({ ...row, side: row.side === "left" ? "north" : "south" }),
  },
  "ticks under Left and Right": {
    areas: [
      areaOf("Counts", [
        HEADS.flatMap((head) => (head === "Side" ? ["Left", "Right"] : [head])),
        ...TRUTH.map((row, i): Cells =>
          ROWS[i].flatMap((cell, c): Cells =>
            HEADS[c] === "Side" ? (row.side === "left" ? ["x", null] : [null, "x"]) : [cell],
          ),
        ),
      ]),
    ],
    wanted: "unplaced",
    finds: ["missingColumn"],
  },
  "winters as merged heads over positions and spurs": {
    areas: [
      (() => {
        const before = HEADS.slice(0, 7);
        const after = HEADS.slice(9);
        return {
          ...areaOf("Counts", [
            [...before, "Winter 2025", null, "Winter 2026", null, ...after],
            [
              ...before.map(() => null),
              "Positions",
              "Live spurs",
              "Positions",
              "Live spurs",
              ...after.map(() => null),
            ],
            ...ROWS.map((row): Cells => [...row.slice(0, 7), 9, 9, ...row.slice(7)]),
          ]),
          merged: [
            { row: 0, column: 7, rows: 1, columns: 2 },
            { row: 0, column: 9, rows: 1, columns: 2 },
          ],
        };
      })(),
    ],
    wanted: "exact",
    says: ["yearTaken"],
  },
  "the same sheet twice, the copy called Counts (2)": {
    areas: [areaOf("Counts", [HEADS, ...ROWS]), areaOf("Counts (2)", [HEADS, ...ROWS])],
    wanted: "unplaced",
    finds: ["sameCordonTwice"],
  },
  "a sheet a row named E2, keys in no column": {
    areas: groups().map(({ block, row, from, to }) =>
      areaOf(`${block[0]}${row}`, [
        headsWithout("Block", "Row"),
        ...without(ROWS.slice(from, to), "Block", "Row"),
      ]),
    ),
    wanted: "unplaced",
    says: ["keys"],
  },
  "lengths in two columns, feet and inches": {
    areas: [
      areaOf("Counts", [
        HEADS.flatMap((head) => (head === "Length (ft)" ? ["Length ft", "in"] : [head])),
        ...TRUTH.map((row, i): Cells =>
          ROWS[i].flatMap((cell, c): Cells => {
            const inches = Math.round(feet(row) * 12);
            return HEADS[c] === "Length (ft)" ? [Math.floor(inches / 12), inches % 12] : [cell];
          }),
        ),
      ]),
    ],
    wanted: "exact",
    says: ["twoParts"],
    roughly: 0.0254 / 2 + 0.0001,
  },
  "vines numbered on through all rows of a block, without a Row column": {
    areas: [
      areaOf("Counts", [
        headsWithout("Row"),
        ...without(written({ Vine: ({ vine_row, vine }) => 100 * Number(vine_row) + Number(vine) }), "Row"),
      ]),
    ],
    wanted: "unplaced",
    says: ["keys"],
  },
  "vines from the far end of the walk": {
    areas: [
      areaOf("Counts", [
        HEADS,
        ...vines()
          .reverse()
          .flatMap((vine) => vine.map(cells)),
      ]),
    ],
    wanted: "exact",
  },
  "a crew each in a sheet, one in Spanish and metres, columns in another order": {
    areas: [
      areaOf("AB", [HEADS, ...ROWS.slice(0, 150)]),
      areaOf("MK", [
        [
          "Fecha",
          "Pitones vivos",
          "Posiciones",
          "Largo, m",
          "Tronco",
          "Cordón",
          "Lado",
          "Planta",
          "Hilera",
          "Cuartel",
        ],
        ...TRUTH.slice(150).map(
          (row): Cells =>
            [
              day(row),
              row.live_spurs,
              row.positions,
              row.length,
              row.trunk,
              row.cordon,
              row.side === "left" ? "izq" : "der",
              row.vine,
              row.vine_row,
              row.block,
            ] as Cells,
        ),
      ]),
    ],
    wanted: "exact",
    roughly: 0.016,
  },
};

const TODAY = serialOf(2026, 2, 20);

test.each(Object.keys(KINDS))("%s: no count but the true one, nothing missing without a word", (name) => {
  const { areas, wanted, truth = (row: CountedRow) => row, roughly, says = [], finds = [] } = KINDS[name];
  const wide = name.startsWith("left arm");
  const counted = (
    wide
      ? vines()
          .filter((vine) => new Set(vine.map(({ side }) => side)).size === vine.length)
          .flat()
          .map(({ cordon: _, ...row }) => row)
      : TRUTH
  ).map(truth);
  const season = readSeason(areas);
  const { notes, questions, leftOut } = season.account;
  const before = againstTruth(rowsRead(season), counted, roughly);
  if (wanted !== "unplaced") expect(before.wrong).toEqual([]);
  const said = [...[...notes, ...questions].map(({ code }) => code), ...leftOut.map(({ reason }) => reason)];
  expect(said).toEqual(expect.arrayContaining([...says]));
  const found = allFindings(season, { today: TODAY });
  expect(found.map(({ code }) => code)).toEqual(expect.arrayContaining([...finds]));
  if (wanted === "exact") {
    expect(before.missing).toEqual([]);
    expect(questions).toEqual([]);
  } else expect(questions.length + leftOut.length + found.length).toBeGreaterThan(0);
  if (questions.length > 0 && wanted !== "unplaced") {
    const after = readSeason(areas, { answers: firstAnswers(season) });
    const exact = againstTruth(rowsRead(after), counted, roughly);
    expect(exact.wrong).toEqual([]);
    if (wanted === "ask") expect([questions.length, exact.missing]).toEqual([1, []]);
  }
  const causes = new Map<string, number>();
  for (const { code } of findingGroups(found, season)) causes.set(code, (causes.get(code) ?? 0) + 1);
  expect([...causes].filter(([, of]) => of > 3)).toEqual([]);
});

describe("keys that sheets do not tell", () => {
  const shortNamed = KINDS["a sheet a row named E2, keys in no column"].areas;

  test("are one question for all sheets, and their rows are exact with the places that their names could mean", () => {
    const season = readSeason(shortNamed);
    expect(season.account.questions).toHaveLength(1);
    expect(questionSentence(season.account.questions[0], "en")).toBe(
      "E1, E2, E3, E4, P1, P2, P3: no column, caption or name tells Block, Row. Which is it?",
    );
    expect(allFindings(season).map(({ code }) => code)).not.toContain("missingColumn");
    const after = readSeason(shortNamed, { answers: firstAnswers(season) });
    const truth = TRUTH.map((row) => ({ ...row, block: String(row.block)[0] }));
    expect(againstTruth(rowsRead(after), truth)).toEqual({ wrong: [], missing: [] });
    expect(after.account.questions).toEqual([]);
  });

  test.each(["Block", "Row", "Vine"])(
    "%s in no column: no row is used and none is decided, as is said",
    (head) => {
      const season = readSeason([areaOf("Counts", [headsWithout(head), ...without(ROWS, head)])]);
      expect([...decideSeason(season)]).toEqual([]);
      expect(usedSentence(season.used.account(), "en")).toBe(
        `Worked out from 0 of 451 rows of the Cordons sheets. Left out: 451 where ${head} has no column (first in Counts, row 2).`,
      );
      expect(season.account.questions.map(({ facts }) => facts.columns)).toEqual([[head.toLowerCase()]]);
      expect(allFindings(season).map(({ code }) => code)).not.toContain("missingColumn");
    },
  );

  test("two cordons of a vine without sides are to be recounted, with their places; a single one needs no side", () => {
    const sheets = [
      areaOf("Counts", [
        ["Block", "Row", "Vine", "Cordon", "Trunk", "Positions", "Live spurs"],
        ["North", 1, 1, "A", 1, 8, 6],
        ["North", 1, 1, "B", 2, 8, 7],
        ["North", 1, 2, "A", 1, 8, 6],
      ]),
    ];
    const season = readSeason(sheets);
    const [first, second] = decideSeason(season);
    expect(
      first.recount.map(({ sheet, sheetRow, column, reason }) => [sheet, sheetRow, column, reason]),
    ).toEqual([
      ["Counts", 2, "side", "noColumn"],
      ["Counts", 3, "side", "noColumn"],
    ]);
    expect(first.toDecide.recount).toEqual(["Counts C2", "Counts C3"]);
    expect(second.recount).toEqual([]);
    expect(usedSentence(season.used.account(), "en")).toBe(
      "Worked out from 1 of 3 rows of the Cordons sheets. Left out: 2 where Side has no column (first in Counts, row 2).",
    );
    const oneArm = areaOf("Settings", [
      ["Setting", "Value", "Unit"],
      ["Cordons on a vine", 1, ""],
    ]);
    expect(readSeason([...sheets, oneArm]).used.account().used).toBe(3);
  });
});
