import { ATTACKS } from "./attacks";
import { READINGS } from "./layouts";
import { OUTCOMES, PROPERTIES, type Property } from "./properties";
import { tallyLine, type Tally } from "./tally";

const CASES = Number(process.env.CASES ?? 100_000);
const FILES = Number(process.env.FILES ?? 1000);
const SEED = Number(process.env.SEED ?? Date.now() % 2 ** 31);

/**
 * `npm run fuzz`: runs every property over its share of 100,000 cases and every attack on files over its share of 1,000;
 * CASES, FILES and SEED change them. It tells every ten seconds how far it is, and at the end how many were tried,
 * refused well and done, and how many failed.
 */
async function fuzz(): Promise<void> {
  console.log(`${CASES} cases and ${FILES} files from seed ${SEED}`);
  const files: Counts[] = [];
  for (const { name, share, run } of FILES > 0 ? ATTACKS : []) {
    const cases = Math.ceil(FILES * share);
    const tally = await run(cases, SEED, true, progress(name, cases));
    console.log(tallyLine(tally));
    for (const failure of tally.failed) console.log(`         ${failure.slice(0, 500)}`);
    files.push({ ...tally, failed: tally.failed.length });
  }
  const cases: Counts[] = [];
  for (const property of CASES > 0 ? PROPERTIES : []) cases.push(await held(property));
  for (const [what, counts] of [
    ["Files", files],
    ["Cases", cases],
    ["Together", [...files, ...cases]],
  ] as const)
    console.log(countsLine(what, counts));
  if ([...files, ...cases].some(({ failed }) => failed > 0)) process.exitCode = 1;
}

type Counts = { readonly [Key in "tried" | "done" | "refused"]: Tally[Key] } & { readonly failed: number };

/** Runs a property over its share of all cases; of one that does not hold it prints the smallest case that shows it. */
async function held({ name, share, check }: Property): Promise<Counts> {
  const numRuns = Math.ceil(CASES * share);
  const start = performance.now();
  const told = progress(name, numRuns);
  OUTCOMES.refused = 0;
  Object.assign(READINGS, { exact: 0, asked: 0, silent: 0, wrong: 0 });
  let tried = 0;
  let failed = 0;
  try {
    await check({ numRuns, seed: SEED }, () => told(++tried, 0));
  } catch (error) {
    failed = 1;
    console.log(`         ${String(error).slice(0, 2000)}`);
  }
  const { refused } = OUTCOMES;
  const done = tried - refused;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(
    `${String(numRuns).padStart(7)}  ${name}: ${done} done, ${refused} refused well, ${failed} failed; ${seconds} s`,
  );
  const { exact, asked, silent, wrong } = READINGS;
  if (exact + asked > 0)
    console.log(`         ${exact} exact, ${asked} asked, ${silent} silent, ${wrong} wrong`);
  return { tried: tried + failed, done, refused, failed };
}

const EVERY = 10_000;

/** Tells every ten seconds how far an attack or a property is. */
function progress(name: string, cases: number): (tried: number, failed: number) => void {
  let last = performance.now();
  return (tried, failed) => {
    if (performance.now() - last < EVERY) return;
    last = performance.now();
    console.log(`         ${tried} of ${cases}, ${failed} failed: ${name}`);
  };
}

function countsLine(what: string, counts: readonly Counts[]): string {
  const sum = (key: keyof Counts) => counts.reduce((all, each) => all + each[key], 0);
  return `${what}: ${sum("tried")} tried, ${sum("refused")} refused well, ${sum("done")} done, ${sum("failed")} failed`;
}

fuzz().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
