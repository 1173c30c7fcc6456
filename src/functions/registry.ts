import type { CordonFunction } from "./cordonFunction";
import { BUDINJURY } from "./definitions/budInjury";
import { NODESAFTERINJURY } from "./definitions/nodesAfterInjury";
import { CROPAFTERFROST } from "./definitions/cropAfterFrost";
import { VINESTOCOUNT } from "./definitions/vinesToCount";
import { BLOCKMEAN } from "./definitions/blockMean";
import { VERSION } from "./definitions/version";
import { GAPSBYROW } from "./definitions/gapsByRow";
import { BLOCKCROP } from "./definitions/blockCrop";
import { CHECKCOUNTS } from "./definitions/checkCounts";
import { CHOOSECORDONS } from "./definitions/chooseCordons";
import { CORDONSCORE } from "./definitions/cordonScore";
import { CLUSTERS } from "./definitions/clusters";
import { CLUSTERSTOREMOVE } from "./definitions/clustersToRemove";
import { CROPLOAD } from "./definitions/cropLoad";
import { NODEBUDGET } from "./definitions/nodeBudget";
import { NODESBYLENGTH } from "./definitions/nodesByLength";
import { TRUNKSTORENEW } from "./definitions/trunksToRenew";
import { YOUNGVINE } from "./definitions/youngVine";
import { CROPOUTLOOK } from "./definitions/outlook";
import { PRUNINGHOURS } from "./definitions/pruningHours";
import { SHOOTS } from "./definitions/shoots";
import { SHOOTSTOREMOVE } from "./definitions/shootsToRemove";
import { SPURFIT } from "./definitions/spurFit";
import { VINECROP } from "./definitions/vineCrop";
import { VINEDENSITY } from "./definitions/vineDensity";

/**
 * Every CORDON function, in the order in which help lists them: the one place from which functions.json, the calls
 * that bind them in Excel, their registration on the desk page, the help in the pane, the README's table and the
 * command line's formula are made.
 *
 * To add a function:
 * 1. its calculation in src/domain (numbers in metric units; a `Refusal` where it cannot say);
 * 2. its texts in src/texts/functions: what it answers, a label and a sentence for each parameter, a label for each
 *    result column, in the three languages;
 * 3. its data in src/functions/definitions, a file named after the calculation: parameters in their final order with
 *    limits (metric) no wider than the calculation's own, the shape of the result, at least one worked example with
 *    the source of its value, and `run`, one line that hands the arguments on. Optional parameters come last.
 *    Lists of figures take a column and spill; a table is taken with its header row and read by src/survey;
 * 4. its name in the list below;
 * 5. `npm run functions:write`, which rewrites the functions.json that is expected, the README's table and released.json. From then on the
 *    name and the order of the parameters are frozen: new parameters come at the end and are optional.
 *
 * The tests under tests/functions run every example, hold every parameter against wrong input, and compare what is
 * committed with what the list below makes.
 */
export const FUNCTIONS: readonly CordonFunction[] = [
  NODEBUDGET,
  NODESBYLENGTH,
  BUDINJURY,
  NODESAFTERINJURY,
  CROPAFTERFROST,
  SPURFIT,
  SHOOTS,
  CLUSTERS,
  VINECROP,
  VINEDENSITY,
  BLOCKCROP,
  CROPOUTLOOK,
  CROPLOAD,
  SHOOTSTOREMOVE,
  CLUSTERSTOREMOVE,
  CHECKCOUNTS,
  CORDONSCORE,
  CHOOSECORDONS,
  TRUNKSTORENEW,
  YOUNGVINE,
  GAPSBYROW,
  VINESTOCOUNT,
  BLOCKMEAN,
  PRUNINGHOURS,
  VERSION,
];

/** Namespace of every function on a sheet: CORDON.NODEBUDGET. */
export const NAMESPACE = "CORDON";

const BY_ID = new Map(FUNCTIONS.map((each) => [each.id, each]));

/**
 * The function of that name, upper or lower case, without the namespace.
 *
 * @example
 * functionNamed("vinedensity").id // "VINEDENSITY"
 */
export function functionNamed(name: string): CordonFunction | undefined {
  return BY_ID.get(name.toUpperCase());
}
