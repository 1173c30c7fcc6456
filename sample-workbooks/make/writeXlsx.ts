import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import { writeXlsx as writeSheets, type WriteOptions } from "hucre";

/** Every part carries this day, because a clock in the zip would change the bytes of each run. */
const PART_DATE = "2026-03-31T00:00:00";

const EXCEL_APPLICATION = "<Application>Microsoft Excel</Application>";
/** The calculation engine of Excel 2019 and later: with an older number Excel recalculates on opening. */
const CALCULATION = '<calcPr calcId="191029"/>';
/** The cached result of a failing formula, which has to be marked as an error rather than as text. */
const ERROR_WRITTEN_AS_TEXT =
  / t="str"(><f[^>]*>[^<]*<\/f><v>#(?:DIV\/0!|N\/A|VALUE!|REF!|NUM!|NAME\?)<\/v>)/g;

/**
 * The bytes of a workbook: the same for the same content. Readers show cached text of formulas only when the file
 * says that Excel wrote it, and nothing may ask for a recalculation on opening, because that would replace cached
 * values by #NAME? where the add-in is missing.
 */
export async function writeXlsx(workbook: WriteOptions): Promise<Uint8Array> {
  const parts = unzipSync(await writeSheets(workbook));
  const finished: Zippable = {};
  for (const name of Object.keys(parts).sort(contentTypesFirst)) {
    const part = finishPart(name, parts[name]);
    finished[name] = [part, { mtime: PART_DATE, level: 6 }];
  }
  return zipSync(finished);
}

function contentTypesFirst(a: string, b: string): number {
  const rank = (name: string) => (name === "[Content_Types].xml" ? 0 : name === "_rels/.rels" ? 1 : 2);
  return rank(a) - rank(b) || (a < b ? -1 : 1);
}

function finishPart(name: string, part: Uint8Array): Uint8Array {
  if (name === "docProps/app.xml")
    return strToU8(strFromU8(part).replace(/<Application>[^<]*<\/Application>/, EXCEL_APPLICATION));
  if (name === "xl/workbook.xml")
    return strToU8(
      strFromU8(part)
        .replace(/<calcPr\b[^>]*>/, CALCULATION)
        .replace(/<definedName name="_Cordonbook_own"/g, '$& hidden="1"')
        .replace(/(<definedName name="_xlnm\.Print_Titles"[^>]*>)([^'<!]+)!/g, quoted),
    );
  if (name.startsWith("xl/worksheets/sheet"))
    return strToU8(strFromU8(part).replace(ERROR_WRITTEN_AS_TEXT, ' t="e"$1'));
  return part;
}

function quoted(_whole: string, tag: string, sheet: string): string {
  return /^[A-Za-z_][\w.]*$/.test(sheet) ? `${tag}${sheet}!` : `${tag}'${sheet}'!`;
}
