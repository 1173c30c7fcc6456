import type { Text } from "../../texts/language";
import type { Setting } from "./setting";
import { figure, oneOf, share } from "./figure";

const weight = (id: string, value: number, meaning: Text): Setting =>
  share(`Weight of ${id}`, value, "ours", meaning);

const WORTHS: readonly [system: Text, down: number, level: number, up: number][] = [
  [{ en: "high wire", es: "alambre alto", fr: "fil haut" }, 1, 0.9, 0.4],
  [{ en: "upright shoots", es: "brotes erguidos", fr: "pousses dressées" }, 0.2, 0.6, 1],
  [{ en: "divided canopy", es: "follaje dividido", fr: "feuillage divisé" }, 1, 0.9, 0.4],
];

const DIRECTIONS: readonly Text[] = [
  { en: "down", es: "hacia abajo", fr: "vers le bas" },
  { en: "level", es: "de lado", fr: "de côté" },
  { en: "up", es: "hacia arriba", fr: "vers le haut" },
];

/** Settings for the cordon score, the choice and renewal. */
export const CHOICE_SETTINGS: readonly Setting[] = [
  weight("live spurs", 0.3, {
    en: "How much live spurs against what the length should carry count in a cordon's score.",
    es: "Cuánto cuentan los pitones vivos frente a los que el largo debería llevar.",
    fr: "Poids des coursons vivants par rapport à ce que la longueur devrait porter.",
  }),
  weight("longest gap", 0.3, {
    en: "How much the longest stretch without a spur counts; it stays for the cordon's whole life.",
    es: "Cuánto cuenta el tramo más largo sin pitón; dura toda la vida del cordón.",
    fr: "Poids de la plus longue suite sans courson ; elle dure toute la vie du cordon.",
  }),
  weight("spur placing", 0.15, {
    en: "How much the direction of the spurs counts for the training system.",
    es: "Cuánto cuenta hacia dónde apuntan los pitones según la conducción.",
    fr: "Poids de l'orientation des coursons selon le mode de conduite.",
  }),
  weight("soundness", 0.2, {
    en: "How much the condition of the cordon itself counts.",
    es: "Cuánto cuenta el estado del propio cordón.",
    fr: "Poids de l'état du cordon lui-même.",
  }),
  weight("diameter", 0.05, {
    en: "How much the thickness of the cordon counts.",
    es: "Cuánto cuenta el grosor del cordón.",
    fr: "Poids de la grosseur du cordon.",
  }),
  figure("Space between neighbouring cordons", 4, "in", "westover2016", [0, 40], {
    en: "Wire left free between the ends of neighbouring cordons: one hand's width in the source; the inches for a hand are ours.",
    es: "Alambre libre entre las puntas de cordones vecinos: el ancho de una mano según la fuente; las pulgadas son nuestras.",
    fr: "Fil laissé libre entre les bouts de cordons voisins : une largeur de main selon la source ; les pouces sont de nous.",
  }),
  figure("Gap that scores nothing", 5, "positions", "ours", [1, 60], {
    en: "A stretch of so many positions without a spur earns nothing for the longest gap.",
    es: "Un tramo de tantas posiciones sin pitón no gana nada por el hueco más largo.",
    fr: "Une suite d'autant d'emplacements sans courson ne rapporte rien pour le plus long vide.",
  }),
  ...WORTHS.flatMap(([system, ...worths]) =>
    DIRECTIONS.map((direction, index) =>
      share(`Worth of a spur ${direction.en}, ${system.en}`, worths[index], "common practice", {
        en: `What a spur that points ${direction.en} is worth on this system (${system.en}). The order is common practice, the figure ours.`,
        es: `Lo que vale un pitón ${direction.es} en este sistema (${system.es}). El orden es práctica común, la cifra es nuestra.`,
        fr: `Valeur d'un courson ${direction.fr} dans ce mode (${system.fr}). L'ordre est d'usage courant, le chiffre est de nous.`,
      }),
    ),
  ),
  share("Soundness of an injured cordon", 0.5, "ours", {
    en: "Between a dead cordon (0) and a sound one (1).",
    es: "Entre un cordón muerto (0) y uno sano (1).",
    fr: "Entre un cordon mort (0) et un cordon sain (1).",
  }),
  share("Soundness of a diseased cordon", 0.2, "ours", {
    en: "Between a dead cordon (0) and a sound one (1).",
    es: "Entre un cordón muerto (0) y uno sano (1).",
    fr: "Entre un cordon mort (0) et un cordon sain (1).",
  }),
  figure("Weak cordon diameter", 0.3125, "in", "westover2016", [0, 4], {
    en: "Thin end of 5/16 to 1/2 in: up to here a cordon earns nothing for its thickness.",
    es: "Extremo fino de 5/16 a 1/2 pulgada: hasta aquí el grosor no gana nada.",
    fr: "Bout fin de 5/16 à 1/2 pouce : jusque-là la grosseur ne rapporte rien.",
  }),
  figure("Full cordon diameter", 0.5, "in", "westover2016", [0, 4], {
    en: "Thick end of 5/16 to 1/2 in, where the source wants trunks and cordons: from here on full marks.",
    es: "Extremo grueso de 5/16 a 1/2 pulgada, donde la fuente quiere troncos y cordones: desde aquí, todo.",
    fr: "Bout épais de 5/16 à 1/2 pouce, voulu par la source pour troncs et cordons : le maximum dès là.",
  }),
  share("Two cordons on two trunks", 0.15, "common practice", {
    en: "What two cordons from two trunks earn over two from one: the two permanent cordons should not hang on one trunk. The figure is ours.",
    es: "Lo que ganan dos cordones de dos troncos frente a dos de uno: los dos cordones permanentes no deben colgar de un solo tronco. La cifra es nuestra.",
    fr: "Ce que gagnent deux cordons de deux troncs sur deux d'un seul : les deux cordons permanents ne doivent pas tenir à un seul tronc. Le chiffre est de nous.",
  }),
  share("Cost of an injured trunk", 0.1, "ours", {
    en: "What a cordon loses because its trunk is injured.",
    es: "Lo que pierde un cordón porque su tronco está dañado.",
    fr: "Ce que perd un cordon dont le tronc est abîmé.",
  }),
  share("Cost of a diseased trunk", 0.2, "ours", {
    en: "What a cordon loses because its trunk is diseased.",
    es: "Lo que pierde un cordón porque su tronco está enfermo.",
    fr: "Ce que perd un cordon dont le tronc est malade.",
  }),
  share("Worth of a new cane", 0.5, "ours", {
    en: "A cordon that is worth less than this goes and a cane is laid in its place.",
    es: "Un cordón que vale menos se corta y en su lugar se tiende un sarmiento.",
    fr: "Un cordon qui vaut moins est coupé et un sarment est couché à sa place.",
  }),
  figure("Shortest cordon", 12, "in", "ours", [0, 120], {
    en: "Shorter than this it is a remnant at the head, not a cordon.",
    es: "Más corto que esto es un resto en la cabeza, no un cordón.",
    fr: "Plus court, c'est un reste à la tête, pas un cordon.",
  }),
  share("Close call", 0.05, "ours", {
    en: "Two plans for a vine that lie no further apart than this are a question for a person.",
    es: "Dos planes para una planta que no distan más que esto son pregunta para una persona.",
    fr: "Deux plans pour un cep qui ne s'écartent pas davantage sont une question pour quelqu'un.",
  }),
  figure("Cordons on a vine", 2, "", "common practice", [1, 2], {
    en: "Permanent cordons wanted: 2 is one on each side, 1 is a single cordon.",
    es: "Cordones permanentes deseados: 2 es uno por lado, 1 es un solo cordón.",
    fr: "Cordons permanents voulus : 2 veut dire un de chaque côté, 1 un seul cordon.",
  }),
  oneOf("Blank condition", "not recorded", ["not recorded", "sound"], "ours", {
    en: "What an empty condition means: nobody looked, or the crew only marks what is hurt.",
    es: "Qué significa un estado vacío: nadie miró, o la cuadrilla solo marca lo dañado.",
    fr: "Ce que veut dire un état vide : personne n'a regardé, ou l'équipe ne note que ce qui est abîmé.",
  }),
];
