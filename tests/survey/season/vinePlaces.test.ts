import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";
import { NO_PLACE, placeKey, placeOf, rowKey } from "../../../src/survey/season/vinePlaces";
import { placeOfLabel } from "../../../src/survey/reading/placeLabel";

const LABELS = [
  "1",
  "1a",
  "1z",
  "2",
  "12",
  "12.1",
  "12.2",
  "12.25",
  "12.3",
  "12.5",
  "12.75",
  "12.9",
  "12b",
  "A",
  "Z",
  "A1",
  "A121",
  "B7",
  "Z315",
];
const places = LABELS.map((label) => placeOfLabel(label)!);

test.each(places)("a row and a vine at %d come back from their key, whatever the block's number", (place) => {
  for (const block of [0, 1, 19_999]) {
    expect(placeOf(placeKey(block, 7, place))).toEqual({ block, row: 7, vine: place });
    expect(placeOf(placeKey(block, place, place))).toEqual({ block, row: place, vine: place });
  }
});

test("keys are in the order of block, row and vine, and different for different vines", () => {
  const ordered = [...places].sort((a, b) => a - b);
  const keys = ordered.flatMap((row) => ordered.map((vine) => placeKey(3, row, vine)));
  expect(keys).toEqual([...new Set(keys)].sort((a, b) => a - b));
  expect(rowKey(placeKey(3, 12, 12.5))).toBe(rowKey(placeKey(3, 12, 1)));
  expect(rowKey(placeKey(3, places[1], 1))).not.toBe(rowKey(placeKey(3, 1, 1)));
});

test.each([NaN, 0, 0.5, -1, 12.333, 8192])("%d is no place of a vine", (vine) => {
  expect(placeKey(0, 1, vine)).toBe(NO_PLACE);
});

test("a list of vines without statuses is no register: a vine that it lacks is not unknown", () => {
  const counts = areaOf("Cordons", [
    [...CORDON_HEADS],
    ["North Bench", 1, 1, "left", "A", 1, 3, 8, 7],
    ["North Bench", 1, 2, "left", "A", 1, 3, 8, 6],
  ]);
  const codes = (vines: SheetArea) => allFindings(readSeason([counts, vines])).map(({ code }) => code);
  const clusters = ["Block", "Row", "Vine", "Clusters", "Cluster weight (g)"];
  expect(codes(areaOf("Yield", [clusters, ["North Bench", 1, 1, 30, 110]]))).not.toContain("unknownVine");
  expect(
    codes(
      areaOf("Vines", [
        [...clusters, "Status"],
        ["North Bench", 1, 1, 30, 110, "bearing"],
      ]),
    ),
  ).toContain("unknownVine");
});
