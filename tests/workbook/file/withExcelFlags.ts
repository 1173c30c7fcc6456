import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

const OFFICE = "http://schemas.microsoft.com/office";
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';

/** Where the web extension part of these workbooks stands. */
export const WEB_EXTENSION = "xl/webextensions/webextension1.xml";

const attribute = (text: string) =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;").replace(/\n/g, "&#10;");

/** What a test's web extension is made of. */
export interface WebExtension {
  /** Name and value of each property as the part holds them. */
  readonly properties: Readonly<Record<string, string>>;
  /** The part that lists the task panes: the package, as the specification says, or the workbook. */
  readonly listedBy?: "package" | "workbook";
}

/**
 * A workbook with a web extension part, in the form of the specification MS-OWEXML (its section 2.2.7 and the examples in
 * section 3). No spreadsheet program made it.
 */
export function withWebExtension(
  workbook: Uint8Array,
  { properties, listedBy = "package" }: WebExtension,
): Uint8Array {
  const parts = unzipSync(workbook);
  const put = (name: string, text: string) => (parts[name] = strToU8(`${DECLARATION}${text}`));
  const before = (name: string, mark: string, text: string) =>
    (parts[name] = strToU8(strFromU8(parts[name]).replace(mark, text + mark)));
  const relation = (kind: string, target: string) =>
    `<Relationship Id="rIdWe" Type="${OFFICE}/2011/relationships/${kind}" Target="${target}"/>`;
  const inner = Object.entries(properties)
    .map(([name, value]) => `<we:property name="${attribute(name)}" value="${attribute(value)}"/>`)
    .join("");
  put(
    WEB_EXTENSION,
    `<we:webextension xmlns:we="${OFFICE}/webextensions/webextension/2010/11" id="{6A2F3B60-5D0B-4B63-9C80-2D6C1F0A7E11}">` +
      '<we:reference id="4080c027-c0a0-4be6-851b-9537cb595225" version="0.1.0.0" store="developer" storeType="Registry"/>' +
      `<we:alternateReferences/><we:properties>${inner}</we:properties><we:bindings/>` +
      '<we:snapshot xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"/></we:webextension>',
  );
  put(
    "xl/webextensions/taskpanes.xml",
    `<wetp:taskpanes xmlns:wetp="${OFFICE}/webextensions/taskpanes/2010/11"><wetp:taskpane dockstate="right" visibility="0" width="350" row="1">` +
      '<wetp:webextensionref xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rIdWe"/></wetp:taskpane></wetp:taskpanes>',
  );
  put(
    "xl/webextensions/_rels/taskpanes.xml.rels",
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relation("webextension", "webextension1.xml")}</Relationships>`,
  );
  before(
    listedBy === "package" ? "_rels/.rels" : "xl/_rels/workbook.xml.rels",
    "</Relationships>",
    relation("webextensiontaskpanes", "/xl/webextensions/taskpanes.xml"),
  );
  before(
    "[Content_Types].xml",
    "</Types>",
    `<Override PartName="/xl/webextensions/taskpanes.xml" ContentType="application/vnd.ms-office.webextensiontaskpanes+xml"/>` +
      `<Override PartName="/${WEB_EXTENSION}" ContentType="application/vnd.ms-office.webextension+xml"/>`,
  );
  return zipSync(parts, { mtime: "2026-01-05T10:00:00" });
}

/** A workbook as Excel would save it where it keeps these facts for the add-in: names with our prefix, JSON text. */
export function withExcelFlags(
  workbook: Uint8Array,
  flags: Iterable<readonly [string, string]>,
  listedBy?: WebExtension["listedBy"],
): Uint8Array {
  const properties = Object.fromEntries(
    [...flags].map(([key, value]) => [`Cordonbook.${key}`, JSON.stringify(value)]),
  );
  return withWebExtension(workbook, { properties, listedBy });
}
