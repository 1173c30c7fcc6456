import { html, nothing, type TemplateResult } from "lit";
import { accountDetails, readSentence } from "../survey/season/accountSentences";
import { seasonAccount } from "../survey/season/seasonAccount";
import { usedSentence } from "../survey/season/usedSentence";
import { QUESTION_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";

/** What was read and what was not, the same at the foot of every page: in short, each part in full folded away. */
export function accountView(pane: Pane): TemplateResult | typeof nothing {
  const { season } = pane.held;
  if (season === undefined) return nothing;
  const { language } = pane.state;
  const account = seasonAccount(season);
  return html`<section class="account small quiet" aria-label=${pane.say(QUESTION_TEXTS.reading)}>
    <p>${readSentence(account, language)}</p>
    <details>
      <summary>${pane.say(QUESTION_TEXTS.reading)}</summary>
      <ul id="reading">
        ${[usedSentence(account.used, language), ...accountDetails(season, language)].map((line) => html`<li>${line}</li>`)}
      </ul>
    </details>
  </section>`;
}
