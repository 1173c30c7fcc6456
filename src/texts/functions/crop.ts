import type { FunctionText } from "./functionText";
import { CLUSTER_WEIGHT, NODES_PER_SPUR, UNIT } from "./shared";
import { TEXTS } from "../texts";

export const SHOOTS_TEXT: FunctionText = {
  description: TEXTS.functions.crop.shoots.description,
  parameters: {
    ...TEXTS.functions.crop.shoots.parameters,
    nodes_per_spur: NODES_PER_SPUR,
  },
  results: TEXTS.functions.crop.shoots.results,
};

export const CLUSTERS_TEXT: FunctionText = TEXTS.functions.crop.clusters;

export const VINECROP_TEXT: FunctionText = {
  description: TEXTS.functions.crop.vinecrop.description,
  parameters: {
    clusters: TEXTS.functions.crop.vinecrop.parameters.clusters,
    cluster_weight: CLUSTER_WEIGHT,
    unit: UNIT,
  },
  results: TEXTS.functions.crop.vinecrop.results,
};

export const VINEDENSITY_TEXT: FunctionText = {
  description: TEXTS.functions.crop.vinedensity.description,
  parameters: {
    ...TEXTS.functions.crop.vinedensity.parameters,
    unit: UNIT,
  },
  results: TEXTS.functions.crop.vinedensity.results,
};

export const BLOCKCROP_TEXT: FunctionText = {
  description: TEXTS.functions.crop.blockcrop.description,
  parameters: {
    ...TEXTS.functions.crop.blockcrop.parameters,
    unit: UNIT,
  },
  results: TEXTS.functions.crop.blockcrop.results,
};

export const CROPLOAD_TEXT: FunctionText = TEXTS.functions.crop.cropload;

export const SHOOTSTOREMOVE_TEXT: FunctionText = {
  description: TEXTS.functions.crop.shootstoremove.description,
  parameters: { ...TEXTS.functions.crop.shootstoremove.parameters, unit: UNIT },
  results: TEXTS.functions.crop.shootstoremove.results,
};

export const CLUSTERSTOREMOVE_TEXT: FunctionText = {
  description: TEXTS.functions.crop.clusterstoremove.description,
  parameters: {
    ...TEXTS.functions.crop.clusterstoremove.parameters,
    cluster_weight: CLUSTER_WEIGHT,
    unit: UNIT,
  },
  results: TEXTS.functions.crop.clusterstoremove.results,
};
