import type { Text } from "./language";

/** What the page without Excel shows around the grid and the pane. */
export const DESK_TEXTS = {
  appName: { en: "Cordonbook", es: "Cordonbook", fr: "Cordonbook" },
  workbook: { en: "Workbook", es: "Libro", fr: "Classeur" },
  openFile: { en: "Open a file…", es: "Abrir un archivo…", fr: "Ouvrir un fichier…" },
  saveCopy: { en: "Save a copy", es: "Guardar una copia", fr: "Enregistrer une copie" },
  saved: {
    en: "{name} was made with everything that was changed here; look for it among your downloads.",
    es: "Se creó {name} con todo lo que se cambió aquí; búsquelo entre sus descargas.",
    fr: "{name} a été créé avec tout ce qui a été changé ici ; cherchez-le dans vos téléchargements.",
  },
  leftOut: {
    en: "Not in it, because they were added or renamed here: the sheets {sheets}.",
    es: "No están en él, porque se añadieron o renombraron aquí: las hojas {sheets}.",
    fr: "N'y sont pas, car elles ont été ajoutées ou renommées ici : les feuilles {sheets}.",
  },
  typeAnew: {
    en: "In Excel, type these formulas anew so that they fill all their cells: {cells}.",
    es: "En Excel, escriba de nuevo estas fórmulas para que llenen todas sus celdas: {cells}.",
    fr: "Dans Excel, saisissez à nouveau ces formules pour qu'elles remplissent toutes leurs cellules : {cells}.",
  },
  notSaved: {
    en: "No copy was made: {problem}",
    es: "No se hizo ninguna copia: {problem}",
    fr: "Aucune copie n'a été faite : {problem}",
  },
  copyName: { en: "{name} (copy).xlsx", es: "{name} (copia).xlsx", fr: "{name} (copie).xlsx" },
  csvIsNotSaved: {
    en: "Copies can be saved of workbooks (.xlsx) only; {name} is a csv file.",
    es: "Solo se guardan copias de libros (.xlsx); {name} es un archivo csv.",
    fr: "On ne peut enregistrer une copie que d'un classeur (.xlsx) ; {name} est un fichier csv.",
  },
  unsaved: {
    en: "What was changed on the page is not saved yet. Open another workbook all the same?",
    es: "Lo que se cambió en la página aún no está guardado. ¿Abrir otro libro de todos modos?",
    fr: "Ce qui a été changé sur la page n'est pas encore enregistré. Ouvrir quand même un autre classeur ?",
  },
  gridLabel: { en: "Spreadsheet", es: "Hoja de cálculo", fr: "Feuille de calcul" },
  paneLabel: { en: "Cordonbook pane", es: "Panel de Cordonbook", fr: "Volet Cordonbook" },
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
