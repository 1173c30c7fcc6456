import type { Text } from "./language";

/** One sentence per refusal code of src/domain: it names the argument, what was given and what was expected. */
export const REFUSALS: Readonly<Record<string, Text>> = {
  outside: {
    en: "{argument} must lie between {least} and {most} {unit}, but is {value}.",
    es: "{argument} debe estar entre {least} y {most} {unit}, pero es {value}.",
    fr: "{argument} doit être compris entre {least} et {most} {unit}, mais vaut {value}.",
  },
  notWhole: {
    en: "{argument} must be a whole number from {least} to {most}, but is {value}.",
    es: "{argument} debe ser un número entero de {least} a {most}, pero es {value}.",
    fr: "{argument} doit être un nombre entier de {least} à {most}, mais vaut {value}.",
  },
};
