import { t, type FunctionText } from "./functionText";
import { CONFIDENCE, HIGH, LOW } from "./shared";

export const VINESTOCOUNT_TEXT: FunctionText = {
  description: t(
    "Fewest vines to count so that a block's mean is known to within a margin, by Student's t and for a block of the given size.",
    "Mínimo de plantas que contar para conocer la media de un cuartel con cierto margen, con la t de Student y para un cuartel de ese tamaño.",
    "Nombre minimal de ceps à compter pour connaître la moyenne d'une parcelle à une marge près, par le t de Student et pour une parcelle de cette taille.",
  ),
  parameters: {
    cv: {
      label: t("cv", "cv", "cv"),
      description: t(
        "Spread between vines: standard deviation over mean, from a pilot count; 0.3 to 0.45 is usual.",
        "Variación entre plantas: desviación estándar sobre media, de un conteo piloto; de 0,3 a 0,45 es lo usual.",
        "Variation entre ceps : écart type sur moyenne, d'un comptage pilote ; 0,3 à 0,45 est courant.",
      ),
    },
    margin: {
      label: t("margin", "margen", "marge"),
      description: t(
        "Margin wanted, as a share of the mean: 0.1 for within 10 %.",
        "Margen deseado, como proporción de la media: 0,1 para un 10 %.",
        "Marge voulue, en part de la moyenne : 0,1 pour 10 %.",
      ),
    },
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "Bearing vines in the block; leave it out when the block is large.",
        "Plantas productivas del cuartel; omítalo si el cuartel es grande.",
        "Ceps en production de la parcelle ; à omettre si elle est grande.",
      ),
    },
    confidence: CONFIDENCE,
  },
  results: { vines: t("vines to count", "plantas que contar", "ceps à compter") },
};

export const BLOCKMEAN_TEXT: FunctionText = {
  description: t(
    "Mean of a block from counts on a random sample of its vines, with the range that holds the block's true mean, and the number of vines counted.",
    "Media de un cuartel según conteos en una muestra al azar de sus plantas, con el rango que contiene la media verdadera y el número de plantas contadas.",
    "Moyenne d'une parcelle d'après des comptages sur un échantillon aléatoire de ceps, avec la fourchette qui contient la vraie moyenne et le nombre de ceps comptés.",
  ),
  parameters: {
    counts: {
      label: t("counts", "conteos", "comptages"),
      description: t(
        "One count a vine; blank cells are vines that were not counted.",
        "Un conteo por planta; las celdas vacías son plantas no contadas.",
        "Un comptage par cep ; les cellules vides sont des ceps non comptés.",
      ),
    },
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "Bearing vines in the block; leave it out when the block is large.",
        "Plantas productivas del cuartel; omítalo si el cuartel es grande.",
        "Ceps en production de la parcelle ; à omettre si elle est grande.",
      ),
    },
    confidence: CONFIDENCE,
    zeros: {
      label: t("zeros", "ceros", "zéros"),
      description: t(
        "count (if left out): a 0 is a count of nothing. skip: a 0 is a vine not counted; choose it where blank cells arrive as 0.",
        "count (si se omite): un 0 es un conteo de nada. skip: un 0 es una planta no contada; elíjalo donde las celdas vacías llegan como 0.",
        "count (si omis) : un 0 est un comptage nul. skip : un 0 est un cep non compté ; à choisir où les cellules vides arrivent comme 0.",
      ),
    },
  },
  results: {
    mean: t("mean", "media", "moyenne"),
    low: LOW,
    high: HIGH,
    n: t("vines counted", "plantas contadas", "ceps comptés"),
  },
};
