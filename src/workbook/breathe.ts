/** Milliseconds after which work that only yields lets every other work of the page go before it once. */
const TURN = 500;
let lastTurn = -Infinity;

/**
 * Lets the page draw and take input. Where the browser can, the work goes on before other work of the page that waits too
 * (a long calculation of the engine beside it), but for one turn in a while.
 *
 * @see https://developer.mozilla.org/docs/Web/API/Scheduler/yield
 */
export async function breathe(): Promise<void> {
  const { scheduler } = globalThis as { scheduler?: { yield?(): Promise<void> } };
  if (scheduler?.yield && performance.now() - lastTurn < TURN) return scheduler.yield();
  await new Promise((resolve) => setTimeout(resolve));
  lastTurn = performance.now();
}
