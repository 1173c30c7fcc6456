/** Heads with which the Cordons sheet of a test begins, lengths in a unit; what it has besides, the test adds. */
export const cordonHeads = (unit: string): readonly string[] => [
  "Block",
  "Row",
  "Vine",
  "Side",
  "Cordon",
  "Trunk",
  `Length (${unit})`,
  "Positions",
  "Live spurs",
];

/** The same with lengths in feet. */
export const CORDON_HEADS = cordonHeads("ft");
