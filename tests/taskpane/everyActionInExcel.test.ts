import { runCheck } from "../../src/taskpane/check/runCheck";
import { findingGroups } from "../../src/survey/checks/findingGroups";
import { markFindings, takeMarksOff } from "../../src/taskpane/check/markFindings";
import { mendFindings, takeMendsBack } from "../../src/taskpane/check/mendFindings";
import { watchTyping, type TypedRow } from "../../src/taskpane/check/watchTyping";
import { writeFindings } from "../../src/taskpane/check/writeFindings";
import { changePage } from "../../src/taskpane/changePage";
import { makeCards } from "../../src/taskpane/crew/makeCards";
import { acceptBlock, takeBackBlock } from "../../src/taskpane/decide/acceptBlock";
import { decide } from "../../src/taskpane/decide/decide";
import { fixChoice, takeBackChoice } from "../../src/taskpane/decide/fixChoice";
import { failureSentence } from "../../src/taskpane/failureSentence";
import { insertFormula } from "../../src/taskpane/functions/insertFormula";
import { countGaps } from "../../src/taskpane/gaps/countGaps";
import { pivotOfGaps } from "../../src/taskpane/gaps/pivotOfGaps";
import { keptSeasons, seasonSheet } from "../../src/taskpane/outlook/seasonSheet";
import { workOutlook } from "../../src/taskpane/outlook/workOutlook";
import type { Pane } from "../../src/taskpane/pane";
import { EMPTY_FORM } from "../../src/taskpane/season/seasonState";
import { layOutSheets } from "../../src/taskpane/season/layOutSheets";
import { freshSettings } from "../../src/taskpane/settings/changeSetting";
import { keepSetting, readSettingsOf } from "../../src/taskpane/settings/settingsActions";
import { writeResult } from "../../src/taskpane/writeResult";
import { functionHelp } from "../../src/functions/functionHelp";
import { GAP_SHEET_TEXTS, OUTLOOK_SHEET_TEXTS } from "../../src/texts/pane";
import { RESULT_SHEET_TEXTS } from "../../src/texts/resultSheets";
import { SEASON_SHEET } from "../../src/texts/season";
import { WORKBOOK_PROBLEMS } from "../../src/texts/workbook";
import { undoChange } from "../../src/workbook/actions/changeCells";
import { keepAnswers, keepHeads } from "../../src/workbook/actions/keepAnswers";
import { notePrinted } from "../../src/workbook/actions/printedCards";
import { applyRepairs, lookForRepairs } from "../../src/workbook/actions/repairFormulas";
import { logRun, setLogsRuns } from "../../src/workbook/actions/runLog";
import { dropAside, keepAside } from "../../src/workbook/actions/setAside";
import { cardsSheet } from "../../src/workbook/results/cardsSheet";
import { choiceSheet } from "../../src/workbook/results/choiceSheet";
import { gapMapSheet, rowGapsSheet } from "../../src/workbook/results/gapSheets";
import { outlookSheet } from "../../src/workbook/results/outlookSheet";
import { WorkbookProblem } from "../../src/workbook/surveyWorkbook";
import { EXCEL_PROFILES, type ExcelProfile } from "../workbook/office/excelProfiles";
import type { ExcelHost } from "../workbook/office/excelHost";
import { excelWorkbookOn, hostWith } from "../workbook/office/excelWorkbookOn";
import { paneOn } from "./paneOn";

jest.setTimeout(60_000);

/** Invented; vine 2 has a dead cordon beside a good one, vine 3 a number typed as text and more spurs than positions. */
const SHEETS = {
  Blocks: [
    ["Block", "Cultivar", "Rows", "Vine places", "Row spacing (ft)", "Vine spacing (ft)", "Training system"],
    ["North Bench", "Concord", 1, 4, 9, 8, "high cordon"],
  ],
  Cordons: [
    "Block,Row,Vine,Side,Cordon,Trunk,Length (ft),Positions,Live spurs,Longest gap,Fixed choice,Note".split(
      ",",
    ),
    ["North Bench", 1, 1, "left", "A", 1, 3.5, 7, 7, 0, null, null],
    ["North Bench", 1, 1, "right", "B", 2, 3.5, 7, 7, 0, null, null],
    ["North Bench", 1, 2, "left", "A", 1, 3.5, 7, 7, 0, null, null],
    ["North Bench", 1, 2, "left", "B", 1, 3.5, 7, 0, 7, null, null],
    ["North Bench", 1, 2, "right", "C", 2, 3.5, 7, 6, 1, null, null],
    ["North Bench", 1, 3, "left", "A", 1, 3.5, 7, "6", 1, null, null],
    ["North Bench", 1, 3, "right", "B", 2, 3.5, 7, 9, 0, null, null],
  ],
  Vines: [
    ["Block", "Row", "Vine", "Status", "Prunings (lb)"],
    ["North Bench", 1, 1, "bearing", 2.6],
    ["North Bench", 1, 2, "bearing", 2.2],
    ["North Bench", 1, 3, "bearing", 2.9],
    ["North Bench", 1, 4, "missing", null],
  ],
};
const ME = "me";
const BLOCK = "North Bench";

interface Opened {
  readonly host: ExcelHost;
  readonly pane: Pane;
}

const signal = () => new AbortController().signal;

/** The sample in Excel, with a table of counts, and a formula that was stored without the add-in. */
function open(profile: ExcelProfile): Opened {
  const host = hostWith(SHEETS, profile);
  const sheet = host.book.sheet("Cordons");
  sheet.tables.push({
    id: "{counts}",
    name: "Counts",
    area: { sheet, row: 0, column: 0, rows: SHEETS.Cordons.length, columns: 12 },
    style: "",
  });
  const plan = host.book.addSheet("Plan");
  plan.put(0, 0, { value: 40, type: "Double" });
  plan.put(0, 1, { value: "#NAME?", type: "Error", formula: "=@_xldudf_CORDON_CLUSTERS(A1,2)" });
  return { host, pane: paneOn(excelWorkbookOn(host, ME)) };
}

interface Action {
  /** What it does to the workbook: decides what each state of Excel may do to it. */
  readonly does: "reads" | "marks" | "cells" | "newSheet" | "ownSheet" | "facts" | "newPivot" | "pivot";
  /** What the person did before. */
  readonly first?: (opened: Opened) => Promise<unknown>;
  readonly act: (opened: Opened) => Promise<unknown>;
  /** What was done before holds only for the season that was read then, so that each state needs it done anew. */
  readonly anew?: true;
  /** Keeps a fact even where its sheet is refused: nothing of it is lost, and the next run writes it. */
  readonly keepsFact?: true;
}

const check = ({ pane }: Opened) => runCheck(pane, signal());
const decided = ({ pane }: Opened) => decide(pane, signal());
const findings = (pane: Pane) => pane.state.check.findings ?? [];

async function mend({ pane }: Opened): Promise<void> {
  const groups = findingGroups(findings(pane), pane.state.check.season!);
  const group = groups.find(({ mends }) => mends.length > 0)!;
  await mendFindings(pane, group, group.mends);
}

async function overrule({ pane }: Opened): Promise<void> {
  const vine = pane.state.decide.result!.vines.find((one) => one.vine === 2)!;
  await fixChoice(pane, vine, { kind: "stays", place: 1 }, "spurs grow back");
}

const letStand = ({ pane }: Opened) =>
  keepAside(pane.workbook, findings(pane)[0], { reason: "seen", by: "AB", on: "2026-02-01" });

const results = {
  choice:
    (date: string) =>
    async ({ pane }: Opened) => {
      const { season, vines } = pane.state.decide.result!;
      await writeResult(pane, choiceSheet(vines, "en", season.unitSystem, date), RESULT_SHEET_TEXTS.choice);
    },
  cards:
    (date: string) =>
    async ({ pane }: Opened) => {
      const { season, cards } = pane.state.crew.result!;
      const options = { language: "en", unitSystem: season.unitSystem, date } as const;
      await writeResult(pane, cardsSheet(cards, options), RESULT_SHEET_TEXTS.cards);
    },
  rowGaps:
    (date: string) =>
    ({ pane }: Opened) =>
      writeResult(pane, rowGapsSheet(pane.state.gaps.gaps!, "en", date), GAP_SHEET_TEXTS.rowGaps),
  gapMap:
    (date: string) =>
    ({ pane }: Opened) =>
      writeResult(pane, gapMapSheet(pane.state.gaps.gaps!, "en", date), GAP_SHEET_TEXTS.gapMap),
  outlook:
    (date: string) =>
    ({ pane }: Opened) =>
      writeResult(
        pane,
        outlookSheet(pane.state.outlook.blocks!, "en", "US", date),
        OUTLOOK_SHEET_TEXTS.sheet,
      ),
  seasons:
    (date: string) =>
    async ({ pane }: Opened) => {
      const kept = await keptSeasons(pane.workbook, "en");
      await writeResult(pane, seasonSheet(kept, pane.state.outlook.seasons!.now, "en", date), SEASON_SHEET);
    },
};

const firstOf: Record<keyof typeof results, (opened: Opened) => Promise<unknown>> = {
  choice: decided,
  cards: ({ pane }) => makeCards(pane, signal()),
  rowGaps: ({ pane }) => countGaps(pane, signal()),
  gapMap: ({ pane }) => countGaps(pane, signal()),
  outlook: ({ pane }) => workOutlook(pane, signal()),
  seasons: ({ pane }) => workOutlook(pane, signal()),
};

const both =
  (...steps: ((opened: Opened) => Promise<unknown>)[]) =>
  async (opened: Opened) => {
    for (const step of steps) await step(opened);
  };

const ACTIONS: Readonly<Record<string, Action>> = {
  "check the survey": { does: "reads", act: check },
  "decide every vine": { does: "reads", act: decided },
  "make the crew's cards": { does: "reads", act: firstOf.cards },
  "count the gaps": { does: "reads", act: firstOf.rowGaps },
  "work the outlook out": { does: "reads", act: firstOf.outlook },
  "look for formulas to repair": { does: "reads", act: ({ pane }) => lookForRepairs(pane.workbook) },
  "check while somebody types": {
    does: "reads",
    act: async ({ host, pane }) => {
      const rows: TypedRow[] = [];
      const stop = await watchTyping(pane.workbook, {
        today: pane.today,
        read: async () => (await pane.held.read()).season,
        onRow: (row) => rows.push(row),
        onLargeChange: () => undefined,
        onFailure: (failure) => {
          throw failure;
        },
      });
      host.type("ben", "Cordons", 9, 9, 9);
      await host.quiet();
      await stop();
    },
  },
  "mark the findings": { does: "marks", first: check, act: ({ pane }) => markFindings(pane, findings(pane)) },
  "take the marks off": {
    does: "marks",
    first: both(check, ({ pane }) => markFindings(pane, findings(pane))),
    act: ({ pane }) => takeMarksOff(pane),
  },
  "mend a finding": { does: "cells", first: check, act: mend },
  "take the mending back": {
    does: "cells",
    first: both(check, mend),
    act: ({ pane }) => takeMendsBack(pane),
  },
  "overrule an answer": { does: "cells", first: decided, anew: true, act: overrule },
  "take the answer back": {
    does: "cells",
    first: both(decided, overrule),
    act: ({ pane }) => takeBackChoice(pane, pane.state.decide.past[0]),
  },
  "accept a block": { does: "cells", first: decided, act: ({ pane }) => acceptBlock(pane, BLOCK, "AB") },
  "take the block back": {
    does: "cells",
    first: both(decided, ({ pane }) => acceptBlock(pane, BLOCK, "AB")),
    act: ({ pane }) => takeBackBlock(pane),
  },
  "lay out a block": {
    does: "cells",
    act: ({ pane }) => {
      changePage(pane, "season", {
        layOut: { ...EMPTY_FORM, block: "Creek Side", rows: "1", vinesARow: "2" },
      });
      return layOutSheets(pane);
    },
  },
  "change a setting": {
    does: "cells",
    first: async ({ pane }) => {
      await pane.workbook.writeOwnSheet(freshSettings("en", "US"));
      await readSettingsOf(pane, signal());
    },
    act: ({ pane }) => {
      changePage(pane, "settings", { by: "AB" });
      return keepSetting(pane, { id: "marginOfACount", typed: "0.2" });
    },
  },
  "repair formulas": {
    does: "cells",
    act: async ({ pane }) => applyRepairs(pane.workbook, await lookForRepairs(pane.workbook)),
  },
  "take the repair back": {
    does: "cells",
    first: async ({ pane }) => {
      const { changed } = await applyRepairs(pane.workbook, await lookForRepairs(pane.workbook));
      changePage(pane, "care", { repaired: changed });
    },
    act: ({ pane }) => undoChange(pane.workbook, pane.state.care.repaired!),
  },
  "put a function in": {
    does: "cells",
    first: ({ pane }) => pane.workbook.selectCell("Cordons", 5, 14),
    act: ({ pane }) =>
      insertFormula(
        pane,
        functionHelp("en").find(({ id }) => id === "CLUSTERS")!,
        "=CORDON.CLUSTERS(40,2)",
      ),
  },
  "write the findings": {
    does: "newSheet",
    first: check,
    act: ({ pane }) => writeFindings(pane, findings(pane)),
  },
  "write the findings again": {
    does: "ownSheet",
    first: both(check, ({ pane }) => writeFindings(pane, findings(pane))),
    act: ({ pane }) => writeFindings(pane, findings(pane).slice(1)),
  },
  ...Object.fromEntries(
    Object.entries(results).flatMap(([name, act]): [string, Action][] => {
      const first = firstOf[name as keyof typeof results];
      return [
        [`write the ${name} sheet`, { does: "newSheet", first, act: act("today") }],
        [
          `write the ${name} sheet again`,
          { does: "ownSheet", first: both(first, act("before")), act: act("today") },
        ],
      ];
    }),
  ),
  "make the pivot of gaps": { does: "newPivot", act: ({ pane }) => pivotOfGaps(pane, signal()) },
  "refresh the pivot of gaps": {
    does: "pivot",
    first: ({ pane }) => pivotOfGaps(pane, signal()),
    act: ({ pane }) => pivotOfGaps(pane, signal()),
  },
  "answer a question about the sheets": {
    does: "newSheet",
    act: ({ pane }) => keepAnswers(pane.workbook, { dateOrder: "dayFirst" }, "en"),
  },
  "let a finding stand": {
    does: "facts",
    first: check,
    act: letStand,
  },
  "take a finding back": {
    does: "facts",
    first: both(check, letStand),
    act: ({ pane }) => dropAside(pane.workbook, findings(pane)[0]),
  },
  "keep one's own heads": {
    does: "newSheet",
    act: ({ pane }) =>
      keepHeads(
        pane.workbook,
        "Plan",
        { heads: [{ sheet: "Plan", shape: "vines", columns: { Plant: "vine" } }] },
        "en",
      ),
  },
  "note the printed cards": {
    does: "facts",
    first: firstOf.cards,
    act: ({ pane }) => notePrinted(pane.workbook, pane.state.crew.result!.cards, []),
  },
  "switch the log of runs on": { does: "facts", act: ({ pane }) => setLogsRuns(pane.workbook, true) },
  "write the log of runs": {
    does: "newSheet",
    keepsFact: true,
    first: ({ pane }) => setLogsRuns(pane.workbook, true),
    act: ({ pane }) =>
      logRun(pane.workbook, { at: 1_770_000_000, who: "AB", what: "check", result: "done" }, "en", String),
  },
};

/** "done", or the code of the one sentence with which it is refused. */
type Wanted = Partial<Record<Action["does"], string>> & { readonly others: string };

interface State {
  /** Brings Excel into the state; gives what ends it, unless the workbook is put back as it was. */
  readonly enter: (opened: Opened) => (() => void) | void;
  readonly wanted: (profile: ExcelProfile) => Wanted;
  /** What single actions do instead. */
  readonly but?: (profile: ExcelProfile) => Readonly<Partial<Record<string, string>>>;
}

const isDesktop = ({ platform }: ExcelProfile) => platform !== "web";
const sheetsOf = ({ host }: Opened) => host.book.sheets.filter(({ visibility }) => visibility === "Visible");

const STATES: Readonly<Record<string, State>> = {
  "nothing in the way": { enter: () => undefined, wanted: () => ({ others: "done" }) },
  "every sheet protected": {
    enter: (opened) => {
      for (const sheet of sheetsOf(opened)) sheet.locked = true;
    },
    wanted: () => ({
      marks: "protectedSheet",
      cells: "protectedSheet",
      ownSheet: "protectedSheet",
      pivot: "protectedSheet",
      others: "done",
    }),
  },
  "the workbook's structure protected": {
    enter: ({ host }) => void (host.book.structureLocked = true),
    wanted: () => ({ newSheet: "protectedWorkbook", newPivot: "protectedWorkbook", others: "done" }),
  },
  "every sheet filtered": {
    enter: (opened) => {
      for (const sheet of sheetsOf(opened)) {
        const used = sheet.used();
        if (!used) continue;
        const hiddenRows = new Set([used.row + used.rows - 1]);
        for (const table of sheet.tables) table.hiddenRows = new Set([table.area.row + table.area.rows - 1]);
        if (sheet.tables.length === 0) sheet.filter = { area: used, hiddenRows };
      }
    },
    wanted: () => ({
      cells: "filteredTable",
      ownSheet: "filteredTable",
      pivot: "filteredTable",
      others: "done",
    }),
    // Below the table, where nothing is filtered.
    but: () => ({ "lay out a block": "done" }),
  },
  "a cell being edited": {
    enter: ({ host }) => host.edit(ME),
    // What reads first waits until the cell is left, and is then done.
    wanted: () => ({ marks: "cellBeingEdited", others: "waits" }),
  },
  "another workbook in front": {
    enter: ({ host }) => host.switchAway(ME),
    wanted: (profile) =>
      isDesktop(profile)
        ? { newSheet: "otherWorkbook", newPivot: "otherWorkbook", others: "done" }
        : { others: "done" },
    but: (profile) => (isDesktop(profile) ? { "put a function in": "otherWorkbook" } : {}),
  },
  "Excel answering for the workbook in front only": {
    enter: ({ host }) => host.refuse({ code: "InactiveWorkbook", times: Infinity }),
    wanted: () => ({ others: "otherWorkbook" }),
  },
};

/** What the workbook holds: sheets, cells, formats, tables, charts, facts. */
function standing({ host }: Opened, { keepsFact }: Action): string {
  return JSON.stringify([host.book.snapshot(), keepsFact ? [] : [...host.book.settings]]);
}

function hiddenSheets({ host }: Opened): string[] {
  return host.book.sheets.filter(({ visibility }) => visibility !== "Visible").map(({ name }) => name);
}

/** "done", the code of what it was refused with, or the sentence of a warning. */
async function outcomeOf(opened: Opened, action: Promise<unknown>): Promise<string> {
  const failure = await action.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (failure !== undefined) {
    if (!(failure instanceof WorkbookProblem)) throw failure;
    expect(Object.keys(WORKBOOK_PROBLEMS)).toContain(failure.code);
    expect(failureSentence(failure, "en")).not.toMatch(/[{}]|undefined/);
    return failure.code;
  }
  const { message } = opened.pane.state;
  return message === undefined || message.intent === "success" ? "done" : message.text;
}

interface Prepared extends Opened {
  readonly putBack: () => void;
  /** The pane as it stands now over the workbook, which it has read if it had before. */
  readonly again: () => Promise<Opened>;
}

/** The sample in Excel after what the person did before the action. */
async function prepare(profile: ExcelProfile, { first, anew }: Action): Promise<Prepared> {
  const { host, pane } = open(profile);
  await first?.({ host, pane });
  const { hasRead } = pane.held;
  if (!anew) await pane.held.stop().catch(() => undefined);
  await host.quiet();
  pane.change(({ message: _message, ...rest }) => rest);
  const again = async () => {
    const next = paneOn(pane.workbook);
    next.change(() => pane.state);
    if (hasRead) await next.held.read();
    return { host, pane: next };
  };
  return { host, pane, putBack: host.keep(), again };
}

/** What an action came to in a state, and what it left behind that it should not have. */
async function resultOf(opened: Opened, { enter }: State, action: Action): Promise<string> {
  const { host, pane } = opened;
  const hidden = hiddenSheets(opened).length;
  const waiting = host.waits(ME).then(() => "waits");
  const leave = enter(opened);
  const before = standing(opened, action);
  const doing = outcomeOf(opened, action.act(opened));
  let outcome = await Promise.race([doing, waiting]);
  if (leave) leave();
  if (outcome === "waits") {
    const then = await doing;
    if (then !== "done") outcome = `waits, then ${then}`;
  }
  await pane.held.stop().catch(() => undefined);
  await host.quiet();
  const changed = standing(opened, action) !== before;
  if (hiddenSheets(opened).length !== hidden) return `${outcome}, with a hidden sheet left`;
  if (outcome === "done" && action.does !== "reads" && !changed) return "done, with nothing changed";
  if (outcome !== "done" && outcome !== "waits" && changed) return `${outcome}, half-written`;
  return outcome;
}

const PROFILES: readonly ExcelProfile[] = Object.values(EXCEL_PROFILES);
const { perpetual2021 } = EXCEL_PROFILES;
const RUNS = PROFILES.flatMap((profile) =>
  Object.keys(ACTIONS).map((name) => [profile.name, name, profile] as const),
);

test.each(RUNS)(
  "in %s: %s is done or refused as a whole in every state of Excel",
  async (_profile, name, profile) => {
    const action = ACTIONS[name];
    const [found, expected]: Record<string, string>[] = [{}, {}];
    let prepared: Prepared | undefined;
    for (const [stateName, state] of Object.entries(STATES)) {
      const { others, ...by } = state.wanted(profile);
      expected[stateName] = state.but?.(profile)[name] ?? by[action.does] ?? others;
      if (action.anew) prepared?.host.close();
      if (action.anew || !prepared) prepared = await prepare(profile, action);
      found[stateName] = await resultOf(action.anew ? prepared : await prepared.again(), state, action);
      prepared.putBack();
    }
    prepared?.host.close();
    expect(found).toEqual(expected);
  },
);

test("in Excel a block whose vines are merged cells is decided and accepted like any other", async () => {
  const rows = SHEETS.Cordons.map((row, index) => {
    const above = SHEETS.Cordons[index - 1];
    return index > 1 && above[2] === row[2] ? [null, null, null, ...row.slice(3)] : row;
  });
  const merged = ["A2:A3", "B2:B3", "C2:C3", "A4:A6", "B4:B6", "C4:C6", "A7:A8", "B7:B8", "C7:C8"];
  const host = hostWith({ ...SHEETS, Cordons: rows }, perpetual2021, { Cordons: merged });
  const pane = paneOn(excelWorkbookOn(host, ME));
  const plain = open(perpetual2021);
  for (const one of [pane, plain.pane]) {
    await decide(one, signal());
    await acceptBlock(one, BLOCK, "AB");
  }
  const fixed = ({ book }: ExcelHost) =>
    rows.map((_row, index) => book.sheet("Cordons").cell(index, 10).value);
  expect(pane.state.decide.result!.vines.map(({ vine }) => vine)).toEqual([1, 2, 3]);
  // Vine 2: A bears and B is dead on its left. Vine 3 is asked about: more spurs than positions.
  expect(fixed(host)).toEqual(["Fixed choice", "stays", "stays", "stays", "goes", "stays", "", ""]);
  expect(fixed(host)).toEqual(fixed(plain.host));
  await takeBackBlock(pane);
  expect(fixed(host).slice(1)).toEqual(Array.from({ length: 7 }, () => ""));
  host.close();
  plain.host.close();
});

test("what lies in merged cells, where it would be lost, is not written", async () => {
  const { host, pane } = open(perpetual2021);
  const sheet = host.book.sheet("Vines");
  sheet.merge({ sheet, row: 1, column: 4, rows: 2, columns: 1 });
  const write = (row: number) => pane.workbook.writeCells("Vines", [{ row, column: 5, value: 3 }]);
  await write(2);
  expect(sheet.cell(1, 4).value).toBe(3);
  const before = JSON.stringify(host.book.snapshot());
  await expect(write(3)).rejects.toMatchObject({ code: "mergedCell", facts: { row: 3, column: 5 } });
  expect(JSON.stringify(host.book.snapshot())).toBe(before);
  host.close();
});

test("a sheet of ours with cells that a person merged below its table is left whole", async () => {
  const { host, pane } = open(perpetual2021);
  const content = (count: number) => ({
    sheet: "Row gaps",
    headers: ["Row", "Gaps"],
    rows: Array.from({ length: count }, (_, row) => [row, 1]),
  });
  await pane.workbook.writeOwnSheet(content(2));
  const sheet = host.book.sheet("Row gaps");
  sheet.merge({ sheet, row: 4, column: 0, rows: 2, columns: 2 });
  const before = JSON.stringify(host.book.snapshot());
  await expect(pane.workbook.writeOwnSheet(content(6))).rejects.toMatchObject({ code: "overlap" });
  expect(JSON.stringify(host.book.snapshot())).toBe(before);
  host.close();
});
