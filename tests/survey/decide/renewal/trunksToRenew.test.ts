import { decideSeason } from "../../../../src/survey/decide/decideSeason";
import { trunksToRenew } from "../../../../src/survey/decide/renewal/trunksToRenew";
import { countVines } from "../../../../src/taskpane/decide/decideState";
import { inventedSeason, seasonOfSheets } from "../cards/season";

test.each([1, 2, 3])(
  "with %d trunks wanted the list of vines and the list of trunks name the same vines",
  (wanted) => {
    const season = seasonOfSheets(inventedSeason(), [["Trunks wanted on a vine", wanted]]);
    const vines = [...decideSeason(season)];
    const nameOf = ({ block, row, vine }: { block: string; row: number; vine: number }) =>
      `${block} ${row} ${vine}`;
    const decided = new Set(vines.map(nameOf));
    const toRenew = trunksToRenew(season)
      .vines.map(nameOf)
      .filter((name) => decided.has(name));
    expect(
      vines
        .filter(({ renewsTrunk }) => renewsTrunk)
        .map(nameOf)
        .sort(),
    ).toEqual(toRenew.sort());
    expect(countVines(vines).trunks).toBe(toRenew.length);
    expect(toRenew.length).toBeGreaterThan(20);
  },
);
