import { t, type FindingText } from "./findingText";

/** Findings that compare a row with its block. */
export const BLOCK_FINDINGS: Readonly<Record<string, FindingText>> = {
  unlikeItsBlock: {
    title: t("Unlike its block", "Distinto de su cuartel", "Différent de sa parcelle"),
    sentence: t(
      "{column} is {value}{unit}; the middle of {values} in the block is {median}{unit}.",
      "{column} es {value}{unit}; el valor central de {values} en el cuartel es {median}{unit}.",
      "{column} vaut {value}{unit} ; le milieu de {values} valeurs de la parcelle est {median}{unit}.",
    ),
    why: t(
      "So far from its neighbours a value is mostly a slip: a digit too many, a lost decimal point, another unit.",
      "Tan lejos de sus vecinas suele ser un error: un dígito de más, una coma perdida, otra unidad.",
      "Si loin de ses voisines, une valeur est le plus souvent une faute : un chiffre de trop, une virgule perdue, une autre unité.",
    ),
    remedy: t(
      "Compare with the paper sheet; if it is true, set the finding aside.",
      "Compare con la hoja de papel; si es cierto, aparte el hallazgo.",
      "Comparer avec la feuille de papier ; si c'est vrai, mettre la remarque de côté.",
    ),
  },
  positionsUnlikeLength: {
    title: t(
      "Positions unlike the length",
      "Posiciones que no cuadran con el largo",
      "Emplacements et longueur ne concordent pas",
    ),
    sentence: t(
      "{value} positions on {length}{unit}; the block's cordons carry about {expected} on that length ({values} compared).",
      "{value} posiciones en {length}{unit}; los cordones del cuartel llevan unas {expected} en ese largo ({values} comparados).",
      "{value} emplacements sur {length}{unit} ; les cordons de la parcelle en portent environ {expected} sur cette longueur ({values} comparés).",
    ),
    why: t(
      "The positions or the length are mistyped, and the share of live spurs is counted from both.",
      "Las posiciones o el largo están mal escritos, y de ambos sale la parte de pitones vivos.",
      "Les emplacements ou la longueur sont mal saisis, et la part de coursons vivants vient des deux.",
    ),
    remedy: t(
      "Compare with the paper sheet; if it is true, set the finding aside.",
      "Compare con la hoja de papel; si es cierto, aparte el hallazgo.",
      "Comparer avec la feuille de papier ; si c'est vrai, mettre la remarque de côté.",
    ),
  },
};
