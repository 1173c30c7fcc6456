import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Words on the sheets with the decision on every cordon and with the crew cards. */
export const RESULT_SHEET_TEXTS = {
  choice: t("Cordon choice", "Elección de cordones", "Choix des cordons"),
  choiceTitle: t(
    "Which cordon stays on each side, and why",
    "Qué cordón queda en cada lado y por qué",
    "Quel cordon reste de chaque côté, et pourquoi",
  ),
  cards: t("Crew cards", "Tarjetas de cuadrilla", "Fiches d'équipe"),
  cardsTitle: t(
    "What to do on each vine, in walking order",
    "Qué hacer en cada planta, en el orden de marcha",
    "Que faire sur chaque cep, dans l'ordre de marche",
  ),
  made: t("Made on {date}", "Hecho el {date}", "Fait le {date}"),
  block: t("Block", "Cuartel", "Parcelle"),
  row: t("Row", "Hilera", "Rang"),
  vine: t("Vine", "Planta", "Cep"),
  side: t("Side", "Lado", "Côté"),
  cordon: t("Cordon", "Cordón", "Cordon"),
  trunk: t("Trunk", "Tronco", "Tronc"),
  decision: t("Decision", "Decisión", "Décision"),
  score: t("Score", "Puntaje", "Note"),
  reason: t("Reason", "Motivo", "Motif"),
  sheet: t("Sheet", "Hoja", "Feuille"),
  sheetRow: t("Sheet row", "Fila de la hoja", "Ligne de la feuille"),
  stays: t("What stays", "Qué queda", "Ce qui reste"),
  cuts: t("What is cut", "Qué se corta", "Ce qu'on coupe"),
  notes: t("Look out for", "Atención", "Attention"),
  aboutTitle: t("Results of Cordonbook", "Resultados de Cordonbook", "Résultats de Cordonbook"),
  aboutSource: t("From {files}", "De {files}", "De {files}"),
  about: t("About", "Acerca de", "À propos"),
  what: t("What", "Qué", "Quoi"),
} satisfies Record<string, Text>;
