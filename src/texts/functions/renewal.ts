import type { Text } from "../language";
import type { FunctionText } from "./functionText";
import { TEXTS } from "../texts";

/** Lines of a renewal list that name no vine. */
export const RENEWAL_LINES: Readonly<Record<"none" | "notCounted", Text>> =
  TEXTS.functions.renewal.renewalLines;

export const YOUNGVINE_TEXT: FunctionText = TEXTS.functions.renewal.youngvine;

export const TRUNKSTORENEW_TEXT: FunctionText = TEXTS.functions.renewal.trunkstorenew;
