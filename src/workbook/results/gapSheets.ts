import { vinesAcross, type SeasonGaps } from "../../survey/season/gapsOfSeason";
import { say, type Language } from "../../texts/language";
import { GAP_SHEET_TEXTS as TEXTS } from "../../texts/pane";
import type { OwnSheet } from "../surveyWorkbook";
import { placeName } from "../../texts/placeName";

/** The sheet with a row for each row of vines: positions, live spurs, gaps, and how they grew since last winter. */
export function rowGapsSheet(gaps: SeasonGaps, language: Language, date: string): OwnSheet {
  const text = (name: keyof typeof TEXTS) => TEXTS[name][language];
  return {
    sheet: text("rowGaps"),
    title: [text("rowGapsTitle"), say(TEXTS.made, language, { date })],
    headers: [
      text("block"),
      text("row"),
      text("vines"),
      text("cordons"),
      text("positions"),
      text("liveSpurs"),
      text("gaps"),
      text("share"),
      text("longestGap"),
      text("vinesWithout"),
      text("bothWinters"),
      text("shareBefore"),
      text("shareNow"),
    ],
    about: { thing: [text("block"), text("row")] },
    columns: [
      { width: 16 },
      { width: 7 },
      { width: 8 },
      { width: 9 },
      { width: 10 },
      { width: 10 },
      { width: 8 },
      { width: 9, format: "0%", shade: true },
      { width: 12 },
      { width: 14, wrap: true },
      { width: 14, wrap: true },
      { width: 14, format: "0%", wrap: true },
      { width: 14, format: "0%", wrap: true },
    ],
    rows: gaps.rows.map((row) => [
      row.block,
      placeName(row.row),
      row.vines,
      row.cordons,
      row.positions,
      row.liveSpurs,
      row.gaps,
      row.share ?? null,
      row.longestGap ?? null,
      row.vinesWithout,
      row.since?.cordons ?? null,
      row.since?.shareBefore ?? null,
      row.since?.shareNow ?? null,
    ]),
  };
}

/** The map: a line for each row of vines, a column for each vine, in each cell the share of positions without a spur. */
export function gapMapSheet(gaps: SeasonGaps, language: Language, date: string): OwnSheet {
  const text = (name: keyof typeof TEXTS) => TEXTS[name][language];
  const vines = vinesAcross(gaps.rows);
  return {
    sheet: text("gapMap"),
    title: [text("gapMapTitle"), say(TEXTS.made, language, { date })],
    headers: [text("block"), text("row"), ...vines.map((vine) => say(TEXTS.vine, language, { vine }))],
    about: { thing: [text("block"), text("row")] },
    columns: [{ width: 16 }, { width: 7 }, ...vines.map(() => ({ width: 6, format: "0%", shade: true }))],
    rows: gaps.rows.map(({ block, row, byVine }) => {
      const shares = new Map(byVine.map(({ vine, ...sum }) => [vine, shareOf(sum)]));
      return [block, placeName(row), ...vines.map((vine) => shares.get(vine) ?? null)];
    }),
  };
}

/** Share of a vine's positions without a live spur; null for a vine without positions. */
export function shareOf({
  positions,
  gaps,
}: {
  readonly positions: number;
  readonly gaps: number;
}): number | null {
  return positions === 0 ? null : gaps / positions;
}
