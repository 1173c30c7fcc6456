import sheets from "@univerjs/preset-sheets-core/locales/fr-FR";
import notes from "@univerjs/preset-sheets-note/locales/fr-FR";
import tables from "@univerjs/preset-sheets-table/locales/fr-FR";

/** The engine's own menus and help in this language. */
export default [sheets, notes, tables];
