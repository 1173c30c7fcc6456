import path from "node:path";
import { fileURLToPath } from "node:url";
import CopyPlugin from "copy-webpack-plugin";

const root = path.dirname(fileURLToPath(import.meta.url));

/** What every page of the project shares: types are checked beside the build (npm run types), never inside it. */
export function sharedConfiguration(name, mode) {
  return {
    name,
    mode,
    context: root,
    target: ["web", "es2022"],
    devtool: "source-map",
    module: {
      rules: [
        { test: /\.ts$/, exclude: /node_modules/, loader: "ts-loader", options: { transpileOnly: true } },
        { test: /\.css$/, use: ["style-loader", "css-loader"] },
        { test: /\.(png|svg)$/, type: "asset/resource" },
      ],
    },
    resolve: { extensions: [".ts", ".js"] },
    cache: {
      type: "filesystem",
      name: `${name}-${mode}`,
      cacheDirectory: path.join(root, ".cache/webpack"),
      buildDependencies: { config: [fileURLToPath(import.meta.url), path.join(root, "tsconfig.json")] },
    },
    performance: { hints: false },
    stats: "errors-warnings",
  };
}

/** The spreadsheet engine stands ready in a script of its own (src/desk/server/buildEngine.ts), never in a bundle. */
const ENGINE = {
  "@univerjs/core": ["spreadsheetEngine", "core"],
  "@univerjs/core/facade": ["spreadsheetEngine", "facade"],
  "@univerjs/themes": ["spreadsheetEngine", "themes"],
  "@univerjs/preset-sheets-core": ["spreadsheetEngine", "sheets"],
  "@univerjs/preset-sheets-note": ["spreadsheetEngine", "notes"],
  "@univerjs/preset-sheets-table": ["spreadsheetEngine", "tables"],
};

/** The page without Excel. */
export function deskConfiguration(mode) {
  const shared = sharedConfiguration("desk", mode);
  return {
    ...shared,
    entry: { desk: path.join(root, "src/desk/page.ts") },
    externals: ENGINE,
    resolve: { ...shared.resolve, conditionNames: ["browser", "import", "module", "require", "default"] },
    output: { path: path.join(root, ".cache/desk"), filename: "[name].js", clean: false },
    plugins: [
      new CopyPlugin({
        patterns: [{ from: "src/desk/page.html", to: "index.html" }, { from: "src/desk/page.css" }],
      }),
    ],
  };
}

export default (_env, { mode = "production" }) => [deskConfiguration(mode)];
