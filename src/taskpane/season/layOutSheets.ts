import { cellName } from "../../survey/sheets/cellName";
import { laidOutVines } from "../../survey/sheets/laidOutVines";
import { SHEETS } from "../../survey/sheets/sheets";
import type { SheetId } from "../../survey/sheets/column";
import type { CellValue } from "../../survey/sheets/cell";
import type { SurveyTable } from "../../survey/season/season";
import { wordKey } from "../../survey/sheets/words";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import { changeAllOrNone, type CellChangeWanted } from "../../workbook/actions/changeCells";
import { changePage } from "../changePage";
import { choiceWord } from "../decide/choiceWord";
import { goToCell } from "../goToCell";
import type { Pane } from "../pane";
import { EMPTY_FORM, type LayOutForm } from "./seasonState";
import { typedNumber } from "./typedNumber";

const TEXTS = SEASON_TEXTS.layOut;
const MOST = { rows: 400, vinesARow: 2000, cordonsAVine: 8 } as const;

/**
 * Writes the rows of a block into the Blocks, Cordons and Vines sheets, below what stands there, in one step or not at
 * all: a cell that holds anything is never written.
 */
export async function layOutSheets(pane: Pane): Promise<void> {
  const form = pane.state.season.layOut;
  const { season } = await pane.held.read();
  const tables = (id: SheetId) => season.tables(id).at(0);
  const [blocks, cordons, vines] = [tables("blocks"), tables("cordons"), tables("vines")];
  const lacking = (["blocks", "cordons", "vines"] as const).find((id) => tables(id) === undefined);
  const problem =
    lacking === undefined
      ? problemOf(pane, form, cordons!)
      : pane.say(TEXTS.noSheet, { sheet: pane.say(SHEETS[lacking].name) });
  if (problem !== undefined) return changePage(pane, "season", { layOut: { ...form, problem } });
  const block = form.block.trim();
  const [rows, vinesARow, cordonsAVine] = [form.rows, form.vinesARow, form.cordonsAVine].map(typedNumber);
  const laid = laidOutVines({ rows, vinesARow, cordonsAVine, backAndForth: form.backAndForth });
  const inSheet = (table: SurveyTable, id: string, choice: string) => {
    const column = table.column(id);
    return column?.column.choices === undefined ? choice : choiceWord(column, choice);
  };
  const isKnown = rowOfBlock(blocks!, block) !== undefined;
  const wanted = [
    ...(isKnown
      ? []
      : cellsBelow(blocks!, [
          {
            block,
            rows,
            vines: rows * vinesARow,
            rowSpacing: written(form.rowSpacing),
            vineSpacing: written(form.vineSpacing),
            training: form.training === "" ? null : inSheet(blocks!, "training", form.training),
          },
        ])),
    ...cellsBelow(
      cordons!,
      laid.cordons.map(({ side, ...place }) => ({ block, ...place, side: inSheet(cordons!, "side", side) })),
    ),
    ...cellsBelow(
      vines!,
      laid.vines.map((place) => ({ block, ...place, status: inSheet(vines!, "status", "bearing") })),
    ),
  ];
  const { left } = await changeAllOrNone(
    pane.workbook,
    wanted,
    wanted.map(() => ({ value: null })),
  );
  if (left.length > 0) {
    const [{ sheet, row, column }] = left;
    const filled = pane.say(TEXTS.filled, { sheet, cell: cellName(row, column) });
    return changePage(pane, "season", { layOut: { ...form, problem: filled } });
  }
  await pane.held.look();
  changePage(pane, "season", { layOut: EMPTY_FORM, version: undefined });
  pane.tell("success", TEXTS.done, {
    block,
    cordons: laid.cordons.length,
    sheet: cordons!.sheet,
    vines: laid.vines.length,
    vinesSheet: vines!.sheet,
  });
  const [first] = laid.cordons.length === 0 ? [] : cellsBelow(cordons!, [{ trunk: 0 }]);
  if (first !== undefined) await goToCell(pane, first).catch(() => undefined);
  await checkWhileTyping(pane);
}

/** Counts are typed next: rows are judged from now on, until somebody switches it off on the Check page. */
async function checkWhileTyping(pane: Pane): Promise<void> {
  if (pane.state.check.typing.on) return;
  const { startTyping } = await import(/* webpackChunkName: "check" */ "../check/startTyping");
  // Where Excel refuses it at this moment the block is laid out all the same, and the switch stands off.
  await startTyping(pane).catch(() => undefined);
}

function problemOf(pane: Pane, form: LayOutForm, cordons: SurveyTable): string | undefined {
  const block = form.block.trim();
  if (block === "") return pane.say(TEXTS.unnamed);
  if (rowOfBlock(cordons, block) !== undefined) return pane.say(TEXTS.named, { block });
  for (const field of ["rows", "vinesARow", "cordonsAVine"] as const) {
    const number = typedNumber(form[field]);
    if (!Number.isInteger(number) || number < 1 || number > MOST[field])
      return pane.say(TEXTS.whole, { field: pane.say(TEXTS[field]), most: MOST[field] });
  }
  for (const field of ["rowSpacing", "vineSpacing"] as const)
    if (form[field].trim() !== "" && !(typedNumber(form[field]) > 0))
      return pane.say(TEXTS.length, { field: pane.say(columnOf(field).header) });
  return undefined;
}

function columnOf(id: string) {
  return SHEETS.blocks.columns.find((column) => column.id === id)!;
}

function written(typed: string): number | null {
  return typed.trim() === "" ? null : typedNumber(typed);
}

function rowOfBlock(table: SurveyTable, block: string): number | undefined {
  const names = table.column("block")?.raw;
  const at = Array.from({ length: table.rowCount }, (_, index) => index).find(
    (index) => wordKey(String(names?.at(index) ?? "")) === wordKey(block),
  );
  return at === undefined ? undefined : table.sheetRow(at);
}

/** Cells for rows below the last one of a table, by column id; a column that the sheet does not have is passed over. */
function cellsBelow(
  table: SurveyTable,
  rows: readonly Readonly<Record<string, CellValue>>[],
): CellChangeWanted[] {
  const { sheet, rowCount, headerRow } = table;
  const first = (rowCount === 0 ? headerRow : table.sheetRow(rowCount - 1)) + 1;
  return rows.flatMap((row, at) =>
    Object.entries(row).flatMap(([id, value]) => {
      const column = table.column(id);
      if (column === undefined || value === null) return [];
      return [{ sheet, row: first + at, column: column.sheetColumn, content: { value } }];
    }),
  );
}
