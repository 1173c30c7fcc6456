import type { FunctionText } from "./functionText";
import { TEXTS } from "../texts";

export const OUTLOOK_TEXT: FunctionText = TEXTS.functions.outlook.outlook;

/** Lines of the answer. */
export const OUTLOOK_LINES = TEXTS.functions.outlook.outlookLines;
