import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import CopyPlugin from "copy-webpack-plugin";
import HtmlPlugin from "html-webpack-plugin";
import run from "./.config/runModule.cjs";

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
    // The pane draws with lit's templates only; "lit" itself brings the base of elements along.
    resolve: { extensions: [".ts", ".js"], alias: { lit$: "lit/html.js" } },
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

/** The page without Excel, into a folder of its own. */
export function deskConfiguration(mode, folder) {
  const shared = sharedConfiguration("desk", mode);
  return {
    ...shared,
    entry: { desk: path.join(root, "src/desk/page.ts") },
    externals: ENGINE,
    resolve: { ...shared.resolve, conditionNames: ["browser", "import", "module", "require", "default"] },
    output: { path: folder, filename: "[name].js", clean: false },
    plugins: [
      new CopyPlugin({
        patterns: [{ from: "src/desk/page.html", to: "index.html" }, { from: "src/desk/page.css" }],
      }),
    ],
  };
}

/** Where the add-in's own files stand in manifest.xml, until a build puts the office's address in its place. */
export const TRIAL_ADDRESS = "https://localhost:3000/";

/**
 * The address that the add-in will be served from, with a slash at its end.
 *
 * @throws Error with one sentence when Office would not take it
 */
export function addinAddress(given = TRIAL_ADDRESS) {
  const refuse = (why) => {
    const refusal = new Error(`--env address=https://HOST/PATH/ was expected, but is "${given}": ${why}`);
    refusal.stack = refusal.message;
    return refusal;
  };
  if (!URL.canParse(String(given))) throw refuse("that is no address.");
  const url = new URL(String(given));
  if (url.protocol !== "https:") throw refuse("Office loads add-ins over https only.");
  if (url.search || url.hash || url.username)
    throw refuse("nothing may follow the path, and no name or password may stand in it.");
  return url.href.endsWith("/") ? url.href : `${url.href}/`;
}

const kilobytes = (bytes) => `${(bytes / 1000).toFixed(0)} kB`;

/** Says after a build how much is fetched before the functions are bound, and how much until the first page stands. */
const printSizes = {
  apply(compiler) {
    compiler.hooks.done.tap("printSizes", ({ compilation }) => {
      if (compilation.errors.length > 0) return;
      const scripts = (group) =>
        group.chunks.flatMap(({ files }) => [...files].filter((file) => file.endsWith(".js")));
      const sizesOf = (...groups) => {
        const files = [...new Set(groups.flatMap(scripts))];
        const bytes = files.map((file) => readFileSync(path.join(compiler.outputPath, file)));
        const sum = (all) => all.reduce((total, each) => total + each, 0);
        const packed = bytes.map((each) => gzipSync(each).length);
        return `${kilobytes(sum(bytes.map(({ length }) => length)))}, ${kilobytes(sum(packed))} gzip`;
      };
      const group = (name) => compilation.namedChunkGroups.get(name);
      for (const language of ["en", "es", "fr"]) {
        const bound = [compilation.entrypoints.get("taskpane"), group(`functions-${language}`)];
        const shown = [...bound, group("pane"), group(`firstPage-${language}`)];
        console.log(
          `${language}: functions bound after ${sizesOf(...bound)}; first page shown after ${sizesOf(...shown)} (without office.js)`,
        );
      }
    });
  },
};

/** Writes the pages that explain the functions, one a language. */
const writeHelp = {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("writeHelp", (compilation) => {
      const { PROCESS_ASSETS_STAGE_ADDITIONAL: stage } = compiler.webpack.Compilation;
      compilation.hooks.processAssets.tap({ name: "writeHelp", stage }, () => {
        const { helpFile, helpPage, files } = run(path.join(root, "src/functions/helpPage.ts"));
        compilation.fileDependencies.addAll(files.map((file) => path.join(root, file)));
        for (const language of ["en", "es", "fr"])
          compilation.emitAsset(
            helpFile(language),
            new compiler.webpack.sources.RawSource(helpPage(language)),
          );
      });
    });
  },
};

/** The add-in as files for any HTTPS host: dist/ with manifest, page, scripts, functions and icons. */
export function addinConfiguration(mode, address) {
  const base = addinAddress(address);
  const manifest = (text) => text.replaceAll(TRIAL_ADDRESS, base);
  const shared = sharedConfiguration("addin", mode);
  const texts = path.join(root, "src/texts/languages");
  return {
    ...shared,
    module: {
      rules: [
        { test: path.join(texts, "languages.ts"), use: path.join(root, ".config/languageParts.cjs") },
        ...shared.module.rules.map((rule) => ({
          ...rule,
          exclude: [/node_modules/, path.join(texts, "languages.ts")],
        })),
      ],
    },
    entry: { taskpane: path.join(root, "src/taskpane/excelPage.ts") },
    output: {
      path: path.join(root, "dist"),
      filename: "[name].js",
      chunkFilename: "part-[contenthash:8].js",
      clean: { keep: /^page\// },
    },
    plugins: [
      printSizes,
      writeHelp,
      new HtmlPlugin({
        template: path.join(root, "src/taskpane/index.html"),
        filename: "taskpane.html",
        scriptLoading: "defer",
        hash: true,
        minify: false,
      }),
      new CopyPlugin({
        patterns: [
          { from: "manifest.xml", transform: (bytes) => manifest(bytes.toString("utf8")) },
          { from: "src/taskpane/support.html" },
          { from: "src/taskpane/icons/*.png", to: "icons/[name][ext]" },
          {
            from: "src/functions/functions*.json",
            to: "[name][ext]",
            transform: (bytes) => manifest(bytes.toString("utf8")),
          },
        ],
      }),
    ],
  };
}

export default (env, { mode = "production" }) => [addinConfiguration(mode, env.address)];
