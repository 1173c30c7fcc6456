import { allFindings } from "../../../src/survey/checks/checkSeason";
import { countPlan } from "../../../src/survey/crop/countPlan";
import { vinesOfBlocks } from "../../../src/survey/crop/vinesOfBlocks";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { accountDetails } from "../../../src/survey/season/accountSentences";
import { gapsOfSeason } from "../../../src/survey/season/gapsOfSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { areaOf } from "../area";
import { CORDON_HEADS } from "../cordonHeads";

const D = 46030;
const VINES = Array.from({ length: 24 }, (_, at) => [1 + Math.floor(at / 12), 1 + (at % 12)] as const);
const COUNTS = areaOf("Cordons", [
  [...CORDON_HEADS],
  ...VINES.flatMap(([row, vine]) =>
    ["left", "right"].map((side, at): CellValue[] => [
      "North Bench",
      row,
      vine,
      side,
      "AB"[at],
      at + 1,
      3 + ((vine * 7 + row) % 5) / 10,
      9 - (vine % 2),
      7 + ((vine + at) % 2),
    ]),
  ),
]);
const REGISTER = areaOf("Vines", [
  ["Block", "Row", "Vine", "Status", "Live trunks"],
  ...VINES.map(([row, vine]): CellValue[] => ["North Bench", row, vine, "bearing", 2]),
]);

/** Sheets that farms keep beside their counts, in the words of three languages; what stands in them is invented. */
const OTHERS: Readonly<Record<string, readonly (readonly CellValue[])[]>> = {
  Yield: [
    ["Block", "Row", "Vine", "Yield (lb)"],
    ...[1, 2, 3, 4, 5].map((v) => ["North Bench", 1, v, 10 + v]),
  ],
  "Yield clusters": [
    ["Block", "Row", "Vine", "Clusters", "Cluster weight (g)", "Yield (lb)"],
    ...[1, 2, 3, 4, 5].map((v) => ["North Bench", 1, v, 30 + v, 110, 10 + v]),
  ],
  "Yield 2": [
    ["Block", "Row", "Vine", "Picked on", "Lugs", "Pounds"],
    ...[1, 2, 3].map((v) => ["North Bench", 1, v, D, 2, 50 + v]),
  ],
  Crop: [
    ["Block", "Variety", "Acres", "Tons", "Tons per acre"],
    ["North Bench", "Syrah", 2.1, 8.4, 4],
    ["Pond Field", "Pinot noir", 1.5, 4.5, 3],
  ],
  Picks: [
    ["Date", "Block", "Bins", "Tons", "Brix", "Winery"],
    [D - 100, "North Bench", 12, 6.2, 24.5, "Mill"],
    [D - 98, "Pond Field", 9, 4.1, 23.8, "Mill"],
  ],
  Rendimiento: [
    ["Cuartel", "Hilera", "Planta", "Kg", "Racimos"],
    ...[1, 2, 3].map((v) => ["North Bench", 1, v, 4 + v, 30]),
  ],
  Rendement: [
    ["Parcelle", "Rang", "Cep", "Poids (kg)", "Grappes"],
    ...[1, 2, 3].map((v) => ["North Bench", 1, v, 4 + v, 30]),
  ],
  Vendange: [
    ["Parcelle", "Date", "Caisses", "Poids (kg)", "Degré"],
    ["North Bench", D - 100, 40, 800, 12.5],
  ],
  "Spray log": [
    ["Date", "Block", "Product", "Rate", "Gallons", "Applicator"],
    [D, "North Bench", "Sulfur", "3 lb/ac", 100, "AR"],
    [D + 7, "Pond Field", "Sulfur", "3 lb/ac", 80, "AR"],
  ],
  Sprays: [
    ["Date", "Block", "Rows", "Product", "Rate (lb/ac)", "Water (gal)", "Wind", "Counted by"],
    [D, "North Bench", 12, "Sulfur", 3, 100, "calm", "AR"],
  ],
  Tratamientos: [
    ["Fecha", "Cuartel", "Producto", "Dosis", "Litros", "Aplicador"],
    [D, "North Bench", "Azufre", 3, 400, "AR"],
  ],
  Traitements: [
    ["Date", "Parcelle", "Produit", "Dose", "Volume (l)", "Opérateur"],
    [D, "North Bench", "Soufre", 3, 400, "AR"],
  ],
  Replants: [
    ["Block", "Row", "Vine", "Rootstock", "Clone", "Planted"],
    ...[3, 7].map((v) => ["North Bench", 1, v, "3309C", "Clone 7", 2024]),
  ],
  "Replant list": [
    ["Block", "Row", "Vine", "Reason", "Ordered"],
    ...[3, 7].map((v) => ["North Bench", 1, v, "dead", "yes"]),
  ],
  "To replant": [
    ["Block", "Row", "Vine", "Status", "Variety"],
    ...[3, 7].map((v) => ["North Bench", 1, v, "missing", "Syrah"]),
  ],
  "Replant notes": [
    ["Block", "Row", "Vine", "Date", "Note"],
    ...[3, 7].map((v) => ["North Bench", 1, v, D, "dead, replant"]),
  ],
  Reposición: [
    ["Cuartel", "Hilera", "Planta", "Portainjerto", "Clon", "Plantada"],
    ...[3, 7].map((v) => ["North Bench", 1, v, "110R", "Clon 7", 2024]),
  ],
  Complantation: [
    ["Parcelle", "Rang", "Cep", "Porte-greffe", "Clone", "Année"],
    ...[3, 7].map((v) => ["North Bench", 1, v, "SO4", "Clone 7", 2024]),
  ],
  Tanks: [
    ["Tank", "Variety", "Gallons", "Brix", "pH", "TA"],
    ["T1", "Syrah", 500, 24.5, 3.6, 6.1],
    ["T2", "Pinot noir", 300, 23, 3.5, 6.5],
  ],
  "Tank list": [
    ["Tank", "Block", "Variety", "Volume", "Length (ft)", "Diameter (in)", "Note"],
    ["T1", "North Bench", "Syrah", 500, 6, 40, ""],
    ["T2", "Pond Field", "Pinot noir", 300, 6, 36, "leaks"],
  ],
  Depósitos: [
    ["Depósito", "Variedad", "Litros", "Grado", "pH"],
    ["D1", "Syrah", 2000, 13, 3.6],
  ],
  Cuves: [
    ["Cuve", "Cépage", "Volume (hl)", "Degré", "pH"],
    ["C1", "Syrah", 20, 13, 3.6],
  ],
  Summary: [
    ["Block", "Vines", "Cordons", "Positions", "Live spurs", "Gaps", "Share of gaps"],
    ["North Bench", 24, 48, 408, 360, 48, 0.12],
    ["Pond Field", 20, 40, 360, 300, 60, 0.17],
  ],
  "Summary by row": [
    ["Block", "Row", "Vines", "Cordons", "Positions", "Live spurs", "Gaps"],
    ["North Bench", 1, 12, 24, 204, 180, 24],
    ["North Bench", 2, 12, 24, 204, 180, 24],
  ],
  "By counter": [
    ["Counted by", "Rows", "Vines", "Cordons", "Live spurs", "Average"],
    ["AR", 2, 24, 48, 360, 7.5],
  ],
  Resumen: [
    ["Cuartel", "Plantas", "Cordones", "Posiciones", "Pitones vivos", "Huecos"],
    ["North Bench", 24, 48, 408, 360, 48],
  ],
  Résumé: [
    ["Parcelle", "Ceps", "Cordons", "Emplacements", "Coursons vivants", "Manques"],
    ["North Bench", 24, 48, 408, 360, 48],
  ],
  Hours: [
    ["Name", "Date", "Block", "Row", "Hours", "Vines pruned"],
    ["AR", D, "North Bench", 1, 6, 12],
    ["BH", D, "North Bench", 2, 7, 12],
  ],
  "Block list": [
    ["Block", "Variety", "Clone", "Rootstock", "Acres", "Vines", "Planted"],
    ["North Bench", "Syrah", "7", "3309C", 2.1, 24, 2008],
  ],
  Soil: [
    ["Block", "Row", "Vine", "Depth (in)", "Moisture"],
    ["North Bench", 1, 3, 12, 0.21],
    ["North Bench", 1, 7, 24, 0.25],
  ],
  Brix: [
    ["Block", "Row", "Vine", "Date", "Brix", "pH", "TA"],
    ...[1, 2, 3].map((v) => ["North Bench", 1, v, D - 130, 22 + v / 10, 3.5, 6]),
  ],
  Irrigation: [
    ["Block", "Date", "Hours", "Gallons"],
    ["North Bench", D, 4, 2000],
  ],
  Disease: [
    ["Block", "Row", "Vine", "Disease", "Severity", "Date"],
    ...[1, 5].map((v) => ["North Bench", 1, v, "trunk disease", 3, D]),
  ],
  "Trunk girth": [["Block", "Row", "Vine", "Trunk (in)"], ...[1, 5].map((v) => ["North Bench", 1, v, 9.5])],
  Budget: [
    ["Item", "Hours", "Rate", "Cost"],
    ["Pruning", 120, 18, 2160],
  ],
};

/** What is read of a list that names vines and what was measured on them: its own heads are no fault of it. */
const MEASURED = new Set(["Yield clusters", "Rendimiento", "Rendement"]);

describe.each([
  ["counts alone", [COUNTS]],
  ["counts and a register", [COUNTS, REGISTER]],
] as const)("beside %s", (_, own) => {
  const alone = readSeason(own);

  test.each(Object.entries(OTHERS))("%s causes no finding and is named with the reason", (name, rows) => {
    for (const sheets of [
      [...own, areaOf(name, rows)],
      [areaOf(name, rows), ...own],
    ]) {
      const season = readSeason(sheets);
      expect(allFindings(season)).toEqual(allFindings(alone));
      expect(season.account.questions).toEqual([]);
      expect(gapsOfSeason(season).rows).toEqual(gapsOfSeason(alone).rows);
      const said = accountDetails(season, "en").filter((sentence) => sentence.includes(name));
      if (MEASURED.has(name))
        expect(said.join(" ")).toContain("was not read: its head is none that is known.");
      else expect(said).toEqual([`${name} was not read: it holds no counts.`]);
    }
  });

  test("all of them together cause none", () => {
    const season = readSeason([...own, ...Object.entries(OTHERS).map(([name, rows]) => areaOf(name, rows))]);
    expect(allFindings(season)).toEqual(allFindings(alone));
  });
});

test("a vine that a list of yields and the register both name is one vine of the crop", () => {
  const list = areaOf("Yield", OTHERS["Yield clusters"]);
  for (const sheets of [
    [COUNTS, REGISTER, list],
    [list, COUNTS, REGISTER],
  ]) {
    const [vines] = vinesOfBlocks(readSeason(sheets)).values();
    // 24 vines are registered; the five of the list carry 31 to 35 clusters.
    expect(vines).toMatchObject({
      listed: 24,
      planted: 24,
      bearingVines: 24,
      clusterCounts: [31, 32, 33, 34, 35],
    });
    expect(countPlan(readSeason(sheets), "North Bench", "clusters", 7)).toMatchObject({
      bearingVines: 24,
      missingShare: 0,
      pilot: 5,
    });
  }
});
