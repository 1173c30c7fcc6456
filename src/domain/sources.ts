/** A published work that a figure or rule was taken from. */
export interface Source {
  /** How it is named on a sheet: "Cornell 2014". */
  readonly name: string;
  readonly work: string;
  /** "seen": the number stood in the source. "derived": worked out from seen numbers. "memory": unverified. */
  readonly mark: "seen" | "derived" | "memory";
}

/** Every source that a figure of the project cites, by id. */
export const SOURCES: Readonly<Record<string, Source>> = {
  cornell2014: {
    name: "Cornell 2014",
    work: "Cornell Cooperative Extension, Northern New York Grape Update, 28 Feb 2014: Evaluating bud injury and adjusting pruning",
    mark: "seen",
  },
};
