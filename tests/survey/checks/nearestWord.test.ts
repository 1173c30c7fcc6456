import { nearestWord } from "../../../src/survey/checks/nearestWord";

describe("the word that was meant", () => {
  test.each<[string, string[], string | undefined]>([
    ["North Bnech", ["North Bench", "Creek Side"], "North Bench"],
    ["north bench", ["North Bench"], "North Bench"],
    // A third of six letters are two, one letter is always forgiven.
    ["Crkk", ["Creek "], "Creek "],
    ["abcdef", ["abcdxy"], "abcdxy"],
    ["abcdef", ["abcxyz"], undefined],
    ["ax", ["ab"], "ab"],
    ["xy", ["ab"], undefined],
    ["x", [], undefined],
    // Two that are equally near.
    ["Hill C", ["Hill A", "Hill B"], undefined],
    ["Hill A", ["Hill A", "Hill B"], "Hill A"],
  ])("%p among %j is %p", (word, names, expected) => {
    expect(nearestWord(word, names)).toBe(expected);
  });

  test.each<[string, string[], string | undefined]>([
    ["NB", ["North Bench", "Creek Side"], "North Bench"],
    ["n b", ["North Bench"], undefined],
    ["nlb", ["North Lower-Bench", "Creek Side"], "North Lower-Bench"],
    ["nb", ["North  Bench"], "North  Bench"],
    // Two blocks with these initials.
    ["NB", ["North Bench", "New Block"], undefined],
    // One word has no initials.
    ["N", ["Northern"], undefined],
    ["NO", ["N O", "NP"], "N O"],
    ["c", [" Creek"], undefined],
  ])("initials %p among %j are %p", (word, names, expected) => {
    expect(nearestWord(word, names)).toBe(expected);
  });
});
