/**
 * What a page of the add-in fetches of a language's texts, in this order: words by which sheets and columns of any
 * language are known (those of every language), what functions say, what the pane says until another page than the
 * first is opened, and the rest.
 */
export type TextPart = "words" | "functions" | "firstPage" | "pages";

interface Areas {
  readonly areas: readonly string[];
  /** Texts of those areas that are not said yet: only their keys are there. */
  readonly later?: RegExp;
}

const PARTS: Readonly<Record<Exclude<TextPart, "pages">, Areas>> = {
  words: {
    areas: [
      "language",
      "excelPage",
      "excelReport.sheet",
      "heads",
      "sheets",
      "settings.choice.directions",
      "outlook.cropLoadRanges",
      "settingNames",
      "gapPivot.countsSheet",
      "gapPivot.pivotSheet",
      "reading.answers",
      "reading.kinds",
      "runLog",
      "season",
      "countPlan.sheet",
      "resultSheets.choice",
      "resultSheets.cards",
      "pane.findingsSheet.sheet",
      "pane.outlookSheet.sheet",
      "pane.gapSheet.rowGaps",
      "pane.gapSheet.gapMap",
    ],
    later: /^sheets\..*\.(help|rowIs)$/,
  },
  functions: {
    areas: [
      "choice",
      "crops",
      "findings",
      "functions",
      "lengths",
      "outlook",
      "outlookRefusals",
      "refusals",
      "renewal",
      "settings",
      "sheets",
      "usedRows",
    ],
    later:
      /^(settings\.|sheets\..*\.(help|rowIs)$|functions\..*\.description$|findings\..*\.(title|why|remedy)$)/,
  },
  firstPage: {
    areas: ["pane", "workbook", "excelProblems", "seasonPage"],
    later:
      /^(pane\.(?!(pageNames|age|everyPage|check|typing|walk|walkSteps)\b)|seasonPage\.(?!(title|reading)$))/,
  },
};

/** Said on the command line and by the servers only. */
const NEVER_IN_EXCEL = ["commandLine", "addinServer", "desk", "deskServer"];

const isIn = (areas: readonly string[], at: string) =>
  areas.some((area) => at === area || at.startsWith(`${area}.`));

function partOf(at: string): TextPart | undefined {
  for (const [part, { areas, later }] of Object.entries(PARTS))
    if (isIn(areas, at) && !later?.test(at)) return part as TextPart;
  return isIn(NEVER_IN_EXCEL, at) ? undefined : "pages";
}

/**
 * One part of a language's texts, under their keys. A text that is fetched later stands there as "", so that its key is
 * known before.
 *
 * @example
 * textPart({ heads: { block: "Block" }, cards: { title: "Cards" } }, "words") // { heads: { block: "Block" } }
 */
export function textPart(texts: object, part: TextPart, above = ""): object {
  const kept = Object.entries(texts).flatMap(([key, below]: [string, unknown]): [string, unknown][] => {
    const at = above + key;
    if (typeof below !== "string") {
      const inside = textPart(below as object, part, `${at}.`);
      return Object.keys(inside).length === 0 ? [] : [[key, inside]];
    }
    const own = partOf(at);
    if (own === part) return [[key, below]];
    return own === "words" || part === "pages" || !isIn(PARTS[part].areas, at) ? [] : [[key, ""]];
  });
  return Array.isArray(texts)
    ? kept.reduce<unknown[]>((list, [key, below]) => ((list[Number(key)] = below), list), [])
    : Object.fromEntries(kept);
}
