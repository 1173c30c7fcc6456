import { say, type Language, type Text } from "../texts/language";
import { FUNCTIONS_TEXTS } from "../texts/pane";
import { HEADS } from "../texts/heads";
import { functionHelp, shownValues, type FunctionHelp } from "./functionHelp";

/** Where the add-in's own files stand until a build puts the office's address in its place, as in manifest.xml. */
const ADDRESS = "https://localhost:3000/";

/** File of the page that explains every function in one language. */
export const helpFile = (language: Language) =>
  language === "en" ? "functions.html" : `functions.${language}.html`;

/**
 * Where one function is explained.
 *
 * @example
 * helpAddress("SPURFIT", "fr") // "https://localhost:3000/functions.fr.html#SPURFIT"
 */
export const helpAddress = (id: string, language: Language) => `${ADDRESS}${helpFile(language)}#${id}`;

/** Functions that are easier to understand with a cordon before one's eyes. */
const WITH_CORDON: readonly string[] = ["SPURFIT", "GAPSBYROW", "CORDONSCORE", "CHOOSECORDONS"];

/**
 * The page behind "help on this function": for every function its call, what it answers, what each argument may be,
 * worked rows with their source, what is refused, and a drawing where one helps. Written by a build into dist.
 */
export function helpPage(language: Language): string {
  const word = (text: Text) => escaped(say(text, language));
  const help = functionHelp(language);
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${word(FUNCTIONS_TEXTS.title)}</title>
<style>${STYLES}</style>
</head>
<body>
<main>
<h1>${word(FUNCTIONS_TEXTS.title)}</h1>
<nav aria-label="${word(FUNCTIONS_TEXTS.title)}">${help.map(({ id }) => `<a href="#${id}">${id}</a>`).join(" ")}</nav>
${help.map((each) => section(each, language)).join("\n")}
</main>
</body>
</html>
`;
}

function section({ id, call, description, parameters, results, examples }: FunctionHelp, language: Language) {
  const word = (text: Text, facts = {}) => escaped(say(text, language, facts));
  const worked = examples.map(
    ({ formula, gives, source }) =>
      `<p><code>${escaped(formula)}</code> ${word(FUNCTIONS_TEXTS.gives, { value: shownValues(gives, language) })}<br>
<small>${word(FUNCTIONS_TEXTS.source, { work: source.work })}</small></p>`,
  );
  const accepted = parameters.map(
    ({ label, optional, description: about, expected }) =>
      `<dt>${optional ? word(FUNCTIONS_TEXTS.optional, { label }) : escaped(label)}</dt>
<dd>${escaped(about)} <i>${escaped(expected)}</i></dd>`,
  );
  return `<section id="${id}" aria-labelledby="${id}-call">
<h2 id="${id}-call"><code>${escaped(call)}</code></h2>
<p>${escaped(description)}</p>
${WITH_CORDON.includes(id) ? cordon(language) : ""}
${accepted.length === 0 ? "" : `<h3>${word(FUNCTIONS_TEXTS.parameters)}</h3>\n<dl>${accepted.join("\n")}</dl>`}
<h3>${word(FUNCTIONS_TEXTS.results)}</h3>
<p>${escaped(results.join(", "))}</p>
<h3>${word(FUNCTIONS_TEXTS.example)}</h3>
${worked.join("\n")}
${accepted.length === 0 ? "" : `<h3>${word(FUNCTIONS_TEXTS.refusedTitle)}</h3>\n<p>${word(FUNCTIONS_TEXTS.refused)}</p>`}
</section>`;
}

/** A cordon of eight positions, two of them without a spur. */
function cordon(language: Language): string {
  const positions = [1, 1, 1, 0, 0, 1, 1, 1];
  const live = positions.filter((spur) => spur === 1).length;
  const caption = [
    `${HEADS.positions[language]} ${positions.length}`,
    `${HEADS.liveSpurs[language]} ${live}`,
    `${HEADS.longestGap[language]} ${positions.length - live}`,
  ].join(", ");
  const marks = positions.map((spur, index) => {
    const x = 40 + index * 36;
    return spur === 1
      ? `<path d="M${x} 50v-26m0 12l8-10" />`
      : `<circle cx="${x}" cy="36" r="7" stroke-dasharray="3 3" />`;
  });
  return `<figure><svg viewBox="0 0 330 100" role="img" aria-label="${escaped(caption)}"><path d="M14 96V50h300" stroke-width="7" />${marks.join("")}</svg>
<figcaption>${escaped(caption)}</figcaption></figure>`;
}

const STYLES = `:root{color-scheme:light dark}body{font:1rem/1.5 system-ui,sans-serif;margin:0;padding:1rem}
main{max-width:44rem;margin:auto}nav{display:flex;flex-wrap:wrap;gap:.25rem 1rem}
section{border-top:1px solid;margin-top:2rem}section:target h2{outline:2px solid;outline-offset:4px}
h2{font-size:1.1rem;overflow-wrap:anywhere}h3{font-size:1rem;margin-bottom:0}code{overflow-wrap:anywhere}
dt{font-weight:600}dd{margin:0 0 .5rem 1rem}figure{margin:1rem 0}
svg{inline-size:100%;max-inline-size:24rem;fill:none;stroke:currentColor;stroke-width:3}`;

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

const escaped = (text: string) => text.replace(/[&<>"]/g, (character) => ENTITIES[character]);
