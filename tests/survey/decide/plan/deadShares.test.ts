import { budsCut, deadShares } from "../../../../src/survey/decide/plan/deadShares";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { areaOf } from "../../area";

const HEADS = ["Block", "Nodes cut", "Primaries alive", "Cut by"];
const season = (rows: readonly (readonly CellValue[])[], heads: readonly string[] = HEADS) =>
  readSeason([areaOf("Bud cuts", [heads, ...rows])]);

describe("dead primary buds of a block", () => {
  test("are pooled over its cuts, 1 + 9 of 10 + 30, whatever the spelling of its name", () => {
    const cut = season([
      ["Low", 10, 9],
      [" low", 30, 21],
      ["High", 8, 8],
    ]);
    expect([...budsCut(cut)]).toEqual([
      ["Low", { cut: 40, dead: 10 }],
      ["High", { cut: 8, dead: 0 }],
    ]);
    expect([...deadShares(cut)]).toEqual([
      ["Low", 0.25],
      ["High", 0],
    ]);
  });

  test("where none lives all of them", () => {
    expect(deadShares(season([["Low", 10, 0]])).get("Low")).toBe(1);
  });

  test("a cut without a block, with a blank count or more alive than cut tells nothing", () => {
    const cut = season([
      ["", 10, 1],
      ["Low", 10, ""],
      ["Low", "", 5],
      ["Low", 10, 12],
      ["Low", 10, 8],
    ]);
    expect([...deadShares(cut)]).toEqual([["Low", 0.2]]);
  });

  test.each(HEADS.slice(0, 3))("a sheet without the column %s tells nothing", (missing) => {
    const at = HEADS.indexOf(missing);
    const heads = [...HEADS, "Cane", "Secondaries alive"];
    const rows = [["Low", 10, 8, "PS", 1, 5]];
    const without = <Cell>(cells: readonly Cell[]) => cells.filter((_, index) => index !== at);
    const cut = season(rows.map(without), without(heads));
    expect(cut.tables("budCuts")).toHaveLength(1);
    expect(budsCut(cut).size).toBe(0);
  });
});
