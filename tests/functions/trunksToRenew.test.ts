import { callFunction, isRefused } from "../../src/functions/callFunction";
import type { RawArgument } from "../../src/functions/readArgument";
import { functionNamed } from "../../src/functions/registry";

const call = (name: string, args: readonly RawArgument[]) => callFunction(functionNamed(name)!, args);
const cells = (name: string, args: readonly RawArgument[]) => {
  const outcome = call(name, args);
  if (isRefused(outcome)) throw new Error(outcome.sentence);
  return outcome.values;
};

const HEAD = ["Block", "Row", "Vine", "Side", "Cordon", "Trunk", "Length (in)", "Live spurs", "Longest gap"];
describe("CORDON.TRUNKSTORENEW on a table", () => {
  const vines = [
    ["Block", "Row", "Vine", "Status", "Live trunks"],
    ["North Bench", 1, 1, "bearing", 2],
    ["North Bench", 1, 2, "bearing", 1],
    ["North Bench", 1, 3, "bearing", 0],
    ["North Bench", 1, 4, "missing", 0],
    ["North Bench", 1, 5, "bearing", ""],
    ["North Bench", 1, 6, "bearing", 2],
  ];
  const cordons = [
    [...HEAD, "Trunk condition"],
    ["North Bench", 1, 2, "left", "A", 1, 40, 8, 1, "injured"],
    ["North Bench", 1, 6, "left", "A", 1, 40, 8, 1, "sound"],
    ["North Bench", 1, 6, "right", "B", 2, 40, 8, 1, "diseased"],
  ];

  test("most urgent first; missing vines are passed over, uncounted ones named", () => {
    expect(cells("TRUNKSTORENEW", [vines, null, cordons]).slice(1)).toEqual([
      [
        1,
        "North Bench",
        1,
        3,
        0,
        2,
        "No trunk lives: keep about five suckers, none thicker than a little finger, and train one.",
      ],
      [
        2,
        "North Bench",
        1,
        2,
        1,
        2,
        "The only live trunk is hurt: bring up 2 from suckers before it is lost.",
      ],
      [
        3,
        "North Bench",
        1,
        6,
        2,
        1,
        "Live trunks: 2; hurt: trunk 2. Bring up 1 and take the hurt one out once the new one stands.",
      ],
      ["", "", "", "", "", "", "Vines whose live trunks were not counted: 1."],
    ]);
  });

  test("a table without live trunks is refused by the name of the column", () => {
    const refused = call("TRUNKSTORENEW", [vines.map((row) => row.slice(0, 4))]);
    expect(refused).toMatchObject({ error: "#VALUE!", code: "noSuchColumn" });
    expect(isRefused(refused) && refused.sentence).toContain("Live trunks");
  });
});
