import fc from "fast-check";
import { chooseCordons } from "../../../../src/domain/choice/chooseCordons";
import { metres } from "../../../../src/domain/units";
import { vineDrawing } from "../../../../src/survey/decide/picture/vineDrawing";
import { anyCandidate, vineOf } from "../../../domain/choice/counts";
import { RULES } from "../../../domain/choice/standardRules";
import type { VineToDecide } from "../../../../src/domain/choice/candidateCordon";

const draw = (toDecide: VineToDecide) => vineDrawing({ toDecide, decision: chooseCordons(toDecide, RULES) });

describe("the drawing of a vine", () => {
  test("ten places with eight spurs and a gap of two, by hand", () => {
    const { cordons, reach } = draw({
      sideLength: metres(1),
      candidates: [
        {
          side: "left",
          cordon: "A",
          trunk: 1,
          length: metres(1),
          positions: 10,
          liveSpurs: 8,
          longestGap: 2,
          spursDown: 6,
          spursLevel: 0,
          spursUp: 2,
        },
      ],
    });
    expect(reach).toBe(1);
    expect(cordons[0].towards).toBe(-1);
    expect(cordons[0].gap).toEqual({ from: 0.4, to: expect.closeTo(0.6, 9) });
    expect(cordons[0].spurs.map(({ at }) => Math.round(at * 100) / 100)).toEqual([
      0.05, 0.15, 0.25, 0.35, 0.65, 0.75, 0.85, 0.95,
    ]);
    expect(cordons[0].spurs.filter(({ points }) => points === "up")).toHaveLength(2);
  });

  test("places without a spur outside the longest gap: 10 on 1 m, 6 live, the gap of 2 on places 5 and 6", () => {
    const [cordon] = draw({
      sideLength: metres(1),
      candidates: [
        {
          side: "left",
          cordon: "A",
          trunk: 1,
          length: metres(1),
          positions: 10,
          liveSpurs: 6,
          longestGap: 2,
        },
      ],
    }).cordons;
    // free places 1, 2, 3, 4, 7, 8, 9, 10; six spurs on the places floor(8 i / 6) = 0, 1, 2, 4, 5, 6 of these
    expect(cordon.bare.map((at) => Math.round(at * 100) / 100)).toEqual([0.35, 0.95]);
  });

  test("every live spur is drawn once, on the cordon and never in the gap", () => {
    fc.assert(
      fc.property(vineOf(anyCandidate, 3), (vine) => {
        draw(vine).cordons.forEach(({ spurs, gap, length }, index) => {
          const { liveSpurs } = vine.candidates[index];
          if (liveSpurs !== undefined) expect(spurs).toHaveLength(liveSpurs);
          expect(new Set(spurs.map(({ at }) => at)).size).toBe(spurs.length);
          for (const { at } of spurs) {
            expect(at).toBeGreaterThan(0);
            expect(at).toBeLessThan(length);
            if (gap) expect(at < gap.from || at > gap.to).toBe(true);
          }
        });
      }),
    );
  });
});
