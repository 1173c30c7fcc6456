import { FLAG_PREFIX } from "../../../src/workbook/flagPrefix";
import { associateFunctions, hearCalls } from "../../../src/workbook/excel/associateFunctions";
import type { OfficeDocument } from "../../../src/workbook/excel/excelFile";
import { excelReport, type ReportedExcel, type ReportingPage } from "../../../src/workbook/excel/excelReport";
import { REPORT_PAGES, type ReportId, type ReportRow } from "../../../src/workbook/excel/reportPages";
import { ExcelWorkbook } from "../../../src/workbook/excel/excelWorkbook";
import type { ExcelHost } from "../office/excelHost";
import { EXCEL_PROFILES, type ExcelProfile } from "../office/excelProfiles";
import { excelOn, hostWith } from "../office/excelWorkbookOn";
import { functionsRuntime } from "../office/functionsRuntime";
import type { HostSheet, HostValue } from "../office/hostBook";

jest.setTimeout(60_000);

const ME = "me";
const bound = new Map<string, (...args: unknown[]) => unknown>();
const { customFunctions } = functionsRuntime();
associateFunctions(
  { ...customFunctions, associate: (id: string, run: never) => void bound.set(id, run) } as never,
  () => "en",
);

/** An Excel by its profile, with what a single test wants otherwise. */
interface Copy {
  readonly profile: ExcelProfile;
  readonly host: ExcelHost;
  readonly excel: ReportedExcel;
  readonly page: ReportingPage;
}

/** How a test makes one thing of a copy other than documented. */
interface Odd {
  readonly profile?: Partial<ExcelProfile>;
  /** As what a blank weight and one with an error reach the function; "uncalled" calls it not at all. */
  readonly weights?: { readonly blank?: unknown; readonly error?: unknown } | "uncalled";
  readonly page?: Partial<ReportingPage>;
  readonly host?: (host: ExcelHost) => void;
  readonly file?: readonly number[];
  readonly spills?: false;
  /** Every result of a function is one error. */
  readonly oneError?: true;
  readonly overwrites?: true;
}

const ZIP = [0x50, 0x4b, 3, 4];

function open(base: ExcelProfile, odd: Odd = {}): Copy {
  const profile: ExcelProfile = { ...base, ...odd.profile };
  const host = hostWith({ Cordons: [["Block"], ["North Bench"]] }, profile);
  host.keepsCells = true;
  host.book.calculate = (formula) => (formula === "=NA()" ? "#N/A" : "#BUSY!");
  host.book.onFormula = (sheet, row, column, formula) => {
    if (/^=CORDON/.test(formula)) calculate(sheet, row, column, profile, odd);
  };
  const { run, supports } = excelOn(host, ME);
  odd.host?.(host);
  return {
    profile,
    host,
    excel: {
      run,
      supports,
      workbook: new ExcelWorkbook(run, supports),
      diagnostics: profile.diagnostics,
      document: documentOf(odd.file ?? ZIP),
      hear: hearCalls,
    },
    page: {
      print: async () => profile.prints,
      ask: async () => {
        host.undo(ME);
        return true;
      },
      wait: () => new Promise((resolve) => setTimeout(resolve, 2)),
      ...odd.page,
    },
  };
}

/** What Excel does with a formula of ours over A1:A4: it calls the function and lets the result spill where it can. */
function calculate(sheet: HostSheet, row: number, column: number, profile: ExcelProfile, odd: Odd): void {
  const put = (r: number, c: number, value: HostValue) =>
    sheet.put(r, c, {
      ...(r === row && c === column ? { formula: sheet.cell(r, c).formula } : {}),
      value,
      type: typeof value === "number" ? "Double" : String(value).startsWith("#") ? "Error" : "String",
    });
  if (odd.weights === "uncalled") return put(row, column, "#N/A");
  const { blank = profile.blankArgument, error = { type: "CustomFunctionError", code: "#N/A" } } =
    odd.weights ?? {};
  const weights = [0, 1, 2, 3].map((at) => {
    const cell = sheet.cell(at, 0);
    return [cell.type === "Empty" ? blank : cell.type === "Error" ? error : cell.value];
  });
  const values = bound.get("NODEBUDGET")!(weights, "30+10", null, null, null, null, {}) as unknown[][];
  const isBlocked = sheet.cell(row + 1, column).type !== "Empty";
  if (isBlocked && !odd.overwrites) return put(row, column, "#SPILL!");
  if (odd.oneError) return put(row, column, "#VALUE!");
  values.forEach(([value], at) => {
    const error = (value as { code?: string } | null)?.code;
    put(row + at, column, error ?? (value as HostValue));
  });
  if (odd.spills !== false && !isBlocked)
    sheet.spills.push({ sheet, row, column, rows: values.length, columns: 1 });
}

function documentOf(bytes: readonly number[]): OfficeDocument {
  const answer = (value: unknown, callback: unknown) =>
    (callback as (result: unknown) => void)({ status: "succeeded", value });
  const file = {
    size: bytes.length,
    sliceCount: 1,
    getSliceAsync: (_index: number, callback: unknown) =>
      answer({ data: [...bytes], size: bytes.length }, callback),
    closeAsync: () => undefined,
  };
  return {
    getFileAsync: (_type: unknown, _options: unknown, callback?: unknown) => answer(file, callback),
  };
}

async function report({ excel, page }: Copy): Promise<ReportRow[]> {
  const rows: ReportRow[] = [];
  for await (const row of excelReport(excel, page)) rows.push(row);
  return rows;
}

type Outcomes = Record<ReportId, ReportRow["outcome"]>;
const outcomesOf = (rows: readonly ReportRow[]) =>
  Object.fromEntries(rows.map(({ id, outcome }) => [id, outcome])) as Outcomes;

/**
 * Everything as documented, but that nobody was typing, and that keeping a fact clears the list of Undo: not on the
 * page of the documentation, and reported by people, so that the stand-in does it.
 */
const AS_DOCUMENTED: Outcomes = {
  ...(Object.fromEntries(Object.keys(REPORT_PAGES).map((id) => [id, "same"])) as Outcomes),
  editing: "notTried",
  undoFact: "different",
};

const standing = ({ host }: Copy) => JSON.stringify([host.book.snapshot(), [...host.book.settings]]);

describe.each(Object.values(EXCEL_PROFILES))("$name", (profile) => {
  test("every line says what the profile says, and nothing is left behind", async () => {
    const copy = open(profile);
    const before = standing(copy);
    const rows = await report(copy);
    await copy.host.quiet();
    expect(outcomesOf(rows)).toEqual(AS_DOCUMENTED);
    expect(rows.map(({ id }) => id)).toEqual(Object.keys(REPORT_PAGES));
    const shows = Object.fromEntries(rows.map((row) => [row.id, row.shows]));
    expect(shows).toMatchObject({
      build: profile.diagnostics.version,
      platform: profile.diagnostics.platform,
      blank: String(profile.blankArgument),
      error: "#N/A",
      // 3 lb at 30+10: 30 + 2 x 10 = 50; no weight; a weight that is #N/A; 2 lb: 30 + 10 = 40.
      errorInArray: "50, , #N/A, 40",
      spill: "C1:C4",
      spillBlocked: "#SPILL!",
      filterWrite: "FilteredRangeConflict",
      marks: "0, 1",
      pivot: "4, 6, 10",
      chart: "3",
      file: "4 B, PK",
      print: profile.prints ? "beforeprint" : "",
    });
    expect(shows.sets).toContain(`ExcelApi 1.${profile.excelApi}`);
    expect(rows.find(({ id }) => id === "undo")).toMatchObject(
      profile.excelApi >= 20 ? { shows: "–, –" } : { shows: "1, –", otherwise: true },
    );
    expect(standing(copy)).toBe(before);
    expect(copy.host.registrationsOf(ME)).toBe(0);
    copy.host.close();
  });
});

const onNewSheets = (change: (sheet: HostSheet) => void) => (host: ExcelHost) => {
  const add = host.book.addSheet.bind(host.book);
  host.book.addSheet = (name) => {
    const sheet = add(name);
    change(sheet);
    return sheet;
  };
};
const beforeBatches = (change: (sheet: HostSheet) => void) => (host: ExcelHost) => {
  host.beforeBatch = () => host.book.sheets.forEach(change);
};

/** A departure from the documentation, with the lines that it changes and to what. */
const PLANTED: readonly [string, Odd, Partial<Outcomes>][] = [
  [
    "no number of a build",
    { profile: { diagnostics: { version: "", platform: "PC" } } },
    { build: "different" },
  ],
  [
    "an unknown platform",
    { profile: { diagnostics: { version: "16.0.1", platform: "iOS" } } },
    { platform: "different" },
  ],
  [
    "less than the floor",
    { profile: { ...EXCEL_PROFILES.perpetual2021, excelApi: 13 } },
    { sets: "different" },
  ],
  [
    "a cell being edited, refused with another error",
    { host: (host) => host.refuse({ code: "GeneralException" }) },
    { editing: "different" },
  ],
  ["an Undo that takes nothing back", { page: { ask: async () => true } }, { undo: "different" }],
  [
    "an Undo that a kept fact does not clear",
    {
      host: (host) => {
        const { settings } = host.book;
        const set = settings.set.bind(settings);
        settings.set = (key, value) => {
          host.book.sheets.at(-1)!.put(2, 0, { value: "", type: "Empty" });
          return set(key, value);
        };
      },
    },
    { undoFact: "same" },
  ],
  [
    "a person who does not press Undo",
    { page: { ask: async () => false } },
    { undo: "notTried", undoFact: "notTried" },
  ],
  ["a blank that arrives as 0", { weights: { blank: 0 } }, { blank: "different" }],
  ["a blank that arrives as empty text", { weights: { blank: "" } }, { blank: "different" }],
  [
    "an error that arrives as another",
    { weights: { error: { type: "CustomFunctionError", code: "#VALUE!" } } },
    { error: "different" },
  ],
  [
    "a function that is not called for an error",
    { weights: "uncalled" },
    {
      blank: "different",
      error: "different",
      errorInArray: "different",
      spill: "different",
      spillBlocked: "different",
    },
  ],
  ["one error for a whole array", { oneError: true }, { errorInArray: "different", spill: "different" }],
  ["a block whose cells cannot be asked for", { spills: false }, { spill: "different" }],
  ["a full cell that is overwritten", { overwrites: true }, { spillBlocked: "different" }],
  ["a watch that ends with another", { host: (host) => host.endWatchesTogether(ME) }, { watch: "different" }],
  [
    "text that becomes a formula",
    {
      host: ({ book }) => {
        const typed = book.typed.bind(book);
        book.typed = (value, format) =>
          value === "'=1+1" ? { value: 2, type: "Double", formula: "=1+1" } : typed(value, format);
      },
    },
    { text: "different" },
  ],
  [
    "a table that takes no filter",
    { host: (host) => host.refuse({ name: "Apply", code: "NotImplemented" }) },
    { filterSeen: "different", filterWrite: "different" },
  ],
  [
    "a filter that hides no rows and does not say so",
    {
      host: beforeBatches((sheet) => {
        for (const table of sheet.tables) table.hiddenRows = undefined;
      }),
    },
    { filterWrite: "different" },
  ],
  [
    "a conditional format that is added last",
    {
      host: onNewSheets((sheet) => {
        sheet.conditionalFormats.unshift = (...formats) => sheet.conditionalFormats.push(...formats);
      }),
    },
    { marks: "different" },
  ],
  [
    "a mark that takes the fill with it",
    { host: onNewSheets((sheet) => (sheet.format = () => ({}))) },
    { marksOff: "different" },
  ],
  [
    "a rewritten sheet that breaks formulas",
    {
      host: beforeBatches((sheet) => {
        const cell = sheet.cell(0, 0);
        if (cell.formula?.includes("Cordonbook")) sheet.put(0, 0, { ...cell, formula: "=#REF!B2" });
      }),
    },
    { rewrite: "different" },
  ],
  [
    "a PivotTable that counts instead of adding up",
    {
      host: beforeBatches((sheet) => {
        for (const pivot of sheet.pivots) for (const each of pivot.data) each.summarizeBy = "Count";
      }),
    },
    { pivot: "different" },
  ],
  [
    "a chart that is refused",
    { host: (host) => host.refuse({ name: "SetSolidColor", code: "NotImplemented", times: Infinity }) },
    { chart: "different" },
  ],
  ["a page that does not print", { profile: { prints: false } }, { print: "different" }],
  ["a file that is no workbook", { file: [60, 63] }, { file: "different" }],
  [
    "a workbook whose structure is protected",
    { host: ({ book }) => (book.structureLocked = true) },
    Object.fromEntries(
      "undo,undoFact,blank,error,errorInArray,spill,spillBlocked,watch,text,filterSeen,filterWrite,marks,marksOff,rewrite,pivot,chart"
        .split(",")
        .map((id) => [id, "notTried"]),
    ),
  ],
];

test.each(PLANTED)(
  "%s changes its own lines and no other, and nothing is left behind",
  async (_, odd, changed) => {
    const copy = open(EXCEL_PROFILES.current, odd);
    const before = standing(copy);
    const rows = await report(copy);
    await copy.host.quiet();
    expect(outcomesOf(rows)).toEqual({ ...AS_DOCUMENTED, ...changed });
    copy.host.beforeBatch = undefined;
    expect(standing(copy)).toBe(before);
    copy.host.close();
  },
);

test("every line but those of Undo's clearing turns different by something that is planted", () => {
  const turned = PLANTED.flatMap(([, , changed]) =>
    Object.entries(changed).flatMap(([id, outcome]) => (outcome === "different" ? [id] : [])),
  );
  expect([...new Set(turned)].sort()).toEqual(
    Object.keys(REPORT_PAGES)
      .filter((id) => id !== "undoFact")
      .sort(),
  );
});

test("a Mac that prints after all is told as different", async () => {
  const rows = await report(open(EXCEL_PROFILES.mac, { profile: { prints: true } }));
  expect(rows.find(({ id }) => id === "print")).toMatchObject({ outcome: "different", otherwise: true });
});

test("while a cell is being edited the report waits for it and says how Excel refused", async () => {
  const copy = open(EXCEL_PROFILES.current);
  const leave = copy.host.edit(ME);
  copy.host.beforeBatch = (batch) => {
    if (batch === 1) setTimeout(leave, 5);
  };
  const rows = await report(copy);
  expect(rows.find(({ id }) => id === "editing")).toMatchObject({
    outcome: "same",
    says: "refused",
    shows: "InvalidOperationInCellEditMode",
  });
  expect(outcomesOf(rows)).toEqual({ ...AS_DOCUMENTED, editing: "same" });
});

test("a report that is ended while it asks takes its sheet away, and the cell is selected that was", async () => {
  const copy = open(EXCEL_PROFILES.current, {
    page: { ask: () => Promise.reject(new DOMException("Stopped", "AbortError")) },
  });
  await copy.excel.workbook.selectCell("Cordons", 2, 1);
  const before = standing(copy);
  await expect(report(copy)).rejects.toMatchObject({ name: "AbortError" });
  await copy.host.quiet();
  expect(standing(copy)).toBe(before);
  expect(await copy.excel.workbook.selectedCell()).toEqual({ sheet: "Cordons", row: 2, column: 1 });
});

test("whatever step Excel refuses, the report comes to its end and leaves nothing behind", async () => {
  const whole = open(EXCEL_PROFILES.current);
  await report(whole);
  const steps = whole.host.log.length;
  whole.host.close();
  for (let step = 0; step < steps; step += 29) {
    const copy = open(EXCEL_PROFILES.current);
    const before = standing(copy);
    copy.host.refuse({ after: step, code: "GeneralException" });
    const rows = await report(copy);
    await copy.host.quiet();
    expect(rows).toHaveLength(Object.keys(REPORT_PAGES).length);
    expect(`${step} ${standing(copy)}`).toBe(`${step} ${before}`);
    copy.host.close();
  }
});

test("the fact that the report keeps for a moment is told from those of the workbook", () => {
  expect("Cordonbook.report".startsWith(FLAG_PREFIX)).toBe(true);
});
