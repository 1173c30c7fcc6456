import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { FILE_PROBLEMS } from "../../../src/texts/fileProblems";
import { csvCell } from "../../../src/workbook/file/csvArea";
import { decimalSignOf, likelyDelimiter } from "../../../src/workbook/file/csvReading";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";

async function read(text: string | Uint8Array) {
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  const book = await openWorkbookBytes("counts.csv", bytes);
  return { area: await book.readSheet("counts"), reading: book.csv };
}

test.each([
  ["commas and points", "Block,Row,Length\nNorth,1,2.5\n", ",", ".", [["North", 1, 2.5]]],
  ["semicolons and decimal commas", "Block;Row;Length\nNorth;1;2,5\n", ";", ",", [["North", 1, 2.5]]],
  ["tabs", "Block\tRow\tLength\nNorth\t1\t2.5\n", "\t", ".", [["North", 1, 2.5]]],
  ["many decimal commas a line", "Block;A;B;C;D\nN;1,5;2,5;3,5;4,5\n", ";", ",", [["N", 1.5, 2.5, 3.5, 4.5]]],
  ["decimal commas in quotes", 'Block,Length\nNorth,"2,5"\n', ",", ",", [["North", 2.5]]],
  ["a line that names the delimiter", "sep=;\r\nBlock;Row\r\nNorth;1\r\n", ";", ".", [["North", 1]]],
  ["leading zeros", "Block,Cane\n007,0012\n", ",", ".", [["007", "0012"]]],
  ["zero and fractions", "A,B,C\n0,0.5,-3\n", ",", ".", [[0, 0.5, -3]]],
  [
    "numbers too long to be counted with",
    "A,B\n12345678901234567890,1\n",
    ",",
    ".",
    [["12345678901234567890", 1]],
  ],
  ["what looks like an exponent", "Block,Row\n1E5,1\n", ",", ".", [["1E5", 1]]],
  [
    "a line end inside quotes",
    'Block,Note\nNorth,"wire\r\nbroken"\nSouth,ok\n',
    ",",
    ".",
    [
      ["North", "wire\nbroken"],
      ["South", "ok"],
    ],
  ],
  ["doubled quotes", 'Block,Note\nNorth,"5"" wire"\n', ",", ".", [["North", '5" wire']]],
  ["short rows", "A,B,C\n1\n", ",", ".", [[1, null, null]]],
  ["rows past the headers", "A,B\n1,2,3\n", ",", ".", [[1, 2, 3]]],
  ["text that looks like a formula", "A,B\n=1+1,@x\n", ",", ".", [["=1+1", "@x"]]],
  ["lines of an old Mac", "A,B\r1,2\r", ",", ".", [[1, 2]]],
  [
    "mixed line ends",
    "A,B\r\n1,2\n3,4\r\n",
    ",",
    ".",
    [
      [1, 2],
      [3, 4],
    ],
  ],
] as const)("reads %s", async (_what, text, delimiter, decimal, rows) => {
  const { area, reading } = await read(text);
  expect(reading).toMatchObject({ delimiter, decimal });
  expect(area.values.slice(1)).toEqual(rows);
  expect(area).toMatchObject({ sheet: "counts", firstRow: 1, firstColumn: 1 });
});

test("blank lines in between keep the row numbers, at the end they are left out", async () => {
  const { area } = await read("A,B\n1,2\n\n3,4\n\n\n");
  expect(area.values).toEqual([
    ["A", "B"],
    [1, 2],
    [null, null],
    [3, 4],
  ]);
});

test("a carriage return within a line of a CRLF file is told from one before its end", async () => {
  const head = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs";
  const lines = [
    "N,1,1,left,A,1,3,8,7\r",
    "N,1,2,left,A,1,3,8\r,7",
    "N,1,3,left,A,1,3,8,7\rN,1,4,left,A,1,3,8,7",
    "N,1,5,left,A,1,3,8,7",
  ];
  const { area } = await read([head, ...lines, ""].join("\r\n"));
  const season = readSeason([area]);
  const found = allFindings(season).filter(({ severity }) => severity === "wrong");
  expect(found.map(({ code, row }) => [code, row])).toEqual([
    ["extraCells", 3],
    ["extraCells", 4],
  ]);
  const [table] = season.tables("cordons");
  expect([...table.column("liveSpurs")!.usable]).toEqual([7, NaN, NaN, 7]);
});

test("takes words from any usual encoding", async () => {
  const words = "Block;Note\nViñedo;éçü\n";
  const utf16 = Buffer.from("\ufeff" + words, "utf16le");
  const expected = ["Viñedo", "éçü"];
  expect((await read(words)).area.values[1]).toEqual(expected);
  expect((await read(Buffer.from("\ufeff" + words))).area.values).toEqual([["Block", "Note"], expected]);
  expect(await read(utf16)).toMatchObject({ reading: { encoding: "utf-16le" } });
  expect((await read(utf16)).area.values[1]).toEqual(expected);
  const windows = Buffer.from(words, "latin1");
  expect(await read(windows)).toMatchObject({ reading: { encoding: "windows-1252" } });
  expect((await read(windows)).area.values[1]).toEqual(expected);
});

/** Bytes of texts in code pages that Node does not write, by the table of each (unicode.org, VENDORS/MICSFT and APPLE). */
const CODE_PAGES = {
  macintosh: { é: 0x8e, ñ: 0x96, ô: 0x99, á: 0x87, ú: 0x9c, í: 0x92, Ñ: 0x84, ç: 0x8d },
  cp850: { á: 0xa0, é: 0x82, ñ: 0xa4, ô: 0x93, ú: 0xa3, í: 0xa1, Ñ: 0xa5, ç: 0x87, "½": 0xab },
} as const;
const inCodePage = (text: string, page: Readonly<Record<string, number>>) =>
  Uint8Array.from([...text], (letter) => page[letter] ?? letter.charCodeAt(0));

test.each([
  ["macintosh", "Viñedo Peña"],
  ["macintosh", "Côte Bénie"],
  ["macintosh", "Málaga"],
  ["macintosh", "García Núñez"],
  ["macintosh", "VIÑEDO"],
  ["macintosh", "Façade"],
  ["cp850", "Viñedo Peña"],
  ["cp850", "Côte Bénie"],
  ["cp850", "García Núñez"],
  ["cp850", "VIÑEDO"],
  ["cp850", "Façade"],
  ["cp850", "Guzmán"],
  ["cp850", "Tomás"],
  ["cp850", "Málaga"],
  ["cp850", "Sánchez"],
  ["cp850", "parcela más alta"],
  ["cp850", "cuadrángulo"],
  ["cp850", "árbol"],
  ["cp850", "Ibáñez"],
  ["cp850", "Ñora"],
] as const)("a name that %s wrote is read as %s", async (encoding, name) => {
  const { area, reading } = await read(inCodePage(`Block,Row\n${name},1\n`, CODE_PAGES[encoding]));
  expect(reading).toMatchObject({ encoding });
  expect(area.values[1]).toEqual([name, 1]);
});

test.each([
  "Viñedo",
  "Côte Bénie",
  "Château l’Été",
  "North\u00a0Bench",
  "Block\u00a0B",
  "Row\u00a0B\u00a0left",
  "CLOS\u00a0B",
  "clos\u00a0neuf",
  "pruned\u00a0by",
  "2\u00a0m",
  "Yield\u00a0kg",
  "Hauteur\u00a0:",
  "north \u00a0 bench",
  "clôture à 2 m – dehors",
  "5 ½ ft",
  "cœur",
])("%s from Windows stays as it is", async (name) => {
  const high: Record<string, number> = { "’": 0x92, "–": 0x96, œ: 0x9c };
  const { area, reading } = await read(inCodePage(`Block,Row\n${name},1\n`, high));
  expect(reading).toMatchObject({ encoding: "windows-1252" });
  expect(area.values[1]).toEqual([name, 1]);
});

test.each([
  ["Ju\u00a0rez", "Juárez"],
  ["clos\u00a0neuf", "closáneuf"],
  ["Panam\u00a0", "Panamá"],
  ["Arganz\u00a0", "Arganzá"],
])("where nothing tells a no-break space from an á, %j is asked about", async (text, other) => {
  const { reading } = await read(inCodePage(`Block,Row\n${text},1\n`, {}));
  expect(reading).toMatchObject({ encoding: "windows-1252", doubt: { text, other } });
  const sure = await read(inCodePage(`Block,Row\n${text},1\nVi\u00f1edo,2\n`, {}));
  expect(sure.reading!.doubt).toBeUndefined();
});

test.each(["utf16le", "utf16be"] as const)(
  "letters of two bytes are known without a mark: %s",
  async (order) => {
    const bytes = Buffer.from("Block;Row\nViñedo;1\n", "utf16le");
    const { area } = await read(order === "utf16le" ? bytes : bytes.swap16());
    expect(area.values).toEqual([
      ["Block", "Row"],
      ["Viñedo", 1],
    ]);
  },
);

test("lines of prose with commas above a file of semicolons part no cells", async () => {
  const prose = "Counts, January 2026, by A, B and C\nwind, cold, 3 days, dry, quiet, late\n\n";
  const { area, reading } = await read(`${prose}Block;Row;Length\nNorth;1;2,5\nNorth;2;2,6\nNorth;3;2,4\n`);
  expect(reading).toMatchObject({ delimiter: ";", decimal: "," });
  expect(area.values.slice(3)).toEqual([
    ["Block", "Row", "Length"],
    ["North", 1, 2.5],
    ["North", 2, 2.6],
    ["North", 3, 2.4],
  ]);
});

test.each([
  ["points that may part thousands", "1.250", "undecided", "1.250"],
  ["points and commas in one number", "1.250,5", ",", "1.250,5"],
  ["points that are decimals", "1.25", ".", 1.25],
  ["no-break spaces that part thousands", "1\u00a0250", ".", "1\u00a0250"],
])("among semicolons %s are asked about or certain", async (_what, written, decimal, value) => {
  const { area, reading } = await read(`Block;Picked (kg)\nNorth;${written}\n`);
  expect(reading).toMatchObject({ decimal });
  expect(area.values[1]).toEqual(["North", value]);
});

test.each([
  ["only points", [["2.5"], ["3"]], "."],
  ["only commas that cannot be thousands", [["2,5"], ["1,234"]], ","],
  ["a zero before the comma", [["0,196"]], ","],
  ["commas that may be thousands", [["1,234"], ["12,345"]], "undecided"],
  ["thousands with decimal points beside them", [["1,234"], ["2.5"]], "."],
  ["both signs as decimals", [["2,5"], ["2.5"]], "undecided"],
  ["no sign at all", [["2"], ["x, y"]], "."],
])("decides on %s", async (_what, records, expected) => {
  expect(await decimalSignOf([records])).toBe(expected);
});

test("leaves numbers as text where the decimal sign cannot be told", () => {
  expect(csvCell("1,234", "undecided")).toBe("1,234");
  expect(csvCell("1,234", ".")).toBe("1,234");
  expect(csvCell("12", "undecided")).toBe(12);
});

test("finds the delimiter below a title line and in a file of one column", () => {
  expect(likelyDelimiter("Counts of January\n\nBlock;Row;Length\nNorth;1;2,5\n")).toBe(";");
  expect(likelyDelimiter("Block\nNorth\n")).toBe(",");
});

test("refuses binary files, quotes that never close and empty files", async () => {
  await expect(read(Uint8Array.from([0x41, 0, 0x42]))).rejects.toMatchObject({ code: "notText" });
  await expect(read('A,B\n1,"open\n2,3\n')).rejects.toMatchObject({
    code: "openQuote",
    facts: { file: "counts.csv", row: 2 },
  });
  await expect(openWorkbookBytes("a.csv", new Uint8Array())).rejects.toMatchObject({ code: "emptyFile" });
  expect(Object.keys(FILE_PROBLEMS)).toEqual(expect.arrayContaining(["notText", "openQuote", "emptyFile"]));
});

test("is a sheet named after the file", async () => {
  const book = await openWorkbookBytes("North Bench 2026.csv", new TextEncoder().encode("Block,Row\nN,1\n"));
  expect(book.sheetNames).toEqual(["North Bench 2026"]);
  expect((await book.readSheet("North Bench 2026")).values).toEqual([
    ["Block", "Row"],
    ["N", 1],
  ]);
  await expect(book.readSheet("other")).rejects.toMatchObject({ code: "noSheet" });
});
