import { readFileSync } from "node:fs";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import type { ExcelHost } from "../workbook/office/excelHost";
import type { HostBridge } from "../workbook/office/excelProxies";
import { problemsOf } from "./problemsOf";
import { scriptFor } from "./scriptFor";
import { PATIENCE } from "./shared";

const root = process.cwd();
const ADDRESS = "https://addin.test/";
const OFFICE_JS = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

export interface ExcelPageOptions {
  readonly displayLanguage?: string;
  /** Highest ExcelApi set, such as 14 for 1.14. */
  readonly excelApi?: number;
  /** What the workbook is as a file. */
  readonly file?: Uint8Array;
  /** What Office.onReady says; "none" answers the request for office.js with nothing at all. */
  readonly host?: "Excel" | "Word" | "none";
  /** Files beside the page that are not there. */
  readonly missing?: readonly string[];
  /** A finished build that is served in place of the page's sources. */
  readonly build?: Build;
}

export interface Build {
  readonly folder: string;
  /** Told of each script before it is sent; false lets it not arrive. */
  readonly asked: (file: string, page: Page) => Promise<boolean>;
}

/**
 * The add-in's own page in a browser, under its own content security policy, with Microsoft's real Excel proxies
 * speaking to an in-memory host of the test.
 */
export async function openExcelPage(
  browser: Browser,
  host: ExcelHost,
  options: ExcelPageOptions = {},
): Promise<{ page: Page; problems: string[] }> {
  const context = await browser.newContext({ viewport: { width: 350, height: 600 } });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const problems = problemsOf(page);

  const bridge: HostBridge = { sendMessageToHost: () => undefined };
  host.join("me", bridge);
  bridge.onMessageFromHost = (text) => {
    void page.evaluate((answer) => window.answerFromHost(answer), text).catch(() => undefined);
  };
  await page.exposeFunction("fileOfHost", () => [...(options.file ?? [])]);
  await page.exposeFunction("sendToHost", (text: string) => bridge.sendMessageToHost(text));

  const { build } = options;
  const script = build ? "" : await scriptFor(path.join(root, "src/taskpane/excelPage.ts"));
  const html = readFileSync(path.join(root, "src/taskpane/index.html"), "utf8");
  await page.route("**/*", async (route) => {
    const address = route.request().url();
    const send = (contentType: string, body: string | Buffer) => route.fulfill({ contentType, body });
    if (address === OFFICE_JS)
      return options.host === "none" ? route.abort() : send("text/javascript", officeScript(options));
    const { pathname } = new URL(address);
    if (build && address.startsWith(ADDRESS) && /\.(html|js)$/.test(pathname)) {
      const isScript = pathname.endsWith(".js");
      if (isScript && !(await build.asked(pathname.slice(1), page))) return route.abort();
      return send(
        isScript ? "text/javascript" : "text/html",
        readFileSync(path.join(build.folder, pathname)),
      );
    }
    if (address === `${ADDRESS}taskpane.html`)
      return send("text/html", html.replace("</head>", '<script defer src="taskpane.js"></script></head>'));
    if (address === `${ADDRESS}taskpane.js`) return send("text/javascript", script);
    if (address.startsWith(`${ADDRESS}sample-workbooks/`))
      return options.missing?.includes(pathname.slice(1))
        ? route.fulfill({ status: 404 })
        : send("application/octet-stream", readFileSync(path.join(root, pathname)));
    if (address.startsWith(`${ADDRESS}icons/`))
      return send("image/png", readFileSync(path.join(root, "src/taskpane", new URL(address).pathname)));
    problems.push(`asked for ${address}`);
    return route.abort();
  });
  await page.goto(`${ADDRESS}taskpane.html`);
  return { page, problems };
}

/** What stands in for office.js: Microsoft's proxies from the test's package, and the little of Office the page asks. */
function officeScript({
  displayLanguage = "en-US",
  excelApi = 17,
  host = "Excel",
}: ExcelPageOptions): string {
  const proxies = readFileSync(
    path.join(root, "node_modules/@microsoft/office-js/dist/excel-web-16.00.js"),
    "utf8",
  );
  return `${proxies}
    window.associated = {};
    window.CustomFunctions = {
      associate: (id, run) => { window.associated[id] = run; },
      Error: class extends Error { constructor(code, message) { super(message); this.code = code; } },
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    };
    window.startup = "None";
    Excel.createWorkbook = async (base64) => { window.copy = base64; };
    window.Office = {
      addin: {
        getStartupBehavior: async () => window.startup,
        setStartupBehavior: async (next) => { window.startup = next; },
      },
      HostType: { Excel: "Excel" },
      onReady: async () => ({ host: ${JSON.stringify(host)} }),
      context: {
        document: {
          getFileAsync: (type, options, callback) => window.fileOfHost().then((bytes) => callback({
            status: "succeeded",
            value: {
              size: bytes.length,
              sliceCount: 1,
              getSliceAsync: (index, next) => next({ status: "succeeded", value: { data: bytes, size: bytes.length } }),
              closeAsync: () => undefined,
            },
          })),
        },
        diagnostics: { version: "16.0.19201.20002", platform: "PC" },
        displayLanguage: ${JSON.stringify(displayLanguage)},
        requirements: {
          isSetSupported: (set, version) => set !== "ExcelApi" || Number(version.split(".")[1]) <= ${excelApi},
        },
      },
    };
    const bridge = { sendMessageToHost: (text) => window.sendToHost(text) };
    window.answerFromHost = (text) => bridge.onMessageFromHost(text);
    OfficeExtension.HostBridge.init(bridge);`;
}

declare global {
  interface Window {
    answerFromHost(text: string): void;
    sendToHost(text: string): Promise<void>;
    /** What Office keeps as the behaviour at opening. */
    startup: string;
    /** The workbook that was opened from bytes, in base64. */
    copy?: string;
    associated: Record<string, (...args: unknown[]) => unknown>;
  }
}
