import { packagesWithInstallScripts, shippedPackages } from "./shippedPackages";

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
const scripts = packagesWithInstallScripts();
console.log(`${scripts.length} packages run a script when installed:`);
for (const { name, version, isShipped } of scripts)
  console.log(`${(isShipped ? "shipped" : "development only").padEnd(28)}${name}@${version}`);
