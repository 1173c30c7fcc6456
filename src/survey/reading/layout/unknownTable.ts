import { isBlank } from "../../sheets/cell";
import { SHEETS } from "../../sheets/sheets";
import { choiceOf } from "../choiceWords";
import { likelyColumns } from "../likelyColumns";
import type { OpenAccount, ReadingFacts } from "../readingAccount";
import type { LaidTable } from "../rowsByWinter";
import type { SheetArea } from "../sheetArea";
import { holdsWordsOnly } from "./heads";

/** A sheet in which no head is ours: what its columns could be is asked, and its rows are named. */
export function unknownTable(area: SheetArea, account: OpenAccount): LaidTable[] {
  const { sheet } = area;
  const lines = area.values.filter((cells) => cells.filter((cell) => !isBlank(cell)).length > 2);
  const hasHeads = lines.length > 0 && holdsWordsOnly(lines[0]);
  const rows = lines.length - (hasHeads ? 1 : 0);
  const heads = hasHeads ? lines[0].filter((cell) => typeof cell === "string" && !isBlank(cell)) : [];
  const facts: ReadingFacts = heads.length > 0 ? { rows, heads: heads.map(String) } : { rows };
  const likely = likelyColumns(area);
  if (likely) {
    account.questions.push({
      code: "heads",
      sheet,
      facts: {
        rows: likely.rows,
        heads: Object.keys(likely.columns),
        columns: Object.values(likely.columns),
      },
      proposals: [{ heads: [{ sheet, shape: "cordons", columns: likely.columns }] }],
    });
    account.leftOut.push({ what: "sheet", reason: "otherHeads", sheet, facts: { rows: likely.rows } });
  } else if (holdsSides(area)) {
    account.questions.push({ code: "noHeads", sheet, facts, proposals: [] });
    account.leftOut.push({ what: "sheet", reason: "otherHeads", sheet, facts: { rows } });
  } else account.leftOut.push({ what: "sheet", reason: "notCounts", sheet, facts });
  return [];
}

/** Rows from which a column of sides beside numbers tells that a sheet without known heads holds counts. */
const LEAST_SIDED = 8;

/** True where nearly all cells of a column name sides, both of them, beside three numbers at least. */
function holdsSides({ values }: SheetArea): boolean {
  const side = SHEETS.cordons.columns.find(({ id }) => id === "side")!;
  const rows = values
    .filter((cells) => cells.filter((cell) => typeof cell === "number").length >= 3)
    .slice(0, 500);
  if (rows.length < LEAST_SIDED) return false;
  const width = rows.reduce((most, cells) => Math.max(most, cells.length), 0);
  for (let at = 0; at < width; at++) {
    const sides = rows.flatMap(({ [at]: cell }) =>
      typeof cell === "string" ? (choiceOf(side, cell) ?? []) : [],
    );
    if (sides.length >= rows.length * 0.8 && new Set(sides).size > 1) return true;
  }
  return false;
}
