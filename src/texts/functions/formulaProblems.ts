import type { Text } from "../language";
import { TEXTS } from "../texts";

/** One sentence per mistake in a formula that is typed outside a spreadsheet; `position` counts characters from 1. */
export const FORMULA_PROBLEMS: Readonly<Record<string, Text>> = TEXTS.functions.formulaProblems;
