import type { Text } from "./language";

/** What the page without Excel shows around the grid and the pane. */
export const DESK_TEXTS = {
  appName: { en: "Cordonbook", es: "Cordonbook", fr: "Cordonbook" },
  workbook: { en: "Workbook", es: "Libro", fr: "Classeur" },
  openFile: { en: "Open a file…", es: "Abrir un archivo…", fr: "Ouvrir un fichier…" },
  gridLabel: { en: "Spreadsheet", es: "Hoja de cálculo", fr: "Feuille de calcul" },
  paneLabel: { en: "Cordonbook pane", es: "Panel de Cordonbook", fr: "Volet Cordonbook" },
  statusLabel: { en: "Selected cell", es: "Celda seleccionada", fr: "Cellule sélectionnée" },
  loading: { en: "Opening {name}…", es: "Abriendo {name}…", fr: "Ouverture de {name}…" },
  dropHere: {
    en: "Drop a workbook or CSV file to open it",
    es: "Suelte aquí un libro o un archivo CSV para abrirlo",
    fr: "Déposez un classeur ou un fichier CSV pour l'ouvrir",
  },
  close: { en: "Close", es: "Cerrar", fr: "Fermer" },
  idle: {
    en: "Everything stays on this machine. Select a cell with an error to read what is wrong.",
    es: "Todo queda en este equipo. Seleccione una celda con error para leer qué pasa.",
    fr: "Tout reste sur cette machine. Sélectionnez une cellule en erreur pour lire ce qui ne va pas.",
  },
  sampleMissing: {
    en: "The sample workbook {name} could not be fetched from this machine's own server: {problem}. Start it again with npm start.",
    es: "No se pudo obtener el libro de ejemplo {name} del servidor de este equipo: {problem}. Inícielo otra vez con npm start.",
    fr: "Le classeur d'exemple {name} n'a pas pu être obtenu du serveur de cette machine : {problem}. Relancez-le avec npm start.",
  },
  notOpened: {
    en: "The file {name} could not be opened: {problem}. The workbook on the page is unchanged.",
    es: "No se pudo abrir el archivo {name}: {problem}. El libro de la página no cambió.",
    fr: "Le fichier {name} n'a pas pu être ouvert : {problem}. Le classeur de la page est inchangé.",
  },
} satisfies Record<string, Text>;

/** Names of the sample workbooks in the list. */
export const SAMPLE_NAMES = {
  clean: {
    en: "Larkmoor Bend (invented): a clean season",
    es: "Larkmoor Bend (inventado): una temporada limpia",
    fr: "Larkmoor Bend (inventé) : une saison sans fautes",
  },
  mistakes: {
    en: "Larkmoor Bend (invented): season with mistakes",
    es: "Larkmoor Bend (inventado): temporada con errores",
    fr: "Larkmoor Bend (inventé) : saison avec des fautes",
  },
  empty: {
    en: "An empty season to fill in",
    es: "Una temporada vacía para rellenar",
    fr: "Une saison vide à remplir",
  },
} satisfies Record<string, Text>;
