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
