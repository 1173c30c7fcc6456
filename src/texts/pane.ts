import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Names of the pane's pages. */
export const PAGE_NAMES = {
  check: t("Check", "Revisar", "Vérifier"),
  functions: t("Functions", "Funciones", "Fonctions"),
} as const satisfies Record<string, Text>;

/** Texts that more than one page shows. */
export const PANE_TEXTS = {
  pages: t("Pages", "Páginas", "Pages"),
  language: t("Language", "Idioma", "Langue"),
  close: t("Close", "Cerrar", "Fermer"),
  cancel: t("Cancel", "Cancelar", "Annuler"),
  somethingWrong: t(
    "This did not work because of a mistake in the program; the workbook was left as it was. Try again, and if it comes back, write down what you did before.",
    "Esto no funcionó por un error del programa; el libro quedó como estaba. Inténtelo otra vez y, si se repite, anote lo que hizo antes.",
    "Cela n'a pas marché à cause d'une erreur du programme ; le classeur est resté tel quel. Réessayez et, si cela revient, notez ce que vous avez fait avant.",
  ),
  cancelled: t(
    "Stopped; nothing was changed.",
    "Detenido; no se cambió nada.",
    "Arrêté ; rien n'a été changé.",
  ),
} as const satisfies Record<string, Text>;

/** How severe a finding is, as a word for one and for a list. */
export const SEVERITY_NAMES = {
  wrong: t("Wrong", "Erróneo", "Faux"),
  ask: t("Ask", "Preguntar", "À voir"),
  note: t("Note", "Nota", "Note"),
} as const satisfies Record<string, Text>;

/** Texts of the page that checks the counts. */
export const CHECK_TEXTS = {
  title: t("Check the counts", "Revisar los conteos", "Vérifier les comptages"),
  intro: t(
    "Reads the survey tables of this workbook and lists what is missing, impossible or unlikely. Nothing is changed.",
    "Lee las tablas de conteo de este libro y muestra lo que falta, es imposible o poco probable. No cambia nada.",
    "Lit les tableaux de comptage de ce classeur et montre ce qui manque, est impossible ou peu probable. Rien n'est changé.",
  ),
  check: t("Check counts", "Revisar conteos", "Vérifier"),
  checkAgain: t("Check again", "Revisar otra vez", "Vérifier encore"),
  chooseSheets: t("Choose sheets", "Elegir hojas", "Choisir les feuilles"),
  sheetsFound: t("Survey tables found", "Tablas de conteo encontradas", "Tableaux trouvés"),
  sheetRows: t(
    "{sheet}: {shape}, {rows} rows",
    "{sheet}: {shape}, {rows} filas",
    "{sheet} : {shape}, {rows} lignes",
  ),
  nothingFound: t(
    "No survey table was found. A sheet needs a line of column heads such as Block, Row, Vine, Side, Live spurs. Next step: type your counts under such heads, or tell which of your own heads mean what.",
    "No se encontró ninguna tabla de conteo. Una hoja necesita una línea de encabezados como Cuartel, Hilera, Planta, Lado, Pitones vivos. Siguiente paso: anote los conteos bajo esos encabezados, o indique qué significan los suyos.",
    "Aucun tableau de comptage trouvé. Une feuille a besoin d'une ligne d'en-têtes comme Parcelle, Rang, Cep, Côté, Coursons vivants. Prochaine étape : notez les comptages sous ces en-têtes, ou dites ce que signifient les vôtres.",
  ),
  reading: t("Reading {sheet}", "Leyendo {sheet}", "Lecture de {sheet}"),
  checking: t("Checking", "Revisando", "Vérification"),
  progress: t("Progress of the check", "Avance de la revisión", "Avancement de la vérification"),
  clean: t(
    "Nothing to object to in {rows} rows.",
    "Nada que objetar en {rows} filas.",
    "Rien à redire sur {rows} lignes.",
  ),
  result: t(
    "{wrong} wrong, {ask} to ask about, {note} notes in {rows} rows.",
    "{wrong} erróneos, {ask} por preguntar, {note} notas en {rows} filas.",
    "{wrong} faux, {ask} à voir, {note} notes sur {rows} lignes.",
  ),
  since: t(
    "Since the check before: {gone} gone, {come} new, {stayed} as before.",
    "Desde la revisión anterior: {gone} resueltos, {come} nuevos, {stayed} iguales.",
    "Depuis la vérification d'avant : {gone} disparus, {come} nouveaux, {stayed} inchangés.",
  ),
  findings: t("Findings", "Hallazgos", "Constats"),
  filter: t("Filter", "Filtrar", "Filtrer"),
  severity: t("How sure", "Certeza", "Certitude"),
  sheet: t("Sheet", "Hoja", "Feuille"),
  counter: t("Counted by", "Contado por", "Compté par"),
  words: t("Words", "Palabras", "Mots"),
  all: t("All", "Todos", "Tous"),
  shown: t(
    "{shown} of {all} findings pass the filter.",
    "{shown} de {all} hallazgos pasan el filtro.",
    "{shown} constats sur {all} passent le filtre.",
  ),
  more: t("Show {more} more of {all}", "Mostrar {more} más de {all}", "Afficher {more} de plus sur {all}"),
  goTo: t("Go to {cell} on {sheet}", "Ir a {cell} en {sheet}", "Aller à {cell} sur {sheet}"),
  place: t("row {row}, vine {vine}", "hilera {row}, planta {vine}", "rang {row}, cep {vine}"),
  countedBy: t("counted by {counter}", "contado por {counter}", "compté par {counter}"),
  perRow: t("Findings per row", "Hallazgos por hilera", "Constats par rang"),
  perCounter: t("Findings per counter", "Hallazgos por persona", "Constats par personne"),
  rowHead: t("Block, row", "Cuartel, hilera", "Parcelle, rang"),
} as const satisfies Record<string, Text>;
