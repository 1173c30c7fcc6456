import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingSentence } from "../../../src/survey/checks/findingSentence";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { readLargeSeason } from "../../../src/survey/reading/readLargeSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { noteSentence } from "../../../src/survey/reading/readingSentence";
import type { Season } from "../../../src/survey/season/season";
import { findingsSheet } from "../../../src/workbook/results/findingsSheet";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { buildWorkbook, zipParts } from "./buildWorkbook";
import { MARKED_FINDINGS, markedWorkbook, MARKS } from "./markedWorkbook";
import { unzipSync } from "fflate";

const byRow = <Finding extends { row: number; code: string }>(findings: readonly Finding[]) =>
  [...findings].sort((a, b) => a.code.localeCompare(b.code) || a.row - b.row);

function told(season: Season) {
  const found = allFindings(season).filter(({ severity }) => severity === "note");
  expect(found).toHaveLength(MARKED_FINDINGS.length);
  expect(byRow(found)).toMatchObject(byRow(MARKED_FINDINGS));
  const groups = findingGroups(found, season);
  expect(groups.map(({ code, findings }) => [code, findings.length]).sort()).toEqual([
    ["otherNumberInComment", 2],
    ["struckOut", 2],
  ]);
  expect(season.account.notes.map((note) => noteSentence(note, "en"))).toEqual([
    "1 hidden row was read like the others: Cordons!7:7.",
    "Hidden columns were read like the others (Positions): Cordons.",
  ]);
  expect(season.allTables.map(({ rowCount }) => rowCount)).toEqual([6]);
}

test("a sheet read whole carries its marks, and the check names each cause once", async () => {
  const book = await openWorkbookBytes("marked.xlsx", markedWorkbook());
  const area = await book.readSheet("Cordons");
  expect(area.marks).toEqual(MARKS);
  const season = readSeason([area]);
  told(season);
  const written = findingsSheet(allFindings(season), {
    language: "en",
    date: "2026-02-01",
    sentence: (finding) => findingSentence(finding, "en"),
    remedy: () => "",
    setAside: () => "",
  })
    .rows.flat()
    .join("\n");
  expect(written).toContain("Cleo: really 9");
  expect(written).toContain("Struck out");
});

test("a sheet read in pieces says the same", async () => {
  const book = await openWorkbookBytes("marked.xlsx", markedWorkbook());
  const sheet = {
    sheet: "Cordons",
    rows: (onEnd?: Parameters<typeof book.rows>[1]) => book.rows("Cordons", onEnd),
  };
  told(await readLargeSeason([sheet], { wholeRows: 2, pieceRows: 2 }));
});

test("a plain workbook carries no marks, and comments that are no XML spoil no count", async () => {
  const plain = await openWorkbookBytes(
    "plain.xlsx",
    buildWorkbook({ sheets: { Cordons: '<row r="1"><c r="A1"><v>1</v></c></row>' } }),
  );
  expect((await plain.readSheet("Cordons")).marks).toBeUndefined();
  const parts = unzipSync(markedWorkbook());
  const broken = await openWorkbookBytes(
    "broken.xlsx",
    zipParts({ ...parts, "xl/comments1.xml": "<comments><" }),
  );
  const { marks, values } = await broken.readSheet("Cordons");
  expect(values).toHaveLength(7);
  expect(marks!.marked).toEqual(MARKS.marked.filter((cell) => "struck" in cell));
});
