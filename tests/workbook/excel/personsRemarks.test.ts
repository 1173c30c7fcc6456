import { leftSentence, lostSentences, rewriteOwnSheet } from "../../../src/workbook/actions/rewriteOwnSheet";
import { cellName } from "../../../src/workbook/address";
import type { OwnSheet } from "../../../src/workbook/surveyWorkbook";
import type { HostRemark } from "../office/hostBook";
import type { ExcelHost } from "../office/excelHost";
import { EXCEL_PROFILES } from "../office/excelProfiles";
import { excelWorkbookOn, hostWith } from "../office/excelWorkbookOn";

jest.setTimeout(60_000);

/** Heads stand in row 3, the first finding in row 4. */
const findings = (rows: OwnSheet["rows"], title = ["Made today"]): OwnSheet => ({
  sheet: "Findings",
  title,
  headers: ["Cell", "Vine", "Score", "Code"],
  columns: [{}, { wrap: true }, { format: "0.00" }, {}],
  about: { thing: ["Vine"], kind: ["Code"], cell: ["Cell"] },
  rows,
});
const FIRST: OwnSheet["rows"] = [
  ["B5", 5, 0.5, "LOW"],
  ["B7", 7, 0.25, "LOW"],
  ["B8", 8, 0.75, "HIGH"],
];
/** Vine 5 is right now, vines 2 and 3 are new, a row was put into the sheet above vine 8: vines 7 and 8 stand a row lower. */
const SECOND: OwnSheet["rows"] = [
  ["B2", 2, 0.5, "LOW"],
  ["B3", 3, 0.125, "LOW"],
  ["B7", 7, 0.25, "LOW"],
  ["B9", 8, 0.75, "HIGH"],
];

const sheetOf = (host: ExcelHost) => host.book.sheet("Findings");
const placeOf = (address: string) => ({
  row: Number(address.replace(/\D/g, "")) - 1,
  column: address.charCodeAt(0) - 65,
});
/** By whom, what, and what was answered. */
const shown = ({ author, content, resolved, replies }: HostRemark) =>
  [
    `${author}: ${content}`,
    ...replies.map((reply) => `${reply.author}: ${reply.content}`),
    ...(resolved ? ["done"] : []),
  ].join(" | ");
const remarksOn = (host: ExcelHost, kind: HostRemark["kind"]): Record<string, string> =>
  Object.fromEntries(
    sheetOf(host)
      .remarks.filter((remark) => remark.kind === kind)
      .map((remark) => [cellName(remark.row + 1, remark.column + 1), shown(remark)])
      .sort(),
  );
const formatOf = (host: ExcelHost, address: string) => {
  const { row, column } = placeOf(address);
  return sheetOf(host).format(row, column);
};

function remark(
  host: ExcelHost,
  address: string,
  said: readonly string[],
  kind: HostRemark["kind"] = "comment",
  resolved = false,
) {
  const [first, ...answers] = said.map((words) => {
    const [, author, content] = /^([^:]+): (.*)$/s.exec(words)!;
    return { author, content };
  });
  sheetOf(host).remarks.push({
    id: `theirs-${address}`,
    kind,
    ...placeOf(address),
    ...first,
    resolved,
    replies: answers,
  });
}

function dress(
  host: ExcelHost,
  addresses: readonly string[],
  format: Parameters<ReturnType<typeof sheetOf>["setFormat"]>[2],
) {
  for (const address of addresses) {
    const { row, column } = placeOf(address);
    sheetOf(host).setFormat(row, column, { ...sheetOf(host).format(row, column), ...format });
  }
}

/** The sheet as it was written first, with "Ben Hale" at the add-in. */
async function written(profile: (typeof EXCEL_PROFILES)[keyof typeof EXCEL_PROFILES] = EXCEL_PROFILES.web) {
  const host = hostWith({ Cordons: [["Vine"]] }, profile);
  const workbook = excelWorkbookOn(host, "Ben Hale");
  await rewriteOwnSheet(workbook, findings(FIRST));
  return { host, workbook };
}

const WAYS: readonly { way: string; leavesRemarks: boolean; title: string[] }[] = [
  { way: "in place", leavesRemarks: false, title: ["Made today"] },
  { way: "in place, copies without comments", leavesRemarks: true, title: ["Made today"] },
  { way: "under other heads", leavesRemarks: false, title: ["Made today", "Of two sheets"] },
  {
    way: "under other heads, copies without comments",
    leavesRemarks: true,
    title: ["Made today", "Of two sheets"],
  },
];

describe.each(WAYS)("a sheet written again $way", ({ leavesRemarks, title }) => {
  /** A line more above the heads puts everything a row lower. */
  const at = (address: string) => cellName(placeOf(address).row + title.length, placeOf(address).column + 1);

  test("has comments with their answers and notes at the rows about the same things", async () => {
    const { host, workbook } = await written();
    host.leavesRemarks = leavesRemarks;
    remark(host, "D6", ["Ana Ruiz: replant?", "Ben Hale: yes"], "comment", true);
    remark(host, "A4", ["Ana Ruiz: fixed by hand"]);
    remark(host, "C3", ["Ben Hale: what is this?"]);
    remark(host, "A1", ["Ana Ruiz: our list"], "note");
    remark(host, "B5", ["Cleo: Cleo:\ncount again"], "note");
    remark(host, "F5", ["Ana Ruiz: beside the table"]);
    const rewritten = await rewriteOwnSheet(workbook, findings(SECOND, title));
    // Ben writes the sheet: what Ana said at a cell that moved is said again by him, under her name.
    expect(remarksOn(host, "comment")).toEqual({
      [at("D7")]: "Ben Hale: [Ana Ruiz] replant? | Ben Hale: yes | done",
      [at("C3")]: "Ben Hale: what is this?",
      F5: "Ana Ruiz: beside the table",
    });
    expect(remarksOn(host, "note")).toEqual({
      A1: "Ana Ruiz: our list",
      [at("B6")]: "Ben Hale: Cleo:\ncount again",
    });
    expect(rewritten.lost).toEqual(["A4 Ana Ruiz: fixed by hand"]);
    expect(lostSentences("Findings", rewritten, "en")).toHaveLength(1);
    expect(host.book.sheets.map(({ name }) => name)).toEqual(["Cordons", "Findings"]);

    await rewriteOwnSheet(excelWorkbookOn(host, "Cleo"), findings(SECOND.slice(1), title));
    expect(remarksOn(host, "comment")[at("D6")]).toBe(
      "Cleo: [Ana Ruiz] replant? | Cleo: [Ben Hale] yes | done",
    );
    expect(remarksOn(host, "note")[at("B5")]).toBe("Cleo: Cleo:\ncount again");
  });

  test("has fills, letters, lines and number formats at the rows about the same things", async () => {
    const { host, workbook } = await written();
    host.leavesRemarks = leavesRemarks;
    dress(host, ["A4", "B4", "A6", "B6", "C6"], { fill: "#FFFF00" });
    dress(host, ["D5"], { italic: true, lines: ["EdgeBottom"] });
    dress(host, ["C5"], { numberFormat: "0.0000" });
    dress(host, ["F1"], { fill: "#00FF00" });
    host.type("Ana Ruiz", "Findings", 1, 6, "seen by Ana");
    const rewritten = await rewriteOwnSheet(workbook, findings(SECOND, title));
    for (const address of ["A7", "B7", "C7"]) expect(formatOf(host, at(address)).fill).toBe("#FFFF00");
    expect(formatOf(host, at("D6"))).toMatchObject({ italic: true, lines: ["EdgeBottom"] });
    expect(formatOf(host, at("C6")).numberFormat).toBe("0.0000");
    expect(["C4", "C5", "C7"].map((address) => formatOf(host, at(address)).numberFormat)).toEqual(
      Array(3).fill("0.00"),
    );
    expect(formatOf(host, "F1").fill).toBe("#00FF00");
    const filled = [...sheetOf(host).formats.values()].filter(({ fill }) => fill === "#FFFF00");
    expect(filled).toHaveLength(3);
    expect(rewritten.lostLooks).toEqual(["A4:B4"]);
  });
});

test("a column that a person formatted whole stays so in new rows", async () => {
  const { host, workbook } = await written();
  dress(host, ["C4", "C5", "C6"], { numberFormat: "0.0000" });
  dress(host, ["D4", "D5", "D6"], { color: "#FF0000", font: "Georgia", size: 14 });
  const { lostLooks } = await rewriteOwnSheet(workbook, findings(SECOND));
  expect(lostLooks).toEqual([]);
  for (const row of [4, 5, 6, 7]) {
    expect(formatOf(host, `C${row}`).numberFormat).toBe("0.0000");
    expect(formatOf(host, `D${row}`)).toEqual({ color: "#FF0000", font: "Georgia", size: 14 });
  }
});

test("a sheet with more looks than one message holds has them all, and comments as well", async () => {
  const { host, workbook } = await written();
  const many = (first: number): OwnSheet["rows"] =>
    Array.from({ length: 1_300 }, (_, r) => [`B${first + r}`, r, 0.5, "LOW"]);
  await rewriteOwnSheet(workbook, findings(many(5)));
  dress(
    host,
    Array.from({ length: 650 }, (_, r) => `A${4 + 2 * r}`),
    { fill: "#FFFF00" },
  );
  remark(host, "B1303", ["Ana Ruiz: the last"]);
  const { lost, lostLooks } = await rewriteOwnSheet(
    workbook,
    findings([["B1", 9_999, 0.5, "LOW"], ...many(5)]),
  );
  expect([lost, lostLooks]).toEqual([[], []]);
  const yellow = [...sheetOf(host).formats].filter(([, { fill }]) => fill === "#FFFF00");
  expect(yellow).toHaveLength(650);
  for (const row of [5, 7, 1303]) expect(formatOf(host, `A${row}`).fill).toBe("#FFFF00");
  expect(remarksOn(host, "comment")).toEqual({ B1304: "Ben Hale: [Ana Ruiz] the last" });
});

test("what Excel refuses to say again is listed, the rest is said", async () => {
  const { host, workbook } = await written();
  remark(host, "A5", ["Ana Ruiz: first"]);
  remark(host, "B5", ["Ana Ruiz: second"]);
  remark(host, "C5", ["Ana Ruiz: third"]);
  host.refuse({ name: "Add", after: 1, code: "GeneralException" });
  const { lost } = await rewriteOwnSheet(workbook, findings(SECOND));
  expect(lost).toEqual([]);
  expect(remarksOn(host, "comment")).toEqual({
    A6: "Ben Hale: [Ana Ruiz] first",
    B6: "Ben Hale: [Ana Ruiz] second",
    C6: "Ben Hale: [Ana Ruiz] third",
  });

  const other = await written();
  remark(other.host, "A5", ["Ana Ruiz: first"]);
  other.host.refuse({ name: "Add", times: 99, code: "GeneralException" });
  expect((await rewriteOwnSheet(other.workbook, findings(SECOND))).lost).toEqual(["A5 Ana Ruiz: first"]);
});

test("a refused sheet has its notes and comments as before, and nothing beside it", async () => {
  for (const leavesRemarks of [false, true]) {
    const { host, workbook } = await written();
    host.leavesRemarks = leavesRemarks;
    remark(host, "D6", ["Ben Hale: replant?"]);
    remark(host, "B5", ["Ben Hale: count again"], "note");
    dress(host, ["A5"], { fill: "#FFFF00" });
    host.refuse({ name: "Resize", code: "GeneralException", after: 0 });
    await expect(rewriteOwnSheet(workbook, findings(SECOND))).rejects.toMatchObject({ code: "excelRefused" });
    expect(remarksOn(host, "comment")).toEqual({ D6: "Ben Hale: replant?" });
    expect(remarksOn(host, "note")).toEqual({ B5: "Ben Hale: count again" });
    expect(formatOf(host, "A5").fill).toBe("#FFFF00");
    expect((await workbook.readSheet("Findings")).values.slice(3)).toEqual(FIRST);
  }
});

test("whichever of every third step Excel refuses, what was said stands on the sheet or is listed, and nothing beside it", async () => {
  let step = 0;
  for (let isRefused = true; isRefused; step += 3) {
    const { host, workbook } = await written();
    remark(host, "D6", ["Ana Ruiz: replant?", "Ben Hale: yes"]);
    remark(host, "B5", ["Cleo: count again"], "note");
    await host.quiet();
    const before = host.log.length;
    host.refuse({ after: step, code: "GeneralException" });
    const { lost } = await rewriteOwnSheet(workbook, findings(SECOND)).catch(() => ({
      lost: [] as readonly string[],
    }));
    await host.quiet();
    isRefused = host.log.length - before > step;
    const said = [
      ...lost,
      ...Object.values(remarksOn(host, "comment")),
      ...Object.values(remarksOn(host, "note")),
    ];
    for (const words of ["replant?", "yes", "count again"])
      expect([step, said.filter((one) => one.includes(words))]).toEqual([step, [expect.any(String)]]);
    host.close();
  }
  expect(step).toBeGreaterThan(100);
});

test("what a colleague says while the sheet is written stays", async () => {
  const { host, workbook } = await written();
  remark(host, "D6", ["Ben Hale: replant?"]);
  let isSaid = false;
  host.beforeBatch = () => {
    if (isSaid || !host.log.some(({ name }) => name === "Resize")) return;
    isSaid = true;
    remark(host, "A7", ["Cleo: I look after it"]);
  };
  await rewriteOwnSheet(workbook, findings(SECOND));
  expect(remarksOn(host, "comment")).toEqual({ A7: "Cleo: I look after it", D7: "Ben Hale: replant?" });
});

describe("Excel 2021, which shows notes to no add-in", () => {
  test("leaves them at their cells, says so where rows moved, and takes comments along", async () => {
    const { host, workbook } = await written(EXCEL_PROFILES.perpetual2021);
    remark(host, "D6", ["Ben Hale: replant?"]);
    remark(host, "B5", ["Cleo: count again"], "note");
    const rewritten = await rewriteOwnSheet(workbook, findings(SECOND));
    expect(remarksOn(host, "note")).toEqual({ B5: "Cleo: count again" });
    expect(remarksOn(host, "comment")).toEqual({ D7: "Ben Hale: replant?" });
    expect(lostSentences("Findings", rewritten, "en")).toEqual([]);
    expect(leftSentence("Findings", rewritten, "en")).toBe(
      "This Excel shows no notes to add-ins: rows of the sheet Findings moved, and notes on it stand at the cells where they stood.",
    );
    const again = await rewriteOwnSheet(workbook, findings(SECOND));
    expect(leftSentence("Findings", again, "en")).toBe("");
  });

  test("leaves them under other heads too", async () => {
    const { host, workbook } = await written(EXCEL_PROFILES.perpetual2021);
    remark(host, "B5", ["Cleo: count again"], "note");
    await rewriteOwnSheet(workbook, findings(FIRST, ["Made today", "Of two sheets"]));
    expect(remarksOn(host, "note")).toEqual({ B5: "Cleo: count again" });
  });
});
