import { callFunction, isRefused } from "../../src/functions/callFunction";
import type { RawArgument } from "../../src/functions/readArgument";
import { functionNamed } from "../../src/functions/registry";
import type { CellValue } from "../../src/survey/sheets/cell";
import type { Language } from "../../src/texts/language";
import { CORDON_HEADS } from "../survey/cordonHeads";

const HEADINGS = [...CORDON_HEADS];
const SOUND = ["North Bench", 1, 1, "left", "A", 1, 3, 8, 6];
const with9Spurs = ["North Bench", 1, 2, "left", "A", 1, 3, 8, 9];

function check(args: readonly RawArgument[], language: Language = "en") {
  const outcome = callFunction(functionNamed("CHECKCOUNTS")!, args, language);
  if (isRefused(outcome)) throw new Error(outcome.sentence);
  return outcome.values;
}

describe("CHECKCOUNTS", () => {
  test("names the row of the range, the heading as it stands there, and says why", () => {
    const [headings, ...findings] = check([[HEADINGS, SOUND, with9Spurs]]);
    expect(headings).toEqual(["Row of the range", "Column", "How sure", "Finding"]);
    const about = findings.filter(([, column]) => column === "Live spurs");
    expect(about).toHaveLength(1);
    expect(about[0][0]).toBe(3);
    expect(about[0][3]).toMatch(/^North Bench row 1 vine 2, left cordon A: .*9.*8/);
  });

  test("a clean table says how many rows were read", () => {
    expect(check([[HEADINGS, SOUND]])).toEqual([
      ["Row of the range", "Column", "How sure", "Finding"],
      ["", "", "", "No finding; rows read: 1."],
    ]);
  });

  test("sentences and headings in the language asked for", () => {
    const [headings, ...findings] = check([[HEADINGS, with9Spurs]], "es");
    expect(headings).toEqual(["Fila del rango", "Columna", "Certeza", "Hallazgo"]);
    expect(findings[0][3]).toContain("North Bench hilera 1 planta 2");
  });

  test("with the Blocks table, a block that is not in it is found", () => {
    const blocks: CellValue[][] = [
      ["Block", "Rows", "Vine places"],
      ["Creek Side", 10, 200],
    ];
    const without = check([[HEADINGS, SOUND]]).flat();
    const found = check([[HEADINGS, SOUND], null, blocks]);
    expect(without).toContain("No finding; rows read: 1.");
    expect(found.slice(1).some(([, column]) => column === "Block")).toBe(true);
  });

  test("only the counts are judged, not the tables they are held against", () => {
    const vines: CellValue[][] = [
      ["Block", "Row", "Vine", "Status", "Live trunks"],
      ["North Bench", 1, 1, "bearing", -4],
    ];
    expect(
      check([[HEADINGS, SOUND], null, null, vines])
        .flat()
        .join(" "),
    ).not.toContain("-4");
  });

  test("an error cell in the table is a finding, not the end of the call", () => {
    const spoilt = [...SOUND.slice(0, 8), { error: "#REF!" }];
    const findings = check([[HEADINGS, spoilt]]).slice(1);
    expect(findings.some(([row, column]) => row === 2 && column === "Live spurs")).toBe(true);
  });

  test("a range whose headings are unknown is refused by name", () => {
    const outcome = callFunction(functionNamed("CHECKCOUNTS")!, [
      [
        ["Colour", "Weight"],
        ["red", 3],
      ],
    ]);
    expect(outcome).toMatchObject({ error: "#VALUE!", code: "notOurTable" });
    expect((outcome as { sentence: string }).sentence).toContain("counts has too few headings");
  });
});
