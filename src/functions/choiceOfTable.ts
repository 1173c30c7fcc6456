import type { Training } from "../domain/choice/trainingSystems";
import { SCORE_PARTS } from "../domain/choice/choiceRules";
import { cordonScore, type CordonScore } from "../domain/choice/cordonScore";
import { Refusal } from "../domain/refusal";
import type { Metres, UnitSystem } from "../domain/units";
import { choiceRules } from "../survey/decide/choice/choiceRules";
import { reasonSentence } from "../survey/decide/choice/reasonSentence";
import { decideSeason } from "../survey/decide/decideSeason";
import { CELL, type Season, type SurveyTable } from "../survey/season/season";
import { candidateReader, vinesToDecide } from "../survey/decide/vinesToDecide";
import { VERDICT_WORDS } from "../texts/choice";
import type { Language } from "../texts/language";
import type { ResultRow } from "./cordonFunction";
import { cellRefusal, surveyTable } from "./surveyTable";
import { seasonOfTables, type GivenTables } from "./seasonOfTables";

const SHEETS_OF = { cordons: "cordons", settings: "settings", blocks: "blocks", vines: "vines" } as const;

/**
 * The decision on every cordon of a Cordons table, a row for each row of the range so that the answers stand beside
 * the counts: stays, goes or ask, the score, and the reason in a sentence. Rows without counts stay empty; a row that
 * does not say which vine it belongs to carries an error.
 *
 * @param given the tables `cordons` and, where they are given, `settings`, `blocks` and `vines`
 * @example
 * decisionsOfTable({ cordons: readTable(functionNamed("CHOOSECORDONS").parameters[0], [["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (ft)", "Live spurs", "Longest gap"], ["A", 1, 1, "left", "A", 1, 3, 9, 0], ["A", 1, 1, "left", "B", 1, 3, 2, 6]]) }, undefined, "en", "US").map(({ verdict }) => verdict) // ["stays", "goes"]
 */
export function decisionsOfTable(
  given: GivenTables,
  unitSystem: UnitSystem | undefined,
  language: Language,
  shownUnits: UnitSystem,
): readonly ResultRow[] {
  const season = seasonOfTables(given, SHEETS_OF, unitSystem);
  const table = surveyTable(season, "cordons", PLACES);
  const answers = new Map<number, ResultRow>();
  for (const { rows, decision } of decideSeason(season))
    rows.forEach(({ index }, at) => {
      const { verdict, score } = decision.cordons[at];
      answers.set(index, {
        verdict: VERDICT_WORDS[verdict][language],
        score: score.score,
        reason: reasonSentence(decision.cordons[at], language, shownUnits),
      });
    });
  return besideTheRows(table, (index) => answers.get(index) ?? withoutPlace(table, index));
}

/**
 * The score of every cordon of a Cordons table and its parts, a row for each row of the range. The placing of spurs
 * counts where the training system is known: from the Blocks table, else `training`. A row whose cells contradict each
 * other, as 10 live spurs on 9 positions, has no score.
 *
 * @param given the tables `cordons` and, where they are given, `settings` and `blocks`
 * @example
 * scoresOfTable({ cordons: readTable(functionNamed("CORDONSCORE").parameters[0], [["Length (ft)", "Live spurs", "Longest gap"], [3, 9, 0]]) }, undefined, undefined)[0].stretch // 1
 */
export function scoresOfTable(
  given: GivenTables,
  training: Training | undefined,
  unitSystem: UnitSystem | undefined,
): readonly ResultRow[] {
  const season = seasonOfTables(given, SHEETS_OF, unitSystem);
  const table = surveyTable(season, "cordons", []);
  const rules = choiceRules(season.settings);
  const around = aroundRows(season);
  const read = candidateReader(table, season.settings);
  return besideTheRows(table, (index) => {
    const bad = table.columns.find(({ states }) => states[index] === CELL.contradicted)?.column.id;
    if (bad !== undefined) return noScore(cellRefusal("cordons", table, bad, index));
    const candidate = read(index);
    const place = around.get(index);
    return orRefusal(() =>
      scoreRow(cordonScore(candidate, place?.training ?? training, rules, place?.sideLength)),
    );
  });
}

const PLACES = ["block", "row", "vine"] as const;

/** A result row for each row of the range below the headings; rows that are no cordon stay empty. */
function besideTheRows(table: SurveyTable, rowAt: (index: number) => ResultRow): readonly ResultRow[] {
  const last = table.rowCount === 0 ? table.headerRow : table.sheetRow(table.rowCount - 1);
  return Array.from({ length: last - table.headerRow }, (_, below) => {
    const index = table.indexOfSheetRow(table.headerRow + 1 + below);
    return index === undefined ? {} : rowAt(index);
  });
}

function withoutPlace(table: SurveyTable, index: number): ResultRow {
  const bad = PLACES.find((id) => table.column(id)!.states[index] !== CELL.usable) ?? PLACES[1];
  const refusal = cellRefusal("cordons", table, bad, index);
  return { verdict: refusal, score: refusal, reason: refusal };
}

function aroundRows(
  season: Season,
): ReadonlyMap<number, { training: Training | undefined; sideLength: Metres | undefined }> {
  return new Map(
    vinesToDecide(season).flatMap(({ rows, toDecide: { training, sideLength } }) =>
      rows.map(({ index }) => [index, { training, sideLength }] as const),
    ),
  );
}

const SCORE_COLUMNS = ["score", "low", "high", ...SCORE_PARTS] as const;

function scoreRow({ score, low, high, parts, leftOut }: CordonScore): ResultRow {
  const middles = SCORE_PARTS.map((part) => [
    part,
    leftOut.includes(part) ? undefined : (parts[part].low + parts[part].high) / 2,
  ]);
  return { score, low, high, ...Object.fromEntries(middles) };
}

function orRefusal(score: () => ResultRow): ResultRow {
  try {
    return score();
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    return noScore(problem);
  }
}

function noScore(problem: Refusal): ResultRow {
  return Object.fromEntries(SCORE_COLUMNS.map((id) => [id, problem]));
}
