import { readFileSync } from "node:fs";
import { join } from "node:path";

/** A package that goes out with the project, in the program or bundled into one of its pages. */
export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** True when installing it would run a script. */
  readonly runsOnInstall: boolean;
}

interface LockedPackage {
  readonly version: string;
  readonly license?: string;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
  readonly peerDependenciesMeta?: Readonly<Record<string, { readonly optional?: boolean }>>;
}

/** Development packages whose code ends up in the page without Excel. */
const BUNDLED = [
  "@univerjs/core",
  "@univerjs/preset-sheets-core",
  "@univerjs/preset-sheets-note",
  "@univerjs/preset-sheets-table",
  "@univerjs/themes",
  "react",
  "react-dom",
  "rxjs",
];

/** The project's folder: where npm and jest start. */
const PROJECT = process.cwd();

/** Everything that is shipped, with what it needs in turn, from the lock file. */
export function shippedPackages(): ShippedPackage[] {
  const packages = lockedPackages();
  const { dependencies = {} } = packages[""] as LockedPackage;
  const found = new Map<string, ShippedPackage>();
  const waiting = [...Object.keys(dependencies), ...BUNDLED].map((name) => ({ name, from: "" }));
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const path = placeOf(packages, next.name, next.from);
    if (path === undefined || found.has(path)) continue;
    const locked = packages[path];
    found.set(path, {
      name: path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length),
      version: locked.version,
      licence: locked.license ?? licenceInPackage(path),
      runsOnInstall: locked.hasInstallScript === true,
    });
    const peers = Object.keys(locked.peerDependencies ?? {}).filter(
      (peer) => locked.peerDependenciesMeta?.[peer]?.optional !== true,
    );
    for (const name of [...Object.keys(locked.dependencies ?? {}), ...peers])
      waiting.push({ name, from: path });
  }
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Every package of the lock file by the folder that it is installed in; "" is the project. */
export function lockedPackages(): Readonly<Record<string, LockedPackage>> {
  const { packages } = JSON.parse(readFileSync(join(PROJECT, "package-lock.json"), "utf8")) as {
    packages: Readonly<Record<string, LockedPackage>>;
  };
  return packages;
}

/** Where the package that a package means is installed: beside it, or in a folder above. */
function placeOf(
  packages: Readonly<Record<string, LockedPackage>>,
  name: string,
  from: string,
): string | undefined {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf("/node_modules/")))) {
    const path = `${folder === "" ? "" : `${folder}/`}node_modules/${name}`;
    if (packages[path]) return path;
    if (folder === "") return undefined;
  }
}

/** The licence that a package names in its own files, where the lock file names none. */
function licenceInPackage(path: string): string {
  const { license } = JSON.parse(readFileSync(join(PROJECT, path, "package.json"), "utf8")) as {
    license?: string;
  };
  if (license) return license;
  const text = readFileSync(join(PROJECT, path, "LICENSE"), "utf8").slice(0, 400);
  return /Apache License\s+Version 2\.0/.test(text) ? "Apache-2.0" : "unknown";
}
