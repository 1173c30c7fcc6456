import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const THREADS = "http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** What a person puts on cells of a sheet, as Excel stores it. */
export interface PersonsRemarks {
  /** Notes by cell: "A4". */
  readonly notes?: Readonly<Record<string, string>>;
  /** Comments of Ana Ruiz with an answer of Ben Hale, by cell. */
  readonly comments?: Readonly<Record<string, readonly [comment: string, answer: string]>>;
  /** Cells filled yellow. */
  readonly yellow?: readonly string[];
  /** Cells with a number format of a person: "0.0000". */
  readonly fourDigits?: readonly string[];
}

/** The same workbook after a person put remarks on a sheet of it: parts as Excel writes them. */
export function withPersonsRemarks(
  bytes: Uint8Array,
  sheetPart: string,
  { notes = {}, comments = {}, yellow = [], fourDigits = [] }: PersonsRemarks,
): Uint8Array {
  const parts = unzipSync(bytes);
  const change = (part: string, from: string | RegExp, to: string) => {
    const before = strFromU8(parts[part]);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${part} has no ${String(from)}`);
    parts[part] = strToU8(after);
  };
  const threadId = (n: number) => `{00000000-0000-4000-8000-${String(n).padStart(12, "0")}}`;
  const threads = Object.entries(comments);
  const shown = [
    ...Object.entries(notes).map(([cell, text]) => ({ cell, author: 0, text })),
    ...threads.map(([cell, texts], at) => ({
      cell,
      author: at + 1,
      text: `[Threaded comment]\n\nComment:\n    ${texts[0]}\nReply:\n    ${texts[1]}`,
    })),
  ];
  const authors = ["Cleo", ...threads.map((_one, at) => `tc=${threadId(2 * at + 1)}`)];
  parts["xl/comments7.xml"] = strToU8(
    `<comments xmlns="${MAIN}"><authors>${authors.map((author) => `<author>${author}</author>`).join("")}</authors><commentList>${shown
      .map(
        ({ cell, author, text }) =>
          `<comment ref="${cell}" authorId="${author}" shapeId="0"><text><r><rPr><b/><sz val="9"/></rPr><t xml:space="preserve">${text}</t></r></text></comment>`,
      )
      .join("")}</commentList></comments>`,
  );
  const frame = (cell: string, at: number) => {
    const [row, column] = [Number(cell.replace(/\D/g, "")) - 1, cell.charCodeAt(0) - 65];
    return (
      `<v:shape id="_x0000_s${1025 + at}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="infoBackground [80]" o:insetmode="auto"><v:fill color2="infoBackground [80]"/><v:textbox><div style="text-align:left"></div></v:textbox>` +
      `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${column + 1}, 15, ${row}, 2, ${column + 3}, 15, ${row + 4}, 4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column></x:ClientData></v:shape>`
    );
  };
  parts["xl/drawings/vmlDrawing7.vml"] = strToU8(
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout><v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/></v:shapetype>' +
      `${shown.map(({ cell }, at) => frame(cell, at)).join("")}</xml>`,
  );
  const rels = sheetPart.replace("worksheets/", "worksheets/_rels/") + ".rels";
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
  change(
    rels,
    "</Relationships>",
    relation("rIdN1", `${RELATIONS}/comments`, "../comments7.xml") +
      relation("rIdN2", `${RELATIONS}/vmlDrawing`, "../drawings/vmlDrawing7.vml") +
      (threads.length === 0
        ? ""
        : relation(
            "rIdN3",
            "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
            "../threadedComments/threadedComment7.xml",
          )) +
      "</Relationships>",
  );
  const override = (part: string, type: string) => `<Override PartName="/${part}" ContentType="${type}"/>`;
  if (!/Extension="vml"/.test(strFromU8(parts["[Content_Types].xml"])))
    change(
      "[Content_Types].xml",
      /<Types[^>]*>/,
      '$&<Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/>',
    );
  change(
    "[Content_Types].xml",
    "</Types>",
    override("xl/comments7.xml", `${TYPES}.comments+xml`) +
      (threads.length === 0
        ? ""
        : override(
            "xl/threadedComments/threadedComment7.xml",
            "application/vnd.ms-excel.threadedcomments+xml",
          ) + override("xl/persons/person.xml", "application/vnd.ms-excel.person+xml")) +
      "</Types>",
  );
  if (threads.length > 0) {
    const [ana, ben] = [threadId(901), threadId(902)];
    parts["xl/threadedComments/threadedComment7.xml"] = strToU8(
      `<ThreadedComments xmlns="${THREADS}">${threads
        .map(
          ([cell, [comment, answer]], at) =>
            `<threadedComment ref="${cell}" dT="2026-02-01T10:00:00.00" personId="${ana}" id="${threadId(2 * at + 1)}"><text>${comment}</text></threadedComment>` +
            `<threadedComment ref="${cell}" dT="2026-02-01T11:00:00.00" personId="${ben}" id="${threadId(2 * at + 2)}" parentId="${threadId(2 * at + 1)}"><text>${answer}</text></threadedComment>`,
        )
        .join("")}</ThreadedComments>`,
    );
    parts["xl/persons/person.xml"] = strToU8(
      `<personList xmlns="${THREADS}"><person displayName="Ana Ruiz" id="${ana}" userId="ana" providerId="None"/><person displayName="Ben Hale" id="${ben}" userId="ben" providerId="None"/></personList>`,
    );
    change(
      "xl/_rels/workbook.xml.rels",
      "</Relationships>",
      relation(
        "rIdP7",
        "http://schemas.microsoft.com/office/2017/10/relationships/person",
        "persons/person.xml",
      ) + "</Relationships>",
    );
  }
  change(sheetPart, "<tableParts", '<legacyDrawing r:id="rIdN2"/><tableParts');
  const styles = strFromU8(parts["xl/styles.xml"]);
  const count = (list: string) => Number(new RegExp(`<${list} count="(\\d+)"`).exec(styles)![1]);
  const [fills, xfs] = [count("fills"), count("cellXfs")];
  const grown = (list: string, more: number, inner: string) => {
    change("xl/styles.xml", `<${list} count="${count(list)}"`, `<${list} count="${count(list) + more}"`);
    change("xl/styles.xml", `</${list}>`, `${inner}</${list}>`);
  };
  grown(
    "fills",
    1,
    '<fill><patternFill patternType="solid"><fgColor rgb="FFFFFF00"/><bgColor indexed="64"/></patternFill></fill>',
  );
  grown(
    "cellXfs",
    2,
    `<xf numFmtId="0" fontId="0" fillId="${fills}" borderId="0" xfId="0" applyFill="1"/><xf numFmtId="195" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`,
  );
  const format = '<numFmt numFmtId="195" formatCode="0.0000"/>';
  if (styles.includes("<numFmts ")) grown("numFmts", 1, format);
  else change("xl/styles.xml", "<fonts", `<numFmts count="1">${format}</numFmts><fonts`);
  const dress = (cell: string, style: number) => {
    const tag = new RegExp(`<c r="${cell}"(?: s="\\d+")?`);
    change(sheetPart, tag, `<c r="${cell}" s="${style}"`);
  };
  for (const cell of yellow) dress(cell, xfs);
  for (const cell of fourDigits) dress(cell, xfs + 1);
  return zipSync(parts, { mtime: "2026-02-01T12:00:00" });
}
