import { FUNCTIONS } from "./registry";

/** The parameter ids of every released function, in order. */
export type Signatures = Readonly<Record<string, readonly string[]>>;

/** Why the functions of this version would break workbooks that hold formulas of an earlier one. */
export interface BrokenSignature {
  readonly id: string;
  readonly why: "functionGone" | "parameterMovedOrGone" | "newParameterNotOptional";
  readonly parameter?: string;
}

/** The signatures of this version. */
export const presentSignatures = (): Signatures =>
  Object.fromEntries(FUNCTIONS.map(({ id, parameters }) => [id, parameters.map((each) => each.id)]));

/**
 * What of the released signatures this version breaks: a released function may only gain optional parameters at its
 * end, and never goes away, because formulas in workbooks name it and give its arguments by position.
 *
 * @example
 * brokenSignatures({ CLUSTERS: ["shoots", "clusters_per_shoot"] }) // []
 * brokenSignatures({ CLUSTERS: ["clusters_per_shoot"] })[0].why // "parameterMovedOrGone"
 */
export function brokenSignatures(released: Signatures): readonly BrokenSignature[] {
  return Object.entries(released).flatMap(([id, order]): BrokenSignature[] => {
    const present = FUNCTIONS.find((each) => each.id === id);
    if (!present) return [{ id, why: "functionGone" }];
    const moved = order.find((parameter, index) => present.parameters[index]?.id !== parameter);
    if (moved !== undefined) return [{ id, why: "parameterMovedOrGone", parameter: moved }];
    const required = present.parameters.slice(order.length).find(({ optional }) => !optional);
    return required ? [{ id, why: "newParameterNotOptional", parameter: required.id }] : [];
  });
}
