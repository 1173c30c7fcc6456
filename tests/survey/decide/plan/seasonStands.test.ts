import fc from "fast-check";
import { chooseCordons } from "../../../../src/domain/choice/chooseCordons";
import type { Finding } from "../../../../src/survey/checks/finding";
import { crewCards } from "../../../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import { isAsked } from "../../../../src/survey/decide/isAsked";
import { openOnCards, seasonStands } from "../../../../src/survey/decide/plan/seasonStands";
import { workPlan } from "../../../../src/survey/decide/plan/workPlan";
import { readSeason } from "../../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../../src/survey/sheets/cell";
import { anyCandidate, vineOf } from "../../../domain/choice/counts";
import { RULES } from "../../../domain/choice/standardRules";
import { areaOf } from "../../area";
import { cordonHeads } from "../../cordonHeads";

const PRUNED = 46060;
const cordon = (row: number, vine: number, side: string, letter: string, spurs: CellValue, choice = "") => [
  ...["North Bench", row, vine, side, letter, side === "left" ? 1 : 2, 40, 10, spurs, choice],
];
/** A pair of sound cordons, one a side: nothing to ask about. */
const pair = (row: number, vine: number, left = "", right = "") => [
  cordon(row, vine, "left", "A", 9, left),
  cordon(row, vine, "right", "B", 9, right),
];

function stands(finding: Partial<Finding>[] = []) {
  const season = readSeason([
    areaOf("Blocks", [
      ["Block", "Vine spacing (ft)", "Training system"],
      ["Creek Side", 7, "high wire"],
      ["North Bench", 7, "high wire"],
      ["Nothing Planted", 7, "high wire"],
    ]),
    areaOf("Vines", [
      ["Block", "Row", "Vine", "Status", "Pruned on"],
      ["North Bench", 1, 1, "bearing", PRUNED],
      ["North Bench", 1, 2, "", ""],
      ["North Bench", 1, 3, "young", PRUNED],
      ["North Bench", 1, 4, "missing", PRUNED],
      ["North Bench", 1, 5, "replanted", ""],
      ["North Bench", 2, 1, "bearing", ""],
      ["North Bench", 2, 2, "bearing", PRUNED],
      ["Creek Side", 1, 1, "bearing", PRUNED],
      ["Creek Side", 1, 2, "", ""],
      ["Far Corner", 5, 1, "bearing", ""],
    ]),
    areaOf("Cordons", [
      [...cordonHeads("in"), "Fixed choice"],
      ...pair(1, 1, "stays", "stays"),
      ...pair(1, 2, "stays"),
      ...pair(1, 3),
      // two alike on one side: one of them stays, and a person says which
      ...[cordon(2, 1, "left", "A", 9), cordon(2, 1, "left", "C", 9), cordon(2, 1, "right", "B", 9)],
      // somebody was there, and what was written cannot be read
      ...[cordon(2, 2, "left", "A", "eight or so"), cordon(2, 2, "right", "B", "many")],
      // laid out, and nobody has counted it yet
      ...["left", "right"].map((side) => ["North Bench", 2, 3, side, side === "left" ? "A" : "B"]),
      // a cordon that is fixed to go need not be counted
      ...[cordon(3, 4, "left", "A", 9), cordon(3, 4, "right", "B", "", "goes")],
      ["Creek Side", 1, 1, "left", "A", 1, 40, 10, 9, "stays"],
      ["Creek Side", 1, 1, "right", "B", 2, 40, 10, 9, "stays"],
    ]),
    areaOf("Settings", [
      ["Setting", "Value"],
      ["Minutes a vine, pruning", 60],
    ]),
  ]);
  const decided = [...decideSeason(season)];
  const cards = crewCards(season, decided);
  const thinned = new Map([[season.words.codeOf("North Bench"), { vines: 5, remove: 2 }]]);
  const wrong = finding.map((one): Finding => ({
    ...{ code: "spursAbovePositions", severity: "wrong", sheet: "Cordons", row: 2, columnNumber: 9 },
    ...{ column: "Live spurs", facts: {} },
    ...one,
  }));
  const isFirstRow = ({ block, row }: (typeof cards)[number]) => block === "North Bench" && row === 1;
  const work = workPlan(season, thinned);
  return { decided, ...seasonStands(season, decided, wrong, { cards, work }, isFirstRow) };
}

const blockOf = (name: string, finding?: Partial<Finding>[]) =>
  stands(finding).blocks.find(({ block }) => block === name)!;

describe("where the work of a season stands, counted by hand", () => {
  test("blocks come in the order of the Blocks sheet, then those that it does not list; one without vines is left out", () => {
    expect(stands().blocks.map(({ block }) => block)).toEqual(["Creek Side", "North Bench", "Far Corner"]);
  });

  test("vines are the bearing ones of the register and any with a cordon row: neither missing nor young ones without", () => {
    // North Bench: 1-1, 1-2, 2-1, 2-2 bear, a blank status too; 1-3 (young), 2-3 and 3-4 have rows; 1-4 and 1-5 do not
    expect(stands().blocks.map(({ vines }) => vines)).toEqual([2, 7, 1]);
  });

  test("counted is who has a count of live spurs, readable or not; laid out rows are none", () => {
    // all of North Bench but 2-3; in Creek Side only 1-1
    expect(stands().blocks.map(({ counted }) => counted)).toEqual([1, 6, 0]);
  });

  test("of the counted vines two are asked about, one of them to be counted again, and the others are decided", () => {
    expect(blockOf("North Bench")).toMatchObject({ counted: 6, decided: 4, recount: 1 });
    expect(blockOf("Creek Side")).toMatchObject({ counted: 1, decided: 1, recount: 0 });
    expect(
      stands()
        .decided.filter(isAsked)
        .map(({ row, vine }) => `${row}-${vine}`),
    ).toEqual(["2-1", "2-2", "2-3"]);
  });

  test("accepted is a decided vine of which every cordon has its choice in the sheet", () => {
    expect(stands().blocks.map(({ accepted }) => accepted)).toEqual([1, 1, 0]);
  });

  test("pruned vines are those with a day, a young one with cordons among them, a missing one not", () => {
    expect(stands().blocks.map(({ pruned }) => pruned)).toEqual([1, 3, 0]);
  });

  test("the vines of a printed row are printed, and the other cards are to print", () => {
    // row 1 of North Bench has 1-1, 1-2 and 1-3; cards: its rows 1, 2 and 3, one of Creek Side, one of Far Corner
    const { blocks, cardsToPrint } = stands();
    expect(blocks.map(({ printed }) => printed)).toEqual([0, 3, 0]);
    expect(cardsToPrint).toBe(4);
  });

  test("hours left are of pruning alone: an hour for each vine of the register that stands unpruned", () => {
    // Creek Side 1-2; North Bench 1-2, 1-5 and 2-1; Far Corner 5-1; thinning of shoots is not pruning
    expect(stands().blocks.map(({ hours }) => hours)).toEqual([1, 3, 1]);
  });

  test.each<[string, Partial<Finding>[], string, number, number]>([
    ["its vine, however many cells of it are wrong", [{ row: 2 }, { row: 3 }], "North Bench", 2, 5],
    ["a vine of the register", [{ sheet: "Vines", row: 11 }], "Far Corner", 1, 0],
    [
      "the block that it names, in whatever spelling, where it names no vine",
      [{ sheet: "Blocks", row: 2, facts: { block: " creek SIDE" } }],
      ...(["Creek Side", 1, 1] as const),
    ],
    [
      "the block that it names, where its row is outside the table",
      [{ row: 99, facts: { block: "Creek Side" } }],
      ...(["Creek Side", 1, 1] as const),
    ],
  ])("a wrong cell is told to %s", (_where, finding, block, wrong, checked) => {
    expect(blockOf(block, finding)).toMatchObject({ wrong, checked });
    const others = stands(finding).blocks.filter((one) => one.block !== block);
    expect(others.map((one) => [one.wrong, one.checked])).toEqual(others.map(({ counted }) => [0, counted]));
  });

  test("a finding that names no block is told to none, and is still in the list", () => {
    const finding = [
      { sheet: "Notes", row: 3, facts: { block: "" } },
      { sheet: "Notes", row: 4, facts: { block: 7 } },
      { sheet: "Notes", row: 5 },
    ];
    const { blocks, wrong } = stands(finding);
    expect(blocks.map(({ block, wrong: count }) => [block, count])).toEqual([
      ["Creek Side", 0],
      ["North Bench", 0],
      ["Far Corner", 0],
    ]);
    expect(wrong).toHaveLength(3);
  });

  test("what is open is summed over the blocks", () => {
    // asked 6 - 4 and 0; uncounted 7 - 6, 2 - 1 and 1; decided but not accepted 4 - 1 and 0
    expect(openOnCards(stands([{ row: 2 }]).blocks)).toEqual({
      asked: 2,
      recount: 1,
      uncounted: 3,
      wrong: 1,
      toAccept: 3,
    });
    expect(openOnCards([])).toEqual({ asked: 0, recount: 0, uncounted: 0, wrong: 0, toAccept: 0 });
  });
});

test("a side that a person must decide has a cordon that is asked about, which is how a vine is known to be asked about", () => {
  fc.assert(
    fc.property(vineOf(anyCandidate, 3), (vine) => {
      const { sides, cordons } = chooseCordons(vine, RULES);
      for (const { side } of sides.filter(({ ask }) => ask))
        expect(cordons.some((one) => one.side === side && one.verdict === "ask")).toBe(true);
    }),
  );
});
