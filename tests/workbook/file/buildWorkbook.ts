import { strToU8, zipSync } from "fflate";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** What a test's workbook is made of; every part can be replaced or left out. */
export interface BuiltWorkbook {
  /** Inner XML of each sheet's sheetData, by sheet name. */
  readonly sheets?: Readonly<Record<string, string>>;
  /** Merged cells of a sheet, as addresses. */
  readonly merged?: Readonly<Record<string, readonly string[]>>;
  /** Inner XML of the shared strings. */
  readonly strings?: string;
  /** Inner XML of the style sheet. */
  readonly styles?: string;
  /** Attributes of workbookPr. */
  readonly workbookPr?: string;
  /** Inner XML of definedNames. */
  readonly names?: string;
  /** Parts added or, where undefined, left out. */
  readonly parts?: Readonly<Record<string, string | Uint8Array | undefined>>;
  /** Namespace base of a strict file instead of the transitional one. */
  readonly strict?: boolean;
}

/** The parts of a small workbook as text. */
export function workbookParts(built: BuiltWorkbook = {}): Record<string, string | Uint8Array> {
  const main = built.strict ? "http://purl.oclc.org/ooxml/spreadsheetml/main" : MAIN;
  const relations = built.strict ? "http://purl.oclc.org/ooxml/officeDocument/relationships" : RELATIONS;
  const sheets = Object.entries(built.sheets ?? { Sheet1: "" });
  const relation = (id: string, kind: string, target: string) =>
    `<Relationship Id="${id}" Type="${relations}/${kind}" Target="${target}"/>`;
  const rels = (inner: string) =>
    `<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inner}</Relationships>`;
  const parts: Record<string, string | Uint8Array | undefined> = {
    "[Content_Types].xml":
      '<?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">' +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      '<Default Extension="xml" ContentType="application/xml"/>' +
      '<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>' +
      sheets
        .map(
          (_, i) =>
            `<Override PartName="/xl/worksheets/sheet${i + 1}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`,
        )
        .join("") +
      '<Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/>' +
      '<Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>',
    "_rels/.rels": rels(relation("rId1", "officeDocument", "xl/workbook.xml")),
    "xl/workbook.xml":
      `<?xml version="1.0" encoding="UTF-8"?><workbook xmlns="${main}" xmlns:r="${relations}"><workbookPr ${built.workbookPr ?? ""}/><sheets>` +
      sheets.map(([name], i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join("") +
      `</sheets>${built.names ? `<definedNames>${built.names}</definedNames>` : ""}</workbook>`,
    "xl/_rels/workbook.xml.rels": rels(
      sheets.map((_, i) => relation(`rId${i + 1}`, "worksheet", `worksheets/sheet${i + 1}.xml`)).join("") +
        relation("rId90", "sharedStrings", "sharedStrings.xml") +
        relation("rId91", "styles", "/xl/styles.xml"),
    ),
    "xl/sharedStrings.xml": `<sst xmlns="${main}">${built.strings ?? ""}</sst>`,
    "xl/styles.xml": `<styleSheet xmlns="${main}">${built.styles ?? '<fonts count="1"><font/></fonts><fills count="1"><fill><patternFill patternType="none"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="1"><xf/></cellXfs>'}</styleSheet>`,
  };
  sheets.forEach(([name, data], i) => {
    const merged = (built.merged?.[name] ?? []).map((address) => `<mergeCell ref="${address}"/>`);
    parts[`xl/worksheets/sheet${i + 1}.xml`] =
      `<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="${main}" xmlns:r="${relations}"><dimension ref="A1:C3"/><sheetData>${data}</sheetData>${merged.length > 0 ? `<mergeCells>${merged.join("")}</mergeCells>` : ""}</worksheet>`;
  });
  return Object.fromEntries(
    Object.entries({ ...parts, ...built.parts }).filter(
      (entry): entry is [string, string | Uint8Array] => entry[1] !== undefined,
    ),
  );
}

/** The bytes of a small workbook. */
export function buildWorkbook(built: BuiltWorkbook = {}): Uint8Array {
  return zipParts(workbookParts(built));
}

/** Packs parts as a zip file. */
export function zipParts(parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  return zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, part]) => [
        name,
        [typeof part === "string" ? strToU8(part) : part, { mtime: "2026-01-01T00:00:00" }],
      ]),
    ),
  );
}

/** Changes the fields of one entry's central and local records: sizes, method, flags, name of equal length. */
export function changeEntry(
  zip: Uint8Array,
  name: string,
  change: { unpackedBytes?: number; method?: number; flags?: number; crc?: number; name?: string },
): Uint8Array {
  const bytes = zip.slice();
  const view = new DataView(bytes.buffer);
  const text = new TextDecoder("latin1");
  let changed = 0;
  for (let at = 0; at + 30 <= bytes.length; at++) {
    const signature = view.getUint32(at, true);
    const local = signature === 0x04034b50;
    if (!local && signature !== 0x02014b50) continue;
    const base = local ? at + 6 : at + 8;
    const nameAt = at + (local ? 30 : 46);
    const nameLength = view.getUint16(base + 20, true);
    if (text.decode(bytes.subarray(nameAt, nameAt + nameLength)) !== name) continue;
    if (change.flags !== undefined) view.setUint16(base, change.flags, true);
    if (change.method !== undefined) view.setUint16(base + 2, change.method, true);
    if (change.crc !== undefined) view.setUint32(base + 8, change.crc, true);
    if (change.unpackedBytes !== undefined) view.setUint32(base + 16, change.unpackedBytes, true);
    if (change.name !== undefined) bytes.set(strToU8(change.name), nameAt);
    changed++;
  }
  if (changed !== 2) throw new Error(`${name}: ${changed} records changed`);
  return bytes;
}
