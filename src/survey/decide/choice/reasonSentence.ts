import type { Argument, CaneOrigin, CordonDecision, QuestionSide } from "../../../domain/choice/vineDecision";
import type { Facts } from "../../../domain/refusal";
import type { UnitSystem } from "../../../domain/units";
import {
  AND,
  ARGUMENTS,
  AT_SIDE,
  CANE_ORIGINS,
  CONDITION_WORDS,
  COUNT_OF,
  COUNT_WORDS,
  REASONS,
  WEAK_POINTS,
} from "../../../texts/choice";
import { say, type Language } from "../../../texts/language";
import { lengthWords } from "./lengthWords";

/** An argument is told when it weighs at least this share of the strongest one on its side. */
const TOLD_SHARE = 0.25;
const MOST_TOLD = 2;

/**
 * Why a cordon stays, goes or is asked about, as a crew leader would say it.
 *
 * @example
 * reasonSentence({ side: "left", cordon: "A", verdict: "goes", reason: { code: "dead", mine: [], theirs: [], facts: {} } }, "en", "US") // "Cut A on the left: it is dead."
 */
export function reasonSentence(
  decision: Pick<CordonDecision, "side" | "cordon" | "verdict" | "reason">,
  language: Language,
  unitSystem: UnitSystem,
): string {
  const { side, cordon, reason } = decision;
  if (reason.question) return questionSentence(reason.question, language, unitSystem);
  const rival = reason.rival ?? "";
  const told = (list: readonly Argument[], own: string, other: string) =>
    argumentWords(list, own, other, language, unitSystem);
  const sentence = say(REASONS[textKey(decision)], language, {
    cordon,
    rival,
    at: sideWords(side, language),
    mine: told(reason.mine, cordon, rival),
    theirs: told(reason.theirs, rival, cordon),
    trunk: String(reason.facts.trunk ?? ""),
    length:
      typeof reason.facts.length === "number" ? lengthWords(reason.facts.length, language, unitSystem) : "",
    cells: String(reason.facts.cells ?? ""),
    spurs: String(reason.facts.spurs ?? ""),
    gap: String(reason.facts.gap ?? ""),
    missing: missingWords(reason.facts.missing, language),
    from: reason.facts.from === undefined ? "" : caneOriginWords(reason.facts.from as CaneOrigin, language),
    weak: reason.facts.weak === undefined ? "" : weakWords(reason.facts, language, unitSystem),
  });
  const { mineWith, theirsWith } = reason.facts;
  return mineWith === undefined || theirsWith === undefined
    ? sentence
    : `${sentence} ${say(REASONS.goTogether, language, { cordon, rival, mineWith, theirsWith })}`;
}

/** The one question of a vine on which both sides are asked about, with the arguments of both sides. */
function questionSentence(
  sides: readonly QuestionSide[],
  language: Language,
  unitSystem: UnitSystem,
): string {
  const pair = ({ side, cordon, rival, facts }: QuestionSide) =>
    say(REASONS[rival === undefined ? "questionCane" : "questionPair"], language, {
      cordon,
      rival: rival ?? "",
      at: sideWords(side, language),
      weak: facts.weak === undefined ? "" : weakWords(facts, language, unitSystem),
    });
  const speaksFor = (list: readonly Argument[], cordon: string, other: string) =>
    list.length === 0
      ? []
      : [
          say(REASONS.questionFor, language, {
            cordon,
            mine: argumentWords(list, cordon, other, language, unitSystem),
          }),
        ];
  const sentences = sides.flatMap(({ cordon, rival = "", mine, theirs }) => [
    ...speaksFor(mine, cordon, rival),
    ...speaksFor(theirs, rival, cordon),
  ]);
  const { cordon, rival, facts } = sides[0];
  const together =
    facts.mineWith === undefined || facts.theirsWith === undefined
      ? []
      : [
          say(REASONS.goTogether, language, {
            cordon,
            rival: rival ?? "",
            mineWith: facts.mineWith,
            theirsWith: facts.theirsWith,
          }),
        ];
  const after = (list: readonly string[]) => list.map((sentence) => ` ${sentence}`).join("");
  return say(REASONS.question, language, {
    pairs: sides.map(pair).join(AND[language]),
    together: after(together),
    arguments: after(sentences),
  });
}

/** "on the left", in the language. */
export function sideWords(side: string, language: Language): string {
  return AT_SIDE[side]?.[language] ?? side;
}

/** "from trunk 2", in the language. */
export function caneOriginWords(from: CaneOrigin, language: Language): string {
  return typeof from === "number"
    ? say(CANE_ORIGINS.trunk, language, { trunk: from })
    : CANE_ORIGINS[from][language];
}

function textKey({ reason }: Pick<CordonDecision, "reason">): string {
  const { code, facts } = reason;
  if (code === "onlyOne" && facts.spurs !== undefined)
    return facts.gap === undefined ? "onlyOneSpurs" : "onlyOneCounted";
  if (code === "better" && reason.theirs.length > 0) return "betterDespite";
  if (code === "worse" && reason.mine.length > 0) return "worseDespite";
  if (code === "missingCounts" && reason.rival === undefined) return "missingCountsAlone";
  if (code === "closeCall" && reason.rival !== undefined) {
    if (reason.mine.length === 0) return reason.theirs.length === 0 ? "tie" : "closeCallForTheirs";
    return reason.theirs.length === 0 ? "closeCallForMine" : code;
  }
  if (code === "notWorthKeeping" && Number(reason.facts.gain) > 0) return "notWorthKeepingOwnTrunk";
  return code;
}

function argumentWords(
  list: readonly Argument[],
  own: string,
  other: string,
  language: Language,
  unitSystem: UnitSystem,
): string {
  if (list.length === 0) return ARGUMENTS.nothing[language];
  return list
    .filter(({ weight }, index) => index < MOST_TOLD && weight >= TOLD_SHARE * list[0].weight)
    .map(({ code, facts }) => argumentSentence(code, facts, own, other, language, unitSystem))
    .join(AND[language]);
}

function argumentSentence(
  code: Argument["code"],
  facts: Facts,
  own: string,
  other: string,
  language: Language,
  unitSystem: UnitSystem,
): string {
  const length = (value: Facts[string] | undefined) =>
    typeof value === "number" ? lengthWords(value, language, unitSystem) : "";
  const condition = (value: Facts[string] | undefined) => CONDITION_WORDS[String(value ?? "")][language];
  if (code === "soundness" || code === "trunkCondition")
    return say(ARGUMENTS[code === "soundness" ? code : trunkKey(facts)], language, {
      ...facts,
      own,
      other,
      mine: condition(facts.mine),
      theirs: condition(facts.theirs),
    });
  return say(ARGUMENTS[argumentKey(code, facts)], language, {
    ...facts,
    ...(code === "diameter" ? { mine: length(facts.mine), theirs: length(facts.theirs) } : {}),
    mineLength: length(facts.mineLength),
    theirsLength: length(facts.theirsLength),
    wire: length(facts.wire),
    own,
    other,
  });
}

function trunkKey(facts: Facts): string {
  return facts.trunk === "" || facts.otherTrunk === "" ? "sameTrunkHurt" : "trunkCondition";
}

function argumentKey(code: Argument["code"], facts: Facts): string {
  if (code === "spurs" && facts.wire !== undefined) return "spursBeyondWire";
  if (code === "spurs") return Number(facts.mine) > Number(facts.theirs) ? "spurs" : "spursForLength";
  if (code === "stretch") return facts.mine === 0 ? "noStretch" : "stretch";
  if (code === "ownTrunk" && facts.besideCane && facts.trunk !== "") return "ownTrunkBesideCane";
  if (code === "ownTrunk") return facts.trunk === "" || facts.shared === "" ? "trunkUnknown" : "ownTrunk";
  if (code !== "placing") return code;
  if (!(Number(facts.mine) / Number(facts.mineOf) > Number(facts.theirs) / Number(facts.theirsOf)))
    return "placing";
  return facts.points === "up" ? "placingUp" : "placingDown";
}

function weakWords(facts: Facts, language: Language, unitSystem: UnitSystem): string {
  const length = (value: Facts[string] | undefined) =>
    typeof value === "number" ? lengthWords(value, language, unitSystem) : "";
  return say(WEAK_POINTS[String(facts.weak)], language, {
    ...facts,
    diameter: length(facts.diameter),
    fullDiameter: length(facts.fullDiameter),
    condition: CONDITION_WORDS[String(facts.condition)][language],
    trunkCondition: CONDITION_WORDS[String(facts.trunkCondition)][language],
  });
}

/** "longest gap of A, trunk of B" */
function missingWords(missing: Facts[string] | undefined, language: Language): string {
  if (!Array.isArray(missing)) return "";
  return missing
    .map(String)
    .map((entry) => {
      const space = entry.indexOf(" ");
      const count = COUNT_WORDS[entry.slice(0, space)][language];
      return say(COUNT_OF, language, { count, cordon: entry.slice(space + 1) });
    })
    .join(", ");
}

/**
 * The strongest argument against a cordon: what speaks most for its rival, in the words of a sentence; undefined where no
 * count speaks for one.
 *
 * @example
 * strongestAgainst({ cordon: "A", reason: { code: "better", rival: "B", mine: [], theirs: [{ code: "spurs", weight: 0.1, facts: { mine: 9, theirs: 8 } }], facts: {} } }, "en", "US") // "9 live spurs against 8"
 */
export function strongestAgainst(
  { cordon, reason }: Pick<CordonDecision, "cordon" | "reason">,
  language: Language,
  unitSystem: UnitSystem,
): string | undefined {
  const [strongest] = reason.theirs;
  if (strongest === undefined || reason.rival === undefined) return undefined;
  return argumentSentence(strongest.code, strongest.facts, reason.rival, cordon, language, unitSystem);
}
