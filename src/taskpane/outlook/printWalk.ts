import { html } from "lit";
import type { CountPlan } from "../../survey/crop/countPlan";
import { COUNT_PLAN_TEXTS } from "../../texts/countPlan";
import type { Pane } from "../pane";
import { printPage } from "../printPage";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import { placeName } from "../../texts/placeName";

/** Prints the drawn vines in the order of the walk, with room for the count. */
export async function printWalk(pane: Pane, plan: CountPlan): Promise<void> {
  const { language } = pane.state;
  const title = pane.say(COUNT_PLAN_TEXTS.printTitle, { block: plan.block });
  await printPage(
    pane,
    title,
    html`<h1>${title}</h1>
      <p>${writtenDate(pane.today, language)}. ${pane.say(COUNT_PLAN_TEXTS.drawn, { seed: plan.seed })}</p>
      <p>${pane.say(COUNT_PLAN_TEXTS.countedBy)} ______________________</p>
      <table>
        <thead>
          <tr>
            <th scope="col">${pane.say(COUNT_PLAN_TEXTS.headRow)}</th>
            <th scope="col">${pane.say(COUNT_PLAN_TEXTS.headVine)}</th>
            <th scope="col">${pane.say(COUNT_PLAN_TEXTS[plan.counted])}</th>
            <th scope="col">${pane.say(COUNT_PLAN_TEXTS.headNote)}</th>
          </tr>
        </thead>
        <tbody>
          ${plan.walk.map(
            ({ row, vine }) =>
              html`<tr>
                <td>${placeName(row)}</td>
                <td>${placeName(vine)}</td>
                <td></td>
                <td></td>
              </tr>`,
          )}
        </tbody>
      </table>`,
  );
}

/** Writes the drawn vines into a sheet of our own, for a host whose pane may not print. */
export async function writeWalk(pane: Pane, plan: CountPlan): Promise<void> {
  const name = COUNT_PLAN_TEXTS.sheet;
  await writeResult(
    pane,
    {
      sheet: pane.say(name),
      title: [
        pane.say(COUNT_PLAN_TEXTS.printTitle, { block: plan.block }),
        `${writtenDate(pane.today, pane.state.language)}. ${pane.say(COUNT_PLAN_TEXTS.drawn, { seed: plan.seed })}`,
        pane.say(COUNT_PLAN_TEXTS.countedBy),
      ],
      headers: [
        pane.say(COUNT_PLAN_TEXTS.headRow),
        pane.say(COUNT_PLAN_TEXTS.headVine),
        pane.say(COUNT_PLAN_TEXTS[plan.counted]),
        pane.say(COUNT_PLAN_TEXTS.headNote),
      ],
      about: {
        thing: [pane.say(COUNT_PLAN_TEXTS.headRow), pane.say(COUNT_PLAN_TEXTS.headVine)],
        entries: [pane.say(COUNT_PLAN_TEXTS[plan.counted]), pane.say(COUNT_PLAN_TEXTS.headNote)],
      },
      columns: [{ width: 8 }, { width: 8 }, { width: 16 }, { width: 30 }],
      rows: plan.walk.map(({ row, vine }) => [row, vine, null, null]),
    },
    name,
  );
}
