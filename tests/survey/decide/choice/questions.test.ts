import { inventedFarm } from "../../../../sample-workbooks/make/inventedFarm";
import { randomSource } from "../../../../sample-workbooks/make/randomSource";
import { SEED } from "../../../../sample-workbooks/make/sampleWorkbooks";
import { questionsOf } from "../../../benchmarks/questions";
import { seasonOfFarm } from "../cards/season";

test("at most 12 % of the sample's vines are asked about, and no more decided ones turn on one spur than before", () => {
  // before single empty places ceased to count as a stretch: 129 of 581 asked (22.2 %), 60 of 452 decided ones (13.3 %)
  const { vines, asked, turnOnASpur } = questionsOf(seasonOfFarm(inventedFarm(randomSource(SEED))));
  expect(vines).toBeGreaterThan(400);
  expect(asked / vines).toBeLessThanOrEqual(0.12);
  expect(turnOnASpur / (vines - asked)).toBeLessThanOrEqual(0.133);
});
