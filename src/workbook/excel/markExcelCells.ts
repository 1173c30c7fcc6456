import { grouped } from "../../domain/grouped";
import { cellName } from "../address";
import { WorkbookProblem, type CellMark } from "../surveyWorkbook";
import { worstMarks } from "../worstMarks";

/** Excel takes 8192 characters in one address; far less keeps a refused one cheap. */
const LONGEST_ADDRESS = 2_000;

/** Fill and letters of each severity: dark on light, at least 4.5:1, different also in grey. */
const COLORS: Readonly<Record<CellMark["severity"], { fill: string; font: string }>> = {
  wrong: { fill: "#F4B8A8", font: "#5A1000" },
  ask: { fill: "#FFE699", font: "#3F3000" },
  note: { fill: "#D6E4F0", font: "#10304A" },
};

/**
 * Every mark is a conditional format of ours that is always true: the cell's own fill, letters, note and the
 * person's conditional formats stay what they are and show again when the mark is taken off. The formula says what
 * it is, so that marks are recognised in any later session, moved by inserted rows or copied by hand.
 */
function formulaOf(severity: CellMark["severity"]): string {
  return `=N("Cordonbook ${severity}")=0`;
}

const OURS = /^=N\("Cordonbook (wrong|ask|note)"\)=0$/;

/**
 * Replaces all marks of the add-in by these. New ones come first, old ones go last; when Excel refuses in between,
 * the marks are what they were.
 *
 * @throws WorkbookProblem "noSheet", "protectedSheet"
 */
export async function markExcelCells(
  context: Excel.RequestContext,
  marks: readonly CellMark[],
): Promise<void> {
  const sheets = await sheetsWithMarks(context);
  const wanted = addressesOf(marks);
  for (const name of wanted.keys())
    if (!sheets.has(name)) throw new WorkbookProblem("noSheet", { sheet: name });
  for (const [name, sheet] of sheets)
    if (sheet.locked && (wanted.has(name) || sheet.marks.length > 0))
      throw new WorkbookProblem("protectedSheet", { sheet: sheet.worksheet.name });
  try {
    for (const [name, addresses] of wanted)
      for (const { severity, address } of addresses) addMark(sheets.get(name)!.worksheet, severity, address);
    await context.sync();
    for (const sheet of sheets.values()) for (const mark of sheet.marks) mark.format.delete();
    await context.sync();
  } catch (error) {
    await putMarksBack(context, sheets, error);
    throw error;
  }
}

interface MarkedSheet {
  readonly worksheet: Excel.Worksheet;
  readonly locked: boolean;
  /** Formats without a rule: what a refused batch leaves of a mark. */
  readonly unfinished: { format: Excel.ConditionalFormat; id: string }[];
  readonly marks: {
    format: Excel.ConditionalFormat;
    id: string;
    severity: CellMark["severity"];
    address: string;
  }[];
}

/** Every sheet by its name in lower case, with the marks of ours that are on it. */
async function sheetsWithMarks(context: Excel.RequestContext): Promise<Map<string, MarkedSheet>> {
  const { worksheets } = context.workbook;
  worksheets.load("items/id,items/name");
  await context.sync();
  const formats = worksheets.items.map((worksheet) => {
    const all = worksheet.getRange().conditionalFormats;
    all.load("items/id,items/type,items/customOrNullObject/rule/formula");
    worksheet.protection.load("protected");
    return { worksheet, all };
  });
  await context.sync();
  const ours = formats.map(({ worksheet, all }) => {
    const custom = all.items.filter((format) => format.type === "Custom");
    const ruleOf = (format: Excel.ConditionalFormat) => format.customOrNullObject.rule.formula;
    return {
      worksheet,
      unfinished: custom.filter((format) => !ruleOf(format)).map((format) => ({ format, id: format.id })),
      marks: custom.flatMap((format) => {
        const severity = OURS.exec(ruleOf(format))?.[1] as CellMark["severity"] | undefined;
        if (!severity) return [];
        const ranges = format.getRanges();
        ranges.load("address");
        return [{ format, id: format.id, severity, ranges }];
      }),
    };
  });
  await context.sync();
  return new Map(
    ours.map(({ worksheet, unfinished, marks }) => [
      worksheet.name.toLowerCase(),
      {
        worksheet,
        locked: worksheet.protection.protected,
        unfinished,
        marks: marks.map(({ ranges, ...mark }) => ({ ...mark, address: withoutSheet(ranges.address) })),
      },
    ]),
  );
}

function withoutSheet(address: string): string {
  return address
    .split(/,\s*(?=(?:[^']*'[^']*')*[^']*$)/)
    .map((part) => part.slice(part.lastIndexOf("!") + 1))
    .join(",");
}

function addMark(worksheet: Excel.Worksheet, severity: CellMark["severity"], address: string): void {
  const mark = worksheet.getRanges(address).conditionalFormats.add("Custom");
  mark.custom.rule.formula = formulaOf(severity);
  mark.custom.format.fill.color = COLORS[severity].fill;
  mark.custom.format.font.color = COLORS[severity].font;
  mark.stopIfTrue = false;
}

/** The cells of each sheet and severity as addresses, cells one below the other joined; a cell's worst mark counts. */
function addressesOf(
  marks: readonly CellMark[],
): Map<string, { severity: CellMark["severity"]; address: string }[]> {
  const groups = grouped(worstMarks(marks), ({ sheet, severity }) => `${sheet.toLowerCase()}!${severity}`);
  const bySheet = new Map<string, { severity: CellMark["severity"]; address: string }[]>();
  for (const group of groups.values()) {
    const [{ sheet, severity }] = group;
    const list = bySheet.get(sheet.toLowerCase()) ?? [];
    for (const address of joined(group)) list.push({ severity, address });
    bySheet.set(sheet.toLowerCase(), list);
  }
  return bySheet;
}

function joined(cells: readonly CellMark[]): string[] {
  const sorted = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: { column: number; first: number; last: number }[] = [];
  for (const { row, column } of sorted) {
    const run = runs.at(-1);
    if (run?.column === column && run.last + 1 === row) run.last = row;
    else runs.push({ column, first: row, last: row });
  }
  const addresses: string[] = [];
  for (const { column, first, last } of runs) {
    const part = cellName(first, column) + (last > first ? `:${cellName(last, column)}` : "");
    const current = addresses.at(-1);
    if (current !== undefined && current.length + part.length < LONGEST_ADDRESS)
      addresses[addresses.length - 1] = `${current},${part}`;
    else addresses.push(part);
  }
  return addresses;
}

async function putMarksBack(
  context: Excel.RequestContext,
  before: Map<string, MarkedSheet>,
  cause: unknown,
): Promise<void> {
  try {
    const now = await sheetsWithMarks(context);
    for (const [name, sheet] of now) {
      const former = before.get(name)?.marks ?? [];
      const unfinishedBefore = new Set(before.get(name)?.unfinished.map(({ id }) => id));
      for (const { format, id } of sheet.unfinished) if (!unfinishedBefore.has(id)) format.delete();
      const formerIds = new Set(former.map((mark) => mark.id));
      const ids = new Set(sheet.marks.map((mark) => mark.id));
      for (const mark of sheet.marks) if (!formerIds.has(mark.id)) mark.format.delete();
      for (const mark of former) if (!ids.has(mark.id)) addMark(sheet.worksheet, mark.severity, mark.address);
    }
    await context.sync();
  } catch {
    throw new WorkbookProblem("marksHalfSet", {}, { cause });
  }
}
