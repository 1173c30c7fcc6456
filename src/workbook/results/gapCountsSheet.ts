import type { CellValue } from "../../survey/sheets/cell";
import { countsOfCordons } from "../../survey/season/gapsOfSeason";
import type { Stays } from "../../survey/season/fixedCordons";
import type { Season } from "../../survey/season/season";
import { placeOf } from "../../survey/season/vinePlaces";
import { GAP_PIVOT as TEXTS } from "../../texts/gapPivot";
import { say, type Language } from "../../texts/language";
import type { OwnSheet, PivotWanted } from "../surveyWorkbook";
import { placeName } from "../../texts/placeName";

/** The sheet with a row for each cordon that counts: what a PivotTable of the gaps, or a person's own, is made from. */
export function gapCountsSheet(
  season: Season,
  counts: Stays,
  sheet: string,
  language: Language,
  date: string,
): OwnSheet {
  const places = season.places;
  const rows: OwnSheet["rows"][number][] = [];
  for (const table of season.tables("cordons")) {
    const keys = places.keysOf(table);
    const counted = countsOfCordons(table);
    for (let index = 0; index < table.rowCount; index += 1) {
      if (!season.used.isUsed(table, index) || !counted.areUsable(index) || !counts(table, index)) continue;
      const { positions, liveSpurs } = counted.at(index);
      const { block, row, vine } = placeOf(keys[index]);
      const as = (id: string) => plain(table.column(id)?.raw.at(index));
      const gaps = positions - liveSpurs;
      rows.push([
        season.words.wordOf(block),
        placeName(row),
        placeName(vine),
        as("side"),
        as("cordon"),
        as("trunk"),
        as("countedBy"),
        positions,
        liveSpurs,
        gaps,
        positions === 0 ? null : gaps / positions,
      ]);
    }
  }
  return {
    sheet,
    title: [TEXTS.countsTitle[language], say(TEXTS.made, language, { date })],
    headers: HEADERS.map((header) => TEXTS[header][language]),
    about: { thing: HEADERS.slice(0, 6).map((header) => TEXTS[header][language]) },
    columns: [{ width: 18 }, ...new Array(9).fill({ width: 10 }), { width: 10, format: "0%" }],
    rows,
  };
}

const HEADERS = [
  "block",
  "row",
  "vine",
  "side",
  "cordon",
  "trunk",
  "countedBy",
  "positions",
  "liveSpurs",
  "gaps",
  "share",
] as const;

/** The PivotTable over that sheet: blocks and rows down, sums across, filters above. */
export function gapPivot(sheet: string, source: string, language: Language): PivotWanted {
  const text = (name: keyof typeof TEXTS) => TEXTS[name][language];
  return {
    sheet,
    source,
    name: "Cordonbook gaps",
    title: [text("pivotTitle"), text("pivotNote")],
    filters: [text("side"), text("trunk"), text("countedBy")],
    rows: [text("block"), text("row")],
    values: [
      { header: text("positions"), name: text("sumPositions"), by: "Sum" },
      { header: text("liveSpurs"), name: text("sumLiveSpurs"), by: "Sum" },
      { header: text("gaps"), name: text("sumGaps"), by: "Sum" },
      { header: text("share"), name: text("meanShare"), by: "Average", format: "0%" },
    ],
  };
}

function plain(value: CellValue | undefined): string | number | boolean | null {
  return value === undefined || typeof value === "object" ? null : value;
}
