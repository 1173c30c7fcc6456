import { FINDING_PLACES, FINDING_TEXTS, HABIT_TEXTS, MADE_TEXTS, UNIT_WORDS } from "../../texts/findings";
import { say, type Language, type TextFacts } from "../../texts/language";
import type { Finding } from "./finding";
import { SHEETS } from "../sheets/sheets";
import type { SheetId } from "../sheets/column";

const CHOICE_WORDS = new Map(
  Object.values(SHEETS)
    .flatMap((shape) => shape.columns)
    .flatMap((column) => column.choices ?? [])
    .map((choice) => [choice.id, choice.word]),
);

/** Facts that hold ids of choices and are shown in the reader's language. */
const CHOICE_FACTS = ["side", "condition", "status", "training", "choice", "words", "otherSide"];

/**
 * One sentence about a finding that names the vine first: "North Bench row 3 vine 14, left cordon B: 9 live spurs on 8
 * positions cannot be." The text is src/texts/findings.ts's for the finding's code.
 */
export function findingSentence(finding: Finding, language: Language): string {
  const facts = shownFacts(finding, language);
  const sentence = say(FINDING_TEXTS[finding.code].sentence, language, facts);
  return say(FINDING_PLACES.whole, language, { place: placeInWords(finding, language, facts), sentence });
}

/** The place of a finding in words: vine and cordon, else row, block, or the row of the sheet. */
function placeInWords(finding: Finding, language: Language, facts: TextFacts): string {
  const { block, row, vine, side, cordon } = finding.facts;
  const known = (...values: unknown[]) => values.every((value) => value !== undefined && value !== null);
  if (!known(block))
    return say(FINDING_PLACES.sheetRow, language, { sheet: finding.sheet, sheetRow: finding.row });
  const text = known(row, vine)
    ? FINDING_PLACES.vine
    : known(row)
      ? FINDING_PLACES.row
      : FINDING_PLACES.block;
  const place = say(text, language, facts);
  const detail = known(side, cordon)
    ? FINDING_PLACES.sideCordon
    : known(cordon)
      ? FINDING_PLACES.cordon
      : known(side)
        ? FINDING_PLACES.side
        : undefined;
  if (!detail) return place;
  return say(FINDING_PLACES.joined, language, { place, detail: say(detail, language, facts) });
}

/** Facts as they are shown: words of choices in the language, a unit with its space, the header as the sheet has it. */
function shownFacts(finding: Finding, language: Language): TextFacts {
  const facts: Record<string, TextFacts[string]> = { column: columnName(finding.column), ...finding.facts };
  for (const name of CHOICE_FACTS) if (name in facts) facts[name] = choiceWords(facts[name], language);
  for (const name of ["unit", "otherUnit"]) {
    const unit = facts[name];
    if (typeof unit === "string")
      facts[name] = unit === "" || unit === "share" ? "" : `\u00a0${unitInWords(unit, language)}`;
  }
  if (typeof facts["expected"] === "string") facts["expected"] = unitInWords(facts["expected"], language);
  if (typeof facts["otherSheet"] === "string" && facts["otherSheet"] !== "")
    facts["otherSheet"] = say(FINDING_PLACES.otherSheet, language, { name: facts["otherSheet"] });
  if (typeof facts["columnId"] === "string")
    facts["missing"] = headerOf(String(facts["shape"]), facts["columnId"], language);
  if (typeof facts["habit"] === "string")
    facts["habit"] = HABIT_TEXTS[facts["habit"] as keyof typeof HABIT_TEXTS][language];
  if (typeof facts["made"] === "string")
    facts["made"] = MADE_TEXTS[facts["made"] as keyof typeof MADE_TEXTS][language];
  return facts;
}

/**
 * The unit of a setting as a person reads it: a word in the language, a sign as it is.
 *
 * @example
 * unitInWords("nodes", "fr") // "yeux"
 */
export function unitInWords(unit: string, language: Language): string {
  return UNIT_WORDS[unit]?.[language] ?? unit;
}

/** The header without its unit, which stands beside the value. */
function columnName(header: string): string {
  return header.replace(/\s*\([^)]*\)/g, "").trim();
}

function headerOf(shape: string, columnId: string, language: Language): string {
  const column = SHEETS[shape as SheetId]?.columns.find((own) => own.id === columnId);
  return column?.header[language] ?? columnId;
}

function choiceWords(fact: TextFacts[string], language: Language): TextFacts[string] {
  if (Array.isArray(fact)) return fact.map((id) => CHOICE_WORDS.get(String(id))?.[language] ?? id);
  return CHOICE_WORDS.get(String(fact))?.[language] ?? fact;
}
