import type { PlannedPass } from "../../../domain/plan/orderOfWork";
import { timeOfSerial } from "../../reading/serialDate";
import { CREW_TEXTS } from "../../../texts/crew";
import { say, type Language } from "../../../texts/language";
import type { WorkLeft, WorkPlan } from "./workPlan";

/** The block and which pass over it. */
export const passName = ({ block, pass }: Pick<PlannedPass, "block" | "pass">, language: Language): string =>
  say(CREW_TEXTS[pass], language, { block });

/** A day of the calendar as the language writes it. */
export function workDay(serial: number, language: Language): string {
  const day = new Intl.DateTimeFormat(language, { dateStyle: "medium", timeZone: "UTC" });
  return day.format(timeOfSerial(serial));
}

/**
 * The work that is left, for the crew's page, its sheet and the command line: pruning in its order, and on a line of its
 * own the thinning of shoots in spring and the trunks to renew by plan, where there are any.
 */
export function workSentences({ passes, pruning, thinning, trunks }: WorkPlan, language: Language): string[] {
  const one = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
  const open = (isThinning: boolean) =>
    passes.filter(({ pass, hours }) => hours > 0 && (pass === "thinning") === isThinning);
  const facts = ({ hours, crewDays }: WorkLeft) => ({ hours: one.format(hours), days: one.format(crewDays) });
  const list = (some: readonly string[]) => new Intl.ListFormat(language, { type: "unit" }).format(some);
  const toThin = open(true);
  return [
    say(CREW_TEXTS.workSum, language, facts(pruning)),
    ...(pruning.hours > 0
      ? [
          say(CREW_TEXTS.workOrder, language, {
            blocks: list(open(false).map((pass) => passName(pass, language))),
          }),
        ]
      : []),
    ...(toThin.length > 0
      ? [
          say(CREW_TEXTS.thinningSum, language, {
            ...facts(thinning),
            from: workDay(toThin[0].firstDay, language),
            blocks: list(toThin.map(({ block, hours }) => `${block} ${one.format(hours)} h`)),
          }),
        ]
      : []),
    ...(trunks ? [say(CREW_TEXTS.trunksDue, language, { ...trunks })] : []),
  ];
}
