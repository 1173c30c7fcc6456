import type { UnitSystem } from "../domain/units";
import { OPTION_TEXTS } from "../texts/commandLine";
import { textDate } from "../survey/reading/serialDate";
import { READ_LIMITS, type ReadLimits } from "../workbook/file/readLimits";
import { CommandProblem, type CommandOption, type OptionValues } from "./command";

/** Options of every command that reads files. */
export const READING_OPTIONS: Readonly<Record<string, CommandOption>> = {
  expansion: { type: "string", value: "NUMBER", meaning: OPTION_TEXTS.expansion },
  "same-rows": { type: "boolean", meaning: OPTION_TEXTS.sameRows },
  sheet: { type: "string", value: "NAMES", meaning: OPTION_TEXTS.sheetOption },
  block: { type: "string", value: "NAME", meaning: OPTION_TEXTS.block },
  heads: { type: "string", value: "FILE.json", meaning: OPTION_TEXTS.heads },
  units: { type: "string", value: "US|metric", words: ["US", "metric"], meaning: OPTION_TEXTS.units },
};

/** How a result is written. */
export const FORMAT_OPTION: Readonly<Record<string, CommandOption>> = {
  format: {
    type: "string",
    value: "text|json|csv",
    words: ["text", "json", "csv"],
    meaning: OPTION_TEXTS.format,
  },
};

export const TODAY_OPTION: Readonly<Record<string, CommandOption>> = {
  today: { type: "string", value: "YYYY-MM-DD", meaning: OPTION_TEXTS.today },
};

export type Format = "text" | "json" | "csv";

export function formatOf(options: OptionValues): Format {
  return (options.format as Format | undefined) ?? "text";
}

export function unitsOf(options: OptionValues): UnitSystem | undefined {
  return options.units as UnitSystem | undefined;
}

/** The reader's limits with the expansion that a person allows. */
export function limitsOf(options: OptionValues): ReadLimits {
  if (options.expansion === undefined) return READ_LIMITS;
  const expansion = Number(options.expansion);
  if (!(expansion >= 1))
    throw new CommandProblem("badNumber", { option: "expansion", given: String(options.expansion) });
  return { ...READ_LIMITS, expansion };
}

/** The day that was given, as a spreadsheet serial. */
export function todayOf(options: OptionValues, today: number): number {
  if (options.today === undefined) return today;
  const date = textDate(String(options.today));
  if (!date || !("serial" in date)) throw new CommandProblem("badDate", { given: String(options.today) });
  return date.serial;
}
