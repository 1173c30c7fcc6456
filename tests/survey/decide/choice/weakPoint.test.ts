import { chooseCordons } from "../../../../src/domain/choice/chooseCordons";
import { metresFromFeet } from "../../../../src/domain/units";
import { choiceRules } from "../../../../src/survey/decide/choice/choiceRules";
import { reasonSentence } from "../../../../src/survey/decide/choice/reasonSentence";
import { defaultSettings } from "../../../../src/survey/settings/settings";

test("a cordon that is weighed against a cane for its thickness is told with its own figure and the one wanted", () => {
  // Thickness alone is weighed: half an inch earns nothing (Settings: weak 0.5 in, full 1 in), below the worth of a new cane.
  const rules = choiceRules(defaultSettings());
  const onlyDiameter = { spurs: 0, stretch: 0, placing: 0, soundness: 0, diameter: 1 };
  const { cordons } = chooseCordons(
    {
      candidates: [
        {
          side: "left",
          cordon: "A",
          trunk: 1,
          liveSpurs: 9,
          positions: 10,
          longestGap: 1,
          diameter: metresFromFeet(0.5 / 12),
        },
        {
          side: "right",
          cordon: "B",
          trunk: 2,
          liveSpurs: 9,
          positions: 10,
          longestGap: 1,
          diameter: metresFromFeet(1 / 12),
        },
      ],
    },
    { ...rules, weights: onlyDiameter },
  );
  expect(reasonSentence(cordons[0], "en", "US")).toContain("it is 0.5 in thick, and 1 in is thick enough");
  expect(reasonSentence(cordons[0], "fr", "metric")).toContain("il a 13 mm d'épaisseur, et 25 mm suffisent");
});
