import type { Finding } from "../../../src/survey/checks/finding";
import { findingGroups } from "../../../src/survey/checks/findingGroups";
import { readSeason } from "../../../src/survey/reading/readSeason";
import {
  LISTED_AT_ONCE,
  byAction,
  compareRuns,
  countSeverities,
  filterFindings,
  finishRun,
  listMore,
  showGroups,
  toggleSheet,
} from "../../../src/taskpane/check/checkState";
import { EVERYTHING } from "../../../src/taskpane/check/findingFilter";
import { FIRST_CHECK_STATE } from "../../../src/taskpane/check/firstCheckState";

const finding = (part: Partial<Finding> = {}): Finding => ({
  code: "spursAbovePositions",
  severity: "wrong",
  sheet: "Cordons",
  row: 2,
  columnNumber: 9,
  column: "Live spurs",
  facts: { block: "North Bench", row: 1, vine: 1, countedBy: "AB" },
  ...part,
});

describe("grouping findings", () => {
  const noSeason = readSeason([]);
  test("puts what is done at the desk before what someone walks out for, and wrong before ask", () => {
    const findings = [
      finding({ code: "vine", severity: "ask" }),
      finding({ code: "small", severity: "ask" }),
      finding({ code: "large", severity: "ask" }),
      finding({ code: "large", severity: "ask", row: 3 }),
      finding({ code: "bad", severity: "wrong" }),
    ];
    const groups = byAction(findingGroups(findings, noSeason), (code) =>
      code === "vine" ? "lookAtVine" : "correct",
    );
    expect(groups.map(({ action, groups: kinds }) => [action, kinds.map(({ code }) => code)])).toEqual([
      ["correct", ["bad", "large", "small"]],
      ["lookAtVine", ["vine"]],
    ]);
  });

  test("loses no finding", () => {
    const findings = ["a", "b", "c", "a"].map((code, row) => finding({ code, row }));
    const grouped = byAction(findingGroups(findings, noSeason), () => "fillIn").flatMap(({ groups }) =>
      groups.flatMap((group) => group.findings),
    );
    expect(new Set(grouped)).toEqual(new Set(findings));
  });
});

describe("filtering findings", () => {
  const findings = [
    finding(),
    finding({ sheet: "Vines", severity: "ask", facts: { block: "Cuartel Peñón", row: 2, countedBy: "MK" } }),
  ];
  test.each([
    { why: "no filter keeps all", filter: {}, kept: [0, 1] },
    { why: "by severity", filter: { severity: "ask" as const }, kept: [1] },
    { why: "by sheet", filter: { sheet: "Cordons" }, kept: [0] },
    { why: "by counter", filter: { counter: "MK" }, kept: [1] },
    { why: "accents and case do not matter", filter: { words: "PENON" }, kept: [1] },
    { why: "every word must be there", filter: { words: "north sentence0" }, kept: [0] },
    { why: "words of two findings match none", filter: { words: "north penon" }, kept: [] },
    { why: "all conditions hold together", filter: { severity: "ask" as const, counter: "AB" }, kept: [] },
  ])("$why", ({ filter, kept }) => {
    const sentence = (one: Finding) => `Sentence${findings.indexOf(one)}`;
    expect(filterFindings(findings, { ...EVERYTHING, ...filter }, sentence)).toEqual(
      kept.map((index) => findings[index]),
    );
  });
});

test("severities are counted", () => {
  const findings = [finding(), finding({ severity: "note" }), finding()];
  expect(countSeverities(findings)).toEqual({ wrong: 2, ask: 0, note: 1 });
});

describe("comparing two runs", () => {
  test("a finding that was mended is gone, another has come, the rest stayed", () => {
    const stayed = finding({ row: 5, facts: { block: "North Bench", row: 1, vine: 3 } });
    const mended = finding({ facts: { block: "North Bench", row: 1, vine: 2 } });
    const fresh = finding({ facts: { block: "North Bench", row: 9, vine: 9 } });
    expect(compareRuns([stayed, mended], [stayed, fresh])).toEqual({
      gone: [mended],
      come: [fresh],
      stayed: 1,
    });
  });

  test("sorting the sheet moves rows but changes nothing", () => {
    const before = finding({ row: 5 });
    const after = finding({ row: 50 });
    expect(compareRuns([before], [after])).toEqual({ gone: [], come: [], stayed: 1 });
  });
});

describe("the state of the page", () => {
  test("a group opens with a stretch, grows, and closes", () => {
    const opened = showGroups(FIRST_CHECK_STATE, [
      ["a", true],
      ["b", false],
    ]);
    expect([...opened.open]).toEqual([["a", LISTED_AT_ONCE]]);
    const grown = listMore(opened, "a");
    expect(showGroups(grown, [["a", true]]).open.get("a")).toBe(2 * LISTED_AT_ONCE);
    expect(showGroups(grown, [["a", false]]).open.size).toBe(0);
  });

  test("a run keeps the findings of the run before and forgets its own filter", () => {
    const first = [finding()];
    const state = finishRun(
      { ...FIRST_CHECK_STATE, findings: first, asked: first, filter: { ...EVERYTHING, words: "x" } },
      { tables: [], findings: [], entries: [], season: undefined, version: 1 },
    );
    expect(state).toMatchObject({ before: first, findings: [], filter: EVERYTHING });
  });

  test("a sheet is left out and taken in again", () => {
    const without = toggleSheet(FIRST_CHECK_STATE, "Vines");
    expect([...without.leftOut]).toEqual(["Vines"]);
    expect(toggleSheet(without, "Vines").leftOut.size).toBe(0);
  });
});
