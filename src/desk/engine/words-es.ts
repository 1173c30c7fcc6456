import sheets from "@univerjs/preset-sheets-core/locales/es-ES";
import notes from "@univerjs/preset-sheets-note/locales/es-ES";
import tables from "@univerjs/preset-sheets-table/locales/es-ES";

/** What the engine says while formulas are worked out, which its own words lack. */
const progress = {
  analyzing: "leyendo las fórmulas",
  calculating: "calculando",
  "array-analysis": "matrices",
  "array-calculation": "calculando matrices",
  done: "calculado",
};

/** The engine's own menus and help in this language. */
export default [
  { ...sheets, "sheets-formula": { ...(sheets["sheets-formula"] as object), progress } },
  notes,
  tables,
];
