import { positionsOutOfOrder } from "../../../src/survey/season/inOrder";
import { stretch } from "../../../src/survey/season/stretch";

test.each<[string, readonly number[], boolean, number[]]>([
  ["two numbers are always in order", [2, 1], true, []],
  ["numbers that rise", [1, 2, 4, 9], true, []],
  ["numbers that fall", [9, 4, 2, 1], true, []],
  ["one slip upwards", [1, 2, 9, 3, 4], true, [2]],
  ["one slip downwards", [5, 6, 1, 7, 8], true, [2]],
  ["a slip in a walk down the row", [9, 8, 1, 7, 6], true, [2]],
  ["the first and the last out of place", [9, 1, 2, 3, 0], true, [0, 4]],
  ["the same number again, where each stands once", [1, 2, 2, 3], true, [1]],
  ["the same number again, where it may come again", [1, 2, 2, 3], false, []],
  ["the same number again on the way down", [3, 2, 2, 1], false, []],
  ["and on the way down where each stands once", [3, 2, 2, 1], true, [1]],
  ["a slip between numbers that come again", [1, 1, 5, 2, 2], false, [2]],
  ["as many rise as fall: those that rise stand", [2, 1, 2], true, [0]],
])("%s", (_, numbers, strictly, expected) => {
  expect(positionsOutOfOrder(numbers, strictly)).toEqual(expected);
});

test("a stretch ends where another number comes, or the list does", () => {
  const values = [7, 7, 7, 3, 7];
  expect(values.map((_, at) => stretch(values, at))).toEqual([3, 2, 1, 1, 1]);
  expect(stretch([4, 4], 0)).toBe(2);
});
