import { usedRowsLine } from "../usedRowsLine";
import { html, nothing, type TemplateResult } from "lit";
import type { SeasonGaps, SurveyRowGaps } from "../../survey/season/gapsOfSeason";
import { CHECK_TEXTS, GAP_SHEET_TEXTS, GAPS_TEXTS } from "../../texts/pane";
import type { OwnSheet } from "../../workbook/surveyWorkbook";
import { choiceField } from "../fields";
import { jumpButton } from "../jumpButton";
import { moreButton } from "../moreButton";
import { changePage } from "../changePage";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { percent } from "../percent";
import { progressBar } from "../progressBar";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import { countGaps } from "./countGaps";
import { gapMap } from "./gapMap";
import { pivotOfGaps } from "./pivotOfGaps";
import { UPKEEP_TEXTS } from "../../texts/upkeep";
import { gapMapSheet, rowGapsSheet } from "../../workbook/results/gapSheets";
import { ROWS_LISTED, type GapsOf, type GapsState } from "./gapsState";
import { placeName } from "../../texts/placeName";

export { countGapsAnew } from "./countGaps";

/** The page that shows where spurs are missing. */
export function gapsPage(pane: Pane): TemplateResult {
  const { gaps: page } = pane.state;
  return html`<h1>${pane.say(GAPS_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(GAPS_TEXTS.intro)}</p>
    ${
      page.progress === undefined
        ? start(pane, page)
        : progressBar(pane, pane.say(GAPS_TEXTS.progress), page.progress)
    }
    ${page.gaps === undefined || page.progress !== undefined ? nothing : result(pane, page, page.gaps)}`;
}

function start(pane: Pane, { of, gaps }: GapsState): TemplateResult {
  return html`${choiceField({
    id: "gaps-of",
    label: pane.say(GAPS_TEXTS.of),
    value: of,
    options: [
      { value: "staying", label: pane.say(GAPS_TEXTS.staying) },
      { value: "all", label: pane.say(GAPS_TEXTS.all) },
    ],
    onChoose: (chosen) =>
      changePage(pane, "gaps", { of: chosen as GapsOf, gaps: undefined, version: undefined }),
  })}
  ${
    gaps === undefined
      ? html`<div class="buttons">
          <fluent-button
            id="count-gaps"
            appearance="primary"
            @click=${() => pane.start((signal) => countGaps(pane, signal))}
            >${pane.say(GAPS_TEXTS.count)}</fluent-button
          >
          ${pivotButton(pane)}
        </div>`
      : nothing
  }`;
}

function pivotButton(pane: Pane): TemplateResult {
  return html`<fluent-button
    id="pivot-of-gaps"
    size="small"
    @click=${() => pane.start((signal) => pivotOfGaps(pane, signal))}
    >${pane.say(UPKEEP_TEXTS.pivot)}</fluent-button
  >`;
}

function result(pane: Pane, page: GapsState, gaps: SeasonGaps): TemplateResult {
  if (gaps.rows.length === 0)
    return html`<fluent-message-bar intent="info" layout="singleline"
        >${pane.say(GAPS_TEXTS.none)}</fluent-message-bar
      >
      <div class="buttons">${pivotButton(pane)}</div>`;
  const positions = gaps.rows.reduce((sum, row) => sum + row.positions, 0);
  const missing = gaps.rows.reduce((sum, row) => sum + row.gaps, 0);
  const without = gaps.rows.reduce((sum, row) => sum + row.vinesWithout, 0);
  const write = (id: string, text: string, sheet: OwnSheet, name: keyof typeof GAP_SHEET_TEXTS) =>
    html`<fluent-button
      id=${id}
      size="small"
      @click=${() => void currentOnly(pane, "gaps", () => writeResult(pane, sheet, GAP_SHEET_TEXTS[name]))}
      >${text}</fluent-button
    >`;
  const date = writtenDate(pane.today, pane.state.language);
  return html`<fluent-message-bar id="gaps-result" intent="info" layout="singleline"
      >${
        positions === 0
          ? nothing
          : pane.say(GAPS_TEXTS.sum, {
              of: pane.say(page.of === "all" ? GAPS_TEXTS.all : GAPS_TEXTS.staying),
              missing,
              positions,
              share: percent(pane, missing / positions),
            })
      }
      ${without === 0 ? nothing : pane.say(GAPS_TEXTS.without, { without })}
    </fluent-message-bar>
    ${usedRowsLine(pane, gaps.rowsUsed)}
    <div class="buttons">
      ${write(
        "write-row-gaps",
        pane.say(GAPS_TEXTS.writeRows),
        rowGapsSheet(gaps, pane.state.language, date),
        "rowGaps",
      )}
      ${write("write-gap-map", pane.say(GAPS_TEXTS.writeMap), gapMapSheet(gaps, pane.state.language, date), "gapMap")}
      ${pivotButton(pane)}
    </div>
    ${gapMap(pane, page, gaps)} ${rowTable(pane, page, gaps)}`;
}

function rowTable(pane: Pane, { listed }: GapsState, { rows, seasonBefore }: SeasonGaps): TemplateResult {
  return html`<table id="row-gaps" class="small">
      <caption>
        <h2>${pane.say(GAPS_TEXTS.perRow)}</h2>
        ${
          seasonBefore === undefined
            ? nothing
            : html`<p class="small quiet">${pane.say(GAPS_TEXTS.since, { season: String(seasonBefore) })}</p>`
        }
      </caption>
      <thead>
        <tr>
          <th scope="col">${pane.say(CHECK_TEXTS.rowHead)}</th>
          <th scope="col" class="number">${pane.say(GAPS_TEXTS.gaps)}</th>
          <th scope="col" class="number">${pane.say(GAPS_TEXTS.share)}</th>
          ${
            seasonBefore === undefined
              ? nothing
              : html`<th scope="col" class="number">${pane.say(GAPS_TEXTS.change)}</th>`
          }
        </tr>
      </thead>
      <tbody>
        ${rows.slice(0, listed).map((row) => rowLine(pane, row, seasonBefore !== undefined))}
      </tbody>
    </table>
    ${moreButton(pane, { all: rows.length, listed, stretch: ROWS_LISTED }, () =>
      changePage(pane, "gaps", { listed: listed + ROWS_LISTED }),
    )}`;
}

function rowLine(pane: Pane, row: SurveyRowGaps, compared: boolean): TemplateResult {
  const { sheet, row: sheetRow } = row.firstCell;
  return html`<tr>
    <th scope="row">
      ${jumpButton(pane, { sheet, row: sheetRow, column: 1 }, `${row.block}, ${placeName(row.row)}`)}
    </th>
    <td class="number">${pane.say(GAPS_TEXTS.ofPositions, { gaps: row.gaps, positions: row.positions })}</td>
    <td class="number">${row.share === undefined ? "" : percent(pane, row.share)}</td>
    ${compared ? html`<td class="number">${changeWords(pane, row)}</td>` : nothing}
  </tr>`;
}

/** Growth since last winter in hundredths, with its sign. */
function changeWords(pane: Pane, { since }: SurveyRowGaps): string {
  if (since === undefined) return pane.say(GAPS_TEXTS.notCounted);
  return new Intl.NumberFormat(pane.state.language, {
    style: "percent",
    signDisplay: "exceptZero",
    maximumFractionDigits: 0,
  }).format(since.shareNow - since.shareBefore);
}
