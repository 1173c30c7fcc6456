import { threeDigits } from "../../crop/cropWords";
import { say, type Language } from "../../../texts/language";
import { NODES_TEXTS } from "../../../texts/pane";
import { REFUSALS } from "../../../texts/refusals";
import type { InjuredBlock, NodesOrRefusal } from "./injuryOfBlocks";

/** Both budgets of a block whose dead buds may lie on either side of its rule's edge. */
export function straddleSentence(
  { injuryRule, straddle }: Pick<InjuredBlock, "injuryRule" | "straddle">,
  language: Language,
): string | undefined {
  if (!straddle) return undefined;
  const percent = new Intl.NumberFormat(language, { style: "percent" });
  const nodes = ({ nodes, refusal }: NodesOrRefusal) =>
    nodes === undefined
      ? `${say(NODES_TEXTS.noAnswer, language)} (${refusal ? say(REFUSALS[refusal.code], language, refusal.facts) : ""})`
      : say(NODES_TEXTS.someNodes, language, { nodes: threeDigits(nodes, language) });
  return say(NODES_TEXTS.straddle, language, {
    edges: new Intl.ListFormat(language).format(straddle.edges.map((edge) => percent.format(edge))),
    injuryRule,
    low: nodes(straddle.low),
    high: nodes(straddle.high),
  });
}

/** To look at canes and trunks before a budget is set, where more than half of the primaries are dead. */
export function overHalfSentence(blocks: readonly string[], language: Language): string | undefined {
  return blocks.length === 0 ? undefined : say(NODES_TEXTS.overHalf, language, { blocks });
}
