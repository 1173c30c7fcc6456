import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { serialOf } from "../../../src/survey/reading/serialDate";
import type { Season } from "../../../src/survey/season/season";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { CORDON_HEADS } from "../cordonHeads";

/** A counted cordon; the length in feet. */
interface Counted {
  readonly block: string;
  readonly row: number;
  readonly vine: number;
  readonly side: "left" | "right";
  readonly length: number;
  readonly positions: number;
  readonly spurs: number;
  readonly day: number;
}

/** What stands in every file, however it is written. */
const TRUTH: readonly Counted[] = ["North Bench", "Viñedo Peña"].flatMap((block) =>
  [1, 2].flatMap((row) =>
    [1, 2, 3, 4, 5, 6].flatMap((vine) =>
      (["left", "right"] as const).map((side, at) => ({
        block,
        row,
        vine,
        side,
        length: (30 + ((vine * 7 + row) % 9)) / 10,
        positions: 9 - (vine % 2),
        spurs: 7 + ((vine + at) % 2),
        day: 10 + vine,
      })),
    ),
  ),
);
const HEADS = [...CORDON_HEADS, "Counted by", "Date"];
const LINES: readonly string[][] = TRUTH.map(({ block, row, vine, side, length, positions, spurs, day }) =>
  [
    block,
    row,
    vine,
    side,
    side === "left" ? "A" : "B",
    side === "left" ? 1 : 2,
    length,
    positions,
    spurs,
    "AR",
    `2026-01-${day}`,
  ].map(String),
);

type Form = (h: readonly string[], r: readonly string[][]) => string | Uint8Array;

/** Lines of cells with this sign between them. */
const j = (sign: string, heads: readonly string[], rows: readonly (readonly string[])[]) =>
  `${[heads, ...rows].map((line) => line.join(sign)).join("\r\n")}\r\n`;
const u16 = (text: string, isBigEndian = false, hasMark = false) => {
  const bytes = Buffer.from((hasMark ? "\ufeff" : "") + text, "utf16le");
  return new Uint8Array(isBigEndian ? bytes.swap16() : bytes);
};
/** The lines with one column written otherwise. */
const map = (rows: readonly string[][], at: number, write: (cell: string, line: number) => string) =>
  rows.map((line, i) => line.map((cell, column) => (column === at ? write(cell, i) : cell)));
const com = (cell: string) => cell.replace(".", ",");
const inMillimetres = (heads: readonly string[]) =>
  heads.map((head) => (head === "Length (ft)" ? "Length (mm)" : head));
const millimetres = (feet: string) => Math.round(Number(feet) * 304.8);

const FORMS: Readonly<Record<string, Form>> = {
  plain: (h, r) => j(",", h, r),
  bom: (h, r) => "\ufeff" + j(",", h, r),
  semicolon: (h, r) => j(";", h, map(r, 6, com)),
  tabs: (h, r) => j("\t", h, map(r, 6, com)),
  pipes: (h, r) => j("|", h, r),
  utf16le_nomark: (h, r) => u16(j("\t", h, r)),
  utf16be_nomark: (h, r) => u16(j(";", h, map(r, 6, com)), true),
  utf16le_bom: (h, r) => u16(j("\t", h, r), false, true),
  latin1: (h, r) => new Uint8Array(Buffer.from(j(";", h, map(r, 6, com)), "latin1")),
  preamble: (h, r) =>
    "Larkmoor Bend (invented);;;;;;;;;;\r\nWinter counts 2026;;;;;;;;;;\r\n;;;;;;;;;;\r\n" +
    j(";", h, map(r, 6, com)),
  preamble_short: (h, r) =>
    "Larkmoor Bend (invented)\r\nWinter 2026, counted by AR, BH\r\n\r\n" + j(";", h, map(r, 6, com)),
  preamble_comma: (h, r) => "Larkmoor Bend (invented)\nExported 2026-02-01\n\n" + j(",", h, r),
  sep: (h, r) => "sep=;\r\n" + j(";", h, map(r, 6, com)),
  quotedcomma: (h, r) =>
    j(
      ",",
      h,
      map(r, 6, (c) => `"${com(c)}"`),
    ),
  allquoted: (h, r) =>
    j(
      ",",
      h.map((x) => `"${x}"`),
      r.map((x) => x.map((c) => `"${c}"`)),
    ),
  nbsp: (h, r) =>
    j(
      ";",
      h.map((x) => x.replace(" ", "\u00a0")),
      r.map((x) =>
        x.map((c, k) => (k === 6 ? com(c) : k === 7 ? c + "\u00a0" : k === 0 ? c.replace(" ", "\u00a0") : c)),
      ),
    ),
  plus: (h, r) =>
    j(
      ",",
      h,
      map(
        map(r, 7, (c) => "+" + c),
        8,
        (c) => "+" + c,
      ),
    ),
  zeros: (h, r) =>
    j(
      ",",
      h,
      [1, 2, 5, 7, 8].reduce((rr, at) => map(rr, at, (c) => c.padStart(2, "0")), r),
    ),
  zeros3: (h, r) =>
    j(
      ";",
      h,
      map(
        map(
          map(r, 1, (c) => c.padStart(3, "0")),
          2,
          (c) => c.padStart(3, "0"),
        ),
        6,
        com,
      ),
    ),
  mixed: (h, r) =>
    j(
      ";",
      h,
      map(r, 6, (c, i) => (i % 2 ? com(c) : c)),
    ),
  linebreaks: (h, r) =>
    j(
      ",",
      [...h, "Note"],
      r.map((x, i) => [...x, i % 3 ? "" : '"looks thin,\nlook again ""soon"""']),
    ),
  totals: (h, r) =>
    j(";", h, map(r, 6, com)) +
    `Total;;;;;;;${r.reduce((s, x) => s + Number(x[7]), 0)};${r.reduce((s, x) => s + Number(x[8]), 0)};;\r\n`,
  subtotals: (h, r) => {
    const o: (readonly string[])[] = [];
    r.forEach((x, i) => {
      o.push(x);
      if ((i + 1) % 12 === 0) {
        const g = r.slice(i - 11, i + 1);
        o.push([
          "Total row " + x[1],
          "",
          "",
          "",
          "",
          "",
          "",
          String(g.reduce((s, y) => s + Number(y[7]), 0)),
          String(g.reduce((s, y) => s + Number(y[8]), 0)),
          "",
          "",
        ]);
      }
    });
    return j(",", h, o);
  },
  emptyheads: (h, r) =>
    j(
      ",",
      [...h.slice(0, 6), "", ...h.slice(6), "", ""],
      r.map((x) => [...x.slice(0, 6), "", ...x.slice(6), "", ""]),
    ),
  headsagain: (h, r) => {
    const o: (readonly string[])[] = [];
    r.forEach((x, i) => {
      if (i && i % 10 === 0) o.push(h);
      o.push(x);
    });
    return j(",", h, o);
  },
  pages: (h, r) => {
    const o: (readonly string[])[] = [];
    r.forEach((x, i) => {
      if (i && i % 10 === 0) {
        o.push(["Page " + (1 + i / 10)]);
        o.push([]);
        o.push(h);
      }
      o.push(x);
    });
    return j(",", h, o);
  },
  europeanMM: (h, r) =>
    j(
      ";",
      inMillimetres(h),
      map(r, 6, (c) => millimetres(c).toLocaleString("de-DE")),
    ),
  usMM: (h, r) =>
    j(
      ",",
      inMillimetres(h),
      map(r, 6, (c) => `"${millimetres(c).toLocaleString("en-US")}"`),
    ),
  swissMM: (h, r) =>
    j(
      ";",
      inMillimetres(h),
      map(r, 6, (c) => millimetres(c).toLocaleString("en-US").replace(",", "'")),
    ),
  frMM: (h, r) =>
    j(
      ";",
      inMillimetres(h),
      map(r, 6, (c) => millimetres(c).toLocaleString("en-US").replace(",", "\u202f")),
    ),
  euDec: (h, r) =>
    j(
      ";",
      inMillimetres(h),
      map(r, 6, (c) =>
        (Number(c) * 304.8).toLocaleString("de-DE", { minimumFractionDigits: 1, maximumFractionDigits: 1 }),
      ),
    ),
  crOnly: (h, r) => [h, ...r].map((x) => x.join(";")).join("\r"),
  trailingSep: (h, r) => [h, ...r].map((x) => x.join(";") + ";").join("\n") + "\n",
  extraSpaces: (h, r) => [h, ...r].map((x) => x.map((c) => "  " + c + " ").join(",")).join("\n"),
  blanklines: (h, r) => [h, ...r].map((x) => x.join(",")).join("\n\n"),
  commasLines: (h, r) =>
    [h, ...r].map((x, i) => x.join(",") + (i % 12 === 0 ? "\n,,,,,,,,,," : "")).join("\n"),
  upper: (h, r) =>
    j(
      ",",
      h.map((x) => x.toUpperCase()),
      r,
    ),
  es: (_, r) =>
    j(
      ";",
      [
        "Cuartel",
        "Hilera",
        "Planta",
        "Lado",
        "Cordón",
        "Tronco",
        "Largo (m)",
        "Posiciones",
        "Pitones vivos",
        "Contado por",
        "Fecha",
      ],
      r.map((x) =>
        x.map((c, k) =>
          k === 3
            ? c === "left"
              ? "izquierda"
              : "derecha"
            : k === 6
              ? String(Math.round(Number(c) * 304.8) / 1000).replace(".", ",")
              : k === 10
                ? c.split("-").reverse().join("/")
                : c,
        ),
      ),
    ),
  fr_mac: (_, r) =>
    j(
      ";",
      [
        "Parcelle",
        "Rang",
        "Cep",
        "Côté",
        "Cordon",
        "Tronc",
        "Longueur (cm)",
        "Emplacements",
        "Coursons vivants",
        "Compté par",
        "Date",
      ],
      r.map((x) =>
        x.map((c, k) =>
          k === 3
            ? c === "left"
              ? "gauche"
              : "droite"
            : k === 6
              ? com(String(Math.round(Number(c) * 304.8) / 10))
              : k === 10
                ? c.split("-").reverse().join(".")
                : c,
        ),
      ),
    ),
  textdates: (h, r) =>
    j(
      ",",
      h,
      map(r, 10, (c) => {
        const d = c.slice(8);
        return `${Number(d)}-Jan-26`;
      }),
    ),
  usdates: (h, r) =>
    j(
      ",",
      h,
      map(r, 10, (c) => `1/${Number(c.slice(8))}/2026`),
    ),
  unitcells: (h, r) =>
    j(
      ",",
      h,
      map(r, 6, (c) => c + " ft"),
    ),
  quotesInside: (h, r) =>
    j(
      ",",
      h,
      map(r, 0, (c) => `"${c} ""old"""`),
    ),
  excelText: (h, r) =>
    j(
      ",",
      h,
      map(
        map(r, 1, (c) => `="${c}"`),
        2,
        (c) => `="${c}"`,
      ),
    ),
  formfeed: (h, r) => j(",", h, r).replace(/\r\n/g, (m) => m) + "\u000c",
  eof: (h, r) => j(",", h, r) + "\u001a",
  noTrailingCells: (h, r) => [h, ...r.map((x) => x.slice(0, 9))].map((x) => x.join(",")).join("\n"),
  footer: (h, r) => j(",", h, r) + "\r\nEnd of export, 48 rows\r\n",
  footer2: (h, r) => j(";", h, map(r, 6, com)) + "Printed on 2026-02-01;;;;;;;;;;\r\n",
  unitsrow: (h, r) =>
    j(
      ",",
      h.map((x) => (x === "Length (ft)" ? "Length" : x)),
      [["", "", "", "", "", "", "ft", "", "", "", ""], ...r],
    ),
  twolevel: (h, r) => j(",", ["Place", "", "", "", "", "", "Counts", "", "", "", ""], [h, ...r]),
};

/** Signs that may be of decimals or of thousands: the cells stay unread and are asked about. */
const ASKED = new Set(["mixed", "europeanMM", "usMM"]);

async function read(name: string): Promise<{ season: Season; decimal: string | undefined }> {
  const content = FORMS[name](HEADS, LINES);
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  const book = await openWorkbookBytes("counts.csv", bytes);
  const rows = () => book.rows("counts");
  return {
    season: await readLargeSeason([{ sheet: "counts", isText: true, rows }]),
    decimal: book.csv?.decimal,
  };
}

/** Every row that was read, lengths in whole millimetres; undefined where a cell cannot be used. */
function rowsOf(season: Season) {
  return season.tables("cordons").flatMap((table) =>
    Array.from({ length: table.rowCount }, (_, i) => {
      const number = (id: string) => {
        const value = table.column(id)?.usable[i] ?? NaN;
        return Number.isNaN(value) ? undefined : value;
      };
      const side = table.column("side")!;
      const length = number("length");
      return {
        block: season.words.wordOf(table.column("block")!.codes[i])?.replace(/\u00a0/g, " "),
        row: number("row"),
        vine: number("vine"),
        side: side.column.choices?.[side.codes[i]]?.id,
        length: length === undefined ? undefined : Math.round(length * 1000),
        positions: number("positions"),
        spurs: number("liveSpurs"),
        day: number("countedOn"),
      };
    }),
  );
}

const wanted = (name: string) =>
  TRUTH.map((counted) => ({
    ...counted,
    block: name === "quotesInside" ? `${counted.block} "old"` : counted.block,
    // A foot is 304.8 mm.
    length: Math.round(counted.length * 304.8),
    day: name === "noTrailingCells" ? undefined : serialOf(2026, 1, counted.day),
  }));

test.each(Object.keys(FORMS).filter((name) => !ASKED.has(name)))(
  "%s: every row is read as it was counted",
  async (name) => {
    const { season } = await read(name);
    expect(rowsOf(season)).toEqual(wanted(name));
    expect(allFindings(season)).toEqual([]);
    expect(season.account.questions).toEqual([]);
  },
);

test.each([...ASKED])(
  "%s: what is not sure is asked, at most three times, and no other number is read",
  async (name) => {
    const { season } = await read(name);
    const rows = rowsOf(season);
    const truth = wanted(name);
    rows.slice(0, truth.length).forEach((row, i) => {
      expect({ ...truth[i], length: row.length ?? truth[i].length }).toEqual({
        ...row,
        length: row.length ?? truth[i].length,
      });
    });
    const groups = findingGroups(allFindings(season), season);
    expect(groups.length).toBeGreaterThan(0);
    expect(groups.length).toBeLessThanOrEqual(3);
    const open = rows.filter(({ length }) => length === undefined).length;
    expect(allFindings(season).length).toBeGreaterThanOrEqual(open);
  },
);

test("lines at the foot of a page are told, and a row that somebody began is not one of them", async () => {
  const notes = async (name: string) =>
    (await read(name)).season.account.notes.map(({ code, facts }) => [code, facts.lines]);
  // 48 rows in pages of ten: four heads come again, each below its page's number.
  expect(await notes("pages")).toEqual([
    ["headsAgain", 4],
    ["remarkLines", 4],
  ]);
  const text = `${j(",", HEADS, LINES)}North Bench,1\r\n`;
  const book = await openWorkbookBytes("begun.csv", new TextEncoder().encode(text));
  const season = await readLargeSeason([{ sheet: "begun", isText: true, rows: () => book.rows("begun") }]);
  expect(season.tables("cordons")[0].rowCount).toBe(LINES.length + 1);
  expect(new Set(allFindings(season).map(({ code }) => code))).toEqual(new Set(["missingValue"]));
});
