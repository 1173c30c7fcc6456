import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
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

/** Where we keep facts in a workbook, and what the list of parts says of it. */
const FACTS = /^customXml\/cordonbook\d+\.xml$/;
const FACTS_LISTED = /<Override PartName="\/customXml\/cordonbook\d+\.xml"[^>]*>/g;

const judged = new Map<string, Promise<unknown[]>>();
/**
 * What is wrong with a file. The validator knows no schema for custom XML, so files that differ in the facts that we
 * keep there alone are judged by it once.
 */
async function faults(path: string): Promise<string[]> {
  const bytes = readFileSync(path);
  const content = createHash("sha256").update(extname(path));
  const parts = Object.entries(unzipSync(bytes)).filter(([part]) => !FACTS.test(part));
  for (const [part, data] of parts.sort(([one], [other]) => one.localeCompare(other)))
    content
      .update(`\n${part}\n`)
      .update(part === "[Content_Types].xml" ? strFromU8(data).replace(FACTS_LISTED, "") : data);
  const known = content.digest("hex");
  const found = judged.get(known) ?? (hasValidator ? openXmlFaults(path) : Promise.resolve([]));
  judged.set(known, found);
  return [...(await found).map((fault) => JSON.stringify(fault)), ...packageFaults(bytes)];
}

/** Parts of the file before that the file after has no longer, or has with other bytes. */
function lostParts(before: Uint8Array, after: Uint8Array): string[] {
  const [a, b] = [unzipSync(before), unzipSync(after)];
  return Object.keys(a).filter((part) => !(part in b) || Buffer.compare(a[part], b[part]) !== 0);
}

describe.each(FOREIGN_WORKBOOKS)("a workbook made by $writer", ({ ending, make }) => {
  let made: Uint8Array;
  let before: Promise<string[]>;
  const madeFolder = mkdtempSync(join(tmpdir(), "cordonbook-foreign-"));
  beforeAll(async () => {
    made = await make();
    const path = join(madeFolder, `made${ending}`);
    writeFileSync(path, made);
    before = faults(path);
  });
  afterAll(() => rmSync(madeFolder, { recursive: true, force: true }));

  test.each(WRITING)("comes through %s with every part and no new fault", async (command) => {
    const path = join(folder, `farm${ending}`);
    writeFileSync(path, made);
    const ways = [
      ["--in-place"],
      ["--save"],
      ["--out", join(folder, `else${ending}`)],
      ...(command === "check" ? [["--repair", "--out", join(folder, `mended${ending}`)]] : []),
    ];
    for (const way of ways) {
      const { exitCode, told } = await run([command, path, ...way]);
      expect([told, exitCode]).toEqual([expect.anything(), expect.any(Number)]);
    }
    const written = readdirSync(folder).filter((name) => !name.includes("backup"));
    expect(written).toHaveLength(ways.length);
    for (const name of written) {
      const after = readFileSync(join(folder, name));
      const lost = lostParts(made, after).filter((part) => !MAY_CHANGE.test(part));
      expect(lost.filter((part) => command !== "check" || !part.startsWith("xl/worksheets/sheet"))).toEqual(
        [],
      );
    }
    const known = await before;
    for (const found of await Promise.all(written.map((name) => faults(join(folder, name)))))
      expect(found.filter((fault) => !known.includes(fault))).toEqual([]);
  });
});
