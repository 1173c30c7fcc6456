import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { stayingCordons } from "../../../src/survey/decide/stayingCordons";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { cordonHeads } from "../cordonHeads";

const seasonOf = (rows: readonly (readonly CellValue[])[]) =>
  readSeason([
    areaOf("Cordons", [
      [...cordonHeads("in"), "Longest gap", "Fixed choice"],
      ...rows.map((row) => ["Low", 1, 1, ...row]),
    ]),
  ]);

/** Whether each row's cordon is left on the wire. */
function staying(...rows: readonly (readonly CellValue[])[]) {
  const season = seasonOf(rows);
  const stays = stayingCordons(decideSeason(season));
  const [table] = season.tables("cordons");
  return rows.map((_, index) => stays(table, index));
}

const RIGHT = ["right", "C", 2, 40, 10, 9, 1];

describe("cordons that are left on the wire", () => {
  test("what stays is left, what is cut is not: 10 spurs against 6 on one trunk", () => {
    expect(staying(["left", "A", 1, 40, 10, 10, 0], ["left", "B", 1, 40, 10, 6, 1], RIGHT)).toEqual([
      true,
      false,
      true,
    ]);
  });

  test("of two alike that a person is asked about one is left", () => {
    const [one, other, across] = staying(
      ["left", "A", 1, 40, 10, 9, 1],
      ["left", "B", 1, 40, 10, 9, 1],
      RIGHT,
    );
    expect([one, other].sort()).toEqual([false, true]);
    expect(across).toBe(true);
  });

  test("of two rows with one name the one that is fixed to go is not left", () => {
    expect(staying(["left", "A", 1, 40, 10, 9, 1, "goes"], ["left", "A", 1, 40, 10, 9, 1], RIGHT)).toEqual([
      false,
      true,
      true,
    ]);
  });

  test("where a cane is laid in its place a dead cordon is not left", () => {
    const dead = ["left", "A", 1, 40, 10, 0, 10, "goes"];
    expect(staying(dead, RIGHT)).toEqual([false, true]);
  });

  test("on a vine that nothing is decided on, nobody knows, nor in a table without decided vines", () => {
    expect(staying(["left", "A", 1, 40, 10, "many", 1], RIGHT)).toEqual([undefined, undefined]);
    const decided = stayingCordons(decideSeason(seasonOf([RIGHT])));
    expect(decided(seasonOf([RIGHT]).tables("cordons")[0], 0)).toBeUndefined();
  });
});
