import { scaleEnd } from "../../../src/taskpane/outlook/scaleEnd";

const range = (high: number) => ({ low: 1, likely: 2, high });

test.each([
  { why: "the widest range", ranges: [range(3), range(5)], target: undefined, over: 5 },
  { why: "a target beyond the ranges", ranges: [range(3)], target: 9, over: 9 },
  { why: "a crop of nothing", ranges: [{ low: 0, likely: 0, high: 0 }], target: undefined, over: 0 },
])("the scale of the bars takes in $why", ({ ranges, target, over }) => {
  expect(scaleEnd(ranges, target)).toBeGreaterThan(over);
});
