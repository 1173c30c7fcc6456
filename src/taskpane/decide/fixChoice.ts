import { chooseCordons } from "../../domain/choice/chooseCordons";
import { choiceRules } from "../../survey/choice/choiceRules";
import { plainHeader } from "../../survey/column";
import type { DecidedVine } from "../../survey/decideSurvey";
import type { SurveyColumn } from "../../survey/survey";
import type { Survey } from "../../survey/survey";
import { DECIDE_TEXTS } from "../../texts/pane";
import { LANGUAGES, type Language } from "../../texts/language";
import type { CellWrite } from "../../workbook/surveyWorkbook";
import type { Pane } from "../pane";
import { vineKey, type DecideState } from "./decideState";

/**
 * Writes a person's decision into the Cordons sheet: the cordon stays, the others of its side go. The vine is then
 * decided anew with it. Refused, with the next step, where the sheet has no column for it.
 */
export async function fixChoice(pane: Pane, vine: DecidedVine, cordon: number): Promise<void> {
  const { result } = pane.state.decide;
  if (result === undefined) return;
  const { side } = vine.decision.cordons[cordon];
  const places = vine.decision.cordons.flatMap((one, index) => (one.side === side ? [index] : []));
  const writes = new Map<string, CellWrite[]>();
  for (const place of places) {
    const { table, index } = vine.rows[place];
    const column = table.column("fixedChoice");
    if (column === undefined) {
      pane.tell("warning", DECIDE_TEXTS.noColumn, { sheet: table.sheet });
      return;
    }
    const value = choiceWord(column, place === cordon ? "stays" : "goes");
    const write = { row: table.sheetRow(index), column: column.sheetColumn, value };
    writes.set(table.sheet, [...(writes.get(table.sheet) ?? []), write]);
  }
  if (!(await isAsRead(pane, vine, places))) {
    pane.tell("warning", DECIDE_TEXTS.meanwhile);
    return;
  }
  for (const [sheet, cells] of writes) await pane.workbook.writeCells(sheet, cells);
  const fixed = decidedWith(result.survey, vine, places, cordon);
  const vines = result.vines.map((one) => (vineKey(one) === vineKey(vine) ? fixed : one));
  const change = (decide: DecideState): DecideState => ({ ...decide, result: { ...result, vines } });
  pane.change((state) => ({ ...state, decide: change(state.decide) }));
  pane.tell("success", DECIDE_TEXTS.fixed, { cordon: vine.decision.cordons[cordon].cordon });
}

/** True while the rows still hold the cordons that were read: a sheet that was sorted meanwhile is not written to. */
async function isAsRead(pane: Pane, vine: DecidedVine, places: readonly number[]): Promise<boolean> {
  for (const place of places) {
    const { table, index } = vine.rows[place];
    const row = table.sheetRow(index);
    const area = await pane.workbook.readSheet(table.sheet, { rows: { first: row, count: 1 } });
    const same = ["block", "row", "vine", "side", "cordon"].every((id) => {
      const column = table.column(id);
      if (column === undefined) return true;
      return (area.values[0]?.[column.sheetColumn - area.firstColumn] ?? null) === column.raw[index];
    });
    if (!same) return false;
  }
  return true;
}

function decidedWith(
  survey: Survey,
  vine: DecidedVine,
  places: readonly number[],
  cordon: number,
): DecidedVine {
  const candidates = vine.toDecide.candidates.map((candidate, place) =>
    places.includes(place)
      ? { ...candidate, fixedChoice: place === cordon ? ("stays" as const) : ("goes" as const) }
      : candidate,
  );
  const toDecide = { ...vine.toDecide, candidates };
  return { ...vine, toDecide, decision: chooseCordons(toDecide, choiceRules(survey.settings)) };
}

/** The word for a choice in the language of the column's header. */
export function choiceWord({ column, header }: SurveyColumn, id: string): string {
  const language: Language =
    LANGUAGES.find((one) => plainHeader(column.header[one]) === plainHeader(header)) ?? "en";
  return column.choices!.find((choice) => choice.id === id)!.word[language];
}
