import { wrappedHeight } from "../../../src/workbook/desk/wrappedHeight";

describe("the height of a row whose texts wrap", () => {
  const height = (text: unknown, width?: number, bold?: boolean) => wrappedHeight([{ text, width, bold }]);

  test.each([
    ["short", 20],
    ["", 20],
    [12345678901234, 4],
    [null, 4],
  ])("%p needs no height of its own", (text, width) => {
    expect(height(text, width)).toBeUndefined();
  });

  test("grows by one line for each that is needed, breaking between words", () => {
    const two = height("left cordon", 8)!;
    const three = height("left cordon stays", 8)!;
    const four = height("left cordon stays here", 8)!;
    expect(three - two).toBe(four - three);
    expect(two).toBeGreaterThan(24);
  });

  test("breaks a word that is wider than its line, and where the text itself breaks", () => {
    expect(height("Schoolhouse", 6)).toBe(height("a b", 2));
    expect(height("a\nb", 20)).toBe(height("a b", 2));
  });

  test("bold letters take more room", () => {
    expect(height("Cordons in row", 15.5)).toBeUndefined();
    expect(height("Cordons in row", 15.5, true)).toBeDefined();
  });

  test("the cell that needs most decides", () => {
    const [low, high] = ["left cordon", "left cordon stays here"].map((text) => ({ text, width: 8 }));
    expect(wrappedHeight([low, high])).toBe(wrappedHeight([high]));
  });
});
