import { isLettered } from "../../../texts/placeName";
import type { DecidedVine } from "../decideSeason";
import type { Season } from "../../season/season";
import { placeOf } from "../../season/vinePlaces";
import { vineDrawing, type VineDrawing } from "./vineDrawing";

/** One place of a row of vines. */
export interface PlaceOnWire {
  readonly vine: number;
  /** Metres of the head from the middle of the row's first place. */
  readonly at: number;
  /** Left out where no vine with counted cordons stands. */
  readonly drawing?: VineDrawing;
  /** The register says that the vine is missing. */
  readonly missing: boolean;
}

/** A row of vines as it stands on the wire, to scale. */
export interface RowDrawing {
  readonly places: readonly PlaceOnWire[];
  /** Metres from vine to vine: the block's vine spacing, or what the longest cordons need where it is not given. */
  readonly spacing: number;
}

/**
 * A row as it stands on the wire: a place for every vine number up to the last, with what is known of the vine there. A
 * vine between two others (12a) stands between them.
 *
 * @param vines the decided vines of the season
 * @param block name of the block as the season has it
 * @param row number of the row
 */
export function rowDrawing(
  season: Season,
  vines: readonly DecidedVine[],
  block: string,
  row: number,
): RowDrawing {
  const { places, words } = season;
  const drawn = new Map(
    vines
      .filter((vine) => vine.block === block && vine.row === row)
      .map((vine) => [vine.vine, vineDrawing(vine)]),
  );
  const missing = new Set<number>();
  const numbers = new Set(drawn.keys());
  for (const key of places.register().keys()) {
    const place = placeOf(key);
    if (place.row !== row || words.wordOf(place.block) !== block) continue;
    numbers.add(place.vine);
    if (places.statusOf(key) === "missing") missing.add(place.vine);
  }
  const last = Math.floor(Math.max(0, ...[...numbers].filter((vine) => !isLettered(vine))));
  for (let vine = 1; vine <= last; vine++) numbers.add(vine);
  const inOrder = [...numbers].sort((one, other) => one - other);
  const given = places.blockNumber(words.codeOf(block), "vineSpacing");
  const spacing = given > 0 ? given : 2 * Math.max(0.5, ...[...drawn.values()].map(({ reach }) => reach));
  return {
    spacing,
    places: inOrder.map((vine) => {
      const whole = Math.floor(vine);
      const between = inOrder.filter((other) => other > whole && other < whole + 1);
      const part = (between.indexOf(vine) + 1) / (between.length + 1);
      const drawing = drawn.get(vine);
      return {
        vine,
        at: (whole + part - Math.floor(inOrder[0])) * spacing,
        ...(drawing === undefined ? {} : { drawing }),
        missing: missing.has(vine),
      };
    }),
  };
}
