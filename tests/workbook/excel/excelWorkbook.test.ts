import { surveyWorkbookContract } from "../contract";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";

describe.each(Object.values(EXCEL_PROFILES))(
  "the workbook in $name, through the real proxies, keeps the contract",
  (profile) => {
    const rules = surveyWorkbookContract(async (sheets, merged) =>
      excelWorkbookOn(hostWith(sheets, profile, merged)),
    );
    for (const rule of rules) test(rule.name, rule.run);
  },
);
