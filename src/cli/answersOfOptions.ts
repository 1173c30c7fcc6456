import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import * as z from "zod/mini";
import { nearestWord } from "../survey/checks/nearestWord";
import { isReadSheet } from "../survey/reading/isReadSheet";
import { withAnswers, type ReadingAnswers } from "../survey/reading/readingAccount";
import type { SheetId } from "../survey/sheets/column";
import { SHEETS } from "../survey/sheets/sheets";
import { unitNamed } from "../survey/sheets/unit";
import { wordKey } from "../survey/sheets/words";
import { TEXTS } from "../texts/texts";
import { CommandProblem, type OptionValues } from "./command";
import type { Inputs } from "./readInputs";

const SHAPE = z.enum(Object.keys(SHEETS) as [SheetId, ...SheetId[]]);
const KIND = z.enum(Object.keys(TEXTS.reading.kinds) as [keyof typeof TEXTS.reading.kinds]);
const COLUMN = z
  .string()
  .check(z.refine((id) => Object.values(SHEETS).some(({ columns }) => columns.some((own) => own.id === id))));
const UNIT = z.string().check(z.refine((id) => unitNamed(id) !== undefined));

/** A file of answers: the form in which `check --format json` proposes them. */
const ANSWERS = z.strictObject({
  heads: z.optional(
    z.array(z.strictObject({ sheet: z.string(), shape: SHAPE, columns: z.record(z.string(), COLUMN) })),
  ),
  constants: z.optional(
    z.array(z.strictObject({ sheet: z.string(), column: COLUMN, value: z.union([z.string(), z.number()]) })),
  ),
  leaveOut: z.optional(z.array(z.string())),
  dateOrder: z.optional(z.enum(["dayFirst", "monthFirst"])),
  units: z.optional(
    z.array(
      z.strictObject({
        sheet: z.string(),
        column: COLUMN,
        unit: UNIT,
        counter: z.optional(z.string()),
      }),
    ),
  ),
  winters: z.optional(z.array(z.strictObject({ sheet: z.string(), winter: z.number() }))),
  oddCounts: z.optional(z.array(KIND)),
  recount: z.optional(z.array(KIND)),
});

/**
 * What a command is told about the sheets: a file of answers, the block of sheets that name none, the sheets to read.
 * Sheets are named as in their own file; where several files are read each of them is meant.
 */
export async function answersOfOptions(options: OptionValues, inputs: Inputs): Promise<ReadingAnswers> {
  let answers: ReadingAnswers = {};
  if (options.heads !== undefined) answers = await answersOfFile(String(options.heads));
  if (options.block !== undefined)
    answers = withAnswers(answers, {
      constants: [{ sheet: "", column: "block", value: String(options.block) }],
    });
  if (options.sheet !== undefined)
    answers = withAnswers(answers, { leaveOut: otherSheets(String(options.sheet), inputs) });
  return inAllFiles(answers, inputs);
}

async function answersOfFile(path: string): Promise<ReadingAnswers> {
  const file = basename(path);
  const text = await readFile(path, "utf8").catch(() => {
    throw new CommandProblem("headsMissing", { file });
  });
  let content: unknown;
  try {
    content = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    throw new CommandProblem("headsNotJson", { file });
  }
  const all = (Array.isArray(content) ? content : [content]).map((part: unknown) => {
    const read = ANSWERS.safeParse(part);
    if (read.success) return read.data;
    throw new CommandProblem("headsUnlike", { file, place: read.error.issues[0].path.join(".") || "." });
  });
  return all.reduce<ReadingAnswers>(withAnswers, {});
}

/** The sheets beside those that were named, apart by commas; Settings and answers are always read. */
function otherSheets(given: string, { origin }: Inputs): string[] {
  const names = [...new Set([...origin.values()].map(({ sheet }) => sheet))];
  const key = (name: string) => wordKey(name);
  const wanted = names.some((name) => key(name) === key(given)) ? [given] : given.split(",");
  for (const one of wanted)
    if (!names.some((name) => key(name) === key(one)))
      throw new CommandProblem("sheetUnknown", {
        sheet: one.trim(),
        sheets: [nearestWord(one, names) ?? names].flat(),
      });
  const kept = new Set(wanted.map(key));
  return names.filter((name) => !kept.has(key(name)) && !isReadSheet(name));
}

/** Answers under the names that the sheets carry here: with several files "[file]sheet". */
function inAllFiles(answers: ReadingAnswers, { origin }: Inputs): ReadingAnswers {
  const namesOf = (sheet: string) => {
    const names = [...origin].flatMap(([name, own]) => (own.sheet === sheet ? [name] : []));
    return names.length === 0 ? [sheet] : names;
  };
  const named = <Answer extends { readonly sheet: string }>(list: readonly Answer[] = []) =>
    list.flatMap((answer) => namesOf(answer.sheet).map((sheet) => ({ ...answer, sheet })));
  return {
    ...answers,
    heads: named(answers.heads),
    constants: named(answers.constants),
    units: named(answers.units),
    winters: named(answers.winters),
    leaveOut: answers.leaveOut?.flatMap(namesOf),
  };
}
