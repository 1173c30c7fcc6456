import { execFile } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { mkdir, mkdtemp, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { promisify } from "node:util";
import { chromium, type Browser, type BrowserServer, type LaunchOptions } from "playwright-core";
import { BROWSER_ADDRESS } from "./shared";

const run = promisify(execFile);
/** npm runs every script of the project from its root. */
const root = process.cwd();
const packageFolder = path.join(root, "node_modules/@sparticuz/chromium");

/** Debian's and Ubuntu's own browser, used where the packaged one does not start. */
const INSTALLED = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** Runs as root in a container, and asks nothing of the network by itself. */
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-domain-reliability",
  "--disable-sync",
  "--no-pings",
  "--no-first-run",
  "--font-render-hinting=none",
  // Tests run beside one another: threads of one page for compiling and collecting only take the cores from the others.
  "--js-flags=--single-threaded",
];

/** Runs in a process of its own, because the package unpacks into whatever the temporary folder is at that moment. */
const UNPACK = `
  import path from "node:path";
  import chromium, { inflate } from "@sparticuz/chromium";
  await chromium.executablePath();
  await inflate(path.join(process.argv[1], "bin/al2023.tar.br"));
`;

/**
 * The folder with the packaged browser and the shared libraries that come with it: one per version, unpacked once,
 * complete or not there at all.
 */
async function unpackedBrowser(): Promise<string> {
  const { version } = JSON.parse(readFileSync(path.join(packageFolder, "package.json"), "utf8"));
  const folder = path.join(root, ".cache", `chromium-${version}`);
  if (existsSync(folder)) return folder;
  await mkdir(path.dirname(folder), { recursive: true });
  const unfinished = await mkdtemp(`${folder}-`);
  try {
    await run(process.execPath, ["--input-type=module", "-e", UNPACK, packageFolder], {
      cwd: root,
      env: { ...process.env, TMPDIR: unfinished, TEMP: unfinished, TMP: unfinished },
    });
    await writeFile(path.join(unfinished, "fonts.conf"), fontConfiguration(folder));
    await rename(unfinished, folder).catch(async (problem) => {
      if (!existsSync(folder)) throw problem;
    });
  } finally {
    await rm(unfinished, { recursive: true, force: true });
  }
  return folder;
}

/** The machine's own fonts where it has any, and the package's where it has none. */
function fontConfiguration(folder: string): string {
  return `<?xml version="1.0"?>
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir>${path.join(folder, "fonts")}</dir>
  <cachedir>${path.join(folder, "fonts-cache")}</cachedir>
</fontconfig>
`;
}

/** How the packaged browser is started; `bare` on a machine that lacks the usual desktop libraries. */
async function packagedBrowser(bare: boolean): Promise<LaunchOptions> {
  const folder = await unpackedBrowser();
  const env: Record<string, string> = { ...(process.env as Record<string, string>) };
  if (bare)
    env.LD_LIBRARY_PATH = [path.join(folder, "al2023/lib"), env.LD_LIBRARY_PATH].filter(Boolean).join(":");
  env.FONTCONFIG_FILE = path.join(folder, "fonts.conf");
  return { executablePath: path.join(folder, "chromium"), env };
}

async function installedBrowser(): Promise<LaunchOptions> {
  const executablePath = INSTALLED.find((place) => existsSync(place));
  if (executablePath) return { executablePath };
  throw new Error(`no browser at ${INSTALLED.join(", ")}`);
}

/** The ways to a browser, in the order they are tried. */
const WAYS: readonly [name: string, options: () => Promise<LaunchOptions>][] = [
  ["packaged browser", () => packagedBrowser(false)],
  ["packaged browser with its own libraries", () => packagedBrowser(true)],
  ["installed browser", installedBrowser],
];

/**
 * Headless Chromium for a browser test: the one that was started for all of them, else one of its own. Close it when
 * the test is over: of a shared one that closes the test's own pages only.
 */
export function startChromium(): Promise<Browser> {
  const shared = process.env[BROWSER_ADDRESS];
  return shared ? chromium.connect(shared) : started((options) => chromium.launch(options));
}

/** Starts the browser that all test files share, which they find by their environment. */
export async function startBrowserServer(): Promise<BrowserServer> {
  const server = await started((options) => chromium.launchServer(options));
  process.env[BROWSER_ADDRESS] = server.wsEndpoint();
  return server;
}

/**
 * The packaged browser, so that Node and npm are all a machine needs, else an installed one.
 *
 * @throws one Error that names each way that was tried and why it failed
 */
async function started<T>(start: (options: LaunchOptions) => Promise<T>): Promise<T> {
  const failures: string[] = [];
  for (const [name, options] of WAYS) {
    try {
      return await start({ ...(await options()), args: FLAGS, timeout: 60_000 });
    } catch (problem) {
      failures.push(`${name}: ${String(problem).split("\n").slice(0, 6).join(" ")}`);
    }
  }
  throw new Error(`No browser for the tests could be started. ${failures.join("; ")}`);
}
