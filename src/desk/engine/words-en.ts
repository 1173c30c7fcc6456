import sheets from "@univerjs/preset-sheets-core/locales/en-US";
import notes from "@univerjs/preset-sheets-note/locales/en-US";
import tables from "@univerjs/preset-sheets-table/locales/en-US";

/** The engine's own menus and help in this language. */
export default [sheets, notes, tables];
