import { build } from "esbuild";

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
  return outputFiles.find(({ path }) => path.endsWith(".js"))!.text;
}
