import { readFileSync } from "node:fs";
import { ExcelHost } from "./excelHost";
import { EXCEL_PROFILES } from "./excelProfiles";

/** The hook is undocumented; these tests fail first when a new version of the package changes it. */
describe("the real Office.js proxies speak to the in-memory host", () => {
  test("the package is the version that the hook was proven with", () => {
    const installed = JSON.parse(readFileSync("node_modules/@microsoft/office-js/package.json", "utf8"));
    const asked = JSON.parse(readFileSync("package.json", "utf8"));
    expect(installed.version).toBe("1.1.110");
    expect(asked.devDependencies["@microsoft/office-js"]).toBe("1.1.110");
  });

  test("a property that was not loaded throws, as in Excel", async () => {
    const host = new ExcelHost();
    host.addSheet("Vines", [["Vine"]]);
    const { excel } = host.person();
    await expect(
      excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem("Vines").getRange("A1");
        await context.sync();
        return range.values;
      }),
    ).rejects.toMatchObject({ code: "PropertyNotLoaded" });
  });

  test("a sheet that is not there is ItemNotFound, or a null object", async () => {
    const { excel } = new ExcelHost().person();
    await expect(
      excel.run(async (context) => {
        context.workbook.worksheets.getItem("Nowhere").load("name");
        await context.sync();
      }),
    ).rejects.toMatchObject({ code: "ItemNotFound" });
    const missing = await excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      sheet.load("name");
      await context.sync();
      return sheet.isNullObject;
    });
    expect(missing).toBe(true);
  });

  test("a batch that is refused in the middle keeps what came before", async () => {
    const host = new ExcelHost();
    host.addSheet("Vines", [["Vine"]]);
    const { excel } = host.person();
    host.refuse({ name: "Values", after: 1, code: "GeneralException" });
    await expect(
      excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Vines");
        sheet.getRange("A2").values = [[7]];
        sheet.getRange("A3").values = [[8]];
        await context.sync();
      }),
    ).rejects.toMatchObject({ code: "GeneralException" });
    expect(host.book.sheet("Vines").cell(1, 0).value).toBe(7);
    expect(host.book.sheet("Vines").cell(2, 0).type).toBe("Empty");
  });

  test("text typed through range.values becomes what Excel makes of it", async () => {
    const host = new ExcelHost();
    host.addSheet("Kinds", []);
    const { excel } = host.person();
    await excel.run(async (context) => {
      context.workbook.worksheets.getItem("Kinds").getRange("A1:F1").values = [
        ["007", "'007", "=1+1", "TRUE", "50%", "1/2"],
      ];
      await context.sync();
    });
    const types = [0, 1, 2, 3, 4, 5].map((column) => host.book.sheet("Kinds").cell(0, column).type);
    expect(types).toEqual(["Double", "String", "Double", "Boolean", "Double", "Double"]);
    expect(host.book.sheet("Kinds").cell(0, 2).formula).toBe("=1+1");
  });

  test("what stands above the requirement floor throws before it is sent", async () => {
    const host = new ExcelHost({
      ...EXCEL_PROFILES.perpetual2021,
      excelApi: 12,
    });
    host.addSheet("Vines", [["Vine"]]);
    const { excel } = host.person();
    await expect(
      excel.run(async (context) => {
        context.workbook.tables.getItem("any").resize("A1:A2");
        await context.sync();
      }),
    ).rejects.toMatchObject({ code: "ApiNotFound" });
    expect(host.batches).toBe(0);
  });

  const WITH_OPTION: readonly [keyof Excel.WorksheetProtectionOptions, (sheet: Excel.Worksheet) => void][] = [
    ["allowFormatCells", (sheet) => (sheet.getRange("A1").format.wrapText = true)],
    ["allowFormatCells", (sheet) => (sheet.getRange("A1").numberFormat = [["0.0"]])],
    ["allowFormatCells", (sheet) => void sheet.getRange("A1").conditionalFormats.add("Custom")],
    ["allowFormatColumns", (sheet) => (sheet.getRange("A1").format.columnWidth = 90)],
    ["allowEditObjects", (sheet) => void sheet.charts.add("BarStacked", sheet.getRange("A1:A3"), "Columns")],
    ["allowPivotTables", (sheet) => sheet.pivotTables.getItem("Pivot").refresh()],
    [
      "allowAutoFilter",
      (sheet) => {
        const table = sheet.tables.getItem("Counts");
        table.autoFilter.apply(table.getRange(), 0, { filterOn: "Values", values: ["1"] });
      },
    ],
  ];

  test.each(WITH_OPTION)(
    "a protected sheet allows with %s what it refuses with any other option",
    async (option, act) => {
      const others = new Set(WITH_OPTION.map(([each]) => each).filter((each) => each !== option));
      for (const allowed of [others, new Set([option])]) {
        const host = new ExcelHost(EXCEL_PROFILES.current);
        host.addSheet("Vines", [["Vine"], [1], [2]]);
        const { excel } = host.person();
        await excel.run(async (context) => {
          const sheet = context.workbook.worksheets.getItem("Vines");
          const table = sheet.tables.add("A1:A3", true);
          table.name = "Counts";
          sheet.pivotTables.add("Pivot", table, sheet.getRange("E1"));
          await context.sync();
        });
        Object.assign(host.book.sheet("Vines"), { locked: true, allowed });
        const run = (what: (sheet: Excel.Worksheet) => void) =>
          excel.run(async (context) => {
            what(context.workbook.worksheets.getItem("Vines"));
            await context.sync();
          });
        if (allowed.has(option)) await run(act);
        else await expect(run(act)).rejects.toMatchObject({ code: "AccessDenied" });
        await expect(run((sheet) => (sheet.getRange("A2").values = [[9]]))).rejects.toMatchObject({
          code: "AccessDenied",
        });
        host.close();
      }
    },
  );

  test("two people have two Excels and one workbook", async () => {
    const host = new ExcelHost();
    host.addSheet("Vines", [["Vine"]]);
    const [anna, ben] = [host.person("anna"), host.person("ben")];
    const heard: string[] = [];
    await ben.excel.run(async (context) => {
      context.workbook.worksheets.onChanged.add(async (event) => {
        heard.push(`${event.address} ${event.source}`);
      });
      await context.sync();
    });
    await anna.excel.run(async (context) => {
      context.workbook.worksheets.getItem("Vines").getRange("A2").values = [[7]];
      await context.sync();
    });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(heard).toEqual(["A2 Remote"]);
    expect(anna.excel.run).not.toBe(ben.excel.run);
  });
});
