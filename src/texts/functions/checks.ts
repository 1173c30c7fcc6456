import type { Text } from "../language";
import type { FunctionText } from "./functionText";
import { TEXTS } from "../texts";

export const NO_FINDINGS: Text = TEXTS.functions.checks.noFindings;

export const CHECKCOUNTS_TEXT: FunctionText = TEXTS.functions.checks.checkcounts;
