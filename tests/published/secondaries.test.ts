import { fruitfulNodes } from "../../src/domain/outlook/fruitfulNodes";
import {
  secondariesOnly,
  secondariesWritten,
  type CaneAsWritten,
} from "../../src/domain/outlook/secondariesWritten";
import { checkRows, EXACT } from "./checkRows";

const HOWELL =
  "Howell, Michigan State, Estimating grapevine potential productivity after spring frost or winter bud damage";
const MISSOURI = "Volenberg, University of Missouri, Vinews 2020 No. 5, 25 May 2020";

const worth = (canes: readonly CaneAsWritten[], secondary: number) => {
  const { written } = secondariesWritten(canes);
  return fruitfulNodes(
    canes.map((cane) => ({
      nodes: cane.nodes,
      primaries: cane.primaries,
      secondariesOnly: secondariesOnly(cane, written),
    })),
    secondary,
  ).value;
};

checkRows("secondaries written in two ways", [
  {
    why: "8 nodes, 5 primaries, 3 secondaries under the dead ones: (5 + 3 x 0.35) / 8",
    source: `${HOWELL}; by hand`,
    ours: () => worth([{ nodes: 8, primaries: 5, secondaries: 3 }], 0.35),
    published: 0.75625,
    within: EXACT,
  },
  {
    why: "the same buds written of all nodes, 8 secondaries: the same worth",
    source: `${HOWELL}; by hand`,
    ours: () => worth([{ nodes: 8, primaries: 5, secondaries: 8 }], 0.35),
    published: 0.75625,
    within: EXACT,
  },
  {
    why: "Norton after the freeze of May 2020: no primary and one secondary of 20 nodes, worth 0.35 a node of twenty",
    source: `${MISSOURI}; by hand with the worth of Howell`,
    ours: () => worth([{ nodes: 20, primaries: 0, secondaries: 1 }], 0.35),
    published: 0.0175,
    within: EXACT,
  },
  {
    why: "Vivant, same freeze: 25 nodes, no primary, one secondary",
    source: `${MISSOURI}; by hand with the worth of Howell`,
    ours: () => worth([{ nodes: 25, primaries: 0, secondaries: 1 }], 0.35),
    published: 0.014,
    within: EXACT,
  },
]);

test.each([
  ["one cane of each counter's way contradicts the other", [8, 5, 3], [8, 5, 7], false],
  ["two canes written under dead primaries", [8, 5, 3], [8, 6, 2], true],
  ["two canes of all nodes", [8, 5, 7], [8, 6, 6], true],
  ["half dead and as many secondaries as primaries fits both ways", [8, 4, 4], [10, 5, 5], false],
  ["nothing alive is the same both ways", [8, 0, 0], [10, 0, 0], true],
] as const)("%s", (_, one, other, told) => {
  const canes = [one, other].map(([nodes, primaries, secondaries]) => ({ nodes, primaries, secondaries }));
  expect(secondariesWritten(canes).told).toBe(told);
});
