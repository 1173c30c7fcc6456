import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { build } from "esbuild";
import { startBrowserServer } from "./chromium";
import { startDeskServer } from "./deskServer";
import { measureStart } from "./measureStart";
import { DESK_ADDRESS, PANE_PAGE, STARTS } from "./shared";

declare global {
  var stopShared: (() => Promise<void>) | undefined;
}

/** Jest runs this once before all browser tests: one browser, one desk page's server and one bundle of the pane. */
export default async function startShared(): Promise<void> {
  const [browser, { server, address }] = await Promise.all([
    startBrowserServer(),
    startDeskServer(),
    bundlePane(),
  ]);
  process.env[DESK_ADDRESS] = address;
  process.env[STARTS] = JSON.stringify(await measureStart(address));
  globalThis.stopShared = async () => {
    server.kill();
    await browser.close();
  };
}

/** The browser fetches the bundle by itself, which takes a tenth of the time of handing it over page by page. */
const PANE_HTML =
  '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Pane</title><style>html,body,main{margin:0;block-size:100%}</style></head>' +
  '<body><main><h1 style="position:absolute;clip-path:inset(50%)">Cordonbook</h1><div id="pane" style="block-size:100%"></div></main><script src="harness.js"></script></body></html>';

async function bundlePane(): Promise<void> {
  const folder = path.dirname(PANE_PAGE);
  await mkdir(folder, { recursive: true });
  await writeFile(PANE_PAGE, PANE_HTML);
  await build({
    entryPoints: [path.resolve("tests/browser/pane/harness.ts")],
    outdir: folder,
    bundle: true,
    minifyWhitespace: true,
    minifySyntax: true,
    format: "iife",
    target: "es2022",
    tsconfigRaw: { compilerOptions: { target: "ES2022" } },
  });
}
