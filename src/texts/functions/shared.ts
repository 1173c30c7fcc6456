import type { ParameterText } from "./functionText";
import { TEXTS } from "../texts";

/** Arguments that several functions have in common. */
export const UNIT: ParameterText = TEXTS.functions.shared.unit;

export const CONFIDENCE: ParameterText = TEXTS.functions.shared.confidence;

export const LOW = TEXTS.functions.shared.low;
export const HIGH = TEXTS.functions.shared.high;

export const NODES_PER_SPUR: ParameterText = TEXTS.functions.shared.nodesPerSpur;

export const CLUSTER_WEIGHT: ParameterText = TEXTS.functions.shared.clusterWeight;
