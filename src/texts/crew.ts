import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Texts of the page that sends the crew out. */
export const CREW_TEXTS = {
  title: t("Cards for the crew", "Tarjetas para la cuadrilla", "Fiches pour l'équipe"),
  intro: t(
    "A card a row: what stays, what is cut and where, nodes a spur. Below: in what order the blocks are pruned, and which vines need a new trunk.",
    "Una tarjeta por hilera: qué queda, qué se corta y dónde, yemas por pitón. Abajo: en qué orden se podan los cuarteles y qué plantas necesitan un tronco nuevo.",
    "Une fiche par rang : ce qui reste, ce qui est coupé et où, yeux par courson. Dessous : l'ordre de taille des parcelles et les ceps qui ont besoin d'un nouveau tronc.",
  ),
  make: t("Make the cards", "Hacer las tarjetas", "Faire les fiches"),
  again: t("Make them again", "Hacerlas otra vez", "Les refaire"),
  progress: t("Progress of the cards", "Avance de las tarjetas", "Avancement des fiches"),
  sum: t(
    "{cards} cards for {vines} vines; {done} of the pruning is done.",
    "{cards} tarjetas para {vines} plantas; hecho el {done} de la poda.",
    "{cards} fiches pour {vines} ceps ; {done} de la taille est fait.",
  ),
  none: t(
    "No vine was found. Next step: fill in the Cordons or Vines sheet.",
    "No se encontró ninguna planta. Siguiente paso: llene la hoja Cordones o Plantas.",
    "Aucun cep n'a été trouvé. Prochaine étape : remplissez la feuille Cordons ou Ceps.",
  ),
  row: t("Row", "Hilera", "Rang"),
  paper: t("Paper", "Papel", "Papier"),
  cardLanguage: t("Language of the cards", "Idioma de las tarjetas", "Langue des fiches"),
  print: t("Print {cards} cards", "Imprimir {cards} tarjetas", "Imprimer {cards} fiches"),
  write: t("Write Crew cards sheet", "Escribir hoja de tarjetas", "Écrire la feuille des fiches"),
  back: t(
    "What the crew found different goes into the Cordons and Vines sheets; then make the cards again.",
    "Lo que la cuadrilla halló distinto se anota en las hojas Cordones y Plantas; luego haga otra vez las tarjetas.",
    "Ce que l'équipe a trouvé autrement se note dans les feuilles Cordons et Ceps ; puis refaites les fiches.",
  ),
  work: t("Order of work", "Orden de trabajo", "Ordre du travail"),
  workSum: t(
    "{hours} hours are left, {days} days of the whole crew.",
    "Quedan {hours} horas, {days} días de toda la cuadrilla.",
    "Il reste {hours} heures, {days} jours de toute l'équipe.",
  ),
  workSource: t(
    "Hardy blocks and fruitful secondaries first, tender ones last (University of Georgia, Bulletin 1505); the lists and the crew's calendar stand in Settings.",
    "Primero cuarteles resistentes y secundarias fértiles, al final los sensibles (Universidad de Georgia, Boletín 1505); las listas y el calendario están en Ajustes.",
    "D'abord parcelles résistantes et secondaires fertiles, les sensibles en dernier (Université de Géorgie, Bulletin 1505) ; listes et calendrier sont dans Réglages.",
  ),
  block: t("Block", "Cuartel", "Parcelle"),
  left: t("Vines left", "Plantas por podar", "Ceps restants"),
  hours: t("Hours", "Horas", "Heures"),
  crewDays: t("Crew days", "Días de cuadrilla", "Jours d'équipe"),
  when: t("When", "Cuándo", "Quand"),
  done: t("done", "hecho", "fait"),
  only: t("{block}", "{block}", "{block}"),
  first: t("{block}, first pass", "{block}, primera pasada", "{block}, premier passage"),
  second: t("{block}, second pass", "{block}, segunda pasada", "{block}, second passage"),
  gantt: t(
    "Calendar of the passes, one bar each from its first to its last day.",
    "Calendario de las pasadas, una barra por cada una de su primer a su último día.",
    "Calendrier des passages, une barre chacun de son premier à son dernier jour.",
  ),
  renewal: t("Trunks to renew", "Troncos por renovar", "Troncs à renouveler"),
  renewalNone: t(
    "No vine needs a new trunk.",
    "Ninguna planta necesita un tronco nuevo.",
    "Aucun cep n'a besoin d'un nouveau tronc.",
  ),
  renewalSum: t(
    "{vines} vines need a new trunk, most urgent first. Live trunks not counted on {notCounted}.",
    "{vines} plantas necesitan un tronco nuevo, las más urgentes primero. Sin troncos contados en {notCounted}.",
    "{vines} ceps ont besoin d'un nouveau tronc, les plus urgents d'abord. Troncs non comptés sur {notCounted}.",
  ),
  forecast: t("Five winters ahead", "Cinco inviernos adelante", "Cinq hivers à venir"),
  forecastNote: t(
    "At {loss} of the trunks lost a year and one trunk more on {up} of the short vines, both from Settings. Trunks of one vine often die together, so this is the bright side.",
    "Con {loss} de troncos perdidos al año y un tronco más en {up} de las plantas cortas, según Ajustes. Los troncos de una planta suelen morir juntos: es el lado optimista.",
    "Avec {loss} des troncs perdus par an et un tronc de plus sur {up} des ceps en manque, selon Réglages. Les troncs d'un cep meurent souvent ensemble : c'est le côté optimiste.",
  ),
  year: t("Winter", "Invierno", "Hiver"),
  now: t("now", "ahora", "maintenant"),
  enough: t("Enough trunks", "Troncos suficientes", "Assez de troncs"),
  short: t("Too few", "Pocos", "Trop peu"),
  without: t("None", "Ninguno", "Aucun"),
} as const satisfies Record<string, Text>;
