import { workbookParts, zipParts } from "./buildWorkbook";

const HEADS = ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (in)", "Positions", "Live spurs"];
/** A row of the sheet from row 2 on: vine, side, positions, live spurs. */
const ROWS: readonly (readonly [vine: number, side: string, positions: number, spurs: number])[] = [
  [1, "left", 9, 8],
  [1, "right", 9, 7],
  [2, "left", 9, 9],
  [2, "right", 10, 8],
  [3, "left", 9, 6],
  [3, "right", 10, 8],
];
/** Styles by number: plain, struck, struck by a value of true, not struck by a value of 0. */
const STYLES =
  '<fonts count="4"><font/><font><strike/></font><font><strike val="true"/></font><font><strike val="0"/></font></fonts>' +
  '<fills count="1"><fill><patternFill patternType="none"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs>' +
  '<cellXfs count="4"><xf/><xf fontId="1"/><xf fontId="2"/><xf fontId="3"/></cellXfs>';
const COMMENTS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const THREADS = "http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/**
 * Counts on which people left marks: row 3 is struck out, of row 5 one cell, row 4 carries a line that is switched off;
 * a note on I2, a comment with an answer on I6; row 7 and column H are hidden, and so is the sheet
 * Spare, which holds the same counts.
 */
export function markedWorkbook(): Uint8Array {
  const cell = (row: number, column: number, value: string | number): string => {
    const at = `${String.fromCharCode(65 + column)}${row}`;
    const style = row === 3 ? 1 : row === 5 && column === 8 ? 2 : row === 4 ? 3 : 0;
    return typeof value === "number"
      ? `<c r="${at}" s="${style}"><v>${value}</v></c>`
      : `<c r="${at}" s="${style}" t="str"><v>${value}</v></c>`;
  };
  const line = (row: number, values: readonly (string | number)[]) =>
    `<row r="${row}"${row === 7 ? ' hidden="1"' : ""}>${values.map((value, column) => cell(row, column, value)).join("")}</row>`;
  const data =
    line(1, HEADS) +
    ROWS.map(([vine, side, positions, spurs], at) =>
      line(at + 2, ["North Bench", 1, vine, side, "A", 1, 40, positions, spurs]),
    ).join("");
  const parts = workbookParts({ sheets: { Cordons: data, Spare: data }, styles: STYLES });
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
  const rels = (inner: string) =>
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inner}</Relationships>`;
  return zipParts({
    ...parts,
    "xl/worksheets/sheet1.xml": String(parts["xl/worksheets/sheet1.xml"]).replace(
      "<sheetData>",
      '<cols><col min="8" max="8" width="9" hidden="1"/></cols><sheetData>',
    ),
    "xl/workbook.xml": String(parts["xl/workbook.xml"]).replace(
      'name="Spare"',
      'name="Spare" state="hidden"',
    ),
    "xl/worksheets/_rels/sheet1.xml.rels": rels(
      relation("rId1", `${RELATIONS}/comments`, "../comments1.xml") +
        relation(
          "rId2",
          "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
          "../threadedComments/threadedComment1.xml",
        ),
    ),
    "xl/comments1.xml": `<comments xmlns="${COMMENTS}"><authors><author>Cleo</author><author>tc={1}</author></authors><commentList><comment ref="I2" authorId="0"><text><r><rPr><b/></rPr><t>really </t></r><r><t>9</t></r><rPh sb="0" eb="1"><t>77</t></rPh></text></comment><comment ref="I6" authorId="1"><text><t>[Threaded comment] 6</t></text></comment></commentList></comments>`,
    "xl/threadedComments/threadedComment1.xml": `<ThreadedComments xmlns="${THREADS}"><threadedComment ref="I6" personId="{a}" id="{1}"><text>12?</text></threadedComment><threadedComment ref="I6" personId="{b}" id="{2}" parentId="{1}"><text>look again</text></threadedComment></ThreadedComments>`,
    "xl/persons/person.xml": `<personList xmlns="${THREADS}"><person displayName="Ana Ruiz" id="{a}"/><person displayName="Ben Hale" id="{b}"/></personList>`,
    "xl/_rels/workbook.xml.rels": String(parts["xl/_rels/workbook.xml.rels"]).replace(
      "</Relationships>",
      `${relation("rId95", "http://schemas.microsoft.com/office/2017/10/relationships/person", "persons/person.xml")}</Relationships>`,
    ),
  });
}

/** What every host makes of it. */
export const MARKS = {
  marked: [
    ...HEADS.map((_, at) => ({ row: 3, column: at + 1, struck: true })),
    { row: 5, column: 9, struck: true },
    { row: 2, column: 9, note: "Cleo: really 9" },
    { row: 6, column: 9, note: "Ana Ruiz: 12? | Ben Hale: look again" },
  ],
  hiddenRows: [7],
  hiddenColumns: [8],
};

/** What the check says about them: the struck row as one, the other cells each by itself. */
export const MARKED_FINDINGS = [
  { code: "struckOut", row: 3, column: "", facts: {} },
  { code: "struckOut", row: 5, column: "Live spurs", facts: {} },
  { code: "otherNumberInComment", row: 2, column: "Live spurs", facts: { value: 8, said: "Cleo: really 9" } },
  {
    code: "otherNumberInComment",
    row: 6,
    column: "Live spurs",
    facts: { value: 6, said: "Ana Ruiz: 12? | Ben Hale: look again" },
  },
];
