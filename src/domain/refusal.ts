/** A fact of a refusal: what was given, which limits hold. Texts are names or codes, never sentences. */
export type Facts = Readonly<Record<string, string | number | readonly (string | number)[]>>;

/**
 * Why a calculation gives no answer. "invalid": an argument is not what it must be. "notAvailable": the arguments
 * are fine but no source covers them, or there is too little data to say.
 */
export type RefusalKind = "invalid" | "notAvailable";

/**
 * Thrown by every calculation of this folder instead of a guess. It carries data; the sentence is made where it is
 * shown (src/texts/refusals.ts, one text per code).
 */
export class Refusal extends Error {
  constructor(
    readonly kind: RefusalKind,
    /** Key of the text in src/texts/refusals.ts. */
    readonly code: string,
    readonly facts: Facts = {},
  ) {
    super(`${code} ${JSON.stringify(facts)}`);
    this.name = "Refusal";
  }
}

/**
 * The value, if it lies within the limits; else a refusal (outside) that says what it was and what it must be. NaN is
 * outside every limit. `argument` is the parameter's id in the functions registry.
 *
 * @example
 * mustLieBetween("budbreak", 0.9, 0, 1) // 0.9
 * mustLieBetween("budbreak", NaN, 0, 1) // Refusal outside
 */
export function mustLieBetween(
  argument: string,
  value: number,
  least: number,
  most: number,
  unit = "",
): number {
  if (!(value >= least && value <= most))
    throw new Refusal("invalid", "outside", { argument, value, least, most, unit });
  return value;
}

/**
 * The value, if it is a whole number within the limits; else a refusal (notWhole, outside).
 *
 * @example
 * mustBeWhole("cut", 12, 0, 100) // 12
 * mustBeWhole("cut", 1.5, 0, 100) // Refusal notWhole
 */
export function mustBeWhole(argument: string, value: number, least: number, most: number): number {
  if (!Number.isInteger(value)) throw new Refusal("invalid", "notWhole", { argument, value, least, most });
  return mustLieBetween(argument, value, least, most);
}
