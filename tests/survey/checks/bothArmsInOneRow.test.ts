import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";

const BLOCKS = areaOf("Blocks", [
  ["Block", "Rows", "Vine places", "Vine spacing (ft)"],
  ["North Bench", 1, 14, 8],
]);
const HEADS = [
  ["L length (ft)", "L positions", "L spurs", "R length (ft)", "R positions", "R spurs"],
  ["Left arm (ft)", "Left positions", "Left spurs", "Right arm (ft)", "Right positions", "Right spurs"],
];

/** Both sides of the vine share 8 ft, 4 ft each; of 0.5 ft a good arm beside it takes nothing away. */
test.each(HEADS)("a short cordon is asked about beside a good one in its row: %s", (...heads) => {
  const rows = Array.from({ length: 14 }, (_, i) => {
    const right = i === 6 ? [0.5, 2, 1] : [3.8, 10, 8 - (i % 4)];
    return ["North Bench", 1, i + 1, 3.9, 10, 9 - (i % 3), ...right];
  });
  const season = readSeason([BLOCKS, areaOf("Counts", [["Block", "Row", "Vine", ...heads], ...rows])]);
  const found = allFindings(season).filter(({ code }) => code !== "missingColumn");
  expect(
    found.map(({ code, row, column, facts }) => ({
      ...facts,
      code,
      sheetRow: row,
      column,
    })),
  ).toEqual([
    {
      code: "cordonTooShort",
      sheetRow: 8,
      row: 1,
      column: heads[3],
      block: "North Bench",
      cordon: expect.stringMatching(/^R/i),
      vine: 7,
      side: "right",
      value: 0.5,
      share: 4,
      unit: "ft",
    },
  ]);
});
