import { OUTCOMES, PROPERTIES } from "./properties";

const CASES = Number(process.env.CASES ?? 100_000);
const SEED = Number(process.env.SEED ?? Date.now() % 2 ** 31);

/** `npm run fuzz`: runs every property over its share of 100,000 cases; CASES and SEED change both. */
async function fuzz(): Promise<void> {
  console.log(`${CASES} cases from seed ${SEED}`);
  for (const { name, share, check } of PROPERTIES) {
    const numRuns = Math.ceil(CASES * share);
    const start = performance.now();
    OUTCOMES.read = OUTCOMES.refused = 0;
    await check({ numRuns, seed: SEED });
    const { read, refused } = OUTCOMES;
    const counts = read + refused === 0 ? "" : ` (${refused} refused well, ${read} read, 0 failed)`;
    console.log(
      `${String(numRuns).padStart(7)}  ${((performance.now() - start) / 1000).toFixed(1).padStart(6)} s  ${name}${counts}`,
    );
  }
}

fuzz().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
