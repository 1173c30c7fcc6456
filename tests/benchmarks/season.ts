import { crewCards } from "../../src/survey/decide/cards/crewCards";
import { stayingCordons } from "../../src/survey/decide/stayingCordons";
import { outlookInputs } from "../../src/survey/crop/outlookInputs";
import { blockOutlook } from "../../src/survey/crop/blockOutlook";
import { readSeason } from "../../src/survey/reading/readSeason";
import { gapsOfSeason } from "../../src/survey/season/gapsOfSeason";
import { winterRows } from "../../src/survey/season/winterRows";
import { HeldSeason } from "../../src/taskpane/heldSeason";
import { HeldSheets } from "../../src/taskpane/heldSheets";
import { MemoryWorkbook, type MemoryCell } from "../workbook/memory/memoryWorkbook";
import { HEADERS, largeSeason } from "./largeSeason";
import { median } from "./timed";

const SIZES = [2_000, 20_000, 200_000];
const LIVE_SPURS = HEADERS.indexOf("Live spurs") + 1;
const TODAY = 46_100;

/**
 * Seasons of three sizes in one process: reading the sheets into a Season, bringing the pane's Season up to date after
 * one typed cell, and each result of it. Every figure is a ratio to reading alone; the sum is what a person waits for
 * until every result is right again.
 */
export async function run(): Promise<void> {
  console.log(`Node ${process.version}, medians`);
  for (const rows of SIZES) await measure(rows, rows > 100_000 ? 3 : 7);
}

async function measure(rows: number, rounds: number): Promise<void> {
  const cells: MemoryCell[][] = [HEADERS, ...largeSeason(rows)];
  const blocks = [...new Set(cells.slice(1).map(([block]) => block))];
  const workbook = new MemoryWorkbook({
    Blocks: [
      ["Block", "Rows", "Vine places", "Vine spacing (ft)", "Training system"],
      ...blocks.map((block): MemoryCell[] => [block, 120, 24_000, 6, "high wire"]),
    ],
    Cordons: cells,
  });
  const held = new HeldSeason(new HeldSheets(workbook, () => {}));
  const never = new AbortController().signal;
  const first = await held.read();
  const areas = first.areas;
  const times = new Map<string, number[]>();
  const time = async <Made>(name: string, work: () => Made | Promise<Made>): Promise<Made> => {
    const start = performance.now();
    const made = await work();
    times.set(name, [...(times.get(name) ?? []), performance.now() - start]);
    return made;
  };
  for (let round = 0; round < rounds; round++) {
    await time("reading", () => readSeason(areas));
    workbook.type("Cordons", 2 + round * 5, LIVE_SPURS, 1 + (round % 3));
    const reading = await time("one cell typed", () => held.read());
    const { season } = reading;
    await time("findings", () => held.check(reading, TODAY, never));
    const vines = await time("choice", () => held.decide(reading, never));
    await time("gaps", () => gapsOfSeason(season, stayingCordons(vines)));
    await time("cards", () => crewCards(season, vines));
    await time("crop", () =>
      outlookInputs(season, { decided: vines }).map((block) => blockOutlook(block, season.settings, [])),
    );
    await time("winters", () => winterRows(season, stayingCordons(vines)));
  }
  await held.stop();
  const reading = median(times.get("reading")!);
  console.log(`${rows} rows of cordons, ${rounds} rounds`);
  let sum = 0;
  for (const [name, taken] of times) {
    const middle = median(taken);
    if (name !== "reading") sum += middle;
    console.log(`${name.padEnd(16)} ${middle.toFixed(0).padStart(6)} ms  ${(middle / reading).toFixed(2)} x`);
  }
  console.log(`${"all of it".padEnd(16)} ${sum.toFixed(0).padStart(6)} ms  ${(sum / reading).toFixed(2)} x`);
}
