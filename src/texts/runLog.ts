import type { Text } from "./language";

/** The sheet that says who ran what when. */
export const RUN_LOG = {
  sheet: { en: "Run log", es: "Registro", fr: "Journal" },
  title: {
    en: "Who ran what when (switched on and off in the pane)",
    es: "Quién ejecutó qué y cuándo (se activa y desactiva en el panel)",
    fr: "Qui a lancé quoi et quand (activé et désactivé dans le volet)",
  },
  when: { en: "When", es: "Cuándo", fr: "Quand" },
  who: { en: "Who", es: "Quién", fr: "Qui" },
  what: { en: "What", es: "Qué", fr: "Quoi" },
  result: { en: "Result", es: "Resultado", fr: "Résultat" },
} as const satisfies Record<string, Text>;
