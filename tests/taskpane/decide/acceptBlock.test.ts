import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { acceptBlock, takeBackBlock } from "../../../src/taskpane/decide/acceptBlock";
import { acceptPlan } from "../../../src/taskpane/decide/acceptPlan";
import { FIRST_DECIDE_STATE, type DecideState } from "../../../src/taskpane/decide/decideState";
import { fixChoice } from "../../../src/taskpane/decide/fixChoice";
import type { Pane, PaneState } from "../../../src/taskpane/pane";
import { ACCEPT_TEXTS } from "../../../src/texts/accept";
import { DECIDE_TEXTS } from "../../../src/texts/pane";
import { heldSeasonOf } from "../heldSeasonOf";
import { MemoryWorkbook, type MemoryCell } from "../../workbook/memory/memoryWorkbook";

const HEAD = "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Longest gap".split(",");
/** Invented counts; vine 1 has equal cordons on one side, vine 2 a dead one beside a good one, vine 3 a word. */
const ROWS: MemoryCell[][] = [
  ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, 1, null],
  ["North Bench", 1, 1, "left", "B", 1, 3.5, 7, 6, 1, null],
  ["North Bench", 1, 1, "right", "C", 1, 3.5, 7, 7, 0, null],
  ["North Bench", 1, 2, "left", "A", 1, 3.5, 7, 7, 0, null],
  ["North Bench", 1, 2, "left", "B", 1, 3.5, 7, 0, 7, null],
  ["North Bench", 1, 2, "right", "C", 2, 3.5, 7, 7, 0, "stays"],
  ["North Bench", 1, 3, "left", "A", 1, 3.5, 7, 7, 0, "see Ann"],
  ["North Bench", 1, 3, "right", "B", 2, 3.5, 7, 7, 0, null],
  ["Creek Side", 1, 1, "left", "A", 1, 3.5, 7, 7, 0, null],
  ["Creek Side", 1, 1, "right", "B", 2, 3.5, 7, 7, 0, null],
];
const FIXED = 10;

async function decided(header: string | undefined = "Fixed choice", rows = ROWS) {
  const workbook = new MemoryWorkbook({
    Cordons: header === "" ? [HEAD, ...rows.map((row) => row.slice(0, FIXED))] : [[...HEAD, header], ...rows],
  });
  const held = heldSeasonOf(workbook);
  const { season, version } = await held.read();
  let decide: DecideState = {
    ...FIRST_DECIDE_STATE,
    version,
    result: { season, vines: [...decideSeason(season)] },
  };
  const told: { text: unknown; facts: unknown }[] = [];
  const pane = {
    workbook,
    held,
    get state() {
      return { decide, language: "en" } as PaneState;
    },
    change: (next: (state: PaneState) => PaneState) => (decide = next({ decide } as PaneState).decide),
    say: () => "",
    tell: (_intent: string, text: unknown, facts: unknown) => told.push({ text, facts }),
  } as unknown as Pane;
  const fixed = async () =>
    (await workbook.readSheet("Cordons")).values.slice(1).map((row) => row[FIXED] ?? null);
  const all = async () => (await workbook.readSheet("Cordons")).values;
  const plan = () => acceptPlan(decide.result!.vines, "North Bench");
  return { workbook, pane, told, fixed, all, plan };
}

const FIXED_BEFORE = ROWS.map((row) => row[FIXED]);

test("only settled vines of the block with blank cells are planned", async () => {
  const { plan } = await decided();
  expect(plan()).toMatchObject({ all: 3, accepted: 0, ask: 1, unreadable: 1 });
  expect(plan().vines.map(({ vine }) => vine)).toEqual([2]);
  expect(plan().wanted).toEqual([
    { sheet: "Cordons", row: 5, column: FIXED + 1, content: { value: "stays" } },
    { sheet: "Cordons", row: 6, column: FIXED + 1, content: { value: "goes" } },
  ]);
});

test("a block is accepted in one step, and taken back exactly", async () => {
  const { pane, told, fixed, all, plan } = await decided();
  const before = await all();
  const verdicts = () =>
    pane.state.decide.result!.vines.map(({ decision }) => decision.cordons.map(({ verdict }) => verdict));
  const decidedBefore = verdicts();
  await acceptBlock(pane, "North Bench", " AB ");
  const written = [...FIXED_BEFORE];
  written.splice(3, 2, "stays", "goes");
  expect(await fixed()).toEqual(written);
  expect(told).toEqual([
    {
      text: ACCEPT_TEXTS.doneBy,
      facts: { block: "North Bench", vines: 1, cells: 2, by: "AB" },
    },
  ]);
  expect(verdicts()).toEqual(decidedBefore);
  expect(plan()).toMatchObject({ all: 3, accepted: 1, ask: 1, vines: [] });
  await takeBackBlock(pane);
  expect(await all()).toEqual(before);
  expect(plan()).toMatchObject({ accepted: 0, wanted: [{}, {}] });
});

test("words are those of the column's language", async () => {
  const { pane, fixed } = await decided("Choix fixé");
  await acceptBlock(pane, "Creek Side", "MK");
  expect((await fixed()).slice(8)).toEqual(["reste", "reste"]);
});

test.each([
  { change: "a count", row: 6, column: 9, cell: 5, at: "I6" },
  { change: "a choice", row: 5, column: 11, cell: "goes", at: "K5" },
  { change: "a choice that stood there", row: 7, column: 11, cell: null, at: "K7" },
  { change: "a formula", row: 5, column: 11, cell: { formula: '=""', value: "" }, at: "K5" },
])("after a colleague changed $change nothing is written", async ({ row, column, cell, at }) => {
  const { workbook, pane, told, all } = await decided();
  workbook.type("Cordons", row, column, cell, "colleague");
  const before = await all();
  await acceptBlock(pane, "North Bench", "AB");
  expect(told).toEqual([{ text: ACCEPT_TEXTS.meanwhile, facts: { sheet: "Cordons", cell: at } }]);
  expect(await all()).toEqual(before);
});

test("an edit between reading and writing brings the whole step back", async () => {
  const { workbook, pane, told, fixed } = await decided();
  const read = workbook.readSheet.bind(workbook);
  let reads = 0;
  workbook.readSheet = async (...request) => {
    const area = await read(...request);
    reads += 1;
    if (reads === 1) workbook.type("Cordons", 6, FIXED + 1, "stays", "colleague");
    return area;
  };
  await acceptBlock(pane, "North Bench", "AB");
  const kept = [...FIXED_BEFORE];
  kept[4] = "stays";
  expect(await fixed()).toEqual(kept);
  expect(told).toEqual([{ text: ACCEPT_TEXTS.meanwhile, facts: { sheet: "Cordons", cell: "K6" } }]);
});

test("taking back leaves a cell alone that somebody changed since, and says so", async () => {
  const { workbook, pane, told, fixed } = await decided();
  await acceptBlock(pane, "North Bench", "AB");
  workbook.type("Cordons", 6, FIXED + 1, "stays", "colleague");
  await takeBackBlock(pane);
  const kept = [...FIXED_BEFORE];
  kept[4] = "stays";
  expect(await fixed()).toEqual(kept);
  expect(told[1]).toEqual({
    text: ACCEPT_TEXTS.partlyBack,
    facts: { block: "North Bench", cells: 1, left: 1 },
  });
});

test("a vine whose question was answered on the page is accepted with the others", async () => {
  const { pane, fixed } = await decided();
  await fixChoice(pane, pane.state.decide.result!.vines[0], {
    kind: "stays",
    place: 1,
  });
  await acceptBlock(pane, "North Bench", "AB");
  expect((await fixed()).slice(0, 6)).toEqual(["goes", "stays", "stays", "stays", "goes", "stays"]);
});

test("without a column for it nothing is written and the next step is told", async () => {
  const { pane, told, all, plan } = await decided("");
  const before = await all();
  expect(plan()).toMatchObject({ withoutColumn: "Cordons", wanted: [] });
  await acceptBlock(pane, "North Bench", "AB");
  expect(told).toEqual([{ text: DECIDE_TEXTS.noColumn, facts: { sheet: "Cordons" } }]);
  expect(await all()).toEqual(before);
});

test("a block is accepted without a name, and the sentence names nobody", async () => {
  const { pane, told } = await decided();
  await acceptBlock(pane, "North Bench", " ");
  expect(told).toEqual([
    {
      text: ACCEPT_TEXTS.done,
      facts: { block: "North Bench", vines: 1, cells: 2, by: "" },
    },
  ]);
});
