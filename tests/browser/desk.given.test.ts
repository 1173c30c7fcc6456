import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, BrowserContext } from "playwright-core";
import { givePage } from "../../src/desk/server/givePage";
import { pageFolders } from "../../src/desk/server/pageFolders";
import { shippedPackages } from "../../src/desk/server/shippedPackages";
import { DeskPage } from "./deskPage";
import { startChromium } from "./chromium";

const root = process.cwd();
const UNDER = "/farm/tools/cordonbook/";
const KINDS: Record<string, string> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
};

let folder: string;
let built: string;
let given: string;
let browser: Browser;
let server: Server;
let other: Server | undefined;
let port = 0;

/** A web host that knows nothing of the page: files of a folder under a path, no header but the kind. */
function startHost(): Promise<void> {
  server = createServer((request, response) => {
    const { pathname } = new URL(request.url!, "http://host");
    const name = pathname.startsWith(UNDER) ? pathname.slice(UNDER.length) || "index.html" : "none";
    readFile(path.join(given, name)).then(
      (bytes) => response.writeHead(200, { "Content-Type": KINDS[path.extname(name)] ?? "" }).end(bytes),
      () => response.writeHead(404).end(),
    );
  });
  return new Promise((resolve) =>
    server.listen(port, "127.0.0.1", () => {
      ({ port } = server.address() as AddressInfo);
      resolve();
    }),
  );
}

function stopHost(): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  server.closeAllConnections();
  return closed;
}

const address = () => `http://127.0.0.1:${port}${UNDER}`;

async function open(context: BrowserContext): Promise<DeskPage> {
  const page = new DeskPage(await context.newPage(), context, address());
  await page.page.goto(address());
  await page.isReady();
  return page;
}

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "given-"));
  built = path.join(folder, "built");
  given = path.join(folder, "given");
  await cp(path.join(root, ".cache/desk"), built, { recursive: true });
  await givePage(root, pageFolders(root, built, path.join(root, ".cache/engine")), given);
  browser = await startChromium();
});

beforeEach(startHost);
afterEach(stopHost);

afterAll(async () => {
  await browser.close();
  other?.close();
  other?.closeAllConnections();
  await rm(folder, { recursive: true, force: true });
});

test("holds the page, the samples and the licence of every package in it, and nothing of Microsoft's", async () => {
  const files = await readdir(given, { recursive: true });
  expect(files).toEqual(
    expect.arrayContaining([
      "index.html",
      "desk.js",
      "page.css",
      "worker.js",
      path.join("engine", "engine.js"),
      path.join("engine", "words-fr.js"),
      path.join("sample-workbooks", "larkmoor-clean.xlsx"),
    ]),
  );
  expect(files.filter((name) => /office|excel-|\.map$/i.test(name))).toEqual([]);
  for (const name of files.filter((name) => /\.(js|html)$/.test(name)))
    expect(await readFile(path.join(given, name), "utf8")).not.toContain("appsforoffice.microsoft.com");
  const engine = files.flatMap((name) => (path.dirname(name) === "engine" ? [path.basename(name)] : []));
  const needed = ["engine.js", "engine.css", "words-en.js", "words-es.js", "words-fr.js"];
  expect(engine).toEqual(expect.arrayContaining(needed));
  // What stands in for its dictionaries of hyphenation, and what its scripts share.
  for (const name of engine.filter((each) => !needed.includes(each)))
    expect(name).toMatch(/^(none|chunk)-\w+\.js$/);
  const licences = await readFile(path.join(given, "licences.txt"), "utf8");
  expect(licences).toContain(await readFile(path.join(root, "LICENSE"), "utf8"));
  for (const { name, version } of shippedPackages()) expect(licences).toContain(`\n${name} ${version} (`);
  expect(licences).toContain("TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION");
});

test("stands under a path, opens again without a network, and asks no other address", async () => {
  const context = await browser.newContext({ locale: "en" });
  const desk = await open(context);
  await desk.pane.locator("#season-picture").getByText("North Bench").first().waitFor();
  await desk.page.locator("#notice").getByText("it also opens without a network").waitFor();

  await stopHost();
  await expect(fetch(address())).rejects.toThrow();
  await desk.page.reload();
  await desk.isReady();
  await desk.pane.locator("#season-picture").getByText("North Bench").first().waitFor();
  await desk.page.goto(`${address()}index.html?workbook=mistakes&language=fr`);
  await desk.isReady();
  expect(await desk.page.locator("#workbook option:checked").innerText()).toContain("saison avec des fautes");

  expect(desk.foreign).toEqual([]);
  expect(desk.problems).toEqual([]);
  await context.close();
});

test("its policy lets nothing leave for another address, whatever asks", async () => {
  let asked = 0;
  other = createServer((_, response) => {
    asked++;
    response.writeHead(200, { "Access-Control-Allow-Origin": "*" }).end();
  });
  await new Promise<void>((resolve) => other!.listen(0, "127.0.0.1", resolve));
  const elsewhere = `http://127.0.0.1:${(other.address() as AddressInfo).port}/`;
  await fetch(elsewhere);
  expect(asked).toBe(1);
  const page = await browser.newPage();
  await page.goto(address());
  const expected = ["connect-src", "frame-src", "img-src", "script-src-elem", "style-src-elem"];
  const refused = await page.evaluate(
    async ([elsewhere, most]) => {
      const directives: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) =>
        directives.push(effectiveDirective),
      );
      await fetch(elsewhere).catch(() => undefined);
      navigator.sendBeacon(elsewhere, "counts");
      for (const [name, attribute] of [
        ["img", "src"],
        ["script", "src"],
        ["iframe", "src"],
        ["link", "href"],
      ]) {
        const element = document.createElement(name);
        if (name === "link") element.setAttribute("rel", "stylesheet");
        element.setAttribute(attribute, elsewhere);
        document.body.append(element);
      }
      // The page is still starting beside this, so that an answer may take its time.
      const end = performance.now() + 10_000;
      while (new Set(directives).size < most && performance.now() < end)
        await new Promise((resolve) => setTimeout(resolve, 50));
      return [...new Set(directives)].sort();
    },
    [elsewhere, expected.length] as const,
  );
  expect(refused).toEqual(expected);
  expect(asked).toBe(1);
  await page.close();
});

test("a newer build is told in words and used from the next opening on; half of one changes nothing", async () => {
  const context = await browser.newContext({ locale: "en" });
  const desk = await open(context);
  await desk.page.locator("#notice").getByText("it also opens without a network").waitFor();
  await desk.page.reload();
  await desk.isReady();
  const older = await readFile(path.join(given, "page.css"));
  const style = path.join(built, "page.css");
  await writeFile(style, `${await readFile(style, "utf8")}\n#top { border-top: 3px solid; }\n`);
  await givePage(root, pageFolders(root, built, path.join(root, ".cache/engine")), given);
  const newer = await readFile(path.join(given, "page.css"));

  await writeFile(path.join(given, "page.css"), older);
  const waits = () =>
    desk.page.evaluate(async () => {
      const registration = (await navigator.serviceWorker.getRegistration())!;
      await registration.update().catch(() => undefined);
      const { installing } = registration;
      await new Promise<void>((resolve) => {
        if (installing === null) return resolve();
        installing.addEventListener("statechange", () => resolve());
      });
      return registration.waiting !== null;
    });
  expect(await waits()).toBe(false);
  expect(await desk.page.locator("#notice").count()).toBe(0);

  await writeFile(path.join(given, "page.css"), newer);
  expect(await waits()).toBe(true);
  await desk.page.locator("#notice").getByText("A newer version of this page is ready").waitFor();
  const border = (page: DeskPage) =>
    page.page.locator("#top").evaluate((top) => getComputedStyle(top).borderTopWidth);
  expect(await border(desk)).toBe("0px");
  await desk.page.close();
  const again = await open(context);
  expect(await border(again)).toBe("3px");
  expect(await again.page.evaluate(() => caches.keys())).toHaveLength(1);
  await context.close();
});
