import { CELL_MISTAKES } from "./cellMistakes";
import type { Mistake } from "./mistake";
import { SHEET_MISTAKES } from "./sheetMistakes";
import { STRETCH_MISTAKES } from "./stretchMistakes";
import { VINE_MISTAKES } from "./vineMistakes";

/** Every mistake that is planted, in seasons drawn at random and, where it says so, in the sample. */
export const MISTAKES: readonly Mistake[] = [
  ...CELL_MISTAKES,
  ...VINE_MISTAKES,
  ...STRETCH_MISTAKES,
  ...SHEET_MISTAKES,
];
