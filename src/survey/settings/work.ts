import type { Setting } from "../setting";

/** Settings for hours, crew days and the order of work. */
export const WORK_SETTINGS: readonly Setting[] = [
  {
    id: "Minutes a vine, pruning",
    value: 3,
    unit: "min",
    source: "from memory, unverified",
    least: 0,
    most: 240,
    meaning: {
      en: "Minutes one person needs to prune a vine. One minute a vine is 13.45 hours an acre at 6 x 9 ft (Cornell labour); time your own crew.",
      es: "Minutos que una persona necesita por planta. Un minuto por planta son 13.45 horas por acre a 6 x 9 ft (Cornell labour); mida a su cuadrilla.",
      fr: "Minutes qu'il faut à une personne par cep. Une minute par cep fait 13,45 heures par acre à 6 x 9 ft (Cornell labour) ; chronométrez votre équipe.",
    },
  },
  {
    id: "Minutes a vine, thinning",
    value: 2,
    unit: "min",
    source: "from memory, unverified",
    least: 0,
    most: 240,
    meaning: {
      en: "Minutes one person needs to take clusters off a vine; time your own crew.",
      es: "Minutos que una persona necesita para quitar racimos de una planta; mida a su cuadrilla.",
      fr: "Minutes qu'il faut à une personne pour ôter des grappes d'un cep ; chronométrez votre équipe.",
    },
  },
  {
    id: "Crew",
    value: 4,
    unit: "people",
    source: "ours",
    least: 1,
    most: 500,
    meaning: {
      en: "People who prune at the same time.",
      es: "Personas que podan a la vez.",
      fr: "Personnes qui taillent en même temps.",
    },
  },
  {
    id: "Hours a day",
    value: 6,
    unit: "h",
    source: "ours",
    least: 0.5,
    most: 16,
    meaning: {
      en: "Hours each person prunes in a winter day, breaks for warming up not counted.",
      es: "Horas que cada persona poda en un día de invierno, sin las pausas para calentarse.",
      fr: "Heures de taille de chacun par jour d'hiver, pauses pour se réchauffer non comprises.",
    },
  },
];
