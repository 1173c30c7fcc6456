import fc from "fast-check";
import { planRepairs, repairFormula } from "../../src/functions/repairFormula";
import { FUNCTIONS } from "../../src/functions/registry";

describe("formulas with a broken form of our functions", () => {
  test.each([
    {
      why: "stored, add-in missing",
      broken: "=_xldudf_CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "another add-in's number in front",
      broken: "=[2]!_xldudf_CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "another add-in's file in front",
      broken: "='C:\\Tools\\[solver.xlam]Sheet1'!_xldudf_CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "another file's name in front",
      broken: "=solver.xlam!_xldudf_CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "a lost reference in front",
      broken: "=#REF!_xldudf_CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "the mark of a newer function too",
      broken: "=_xlfn._xldudf_CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "the older stored mark",
      broken: "=_xludf.CORDON_CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    {
      why: "the mark of a library function",
      broken: "=_xll.CORDON.CLUSTERS(A2,2)",
      sound: "=CORDON.CLUSTERS(A2,2)",
    },
    { why: "an underscore for the dot", broken: "=CORDON_CLUSTERS(A2,2)", sound: "=CORDON.CLUSTERS(A2,2)" },
    { why: "lower case", broken: "=cordon.clusters(A2,2)", sound: "=CORDON.CLUSTERS(A2,2)" },
    {
      why: "a space before the parenthesis",
      broken: "=_xldudf_CORDON_CLUSTERS (A2,2)",
      sound: "=CORDON.CLUSTERS (A2,2)",
    },
    {
      why: "one in the other",
      broken: "=_xldudf_CORDON_VINECROP([2]!_xldudf_CORDON_CLUSTERS(A2,2),0.25)",
      sound: "=CORDON.VINECROP(CORDON.CLUSTERS(A2,2),0.25)",
    },
    {
      why: "among other functions",
      broken: '=IF(A2="","",ROUND(_xldudf_CORDON_CLUSTERS(A2,2),0))',
      sound: '=IF(A2="","",ROUND(CORDON.CLUSTERS(A2,2),0))',
    },
    {
      why: "a single value wanted",
      broken: "=@_xldudf_CORDON_CLUSTERS(A2:A9,2)",
      sound: "=@CORDON.CLUSTERS(A2:A9,2)",
    },
    {
      why: "a sheet whose name needs quotation marks as argument",
      broken: "=_xldudf_CORDON_CLUSTERS('North ''n'' South'!A2,2)",
      sound: "=CORDON.CLUSTERS('North ''n'' South'!A2,2)",
    },
  ])("$why: $broken", ({ broken, sound }) => {
    expect(repairFormula(broken).formula).toBe(sound);
  });

  test.each([
    { why: "a text that looks like a call", formula: '="_xldudf_CORDON_CLUSTERS("&A2' },
    { why: "a text with doubled quotation marks", formula: '="a "" _xldudf_CORDON_CLUSTERS(A2,2) """' },
    { why: "a sheet named like a call", formula: "='_xldudf_CORDON_CLUSTERS(1)'!A2" },
    { why: "a table column named like a call", formula: "=SUM(Plan[CORDON_CLUSTERS (old)])" },
    { why: "another function whose name ends like ours", formula: "=MYCORDON.CLUSTERS(A2,2)" },
    { why: "another add-in's function", formula: "=_xldudf_OTHER_CLUSTERS(A2,2)" },
    { why: "a name, not a call", formula: "=CORDON_CLUSTERS+1" },
    { why: "no formula of ours", formula: "=SUM(A1:A9)" },
  ])("left alone: $why", ({ formula }) => {
    expect(repairFormula(formula)).toEqual({ formula, calls: [], unknown: [] });
  });

  test("a function that this version does not have is named and left as it stands", () => {
    const formula = "=_xldudf_CORDON_PRUNEALL(A2)+_xldudf_CORDON_CLUSTERS(A2,2)";
    expect(repairFormula(formula)).toEqual({
      formula: "=_xldudf_CORDON_PRUNEALL(A2)+CORDON.CLUSTERS(A2,2)",
      calls: ["CLUSTERS"],
      unknown: ["PRUNEALL"],
    });
  });

  test("a repaired formula needs no second repair, and every text in it is as before", () => {
    const part = fc.oneof(
      fc.constantFrom(...FUNCTIONS.map(({ id }) => `_xldudf_CORDON_${id}(A1,2)`)),
      fc.constantFrom(...FUNCTIONS.map(({ id }) => `[2]!_xldudf_CORDON_${id}(A1,2)`)),
      fc.string({ maxLength: 12 }).map((text) => `"${text.replaceAll('"', '""')}"`),
      fc.constantFrom("SUM(A1:B2)", "'My sheet'!A1", "Plan[[#This Row],[Live spurs]]", "1.5%", "TRUE"),
    );
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
        const formula = `=${parts.join("&")}`;
        const once = repairFormula(formula);
        expect(repairFormula(once.formula).formula).toBe(once.formula);
        const kept = parts.filter((each) => !each.includes("_xldudf_CORDON_") || each.startsWith('"'));
        for (const each of kept) expect(once.formula).toContain(each);
        expect(once.calls).toHaveLength(parts.length - kept.length);
      }),
    );
  });
});

describe("the plan of repairs of a workbook", () => {
  const at = { sheet: "Plan", row: 2, column: 3 };

  test("a broken form is rewritten, whatever the cell shows", () => {
    const plan = planRepairs([{ ...at, formula: "=_xldudf_CORDON_CLUSTERS(A2,2)", shows: 48 }]);
    expect(plan.repairs).toEqual([
      { ...at, why: "form", before: "=_xldudf_CORDON_CLUSTERS(A2,2)", after: "=CORDON.CLUSTERS(A2,2)" },
    ]);
  });

  test("a well written formula that shows #NAME? is entered again", () => {
    const formula = "=CORDON.CLUSTERS(A2,2)";
    expect(planRepairs([{ ...at, formula, shows: "#NAME?" }]).repairs).toEqual([
      { ...at, why: "enterAgain", before: formula, after: formula },
    ]);
  });

  test.each(["#VALUE!", "#N/A", 48, "", null])(
    "a well written formula that shows %p is left alone",
    (shows) => {
      expect(planRepairs([{ ...at, formula: "=CORDON.CLUSTERS(A2,2)", shows }])).toMatchObject({
        repairs: [],
        unknown: [],
      });
    },
  );

  test("#NAME? without a function of ours is none of our business", () => {
    expect(planRepairs([{ ...at, formula: "=OTHER(A2)", shows: "#NAME?" }])).toEqual({
      repairs: [],
      unknown: [],
      failing: [],
    });
  });

  test("writing `before` of every repair brings the formulas back exactly", () => {
    const cells = ["=_xldudf_CORDON_CLUSTERS(A2,2)", "=[2]!_xldudf_CORDON_SHOOTS(A2,2,0.9)"].map(
      (formula, index) => ({
        ...at,
        row: index + 2,
        formula,
        shows: "#NAME?",
      }),
    );
    const { repairs } = planRepairs(cells);
    expect(repairs.map(({ row, before }) => [row, before])).toEqual(
      cells.map(({ row, formula }) => [row, formula]),
    );
  });

  test("an unknown function of ours is named with its cell", () => {
    const plan = planRepairs([{ ...at, formula: "=CORDON.PRUNEALL(A2)", shows: "#NAME?" }]);
    expect(plan).toEqual({ repairs: [], unknown: [{ ...at, name: "PRUNEALL" }], failing: [] });
  });
});

test.each([
  ["=@CORDON.GAPSBYROW(A1:K9)", "#NAME?", "=CORDON.GAPSBYROW(A1:K9)"],
  ["=@_xldudf_CORDON_GAPSBYROW(A1:K9)", "#NAME?", "=CORDON.GAPSBYROW(A1:K9)"],
  ["=@_xldudf_CORDON_CLUSTERS(A2,2)", 48, "=@CORDON.CLUSTERS(A2,2)"],
  ["=SUM(@A1:A9)+CORDON.CLUSTERS(A2,2)", "#NAME?", "=SUM(@A1:A9)+CORDON.CLUSTERS(A2,2)"],
])(
  "the @ that Excel puts before an unknown name goes, one that a person put stays: %s",
  (formula, shows, after) => {
    const [repair] = planRepairs([{ sheet: "Plan", row: 2, column: 3, formula, shows }]).repairs;
    expect(repair).toMatchObject({ before: formula, after });
  },
);

test("a well written @ before a call that shows a value is left alone", () => {
  const formula = "=@CORDON.CLUSTERS(A2,2)";
  expect(planRepairs([{ sheet: "Plan", row: 2, column: 3, formula, shows: 48 }]).repairs).toEqual([]);
});

test.each([
  { shows: "#SPILL!", failing: true },
  { shows: "#VALUE!", failing: true },
  { shows: "#DIV/0!", failing: true },
  { shows: "#N/A", failing: false },
  { shows: "#BUSY!", failing: false },
  { shows: "#1 row", failing: false },
  { shows: 48, failing: false },
])("a well written formula that shows $shows is called failing: $failing", ({ shows, failing }) => {
  const cell = { sheet: "Plan", row: 2, column: 3, formula: "=CORDON.CLUSTERS(A2,2)", shows };
  const plan = planRepairs([cell]);
  expect(plan.repairs).toEqual([]);
  expect(plan.failing).toEqual(failing ? [cell] : []);
});
