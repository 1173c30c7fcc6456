import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Configuration } from "webpack";

/** Builds the desk page's own script with webpack, from its cache where nothing changed; rejects with what is wrong. */
export async function buildPage(
  root: string,
  mode: "development" | "production",
  folder: string,
): Promise<void> {
  const { default: webpack } = await import("webpack");
  const { deskConfiguration } = (await import(pathToFileURL(path.join(root, "webpack.config.js")).href)) as {
    deskConfiguration: (mode: string, folder: string) => Configuration;
  };
  await new Promise<void>((resolve, reject) => {
    const compiler = webpack(deskConfiguration(mode, folder));
    if (!compiler) return reject(new Error("webpack gave no compiler"));
    compiler.run((failure, stats) => {
      const problem = failure?.message ?? stats?.toJson({ all: false, errors: true }).errors?.[0]?.message;
      compiler.close((closing) => {
        if (problem ?? closing) reject(new Error(problem ?? closing?.message));
        else resolve();
      });
    });
  });
}
