import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { FileWorkbook } from "../../../src/workbook/file/fileWorkbook";
import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { openWorkbookFile } from "../../../src/workbook/file/openWorkbookFile";
import { hasValidator, openXmlFaults } from "../../samples/openXmlFaults";
import { packageFaults } from "../../samples/packageFaults";
import { buildWorkbook } from "./buildWorkbook";
import { WEB_EXTENSION, withExcelFlags, withWebExtension } from "./withExcelFlags";

const TRICKY = '[["a \\"quoted\\" <b> & \\n line", "ñ", "_x0041_"]]';
const SEASON = readFileSync(join(__dirname, "../../../sample-workbooks/larkmoor-mistakes.xlsx"));

const kept = async (bytes: Uint8Array) =>
  Object.fromEntries(await (await openWorkbookBytes("farm.xlsx", bytes)).readFlags());
const replaced = (bytes: Uint8Array, part: string, content: string) =>
  zipSync({ ...unzipSync(bytes), [part]: strToU8(content) });

describe("facts that Excel kept in a web extension part", () => {
  test.each(["package", "workbook"] as const)("are read where the %s lists the panes", async (listedBy) => {
    const bytes = withExcelFlags(buildWorkbook(), [["columnHeads", TRICKY]], listedBy);
    expect(await kept(bytes)).toEqual({ columnHeads: TRICKY });
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    expect(await workbook.readFlag("columnHeads")).toBe(TRICKY);
    expect([...(await workbook.readFlags("column"))]).toEqual([["columnHeads", TRICKY]]);
  });

  test("are read from a file on disk; a csv file keeps none", async () => {
    const folder = mkdtempSync(join(tmpdir(), "cordonbook-flags-"));
    try {
      writeFileSync(join(folder, "farm.xlsx"), withExcelFlags(buildWorkbook(), [["a", "1"]]));
      writeFileSync(join(folder, "farm.csv"), "Block,Row\n");
      const flagsOf = async (name: string) => {
        const book = await openWorkbookFile(join(folder, name));
        return [...(await book.readFlags().finally(() => book.close()))];
      };
      expect(await flagsOf("farm.xlsx")).toEqual([["a", "1"]]);
      expect(await flagsOf("farm.csv")).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test("are taken as they stand where they are no JSON text, and left alone without our prefix", async () => {
    const bytes = withWebExtension(buildWorkbook(), {
      properties: {
        "Cordonbook.plain": "as it stands",
        "Cordonbook.list": '[["x"]]',
        "Cordonbook.yes": "true",
        "Office.AutoShowTaskpaneWithDocument": "true",
        columnHeads: '"somebody else\'s"',
      },
    });
    expect(await kept(bytes)).toEqual({ plain: "as it stands", list: '[["x"]]', yes: "true" });
  });

  test.each([
    ["no XML", "PK"],
    ["XML cut short", "<we:webextension><we:properties>"],
    ["a document type", '<!DOCTYPE a [<!ENTITY b "c">]><a/>'],
    ["an unknown root", "<barn/>"],
    ["properties without names or values", '<a><property/><property name="Cordonbook.a"/></a>'],
    ["nothing", ""],
  ])("count as not kept where the part holds %s", async (_why, content) => {
    const bytes = replaced(withExcelFlags(buildWorkbook(), [["a", "1"]]), WEB_EXTENSION, content);
    expect(await kept(bytes)).toEqual({});
    expect(await (await FileWorkbook.open("farm.xlsx", bytes)).readFlag("a")).toBeUndefined();
  });

  test.each([WEB_EXTENSION, "xl/webextensions/taskpanes.xml", "xl/webextensions/_rels/taskpanes.xml.rels"])(
    "count as not kept where %s is missing",
    async (part) => {
      const { [part]: gone, ...parts } = unzipSync(withExcelFlags(buildWorkbook(), [["a", "1"]]));
      expect(gone).toBeDefined();
      expect(await kept(zipSync(parts))).toEqual({});
    },
  );

  test("stand behind our own part, and are taken away there", async () => {
    const before = withExcelFlags(SEASON, [
      ["both", "Excel's"],
      ["only", TRICKY],
      ["dropped", "Excel's"],
    ]);
    const workbook = await FileWorkbook.open("farm.xlsx", before);
    await workbook.writeFlag("both", "ours");
    await workbook.writeFlag("dropped", undefined);
    await workbook.writeFlag("new", TRICKY);
    await workbook.writeFlag("passing", "x");
    await workbook.writeFlag("passing", undefined);
    const expected = { both: "ours", only: TRICKY, new: TRICKY };
    expect(Object.fromEntries(await workbook.readFlags(""))).toEqual(expected);
    expect(await workbook.readFlag("dropped")).toBeUndefined();
    const after = workbook.bytes();
    expect(await kept(after)).toEqual(expected);
    const parts = unzipSync(after);
    expect(Buffer.from(parts[WEB_EXTENSION])).toEqual(Buffer.from(unzipSync(before)[WEB_EXTENSION]));
    expect(strFromU8(parts["customXml/cordonbook1.xml"])).not.toContain("passing");
    await workbook.writeFlag("dropped", "ours again");
    expect(await workbook.readFlag("dropped")).toBe("ours again");
    expect(packageFaults(after)).toEqual([]);
  });

  (hasValidator ? test : test.skip)(
    "stand in parts that the Open XML SDK takes, before and after",
    async () => {
      const folder = mkdtempSync(join(tmpdir(), "cordonbook-flags-"));
      try {
        const path = join(folder, "farm.xlsx");
        const bytes = withExcelFlags(SEASON, [["a", TRICKY]]);
        writeFileSync(path, bytes);
        expect(await openXmlFaults(path)).toEqual([]);
        const workbook = await FileWorkbook.open("farm.xlsx", bytes);
        await workbook.writeFlag("a", undefined);
        writeFileSync(path, workbook.bytes());
        expect(await openXmlFaults(path)).toEqual([]);
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
    60_000,
  );
});

test("a custom XML part of somebody else is no fact of ours, whatever its encoding or damage", async () => {
  for (const content of [
    "<flags xmlns='urn:else'><flag key='a'>1</flag></flags>",
    "<cut short",
    Buffer.from("\ufeff<a/>", "utf16le"),
  ]) {
    const parts = unzipSync(buildWorkbook());
    const rels = "xl/_rels/workbook.xml.rels";
    const type = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml";
    const bytes = zipSync({
      ...parts,
      "customXml/item1.xml": typeof content === "string" ? strToU8(content) : new Uint8Array(content),
      [rels]: strToU8(
        strFromU8(parts[rels]).replace(
          "</Relationships>",
          `<Relationship Id="rIdX" Type="${type}" Target="../customXml/item1.xml"/></Relationships>`,
        ),
      ),
    });
    expect(await kept(bytes)).toEqual({});
    const workbook = await FileWorkbook.open("farm.xlsx", bytes);
    await workbook.writeFlag("a", "ours");
    expect(await kept(workbook.bytes())).toEqual({ a: "ours" });
  }
});
