import type { Cell, CellStyle, WriteSheet } from "hucre";
import { callFunction, isRefused, type ResultCell } from "../../src/functions/callFunction";
import type { RawArgument } from "../../src/functions/readArgument";
import { functionNamed } from "../../src/functions/registry";
import { cellName, columnLetters } from "../../src/survey/sheets/cellName";
import type { SheetId } from "../../src/survey/sheets/column";
import { settingOf, type SettingId } from "../../src/survey/settings/settings";
import { SHEETS } from "../../src/survey/sheets/sheets";
import { storedFormula } from "../../src/workbook/storedFormula";
import type { Farm, FarmRow } from "./farm";
import { settingName } from "./settingsSheet";
import { headerWithUnit, type SurveySheetOptions } from "./surveySheet";

/** An argument of a formula: how it is written, and the value that stands there. */
interface Argument {
  readonly text: string;
  readonly value: RawArgument;
}

/** A formula with the values that it comes to, row by row. */
interface Formula {
  readonly text: string;
  readonly values: readonly (readonly ResultCell[])[];
}

interface FigureColumn {
  readonly header: string;
  readonly format: string;
  /** Left out for a column into which the formula before it spills. */
  readonly formula?: (figures: BlockFigures) => Formula;
}

const HEADER_STYLE: CellStyle = { font: { bold: true }, alignment: { wrapText: true, vertical: "center" } };
const WIDTHS = { first: 18, rest: 12 };
/** Points for three lines. */
const HEADER_HEIGHT = 48;

const COLUMNS: readonly FigureColumn[] = [
  { header: "Block", format: "General", formula: (of) => ({ text: "", values: [[String(of.row.block)]] }) },
  {
    header: "Vines an acre",
    format: "0.0",
    formula: (of) => call("VINEDENSITY", of.cell("rowSpacing"), of.cell("vineSpacing"), US),
  },
  {
    header: "Mean prunings (lb)",
    format: "0.00",
    formula: (of) => of.mean("vines", "prunings"),
  },
  {
    header: "Nodes a vine",
    format: "0.0",
    formula: (of) =>
      of.row.nodeRule === "by length"
        ? call("NODESBYLENGTH", of.cell("vineSpacing"), of.setting("nodesByLength"), US)
        : call(
            "NODEBUDGET",
            of.figure("Mean prunings (lb)"),
            of.cell("nodeRule"),
            US,
            of.setting("leastNodesAVine"),
            of.setting("mostNodesAVine"),
          ),
  },
  { header: "Buds cut", format: "0", formula: (of) => of.sum("budCuts", "nodesCut") },
  {
    header: "Primaries dead",
    format: "0",
    formula: (of) => of.difference("Buds cut", "budCuts", "primariesAlive"),
  },
  {
    header: "Share dead",
    format: "0.0%",
    formula: (of) =>
      call("BUDINJURY", of.figure("Primaries dead"), of.figure("Buds cut"), of.setting("confidenceOfRanges")),
  },
  { header: "Share dead, low", format: "0.0%" },
  { header: "Share dead, high", format: "0.0%" },
  {
    header: "Nodes after injury",
    format: "0.0",
    formula: (of) =>
      call("NODESAFTERINJURY", of.figure("Nodes a vine"), of.figure("Share dead"), of.cell("injuryRule")),
  },
  { header: "Share missing", format: "0.0%", formula: (of) => of.shareMissing() },
  {
    header: "Shoots a vine",
    format: "0.0",
    formula: (of) =>
      call(
        "SHOOTS",
        of.divided("Nodes after injury", "nodesASpur"),
        of.setting("nodesASpur"),
        of.cell("budbreak"),
      ),
  },
  {
    header: "Clusters a vine",
    format: "0.0",
    formula: (of) => call("CLUSTERS", of.figure("Shoots a vine"), of.cell("clustersPerShoot")),
  },
  {
    header: "Crop a vine (lb)",
    format: "0.0",
    formula: (of) => call("VINECROP", of.figure("Clusters a vine"), of.cell("clusterWeight"), US),
  },
  {
    header: "Crop (tons/acre)",
    format: "0.00",
    formula: (of) =>
      call(
        "BLOCKCROP",
        of.figure("Crop a vine (lb)"),
        of.figure("Vines an acre"),
        of.figure("Share missing"),
        US,
      ),
  },
  {
    header: "Hours",
    format: "0.0",
    formula: (of) =>
      call(
        "PRUNINGHOURS",
        of.cell("vines"),
        of.setting("minutesAVinePruning"),
        of.setting("crew"),
        of.setting("hoursADay"),
      ),
  },
  { header: "Crew days", format: "0.0" },
];

const US: Argument = { text: '"US"', value: "US" };

/**
 * The Figures sheet: for each block the chain from prunings to crop, and the gaps row by row, as formulas in the form
 * that a workbook stores, each with the value that our own functions give. Three formulas spill; they stand outside
 * tables, because a table takes no spilling formula.
 */
export function figuresSheet(farm: Farm, options: SurveySheetOptions): WriteSheet {
  const cells: NonNullable<WriteSheet["cells"]> = new Map();
  COLUMNS.forEach(({ header }, column) => cells.set(`0,${column}`, { value: header, style: HEADER_STYLE }));
  farm.blocks.forEach((block, index) => {
    const figures = new BlockFigures(farm, block, index);
    COLUMNS.forEach(({ header, formula, format }, column) => {
      if (!formula) return;
      const made = formula(figures);
      figures.keep(header, made.values[0]);
      place(cells, index + 1, column, made, (offset) => ({
        numFmt: COLUMNS[column + offset]?.format ?? format,
      }));
    });
  });
  const gapsAt = farm.blocks.length + 3;
  const gaps = gapsFormula(farm);
  cells.set(`${gapsAt - 1},0`, {
    value:
      "Gaps row by row, on every candidate of the Cordons sheet; page Gaps counts on the cordons that stay unless told otherwise",
    style: HEADER_STYLE,
  });
  place(cells, gapsAt, 0, gaps, (offset) => (offset === 7 ? { numFmt: "0.0%" } : {}));
  return {
    name: "Figures",
    rows: Array.from({ length: gapsAt + gaps.values.length }, () => []),
    cells,
    columns: COLUMNS.map((_, index) => ({ width: index === 0 ? WIDTHS.first : WIDTHS.rest })),
    rowDefs: new Map([[0, { height: HEADER_HEIGHT }]]),
    freezePane: { rows: 1, columns: 1 },
    pageSetup: {
      paperSize: "letter",
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: "$1:$1",
    },
    headerFooter: { oddHeader: `&L${options.farm}&R&A`, oddFooter: "&CPage &P of &N" },
  };
}

/** The references and native formulas of one block's row. */
class BlockFigures {
  private readonly known = new Map<string, ResultCell>();

  constructor(
    private readonly farm: Farm,
    readonly row: FarmRow,
    private readonly index: number,
  ) {}

  keep(header: string, values: readonly ResultCell[]): void {
    const column = COLUMNS.findIndex((candidate) => candidate.header === header);
    values.forEach((value, offset) => this.known.set(COLUMNS[column + offset].header, value));
  }

  cell(columnId: string): Argument {
    return {
      text: `Blocks!${letterOf("blocks", columnId)}${this.index + 2}`,
      value: this.row[columnId],
    };
  }

  setting(id: SettingId): Argument {
    const name = settingOf(id).name.en;
    const row = this.farm.settings.find((candidate) => candidate.setting === name);
    if (!row) throw new Error(`There is no setting ${name}.`);
    return { text: settingName(name), value: row.value };
  }

  figure(header: string): Argument {
    const value = this.known.get(header);
    return { text: this.address(header), value: typeof value === "object" ? { error: value.error } : value };
  }

  divided(header: string, settingId: SettingId): Argument {
    const above = this.figure(header);
    const below = this.setting(settingId);
    const value = typeof above.value === "number" ? above.value / Number(below.value) : above.value;
    return { text: `${above.text}/${below.text}`, value };
  }

  mean(sheet: SheetId, columnId: string): Formula {
    const numbers = this.numbers(sheet, columnId);
    return {
      text: `AVERAGEIFS(${range(this.farm, sheet, columnId)},${range(this.farm, sheet, "block")},${this.address("Block")})`,
      values: [[numbers.reduce((sum, value) => sum + value, 0) / numbers.length]],
    };
  }

  sum(sheet: SheetId, columnId: string): Formula {
    return {
      text: this.sumText(sheet, columnId),
      values: [[this.numbers(sheet, columnId).reduce((sum, value) => sum + value, 0)]],
    };
  }

  difference(header: string, sheet: SheetId, columnId: string): Formula {
    const [[sum]] = this.sum(sheet, columnId).values;
    return {
      text: `${this.address(header)}-${this.sumText(sheet, columnId)}`,
      values: [[Number(this.known.get(header)) - Number(sum)]],
    };
  }

  shareMissing(): Formula {
    const missing = this.farm.vines.filter(
      (vine) => vine.block === this.row.block && vine.status === "missing",
    );
    const status = range(this.farm, "vines", "status");
    const vines = this.cell("vines");
    return {
      text: `COUNTIFS(${range(this.farm, "vines", "block")},${this.address("Block")},${status},"missing")/${vines.text}`,
      values: [[missing.length / Number(vines.value)]],
    };
  }

  private address(header: string): string {
    return cellName(this.index + 2, COLUMNS.findIndex((column) => column.header === header) + 1);
  }

  private numbers(sheet: SheetId, columnId: string): number[] {
    return this.farm[sheet]
      .filter((row) => row.block === this.row.block)
      .map((row) => row[columnId])
      .filter((value): value is number => typeof value === "number");
  }

  private sumText(sheet: SheetId, columnId: string): string {
    return `SUMIFS(${range(this.farm, sheet, columnId)},${range(this.farm, sheet, "block")},${this.address("Block")})`;
  }
}

/** GAPSBYROW over the whole Cordons sheet, its headers included. */
function gapsFormula(farm: Farm): Formula {
  const { columns, name } = SHEETS.cordons;
  const last = columnLetters(columns.length);
  return call("GAPSBYROW", {
    text: `${name.en}!$A$1:$${last}$${farm.cordons.length + 1}`,
    value: [
      columns.map((column) => headerWithUnit(column)),
      ...farm.cordons.map((row) => columns.map((column) => row[column.id] ?? null)),
    ],
  });
}

function call(name: string, ...given: Argument[]): Formula {
  const called = functionNamed(name);
  if (!called) throw new Error(`There is no function ${name}.`);
  const outcome = callFunction(
    called,
    given.map(({ value }) => value),
  );
  return {
    text: storedFormula(`=CORDON.${name}(${given.map(({ text }) => text).join(",")})`),
    values: isRefused(outcome) ? [[outcome]] : outcome.values,
  };
}

/** Writes a formula's cell and the cells into which it spills. */
function place(
  cells: NonNullable<WriteSheet["cells"]>,
  row: number,
  column: number,
  { text, values }: Formula,
  styleOf: (offset: number) => CellStyle,
): void {
  const width = values[0].length;
  const spills = values.length > 1 || width > 1;
  const ref = `${cellName(row + 1, column + 1)}:${cellName(row + values.length, column + width)}`;
  values.forEach((line, i) =>
    line.forEach((value, j) => {
      const shown = typeof value === "object" ? value.error : value;
      const cell: Partial<Cell> = { value: shown, style: styleOf(j) };
      if (i === 0 && j === 0 && text !== "")
        Object.assign(cell, {
          formula: text,
          formulaResult: shown,
          ...(spills ? { formulaType: "array", formulaRef: ref, formulaDynamic: true } : {}),
        });
      cells.set(`${row + i},${column + j}`, cell);
    }),
  );
}

function letterOf(sheet: SheetId, columnId: string): string {
  return columnLetters(SHEETS[sheet].columns.findIndex((column) => column.id === columnId) + 1);
}

function range(farm: Farm, sheet: SheetId, columnId: string): string {
  const letter = letterOf(sheet, columnId);
  const name = SHEETS[sheet].name.en;
  return `${/\s/.test(name) ? `'${name}'` : name}!$${letter}$2:$${letter}$${farm[sheet].length + 1}`;
}
