import type { Text } from "./language";
import { BLOCK_FINDINGS } from "./findings/blocks";
import { CELL_FINDINGS } from "./findings/cells";
import { CREW_FINDINGS } from "./findings/crews";
import { t, type FindingText } from "./findings/findingText";
import { PLACE_FINDINGS } from "./findings/places";
import { SPUR_FINDINGS } from "./findings/spurs";
import { VINE_FINDINGS } from "./findings/vines";

export { HABIT_TEXTS, MADE_TEXTS } from "./findings/crews";

/** Title, sentence, reason and remedy of every kind of finding, by its code. */
export const FINDING_TEXTS: Readonly<Record<string, FindingText>> = {
  ...CELL_FINDINGS,
  ...SPUR_FINDINGS,
  ...PLACE_FINDINGS,
  ...BLOCK_FINDINGS,
  ...VINE_FINDINGS,
  ...CREW_FINDINGS,
};

/** The place that stands before a finding's sentence. */
export const FINDING_PLACES = {
  vine: t(
    "{block} row {row} vine {vine}",
    "{block} hilera {row} planta {vine}",
    "{block} rang {row} cep {vine}",
  ),
  row: t("{block} row {row}", "{block} hilera {row}", "{block} rang {row}"),
  block: t("{block}", "{block}", "{block}"),
  sheetRow: t(
    "Sheet {sheet} row {sheetRow}",
    "Hoja {sheet} fila {sheetRow}",
    "Feuille {sheet} ligne {sheetRow}",
  ),
  sideCordon: t("{side} cordon {cordon}", "cordón {cordon} ({side})", "cordon {cordon} ({side})"),
  cordon: t("cordon {cordon}", "cordón {cordon}", "cordon {cordon}"),
  side: t("{side} side", "lado {side}", "côté {side}"),
  whole: t("{place}: {sentence}", "{place}: {sentence}", "{place} : {sentence}"),
  joined: t("{place}, {detail}", "{place}, {detail}", "{place}, {detail}"),
  otherSheet: t(" {name}", " {name}", " {name}"),
} as const;

/** How the severities are called. */
export const SEVERITY_TEXTS: Readonly<Record<"wrong" | "ask" | "note", Text>> = {
  wrong: t("wrong", "mal", "faux"),
  ask: t("ask", "preguntar", "à demander"),
  note: t("note", "nota", "à noter"),
};

/** Headings under which findings are grouped: what a person does about them. */
export const ACTION_TEXTS: Readonly<Record<string, Text>> = {
  fillIn: t("Fill in", "Completar", "À remplir"),
  correct: t("Correct in the sheet", "Corregir en la hoja", "À corriger dans la feuille"),
  lookAtVine: t("Look at the vine", "Mirar la planta", "Regarder le cep"),
  askCounter: t("Ask whoever counted", "Preguntar a quien contó", "Demander à qui a compté"),
  mendRegister: t("Mend the register", "Arreglar el registro", "Corriger le registre"),
  mendSheet: t("Mend the table", "Arreglar la tabla", "Corriger le tableau"),
};
