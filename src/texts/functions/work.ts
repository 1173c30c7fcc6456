import type { FunctionText } from "./functionText";
import { TEXTS } from "../texts";

export const PRUNINGHOURS_TEXT: FunctionText = TEXTS.functions.work.pruninghours;

export const VERSION_TEXT: FunctionText = {
  ...TEXTS.functions.work.version,
  parameters: {},
};
