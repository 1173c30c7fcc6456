import { en } from "./en";
import { es } from "./es";
import { fr } from "./fr";

/** Every language of the program, English first. A language is its file and its line here. */
export const LANGUAGE_FILES = { en, es, fr };

export type Language = keyof typeof LANGUAGE_FILES;
