import { normalQuantile } from "../../src/domain/statistics/normalQuantile";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Where the invented farm's chance comes from; the same seed gives the same farm on every machine. */
export interface RandomSource {
  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number;
  /** True with the given chance between 0 and 1. */
  chance(share: number): boolean;
  /** A number from `least` up to `most`, rounded to the given decimals. */
  number(least: number, most: number, decimals: number): number;
  /** One of the given, all equally likely. */
  oneOf<T>(from: readonly T[]): T;
  /** A deviate of the standard normal distribution, from one of 9,999 equal shares of it. */
  normal(): number;
}

/**
 * A source of chance that starts from a whole number.
 *
 * @example
 * randomSource(7).whole(3, 3) // 3
 */
export function randomSource(seed: number): RandomSource {
  const generator = xoroshiro128plus(seed);
  const source: RandomSource = {
    whole: (least, most) => uniformInt(generator, least, most),
    chance: (share) => uniformFloat64(generator) < share,
    number: (least, most, decimals) => {
      const steps = 10 ** decimals;
      return uniformInt(generator, Math.round(least * steps), Math.round(most * steps)) / steps;
    },
    oneOf: (from) => from[uniformInt(generator, 0, from.length - 1)],
    normal: () => normalQuantile(source.number(0.0001, 0.9999, 4)),
  };
  return source;
}
