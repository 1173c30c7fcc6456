import { SOURCES } from "../../../src/domain/sources";
import { settingNamed, SETTINGS } from "../../../src/survey/settings/settings";
import { LANGUAGES } from "../../../src/texts/language";

const HONEST = ["ours", "common practice", "from memory, unverified"];

describe("every figure that changes a result says where it comes from", () => {
  test.each(SETTINGS.map((setting) => [setting.id, setting] as const))("%s", (_id, setting) => {
    expect(setting.source in SOURCES || HONEST.includes(setting.source)).toBe(true);
    if (setting.kind === "figure") {
      expect(setting.value).toBeGreaterThanOrEqual(setting.least);
      expect(setting.value).toBeLessThanOrEqual(setting.most);
    }
    if (setting.kind === "oneOf") expect(setting.choices).toContain(setting.value);
  });

  test.each(LANGUAGES)("no name stands twice in %s, and each is known again", (language) => {
    const names = SETTINGS.map(({ name }) => name[language].toLowerCase());
    expect(new Set(names).size).toBe(names.length);
    for (const setting of SETTINGS) expect(settingNamed(setting.name[language].toUpperCase())).toBe(setting);
  });
});
