import sheets from "@univerjs/preset-sheets-core/locales/es-ES";
import notes from "@univerjs/preset-sheets-note/locales/es-ES";
import tables from "@univerjs/preset-sheets-table/locales/es-ES";

/** The engine's own menus and help in this language. */
export default [sheets, notes, tables];
