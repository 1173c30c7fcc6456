import { allFindings } from "../../../src/survey/checks/checkSeason";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { SheetArea } from "../../../src/survey/reading/sheetArea";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { areaOf } from "../area";
import { areasOfFarm, inventedSeason } from "../decide/cards/season";

/** The first rows of the invented farm's sheets and, as sheets of the winter before, the same rows a year earlier. */
const NOW = areasOfFarm(inventedSeason())
  .filter(({ sheet }) => sheet !== "Settings")
  .map(({ sheet, values }) => areaOf(sheet, values.slice(0, 5)));
const BEFORE = NOW.filter(({ sheet }) => sheet === "Cordons" || sheet === "Vines").map(
  ({ sheet, values: [heads, ...rows] }) =>
    areaOf(`${sheet} 2025`, [
      heads,
      ...rows.map((row) =>
        row.map((cell, at) => (heads[at] === "Date" && typeof cell === "number" ? cell - 365 : cell)),
      ),
    ]),
);

const without = ({ sheet, values }: SheetArea, column: number) =>
  areaOf(
    sheet,
    values.map((row) => row.filter((_, at) => at !== column)),
  );

/** Kinds of findings over all sheets. */
const kindsIn = (sheets: readonly SheetArea[]) =>
  new Set(allFindings(readSeason([...sheets])).map(({ code }) => code));

test.each([
  ["Blocks", ["Vines", "Harvest"]],
  ["Cordons", ["Blocks", "Vines"]],
  ["Vines", ["Blocks", "Cordons"]],
  ["Bud cuts", ["Blocks"]],
  ["Harvest", ["Blocks"]],
])("without any one column of %s nothing more is found than that it is missing", (name, beside) => {
  const whole = [...NOW, ...BEFORE].filter(({ sheet }) => sheet.startsWith(name) || beside.includes(sheet));
  const known = kindsIn(whole);
  const shape = Object.values(SHEETS).find((one) => one.name.en === name)!;
  for (const own of whole.filter(({ sheet }) => sheet.startsWith(name)))
    shape.columns.forEach((column, at) => {
      const found = kindsIn(whole.map((area) => (area === own ? without(own, at) : area)));
      const more = [...found].filter((code) => !known.has(code) && code !== "missingColumn");
      expect([own.sheet, column.id, ...more]).toEqual([own.sheet, column.id]);
    });
});
