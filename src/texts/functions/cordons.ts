import type { FunctionText, ParameterText } from "./functionText";
import { TEXTS } from "../texts";

/** The table of candidate cordons. */
export const CORDON_ROWS: ParameterText = TEXTS.functions.cordons.cordonRows;

export const GAPSBYROW_TEXT: FunctionText = {
  description: TEXTS.functions.cordons.gapsbyrow.description,
  parameters: {
    cordons: CORDON_ROWS,
    ...TEXTS.functions.cordons.gapsbyrow.parameters,
  },
  results: TEXTS.functions.cordons.gapsbyrow.results,
};
