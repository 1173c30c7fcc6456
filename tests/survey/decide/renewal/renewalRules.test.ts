import { SOURCES } from "../../../../src/domain/sources";
import { renewalRules } from "../../../../src/survey/decide/renewal/renewalRules";
import { defaultSettings } from "../../../../src/survey/settings/settings";
import { RENEWAL_SETTINGS } from "../../../../src/survey/settings/renewal";

describe("the figures of renewal", () => {
  test.each(RENEWAL_SETTINGS.map((setting) => [setting.id, setting] as const))(
    "%s names its source and reaches the rules",
    (_id, setting) => {
      expect(["ours", "common practice", ...Object.keys(SOURCES)]).toContain(setting.source);
      const changed = new Map(defaultSettings());
      changed.set(setting.id, setting.value === setting.least ? setting.most! : setting.least!);
      expect(renewalRules(changed)).not.toEqual(renewalRules(defaultSettings()));
    },
  );
});
