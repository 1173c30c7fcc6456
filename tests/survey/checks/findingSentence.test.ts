import { allFindings } from "../../../src/survey/checks/checkSeason";
import { findingSentence } from "../../../src/survey/checks/findingSentence";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const HEADERS = [...CORDON_HEADS];

/** The sentences of the first finding of a sheet with this one row. */
function sentences(...row: CellValue[]): string[] {
  const [finding] = allFindings(readSeason([areaOf("Cordons", [HEADERS, row])]));
  return (["en", "es", "fr"] as const).map((language) => findingSentence(finding, language));
}

describe("the sentence of a finding", () => {
  test("names the vine and the cordon, then what is wrong", () => {
    expect(sentences("North Bench", 3, 14, "left", "B", 1, 3, 8, 9)).toEqual([
      "North Bench row 3 vine 14, left cordon B: 9 live spurs on 8 positions cannot be.",
      "North Bench hilera 3 planta 14, cordón B (izquierda): 9 pitones vivos en 8 posiciones no puede ser.",
      "North Bench rang 3 cep 14, cordon B (gauche) : 9 coursons vivants sur 8 emplacements, c'est impossible.",
    ]);
  });

  test("shows a measure in the sheet's unit and the header without it", () => {
    expect(sentences("North Bench", 3, 14, "left", "B", 1, 35, 8, 8)[0]).toBe(
      "North Bench row 3 vine 14, left cordon B: Length is 35\u00a0ft; it must lie between 0 and 19.7\u00a0ft.",
    );
  });

  test("names the sheet's row where there is no block", () => {
    expect(sentences(null, 3, 14, "left", "B", 1, 3, 8, 8)[0]).toBe("Sheet Cordons row 2: Block is blank.");
  });

  test("lists the words that a choice takes in the reader's language", () => {
    expect(sentences("N", 1, 1, "uphill", "B", 1, 3, 8, 8)[1]).toBe(
      "N hilera 1 planta 1, cordón B: Side dice «uphill»; debe ser una de: izquierda, derecha, norte, sur, este, oeste.",
    );
  });
});

test("a vine of 19 lb among vines of 0.3 to 2.2 lb is asked about, as a slip of units that would fit", () => {
  const pounds = [0.3, 0.8, 1.2, 19, 1.9, 0.7, 1.1, 1.4, 0.9, 2.2];
  const season = readSeason([
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Status", "Pruning weight (lb)"],
      ...pounds.map((weight, at) => ["North Bench", 1, at + 1, "bearing", weight]),
    ]),
  ]);
  // 19 oz is 19/16 = 1.1875 lb
  expect(
    allFindings(season, { today: 46_100 }).map((finding) =>
      findingSentence(finding, "en").replaceAll("\u00a0", " "),
    ),
  ).toEqual([
    "North Bench row 1 vine 4: Pruning weight is 19 lb, unlike its block; taken as 19 oz it is 1.19 lb and fits (1 row, to row 5 of the sheet).",
  ]);
});

test("a setting's unit is said in the reader's language", () => {
  const season = readSeason([
    areaOf("Settings", [
      ["Setting", "Value", "Unit"],
      ["Unlike its block: spread", 4, "times"],
      ["Unlike its block: spread", 5, "times"],
    ]),
  ]);
  const [finding] = allFindings(season, { today: 46_100 });
  const said = (["es", "fr"] as const).map((language) =>
    findingSentence(finding, language).replaceAll("\u00a0", " "),
  );
  expect(said[0]).toContain("5 ×");
  expect(said[1]).toContain("5 ×");
  expect(said.join(" ")).not.toContain("times");
});
