import { get } from "node:http";
import { createServer, type Server } from "node:net";
import { spawn } from "node:child_process";
import type { Start } from "./measureStart";
import { desk, openDesk } from "./openDesk";
import { STARTS } from "./shared";

/** Asks the server for a path exactly as it is written, which `fetch` would tidy up first. */
function ask(address: string, path: string, headers: Record<string, string> = {}) {
  const { hostname, port } = new URL(address);
  return new Promise<{ status: number; headers: Record<string, unknown> }>((resolve, reject) => {
    get({ hostname, port, path, headers }, (answer) => {
      answer.resume();
      resolve({ status: answer.statusCode ?? 0, headers: answer.headers });
    }).on("error", reject);
  });
}

/** What `npm start` prints, up to its first line. */
function firstLine(options: string[]): Promise<{ line: string; code: number | null; stop(): void }> {
  const server = spawn(
    process.execPath,
    ["--import", "tsx", "src/desk/server/main.ts", "--no-open", ...options],
    {
      env: { ...process.env, LC_ALL: "C", NODE_OPTIONS: "" },
    },
  );
  const stop = () => void server.kill();
  return new Promise((resolve) => {
    let said = "";
    const listen = (chunk: Buffer) => {
      said += chunk;
      if (said.includes("\n")) resolve({ line: said.trim(), code: null, stop });
    };
    server.stdout.on("data", listen);
    server.stderr.on("data", (chunk: Buffer) => (said += chunk));
    server.on("exit", (code) => resolve({ line: said.trim(), code, stop }));
  });
}

describe("starting the desk page", () => {
  test("serves its own files and nothing else", async () => {
    for (const path of [
      "/",
      "/index.html",
      "/desk.js",
      "/engine/engine.js",
      "/sample-workbooks/larkmoor-clean.xlsx",
    ])
      expect([path, (await ask(desk().address, path)).status]).toEqual([path, 200]);
    for (const path of [
      "/package.json",
      "/../package.json",
      "/engine/../../package.json",
      "/engine/..%2f..%2fpackage.json",
      "/sample-workbooks/make/main.ts",
      "/sample-workbooks/",
      "/office.js",
      "/engine/office.js",
      "/node_modules/@microsoft/office-js/dist/office.js",
      "/%00",
      "/%",
    ])
      expect([path, (await ask(desk().address, path)).status]).toEqual([path, 404]);
  });

  test("answers this machine only and says what a page of it may load", async () => {
    const { headers } = await ask(desk().address, "/");
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("connect-src 'self'");
    expect(policy).not.toMatch(/https?:|unsafe-eval/);
    expect((await ask(desk().address, "/", { Host: "elsewhere.example" })).status).toBe(403);
  });

  test("takes another port when another program has the one it wants", async () => {
    const other: Server = createServer().listen(0, "127.0.0.1");
    await new Promise((resolve) => other.once("listening", resolve));
    const { port } = other.address() as { port: number };
    const { line, stop } = await firstLine(["--port", String(port)]);
    stop();
    other.close();
    const taken = Number(/127\.0\.0\.1:(\d+)\//.exec(line)?.[1]);
    expect(taken).toBeGreaterThan(0);
    expect(taken).not.toBe(port);
    expect(line.split("\n")).toHaveLength(1);
  });

  test.each([
    [["--port", "none"], /--port must be a whole number from 0 to 65535, but is none/],
    [["--prot", "80"], /--prot/],
  ])("says in one line why it does not start with %j", async (options, expected) => {
    const { line, code } = await firstLine(options);
    expect(code).toBe(1);
    expect(line).toMatch(expected);
    expect(line.split("\n")).toHaveLength(1);
  });

  test("the page is there soon; how soon, before any test ran beside it, is printed", async () => {
    const starts = JSON.parse(process.env[STARTS]!) as Start[];
    expect(starts.map(({ visit }) => visit)).toEqual(["first visit", "reload"]);
    for (const { visit, season, ready, megabytes } of starts) {
      expect(season).toBeGreaterThan(0);
      expect(ready).toBeGreaterThan(0);
      process.stdout.write(
        `${visit}: the season's picture after ${Math.round(season)} ms, the grid after ${Math.round(ready)} ms, ${megabytes.toFixed(1)} MB\n`,
      );
    }
    const page = await openDesk();
    await page.pane.locator("#season-picture").waitFor();
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-start");
  });

  test.each(["es", "fr"])("speaks %s, decimals with a comma", async (language) => {
    const page = await openDesk("clean", { language });
    expect(await page.page.locator("html").getAttribute("lang")).toBe(language);
    await page.type("H3", '=CORDON.NODEBUDGET(3,"30+10")');
    expect(await page.shows("H3", "50")).toBe("50");
    await page.type("H4", "3,5");
    await page.type("H5", "=H4+1");
    expect(await page.shows("H4", "3,5")).toBe("3,5");
    expect(await page.shows("H5", "4,5")).toBe("4,5");
    await page.goTo("H4");
    await page.page.keyboard.press("F2");
    await page.page.keyboard.press("Enter");
    expect(await page.shows("H5", "4,5")).toBe("4,5");
    // 30 nodes for the first pound and 10 for each of 2.5 pounds more.
    await page.type("H6", '=CORDON.NODEBUDGET(3,5;"30+10")');
    expect(await page.shows("H6", "55")).toBe("55");
    await page.type("H7", "=MAX(3,5)");
    expect(await page.shows("H7", /^5 .*3\.5/)).toMatch(/^5 .*3,5.*3\.5.*;/);
    await page.type("H8", "'3,5");
    await page.type("H9", '=TYPE(H8)&"/"&TYPE(H4)');
    expect(await page.shows("H9", "2/1")).toBe("2/1");
    await page.paste("I4", "3,5");
    await page.paste("I5", "1,250\t12,5%\n0,75\tbaya");
    await page.type("I8", "=I4+I5+I6+J5");
    // 3.5 + 1.25 + 0.75 + 0.125
    expect(await page.shows("I8", "5,625")).toBe("5,625");
    await page.goTo("H4");
    await page.page.keyboard.press("Control+c");
    await page.goTo("I9");
    await page.page.keyboard.press("Control+v");
    await page.type("I10", "=I9*2");
    expect(await page.shows("I10", "7")).toBe("7");
    await page.picture(`desk-${language}`);
  });

  test("is dark where the system is", async () => {
    const page = await openDesk("mistakes", { look: "dark" });
    await page.check();
    await page.pane.locator("#mark-cells").click();
    await page.goToSheet("Cordons");
    expect(await page.brokenRules()).toEqual([]);
    await page.picture("desk-dark");
  });

  test("stacks grid and pane on a narrow screen", async () => {
    const page = await openDesk("clean", { width: 320, height: 900 });
    const [cells, workbooks] = await Promise.all(
      ["#grid canvas[id^=univer-sheet-main]", "#workbook"].map((part) =>
        page.page.locator(part).boundingBox(),
      ),
    );
    expect(cells!.width).toBeGreaterThan(300);
    expect(cells!.height).toBeGreaterThan(150);
    expect(workbooks!.x + workbooks!.width).toBeLessThanOrEqual(320);
    expect(await page.page.locator("#grid").innerText()).not.toContain("sheets-formula.");
    const [grid, pane] = await Promise.all([
      page.page.locator("#grid").boundingBox(),
      page.pane.boundingBox(),
    ]);
    expect(pane!.y).toBeGreaterThanOrEqual(grid!.y + grid!.height - 1);
    expect(pane!.width).toBeGreaterThanOrEqual(320);
    await page.picture("desk-narrow");
  });

  test("another language is spoken at once and typed cells stay", async () => {
    const page = await openDesk("clean");
    await page.type("H3", "typed");
    await page.type("H4", '=CORDON.NODEBUDGET(3,"thirty")');
    expect(await page.shows("H4", /must read like/)).toMatch(/must read like/);
    await page.pane.locator("fluent-dropdown#language").click();
    await page.pane.locator("fluent-option[value=fr]").click();
    await page.page.getByText("Ouvrir un fichier…").waitFor();
    expect(await page.shows("H3", "typed")).toBe("typed");
    expect(await page.shows("H4", /30\+10/)).not.toMatch(/must read like/);
  });
});
