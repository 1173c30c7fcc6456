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
