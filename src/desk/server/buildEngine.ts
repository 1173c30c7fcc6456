import { existsSync } from "node:fs";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { build } from "esbuild";
import { LANGUAGES } from "../../texts/language";

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
  const builtFrom = JSON.stringify([await engineVersions(root), await sources(entryPoints)]);
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
