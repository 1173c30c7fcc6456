import type { Text } from "./language";

/** Refusals of the crop outlook, the sampling plan and what harvest teaches. */
export const OUTLOOK_REFUSALS: Readonly<Record<string, Text>> = {
  tooFewClusters: {
    en: "{value} weighed clusters are too few to say how sure their mean weight is; at least {needed} are needed.",
    es: "{value} racimos pesados son muy pocos para decir cuán segura es la media; se necesitan al menos {needed}.",
    fr: "{value} grappes pesées sont trop peu pour dire la sûreté de leur poids moyen ; il en faut au moins {needed}.",
  },
  unknownCropLoadRange: {
    en: '"{value}" is not a named range of crop load; known are: {known}.',
    es: '"{value}" no es un rango conocido de relación de carga; se conocen: {known}.',
    fr: "« {value} » n'est pas une fourchette connue de rapport de charge ; sont connues : {known}.",
  },
  tooFewRows: {
    en: "{value} rows with counts of two winters are too few to say how fast spurs are lost; at least {needed} are needed.",
    es: "{value} hileras con conteos de dos inviernos son muy pocas para decir cuán rápido se pierden pitones; se necesitan al menos {needed}.",
    fr: "{value} rangs comptés deux hivers sont trop peu pour dire à quelle vitesse se perdent les coursons ; il en faut au moins {needed}.",
  },
  rowSpursAbovePositions: {
    en: "Row {row}, {year}: {value} live spurs on {most} positions cannot be.",
    es: "Hilera {row}, {year}: {value} pitones vivos en {most} posiciones no puede ser.",
    fr: "Rang {row}, {year} : {value} coursons vivants sur {most} emplacements, c'est impossible.",
  },
};
