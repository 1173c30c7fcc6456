import { TEXTS } from "./texts";

/** Texts for accepting all decided vines of a block in one step. */
export const ACCEPT_TEXTS = TEXTS.accept;
