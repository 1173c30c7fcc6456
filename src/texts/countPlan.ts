import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Planning a count of a sample of vines. */
export const COUNT_PLAN_TEXTS = {
  title: t("Plan a count", "Planear un conteo", "Planifier un comptage"),
  plan: t("Plan a count in {block}", "Planear un conteo en {block}", "Planifier un comptage dans {block}"),
  counted: t("What is counted", "Qué se cuenta", "Ce qui est compté"),
  clusters: t("Clusters", "Racimos", "Grappes"),
  shoots: t("Shoots", "Brotes", "Pousses"),
  prunings: t("Prunings weighed", "Madera de poda pesada", "Bois de taille pesé"),
  margin: t("Margin, % either way", "Margen, % a cada lado", "Marge, % de part et d'autre"),
  badMargin: t(
    "The margin must be a number from {least} to {most} %, but “{value}” was typed.",
    "El margen debe ser un número de {least} a {most} %, pero se escribió «{value}».",
    "La marge doit être un nombre de {least} à {most} %, mais « {value} » a été tapé.",
  ),
  noVines: t(
    "The Vines sheet lists no bearing vine of {block}. Next step: list its vines with row, number and status.",
    "La hoja Plantas no tiene plantas productivas de {block}. Siguiente paso: anote sus plantas con hilera, número y estado.",
    "La feuille Ceps ne liste aucun cep en production de {block}. Prochaine étape : listez ses ceps avec rang, numéro et état.",
  ),
  vines: t(
    "Count {vines} of {all} bearing vines: the mean then lies within {margin} % in {confidence} of 100 cases like this.",
    "Cuente {vines} de {all} plantas productivas: la media queda dentro de {margin} % en {confidence} de 100 casos así.",
    "Comptez {vines} des {all} ceps en production : la moyenne est alors à {margin} % près dans {confidence} cas sur 100 comme celui-ci.",
  ),
  pilot: t(
    "Spread between vines {percent} %, from {pilot} vines of this block that carry a count.",
    "Variación entre plantas {percent} %, de {pilot} plantas de este cuartel con conteo.",
    "Variation entre ceps {percent} %, d'après {pilot} ceps de cette parcelle qui ont un comptage.",
  ),
  setting: t(
    "Spread between vines {percent} %, from Settings, because fewer than {least} vines of this block carry a count.",
    "Variación entre plantas {percent} %, de Ajustes, porque menos de {least} plantas de este cuartel tienen conteo.",
    "Variation entre ceps {percent} %, d'après Réglages, car moins de {least} ceps de cette parcelle ont un comptage.",
  ),
  handbooks: t(
    "What handbooks say beside it",
    "Lo que dicen los manuales al lado",
    "Ce que disent les manuels à côté",
  ),
  walk: t(
    "Which vines, in the order of a walk",
    "Qué plantas, en el orden del recorrido",
    "Quels ceps, dans l'ordre du parcours",
  ),
  row: t("Row {row}: {vines}", "Hilera {row}: {vines}", "Rang {row} : {vines}"),
  drawn: t(
    "Drawn by chance and spread over the rows; draw {seed} gives this list again. Count the very vines drawn; one found missing or young is left out, not counted as 0.",
    "Elegidas al azar y repartidas en las hileras; el sorteo {seed} da otra vez esta lista. Cuente justo esas plantas; la que falte o sea joven se omite, no se cuenta como 0.",
    "Tirés au hasard et répartis sur les rangs ; le tirage {seed} redonne cette liste. Comptez exactement ces ceps ; un cep manquant ou jeune est omis, pas compté 0.",
  ),
  other: t("Draw other vines", "Sortear otras plantas", "Tirer d'autres ceps"),
  print: t("Print the list", "Imprimir la lista", "Imprimer la liste"),
  printTitle: t("Vines to count: {block}", "Plantas por contar: {block}", "Ceps à compter : {block}"),
  headRow: t("Row", "Hilera", "Rang"),
  headVine: t("Vine", "Planta", "Cep"),
  headNote: t("Note", "Nota", "Remarque"),
  countedBy: t("Counted by, day:", "Contado por, día:", "Compté par, jour :"),
} as const satisfies Record<string, Text>;
