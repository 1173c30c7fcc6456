import path from "node:path";
import type { ServedFolders } from "./servePage";

/** The folders that the page is put together from; `built` holds its own script. */
export function pageFolders(root: string, built: string, engine: string): ServedFolders {
  return {
    "/": { folder: built, endings: [".html", ".js", ".css", ".map", ".svg"] },
    "/engine/": { folder: engine, endings: [".js", ".css"] },
    "/sample-workbooks/": { folder: path.join(root, "sample-workbooks"), endings: [".xlsx"] },
  };
}
