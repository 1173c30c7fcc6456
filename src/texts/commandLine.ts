import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Sentences of the command line. */
export const COMMAND_LINE = {
  usage: t("{program} COMMAND ...", "{program} ORDEN ...", "{program} COMMANDE ..."),
  moreHelp: t(
    "Help on one command: {program} COMMAND --help",
    "Ayuda de una orden: {program} ORDEN --help",
    "Aide sur une commande : {program} COMMANDE --help",
  ),
  exitCodes: t(
    "Exit codes: 0 clean or a value, 1 findings or an error value, 2 the file or the words cannot be read.",
    "Códigos de salida: 0 limpio o un valor, 1 hallazgos o un valor de error, 2 no se puede leer el archivo o la orden.",
    "Codes de sortie : 0 rien à signaler ou une valeur, 1 constats ou valeur d'erreur, 2 fichier ou commande illisible.",
  ),
  caution: t(
    "Figures advise; whoever stands at the vine and knows the local rules decides.",
    "Las cifras aconsejan; decide quien está ante la planta y conoce las reglas locales.",
    "Les chiffres conseillent ; décide qui se tient devant le cep et connaît les règles locales.",
  ),
  checkSummary: t(
    "Checks count sheets (.xlsx, .xlsm, .csv, a folder, or - for standard input) and names each cell that cannot be right.",
    "Revisa hojas de conteo (.xlsx, .xlsm, .csv, una carpeta o - para la entrada estándar) y nombra cada celda que no puede ser.",
    "Contrôle les feuilles de comptage (.xlsx, .xlsm, .csv, un dossier ou - pour l'entrée standard) et nomme chaque cellule impossible.",
  ),
  chooseSummary: t(
    "Decides on every vine which cordon stays on each side, and says why (exit code 1: some vines need a look).",
    "Decide en cada planta qué cordón queda en cada lado y dice por qué (código 1: hay plantas por mirar).",
    "Décide pour chaque cep quel cordon reste de chaque côté et dit pourquoi (code 1 : des ceps sont à voir).",
  ),
  gapsSummary: t(
    "Counts positions without a live spur, row by row of vines.",
    "Cuenta las posiciones sin pitón vivo, hilera por hilera.",
    "Compte les emplacements sans courson vivant, rang par rang.",
  ),
  cardsSummary: t(
    "Writes for the crew what stays and what is cut on every vine, in walking order.",
    "Escribe para la cuadrilla qué queda y qué se corta en cada planta, en el orden de marcha.",
    "Écrit pour l'équipe ce qui reste et ce qu'on coupe sur chaque cep, dans l'ordre de marche.",
  ),
  newSummary: t(
    "Makes an empty workbook for a farm's season: sheets with headers, accepted words, Settings, lines to print.",
    "Crea un libro vacío para la temporada de una finca: hojas con encabezados, palabras admitidas, Ajustes y líneas para imprimir.",
    "Crée un classeur vide pour la saison d'un domaine : feuilles avec en-têtes, mots admis, Réglages, lignes à imprimer.",
  ),
  outlookSummary: t(
    "Says what crop the pruning leaves, block by block: low, likely and high, and what most of the doubt comes from.",
    "Dice qué cosecha deja la poda, cuartel por cuartel: baja, probable y alta, y de dónde viene la mayor duda.",
    "Dit quelle récolte laisse la taille, parcelle par parcelle : basse, probable et haute, et d'où vient le doute.",
  ),
  rowsSummary: t(
    "Writes every cordon row of any number of files as one csv (metric), for engines that hold a whole region.",
    "Escribe cada fila de cordones de cualquier número de archivos en un solo csv (métrico), para motores que abarcan una región.",
    "Écrit chaque ligne de cordons de n'importe quel nombre de fichiers dans un seul csv (métrique), pour des moteurs qui tiennent une région.",
  ),
  notAWorkbookName: t(
    "The new workbook's name must end in .xlsx, but is {file}.",
    "El nombre del libro nuevo debe terminar en .xlsx, pero es {file}.",
    "Le nom du nouveau classeur doit finir par .xlsx, mais est {file}.",
  ),
  noCordons: t(
    "There are no cordons in {files}: this needs a sheet with Block, Row, Vine, Side, Cordon and counts.",
    "No hay cordones en {files}: hace falta una hoja con Cuartel, Hilera, Planta, Lado, Cordón y conteos.",
    "Il n'y a pas de cordons dans {files} : il faut une feuille avec Parcelle, Rang, Cep, Côté, Cordon et comptages.",
  ),
  saved: t("Saved as {file}", "Guardado como {file}", "Enregistré sous {file}"),
  savedInPlace: t(
    "Saved in {file}; as it was before: {backup}",
    "Guardado en {file}; como estaba antes: {backup}",
    "Enregistré dans {file} ; tel qu'il était avant : {backup}",
  ),
  savedAlone: t(
    "{file} cannot be added to without risk (layout, protection or signature), so the results get a workbook of their own.",
    "No se puede añadir a {file} sin riesgo (forma, protección o firma); los resultados van en un libro propio.",
    "{file} ne peut être complété sans risque (forme, protection ou signature) ; les résultats vont dans un classeur à part.",
  ),
  inPlaceOne: t(
    "--in-place takes one workbook (.xlsx or .xlsm); for csv and several files use --save or --out.",
    "--in-place admite un solo libro (.xlsx o .xlsm); para csv y varios archivos use --save o --out.",
    "--in-place prend un seul classeur (.xlsx ou .xlsm) ; pour csv et plusieurs fichiers, utilisez --save ou --out.",
  ),
  formulaSummary: t(
    "Calculates one formula with CORDON functions and prints its value.",
    "Calcula una fórmula con funciones CORDON e imprime su valor.",
    "Calcule une formule avec des fonctions CORDON et en imprime la valeur.",
  ),
  checked: t(
    "{wrong} wrong, {ask} to ask about, {note} notes in {rows} rows of {tables} tables.",
    "{wrong} mal, {ask} por preguntar, {note} notas en {rows} filas de {tables} tablas.",
    "{wrong} faux, {ask} à demander, {note} notes dans {rows} lignes de {tables} tableaux.",
  ),
  checkedClean: t(
    "Nothing found in {rows} rows of {tables} tables.",
    "Nada que señalar en {rows} filas de {tables} tablas.",
    "Rien à signaler dans {rows} lignes de {tables} tableaux.",
  ),
  setAside: t(
    "Set aside in the workbook, so not counted: {findings}. The option --also-set-aside lists them.",
    "Apartados en el libro y por eso no contados: {findings}. La opción --also-set-aside los enumera.",
    "Mis de côté dans le classeur, donc pas comptés : {findings}. L'option --also-set-aside les énumère.",
  ),
  setAsideHeading: t(
    "Set aside, with reason, name and day",
    "Apartados, con motivo, nombre y día",
    "Mis de côté, avec raison, nom et jour",
  ),
  csvRead: t(
    "{file}: read as {encoding}, columns apart by {delimiter}, decimal sign {decimal}",
    "{file}: leído como {encoding}, columnas separadas por {delimiter}, signo decimal {decimal}",
    "{file} : lu en {encoding}, colonnes séparées par {delimiter}, signe décimal {decimal}",
  ),
  csvUndecided: t(
    "{file}: read as {encoding}, columns apart by {delimiter}; its commas may be decimals or thousands, so such cells stay text",
    "{file}: leído como {encoding}, columnas separadas por {delimiter}; sus comas pueden ser decimales o miles y esas celdas quedan como texto",
    "{file} : lu en {encoding}, colonnes séparées par {delimiter} ; ses virgules peuvent être décimales ou de milliers, ces cellules restent du texte",
  ),
  noTables: t(
    "No count sheet was recognised in {files}: a table needs headers such as Block, Row, Vine, Side, Cordon (looked at: {sheets}).",
    "No se reconoció ninguna hoja de conteo en {files}: una tabla necesita encabezados como Cuartel, Hilera, Planta, Lado, Cordón (se miró: {sheets}).",
    "Aucune feuille de comptage n'a été reconnue dans {files} : un tableau veut des en-têtes comme Parcelle, Rang, Cep, Côté, Cordon (vu : {sheets}).",
  ),
  unknownCommand: t(
    "There is no command “{command}”: known are {commands}.",
    "No existe la orden «{command}»: se conocen {commands}.",
    "Il n'y a pas de commande « {command} » : sont connues {commands}.",
  ),
  wrongWords: t(
    "The command {command} takes {takes}; see {command} --help.",
    "La orden {command} admite {takes}; vea {command} --help.",
    "La commande {command} prend {takes} ; voir {command} --help.",
  ),
  badOption: t(
    "The command {command} cannot do anything with “{given}”; its options are {options}.",
    "La orden {command} no entiende «{given}»; sus opciones son {options}.",
    "La commande {command} ne sait que faire de « {given} » ; ses options sont {options}.",
  ),
  badOptionWord: t(
    "--{option} takes one of {words}, not “{given}”.",
    "--{option} admite uno de {words}, no «{given}».",
    "--{option} prend l'un de {words}, et non « {given} ».",
  ),
  badNumber: t(
    "--{option} takes a number from 1 up, not “{given}”.",
    "--{option} admite un número desde 1, no «{given}».",
    "--{option} prend un nombre à partir de 1, et non « {given} ».",
  ),
  badDate: t(
    "--today takes a day such as 2026-03-31, not “{given}”.",
    "--today admite un día como 2026-03-31, no «{given}».",
    "--today prend un jour comme 2026-03-31, et non « {given} ».",
  ),
  ownMistake: t(
    "This is a mistake in Cordonbook, not in your file; nothing was changed. Please report what follows.",
    "Esto es un error de Cordonbook, no de su archivo; no se cambió nada. Informe de lo que sigue.",
    "C'est une erreur de Cordonbook et non de votre fichier ; rien n'a été changé. Merci de signaler ce qui suit.",
  ),
} satisfies Record<string, Text> as Readonly<Record<string, Text>>;

/** What the options mean, as the help shows it. */
export const OPTION_TEXTS = {
  format: t("how the result is written", "cómo se escribe el resultado", "forme du résultat"),
  language: t("language of the sentences", "idioma de las frases", "langue des phrases"),
  severity: t("leave out what weighs less", "omitir lo que pesa menos", "laisser de côté ce qui pèse moins"),
  alsoSetAside: t(
    "list findings set aside in the workbook too",
    "enumerar también los hallazgos apartados en el libro",
    "énumérer aussi les constats mis de côté dans le classeur",
  ),
  farm: t(
    "name of the farm on the first sheet",
    "nombre de la finca en la primera hoja",
    "nom du domaine sur la première feuille",
  ),
  newUnits: t("units in the headers (US)", "unidades de los encabezados (US)", "unités des en-têtes (US)"),
  html: t(
    "write a page to print instead",
    "escribir en cambio una página para imprimir",
    "écrire plutôt une page à imprimer",
  ),
  paper: t("paper of that page (Letter)", "papel de esa página (Letter)", "papier de cette page (Letter)"),
  save: t(
    "also save into a new workbook beside the file",
    "guardar también en un libro nuevo junto al archivo",
    "enregistrer aussi dans un nouveau classeur à côté du fichier",
  ),
  out: t(
    "also save into this new workbook",
    "guardar también en este libro nuevo",
    "enregistrer aussi dans ce nouveau classeur",
  ),
  inPlace: t(
    "add our sheets to the workbook itself, after a backup",
    "añadir nuestras hojas al propio libro, tras una copia",
    "ajouter nos feuilles au classeur même, après une copie",
  ),
  of: t(
    "all candidates, or only the cordons that stay",
    "todos los candidatos o solo los que quedan",
    "tous les candidats, ou seulement ceux qui restent",
  ),
  today: t(
    "day of the check, for dates in the future",
    "día de la revisión, para fechas futuras",
    "jour du contrôle, pour les dates à venir",
  ),
  units: t(
    "units of headers that name none",
    "unidades de los encabezados que no las nombran",
    "unités des en-têtes qui n'en nomment pas",
  ),
  expansion: t(
    "times that a file may grow when unpacked (200)",
    "veces que puede crecer un archivo al descomprimirse (200)",
    "fois qu'un fichier peut grandir décompressé (200)",
  ),
} satisfies Record<string, Text>;
