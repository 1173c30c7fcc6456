import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { lostSentences, rewriteOwnSheet } from "../../../src/workbook/actions/rewriteOwnSheet";
import { emptyWorkbook } from "../../../src/workbook/file/emptyWorkbook";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import { hasValidator, openXmlFaults } from "../../samples/openXmlFaults";
import { packageFaults } from "../../samples/packageFaults";
import { withPersonsRemarks, type PersonsRemarks } from "./withPersonsRemarks";

jest.setTimeout(60_000);

const PART = "xl/worksheets/cordonbook1.xml";

/** Heads stand in row 3, the first finding in row 4. */
const findings = (rows: OwnSheet["rows"], title = ["Made today"]): OwnSheet => ({
  sheet: "Findings",
  title,
  headers: ["Cell", "Vine", "Score", "Code"],
  columns: [{}, {}, { format: "0.00" }, {}],
  about: { thing: ["Vine"], kind: ["Code"], cell: ["Cell"] },
  rows,
});

const FIRST: OwnSheet["rows"] = [
  ["B5", 5, 0.5, "LOW"],
  ["B7", 7, 0.25, "LOW"],
  ["B8", 8, 0.75, "HIGH"],
];
/** Vine 5 is right now, vine 3 is new, a row was put into the sheet above vine 8, and the title has a line more. */
const SECOND: OwnSheet["rows"] = [
  ["B3", 3, 0.125, "LOW"],
  ["B7", 7, 0.25, "LOW"],
  ["B9", 8, 0.75, "HIGH"],
];

async function remarked(remarks: PersonsRemarks): Promise<FileWorkbook> {
  const workbook = await FileWorkbook.open("farm.xlsx", emptyWorkbook("About"));
  await workbook.writeOwnSheet(findings(FIRST));
  return FileWorkbook.open("farm.xlsx", withPersonsRemarks(workbook.bytes(), PART, remarks));
}

const extrasOf = async (workbook: FileWorkbook) =>
  new Map((await workbook.cellExtras("Findings")).map((extra) => [`${extra.row} ${extra.column}`, extra]));

async function expectNoNewFault(before: Uint8Array, after: Uint8Array): Promise<void> {
  expect(packageFaults(after)).toEqual(packageFaults(before));
  if (!hasValidator) return;
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-remarks-"));
  try {
    const faults = async (name: string, bytes: Uint8Array) => {
      writeFileSync(join(folder, name), bytes);
      return openXmlFaults(join(folder, name));
    };
    expect(await faults("after.xlsx", after)).toEqual(await faults("before.xlsx", before));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

test("notes, comments with answers, colours and formats go to the row about the same thing, and to the heads", async () => {
  const workbook = await remarked({
    notes: { A4: "fixed by hand", B5: "Cleo: count again &amp; tell", C3: "what is this?", A1: "our list" },
    comments: { D6: ["replant?", "yes"] },
    yellow: ["A4", "B4", "A6"],
    fourDigits: ["C5"],
  });
  const before = workbook.bytes();
  const written = await rewriteOwnSheet(workbook, findings(SECOND, ["Made today", "Of two sheets"]));
  // The heads stand in row 4 now: vine 7 went from row 5 to 6, vine 8 from row 6 to 7; row 4 was about vine 5.
  expect(written).toMatchObject({ lost: ["A4 Cleo: fixed by hand"], lostLooks: ["A4:B4"] });
  const extras = await extrasOf(workbook);
  expect([...extras].filter(([, { note }]) => note !== "").map(([place, { note }]) => [place, note])).toEqual(
    [
      ["1 1", "Cleo: our list"],
      ["6 2", "Cleo: count again & tell"],
      ["4 3", "Cleo: what is this?"],
      ["7 4", "Ana Ruiz: replant? | Ben Hale: yes"],
    ],
  );
  expect(extras.get("6 3")?.format).toBe("0.0000");
  expect(["5 3", "7 3"].map((place) => extras.get(place)?.format)).toEqual(["0.00", "0.00"]);
  expect(extras.get("7 1")?.dress).toContain("FFFFFF00");
  expect([...extras].filter(([, { dress }]) => dress.includes("FFFF00")).map(([place]) => place)).toEqual([
    "7 1",
  ]);
  const parts = unzipSync(workbook.bytes());
  const frames = strFromU8(parts["xl/drawings/vmlDrawing7.vml"]);
  // The note of B5 was framed from row 4 to 8 (from 0); its cell is one row lower, and its frame too.
  expect(frames).toContain(
    "<x:Anchor>2, 15, 5, 2, 4, 15, 9, 4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>5</x:Row><x:Column>1</x:Column>",
  );
  expect(frames.match(/ObjectType="Note"/g)).toHaveLength(4);
  await expectNoNewFault(before, workbook.bytes());
});

test("the sentence says what of it has no place any more", async () => {
  const workbook = await remarked({
    notes: { A4: "fixed by hand" },
    comments: { D4: ["replant?", "yes"] },
    yellow: ["A4", "C4", "D4"],
  });
  const written = await rewriteOwnSheet(workbook, findings(SECOND.slice(0, 1)));
  expect(lostSentences("Findings", written, "en")).toEqual([
    "Not on the sheet Findings any more, because what they were written beside is not: A4 Cleo: fixed by hand; D4 Ana Ruiz: replant? | Ben Hale: yes.",
    "Colours and formats of A4, C4:D4 are not on the sheet Findings any more, because what stood there is not.",
  ]);
  expect(Object.keys(unzipSync(workbook.bytes())).filter((part) => /comment|vml/i.test(part))).toEqual([]);
  expect(strFromU8(unzipSync(workbook.bytes())[PART])).not.toContain("legacyDrawing");
});

test("a column that a person formatted whole stays so in new rows, and nothing of it is lost", async () => {
  const workbook = await remarked({ fourDigits: ["C4", "C5", "C6"], yellow: ["D4", "D5", "D6"] });
  const { lostLooks } = await rewriteOwnSheet(workbook, findings(SECOND));
  expect(lostLooks).toEqual([]);
  const extras = await extrasOf(workbook);
  expect(["4 3", "5 3", "6 3"].map((place) => extras.get(place)?.format)).toEqual(Array(3).fill("0.0000"));
  expect(["4 4", "5 4", "6 4"].map((place) => extras.get(place)?.dress.includes("FFFFFF00"))).toEqual([
    true,
    true,
    true,
  ]);
});

test("what a person wrote beside the title and below the table stays, until the table comes over it", async () => {
  const workbook = await remarked({});
  await workbook.writeCells("Findings", [
    { row: 1, column: 3, value: "seen by Cleo" },
    { row: 5, column: 7, value: "ask Ben" },
    { row: 9, column: 1, value: "ring the nursery" },
    { row: 12, column: 2, formula: "=SUM(C4:C6)" },
  ]);
  const { lost } = await rewriteOwnSheet(
    workbook,
    findings([...SECOND, ...[10, 11, 12, 13].map((vine) => [`B${vine}`, vine, 0, "LOW"])]),
  );
  // Seven findings stand in rows 4 to 10 now.
  expect(lost).toEqual(["A9: ring the nursery"]);
  const { values, formulaAt } = await workbook.readSheet("Findings");
  expect([values[0][2], values[4][6], values[8][0]]).toEqual(["seen by Cleo", "ask Ben", "B12"]);
  expect(formulaAt(11, 1)).toBe("=SUM(C4:C6)");
});

test("a date in a column of a person stays a date", async () => {
  const workbook = await remarked({});
  await workbook.writeCells("Findings", [
    { row: 3, column: 5, value: "Done on" },
    { row: 5, column: 5, value: 46_060, format: "yyyy-mm-dd" },
  ]);
  await rewriteOwnSheet(workbook, findings(SECOND));
  expect((await extrasOf(workbook)).get("5 5")?.format).toBe("yyyy-mm-dd");
  expect((await workbook.readSheet("Findings")).values[4][4]).toBe(46_060);
});
