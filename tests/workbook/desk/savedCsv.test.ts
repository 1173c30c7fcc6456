import type { CellValue } from "../../../src/survey/sheets/cell";
import { savedCsv } from "../../../src/workbook/desk/savedCsv";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { READ_LIMITS } from "../../../src/workbook/file/readLimits";

const bytes = (text: string) => new TextEncoder().encode(text);

/** What is saved after these cells were changed, by "row column" from 1. */
async function saved(
  original: Uint8Array,
  changed: Readonly<Record<string, CellValue>> = {},
  format?: string,
): Promise<Uint8Array> {
  const open = await openWorkbookBytes("counts.csv", original);
  const { values } = await open.readSheet("counts");
  const now = values.map((row) => [...row]);
  for (const [place, value] of Object.entries(changed)) {
    const [row, column] = place.split(" ").map(Number);
    (now[row - 1] ??= [])[column - 1] = value;
  }
  while (now.at(-1)?.every((value) => value === null)) now.pop();
  return savedCsv(
    "counts.csv",
    original,
    { firstRow: 1, firstColumn: 1, values: now.map((row) => Array.from(row, (value) => value ?? null)) },
    () => format,
    READ_LIMITS,
  );
}
const savedText = async (...given: [string, Readonly<Record<string, CellValue>>, string?]) =>
  new TextDecoder("utf-8", { ignoreBOM: true }).decode(await saved(bytes(given[0]), given[1], given[2]));

describe("a csv file with what was changed in it", () => {
  test.each([
    "Block,Row\nNorth Bench,1\n",
    '\ufeffsep=;\r\nBloc;Poids\r\n"a;b";3,50\r\n\r\n',
    "Block\tNote\nA\t=1+1",
  ])("%j is the same byte for byte where nothing was changed", async (text) => {
    expect(Buffer.compare(await saved(bytes(text)), bytes(text))).toBe(0);
  });

  test("what nobody changed stays as it was written, and what was typed is written in the file's own way", async () => {
    expect(
      await savedText('\ufeffsep=;\r\nBloc;Poids;Nota\r\nA;3,50;=x\r\nB;4;"o""k"\r\n', {
        "3 2": 4.25,
        "3 3": "=1+1",
        "4 1": "C;D",
      }),
    ).toBe('\ufeffsep=;\r\nBloc;Poids;Nota\r\nA;3,50;=x\r\nB;4,25;\'=1+1\r\n"C;D"\r\n');
  });

  test("rows that are gone at the end are gone, and a day is written year first", async () => {
    // From 1899-12-30: 2 days to 1900, 124 x 365 + 30 leap days to 2024, 31 + 27 to 28 February: 2 + 45290 + 58 = 45350.
    expect(
      await savedText("Block,Day\nA,x\nB,y\n", { "2 2": 45_350, "3 1": null, "3 2": null }, "yyyy-mm-dd"),
    ).toBe("Block,Day\nA,2024-02-28\n");
  });

  test("a number that is no day of a spreadsheet stays a number, whatever its cell shows days", async () => {
    const changed = { "2 2": 1e20, "3 2": -4, "4 2": 2_958_465 };
    // The last day of a spreadsheet is 31 December 9999, serial 2,958,465.
    expect(await savedText("Block,Counted on\nA,\nB,\nC,\n", changed, "yyyy-mm-dd")).toBe(
      "Block,Counted on\nA,100000000000000000000\nB,-4\nC,9999-12-31\n",
    );
  });

  test("letters of an old encoding are kept, in UTF-8 with its mark once something was changed", async () => {
    const old = Buffer.from("Bloque,Nota\nPe\u00f1a,a\nViña,b\n", "latin1");
    expect(Buffer.compare(await saved(old), old)).toBe(0);
    expect(new TextDecoder("utf-8", { ignoreBOM: true }).decode(await saved(old, { "2 2": "ž" }))).toBe(
      "\ufeffBloque,Nota\nPeña,ž\nViña,b\n",
    );
  });
});
