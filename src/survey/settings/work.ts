import type { Setting } from "./setting";
import { figure } from "./figure";

/** Settings for hours, crew days and the order of work. */
export const WORK_SETTINGS: readonly Setting[] = [
  figure("Minutes a vine, pruning", 3, "min", "from memory, unverified", [0, 240], {
    en: "Minutes one person needs to prune a vine. One minute a vine is 13.45 hours an acre at 6 x 9 ft (Cornell labour); time your own crew.",
    es: "Minutos que una persona necesita por planta. Un minuto por planta son 13.45 horas por acre a 6 x 9 ft (Cornell labour); mida a su cuadrilla.",
    fr: "Minutes qu'il faut à une personne par cep. Une minute par cep fait 13,45 heures par acre à 6 x 9 ft (Cornell labour) ; chronométrez votre équipe.",
  }),
  figure("Minutes a vine, thinning", 2, "min", "from memory, unverified", [0, 240], {
    en: "Minutes one person needs to take clusters off a vine; time your own crew.",
    es: "Minutos que una persona necesita para quitar racimos de una planta; mida a su cuadrilla.",
    fr: "Minutes qu'il faut à une personne pour ôter des grappes d'un cep ; chronométrez votre équipe.",
  }),
  figure("Crew", 4, "people", "ours", [1, 500], {
    en: "People who prune at the same time.",
    es: "Personas que podan a la vez.",
    fr: "Personnes qui taillent en même temps.",
  }),
  figure("Hours a day", 6, "h", "ours", [0.5, 16], {
    en: "Hours each person prunes in a winter day, breaks for warming up not counted.",
    es: "Horas que cada persona poda en un día de invierno, sin las pausas para calentarse.",
    fr: "Heures de taille de chacun par jour d'hiver, pauses pour se réchauffer non comprises.",
  }),
];
