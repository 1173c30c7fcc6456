import type { Setting } from "./setting";
import { figure, share, words } from "./figure";

/** Settings for the node plan, the order of work and the crew cards. */
export const PLAN_SETTINGS: readonly Setting[] = [
  figure("Plan: least nodes a spur", 1, "nodes", "common practice", [1, 15], {
    en: "Where the budget is small, spurs are cut back to this many nodes.",
    es: "Si el presupuesto es chico, los pitones se rebajan a estas yemas.",
    fr: "Si le budget est petit, les coursons sont ramenés à ce nombre d'yeux.",
  }),
  figure("Plan: most nodes a spur", 3, "nodes", "klodd2022", [1, 15], {
    en: "Where the wire carries too few spurs, they are left this long at most; the source gives 2 to 3 nodes.",
    es: "Si el alambre lleva pocos pitones, se dejan a lo sumo de este largo; la fuente da 2 a 3 yemas.",
    fr: "Si le fil porte trop peu de coursons, ils sont laissés au plus à cette longueur ; la source donne 2 à 3 yeux.",
  }),
  words("Tender cultivars", "", "ours", {
    en: "Cultivars or blocks that are pruned last because winter hurts them most; commas between them.",
    es: "Variedades o cuarteles que se podan al final porque el invierno los daña más; separados por comas.",
    fr: "Cépages ou parcelles taillés en dernier car l'hiver les touche le plus ; séparés par des virgules.",
  }),
  words("Fruitful secondaries", "", "ours", {
    en: "Cultivars or blocks whose secondary buds bear well, so that they may be pruned first; commas between them.",
    es: "Variedades o cuarteles cuyas yemas secundarias dan buena fruta y pueden podarse primero; separados por comas.",
    fr: "Cépages ou parcelles dont les bourgeons secondaires portent bien, à tailler d'abord ; séparés par des virgules.",
  }),
  words("Double pruning", "", "ours", {
    en: "Cultivars or blocks that are pruned in two passes; commas between them.",
    es: "Variedades o cuarteles que se podan en dos pasadas; separados por comas.",
    fr: "Cépages ou parcelles taillés en deux passages ; séparés par des virgules.",
  }),
  figure("Double pruning: nodes of the first pass", 2.5, "times", "purdueDoublePruning", [1, 5], {
    en: "First pass to this many times the nodes wanted; the source gives 2 to 3 times, the second pass shortly after budbreak.",
    es: "Primera pasada a tantas veces las yemas deseadas; la fuente da 2 a 3 veces, la segunda poco después de brotar.",
    fr: "Premier passage à autant de fois les yeux voulus ; la source donne 2 à 3 fois, le second peu après le débourrement.",
  }),
  share("Double pruning: time of the second pass", 0.4, "ours", {
    en: "Share of the pruning time that the second pass takes; the first takes all of it.",
    es: "Parte del tiempo de poda que toma la segunda pasada; la primera toma todo.",
    fr: "Part du temps de taille que prend le second passage ; le premier le prend en entier.",
  }),
  figure("Pruning starts", 46054, "date", "ours", [0, 2958465], {
    en: "First day of pruning, as a date.",
    es: "Primer día de poda, como fecha.",
    fr: "Premier jour de taille, comme date.",
  }),
  figure("Second pass starts", 46127, "date", "ours", [0, 2958465], {
    en: "First day of the second pass of double pruning, as a date.",
    es: "Primer día de la segunda pasada de la doble poda, como fecha.",
    fr: "Premier jour du second passage de la double taille, comme date.",
  }),
  figure("Days a week", 5, "days", "ours", [1, 7], {
    en: "Days of the week on which the crew prunes, from Monday on.",
    es: "Días de la semana en que poda la cuadrilla, desde el lunes.",
    fr: "Jours de la semaine où l'équipe taille, à partir du lundi.",
  }),
  words("Days off", "", "ours", {
    en: "Days on which nobody prunes, as 2026-02-16, commas between them.",
    es: "Días en que nadie poda, como 2026-02-16, separados por comas.",
    fr: "Jours où personne ne taille, comme 2026-02-16, séparés par des virgules.",
  }),
  words("Ribbon, stays", "orange", "ours", {
    en: "Colour of the ribbon that the farm ties to a cordon that stays.",
    es: "Color de la cinta que la finca ata al cordón que queda.",
    fr: "Couleur du ruban que la ferme noue au cordon qui reste.",
  }),
  words("Ribbon, ask", "blue", "ours", {
    en: "Colour of the ribbon for a cordon that somebody must look at first.",
    es: "Color de la cinta para un cordón que alguien debe mirar antes.",
    fr: "Couleur du ruban pour un cordon que quelqu'un doit voir d'abord.",
  }),
  figure("Vines a card page", 25, "vines", "ours", [5, 40], {
    en: "Vines printed on one page of a crew card.",
    es: "Plantas impresas en una página de la tarjeta.",
    fr: "Ceps imprimés sur une page de la fiche.",
  }),
];
