import { TEXTS } from "./texts";

/** Which figures are in force in a block and where each is from: {figures} {figure} {value} {from} {source} {grape} {kind}. */
export const BLOCK_FIGURES = TEXTS.blockFigures;
