import { html, nothing, type TemplateResult } from "lit";
import {
  vinesAcross,
  type SeasonGaps,
  type SurveyRowGaps,
  type VineGaps,
} from "../../survey/season/gapsOfSeason";
import { DECIDE_TEXTS, GAP_SHEET_TEXTS, GAPS_TEXTS } from "../../texts/pane";
import { placeName } from "../../texts/placeName";
import { shareOf } from "../../workbook/results/gapSheets";
import { SHADE_BANDS, shadeBandOf } from "../../workbook/shadeBands";
import { changePage } from "../changePage";
import { choiceField } from "../fields";
import { goToCell } from "../goToCell";
import { openPage } from "../openPage";
import type { Pane } from "../pane";
import { GAP_STYLES, SHADE_CLASSES } from "./gapStyles";
import type { GapsState } from "./gapsState";
import { wireRow } from "./wireRow";

/** The map of one block, and below it the row of the chosen cell as it stands on the wire. */
export function gapMap(pane: Pane, page: GapsState, gaps: SeasonGaps): TemplateResult {
  const blocks = [...new Set(gaps.rows.map(({ block }) => block))];
  const block = blocks.includes(page.block) ? page.block : blocks[0];
  const rows = gaps.rows.filter((row) => row.block === block);
  const row = rows.find((one) => one.row === page.row) ?? rows[0];
  const show = (part: Partial<GapsState>) => changePage(pane, "gaps", part);
  return html`<style>
      ${GAP_STYLES}
    </style>
    <section class="stack">
      <h2 id="gap-map">${pane.say(GAPS_TEXTS.map)}</h2>
      <p class="small quiet">${pane.say(GAPS_TEXTS.mapKey)}</p>
      ${choiceField({
        id: "gap-map-block",
        label: pane.say(GAP_SHEET_TEXTS.block),
        value: block,
        options: blocks.map((name) => ({ value: name, label: name })),
        onChoose: (name) => show({ block: name, row: undefined, vine: undefined, reached: undefined }),
      })}
      ${mapTable(pane, page, rows)}
    </section>
    <section class="stack">
      <h2>${pane.say(GAPS_TEXTS.wire)}</h2>
      ${choiceField({
        id: "wire-row-choice",
        label: pane.say(GAP_SHEET_TEXTS.row),
        value: String(row.row),
        options: rows.map((one) => ({ value: String(one.row), label: String(placeName(one.row)) })),
        onChoose: (chosen) => show({ row: Number(chosen), vine: undefined }),
      })}
      ${chosenVine(pane, page, row)}
      ${wireRow(pane, {
        block,
        row: row.row,
        ...(page.vine === undefined || page.row !== row.row ? {} : { vine: page.vine }),
        onVine: (vine) => void pane.attempt(() => leadTo(pane, row, vine)),
      })}
    </section>`;
}

function mapTable(pane: Pane, page: GapsState, rows: readonly SurveyRowGaps[]): TemplateResult {
  const across = vinesAcross(rows);
  const [first] = rows.flatMap((row) => row.byVine.map((vine) => cellKey(row, vine.vine)));
  const known = rows.some((row) => row.byVine.some(({ vine }) => cellKey(row, vine) === page.reached));
  const reached = known ? page.reached : first;
  return html`<div class="scroll">
    <table
      class="map"
      role="grid"
      aria-labelledby="gap-map"
      @keydown=${(event: KeyboardEvent) => walk(pane, event)}
    >
      <thead>
        <tr>
          <th scope="col">${pane.say(GAP_SHEET_TEXTS.row)}</th>
          ${across.map((vine) => html`<th scope="col">${placeName(vine)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map((row) => {
          const vines = new Map(row.byVine.map((vine) => [vine.vine, vine]));
          return html`<tr>
            <th scope="row">${placeName(row.row)}</th>
            ${across.map((vine) => mapCell(pane, page, row, vines.get(vine), reached))}
          </tr>`;
        })}
      </tbody>
    </table>
  </div>`;
}

const cellKey = ({ row }: SurveyRowGaps, vine: number) => `${row} ${vine}`;

/** Whole tenths of a vine's positions that are empty: a digit, and a shade by the bands of the Gap map sheet. */
function mapCell(
  pane: Pane,
  page: GapsState,
  row: SurveyRowGaps,
  found: VineGaps | undefined,
  reached: string | undefined,
): TemplateResult {
  if (found === undefined) return html`<td></td>`;
  const share = shareOf(found);
  const band = shadeBandOf(share);
  const key = cellKey(row, found.vine);
  const { gaps, positions } = found;
  const facts = { row: placeName(row.row), vine: placeName(found.vine), gaps, positions };
  const words = pane.say(share === null ? GAPS_TEXTS.noneStays : GAPS_TEXTS.cell, facts);
  return html`<td
    class=${share === null ? "none" : band === undefined ? "full" : SHADE_CLASSES[SHADE_BANDS.indexOf(band)]}
    tabindex=${key === reached ? 0 : -1}
    data-cell=${key}
    aria-label=${words}
    aria-selected=${page.row === row.row && page.vine === found.vine}
    title=${words}
    @click=${() => void pane.attempt(() => leadTo(pane, row, found.vine))}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "Enter" && event.key !== " ") return;
      event.preventDefault();
      void pane.attempt(() => leadTo(pane, row, found.vine));
    }}
  >
    ${share === null ? "–" : Math.floor(share * 10 + 1e-9)}
  </td>`;
}

const STEPS: Readonly<Record<string, readonly [down: number, across: number]>> = {
  ArrowDown: [1, 0],
  ArrowUp: [-1, 0],
  ArrowRight: [0, 1],
  ArrowLeft: [0, -1],
};

/** Arrow keys walk from cell to cell, over places without a vine. */
function walk(pane: Pane, event: KeyboardEvent): void {
  const step = STEPS[event.key];
  const from = (event.target as Element).closest("td");
  if (step === undefined || from === null) return;
  event.preventDefault();
  const body = from.closest("tbody")!;
  let [row, column] = [(from.parentElement as HTMLTableRowElement).sectionRowIndex, from.cellIndex];
  for (;;) {
    row += step[0];
    column += step[1];
    const next = body.rows[row]?.cells[column];
    if (next === undefined || column === 0) return;
    const { cell } = next.dataset;
    if (cell === undefined) continue;
    changePage(pane, "gaps", { reached: cell });
    next.focus();
    return;
  }
}

/** Leads to a vine: its first row is selected in the sheet, and its row is shown on the wire. */
async function leadTo(pane: Pane, { block, row }: SurveyRowGaps, vine: number): Promise<void> {
  changePage(pane, "gaps", { block, row, vine, reached: `${row} ${vine}` });
  const cell = cellOf(pane, { block, row, vine });
  if (cell === undefined) return;
  await pane.workbook.selectCell(cell.sheet, cell.row, cell.column);
  pane.announce(
    pane.say(GAPS_TEXTS.ledTo, {
      sheet: cell.sheet,
      sheetRow: cell.row,
      row: placeName(row),
      vine: placeName(vine),
    }),
  );
}

function cellOf(pane: Pane, place: { readonly block: string; readonly row: number; readonly vine: number }) {
  const [first] =
    pane.state.gaps.counted?.vines.find(
      ({ block, row, vine }) => block === place.block && row === place.row && vine === place.vine,
    )?.rows ?? [];
  return first && { sheet: first.table.sheet, row: first.table.sheetRow(first.index), column: 1 };
}

/** The vine that was chosen, in words, with the ways on from it. */
function chosenVine(
  pane: Pane,
  { vine, row: chosenRow }: GapsState,
  row: SurveyRowGaps,
): TemplateResult | typeof nothing {
  if (vine === undefined || chosenRow !== row.row) return nothing;
  const place = { block: row.block, row: row.row, vine };
  const cell = cellOf(pane, place);
  const found = row.byVine.find((one) => one.vine === vine);
  return html`<p id="chosen-vine">
      <strong>${pane.say(DECIDE_TEXTS.vine, { ...place })}</strong>${
        found === undefined || found.positions === 0
          ? nothing
          : html`: ${pane.say(GAPS_TEXTS.ofPositions, { gaps: found.gaps, positions: found.positions })}`
      }
    </p>
    ${
      cell === undefined
        ? html`<p class="small">${pane.say(GAPS_TEXTS.noCounts, { vine: placeName(vine) })}</p>`
        : html`<div class="buttons">
            <fluent-button
              id="vine-cells"
              size="small"
              @click=${() => void pane.attempt(() => goToCell(pane, cell))}
              >${pane.say(GAPS_TEXTS.toCells)}</fluent-button
            >
            <fluent-button id="vine-decide" size="small" @click=${() => decideVine(pane, place)}
              >${pane.say(GAPS_TEXTS.toDecide)}</fluent-button
            >
          </div>`
    }`;
}

function decideVine(pane: Pane, { block, row, vine }: { block: string; row: number; vine: number }): void {
  changePage(pane, "decide", { shown: "all", block: "", at: `${block}|${row}|${vine}` });
  openPage(pane, "decide");
}
