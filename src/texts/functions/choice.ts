import { CORDON_ROWS } from "./cordons";
import type { FunctionText, ParameterText } from "./functionText";
import { TEXTS } from "../texts";

const SETTINGS: ParameterText = TEXTS.functions.choice.settings;

const BLOCKS: ParameterText = TEXTS.functions.choice.blocks;

const UNIT: ParameterText = TEXTS.functions.checks.checkcounts.parameters.unit;

export const CORDONSCORE_TEXT: FunctionText = {
  description: TEXTS.functions.choice.cordonscore.description,
  parameters: {
    cordons: CORDON_ROWS,
    settings: SETTINGS,
    blocks: BLOCKS,
    training: TEXTS.functions.choice.cordonscore.parameters.training,
    unit: UNIT,
  },
  results: TEXTS.functions.choice.cordonscore.results,
};

export const CHOOSECORDONS_TEXT: FunctionText = {
  description: TEXTS.functions.choice.choosecordons.description,
  parameters: {
    cordons: CORDON_ROWS,
    settings: SETTINGS,
    blocks: BLOCKS,
    vines: TEXTS.functions.choice.choosecordons.parameters.vines,
    unit: UNIT,
  },
  results: TEXTS.functions.choice.choosecordons.results,
};
