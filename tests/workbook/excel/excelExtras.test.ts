import { ABILITY_TEXTS, SELF_TEST } from "../../../src/texts/selfTest";
import { excelFile, type OfficeDocument } from "../../../src/workbook/excel/excelFile";
import { missingFromFloor } from "../../../src/workbook/excel/excelFloor";
import {
  setStartsAtOpening,
  startsAtOpening,
  type StartupBehavior,
} from "../../../src/workbook/excel/openingWithAddin";
import { ABILITIES, askFunctions, supportedAbilities } from "../../../src/workbook/excel/excelAbilities";
import type { HostValue } from "../office/hostBook";
import { hostWith } from "../office/excelWorkbookOn";

const excelApi = (most: number) => (set: string, version: string) =>
  set !== "ExcelApi" || Number(version.split(".")[1]) <= most;

describe("what this copy of Excel supports", () => {
  test("every ability has its sentence", () => {
    expect(Object.keys(ABILITY_TEXTS)).toEqual(ABILITIES.map(({ id }) => id));
  });

  test("at the floor only what the add-in can do without is missing", () => {
    const lines = supportedAbilities(excelApi(14));
    expect(lines.filter(({ outcome }) => outcome !== "yes")).toEqual([
      { id: "notes", outcome: "missing", set: "ExcelApi 1.18" },
      { id: "oneUndo", outcome: "missing", set: "ExcelApi 1.20" },
    ]);
    expect(missingFromFloor(excelApi(14))).toEqual([]);
  });

  test("below the floor what is missing is called too old", () => {
    const outcomes = supportedAbilities(excelApi(8)).map(({ id, outcome }) => [id, outcome]);
    expect(outcomes).toContainEqual(["spill", "tooOld"]);
    expect(outcomes).toContainEqual(["pivot", "yes"]);
    expect(missingFromFloor(excelApi(8))).toEqual(["ExcelApi 1.14"]);
  });
});

describe("whether the functions calculate", () => {
  const noPause = () => Promise.resolve();

  async function ask(...shows: HostValue[]) {
    const host = hostWith({ Cordons: [["Block"]] });
    const before = JSON.stringify(host.book.snapshot());
    host.book.calculate = () => shows[0];
    const { excel } = host.person();
    const answer = await askFunctions(
      (batch) => excel.run(batch),
      "0.1.0",
      async () => {
        const next = shows.length > 1 ? shows.splice(0, 1) && shows[0] : shows[0];
        for (const sheet of host.book.sheets)
          if (sheet.cell(0, 0).formula) sheet.put(0, 0, { ...sheet.cell(0, 0), value: next });
        await noPause();
      },
    );
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
    expect(SELF_TEST).toHaveProperty(answer.state);
    return answer;
  }

  test.each([
    [["0.1.0"], "answers"],
    [["#BUSY!", "#BUSY!", "0.1.0"], "answers"],
    [["0.0.9"], "otherVersion"],
    [["#NAME?"], "unknown"],
    [["#BUSY!"], "waiting"],
    [["#VALUE!"], "error"],
  ])("a cell that shows %j gives %s, and the question leaves nothing behind", async (shows, state) => {
    expect((await ask(...shows)).state).toBe(state);
  });

  test("a refused question leaves nothing behind either", async () => {
    const host = hostWith({ Cordons: [["Block"]] });
    const before = JSON.stringify(host.book.snapshot());
    host.refuse({ name: "Formulas", code: "GeneralException" });
    const { excel } = host.person();
    await expect(askFunctions((batch) => excel.run(batch), "0.1.0", noPause)).rejects.toMatchObject({
      code: "GeneralException",
    });
    expect(JSON.stringify(host.book.snapshot())).toBe(before);
  });
});

describe("starting at opening", () => {
  test("is off until somebody switches it on, and off again", async () => {
    let behavior = "None";
    const addin: StartupBehavior = {
      getStartupBehavior: async () => behavior as Office.StartupBehavior,
      setStartupBehavior: async (next) => {
        behavior = next;
      },
    };
    expect(await startsAtOpening(addin)).toBe(false);
    await setStartsAtOpening(addin, true);
    expect(await startsAtOpening(addin)).toBe(true);
    await setStartsAtOpening(addin, false);
    expect(await startsAtOpening(addin)).toBe(false);
  });
});

describe("the open workbook as a file", () => {
  function document(slices: number[][], failing = -1): { document: OfficeDocument; closed: () => number } {
    let closed = 0;
    const file = {
      size: slices.flat().length,
      sliceCount: slices.length,
      getSliceAsync: (index: number, callback: (result: unknown) => void) =>
        callback(
          index === failing
            ? { status: "failed", error: { message: "The document changed." } }
            : { status: "succeeded", value: { data: slices[index], size: slices[index].length, index } },
        ),
      closeAsync: () => (closed += 1),
    };
    return {
      document: {
        getFileAsync: ((_type: unknown, _options: unknown, callback: (result: unknown) => void) =>
          callback({ status: "succeeded", value: file })) as OfficeDocument["getFileAsync"],
      },
      closed: () => closed,
    };
  }

  test("is put together from its slices, and closed", async () => {
    const { document: open, closed } = document([[1, 2, 3], [4]]);
    expect([...(await excelFile(open))]).toEqual([1, 2, 3, 4]);
    expect(closed()).toBe(1);
  });

  test("is closed too when a slice fails", async () => {
    const { document: open, closed } = document([[1], [2]], 1);
    await expect(excelFile(open)).rejects.toThrow("The document changed.");
    expect(closed()).toBe(1);
  });
});
