import { shippedPackages } from "./shippedPackages";

/** `npm run licences`: every package that is shipped with its licence, and how often each licence occurs. */
const packages = shippedPackages();
const counts = new Map<string, number>();
for (const { name, version, licence } of packages) {
  console.log(`${licence.padEnd(28)}${name}@${version}`);
  counts.set(licence, (counts.get(licence) ?? 0) + 1);
}
console.log(
  `${packages.length} packages: ${[...counts].map(([licence, count]) => `${licence} ${count}`).join(", ")}`,
);
