import { surveyWorkbookContract } from "../contract";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";

describe.each([
  ["at the requirement floor", 12],
  ["in a newer Excel", 17],
])("the workbook in Excel, through the real proxies, keeps the contract %s", (_where, excelApi) => {
  for (const rule of surveyWorkbookContract(async (sheets) => excelWorkbookOn(hostWith(sheets, excelApi))))
    test(rule.name, rule.run);
});
