import type { FunctionText } from "./functionText";
import { NODES_PER_SPUR, UNIT } from "./shared";
import { TEXTS } from "../texts";

export const NODEBUDGET_TEXT: FunctionText = {
  description: TEXTS.functions.budget.nodebudget.description,
  parameters: {
    ...TEXTS.functions.budget.nodebudget.parameters,
    unit: UNIT,
  },
  results: TEXTS.functions.budget.nodebudget.results,
};

export const NODESBYLENGTH_TEXT: FunctionText = {
  description: TEXTS.functions.budget.nodesbylength.description,
  parameters: {
    ...TEXTS.functions.budget.nodesbylength.parameters,
    unit: UNIT,
  },
  results: TEXTS.functions.budget.nodesbylength.results,
};

export const SPURFIT_TEXT: FunctionText = {
  description: TEXTS.functions.budget.spurfit.description,
  parameters: {
    ...TEXTS.functions.budget.spurfit.parameters,
    nodes_per_spur: NODES_PER_SPUR,
    unit: UNIT,
  },
  results: TEXTS.functions.budget.spurfit.results,
};
