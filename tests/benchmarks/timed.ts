/** Milliseconds that a piece of work takes. */
export function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** The middle of several runs; the upper one of two. */
export function median(values: readonly number[]): number {
  return [...values].sort((first, second) => first - second)[values.length >> 1];
}
