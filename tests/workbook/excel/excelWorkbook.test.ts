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

test.each([
  ["Visible", undefined],
  ["Hidden", true],
  ["VeryHidden", true],
] as const)("a sheet that is %s is read, and says whether it is hidden", async (visibility, isHidden) => {
  const host = hostWith({ Cordons: [["Block"], ["North Bench"]] }, EXCEL_PROFILES.web);
  host.book.sheets[0].visibility = visibility;
  const area = await excelWorkbookOn(host).readSheet("Cordons");
  expect(area.values).toEqual([["Block"], ["North Bench"]]);
  expect(area.isHidden).toBe(isHidden);
});
