import { TEXTS } from "./texts";

/** Words of the crew cards, short enough for a cell. */
export const CARD_TEXTS = { ...TEXTS.sheets.statuses, ...TEXTS.cards.sheet };

/** Origins of a cane, short. */
export const CARD_ORIGINS = TEXTS.cards.cardOrigins;

/** The parts of a cordon's score, as heads of columns. */
export const PART_TEXTS = TEXTS.cards.part;

/** What each sign on a card means, with the sign before it. */
export const LEGEND_TEXTS = TEXTS.cards.legend;

/** What is still open, at the head of the cards. */
export const OPEN_TEXTS = TEXTS.cards.open;

/** What differs from the cards that were printed before. */
export const CHANGED_TEXTS = TEXTS.cards.changed;

/** Colours of ribbons by their English words, with the words of any language that a farm may use for them. */
export const RIBBON_COLOURS: Readonly<
  Record<keyof typeof TEXTS.cards.ribbons, { readonly colour: string; readonly also: readonly string[] }>
> = {
  orange: { colour: "#f57c00", also: ["naranja"] },
  blue: { colour: "#1565c0", also: ["azul", "bleu"] },
  red: { colour: "#c62828", also: ["rojo", "roja", "rouge"] },
  yellow: { colour: "#f9d71c", also: ["amarillo", "amarilla", "jaune"] },
  green: { colour: "#2e7d32", also: ["verde", "vert"] },
  white: { colour: "#ffffff", also: ["blanco", "blanca", "blanc"] },
  pink: { colour: "#e91e8c", also: ["rosa", "rose"] },
  purple: { colour: "#7b1fa2", also: ["morado", "morada", "pourpre"] },
  violet: { colour: "#7b1fa2", also: ["violeta"] },
  black: { colour: "#000000", also: ["negro", "negra", "noir"] },
};

/** The words for them. */
export const RIBBON_TEXTS = TEXTS.cards.ribbons;
