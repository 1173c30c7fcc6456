import type { Text } from "./language";
import { TEXTS } from "./texts";

/** What is to be done about a vine's trunks, by urgency. */
export const TRUNK_RENEWAL: Readonly<Record<string, Text>> = TEXTS.renewal.trunkRenewal;

/** What a cordon that stays needs. */
export const CORDON_RENEWAL: Readonly<Record<string, Text>> = TEXTS.renewal.cordonRenewal;

/** What asks for a new cordon. */
export const RENEWAL_TRIGGERS: Readonly<Record<string, Text>> = TEXTS.renewal.renewalTriggers;

/** Counts that would tell how a cordon is renewed. */
export const RENEWAL_COUNTS: Readonly<Record<string, Text>> = TEXTS.renewal.renewalCounts;

/** What is left on a vine that is still being built up. */
export const YOUNG_VINE = TEXTS.renewal.youngVine;

/** The cane to look for. */
export const CANE_WANTED: Text = TEXTS.renewal.caneWanted;
