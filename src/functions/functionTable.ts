import { evaluateFormula } from "./evaluateFormula";
import { FUNCTIONS, NAMESPACE } from "./registry";

/**
 * The README's table of functions: a row each with its parameters, one worked formula and what it gives.
 *
 * @example
 * functionTable().split("\n").length === FUNCTIONS.length + 2 // true
 */
export function functionTable(): string {
  const rows = FUNCTIONS.map(({ id, parameters, texts, examples }) => {
    const names = parameters.map((each) => (each.optional ? `[${each.id}]` : each.id));
    const answer = firstSentence(texts.description.en);
    const { formula, source } = examples[0];
    return `| ${NAMESPACE}.${id}(${names.join(", ")}) | ${answer} | \`${formula}\` | ${shown(formula)} | ${source.work} |`;
  });
  return [
    "| function | what it answers | worked example | gives | source of the value |",
    "|---|---|---|---|---|",
    ...rows,
  ].join("\n");
}

/** Lines of the README between which the table of functions stands. */
export const TABLE_BEGINS = "<!-- functions: written by npm run functions:write -->";
export const TABLE_ENDS = "<!-- end of functions -->";

/** A README with this version's table of functions between its markers; without markers the table comes last. */
export function withFunctionTable(readme: string): string {
  const table = `${TABLE_BEGINS}\n\n${functionTable()}\n\n${TABLE_ENDS}`;
  const begins = readme.indexOf(TABLE_BEGINS);
  if (begins < 0) return `${readme.trimEnd()}\n\n## Functions\n\n${table}\n`;
  return readme.slice(0, begins) + table + readme.slice(readme.indexOf(TABLE_ENDS) + TABLE_ENDS.length);
}

const firstSentence = (text: string) => /^.*?[.;:](?= |$)/.exec(text)![0].replace(/[;:]$/, ".");

/** Cells side by side by commas, rows by semicolons, numbers to six digits. */
function shown(formula: string): string {
  const outcome = evaluateFormula(formula);
  if ("error" in outcome) throw new Error(`${formula} gives ${outcome.error} ${outcome.sentence}`);
  return outcome.values
    .map((row) =>
      row.map((cell) => (typeof cell === "number" ? Number(cell.toPrecision(6)) : cell)).join(", "),
    )
    .join("; ");
}
