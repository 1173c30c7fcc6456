import path from "node:path";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";

/** Bundles a page script of the tests, with everything it imports, for `page.addScriptTag`. */
export async function scriptFor(entryPoint: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entryPoint],
    bundle: true,
    write: false,
    outdir: "out",
    format: "iife",
    target: "es2022",
    define: { "process.env.NODE_ENV": '"production"' },
    logLevel: "error",
  });
  return outputFiles.find((file) => file.path.endsWith(".js"))!.text;
}

/**
 * An empty page with a page script of the tests on it.
 *
 * @param script its path from the project's folder
 * @param ready expression that holds once the script has run
 */
export async function scriptPage(browser: Browser, script: string, ready: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1000, height: 700 } });
  await page.setContent("<!doctype html><body></body>");
  await page.addScriptTag({ content: await scriptFor(path.resolve(script)) });
  await page.waitForFunction(ready);
  return page;
}
