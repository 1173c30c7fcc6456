import { keptEntries, keptValue, listOf } from "../../../src/survey/reading/keptEntries";

const ENTRY = listOf<[string, number]>("string", "number");

describe("what a workbook keeps is never trusted", () => {
  test.each([
    ["nothing kept", undefined, []],
    ["no JSON", '[["a",1]', []],
    ["no list", '{"a":1}', []],
    [
      "entries of another shape are left out",
      '[["a",1],["b"],null,["c","2"],["d",4]]',
      [
        ["a", 1],
        ["d", 4],
      ],
    ],
  ])("%s", (_why, text, expected) => {
    expect(keptEntries(text, ENTRY)).toEqual(expected);
  });

  test("a single value fits its shape or is not kept", () => {
    expect(keptValue('["a",1]', ENTRY)).toEqual(["a", 1]);
    expect(keptValue('["a"]', ENTRY)).toBeUndefined();
    expect(keptValue("", ENTRY)).toBeUndefined();
  });
});
