import { mkdir } from "node:fs/promises";
import path from "node:path";
import { build } from "esbuild";
import { startBrowserServer } from "./chromium";
import { startDeskServer } from "./deskServer";
import { DESK_ADDRESS, PANE_SCRIPT } from "./shared";

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
  globalThis.stopShared = async () => {
    server.kill();
    await browser.close();
  };
}

async function bundlePane(): Promise<void> {
  await mkdir(path.dirname(PANE_SCRIPT), { recursive: true });
  await build({
    entryPoints: [path.resolve("tests/browser/pane/harness.ts")],
    outfile: PANE_SCRIPT,
    bundle: true,
    minifyWhitespace: true,
    minifySyntax: true,
    format: "iife",
    target: "es2022",
    tsconfigRaw: { compilerOptions: { target: "ES2022" } },
  });
}
