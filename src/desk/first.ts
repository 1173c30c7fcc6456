import { WorkKeeper, type LeftWork } from "./keptWork";
import { ASKED } from "./pageAddress";
import { readFile, readSample, type Reading } from "./reading";
import { FIRST_SAMPLE } from "./sampleFile";

/** What stands on the page first. */
export interface FirstFile {
  readonly keeper: WorkKeeper;
  /** What an earlier visit left behind, which is opened in place of a sample. */
  readonly left: LeftWork | undefined;
  readonly reading: Reading;
}

/**
 * The first file on its way. This is a script of its own, and the first that runs: reading goes on while the browser makes
 * the engine's megabytes ready.
 */
export const FIRST_FILE: Promise<FirstFile> = readFirst();

async function readFirst(): Promise<FirstFile> {
  const keeper = await WorkKeeper.open();
  const left = await keeper.takeUp();
  const reading = left ? readLeft(left) : readSample(ASKED.get("workbook") ?? FIRST_SAMPLE, true);
  return { keeper, left, reading };
}

/** Begins to read what an earlier visit left behind. */
export function readLeft({ file, bytes }: LeftWork): Reading {
  return readFile(file, { bytes });
}
