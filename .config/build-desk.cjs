const { execFileSync } = require("node:child_process");
const path = require("node:path");

const BUILD = `
  const { buildEngine } = await import("./src/desk/server/buildEngine.ts");
  const { buildPage } = await import("./src/desk/server/buildPage.ts");
  await buildEngine(process.cwd(), ".cache/engine");
  await buildPage(process.cwd());
`;

/** Builds the desk page once a run: two test files that start its server at the same time find it ready. */
module.exports = () => {
  const root = path.resolve(__dirname, "..");
  const env = { ...process.env, NODE_OPTIONS: "" };
  execFileSync(process.execPath, ["--import", "tsx", "--input-type=module", "-e", BUILD], { cwd: root, env });
};
