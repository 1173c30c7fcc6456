import { decideSeason } from "../../../src/survey/decide/decideSeason";
import { openOnCards, seasonStands } from "../../../src/survey/decide/plan/seasonStands";
import { workPlan } from "../../../src/survey/decide/plan/workPlan";
import { readSeason } from "../../../src/survey/reading/readSeason";
import type { CellValue } from "../../../src/survey/sheets/cell";
import { countVines, vinesToShow } from "../../../src/taskpane/decide/decideState";
import { areaOf } from "../../survey/area";
import { CORDON_HEADS } from "../../survey/cordonHeads";

const cordon = (vine: number, side: string, name: string, spurs: CellValue): CellValue[] => [
  ...["North Bench", 1, vine, side, name],
  ...(spurs === null ? [] : [side === "left" ? 1 : 2, 3.5, 7, spurs]),
];

test("Decide asks about as many vines as Season says are to be answered for, and not about those still to be counted", () => {
  // Vine 1 is clear, vine 2 has two cordons alike, vine 3 an unreadable count; vine 4 is laid out and nobody was there.
  const season = readSeason([
    areaOf("Cordons", [
      CORDON_HEADS,
      ...[cordon(1, "left", "A", 7), cordon(1, "right", "B", 7)],
      ...[cordon(2, "left", "A", 6), cordon(2, "left", "B", 6), cordon(2, "right", "C", 6)],
      ...[cordon(3, "left", "A", "eight or so"), cordon(3, "right", "B", 7)],
      ...[cordon(4, "left", "A", null), cordon(4, "right", "B", null)],
    ]),
  ]);
  const vines = [...decideSeason(season)];
  const stands = seasonStands(
    season,
    vines,
    [],
    { cards: [], work: workPlan(season, new Map()) },
    () => false,
  );
  expect(openOnCards(stands.blocks)).toMatchObject({ asked: 2, recount: 1, uncounted: 1 });
  expect(countVines(vines).ask).toBe(2);
  expect(vinesToShow(vines, "ask", "").map(({ vine }) => vine)).toEqual([2, 3]);
});
