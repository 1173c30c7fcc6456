import { TEXTS } from "./texts";

/** Texts of the picture of a vine. */
export const PICTURE_TEXTS = TEXTS.picture;
