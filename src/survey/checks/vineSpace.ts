import type { Check, CheckContext, FindingKind } from "./check";
import type { Codes, SurveyTable } from "../season/season";
import { sideOfVine } from "../season/sideOfVine";
import { valuesByBlock } from "../season/valuesByBlock";
import { choiceId, neighbourKey, NO_PLACE, placeOf } from "../season/vinePlaces";

const cordonTooLong: FindingKind = { code: "cordonTooLong", severity: "ask", action: "lookAtVine" };
const cordonIntoGap: FindingKind = { code: "cordonIntoGap", severity: "note", action: "lookAtVine" };
const cordonTooShort: FindingKind = { code: "cordonTooShort", severity: "ask", action: "lookAtVine" };
const blockUnlikeSpacing: FindingKind = { code: "blockUnlikeSpacing", severity: "ask", action: "mendSheet" };

/**
 * A cordon far longer or shorter than its side's share of the vine space. A missing vine beside it, or the end of the
 * row, explains a long one and is named. Where a whole block does not fit its spacing that is said once.
 */
export const VINE_SPACE: Check = {
  id: "vineSpace",
  kinds: [cordonTooLong, cordonIntoGap, cordonTooShort, blockUnlikeSpacing],
  sheets: ["cordons"],
  scope: "survey",
  prepare(table, context) {
    const column = table.column("length");
    const blocks = table.column("block")?.codes;
    if (!column || !blocks) return undefined;
    const { places } = context;
    const keys = places.keysOf(table);
    const shares = sharesOf(blocks, context);
    const odd = oddBlocks(table, shares);
    const long = context.season.settings.cordonLengthMostOfItsSpace;
    const short = context.season.settings.cordonLengthLeastOfItsSpace;
    return (from, to, report) => {
      for (let i = from; i < to; i++) {
        const share = shares.get(blocks[i]);
        const length = column.numbers[i];
        if (share === undefined || Number.isNaN(length)) continue;
        const median = odd.get(blocks[i]);
        if (median !== undefined) {
          if (blocks.indexOf(blocks[i]) !== i) continue;
          report(blockUnlikeSpacing, i, column, {
            median: written(median / column.perUnit),
            share: written(share / column.perUnit),
            unit: column.unit?.id ?? "",
          });
          continue;
        }
        if (length > share * long) {
          if (length > (column.column.most ?? Infinity)) continue;
          const facts = {
            value: column.raw.at(i) as number,
            share: written(share / column.perUnit),
            unit: column.unit?.id ?? "",
          };
          const gap = length <= share * 3 * long ? neighbourGap(keys[i], context) : undefined;
          if (gap) report(cordonIntoGap, i, column, { ...facts, gap });
          else report(cordonTooLong, i, column, facts);
        } else if (length < share * short && isGrown(keys[i], context) && isSound(table, i))
          report(cordonTooShort, i, column, {
            value: column.raw.at(i) as number,
            share: written(share / column.perUnit),
            unit: column.unit?.id ?? "",
          });
      }
    };
  },
};

/** Metres of the vine spacing that one side has for itself, by block. */
function sharesOf(blocks: Codes, { places, season }: CheckContext): Map<number, number> {
  const shares = new Map<number, number>();
  for (const block of new Set(blocks)) {
    const { space } = sideOfVine(places, block, season.settings);
    if (space !== undefined) shares.set(block, space);
  }
  return shares;
}

/** Blocks whose middle length is nowhere near the share of the spacing, with that length. */
function oddBlocks(table: SurveyTable, shares: ReadonlyMap<number, number>): Map<number, number> {
  const lengths = table.column("length")!.numbers;
  const odd = new Map<number, number>();
  for (const [block, values] of valuesByBlock(table, (i) => (lengths[i] >= 0 ? lengths[i] : NaN))) {
    const share = shares.get(block);
    if (share === undefined || values.length < 10) continue;
    const median = values.sort()[values.length >> 1];
    if (median > share * 1.6 || median < share * 0.4) odd.set(block, median);
  }
  return odd;
}

/** "missing 15" or "end" when the cordon has more room than its own: a missing neighbour, or the end of the row. */
function neighbourGap(key: number, context: CheckContext): number[] | undefined {
  if (key === NO_PLACE) return undefined;
  const missing = [-1, 1]
    .map((step) => neighbourKey(key, step))
    .filter((neighbour) => context.places.statusOf(neighbour) === "missing")
    .map((neighbour) => placeOf(neighbour).vine);
  return missing.length > 0 ? missing : undefined;
}

function isGrown(key: number, context: CheckContext): boolean {
  const status = key === NO_PLACE ? undefined : context.places.statusOf(key);
  return status === undefined || status === "bearing";
}

/** A cordon that is not called sound may have been cut back; nobody asks about its length. */
function isSound(table: SurveyTable, index: number): boolean {
  const condition = table.column("condition");
  return !condition || choiceId(condition, index) === "sound";
}

function written(length: number): number {
  return Number(length.toPrecision(3));
}
