import type { Text } from "./language";

/** Refusals of the crop outlook, the sampling plan and what harvest teaches. */
export const OUTLOOK_REFUSALS: Readonly<Record<string, Text>> = {
  tooFewClusters: {
    en: "{value} weighed clusters are too few to say how sure their mean weight is; at least {needed} are needed.",
    es: "{value} racimos pesados son muy pocos para decir cuán segura es la media; se necesitan al menos {needed}.",
    fr: "{value} grappes pesées sont trop peu pour dire la sûreté de leur poids moyen ; il en faut au moins {needed}.",
  },
};
