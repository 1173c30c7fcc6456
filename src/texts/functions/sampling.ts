import type { FunctionText } from "./functionText";
import { CONFIDENCE, HIGH, LOW } from "./shared";
import { TEXTS } from "../texts";

export const VINESTOCOUNT_TEXT: FunctionText = {
  description: TEXTS.functions.sampling.vinestocount.description,
  parameters: {
    ...TEXTS.functions.sampling.vinestocount.parameters,
    confidence: CONFIDENCE,
  },
  results: TEXTS.functions.sampling.vinestocount.results,
};

export const BLOCKMEAN_TEXT: FunctionText = {
  description: TEXTS.functions.sampling.blockmean.description,
  parameters: {
    ...TEXTS.functions.sampling.blockmean.parameters,
    confidence: CONFIDENCE,
  },
  results: {
    ...TEXTS.functions.sampling.blockmean.results,
    low: LOW,
    high: HIGH,
  },
};
