import { acceptedHeaders } from "../../../src/survey/sheets/column";
import { SHEETS } from "../../../src/survey/sheets/sheets";
import { LANGUAGES } from "../../../src/texts/language";

describe.each(Object.values(SHEETS))("shape of the sheet $id", (sheet) => {
  test("no header is accepted for two columns", () => {
    const owners = new Map<string, string>();
    for (const column of sheet.columns)
      for (const header of new Set(acceptedHeaders(column))) {
        expect([header, owners.get(header) ?? column.id]).toEqual([header, column.id]);
        owners.set(header, column.id);
      }
  });

  test("every choice word means one choice only", () => {
    for (const column of sheet.columns) {
      const owners = new Map<string, string>();
      for (const choice of column.choices ?? [])
        for (const word of new Set([
          choice.id,
          ...LANGUAGES.map((l) => choice.word[l]),
          ...(choice.also ?? []),
        ])) {
          const key = word.toLowerCase();
          expect([column.id, key, owners.get(key) ?? choice.id]).toEqual([column.id, key, choice.id]);
          owners.set(key, choice.id);
        }
    }
  });
});
