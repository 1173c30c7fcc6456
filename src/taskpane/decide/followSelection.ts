import type { DecidedVine } from "../../survey/decide/decideSeason";
import type { Season } from "../../survey/season/season";
import { placeOf } from "../../survey/season/vinePlaces";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { vineKey } from "./decideState";

/** From now on the vine of the row that a person selects in a sheet is the vine that the page shows. */
export async function followSelection(pane: Pane): Promise<void> {
  const stop = await pane.workbook.watchSelection?.(() => {
    void pane.workbook.selectedCell().then(
      (cell) => {
        const { result, at } = pane.state.decide;
        const key = cell && result && vineOfRow(result, cell.sheet, cell.row);
        if (key !== undefined && key !== at) changePage(pane, "decide", { at: key });
      },
      () => undefined,
    );
  });
  if (stop) pane.keepWatch("selection", stop);
}

/** The vine that a row of the Cordons or the Vines sheet is about. */
export function vineOfRow(
  { season, vines }: { readonly season: Season; readonly vines: readonly DecidedVine[] },
  sheet: string,
  row: number,
): string | undefined {
  const stands = ({
    table,
    index,
  }: {
    readonly table: { sheet: string; sheetRow(index: number): number };
    readonly index: number;
  }) => table.sheet === sheet && table.sheetRow(index) === row;
  const own = vines.find(({ rows }) => rows.some(stands));
  if (own) return vineKey(own);
  for (const [key, entry] of season.places.register()) {
    if (!stands(entry)) continue;
    const { block, row: vineRow, vine: number } = placeOf(key);
    const name = season.words.wordOf(block);
    const named = vines.find((one) => one.block === name && one.row === vineRow && one.vine === number);
    return named && vineKey(named);
  }
  return undefined;
}
