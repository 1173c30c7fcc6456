import { functionNamed } from "../../../src/functions/registry";
import { formulaHere } from "../../../src/workbook/actions/formulaHere";
import type { TablePlace } from "../../../src/workbook/surveyWorkbook";
import { seasonOf } from "../../taskpane/heldSeasonOf";
import { MemoryWorkbook, type MemoryCell } from "../memory/memoryWorkbook";

type Sheets = Readonly<Record<string, readonly (readonly MemoryCell[])[]>>;

const BLOCKS = [
  ["Block", "Cultivar", "Node rule", "Vine spacing (ft)", "Row spacing (ft)"],
  ["North Bench", "Concord", "20+20", 8, 9],
  ["Creek Side", "Concord", null, 8, 9],
  ["Mill Lot", "Concord", "by length", 8, 9],
];
const VINES = [
  ["Block", "Row", "Vine", "Prunings (lb)", "Clusters"],
  ["North Bench", 1, 1, 3, 40],
  ["Creek Side", 1, 1, null, 50],
  ["Mill Lot", 1, 1, 2, 60],
];

async function here(
  name: string,
  sheets: Sheets,
  place: [sheet: string, row: number, column: number],
  tables: readonly TablePlace[] = [],
) {
  const workbook = new MemoryWorkbook(sheets);
  const [sheet, row, column] = place;
  const season = await seasonOf(workbook);
  return formulaHere(functionNamed(name)!, { season, tables, place: { sheet, row, column } });
}

const table = (name: string, sheet: string, lastRow: number, lastColumn: number): TablePlace => ({
  name,
  sheet,
  area: { firstRow: 1, firstColumn: 1, lastRow, lastColumn },
  totals: false,
});

describe("a function put into a cell", () => {
  test("in a vine's row: that vine's weight, by the cell of its block's own rule", async () => {
    expect(await here("NODEBUDGET", { Blocks: BLOCKS, Vines: VINES }, ["Vines", 2, 7])).toEqual({
      formula: "=CORDON.NODEBUDGET(D2,Blocks!$C$2)",
    });
  });

  test("a block without a rule of its own follows Settings, and a vine not weighed is told", async () => {
    // Settings are not in this workbook, so its own default 30+10 is in force.
    expect(await here("NODEBUDGET", { Blocks: BLOCKS, Vines: VINES }, ["Vines", 3, 7])).toEqual({
      formula: '=CORDON.NODEBUDGET(D3,"30+10")',
      blank: { sheet: "Vines", row: 3, column: 4 },
    });
  });

  test("a block that leaves nodes by length is not given a formula of prunings", async () => {
    expect(await here("NODEBUDGET", { Blocks: BLOCKS, Vines: VINES }, ["Vines", 4, 7])).toEqual({
      problem: "otherRule",
      facts: { block: "Mill Lot", rule: "by length" },
    });
  });

  test("elsewhere the whole column, under the names of this workbook, with the rule that all blocks share", async () => {
    const blocks = BLOCKS.slice(0, 2);
    expect(await here("NODEBUDGET", { Blocks: BLOCKS, Vines: VINES }, ["Plan", 1, 1])).toEqual({
      problem: "severalFigures",
      facts: { figures: '"20+20", "30+10", "by length"', sheet: "Vines" },
    });
    const plain = { Blocks: blocks, "My vines": VINES, Plan: [] };
    expect(await here("NODEBUDGET", plain, ["Plan", 1, 1])).toEqual({
      formula: "=CORDON.NODEBUDGET('My vines'!D2:D4,\"20+20\")",
    });
    expect(await here("NODEBUDGET", plain, ["Plan", 1, 1], [table("Ceps", "My vines", 4, 5)])).toEqual({
      formula: '=CORDON.NODEBUDGET(Ceps[Prunings (lb)],"20+20")',
    });
  });

  test("figures keep the unit of their column", async () => {
    const metric = [
      ["Parcelle", "Cultivar", "Règle des yeux", "Distance ceps (m)"],
      ["Nord", "Concord", "20+20", 2.4],
    ];
    const vines = [
      ["Parcelle", "Rang", "Cep", "Bois de taille (kg)"],
      ["Nord", 1, 1, 1.4],
    ];
    expect(await here("NODEBUDGET", { Parcelles: metric, Ceps: vines }, ["Ceps", 2, 6])).toEqual({
      formula: '=CORDON.NODEBUDGET(D2,Parcelles!$C$2,"metric")',
    });
    const grams = [
      ["Block", "Row", "Vine", "Prunings (g)"],
      ["North Bench", 1, 1, 1400],
    ];
    // 1 g is 0.00220462262185 lb (1 lb = 453.59237 g).
    expect(await here("NODEBUDGET", { Blocks: BLOCKS.slice(0, 2), Vines: grams }, ["Vines", 2, 6])).toEqual({
      formula: "=CORDON.NODEBUDGET(D2*0.00220462262185,Blocks!$C$2)",
    });
  });

  const FROSTED = [
    ["Block", "Year", "Frost: primaries", "Frost: secondaries", "Frost: tertiaries", "Frost: shootless"],
    ["North Bench", 2026, 60, 30, 5, 5],
    ["Creek Side", 2026, 1, 2, 3, 4],
  ];

  test("after frost, a block's own worth of a secondary: its cell, or the figure that is in force in it", async () => {
    const worth = (figure: MemoryCell) => [
      ["Block", "Cultivar", "Secondary worth"],
      ["North Bench", "Concord", figure],
      ["Creek Side", "Norton", null],
    ];
    const own = { Blocks: worth(0.5), Harvest: FROSTED };
    expect(await here("CROPAFTERFROST", own, ["Harvest", 2, 8])).toEqual({
      formula: "=CORDON.CROPAFTERFROST(C2,D2,E2,F2,Blocks!$C$2)",
    });
    // Vinews 2023 No. 1: a secondary of Norton is worth about 0
    expect(await here("CROPAFTERFROST", own, ["Harvest", 3, 8])).toEqual({
      formula: "=CORDON.CROPAFTERFROST(C3,D3,E3,F3,0)",
    });
    expect(await here("CROPAFTERFROST", own, ["Plan", 1, 1])).toEqual({
      problem: "severalFigures",
      facts: { figures: "0.5, 0", sheet: "Harvest" },
    });
    // Howell, Michigan State: 0.35 on Concord
    const concord = { Blocks: worth(null).slice(0, 2), Harvest: FROSTED, Plan: [] };
    expect(
      await here("CROPAFTERFROST", concord, ["Plan", 1, 1], [table("Harvest", "Harvest", 3, 6)]),
    ).toEqual({
      formula: "=CORDON.CROPAFTERFROST(Harvest!C2:C3,Harvest!D2:D3,Harvest!E2:E3,Harvest!F2:F3,0.35)",
    });
  });

  test("shoots: the block's own wire and budbreak, what Settings say of thinning, in the unit of the farm", async () => {
    const counted = [
      ["Block", "Row", "Vine", "Shoots"],
      ["North Bench", 1, 1, 50],
    ];
    expect(await here("SHOOTSTOREMOVE", { Blocks: BLOCKS, Vines: counted }, ["Vines", 2, 6])).toEqual({
      formula: "=CORDON.SHOOTSTOREMOVE(D2,Blocks!$D$2,6,1,2)",
    });
    const metric = [
      ["Parcelle", "Entre ceps (m)", "Entre rangs (m)"],
      ["North Bench", 2.4, 3],
    ];
    const ceps = [["Parcelle", "Rang", "Cep", "Pousses"], ...counted.slice(1)];
    // 6 shoots a foot are 6 / 0.3048 = 19.685 a metre
    expect(await here("SHOOTSTOREMOVE", { Parcelles: metric, Ceps: ceps }, ["Ceps", 2, 6])).toEqual({
      formula: '=CORDON.SHOOTSTOREMOVE(D2,Parcelles!$B$2,19.685,1,2,"metric")',
    });
    const cordons = [
      ["Block", "Row", "Vine", "Side", "Cordon", "Live spurs", "Nodes a spur"],
      ["North Bench", 1, 1, "left", "A", 6, 2],
    ];
    const broken = [
      ["Block", "Budbreak", "Cultivar"],
      ["North Bench", 0.7, "Concord"],
    ];
    expect(await here("SHOOTS", { Blocks: broken, Cordons: cordons }, ["Cordons", 2, 9])).toEqual({
      formula: "=CORDON.SHOOTS(F2,G2,Blocks!$B$2)",
    });
  });

  test("tables that a function may do without are left out where there are none", async () => {
    const cordons = [
      ["Block", "Row", "Vine", "Side", "Cordon", "Positions", "Live spurs"],
      ["North Bench", 1, 1, "left", "A", 8, 6],
    ];
    const sheets = { Cordons: cordons, Blocks: BLOCKS, Plan: [] };
    expect(await here("CHECKCOUNTS", sheets, ["Plan", 1, 1])).toEqual({
      formula: "=CORDON.CHECKCOUNTS(Cordons!A1:G2,,Blocks!A1:E4)",
    });
    expect(await here("GAPSBYROW", sheets, ["Cordons", 2, 3], [table("Cordons", "Cordons", 2, 7)])).toEqual({
      problem: "inTable",
      facts: {},
    });
  });

  test("without its tables it is the worked example", async () => {
    expect(await here("NODEBUDGET", { Plan: [["x"]] }, ["Plan", 1, 2])).toEqual({
      formula: '=CORDON.NODEBUDGET(3,"30+10")',
    });
    expect(await here("VINESTOCOUNT", { Plan: [["x"]] }, ["Plan", 1, 2])).toEqual({
      formula: functionNamed("VINESTOCOUNT")!.examples[0].formula,
    });
  });
});
