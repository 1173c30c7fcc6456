/** A source of random numbers: each call gives one between 0 and 1, 1 excluded. Always an argument, never a global. */
export type Random = () => number;

/**
 * A random source that gives the same numbers for the same seed on every machine, for sampling plans that can be made
 * again. The generator is SplitMix32 (after Steele, Lea and Flood 2014, "Fast splittable pseudorandom number
 * generators", OOPSLA, with a 32-bit finisher); good for drawing vines, not for secrets.
 *
 * `seed`: any whole number; only its lower 32 bits count.
 *
 * @example
 * seededRandom(7)() === seededRandom(7)() // true
 * seededRandom(7)() === seededRandom(8)() // false
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let bits = imul(state ^ (state >>> 16), 0x21f0aaad);
    bits = imul(bits ^ (bits >>> 15), 0x735a2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 4294967296;
  };
}

const { imul } = Math;
