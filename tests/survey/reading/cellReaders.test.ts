import { choiceOf } from "../../../src/survey/reading/choiceWords";
import { countOfText, doubtOfNumber, shownCount } from "../../../src/survey/reading/countOfText";
import { measureOfText } from "../../../src/survey/reading/lengthOfText";
import { placeName } from "../../../src/texts/placeName";
import { namingLetters, placeOfLabel, rowAndVine } from "../../../src/survey/reading/placeLabel";
import { placeKey, placeOf } from "../../../src/survey/season/vinePlaces";
import { serialOf, textDate } from "../../../src/survey/reading/serialDate";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { unitNamed } from "../../../src/survey/sheets/unit";

describe("a count written as text", () => {
  test.each([
    ["||||", 4],
    ["||||||", 6],
    ["IIII", 4],
    ["IIII ", 5],
    ["IIII II", 7],
    ["IIIII II", 7],
    ["IIII IIII", 9],
    ["IIII/ I", 6],
    ["𝍸", 5],
    ["𝍸𝍸||", 12],
    ["正||", 7],
    ["|", 1],
  ])("strokes %j are %d", (text, count) => {
    expect(countOfText(text)).toEqual({ count, how: "strokes" });
  });

  test.each([
    ["7", 7, "digits"],
    [" 8 ", 8, "written"],
    ["８", 8, "written"],
    ["+8", 8, "written"],
    ["10.", 10, "written"],
    ["=8", 8, "written"],
    ["8,0", 8, "written"],
    ["8 spurs", 8, "word"],
    ["6 pitones", 6, "word"],
    ["5 coursons", 5, "word"],
  ])("%j is %d", (text, count, how) => {
    expect(countOfText(text)).toEqual({ count, how });
  });

  test.each([
    ["12 + 1", "sum", 13],
    ["11*", "star", 11],
    ["8-9", "range", 8],
    ["9–8", "range", 8],
    ["8 or 9", "range", 8],
    ["7+", "about", 7],
    ["~8", "about", 8],
    ["ca. 8", "about", 8],
    ["7?", "doubt", 7],
    ["6/8", "part", 6],
    ["7 (1 weak)", "remark", 7],
    ["1 2", "spaced", 12],
    ["O", "letter", 0],
    ["l0", "letter", 10],
    ["1O", "letter", 10],
    ["80 %", "share", undefined],
    ["8:00", "time", 8],
    ["8:30", "time", undefined],
    ["VRAI", "yesNo", undefined],
    ["9-Aug", "date", 8],
    ["3'6\"", "measure", undefined],
    ["½", "fraction", undefined],
    ["III II", "sum", 5],
  ])("%j is asked: %s, likely %s", (text, doubt, proposal) => {
    expect(countOfText(text)).toEqual({ doubt, proposal });
  });

  test.each(["", "many", "dead", "n/a", "-", "A"])("%j shows no number", (text) => {
    expect(countOfText(text)).toBeUndefined();
  });

  test.each([
    // 46024 is 2 January 2026, which a spreadsheet makes of "1-2" and "2-1": the smaller of the two as of a range.
    [46024, "date", 1, "2026-01-02"],
    [true, "yesNo", undefined, "TRUE"],
    // A third of a day is 8 o'clock.
    [1 / 3, "time", 8, "8:00"],
    [0.8, "share", undefined, "80 %"],
  ] as const)("the cell %p in a column of counts is asked as %s", (cell, doubt, proposal, shown) => {
    expect(doubtOfNumber(cell, 60)).toEqual({ doubt, proposal });
    expect(shownCount(cell, 60)).toBe(shown);
  });

  test.each([0, 7, 60, 70, 0.5, 1.5])("the number %p may be a count or is judged by its limits", (cell) => {
    expect(doubtOfNumber(cell, 60)).toBeUndefined();
  });
});

describe("a length or weight written as text", () => {
  // 1 in = 0.0254 m and 1 ft = 0.3048 m exactly, 1 lb = 0.45359237 kg exactly (NIST SP 811).
  test.each([
    ["3'6\"", "ft", 42 * 0.0254],
    ["3 ft 6 in", "m", 42 * 0.0254],
    ["3’ 6”", "ft", 42 * 0.0254],
    ["3'", "ft", 0.9144],
    ["3ft", "m", 0.9144],
    ['36"', "ft", 36 * 0.0254],
    ["40 in", "ft", 1.016],
    ["40 ins.", "ft", 1.016],
    ["1.2m", "ft", 1.2],
    ["1,2 m", "ft", 1.2],
    ["94 cm", "ft", 0.94],
    ["3 1/2", "ft", 3.5 * 0.3048],
    ["3 ½", "ft", 3.5 * 0.3048],
    ["0.9 kgs", "lb", 0.9],
    ["2 lbs", "kg", 2 * 0.45359237],
  ])("%j in a column of %s is %d", (text, unit, metric) => {
    expect(measureOfText(text, unitNamed(unit))).toBeCloseTo(metric, 8);
  });

  test.each(["long", "2 kg", "3 arms", "'", "80 %", ""])("%j is no length", (text) => {
    expect(measureOfText(text, unitNamed("ft"))).toBeUndefined();
  });
});

describe("labels of rows and vines", () => {
  test.each([
    ["12", 12],
    ["R1", 1],
    ["V12", 12],
    ["01", 1],
    ["001", 1],
    ["Row 7", 7],
    ["Hilera 3", 3],
    ["#4", 4],
    ["12.5", 12.5],
    ["12,5", 12.5],
    // Letters stand at the last of 64 parts of the way, so that row A is not row 1; a at the first, b at the third.
    ["A", 1 + 63 / 64],
    ["c", 3 + 63 / 64],
    ["AB", 28 + 63 / 64],
    ["12a", 12 + 1 / 64],
    ["12B", 12 + 3 / 64],
    // A letter and a number stand at the third last part; each letter has room for 315 numbers.
    ["A121", 121 + 61 / 64],
    ["A 7", 7 + 61 / 64],
    ["b07", 315 + 7 + 61 / 64],
    ["Z315", 26 * 315 + 61 / 64],
    ["N12", 12],
  ])("%j stands at %d", (label, place) => {
    expect(placeOfLabel(label)).toBe(place);
  });

  test.each([
    "12",
    "12.5",
    "12.1",
    "12a",
    "7z",
    "A",
    "Z",
    "AA",
    "AZ",
    "ZZ",
    "A1",
    "A121",
    "A315",
    "B1",
    "Z315",
  ])("%s is named as it was written", (label) => {
    expect(String(placeName(placeOfLabel(label)!))).toBe(label);
  });

  test("letters stand between two numbers, in order", () => {
    const places = ["12", "12a", "12B", "12c", "13"].map((label) => placeOfLabel(label)!);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places).size).toBe(5);
  });

  test("rows with a letter and a number stand in order of the letter, then of the number", () => {
    const labels = ["A1", "A2", "A10", "A121", "A315", "B1", "B2", "Z315"];
    const places = labels.map((label) => placeOfLabel(label)!);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places).size).toBe(labels.length);
    for (const row of places)
      expect(placeOf(placeKey(7, row, places[3]))).toEqual({ block: 7, row, vine: places[3] });
  });

  test("a letter before every number of a column says nothing; two of them part the rows", () => {
    expect(namingLetters(["R1", "r02", "R 10", 4, null])).toBe("R");
    expect(namingLetters(["R1", "P1"])).toBe("");
    expect(namingLetters(["A1", "A2"])).toBe("");
    expect(placeOfLabel("R1", "")).not.toBe(placeOfLabel("P1", ""));
  });

  test.each(["A0", "A316", "A12b", "A12.5", "12.99x"])("%j has no place", (label) => {
    expect(placeOfLabel(label)).toBeUndefined();
  });

  test.each(["", "end", "between", "12-", "??"])("%j has no order", (label) => {
    expect(placeOfLabel(label)).toBeUndefined();
  });

  test.each([
    ["1-12", 1, 12],
    ["R3-V07", 3, 7],
    ["2/30", 2, 30],
    ["A121-7", "A121", 7],
  ])("%j is row %s, vine %d", (label, row, vine) => {
    expect(rowAndVine(label)).toEqual({ row, vine });
  });
});

describe("dates in words", () => {
  const day = serialOf(2026, 1, 12);
  test.each([
    "12 Jan 2026",
    "12-Jan-26",
    "12-jan-2026",
    "January 12, 2026",
    "Jan 12 2026",
    "Monday, January 12, 2026",
    "12 de enero de 2026",
    "12-ene-26",
    "12 janv. 2026",
    "le 12 janvier 2026",
    "20260112",
    "12th January 2026",
  ])("%j", (text) => {
    expect(textDate(text)).toEqual({ serial: day });
  });

  test.each([
    ["1 août 2026", 2026, 8, 1],
    ["3 Dic 2025", 2025, 12, 3],
    ["3 déc. 2025", 2025, 12, 3],
    ["5 avril 2026", 2026, 4, 5],
    ["5 abr 2026", 2026, 4, 5],
    ["mar. 3 mars 2026", 2026, 3, 3],
  ])("%j", (text, year, month, date) => {
    expect(textDate(text)).toEqual({ serial: serialOf(year, month, date) });
  });

  test.each(["31 Feb 2026", "12 Foo 2026", "20261301", "some day"])("%j is no date", (text) => {
    expect(textDate(text)).toBeUndefined();
  });
});

describe("sides and conditions in farms' words", () => {
  const column = (id: string) =>
    [...SHEETS.cordons.columns, ...SHEETS.vines.columns].find((one) => one.id === id)!;
  test.each([
    ["side", "LH", "left"],
    ["side", "Rt.", "right"],
    ["side", "L.H.", "left"],
    ["side", "left arm", "left"],
    ["side", "brazo izquierdo", "left"],
    ["side", "Izq.", "left"],
    ["side", "I", "left"],
    ["side", "D", "right"],
    ["side", "G", "left"],
    ["side", "→", "right"],
    ["condition", "helado", "injured"],
    ["condition", "Bueno ", "sound"],
    ["condition", "gelé", "injured"],
    ["condition", "seco", "dead"],
    ["status", "fallo", "missing"],
    ["status", "adulte", "bearing"],
    ["side", "⬅", "left"],
    ["side", "➡", "right"],
    ["side", "L-hand", "left"],
    ["condition", "winter kill", "injured"],
    ["condition", "frost damaged", "injured"],
    ["condition", "quebrado", "injured"],
    ["condition", "cassé", "injured"],
    ["condition", "trunk disease", "diseased"],
  ])("%s %j is %s", (id, word, choice) => {
    expect(column(id).choices![choiceOf(column(id), word)!].id).toBe(choice);
  });

  test.each(["all", "middle", "x"])("%j is no side", (word) => {
    expect(choiceOf(column("side"), word)).toBeUndefined();
  });
});
