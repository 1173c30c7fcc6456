import { grouped } from "../../domain/grouped";
import type { SheetId } from "../sheets/column";
import type { DayOrder } from "./serialDate";
import type { DoubtKind } from "./countOfText";

/** Facts of a note, a question or a part that was left out; the sentence is made where it is shown. */
export type ReadingFacts = Readonly<Record<string, string | number | readonly string[]>>;

export type NoteCode =
  | "mergedFilled"
  | "filledDown"
  | "keysAbove"
  | "keysOfName"
  | "captions"
  | "labels"
  | "sidesOfNames"
  | "turned"
  | "sideBySide"
  | "secondHeads"
  | "liveDerived"
  | "twoParts"
  | "yearTaken"
  | "strokes"
  | "worded"
  | "ownUnits"
  | "textNumbers"
  | "datesSettled"
  | "totalLines"
  | "headsAgain"
  | "remarkLines"
  | "encodedTwice"
  | "hiddenRows"
  | "hiddenColumns"
  | "oneWinter"
  | "plantingYear";

/** Something that was done on the way, said once. */
export interface ReadingNote {
  readonly code: NoteCode;
  readonly sheet: string;
  readonly facts: ReadingFacts;
}

export type QuestionCode =
  | "heads"
  | "noHeads"
  | "head"
  | "unit"
  | "counterUnit"
  | "dateOrder"
  | "noYear"
  | "winter"
  | "otherWinter"
  | "oddCounts"
  | "keys"
  | "hidden";

/** Something that only a person can say, asked once for all that it concerns. */
export interface ReadingQuestion {
  readonly code: QuestionCode;
  readonly sheet: string;
  readonly facts: ReadingFacts;
  /** Answers that would settle it, the most likely first; none where only a recount tells. */
  readonly proposals: readonly ReadingAnswers[];
}

export type LeftOutReason =
  | "otherHeads"
  | "notCounts"
  | "notCalculated"
  | "pastWinter"
  | "toCount"
  | "byAnswer"
  | "total"
  | "qualifier"
  | "otherColumn"
  | "asked"
  | "repeated"
  | "noHead"
  | "hidden";

/** A sheet, column or rows that were not read, with the reason. */
export interface LeftOut {
  readonly what: "sheet" | "column" | "rows";
  readonly reason: LeftOutReason;
  readonly sheet: string;
  readonly facts: ReadingFacts;
}

/** What people answered, as data: kept beside the workbook or given on the command line. */
export interface ReadingAnswers {
  /** Our column for a head of a sheet, with its unit; null for a head that is to stay unread. */
  readonly heads?: readonly {
    readonly sheet: string;
    readonly shape: SheetId;
    readonly columns: Readonly<Record<string, string>>;
  }[];
  /** A value for every row of a sheet: the block of a sheet that names none. */
  readonly constants?: readonly {
    readonly sheet: string;
    readonly column: string;
    readonly value: string | number;
  }[];
  /** Sheets that hold no counts of this season. */
  readonly leaveOut?: readonly string[];
  /** Order of day and month in dates that can be read both ways. */
  readonly dateOrder?: DayOrder;
  /** Unit of a column of a sheet, or of the values that one counter wrote in it. */
  readonly units?: readonly {
    readonly sheet: string;
    readonly column: string;
    readonly unit: string;
    readonly counter?: string;
  }[];
  /** The winter to which a sheet's counts belong, whatever their dates say. */
  readonly winters?: readonly { readonly sheet: string; readonly winter: number }[];
  /** Kinds of odd counts that are taken as proposed. */
  readonly oddCounts?: readonly DoubtKind[];
  /** Kinds of odd counts that stay unread until somebody counts again. */
  readonly recount?: readonly DoubtKind[];
}

/** What was said and left open when a season was read. */
export interface ReadingAccount {
  readonly notes: readonly ReadingNote[];
  readonly questions: readonly ReadingQuestion[];
  readonly leftOut: readonly LeftOut[];
}

/** An account that is being written. */
export interface OpenAccount {
  readonly notes: ReadingNote[];
  readonly questions: ReadingQuestion[];
  readonly leftOut: LeftOut[];
}

/** True where a question about a column of a sheet is open. */
export function isAsked(
  { questions }: ReadingAccount,
  code: QuestionCode,
  sheet: string,
  { id }: { readonly id: string },
): boolean {
  return questions.some(
    (question) => question.code === code && question.sheet === sheet && question.facts.column === id,
  );
}

/** Answers with newer ones added to them, which go before. */
export function withAnswers(given: ReadingAnswers, more: ReadingAnswers): ReadingAnswers {
  return {
    heads: [...(more.heads ?? []), ...(given.heads ?? [])],
    constants: [...(more.constants ?? []), ...(given.constants ?? [])],
    leaveOut: [...(more.leaveOut ?? []), ...(given.leaveOut ?? [])],
    dateOrder: more.dateOrder ?? given.dateOrder,
    units: [...(more.units ?? []), ...(given.units ?? [])],
    winters: [...(more.winters ?? []), ...(given.winters ?? [])],
    oddCounts: [...(more.oddCounts ?? []), ...(given.oddCounts ?? [])],
    recount: [...(more.recount ?? []), ...(given.recount ?? [])],
  };
}

/** True where anything at all was answered. */
export function saysSomething(answers: ReadingAnswers): boolean {
  return Object.values(answers).some((part: unknown) =>
    Array.isArray(part) ? part.length > 0 : part !== undefined,
  );
}

/** Facts that count something, which add up over sheets. */
const ADDED = ["rows", "lines", "areas", "cells"] as const;

/** Notes of one kind as one, with all sheets that they are about. */
export function groupedNotes(notes: readonly ReadingNote[]): ReadingNote[] {
  return [...grouped(notes, ({ code, facts }) => `${code} ${String(facts.order)}`).values()].map((alike) => ({
    ...alike[0],
    facts: {
      ...alike[0].facts,
      ...Object.fromEntries(
        ADDED.filter((fact) => typeof alike[0].facts[fact] === "number").map((fact) => [
          fact,
          alike.reduce((sum, { facts }) => sum + Number(facts[fact] ?? 0), 0),
        ]),
      ),
      sheets: [
        ...new Set(alike.flatMap(({ sheet, facts }) => (facts.sheets as string[] | undefined) ?? sheet)),
      ],
    },
  }));
}

/** What questions of a kind have in common where several sheets ask alike; the other kinds are asked one by one. */
const ALIKE: Readonly<Partial<Record<QuestionCode, (question: ReadingQuestion) => unknown>>> = {
  keys: ({ facts }) => facts.columns,
  unit: ({ facts, proposals }) => [facts.head, facts.column, proposals.map(({ units }) => units?.[0].unit)],
  head: ({ facts }) => [facts.head, facts.column],
  heads: ({ facts }) => [facts.heads, facts.columns],
};

/** Questions that several sheets ask alike as one, with the answers for all of them. */
export function groupedQuestions(questions: readonly ReadingQuestion[]): ReadingQuestion[] {
  const alike = grouped(questions, (question) => {
    const key = ALIKE[question.code]?.(question);
    return key === undefined ? question : JSON.stringify([question.code, key]);
  });
  return [...alike.values()].map((own) => {
    const [first] = own;
    if (!ALIKE[first.code]) return first;
    const rows = own.reduce((sum, { facts }) => sum + Number(facts.rows ?? 0), 0);
    const proposed = own.reduce(
      (all, { proposals }) => (proposals.length > all.length ? proposals : all),
      [] as readonly ReadingAnswers[],
    );
    return {
      ...first,
      facts: { ...first.facts, ...(rows > 0 ? { rows } : {}), sheets: own.map(({ sheet }) => sheet) },
      proposals: proposed.map((_, at) => joined(own.flatMap(({ proposals }) => proposals[at] ?? []))),
    };
  });
}

/** The same answer for several sheets as one; each part of it is a list. */
function joined(answers: readonly ReadingAnswers[]): ReadingAnswers {
  const parts = Object.keys(answers[0]) as (keyof ReadingAnswers)[];
  return Object.fromEntries(
    parts.map((part) => [part, answers.flatMap((answer) => (answer[part] ?? []) as readonly unknown[])]),
  );
}
