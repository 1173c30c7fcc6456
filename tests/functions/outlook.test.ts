import { callFunction, isRefused } from "../../src/functions/callFunction";
import type { RawArgument } from "../../src/functions/readArgument";
import { functionNamed } from "../../src/functions/registry";
import { LANGUAGES } from "../../src/texts/language";
import { OUTLOOK_LACKS } from "../../src/texts/outlook";
import { cordonHeads } from "../survey/cordonHeads";

const call = (args: readonly RawArgument[], language: "en" | "es" | "fr" = "en") => {
  const outcome = callFunction(functionNamed("CROPOUTLOOK")!, args, language);
  if (isRefused(outcome)) throw new Error(outcome.sentence);
  return outcome.values;
};

const VINES = [
  ["Block", "Row", "Vine", "Status", "Clusters", "Shoots"],
  ["A", 1, 1, "bearing", 60, 30],
  ["A", 1, 2, "bearing", 80, 34],
  ["A", 1, 3, "missing", "", ""],
  ["A", 1, 4, "bearing", "", ""],
];
const BLOCKS = [
  ["Block", "Row spacing (m)", "Vine spacing (m)", "Cluster weight (g)", "Clusters a shoot"],
  ["A", 2.5, 2, 100, 2],
];
const EXACT_SETTINGS = [
  ["Setting", "Value", "Unit"],
  ["Cluster weight, year to year", 0, "share"],
  ["Clusters a shoot, year to year", 0, "share"],
];
const CORDONS = [
  [...cordonHeads("m"), "Nodes a spur", "Fixed choice"],
  ["A", 1, 1, "left", "A", 1, 0.9, 10, 10, 2, "stays"],
  ["A", 1, 2, "left", "A", 1, 0.9, 10, 10, 2, "stays"],
  ["A", 1, 4, "left", "A", 1, 0.9, 10, 10, 2, "stays"],
];
const likely = (rows: readonly (readonly unknown[])[], stage: string, figure: string) =>
  rows.find((row) => row[1] === stage && row[2] === figure)?.[4];

describe("CORDON.CROPOUTLOOK on the tables of a survey", () => {
  test("metric headings give a metric answer; three of four vines bear: 70 x 0.1 kg x 2000 x 0.75 = 10.5 t/ha", () => {
    const rows = call([VINES, BLOCKS, EXACT_SETTINGS]);
    expect(likely(rows, "Clusters counted", "crop of a vine")).toBeCloseTo(7, 9);
    expect(likely(rows, "Clusters counted", "crop of an area")).toBeCloseTo(10.5, 9);
    expect(likely(rows, "Clusters counted", "crop of the block")).toBeCloseTo(21, 9);
    expect(rows.map((row) => row[6])).toContain("tonnes a hectare");
  });

  test("shoots come before clusters, each with what it counted: 32 shoots of 2 clusters", () => {
    const rows = call([VINES, BLOCKS, EXACT_SETTINGS]);
    expect(likely(rows, "Shoots counted", "clusters a vine")).toBeCloseTo(64, 9);
    const stages = rows.slice(1).map((row) => row[1]);
    expect([...new Set(stages)].filter((stage) => stage !== "")).toEqual([
      "Shoots counted",
      "Clusters counted",
    ]);
    // two of three bearing vines were counted
    expect(rows.map((row) => row[7])).toContain(OUTLOOK_LACKS["fewVines"].en);
  });

  test("with cordons there is a winter: 20 nodes, half the buds alive, 85 % break, 2 clusters: 17", () => {
    const budCuts = [
      ["Block", "Cane", "Nodes cut", "Primaries alive"],
      ["A", 1, 20, 10],
    ];
    const rows = call([VINES, BLOCKS, EXACT_SETTINGS, CORDONS, budCuts]);
    expect(likely(rows, "Winter: nodes left", "clusters a vine")).toBeCloseTo(17, 9);
  });

  test("with a node rule the winter is the plan's, 24 nodes on 10 spurs, beside 20 as counted; harvests are a second figure", () => {
    const blocks = [
      [...BLOCKS[0], "Node rule"],
      [...BLOCKS[1], "24"],
    ];
    const harvest = [
      ["Block", "Year", "Picked (kg)"],
      ["A", 2020, 4000],
      ["A", 2021, 6000],
    ];
    const settings = [...EXACT_SETTINGS, ["Budbreak, year to year", 0, "share"]];
    const rows = call([VINES, blocks, settings, CORDONS, null, harvest]);
    // every node alive, 85 % break, 2 clusters
    expect(likely(rows, "Winter: nodes left", "clusters a vine")).toBeCloseTo(40.8, 9);
    expect(likely(rows, "Winter: nodes as counted", "clusters a vine")).toBeCloseTo(34, 9);
    const says = rows.map((row) => String(row[7]));
    expect(says).toContain("Your own harvests, 2 from 2020 to 2021: 4 to 6 t, 5 on average.");
    expect(says.filter((one) => one.includes("Every harvest on record (4 to 6 t) lies above"))).toHaveLength(
      3,
    );
  });

  test("a vine with a count that cannot be true is in no figure, and a last line says so", () => {
    const spurs = CORDONS[0].indexOf("Live spurs");
    const wrong = CORDONS.map((row, at) =>
      row.map((cell, column) => (at === 1 && column === spurs ? 90 : cell)),
    );
    const sound = call([VINES, BLOCKS, EXACT_SETTINGS, CORDONS]);
    const rows = call([VINES, BLOCKS, EXACT_SETTINGS, wrong]);
    expect(String(sound.at(-1)!.at(-1))).not.toContain("Left out");
    expect(String(rows.at(-1)!.at(-1))).toContain(
      "1 where Live spurs is outside its limits (first in cordons, row 2)",
    );
  });

  test("a lag-phase weight of the season replaces the usual weight: 70 x 0.06 x 2", () => {
    const harvest = [
      ["Block", "Year", "Cluster weight at lag phase (g)"],
      ["A", 2026, 60],
    ];
    const rows = call([VINES, BLOCKS, EXACT_SETTINGS, null, null, harvest]);
    expect(likely(rows, "Lag phase: clusters weighed", "crop of a vine")).toBeCloseTo(8.4, 9);
  });

  test("low, likely and high are in order, and the unit can be chosen", () => {
    const metric = call([VINES, BLOCKS]).slice(1);
    const us = call([VINES, BLOCKS, null, null, null, null, "US"]).slice(1);
    for (const [, , , low, value, high] of metric.filter(([, stage]) => stage !== "")) {
      expect(low).toBeLessThanOrEqual(value as number);
      expect(value).toBeLessThanOrEqual(high as number);
    }
    const [kilograms, pounds] = [metric, us].map(
      (rows) => likely(rows, "Clusters counted", "crop of the block") as number,
    );
    expect(pounds * 0.45359237).toBeCloseTo(kilograms, 9);
  });

  test.each(LANGUAGES)("what is lacking is said in a line, in %s", (language) => {
    const rows = call(
      [
        VINES,
        [
          ["Block", "Row spacing (m)", "Vine spacing (m)"],
          ["A", 2.5, 2],
        ],
      ],
      language,
    );
    expect(rows.slice(1).map((row) => row[7])).toContain(OUTLOOK_LACKS["clusterWeight"][language]);
  });
});
