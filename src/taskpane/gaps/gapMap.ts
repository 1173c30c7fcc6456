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

/** Room of the pane beside the map, of the names of rows, and of a cell by the longest name of a vine. */
const [AROUND, ROW_NAMES, LEAST_CELL, LETTER] = [24, 52, 24, 9];

/** The map in stretches of as many vines as stand beside one another in the pane, one below the other. */
function mapTable(pane: Pane, page: GapsState, rows: readonly SurveyRowGaps[]): TemplateResult {
  const places = rows.map((row) => ({ row, vines: new Map(row.byVine.map((vine) => [vine.vine, vine])) }));
  const across = vinesAcross(rows);
  const keys = places.map(({ row, vines }) =>
    across.map((vine) => (vines.has(vine) ? cellKey(row, vine) : undefined)),
  );
  const reached = keys.flat().includes(page.reached) ? page.reached : keys.flat().find(Boolean);
  const cell = Math.max(LEAST_CELL, ...across.map((vine) => LETTER * (String(placeName(vine)).length + 1)));
  const beside = Math.max(1, Math.floor((pane.state.width - AROUND - ROW_NAMES) / cell));
  const stretches = Array.from({ length: Math.ceil(across.length / beside) }, (_stretch, at) =>
    across.slice(at * beside, (at + 1) * beside),
  );
  return html`<table
    class="map"
    style=${`inline-size: ${ROW_NAMES + cell * Math.min(beside, across.length)}px`}
    role="grid"
    aria-labelledby="gap-map"
    @keydown=${(event: KeyboardEvent) => walk(pane, keys, event)}
  >
    <colgroup>
      <col style=${`inline-size: ${ROW_NAMES}px`} />
    </colgroup>
    ${stretches.map(
      (vines) =>
        html`<tbody>
          <tr>
            <th scope="col">${pane.say(GAP_SHEET_TEXTS.row)}</th>
            ${vines.map((vine) => html`<th scope="col">${placeName(vine)}</th>`)}
          </tr>
          ${places.map(
            ({ row, vines: found }) =>
              html`<tr>
                <th scope="row">${placeName(row.row)}</th>
                ${vines.map((vine) => mapCell(pane, page, row, found.get(vine), reached))}
              </tr>`,
          )}
        </tbody>`,
    )}
  </table>`;
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

/** Arrow keys walk from cell to cell as the vines stand in the block, over places without a vine. */
function walk(pane: Pane, keys: readonly (readonly (string | undefined)[])[], event: KeyboardEvent): void {
  const step = STEPS[event.key];
  const from = (event.target as Element).closest<HTMLElement>("td")?.dataset.cell;
  if (step === undefined || from === undefined) return;
  event.preventDefault();
  let row = keys.findIndex((of) => of.includes(from));
  let column = keys[row].indexOf(from);
  do {
    row += step[0];
    column += step[1];
    if (keys[row] === undefined || column < 0 || column >= keys[row].length) return;
  } while (keys[row][column] === undefined);
  const cell = keys[row][column];
  changePage(pane, "gaps", { reached: cell });
  pane.root.querySelector<HTMLElement>(`td[data-cell="${cell}"]`)?.focus();
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
