import { html, nothing, type TemplateResult } from "lit";
import { timeOfSerial } from "../../survey/reading/serialDate";
import type { DayPart, WorkDay } from "../../survey/decide/plan/workPlan";
import { passName } from "../../survey/decide/plan/workSentences";
import { CREW_TEXTS } from "../../texts/crew";
import { placeName } from "../../texts/placeName";
import { changePage } from "../changePage";
import { moreButton } from "../moreButton";
import type { Pane } from "../pane";
import { DAYS_LISTED, type CrewResult } from "./crewState";

const CALENDAR_STYLES = `
.calendar { table-layout: fixed; }
.calendar th { font-size: 10.5px; overflow-wrap: anywhere; }
.calendar td {
  padding: 1px 2px; block-size: 36px; border: var(--strokeWidthThin) solid var(--colorNeutralStroke2);
  font-size: 10.5px; line-height: 15px; overflow-wrap: normal;
}
.calendar b { display: block; font-size: 13px; text-align: center; }
.calendar .free {
  background: repeating-linear-gradient(45deg, transparent 0 4px, var(--colorNeutralStroke2) 4px 5px);
}
.calendar .today { outline: 2px solid var(--colorNeutralForeground1); outline-offset: -2px; }
@media (forced-colors: active) {
  .calendar .free { border-style: dotted; color: GrayText; }
}
`;

/** The weeks of the work from today on, Monday to Sunday, and below them what is pruned day by day. */
export function workCalendar(pane: Pane, { work }: CrewResult): TemplateResult | typeof nothing {
  if (work.weeks.length === 0) return nothing;
  const { language } = pane.state;
  const weekday = new Intl.DateTimeFormat(language, { weekday: "short", timeZone: "UTC" });
  const open = work.passes.filter(({ hours }) => hours > 0);
  const keys = new Map(open.map(({ block, pass }, index) => [`${pass} ${block}`, index + 1]));
  return html`<style>
      ${CALENDAR_STYLES}
    </style>
    <table id="work-calendar" class="calendar">
      <thead>
        <tr>
          ${work.weeks[0].map(({ day }) => html`<th scope="col">${weekday.format(timeOfSerial(day))}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${work.weeks.map(
          (week, index) =>
            html`<tr>
              ${week.map((day, at) => calendarDay(pane, day, keys, at === 0 && index === 0))}
            </tr>`,
        )}
      </tbody>
    </table>
    <p id="work-key" class="small">
      ${open.map((pass, index) => html`<strong>${index + 1}</strong> ${passName(pass, pane.state.language)} &nbsp; `)}
      <span class="quiet">${pane.say(CREW_TEXTS.calendarKey)}</span>
    </p>
    ${dayTable(pane, work.weeks.flat())}`;
}

function calendarDay(
  pane: Pane,
  { day, isWorkday, parts }: WorkDay,
  keys: ReadonlyMap<string, number>,
  first: boolean,
): TemplateResult {
  const date = new Date(timeOfSerial(day));
  const month = first || date.getUTCDate() === 1;
  const written = new Intl.DateTimeFormat(pane.state.language, {
    day: "numeric",
    ...(month ? { month: "short" } : {}),
    timeZone: "UTC",
  });
  const isToday = day === pane.today;
  return html`<td
    class=${`${isWorkday ? "" : "free"}${isToday ? " today" : ""}`}
    aria-current=${isToday ? "date" : nothing}
  >
    ${written.format(date)}
    ${
      parts.length === 0
        ? nothing
        : html`<b aria-hidden="true"
              >${parts.map(({ block, pass }) => keys.get(`${pass} ${block}`)).join(" ")}</b
            >
            <span class="unseen">${parts.map((part) => partName(pane, part)).join("; ")}</span>`
    }
  </td>`;
}

function partName(pane: Pane, part: DayPart): string {
  const block = passName(part, pane.state.language);
  if (part.rows === undefined) return block;
  const { first, last } = part.rows;
  return pane.say(first === last ? CREW_TEXTS.dayRow : CREW_TEXTS.dayRows, {
    block,
    first: placeName(first),
    last: placeName(last),
  });
}

function dayTable(pane: Pane, days: readonly WorkDay[]): TemplateResult {
  const { language, crew } = pane.state;
  const written = new Intl.DateTimeFormat(language, {
    weekday: "short",
    day: "numeric",
    month: "short",
    timeZone: "UTC",
  });
  const number = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
  const busy = days.filter(({ parts }) => parts.length > 0);
  return html`<table id="work-days" class="small">
      <thead>
        <tr>
          <th scope="col">${pane.say(CREW_TEXTS.when)}</th>
          <th scope="col">${pane.say(CREW_TEXTS.dayWork)}</th>
          <th scope="col" class="number">${pane.say(CREW_TEXTS.hours)}</th>
        </tr>
      </thead>
      <tbody>
        ${busy.slice(0, crew.daysListed).map(({ day, parts }) =>
          parts.map(
            (part) =>
              html`<tr>
                <th scope="row">${written.format(timeOfSerial(day))}</th>
                <td>${partName(pane, part)}</td>
                <td class="number">${number.format(part.hours)}</td>
              </tr>`,
          ),
        )}
      </tbody>
    </table>
    ${moreButton(pane, { all: busy.length, listed: crew.daysListed, stretch: DAYS_LISTED }, () =>
      changePage(pane, "crew", { daysListed: crew.daysListed + DAYS_LISTED }),
    )}`;
}
