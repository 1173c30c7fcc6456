import { cellName } from "../address";
import { EXCEL_FLOOR } from "./excelFloor";
import type { ExcelRun } from "./excelRun";
import type { SupportsSet } from "./excelWorkbook";
import { addWorkingSheet, removeWorkingSheet } from "./workingSheet";

/** What the add-in uses of Excel: the id of its sentence in src/texts/selfTest.ts, and the requirement set. */
export const ABILITIES: readonly { readonly id: string; readonly set: string; readonly version: string }[] = [
  { id: "pane", set: "SharedRuntime", version: "1.1" },
  { id: "functions", set: "CustomFunctionsRuntime", version: "1.3" },
  { id: "tables", set: "ExcelApi", version: "1.4" },
  { id: "marks", set: "ExcelApi", version: "1.9" },
  { id: "whileTyping", set: "ExcelApi", version: "1.9" },
  { id: "pivot", set: "ExcelApi", version: "1.8" },
  { id: "spill", set: "ExcelApi", version: "1.12" },
  { id: "notes", set: "ExcelApi", version: "1.18" },
  { id: "oneUndo", set: "ExcelApi", version: "1.20" },
];

/** One ability of Excel in the self-test. */
export interface ExcelAbility {
  readonly id: string;
  /** "missing" where the add-in works without it, "tooOld" where it does not. */
  readonly outcome: "yes" | "missing" | "tooOld";
  readonly set: string;
}

/** What this copy of Excel supports of what the add-in uses. */
export function supportedAbilities(supports: SupportsSet): ExcelAbility[] {
  return ABILITIES.map(({ id, set, version }) => {
    const floor = EXCEL_FLOOR.find((other) => other.set === set);
    const needed = floor !== undefined && minor(version) <= minor(floor.version);
    const outcome = supports(set, version) ? "yes" : needed ? "tooOld" : "missing";
    return { id, outcome, set: `${set} ${version}` };
  });
}

function minor(version: string): number {
  return Number(version.split(".")[1]);
}

/** What a cell shows that asks for a function of ours. */
export interface FunctionsAnswer {
  /** "unknown": #NAME?, Excel does not know the functions. "waiting": still #BUSY! after all tries. */
  readonly state: "answers" | "otherVersion" | "unknown" | "waiting" | "error";
  readonly shows: string;
}

const TRIES = 15;

/**
 * Asks a cell for =CORDON.VERSION() on a hidden working sheet, which is taken away again, and says what it shows.
 *
 * @param version what this copy of the add-in would answer
 * @param pause waits between two looks
 */
export function askFunctions(
  run: ExcelRun,
  version: string,
  pause: () => Promise<void> = () => new Promise((resolve) => setTimeout(resolve, 200)),
): Promise<FunctionsAnswer> {
  return run(async (context) => {
    const working = await addWorkingSheet(context);
    try {
      const cell = working.getRange(cellName(1, 1));
      cell.formulas = [["=CORDON.VERSION()"]];
      for (let look = 1; ; look++) {
        cell.load("values");
        // eslint-disable-next-line office-addins/no-context-sync-in-loop -- waits for a function that answers later
        await context.sync();
        const shows = String(cell.values[0][0]);
        const waits = shows === "#BUSY!" || shows === "" || shows === "0";
        if (!waits || look === TRIES) return { state: waits ? "waiting" : stateOf(shows, version), shows };
        await pause();
      }
    } finally {
      await removeWorkingSheet(context, working);
    }
  });
}

function stateOf(shows: string, version: string): FunctionsAnswer["state"] {
  if (shows === version) return "answers";
  if (shows === "#NAME?") return "unknown";
  return shows.startsWith("#") ? "error" : "otherVersion";
}
