import { accountLines } from "../../survey/season/accountSentences";
import { seasonAccount } from "../../survey/season/seasonAccount";
import { html, nothing, type TemplateResult } from "lit";
import { renewalForecast } from "../../domain/renewal/renewalForecast";
import type { PlannedPass } from "../../domain/plan/orderOfWork";
import { renewalRules } from "../../survey/decide/renewal/renewalRules";
import { trunkRenewalSentence } from "../../survey/decide/renewal/renewalSentence";
import { passName, workDay, workSentences } from "../../survey/decide/plan/workSentences";
import { openSentence, voidSentences } from "../../survey/decide/cards/cardWords";
import { openOnCards } from "../../survey/decide/plan/seasonStands";
import { CHANGED_TEXTS } from "../../texts/cards";
import { CREW_TEXTS } from "../../texts/crew";
import { LANGUAGES, type Language } from "../../texts/language";
import { CHECK_TEXTS, DECIDE_TEXTS } from "../../texts/pane";
import { RESULT_SHEET_TEXTS } from "../../texts/resultSheets";
import { cardsHtml, type Paper } from "../../workbook/results/cardsHtml";
import { notePrinted, printedCards } from "../../workbook/actions/printedCards";
import { cardsSheet } from "../../workbook/results/cardsSheet";
import { choiceField } from "../fields";
import { moreButton } from "../moreButton";
import { changePage } from "../changePage";
import { usedRowsLine } from "../usedRowsLine";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { percent } from "../percent";
import { progressBar } from "../progressBar";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import { chosenCards, RENEWALS_LISTED, type CrewResult, type CrewState } from "./crewState";
import { makeCards } from "./makeCards";
import { printHtml } from "../printHtml";
import { workCalendar } from "./workCalendar";
import { bringLanguage, TEXTS } from "../../texts/texts";
import { placeName } from "../../texts/placeName";

export { makeCardsAnew } from "./makeCards";

const LANGUAGE_NAMES: Readonly<Record<Language, string>> = TEXTS.language.name;
const FORECAST_YEARS = 5;

/** The page that sends the crew out: cards, order of work, trunks to renew. */
export function crewPage(pane: Pane): TemplateResult {
  const page = pane.state.crew;
  return html`<h1>${pane.say(CREW_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(CREW_TEXTS.intro)}</p>
    ${
      page.progress !== undefined
        ? progressBar(pane, pane.say(CREW_TEXTS.progress), page.progress)
        : page.result === undefined
          ? html`<div class="buttons">
              <fluent-button
                id="make-cards"
                appearance="primary"
                @click=${() => pane.start((signal) => makeCards(pane, signal))}
                >${pane.say(CREW_TEXTS.make)}</fluent-button
              >
            </div>`
          : nothing
    }
    ${page.result === undefined || page.progress !== undefined ? nothing : result(pane, page, page.result)}`;
}

function result(pane: Pane, page: CrewState, found: CrewResult): TemplateResult {
  const named = found.cards.reduce((sum, card) => sum + card.vines.length, 0);
  if (named === 0)
    return html`<fluent-message-bar intent="info" layout="multiline"
      >${pane.say(CREW_TEXTS.none)}</fluent-message-bar
    >`;
  const blocks = found.blocks.filter(({ block }) => page.block === "" || block === page.block);
  const open = openOnCards(blocks);
  const vines = found.blocks.reduce((sum, block) => sum + block.vines, 0);
  const isOpen = Object.values(open).some((count) => count > 0);
  return html`<fluent-message-bar id="cards-open" intent=${isOpen ? "warning" : "success"} layout="multiline"
      >${openSentence(open, pane.state.language, page.block)}</fluent-message-bar
    >
    <fluent-message-bar id="cards-result" intent="success" layout="multiline"
      >${pane.say(CREW_TEXTS.sum, {
        cards: found.cards.length,
        vines,
        done: percent(pane, found.work.doneShare),
      })}
      ${named === vines ? nothing : pane.say(CREW_TEXTS.others, { others: named - vines })}</fluent-message-bar
    >
    ${usedRowsLine(pane, found.season.used.account())} ${cardChoice(pane, page, found)}
    <p class="small">${pane.say(DECIDE_TEXTS.caution)}</p>
    ${work(pane, found)} ${renewal(pane, page, found)}`;
}

function cardChoice(pane: Pane, page: CrewState, found: CrewResult): TemplateResult {
  const all = { value: "", label: pane.say(CHECK_TEXTS.all) };
  const option = (value: string) => ({ value, label: value });
  const blocks = [...new Set(found.cards.map(({ block }) => block))];
  const rows = found.cards
    .filter(({ block }) => block === page.block)
    .map(({ row }) => String(placeName(row)));
  const { cards, voided } = chosenCards(page);
  return html`${choiceField({
      id: "cards-block",
      label: pane.say(DECIDE_TEXTS.block),
      value: page.block,
      options: [all, ...blocks.map(option)],
      onChoose: (block) => changePage(pane, "crew", { block, row: "" }),
    })}
    ${
      page.block === ""
        ? nothing
        : choiceField({
            id: "cards-row",
            label: pane.say(CREW_TEXTS.row),
            value: page.row,
            options: [all, ...rows.map(option)],
            onChoose: (row) => changePage(pane, "crew", { row }),
          })
    }
    ${choiceField({
      id: "cards-which",
      label: pane.say(CREW_TEXTS.which),
      value: page.onlyChanged ? "changed" : "",
      options: [
        { value: "", label: pane.say(CREW_TEXTS.whichAll) },
        { value: "changed", label: pane.say(CREW_TEXTS.whichChanged) },
      ],
      onChoose: (which) => changePage(pane, "crew", { onlyChanged: which === "changed" }),
    })}
    ${choiceField({
      id: "cards-paper",
      label: pane.say(CREW_TEXTS.paper),
      value: page.paper,
      options: ["Letter", "A4"].map(option),
      onChoose: (paper) => changePage(pane, "crew", { paper: paper as Paper }),
    })}
    ${choiceField({
      id: "cards-language",
      label: pane.say(CREW_TEXTS.cardLanguage),
      value: page.language ?? pane.state.language,
      options: LANGUAGES.map((value) => ({ value, label: LANGUAGE_NAMES[value] })),
      onChoose: (language) => changePage(pane, "crew", { language: language as Language }),
    })}
    ${
      voided.length === 0
        ? nothing
        : html`<ul id="cards-void" class="small">
            ${voidSentences(voided, pane.state.language).map((sentence) => html`<li>${sentence}</li>`)}
          </ul>`
    }
    ${
      cards.length === 0
        ? html`<p id="cards-same"><strong>${pane.say(CHANGED_TEXTS.nothing)}</strong></p>`
        : nothing
    }
    <div class="buttons">
      ${
        cards.length === 0
          ? nothing
          : html`<fluent-button
              id="print-cards"
              appearance="primary"
              @click=${() => void currentOnly(pane, "crew", () => printCards(pane))}
              >${pane.say(CREW_TEXTS.print, { cards: cards.length })}</fluent-button
            >`
      }
      <fluent-button
        id="write-cards"
        size="small"
        @click=${() => void currentOnly(pane, "crew", () => writeCards(pane))}
        >${pane.say(CREW_TEXTS.write)}</fluent-button
      >
    </div>
    <p class="small quiet">${pane.say(CREW_TEXTS.back)}</p>`;
}

async function printCards(pane: Pane): Promise<void> {
  const { crew } = pane.state;
  if (crew.result === undefined) return;
  const { settings, unitSystem } = crew.result.season;
  const language = crew.language ?? pane.state.language;
  const { cards, voided } = chosenCards(crew);
  await bringLanguage(language);
  await printHtml(
    cardsHtml(cards, {
      language,
      unitSystem,
      paper: crew.paper,
      date: writtenDate(pane.today, language),
      farm: "",
      ribbons: { stays: settings.ribbonStays, ask: settings.ribbonAsk },
      vinesAPage: Math.round(settings.vinesACardPage),
      stands: crew.result.blocks,
      ...(crew.onlyChanged ? { voided: voidSentences(voided, language) } : {}),
      account: accountLines(seasonAccount(crew.result.season), language),
    }),
  );
  await notePrinted(pane.workbook, cards, voided);
  const printed = await printedCards(pane.workbook);
  const { result } = pane.state.crew;
  if (result !== undefined) changePage(pane, "crew", { result: { ...result, printed } });
}

async function writeCards(pane: Pane): Promise<void> {
  const { crew } = pane.state;
  if (crew.result === undefined) return;
  const language = crew.language ?? pane.state.language;
  await bringLanguage(language);
  const content = cardsSheet(crew.result.cards, {
    language,
    unitSystem: crew.result.season.unitSystem,
    date: writtenDate(pane.today, language),
    work: crew.result.work,
  });
  await writeResult(pane, content, RESULT_SHEET_TEXTS.cards);
}

function work(pane: Pane, found: CrewResult): TemplateResult {
  const { work: plan } = found;
  const { language } = pane.state;
  const number = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
  return html`<section class="stack" aria-labelledby="work-order">
    <h2 id="work-order">${pane.say(CREW_TEXTS.work)}</h2>
    <p>${workSentences(plan, language).map((sentence) => html`${sentence}<br />`)}</p>
    ${workCalendar(pane, found)}
    <table id="work-table" class="small">
      <thead>
        <tr>
          <th scope="col">
            ${pane.say(CREW_TEXTS.block)}, ${pane.say(CREW_TEXTS.when).toLocaleLowerCase(language)}
          </th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.left)}</th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.hours)}</th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.crewDays)}</th>
        </tr>
      </thead>
      <tbody>
        ${plan.passes.map(
          (pass) =>
            html`<tr>
              <th scope="row">
                ${passName(pass, language)}
                <div class="quiet">
                  ${pass.hours === 0 ? pane.say(CREW_TEXTS.done) : daysOf(pass, language)}
                </div>
              </th>
              <td class="number">${pass.vines - pass.vinesDone}</td>
              <td class="number">${number.format(pass.hours)}</td>
              <td class="number">${number.format(pass.crewDays)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <p class="small quiet">${pane.say(CREW_TEXTS.workSource)}</p>
  </section>`;
}

const daysOf = ({ firstDay, lastDay }: PlannedPass, language: Language) =>
  [...new Set([firstDay, lastDay])].map((day) => workDay(day, language)).join(" – ");

function renewal(pane: Pane, page: CrewState, { season, renewal: found }: CrewResult): TemplateResult {
  const { language } = pane.state;
  const rules = renewalRules(season.settings);
  return html`<section class="stack" aria-labelledby="renewal">
    <h2 id="renewal">${pane.say(CREW_TEXTS.renewal)}</h2>
    <p>
      ${
        found.vines.length === 0
          ? pane.say(CREW_TEXTS.renewalNone)
          : pane.say(CREW_TEXTS.renewalSum, { vines: found.vines.length })
      }
      ${
        found.vines.length === 0 || found.notCounted === 0
          ? nothing
          : pane.say(CREW_TEXTS.trunksNotCounted, { vines: found.notCounted })
      }
    </p>
    <ol id="renewal-list">
      ${found.vines
        .slice(0, page.listed)
        .map(
          ({ block, row, vine, liveTrunks, renewal: what }) =>
            html`<li>
              <strong>${pane.say(DECIDE_TEXTS.vine, { block, row, vine })}</strong>:
              ${trunkRenewalSentence(what, liveTrunks, rules.trunksWanted, language)}
            </li>`,
        )}
    </ol>
    ${moreButton(pane, { all: found.vines.length, listed: page.listed, stretch: RENEWALS_LISTED }, () =>
      changePage(pane, "crew", { listed: page.listed + RENEWALS_LISTED }),
    )}
    ${found.byLiveTrunks.length === 0 ? nothing : forecast(pane, found.byLiveTrunks, rules)}
  </section>`;
}

function forecast(
  pane: Pane,
  byLiveTrunks: readonly number[],
  { trunksWanted, yearlyLoss, broughtUp }: ReturnType<typeof renewalRules>,
): TemplateResult {
  const whole = new Intl.NumberFormat(pane.state.language, { maximumFractionDigits: 0 });
  const sum = (vines: readonly number[]) => vines.reduce((total, count) => total + count, 0);
  const years = renewalForecast(byLiveTrunks, trunksWanted, yearlyLoss, broughtUp, FORECAST_YEARS);
  return html`<table id="forecast" class="small">
      <caption>
        <h3>${pane.say(CREW_TEXTS.forecast)}</h3>
      </caption>
      <thead>
        <tr>
          <th scope="col">${pane.say(CREW_TEXTS.year)}</th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.enough)}</th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.short)}</th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.without)}</th>
        </tr>
      </thead>
      <tbody>
        ${[{ year: 0, vines: byLiveTrunks }, ...years].map(
          ({ year, vines }) =>
            html`<tr>
              <th scope="row">${year === 0 ? pane.say(CREW_TEXTS.now) : `+${year}`}</th>
              <td class="number">${whole.format(sum(vines.slice(trunksWanted)))}</td>
              <td class="number">${whole.format(sum(vines.slice(1, trunksWanted)))}</td>
              <td class="number">${whole.format(vines[0] ?? 0)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <p class="small quiet">
      ${pane.say(CREW_TEXTS.forecastNote, { loss: percent(pane, yearlyLoss), up: percent(pane, broughtUp) })}
    </p>`;
}
