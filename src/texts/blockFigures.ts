import { TEXTS } from "./texts";

/** Shoots to thin a vine to: {keep} {counted} {remove} {hours}. */
export const SHOOT_THINNING = TEXTS.shootThinning;

/** Which figures are in force in a block and where each is from: {figures} {figure} {value} {from} {source} {grape} {kind}. */
export const BLOCK_FIGURES = TEXTS.blockFigures;
