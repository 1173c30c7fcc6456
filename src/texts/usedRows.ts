import type { Text } from "./language";

/** How many rows of the Cordons sheets a result is worked out from, and why not the others. */
export const USED_ROWS = {
  all: {
    en: "Worked out from all {rows} rows of the Cordons sheets.",
    es: "Calculado con las {rows} filas de las hojas Cordones.",
    fr: "Calculé avec les {rows} lignes des feuilles Cordons.",
  },
  some: {
    en: "Worked out from {used} of {rows} rows of the Cordons sheets. Left out: {leftOut}.",
    es: "Calculado con {used} de {rows} filas de las hojas Cordones. Quedan fuera: {leftOut}.",
    fr: "Calculé avec {used} des {rows} lignes des feuilles Cordons. Laissées de côté : {leftOut}.",
  },
  column: {
    en: "{rows} where {column} {reason} (first in {sheet}, row {row})",
    es: "{rows} donde {column} {reason} (la primera en {sheet}, fila {row})",
    fr: "{rows} où {column} {reason} (la première dans {sheet}, ligne {row})",
  },
  sameVine: {
    en: "{rows} beside those on the same vines",
    es: "{rows} junto a ellas en las mismas plantas",
    fr: "{rows} à côté d'elles sur les mêmes ceps",
  },
} as const satisfies Readonly<Record<string, Text>>;

/** Why a cell keeps its row from being used; follows the name of the column. */
export const FAULT_WORDS = {
  blank: { en: "is blank", es: "está en blanco", fr: "est vide" },
  text: {
    en: "is a number stored as text",
    es: "es un número guardado como texto",
    fr: "est un nombre en texte",
  },
  unreadable: { en: "cannot be read", es: "no se puede leer", fr: "est illisible" },
  error: { en: "holds an error", es: "tiene un error", fr: "contient une erreur" },
  outside: { en: "is outside its limits", es: "está fuera de sus límites", fr: "dépasse ses limites" },
  notWhole: { en: "is no whole number", es: "no es un número entero", fr: "n'est pas un nombre entier" },
  contradicted: {
    en: "contradicts another cell of its row",
    es: "contradice otra celda de su fila",
    fr: "contredit une autre cellule de sa ligne",
  },
} as const satisfies Readonly<Record<string, Text>>;
