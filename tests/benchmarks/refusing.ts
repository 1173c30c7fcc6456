import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { randomBytes } from "node:crypto";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { pathToFileURL } from "node:url";
import { strToU8, zipSync } from "fflate";
import { READ_LIMITS } from "../../src/workbook/file/readLimits";
import { zipDirectory } from "../../src/workbook/file/zipDirectory";
import { cordonHeads } from "../survey/cordonHeads";
import { buildWorkbook, workbookParts, zipParts } from "../workbook/file/buildWorkbook";
import { HOSTILE_FILES } from "../workbook/file/hostileFiles";
import { zip64 } from "../workbook/file/zip64";

interface Run {
  readonly why: string;
  readonly seconds: number;
  readonly megabytes: number;
  readonly code: number;
  readonly sentence: string;
  readonly out: string;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const times = (element: string, count: number) => Buffer.alloc(element.length * count, element);

/** What a part may be larger than the file, with room below the limit. */
const EXPANSION = READ_LIMITS.expansion * 0.75;

/** A workbook with more parts, and one so large and so hard to pack that the file is not refused for how it expands. */
function packed(parts: Readonly<Record<string, string | Uint8Array>>, unpackedBytes: number): Uint8Array {
  const photograph = randomBytes(Math.ceil(unpackedBytes / EXPANSION));
  const all = { ...workbookParts(DATED), ...parts, "xl/media/photograph.jpg": photograph };
  return zipSync(
    Object.fromEntries(
      Object.entries(all).map(([name, content]) => [
        name,
        typeof content === "string" ? strToU8(content) : content,
      ]),
    ),
    { level: 1 },
  );
}

const DATED = { workbookPr: 'date1904="1"', sheets: { Sheet1: '<row r="1"><c r="A1"><v>1</v></c></row>' } };

/** A workbook with one part in which an element stands so many times. */
function repeated(part: string, start: string, element: string, count: number, end: string): Uint8Array {
  const content = Buffer.concat([Buffer.from(start), times(element, count), Buffer.from(end)]);
  return packed({ [part]: content }, content.length);
}

const strings = (element: string, count: number) =>
  packedStrings(
    Buffer.concat([Buffer.from(`<sst xmlns="${MAIN}">`), times(element, count), Buffer.from("</sst>")]),
  );

function packedStrings(content: Uint8Array): Uint8Array {
  const text = workbookParts({ sheets: { Sheet1: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>' } });
  return packed({ ...text, "xl/sharedStrings.xml": content }, content.length);
}

/** Sheets of which every one is the same part. */
function sheetsOnOnePart(count: number): Uint8Array {
  const parts = workbookParts();
  const entries = Array.from(
    { length: count },
    (_, at) => `<sheet name="s${at}" sheetId="${at + 1}" r:id="rId1"/>`,
  );
  return zipParts({
    ...parts,
    "xl/workbook.xml": String(parts["xl/workbook.xml"]).replace(/<sheet .*?\/>/, entries.join("")),
  });
}

/** One formula that 30,000 cells share. */
function sharedFormula(formula: string): Uint8Array {
  const cell = (row: number, inner: string) => `<row r="${row}"><c r="A${row}">${inner}<v>1</v></c></row>`;
  const rows = Array.from({ length: 29_999 }, (_, at) => cell(at + 2, '<f t="shared" si="0"/>'));
  const first = cell(1, `<f t="shared" si="0" ref="A1:A30000">${formula}</f>`);
  return buildWorkbook({ sheets: { Sheet1: first + rows.join("") } });
}

const LONG = "a".repeat(10_000_000);

/** Entries of a zip's directory that all lie on the bytes of one part of ten million characters. */
function overlappingParts(count: number): Uint8Array {
  const names = Array.from({ length: count }, (_, at) => `xl/part${at}.xml`);
  const bytes = packed(
    { ...Object.fromEntries(names.map((name) => [name, ""])), "xl/long.xml": LONG },
    (count + 1) * LONG.length,
  );
  const { entries } = zipDirectory("farm.xlsx", bytes);
  const view = new DataView(bytes.buffer);
  const long = entries.find(({ name }) => name === "xl/long.xml")!;
  for (const { name, recordStart } of entries) {
    if (!name.startsWith("xl/part")) continue;
    bytes.copyWithin(recordStart + 16, long.recordStart + 16, long.recordStart + 28);
    view.setUint16(recordStart + 10, long.method, true);
    view.setUint32(recordStart + 42, long.offset, true);
  }
  return bytes;
}

/** A sheet of so many cordons on the vines and in the blocks given by their places. */
function cordonsSheet(
  count: number,
  block: (at: number) => string,
  vine: (at: number) => number,
): Record<string, string | Uint8Array> {
  const cell = (row: number, value: string | number, at: number) => {
    const place = `${String.fromCharCode(65 + at)}${row}`;
    return typeof value === "number"
      ? `<c r="${place}"><v>${value}</v></c>`
      : `<c r="${place}" t="inlineStr"><is><t>${value}</t></is></c>`;
  };
  const rows = Array.from({ length: count }, (_, at) => [
    ...[block(at), 1, vine(at), at % 2 === 0 ? "left" : "right", "A", 1, 3, 8, 6],
  ]);
  const lines = [cordonHeads("ft"), ...rows].map(
    (row, at) =>
      `<row r="${at + 1}">${row.map((value, column) => cell(at + 1, value, column)).join("")}</row>`,
  );
  return workbookParts({ sheets: { Cordons: lines.join("") } });
}

const cordonFile = (...words: Parameters<typeof cordonsSheet>) => zipParts(cordonsSheet(...words));

/** Files that ask for much and are read, or refused in a sentence: at most 10 s and 500 MB. */
const LARGE_FILES: readonly (readonly [string, () => Uint8Array])[] = [
  ["190 million empty shared texts", () => strings("<si/>", 190_000_000)],
  ["60 million shared texts", () => strings("<si/>", 60_000_000)],
  ["2,900,000 shared texts, just allowed", () => strings("<si><t>a</t></si>", 2_900_000)],
  [
    "7 million formats",
    () =>
      repeated(
        "xl/styles.xml",
        `<styleSheet xmlns="${MAIN}"><cellXfs>`,
        "<xf/>",
        7_000_000,
        "</cellXfs></styleSheet>",
      ),
  ],
  [
    "300,000 defined names",
    () =>
      buildWorkbook({
        names: Array.from({ length: 300_000 }, (_, at) => `<definedName name="n${at}">1</definedName>`).join(
          "",
        ),
      }),
  ],
  [
    "300,000 names of blocks",
    () =>
      cordonFile(
        300_000,
        (at) => `Block ${at}`,
        () => 1,
      ),
  ],
  ["5,000 sheets on one part", () => sheetsOnOnePart(5000)],
  ["a long formula shared by 30,000 cells", () => sharedFormula(`${"B1+".repeat(2700)}1`)],
  ["a short formula shared by 30,000 cells", () => sharedFormula("B1+1")],
  ["800 parts on the same bytes", () => overlappingParts(800)],
];

const smallFarm = () =>
  cordonsSheet(
    40,
    () => "North Bench",
    (at) => 1 + Math.floor(at / 2),
  );
/** Small files of one farm, packed as different writers do: all are read alike. */
const SMALL_FILES: readonly (readonly [string, () => Uint8Array])[] = [
  ["a small workbook", () => zipParts(smallFarm())],
  ["the same with 64-bit records", () => zip64(smallFarm())],
  ["the same with 64-bit records and backslashes", () => zip64(smallFarm(), "\\")],
];

/**
 * Peak of this process alone, since what the system counts began with that of its parent, and the seconds that a
 * processor worked for it, since other programs lengthen those of the clock.
 */
const WEIGH = `import { readFileSync } from "node:fs";
process.on("exit", () => {
  const kilobytes = /VmHWM:\\s+(\\d+)/.exec(readFileSync("/proc/self/status", "utf8"))[1];
  const { userCPUTime, systemCPUTime } = process.resourceUsage();
  process.stderr.write("\\n" + kilobytes / 1000 + " " + (userCPUTime + systemCPUTime) / 1e6);
});`;

/** Megabytes that come in on standard input. */
const INPUT = 1500;
const HELD = 19;
const MOST = { seconds: 10, megabytes: 500 };

/**
 * Gives every hostile file to the command line and prints processor time, peak memory and exit code of the worst, beside those of
 * Node when it does nothing and of a small sound workbook; then files that ask for much, and commands about 20,000
 * cordons on one vine. Exit code 1 where one takes more than 10 s or 500 MB.
 */
export async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-refusing-"));
  try {
    const weigh = join(folder, "weigh.mjs");
    const path = join(folder, "farm.xlsx");
    writeFileSync(weigh, WEIGH);
    const started = (why: string, words: readonly string[], input?: number) =>
      measured(why, [`--import=${pathToFileURL(weigh)}`, ...words], input);
    const command = (why: string, words: readonly string[], input?: number) =>
      started(why, ["src/cli/start.mjs", ...words], input);
    const check = (why: string, bytes: Uint8Array) => {
      writeFileSync(path, bytes);
      return command(why, ["check", path]);
    };
    console.log(`${cpus().length} x ${cpus()[0].model}, Node ${process.version}`);
    const empty = ["check", "sample-workbooks/empty-season.xlsx"];
    await command("once, so that the bundle is there", empty);
    const nothing = await started("Node, doing nothing", ["-e", "0"]);
    const sound = await command("a sound workbook", empty);
    const refused: Run[] = [];
    for (const { why, bytes, limits } of HOSTILE_FILES) if (!limits) refused.push(await check(why, bytes()));
    const worst = (of: (run: Run) => number) =>
      refused.reduce((most, run) => (of(run) > of(most) ? run : most));
    tell(nothing, sound);
    tell(sound, sound);
    console.log("The slowest and the largest of the hostile files:");
    tell(
      worst(({ seconds }) => seconds),
      sound,
    );
    tell(
      worst(({ megabytes }) => megabytes),
      sound,
    );
    const others = refused.filter(({ code }) => code !== 2);
    console.log(
      `${refused.length} hostile files, ${refused.length - others.length} with exit code 2 and one sentence`,
    );
    for (const each of others) tell(each, sound);
    console.log(`Files and commands that ask for much (at most ${MOST.seconds} s and ${MOST.megabytes} MB):`);
    const large: Run[] = [];
    const judged = (run: Run) => {
      tell(run, sound);
      large.push(run);
    };
    for (const [why, bytes] of LARGE_FILES) judged(await check(why, bytes()));
    judged(await command(`${INPUT} MB on standard input`, ["check", "-"], INPUT));
    judged(await command(`${HELD} MB on standard input, just allowed`, ["check", "-"], HELD));
    for (const most of [1000, 30_000])
      judged(
        await command(`a formula of ${most} parentheses`, [
          "formula",
          `=${"(".repeat(most)}1${")".repeat(most)}`,
        ]),
      );
    writeFileSync(
      path,
      cordonFile(
        20_000,
        () => "North Bench",
        () => 1,
      ),
    );
    for (const name of ["rows", "check", "choose", "gaps", "crop", "cards"])
      judged(await command(`20,000 cordons on one vine: ${name}`, [name, path]));
    const small: Run[] = [];
    for (const [why, bytes] of SMALL_FILES) {
      const run = await check(why, bytes());
      judged(run);
      small.push(run);
    }
    const unread = small.filter(({ code, out }) => code === 2 || out !== small[0].out);
    const beyond = large.filter(
      ({ seconds, megabytes, code }) =>
        seconds > MOST.seconds || megabytes > MOST.megabytes || code > 2 || Number.isNaN(megabytes),
    );
    console.log(
      `${large.length} that ask for much, ${beyond.length} beyond the limits; ${unread.length} small ones not read`,
    );
    if (beyond.length + unread.length + others.length > 0) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function tell({ why, seconds, megabytes, code, sentence }: Run, sound: Run): void {
  const compared = `${(seconds / sound.seconds).toFixed(1)} and ${(megabytes / sound.megabytes).toFixed(1)} times a sound workbook`;
  console.log(
    `  ${seconds.toFixed(2).padStart(6)} s ${megabytes.toFixed(0).padStart(4)} MB, exit code ${code}: ${why} (${compared})`,
  );
  if (sentence) console.log(`            ${sentence.slice(0, 200)}`);
}

function measured(why: string, words: readonly string[], input = 0): Promise<Run> {
  return new Promise((resolve) => {
    const { stdin } = execFile(
      process.execPath,
      words,
      { maxBuffer: 2 ** 28, timeout: 300_000 },
      (error, out, stderr) => {
        const lines = stderr.trim().split("\n");
        const [megabytes, seconds] = (lines.pop() ?? "").split(" ").map(Number);
        resolve({
          why,
          seconds,
          megabytes,
          code: Number(error?.code ?? 0),
          sentence: lines.join(" ").trim(),
          out,
        });
      },
    );
    stdin?.on("error", () => {});
    Readable.from(manyMegabytes(input)).pipe(stdin!);
  });
}

/** Cordons as csv, about so many megabytes of them: a block a megabyte. */
function* manyMegabytes(count: number): Generator<Buffer> {
  if (count > 0) yield Buffer.from(`${cordonHeads("ft").join(",")}\n`);
  for (let block = 0; block < count; block++)
    for (let row = 1; row <= 45; row++)
      yield Buffer.from(
        Array.from({ length: 800 }, (_, at) => {
          const [vine, side] = [1 + Math.floor(at / 2), at % 2 === 0 ? "left" : "right"];
          return `Block ${block},${row},${vine},${side},A,1,3,8,6\n`;
        }).join(""),
      );
}
