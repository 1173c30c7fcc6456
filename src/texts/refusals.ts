import type { Text } from "./language";
import { OUTLOOK_REFUSALS } from "./outlookRefusals";
import { TEXTS } from "./texts";

/** One sentence per refusal code of src/domain: it names the argument, what was given and what was expected. */
export const REFUSALS: Readonly<Record<string, Text>> = {
  ...OUTLOOK_REFUSALS,
  ...TEXTS.refusals,
};
