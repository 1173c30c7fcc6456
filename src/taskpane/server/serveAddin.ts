import { createServer, type Server } from "node:https";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { addinFile } from "./addinFile";

export interface Certificate {
  readonly cert: string | Buffer;
  readonly key: string | Buffer;
}

/**
 * Serves the built add-in over HTTPS on this machine only.
 *
 * @param folder where `npm run build` put it
 * @throws the server's own error, such as EADDRINUSE
 */
export function serveAddin(folder: string, certificate: Certificate, port: number): Promise<Server> {
  const server = createServer({ cert: certificate.cert, key: certificate.key }, (request, response) => {
    const answer =
      request.method === "GET" || request.method === "HEAD" ? addinFile(request.url ?? "/") : undefined;
    if (!answer) {
      response.writeHead(404).end();
      return;
    }
    readFile(path.join(folder, answer.file)).then(
      (bytes) => response.writeHead(200, answer.headers).end(request.method === "HEAD" ? undefined : bytes),
      () => response.writeHead(404).end(),
    );
  });
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "localhost", () => resolve(server));
  });
}
