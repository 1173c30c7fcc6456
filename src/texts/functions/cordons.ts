import type { FunctionText, ParameterText } from "./functionText";
import { HEADS } from "../heads";
import { TEXTS } from "../texts";

const { block, row, vines, cordons, positions, liveSpurs, gaps, longestGap } = HEADS;

/** The table of candidate cordons. */
export const CORDON_ROWS: ParameterText = TEXTS.functions.cordons.cordonRows;

export const GAPSBYROW_TEXT: FunctionText = {
  description: TEXTS.functions.cordons.gapsbyrow.description,
  parameters: {
    cordons: CORDON_ROWS,
    ...TEXTS.functions.cordons.gapsbyrow.parameters,
  },
  results: {
    ...{ block, row, vines, cordons, positions, liveSpurs, gaps, longestGap },
    ...TEXTS.functions.cordons.gapsbyrow.results,
  },
};
