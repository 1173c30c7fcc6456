import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Season against season: live spurs, gaps and trunks over the winters of the Season sheet. */
export const SEASONS_TEXTS = {
  title: t("Winter against winter", "Invierno contra invierno", "Hiver contre hiver"),
  intro: t(
    "Live spurs, gaps and trunks of the cordons that stay, over the winters kept on the sheet {sheet}.",
    "Pitones vivos, huecos y troncos de los cordones que quedan, en los inviernos guardados en la hoja {sheet}.",
    "Coursons vivants, vides et troncs des cordons qui restent, sur les hivers gardés dans la feuille {sheet}.",
  ),
  write: t(
    "Keep winter {year} on the Season sheet",
    "Guardar el invierno {year} en la hoja Temporada",
    "Garder l'hiver {year} dans la feuille Saison",
  ),
  notKept: t(
    "Winter {year} as counted now differs from the sheet or is not on it yet. Earlier winters stay as they are when it is kept.",
    "El invierno {year} como está contado difiere de la hoja o aún no está en ella. Al guardarlo, los inviernos anteriores quedan como están.",
    "L'hiver {year} tel que compté diffère de la feuille ou n'y est pas encore. Le garder laisse les hivers d'avant tels quels.",
  ),
  kept: t(
    "Winter {year} stands on the sheet as it is counted now.",
    "El invierno {year} está en la hoja como está contado ahora.",
    "L'hiver {year} est dans la feuille tel que compté maintenant.",
  ),
  sheetTitle: t(
    "Rows of vines, winter by winter",
    "Hileras, invierno por invierno",
    "Rangs de vigne, hiver par hiver",
  ),
  sheetNote: t(
    "Written by Cordonbook on {date}. A winter that is kept again replaces its own rows; other winters stay. Lengths of gaps in spur positions.",
    "Escrita por Cordonbook el {date}. Un invierno guardado otra vez reemplaza sus propias filas; los demás quedan. Huecos en posiciones de pitón.",
    "Écrite par Cordonbook le {date}. Un hiver gardé de nouveau remplace ses propres lignes ; les autres restent. Vides en emplacements de courson.",
  ),
  foreign: t(
    "The sheet {sheet} has no table of winters that can be read, so it is left alone. Rename it to keep winters.",
    "La hoja {sheet} no tiene una tabla de inviernos legible y se deja como está. Cámbiele el nombre para guardar inviernos.",
    "La feuille {sheet} n'a pas de tableau d'hivers lisible, elle est laissée telle quelle. Renommez-la pour garder des hivers.",
  ),
  lost: t(
    "{count} rows of the sheet {sheet} are not complete, so they would be lost; nothing was written. Complete or delete them first.",
    "{count} filas de la hoja {sheet} no están completas y se perderían; no se escribió nada. Complételas o bórrelas antes.",
    "{count} lignes de la feuille {sheet} ne sont pas complètes et seraient perdues ; rien n'a été écrit. Complétez-les ou effacez-les d'abord.",
  ),
  row: t("Row", "Hilera", "Rang"),
  allRows: t("All rows", "Todas las hileras", "Tous les rangs"),
  year: t("Winter", "Invierno", "Hiver"),
  liveSpurs: t("Live spurs", "Pitones vivos", "Coursons vivants"),
  share: t("% of positions", "% de posiciones", "% des emplacements"),
  gaps: t("Gaps", "Huecos", "Vides"),
  liveTrunks: t("Live trunks", "Troncos vivos", "Troncs vivants"),
  loss: t(
    "The block loses {likely} % of its live spurs a year ({low} to {high} % in {confidence} of 100 cases like this), by {rows} rows and {pairs} pairs of winters.",
    "El cuartel pierde {likely} % de sus pitones vivos al año (de {low} a {high} % en {confidence} de 100 casos así), según {rows} hileras y {pairs} pares de inviernos.",
    "La parcelle perd {likely} % de ses coursons vivants par an ({low} à {high} % dans {confidence} cas sur 100 comme celui-ci), d'après {rows} rangs et {pairs} paires d'hivers.",
  ),
  gain: t(
    "Below 0 means spurs gained.",
    "Menos de 0 son pitones ganados.",
    "Sous 0, ce sont des coursons gagnés.",
  ),
  toFloor: t(
    "At that pace it falls below the floor of {floor} % in {likely} years (earliest {low}, latest {high}).",
    "A ese paso baja del mínimo de {floor} % en {likely} años (antes {low}, más tarde {high}).",
    "À ce rythme elle passe sous le plancher de {floor} % dans {likely} ans (au plus tôt {low}, au plus tard {high}).",
  ),
  never: t("never", "nunca", "jamais"),
  notReached: t(
    "At that pace it does not fall below the floor of {floor} %; earliest in {low} years.",
    "A ese paso no baja del mínimo de {floor} %; lo más pronto en {low} años.",
    "À ce rythme elle ne passe pas sous le plancher de {floor} % ; au plus tôt dans {low} ans.",
  ),
  below: t(
    "Below the floor of {floor} % live spurs: {blocks}. Bring up new cordons there.",
    "Bajo el mínimo de {floor} % de pitones vivos: {blocks}. Forme ahí cordones nuevos.",
    "Sous le plancher de {floor} % de coursons vivants : {blocks}. Y former de nouveaux cordons.",
  ),
  noneBelow: t(
    "No block lies below the floor of {floor} % live spurs (a setting; no published floor was seen).",
    "Ningún cuartel está bajo el mínimo de {floor} % de pitones vivos (un ajuste; no se vio un mínimo publicado).",
    "Aucune parcelle n'est sous le plancher de {floor} % de coursons vivants (un réglage ; aucun plancher publié n'a été vu).",
  ),
  blockShare: t(
    "{block} ({share} %, winter {year})",
    "{block} ({share} %, invierno {year})",
    "{block} ({share} %, hiver {year})",
  ),
} as const satisfies Record<string, Text>;
