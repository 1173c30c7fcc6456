import { TEXTS } from "./texts";

/** Texts of the page that sends the crew out. */
export const CREW_TEXTS = TEXTS.crew;
