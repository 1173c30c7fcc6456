import { t, type FunctionText, type ParameterText } from "./functionText";

/** The table of candidate cordons. */
export const CORDON_ROWS: ParameterText = {
  label: t("cordons", "cordones", "cordons"),
  description: t(
    "The Cordons table with its heading row, such as Cordons[#All]; columns are found by their headings.",
    "La tabla Cordones con su fila de encabezados, como Cordones[#Todo]; las columnas se hallan por su encabezado.",
    "Le tableau Cordons avec sa ligne d'en-tête, comme Cordons[#Tout] ; les colonnes sont trouvées par leur en-tête.",
  ),
};

export const GAPSBYROW_TEXT: FunctionText = {
  description: t(
    "Spur positions, live spurs and gaps for each block and row of vines, from the Cordons table.",
    "Posiciones de pitón, pitones vivos y huecos por cuartel e hilera, según la tabla Cordones.",
    "Emplacements de courson, coursons vivants et vides par parcelle et rang, d'après le tableau Cordons.",
  ),
  parameters: {
    cordons: CORDON_ROWS,
    which: {
      label: t("which", "cuáles", "lesquels"),
      description: t(
        "all (if left out): every row. staying: cordons whose Fixed choice says stays. chosen: those that stay by the cordon choice, as in the pane; candidates that will be cut do not count.",
        "all (si se omite): todas las filas. staying: cordones cuya Decisión fija dice queda. chosen: los que quedan según la elección de cordones, como en el panel; los que se cortarán no cuentan.",
        "all (si omis) : toutes les lignes. staying : cordons dont le Choix fixé dit reste. chosen : ceux qui restent selon le choix des cordons, comme dans le volet ; ceux qui seront coupés ne comptent pas.",
      ),
    },
    settings: {
      label: t("settings", "ajustes", "réglages"),
      description: t(
        "The Settings table, for chosen; the built-in figures if left out.",
        "La tabla Ajustes, para chosen; las cifras incorporadas si se omite.",
        "Le tableau Réglages, pour chosen ; les chiffres d'origine si omis.",
      ),
    },
    blocks: {
      label: t("blocks", "cuarteles", "parcelles"),
      description: t(
        "The Blocks table, for chosen.",
        "La tabla Cuarteles, para chosen.",
        "Le tableau Parcelles, pour chosen.",
      ),
    },
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "The Vines table, for chosen.",
        "La tabla Plantas, para chosen.",
        "Le tableau Ceps, pour chosen.",
      ),
    },
  },
  results: {
    block: t("Block", "Cuartel", "Parcelle"),
    row: t("Row", "Hilera", "Rang"),
    vines: t("Vines", "Plantas", "Ceps"),
    cordons: t("Cordons", "Cordones", "Cordons"),
    positions: t("Positions", "Posiciones", "Emplacements"),
    liveSpurs: t("Live spurs", "Pitones vivos", "Coursons vivants"),
    gaps: t("Gaps", "Huecos", "Vides"),
    share: t("Share of gaps", "Proporción de huecos", "Part de vides"),
    longestGap: t("Longest gap", "Hueco más largo", "Plus long vide"),
  },
};
