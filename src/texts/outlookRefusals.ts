import type { Text } from "./language";
import { TEXTS } from "./texts";

/** Refusals of the crop outlook, the sampling plan and what harvest teaches. */
export const OUTLOOK_REFUSALS: Readonly<Record<string, Text>> = TEXTS.outlookRefusals;
