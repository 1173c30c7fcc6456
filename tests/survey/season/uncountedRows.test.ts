import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { uncountedRows } from "../../../src/survey/season/uncountedRows";
import { CORDON_HEADS } from "../cordonHeads";

const area = (sheet: string, values: CellValue[][]) => ({
  sheet,
  firstRow: 1,
  firstColumn: 1,
  values,
  formulaAt: () => null,
});
const place = (vine: number, side: string, cordon: string) => ["North Bench", 1, vine, side, cordon];
const BLANK = [null, null, null, null];
const VINES = area("Vines", [
  ["Block", "Row", "Vine", "Status"],
  ...[1, 2, 3, 4, 5, 6, 7, 8].map((vine) => ["North Bench", 1, vine, "bearing"]),
]);

const seasonOf = (...rows: CellValue[][]) =>
  readSeason([area("Cordons", [[...CORDON_HEADS], ...rows]), VINES]);
const uncountedOf = (season: ReturnType<typeof seasonOf>) =>
  season.tables("cordons").map((table) => [...uncountedRows(table, season.places)])[0];
const found = (season: ReturnType<typeof seasonOf>) =>
  allFindings(season).map(({ code, sheet, row }) => `${code} ${sheet} ${row}`);

/** Vines that are counted whole, from the first on. */
const counted = (vines: number) =>
  Array.from({ length: vines }, (_, at) => [
    [...place(at + 1, "left", "A"), 1, 3.5, 7, 6],
    [...place(at + 1, "right", "B"), 1, 3.5, 7, 5],
  ]).flat();

describe("rows that are laid out and not counted yet", () => {
  test("a vine whose rows are all blank is still to be counted, and nothing is asked about it", () => {
    const season = seasonOf(
      ...counted(7),
      [...place(8, "left", "A"), ...BLANK],
      [...place(8, "right", "B"), ...BLANK],
    );
    expect(uncountedOf(season)).toEqual([...Array<number>(14).fill(0), 1, 1]);
    expect(found(season).filter((finding) => finding.startsWith("missingValue"))).toEqual([]);
  });

  test("a blank row on a vine that has counts was left out, and each blank that is needed is asked for", () => {
    const season = seasonOf(
      ...counted(7),
      [...place(8, "left", "A"), 1, 3.5, 7, 6],
      [...place(8, "right", "B"), ...BLANK],
    );
    expect(uncountedOf(season)).toEqual(Array<number>(16).fill(0));
    expect(found(season)).toContain("missingValue Cordons 17");
  });

  test("who counted and when do not make a row counted", () => {
    const heads = [...CORDON_HEADS, "Counted by", "Counted on"];
    const season = readSeason([
      area("Cordons", [
        heads,
        [...place(1, "left", "A"), 1, 3.5, 7, 6, "AB", 46_063],
        [...place(2, "left", "A"), ...BLANK, "AB", 46_063],
      ]),
    ]);
    expect(uncountedOf(season)).toEqual([0, 1]);
  });

  test("a bearing vine that is only laid out counts as never counted among counted ones", () => {
    const season = seasonOf(
      ...counted(3),
      [...place(4, "left", "A"), ...BLANK],
      [...place(4, "right", "B"), ...BLANK],
      ...[5, 6, 7, 8].flatMap((vine) => [
        [...place(vine, "left", "A"), 1, 3.5, 7, 6],
        [...place(vine, "right", "B"), 1, 3.5, 7, 5],
      ]),
    );
    expect(found(season)).toContain("vineNeverCounted Vines 5");
  });

  test("a row that names no vine is none of them, nor is a row of another sheet, and a table is looked through once", () => {
    const season = seasonOf(
      ...counted(2),
      [...place(3, "left", "A"), ...BLANK],
      ["North Bench", 1, "?", "left", "A", ...BLANK],
    );
    expect(uncountedOf(season)).toEqual([0, 0, 0, 0, 1, 0]);
    const [cordons] = season.tables("cordons");
    expect(uncountedRows(cordons, season.places)).toBe(uncountedRows(cordons, season.places));
    const walk = [1, 2].map((vine) => ["North Bench", 1, vine]);
    const [vines] = readSeason([area("Vines", [["Block", "Row", "Vine"], ...walk])]).tables("vines");
    expect([...uncountedRows(vines, season.places)]).toEqual([0, 0]);
  });
});
