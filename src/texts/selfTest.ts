import type { Text } from "./language";
import { TEXTS } from "./texts";

/** What each ability of Excel is for, by its id in src/workbook/excel/excelAbilities.ts. */
export const ABILITY_TEXTS: Readonly<Record<string, Text>> = TEXTS.selfTest.ability;

/** What the self-test adds where Excel lacks an ability, and what a cell said that asked for our functions. */
export const SELF_TEST = TEXTS.selfTest.answers;
