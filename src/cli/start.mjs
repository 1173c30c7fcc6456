/**
 * Starts the command line (main.ts) from one bundled file, so that a command answers in a tenth of a second. The bundle
 * is made anew as soon as one of the files that it was made of has changed.
 */
import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const ROOT = new URL("../../", import.meta.url);
const BUNDLE = new URL(".cache/cli/cordonbook.mjs", ROOT);
const SOURCES = new URL(".cache/cli/sources.json", ROOT);

/** @param {string} path a source's path below the project's folder */
function stampOf(path) {
  const { mtimeMs, size } = statSync(new URL(path, ROOT));
  return `${mtimeMs} ${size}`;
}

function isUpToDate() {
  try {
    const sources = JSON.parse(readFileSync(SOURCES, "utf8"));
    statSync(BUNDLE);
    return Object.entries(sources).every(([path, stamp]) => stampOf(path) === stamp);
  } catch {
    return false;
  }
}

async function bundle() {
  const { build } = await import("esbuild");
  const { outputFiles, metafile } = await build({
    absWorkingDir: fileURLToPath(ROOT),
    entryPoints: ["src/cli/main.ts"],
    bundle: true,
    write: false,
    metafile: true,
    platform: "node",
    target: "node20",
    format: "esm",
    banner: {
      js: 'import { createRequire as requireFrom } from "node:module";\nconst require = requireFrom(import.meta.url);',
    },
    logLevel: "error",
  });
  mkdirSync(new URL(".", BUNDLE), { recursive: true });
  write(BUNDLE, outputFiles[0].contents);
  write(
    SOURCES,
    JSON.stringify(Object.fromEntries(Object.keys(metafile.inputs).map((path) => [path, stampOf(path)]))),
  );
}

/**
 * @param {URL} to
 * @param {string | Uint8Array} content
 */
function write(to, content) {
  const waiting = new URL(`${to.href}.${process.pid}`);
  writeFileSync(waiting, content);
  renameSync(waiting, to);
}

/** False where the folder takes no files, as on a shared drive. */
async function isBundled() {
  if (isUpToDate()) return true;
  try {
    await bundle();
    return true;
  } catch {
    return false;
  }
}

if (await isBundled()) await import(BUNDLE.href);
else {
  const { register } = await import("tsx/esm/api");
  register();
  await import("./main.ts");
}
