import { existsSync } from "node:fs";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import { LANGUAGES } from "../../texts/language";

/**
 * Leaves out what only text documents ask for (`autoHyphenation`), no cell of a sheet: the dictionaries by which words of
 * running text are broken at the end of a line, 6 MB in all languages, and what tells the language of a text.
 */
const WITHOUT_HYPHENATION: Plugin = {
  name: "without-hyphenation",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^\.\/[\w-]+\.js$/ }, ({ importer, kind }) =>
      kind === "dynamic-import" && importer.includes(path.join("engine-render", "lib"))
        ? { path: "none", namespace: "hyphenation" }
        : undefined,
    );
    onResolve({ filter: /^franc-min$/ }, () => ({ path: "language", namespace: "hyphenation" }));
    onLoad({ filter: /^none$/, namespace: "hyphenation" }, () => ({ contents: "export default {};" }));
    onLoad({ filter: /^language$/, namespace: "hyphenation" }, () => ({
      contents: 'export const franc = () => "und";',
    }));
  },
};

/** The patterns of Chinese, Japanese and Korean letters are worked out now, not from a table of Unicode at every start. */
const PATTERNS_WORKED_OUT: Plugin = {
  name: "patterns-worked-out",
  setup({ onLoad, onResolve, resolve }) {
    onResolve({ filter: /^cjk-regex$/ }, async ({ path: name, pluginData, kind, resolveDir }) => {
      if (pluginData === PATTERNS_WORKED_OUT) return undefined;
      const found = await resolve(name, { kind, resolveDir, pluginData: PATTERNS_WORKED_OUT });
      return { path: found.path, namespace: "patterns" };
    });
    onLoad({ filter: /./, namespace: "patterns" }, async ({ path: file }) => {
      const sets = (await import(pathToFileURL(file).href)) as Record<string, () => { toRegExp(): RegExp }>;
      const ready = ["all", "letters", "punctuations"].map(
        (name) => `export const ${name} = () => ({ toRegExp: () => ${sets[name]().toRegExp()} });`,
      );
      return { contents: ready.join("\n") };
    });
  },
};

/**
 * Writes the spreadsheet engine and its words per language as ready scripts into `folder`, once per version of its
 * packages. It takes about a second, so that neither the first start nor the pane's bundle has to carry it.
 */
export async function buildEngine(root: string, folder: string): Promise<void> {
  const source = path.join(root, "src/desk/engine");
  const engine = path.join(source, "engine.ts");
  const words = LANGUAGES.map((language) => path.join(source, `words-${language}.ts`));
  const stamp = path.join(folder, "built-from.json");
  const builtFrom = JSON.stringify([
    await engineVersions(root),
    await sources([engine, ...words, fileURLToPath(import.meta.url)]),
  ]);
  if (existsSync(stamp) && (await readFile(stamp, "utf8")) === builtFrom) return;
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  await build({
    entryPoints: [engine],
    outdir: folder,
    bundle: true,
    minify: true,
    format: "esm",
    splitting: true,
    target: "es2022",
    define: { "process.env.NODE_ENV": '"production"' },
    plugins: [WITHOUT_HYPHENATION, PATTERNS_WORKED_OUT],
    logLevel: "error",
  });
  await Promise.all(words.map((file) => writeWords(file, folder)));
  await writeFile(stamp, builtFrom);
}

/** Words come out of their packages with half the engine behind them; what is written is the data alone. */
async function writeWords(source: string, folder: string): Promise<void> {
  const name = path.basename(source, ".ts");
  const whole = path.join(folder, `${name}.mjs`);
  await build({
    entryPoints: [source],
    outfile: whole,
    bundle: true,
    format: "esm",
    platform: "node",
    banner: {
      js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);',
    },
    logLevel: "error",
  });
  const { default: words } = (await import(pathToFileURL(whole).href)) as { default: unknown };
  await rm(whole);
  await writeFile(path.join(folder, `${name}.js`), `export default ${JSON.stringify(words)};`);
}

async function engineVersions(root: string): Promise<string[]> {
  const { packages } = JSON.parse(await readFile(path.join(root, "package-lock.json"), "utf8")) as {
    packages: Record<string, { version?: string }>;
  };
  return Object.entries(packages)
    .filter(([name]) => /node_modules\/(@univerjs\/[^/]+|react|react-dom|rxjs|esbuild)$/.test(name))
    .map(([name, { version }]) => `${name}@${version}`);
}

function sources(files: readonly string[]): Promise<string[]> {
  return Promise.all(files.map((file) => readFile(file, "utf8")));
}
