import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { isAsked } from "../../../src/survey/decide/isAsked";
import {
  FIRST_DECIDE_STATE,
  countVines,
  vinesToShow,
  type DecideState,
} from "../../../src/taskpane/decide/decideState";
import { fixChoice, takeBackChoice } from "../../../src/taskpane/decide/fixChoice";
import { vineOfRow } from "../../../src/taskpane/decide/followSelection";
import { vineFound, vineWalk } from "../../../src/taskpane/decide/vineWalk";
import type { Pane, PaneState } from "../../../src/taskpane/pane";
import { OVERRULE_TEXTS } from "../../../src/texts/overrule";
import { AGE_TEXTS, DECIDE_TEXTS } from "../../../src/texts/pane";
import { heldSeasonOf } from "../heldSeasonOf";
import { MemoryWorkbook } from "../../workbook/memory/memoryWorkbook";
import { CORDON_HEADS } from "../../survey/cordonHeads";

const head = (fixed: string[]) => [...CORDON_HEADS, "Longest gap", ...fixed];
const TWINS = [
  ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 6, 1],
  ["North Bench", 1, 1, "left", "B", 1, 3.5, 7, 6, 1],
  ["North Bench", 1, 1, "right", "C", 1, 3.5, 7, 7, 0],
  ["Creek Side", 1, 1, "left", "A", 1, 3.5, 7, 7, 0],
  ["Creek Side", 1, 1, "right", "B", 2, 3.5, 7, 7, 0],
];

async function decided(fixed: string[]) {
  const workbook = new MemoryWorkbook({ Cordons: [head(fixed), ...TWINS] });
  const held = heldSeasonOf(workbook);
  const { season, version } = await held.read();
  const vines = [...decideSeason(season)];
  let decide: DecideState = { ...FIRST_DECIDE_STATE, version, result: { season, vines } };
  const told: unknown[] = [];
  const pane = {
    workbook,
    held,
    get state() {
      return { decide, language: "en" } as PaneState;
    },
    say: () => "",
    change: (next: (state: PaneState) => PaneState) => (decide = next({ decide } as PaneState).decide),
    tell: (_intent: string, text: unknown) => told.push(text),
  } as unknown as Pane;
  const decideAgain = async () => {
    const read = await held.read();
    decide = {
      ...decide,
      version: read.version,
      result: { season: read.season, vines: [...decideSeason(read.season)] },
    };
    return decide.result!.vines;
  };
  return { workbook, vines, pane, told, decideAgain };
}

const column = async (workbook: MemoryWorkbook, index: number) =>
  (await workbook.readSheet("Cordons")).values.map((row) => row[index] ?? null);

test("equal cordons are asked about, and listed as such", async () => {
  const { vines } = await decided([]);
  expect(isAsked(vines[0])).toBe(true);
  expect(vinesToShow(vines, "ask", "").map(({ block }) => block)).toEqual(["North Bench"]);
  expect(vinesToShow(vines, "ask", "Creek Side")).toEqual([]);
  expect(countVines(vines)).toMatchObject({ ask: 1, all: 2 });
});

test.each([
  { header: "Fixed choice", words: ["stays", "goes"] },
  { header: "Decisión fija", words: ["queda", "se corta"] },
])("a person's decision is written under $header and decides the side", async ({ header, words }) => {
  const { workbook, vines, pane, told } = await decided([header]);
  await fixChoice(pane, vines[0], { kind: "stays", place: 1 });
  expect(told).toEqual([DECIDE_TEXTS.fixed]);
  expect(await column(workbook, 10)).toEqual([header, words[1], words[0], null, null, null]);
  const [now] = pane.state.decide.result!.vines;
  expect(now.decision.cordons.map(({ verdict }) => verdict)).toEqual(["goes", "stays", "stays"]);
});

test("without a column for it nothing is written and the next step is told", async () => {
  const { workbook, vines, pane, told } = await decided([]);
  await fixChoice(pane, vines[0], { kind: "stays", place: 1 });
  expect(told).toEqual([DECIDE_TEXTS.noColumn]);
  expect(await column(workbook, 10)).toEqual([null, null, null, null, null, null]);
});

test("rows that were sorted meanwhile are not written to", async () => {
  const { workbook, vines, pane, told } = await decided(["Fixed choice"]);
  workbook.type("Cordons", 2, 3, 9, "colleague");
  await fixChoice(pane, vines[0], { kind: "stays", place: 1 });
  expect(told).toEqual([AGE_TEXTS.vineChanged]);
  expect((await column(workbook, 10)).slice(1)).toEqual([null, null, null, null, null]);
});

test("taking back leaves a cell that somebody changed since, and says so", async () => {
  const { workbook, vines, pane, told } = await decided(["Fixed choice"]);
  await fixChoice(pane, vines[0], { kind: "stays", place: 1 });
  await workbook.writeCells("Cordons", [{ row: 2, column: 11, value: "stays" }]);
  await takeBackChoice(pane, pane.state.decide.past[0]);
  expect(told).toEqual([DECIDE_TEXTS.fixed, OVERRULE_TEXTS.partlyBack]);
  expect(await column(workbook, 10)).toEqual(["Fixed choice", "stays", null, null, null, null]);
});

const FIXED = 10;
test.each([
  {
    outcome: { kind: "cane", place: 1 } as const,
    cells: ["goes", "lay a cane", null],
    left: "layCaneFrom",
  },
  {
    outcome: { kind: "none", side: "left" } as const,
    cells: ["goes", "goes", null],
    left: "layCaneFrom",
  },
  {
    outcome: { kind: "recount" } as const,
    cells: ["count again", null, null],
    left: "recount",
  },
])(
  "$outcome.kind is written, decides the vine, is read again alike, and can be taken back",
  async ({ outcome, cells, left }) => {
    const { workbook, vines, pane, told } = await decided(["Fixed choice"]);
    const before = await column(workbook, FIXED);
    await fixChoice(pane, vines[0], outcome);
    expect(await column(workbook, FIXED)).toEqual(["Fixed choice", ...cells, null, null]);
    const [shown] = pane.state.decide.result!.vines;
    const [readAgain] = [...decideSeason((await heldSeasonOf(workbook).read()).season)];
    for (const vine of [shown, readAgain]) {
      const [side] = vine.decision.sides;
      if (left === "recount") {
        expect(vine.decision.notes.map(({ code }) => code)).toEqual(["recount"]);
        expect(vine.recount).toMatchObject([
          { sheet: "Cordons", sheetRow: 2, sheetColumn: 11, reason: "marked" },
        ]);
      } else
        expect(side).toMatchObject({
          side: "left",
          ask: false,
          layCaneFrom: 1,
        });
    }
    expect(readAgain.plan).toEqual(shown.plan);
    await takeBackChoice(pane, pane.state.decide.past[0]);
    expect(told).toEqual([DECIDE_TEXTS.fixed, OVERRULE_TEXTS.takenBack]);
    expect(await column(workbook, FIXED)).toEqual(before);
  },
);

test("the cane that a person lays comes from the cordon they chose, which is cut back to it", async () => {
  const { vines, pane } = await decided(["Fixed choice"]);
  await fixChoice(pane, vines[0], { kind: "cane", place: 1 });
  const [{ plan }] = pane.state.decide.result!.vines;
  expect(plan.canes).toEqual([
    {
      side: "left",
      from: 1,
      source: { side: "left", cordon: "B" },
      ask: false,
    },
  ]);
  expect(plan.cuts.map(({ cordon, backTo }) => `${cordon} ${backTo}`)).toEqual(["A head", "B cane"]);
});

test("a marked vine is decided by hand or freed, and a freed one is asked about again", async () => {
  const { workbook, vines, pane, decideAgain } = await decided(["Fixed choice"]);
  const fixed = async () => (await column(workbook, FIXED)).slice(1, 4);
  await fixChoice(pane, vines[0], { kind: "recount" });
  await fixChoice(pane, (await decideAgain())[0], { kind: "stays", place: 0 });
  expect(await fixed()).toEqual(["stays", "goes", null]);
  await fixChoice(pane, (await decideAgain())[0], { kind: "free" });
  expect(await fixed()).toEqual([null, null, null]);
  expect(isAsked((await decideAgain())[0])).toBe(true);
});

test("next and previous walk the list, and a decided vine keeps its place between those that are left", async () => {
  const { vines, pane } = await decided(["Fixed choice"]);
  const all = vineWalk(vines, { shown: "all", block: "", at: undefined })!;
  expect([all.vine, all.previous, all.next, all.at, all.of]).toEqual([vines[0], undefined, vines[1], 1, 2]);
  await fixChoice(pane, vines[0], { kind: "stays", place: 0 });
  const now = pane.state.decide.result!.vines;
  const asked = vineWalk(now, {
    shown: "ask",
    block: "",
    at: "North Bench|1|1",
  })!;
  expect([asked.vine, asked.at, asked.of, asked.next]).toEqual([now[0], undefined, 0, undefined]);
});

test.each([
  { search: "creek 1 1", found: "Creek Side" },
  { search: "North Bench row 1 vine 1", found: "North Bench" },
  { search: "creek side", found: "Creek Side" },
  { search: "bench hilera 1", found: "North Bench" },
  { search: "1 1", found: "North Bench" },
  { search: "creek 1 2", found: undefined },
  { search: "lake", found: undefined },
  { search: " ", found: undefined },
])("a search for “$search” finds $found", async ({ search, found }) => {
  const { vines } = await decided([]);
  expect(vineFound(vines, search)?.block).toBe(found);
});

test("a row of the sheet names its vine, a head or another sheet none", async () => {
  const { pane } = await decided([]);
  const result = pane.state.decide.result!;
  expect(vineOfRow(result, "Cordons", 5)).toBe("Creek Side|1|1");
  expect(vineOfRow(result, "Cordons", 1)).toBeUndefined();
  expect(vineOfRow(result, "Blocks", 5)).toBeUndefined();
});
