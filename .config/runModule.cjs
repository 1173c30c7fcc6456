const { buildSync } = require("esbuild");

/** Runs a TypeScript file of src, with all that it imports, and names the files that it is made of. */
module.exports = function run(file) {
  const { outputFiles, metafile } = buildSync({
    entryPoints: [file],
    bundle: true,
    write: false,
    format: "cjs",
    metafile: true,
    logLevel: "error",
  });
  const ran = { exports: {} };
  new Function("module", "exports", outputFiles[0].text)(ran, ran.exports);
  return { ...ran.exports, files: Object.keys(metafile.inputs) };
};
