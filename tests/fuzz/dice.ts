import { seededRandom } from "../../src/domain/random";

/** What a seed decides of one case. */
export class Dice {
  private readonly random: () => number;

  constructor(readonly seed: number) {
    this.random = seededRandom(seed);
  }

  /** A whole number from `least` to `most`. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.random() * (most - least + 1));
  }

  /** A whole number from 1 to `most` whose length is drawn first, so that most are small. */
  size(most: number): number {
    return Math.ceil(most ** this.random());
  }

  one<T>(choices: readonly T[]): T {
    return choices[this.whole(0, choices.length - 1)];
  }

  chance(share: number): boolean {
    return this.random() < share;
  }

  /** From `least` to `most` different choices in random order. */
  some<T>(choices: readonly T[], least: number, most: number): T[] {
    const left = [...choices];
    return Array.from(
      { length: Math.min(left.length, this.whole(least, most)) },
      () => left.splice(this.whole(0, left.length - 1), 1)[0],
    );
  }
}
