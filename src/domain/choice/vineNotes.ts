import { isYoung, type VineToDecide } from "./candidateCordon";
import { SCORE_PARTS, type ScorePart } from "./choiceRules";
import type { Trunk } from "./trunksOf";
import type { CordonDecision, SideDecision, VineNote } from "./vineDecision";

/**
 * What must be said of the vine as a whole beside the answers for its cordons.
 *
 * @example
 * vineNotes({ candidates: [], liveTrunks: 1 }, [], ["spurs", "stretch", "placing", "soundness", "diameter"], [], []) // [{"code": "oneTrunk", "facts": {"trunk": ""}}]
 */
export function vineNotes(
  vine: VineToDecide,
  trunks: readonly Trunk[],
  inUse: readonly ScorePart[],
  sides: readonly SideDecision[],
  cordons: readonly CordonDecision[],
): VineNote[] {
  const notes: VineNote[] = [];
  const note = (code: VineNote["code"], facts: VineNote["facts"] = {}) => notes.push({ code, facts });
  const live = trunks.filter((trunk) => trunk.live);
  const everyTrunkKnown = vine.candidates.every(({ trunk }) => trunk !== undefined);
  const liveTrunks = vine.liveTrunks ?? (everyTrunkKnown ? live.length : undefined);

  if (isYoung(vine) && vine.yearOfGrowth === undefined) note("vineYoung");
  if (liveTrunks === 0) note("noLiveTrunk");
  else if (liveTrunks === 1) {
    if (!isYoung(vine)) note("oneTrunk", { trunk: live[0]?.number ?? "" });
  } else if (onOneTrunk(vine, sides)) note("bothOnOneTrunk", { trunk: onOneTrunk(vine, sides) ?? "" });
  if (live.length > 0 && live.length >= (liveTrunks ?? 0) && live.every(isHurt))
    note("everyTrunkHurt", { trunks: live.map(({ number }) => number) });

  const countedDirection = vine.candidates.some(
    ({ spursDown, spursLevel, spursUp }) => (spursDown ?? spursLevel ?? spursUp) !== undefined,
  );
  if (vine.training === undefined && countedDirection) note("trainingMissing");
  const leftOut = SCORE_PARTS.filter((part) => !inUse.includes(part));
  if (leftOut.length > 0) note("leftOut", { parts: leftOut });
  for (const { side } of sides) {
    const fixed = cordons.filter(
      (cordon) => cordon.side === side && cordon.reason.code.startsWith("fixedStays"),
    );
    if (fixed.length > 1) note("fixedTwice", { side, cordons: fixed.map(({ cordon }) => cordon) });
  }
  return notes;
}

function isHurt({ condition }: Trunk): boolean {
  return condition === "injured" || condition === "diseased";
}

/** The trunk that every side hangs on, where that is one and there are two sides. */
function onOneTrunk(vine: VineToDecide, sides: readonly SideDecision[]): number | undefined {
  if (sides.length < 2) return undefined;
  const trunks = sides.map(
    ({ side, cordon }) =>
      vine.candidates.find((candidate) => candidate.side === side && candidate.cordon === cordon)?.trunk,
  );
  return trunks.every((trunk) => trunk !== undefined && trunk === trunks[0]) ? trunks[0] : undefined;
}
