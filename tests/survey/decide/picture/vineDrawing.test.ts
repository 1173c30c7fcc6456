import fc from "fast-check";
import { chooseCordons } from "../../../../src/domain/choice/chooseCordons";
import { metres } from "../../../../src/domain/units";
import { vineDrawing } from "../../../../src/survey/decide/picture/vineDrawing";
import { anyCandidate, vineOf } from "../../../domain/choice/counts";
import { RULES } from "../../../domain/choice/standardRules";
import type { CandidateCordon, VineToDecide } from "../../../../src/domain/choice/candidateCordon";

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

  const one = (rest: Partial<CandidateCordon>, vine: Partial<VineToDecide> = {}) =>
    draw({ candidates: [{ side: "left", cordon: "A", ...rest }], ...vine });
  const rounded = (at: number) => Math.round(at * 1000) / 1000;

  test.each([
    ["left", -1],
    ["right", 1],
    ["north", -1],
    ["south", 1],
    ["east", -1],
    ["west", 1],
  ])("a cordon on the %s reaches to %d", (side, towards) => {
    expect(one({ side, length: metres(1), liveSpurs: 5 }).cordons[0].towards).toBe(towards);
  });

  test("trunks stand once each, by number, and a cordon without one has none", () => {
    const cordon = (letter: string, side: string, trunk?: number): CandidateCordon => ({
      ...{ side, cordon: letter, length: metres(1), liveSpurs: 8, positions: 10 },
      ...(trunk === undefined ? {} : { trunk }),
    });
    const { trunks, cordons } = draw({
      candidates: [
        cordon("A", "left", 3),
        cordon("B", "right", 1),
        cordon("C", "right", 3),
        cordon("D", "left"),
      ],
    });
    expect(trunks).toEqual([1, 3]);
    expect(cordons.map(({ trunk }) => trunk)).toEqual([3, 1, 3, undefined]);
    expect(cordons[3]).not.toHaveProperty("trunk");
  });

  test("a length that nobody counted is guessed: the wire of its side, else a metre", () => {
    const [counted, wire, metre] = [
      one({ length: metres(0.8), liveSpurs: 5 }, { sideLength: metres(1.2) }),
      one({ liveSpurs: 5 }, { sideLength: metres(1.2) }),
      one({ liveSpurs: 5 }),
    ];
    expect([counted, wire, metre].map(({ cordons: [{ length, guessed }] }) => [length, guessed])).toEqual([
      [0.8, false],
      [1.2, true],
      [1, true],
    ]);
    expect([counted, wire, metre].map(({ sideLength }) => sideLength)).toEqual([1.2, 1.2, undefined]);
    expect(metre).not.toHaveProperty("sideLength");
  });

  test("the drawing reaches as far as the wire or the longest cordon, and never less than a hand", () => {
    expect(one({ length: metres(1.4), liveSpurs: 5 }, { sideLength: metres(1.2) }).reach).toBe(1.4);
    expect(one({ length: metres(0.8), liveSpurs: 5 }, { sideLength: metres(1.2) }).reach).toBe(1.2);
    expect(one({ length: metres(0.05), liveSpurs: 1 }).reach).toBe(0.1);
  });

  test("without a count of places there are as many as live spurs and the gap take: 4 + 2 on 0.6 m", () => {
    // the gap in the middle: after floor((6 - 2) / 2) = 2 places of 0.1 m
    const [cordon] = one({ length: metres(0.6), liveSpurs: 4, longestGap: 2 }).cordons;
    expect(cordon.gap).toEqual({ from: expect.closeTo(0.2, 9), to: expect.closeTo(0.4, 9) });
    expect(cordon.spurs.map(({ at }) => rounded(at))).toEqual([0.05, 0.15, 0.45, 0.55]);
    expect(cordon.bare).toEqual([]);
  });

  test("a gap whose place was counted lies there, and no further out than the cordon reaches", () => {
    const gapFrom = (from: number) =>
      one({ length: metres(1), positions: 10, liveSpurs: 8, longestGap: 2, gapFrom: from }).cordons[0].gap!;
    expect(gapFrom(1)).toEqual({ from: expect.closeTo(0.1, 9), to: expect.closeTo(0.3, 9) });
    expect(gapFrom(9)).toEqual({ from: expect.closeTo(0.8, 9), to: expect.closeTo(1, 9) });
  });

  test("without a gap none is drawn", () => {
    expect(
      one({ length: metres(1), positions: 8, liveSpurs: 8, longestGap: 0 }).cordons[0],
    ).not.toHaveProperty("gap");
  });

  test("spurs that hang come first, then those to the side, then those on top; the rest is not known", () => {
    const points = (rest: Partial<CandidateCordon>) =>
      one({ length: metres(1), liveSpurs: 6, ...rest }).cordons[0].spurs.map((spur) => spur.points);
    expect(points({ spursDown: 2, spursLevel: 1, spursUp: 1 })).toEqual([
      ...["down", "down", "level", "up", "unknown", "unknown"],
    ]);
    expect(points({ spursLevel: 1 })).toEqual(["level", ...Array.from({ length: 5 }, () => "unknown")]);
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
