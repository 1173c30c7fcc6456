import { CORDON_ROWS } from "./cordons";
import { t, type FunctionText, type ParameterText } from "./functionText";

const SETTINGS: ParameterText = {
  label: t("settings", "ajustes", "réglages"),
  description: t(
    "The Settings table, for the farm's own weights and references; the built-in ones if left out.",
    "La tabla Ajustes, con los pesos y referencias de la finca; los incorporados si se omite.",
    "Le tableau Réglages, pour les poids et repères de la ferme ; ceux d'origine si omis.",
  ),
};

const BLOCKS: ParameterText = {
  label: t("blocks", "cuarteles", "parcelles"),
  description: t(
    "The Blocks table, for training system and vine spacing; without it the placing of spurs does not count.",
    "La tabla Cuarteles, por el sistema de conducción y la distancia entre plantas; sin ella no cuenta la posición de los pitones.",
    "Le tableau Parcelles, pour la conduite et l'écartement des ceps ; sans lui la position des coursons ne compte pas.",
  ),
};

const UNIT: ParameterText = {
  label: t("unit", "unidad", "unité"),
  description: t(
    "US or metric, for columns whose heading names no unit. If left out: the Settings table's, else that of the other headings.",
    "US o metric, para columnas cuyo encabezado no nombra unidad. Si se omite: la de la tabla Ajustes o la de los otros encabezados.",
    "US ou metric, pour les colonnes dont l'en-tête ne nomme pas d'unité. Si omis : celle du tableau Réglages, sinon des autres en-têtes.",
  ),
};

export const CORDONSCORE_TEXT: FunctionText = {
  description: t(
    "Score of each candidate cordon between 0 and 1 and the parts it is made of. What was not counted is left out, never taken for zero; low and high show how far that leaves the score open.",
    "Puntaje de cada cordón candidato entre 0 y 1 y sus partes. Lo que no se contó se deja fuera, nunca se toma por cero; bajo y alto muestran cuánto queda abierto el puntaje.",
    "Note de chaque cordon candidat entre 0 et 1 et ses parts. Ce qui n'a pas été compté est laissé de côté, jamais pris pour zéro ; bas et haut montrent ce qui reste ouvert.",
  ),
  parameters: {
    cordons: CORDON_ROWS,
    settings: SETTINGS,
    blocks: BLOCKS,
    training: {
      label: t("training", "conducción", "conduite"),
      description: t(
        "highWire, upright or divided, where the Blocks table is not given or does not say.",
        "highWire (alambre alto), upright (brotes erguidos) o divided (follaje dividido), si la tabla Cuarteles falta o no lo dice.",
        "highWire (fil haut), upright (pousses dressées) ou divided (feuillage divisé), si le tableau Parcelles manque ou ne le dit pas.",
      ),
    },
    unit: UNIT,
  },
  results: {
    score: t("Score", "Puntaje", "Note"),
    low: t("Low", "Bajo", "Bas"),
    high: t("High", "Alto", "Haut"),
    spurs: t("Spurs", "Pitones", "Coursons"),
    stretch: t("Longest gap", "Hueco más largo", "Plus long vide"),
    placing: t("Placing", "Posición", "Position"),
    soundness: t("Soundness", "Sanidad", "État"),
    diameter: t("Diameter", "Diámetro", "Diamètre"),
  },
};

export const CHOOSECORDONS_TEXT: FunctionText = {
  description: t(
    "Which cordon stays on each side of each vine: stays, goes or ask, beside each row of the Cordons table, with its score and the reason. A proposal; a person decides at the vine.",
    "Qué cordón queda en cada lado de cada planta: queda, se corta o preguntar, junto a cada fila de la tabla Cordones, con su puntaje y la razón. Es una propuesta; decide una persona.",
    "Quel cordon reste de chaque côté de chaque cep : reste, part ou demander, à côté de chaque ligne du tableau Cordons, avec sa note et la raison. Une proposition ; une personne décide.",
  ),
  parameters: {
    cordons: CORDON_ROWS,
    settings: SETTINGS,
    blocks: BLOCKS,
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "The Vines table, for the status of a vine and its live trunks.",
        "La tabla Plantas, por la situación de la planta y sus troncos vivos.",
        "Le tableau Ceps, pour la situation du cep et ses troncs vivants.",
      ),
    },
    unit: UNIT,
  },
  results: {
    verdict: t("Decision", "Decisión", "Décision"),
    score: t("Score", "Puntaje", "Note"),
    reason: t("Reason", "Razón", "Raison"),
  },
};
