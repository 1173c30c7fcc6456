import type { ResultShape } from "./cordonFunction";
import { evaluateFormula, type FormulaCell } from "./evaluateFormula";
import { FUNCTIONS, NAMESPACE } from "./registry";

/**
 * The README's table of functions: a row each with its parameters, one worked formula and what it gives.
 *
 * @example
 * functionTable().split("\n").length === FUNCTIONS.length + 2 // true
 */
export function functionTable(): string {
  const rows = FUNCTIONS.map(({ id, parameters, texts, examples, result }) => {
    const names = parameters.map((each) => (each.optional ? `[${each.id}]` : each.id));
    const answer = firstSentence(texts.description.en);
    const { formula, source } = examples[0];
    return `| ${NAMESPACE}.${id}(${names.join(", ")}) | ${answer} | \`${formula}\` | ${shown({ formula, result })} | ${source.work} |`;
  });
  return [
    "| function | what it answers | worked example | gives | source of the value |",
    "|---|---|---|---|---|",
    ...rows,
  ].join("\n");
}

/** Lines of the README between which the table of functions stands. */
const TABLE_BEGINS = "<!-- functions: written by npm run functions:write -->";
const TABLE_ENDS = "<!-- end of functions -->";

/** A README with this version's table of functions between its markers; without markers the table comes last. */
export function withFunctionTable(readme: string): string {
  const table = `${TABLE_BEGINS}\n\n${functionTable()}\n\n${TABLE_ENDS}`;
  const begins = readme.indexOf(TABLE_BEGINS);
  if (begins < 0) return `${readme.trimEnd()}\n\n## Functions\n\n${table}\n`;
  return readme.slice(0, begins) + table + readme.slice(readme.indexOf(TABLE_ENDS) + TABLE_ENDS.length);
}

const firstSentence = (text: string) => /^.*?[.;:](?= |$)/.exec(text)![0].replace(/[;:]$/, ".");

/** Cells side by side by commas, rows by semicolons, numbers to six digits; of a table only its first row. */
function shown({ formula, result }: { readonly formula: string; readonly result: ResultShape }): string {
  const outcome = evaluateFormula(formula);
  if ("error" in outcome) throw new Error(`${formula} gives ${outcome.error} ${outcome.sentence}`);
  const isTable = result.shape === "table";
  const rows = isTable ? outcome.values.slice(1, 2) : outcome.values;
  const cells = rows
    .map((row) =>
      row
        .map(shownCell)
        .filter((cell) => cell !== "")
        .join(", "),
    )
    .join("; ");
  return isTable && outcome.values.length > 2
    ? `${cells} (first of ${outcome.values.length - 1} rows)`
    : cells;
}

const shownCell = (cell: FormulaCell) => (typeof cell === "number" ? Number(cell.toPrecision(6)) : cell);
