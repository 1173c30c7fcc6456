import type { Text } from "./language";

/** What the Source column says of a figure that is not the source's. */
export const OWN_FIGURE: Text = { en: "own figure", es: "cifra propia", fr: "chiffre propre" };

/** Why a change of a setting was not taken, by reason. */
export const SETTING_CHANGE_PROBLEMS: Readonly<Record<string, Text>> = {
  noTable: {
    en: "There is no Settings table in the sheet {sheet}.",
    es: "No hay tabla de ajustes en la hoja {sheet}.",
    fr: "Il n'y a pas de tableau de réglages dans la feuille {sheet}.",
  },
  unknown: {
    en: "There is no setting “{setting}”.",
    es: "No existe el ajuste «{setting}».",
    fr: "Il n'y a pas de réglage « {setting} ».",
  },
  notANumber: {
    en: "{setting} needs a number, but “{value}” was given.",
    es: "{setting} necesita un número, pero se dio «{value}».",
    fr: "{setting} demande un nombre, mais « {value} » a été donné.",
  },
  outside: {
    en: "{setting} must lie within {expected}, but {value} was given.",
    es: "{setting} debe estar entre {expected}, pero se dio {value}.",
    fr: "{setting} doit être compris dans {expected}, mais {value} a été donné.",
  },
  notAChoice: {
    en: "{setting} must be one of {expected}, but “{value}” was given.",
    es: "{setting} debe ser uno de {expected}, pero se dio «{value}».",
    fr: "{setting} doit être l'un de {expected}, mais « {value} » a été donné.",
  },
  wrongUnit: {
    en: "{setting} stands in the sheet with a unit that does not measure the same as {expected}.",
    es: "{setting} está en la hoja con una unidad que no mide lo mismo que {expected}.",
    fr: "{setting} figure dans la feuille avec une unité qui ne mesure pas la même chose que {expected}.",
  },
};

/** The steps that bring an older Settings table to the present shape. */
export const SETTINGS_STEPS: Readonly<Record<"names" | "columns" | "history" | "rows", Text>> = {
  names: {
    en: "Settings that were renamed get their present names: {names}.",
    es: "Los ajustes renombrados reciben su nombre actual: {names}.",
    fr: "Les réglages renommés prennent leur nom actuel : {names}.",
  },
  columns: {
    en: "Columns for what each figure is: {names}.",
    es: "Columnas para lo que es cada cifra: {names}.",
    fr: "Colonnes pour ce qu'est chaque chiffre : {names}.",
  },
  history: {
    en: "Columns for who changed a figure and when: {names}.",
    es: "Columnas para quién cambió una cifra y cuándo: {names}.",
    fr: "Colonnes pour qui a changé un chiffre et quand : {names}.",
  },
  rows: {
    en: "Settings that the table did not have yet: {names}.",
    es: "Ajustes que la tabla aún no tenía: {names}.",
    fr: "Réglages que le tableau n'avait pas encore : {names}.",
  },
};
