import { trainingSystem, type Training } from "../../domain/choice/trainingSystems";
import { metres, type Metres } from "../../domain/units";
import type { SettingValues } from "../settings/settings";
import { choiceId, type VinePlaces } from "./vinePlaces";

/** What a cordon on one side of a vine has for itself. */
export interface SideOfVine {
  readonly training: Training | undefined;
  /** Its part of the vine spacing; undefined where the block gives no spacing. */
  readonly space: Metres | undefined;
  /** The wire it is to fill; undefined in a divided canopy, where the spacing does not tell. */
  readonly wire: Metres | undefined;
}

/**
 * The side of a vine in a block: half of the vine spacing, or all of it for a single cordon or a divided canopy; of that
 * wire the space between neighbouring cordons stays free.
 *
 * @param block number of the block's name
 */
export function sideOfVine(places: VinePlaces, block: number, settings: SettingValues): SideOfVine {
  const entry = places.blockRows().get(block);
  const column = entry?.table.column("training");
  const training = entry && column && (choiceId(column, entry.index) as Training | undefined);
  const spacing = places.blockNumber(block, "vineSpacing");
  if (!(spacing > 0)) return { training, space: undefined, wire: undefined };
  if (training && trainingSystem(training).divided)
    return { training, space: metres(spacing), wire: undefined };
  const sides = settings.cordonsOnAVine >= 1.5 ? 2 : 1;
  const wire = (spacing - settings.spaceBetweenNeighbouringCordons) / sides;
  return { training, space: metres(spacing / sides), wire: wire > 0 ? metres(wire) : undefined };
}
