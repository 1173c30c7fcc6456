import { say, type Language } from "../../texts/language";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import type { SurveyTable } from "../../survey/season/season";
import { SHEETS } from "../../survey/sheets/sheets";
import { escaped, type Paper } from "./cardsHtml";

/** How the count sheets are printed. */
export interface CountSheetPrint {
  readonly language: Language;
  readonly paper: Paper;
}

/** Columns that the crew fills in; live spurs have boxes to strike, the others room to write. */
const COUNTED = ["trunk", "length", "positions", "liveSpurs", "longestGap", "condition", "note"] as const;
const TEXTS = SEASON_TEXTS.countSheet;
/** Boxes for the live spurs of one cordon: three fives. */
const BOXES = "☐☐☐☐☐ ☐☐☐☐☐ ☐☐☐☐☐";

/**
 * Empty count sheets for the clipboard, a page or more for each row of vines, in the order of the sheet: one page of
 * HTML that needs nothing else. Every word from the sheet is escaped.
 */
export function countSheetHtml(cordons: SurveyTable, { language, paper }: CountSheetPrint): string {
  const title = say(TEXTS.title, language);
  const heads = ["vine", "side", "cordon", ...COUNTED].map((id) => {
    const column = SHEETS.cordons.columns.find((one) => one.id === id)!;
    const unit = /\([^)]*\)$/.exec(cordons.column(id)?.header ?? "")?.[0];
    const head = id === "liveSpurs" ? say(TEXTS.tally, language) : say(column.header, language);
    return `<th scope="col" class="${id}">${escaped(unit === undefined ? head : `${head} ${unit}`)}</th>`;
  });
  const pages = [...rowsOfVines(cordons)].map(([, { block, row, lines }]) => {
    const place = say(TEXTS.row, language, { block, row });
    const body = lines.map(({ index, isFirst }) => {
      const written = ["vine", "side", "cordon"].map(
        (id) => `<td class="${id}">${escaped(wordAt(cordons, id, index, language))}</td>`,
      );
      const blank = COUNTED.map((id) => `<td class="${id}">${id === "liveSpurs" ? BOXES : ""}</td>`);
      return `<tr${isFirst ? ' class="first"' : ""}>${[...written, ...blank].join("")}</tr>`;
    });
    return `<section><h1>${escaped(place)}</h1>
<p>${escaped(say(TEXTS.counter, language))} ____________________ ${escaped(say(TEXTS.date, language))} ______________</p>
<table><thead><tr>${heads.join("")}</tr></thead><tbody>
${body.join("\n")}
</tbody></table></section>`;
  });
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
@page { size: ${paper === "A4" ? "A4" : "letter"} landscape; margin: 12mm; }
body { font: 10pt/1.3 system-ui, sans-serif; color: #000; background: #fff; margin: 0; }
section { break-after: page; }
section:last-child { break-after: auto; }
h1 { font-size: 14pt; margin: 0; }
p { margin: 2mm 0; }
table { border-collapse: collapse; width: 100%; table-layout: fixed; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { border: 0.4pt solid #000; padding: 1mm; text-align: start; vertical-align: middle; }
th { font-size: 8pt; font-weight: 600; vertical-align: bottom; overflow-wrap: break-word; }
td { height: 7mm; }
tr.first td { border-top-width: 1.6pt; }
.vine, .trunk { width: 12mm; } .cordon { width: 16mm; } .side { width: 20mm; }
.length, .positions, .longestGap { width: 20mm; } .condition { width: 26mm; }
.liveSpurs { width: 64mm; font-size: 11pt; white-space: nowrap; }
th.liveSpurs { font-size: 8pt; white-space: normal; }
</style>
</head>
<body>
${pages.join("\n")}
</body>
</html>
`;
}

interface RowOfVines {
  readonly block: string;
  readonly row: string;
  readonly lines: { readonly index: number; readonly isFirst: boolean }[];
}

/** Rows of vines in the order in which the sheet first names them; `isFirst` marks the first cordon of a vine. */
function rowsOfVines(cordons: SurveyTable): ReadonlyMap<string, RowOfVines> {
  const rows = new Map<string, RowOfVines>();
  let before = "";
  for (let index = 0; index < cordons.rowCount; index++) {
    const text = (id: string) => String(cordons.column(id)?.raw.at(index) ?? "");
    const key = `${text("row")}|${text("block")}`;
    const known = rows.get(key) ?? { block: text("block"), row: text("row"), lines: [] };
    rows.set(key, known);
    const vine = `${text("vine")}|${key}`;
    known.lines.push({ index, isFirst: vine !== before });
    before = vine;
  }
  return rows;
}

/** A cell in words of the printed language, where it holds one of the accepted words. */
function wordAt(table: SurveyTable, id: string, index: number, language: Language): string {
  const column = table.column(id);
  const choice = column?.column.choices?.[column.codes[index]];
  return choice === undefined ? String(column?.raw.at(index) ?? "") : say(choice.word, language);
}
