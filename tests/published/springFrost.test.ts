import { cropAfterFrost } from "../../src/domain/cropAfterFrost";
import { checkRows, EXACT } from "./checkRows";

const HOWELL =
  "Howell, Michigan State, Estimating grapevine potential productivity after spring frost or winter bud damage";
const MISSOURI = "Volenberg, University of Missouri, Vinews 2020 No. 5, 25 May 2020, and 2023 No. 1";

checkRows("crop after a spring frost", [
  {
    why: "every primary lost, every secondary alive: 35 % of a crop (Concord and Niagara)",
    source: HOWELL,
    ours: () => cropAfterFrost(0, 100, 0, 0, 0.35),
    published: 0.35,
    within: EXACT,
  },
  {
    why: "only tertiaries live: no crop",
    source: HOWELL,
    ours: () => cropAfterFrost(0, 0, 100, 0, 0.35),
    published: 0,
    within: EXACT,
  },
  {
    why: "Norton, half of the primaries dead: half of the crop lost, a secondary is worth about 0",
    source: MISSOURI,
    ours: () => cropAfterFrost(50, 50, 0, 0, 0),
    published: 0.5,
    within: EXACT,
  },
  {
    why: "Norton after the freeze of May 2020, 20 nodes: all primaries, 19 secondaries and 17 tertiaries dead",
    source: `derived from ${MISSOURI}`,
    ours: () => cropAfterFrost(0, 1, 2, 17, 0),
    published: 0,
    within: EXACT,
  },
]);
