import { openWorkbookBytes } from "../../../src/workbook/file/openWorkbook";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";
import { markedWorkbook, MARKS } from "../file/markedWorkbook";

describe.each(Object.values(EXCEL_PROFILES).map((profile) => [profile.name, profile] as const))(
  "%s",
  (_, profile) => {
    test("reads from a sheet what is struck out, said and hidden, as the file has it", async () => {
      const { values } = await (
        await openWorkbookBytes("marked.xlsx", markedWorkbook())
      ).readSheet("Cordons");
      const host = hostWith({ Cordons: values }, profile);
      const sheet = host.book.sheet("Cordons");
      for (const { row, column, ...mark } of MARKS.marked)
        if ("struck" in mark) sheet.setFormat(row - 1, column - 1, { struck: true });
      sheet.hiddenRows.add(6);
      sheet.hiddenColumns.add(7);
      const said = (row: number, author: string, content: string, kind: "note" | "comment") => ({
        id: `theirs-${row}`,
        kind,
        row: row - 1,
        column: 8,
        author,
        content,
        resolved: false,
        replies: kind === "note" ? [] : [{ author: "Ben Hale", content: "look again" }],
      });
      sheet.remarks.push(said(2, "Cleo", "really 9", "note"), said(6, "Ana Ruiz", "12?", "comment"));
      const book = excelWorkbookOn(host);
      const { marks } = await book.readSheet("Cordons");
      const seen = MARKS.marked.filter((mark) => !book.hidesNotes || mark.row !== 2);
      expect(marks!.marked).toHaveLength(seen.length);
      expect(marks!.marked).toEqual(expect.arrayContaining(seen));
      expect(marks).toMatchObject({ hiddenRows: [7], hiddenColumns: [8] });
    });

    test("finds nothing to say on a plain sheet", async () => {
      const host = hostWith({ Cordons: [["Block"], ["North Bench"]] }, profile);
      expect((await excelWorkbookOn(host).readSheet("Cordons")).marks).toBeUndefined();
    });
  },
);
