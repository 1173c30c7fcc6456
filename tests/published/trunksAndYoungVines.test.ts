import { dueTrunks } from "../../src/domain/renewal/dueTrunks";
import { defaultSettings } from "../../src/survey/settings/settings";
import { checkRows, EXACT } from "./checkRows";

const MSU =
  "Zabadal, Michigan State University, E-2774 (2002): replace a trunk every 10 to 12 years even under the best conditions";

const due = (trunkAge: number) =>
  dueTrunks({ candidates: [{ side: "left", cordon: "A", trunk: 1, trunkAge }] }, 10, 2).due.length;

checkRows("trunks renewed by plan", [
  {
    why: "the first age of the source is the one in Settings",
    source: MSU,
    ours: () => defaultSettings().trunkAgeThatRenews,
    published: 10,
    within: EXACT,
  },
  ...[
    [9, 0],
    [10, 1],
    [12, 1],
  ].map(([age, published]) => ({
    why: `at ${age} years`,
    source: MSU,
    ours: () => due(age),
    published,
    within: EXACT,
  })),
]);
