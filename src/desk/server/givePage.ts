import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { build } from "esbuild";
import { licencesText } from "./licencesText";
import { PAGE_POLICY } from "./pagePolicy";
import type { ServedFolders } from "./servePage";

/**
 * Writes the page as plain files for any web host and path: what the page's own server sends, its policy inside the
 * page, the licences, and a worker that keeps exactly these files on the machine of whoever opens it.
 *
 * @param folders what the page's own server serves
 * @param target folder that is made anew
 */
export async function givePage(root: string, folders: ServedFolders, target: string): Promise<void> {
  await rm(target, { recursive: true, force: true });
  const files = new Map<string, Buffer>([["licences.txt", Buffer.from(licencesText(root))]]);
  for (const [prefix, { folder, endings }] of Object.entries(folders))
    for (const name of await readdir(folder))
      if (endings.includes(path.extname(name)) && !name.endsWith(".map"))
        files.set(prefix.slice(1) + name, await readFile(path.join(folder, name)));
  const page = files.get("index.html");
  if (page === undefined) throw new Error("index.html is missing among the page's built files");
  files.set("index.html", Buffer.from(withPolicy(page.toString("utf8"))));
  files.set("worker.js", await worker(root, files));
  for (const [file, bytes] of files) {
    await mkdir(path.dirname(path.join(target, file)), { recursive: true });
    await writeFile(path.join(target, file), bytes);
  }
}

function withPolicy(page: string): string {
  return page
    .replace("<html ", '<html data-worker="worker.js" ')
    .replace("<head>", `<head>\n    <meta http-equiv="Content-Security-Policy" content="${PAGE_POLICY}" />`);
}

async function worker(root: string, files: ReadonlyMap<string, Buffer>): Promise<Buffer> {
  const digests = [...files]
    .map(([file, bytes]) => [file, `sha256-${createHash("sha256").update(bytes).digest("base64")}`])
    .sort(([one], [other]) => (one < other ? -1 : 1));
  const { outputFiles } = await build({
    entryPoints: [path.join(root, "src/desk/offline/worker.ts")],
    bundle: true,
    write: false,
    target: "es2022",
    define: {
      BUILT_FILES: JSON.stringify(Object.fromEntries(digests)),
      BUILT_VERSION: JSON.stringify(createHash("sha256").update(JSON.stringify(digests)).digest("hex")),
    },
    logLevel: "error",
  });
  return Buffer.from(outputFiles[0].contents);
}
