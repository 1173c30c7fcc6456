import type { CaneOrigin } from "../../../domain/choice/vineDecision";
import { renewalWork } from "../../../domain/renewal/cordonRenewal";
import type { PlannedCane, PlannedCut, PlannedKeep } from "../../../domain/plan/vinePlan";
import type { UnitSystem } from "../../../domain/units";
import { CARD_ORIGINS, CARD_TEXTS, CHANGED_TEXTS, LEGEND_TEXTS, OPEN_TEXTS } from "../../../texts/cards";
import { SIDE_WORDS } from "../../../texts/choice";
import { say, type Language } from "../../../texts/language";
import { youngCardWords } from "../renewal/youngVineSentence";
import { lengthWords } from "../choice/lengthWords";
import type { OpenOnCards } from "../plan/seasonStands";
import type { CardVine, CrewCard } from "./crewCards";

/** Something that is done on one side, in words; `ask` where somebody must look first. */
export interface SideWords {
  readonly side: string;
  readonly words: string;
  readonly ask: boolean;
}

/** One line of a card in words, the same on paper and on the sheet. */
export interface CardLine {
  readonly vine: number;
  readonly keep: readonly SideWords[];
  readonly cut: readonly SideWords[];
  readonly lay: readonly SideWords[];
  readonly nodes: readonly string[];
  readonly notes: readonly string[];
}

/** A card that was handed out and the vines whose lines on it hold no more. */
export interface VoidLines {
  readonly block: string;
  readonly row: number;
  readonly vines: readonly number[];
  /** True where nothing of the card is left. */
  readonly isWhole: boolean;
}

/**
 * The line of a vine in the language of the crew.
 *
 * @example
 * cardLine({ vine: 3, status: "missing", keeps: [], cuts: [], canes: [], trunksToBringUp: 0, deadTrunks: [], notes: [], remarks: [] }, "en", "US").notes // ["missing"]
 */
export function cardLine(vine: CardVine, language: Language, unitSystem: UnitSystem): CardLine {
  return {
    vine: vine.vine,
    keep: vine.keeps.map((keep) => ({ side: keep.side, words: keepWords(keep, language), ask: keep.ask })),
    cut: vine.cuts.map((cut) => ({ side: cut.side, words: cutWords(cut, language), ask: false })),
    lay: vine.canes.map((cane) => ({ side: cane.side, words: layWords(cane, language), ask: cane.ask })),
    nodes: nodeWords(vine, language),
    notes: noteWords(vine, language, unitSystem),
  };
}

/**
 * What the spurs of a block lack against its node budgets, one sentence a block that is short; said once, not on every
 * vine, because the crew can do nothing about it this winter.
 */
export function shortageSentences(
  cards: readonly CrewCard[],
  language: Language,
): ReadonlyMap<string, string> {
  const blocks = new Map<string, { vines: number; all: number; short: number }>();
  for (const { block, vines } of cards)
    for (const { nodes } of vines) {
      if (!nodes) continue;
      const { vines: lacking, all, short } = blocks.get(block) ?? { vines: 0, all: 0, short: 0 };
      const lacks = nodes.short > 0 ? 1 : 0;
      blocks.set(block, { vines: lacking + lacks, all: all + 1, short: short + nodes.short });
    }
  return new Map(
    [...blocks]
      .filter(([, { vines }]) => vines > 0)
      .map(([block, facts]) => [block, say(CARD_TEXTS.shortage, language, { block, ...facts })]),
  );
}

/** What the signs that stand on these vines' lines mean, each with the sign before it. */
export function cardLegend(vines: readonly CardVine[], language: Language): string[] {
  const keeps = vines.flatMap((vine) => vine.keeps);
  const cuts = vines.flatMap((vine) => vine.cuts);
  const nodes = vines.flatMap((vine) => vine.nodes ?? []);
  const namesTrunk = keeps.some(({ ask, trunk }) => !ask && trunk !== undefined);
  const stands: Readonly<Record<keyof typeof LEGEND_TEXTS, boolean>> = {
    keepTrunk: namesTrunk,
    ask: keeps.some(({ ask, against }) => ask && against.length > 0),
    askCane: keeps.some(({ ask, against }) => ask && against.length === 0),
    withTrunk: cuts.some(({ backTo }) => backTo === "trunk"),
    withSpur: cuts.some(({ backTo }) => backTo === "spur"),
    backToCane: cuts.some(({ backTo }) => backTo === "cane"),
    evenSpurs: nodes.some(({ spurs }) => spurs.length === 1),
    spurs: nodes.some(({ spurs }) => spurs.length > 1),
    surplus: nodes.some(({ surplusSpurs }) => surplusSpurs > 0),
    trunk:
      !namesTrunk &&
      vines.some(
        ({ canes, dueTrunks, notes }) =>
          canes.some(({ from }) => typeof from === "number") ||
          (dueTrunks ?? []).length > 0 ||
          notes.some(({ code }) => code === "bothOnOneTrunk"),
      ),
  };
  return Object.entries(LEGEND_TEXTS)
    .filter(([sign]) => stands[sign as keyof typeof stands])
    .map(([, text]) => text[language]);
}

/**
 * What is still open, in one sentence: of one block, or of all that is asked about.
 *
 * @param block "" for every block
 * @example
 * openSentence({ asked: 2, recount: 1, uncounted: 0, wrong: 1, toAccept: 0 }, "en", "North Bench") // "Still open in North Bench: 1 cell that cannot be right; 2 vines to answer for, 1 of them to be counted again."
 */
export function openSentence(open: OpenOnCards, language: Language, block = ""): string {
  const { asked, recount, uncounted, wrong, toAccept } = open;
  const parts: (keyof typeof OPEN_TEXTS.parts)[] = [
    ...(wrong > 0 ? (["wrong"] as const) : []),
    ...(asked > 0 ? ([recount > 0 ? "askedRecount" : "asked"] as const) : []),
    ...(uncounted > 0 ? (["uncounted"] as const) : []),
    ...(toAccept > 0 ? (["toAccept"] as const) : []),
  ];
  const facts = { ...open, block };
  if (parts.length === 0)
    return say(block === "" ? OPEN_TEXTS.nothingEverywhere : OPEN_TEXTS.nothingInBlock, language, facts);
  const said = parts.map((part) => say(OPEN_TEXTS.parts[part], language, facts)).join("; ");
  return say(block === "" ? OPEN_TEXTS.everywhere : OPEN_TEXTS.inBlock, language, { block, parts: said });
}

/** Lines of cards handed out before that hold no more, one sentence a card. */
export function voidSentences(voided: readonly VoidLines[], language: Language): string[] {
  return voided.map(({ isWhole, ...card }) =>
    say(isWhole ? CHANGED_TEXTS.cardVoid : CHANGED_TEXTS.rowVoid, language, card),
  );
}

/**
 * The word for a side, as a person reads it.
 *
 * @example
 * sideWord("left", "es") // "izquierda"
 */
export function sideWord(side: string, language: Language): string {
  return SIDE_WORDS[side]?.[language] ?? side;
}

function keepWords({ cordon, trunk, ask, against }: PlannedKeep, language: Language): string {
  if (ask)
    return against.length > 0
      ? say(CARD_TEXTS.or, language, { cordon, others: against.join(" / ") })
      : say(CARD_TEXTS.orNewCane, language, { cordon });
  return trunk === undefined ? cordon : say(CARD_TEXTS.keepTrunk, language, { cordon, trunk });
}

function cutWords({ cordon, backTo, trunk }: PlannedCut, language: Language): string {
  if (backTo === "trunk") return say(CARD_TEXTS.withTrunk, language, { cordon, trunk: trunk ?? "" });
  if (backTo === "spur") return say(CARD_TEXTS.withSpur, language, { cordon });
  return backTo === "cane" ? `${cordon} ⟂` : cordon;
}

function layWords({ from, source, later }: PlannedCane, language: Language): string {
  const facts = { from: originWords(from, language), source: source?.cordon ?? "" };
  if (later) return say(CARD_TEXTS.caneLater, language, facts);
  return say(source ? CARD_TEXTS.caneOf : CARD_TEXTS.cane, language, facts);
}

function originWords(from: CaneOrigin, language: Language): string {
  return typeof from === "number"
    ? say(CARD_ORIGINS.trunk, language, { trunk: from })
    : CARD_ORIGINS[from][language];
}

function nodeWords({ nodes }: CardVine, language: Language): string[] {
  if (!nodes) return [];
  const plan =
    nodes.spurs.length === 1
      ? [say(CARD_TEXTS.onASpur, language, { nodes: nodes.spurs[0].nodes })]
      : nodes.spurs.map((part) => say(CARD_TEXTS.spursAt, language, { ...part }));
  if (plan.length > 0) plan[0] = say(CARD_TEXTS.leave, language, { nodes: nodes.nodes, plan: plan[0] });
  if (nodes.surplusSpurs > 0) plan.push(say(CARD_TEXTS.surplus, language, { spurs: nodes.surplusSpurs }));
  return plan;
}

function noteWords(vine: CardVine, language: Language, unitSystem: UnitSystem): string[] {
  const notes: string[] = [];
  if (vine.status !== undefined && vine.status !== "bearing") notes.push(CARD_TEXTS[vine.status][language]);
  if (vine.young) notes.push(youngCardWords(vine.young, language));
  for (const { code, facts } of vine.notes)
    if (code === "bothOnOneTrunk" || code === "everyTrunkHurt" || code === "noLiveTrunk")
      notes.push(say(CARD_TEXTS[code], language, facts));
  if (vine.trunksToBringUp > 0)
    notes.push(say(CARD_TEXTS.bringUp, language, { trunks: vine.trunksToBringUp }));
  for (const { trunk, age, renewalStands } of vine.dueTrunks ?? [])
    notes.push(say(CARD_TEXTS[renewalStands ? "trunkOut" : "trunkDue"], language, { trunk, age }));
  for (const { cordon, ask, renewal } of vine.keeps) {
    if (ask) continue;
    const { toExtend, gap } = renewal;
    const length = toExtend === undefined ? "" : lengthWords(toExtend, language, unitSystem);
    notes.push(
      ...renewalWork(renewal).map((work) => say(CARD_TEXTS[work], language, { cordon, length, ...gap })),
    );
  }
  if (vine.status !== "missing" && !vine.young && vine.keeps.length + vine.canes.length === 0)
    notes.push(CARD_TEXTS[vine.toCount ?? "notDecided"][language]);
  return [...notes, ...vine.remarks];
}
