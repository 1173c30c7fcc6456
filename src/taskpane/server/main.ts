import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { ADDIN_SERVER } from "../../texts/addinServer";
import { languageOfLocale, say, type Text, type TextFacts } from "../../texts/language";
import { untrustedCertificate, type CertificateMaker } from "./certificate";
import { optionalPackage } from "./optionalPackage";
import { serveAddin, type Certificate } from "./serveAddin";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../..");
const dist = path.join(root, "dist");
const manifest = path.join(dist, "manifest.xml");
const language = languageOfLocale(process.env);
const DEFAULT_PORT = 3000;
const CERTIFICATES = "office-addin-dev-certs";
const SIDELOADING = "office-addin-dev-settings";

/** The part of the optional package office-addin-dev-settings that is used. */
interface Sideloading {
  sideloadAddIn(manifest: string, app: string, canPrompt: boolean): Promise<void>;
  unregisterAddIn(manifest: string): Promise<void>;
}

function tell(text: Text, facts: TextFacts = {}): void {
  console.log(say(text, language, facts));
}

function stop(text: Text, facts: TextFacts = {}): never {
  console.error(say(text, language, facts));
  process.exit(1);
}

async function needed<T>(name: string): Promise<T> {
  const found = await optionalPackage<T>(name);
  if (found) return found;
  const { optionalDependencies } = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8"));
  return stop(ADDIN_SERVER.notInstalled, { package: name, version: optionalDependencies[name] });
}

function mustRunExcel(): void {
  if (process.platform !== "win32" && process.platform !== "darwin")
    stop(ADDIN_SERVER.notHere, { platform: process.platform });
}

async function serve(certificate: Certificate, port: number): Promise<void> {
  try {
    await serveAddin(dist, certificate, port);
  } catch (problem) {
    if ((problem as NodeJS.ErrnoException).code === "EADDRINUSE") stop(ADDIN_SERVER.portTaken, { port });
    throw problem;
  }
  tell(ADDIN_SERVER.serving, { address: `https://localhost:${port}/taskpane.html` });
}

async function tryOut(port: number): Promise<void> {
  if (!existsSync(manifest)) stop(ADDIN_SERVER.notBuilt, { file: "dist/manifest.xml" });
  const maker = await needed<CertificateMaker>(CERTIFICATES);
  await serve(await untrustedCertificate(maker, path.join(root, ".cache/certificates")), port);
}

async function startExcel(): Promise<void> {
  mustRunExcel();
  const sideloading = await needed<Sideloading>(SIDELOADING);
  const maker = await needed<CertificateMaker>(CERTIFICATES);
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  execFileSync(npm, ["run", "-s", "build"], {
    cwd: root,
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  tell(ADDIN_SERVER.trust);
  await serve(await maker.getHttpsServerOptions(), DEFAULT_PORT);
  await sideloading.sideloadAddIn(manifest, "excel", true);
}

async function stopExcel(): Promise<void> {
  mustRunExcel();
  const sideloading = await needed<Sideloading>(SIDELOADING);
  const maker = await needed<CertificateMaker>(CERTIFICATES);
  if (existsSync(manifest)) await sideloading.unregisterAddIn(manifest);
  await maker.uninstallCaCertificate();
  tell(ADDIN_SERVER.stopped);
}

function portGiven(given: string | undefined): number {
  const port = given === undefined ? DEFAULT_PORT : Number(given);
  if (!Number.isInteger(port) || port < 1 || port > 65535) stop(ADDIN_SERVER.badPort, { given: given ?? "" });
  return port;
}

try {
  const { values, positionals } = parseArgs({
    options: { port: { type: "string" } },
    allowPositionals: true,
  });
  if (positionals[0] === "excel") await startExcel();
  else if (positionals[0] === "excel:stop") await stopExcel();
  else await tryOut(portGiven(values.port));
} catch (problem) {
  stop(ADDIN_SERVER.failed, { problem: (problem as Error).message.split("\n")[0] });
}
