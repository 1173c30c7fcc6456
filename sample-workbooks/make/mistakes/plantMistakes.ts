import { randomSource } from "../randomSource";
import type { SheetId } from "../../../src/survey/sheets/column";
import type { Season } from "../season";
import { Field, type InSample } from "./mistake";
import { MISTAKES } from "./mistakes";

/** A mistake of the sample, and where it ended up as a person sees it. */
export interface PlantedMistake extends Pick<InSample, "what" | "column"> {
  readonly code: string;
  readonly sheet: SheetId;
  /** Number of the sheet's row, from 1 for the header row. */
  readonly sheetRow: number;
  /** Number of the sheet's column, from 1; 0 when it is about the whole row. */
  readonly columnNumber: number;
}

/** Draws what a mistaken cell holds, the same every time. */
const SEED = 20260315;

/** Makes every mistake of the sample in the season, and answers where each one stands. The season is changed. */
export function plantMistakes(season: Season): PlantedMistake[] {
  const field = new Field(season, randomSource(SEED));
  const planted = MISTAKES.flatMap(({ code, inSample = [], plant }) =>
    inSample.map((sample) => {
      field.pinTo(sample);
      const place = plant(season, field);
      if (!place) throw new Error(`No place for ${code}: ${JSON.stringify(sample.at)}`);
      return { code, sample, ...place };
    }),
  );
  return planted.map(({ code, sample: { what, column }, sheet, rows }) => ({
    code,
    what,
    column,
    sheet: sheet.shape,
    sheetRow: sheet.rows.indexOf(rows[0]) + 2,
    columnNumber: sheet.columns.indexOf(column) + 1,
  }));
}
