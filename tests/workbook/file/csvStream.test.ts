import fc from "fast-check";
import Papa from "papaparse";
import { csvArea, csvCell, csvRows } from "../../../src/workbook/file/csvArea";
import { decideCsv, likelyDelimiter } from "../../../src/workbook/file/csvReading";
import { csvRecords } from "../../../src/workbook/file/csvRecords";
import { bytesSource, type CsvSource } from "../../../src/workbook/file/csvSource";
import {
  oneByteDecoder,
  oneByteEncoding,
  type LikelyEncoding,
} from "../../../src/workbook/file/oneByteEncoding";
import { openCsv } from "../../../src/workbook/file/openWorkbook";
import { READ_LIMITS } from "../../../src/workbook/file/readLimits";
import type { SheetRow } from "../../../src/workbook/file/sheetRows";
import { WorkbookProblem } from "../../../src/workbook/surveyWorkbook";

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

/** Pieces of csv that mean something together: signs, quotes in good and bad places, line ends of every kind. */
const piece = fc.constantFrom(
  ...[",", ";", "\t", '"', '""', '",', '"\n', '\n"', "\r", "\n", "\r\n", " ", ",,,", "\n\n", "\ufeff"],
  ...["1", "0", "-", "2,5", "1,234", "1.234", "2.5", '"2,5"', '" 1,234 "', "007", "12345678901234567"],
  ...["é", "\u00a0", "a", "North", "sep=;\n", "€", "🍇"],
);
const top = fc.constantFrom("", "", "\ufeff", "sep=;\n", "sep=,\r\n", "SEP=|\r", "sep=1\n", "sep=;");
const csvText = fc.tuple(top, fc.array(piece, { maxLength: 30 })).map((parts) => parts.flat().join(""));
const utf16 = (text: string) => Buffer.from(`\ufeff${text}`, "utf16le");
const csvBytes: fc.Arbitrary<Uint8Array> = fc
  .tuple(
    csvText,
    fc.constantFrom<(text: string) => Uint8Array>(
      (text) => new TextEncoder().encode(text),
      (text) => Buffer.from(text, "latin1"),
      utf16,
      (text) => utf16(text).swap16(),
    ),
    fc.constantFrom(0, 0, 0, 1),
  )
  .map(([text, encode, missing]) => {
    const bytes = encode(text);
    return bytes.subarray(0, bytes.length - missing);
  });

/** What encoding of two bytes a letter the zeros of a file without a mark give away. */
function wideByZeros(bytes: Uint8Array): string | undefined {
  const start = bytes.subarray(0, bytes.length & ~1);
  const zeros = (odd: number) => start.filter((byte, at) => (at & 1) === odd && byte === 0).length;
  const letters = start.length / 2;
  if (letters < 4) return undefined;
  if (zeros(0) === 0 && zeros(1) > 0.7 * letters) return "utf-16le";
  return zeros(1) === 0 && zeros(0) > 0.7 * letters ? "utf-16be" : undefined;
}

/** Every decision and cell of a file by reading its text as a whole, with Papa Parse. */
async function readWhole(bytes: Uint8Array) {
  const fits = (encoding: string) => {
    try {
      return new TextDecoder(encoding, { fatal: true }).decode(bytes).length >= 0;
    } catch {
      return false;
    }
  };
  let doubt: LikelyEncoding["doubt"];
  const ofOneByte = async () => {
    const likely = await oneByteEncoding(bytesSource("counts.csv", bytes));
    doubt = likely.doubt;
    return likely.encoding;
  };
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "utf-16le"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "utf-16be"
        : (wideByZeros(bytes) ?? (fits("utf-8") ? "utf-8" : await ofOneByte()));
  const decoder = encoding === "cp850" ? undefined : new TextDecoder(encoding);
  const decoded = decoder
    ? decoder.decode(bytes, { stream: true }) + decoder.decode()
    : oneByteDecoder("cp850")(bytes);
  const announced = /^sep=([^\r\n])(?:\r\n|\r|\n|$)/i.exec(decoded);
  const below = announced ? decoded.slice(announced[0].length) : decoded;
  const text = below.includes("\n") ? below.replace(/\r\n/g, "\n") : below.replace(/\r/g, "\n");
  const delimiter = announced?.[1] ?? likelyDelimiter(text);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: "\n" });
  const quote = errors.find(({ type }) => type === "Quotes");
  if (quote) return { code: "openQuote", facts: { file: "counts.csv", row: quote.row! + 1 } };
  const last = data.map((record) => record.some((each) => each.trim() !== "")).lastIndexOf(true);
  const records = data
    .slice(0, last + 1)
    .map((record) => [...record.slice(0, -1), record.at(-1)!.replace(/\r+$/, "")]);
  const numbers = records.flat().map((each) => each.trim());
  const thousands = delimiter === "," ? /^$/ : /^-?[1-9]\d{0,2}(?:\.\d{3})+$/;
  const both = delimiter === "," ? /^$/ : /^-?[1-9]\d{0,2}(?:\.\d{3})+,\d+$/;
  const commas = numbers.filter((each) => /^-?\d+,\d+$/.test(each) || (each !== "" && both.test(each)));
  const decimals = commas.some((each) => !/^-?[1-9]\d{0,2},\d{3}$/.test(each));
  const points = numbers.some((each) => /^-?\d+\.\d+$/.test(each) && !thousands.test(each));
  const mayBeThousands = !points && numbers.some((each) => each !== "" && thousands.test(each));
  const decimal =
    commas.length === 0
      ? mayBeThousands
        ? "undecided"
        : "."
      : points && !decimals
        ? "."
        : decimals && !points
          ? ","
          : "undecided";
  const width = Math.max(0, ...records.map((record) => record.length));
  const values = records.map((record) =>
    Array.from({ length: width }, (_, index) => csvCell(record[index] ?? "", decimal)),
  );
  return { reading: { encoding, delimiter, decimal, hiddenLines: announced ? 1 : 0, doubt }, values };
}

test("any text in any encoding, cut anywhere, is decided on and read as in one piece", async () => {
  let refused = 0;
  let read = 0;
  await fc.assert(
    fc.asyncProperty(
      csvBytes.filter((bytes) => bytes.length > 0),
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 5 }),
      async (bytes, lengths) => {
        const outcome = await openCsv(cut(bytes, lengths), READ_LIMITS)
          .then(async (book) => ({
            reading: book.csv,
            values: (await book.readSheet("counts")).values,
          }))
          .catch((error: unknown) => {
            if (!(error instanceof WorkbookProblem)) throw error;
            return { code: error.code, facts: error.facts };
          });
        expect(outcome).toEqual(await readWhole(bytes));
        if ("code" in outcome) refused++;
        else read++;
      },
    ),
    { numRuns: 4000, seed: 11 },
  );
  expect(Math.min(refused, read)).toBeGreaterThan(500);
});

test("the signs between 128 and 159 are those of windows-1252", async () => {
  const bytes = Uint8Array.from([0x4e, 0x2c, 0x80, 0x92, 0x96, 0x9f, 0x0a]);
  const book = await openCsv(bytesSource("counts.csv", bytes), READ_LIMITS);
  expect(book.csv).toMatchObject({ encoding: "windows-1252" });
  expect((await book.readSheet("counts")).values).toEqual([["N", "\u20ac\u2019\u2013\u0178"]]);
});

test("a file that no longer fits what was decided on is refused", async () => {
  let opened = 0;
  const book = await openCsv(
    {
      file: "counts.csv",
      async *chunks() {
        yield Uint8Array.from([0x41, 0x0a, opened++ < 2 ? 0x42 : 0xff]);
      },
    },
    READ_LIMITS,
  );
  await expect(book.readSheet("counts")).rejects.toMatchObject({ code: "changedMeanwhile" });
});

test("trailing blank records do not count as cells, blank ones in between do", async () => {
  const limits = { ...READ_LIMITS, cells: 12 };
  const read = async (text: string) =>
    (await openCsv(bytesSource("counts.csv", new TextEncoder().encode(text)), limits)).readSheet("counts");
  expect((await read("A,B\n1,2\n,,,,,,,\n,,,,,,,\n")).values).toHaveLength(2);
  expect((await read("A,B\n,,,\n1,2\n")).values[0]).toEqual(["A", "B", null, null]);
  await expect(read("A,B\n,,,,\n1,2\n")).rejects.toMatchObject({ code: "tooManyCells" });
});

test("the delimiter of a file with a long start is told from whole lines", async () => {
  const text = `A,B;C\n1,2;3\n4,${"x".repeat(1_200_000)};5\n`;
  const book = await openCsv(bytesSource("counts.csv", new TextEncoder().encode(text)), READ_LIMITS);
  expect(book.csv).toMatchObject({ delimiter: ";" });
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
