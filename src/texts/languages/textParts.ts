/**
 * What a page of the add-in fetches of a language's texts, in this order: words by which sheets and columns of any
 * language are known (those of every language), what functions say, and what only the pane says.
 */
export type TextPart = "words" | "functions" | "pages";

const WORDS = [
  "language",
  "excelPage",
  "heads",
  "sheets",
  "settings.choice.directions",
  "gapPivot.countsSheet",
  "gapPivot.pivotSheet",
  "runLog",
  "season",
  "countPlan.sheet",
  "resultSheets.choice",
  "resultSheets.cards",
  "pane.findingsSheet.sheet",
  "pane.outlookSheet.sheet",
  "pane.gapSheet.rowGaps",
  "pane.gapSheet.gapMap",
];

const SAID_BY_FUNCTIONS = [
  "choice",
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
];

/** Beside what functions say, under the same keys, but never said by one. */
const BESIDE =
  /^(settings\.|sheets\..*\.(help|rowIs)$|functions\..*\.description$|findings\..*\.(title|why|remedy)$)/;

const isIn = (areas: readonly string[], at: string) =>
  areas.some((area) => at === area || at.startsWith(`${area}.`));

function partOf(at: string): TextPart {
  if (isIn(WORDS, at) && (!BESIDE.test(at) || at.startsWith("settings."))) return "words";
  return isIn(SAID_BY_FUNCTIONS, at) && !BESIDE.test(at) ? "functions" : "pages";
}

/**
 * One part of a language's texts, under their keys. Texts beside those of the functions stand there as "", so that
 * their keys are known before the texts are fetched.
 *
 * @example
 * textPart({ heads: { block: "Block" }, cards: { title: "Cards" } }, "words") // { heads: { block: "Block" } }
 */
export function textPart(texts: object, part: TextPart, above = ""): object {
  const kept = Object.entries(texts).flatMap(([key, below]: [string, unknown]) => {
    const at = above + key;
    if (typeof below !== "string") {
      const inside = textPart(below as object, part, `${at}.`);
      return Object.keys(inside).length === 0 ? [] : [[key, inside] as const];
    }
    if (partOf(at) === part) return [[key, below] as const];
    return part === "functions" && isIn(SAID_BY_FUNCTIONS, at) && BESIDE.test(at) && partOf(at) === "pages"
      ? [[key, ""] as const]
      : [];
  });
  return Array.isArray(texts)
    ? kept.reduce<unknown[]>((list, [key, below]) => ((list[Number(key)] = below), list), [])
    : Object.fromEntries(kept);
}
