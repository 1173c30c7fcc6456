import type { Text } from "./language";

/** One sentence per refusal code of src/domain: it names the argument, what was given and what was expected. */
export const REFUSALS: Readonly<Record<string, Text>> = {
  outside: {
    en: "{argument} must lie between {least} and {most} {unit}, but is {value}.",
    es: "{argument} debe estar entre {least} y {most} {unit}, pero es {value}.",
    fr: "{argument} doit être compris entre {least} et {most} {unit}, mais vaut {value}.",
  },
  notWhole: {
    en: "{argument} must be a whole number from {least} to {most}, but is {value}.",
    es: "{argument} debe ser un número entero de {least} a {most}, pero es {value}.",
    fr: "{argument} doit être un nombre entier de {least} à {most}, mais vaut {value}.",
  },
  formulaNotBalanced: {
    en: 'The formula must read like 30+10 (nodes for the first pound, then for each further pound), but is "{value}".',
    es: 'La fórmula debe leerse como 30+10 (yemas por la primera libra y por cada libra más), pero es "{value}".',
    fr: "La formule doit se lire comme 30+10 (yeux pour la première livre, puis par livre de plus), mais vaut « {value} ».",
  },
  belowOnePound: {
    en: "The prunings weigh {value} lb: no source seen says how many nodes to leave below one pound; choose flat or pro rata to get our own figure.",
    es: "La poda pesa {value} lb: ninguna fuente vista dice cuántas yemas dejar por debajo de una libra; elija fijo o proporcional para una cifra nuestra.",
    fr: "Le bois de taille pèse {value} lb : aucune source vue ne dit combien d'yeux laisser sous une livre ; choisissez fixe ou proportionnel pour un chiffre à nous.",
  },
  leastAboveMost: {
    en: "The least number of nodes ({least}) is above the most ({most}).",
    es: "El mínimo de yemas ({least}) es mayor que el máximo ({most}).",
    fr: "Le minimum d'yeux ({least}) dépasse le maximum ({most}).",
  },
  noPrunings: {
    en: "The prunings weigh nothing, so no crop load can be given: weigh the prunings of the same vines.",
    es: "La poda pesa cero, así que no hay relación de carga: pese la poda de las mismas plantas.",
    fr: "Le bois de taille pèse zéro, donc pas de rapport de charge : pesez le bois des mêmes ceps.",
  },
};
