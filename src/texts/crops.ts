import { TEXTS } from "./texts";

/** Units of a crop that are words, and not signs alike in every language. */
export const CROP_UNITS = TEXTS.crops;
