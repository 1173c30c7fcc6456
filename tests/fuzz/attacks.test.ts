import { ATTACKS } from "./attacks";
import { tallyLine } from "./tally";

const SEED = 20260301;
const CASES = 24;

describe("whatever file comes in", () => {
  test.each(ATTACKS.map((attack) => [attack.name, attack] as const))(
    "%s: done, or refused with a sentence",
    async (_name, attack) => {
      const tally = await attack.run(Math.ceil(CASES * attack.share), SEED, false);
      expect(tally.failed).toEqual([]);
      expect(tally.done + tally.refused).toBe(tally.tried);
      expect(tallyLine(tally)).toContain(`${tally.done} done, ${tally.refused} refused well, 0 failed`);
    },
    120_000,
  );
});
