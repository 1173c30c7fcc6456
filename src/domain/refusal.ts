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

/** What an argument was and what it must be; `argument` is the parameter's id in the functions registry. */
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

/** Refuses anything but a whole number within the limits. */
export function mustBeWhole(argument: string, value: number, least: number, most: number): number {
  if (!Number.isInteger(value)) throw new Refusal("invalid", "notWhole", { argument, value, least, most });
  return mustLieBetween(argument, value, least, most);
}
