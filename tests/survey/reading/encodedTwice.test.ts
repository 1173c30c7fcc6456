import fc from "fast-check";
import { readOnce } from "../../../src/survey/reading/encodedTwice";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { noteSentence } from "../../../src/survey/reading/readingSentence";
import type { Season } from "../../../src/survey/season/season";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { oneByteDecoder } from "../../../src/workbook/file/oneByteEncoding";
import { areaOf } from "../area";

/** UTF-8 bytes shown letter by letter by a program that takes them for this encoding. */
const shownAs = {
  windows: (text: string) => oneByteDecoder("windows-1252")(new TextEncoder().encode(text)),
  mac: (text: string) => oneByteDecoder("macintosh")(new TextEncoder().encode(text)),
  dos: (text: string) => oneByteDecoder("cp850")(new TextEncoder().encode(text)),
  latin: (text: string) => String.fromCharCode(...new TextEncoder().encode(text)),
};
const NAMES = [
  "Côté",
  "Viñedo Peña",
  "Château l’Été",
  "Málaga",
  "Longueur à côté",
  "½ façade",
  "cœur",
  "ÉTÉ",
];

test.each(NAMES)("%s is read whichever program garbled it", (name) => {
  for (const shown of Object.values(shownAs)) {
    expect(shown(name)).not.toBe(name);
    expect(readOnce(shown(name))).toBe(name);
  }
});

test("what was written once stays as it is", () => {
  for (const name of [
    ...NAMES,
    "CORAÇÃO",
    "MAÇÃ»",
    "CANAPÉ»",
    "É–È",
    "Größe",
    "日本",
    "Ωμέγα",
    "«Été»",
    "5 ½ à côté",
  ])
    expect(readOnce(name)).toBe(name);
});

test("any words of our languages survive, alone and garbled", () => {
  const letters = fc.constantFrom(..."abcdefgh áéíóúñüàâçèêëîïôùûÁÉÑÇÀœ".split(""));
  fc.assert(
    fc.property(
      fc.array(letters, { minLength: 1, maxLength: 12 }),
      fc.constantFrom("windows", "mac", "dos", "latin"),
      (drawn, by) => {
        const text = drawn.join("");
        expect(readOnce(text)).toBe(text);
        expect(readOnce(shownAs[by as keyof typeof shownAs](text))).toBe(text);
      },
    ),
    { numRuns: 2000 },
  );
});

const CSV = [
  "Parcelle,Rang,Cep,Côté,Cordon,Tronc,Longueur (cm),Emplacements,Coursons vivants",
  "Côte Bénie,1,1,gauche,A,1,90,9,8",
  "Côte Bénie,1,1,droite,A,1,90,9,7",
  "Côte Bénie,1,2,gauche,A,1,90,9,6",
].join("\n");

function mustBeRead(season: Season) {
  const [table] = season.tables("cordons");
  expect(table.columns.map(({ column }) => column.id)).toContain("side");
  expect(season.words.wordOf(table.column("block")!.codes[0])).toBe("Côte Bénie");
  expect([...table.column("liveSpurs")!.usable]).toEqual([8, 7, 6]);
  // The head of sides and the block in three rows: four cells.
  expect(
    season.account.notes
      .filter(({ code }) => code === "encodedTwice")
      .map((note) => noteSentence(note, "en")),
  ).toEqual([
    "Text whose letters had been encoded twice was read as it was meant, in 4 cells, such as “CÃ´tÃ©” as “Côté”: counts.",
  ]);
}

test("a csv file that was encoded twice keeps its column of sides and its names, and says so", async () => {
  const book = await openWorkbookBytes("counts.csv", new TextEncoder().encode(shownAs.windows(CSV)));
  mustBeRead(readSeason([await book.readSheet("counts")]));
  const sheet = { sheet: "counts", isText: true, rows: () => book.rows("counts") };
  mustBeRead(await readLargeSeason([sheet]));
  mustBeRead(await readLargeSeason([sheet], { wholeRows: 2, pieceRows: 2 }));
});

test("cells of a workbook into which such a file was opened are read alike", () => {
  const rows = shownAs
    .windows(CSV)
    .split("\n")
    .map((line) => line.split(",").map((cell) => (/^\d+$/.test(cell) ? Number(cell) : cell)));
  mustBeRead(readSeason([areaOf("counts", rows)]));
});

test("a season written once says nothing of it", async () => {
  const book = await openWorkbookBytes("counts.csv", new TextEncoder().encode(CSV));
  const season = readSeason([await book.readSheet("counts")]);
  expect(season.account.notes.map(({ code }) => code)).not.toContain("encodedTwice");
});
