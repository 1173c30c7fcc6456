import { TEXTS } from "./texts";

/** Taking a figure that the farm's own harvests propose. */
export const FARM_FIGURE_TEXTS = TEXTS.farmFigures;
