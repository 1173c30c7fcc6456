import { plantMistakes } from "../../sample-workbooks/make/mistakes/plantMistakes";
import { seasonOf } from "../../sample-workbooks/make/season";
import { allFindings } from "../../src/survey/checks/checkSeason";
import { readSeason } from "../../src/survey/reading/readSeason";
import { SHEETS } from "../../src/survey/sheets/sheets";
import { areasOfFarm, inventedSeason } from "./decide/cards/season";
import { seasonAreas } from "./quality/seasonAreas";

const TODAY = 46190;

describe("the invented farm", () => {
  test("a clean season has no wrong cell", () => {
    const season = readSeason(areasOfFarm(inventedSeason()));
    expect(season.allTables.map((table) => table.shape.id).sort()).toEqual([
      "blocks",
      "budCuts",
      "cordons",
      "harvest",
      "settings",
      "vines",
    ]);
    expect(allFindings(season, { today: TODAY })).toEqual([]);
  });

  const sheets = seasonOf(inventedSeason(), TODAY);
  const planted = plantMistakes(sheets);
  const found = allFindings(readSeason(seasonAreas(sheets)), { today: TODAY });

  test.each(planted)("$code in $sheet, row $sheetRow: $what", ({ code, sheet, sheetRow, column }) => {
    const header = SHEETS[sheet].columns.find((own) => own.id === column)?.header.en ?? column;
    expect(found).toContainEqual(
      expect.objectContaining({
        code,
        sheet: SHEETS[sheet].name.en,
        row: sheetRow,
        column: header === "" ? "" : expect.stringContaining(header),
      }),
    );
  });
});
