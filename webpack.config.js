import { readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import CopyPlugin from "copy-webpack-plugin";
import { transform } from "esbuild";
import HtmlPlugin from "html-webpack-plugin";
import webpack from "webpack";
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

/**
 * Makes the scripts small in a second, where the full way would keep a first start waiting: a browser parses half as much.
 */
const smallScripts = {
  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    const stage = Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_SIZE;
    const smaller = async (name, script) => {
      const { source, map } = script.sourceAndMap();
      const { code, map: own } = await transform(source, { minify: true, sourcemap: true, sourcefile: name });
      return new sources.SourceMapSource(code, name, JSON.parse(own), source, map, true);
    };
    compiler.hooks.compilation.tap("smallScripts", (compilation) => {
      const cache = compilation.getCache("smallScripts");
      compilation.hooks.processAssets.tapPromise({ name: "smallScripts", stage }, async (assets) => {
        for (const name of Object.keys(assets).filter((file) => file.endsWith(".js"))) {
          const known = cache.getItemCache(name, cache.getLazyHashedEtag(assets[name]));
          compilation.updateAsset(name, await known.providePromise(() => smaller(name, assets[name])));
        }
      });
    });
  },
};

/** The page without Excel, into a folder of its own. */
export function deskConfiguration(mode, folder) {
  const shared = sharedConfiguration("desk", mode);
  return {
    ...shared,
    entry: {
      first: path.join(root, "src/desk/first.ts"),
      reader: path.join(root, "src/desk/reader.ts"),
      desk: { import: path.join(root, "src/desk/page.ts"), dependOn: "first" },
    },
    externals: ENGINE,
    optimization: mode === "development" ? { minimize: true, minimizer: [smallScripts] } : {},
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

/** Bytes, packed as a server packs them, that may be fetched until the functions are bound, and until the first page stands. */
export const LIMITS = { bound: 110_000, shown: 150_000 };

/**
 * The sentence with which a build fails that fetches more than LIMITS before it shows something; undefined for one
 * within them.
 */
export function tooHeavy(language, { bound, shown }) {
  const over = (what, bytes, limit) =>
    bytes <= limit
      ? []
      : [`${what} after ${kilobytes(bytes)} gzip, at most ${kilobytes(limit)} were expected`];
  const problems = [
    ...over("functions are bound", bound, LIMITS.bound),
    ...over("the first page is shown", shown, LIMITS.shown),
  ];
  return problems.length === 0 ? undefined : `${language}: ${problems.join("; ")}.`;
}

const kilobytes = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;

/**
 * The scripts of a finished build, in the order of their need in a language: until the functions are bound, until the
 * first page stands, and until a function that takes a whole table answers.
 */
export function scriptsUntil(compilation, language) {
  const scripts = (group) =>
    group.chunks.flatMap(({ files }) => [...files].filter((file) => file.endsWith(".js")));
  const group = (name) => scripts(compilation.namedChunkGroups.get(name));
  const bound = [...scripts(compilation.entrypoints.get("taskpane")), ...group(`functions-${language}`)];
  const shown = [...bound, ...group("pane"), ...group(`firstPage-${language}`)];
  return { bound, shown, tables: [...bound, ...group("whole-tables")] };
}

/** Says after a build how much is fetched before something is there, and fails it above LIMITS. */
const holdSizes = {
  apply(compiler) {
    compiler.hooks.done.tap("holdSizes", ({ compilation }) => {
      if (compilation.errors.length > 0) return;
      const packed = (files) =>
        files.reduce(
          (sum, file) => sum + gzipSync(readFileSync(path.join(compiler.outputPath, file))).length,
          0,
        );
      for (const language of ["en", "es", "fr"]) {
        const { bound, shown, tables } = Object.fromEntries(
          Object.entries(scriptsUntil(compilation, language)).map(([until, files]) => [until, packed(files)]),
        );
        console.log(
          `${language}: functions bound after ${kilobytes(bound)} gzip, first page shown after ${kilobytes(shown)} ` +
            `(without office.js), functions of whole tables answer after ${kilobytes(tables)}`,
        );
        const problem = compiler.options.mode === "production" && tooHeavy(language, { bound, shown });
        if (problem) compilation.errors.push(new compiler.webpack.WebpackError(problem));
      }
    });
  },
};

/** Writes what Excel reads of the functions and the pages that explain them, one each a language. */
const writeFunctions = (atAddress) => ({
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("writeFunctions", (compilation) => {
      const { PROCESS_ASSETS_STAGE_ADDITIONAL: stage } = compiler.webpack.Compilation;
      compilation.hooks.processAssets.tap({ name: "writeFunctions", stage }, () => {
        const { functionFiles, files } = run(path.join(root, "src/functions/functionFiles.ts"));
        compilation.fileDependencies.addAll(files.map((file) => path.join(root, file)));
        for (const [name, content] of functionFiles())
          compilation.emitAsset(name, new compiler.webpack.sources.RawSource(atAddress(content)));
      });
    });
  },
});

/** The add-in as files for any HTTPS host: dist/ with manifest, page, scripts, functions and icons. */
export function addinConfiguration(mode, address) {
  const base = addinAddress(address);
  const atAddress = (text) => text.replaceAll(TRIAL_ADDRESS, base);
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
      holdSizes,
      writeFunctions(atAddress),
      new webpack.NormalModuleReplacementPlugin(
        /\/wholeTables$/,
        path.join(root, "src/functions/fetchedTables.ts"),
      ),
      new HtmlPlugin({
        template: path.join(root, "src/taskpane/index.html"),
        filename: "taskpane.html",
        scriptLoading: "defer",
        hash: true,
        minify: false,
      }),
      new CopyPlugin({
        patterns: [
          { from: "manifest.xml", transform: (bytes) => atAddress(bytes.toString("utf8")) },
          { from: "src/taskpane/support.html" },
          { from: "src/taskpane/icons/*.png", to: "icons/[name][ext]" },
          { from: "sample-workbooks/{larkmoor-clean,empty-season*}.xlsx" },
        ],
      }),
    ],
  };
}

export default (env, { mode = "production" }) => [addinConfiguration(mode, env.address)];
