import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { shippedPackages } from "./shippedPackages";

/** The project's own licence and that of every package in the page, each text once, above it whom it is for. */
export function licencesText(root: string): string {
  const packagesOf = new Map<string, string[]>();
  for (const { name, version, licence } of shippedPackages()) {
    const text =
      licenceIn(path.join(root, "node_modules", name)) ??
      `The package brings no text of its licence along; it names ${licence} (https://spdx.org/licenses/${licence}.html).`;
    packagesOf.set(text, [...(packagesOf.get(text) ?? []), `${name} ${version} (${licence})`]);
  }
  const own = readFileSync(path.join(root, "LICENSE"), "utf8").trim();
  return [["Cordonbook", own], ...[...packagesOf].map(([text, names]) => [names.join("\n"), text])]
    .map(([names, text]) => `${names}\n\n${text}\n`)
    .join(`\n${"-".repeat(72)}\n\n`);
}

function licenceIn(folder: string): string | undefined {
  const texts = readdirSync(folder).filter((name) => /^(licen[cs]e|copying|notice)/i.test(name));
  return texts.length === 0
    ? undefined
    : texts.map((name) => readFileSync(path.join(folder, name), "utf8").trim()).join("\n\n");
}
