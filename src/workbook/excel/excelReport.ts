import { OWN_SHEET_NAME } from "../ownSheet";
import { WorkbookProblem, type OwnSheet, type SurveyWorkbook } from "../surveyWorkbook";
import type { HearsCalls } from "./associateFunctions";
import { EXCEL_FLOOR, missingFromFloor } from "./excelFloor";
import { excelFile, type OfficeDocument } from "./excelFile";
import { officeCode } from "./excelProblem";
import type { ExcelRun } from "./excelRun";
import type { SupportsSet } from "./excelWorkbook";
import type { ReportId, ReportRow, ReportSeen } from "./reportPages";
import { addWorkingSheet, removeWorkingSheet } from "./workingSheet";

/** What the report needs of the Excel that it is about. */
export interface ReportedExcel {
  readonly run: ExcelRun;
  readonly supports: SupportsSet;
  readonly workbook: Pick<SurveyWorkbook, "writeOwnSheet" | "selectedCell" | "selectCell">;
  /** Office.context.diagnostics */
  readonly diagnostics: { readonly version: string; readonly platform: string };
  readonly document: OfficeDocument;
  readonly hear: HearsCalls;
}

/** What the page does for the report. */
export interface ReportingPage {
  /** Prints a page; false when printing did not begin. */
  print(): Promise<boolean>;
  /** Asks the person to press Undo once in Excel; false when they would rather not. */
  ask(what: "undo" | "undoFact"): Promise<boolean>;
  wait(milliseconds: number): Promise<void>;
}

type Trying = ReportedExcel & ReportingPage;
type Scratch = (context: Excel.RequestContext, sheet: Excel.Worksheet) => Promise<ReportSeen[]>;

const WAITS = { delayForCellEdit: true } as const;
const NOT_HERE = ["protectedWorkbook", "otherWorkbook", "cellBeingEdited"];
const PAUSE_MS = 200;
const LOOKS = 15;

/**
 * Tries what the add-in relies on and says what was seen beside what the documentation says, a line at a time. It works
 * on sheets of its own, which are taken away again whatever happens; that clears the list of Undo, so Undo comes first.
 */
export async function* excelReport(
  excel: ReportedExcel,
  page: ReportingPage,
): AsyncGenerator<ReportRow, void> {
  const trying: Trying = { ...excel, ...page };
  for (const { ids, act } of TRIALS) {
    const seen = await act(trying).catch((failure: unknown) => {
      if ((failure as Error | null)?.name === "AbortError") throw failure;
      return ids.map(() => seenOf(failure));
    });
    for (const [index, id] of ids.entries()) {
      yield { id, ...seen[index], ...(isOtherwise(id, trying) && { otherwise: true }) };
    }
  }
}

function isOtherwise(id: ReportId, { supports, diagnostics }: Trying): boolean {
  if (id === "print") return diagnostics.platform === "Mac";
  if (id === "undo") return !supports("ExcelApi", "1.20");
  return id === "blank" && blankIn(supports, diagnostics.platform) === "0";
}

/** Changed with an update of 2024 that no requirement set tells; ExcelApi 1.18 came with the first version of 2025. */
function blankIn(supports: SupportsSet, platform: string): "0" | "null" {
  return platform === "OfficeOnline" || supports("ExcelApi", "1.18") ? "null" : "0";
}

function seenOf(failure: unknown): ReportSeen {
  const isNotTried = failure instanceof WorkbookProblem && NOT_HERE.includes(failure.code);
  const code = failure instanceof WorkbookProblem ? failure.code : officeCode(failure);
  const shows = code || String((failure as Error | null)?.message ?? failure);
  return { outcome: isNotTried ? "notTried" : "different", says: "refused", shows };
}

const seen = (isSame: boolean, shows: unknown): ReportSeen => ({
  outcome: isSame ? "same" : "different",
  says: shows === "" ? "nothing" : "value",
  shows: String(shows),
});
const notTried = (says: ReportSeen["says"]): ReportSeen => ({ outcome: "notTried", says, shows: "" });

function onScratch(act: Scratch): (trying: Trying) => Promise<ReportSeen[]> {
  return ({ run }) => inScratch(run, act);
}

function inScratch<T>(
  run: ExcelRun,
  act: (context: Excel.RequestContext, sheet: Excel.Worksheet) => Promise<T>,
): Promise<T> {
  return run(async (context) => {
    const sheet = await addWorkingSheet(context);
    try {
      return await act(context, sheet);
    } finally {
      await removeWorkingSheet(context, sheet);
    }
  }, WAITS);
}

interface Trial {
  readonly ids: readonly ReportId[];
  readonly act: (trying: Trying) => Promise<ReportSeen[]>;
}

const COUNTS = [
  ["Side", "Count"],
  ["a", 1],
  ["b", 2],
  ["a", 3],
  ["b", 4],
];

const TRIALS: readonly Trial[] = [
  { ids: ["build", "platform", "sets"], act: aboutThisCopy },
  { ids: ["editing"], act: whileEditing },
  { ids: ["undo", "undoFact"], act: takenBack },
  { ids: ["blank", "error", "errorInArray", "spill", "spillBlocked"], act: inFunctions },
  { ids: ["watch"], act: afterTwoWatches },
  {
    ids: ["text"],
    act: onScratch(async (context, sheet) => {
      const cell = sheet.getRange("A1");
      cell.values = [["'=1+1"]];
      cell.load("values");
      await context.sync();
      return [seen(cell.values[0][0] === "=1+1", cell.values[0][0])];
    }),
  },
  { ids: ["filterSeen", "filterWrite"], act: onScratch(behindFilter) },
  { ids: ["marks", "marksOff"], act: onScratch(withMarks) },
  { ids: ["rewrite"], act: afterRewriting },
  { ids: ["pivot"], act: onScratch(inPivot) },
  { ids: ["chart"], act: withChart },
  {
    ids: ["print"],
    act: async ({ print, diagnostics }) => {
      const begun = await print();
      return [seen(begun !== (diagnostics.platform === "Mac"), begun ? "beforeprint" : "")];
    },
  },
  {
    ids: ["file"],
    act: async ({ document }) => {
      const bytes = await excelFile(document);
      const head = String.fromCharCode(...bytes.subarray(0, 2));
      return [seen(head === "PK", `${bytes.length} B, ${head}`)];
    },
  },
];

async function aboutThisCopy({ supports, diagnostics }: Trying): Promise<ReportSeen[]> {
  const { version, platform } = diagnostics;
  const highest = EXCEL_FLOOR.map(({ set }) => {
    let minor = 0;
    while (minor < 99 && supports(set, `1.${minor + 1}`)) minor++;
    return `${set} 1.${minor}`;
  });
  return [
    seen(/^\d+(\.\d+)+$/.test(version), version),
    seen(["PC", "Mac", "OfficeOnline"].includes(platform), platform),
    seen(missingFromFloor(supports).length === 0, highest.join(", ")),
  ];
}

/** Without delayForCellEdit a batch is refused while a cell is edited; with it, it waits. */
async function whileEditing({ run }: Trying): Promise<ReportSeen[]> {
  const look = async (context: Excel.RequestContext) => {
    context.workbook.load("name");
    await context.sync();
  };
  try {
    await run(look);
    return [notTried("notEditing")];
  } catch (failure) {
    await run(look, WAITS);
    const { shows } = seenOf(failure);
    return [
      { ...seenOf(failure), outcome: shows === "InvalidOperationInCellEditMode" ? "same" : "different" },
    ];
  }
}

async function takenBack({ run, supports, ask, workbook }: Trying): Promise<ReportSeen[]> {
  const merges = supports("ExcelApi", "1.20");
  const before = await workbook.selectedCell();
  return inScratch(run, async (context, sheet) => {
    sheet.visibility = "Visible";
    sheet.activate();
    sheet.load("name");
    await context.sync();
    const onSheet = <T>(
      act: (own: Excel.Worksheet, sync: () => Promise<unknown>) => Promise<T>,
      mergeUndoGroup = false,
    ) =>
      run((other) => act(other.workbook.worksheets.getItem(sheet.name), () => other.sync()), {
        ...WAITS,
        mergeUndoGroup,
      });
    const type = (addresses: readonly string[], merged: boolean) =>
      onSheet(async (own, sync) => {
        for (const address of addresses) {
          own.getRange(address).values = [[1]];
          await sync();
        }
      }, merged);
    const left = (address: string) =>
      onSheet(async (own, sync) => {
        const range = own.getRange(address);
        range.load("values");
        await sync();
        return range.values.flat().map(String);
      });
    await type(["A1", "A2"], merges);
    if (!(await ask("undo"))) return [notTried("skipped"), notTried("skipped")];
    const both = await left("A1:A2");
    const undo = seen(both.join() === (merges ? "," : "1,"), both.map((cell) => cell || "–").join(", "));
    await type(["A3"], false);
    const flag = (add: boolean) =>
      run(async (context) => {
        const { settings } = context.workbook;
        if (add) settings.add(REPORT_FLAG, "1");
        else {
          const setting = settings.getItemOrNullObject(REPORT_FLAG);
          setting.load("key");
          await context.sync();
          if (!setting.isNullObject) setting.delete();
        }
        await context.sync();
      }, WAITS);
    try {
      await flag(true);
      if (!(await ask("undoFact"))) return [undo, notTried("skipped")];
      const [cell] = await left("A3");
      return [undo, seen(cell === "", cell)];
    } finally {
      await flag(false).catch(() => flag(false));
    }
  }).finally(() => before && workbook.selectCell(before.sheet, before.row, before.column));
}

const REPORT_FLAG = "Cordonbook.report";

/** 3 lb at 30+10 leave 50 nodes, 2 lb leave 40; a blank weight and one with an error stand between them. */
function inFunctions({ run, hear, wait, supports, diagnostics }: Trying): Promise<ReportSeen[]> {
  const formula = '=CORDON.NODEBUDGET(A1:A4,"30+10")';
  let weights: readonly (readonly unknown[])[] | undefined;
  hear((id, [given]) => {
    if (id === "NODEBUDGET" && Array.isArray(given)) weights ??= given as unknown[][];
  });
  return inScratch(run, async (context, sheet) => {
    sheet.getRange("A1:A4").formulas = [[3], [""], ["=NA()"], [2]];
    sheet.getRange("E2").values = [["x"]];
    sheet.getRange("C1").formulas = [[formula]];
    sheet.getRange("E1").formulas = [[formula]];
    const [column, blocked] = [sheet.getRange("C1:C4"), sheet.getRange("E1")];
    for (let look = 1; ; look++) {
      const filled = sheet.getRange("C1").getSpillingToRangeOrNullObject();
      column.load("values");
      blocked.load("values");
      filled.load("address");
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- waits for a function that answers later
      await context.sync();
      const answered = weights && isThere(column.values[0][0]) && isThere(blocked.values[0][0]);
      if (!answered && look < LOOKS) {
        await wait(PAUSE_MS);
        continue;
      }
      const shown = column.values.map(([cell]) => String(cell));
      const cells = filled.isNullObject ? "" : filled.address.replace(/^.*!/, "");
      const heard = (at: number, expected: string): ReportSeen =>
        weights
          ? seen(argumentText(weights[at][0]) === expected, argumentText(weights[at][0]))
          : { outcome: "different", says: "notCalled", shows: "" };
      return [
        heard(1, blankIn(supports, diagnostics.platform)),
        heard(2, "#N/A"),
        seen(shown[0] === "50" && shown[2].startsWith("#") && shown[3] === "40", shown.join(", ")),
        seen(cells === "C1:C4", cells),
        seen(blocked.values[0][0] === "#SPILL!", blocked.values[0][0]),
      ];
    }
  }).finally(() => hear(undefined));
}

const isThere = (value: unknown) => !["#BUSY!", "", 0].includes(value as string | number);

function argumentText(given: unknown): string {
  if (typeof given !== "object" || given === null) return String(given);
  const { code, errorCode, basicValue } = given as Readonly<Record<string, unknown>>;
  return String([code, errorCode, basicValue].find((part) => part !== undefined) ?? JSON.stringify(given));
}

/** Two registrations for changed cells, each in its own run; the first is taken back, the second goes on. */
function afterTwoWatches({ run, wait }: Trying): Promise<ReportSeen[]> {
  return inScratch(run, async (context, sheet) => {
    let told = false;
    const register = (onTold: () => void) =>
      run(async (other) => {
        const registration = other.workbook.worksheets.onChanged.add(async () => onTold());
        await other.sync();
        return registration;
      }, WAITS);
    const remove = async (registration: Awaited<ReturnType<typeof register>>) => {
      registration.remove();
      await registration.context.sync();
    };
    const first = await register(() => undefined);
    const second = await register(() => (told = true));
    await remove(first);
    sheet.getRange("A1").values = [[1]];
    await context.sync();
    for (let look = 1; look <= LOOKS && !told; look++) await wait(PAUSE_MS);
    await remove(second);
    return [told ? seen(true, "onChanged") : { outcome: "different", says: "notTold", shows: "" }];
  });
}

async function behindFilter(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<ReportSeen[]> {
  const table = countsTable(sheet);
  const { autoFilter } = table;
  autoFilter.apply(table.getRange(), 0, { filterOn: "Values", values: ["a"] });
  autoFilter.load("isDataFiltered");
  await context.sync();
  const counts = sheet.getRange("B2:B5");
  counts.values = [[10], [20], [30], [40]];
  const written = await context.sync().then(
    () => undefined,
    (failure: unknown) => seenOf(failure),
  );
  counts.load("values");
  await context.sync();
  return [
    seen(autoFilter.isDataFiltered, autoFilter.isDataFiltered),
    written
      ? { ...written, outcome: written.shows === "FilteredRangeConflict" ? "same" : "different" }
      : seen(false, counts.values.flat().join(", ")),
  ];
}

function countsTable(sheet: Excel.Worksheet): Excel.Table {
  const range = sheet.getRange("A1:B5");
  range.values = COUNTS;
  return sheet.tables.add(range, true);
}

/** A mark of ours over a cell with a fill and with a conditional format that was there before. */
async function withMarks(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<ReportSeen[]> {
  const FILL = "#C0FFC0";
  const { fill } = sheet.getRange("A1").format;
  const left = sheet.getRange("A1").conditionalFormats;
  fill.color = FILL;
  const add = () => {
    const format = left.add("Custom");
    format.custom.rule.formula = "=TRUE";
    format.custom.format.fill.color = "#F4B8A8";
    return format;
  };
  const [theirs, ours] = [add(), add()];
  theirs.load("priority");
  ours.load("priority");
  await context.sync();
  const priorities = [ours.priority, theirs.priority].join(", ");
  ours.delete();
  fill.load("color");
  left.load("items/id");
  await context.sync();
  const { length } = left.items;
  return [
    seen(priorities === "0, 1", priorities),
    seen(fill.color === FILL && length === 1, `${fill.color}, ${length}`),
  ];
}

/** A sheet of ours is written twice; what points at it from another sheet stays. */
function afterRewriting({ run, workbook }: Trying): Promise<ReportSeen[]> {
  return inScratch(run, (outer, own) =>
    inScratch(run, async (context, elsewhere) => {
      const sheet = await makeOwn(outer, own);
      const content = (rows: OwnSheet["rows"]): OwnSheet => ({ sheet, headers: ["Row", "Gaps"], rows });
      await workbook.writeOwnSheet(content([[1, 2]]));
      const cell = elsewhere.getRange("A1");
      const formula = `='${sheet}'!B2`;
      cell.formulas = [[formula]];
      await context.sync();
      await workbook.writeOwnSheet(
        content([
          [1, 3],
          [2, 4],
        ]),
      );
      cell.load("formulas");
      await context.sync();
      const shows = String(cell.formulas[0][0]);
      return [seen(shows === formula, shows.replace(sheet, "…"))];
    }),
  );
}

/** Lets a scratch sheet be written as one of ours. */
async function makeOwn(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<string> {
  sheet.names.add(OWN_SHEET_NAME, "=TRUE").visible = false;
  sheet.load("name");
  await context.sync();
  return sheet.name;
}

/** 1 and 3 of side a, 2 and 4 of side b: 4, 6, together 10. */
async function inPivot(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<ReportSeen[]> {
  const pivot = sheet.pivotTables.add(
    `Cordonbook ${crypto.randomUUID().slice(0, 8)}`,
    countsTable(sheet),
    sheet.getRange("E1"),
  );
  pivot.rowHierarchies.add(pivot.hierarchies.getItem("Side"));
  pivot.dataHierarchies.add(pivot.hierarchies.getItem("Count")).summarizeBy = "Sum";
  await context.sync();
  const body = pivot.layout.getDataBodyRange();
  body.load("values");
  await context.sync();
  const shows = body.values.flat().join(", ");
  return [seen(shows === "4, 6, 10", shows)];
}

function withChart({ run, workbook }: Trying): Promise<ReportSeen[]> {
  return inScratch(run, async (context, own) => {
    const sheet = await makeOwn(context, own);
    const headers = ["Stage", "Low", "To likely", "To high"];
    const content: OwnSheet = {
      sheet,
      headers,
      rows: [
        ["Budbreak", 1, 2, 3],
        ["Harvest", 2, 3, 4],
      ],
      charts: [
        { kind: "range", title: "-", axis: "-", labels: "Stage", parts: ["Low", "To likely", "To high"] },
      ],
    };
    await workbook.writeOwnSheet(content);
    await workbook.writeOwnSheet(content);
    own.charts.load("items/name,items/series/items/name");
    await context.sync();
    const shows = own.charts.items.map(({ series }) => series.items.length).join(", ");
    return [seen(shows === "3", shows)];
  });
}
