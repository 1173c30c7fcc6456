import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import vm from "node:vm";

/** What carries a message of the proxies to a host and brings its answers and events back, all as JSON text. */
export interface HostBridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost?: (text: string) => void;
}

export interface ExcelProxies {
  readonly excel: typeof Excel;
  readonly office: { context: { requirements: { isSetSupported(set: string, version?: string): boolean } } };
  /** Gives the loaded proxies to the next person who needs some; this one is gone then, with what they listened to. */
  release(): void;
}

export interface LoadedPage {
  readonly Excel: typeof Excel;
  Office: unknown;
  readonly OfficeExtension: {
    HostBridge: { init(bridge: HostBridge): void };
    BatchApiHelper: {
      createPropertyObject(
        type: unknown,
        parent: object,
        name: string,
        isCollection: boolean,
        flags: number,
      ): object;
    };
    CommonUtility: { _doApiNotSupportedCheck: boolean };
    GenericEventRegistration: { s_genericEventRegistrations: object };
  };
}

let script: vm.Script | undefined;
const spare: LoadedPage[] = [];

/**
 * Microsoft's own Excel proxies, loaded from the npm package into a context of their own, with every batch handed to
 * `bridge` instead of Excel. The hook (OfficeExtension.HostBridge) is undocumented: excelProxies.test.ts proves it
 * for the pinned version of the package.
 */
export function loadExcelProxies(
  bridge: HostBridge,
  supports: (set: string, version?: string) => boolean,
): ExcelProxies {
  const page = spare.pop() ?? loadPage();
  const office = { context: { requirements: { isSetSupported: supports } } };
  page.Office = office;
  page.OfficeExtension.CommonUtility._doApiNotSupportedCheck = true;
  page.OfficeExtension.HostBridge.init(bridge);
  const release = () => {
    page.OfficeExtension.GenericEventRegistration.s_genericEventRegistrations = {};
    spare.push(page);
  };
  return { excel: page.Excel, office, release };
}

/** A page of its own with these globals beside the usual ones, for what the bundle looks at while it loads. */
export function loadPage(globals: Readonly<Record<string, unknown>> = {}): LoadedPage {
  script ??= new vm.Script(readFileSync(bundlePath(), "utf8"), { filename: "excel-web-16.00.js" });
  const page: Record<string, unknown> = {
    console,
    setTimeout: (act: () => void, wait = 0) => {
      const timer = setTimeout(act, wait);
      return wait > 500 ? timer.unref() : timer;
    },
    clearTimeout,
    setInterval: (act: () => void, every: number) => setInterval(act, every).unref(),
    clearInterval,
    performance,
    navigator: { userAgent: "none" },
    location: { href: "https://localhost/", search: "", hash: "" },
    document: {
      URL: "https://localhost/",
      getElementsByTagName: () => [],
      createElement: () => ({}),
      addEventListener: () => undefined,
    },
    XMLHttpRequest: class {},
    addEventListener: () => undefined,
    ...globals,
  };
  page.window = page.self = page.top = page.parent = page;
  const context = vm.createContext(page);
  script.runInContext(context);
  const loaded = context as unknown as LoadedPage;
  addNotes(loaded);
  return loaded;
}

/**
 * Notes of a sheet (https://learn.microsoft.com/javascript/api/excel/excel.notecollection, ExcelApi 1.18), which the
 * newest package does not know though Excel does: what is asked of them goes through the proxies of comments, whose
 * members have the same names, to Notes.
 */
function addNotes({ Excel: excel, OfficeExtension: { BatchApiHelper } }: LoadedPage): void {
  if ("notes" in excel.Worksheet.prototype)
    throw new Error("The package knows notes now: use its own proxies");
  const kept = new WeakMap<object, object>();
  Object.defineProperty(excel.Worksheet.prototype, "notes", {
    get(this: object) {
      const made =
        kept.get(this) ??
        BatchApiHelper.createPropertyObject(excel.CommentCollection, this, "Notes", true, 4);
      kept.set(this, made);
      return made;
    },
  });
}

function bundlePath(): string {
  const manifest = createRequire(join(process.cwd(), "package.json")).resolve(
    "@microsoft/office-js/package.json",
  );
  return join(manifest, "..", "dist", "excel-web-16.00.js");
}
