import fc from "fast-check";
import { balancedFormula } from "../../src/domain/balancedFormula";
import { blockCrop } from "../../src/domain/blockCrop";
import { blockMean } from "../../src/domain/blockMean";
import { budInjury } from "../../src/domain/budInjury";
import { clustersToRemove } from "../../src/domain/clustersToRemove";
import { gapsByRow } from "../../src/domain/gapsByRow";
import { limitedNodes } from "../../src/domain/limitedNodes";
import { nodeBudget } from "../../src/domain/nodeBudget";
import { INJURY_RULE_NAMES } from "../../src/domain/injuryRules";
import { nodesAfterEveryRule } from "../../src/domain/nodesAfterInjury";
import { spurFit } from "../../src/domain/spurFit";
import {
  feetFromMetres,
  inchesFromMetres,
  kilograms,
  kilogramsFromPounds,
  kilogramsPerHectare,
  kilogramsPerHectareFromTonnes,
  kilogramsPerHectareFromTonsPerAcre,
  metres,
  metresFromFeet,
  metresFromInches,
  perFootFromPerMetre,
  perMetreFromPerFoot,
  poundsFromKilograms,
  tonnesPerHectare,
  tonsPerAcreFromKilogramsPerHectare,
  vinesPerAcreFromPerHectare,
  vinesPerHectare,
  vinesPerHectareFromPerAcre,
} from "../../src/domain/units";
import { vineDensity } from "../../src/domain/vineDensity";
import { vinesToCount } from "../../src/domain/vinesToCount";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const whole = (min: number, max: number) => fc.integer({ min, max });

describe("units there and back", () => {
  test.each<[string, (x: number) => number]>([
    ["pounds", (x) => poundsFromKilograms(kilogramsFromPounds(x))],
    ["feet", (x) => feetFromMetres(metresFromFeet(x))],
    ["inches", (x) => inchesFromMetres(metresFromInches(x))],
    ["a foot", (x) => perFootFromPerMetre(perMetreFromPerFoot(x))],
    ["vines an acre", (x) => vinesPerAcreFromPerHectare(vinesPerHectareFromPerAcre(x))],
    ["tons an acre", (x) => tonsPerAcreFromKilogramsPerHectare(kilogramsPerHectareFromTonsPerAcre(x))],
    ["tonnes a hectare", (x) => tonnesPerHectare(kilogramsPerHectareFromTonnes(x))],
  ])("%s", (_name, thereAndBack) => {
    fc.assert(fc.property(between(0, 1e6), (x) => Math.abs(thereAndBack(x) - x) <= 1e-12 * Math.max(1, x)));
  });
});

describe("more of the one is never less of the other", () => {
  test("heavier prunings, more nodes, under every way below a pound", () => {
    const formula = fc.tuple(whole(1, 200), whole(0, 200)).map(([a, b]) => balancedFormula(`${a}+${b}`));
    fc.assert(
      fc.property(
        formula,
        between(0, 10),
        between(0, 10),
        fc.constantFrom("flat", "pro rata"),
        (f, w, v, way) => {
          const [light, heavy] = w < v ? [w, v] : [v, w];
          return (
            nodeBudget(kilograms(light), f, way as "flat") <=
            nodeBudget(kilograms(heavy), f, way as "flat") + 1e-9
          );
        },
      ),
    );
  });

  test("limits are kept and change nothing between them", () => {
    fc.assert(
      fc.property(between(0, 300), between(0, 100), between(100, 300), (nodes, least, most) => {
        const held = limitedNodes(nodes, least, most);
        expect(held.nodes).toBe(Math.min(Math.max(nodes, least), most));
        expect(held.limited === undefined).toBe(held.nodes === nodes);
      }),
    );
  });

  test("no injury rule takes nodes away, and none leaves more live nodes than the budget", () => {
    fc.assert(
      fc.property(between(1, 200), between(0, 1), (nodes, dead) => {
        for (const answer of nodesAfterEveryRule(nodes, dead)) {
          if (answer.nodes === undefined) continue;
          expect(answer.nodes).toBeGreaterThanOrEqual(nodes - 1e-9);
          if (answer.rule !== "Purdue") expect(answer.liveNodes).toBeLessThanOrEqual(nodes * (1 + 1e-9));
        }
      }),
    );
  });

  test("within one rule more dead buds never mean fewer nodes", () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 1), fc.constantFrom(...INJURY_RULE_NAMES), (a, b, rule) => {
        const nodes = [Math.min(a, b), Math.max(a, b)].map(
          (dead) => nodesAfterEveryRule(40, dead).find((answer) => answer.rule === rule)?.nodes,
        );
        return nodes[0] === undefined || nodes[1] === undefined || nodes[0] <= nodes[1] + 1e-9;
      }),
    );
  });

  test("a bud survey's range holds the share, narrows with more buds and widens with confidence", () => {
    fc.assert(
      fc.property(
        whole(1, 300),
        between(0, 1),
        fc.constantFrom("Wilson", "Clopper-Pearson"),
        (cut, part, way) => {
          const method = way as "Wilson";
          const dead = Math.round(cut * part);
          const at = (k: number, n: number, confidence: number) => budInjury(k, n, confidence, method);
          const narrow = at(dead, cut, 0.9);
          const wide = at(dead, cut, 0.99);
          const more = at(4 * dead, 4 * cut, 0.9);
          expect(narrow.low).toBeLessThanOrEqual(narrow.share + 1e-12);
          expect(narrow.high).toBeGreaterThanOrEqual(narrow.share - 1e-12);
          expect(wide.high - wide.low).toBeGreaterThan(narrow.high - narrow.low);
          expect(more.high - more.low).toBeLessThan(narrow.high - narrow.low);
        },
      ),
    );
  });

  test("thinning stays at or under the target, and one cluster more would pass it", () => {
    fc.assert(
      fc.property(
        between(1000, 40000),
        between(500, 8000),
        between(0.03, 0.6),
        whole(0, 400),
        (t, d, w, n) => {
          const { keep, remove } = clustersToRemove(
            kilogramsPerHectare(t),
            vinesPerHectare(d),
            kilograms(w),
            n,
          );
          expect(keep * w * d).toBeLessThanOrEqual(t * (1 + 1e-6));
          if (keep < n) expect((keep + 1) * w * d).toBeGreaterThan(t * (1 - 1e-6));
          expect(n - remove).toBe(keep);
        },
      ),
    );
  });

  test("spurs that fit have room, and one more would not", () => {
    fc.assert(
      fc.property(
        between(0, 200),
        whole(1, 6),
        between(0.2, 4),
        between(0.05, 0.4),
        whole(1, 4),
        (n, k, l, s, c) => {
          const fit = spurFit(n, k, metres(l), metres(s), c);
          const each = fit.spursThatFit / c;
          expect(Number.isInteger(each)).toBe(true);
          expect(each * s).toBeLessThanOrEqual(l + 1e-6);
          expect((each + 1) * s).toBeGreaterThan(l - 1e-6);
          expect(fit.spursWanted * k).toBeGreaterThanOrEqual(n - 1e-6);
          expect(fit.nodesShort).toBeCloseTo(Math.max(0, n - fit.spursThatFit * k), 9);
        },
      ),
    );
  });

  test("area units agree: the crop of an acre is the same by either way", () => {
    fc.assert(
      fc.property(
        between(4, 14),
        between(3, 12),
        between(0, 20),
        between(0, 1),
        (row, vine, pounds, missing) => {
          const density = vineDensity(metresFromFeet(row), metresFromFeet(vine));
          const ours = tonsPerAcreFromKilogramsPerHectare(
            blockCrop(kilogramsFromPounds(pounds), density, missing),
          );
          expect(ours).toBeCloseTo(((43560 / (row * vine)) * pounds * (1 - missing)) / 2000, 9);
        },
      ),
    );
  });

  test("more spread or a tighter margin never needs fewer vines, a smaller block never more", () => {
    fc.assert(
      fc.property(between(0.01, 2), between(0.02, 0.5), whole(1, 2000), (cv, margin, block) => {
        const { vines, vinesInEndlessBlock } = vinesToCount(cv, margin, block, 0.95);
        expect(vines).toBeLessThanOrEqual(Math.min(block, vinesInEndlessBlock));
        expect(vinesToCount(cv * 1.5, margin, block, 0.95).vines).toBeGreaterThanOrEqual(vines);
        expect(vinesToCount(cv, margin * 1.5, block, 0.95).vines).toBeLessThanOrEqual(vines);
      }),
    );
  });

  test("a mean moves with its counts and its range closes when every vine is counted", () => {
    fc.assert(
      fc.property(fc.array(whole(0, 200), { minLength: 2, maxLength: 60 }), whole(1, 50), (counts, more) => {
        const mean = blockMean(counts, Infinity, 0.95);
        const shifted = blockMean(
          counts.map((count) => count + more),
          Infinity,
          0.95,
        );
        expect(shifted.mean).toBeCloseTo(mean.mean + more, 9);
        expect(shifted.sd).toBeCloseTo(mean.sd, 9);
        expect(blockMean(counts, counts.length, 0.95).high).toBeCloseTo(mean.mean, 9);
        expect(blockMean(counts, counts.length + more, 0.95).standardError).toBeLessThanOrEqual(
          mean.standardError,
        );
      }),
    );
  });

  test("gaps by row keep every position, whatever the order of the cordons", () => {
    const cordon = fc.record({
      block: fc.constantFrom("A", "B", 'C","1'),
      row: whole(1, 3),
      vine: whole(1, 5),
      positions: whole(0, 20),
      dead: whole(0, 20),
    });
    fc.assert(
      fc.property(fc.array(cordon, { maxLength: 40 }), (raw) => {
        const cordons = raw.map((c) => ({ ...c, liveSpurs: Math.max(0, c.positions - c.dead) }));
        const total = (rows: readonly { gaps: number }[]) => rows.reduce((sum, row) => sum + row.gaps, 0);
        const rows = gapsByRow(cordons);
        expect(total(rows)).toBe(cordons.reduce((sum, c) => sum + c.positions - c.liveSpurs, 0));
        expect(new Set(gapsByRow([...cordons].reverse()))).toEqual(new Set(rows));
        expect(rows.reduce((sum, row) => sum + row.cordons, 0)).toBe(cordons.length);
      }),
    );
  });
});
