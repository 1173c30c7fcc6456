/** How many cases were tried and what became of them. */
export interface Tally {
  readonly name: string;
  readonly tried: number;
  readonly done: number;
  readonly refused: number;
  /** What went wrong, with the seed that shows it again. */
  readonly failed: readonly string[];
  /** The slowest case: its seconds and its seed. */
  readonly slowest: { readonly seconds: number; readonly seed: number };
}

/**
 * Runs so many cases, each from its own seed, and counts; a case that throws has failed.
 *
 * @param onCase hears after each case how many were tried and how many of them failed
 */
export async function tallied(
  name: string,
  cases: number,
  seed: number,
  oneCase: (seed: number) => Promise<"done" | "refused">,
  onCase?: (tried: number, failed: number) => void,
): Promise<Tally> {
  const counts = { done: 0, refused: 0 };
  const failed: string[] = [];
  let slowest = { seconds: 0, seed };
  for (let at = 0; at < cases; at++) {
    const start = performance.now();
    await oneCase(seed + at).then(
      (outcome) => counts[outcome]++,
      (error: unknown) => failed.push(`seed ${seed + at}: ${whatHappened(error)}`),
    );
    const seconds = (performance.now() - start) / 1000;
    if (seconds > slowest.seconds) slowest = { seconds, seed: seed + at };
    onCase?.(at + 1, failed.length);
  }
  return { name, tried: cases, ...counts, failed, slowest };
}

function whatHappened(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const place = error.stack?.split("\n").find((line) => line.includes("/src/"));
  return `${error.message}${place ? ` ${place.trim()}` : ""}`;
}

/** The line that shows a tally. */
export function tallyLine({ name, tried, done, refused, failed, slowest }: Tally): string {
  const counts = `${done} done, ${refused} refused well, ${failed.length} failed`;
  return `${String(tried).padStart(7)}  ${name}: ${counts}; slowest ${slowest.seconds.toFixed(1)} s (seed ${slowest.seed})`;
}
