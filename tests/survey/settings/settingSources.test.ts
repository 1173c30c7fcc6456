import { SOURCES } from "../../../src/domain/sources";
import { SETTINGS } from "../../../src/survey/settings/settings";

const HONEST = ["ours", "common practice", "from memory, unverified"];

describe("every figure that changes a result says where it comes from", () => {
  test.each(SETTINGS.map((setting) => [setting.id, setting] as const))("%s", (_id, setting) => {
    expect(setting.source in SOURCES || HONEST.includes(setting.source)).toBe(true);
    if (typeof setting.value === "number") {
      expect(setting.value).toBeGreaterThanOrEqual(setting.least ?? -Infinity);
      expect(setting.value).toBeLessThanOrEqual(setting.most ?? Infinity);
    }
    if (setting.choices) expect(setting.choices).toContain(setting.value);
  });

  test("no name stands twice", () => {
    const names = SETTINGS.map(({ id }) => id.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
  });
});
