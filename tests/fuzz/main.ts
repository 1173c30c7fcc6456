import { ATTACKS } from "./attacks";
import { OUTCOMES, PROPERTIES } from "./properties";
import { tallyLine, type Tally } from "./tally";

const CASES = Number(process.env.CASES ?? 100_000);
const FILES = Number(process.env.FILES ?? 1000);
const SEED = Number(process.env.SEED ?? Date.now() % 2 ** 31);

/**
 * `npm run fuzz`: runs every property over its share of 100,000 cases and every attack on files over its share of 1,000;
 * CASES, FILES and SEED change them.
 */
async function fuzz(): Promise<void> {
  console.log(`${CASES} cases and ${FILES} files from seed ${SEED}`);
  const tallies: Tally[] = [];
  for (const { share, run } of ATTACKS) {
    const tally = await run(Math.ceil(FILES * share), SEED);
    console.log(tallyLine(tally));
    for (const failure of tally.failed) console.log(`         ${failure.slice(0, 500)}`);
    tallies.push(tally);
  }
  for (const { name, share, check } of CASES > 0 ? PROPERTIES : []) {
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
  const sum = (of: (tally: Tally) => number) => tallies.reduce((all, tally) => all + of(tally), 0);
  const failed = sum((tally) => tally.failed.length);
  console.log(
    `Files: ${sum(({ tried }) => tried)} tried, ${sum(({ done }) => done)} done, ${sum(({ refused }) => refused)} refused well, ${failed} failed`,
  );
  if (failed > 0) process.exitCode = 1;
}

fuzz().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
