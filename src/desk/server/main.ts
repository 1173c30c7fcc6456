import { spawn } from "node:child_process";
import { parseArgs } from "node:util";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { DESK_SERVER } from "../../texts/deskServer";
import { languageOfLocale, say, type Text, type TextFacts } from "../../texts/language";
import { buildEngine } from "./buildEngine";
import { buildPage } from "./buildPage";
import { pageFolders } from "./pageFolders";
import { servePage } from "./servePage";

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../..");
const language = languageOfLocale(process.env);
const DEFAULT_PORT = 8740;

function tell(text: Text, facts: TextFacts = {}): void {
  console.log(say(text, language, facts));
}

function stop(text: Text, facts: TextFacts = {}): never {
  console.error(say(text, language, facts));
  process.exit(1);
}

interface Options {
  readonly port: number;
  readonly open: boolean;
}

function options(): Options {
  let values: { port?: string; "no-open"?: boolean; help?: boolean };
  try {
    ({ values } = parseArgs({
      options: {
        port: { type: "string" },
        "no-open": { type: "boolean" },
        help: { type: "boolean", short: "h" },
      },
    }));
  } catch (problem) {
    stop(DESK_SERVER.badOption, { problem: firstLine(problem) });
  }
  if (values.help) {
    tell(DESK_SERVER.help, { port: DEFAULT_PORT });
    process.exit(0);
  }
  const port = values.port === undefined ? DEFAULT_PORT : Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    stop(DESK_SERVER.badPort, { given: values.port ?? "" });
  return { port, open: !values["no-open"] };
}

/** Shows the page in the person's own browser where there is a screen; a machine without one is no failure. */
function openInBrowser(address: string): void {
  const hasScreen =
    process.platform === "darwin" ||
    process.platform === "win32" ||
    Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
  if (!hasScreen || process.env.CI) return;
  const [command, ...given] =
    process.platform === "darwin"
      ? ["open", address]
      : process.platform === "win32"
        ? ["cmd", "/c", "start", "", address]
        : ["xdg-open", address];
  spawn(command, given, { stdio: "ignore", detached: true })
    .on("error", () => {})
    .unref();
}

function firstLine(problem: unknown): string {
  return (problem instanceof Error ? problem.message : String(problem)).split("\n")[0];
}

const { port, open } = options();
const oldestNode = 20;
if (Number(process.versions.node.split(".")[0]) < oldestNode)
  stop(DESK_SERVER.oldNode, { found: process.versions.node, needed: oldestNode });

const [built, engine] = [path.join(root, ".cache/desk"), path.join(root, ".cache/engine")];
try {
  await Promise.all([buildEngine(root, engine), buildPage(root, "development", built)]);
} catch (problem) {
  stop(DESK_SERVER.notBuilt, { problem: firstLine(problem) });
}
try {
  const { server, address } = await servePage(pageFolders(root, built, engine), port);
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.once(signal, () => {
      server.close();
      server.closeAllConnections();
    });
  tell(DESK_SERVER.ready, { address });
  if (open) openInBrowser(address);
} catch (problem) {
  stop(DESK_SERVER.noPort, { port, problem: firstLine(problem) });
}
