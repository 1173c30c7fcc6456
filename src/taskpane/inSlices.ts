import { breathe } from "../workbook/breathe";

/** How long a slice may hold the page, in milliseconds: less than one frame. */
const SLICE = 12;

/**
 * Runs a generator in slices, so that the page stays alive: after every 12 ms it lets the page draw and take input.
 *
 * @param work yields whatever it wants to report
 * @param onYield called with everything the generator yields
 * @param signal stops the work between two steps; the promise then rejects with the signal's reason
 * @returns what the generator returns
 */
export async function inSlices<Yielded, Returned>(
  work: Generator<Yielded, Returned, void>,
  onYield: (yielded: Yielded) => void,
  signal?: AbortSignal,
): Promise<Returned> {
  let end = performance.now() + SLICE;
  for (;;) {
    signal?.throwIfAborted();
    const step = work.next();
    if (step.done === true) return step.value;
    onYield(step.value);
    if (performance.now() >= end) {
      await breathe();
      end = performance.now() + SLICE;
    }
  }
}
