import type { Text } from "../language";
import { t, type FunctionText } from "./functionText";

export const NO_FINDINGS: Text = t(
  "No finding; rows read: {rows}.",
  "Sin hallazgos; filas leídas: {rows}.",
  "Aucun constat ; lignes lues : {rows}.",
);

export const CHECKCOUNTS_TEXT: FunctionText = {
  description: t(
    "What is missing, impossible or unlikely in a table of counts: a line for each finding, with its row in the range, its column, how sure it is and a sentence.",
    "Lo que falta, es imposible o improbable en una tabla de conteos: una línea por hallazgo, con su fila en el rango, su columna, su certeza y una frase.",
    "Ce qui manque, est impossible ou improbable dans un tableau de comptages : une ligne par constat, avec sa ligne dans la plage, sa colonne, sa certitude et une phrase.",
  ),
  parameters: {
    counts: {
      label: t("counts", "conteos", "comptages"),
      description: t(
        "The table with its heading row, such as Cordons[#All]; a Vines or Bud cuts table works too.",
        "La tabla con su fila de encabezados, como Cordones[#Todo]; también una tabla Plantas o Cortes de yemas.",
        "Le tableau avec sa ligne d'en-tête, comme Cordons[#Tout] ; un tableau Ceps ou Coupes de bourgeons convient aussi.",
      ),
    },
    settings: {
      label: t("settings", "ajustes", "réglages"),
      description: t(
        "The Settings table, for the farm's own thresholds; the built-in ones if left out.",
        "La tabla Ajustes, con los umbrales de la finca; los incorporados si se omite.",
        "Le tableau Réglages, pour les seuils de la ferme ; ceux d'origine si omis.",
      ),
    },
    blocks: {
      label: t("blocks", "cuarteles", "parcelles"),
      description: t(
        "The Blocks table, so that unknown blocks and spacings are seen.",
        "La tabla Cuarteles, para ver cuarteles desconocidos y distancias.",
        "Le tableau Parcelles, pour voir parcelles inconnues et écartements.",
      ),
    },
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "The Vines table, so that vines outside the register are seen.",
        "La tabla Plantas, para ver plantas fuera del registro.",
        "Le tableau Ceps, pour voir les ceps hors registre.",
      ),
    },
    unit: {
      label: t("unit", "unidad", "unité"),
      description: t(
        "US or metric, for columns whose heading names no unit. If left out: the Settings table's, else that of the other headings.",
        "US o metric, para columnas cuyo encabezado no nombra unidad. Si se omite: la de la tabla Ajustes o la de los otros encabezados.",
        "US ou metric, pour les colonnes dont l'en-tête ne nomme pas d'unité. Si omis : celle du tableau Réglages, sinon des autres en-têtes.",
      ),
    },
  },
  results: {
    row: t("Row", "Fila", "Ligne"),
    column: t("Column", "Columna", "Colonne"),
    severity: t("How sure", "Certeza", "Certitude"),
    finding: t("Finding", "Hallazgo", "Constat"),
  },
};
