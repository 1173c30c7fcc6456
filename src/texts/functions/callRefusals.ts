import type { Text } from "../language";
import { TEXTS } from "../texts";

/** One sentence per way a call can be wrong: it names the argument, what was given and what was expected. */
export const CALL_REFUSALS: Readonly<Record<string, Text>> = TEXTS.functions.callRefusals.callRefusals;

/** What is expected of an argument, to stand inside the sentences above. */
export const EXPECTED: Readonly<Record<string, Text>> = TEXTS.functions.callRefusals.expected;

/** How a table with its heading row is written as an argument. */
export const WHOLE_TABLE: Text = TEXTS.functions.callRefusals.wholeTable;

/** Where in a list a wrong cell stands, to stand inside the sentences above. */
export const PLACE_IN_RANGE: Text = TEXTS.functions.callRefusals.placeInRange;
