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
        "all (if left out): every row. staying: only cordons whose Fixed choice says stays, so that candidates that will be cut do not count.",
        "all (si se omite): todas las filas. staying: solo los cordones cuya Decisión fija dice queda, para no contar los que se cortarán.",
        "all (si omis) : toutes les lignes. staying : seulement les cordons dont le Choix fixé dit reste, sans ceux qui seront coupés.",
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
