import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { run } from "./testTerminal";

const HEAD = "Setting,Value,Unit\n";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-settings-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Checks a farm of two settings files, in the order of their names. */
async function checkBoth(first: string, second: string, language = "en") {
  writeFileSync(join(folder, "creek.csv"), HEAD + first);
  writeFileSync(join(folder, "north.csv"), HEAD + second);
  const { exitCode, out } = await run(["check", folder, "--format", "json", "--language", language]);
  const { findings } = JSON.parse(out) as {
    findings: { file: string; row: number; code: string; sentence: string }[];
  };
  return { exitCode, findings };
}

describe("settings in two files of one farm", () => {
  test.each([
    ["the same value", "Spur spacing,5,in\n", "Spur spacing,5,in\n"],
    ["the same length in another unit", "Spur spacing,5,in\n", "Spur spacing,12.7,cm\n"],
    ["different settings", "Spur spacing,6,in\n", "Least distance between spurs,2,in\n"],
    ["a row without a value", "Spur spacing,6,in\n", "Spur spacing,,in\n"],
  ])("%s are no problem", async (_why, first, second) => {
    expect(await checkBoth(first, second)).toEqual({ exitCode: 0, findings: [] });
  });

  test.each([
    ["en", /row 3.*“Spur spacing” is 10\scm here, and 5\sin in row 2 of the sheet \[creek\.csv\]creek/],
    ["es", /fila 3.*«Spur spacing» es 10\scm aquí y 5\sin en la fila 2 de la hoja \[creek\.csv\]creek/],
    [
      "fr",
      /ligne 3.*« Spur spacing » vaut 10\scm ici et 5\sin à la ligne 2 de la feuille \[creek\.csv\]creek/,
    ],
  ])("another value is told with both places in %s", async (language, sentence) => {
    const { exitCode, findings } = await checkBoth(
      "Spur spacing,5,in\n",
      "Least distance between spurs,2,in\nSpur spacing,10,cm\n",
      language,
    );
    expect(exitCode).toBe(1);
    expect(findings).toEqual([
      expect.objectContaining({
        file: "north.csv",
        row: 3,
        code: "settingTwice",
        sentence: expect.stringMatching(sentence),
      }),
    ]);
  });

  test("twice in one file is told even with the same value", async () => {
    const { findings } = await checkBoth("Spur spacing,5,in\nSpur spacing,5,in\n", "Spur spacing,5,in\n");
    expect(findings.map(({ file, row, code }) => [file, row, code])).toEqual([
      ["creek.csv", 3, "settingTwice"],
    ]);
  });
});
