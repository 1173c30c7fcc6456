import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import * as core from "@univerjs/core";
import * as facade from "@univerjs/core/facade";
import * as themes from "@univerjs/themes";
import * as sheets from "@univerjs/preset-sheets-core";
import * as notes from "@univerjs/preset-sheets-note";
import * as tables from "@univerjs/preset-sheets-table";

/** The open spreadsheet engine as one script of its own: the page's bundle takes its packages from here. */
Object.assign(globalThis, { spreadsheetEngine: { core, facade, themes, sheets, notes, tables } });
