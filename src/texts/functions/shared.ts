import { t, type ParameterText } from "./functionText";

/** Arguments that several functions have in common. */
export const UNIT: ParameterText = {
  label: t("unit", "unidad", "unité"),
  description: t(
    "US (pounds, feet, inches, acres) or metric (kilograms, metres, centimetres, hectares), for what goes in and what comes out. US if left out.",
    "US (libras, pies, pulgadas, acres) o metric (kilos, metros, centímetros, hectáreas), para lo que entra y lo que sale. US si se omite.",
    "US (livres, pieds, pouces, acres) ou metric (kilogrammes, mètres, centimètres, hectares), pour ce qui entre et ce qui sort. US si omis.",
  ),
};

export const CONFIDENCE: ParameterText = {
  label: t("confidence", "confianza", "confiance"),
  description: t(
    "How often such a range should hold the true figure, as a share: 0.95 if left out.",
    "Con qué frecuencia el rango debe contener el valor verdadero, como proporción: 0,95 si se omite.",
    "À quelle fréquence la fourchette doit contenir la vraie valeur, en part : 0,95 si omis.",
  ),
};

export const LOW = t("low", "bajo", "bas");
export const HIGH = t("high", "alto", "haut");

export const NODES_PER_SPUR: ParameterText = {
  label: t("nodes per spur", "yemas por pitón", "yeux par courson"),
  description: t(
    "Count nodes left on a spur; the compressed buds at its base are not counted. Two is common practice.",
    "Yemas contadas que se dejan por pitón; las de la base no se cuentan. Dos es lo habitual.",
    "Yeux comptés laissés par courson ; ceux de la base ne comptent pas. Deux est l'usage courant.",
  ),
};

export const CLUSTER_WEIGHT: ParameterText = {
  label: t("cluster weight", "peso de racimo", "poids de grappe"),
  description: t(
    "Mean weight of a ripe cluster, pounds or kilograms.",
    "Peso medio de un racimo maduro, libras o kilos.",
    "Poids moyen d'une grappe mûre, livres ou kilogrammes.",
  ),
};
