import sheets from "@univerjs/preset-sheets-core/locales/en-US";
import notes from "@univerjs/preset-sheets-note/locales/en-US";
import tables from "@univerjs/preset-sheets-table/locales/en-US";

/** What the engine says while formulas are worked out, which its own words lack. */
const progress = {
  analyzing: "reading the formulas",
  calculating: "working out",
  "array-analysis": "arrays",
  "array-calculation": "arrays are worked out",
  done: "worked out",
};

/** The engine's own menus and help in this language. */
export default [
  { ...sheets, "sheets-formula": { ...(sheets["sheets-formula"] as object), progress } },
  notes,
  tables,
];
