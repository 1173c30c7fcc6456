import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { strFromU8, strToU8, zipSync } from "fflate";
import { bytesPackage } from "../../src/workbook/file/bytesPackage";
import type { SheetArea } from "../../src/survey/reading/sheetArea";
import { openWorkbookBytes, type OpenWorkbook } from "../../src/workbook/file/openWorkbook";
import { COMMAND_LINE } from "../../src/texts/commandLine";
import { LANGUAGES, say } from "../../src/texts/language";
import { WorkbookProblem } from "../../src/workbook/surveyWorkbook";
import { run, type Run } from "../cli/testTerminal";
import { hasValidator, openXmlFaults } from "../samples/openXmlFaults";
import { packageFaults } from "../samples/packageFaults";
import type { Dice } from "./dice";

/** What became of one command: done, or refused with one sentence. Everything else is thrown. */
export type Outcome = "done" | "refused";

const SAVED = ["check", "choose", "gaps", "crop", "cards"] as const;

/** Every way in which a command writes, with a place for the file that it makes. */
export const WRITING_WAYS: readonly (readonly string[])[] = [
  ...SAVED.flatMap((command) => [
    [command, "--in-place"],
    [command, "--save"],
    [command, "--out", "OUT"],
  ]),
  ["check", "--repair", "--save"],
  ["check", "--repair", "--also-likely", "--out", "OUT"],
  ["cards", "--html", "CARDS"],
  ["gaps", "--of", "staying", "--save"],
  ["crop", "--save", "--language", "fr", "--format", "json"],
  ["check", "--in-place", "--language", "es", "--format", "csv"],
];

/** Ways of reading only. */
export const READING_WAYS: readonly (readonly string[])[] = [
  ["check", "--format", "json"],
  ["check", "--format", "csv"],
  ["choose", "--format", "csv"],
  ["gaps"],
  ["crop", "--language", "fr"],
  ["cards", "--language", "es"],
  ["rows"],
];

// eslint-disable-next-line no-control-regex
const RAW = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;
const MAY_CHANGE = /^(\[content_types\]\.xml|xl\/(workbook|styles)\.xml|xl\/_rels\/workbook\.xml\.rels)$/i;
const OURS = /^(xl\/(worksheets|tables|drawings|charts)|customXml)\/(_rels\/)?cordonbook/i;

/** A folder for one case, taken away afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "cordonbook-fuzz-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Gives a file to a command and judges what is left: the file is as it was, or whole and new with the old one beside it;
 * what was written can be read, holds every part and every value of before, and has no fault more.
 *
 * @param asksValidator true where the validator is asked too; undefined where faults are not compared
 * @returns the outcome, and the content that stands in the file afterwards
 */
export async function writingRun(
  name: string,
  bytes: Uint8Array,
  way: readonly string[],
  asksValidator: boolean | undefined,
): Promise<{ outcome: Outcome; after: Uint8Array }> {
  return inFolder(async (folder) => {
    const path = join(folder, name);
    writeFileSync(path, bytes);
    mkdirSync(join(folder, "else"));
    const out = join(folder, "else", `out${extname(name) === ".xlsm" ? ".xlsm" : ".xlsx"}`);
    const [command, ...rest] = way;
    const options = rest.map((word) =>
      word === "OUT" ? out : word === "CARDS" ? join(folder, "else", "cards.html") : word,
    );
    const ran = await run([command, path, ...options]);
    mustSpeakWell(ran, options);
    const written = [
      ...readdirSync(folder).filter((each) => each !== "else"),
      ...readdirSync(join(folder, "else")).map((each) => join("else", each)),
    ];
    const after = new Uint8Array(readFileSync(path));
    const others = written.filter((each) => each !== name);
    if (ran.exitCode === 2) {
      must(others.length === 0, `left behind: ${others.join(", ")}`);
      must(Buffer.compare(after, bytes) === 0, "refused, but the file is another");
      return { outcome: "refused", after };
    }
    must(!others.some((each) => /waiting|saving/.test(each)), `left behind: ${others.join(", ")}`);
    const told = (code: "savedAlone" | "repairNothing") =>
      LANGUAGES.some((language) => ran.told.includes(say(COMMAND_LINE[code], language, { file: name })));
    const isAlone = !/\.xls[xm]$/.test(name) || told("savedAlone");
    const isInPlace = options.includes("--in-place") && !isAlone;
    const backups = others.filter((each) => each.includes(".backup-"));
    if (isInPlace) {
      must(others.length === 1 && backups.length === 1, `in place: ${others.join(", ")}`);
      must(Buffer.compare(readFileSync(join(folder, backups[0])), bytes) === 0, "the backup is another");
    } else {
      must(Buffer.compare(after, bytes) === 0, "the file itself was changed");
      const isWriting = options.some((word) => /^--(save|out|html|in-place)$/.test(word));
      must(others.length === (isWriting && !told("repairNothing") ? 1 : 0), `written: ${others.join(", ")}`);
    }
    const made = isInPlace ? name : others.find((each) => /\.xls[xm]$/.test(each));
    if (made !== undefined) {
      const result = new Uint8Array(readFileSync(join(folder, made)));
      if (!isAlone) await mustKeepAll(bytes, result, name, ran, options.includes("--repair"));
      await mustBeReadable(result);
      if (asksValidator !== undefined)
        await mustHaveNoNewFault(
          asksValidator,
          isAlone ? undefined : path,
          bytes,
          join(folder, made),
          result,
          folder,
        );
    }
    return { outcome: "done", after };
  });
}

function mustSpeakWell({ exitCode, out, told }: Run, options: readonly string[]): void {
  must(!RAW.test(out) && !RAW.test(told), "a control character reached the terminal");
  if (exitCode === 2) {
    const lines = told.trim().split("\n");
    must(lines.at(-1)!.length > 10 && lines.at(-1)!.length < 2000, `the sentence: ${told.slice(0, 300)}`);
    must(!/mistake in Cordonbook|undefined|\[object|NaN/.test(told), `the sentence: ${told.slice(0, 300)}`);
  }
  if (options[options.indexOf("--format") + 1] === "csv")
    for (const line of out.split("\n"))
      must(!/(^|[,;\t])\s*[=@\uff1d\uff0b\uff0d\uff20]/.test(line.replace(/"(?:[^"]|"")*"/g, "q")), line);
}

async function mustBeReadable(bytes: Uint8Array): Promise<void> {
  const book = await openWorkbookBytes("result.xlsx", bytes);
  for (const sheet of book.sheetNames) await cellsOf(book, sheet);
}

/** The values of a sheet; none where it is too large to be held at once. */
async function cellsOf(book: OpenWorkbook, sheet: string): Promise<SheetArea["values"]> {
  try {
    return (await book.readSheet(sheet)).values;
  } catch (problem) {
    if (problem instanceof WorkbookProblem && problem.code === "tooManyCells") return [];
    throw problem;
  }
}

/** Every part byte for byte but those that may change, every sheet but for marks, every value but for those repaired. */
async function mustKeepAll(
  before: Uint8Array,
  after: Uint8Array,
  name: string,
  ran: Run,
  isRepair: boolean,
): Promise<void> {
  const [a, b] = [await partsOf(before), await partsOf(after)];
  for (const [part, content] of a) {
    if (MAY_CHANGE.test(part) || OURS.test(part)) continue;
    const now = b.get(part);
    if (now && Buffer.compare(content, now) === 0) continue;
    if (isRepair && /calcChain/.test(part)) continue;
    must(now !== undefined, `${part} is gone`);
    const isOnlyMarked = withoutMarks(strFromU8(now!)) === withoutMarks(strFromU8(content));
    must(isRepair || isOnlyMarked, `${part} is another`);
  }
  for (const part of b.keys()) must(a.has(part) || OURS.test(part), `${part} came from nowhere`);
  const [book, made] = [await openWorkbookBytes(name, before), await openWorkbookBytes(name, after)];
  const own = new Set(
    book.outline?.names.filter((each) => each.name === "_Cordonbook_own").map(({ sheet }) => sheet),
  );
  let different = 0;
  for (const sheet of book.sheetNames) {
    if (own.has(sheet)) continue;
    const [was, is] = [await cellsOf(book, sheet), await cellsOf(made, sheet)];
    if (isRepair)
      for (const [row, values] of was.entries())
        different += values.filter((value, column) => !isDeepStrictEqual(value, is[row]?.[column])).length;
    else must(isDeepStrictEqual(was, is), `other values on ${sheet}`);
  }
  const mended = ran.told.split("\n").filter((line) => line.startsWith("  ")).length;
  must(different <= mended, `${different} values differ, ${mended} were mended`);
}

async function partsOf(bytes: Uint8Array): Promise<Map<string, Uint8Array>> {
  const { parts, chunks } = bytesPackage("farm.xlsx", bytes);
  const contents = new Map<string, Uint8Array>();
  for (const part of parts.keys()) {
    const pieces: Uint8Array[] = [];
    try {
      for await (const piece of chunks(part)) pieces.push(new Uint8Array(piece));
      contents.set(part, Buffer.concat(pieces));
    } catch (problem) {
      if (!(problem instanceof WorkbookProblem)) throw problem;
      contents.set(part, strToU8(problem.code));
    }
  }
  return contents;
}

/** A sheet's text without the marks that a check put in. */
function withoutMarks(xml: string): string {
  return xml.replace(
    /<(\w+:)?conditionalFormatting sqref="[^"]*"><(?:\w+:)?cfRule type="expression" dxfId="\d+" priority="\d+"><(?:\w+:)?formula>N\("Cordonbook (?:wrong|ask|note)"\)=0<\/(?:\w+:)?formula><\/(?:\w+:)?cfRule><\/(?:\w+:)?conditionalFormatting>/g,
    "",
  );
}

async function mustHaveNoNewFault(
  asksValidator: boolean,
  source: string | undefined,
  before: Uint8Array,
  made: string,
  after: Uint8Array,
  folder: string,
): Promise<void> {
  let known: string[] = [];
  if (source !== undefined) {
    const copy = join(folder, "else", `before${extname(source)}`);
    writeFileSync(copy, before);
    known = await faultsOf(copy, before, asksValidator);
  }
  const added = (await faultsOf(made, after, asksValidator)).filter((fault) => !known.includes(fault));
  must(added.length === 0, `new faults: ${added.slice(0, 3).join(" | ")}`);
}

async function faultsOf(path: string, bytes: Uint8Array, asksValidator: boolean): Promise<string[]> {
  const found = hasValidator && asksValidator ? await openXmlFaults(path) : [];
  const parts = zipSync(Object.fromEntries(await partsOf(bytes)));
  return [...found.map((fault) => JSON.stringify(fault)), ...packageFaults(parts)];
}

/** Throws what is wrong. */
export function must(condition: boolean, what: string): void {
  if (!condition) throw new Error(what);
}

/** A way of writing, or of reading only. */
export function someWay(dice: Dice): readonly string[] {
  return dice.chance(0.75) ? dice.one(WRITING_WAYS) : dice.one(READING_WAYS);
}
