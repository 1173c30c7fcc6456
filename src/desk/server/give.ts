import path from "node:path";
import { fileURLToPath } from "node:url";
import { buildEngine } from "./buildEngine";
import { buildPage } from "./buildPage";
import { givePage } from "./givePage";
import { pageFolders } from "./pageFolders";

/** Part of `npm run build`: the page without Excel into dist/page. */
const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../..");
const [built, engine] = [path.join(root, ".cache/page"), path.join(root, ".cache/engine")];
await Promise.all([buildEngine(root, engine), buildPage(root, "production", built)]);
await givePage(root, pageFolders(root, built, engine), path.join(root, "dist/page"));
