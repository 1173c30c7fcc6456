/** The layers of src: imports go one way only. Read by dependency-cruiser (npm run layers). */
const layer = (name, mayImport) => ({
  name: `${name}-imports-only-below`,
  severity: "error",
  comment: `src/${name} may import only: ${[name, ...mayImport].join(", ")}`,
  from: { path: `^src/${name}/` },
  to: { path: "^src/", pathNot: `^src/(${[name, ...mayImport].join("|")})/` },
});

const withoutPackages = (name, allowed = []) => ({
  name: `${name}-knows-no-package-but-its-own`,
  severity: "error",
  from: { path: `^src/${name}/` },
  to: {
    dependencyTypes: ["npm", "npm-dev", "npm-optional", "core"],
    ...(allowed.length ? { pathNot: allowed.map((p) => `node_modules/${p}`) } : {}),
  },
});

/** The files of src/taskpane that know every page: the state it starts with, and what is drawn. */
const PUT_TOGETHER = "^src/taskpane/(mountPane|pages|paneView|openPane|excelPage)\\.ts$";

module.exports = {
  forbidden: [
    { name: "no-circles", severity: "error", from: { path: "^src/" }, to: { circular: true } },
    layer("domain", []),
    layer("texts", []),
    layer("survey", ["domain", "texts"]),
    layer("functions", ["domain", "survey", "texts"]),
    layer("workbook", ["domain", "survey", "functions", "texts"]),
    layer("taskpane", ["domain", "survey", "functions", "workbook", "texts"]),
    layer("desk", ["domain", "survey", "functions", "workbook", "taskpane", "texts"]),
    layer("cli", ["domain", "survey", "functions", "workbook", "texts"]),
    withoutPackages("domain"),
    withoutPackages("texts"),
    withoutPackages("survey", ["fastest-levenshtein"]),
    withoutPackages("functions", ["fastest-levenshtein"]),
    {
      name: "pane-knows-no-page",
      comment:
        "Inside src/taskpane only the files that put the pane together import its pages; a page imports none of them",
      severity: "error",
      from: { path: "^src/taskpane/[^/]+\\.ts$", pathNot: PUT_TOGETHER },
      to: { path: "^src/taskpane/[^/]+/" },
    },
    {
      name: "page-imports-not-upwards",
      severity: "error",
      from: { path: "^src/taskpane/[^/]+/" },
      to: { path: PUT_TOGETHER },
    },
    {
      name: "no-office-bundle",
      comment: "Microsoft's office.js is loaded by the shipped pane from its own address, never bundled",
      severity: "error",
      from: { path: "^src/" },
      to: { path: "node_modules/@microsoft/office-js" },
    },
    {
      name: "no-unresolved",
      severity: "error",
      from: { path: "^src/" },
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default"],
    },
  },
};
