import { cropAfterFrost } from "../../domain/cropAfterFrost";
import { CROPAFTERFROST_TEXT } from "../../texts/functions/injury";
import { cordonFunction, oneValue } from "../cordonFunction";
import { optional, share, whole } from "../parameter";

const HOWELL = "Howell, Michigan State, Estimating grapevine potential productivity after spring frost";

export const CROPAFTERFROST = cordonFunction({
  id: "CROPAFTERFROST",
  texts: CROPAFTERFROST_TEXT,
  parameters: [
    whole("primaries", { most: 1e6 }),
    whole("secondaries", { most: 1e6 }),
    whole("tertiaries", { most: 1e6 }),
    whole("shootless", { most: 1e6 }),
    optional(share("secondary_worth"), 0.35),
  ],
  result: oneValue("share"),
  examples: [
    {
      formula: "=CORDON.CROPAFTERFROST(60,30,5,5)",
      gives: [[0.705]],
      within: 1e-9,
      source: { work: `${HOWELL}: (60 x 1 + 30 x 0.35 + 5 x 0 + 5 x 0) / 100 by hand`, mark: "derived" },
    },
    {
      formula: "=CORDON.CROPAFTERFROST(0,1,2,17,0)",
      gives: [[0]],
      within: 0,
      source: {
        work: "Volenberg, University of Missouri, Vinews 2020 No. 5: Norton, 20 nodes, 20 primaries, 19 secondaries and 17 tertiaries dead; a secondary of Norton is worth about 0 (Vinews 2023 No. 1)",
        mark: "derived",
      },
    },
  ],
  onSheet:
    "=CORDON.CROPAFTERFROST(Harvest[Frost: primaries],Harvest[Frost: secondaries],Harvest[Frost: tertiaries],Harvest[Frost: shootless],0.35)",
  run: (a) => cropAfterFrost(a.primaries, a.secondaries, a.tertiaries, a.shootless, a.secondary_worth),
});
