import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { PAGE_POLICY } from "./pagePolicy";

/** A folder that is served, and the endings of the files in it that may be. */
export interface ServedFolder {
  readonly folder: string;
  readonly endings: readonly string[];
}

/** Address prefix ("/engine/") to folder. Nothing outside these folders is ever sent. */
export type ServedFolders = Readonly<Record<string, ServedFolder>>;

const KINDS: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".map": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

const HEADERS = {
  "Content-Security-Policy": `${PAGE_POLICY}; frame-ancestors 'none'`,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Cache-Control": "no-cache",
};

const HOST = "127.0.0.1";

/** How many ports after the wanted one are tried before any free one is taken. */
const NEIGHBOURS = 10;

/**
 * Serves the folders on this machine only. Takes `port`, or the next free one, or any; 0 asks for any.
 *
 * @returns the listening server and its address
 */
export async function servePage(
  folders: ServedFolders,
  port: number,
): Promise<{ server: Server; address: string }> {
  const server = createServer((request, response) => {
    answer(folders, request, response).catch(() => send(response, 500));
  });
  const wanted = port === 0 ? [] : Array.from({ length: NEIGHBOURS + 1 }, (_, i) => port + i);
  for (const candidate of [...wanted.filter((number) => number <= 65535), 0]) {
    const taken = await listen(server, candidate);
    if (taken !== undefined) return { server, address: `http://${HOST}:${taken}/` };
  }
  throw new Error("no free port");
}

/** The port that is listened on, or undefined when another program has it. */
function listen(server: Server, port: number): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const onError = (problem: NodeJS.ErrnoException) => {
      if (port !== 0 && (problem.code === "EADDRINUSE" || problem.code === "EACCES")) resolve(undefined);
      else reject(problem);
    };
    server.once("error", onError);
    server.listen(port, HOST, () => {
      server.off("error", onError);
      const address = server.address();
      resolve(typeof address === "object" && address ? address.port : port);
    });
  });
}

async function answer(folders: ServedFolders, request: IncomingMessage, response: ServerResponse) {
  if (!isThisMachine(request.headers.host)) return send(response, 403);
  if (request.method !== "GET" && request.method !== "HEAD") return send(response, 405);
  const file = fileFor(folders, request.url ?? "/");
  const found = file === undefined ? undefined : await stat(file).catch(() => undefined);
  if (file === undefined || !found?.isFile()) return send(response, 404);
  const tag = `"${found.size}-${found.mtimeMs}"`;
  const headers = { ...HEADERS, ETag: tag, "Content-Type": KINDS[path.extname(file)] };
  if (request.headers["if-none-match"] === tag) return response.writeHead(304, headers).end();
  response.writeHead(200, { ...headers, "Content-Length": found.size });
  if (request.method === "HEAD") return response.end();
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

/** A page elsewhere that points its own name at this machine gets nothing. */
function isThisMachine(host = ""): boolean {
  return /^(127\.0\.0\.1|localhost)(:\d+)?$/.test(host);
}

/** The file that an address means, or undefined when it lies outside the served folders. */
function fileFor(folders: ServedFolders, address: string): string | undefined {
  let pathname: string;
  try {
    pathname = decodeURIComponent(new URL(address, `http://${HOST}`).pathname);
  } catch {
    return undefined;
  }
  if (pathname === "/") pathname = "/index.html";
  const prefix = Object.keys(folders)
    .filter((candidate) => pathname.startsWith(candidate))
    .sort((one, other) => other.length - one.length)[0];
  if (prefix === undefined) return undefined;
  const { folder, endings } = folders[prefix];
  const file = path.resolve(folder, pathname.slice(prefix.length));
  if (!file.startsWith(folder + path.sep) || !endings.includes(path.extname(file))) return undefined;
  return file;
}

function send(response: ServerResponse, status: number): void {
  if (response.headersSent) response.destroy();
  else response.writeHead(status, HEADERS).end();
}
