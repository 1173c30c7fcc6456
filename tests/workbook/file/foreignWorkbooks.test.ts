import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { unzipSync } from "fflate";
import { run } from "../../cli/testTerminal";
import { hasValidator, openXmlFaults } from "../../samples/openXmlFaults";
import { packageFaults } from "../../samples/packageFaults";
import { FOREIGN_WORKBOOKS } from "./foreignWorkbooks";

jest.setTimeout(180_000);

const WRITING = ["check", "choose", "gaps", "crop", "cards"];
/** Parts that sheets of ours and marks may change. */
const MAY_CHANGE = /^(\[Content_Types\]\.xml|xl\/(workbook|styles)\.xml|xl\/_rels\/workbook\.xml\.rels)$/;

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "cordonbook-foreign-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const judged = new Map<string, Promise<string[]>>();
/** What is wrong with a file; files of the same bytes are judged once. */
function faults(path: string): Promise<string[]> {
  const bytes = readFileSync(path);
  const known = `${extname(path)} ${createHash("sha256").update(bytes).digest("hex")}`;
  const found = judged.get(known) ?? faultsOf(path, bytes);
  judged.set(known, found);
  return found;
}

async function faultsOf(path: string, bytes: Uint8Array): Promise<string[]> {
  const found = hasValidator ? await openXmlFaults(path) : [];
  return [...found.map((fault) => JSON.stringify(fault)), ...packageFaults(bytes)];
}

/** Parts of the file before that the file after has no longer, or has with other bytes. */
function lostParts(before: Uint8Array, after: Uint8Array): string[] {
  const [a, b] = [unzipSync(before), unzipSync(after)];
  return Object.keys(a).filter((part) => !(part in b) || Buffer.compare(a[part], b[part]) !== 0);
}

describe.each(FOREIGN_WORKBOOKS)("a workbook made by $writer", ({ ending, make }) => {
  let made: Uint8Array;
  beforeAll(async () => {
    made = await make();
  });

  test.each(WRITING)("comes through %s with every part and no new fault", async (command) => {
    const path = join(folder, `farm${ending}`);
    writeFileSync(path, made);
    const before = await faults(path);
    const ways = [["--in-place"], ["--save"], ["--out", join(folder, `else${ending}`)]];
    for (const way of ways) {
      const { exitCode, told } = await run([command, path, ...way]);
      expect([told, exitCode]).toEqual([expect.anything(), expect.any(Number)]);
    }
    const written = readdirSync(folder).filter((name) => !name.includes("backup"));
    expect(written).toHaveLength(3);
    for (const name of written) {
      const after = readFileSync(join(folder, name));
      const lost = lostParts(made, after).filter((part) => !MAY_CHANGE.test(part));
      expect(lost.filter((part) => command !== "check" || !part.startsWith("xl/worksheets/sheet"))).toEqual(
        [],
      );
      expect((await faults(join(folder, name))).filter((fault) => !before.includes(fault))).toEqual([]);
    }
  });
});
