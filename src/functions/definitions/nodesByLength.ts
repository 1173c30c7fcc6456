import { nodesByLength } from "../../domain/nodesByLength";
import type { PerMetre } from "../../domain/units";
import { NODESBYLENGTH_TEXT } from "../../texts/functions/budget";
import { cordonFunction, oneValue } from "../cordonFunction";
import { length, measured, unitSystem } from "../parameter";

export const NODESBYLENGTH = cordonFunction({
  id: "NODESBYLENGTH",
  texts: NODESBYLENGTH_TEXT,
  parameters: [
    length("length", { most: 100, aboveZero: true }),
    measured<"density", PerMetre>("density", "perLength", { most: 60 }),
    unitSystem(),
  ],
  result: oneValue("nodes"),
  examples: [
    {
      formula: "=CORDON.NODESBYLENGTH(5,4)",
      gives: [[20]],
      within: 0,
      source: {
        work: "Smith, Ohio State University 2023: 4 to 6 buds a foot, so 20 buds for vines 5 ft apart",
        mark: "published",
      },
    },
    {
      formula: '=CORDON.NODESBYLENGTH(2,15,"metric")',
      gives: [[30]],
      within: 0,
      source: {
        work: "15 shoots a metre of row, Sabbatini, Michigan State University: 2 m by hand",
        mark: "derived",
      },
    },
  ],
  onSheet: "=CORDON.NODESBYLENGTH(Blocks[Vine spacing (ft)],5)",
  run: (a) => nodesByLength(a.length, a.density),
});
