import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { writeXlsx } from "hucre";
import Papa from "papaparse";
import { seasonWithMistakes } from "../../sample-workbooks/make/sampleWorkbooks";
import { SHEETS } from "../../src/survey/sheets/sheets";
import { buildWorkbook } from "../workbook/file/buildWorkbook";
import { markedWorkbook } from "../workbook/file/markedWorkbook";
import { run } from "./testTerminal";
import { CORDON_HEADS } from "../survey/cordonHeads";

jest.setTimeout(60000);

const PROJECT = join(__dirname, "../..");
const sample = (name: string) => join(PROJECT, "sample-workbooks", name);
const CLEAN = sample("larkmoor-clean.xlsx");
const MISTAKES = sample("larkmoor-mistakes.xlsx");

const folder = mkdtempSync(join(tmpdir(), "cordonbook-cli-"));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

describe("check", () => {
  test("gives 0 for a clean season and says how much was looked at", async () => {
    const { exitCode, out, told } = await run(["check", CLEAN]);
    expect({ exitCode, told }).toEqual({
      exitCode: 0,
      told: "",
    });
    expect(out).toMatch(
      /^Nothing found in (\d+) rows of 5 tables\.\nRead: 1 file, 5 sheets, .*, \1 rows\. Taken as counts of the winter 2026\.\n/,
    );
  });

  test("says what people struck out, commented and hid instead of changing a count", async () => {
    const path = file("marked.xlsx", markedWorkbook());
    const { exitCode, out, told } = await run(["check", path]);
    expect(exitCode).toBe(1);
    expect(out).toContain("Struck out in the sheet, and read as it stands.");
    expect(out).toContain("Live spurs is 8, but the comment on it says “Cleo: really 9”.");
    expect(told).toContain("1 hidden row was read like the others: Cordons!7:7.");
    expect(told).toContain("Spare was not read: it is hidden.");
    expect(out).toContain("Not read: Spare (hidden)");
    const data = JSON.parse((await run(["check", path, "--format", "json"])).out);
    expect(data.findings.filter(({ severity }: { severity: string }) => severity === "note")).toHaveLength(4);
    expect(data.groups.filter(({ severity }: { severity: string }) => severity === "note")).toHaveLength(2);
    expect(data.reading.notes.map(({ code }: { code: string }) => code)).toEqual([
      "hiddenRows",
      "hiddenColumns",
    ]);
  });

  test("is not clean over heads without rows", async () => {
    expect(await run(["check", sample("empty-season.xlsx")])).toMatchObject({
      exitCode: 2,
      told: "There are heads but no rows in " + sample("empty-season.xlsx") + ": nothing was checked.",
    });
  });

  test("gives 1 and names each planted mistake with its cell", async () => {
    const { exitCode, out } = await run(["check", MISTAKES]);
    expect(exitCode).toBe(1);
    expect(out).toContain("I12 ");
    expect(out).toContain("North Bench row 1 vine 4, left cordon A: Live spurs is blank.");
  });

  test("gives findings as data: place as in the sheet, header, facts, sentence", async () => {
    const { exitCode, out } = await run(["check", MISTAKES, "--format", "json"]);
    expect(exitCode).toBe(1);
    const { findings } = JSON.parse(out) as { findings: Record<string, unknown>[] };
    for (const { code, sheet, sheetRow, column } of seasonWithMistakes().mistakes) {
      const header = SHEETS[sheet].columns.find(({ id }) => id === column)?.header.en ?? column;
      expect(findings).toContainEqual(
        expect.objectContaining({
          code,
          sheet: SHEETS[sheet].name.en,
          row: sheetRow,
          column: expect.stringContaining(header),
          severity: expect.stringMatching(/^(wrong|ask|note)$/),
          facts: expect.any(Object),
          sentence: expect.stringMatching(/\S.*\.$/),
        }),
      );
    }
  });

  test("gives findings as csv that a spreadsheet opens safely", async () => {
    const bad = file(
      "bad.csv",
      'Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\n"=HYPERLINK(1)",1,1,left,A,1,3,8,"=2+2"\n',
    );
    const { exitCode, out } = await run(["check", bad, "--format", "csv"]);
    expect(exitCode).toBe(1);
    const { data, errors } = Papa.parse<string[]>(out, { header: false });
    expect(errors).toEqual([]);
    expect(data[0]).toEqual(["file", "sheet", "row", "column", "cell", "severity", "code", "sentence"]);
    for (const cell of data.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
    expect(data[1].slice(0, 3)).toEqual(["bad.csv", "bad", "2"]);
  });

  test("can be held to what is wrong", async () => {
    const all = JSON.parse((await run(["check", MISTAKES, "--format", "json"])).out) as {
      counts: Record<string, number>;
    };
    const wrong = JSON.parse(
      (await run(["check", MISTAKES, "--format", "json", "--severity", "wrong"])).out,
    ) as { counts: Record<string, number> };
    expect(all.counts.ask).toBeGreaterThan(0);
    expect(wrong.counts).toEqual({ wrong: all.counts.wrong, ask: 0, note: 0 });
  });

  test("gathers findings of one cause: three in full, the other cells by name; json keeps both", async () => {
    const rows = Array.from(
      { length: 9 },
      (_, i) => `North Bench,1,${i + 1},left,A,1,3,8,${i < 6 ? "12 + 1" : 6}`,
    );
    const head = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs";
    const book = file("sums.csv", [head, ...rows].join("\n"));
    const { out, exitCode } = await run(["check", book]);
    expect(exitCode).toBe(1);
    expect(out).toContain("Not a number: sums (6)");
    expect(out).toContain("and 3 more: sums I5:I7");
    expect(out).toContain("Likely: “12 + 1” becomes 13");
    const { findings, groups } = JSON.parse((await run(["check", book, "--format", "json"])).out) as {
      findings: unknown[];
      groups: { cause: unknown; cells: { cell: string }[]; mends: unknown[] }[];
    };
    expect(findings).toHaveLength(6);
    expect(groups).toHaveLength(1);
    expect(groups[0].cause).toEqual({ by: "kind", value: "sum" });
    expect(groups[0].cells.map(({ cell }) => cell)).toEqual(["I2", "I3", "I4", "I5", "I6", "I7"]);
    expect(groups[0].mends).toHaveLength(6);
  });

  test("writes a repaired copy with every change, never the original", async () => {
    const book = file(
      "to-mend.xlsx",
      await writeXlsx({
        sheets: [
          {
            name: "Cordons",
            rows: [
              [...CORDON_HEADS],
              ["North Bench", 1, 1, "left", "A", 1, 3, 8, "6"],
              ["North Bench", 1, 1, "right", "B", 1, 3, 8, "12 + 1"],
            ],
          },
        ],
      }),
    );
    const before = readFileSync(book);
    const copy = join(folder, "mended.xlsx");
    const { told } = await run(["check", book, "--repair", "--out", copy]);
    expect(told).toContain("Changed in the copy: 1 cell\n  Cordons I2: “6” becomes 6");
    expect(told).toContain("Likely changes that were not made: 1 cell;");
    expect(readFileSync(book).equals(before)).toBe(true);
    const codesIn = async (path: string) =>
      (
        JSON.parse((await run(["check", path, "--format", "json"])).out) as { findings: { code: string }[] }
      ).findings.map(({ code }) => code);
    expect(await codesIn(copy)).toEqual(["notANumber"]);
    const all = join(folder, "mended-all.xlsx");
    await run(["check", book, "--repair", "--also-likely", "--out", all]);
    // 13 live spurs on 8 positions are what the cell says then.
    expect(await codesIn(all)).toEqual(["spursAbovePositions"]);
  });

  test("says of a number with any number of digits what it would become, or that it is none", async () => {
    const counts = (spurs: string) =>
      file(
        "digits.csv",
        `Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\nA,1,1,left,A,1,3,8,${spurs}\n`,
      );
    for (const digits of [6, 20, 400, 40_000]) {
      const { exitCode, out } = await run(["check", counts(`"'${"9".repeat(digits)}"`)]);
      expect([digits, exitCode, out.includes("wrong")]).toEqual([digits, 1, true]);
      expect((await run(["check", counts("9".repeat(digits))])).exitCode).toBe(1);
    }
    // 100,000 is no day of any winter, though a spreadsheet could show it as one of the year 2173.
    expect((await run(["check", counts(`"'100000"`)])).out).not.toContain("2173");
  });

  test("repairs nothing without a name for the copy, a csv file, or where nothing is certain", async () => {
    expect(await run(["check", MISTAKES, "--repair"])).toMatchObject({
      exitCode: 2,
      told: expect.stringContaining("--out FILE.xlsx"),
    });
    const counts = file(
      "text.csv",
      'Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\nA,1,1,left,A,1,3,8,"12 + 1"\n',
    );
    expect(
      await run(["check", counts, "--repair", "--also-likely", "--out", join(folder, "no.xlsx")]),
    ).toMatchObject({ exitCode: 2, told: expect.stringContaining("takes one workbook") });
    const { told } = await run(["check", CLEAN, "--repair", "--out", join(folder, "none.xlsx")]);
    expect(told).toContain("no copy was written");
  });

  describe("is told about sheets that it cannot know", () => {
    const rows = ["1,1,I,A,1,91,8,6", "1,1,D,B,1,91,8,7"];
    const own = () =>
      file(
        "own.csv",
        ["Rw,Vn,Sd,Cane,Tr,Len (cm),Pos,Live", ...rows, ...rows.map((row) => row.replace("1,1", "1,2"))].join(
          "\n",
        ),
      );
    const heads = (content: unknown) => file("heads.json", JSON.stringify(content));
    const columns = {
      Rw: "row",
      Vn: "vine",
      Sd: "side",
      Cane: "cordon",
      Tr: "trunk",
      Pos: "positions",
      Live: "liveSpurs",
    };

    test("says what could be answered and how, and reads with the answer and a block for the whole sheet", async () => {
      const { told, exitCode } = await run(["check", own()]);
      expect(exitCode).toBe(2);
      expect(told).toContain("--heads FILE.json");
      const answer = heads([
        { heads: [{ sheet: "own", shape: "cordons", columns: { ...columns, "Len (cm)": "length" } }] },
      ]);
      const { out } = await run(["rows", own(), "--heads", answer, "--block", "Pond Field"]);
      const lines = out.trim().split(/\r?\n/);
      expect(lines).toHaveLength(5);
      expect(lines[1]).toMatch(/Pond Field.*0\.91/);
    });

    test("reads the values of one counter in the unit that was answered for him", async () => {
      const rows = Array.from({ length: 40 }, (_, i) => {
        const counter = i % 2 === 0 ? "JM" : "RP";
        const length = (3 + (i % 5) / 10) * (counter === "JM" ? 12 : 1);
        return ["Pond Field", 1, 1 + i, "left", "A", 1, length.toFixed(1), 8, 6, counter].join(",");
      });
      const counts = file(
        "counts.csv",
        ["Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Counted by", ...rows].join("\n"),
      );
      const asked = await run(["check", counts, "--format", "json"]);
      const { reading } = JSON.parse(asked.out) as {
        reading: { questions: { code: string; proposals: unknown[] }[] };
      };
      expect([asked.exitCode, reading.questions.map(({ code }) => code)]).toEqual([1, ["counterUnit"]]);
      const { out } = await run(["rows", counts, "--heads", heads(reading.questions[0].proposals[0])]);
      const [head, ...read] = out
        .trim()
        .split(/\r?\n/)
        .map((line) => line.split(","));
      const at = head.indexOf("length");
      // 36.0 inches and 3.1 feet: 36 x 0.0254 m and 3.1 x 0.3048 m.
      expect([Number(read[0][at]), Number(read[1][at])]).toEqual([
        expect.closeTo(0.9144, 9),
        expect.closeTo(0.94488, 9),
      ]);
    });

    test("keeps the answer in the workbook that it saves, where the next reading finds it", async () => {
      const saved = join(folder, "answered.xlsx");
      const before = await run(["check", MISTAKES, "--sheet", "Cordons,Blocks", "--out", saved]);
      expect(before.told).toContain("Vines was left out as you answered.");
      const { told } = await run(["check", saved]);
      expect(told).toContain("Vines was left out as you answered.");
    });

    test.each([
      ["no such file", () => ["--heads", join(folder, "none.json")], /There is no file none\.json/],
      ["no JSON", () => ["--heads", file("not.json", "heads")], /is no JSON/],
      [
        "a column that is none of ours",
        () => ["--heads", heads({ heads: [{ sheet: "own", shape: "cordons", columns: { Vn: "wine" } }] })],
        /does not fit at heads\.0\.columns/,
      ],
      ["a word that is no part of answers", () => ["--heads", heads({ head: [] })], /does not fit at/],
      [
        "a sheet that is not there",
        () => ["--sheet", "Cordens"],
        /no sheet “Cordens”; near it or known: Cordons/,
      ],
    ])("refuses %s with one sentence", async (_, words, sentence) => {
      const { exitCode, told } = await run(["check", MISTAKES, ...words()]);
      expect(exitCode).toBe(2);
      expect(told.split("\n").at(-1)).toMatch(sentence);
    });
  });

  test.each(["es", "fr"])("speaks %s", async (language) => {
    const { out } = await run(["check", MISTAKES, "--language", language]);
    expect(out).not.toContain("is blank");
    expect(out).not.toMatch(/\{\w+\}/);
  });

  test("reads csv, says how, and counts rows as the file shows them", async () => {
    const counts = file(
      "conteo.csv",
      Buffer.from(
        "Cuartel;Hilera;Planta;Lado;Cordón;Tronco;Largo (m);Posiciones;Pitones vivos\r\nViña;1;1;izquierda;A;1;0,9;8;9\r\n",
        "latin1",
      ),
    );
    const { exitCode, out, told } = await run(["check", counts, "--format", "json"]);
    expect({ exitCode, told }).toEqual({ exitCode: 1, told: "" });
    const result = JSON.parse(out) as { csv: unknown; findings: unknown[] };
    expect(result.csv).toEqual({
      "conteo.csv": { encoding: "windows-1252", delimiter: ";", decimal: ",", hiddenLines: 0 },
    });
    expect(result.findings).toEqual([
      expect.objectContaining({ code: "spursAbovePositions", row: 2, column: "Pitones vivos", cell: "I2" }),
    ]);
    expect((await run(["check", counts])).told).toBe(
      "conteo.csv: read as windows-1252, columns apart by ;, decimal sign ,",
    );
  });

  test("asks about a letter that Windows and DOS write by the same byte", async () => {
    const head = "Block;Row;Vine;Side;Cordon;Trunk;Length (m);Positions;Live spurs";
    const counts = file("dos.csv", Buffer.from(`${head}\nJu\u00a0rez;1;1;left;A;1;1;8;7\n`, "latin1"));
    const { told } = await run(["gaps", counts]);
    expect(told).toContain("“Ju\u00a0rez” was read with a no-break space");
    expect(told).toContain("in a file from DOS it would be “Juárez”");
  });

  test("reads a sheet with a stray cell in its last corner", async () => {
    const text = (cell: string, value: string) => `<c r="${cell}" t="inlineStr"><is><t>${value}</t></is></c>`;
    const headers = ["Block", "Cultivar", "Vine spacing (ft)", "Rows", "Vines"];
    const rows = [
      `<row r="1">${headers.map((header, i) => text(`${"ABCDE"[i]}1`, header)).join("")}</row>`,
      `<row r="2">${text("A2", "North")}${text("B2", "Marquette")}<c r="C2"><v>6</v></c></row>`,
      '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>',
    ];
    const path = file("stray.xlsx", buildWorkbook({ sheets: { Blocks: rows.join("") } }));
    const { out } = await run(["check", path, "--format", "json"]);
    expect(JSON.parse(out)).toMatchObject({ tables: [{ sheet: "Blocks", kind: "blocks", rows: 1 }] });
  });

  test("reads a folder of files as one farm", async () => {
    const farm = join(folder, "farm");
    mkdirSync(farm);
    writeFileSync(join(farm, "vines.csv"), "Block,Row,Vine,Status\nNorth,1,1,bearing\n");
    writeFileSync(
      join(farm, "cordons.csv"),
      "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\nNorth,1,2,left,A,1,3,8,7\n",
    );
    writeFileSync(join(farm, "~$lock.xlsx"), "");
    writeFileSync(join(farm, "readme.md"), "");
    const { exitCode, out } = await run(["check", farm, "--format", "json"]);
    expect(exitCode).toBe(1);
    expect((JSON.parse(out) as { findings: unknown[] }).findings).toEqual([
      expect.objectContaining({ code: "unknownVine", file: "cordons.csv", sheet: "cordons", row: 2 }),
    ]);
  });

  test("reads standard input, workbook or csv", async () => {
    expect((await run(["check", "-"], readFileSync(CLEAN))).exitCode).toBe(0);
    const csv = "Block,Row,Vine,Status\nNorth,1,1,bearing\n";
    expect((await run(["check", "-"], Buffer.from(csv))).exitCode).toBe(0);
  });

  test("does not let text from a cell steer the terminal", async () => {
    const bad = file(
      "escape.csv",
      "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\nNorth\u001b[2J,1,1,up\u0007hill,A,1,3,8,7\n",
    );
    const { out } = await run(["check", bad]);
    expect(out).toContain("hill");
    // eslint-disable-next-line no-control-regex
    expect(out).not.toMatch(/[\u0007\u001b]/);
  });
});

describe("what cannot be done is told in one sentence with exit code 2", () => {
  test.each([
    ["no such file", ["check", "/nowhere/none.xlsx"], /There is no file "none\.xlsx"/],
    ["an empty file", () => ["check", file("empty.xlsx", "")], /is empty/],
    [
      "a file of another kind",
      () => ["check", file("a.xlsx", "%PDF-1.7")],
      /not a workbook of the \.xlsx kind/,
    ],
    [
      "an old workbook",
      () => ["check", file("b.xlsx", Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0]))],
      /old \.xls/,
    ],
    [
      "a workbook without count sheets",
      () => ["check", file("c.xlsx", buildWorkbook())],
      /No count sheet was recognised/,
    ],
    [
      "heads without rows",
      () => [
        "check",
        file("heads.csv", "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs\n"),
      ],
      /There are heads but no rows in .*heads\.csv/,
    ],
    ["a file cut short", () => ["check", file("d.xlsx", readFileSync(CLEAN).subarray(0, 9000))], /damaged/],
    [
      "a folder without files",
      () => ["check", (mkdirSync(join(folder, "none")), join(folder, "none"))],
      /has no \.xlsx/,
    ],
    ["an unknown command", ["prune"], /no command “prune”/],
    ["an unknown option", ["check", CLEAN, "--colour", "red"], /cannot do anything with “--colour”/],
    ["an option without its word", ["check", CLEAN, "--format"], /cannot do anything with “--format/],
    [
      "a format that there is not",
      ["check", CLEAN, "--format", "xml"],
      /--format takes one of text, json, csv/,
    ],
    [
      "a language that there is not",
      ["check", CLEAN, "--language", "de"],
      /--language takes one of en, es, fr/,
    ],
    ["a day that is none", ["check", CLEAN, "--today", "soon"], /--today takes a day/],
    ["an expansion that is none", ["check", CLEAN, "--expansion", "much"], /--expansion takes a number/],
    ["no file at all", ["check"], /takes FILE/],
    ["two formulas", ["formula", "=1", "=2"], /takes FORMULA/],
  ] as [string, string[] | (() => string[]), RegExp][])("%s", async (_why, words, sentence) => {
    const { exitCode, out, told } = await run(typeof words === "function" ? words() : words);
    expect({ exitCode, out }).toEqual({ exitCode: 2, out: "" });
    expect(told).toMatch(sentence);
    expect(told).not.toContain("\n");
    expect(told).not.toMatch(/\{\w+\}/);
  });

  test("a limit can be widened", async () => {
    const wide = file(
      "wide.xlsx",
      buildWorkbook({ sheets: { Sheet1: `${" ".repeat(1000)}<x/>`.repeat(50_000) } }),
    );
    expect((await run(["check", wide])).told).toMatch(/--expansion/);
    expect((await run(["check", wide, "--expansion", "2000"])).told).toMatch(/No count sheet/);
  });
});

describe("help", () => {
  test("lists the commands and, for each, its options with worked examples", async () => {
    const { exitCode, out } = await run(["help"]);
    expect(exitCode).toBe(0);
    for (const command of ["check", "formula"]) {
      expect(out).toContain(command);
      const own = await run([command, "--help"]);
      expect(own.exitCode).toBe(0);
      expect(own.out).toContain(`npm run -s cordonbook -- ${command} `);
    }
  });
});

describe("the program itself", () => {
  const cordonbook = (...words: string[]) =>
    promisify(execFile)(process.execPath, ["src/cli/start.mjs", ...words], {
      cwd: PROJECT,
    }).then(
      ({ stdout, stderr }) => ({ code: 0, stdout, stderr }),
      (failed: { code: number; stdout: string; stderr: string }) => failed,
    );

  test("ends with the codes 0, 1 and 2", async () => {
    expect(await cordonbook("formula", '=CORDON.NODEBUDGET(3,"30+10")')).toMatchObject({
      code: 0,
      stdout: "50\n",
    });
    expect(await cordonbook("check", MISTAKES, "--today", "2026-03-31")).toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/^Cordons: 1 .*\n {2}To tell it: --heads .*\n$/),
    });
    expect(await cordonbook("check", "none.xlsx")).toMatchObject({ code: 2, stdout: "" });
  }, 60000);
});
