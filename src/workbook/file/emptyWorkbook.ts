import { strToU8, zipSync } from "fflate";
import { xmlAttribute } from "./xmlSpans";

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** The bytes of a workbook with one blank sheet: what results go into that have no workbook of their own. */
export function emptyWorkbook(sheet: string): Uint8Array {
  const override = (part: string, type: string) =>
    `<Override PartName="/${part}" ContentType="${TYPES}.${type}+xml"/>`;
  const relation = (id: string, kind: string, target: string) =>
    `<Relationship Id="${id}" Type="${RELATIONS}/${kind}" Target="${target}"/>`;
  const parts: Record<string, string> = {
    "[Content_Types].xml":
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      `<Default Extension="xml" ContentType="application/xml"/>${override("xl/workbook.xml", "sheet.main")}${override("xl/worksheets/sheet1.xml", "worksheet")}${override("xl/styles.xml", "styles")}</Types>`,
    "_rels/.rels": `<Relationships xmlns="${PACKAGE}/relationships">${relation("rId1", "officeDocument", "xl/workbook.xml")}</Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets><sheet name="${xmlAttribute(sheet)}" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${PACKAGE}/relationships">${relation("rId1", "worksheet", "worksheets/sheet1.xml")}${relation("rId2", "styles", "styles.xml")}</Relationships>`,
    "xl/worksheets/sheet1.xml": `<worksheet xmlns="${MAIN}"><cols><col min="1" max="1" width="80" customWidth="1"/></cols><sheetData/></worksheet>`,
    "xl/styles.xml":
      `<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>` +
      '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
      '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
      '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
  };
  return zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, xml]) => [
        name,
        [strToU8(DECLARATION + xml), { mtime: "1980-01-01T00:00:00" }],
      ]),
    ),
  );
}
