import { WorkbookProblem } from "../surveyWorkbook";
import type { ReadLimits } from "./readLimits";
import { isYes } from "./sheetRows";
import { relatedPart, relationships, type Relationship } from "./relationships";
import type { WorkbookPackage } from "./workbookPackage";
import { attribute, parseXml } from "./xmlParser";

/** A sheet as the workbook lists it. */
export interface OutlineSheet {
  readonly name: string;
  readonly part: string;
  /** "worksheet", or another kind that has no cells: "chartsheet". */
  readonly kind: string;
  readonly hidden: boolean;
}

/** A name defined in the workbook. */
export interface DefinedName {
  readonly name: string;
  readonly formula: string;
  /** The one sheet that the name belongs to; undefined for a name of the whole workbook. */
  readonly sheet: string | undefined;
  readonly hidden: boolean;
}

/** A table of a sheet. */
export interface OutlineTable {
  readonly id: number;
  readonly name: string;
  readonly ref: string;
  readonly part: string;
  /** True where a row of totals closes it. */
  readonly hasTotals: boolean;
  /** Formulas that fill whole columns, as the file stores them, by column from 0. */
  readonly columnFormulas: ReadonlyMap<number, string>;
}

/** What a workbook says of itself before any cell is read. */
export interface WorkbookOutline {
  readonly workbookPart: string;
  readonly sheets: readonly OutlineSheet[];
  readonly names: readonly DefinedName[];
  /** True where day 0 is 1 January 1904. */
  readonly startsIn1904: boolean;
  readonly sharedStringsPart: string | undefined;
  readonly stylesPart: string | undefined;
}

/**
 * Reads a workbook's outline by following its relations; where its parts stand is never taken for granted.
 *
 * @throws WorkbookProblem "notAWorkbook" for a package of another kind, "binaryWorkbook" for the binary format.
 */
export async function workbookOutline(source: WorkbookPackage, limits: ReadLimits): Promise<WorkbookOutline> {
  const { file } = source;
  const root = [...(await relationships(source, "", limits)).values()].find(
    ({ kind }) => kind === "officeDocument",
  );
  if (!root) throw new WorkbookProblem("notAWorkbook", { file });
  const workbookPart = relatedPart(source, root);
  if (workbookPart.endsWith(".bin")) throw new WorkbookProblem("binaryWorkbook", { file });
  const relations = await relationships(source, workbookPart, limits);
  const listed = await workbookXml(source, workbookPart, limits);
  if (!listed.isWorkbook) throw new WorkbookProblem("notAWorkbook", { file });
  const sheets = listed.sheets.map(({ name, relationId, hidden }): OutlineSheet => {
    const relation = relations.get(relationId);
    if (!relation) throw new WorkbookProblem("missingPart", { file, part: `${workbookPart} ${relationId}` });
    return { name, hidden, kind: relation.kind, part: relatedPart(source, relation) };
  });
  const seen = new Set<string>();
  const parts = new Set<string>();
  for (const { name, part } of sheets) {
    if (parts.has(part)) throw new WorkbookProblem("sheetsOnOnePart", { file, part, sheet: name });
    parts.add(part);
    if (seen.has(name.toLowerCase())) throw new WorkbookProblem("sameSheetTwice", { file, sheet: name });
    seen.add(name.toLowerCase());
  }
  const partOf = (kind: string) => {
    const relation = [...relations.values()].find((candidate) => candidate.kind === kind);
    return relation && relatedPart(source, relation);
  };
  return {
    workbookPart,
    sheets,
    names: listed.names.map(({ sheetIndex, ...name }) => ({
      ...name,
      sheet: sheetIndex === undefined ? undefined : sheets[sheetIndex]?.name,
    })),
    startsIn1904: listed.startsIn1904,
    sharedStringsPart: partOf("sharedStrings"),
    stylesPart: partOf("styles"),
  };
}

/** The tables of a sheet. */
export async function sheetTables(
  source: WorkbookPackage,
  sheet: OutlineSheet,
  limits: ReadLimits,
): Promise<OutlineTable[]> {
  const isTable = (relation: Relationship) => relation.kind === "table";
  const tables: OutlineTable[] = [];
  for (const relation of [...(await relationships(source, sheet.part, limits)).values()].filter(isTable)) {
    const part = relatedPart(source, relation);
    const columnFormulas = new Map<number, string>();
    let column = -1;
    let inFormula = false;
    await parseXml(
      source.file,
      part,
      source.chunks(part),
      {
        open: (name, attributes) => {
          if (name === "table")
            tables.push({
              id: Number(attributes.id ?? 0),
              name: attributes.displayName ?? attributes.name ?? "",
              ref: attributes.ref ?? "",
              part,
              hasTotals: Number(attributes.totalsRowCount ?? 0) > 0,
              columnFormulas,
            });
          else if (name === "tableColumn") column++;
          inFormula = name === "calculatedColumnFormula";
        },
        text: (text) => {
          if (inFormula) columnFormulas.set(column, (columnFormulas.get(column) ?? "") + text);
        },
        close: () => {
          inFormula = false;
        },
      },
      limits,
    );
  }
  return tables;
}

interface ListedSheet {
  readonly name: string;
  readonly relationId: string;
  readonly hidden: boolean;
}

interface ListedName {
  readonly name: string;
  formula: string;
  readonly sheetIndex: number | undefined;
  readonly hidden: boolean;
}

async function workbookXml(source: WorkbookPackage, part: string, limits: ReadLimits) {
  const sheets: ListedSheet[] = [];
  const names: ListedName[] = [];
  let startsIn1904 = false;
  let isWorkbook = false;
  let inName = false;
  let depth = 0;
  await parseXml(
    source.file,
    part,
    source.chunks(part),
    {
      open: (name, attributes) => {
        if (depth++ === 0) isWorkbook = name === "workbook";
        if (name === "workbookPr") startsIn1904 = isYes(attributes.date1904);
        else if (name === "sheet")
          sheets.push({
            name: attributes.name ?? "",
            relationId: attribute(attributes, "id") ?? "",
            hidden: attributes.state === "hidden" || attributes.state === "veryHidden",
          });
        else if (name === "definedName") {
          inName = true;
          if (names.length >= limits.names)
            throw new WorkbookProblem("tooManyOf", { file: source.file, part, most: limits.names });
          names.push({
            name: attributes.name ?? "",
            formula: "",
            sheetIndex: attributes.localSheetId === undefined ? undefined : Number(attributes.localSheetId),
            hidden: isYes(attributes.hidden),
          });
        }
      },
      text: (text) => {
        if (!inName) return;
        const name = names[names.length - 1];
        name.formula += text;
        if (name.formula.length > limits.cellCharacters)
          throw new WorkbookProblem("tooMuchText", { file: source.file, part, most: limits.cellCharacters });
      },
      close: (name) => {
        depth--;
        if (name === "definedName") inName = false;
      },
    },
    limits,
  );
  return { sheets, names, startsIn1904, isWorkbook };
}
