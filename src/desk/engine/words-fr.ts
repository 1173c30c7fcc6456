import sheets from "@univerjs/preset-sheets-core/locales/fr-FR";
import notes from "@univerjs/preset-sheets-note/locales/fr-FR";
import tables from "@univerjs/preset-sheets-table/locales/fr-FR";

/** What the engine says while formulas are worked out, which its own words lack. */
const progress = {
  analyzing: "lecture des formules",
  calculating: "calcul en cours",
  "array-analysis": "matrices",
  "array-calculation": "calcul des matrices",
  done: "calculé",
};

/** The engine's own menus and help in this language. */
export default [
  { ...sheets, "sheets-formula": { ...(sheets["sheets-formula"] as object), progress } },
  notes,
  tables,
];
