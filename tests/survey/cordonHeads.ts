/** Heads with which the Cordons sheet of a test begins; what it has besides, the test adds. */
export const CORDON_HEADS: readonly string[] = [
  "Block",
  "Row",
  "Vine",
  "Side",
  "Cordon",
  "Trunk",
  "Length (ft)",
  "Positions",
  "Live spurs",
];
