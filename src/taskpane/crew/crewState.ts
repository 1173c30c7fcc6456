import type { CrewCard } from "../../survey/decide/cards/crewCards";
import type { BlockStands } from "../../survey/decide/plan/seasonStands";
import type { WorkPlan } from "../../survey/decide/plan/workPlan";
import type { TrunksToRenew } from "../../survey/decide/renewal/trunksToRenew";
import type { Season } from "../../survey/season/season";
import type { Language } from "../../texts/language";
import type { ChangedCards, PrintedCards } from "../../workbook/actions/printedCards";
import type { Paper } from "../../workbook/results/cardsHtml";
import type { Progress } from "../progress";
import { placeName } from "../../texts/placeName";

/** What the page shows once the survey was read. */
export interface CrewResult {
  readonly season: Season;
  readonly cards: readonly CrewCard[];
  readonly work: WorkPlan;
  readonly renewal: TrunksToRenew;
  /** How far the work on each block is. */
  readonly blocks: readonly BlockStands[];
  readonly printed: PrintedCards;
}

declare module "../pageStates" {
  interface PageStates {
    readonly crew: CrewState;
  }
}

/** The page that sends the crew out, as data. */
export interface CrewState {
  /** Version of the workbook that the results shown were worked out from. */
  readonly version?: number;
  readonly progress?: Progress;
  readonly result?: CrewResult;
  /** "" for every block. */
  readonly block: string;
  /** "" for every row of the block. */
  readonly row: string;
  /** True where only vines are printed whose line differs from the last print. */
  readonly onlyChanged: boolean;
  readonly paper: Paper;
  /** Language of the cards; the pane's where it is left out. */
  readonly language?: Language;
  /** How many vines to renew are listed. */
  readonly listed: number;
  /** How many days of work are listed. */
  readonly daysListed: number;
}

export const RENEWALS_LISTED = 20;
/** Days of work that are listed at first, and with each click more. */
export const DAYS_LISTED = 10;

export const FIRST_CREW_STATE: CrewState = {
  block: "",
  row: "",
  onlyChanged: false,
  paper: "Letter",
  listed: RENEWALS_LISTED,
  daysListed: DAYS_LISTED,
};

/** The cards that are chosen, and what holds no more of those printed before. */
export function chosenCards({ result, block, row, onlyChanged }: CrewState): ChangedCards {
  if (result === undefined) return { cards: [], voided: [] };
  const isChosen = (card: { readonly block: string; readonly row: number }) =>
    (block === "" || card.block === block) && (row === "" || String(placeName(card.row)) === row);
  const { cards, voided } = result.printed.changed(result.cards);
  return { cards: (onlyChanged ? cards : result.cards).filter(isChosen), voided: voided.filter(isChosen) };
}
