import { surveyWorkbookContract } from "../contract";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";

describe.each([
  ["at the requirement floor", 14],
  ["in a newer Excel", 20],
])("the workbook in Excel, through the real proxies, keeps the contract %s", (_where, excelApi) => {
  for (const rule of surveyWorkbookContract(async (sheets) => excelWorkbookOn(hostWith(sheets, excelApi))))
    test(rule.name, rule.run);
});
