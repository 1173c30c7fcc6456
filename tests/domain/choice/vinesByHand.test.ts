import { chooseCordons } from "../../../src/domain/choice/chooseCordons";
import { planned, RULES } from "./standardRules";
import { VINES_BY_HAND } from "./vinesByHand";

describe("vines decided by hand before they were worked out", () => {
  test.each(VINES_BY_HAND)("$name: $reason", ({ vine, expected, lays, cuts }) => {
    const decision = chooseCordons(vine, RULES);
    expect(decision.cordons.map(({ cordon, verdict }) => `${cordon} ${verdict}`).join(", ")).toBe(expected);
    const plan = planned(vine, decision);
    expect(plan.canes.map(({ side, from }) => `${side} ${from}`).join(", ")).toBe(lays ?? "");
    if (cuts !== undefined)
      expect(plan.cuts.map(({ cordon, backTo }) => `${cordon} ${backTo}`).join(", ")).toBe(cuts);
  });

  test("there are 25", () => expect(VINES_BY_HAND).toHaveLength(25));
});
