import { lockedPackages, shippedPackages } from "../../src/desk/server/shippedPackages";

/**
 * `npm run licences`: every package that is shipped with its licence, how often each licence occurs, and every package,
 * shipped or not, that runs a script when it is installed.
 */
const packages = shippedPackages();
const counts = new Map<string, number>();
for (const { name, version, licence } of packages) {
  console.log(`${licence.padEnd(28)}${name}@${version}`);
  counts.set(licence, (counts.get(licence) ?? 0) + 1);
}
console.log(
  `${packages.length} packages: ${[...counts].map(([licence, count]) => `${licence} ${count}`).join(", ")}`,
);
const shipped = new Set(packages.map(({ name, version }) => `${name}@${version}`));
const scripts = Object.entries(lockedPackages())
  .filter(([, { hasInstallScript }]) => hasInstallScript)
  .map(([path, { version }]) => `${path.slice(path.lastIndexOf("node_modules/") + 13)}@${version}`);
console.log(`${scripts.length} packages run a script when installed:`);
for (const script of scripts)
  console.log(`${(shipped.has(script) ? "shipped" : "development only").padEnd(28)}${script}`);
