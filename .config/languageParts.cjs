const path = require("node:path");
const run = require("./runModule.cjs");

/**
 * Stands in for src/texts/languages/languages.ts when the add-in is built: the words that every language needs from the
 * start, and a script for each part of each language, fetched by `fetchTexts`.
 */
module.exports = function languageParts() {
  const folder = path.dirname(this.resourcePath);
  const { LANGUAGE_FILES, files } = run(this.resourcePath);
  const { textPart } = run(path.join(folder, "textParts.ts"));
  for (const file of files) this.addDependency(path.resolve(file));
  const asked = new URLSearchParams(this.resourceQuery);
  const module = (value) => `JSON.parse(${JSON.stringify(JSON.stringify(value))})`;
  if (asked.has("part"))
    return `export default ${module(textPart(LANGUAGE_FILES[asked.get("language")], asked.get("part")))};`;
  const languages = Object.keys(LANGUAGE_FILES);
  const parts = (part) =>
    languages.map(
      (language) =>
        `${language}: () => import(/* webpackChunkName: "${part}-${language}" */ "./languages.ts?part=${part}&language=${language}")`,
    );
  const words = Object.fromEntries(
    languages.map((language) => [language, textPart(LANGUAGE_FILES[language], "words")]),
  );
  return `export const LANGUAGE_FILES = ${module(words)};
const parts = { ${["functions", "firstPage", "pages"].map((part) => `${part}: { ${parts(part)} }`)} };
export const fetchTexts = (part, language) => parts[part][language]().then((fetched) => fetched.default);`;
};
