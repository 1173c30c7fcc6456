import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../../survey/area";
import { openColumns, openUnits, proposeHeads } from "../../../src/taskpane/check/ownHeads";

/** Proposals for a sheet of cordons with these heads over these rows. */
const proposed = (headers: readonly string[], ...rows: readonly (readonly CellValue[])[]) =>
  proposeHeads("cordons", { headers, headerRow: 1, area: areaOf("Tally", [headers, ...rows]) });

test("known heads are proposed first, then heads that contain a known one as a word", () => {
  expect(proposed(["Our block", "Rang", "Vine", "Live spurs 2026"])).toMatchObject({
    block: "Our block",
    row: "Rang",
    vine: "Vine",
    liveSpurs: "Live spurs 2026",
  });
});

test.each([
  "Trunk circumference summer",
  "Trunk girth",
  "Summer trunk (cm)",
  "Perímetro trunk",
  "Trunk dead",
])("%s is not proposed as the trunk's number", (head) => {
  expect(proposed(["Block", head])["trunk"]).toBeUndefined();
  expect(proposed(["Block", head, "Trunk from ground"])["trunk"]).toBe("Trunk from ground");
});

// In a summer 2 trunks of 9 and 11 in round are no numbers of trunks, of which a vine has a few; nor is 3.5.
test.each([
  ["circumferences", [11, 9, 12], undefined],
  ["parts of an inch", [3.5, 2, 4], undefined],
  ["numbers of trunks", [1, 2, 1], "Summer trunk"],
])("of a head that only has the word, %s decide", (_, cells, expected) => {
  const rows = cells.map((cell, i) => ["North Bench", i + 1, cell]);
  expect(proposed(["Block", "Vine", "Summer trunk"], ...rows)["trunk"]).toBe(expected);
});

test("no head is proposed for two columns", () => {
  const heads = Object.values(proposed(["Row vine", "Side"]));
  expect(heads).not.toHaveLength(0);
  expect(new Set(heads).size).toBe(heads.length);
});

test("needed columns without a head are named", () => {
  const open = openColumns("harvest", { block: "Where" }).map(({ id }) => id);
  expect(open).not.toContain("block");
  expect(open).toContain("year");
});

describe("the unit of a measured column whose head names none", () => {
  const HEADS = { length: "Span", positions: "Places", diameter: "Thick" };
  const unitsOf = (
    length: number,
    positions: number,
    { system = "US" as "US" | "metric", headers = HEADS as Record<string, string>, rows = 9 } = {},
  ) => {
    const row = Array.from({ length: rows }, () => [length, positions, 14]);
    const area = areaOf("Tally", [
      ["of 2026"],
      [headers.length, headers.positions, headers.diameter],
      ...row,
    ]);
    const heads = { sheet: "Tally", headers: Object.values(headers), headerRow: 2, area };
    return openUnits({ shape: "cordons", headers }, heads, system).map(({ column, units, middle }) => [
      column.id,
      units.slice(0, 2).join(" "),
      middle,
    ]);
  };

  // 90 over 6 are 15 a place: 15 cm, but 15 in are 38 cm, 15 m and 15 ft far more, 15 mm less than any spur needs.
  test("is by the wire the one that cordons can have", () => {
    expect(unitsOf(90, 6)).toEqual([
      ["length", "cm ft", 90],
      // 14 in are 356 mm, which no cordon is; 14 mm are one.
      ["diameter", "mm in", 14],
    ]);
  });

  // 84 over 7 are 12 a place: 12 cm and 12 in (30 cm) are both possible, 12 cm is nearer to what is usual.
  test("of two that fit is the one with the likelier distance of spurs", () => {
    expect(unitsOf(84, 7)[0]).toEqual(["length", "cm in", 84]);
    // 42 over 8 are 5.25 a place: 13 cm where these are inches, 5 cm where they are centimetres.
    expect(unitsOf(42, 8)[0]).toEqual(["length", "in cm", 42]);
  });

  // 3.5 ft over 7 are 15 cm a place; 3.5 m would be 50 cm. 1.2 m over 8 are 15 cm.
  test("is the workbook's own where that fits", () => {
    expect(unitsOf(3.5, 7)[0]).toEqual(["length", "ft in", 3.5]);
    expect(unitsOf(1.2, 8, { system: "metric" })).toEqual([
      ["length", "m ft", 1.2],
      ["diameter", "mm ft", 14],
    ]);
  });

  test("is the workbook's own where too few rows tell, and is not asked where the head says it", () => {
    expect(unitsOf(90, 6, { rows: 3 })[0]).toEqual(["length", "ft in", undefined]);
    const headers = { ...HEADS, length: "Span (cm)", diameter: "Thick, mm" };
    expect(unitsOf(90, 6, { headers }).map(([column]) => column)).toEqual([]);
  });
});
