import { chooseCordons } from "../../../../src/domain/choice/chooseCordons";
import { reasonSentence } from "../../../../src/survey/decide/choice/reasonSentence";
import {
  cutSentence,
  sideSentences,
  vineNoteSentence,
} from "../../../../src/survey/decide/choice/vineSentences";
import { LANGUAGES } from "../../../../src/texts/language";
import { planned, RULES } from "../../../domain/choice/standardRules";
import { WORKED_VINES } from "../../../domain/choice/workedVines";

describe("vines decided by hand", () => {
  test.each(WORKED_VINES)("$name: $why", ({ vine, rules, cordons, sides, cuts, notes }) => {
    const decision = chooseCordons(vine, { ...RULES, ...rules });
    for (const cordon of decision.cordons) {
      const expected = cordons[`${cordon.side} ${cordon.cordon}`];
      if (expected) expect([cordon.verdict, reasonSentence(cordon, "en", "US")]).toEqual(expected);
    }
    for (const name of Object.keys(cordons))
      expect(decision.cordons.map(({ side, cordon }) => `${side} ${cordon}`)).toContain(name);
    const plan = planned(vine, decision);
    if (sides) expect(sideSentences(plan, "en")).toEqual(sides);
    if (cuts) expect(plan.cuts.map((cut) => cutSentence(cut, "en"))).toEqual(cuts);
    if (notes) expect(decision.notes.map((note) => vineNoteSentence(note, "en"))).toEqual(notes);
  });

  test("there are at least 25 of them, some of them facts of the trade", () => {
    expect(WORKED_VINES.length).toBeGreaterThanOrEqual(25);
    expect(WORKED_VINES.filter(({ source }) => source === "common practice").length).toBeGreaterThanOrEqual(
      5,
    );
  });

  test("every sentence is whole in every language", () => {
    for (const { vine, rules } of WORKED_VINES) {
      const decision = chooseCordons(vine, { ...RULES, ...rules });
      for (const language of LANGUAGES) {
        const sentences = [
          ...decision.cordons.flatMap((cordon) => [
            reasonSentence(cordon, language, "US"),
            reasonSentence(cordon, language, "metric"),
          ]),
          ...sideSentences(planned(vine, decision), language),
          ...planned(vine, decision).cuts.map((cut) => cutSentence(cut, language)),
          ...decision.notes.map((note) => vineNoteSentence(note, language)),
        ];
        for (const sentence of sentences)
          expect(sentence).not.toMatch(/[{}]|undefined|NaN| {2}| \.| ,|: *\./);
      }
    }
  });
});
