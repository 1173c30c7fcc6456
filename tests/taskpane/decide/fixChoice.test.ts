import { decideSeason } from "../../../src/survey/decide/decideSeason";
import {
  FIRST_DECIDE_STATE,
  countVines,
  isAsked,
  vinesToShow,
  type DecideState,
} from "../../../src/taskpane/decide/decideState";
import { fixChoice, takeBackChoice } from "../../../src/taskpane/decide/fixChoice";
import type { Pane, PaneState } from "../../../src/taskpane/pane";
import { OVERRULE_TEXTS } from "../../../src/texts/overrule";
import { AGE_TEXTS, DECIDE_TEXTS } from "../../../src/texts/pane";
import { heldSeasonOf } from "../heldSeasonOf";
import { MemoryWorkbook } from "../../workbook/memory/memoryWorkbook";

const head = (fixed: string[]) => [
  "Block",
  "Row",
  "Vine",
  "Side",
  "Cordon",
  "Trunk",
  "Length (ft)",
  "Positions",
  "Live spurs",
  "Longest gap",
  ...fixed,
];
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
      return { decide } as PaneState;
    },
    change: (next: (state: PaneState) => PaneState) => (decide = next({ decide } as PaneState).decide),
    tell: (_intent: string, text: unknown) => told.push(text),
  } as unknown as Pane;
  return { workbook, vines, pane, told };
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
  await fixChoice(pane, vines[0], 1);
  expect(told).toEqual([DECIDE_TEXTS.fixed]);
  expect(await column(workbook, 10)).toEqual([header, words[1], words[0], null, null, null]);
  const [now] = pane.state.decide.result!.vines;
  expect(now.decision.cordons.map(({ verdict }) => verdict)).toEqual(["goes", "stays", "stays"]);
});

test("without a column for it nothing is written and the next step is told", async () => {
  const { workbook, vines, pane, told } = await decided([]);
  await fixChoice(pane, vines[0], 1);
  expect(told).toEqual([DECIDE_TEXTS.noColumn]);
  expect(await column(workbook, 10)).toEqual([null, null, null, null, null, null]);
});

test("rows that were sorted meanwhile are not written to", async () => {
  const { workbook, vines, pane, told } = await decided(["Fixed choice"]);
  workbook.type("Cordons", 2, 3, 9, "colleague");
  await fixChoice(pane, vines[0], 1);
  expect(told).toEqual([AGE_TEXTS.vineChanged]);
  expect((await column(workbook, 10)).slice(1)).toEqual([null, null, null, null, null]);
});

test("taking back leaves a cell that somebody changed since, and says so", async () => {
  const { workbook, vines, pane, told } = await decided(["Fixed choice"]);
  await fixChoice(pane, vines[0], 1);
  await workbook.writeCells("Cordons", [{ row: 2, column: 11, value: "stays" }]);
  await takeBackChoice(pane);
  expect(told).toEqual([DECIDE_TEXTS.fixed, OVERRULE_TEXTS.partlyBack]);
  expect(await column(workbook, 10)).toEqual(["Fixed choice", "stays", null, null, null, null]);
});
