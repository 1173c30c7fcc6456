import { inspect, isDeepStrictEqual } from "node:util";
import * as fc from "fast-check";
import { csvCell } from "../../src/workbook/file/csvArea";
import { csvLine, type CsvValue } from "../../src/workbook/csvText";
import { FileWorkbook } from "../../src/workbook/file/fileWorkbook";
import { openWorkbookBytes } from "../../src/workbook/file/openWorkbook";
import { movableFormula } from "../../src/workbook/file/movableFormula";
import { shownFormula, storedFormula } from "../../src/workbook/storedFormula";
import { WorkbookProblem } from "../../src/workbook/surveyWorkbook";
import { FILE_PROBLEMS } from "../../src/texts/fileProblems";
import { WORKBOOK_PROBLEMS } from "../../src/texts/workbook";
import { xmlText } from "../../src/workbook/file/xmlSpans";
import { evaluateFormula } from "../../src/functions/evaluateFormula";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { findingSentence } from "../../src/survey/checks/findingSentence";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { gapsOfSeason } from "../../src/survey/season/gapsOfSeason";
import { readSeason } from "../../src/survey/reading/readSeason";
import { SHEETS } from "../../src/survey/sheets/sheets";
import type { CellValue } from "../../src/survey/sheets/cell";
import type { SheetArea } from "../../src/survey/reading/sheetArea";
import { cellName } from "../../src/workbook/address";
import { layout, mustBeExactOrAsked, sheetsOf, unitOf } from "./layouts";
import { buildWorkbook } from "../workbook/file/buildWorkbook";
import { rowsTold, withoutPlainRows } from "../workbook/file/sheetText";

/** One property that must hold whatever comes in, with the share of all cases that it gets. */
export interface Property {
  readonly name: string;
  readonly share: number;
  /** @param onCase hears after each case that held */
  check(parameters: { readonly numRuns: number; readonly seed: number }, onCase?: () => void): Promise<void>;
}

const text = fc.oneof(
  { weight: 6, arbitrary: fc.string({ unit: "binary", maxLength: 12 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      "=1+1",
      "+1",
      "-1",
      "@x",
      "\t=1",
      "007",
      "<b>&\"'",
      "_x000D_",
      "\u0000",
      "\ud800",
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom("North Bench", "left", "sound", "2026-01-12", "3 ft", "total", "__proto__"),
  },
);
const cell: fc.Arbitrary<CellValue> = fc.oneof(
  text,
  fc.integer({ min: -3, max: 60 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.boolean(),
  fc.constant(null),
  fc.constantFrom("#N/A", "#DIV/0!").map((error) => ({ error })),
);

/** A sheet of counts with headers of ours in any order, others between them, and anything in its cells. */
const countSheet: fc.Arbitrary<SheetArea> = fc.constantFrom(...Object.values(SHEETS)).chain((shape) =>
  fc
    .shuffledSubarray([...shape.columns.map(({ header }) => header.en), "Mine", "Length (m)"], {
      minLength: 3,
    })
    .chain((headers) =>
      fc
        .array(fc.array(cell, { minLength: headers.length, maxLength: headers.length }), { maxLength: 8 })
        .map((rows) => ({
          sheet: shape.name.en,
          firstRow: 1,
          firstColumn: 1,
          values: [headers, ...rows],
          formulaAt: () => null,
        })),
    ),
);

function property<T>(
  name: string,
  share: number,
  arbitrary: fc.Arbitrary<T>,
  holds: (value: T) => void | Promise<void>,
): Property {
  return {
    name,
    share,
    check: (parameters, onCase) =>
      fc.assert(
        fc.asyncProperty(arbitrary, async (value) => {
          await holds(value);
          onCase?.();
        }),
        parameters,
      ),
  };
}

function must(condition: boolean, what: string): void {
  if (!condition) throw new Error(what);
}

/** How many files were refused with a sentence since the count began. */
export const OUTCOMES = { refused: 0 };

/** Something is read, or refused with a sentence; nothing else may happen. */
async function readOrRefused(read: () => Promise<void>): Promise<void> {
  try {
    await read();
  } catch (error) {
    if (!(error instanceof WorkbookProblem && error.code in WORKBOOK_SENTENCES)) throw error;
    OUTCOMES.refused++;
  }
}

const WORKBOOK_SENTENCES = { ...WORKBOOK_PROBLEMS, ...FILE_PROBLEMS };

const COUNTED = ["North Bench", 1, 2, "left", "A", 1, 2.5, 8, 7];
const COUNT_HEADS = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs";

const cellXml = (value: CellValue, address: string): string => {
  if (value === null || typeof value === "object") return "";
  if (typeof value === "boolean") return `<c r="${address}" t="b"><v>${Number(value)}</v></c>`;
  if (typeof value === "number") return `<c r="${address}"><v>${value}</v></c>`;
  return `<c r="${address}" t="inlineStr"><is><t>${xmlText(value)}</t></is></c>`;
};
const rowsXml = (rows: readonly (readonly CellValue[])[]) =>
  rows
    .map(
      (row, r) =>
        `<row r="${r + 1}">${row.map((value, c) => cellXml(value, cellName(r + 1, c + 1))).join("")}</row>`,
    )
    .join("");
const grid = fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 4 });
const seen = (value: CellValue) =>
  typeof value === "object" || (typeof value === "string" && value.trim() === "")
    ? null
    : Object.is(value, -0)
      ? 0
      : value;

const PLAIN_CELL = fc
  .tuple(
    fc.constantFrom("", ' s="2"'),
    fc.constantFrom("", ' t="s"', ' t="str"', ' t="b"'),
    fc.constantFrom("0", "1", "2.5"),
  )
  .map(
    ([style, type, value]) =>
      (r: string) =>
        `<c r="${r}"${style}${type}><v>${value}</v></c>`,
  );
const ODD_CELL = fc.constantFrom<(r: string) => string>(
  (r) => `<c r="${r}"/>`,
  (r) => `<c t="s" r="${r}"><v>1</v></c>`,
  (r) => `<c r="${r}"><f>A1&amp;"x"</f><v>3</v></c>`,
  (r) => `<c r="${r}" t="inlineStr"><is><t>&lt;/row&gt;</t></is></c>`,
  (r) => `<c r="${r}"><v>1<!-- </row> --></v></c>`,
  (r) => `<c r="${r}" t="str"><v><![CDATA[</row>]]></v></c>`,
  (r) => `<c r="${r}"><v>]]></v></c>`,
  (r) => `<c r="${r}"><v>1</v>`,
  () => `<c><v>4</v></c>`,
  () => "</row>",
);
const BETWEEN_ROWS = fc.constantFrom(
  "",
  "",
  "\n ",
  "text",
  "<row/>",
  '<!-- </row><row r="8"/>',
  " -->",
  "<?x </row>?>",
  "\u00e9",
);
const ROW_ATTRIBUTES = fc.constantFrom("", ' spans="1:4"', ' ht="1" ht="1"', " x:a='1'", ' r="3"', " ");

/** The text of a sheet's rows, most of them as spreadsheets write them, in chunks. */
const sheetText = fc
  .tuple(
    fc.array(
      fc.tuple(
        fc.oneof({ weight: 4, arbitrary: fc.constant("") }, { weight: 1, arbitrary: BETWEEN_ROWS }),
        fc.oneof({ weight: 8, arbitrary: fc.constant("") }, { weight: 1, arbitrary: ROW_ATTRIBUTES }),
        fc.array(fc.oneof({ weight: 12, arbitrary: PLAIN_CELL }, { weight: 1, arbitrary: ODD_CELL }), {
          maxLength: 4,
        }),
      ),
      { minLength: 1, maxLength: 8 },
    ),
    fc.array(fc.nat(400), { maxLength: 4 }),
  )
  .map(([rows, cuts]) => {
    const text = rows.map(
      ([between, attributes, cells], i) =>
        `${between}<row r="${i + 1}"${attributes}>${cells.map((of, c) => of(cellName(i + 1, c + 1))).join("")}</row>`,
    );
    return { text: `<worksheet><sheetData>${text.join("")}</sheetData></worksheet>`, cuts };
  });
const cutAt = (text: string, cuts: readonly number[]) => {
  const at = [0, ...cuts.map((cut) => cut % text.length).sort((a, b) => a - b), text.length];
  return at.slice(1).map((end, i) => text.slice(at[i], end));
};

/** What must hold for any sheet, formula, csv or workbook. */
export const PROPERTIES: readonly Property[] = [
  property(
    "any sheets of counts are checked; findings point at cells that exist",
    0.12,
    fc.array(countSheet, { minLength: 1, maxLength: 3 }),
    (sheets) => {
      const areas = sheets.map((area, n) => ({ ...area, sheet: `${area.sheet} ${n}` }));
      const season = readSeason(areas);
      for (const finding of allFindings(season, { today: 46190 })) {
        const area = areas.find(({ sheet }) => sheet === finding.sheet)!;
        must(finding.row >= 1 && finding.row <= area.values.length, `row ${finding.row}`);
        must(
          finding.columnNumber >= 0 && finding.columnNumber <= area.values[0].length,
          `column ${finding.columnNumber}`,
        );
        must(findingSentence(finding, "en").length > 0, "no sentence");
      }
      for (const { decision } of decideSeason(season))
        for (const { verdict } of decision.cordons) must(["stays", "goes", "ask"].includes(verdict), verdict);
      for (const { gaps, positions } of gapsOfSeason(season).rows)
        must(gaps >= 0 && gaps <= positions, "gaps");
    },
  ),
  property(
    "any text in the place of a formula gives a value or one sentence",
    0.15,
    fc.oneof(
      fc.string({ maxLength: 40 }),
      fc
        .array(
          fc.constantFrom(
            "=",
            "CORDON.",
            "NODEBUDGET",
            "SHOOTS",
            "(",
            ")",
            ",",
            ";",
            "{",
            "}",
            "1",
            "2.5",
            '"30+10"',
            "+",
            "-",
            "*",
            "%",
            " ",
          ),
          { maxLength: 16 },
        )
        .map((parts) => parts.join("")),
    ),
    (formula) => {
      const outcome = evaluateFormula(formula);
      must(
        "values" in outcome
          ? outcome.values.length > 0
          : outcome.sentence.length > 0 || outcome.code === "given",
        formula,
      );
    },
  ),
  property(
    "a known season in a layout drawn at random is read exactly or asked about",
    0.1,
    layout,
    (drawn) => mustBeExactOrAsked(sheetsOf(drawn), unitOf(drawn)),
  ),
  property("any bytes as csv are read or refused", 0.05, fc.uint8Array({ maxLength: 120 }), (bytes) =>
    readOrRefused(async () => {
      const area = await (await openWorkbookBytes("a.csv", bytes)).readSheet("a");
      must(
        area.values.every((row) => row.length === area.values[0].length),
        "ragged",
      );
    }),
  ),
  property(
    "a csv line with a cell or a carriage return too many is named and used nowhere",
    0.02,
    fc.tuple(fc.nat(4), fc.nat(COUNTED.length), fc.constantFrom("7", "x", "2,5", "-", "8,9,1"), fc.boolean()),
    async ([line, at, extra, isReturn]) => {
      const lines = Array.from({ length: 5 }, (_, i) => {
        const cells = COUNTED.map((cell, column) => String(column === 2 ? i + 1 : cell));
        if (i === line && !isReturn) cells.splice(at, 0, extra);
        if (i === line && isReturn) cells[Math.min(at, 7)] += `\r${extra}`;
        return cells.join(",");
      });
      const bytes = new TextEncoder().encode([COUNT_HEADS, ...lines, ""].join("\r\n"));
      const season = readSeason([await (await openWorkbookBytes("a.csv", bytes)).readSheet("a")]);
      const named = allFindings(season).filter(({ code }) => code === "extraCells");
      must(named.length === 1 && named[0].row === line + 2, JSON.stringify(named));
      must(!season.used.isUsed(season.tables("cordons")[0], line), "used");
    },
  ),
  property(
    "csv that we write gives back every cell, none of them a formula",
    0.18,
    fc.array(fc.array(fc.oneof(text, fc.integer(), fc.constant(null)), { minLength: 2, maxLength: 4 }), {
      minLength: 1,
      maxLength: 4,
    }),
    async (rows) => {
      const written = rows.map((row) => csvLine(row as CsvValue[])).join("\n");
      for (const line of written.split("\n")) must(!/^[=@]/.test(line), line);
      const bytes = new TextEncoder().encode(`sep=,\n${written}\n`);
      const area = await (await openWorkbookBytes("a.csv", bytes)).readSheet("a");
      rows.forEach((row, r) =>
        row.forEach((value, c) => {
          if (typeof value === "number")
            must(area.values[r]?.[c] === (Object.is(value, -0) ? 0 : value), `${value}`);
          if (typeof value === "string" && /^[\w ]{1,12}$/.test(value) && value.trim() !== "")
            must(area.values[r][c] === csvCell(value, "."), value);
        }),
      );
    },
  ),
  property(
    "formulas survive being stored and shown",
    0.1,
    fc.array(
      fc.constantFrom(
        "CORDON.SHOOTS(",
        "A1",
        "$B$2",
        ",",
        '"CORDON.X("',
        "'Bud cuts'!C3",
        "+",
        ")",
        "T[Live spurs]",
      ),
      { minLength: 1, maxLength: 8 },
    ),
    (parts) => {
      const formula = `=${parts.join("")}`;
      must(shownFormula(storedFormula(formula)) === formula, formula);
      must(movableFormula(movableFormula(formula)(3, 5))(-3, -5) === formula, formula);
    },
  ),
  property(
    "rows that need no XML parser mean what the parser makes of them",
    0.1,
    sheetText,
    async ({ text, cuts }) => {
      const told = await rowsTold(cutAt(text, cuts));
      const parsed = await rowsTold(withoutPlainRows(text));
      must(isDeepStrictEqual(told, parsed), `${inspect(told)} ${inspect(parsed)}`);
    },
  ),
  property("any cells in a workbook come back as they were", 0.08, grid, async (rows) => {
    const book = await openWorkbookBytes("a.xlsx", buildWorkbook({ sheets: { A: rowsXml(rows) } }));
    const area = await book.readSheet("A");
    rows.forEach((row, r) =>
      row.forEach((value, c) => {
        const read = area.values[r + 1 - area.firstRow]?.[c + 1 - area.firstColumn] ?? null;
        must(
          Object.is(seen(read), seen(value)),
          `${JSON.stringify(value)} came back as ${JSON.stringify(read)}`,
        );
      }),
    );
  }),
  property(
    "a damaged workbook is read or refused",
    0.05,
    fc.array(fc.tuple(fc.nat(4000), fc.nat(255)), { minLength: 1, maxLength: 4 }),
    (damage) =>
      readOrRefused(async () => {
        const bytes = SOUND.slice();
        for (const [at, byte] of damage) bytes[at % bytes.length] = byte;
        const book = await openWorkbookBytes("a.xlsx", bytes);
        for (const sheet of book.sheetNames) await book.readSheet(sheet);
      }),
  ),
  property(
    "our sheet and single cells leave every other cell alone",
    0.05,
    fc.tuple(grid, grid, fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), text)),
    async ([rows, own, [row, column, value]]) => {
      const workbook = await FileWorkbook.open("a.xlsx", buildWorkbook({ sheets: { A: rowsXml(rows) } }));
      const before = await workbook.readSheet("A");
      const headers = ["One", "Two", "Three", "Four"];
      const plain = own.map((line) => line.map((each) => (typeof each === "object" ? null : each)));
      await workbook.writeOwnSheet({ sheet: "Ours", headers, rows: plain });
      await workbook.writeCells("A", [{ row, column, value }]);
      const after = await workbook.readSheet("A");
      const at = (area: SheetArea, r: number, c: number) =>
        area.values[r - area.firstRow]?.[c - area.firstColumn] ?? null;
      for (let r = 1; r <= 8; r++)
        for (let c = 1; c <= 8; c++) {
          const expected = r === row && c === column ? value : at(before, r, c);
          must(Object.is(seen(at(after, r, c)), seen(expected)), `${r} ${c}`);
        }
      const ours = await workbook.readSheet("Ours");
      plain.forEach((line, r) =>
        line.forEach((each, c) => {
          must(Object.is(seen(at(ours, r + 2, c + 1)), seen(each)), JSON.stringify(each));
          must(ours.formulaAt(r + 2 - ours.firstRow, c + 1 - ours.firstColumn) === null, "a formula");
        }),
      );
    },
  ),
];

const SOUND = buildWorkbook({
  sheets: {
    A: rowsXml([
      ["Block", "Row"],
      ["North Bench", 1],
    ]),
  },
});
