import { say, type Language } from "../../texts/language";
import {
  CROP_LOAD_PAIRS,
  CROP_LOAD_RANGE_NAMES,
  CROP_LOAD_UNSURE,
  CROP_LOAD_VERDICTS,
  FROST_COUNTED,
  OTHER_SECONDARIES,
  YOUNG_BLOCK,
} from "../../texts/outlook";
import { overHalfSentence, straddleSentence } from "../decide/plan/injurySentences";
import { SHOOT_THINNING } from "../../texts/blockFigures";
import { blockFigureSentence } from "./blockFigureSentence";
import type { BlockOutlook, CropLoadOfPair, YoungLimit } from "./blockOutlook";
import { threeDigits } from "./cropWords";
import type { BlockOutlookInputs } from "./outlookInputs";

/**
 * What must be known beside a block's winter crop: the most that a young block may carry, that canes and trunks come first where more than half of the primaries
 * are dead, both budgets where the injury straddles an edge of its rule, both crops where secondaries can be read two ways.
 */
export function winterNotes(outlook: BlockOutlook, language: Language): string[] {
  const { injured, block, frost } = outlook.inputs;
  const winter = outlook.stages.find(({ stage }) => stage === "winter");
  const digits = (value: number) => threeDigits(value, language);
  return [
    outlook.young && youngSentence(outlook.young, language),
    frost &&
      say(FROST_COUNTED, language, {
        nodes: frost.nodes,
        primaries: frost.primaries,
        secondaries: frost.secondaries,
        worth: digits(frost.secondaryWorth),
        share: new Intl.NumberFormat(language, { style: "percent" }).format(frost.share),
      }),
    injured && overHalfSentence(injured.injury.share > 0.5 ? [block] : [], language),
    injured && straddleSentence(injured, language),
    outlook.otherSecondaries &&
      winter &&
      say(OTHER_SECONDARIES, language, {
        other: digits(outlook.otherSecondaries.clusters.likely),
        clusters: digits(winter.clusters.likely),
      }),
  ].filter((sentence) => sentence !== undefined);
}

/** Figures of a block that its crop is worked out with. */
const CROP_FIGURES = ["secondaryWorth", "basalShoots", "nodesASpur", "clustersPerShoot", "budbreak"] as const;

/** Shoots to thin a vine to, with the hours of one person; undefined where shoots were not counted. */
export function shootThinningSentence(
  { inputs: { shootThinning } }: { readonly inputs: Pick<BlockOutlookInputs, "shootThinning"> },
  language: Language,
): string | undefined {
  if (!shootThinning) return undefined;
  const { keep, counted, remove, hours } = shootThinning;
  const digits = (value: number) => threeDigits(value, language);
  return say(remove > 0 ? SHOOT_THINNING.thin : SHOOT_THINNING.none, language, {
    keep: digits(keep),
    counted: digits(counted),
    remove: digits(remove),
    hours: digits(hours),
  });
}

/** The figures that a block's crop is worked out with, and where each is from. */
export function cropFigureSentence({ inputs: { figures } }: BlockOutlook, language: Language): string {
  const basal = figures.basalShoots.value > 0 ? (["basalWorth"] as const) : [];
  return blockFigureSentence(figures, [...CROP_FIGURES, ...basal], language);
}

/** Which crop over which prunings, and where that lies against the range of Settings. */
export function cropLoadSentence(pair: CropLoadOfPair, language: Language): string {
  const one = (value: number) => new Intl.NumberFormat(language, { maximumFractionDigits: 1 }).format(value);
  const facts = {
    load: one(pair.load.likely),
    low: one(pair.limits.low),
    high: one(pair.limits.high),
    range: say(CROP_LOAD_RANGE_NAMES[pair.range], language),
  };
  return [
    say(CROP_LOAD_PAIRS[pair.pair], language, { year: String(pair.year) }),
    say(CROP_LOAD_VERDICTS[pair.verdict], language, facts),
    ...(pair.sure ? [] : [say(CROP_LOAD_UNSURE, language)]),
  ].join(" ");
}

/** Most clusters on a vine of a young block, by Settings, and what it carries where that can be told. */
function youngSentence({ leaf, clusters, likely }: YoungLimit, language: Language): string {
  return likely === undefined
    ? say(YOUNG_BLOCK.bare, language, { leaf, clusters })
    : say(YOUNG_BLOCK.carries, language, { leaf, clusters, likely: threeDigits(likely, language) });
}
