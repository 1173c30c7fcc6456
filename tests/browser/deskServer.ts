import { spawn, type ChildProcess } from "node:child_process";

/** Starts the desk page's own server, as a person starts it, on a port of its own; it builds the page where it changed. */
export function startDeskServer(): Promise<{ server: ChildProcess; address: string }> {
  const server = spawn(
    process.execPath,
    ["--import", "tsx", "src/desk/server/main.ts", "--port", "0", "--no-open"],
    { env: { ...process.env, LC_ALL: "C", NODE_OPTIONS: "" }, stdio: ["ignore", "pipe", "pipe"] },
  );
  return new Promise((resolve, reject) => {
    let said = "";
    const listen = (chunk: Buffer) => {
      said += chunk;
      const address = /http:\/\/[\d.:]+\//.exec(said)?.[0];
      if (address) resolve({ server, address });
    };
    server.stdout.on("data", listen);
    server.stderr.on("data", listen);
    server.on("exit", (code) => reject(new Error(`the server stopped with ${code}: ${said}`)));
  });
}
