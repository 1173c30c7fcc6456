import type { Setting } from "../setting";

/** Settings for thresholds of the checks. */
export const CHECK_SETTINGS: readonly Setting[] = [
  {
    id: "Least distance between spurs",
    value: 2,
    unit: "in",
    source: "ours",
    least: 0.5,
    most: 12,
    meaning: {
      en: "Spur positions closer than this on average cannot be right; published spacings begin at 3 in (Minnesota 2022).",
      es: "Posiciones más juntas que esto en promedio no pueden ser; las distancias publicadas empiezan en 3 in (Minnesota 2022).",
      fr: "Des emplacements plus serrés que cela en moyenne sont impossibles ; les distances publiées commencent à 3 in (Minnesota 2022).",
    },
  },
  {
    id: "Unlike its block: spread",
    value: 4.5,
    unit: "times",
    source: "ours",
    least: 2,
    most: 20,
    meaning: {
      en: "A value this many times the block's usual spread away from its middle is asked about (median and median deviation; Iglewicz and Hoaglin 1993 begin at 3.5, from memory).",
      es: "Se pregunta por un valor tan lejos del centro de su cuartel, en veces la dispersión usual (mediana; Iglewicz y Hoaglin 1993 empiezan en 3,5, de memoria).",
      fr: "On demande pour une valeur si loin du milieu de sa parcelle, en multiples de l'écart habituel (médiane ; Iglewicz et Hoaglin 1993 commencent à 3,5, de mémoire).",
    },
  },
  {
    id: "Unlike its block: least values",
    value: 20,
    unit: "values",
    source: "ours",
    least: 5,
    most: 1000,
    meaning: {
      en: "A block with fewer values than this is too small to say what is usual in it.",
      es: "Un cuartel con menos valores que esto es demasiado chico para saber qué es usual.",
      fr: "Une parcelle avec moins de valeurs que cela est trop petite pour dire ce qui y est habituel.",
    },
  },
  {
    id: "Walk order: most vines out of order",
    value: 0.2,
    unit: "share",
    source: "ours",
    least: 0,
    most: 0.5,
    meaning: {
      en: "When more of a row's vines than this stand out of order, the sheet was sorted another way and its order is not judged.",
      es: "Si más plantas de la hilera que esta parte están fuera de orden, la hoja se ordenó de otra manera y no se juzga.",
      fr: "Si plus de ceps du rang que cette part sont hors d'ordre, la feuille a été triée autrement et son ordre n'est pas jugé.",
    },
  },
];
