import type { Text } from "./language";

/** The sheet of gaps by cordon, and the PivotTable over it. Names of values differ from those of columns, as Excel asks. */
export const GAP_PIVOT = {
  countsSheet: { en: "Gap counts", es: "Conteo de huecos", fr: "Relevé des vides" },
  countsTitle: {
    en: "Gaps, cordon by cordon",
    es: "Huecos, cordón por cordón",
    fr: "Vides, cordon par cordon",
  },
  pivotSheet: { en: "Gaps pivot", es: "Huecos dinámica", fr: "Vides croisés" },
  pivotTitle: {
    en: "PivotTable of gaps by block and row",
    es: "Tabla dinámica de huecos por cuartel e hilera",
    fr: "Tableau croisé des vides par parcelle et rang",
  },
  pivotNote: {
    en: "Arrange it as you like: the next run refreshes it and leaves its layout alone. The share is the mean of the cordons.",
    es: "Ordénela como quiera: la próxima vez se actualiza y conserva su diseño. La parte es la media de los cordones.",
    fr: "Disposez-le à votre gré : il sera actualisé sans changer sa mise en page. La part est la moyenne des cordons.",
  },
  made: {
    en: "Written by Cordonbook on {date}; it is written anew with each run, so do not type here.",
    es: "Escrita por Cordonbook el {date}; se escribe de nuevo cada vez: no anote nada aquí.",
    fr: "Écrite par Cordonbook le {date} ; elle est réécrite à chaque fois : n'y tapez rien.",
  },
  summaryTitle: {
    en: "Gaps by block and row (a plain table: there are no PivotTables here; in Excel the same button makes one)",
    es: "Huecos por cuartel e hilera (tabla simple: aquí no hay tablas dinámicas; en Excel el mismo botón crea una)",
    fr: "Vides par parcelle et rang (tableau simple : pas de tableaux croisés ici ; dans Excel, le même bouton en crée un)",
  },
  block: { en: "Block", es: "Cuartel", fr: "Parcelle" },
  row: { en: "Row", es: "Hilera", fr: "Rang" },
  vine: { en: "Vine", es: "Planta", fr: "Cep" },
  side: { en: "Side", es: "Lado", fr: "Côté" },
  cordon: { en: "Cordon", es: "Cordón", fr: "Cordon" },
  trunk: { en: "Trunk", es: "Tronco", fr: "Tronc" },
  countedBy: { en: "Counted by", es: "Contado por", fr: "Compté par" },
  positions: { en: "Positions", es: "Posiciones", fr: "Positions" },
  liveSpurs: { en: "Live spurs", es: "Pitones vivos", fr: "Coursons vivants" },
  gaps: { en: "Gaps", es: "Huecos", fr: "Vides" },
  share: { en: "Share", es: "Parte", fr: "Part" },
  sumPositions: { en: "All positions", es: "Todas las posiciones", fr: "Toutes les positions" },
  sumLiveSpurs: { en: "All live spurs", es: "Todos los pitones vivos", fr: "Tous les coursons vivants" },
  sumGaps: { en: "All gaps", es: "Todos los huecos", fr: "Tous les vides" },
  meanShare: { en: "Mean share of gaps", es: "Parte media de huecos", fr: "Part moyenne de vides" },
} as const satisfies Record<string, Text>;
