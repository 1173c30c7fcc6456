import { metresFromFeet, type Metres } from "../units";

/** The cane that is wanted where a new cordon is laid. */
export interface CaneToLay {
  /** Thickness wanted: Westover (Wines & Vines, May 2016) has 5/16 to 1/2 inch, for cordons the larger end. */
  readonly leastDiameter: Metres;
  readonly mostDiameter: Metres;
  /** Wire to fill in the end. */
  readonly length?: Metres;
  /** How long a cane must be for its thick part to fill that wire at once. */
  readonly caneLength?: Metres;
}

/**
 * What kind of cane to look for. It starts nearer the head than the dead stretch; the outer half of a cane is thin and
 * weak (Klodd, Thull and Clark, University of Minnesota 2020), so only its thick part is laid and the rest of the wire
 * is filled in later winters.
 *
 * @param wanted.sideLength wire to fill, in metres
 * @param wanted.thickShare share of a cane that is thick enough
 * @example
 * caneToLay({ sideLength: 1, thickShare: 0.5 }).caneLength // 2
 */
export function caneToLay(wanted: {
  readonly sideLength?: Metres | undefined;
  readonly thickShare: number;
}): CaneToLay {
  const { sideLength, thickShare } = wanted;
  return {
    leastDiameter: metresFromFeet(13 / 32 / 12),
    mostDiameter: metresFromFeet(1 / 2 / 12),
    ...(sideLength === undefined ? {} : { length: sideLength }),
    ...(sideLength === undefined || !(thickShare > 0)
      ? {}
      : { caneLength: (sideLength / thickShare) as Metres }),
  };
}
