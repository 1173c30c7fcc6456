import fc from "fast-check";
import { chooseCordons } from "../../../src/domain/choice/chooseCordons";
import { countingRisk } from "../../../src/domain/choice/countingRisk";
import { stayingKey, whatWouldTurn, withCounts } from "../../../src/domain/choice/whatWouldTurn";
import { seededRandom } from "../../../src/domain/random";
import { fullCandidate, vineOf } from "./counts";
import { RULES } from "./standardRules";
import { WORKED_VINES } from "./workedVines";

const vineNamed = (part: string) => WORKED_VINES.find(({ name }) => name.includes(part))!.vine;

describe("what would turn a decision", () => {
  test("by hand: two spurs apart on one trunk", () => {
    // A 0.96, B 1.00, C across 0.98; a spur is 0.02, a gap position beyond the first 0.075, and of equal cordons the first row is proposed
    const turns = whatWouldTurn(vineNamed("two spurs apart"), RULES);
    const ofB = { kind: "count", side: "left", cordon: "B" };
    expect(turns).toContainEqual({ ...ofB, count: "liveSpurs", from: 10, to: 8 });
    expect(turns).toContainEqual({ ...ofB, count: "longestGap", from: 1, to: 2 });
    // a new cane on trunk 2 passes C from the next hundredth above 0.98 on
    expect(turns).toContainEqual({ kind: "figure", figure: "newCane", from: 0.5, to: 0.99 });
  });

  test("by hand: own trunk against one spur more turns with the worth of two trunks", () => {
    // A 0.96 + gain, B 0.98: below a gain of 0.02 B would stay
    const turns = whatWouldTurn(vineNamed("wins a close choice"), RULES);
    const worth = turns.find((turn) => turn.kind === "figure" && turn.figure === "twoTrunks");
    expect(worth?.to).toBeCloseTo(0.01, 9);
  });

  test("every turn does turn the decision", () => {
    fc.assert(
      fc.property(vineOf(fullCandidate, 2, ["training"]), (vine) => {
        const now = stayingKey(vine, RULES);
        for (const turn of whatWouldTurn(vine, RULES)) {
          if (turn.kind === "count") {
            const index = vine.candidates.findIndex(({ cordon }) => cordon === turn.cordon);
            expect(stayingKey(withCounts(vine, index, { [turn.count]: turn.to }), RULES)).not.toBe(now);
          } else {
            const { figure, to } = turn;
            const rules =
              figure in RULES.weights
                ? { ...RULES, weights: { ...RULES.weights, [figure]: to } }
                : { ...RULES, [figure]: to };
            expect(stayingKey(vine, rules)).not.toBe(now);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe("counts off by one", () => {
  test("the same seed gives the same share", () => {
    const vines = WORKED_VINES.map(({ vine }) => vine);
    const once = countingRisk(vines, RULES, seededRandom(5), 20);
    expect(countingRisk(vines, RULES, seededRandom(5), 20)).toEqual(once);
    expect(once.vines).toBe(WORKED_VINES.length);
    expect(once.flips).toBeGreaterThan(0);
    expect(once.flips).toBeLessThan(1);
  });

  test("a tie of two cordons on one trunk flips about as often as a fair coin says", () => {
    // equal cordons: the first stays unless the other comes out ahead; with spur and gap each one up or one down the
    // difference is -2s-2g, -2s, ... symmetric around zero, so the second is ahead with a chance of
    // (1 - chance of no difference) / 2 = (1 - 1/4) / 2 = 0.375, as 0.02 a spur never makes up for 0.075 a gap position
    const tie = vineNamed("a tie");
    const vine = {
      ...tie,
      candidates: tie.candidates.map(({ spursDown: _d, spursLevel: _l, spursUp: _u, ...rest }) => rest),
    };
    const { flips, decided } = countingRisk([vine], RULES, seededRandom(11), 1000);
    expect(decided).toBe(0);
    expect(Math.abs(flips - 0.375)).toBeLessThan(0.05);
  });

  test("a cordon without a rival hangs on no count unless a new cane is near", () => {
    const { flips, flipsDecided, decided } = countingRisk(
      [vineNamed("keeps both its cordons")],
      RULES,
      seededRandom(3),
      200,
    );
    expect([flips, flipsDecided, decided]).toEqual([0, 0, 1]);
    expect(chooseCordons(vineNamed("keeps both its cordons"), RULES).sides.every(({ ask }) => !ask)).toBe(
      true,
    );
  });
});
