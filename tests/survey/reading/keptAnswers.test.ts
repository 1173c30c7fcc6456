import { LANGUAGES } from "../../../src/texts/language";
import { answersOfSheet, answersTable, holdsAnswers } from "../../../src/survey/reading/keptAnswers";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { withAnswers, type ReadingAnswers } from "../../../src/survey/reading/readingAccount";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const ANSWERS: ReadingAnswers = {
  heads: [{ sheet: "Pond", shape: "cordons", columns: { Vn: "vine", Sd: "side" } }],
  constants: [{ sheet: "Pond", column: "block", value: "Pond Field" }],
  leaveOut: ["Sprays"],
  dateOrder: "monthFirst",
  units: [
    { sheet: "Pond", column: "length", unit: "in" },
    { sheet: "Pond", column: "length", unit: "cm", counter: "J: M" },
  ],
  winters: [{ sheet: "Row 2", winter: 2026 }],
  oddCounts: ["sum", "star"],
  recount: ["yesNo"],
};

function sheetOf(answers: ReadingAnswers, language: (typeof LANGUAGES)[number], file = "") {
  const { sheet, title, headers, rows } = answersTable(answers, language);
  return areaOf(file + sheet, [title, [], headers, ...rows]);
}

test.each(LANGUAGES)("answers written in %s are read back as they were", (language) => {
  const sheet = sheetOf(ANSWERS, language);
  expect(holdsAnswers(sheet)).toBe(true);
  const read = answersOfSheet(sheet);
  const columns = Object.assign({}, ...(read.heads ?? []).map((heads) => heads.columns)) as object;
  expect(columns).toEqual({ Vn: "vine", Sd: "side" });
  const units = [...read.units!].reverse();
  expect({ ...read, units, heads: ANSWERS.heads, oddCounts: [...(read.oddCounts ?? [])].sort() }).toEqual({
    ...ANSWERS,
    oddCounts: ["star", "sum"],
  });
});

test("of two answers to one question the newer stands, once", () => {
  const twice = withAnswers(ANSWERS, { units: [{ sheet: "Pond", column: "length", unit: "cm" }] });
  const { rows } = answersTable(twice, "en");
  expect(rows.filter(([, what]) => what === "unit")).toEqual([["Pond", "unit", "Length", "cm"]]);
});

test.each(LANGUAGES)("every column of every sheet keeps its head and unit through %s", (language) => {
  for (const shape of Object.values(SHEETS)) {
    const columns = Object.fromEntries(shape.columns.map(({ id }, at) => [`Head ${at}`, id]));
    const units = shape.columns.map(({ id }) => ({ sheet: "Own", column: id, unit: "cm" }));
    const read = answersOfSheet(
      sheetOf({ heads: [{ sheet: "Own", shape: shape.id, columns }], units }, language),
    );
    expect(Object.assign({}, ...read.heads!.map((heads) => heads.columns))).toEqual(columns);
    expect(read.units!.map(({ column }) => column)).toEqual(expect.arrayContaining(Object.values(columns)));
  }
});

test("with several files the answers are about the sheets of their own file", () => {
  const read = answersOfSheet(sheetOf(ANSWERS, "en", "[b.xlsx]"));
  expect([...read.units!].reverse()).toEqual(
    ANSWERS.units!.map((unit) => ({ ...unit, sheet: "[b.xlsx]Pond" })),
  );
});

test("a sheet of somebody's own that is called Answers is read like any other", () => {
  const counts = areaOf("Answers", [[...CORDON_HEADS], ["North Bench", 1, 1, "left", "A", 1, 3, 8, 6]]);
  expect(readSeason([counts]).tables("cordons")[0].rowCount).toBe(1);
});

test("a workbook's own answers are in force, and the sheet of answers is no other sheet", () => {
  const counts = areaOf("Pond", [
    ["Row", "Vn", "Sd", "Cordon", "Trunk", "Length (ft)", "Positions", "Live spurs"],
    [1, 1, "left", "A", 1, 3, 8, 6],
  ]);
  const season = readSeason([counts, sheetOf(ANSWERS, "fr")]);
  const [table] = season.tables("cordons");
  expect([table.column("vine")?.numbers[0], season.words.wordOf(table.column("block")!.codes[0])]).toEqual([
    1,
    "Pond Field",
  ]);
  expect(season.otherSheets).toEqual([]);
  expect(season.account.questions).toEqual([]);
});
