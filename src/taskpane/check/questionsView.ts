import { grouped } from "../../domain/grouped";
import { html, nothing, type TemplateResult } from "lit";
import type { QuestionCode, ReadingAnswers, ReadingQuestion } from "../../survey/reading/readingAccount";
import { questionSentence } from "../../survey/reading/readingSentence";
import type { Text } from "../../texts/language";
import { CARE_TEXTS, QUESTION_TEXTS } from "../../texts/pane";
import { TEXTS } from "../../texts/texts";
import { keepAnswers, putAnswersBack } from "../../workbook/actions/keepAnswers";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { writeLog } from "../writeLog";
import type { CheckState } from "./checkState";
import { openHeads } from "./headsStep";
import { lookForTables } from "./lookForTables";
import { tellLost } from "../tellLost";

/** Answers offered beside a question; of units the likely ones come first. */
const OFFERED = 5;
const PLACES_SHOWN = 3;

/** What only a person can say about the sheets, with a button for each likely answer. */
export function questionsView(pane: Pane, check: CheckState): TemplateResult | typeof nothing {
  const { season, answered } = check;
  if (season === undefined) return nothing;
  const { questions } = season.account;
  const { language } = pane.state;
  return html`${
    questions.length === 0
      ? nothing
      : html`<section class="stack" aria-labelledby="questions-title">
          <h2 id="questions-title">${pane.say(QUESTION_TEXTS.title)}</h2>
          <ul class="plain" id="questions">
            ${questions.map(
              (question) =>
                html`<li class="finding">
                  <p>${questionSentence(question, language)}</p>
                  <div class="buttons">${answerButtons(pane, question)}</div>
                </li>`,
            )}
          </ul>
        </section>`
  }
  ${
    answered === undefined
      ? nothing
      : html`<div class="buttons">
          <fluent-button
            id="take-answer-back"
            size="small"
            @click=${() => void pane.attempt(() => takeBack(pane, answered))}
            >${pane.say(QUESTION_TEXTS.takeBack)}</fluent-button
          >
        </div>`
  }`;
}

function answerButtons(pane: Pane, question: ReadingQuestion): TemplateResult {
  const { code, sheet, proposals } = question;
  const button = (label: string, onClick: () => Promise<void>) =>
    html`<fluent-button class="answer" size="small" @click=${() => void pane.attempt(onClick)}
      >${label}</fluent-button
    >`;
  return html`${proposals
    .slice(0, OFFERED)
    .map((answers) => button(answerWords(pane, answers, code), () => answer(pane, question, answers)))}
  ${
    code === "heads" || code === "noHeads" || code === "keys"
      ? button(pane.say(QUESTION_TEXTS.ownHeads), async () => {
          await lookForTables(pane, new AbortController().signal);
          openHeads(pane, sheet);
        })
      : nothing
  }
  ${
    code === "heads" || code === "noHeads" || code === "winter" || code === "otherWinter" || code === "hidden"
      ? button(pane.say(QUESTION_TEXTS.leaveOut), () =>
          answer(pane, question, { leaveOut: sheetsOf(question) }),
        )
      : nothing
  }`;
}

function sheetsOf({ sheet, facts }: ReadingQuestion): readonly string[] {
  return Array.isArray(facts.sheets) ? (facts.sheets as readonly string[]) : [sheet];
}

/** An answer as its button says it. */
function answerWords(pane: Pane, answers: ReadingAnswers, code: QuestionCode): string {
  const { answers: words } = TEXTS.reading;
  const said = (text: Text) => pane.say(text);
  if (answers.units) return answers.units[0].unit;
  if (answers.dateOrder) return said(words[answers.dateOrder]);
  if (answers.winters && code !== "winter") return String(answers.winters[0].winter);
  if (answers.constants) return constantsInWords(answers.constants);
  if (answers.oddCounts) return said(QUESTION_TEXTS.asProposed);
  if (answers.recount) return said(QUESTION_TEXTS.countAgain);
  return said(QUESTION_TEXTS.yes);
}

/** Places that would be given to sheets: those of one sheet together, three sheets at the most. */
function constantsInWords(constants: NonNullable<ReadingAnswers["constants"]>): string {
  const places = [...grouped(constants, ({ sheet }) => sheet).values()].map((own) =>
    own.map(({ value }) => value).join(" "),
  );
  return [...places.slice(0, PLACES_SHOWN), ...(places.length > PLACES_SHOWN ? ["…"] : [])].join(", ");
}

async function answer(pane: Pane, question: ReadingQuestion, answers: ReadingAnswers): Promise<void> {
  const { language } = pane.state;
  const { before, lost } = await keepAnswers(pane.workbook, answers, language);
  changePage(pane, "check", { answered: before });
  await pane.held.look();
  pane.tell("success", QUESTION_TEXTS.kept);
  tellLost(pane, lost);
  await writeLog(pane, questionSentence(question, language), answerWords(pane, answers, question.code));
}

async function takeBack(pane: Pane, before: ReadingAnswers): Promise<void> {
  const { lost } = await putAnswersBack(pane.workbook, before, pane.state.language);
  changePage(pane, "check", { answered: undefined });
  await pane.held.look();
  pane.tell("success", QUESTION_TEXTS.takenBack);
  tellLost(pane, lost);
  await writeLog(pane, pane.say(QUESTION_TEXTS.takeBack), pane.say(CARE_TEXTS.undo));
}
