import { FUNCTIONS, NAMESPACE } from "./registry";

/**
 * The README's table of functions: a row each with its parameters and what it answers; the rest is in helpPage.
 *
 * @example
 * functionTable().split("\n").length === FUNCTIONS.length + 2 // true
 */
export function functionTable(): string {
  const rows = FUNCTIONS.map(({ id, parameters, texts }) => {
    const names = parameters.map((each) => (each.optional ? `[${each.id}]` : each.id));
    return `| ${NAMESPACE}.${id}(${names.join(", ")}) | ${firstSentence(texts.description.en)} |`;
  });
  return ["| function | what it answers |", "|---|---|", ...rows].join("\n");
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
