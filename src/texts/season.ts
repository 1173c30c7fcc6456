import type { Text } from "./language";

/** Headers of the Season sheet: a row of vines in a winter. */
export const WINTER_HEADERS = {
  block: { en: "Block", es: "Cuartel", fr: "Parcelle" },
  row: { en: "Row", es: "Hilera", fr: "Rang" },
  year: { en: "Year", es: "Año", fr: "Année" },
  vines: { en: "Vines", es: "Plantas", fr: "Ceps" },
  cordons: { en: "Cordons", es: "Cordones", fr: "Cordons" },
  positions: { en: "Positions", es: "Posiciones", fr: "Emplacements" },
  liveSpurs: { en: "Live spurs", es: "Pitones vivos", fr: "Coursons vivants" },
  gaps: { en: "Gaps", es: "Huecos", fr: "Vides" },
  longestGap: { en: "Longest gap", es: "Hueco más largo", fr: "Plus long vide" },
  liveTrunks: { en: "Live trunks", es: "Troncos vivos", fr: "Troncs vivants" },
} as const satisfies Readonly<Record<string, Text>>;

/** Name of the sheet that the add-in writes. */
export const SEASON_SHEET: Text = { en: "Season", es: "Temporada", fr: "Saison" };
