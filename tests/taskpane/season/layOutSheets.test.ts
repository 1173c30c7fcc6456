import { layOutSheets } from "../../../src/taskpane/season/layOutSheets";
import type { LayOutForm } from "../../../src/taskpane/season/seasonState";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { countSheetHtml } from "../../../src/workbook/results/countSheetHtml";
import { MemoryWorkbook } from "../../workbook/memory/memoryWorkbook";
import { CORDON_HEADS } from "../../survey/cordonHeads";
import { paneOn } from "../paneOn";

const BLOCKS = ["Block", "Rows", "Vines", "Row spacing (ft)", "Vine spacing (ft)", "Training"];
const VINES = ["Block", "Row", "Vine", "Status"];

function emptySeason(cordons: CellValue[][] = []) {
  return new MemoryWorkbook({
    Blocks: [BLOCKS],
    Cordons: [[...CORDON_HEADS], ...cordons],
    Vines: [VINES],
  });
}

async function layOut(workbook: MemoryWorkbook, form: Partial<LayOutForm>) {
  const pane = paneOn(workbook);
  pane.change((now) => ({
    ...now,
    season: {
      ...now.season,
      layOut: {
        ...now.season.layOut,
        block: "Home",
        rows: "2",
        vinesARow: "2",
        cordonsAVine: "3",
        ...form,
      },
    },
  }));
  await layOutSheets(pane);
  return pane.state;
}

const values = async (workbook: MemoryWorkbook, sheet: string) => (await workbook.readSheet(sheet)).values;

describe("laying out the sheets of a block", () => {
  test("writes the block, its cordons and its vines in walking order, and says how many", async () => {
    const workbook = emptySeason();
    const state = await layOut(workbook, { training: "highWire", rowSpacing: "9", vineSpacing: "8" });
    expect(state.message?.text).toContain("Home is laid out: 12 rows on Cordons, 4 vines on Vines.");
    expect((await values(workbook, "Blocks")).slice(1)).toEqual([["Home", 2, 4, 9, 8, "high wire"]]);
    expect((await values(workbook, "Vines")).slice(1)).toEqual([
      ["Home", 1, 1, "bearing"],
      ["Home", 1, 2, "bearing"],
      ["Home", 2, 2, "bearing"],
      ["Home", 2, 1, "bearing"],
    ]);
    const cordons = (await values(workbook, "Cordons")).slice(1).map((row) => row.slice(0, 5).join(" "));
    expect(cordons.slice(0, 4)).toEqual([
      "Home 1 1 left A",
      "Home 1 1 right B",
      "Home 1 1 left C",
      "Home 1 2 left A",
    ]);
    expect(cordons.at(-1)).toBe("Home 2 1 left C");
  });

  test("stands below what is counted already, and prints a page for each row of vines with boxes to strike", async () => {
    const counted = [["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6]];
    const workbook = emptySeason(counted);
    await layOut(workbook, { backAndForth: false });
    const rows = await values(workbook, "Cordons");
    expect(rows[1]).toEqual(counted[0]);
    expect(rows).toHaveLength(1 + 1 + 12);
    const [cordons] = readSeason([await workbook.readSheet("Cordons")]).tables("cordons");
    const html = countSheetHtml(cordons, { language: "es", paper: "A4" });
    expect(html.match(/<section>/g)).toHaveLength(3);
    expect(html).toContain("size: A4 landscape");
    expect(html).toContain("(ft)");
    const second = html.split("<section>")[3];
    expect(second.match(/<tr( class="first")?>/g)!.length - 1).toBe(6);
    expect(second.match(/<tr class="first">/g)).toHaveLength(2);
    expect(second.match(/☐/g)).toHaveLength(6 * 15);
    expect(second).toContain('<td class="side">izquierda</td>');
  });

  test.each<[why: string, form: Partial<LayOutForm>, problem: RegExp]>([
    ["no name", { block: " " }, /^Block: a name/],
    ["half a row", { rows: "1.5" }, /^Rows of vines: a whole number from 1 to 400/],
    ["no vines", { vinesARow: "0" }, /^Vines a row: a whole number from 1 to 2000/],
    ["more cordons than letters are useful for", { cordonsAVine: "9" }, /^Cordons to count on a vine: .* 8/],
    ["a distance that is none", { rowSpacing: "-9" }, /^Row spacing: a number above 0/],
    ["a block that is there", { block: "north bench" }, /north bench/],
  ])("writes nothing for %s and says what is needed", async (_, form, problem) => {
    const workbook = emptySeason([["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6]]);
    const state = await layOut(workbook, form);
    expect(state.season.layOut.problem).toMatch(problem);
    expect(await values(workbook, "Cordons")).toHaveLength(2);
    expect(await values(workbook, "Vines")).toHaveLength(1);
  });

  test("a workbook without the sheets names the one that is lacking", async () => {
    const workbook = new MemoryWorkbook({ Cordons: [[...CORDON_HEADS]], Vines: [VINES] });
    const state = await layOut(workbook, {});
    expect(state.season.layOut.problem).toContain("Blocks");
  });
});
