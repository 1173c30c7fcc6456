import { DATA_SHEETS, type Check, type FindingKind, type Report } from "./check";
import { LANGUAGES } from "../../texts/language";
import { shownCount } from "../reading/countOfText";
import { isCellError } from "../sheets/cell";
import type { Column } from "../sheets/column";
import { nearestWord } from "./nearestWord";
import { CELL, type SurveyColumn } from "../season/season";

const numberAsText: FindingKind = { code: "numberAsText", severity: "wrong", action: "correct" };
const notANumber: FindingKind = { code: "notANumber", severity: "wrong", action: "correct" };
const notADate: FindingKind = { code: "notADate", severity: "wrong", action: "correct" };
const unknownWord: FindingKind = { code: "unknownWord", severity: "wrong", action: "correct" };
const errorCell: FindingKind = { code: "errorCell", severity: "wrong", action: "correct" };

/** A cell that holds something else than its column is for. */
export const CELL_KIND: Check = {
  id: "cellKind",
  kinds: [numberAsText, notANumber, notADate, unknownWord, errorCell],
  sheets: DATA_SHEETS,
  scope: "row",
  prepare(table) {
    return (from, to, report) => {
      for (const column of table.columns) {
        const { states } = column;
        for (let i = from; i < to; i++)
          if (states[i] > CELL.blank && states[i] < CELL.outside) tell(column, i, report);
      }
    };
  },
};

function tell(column: SurveyColumn, index: number, report: Report): void {
  const value = column.raw.at(index);
  if (isCellError(value)) return report(errorCell, index, column, { value: value.error });
  const { kind, most = Infinity } = column.column;
  const facts = { value: kind === "count" ? shownCount(value ?? null, most) : String(value).trim() };
  if (column.states[index] === CELL.error) return report(errorCell, index, column, facts);
  if (column.column.kind === "date") return report(notADate, index, column, facts);
  const words = column.column.forms?.written ?? column.column.choices?.map((choice) => choice.id);
  if (words) {
    const nearest = nearestWord(facts.value, acceptedWords(column.column));
    return report(unknownWord, index, column, { ...facts, words, ...(nearest && { nearest }) });
  }
  report(column.states[index] === CELL.numberAsText ? numberAsText : notANumber, index, column, facts);
}

/** Every word that a column accepts, in all languages; short marks are too near to each other to be offered. */
function acceptedWords({ choices = [], forms }: Column): readonly string[] {
  const words = choices.flatMap(({ word, also = [] }) => [
    ...LANGUAGES.map((language) => word[language]),
    ...also,
  ]);
  return [...new Set(forms ? forms.written : words)].filter((word) => word.length > 2);
}
