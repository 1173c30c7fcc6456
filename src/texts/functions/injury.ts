import type { FunctionText } from "./functionText";
import { CONFIDENCE, HIGH, LOW } from "./shared";
import { TEXTS } from "../texts";

export const BUDINJURY_TEXT: FunctionText = {
  description: TEXTS.functions.injury.budinjury.description,
  parameters: {
    ...TEXTS.functions.injury.budinjury.parameters,
    confidence: CONFIDENCE,
  },
  results: { share: TEXTS.functions.injury.budinjury.results.share, low: LOW, high: HIGH },
};

export const NODESAFTERINJURY_TEXT: FunctionText = TEXTS.functions.injury.nodesafterinjury;

export const CROPAFTERFROST_TEXT: FunctionText = TEXTS.functions.injury.cropafterfrost;
