import { existsSync } from "node:fs";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { build, type Plugin } from "esbuild";
import { LANGUAGES } from "../../texts/language";

/**
 * The dictionaries by which the engine breaks words of running text at the end of a line. Only its text documents ask
 * for them (`autoHyphenation`), no cell of a sheet does, so that those of every language, 6 MB, stay out.
 */
const WITHOUT_HYPHENATION: Plugin = {
  name: "without-hyphenation",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^\.\/[\w-]+\.js$/ }, ({ importer, kind }) =>
      kind === "dynamic-import" && importer.includes(path.join("engine-render", "lib"))
        ? { path: "none", namespace: "hyphenation" }
        : undefined,
    );
    onLoad({ filter: /^none$/, namespace: "hyphenation" }, () => ({ contents: "export default {};" }));
  },
};

/**
 * Writes the spreadsheet engine and its words per language as ready scripts into `folder`, once per version of its
 * packages. It takes about a second, so that neither the first start nor the pane's bundle has to carry it.
 */
export async function buildEngine(root: string, folder: string): Promise<void> {
  const source = path.join(root, "src/desk/engine");
  const entryPoints = ["engine", ...LANGUAGES.map((language) => `words-${language}`)].map((name) =>
    path.join(source, `${name}.ts`),
  );
  const stamp = path.join(folder, "built-from.json");
  const builtFrom = JSON.stringify([
    await engineVersions(root),
    await sources(entryPoints),
    WITHOUT_HYPHENATION.name,
  ]);
  if (existsSync(stamp) && (await readFile(stamp, "utf8")) === builtFrom) return;
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  await build({
    entryPoints,
    outdir: folder,
    bundle: true,
    minify: true,
    format: "esm",
    splitting: true,
    target: "es2022",
    define: { "process.env.NODE_ENV": '"production"' },
    plugins: [WITHOUT_HYPHENATION],
    logLevel: "error",
  });
  await writeFile(stamp, builtFrom);
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
