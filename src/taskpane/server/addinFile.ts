import path from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".png": "image/png",
  ".txt": "text/plain; charset=utf-8",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ".xml": "text/xml; charset=utf-8",
};

/** A file of the add-in as a server sends it. */
export interface AddinFile {
  /** Path below dist/, with slashes. */
  readonly file: string;
  readonly headers: Readonly<Record<string, string>>;
}

/**
 * The file that an address asks for, with the headers every host of the add-in should send. Icons may be kept by
 * Office, which refuses icons that may not be cached; no header makes Excel ask for the functions' list more often than
 * once a day (https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json), so an update raises the
 * version of the manifest; the script's address carries its own fingerprint and may be kept for good. The pane must be
 * allowed to stand in Office's frame, so no header forbids that.
 *
 * @param address path and query of the request, below the add-in's own folder
 * @returns undefined when that is no file that could be one of ours
 */
export function addinFile(address: string): AddinFile | undefined {
  const [encoded, query] = address.split("?");
  let pathname: string;
  try {
    pathname = decodeURIComponent(encoded);
  } catch {
    return undefined;
  }
  const file = pathname.replace(/^\/+/, "") || "taskpane.html";
  const type = TYPES[path.posix.extname(file)];
  if (!type || !/^[\w.-]+(\/[\w.-]+)*$/.test(file) || file.split("/").includes("..")) return undefined;
  return {
    file,
    headers: {
      "Content-Type": type,
      "Cache-Control": caching(file, query),
      "Access-Control-Allow-Origin": "*",
      "X-Content-Type-Options": "nosniff",
      "Referrer-Policy": "no-referrer",
    },
  };
}

function caching(file: string, query: string | undefined): string {
  if (file.startsWith("icons/")) return "public, max-age=86400";
  if (file.endsWith(".js") && query) return "public, max-age=31536000, immutable";
  return "no-cache";
}
