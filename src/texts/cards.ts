import { TEXTS } from "./texts";

/** Words of the crew cards, short enough for a cell. */
export const CARD_TEXTS = { ...TEXTS.sheets.statuses, ...TEXTS.cards.sheet };

/** Origins of a cane, short. */
export const CARD_ORIGINS = TEXTS.cards.cardOrigins;

/** The parts of a cordon's score, as heads of columns. */
export const PART_TEXTS = TEXTS.cards.part;

/** Words that a farm may use for the colour of its ribbon, with the colour that is shown beside them. */
export const RIBBON_COLOURS: Readonly<Record<string, readonly string[]>> = {
  "#f57c00": ["orange", "naranja"],
  "#1565c0": ["blue", "azul", "bleu"],
  "#c62828": ["red", "rojo", "roja", "rouge"],
  "#f9d71c": ["yellow", "amarillo", "amarilla", "jaune"],
  "#2e7d32": ["green", "verde", "vert"],
  "#ffffff": ["white", "blanco", "blanca", "blanc"],
  "#e91e8c": ["pink", "rosa", "rose"],
  "#7b1fa2": ["purple", "violet", "morado", "morada", "violeta"],
  "#000000": ["black", "negro", "negra", "noir"],
};
