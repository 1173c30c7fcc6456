import type { Text } from "../language";
import { t } from "./functionText";

/** One sentence per mistake in a formula that is typed outside a spreadsheet; `position` counts characters from 1. */
export const FORMULA_PROBLEMS: Readonly<Record<string, Text>> = {
  empty: t(
    "The formula is empty: expected something like {example}.",
    "La fórmula está vacía: se espera algo como {example}.",
    "La formule est vide : on attend quelque chose comme {example}.",
  ),
  unknownFunction: t(
    "There is no function {name} (position {position}). Did you mean {suggestion}?",
    "No existe la función {name} (posición {position}). ¿Quiso decir {suggestion}?",
    "Il n'y a pas de fonction {name} (position {position}). Vouliez-vous dire {suggestion} ?",
  ),
  otherFunction: t(
    "{name} at position {position} is not a CORDON function, and only those can be used here.",
    "{name} en la posición {position} no es una función CORDON, y aquí solo se pueden usar esas.",
    "{name} à la position {position} n'est pas une fonction CORDON, et seules celles-ci sont possibles ici.",
  ),
  noSheet: t(
    "{name} at position {position} points into a sheet, and there is none here: write the figures themselves, a column as {1;2;3}.",
    "{name} en la posición {position} apunta a una hoja, y aquí no hay ninguna: escriba las cifras, una columna como {1;2;3}.",
    "{name} à la position {position} renvoie à une feuille, et il n'y en a pas ici : écrivez les chiffres, une colonne comme {1;2;3}.",
  ),
  unclosedParenthesis: t(
    "The parenthesis opened at position {position} is not closed.",
    "El paréntesis abierto en la posición {position} no se cierra.",
    "La parenthèse ouverte à la position {position} n'est pas fermée.",
  ),
  unclosedBrace: t(
    "The brace opened at position {position} is not closed.",
    "La llave abierta en la posición {position} no se cierra.",
    "L'accolade ouverte à la position {position} n'est pas fermée.",
  ),
  unclosedText: t(
    "The text that begins at position {position} has no closing quotation mark.",
    "El texto que empieza en la posición {position} no tiene comilla de cierre.",
    "Le texte qui commence à la position {position} n'a pas de guillemet fermant.",
  ),
  missingParenthesis: t(
    "{name} needs an opening parenthesis after it, at position {position}.",
    "{name} necesita un paréntesis de apertura, en la posición {position}.",
    "{name} demande une parenthèse ouvrante, à la position {position}.",
  ),
  unexpected: t(
    "“{found}” at position {position} is not expected there.",
    "«{found}» en la posición {position} no se espera ahí.",
    "« {found} » à la position {position} n'est pas attendu là.",
  ),
  unexpectedEnd: t(
    "The formula ends at position {position} where a value is expected.",
    "La fórmula termina en la posición {position}, donde se espera un valor.",
    "La formule s'arrête à la position {position} où une valeur est attendue.",
  ),
  raggedArray: t(
    "The rows of the list at position {position} are not of the same length.",
    "Las filas de la lista en la posición {position} no tienen el mismo largo.",
    "Les lignes de la liste à la position {position} n'ont pas la même longueur.",
  ),
  notANumber: t(
    "“{value}” cannot be calculated with: expected a number on both sides of {operator}.",
    "No se puede calcular con «{value}»: se espera un número a ambos lados de {operator}.",
    "On ne peut pas calculer avec « {value} » : un nombre est attendu des deux côtés de {operator}.",
  ),
  divisionByZero: t(
    "A number is divided by zero.",
    "Un número se divide por cero.",
    "Un nombre est divisé par zéro.",
  ),
  differentSizes: t(
    "Lists of {left} and {right} cells cannot be joined by {operator}: expected the same size.",
    "Las listas de {left} y {right} celdas no se pueden unir con {operator}: se espera el mismo tamaño.",
    "Des listes de {left} et {right} cellules ne peuvent pas être jointes par {operator} : même taille attendue.",
  ),
};
