import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { shippedPackages } from "../../src/desk/server/shippedPackages";

const PROJECT = join(__dirname, "../..");

/** Licences that ask for no more than their notice; an "OR" may be taken at its freer side. */
const FREE = new Set([
  "MIT",
  "ISC",
  "Apache-2.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "0BSD",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Unlicense",
  "Python-2.0",
  "CC-BY-4.0",
  "MIT-0",
]);
const isFree = (licence: string) =>
  licence
    .replace(/[()]/g, "")
    .split(/ OR /)
    .some((choice) => choice.split(/ AND /).every((part) => FREE.has(part.trim())));

const manifest = JSON.parse(readFileSync(join(PROJECT, "package.json"), "utf8")) as Record<
  "dependencies" | "devDependencies" | "optionalDependencies",
  Record<string, string>
>;

test("every package that is shipped has a licence without copyleft", () => {
  const packages = shippedPackages();
  expect(packages.length).toBeGreaterThan(20);
  expect(packages.map(({ name }) => name)).toEqual(
    expect.arrayContaining(["saxes", "xmlchars", "lit", "rxjs"]),
  );
  expect(packages.filter(({ licence }) => !isFree(licence))).toEqual([]);
});

/** Its script only warns whoever depends on it by a range of versions; the page's bundle takes its code without it. */
const ONLY_WARNS = ["protobufjs"];

test("no package that is shipped needs a script to run when it is installed", () => {
  const scripts = shippedPackages().filter(({ runsOnInstall }) => runsOnInstall);
  expect(scripts.map(({ name }) => name)).toEqual(ONLY_WARNS);
  expect(Object.keys(manifest.dependencies)).not.toEqual(expect.arrayContaining(ONLY_WARNS));
});

test("every package is pinned to one version", () => {
  for (const group of ["dependencies", "devDependencies", "optionalDependencies"] as const)
    for (const version of Object.values(manifest[group]))
      expect(version).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
});

test("the package holds the program, its samples and what a reader needs, and nothing else", async () => {
  const { stdout } = await promisify(execFile)("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], {
    cwd: PROJECT,
    maxBuffer: 1e8,
  });
  const [{ files }] = JSON.parse(stdout) as { files: { path: string }[] }[];
  const paths = files.map(({ path }) => path);
  expect(paths).toEqual(
    expect.arrayContaining([
      "LICENSE",
      "README.md",
      "package.json",
      "manifest.xml",
      "src/cli/main.ts",
      "sample-workbooks/empty-season.xlsx",
      "sample-workbooks/empty-season-metric.xlsx",
    ]),
  );
  expect(paths.filter((path) => /(^|\/)(tests|node_modules|\.ci|\.cache|coverage)\//.test(path))).toEqual([]);
  expect(
    paths.filter((path) =>
      /office(\.debug)?\.js$|excel-(web|win32|mac)|\.(log|tgz|pem|key|env)$/i.test(path),
    ),
  ).toEqual([]);
}, 60000);
