import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { writeGapsPivot } from "../../../src/workbook/actions/writeGapsPivot";
import { MemoryWorkbook } from "../memory/memoryWorkbook";
import { WorkbookProblem, type SurveyWorkbook } from "../../../src/workbook/surveyWorkbook";
import type { ExcelHost } from "../office/excelHost";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";
import { CORDON_HEADS } from "../../survey/cordonHeads";

jest.setTimeout(60_000);

const HEAD = [...CORDON_HEADS, "Counted by"];
const COUNTS = {
  Cordons: [
    HEAD,
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, "AB"],
    ["North Bench", 1, 1, "right", "B", 1, 3.5, 7, 4, "AB"],
    ["North Bench", 2, 1, "left", "A", 1, 3.5, 7, null, "MK"],
    ["Creek Side", 1, 1, "left", "A", 2, 3.5, 8, 8, "MK"],
  ],
};

async function run(workbook: SurveyWorkbook, language: "en" | "es" = "en") {
  const season = readSeason([await workbook.readSheet("Cordons")]);
  return writeGapsPivot(workbook, season, () => true, language, "a day in February");
}

const pivots = (host: ExcelHost) => host.book.sheets.flatMap((sheet) => sheet.pivots);

/** A written table from its heads on; above them stands what was read and what was used. */
function tableFrom(values: readonly (readonly CellValue[])[], firstHead: string) {
  const at = values.findIndex(([first]) => first === firstHead);
  expect(at).toBeGreaterThan(0);
  return values.slice(at);
}

describe.each([EXCEL_PROFILES.perpetual2021, EXCEL_PROFILES.web])(
  "the PivotTable of gaps in $name",
  (profile) => {
    function open() {
      const host = hostWith(COUNTS, profile);
      return { host, workbook: excelWorkbookOn(host) };
    }

    test("has blocks and rows, four values and three filters, over a sheet of the counts", async () => {
      const { host, workbook } = open();
      expect(await run(workbook)).toEqual({ how: "made", sheet: "Gaps pivot", lost: [] });
      const [pivot] = pivots(host);
      expect(pivot.rows.map(({ field }) => field)).toEqual(["Block", "Row"]);
      expect(pivot.filters.map(({ field }) => field)).toEqual(["Side", "Trunk", "Counted by"]);
      expect(pivot.data.map(({ field, summarizeBy }) => [field, summarizeBy])).toEqual([
        ["Positions", "Sum"],
        ["Live spurs", "Sum"],
        ["Gaps", "Sum"],
        ["Share", "Average"],
      ]);
      const headers = new Set(["Positions", "Live spurs", "Gaps", "Share"]);
      expect(pivot.data.every(({ name }) => !headers.has(name))).toBe(true);
      const counts = await workbook.readSheet("Gap counts");
      expect(tableFrom(counts.values, "Block").map((row) => [row[0], row[7], row[8], row[9]])).toEqual([
        ["Block", "Positions", "Live spurs", "Gaps"],
        ["North Bench", 7, 6, 1],
        ["North Bench", 7, 4, 3],
        ["Creek Side", 8, 8, 0],
      ]);
      expect(await workbook.isOwnSheet("Gaps pivot")).toBe(true);
    });

    test("asks for source and fields before it makes anything, and adds fields after the PivotTable", async () => {
      const { host, workbook } = open();
      await run(workbook);
      const names = host.log.map(({ name }) => name);
      const at = (name: string) => names.indexOf(name);
      expect(at("PivotTables")).toBeLessThan(at("FilterHierarchies"));
      expect(at("FilterHierarchies")).toBeLessThan(at("RowHierarchies"));
      expect(at("RowHierarchies")).toBeLessThan(at("DataHierarchies"));
      expect(names).not.toContain("Refresh");
    });

    test("is refreshed at the next run, with the name and the arrangement that a person gave it", async () => {
      const { host, workbook } = open();
      await run(workbook);
      const [pivot] = pivots(host);
      pivot.name = "My gaps";
      pivot.rows.reverse();
      pivot.filters.pop();
      host.type("me", "Cordons", 2, 9, 5);
      expect((await run(workbook)).how).toBe("refreshed");
      expect(pivots(host)).toEqual([pivot]);
      expect([pivot.name, pivot.rows[0].field, pivot.filters.length, pivot.refreshed]).toEqual([
        "My gaps",
        "Row",
        2,
        1,
      ]);
    });

    test("is found by its name when a person moved it to a sheet of their own", async () => {
      const { host, workbook } = open();
      await run(workbook);
      const mine = host.book.addSheet("Mine");
      const from = host.book.sheet("Gaps pivot");
      mine.pivots.push(...from.pivots.splice(0));
      expect((await run(workbook)).how).toBe("refreshed");
      expect(pivots(host)).toHaveLength(1);
    });

    test("is made anew when a person deleted it, or its sheet, or both sheets", async () => {
      const { host, workbook } = open();
      await run(workbook);
      host.book.sheet("Gaps pivot").pivots = [];
      expect((await run(workbook)).how).toBe("made");
      host.book.deleteSheet(host.book.sheet("Gaps pivot"));
      expect((await run(workbook)).how).toBe("made");
      host.book.deleteSheet(host.book.sheet("Gaps pivot"));
      host.book.deleteSheet(host.book.sheet("Gap counts"));
      expect((await run(workbook)).how).toBe("made");
      expect(pivots(host)).toHaveLength(1);
    });

    test("keeps the language in which it was made, so that its fields are found again", async () => {
      const { host, workbook } = open();
      await run(workbook, "es");
      expect((await run(workbook, "en")).sheet).toBe("Huecos dinámica");
      expect(pivots(host)[0].refreshed).toBe(1);
      expect(tableFrom((await workbook.readSheet("Conteo de huecos")).values, "Cuartel")).toHaveLength(4);
    });

    test("that lost its source says so, and is left as it is", async () => {
      const { host, workbook } = open();
      await run(workbook);
      pivots(host)[0].source = "Table_of_somebody";
      await expect(run(workbook)).rejects.toMatchObject({ code: "pivotLost" });
      expect(pivots(host)).toHaveLength(1);
    });

    test("does not touch a sheet of that name that is somebody's own", async () => {
      const { host, workbook } = open();
      host.addSheet("Gaps pivot", [["mine"]]);
      await expect(run(workbook)).rejects.toMatchObject({ code: "notOurs" });
      expect(pivots(host)).toHaveLength(0);
    });

    test("is whole or not there, whichever step is refused", async () => {
      const counted = open();
      const season = readSeason([await counted.workbook.readSheet("Cordons")]);
      const act = (workbook: SurveyWorkbook) => writeGapsPivot(workbook, season, () => true, "en", "a day");
      await counted.host.quiet();
      const first = counted.host.log.length;
      await act(counted.workbook);
      const taken = counted.host.log.slice(first);
      const steps = taken.length;
      // Heads that cannot be kept in sight cost nothing else.
      const freezing = taken.find(({ name }) => name === "FreezeRows")?.batch;
      const comforts = taken.filter(({ batch }) => batch === freezing).length;
      counted.host.close();
      let refusals = 0;
      for (let step = 0; step < steps; step++) {
        const { host, workbook } = open();
        host.refuse({ after: step, code: "GeneralException" });
        const refused = await act(workbook).then(
          () => false,
          (error: unknown) => error instanceof WorkbookProblem,
        );
        if (refused) {
          refusals += 1;
          expect(pivots(host)).toEqual([]);
          expect(host.book.sheets.map(({ name }) => name).filter((name) => name !== "Gap counts")).toEqual([
            "Cordons",
          ]);
        }
        host.close();
      }
      expect(refusals).toBe(steps - comforts);
    });
  },
);

test("where there are no PivotTables the same figures stand in a plain table that says so", async () => {
  const workbook = new MemoryWorkbook(COUNTS);
  expect(await run(workbook)).toEqual({ how: "table", sheet: "Gaps pivot", lost: [] });
  const { values } = await workbook.readSheet("Gaps pivot");
  expect(values[0][0]).toMatch(/plain table/);
  expect(
    tableFrom(values, "Block")
      .slice(1)
      .map((row) => [row[0], row[1], row[4], row[6]]),
  ).toEqual([
    ["North Bench", 1, 14, 4],
    ["Creek Side", 1, 8, 0],
  ]);
});
