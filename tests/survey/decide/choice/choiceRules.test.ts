import { SOURCES } from "../../../../src/domain/sources";
import { choiceRules } from "../../../../src/survey/decide/choice/choiceRules";
import { defaultSettings, SETTINGS_BY_AREA, settingValues } from "../../../../src/survey/settings/settings";

describe("the figures of the cordon choice", () => {
  test.each(SETTINGS_BY_AREA.choice.map((setting) => [setting.id, setting] as const))(
    "%s names its source",
    (_id, setting) => {
      const honest = ["ours", "common practice", "from memory, unverified"];
      expect([...honest, ...Object.keys(SOURCES)]).toContain(setting.source);
      if (setting.kind === "figure") {
        expect(setting.value).toBeGreaterThanOrEqual(setting.least);
        expect(setting.value).toBeLessThanOrEqual(setting.most);
      }
    },
  );

  test("every figure reaches the rules: a changed setting changes them", () => {
    const before = JSON.stringify(choiceRules(defaultSettings()));
    const readFromSheets = ["blankCondition", "spaceBetweenNeighbouringCordons"];
    for (const setting of SETTINGS_BY_AREA.choice.filter(({ id }) => !readFromSheets.includes(id))) {
      if (setting.kind !== "figure") throw new Error(`${setting.id} needs a changed value of its own`);
      const other = setting.value === setting.least ? setting.most : setting.least;
      const changed = settingValues(new Map([[setting.id, other]]));
      expect([setting.id, JSON.stringify(choiceRules(changed)) === before]).toEqual([setting.id, false]);
    }
  });

  test("Klodd 2022 puts a spur every 3 to 5 in; a cordon is thicker than the 1/2 in where Westover 2016 ends the wood of canes", () => {
    const rules = choiceRules(defaultSettings());
    expect(rules.spurSpacing).toBeCloseTo(0.1016, 12);
    expect(rules.weakDiameter).toBeCloseTo(0.0127, 12);
    expect(rules.fullDiameter).toBeCloseTo(0.0254, 12);
  });

  test("the order of the spur worths is that of the trade: down, level, up on a high wire and the reverse upright", () => {
    const { highWire, divided, upright } = choiceRules(defaultSettings()).spurWorth;
    for (const hanging of [highWire, divided]) {
      expect(hanging.down).toBeGreaterThan(hanging.up);
      expect(hanging.level).toBeGreaterThan(hanging.up);
      expect(hanging.down).toBeGreaterThanOrEqual(hanging.level);
    }
    expect(upright.up).toBeGreaterThan(upright.level);
    expect(upright.level).toBeGreaterThan(upright.down);
  });
});
