import fc from "fast-check";
import Papa from "papaparse";
import { csvArea, csvCell, csvRows } from "../../../src/workbook/file/csvArea";
import { decideCsv } from "../../../src/workbook/file/csvReading";
import { csvRecords } from "../../../src/workbook/file/csvRecords";
import { bytesSource, type CsvSource } from "../../../src/workbook/file/csvSource";
import { READ_LIMITS } from "../../../src/workbook/file/readLimits";
import type { SheetRow } from "../../../src/workbook/file/sheetRows";

/** A file whose bytes come in chunks of these lengths, over and over. */
function cut(bytes: Uint8Array, lengths: readonly number[]): CsvSource {
  return {
    file: "counts.csv",
    async *chunks() {
      for (let at = 0, n = 0; at < bytes.length; n++) {
        const end = at + lengths[n % lengths.length];
        yield bytes.subarray(at, end);
        at = end;
      }
    },
  };
}

async function collected<T>(batches: AsyncIterable<readonly T[]>): Promise<T[]> {
  const all: T[] = [];
  for await (const batch of batches) all.push(...batch);
  return all;
}

const cell = fc.oneof(
  fc.constantFrom(
    "",
    " ",
    "North",
    "Viñedo",
    "🍇",
    'say "cut"',
    "a;b",
    "a,b",
    "line\nend",
    "2.5",
    "2,5",
    "007",
  ),
  fc.string({ maxLength: 6 }).map((text) => text.replace(/[\0\r\ufeff]/g, "x")),
);
const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;

test("in chunks cut anywhere a file gives the records that Papa Parse reads from the whole text", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 8 }),
      fc.constantFrom(",", ";", "\t"),
      fc.constantFrom("\n", "\r\n"),
      fc.boolean(),
      fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 4 }),
      async (rows, delimiter, lineEnd, marked, lengths) => {
        const written = rows.map((row) => row.map(quoted).join(delimiter)).join(lineEnd);
        const text = `sep=${delimiter}${lineEnd}${written}${lineEnd}`;
        const source = cut(new TextEncoder().encode((marked ? "\ufeff" : "") + text), lengths);
        const { layout } = await decideCsv(source, READ_LIMITS);
        const { data } = Papa.parse<string[]>(written.replaceAll("\r\n", "\n"), { delimiter, newline: "\n" });
        const records = await collected(csvRecords(source, layout, READ_LIMITS));
        if (records.at(-1)?.join() === "" && records.length > data.length) records.pop();
        expect(records).toEqual(data);
      },
    ),
    { numRuns: 400, seed: 7 },
  );
});

test.each([
  ["utf-8", (text: string) => new TextEncoder().encode(text)],
  ["utf-16le", (text: string) => Buffer.from(`\ufeff${text}`, "utf16le")],
  ["utf-16be", (text: string) => Buffer.from(`\ufeff${text}`, "utf16le").swap16()],
  ["windows-1252", (text: string) => Buffer.from(text, "latin1")],
])("cut at every byte a file in %s reads as in one piece", async (encoding, encode) => {
  const text = 'Viñedo;Length;Note\r\n"Cañón";2,5;"é\r\nç"\r\n\r\n;;\r\n007;3,25;x\r\n\r\n';
  const bytes = encode(text);
  const read = async (source: CsvSource) => {
    const { layout, reading } = await decideCsv(source, READ_LIMITS);
    return { reading, area: await csvArea(source, { ...layout, ...reading }, "counts", READ_LIMITS) };
  };
  const whole = await read(bytesSource("counts.csv", bytes));
  expect(whole.reading).toEqual({ encoding, delimiter: ";", decimal: ",", hiddenLines: 0 });
  expect(whole.area.values).toEqual([
    ["Viñedo", "Length", "Note"],
    ["Cañón", 2.5, "é\nç"],
    [null, null, null],
    [null, null, null],
    ["007", 3.25, "x"],
  ]);
  for (let at = 1; at < bytes.length; at++) {
    const { reading, area } = await read(cut(bytes, [at, bytes.length]));
    expect({ reading, values: area.values }).toEqual({ reading: whole.reading, values: whole.area.values });
  }
});

test("rows keep the numbers that the file shows, blank ones left out", async () => {
  const source = bytesSource("counts.csv", new TextEncoder().encode("A,B\n\n1,2\n,\n3,4\n\n"));
  const { layout, reading } = await decideCsv(source, READ_LIMITS);
  const rows = await collected<SheetRow>(csvRows(source, { ...layout, ...reading }, "counts", READ_LIMITS));
  expect(rows.map(({ number, values }) => [number, ...values])).toEqual([
    [1, "A", "B"],
    [3, 1, 2],
    [5, 3, 4],
  ]);
});

test("a quote that never closes in a long file is refused where it opens, before the file is held", async () => {
  let given = 0;
  const line = new TextEncoder().encode("North,1,2.5\n".repeat(1000));
  const source: CsvSource = {
    file: "counts.csv",
    async *chunks() {
      yield new TextEncoder().encode('Block,Row,"Length\n');
      for (let n = 0; n < 5000; n++) {
        given += line.length;
        yield line;
      }
    },
  };
  const layout = { encoding: "utf-8", delimiter: ",", hiddenCharacters: 0, hasLineFeeds: true } as const;
  await expect(collected(csvRecords(source, layout, READ_LIMITS))).rejects.toMatchObject({
    code: "openQuote",
    facts: { row: 1 },
  });
  expect(given).toBeLessThan(READ_LIMITS.cellCharacters * 100);
});

test("fifteen digits are the most that make a number", () => {
  expect(
    ["1234567890.12345", "1234567890.123456", "-0.5", "1.", "+1", " 7 ", ""].map((text) =>
      csvCell(text, "."),
    ),
  ).toEqual([1234567890.12345, "1234567890.123456", -0.5, "1.", "+1", 7, null]);
});
