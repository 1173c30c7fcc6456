import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Names of the pane's pages. */
export const PAGE_NAMES = {
  check: t("Check", "Revisar", "Vérifier"),
  gaps: t("Gaps", "Huecos", "Vides"),
  decide: t("Decide", "Decidir", "Choisir"),
  crew: t("Crew", "Cuadrilla", "Équipe"),
  outlook: t("Outlook", "Pronóstico", "Prévision"),
  settings: t("Settings", "Ajustes", "Réglages"),
  functions: t("Functions", "Funciones", "Fonctions"),
  care: t("Care", "Cuidado", "Entretien"),
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
  asideCount: t("{aside} are set aside.", "{aside} están apartados.", "{aside} sont mis de côté."),
  gone: t("Gone since the check before", "Resueltos desde la anterior", "Disparus depuis la précédente"),
  come: t("New since the check before", "Nuevos desde la anterior", "Nouveaux depuis la précédente"),
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
  cell: t("{sheet} {cell}", "{sheet} {cell}", "{sheet} {cell}"),
  wentTo: t(
    "{cell} on {sheet} is selected.",
    "{cell} en {sheet} está seleccionada.",
    "{cell} sur {sheet} est sélectionnée.",
  ),
  countedBy: t("counted by {counter}", "contado por {counter}", "compté par {counter}"),
  whatToDo: t("What to do: {remedy}", "Qué hacer: {remedy}", "Que faire : {remedy}"),
  perRow: t("Findings per row", "Hallazgos por hilera", "Constats par rang"),
  perCounter: t("Findings per counter", "Hallazgos por persona", "Constats par personne"),
  rowHead: t("Block, row", "Cuartel, hilera", "Parcelle, rang"),
  writeSheet: t("Write Findings sheet", "Escribir la hoja Hallazgos", "Écrire la feuille Constats"),
  sheetWritten: t(
    "The sheet {sheet} was written: {rows} rows.",
    "Se escribió la hoja {sheet}: {rows} filas.",
    "La feuille {sheet} est écrite : {rows} lignes.",
  ),
  sheetWithoutChart: t(
    "The sheet {sheet} was written: {rows} rows. No chart could be drawn on it here: its bars stand in the pane.",
    "Se escribió la hoja {sheet}: {rows} filas. Aquí no se pudo dibujar su gráfico: las barras están en el panel.",
    "La feuille {sheet} est écrite : {rows} lignes. Son graphique n'a pas pu y être tracé : les barres sont dans le volet.",
  ),
  mark: t("Mark cells", "Marcar celdas", "Marquer les cellules"),
  marked: t(
    "{cells} cells are marked. Fills, notes and formats of your own stay as they are.",
    "{cells} celdas marcadas. Sus rellenos, notas y formatos quedan como están.",
    "{cells} cellules marquées. Vos remplissages, notes et formats restent tels quels.",
  ),
  unmark: t("Take marks off", "Quitar marcas", "Ôter les marques"),
  unmarked: t("All marks are off.", "Todas las marcas están quitadas.", "Toutes les marques sont ôtées."),
  print: t("Print list", "Imprimir lista", "Imprimer la liste"),
  printTitle: t("Findings in the counts", "Hallazgos en los conteos", "Constats sur les comptages"),
  printDone: t("Done", "Hecho", "Fait"),
  printCell: t("Cell", "Celda", "Cellule"),
  printWhat: t("What was found", "Qué se encontró", "Ce qui a été trouvé"),
} as const satisfies Record<string, Text>;

/** Texts of the check while typing. */
export const TYPING_TEXTS = {
  switch: t("Check while I type", "Revisar mientras escribo", "Vérifier pendant la saisie"),
  title: t("Rows changed just now", "Filas cambiadas ahora", "Lignes changées à l'instant"),
  nothing: t(
    "Nothing to object to so far. Each row is judged when you leave its cell; what needs other rows is left to the full check.",
    "Nada que objetar por ahora. Cada fila se juzga al salir de la celda; lo que depende de otras filas queda para la revisión completa.",
    "Rien à redire pour l'instant. Chaque ligne est jugée quand vous quittez la cellule ; ce qui dépend d'autres lignes reste à la vérification complète.",
  ),
  large: t(
    "Many rows of {sheet} changed at once. Press Check counts to have them judged.",
    "Muchas filas de {sheet} cambiaron a la vez. Pulse Revisar conteos para juzgarlas.",
    "Beaucoup de lignes de {sheet} ont changé d'un coup. Appuyez sur Vérifier pour les juger.",
  ),
  colleague: t("by a colleague", "por un colega", "par un collègue"),
} as const satisfies Record<string, Text>;

/** Texts of setting a finding aside. */
export const ASIDE_TEXTS = {
  setAside: t("Set aside", "Apartar", "Mettre de côté"),
  title: t("Let this finding stand", "Dejar este hallazgo como está", "Laisser ce constat tel quel"),
  reason: t("Why it may stand", "Por qué puede quedar", "Pourquoi il peut rester"),
  by: t("Your name or initials", "Su nombre o iniciales", "Votre nom ou vos initiales"),
  both: t(
    "Reason and name are both needed.",
    "Hacen falta el motivo y el nombre.",
    "Il faut la raison et le nom.",
  ),
  list: t("Set aside", "Apartados", "Mis de côté"),
  entry: t("{reason} ({by}, {on})", "{reason} ({by}, {on})", "{reason} ({by}, {on})"),
  takeBack: t("Take back", "Recuperar", "Reprendre"),
  done: t(
    "Set aside; it stays so in this workbook until the counts change.",
    "Apartado; así queda en este libro hasta que cambien los conteos.",
    "Mis de côté ; il le reste dans ce classeur jusqu'à ce que les comptages changent.",
  ),
  takenBack: t("Taken back into the list.", "Devuelto a la lista.", "Remis dans la liste."),
} as const satisfies Record<string, Text>;

/** Texts of the sheet that lists the findings. */
export const FINDINGS_SHEET_TEXTS = {
  sheet: t("Findings", "Hallazgos", "Constats"),
  title: t("Findings in the counts", "Hallazgos en los conteos", "Constats sur les comptages"),
  made: t(
    "Written by Cordonbook on {date}; it is written anew with each run, so do not type here.",
    "Escrita por Cordonbook el {date}; se escribe de nuevo en cada revisión: no anote nada aquí.",
    "Écrite par Cordonbook le {date} ; elle est réécrite à chaque vérification : n'y tapez rien.",
  ),
  severity: t("How sure", "Certeza", "Certitude"),
  where: t("Sheet", "Hoja", "Feuille"),
  cell: t("Cell", "Celda", "Cellule"),
  block: t("Block", "Cuartel", "Parcelle"),
  row: t("Row", "Hilera", "Rang"),
  vine: t("Vine", "Planta", "Cep"),
  counter: t("Counted by", "Contado por", "Compté par"),
  what: t("What was found", "Qué se encontró", "Ce qui a été trouvé"),
  remedy: t("What to do", "Qué hacer", "Que faire"),
  setAside: t("Set aside", "Apartado", "Mis de côté"),
  code: t("Kind", "Clase", "Genre"),
} as const satisfies Record<string, Text>;

/** Texts of the step in which a person says what their own column heads mean. */
export const HEADS_TEXTS = {
  open: t("Use my own column heads", "Usar mis propios encabezados", "Utiliser mes propres en-têtes"),
  title: t("Your own column heads", "Sus propios encabezados", "Vos propres en-têtes"),
  intro: t(
    "Say once what your heads mean; it is kept in this workbook.",
    "Indique una vez qué significan sus encabezados; se guarda en este libro.",
    "Dites une fois ce que signifient vos en-têtes ; c'est gardé dans ce classeur.",
  ),
  noHeads: t(
    "No sheet of this workbook has a line of column heads. Next step: write one above your counts.",
    "Ninguna hoja de este libro tiene una línea de encabezados. Siguiente paso: escriba una sobre sus conteos.",
    "Aucune feuille de ce classeur n'a de ligne d'en-têtes. Prochaine étape : écrivez-en une au-dessus de vos comptages.",
  ),
  sheet: t("Sheet", "Hoja", "Feuille"),
  shape: t("One line of it is", "Una línea es", "Une ligne représente"),
  absent: t("(not on the sheet)", "(no está en la hoja)", "(absent de la feuille)"),
  needed: t("{head} (needed)", "{head} (necesario)", "{head} (nécessaire)"),
  missing: t("Still needed: {heads}.", "Todavía falta: {heads}.", "Il manque encore : {heads}."),
  keep: t("Keep", "Guardar", "Garder"),
  forget: t("Forget", "Olvidar", "Oublier"),
  kept: t(
    "Kept: {sheet} is now read with your own heads.",
    "Guardado: {sheet} se lee ahora con sus encabezados.",
    "Gardé : {sheet} est maintenant lue avec vos en-têtes.",
  ),
  forgotten: t(
    "Forgotten: {sheet} is read by its heads as they stand.",
    "Olvidado: {sheet} se lee por sus encabezados tal como están.",
    "Oublié : {sheet} est lue par ses en-têtes tels quels.",
  ),
} as const satisfies Record<string, Text>;

/** Texts of the page that explains the functions. */
export const FUNCTIONS_TEXTS = {
  title: t("Functions for your cells", "Funciones para sus celdas", "Fonctions pour vos cellules"),
  intro: t(
    "Each works in any cell of this workbook. Open one, change its figures, and put it into the selected cell.",
    "Cada una sirve en cualquier celda de este libro. Abra una, cambie las cifras y póngala en la celda elegida.",
    "Chacune marche dans toute cellule de ce classeur. Ouvrez-en une, changez ses chiffres et mettez-la dans la cellule choisie.",
  ),
  search: t("Search", "Buscar", "Chercher"),
  none: t(
    "No function is about that. Try another word, such as spurs, crop or injury.",
    "Ninguna función trata de eso. Pruebe otra palabra, como pitones, cosecha o daño.",
    "Aucune fonction n'en parle. Essayez un autre mot, comme coursons, récolte ou dégâts.",
  ),
  found: t("{found} of {all} functions", "{found} de {all} funciones", "{found} fonctions sur {all}"),
  parameters: t("What it needs", "Qué necesita", "Ce qu'il lui faut"),
  optional: t("{label} (may be left out)", "{label} (se puede omitir)", "{label} (facultatif)"),
  results: t("What it gives", "Qué da", "Ce qu'elle donne"),
  example: t("Example", "Ejemplo", "Exemple"),
  gives: t("gives {value}", "da {value}", "donne {value}"),
  source: t("Source of the value: {work}", "Fuente del valor: {work}", "Source de la valeur : {work}"),
  formula: t("Formula", "Fórmula", "Formule"),
  insert: t("Put into the cell", "Poner en la celda", "Mettre dans la cellule"),
  inserted: t(
    "The formula stands in {cell} on {sheet}.",
    "La fórmula está en {cell} de {sheet}.",
    "La formule est dans {cell} de {sheet}.",
  ),
  noCell: t(
    "No cell is selected. Select an empty cell, then try again.",
    "No hay ninguna celda elegida. Elija una celda vacía y repita.",
    "Aucune cellule n'est choisie. Choisissez une cellule vide, puis recommencez.",
  ),
  notEmpty: t(
    "{cell} on {sheet} already holds something and was left as it is. Select an empty cell, then try again.",
    "{cell} de {sheet} ya contiene algo y quedó como estaba. Elija una celda vacía y repita.",
    "{cell} de {sheet} contient déjà quelque chose et reste telle quelle. Choisissez une cellule vide, puis recommencez.",
  ),
  noFormula: t(
    "A formula begins with = and a name, such as {example}.",
    "Una fórmula empieza con = y un nombre, como {example}.",
    "Une formule commence par = et un nom, comme {example}.",
  ),
} as const satisfies Record<string, Text>;

/** Texts of the walk that shows somebody around. */
export const WALK_TEXTS = {
  step: t("Step {step} of {steps}", "Paso {step} de {steps}", "Étape {step} sur {steps}"),
  next: t("Next", "Siguiente", "Suivant"),
  back: t("Back", "Atrás", "Retour"),
  skip: t("Skip", "Saltar", "Passer"),
  end: t("Begin", "Empezar", "Commencer"),
  again: t("Show me around", "Mostrar el recorrido", "Faire la visite"),
} as const satisfies Record<string, Text>;

/** The steps of the walk, in order. */
export const WALK_STEPS: readonly Text[] = [
  t(
    "This pane works on the count sheets of the open workbook. Press Check counts: it reads them and lists what is missing, impossible or unlikely. Nothing is changed.",
    "Este panel trabaja con las hojas de conteo del libro abierto. Pulse Revisar conteos: las lee y muestra lo que falta, es imposible o poco probable. No cambia nada.",
    "Ce volet travaille sur les feuilles de comptage du classeur ouvert. Appuyez sur Vérifier : il les lit et montre ce qui manque, est impossible ou peu probable. Rien n'est changé.",
  ),
  t(
    "Open a line of the list and press the name of a cell: the cell is selected, and you can mend it. Check again shows what is gone.",
    "Abra una línea de la lista y pulse el nombre de una celda: queda seleccionada y puede corregirla. Revisar otra vez muestra lo resuelto.",
    "Ouvrez une ligne de la liste et appuyez sur le nom d'une cellule : elle est sélectionnée et vous pouvez la corriger. Vérifier encore montre ce qui a disparu.",
  ),
  t(
    "What is true all the same is set aside with a reason. The list can be printed for the crew, written into a sheet, or marked in the cells; marks come off again without a trace.",
    "Lo que aun así es cierto se aparta con un motivo. La lista se puede imprimir para la cuadrilla, escribir en una hoja o marcar en las celdas; las marcas se quitan sin dejar rastro.",
    "Ce qui est vrai malgré tout est mis de côté avec une raison. La liste s'imprime pour l'équipe, s'écrit dans une feuille ou se marque dans les cellules ; les marques s'ôtent sans trace.",
  ),
  t(
    "Gaps shows where spurs are missing, row by row and vine by vine, and how that grew since last winter.",
    "Huecos muestra dónde faltan pitones, hilera por hilera y planta por planta, y cuánto creció desde el invierno pasado.",
    "Vides montre où manquent des coursons, rang par rang et cep par cep, et combien cela a grandi depuis l'hiver passé.",
  ),
  t(
    "Decide weighs the candidate cordons of each vine and gives its reasons; close calls are yours. Cards for the crew and the order of work follow from it on the next page.",
    "Decidir pesa los cordones candidatos de cada planta y da sus motivos; los casos dudosos son suyos. De ahí salen, en la página siguiente, las tarjetas y el orden del trabajo.",
    "Choisir pèse les cordons candidats de chaque cep et donne ses raisons ; les cas serrés sont à vous. Les fiches de l'équipe et l'ordre du travail en découlent, à la page suivante.",
  ),
  t(
    "Outlook says what crop that leaves, with a range and what would narrow it. Every figure behind it stands in Settings with its source.",
    "Pronóstico dice qué cosecha deja eso, con un rango y qué lo estrecharía. Cada cifra está en Ajustes con su fuente.",
    "Prévision dit quelle récolte cela laisse, avec une fourchette et ce qui la resserrerait. Chaque chiffre est dans Réglages avec sa source.",
  ),
  t(
    "Functions answer a single question in a cell: nodes to leave, injury with its interval, crop of a vine. Open one, change its figures, put it into a cell.",
    "Las funciones responden a una pregunta en una celda: yemas que dejar, daño con su intervalo, cosecha de una planta. Abra una, cambie las cifras y póngala en una celda.",
    "Les fonctions répondent à une question dans une cellule : yeux à laisser, dégâts avec leur intervalle, récolte d'un cep. Ouvrez-en une, changez ses chiffres, mettez-la dans une cellule.",
  ),
];

/** Texts of the page that shows where spurs are missing. */
export const GAPS_TEXTS = {
  title: t("Gaps on the wire", "Huecos en el alambre", "Vides sur le fil"),
  intro: t(
    "A gap is a position on a cordon without a live spur. Nothing is changed until you write a sheet.",
    "Un hueco es una posición del cordón sin pitón vivo. No cambia nada hasta que escriba una hoja.",
    "Un vide est une position du cordon sans courson vivant. Rien ne change tant que vous n'écrivez pas de feuille.",
  ),
  of: t("Count on", "Contar en", "Compter sur"),
  staying: t("the cordons that stay", "los cordones que quedan", "les cordons qui restent"),
  all: t("every candidate", "todos los candidatos", "tous les candidats"),
  count: t("Count gaps", "Contar huecos", "Compter les vides"),
  progress: t("Progress of the count", "Avance del conteo", "Avancement du comptage"),
  deciding: t(
    "Deciding which cordons stay",
    "Decidiendo qué cordones quedan",
    "Choix des cordons qui restent",
  ),
  none: t(
    "No cordon with positions and live spurs was found. Next step: count these two columns on the Cordons sheet.",
    "No se encontró ningún cordón con posiciones y pitones vivos. Siguiente paso: cuente esas dos columnas en la hoja Cordones.",
    "Aucun cordon avec positions et coursons vivants. Prochaine étape : comptez ces deux colonnes dans la feuille Cordons.",
  ),
  sum: t(
    "{missing} of {positions} positions are empty: {share}.",
    "{missing} de {positions} posiciones están vacías: {share}.",
    "{missing} positions sur {positions} sont vides : {share}.",
  ),
  without: t(
    "On {without} vines no candidate stays; they are in no sum.",
    "En {without} plantas no queda ningún candidato; no entran en las sumas.",
    "Sur {without} ceps aucun candidat ne reste ; ils ne sont dans aucune somme.",
  ),
  writeRows: t("Write Row gaps sheet", "Escribir hoja de huecos", "Écrire la feuille des vides"),
  writeMap: t("Write Gap map sheet", "Escribir mapa de huecos", "Écrire la carte des vides"),
  perRow: t("Row by row", "Hilera por hilera", "Rang par rang"),
  since: t(
    "The change is since winter {season}, over the cordons counted in both.",
    "El cambio es desde el invierno {season}, en los cordones contados en ambos.",
    "Le changement est depuis l'hiver {season}, sur les cordons comptés les deux fois.",
  ),
  gaps: t("Gaps", "Huecos", "Vides"),
  share: t("Share", "Parte", "Part"),
  change: t("Change", "Cambio", "Écart"),
  ofPositions: t("{gaps} of {positions}", "{gaps} de {positions}", "{gaps} sur {positions}"),
  notCounted: t("not counted", "sin contar", "non compté"),
  map: t("Gap map", "Mapa de huecos", "Carte des vides"),
  mapKey: t(
    "A line is a row, a column is a vine. The digit is tenths of its positions that are empty: 0 none, 5 half, 10 all. From 5 on the cell is hatched. A dash is a vine of which no candidate stays.",
    "Una línea es una hilera, una columna una planta. La cifra son décimos de posiciones vacías: 0 ninguna, 5 la mitad, 10 todas. Desde 5 la celda va rayada. Una raya es una planta sin candidato que quede.",
    "Une ligne est un rang, une colonne un cep. Le chiffre est en dixièmes de positions vides : 0 aucune, 5 la moitié, 10 toutes. À partir de 5 la cellule est hachurée. Un tiret est un cep dont aucun candidat ne reste.",
  ),
} as const satisfies Record<string, Text>;

/** Texts of the sheets that list and map the gaps. */
export const GAP_SHEET_TEXTS = {
  rowGaps: t("Row gaps", "Huecos por hilera", "Vides par rang"),
  rowGapsTitle: t("Gaps by row of vines", "Huecos por hilera", "Vides par rang"),
  gapMap: t("Gap map", "Mapa de huecos", "Carte des vides"),
  gapMapTitle: t(
    "Share of empty positions, vine by vine",
    "Parte de posiciones vacías, planta por planta",
    "Part de positions vides, cep par cep",
  ),
  made: t(
    "Written by Cordonbook on {date}; it is written anew with each run, so do not type here.",
    "Escrita por Cordonbook el {date}; se escribe de nuevo cada vez: no anote nada aquí.",
    "Écrite par Cordonbook le {date} ; elle est réécrite à chaque fois : n'y tapez rien.",
  ),
  block: t("Block", "Cuartel", "Parcelle"),
  row: t("Row", "Hilera", "Rang"),
  vine: t("Vine {vine}", "Planta {vine}", "Cep {vine}"),
  vines: t("Vines", "Plantas", "Ceps"),
  cordons: t("Cordons", "Cordones", "Cordons"),
  positions: t("Positions", "Posiciones", "Positions"),
  liveSpurs: t("Live spurs", "Pitones vivos", "Coursons vivants"),
  gaps: t("Gaps", "Huecos", "Vides"),
  share: t("Share", "Parte", "Part"),
  longestGap: t("Longest gap", "Hueco más largo", "Plus long vide"),
  vinesWithout: t(
    "Vines without a cordon that stays",
    "Plantas sin cordón que quede",
    "Ceps sans cordon qui reste",
  ),
  bothWinters: t(
    "Cordons counted in both winters",
    "Cordones contados ambos inviernos",
    "Cordons comptés les deux hivers",
  ),
  shareBefore: t("Their share last winter", "Su parte el invierno pasado", "Leur part l'hiver passé"),
  shareNow: t("Their share now", "Su parte ahora", "Leur part maintenant"),
} as const satisfies Record<string, Text>;

/** Texts of the page for the figures that change results. */
export const SETTINGS_TEXTS = {
  title: t(
    "Figures that change results",
    "Cifras que cambian resultados",
    "Chiffres qui changent des résultats",
  ),
  intro: t(
    "Each figure has a source. Before a change is kept, the pane shows which results it moves.",
    "Cada cifra tiene su fuente. Antes de guardar un cambio, el panel muestra qué resultados mueve.",
    "Chaque chiffre a sa source. Avant de garder un changement, le volet montre quels résultats il déplace.",
  ),
  read: t("Read the settings", "Leer los ajustes", "Lire les réglages"),
  progress: t("Progress", "Avance", "Avancement"),
  comparing: t("Comparing results", "Comparando resultados", "Comparaison des résultats"),
  noTable: t(
    "This workbook has no Settings table, so every figure is its source's. Keeping a change makes the sheet {sheet}.",
    "Este libro no tiene tabla de ajustes: cada cifra es la de su fuente. Al guardar un cambio se crea la hoja {sheet}.",
    "Ce classeur n'a pas de tableau de réglages : chaque chiffre est celui de sa source. Garder un changement crée la feuille {sheet}.",
  ),
  search: t("Search", "Buscar", "Chercher"),
  none: t(
    "No figure is about that. Try another word.",
    "Ninguna cifra trata de eso. Pruebe otra palabra.",
    "Aucun chiffre n'en parle. Essayez un autre mot.",
  ),
  value: t("{value} {unit}", "{value} {unit}", "{value} {unit}"),
  source: t("Source: {source}", "Fuente: {source}", "Source : {source}"),
  ownFigure: t(
    "The source has {value} {unit}.",
    "La fuente tiene {value} {unit}.",
    "La source donne {value} {unit}.",
  ),
  changed: t("Changed by {by}, {on}", "Cambiado por {by}, {on}", "Changé par {by}, {on}"),
  newValue: t("New value ({unit})", "Valor nuevo ({unit})", "Nouvelle valeur ({unit})"),
  newWord: t("New value", "Valor nuevo", "Nouvelle valeur"),
  by: t("Your name or initials", "Su nombre o iniciales", "Votre nom ou vos initiales"),
  byNeeded: t(
    "Write your name or initials, so that others know who changed the figure.",
    "Escriba su nombre o iniciales, para que otros sepan quién cambió la cifra.",
    "Écrivez votre nom ou vos initiales, pour que les autres sachent qui a changé le chiffre.",
  ),
  change: t("Change", "Cambiar", "Changer"),
  show: t("Show what moves", "Mostrar qué se mueve", "Montrer ce qui bouge"),
  keep: t("Keep", "Guardar", "Garder"),
  reset: t("Back to the source's value", "Volver al valor de la fuente", "Revenir à la valeur de la source"),
  nothingMoves: t(
    "No decision and no finding of this workbook would move.",
    "No se movería ninguna decisión ni ningún hallazgo de este libro.",
    "Aucun choix et aucun constat de ce classeur ne bougerait.",
  ),
  vinesMove: t(
    "{moved} of {vines} vines would be decided otherwise.",
    "{moved} de {vines} plantas se decidirían de otro modo.",
    "{moved} ceps sur {vines} seraient décidés autrement.",
  ),
  findingsMove: t(
    "{gone} findings would go and {come} would come.",
    "Desaparecerían {gone} hallazgos y aparecerían {come}.",
    "{gone} constats disparaîtraient et {come} apparaîtraient.",
  ),
  vineHead: t("Vine", "Planta", "Cep"),
  now: t("Stays now", "Queda ahora", "Reste maintenant"),
  then: t("Would stay", "Quedaría", "Resterait"),
  firstOnes: t(
    "The first {shown} are listed.",
    "Se muestran los primeros {shown}.",
    "Les {shown} premiers sont listés.",
  ),
  kept: t(
    "Kept: {setting} is {value}.",
    "Guardado: {setting} es {value}.",
    "Gardé : {setting} vaut {value}.",
  ),
  meanwhile: t(
    "{setting} was changed by somebody else meanwhile; nothing was written. Look at it again.",
    "Otra persona cambió {setting} entretanto; no se escribió nada. Mírelo otra vez.",
    "Quelqu'un d'autre a changé {setting} entre-temps ; rien n'a été écrit. Regardez-le à nouveau.",
  ),
} as const satisfies Record<string, Text>;

/** Areas of the figures, as headings. */
export const SETTING_GROUPS = {
  budget: t("Node budget and injury", "Yemas y daño", "Yeux et dégâts"),
  choice: t("Which cordon stays", "Qué cordón queda", "Quel cordon reste"),
  renewal: t(
    "Renewal of trunks and cordons",
    "Renovación de troncos y cordones",
    "Renouvellement des troncs et cordons",
  ),
  outlook: t("Crop outlook", "Pronóstico de cosecha", "Prévision de récolte"),
  work: t("Hours and crew days", "Horas y jornales", "Heures et journées"),
  plan: t("Plan of the work", "Plan del trabajo", "Plan du travail"),
  checks: t("Checks", "Revisiones", "Vérifications"),
} as const satisfies Record<string, Text>;

/** Texts of the page on which cordons are decided. */
export const DECIDE_TEXTS = {
  title: t("Which cordon stays", "Qué cordón queda", "Quel cordon reste"),
  intro: t(
    "Weighs the candidate cordons of every vine by their counts and the Settings. Nothing is written until you say that a cordon stays.",
    "Pesa los cordones candidatos de cada planta por sus conteos y los Ajustes. No se escribe nada hasta que diga que un cordón queda.",
    "Pèse les cordons candidats de chaque cep d'après les comptages et les Réglages. Rien n'est écrit tant que vous ne dites pas qu'un cordon reste.",
  ),
  decide: t("Decide the vines", "Decidir las plantas", "Décider les ceps"),
  again: t("Decide again", "Decidir otra vez", "Décider encore"),
  deciding: t(
    "Deciding which cordons stay",
    "Decidiendo qué cordones quedan",
    "Choix des cordons qui restent",
  ),
  progress: t("Progress of the decision", "Avance de la decisión", "Avancement du choix"),
  none: t(
    "No vine with candidate cordons was found. Next step: count them on the Cordons sheet, a row each.",
    "No se encontró ninguna planta con cordones candidatos. Siguiente paso: cuéntelos en la hoja Cordones, uno por fila.",
    "Aucun cep avec des cordons candidats. Prochaine étape : comptez-les dans la feuille Cordons, un par ligne.",
  ),
  write: t("Write Cordon choice sheet", "Escribir hoja de decisión", "Écrire la feuille des choix"),
  sum: t(
    "{all} vines: {ask} to ask about, {lay} where a cane is laid, {trunks} with too few sound trunks.",
    "{all} plantas: {ask} por preguntar, {lay} donde se tiende un sarmiento, {trunks} con pocos troncos sanos.",
    "{all} ceps : {ask} à voir, {lay} où l'on couche un sarment, {trunks} avec trop peu de troncs sains.",
  ),
  caution: t(
    "Figures advise; whoever stands at the vine decides. Look at the wood before a cordon is cut for good.",
    "Las cifras aconsejan; decide quien está ante la planta. Mire la madera antes de cortar un cordón para siempre.",
    "Les chiffres conseillent ; qui est devant le cep décide. Regardez le bois avant de couper un cordon pour de bon.",
  ),
  show: t("Show", "Mostrar", "Montrer"),
  ask: t("to ask about ({count})", "por preguntar ({count})", "à voir ({count})"),
  lay: t("a cane is laid ({count})", "se tiende un sarmiento ({count})", "un sarment est couché ({count})"),
  trunks: t(
    "too few sound trunks ({count})",
    "pocos troncos sanos ({count})",
    "trop peu de troncs sains ({count})",
  ),
  all: t("every vine ({count})", "todas las plantas ({count})", "tous les ceps ({count})"),
  block: t("Block", "Cuartel", "Parcelle"),
  vine: t(
    "{block} row {row} vine {vine}",
    "{block} hilera {row} planta {vine}",
    "{block} rang {row} cep {vine}",
  ),
  cuts: t("Cuts, in order", "Cortes, en orden", "Coupes, dans l'ordre"),
  fix: t("{cordon} stays", "{cordon} queda", "{cordon} reste"),
  fixed: t(
    "{cordon} stays: written into the sheet's column for fixed choices.",
    "{cordon} queda: escrito en la columna de decisiones fijas de la hoja.",
    "{cordon} reste : écrit dans la colonne des choix fixés de la feuille.",
  ),
  noColumn: t(
    "The sheet {sheet} has no column Fixed choice. Next step: write that head beside its table, then decide again.",
    "La hoja {sheet} no tiene la columna Decisión fija. Siguiente paso: escriba ese encabezado junto a la tabla y decida otra vez.",
    "La feuille {sheet} n'a pas de colonne Choix fixé. Prochaine étape : écrivez cet en-tête à côté du tableau, puis décidez encore.",
  ),
  meanwhile: t(
    "The rows of this vine were changed meanwhile; nothing was written. Decide again.",
    "Las filas de esta planta cambiaron entretanto; no se escribió nada. Decida otra vez.",
    "Les lignes de ce cep ont changé entre-temps ; rien n'a été écrit. Décidez encore.",
  ),
} as const satisfies Record<string, Text>;

/** Texts of the page that shows what crop the pruning leaves. */
export const OUTLOOK_TEXTS = {
  title: t("What crop that leaves", "Qué cosecha deja eso", "Quelle récolte cela laisse"),
  intro: t(
    "From the cordons that stay to shoots, clusters and crop, with a range. Later counts narrow it.",
    "De los cordones que quedan a brotes, racimos y cosecha, con un rango. Los conteos posteriores lo estrechan.",
    "Des cordons qui restent aux pousses, grappes et récolte, avec une fourchette. Les comptages suivants la resserrent.",
  ),
  work: t("Work out the outlook", "Calcular el pronóstico", "Calculer la prévision"),
  progress: t("Progress of the outlook", "Avance del pronóstico", "Avancement de la prévision"),
  none: t(
    "No block was found. Next step: list your blocks on a sheet with the heads Block, Vines, Row spacing, Vine spacing, Cluster weight.",
    "No se encontró ningún cuartel. Siguiente paso: anote sus cuarteles en una hoja con los encabezados Cuartel, Plantas, Entre hileras, Entre plantas, Peso del racimo.",
    "Aucune parcelle trouvée. Prochaine étape : listez vos parcelles dans une feuille aux en-têtes Parcelle, Ceps, Entre rangs, Entre ceps, Poids de grappe.",
  ),
  caution: t(
    "A winter outlook often misses by a third. It advises; frost, hail, birds and disease are not in it, and a local adviser knows your site.",
    "Un pronóstico de invierno falla a menudo en un tercio. Aconseja; no incluye heladas, granizo, aves ni enfermedades, y un asesor local conoce su sitio.",
    "Une prévision d'hiver se trompe souvent d'un tiers. Elle conseille ; gel, grêle, oiseaux et maladies n'y sont pas, et un conseiller local connaît votre lieu.",
  ),
  write: t("Write Outlook sheet", "Escribir hoja de pronóstico", "Écrire la feuille de prévision"),
  cannotSay: t(
    "Nothing can be said of this block yet; what is lacking stands below.",
    "Aún no se puede decir nada de este cuartel; abajo está lo que falta.",
    "On ne peut encore rien dire de cette parcelle ; ce qui manque est ci-dessous.",
  ),
  crop: t(
    "Likely {likely} {unit}; {low} to {high} in {percent} of 100 cases like this.",
    "Probable {likely} {unit}; de {low} a {high} en {percent} de cada 100 casos así.",
    "Probable {likely} {unit} ; de {low} à {high} dans {percent} cas sur 100 de ce genre.",
  ),
  stages: t("Stage by stage", "Etapa por etapa", "Étape par étape"),
  bar: t(
    "{stage}: low {low}, likely {likely}, high {high} {unit}",
    "{stage}: bajo {low}, probable {likely}, alto {high} {unit}",
    "{stage} : bas {low}, probable {likely}, haut {high} {unit}",
  ),
  ends: t(
    "{low} – {likely} – {high} {unit}",
    "{low} – {likely} – {high} {unit}",
    "{low} – {likely} – {high} {unit}",
  ),
  aVine: t(
    "A vine: about {clusters} clusters, {low} to {high} {unit}.",
    "Una planta: unos {clusters} racimos, de {low} a {high} {unit}.",
    "Un cep : environ {clusters} grappes, de {low} à {high} {unit}.",
  ),
  target: t(
    "The dashed line is the target, {value} {unit}.",
    "La línea discontinua es la meta, {value} {unit}.",
    "La ligne en tirets est l'objectif, {value} {unit}.",
  ),
  spread: t("Where the doubt comes from", "De dónde viene la duda", "D'où vient le doute"),
  share: t("{percent} %: {source}", "{percent} %: {source}", "{percent} % : {source}"),
  steps: t("What would narrow it", "Qué lo estrecharía", "Ce qui la resserrerait"),
  load: t("Crop load", "Relación de carga", "Rapport de charge"),
  thinning: t("Thinning to the target", "Aclareo hasta la meta", "Éclaircissage vers l'objectif"),
  noThinning: t(
    "The counted clusters lie at or under the target: nothing has to go.",
    "Los racimos contados no pasan de la meta: no hay que quitar nada.",
    "Les grappes comptées ne dépassent pas l'objectif : rien à enlever.",
  ),
  keep: t(
    "Every vine keeps at most {keep} clusters; about {hours} hours of one person.",
    "Cada planta conserva como máximo {keep} racimos; unas {hours} horas de una persona.",
    "Chaque cep garde au plus {keep} grappes ; environ {hours} heures d'une personne.",
  ),
  group: t("Vines", "Plantas", "Ceps"),
  vines: t("How many", "Cuántas", "Combien"),
  remove: t("Take off", "Quitar", "Enlever"),
  left: t("Left", "Quedan", "Restent"),
  young: t(
    "Year {leaf} of a young block: at most {clusters} clusters a vine; it carries about {likely}.",
    "Año {leaf} de un cuartel joven: como máximo {clusters} racimos por planta; lleva unos {likely}.",
    "Année {leaf} d'une jeune parcelle : au plus {clusters} grappes par cep ; elle en porte environ {likely}.",
  ),
  held: t(
    "{stage}: picked {percent} % of the likely crop, within its range.",
    "{stage}: se cosechó {percent} % de lo probable, dentro del rango.",
    "{stage} : récolté {percent} % du probable, dans la fourchette.",
  ),
  missed: t(
    "{stage}: picked {percent} % of the likely crop, outside its range.",
    "{stage}: se cosechó {percent} % de lo probable, fuera del rango.",
    "{stage} : récolté {percent} % du probable, hors de la fourchette.",
  ),
  lacking: t("What the sheets lack", "Qué falta en las hojas", "Ce qui manque aux feuilles"),
  figures: t("What your own harvests say", "Lo que dicen sus cosechas", "Ce que disent vos récoltes"),
  figure: t(
    "{figure}{cultivar}: {now} in force, {value} by your own years.",
    "{figure}{cultivar}: {now} en uso, {value} según sus años.",
    "{figure}{cultivar} : {now} en vigueur, {value} d'après vos années.",
  ),
} as const satisfies Record<string, Text>;

/** Texts of the sheet that lists the outlook. */
export const OUTLOOK_SHEET_TEXTS = {
  sheet: t("Outlook", "Pronóstico", "Prévision"),
  title: t(
    "Crop to expect, block by block",
    "Cosecha esperada, por cuartel",
    "Récolte attendue, par parcelle",
  ),
  made: t(
    "Written by Cordonbook on {date}; it is written anew with each run, so do not type here.",
    "Escrita por Cordonbook el {date}; se escribe de nuevo cada vez: no anote nada aquí.",
    "Écrite par Cordonbook le {date} ; elle est réécrite à chaque fois : n'y tapez rien.",
  ),
  block: t("Block", "Cuartel", "Parcelle"),
  stage: t("Stage", "Etapa", "Étape"),
  confidence: t("Confidence", "Confianza", "Confiance"),
  clusters: t("Clusters a vine", "Racimos por planta", "Grappes par cep"),
  vineLow: t("Vine, low ({unit})", "Planta, bajo ({unit})", "Cep, bas ({unit})"),
  vineLikely: t("Vine, likely ({unit})", "Planta, probable ({unit})", "Cep, probable ({unit})"),
  vineHigh: t("Vine, high ({unit})", "Planta, alto ({unit})", "Cep, haut ({unit})"),
  areaLow: t("Area, low ({unit})", "Superficie, bajo ({unit})", "Surface, bas ({unit})"),
  areaLikely: t("Area, likely ({unit})", "Superficie, probable ({unit})", "Surface, probable ({unit})"),
  areaHigh: t("Area, high ({unit})", "Superficie, alto ({unit})", "Surface, haut ({unit})"),
  cropLow: t("Block, low ({unit})", "Cuartel, bajo ({unit})", "Parcelle, bas ({unit})"),
  cropLikely: t("Block, likely ({unit})", "Cuartel, probable ({unit})", "Parcelle, probable ({unit})"),
  cropHigh: t("Block, high ({unit})", "Cuartel, alto ({unit})", "Parcelle, haut ({unit})"),
  widest: t("Most of the doubt", "La mayor duda", "L'essentiel du doute"),
  bar: t("Bar of the chart", "Barra del gráfico", "Barre du graphique"),
  barName: t("{block}: {stage}", "{block}: {stage}", "{block} : {stage}"),
  toLikely: t("Low to likely ({unit})", "Bajo a probable ({unit})", "Bas à probable ({unit})"),
  toHigh: t("Likely to high ({unit})", "Probable a alto ({unit})", "Probable à haut ({unit})"),
  chartTitle: t(
    "Crop of the block: low, likely, high",
    "Cosecha del cuartel: baja, probable, alta",
    "Récolte de la parcelle : basse, probable, haute",
  ),
  chartAxis: t("Crop ({unit})", "Cosecha ({unit})", "Récolte ({unit})"),
} as const satisfies Record<string, Text>;

/** Texts of the page for the care of the workbook. */
export const CARE_TEXTS = {
  title: t("Care of the workbook", "Cuidado del libro", "Entretien du classeur"),
  progress: t("Progress", "Avance", "Avancement"),
  repairTitle: t(
    "Formulas that no longer calculate",
    "Fórmulas que ya no calculan",
    "Formules qui ne calculent plus",
  ),
  repairIntro: t(
    "A formula that was typed or opened without the add-in may stay at #NAME?. They are shown first; nothing is changed by looking.",
    "Una fórmula escrita o abierta sin el complemento puede quedar en #NAME?. Primero se muestran; mirar no cambia nada.",
    "Une formule tapée ou ouverte sans le complément peut rester à #NAME?. Elles sont d'abord montrées ; regarder ne change rien.",
  ),
  look: t("Look for them", "Buscarlas", "Les chercher"),
  looking: t("Looking through the sheets", "Revisando las hojas", "Examen des feuilles"),
  noRepairs: t(
    "Every formula of ours is well written and calculates.",
    "Todas nuestras fórmulas están bien escritas y calculan.",
    "Toutes nos formules sont bien écrites et calculent.",
  ),
  found: t(
    "{cells} cells can be repaired.",
    "{cells} celdas se pueden reparar.",
    "{cells} cellules peuvent être réparées.",
  ),
  enterAgain: t(
    "Is entered again as it stands:",
    "Se introduce otra vez tal cual:",
    "Est saisie à nouveau telle quelle :",
  ),
  before: t("Stands there", "Está así", "Telle quelle"),
  after: t("Becomes", "Queda así", "Devient"),
  repair: t("Repair {cells} cells", "Reparar {cells} celdas", "Réparer {cells} cellules"),
  repaired: t(
    "{cells} cells were repaired; {left} were left alone because somebody changed them meanwhile.",
    "Se repararon {cells} celdas; {left} se dejaron porque alguien las cambió entretanto.",
    "{cells} cellules ont été réparées ; {left} ont été laissées car quelqu'un les a changées entre-temps.",
  ),
  undo: t("Take the repair back", "Deshacer la reparación", "Annuler la réparation"),
  undone: t(
    "{cells} cells are as they were; {left} were left alone because somebody changed them meanwhile.",
    "{cells} celdas están como antes; {left} se dejaron porque alguien las cambió entretanto.",
    "{cells} cellules sont comme avant ; {left} ont été laissées car quelqu'un les a changées entre-temps.",
  ),
  unknown: t(
    "{name} is not a function of this version; the formula is left as it is.",
    "{name} no es una función de esta versión; la fórmula queda como está.",
    "{name} n'est pas une fonction de cette version ; la formule reste telle quelle.",
  ),
  testTitle: t("Self-test", "Autoprueba", "Autotest"),
  testIntro: t(
    "Tries what the add-in needs here, on sheets of its own that are taken away again.",
    "Prueba lo que el complemento necesita aquí, en hojas propias que luego se quitan.",
    "Essaie ce dont le complément a besoin ici, sur des feuilles à lui, ôtées ensuite.",
  ),
  test: t("Run the self-test", "Hacer la autoprueba", "Lancer l'autotest"),
  testing: t("Testing", "Probando", "Test en cours"),
  works: t("works", "funciona", "marche"),
  fails: t("fails", "falla", "échoue"),
  unsure: t("not seen", "no se ve", "pas vu"),
  missing: t("missing", "falta", "absent"),
  version: t(
    "Cordonbook {version}, host: {host}.",
    "Cordonbook {version}, anfitrión: {host}.",
    "Cordonbook {version}, hôte : {host}.",
  ),
  calculates: t("The calculation itself.", "El cálculo mismo.", "Le calcul lui-même."),
  reads: t("Reading a sheet.", "Leer una hoja.", "Lire une feuille."),
  keeps: t(
    "Keeping small facts in the workbook.",
    "Guardar pequeños datos en el libro.",
    "Garder de petits faits dans le classeur.",
  ),
  writes: t(
    "Writing a sheet of its own, text as text.",
    "Escribir una hoja propia, texto como texto.",
    "Écrire une feuille à soi, texte comme texte.",
  ),
  inCells: t(
    "CORDON functions in cells.",
    "Funciones CORDON en celdas.",
    "Fonctions CORDON dans les cellules.",
  ),
  notInCells: t(
    "Open the pane once with the functions loaded, or ask who installed the add-in.",
    "Abra el panel una vez con las funciones cargadas, o pregunte a quien instaló el complemento.",
    "Ouvrez le volet une fois avec les fonctions chargées, ou demandez à qui a installé le complément.",
  ),
  takesAway: t("Taking the sheet away again.", "Quitar la hoja otra vez.", "Ôter la feuille."),
  logTitle: t("Who ran what", "Quién ejecutó qué", "Qui a lancé quoi"),
  logIntro: t(
    "A small log in the workbook, off until somebody switches it on.",
    "Un pequeño registro en el libro, apagado hasta que alguien lo encienda.",
    "Un petit journal dans le classeur, éteint tant que personne ne l'allume.",
  ),
  logAsk: t("Show the switch", "Mostrar el interruptor", "Montrer l'interrupteur"),
  logSwitch: t(
    "Write down runs in this workbook",
    "Anotar ejecuciones en este libro",
    "Noter les lancements dans ce classeur",
  ),
  logCheck: t("Check", "Revisión", "Vérification"),
  logWrite: t("Wrote {sheet}", "Escribió {sheet}", "A écrit {sheet}"),
} as const satisfies Record<string, Text>;
