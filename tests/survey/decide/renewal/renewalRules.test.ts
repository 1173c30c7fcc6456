import { SOURCES } from "../../../../src/domain/sources";
import { renewalRules } from "../../../../src/survey/decide/renewal/renewalRules";
import { defaultSettings, SETTINGS_BY_AREA, settingValues } from "../../../../src/survey/settings/settings";

describe("the figures of renewal", () => {
  test.each(SETTINGS_BY_AREA.renewal.map((setting) => [setting.id, setting] as const))(
    "%s names its source and reaches the rules",
    (_id, setting) => {
      expect(["ours", "common practice", ...Object.keys(SOURCES)]).toContain(setting.source);
      if (setting.kind !== "figure") throw new Error(`${setting.id} needs a changed value of its own`);
      const other = setting.value === setting.least ? setting.most : setting.least;
      const changed = settingValues(new Map([[setting.id, other]]));
      expect(renewalRules(changed)).not.toEqual(renewalRules(defaultSettings()));
    },
  );
});
