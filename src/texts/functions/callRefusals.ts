import type { Text } from "../language";
import { t } from "./functionText";

/** One sentence per way a call can be wrong: it names the argument, what was given and what was expected. */
export const CALL_REFUSALS: Readonly<Record<string, Text>> = {
  missing: t(
    "{argument} is missing: expected {expected}.",
    "Falta {argument}: se espera {expected}.",
    "{argument} manque : on attend {expected}.",
  ),
  isText: t(
    "{argument} is the text “{value}”{place}: expected {expected}.",
    "{argument} es el texto «{value}»{place}: se espera {expected}.",
    "{argument} est le texte « {value} »{place} : on attend {expected}.",
  ),
  isBoolean: t(
    "{argument} is {value}{place}: expected {expected}.",
    "{argument} es {value}{place}: se espera {expected}.",
    "{argument} est {value}{place} : on attend {expected}.",
  ),
  isError: t(
    "{argument} is the error {value}{place}: put that cell right first.",
    "{argument} es el error {value}{place}: corrija primero esa celda.",
    "{argument} est l'erreur {value}{place} : corrigez d'abord cette cellule.",
  ),
  outOfLimits: t(
    "{argument} is {value}{place}: expected {expected}.",
    "{argument} es {value}{place}: se espera {expected}.",
    "{argument} vaut {value}{place} : on attend {expected}.",
  ),
  notAChoice: t(
    "{argument} is “{value}”: expected one of {choices}.",
    "{argument} es «{value}»: se espera uno de {choices}.",
    "{argument} est « {value} » : on attend l'un de {choices}.",
  ),
  oneCellOnly: t(
    "{argument} is a range of {rows} rows and {columns} columns: expected one cell.",
    "{argument} es un rango de {rows} filas y {columns} columnas: se espera una celda.",
    "{argument} est une plage de {rows} lignes et {columns} colonnes : on attend une cellule.",
  ),
  oneColumnOnly: t(
    "{argument} is a range of {columns} columns: expected one column.",
    "{argument} es un rango de {columns} columnas: se espera una columna.",
    "{argument} est une plage de {columns} colonnes : on attend une colonne.",
  ),
  ragged: t(
    "{argument} has rows of different length ({rowLengths} cells): expected a rectangle.",
    "{argument} tiene filas de distinto largo ({rowLengths} celdas): se espera un rectángulo.",
    "{argument} a des lignes de longueur différente ({rowLengths} cellules) : on attend un rectangle.",
  ),
  differentLengths: t(
    "{argument} has {rows} rows but {other} has {otherRows}: expected columns of the same length.",
    "{argument} tiene {rows} filas pero {other} tiene {otherRows}: se esperan columnas del mismo largo.",
    "{argument} a {rows} lignes mais {other} en a {otherRows} : on attend des colonnes de même longueur.",
  ),
  noNumbers: t(
    "{argument} holds no number: expected at least one.",
    "{argument} no contiene ningún número: se espera al menos uno.",
    "{argument} ne contient aucun nombre : on en attend au moins un.",
  ),
  notATable: t(
    "{argument} is not a range with a heading row: select the table with its headings, such as {suggestion}.",
    "{argument} no es un rango con encabezados: seleccione la tabla con su fila de encabezados, como {suggestion}.",
    "{argument} n'est pas une plage avec ligne d'en-tête : sélectionnez le tableau avec ses en-têtes, comme {suggestion}.",
  ),
  blanksAsZero: t(
    "{argument} arrived with 0 in the column “{heading}”, as some versions of Excel hand over blank cells: a blank count cannot be told from 0 here, so use the pane.",
    "{argument} llegó con 0 en la columna «{heading}», como algunas versiones de Excel entregan celdas vacías: aquí no se distingue un conteo vacío de 0; use el panel.",
    "{argument} est arrivé avec 0 dans la colonne « {heading} », comme certaines versions d'Excel transmettent les cellules vides : un comptage vide ne se distingue pas de 0 ici ; utilisez le volet.",
  ),
  notOurTable: t(
    "{argument} has too few headings that are known here: select the table with its headings, such as {suggestion}.",
    "{argument} tiene muy pocos encabezados conocidos: seleccione la tabla con su fila de encabezados, como {suggestion}.",
    "{argument} a trop peu d'en-têtes connus : sélectionnez le tableau avec ses en-têtes, comme {suggestion}.",
  ),
  noSuchColumn: t(
    "{argument} has no column “{column}”.",
    "{argument} no tiene la columna «{column}».",
    "{argument} n'a pas de colonne « {column} ».",
  ),
  wrongCell: t(
    "{argument}: “{value}” in the column “{column}”{place} cannot be used; run the check to see what is wrong.",
    "{argument}: «{value}» en la columna «{column}»{place} no se puede usar; haga la revisión para ver qué está mal.",
    "{argument} : « {value} » dans la colonne « {column} »{place} n'est pas utilisable ; lancez la vérification pour voir pourquoi.",
  ),
  tooManyArguments: t(
    "CORDON.{name} takes at most {most} arguments, but {given} are given.",
    "CORDON.{name} admite como máximo {most} argumentos, pero hay {given}.",
    "CORDON.{name} prend au plus {most} arguments, mais {given} sont donnés.",
  ),
};

/** What is expected of an argument, to stand inside the sentences above. */
export const EXPECTED: Readonly<Record<string, Text>> = {
  number: t(
    "a number from {least} to {most} {unit}",
    "un número de {least} a {most} {unit}",
    "un nombre de {least} à {most} {unit}",
  ),
  numberFrom: t(
    "a number of at least {least} {unit}",
    "un número de al menos {least} {unit}",
    "un nombre d'au moins {least} {unit}",
  ),
  numberAboveZero: t(
    "a number above zero, at most {most} {unit}",
    "un número mayor que cero, máximo {most} {unit}",
    "un nombre supérieur à zéro, au plus {most} {unit}",
  ),
  numberAboveZeroOnly: t(
    "a number above zero {unit}",
    "un número mayor que cero {unit}",
    "un nombre supérieur à zéro {unit}",
  ),
  whole: t(
    "a whole number from {least} to {most}",
    "un número entero de {least} a {most}",
    "un nombre entier de {least} à {most}",
  ),
  wholeFrom: t(
    "a whole number of at least {least}",
    "un número entero de al menos {least}",
    "un nombre entier d'au moins {least}",
  ),
  share: t(
    "a share from {least} to {most} (35 % is 0.35)",
    "una proporción de {least} a {most} (35 % es 0,35)",
    "une part de {least} à {most} (35 % vaut 0,35)",
  ),
  text: t("a text", "un texto", "un texte"),
  choice: t("one of {choices}", "uno de {choices}", "l'un de {choices}"),
  table: t(
    "a range with its heading row",
    "un rango con su fila de encabezados",
    "une plage avec sa ligne d'en-tête",
  ),
};

/** How a table with its heading row is written as an argument. */
export const WHOLE_TABLE: Text = t("{table}[#All]", "{table}[#Todo]", "{table}[#Tout]");

/** Where in a list a wrong cell stands, to stand inside the sentences above. */
export const PLACE_IN_RANGE: Text = t(
  " in row {row} of the range",
  " en la fila {row} del rango",
  " à la ligne {row} de la plage",
);
