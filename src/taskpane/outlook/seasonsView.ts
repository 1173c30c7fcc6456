import { html, nothing, type TemplateResult } from "lit";
import { Refusal } from "../../domain/refusal";
import { threeDigits } from "../../survey/crop/cropWords";
import { blockLoss, withWinter, type BlockLoss, type WinterRow } from "../../survey/season/winterRows";
import type { Season } from "../../survey/season/season";
import { SEASON_SHEET } from "../../texts/season";
import { SEASONS_TEXTS } from "../../texts/seasons";
import { choiceField } from "../fields";
import { failureSentence } from "../failureSentence";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import type { OutlookState, SeasonsFound } from "./outlookState";
import { isKept, keptSeasons, seasonSheet } from "./seasonSheet";
import { placeName } from "../../texts/placeName";

/** Live spurs, gaps and trunks of the block over the winters, its loss a year, and blocks below the floor. */
export function seasonsView(
  pane: Pane,
  { seasons, season }: OutlookState,
  block: string,
): TemplateResult | typeof nothing {
  if (seasons === undefined || season === undefined) return nothing;
  const all = withWinter(seasons.kept.rows, seasons.now);
  if (all.length === 0) return nothing;
  const own = all.filter((row) => row.block.toLowerCase() === block.toLowerCase());
  const { sheet } = seasons.kept;
  return html`<section class="stack" aria-labelledby="seasons">
    <h2 id="seasons">${pane.say(SEASONS_TEXTS.title)}</h2>
    <p class="small quiet">${pane.say(SEASONS_TEXTS.intro, { sheet })}</p>
    ${keepView(pane, seasons)} ${own.length === 0 ? nothing : blockView(pane, seasons, season, own)}
    ${belowView(pane, season, all)}
  </section>`;
}

function keepView(pane: Pane, { kept, now }: SeasonsFound): TemplateResult | typeof nothing {
  if (now.length === 0) return nothing;
  const [{ year }] = now;
  if (year === 0) return html`<p id="undated" class="small">${pane.say(SEASONS_TEXTS.undated)}</p>`;
  if (isKept(kept, now)) return html`<p class="small">${pane.say(SEASONS_TEXTS.kept, { year })}</p>`;
  return html`<p class="small">${pane.say(SEASONS_TEXTS.notKept, { year })}</p>
    <div class="buttons">
      <fluent-button
        id="keep-season"
        size="small"
        @click=${() => void currentOnly(pane, "outlook", () => keepSeason(pane))}
        >${pane.say(SEASONS_TEXTS.write, { year })}</fluent-button
      >
    </div>`;
}

/** Writes this winter beside the winters that the sheet holds at this moment; nothing that stands there is lost. */
async function keepSeason(pane: Pane): Promise<void> {
  const { language, outlook } = pane.state;
  if (outlook.seasons === undefined) return;
  const { now } = outlook.seasons;
  const kept = await keptSeasons(pane.workbook, language);
  if (kept.foreign) {
    pane.tell("warning", SEASONS_TEXTS.foreign, { sheet: kept.sheet });
    return;
  }
  if (kept.unreadable > 0) {
    pane.tell("warning", SEASONS_TEXTS.lost, { count: kept.unreadable, sheet: kept.sheet });
    return;
  }
  const content = seasonSheet(kept, now, language, writtenDate(pane.today, language));
  await writeResult(pane, content, SEASON_SHEET);
  change(pane, { kept: await keptSeasons(pane.workbook, language) });
}

function change(pane: Pane, part: Partial<SeasonsFound>): void {
  pane.change((state) => {
    const { seasons } = state.outlook;
    return seasons === undefined
      ? state
      : { ...state, outlook: { ...state.outlook, seasons: { ...seasons, ...part } } };
  });
}

function blockView(pane: Pane, seasons: SeasonsFound, season: Season, own: readonly WinterRow[]) {
  const numbers = [...new Set(own.map(({ row }) => row))];
  const shown = seasons.row === "" ? own : own.filter(({ row }) => String(placeName(row)) === seasons.row);
  return html`${choiceField({
      id: "season-row",
      label: pane.say(SEASONS_TEXTS.row),
      value: seasons.row === "" ? "all" : seasons.row,
      options: [
        { value: "all", label: pane.say(SEASONS_TEXTS.allRows) },
        ...numbers.map((row) => ({ value: String(placeName(row)), label: String(placeName(row)) })),
      ],
      onChoose: (row) => change(pane, { row: row === "all" ? "" : row }),
    })}
    <table id="season-years" class="small">
      <thead>
        <tr>
          <th scope="col">${pane.say(SEASONS_TEXTS.year)}</th>
          <th scope="col" class="number">${pane.say(SEASONS_TEXTS.liveSpurs)}</th>
          <th scope="col" class="number">${pane.say(SEASONS_TEXTS.share)}</th>
          <th scope="col" class="number">${pane.say(SEASONS_TEXTS.gaps)}</th>
          <th scope="col" class="number">${pane.say(SEASONS_TEXTS.liveTrunks)}</th>
        </tr>
      </thead>
      <tbody>
        ${yearsOf(shown).map(
          ({ year, liveSpurs, positions, gaps, liveTrunks }) =>
            html`<tr>
              <th scope="row">${year}</th>
              <td class="number">${liveSpurs}</td>
              <td class="number">${percent(pane, liveSpurs / positions)}</td>
              <td class="number">${gaps}</td>
              <td class="number">${liveTrunks}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <div id="season-loss">${lossView(pane, season, own)}</div>`;
}

function lossView(pane: Pane, season: Season, own: readonly WinterRow[]): TemplateResult {
  const confidence = season.settings.confidenceOfRanges;
  try {
    return lossWords(pane, blockLoss(own, own[0].block, confidence, floorOf(season)), confidence);
  } catch (failure) {
    if (!(failure instanceof Refusal)) throw failure;
    return html`<p>${failureSentence(failure, pane.state.language)}</p>`;
  }
}

function lossWords(
  pane: Pane,
  { lossAYear, rows, pairs, yearsToFloor, liveShare, floor }: BlockLoss,
  confidence: number,
): TemplateResult {
  const years = (value: number) =>
    value === Infinity ? pane.say(SEASONS_TEXTS.never) : threeDigits(value, pane.state.language);
  const facts = {
    floor: percent(pane, floor),
    low: years(yearsToFloor.low),
    likely: years(yearsToFloor.likely),
    high: years(yearsToFloor.high),
  };
  const reached = yearsToFloor.likely < Infinity ? SEASONS_TEXTS.toFloor : SEASONS_TEXTS.notReached;
  return html`<p>
      ${pane.say(SEASONS_TEXTS.loss, {
        low: percent(pane, lossAYear.low),
        likely: percent(pane, lossAYear.likely),
        high: percent(pane, lossAYear.high),
        confidence: Math.round(confidence * 100),
        rows,
        pairs,
      })}
      ${lossAYear.low < 0 ? pane.say(SEASONS_TEXTS.gain) : ""}
    </p>
    ${liveShare <= floor ? nothing : html`<p>${pane.say(reached, facts)}</p>`}`;
}

function belowView(pane: Pane, season: Season, all: readonly WinterRow[]): TemplateResult {
  const floor = floorOf(season);
  const below = [...new Set(all.map(({ block }) => block.toLowerCase()))].flatMap((block) => {
    const latest = yearsOf(all.filter((row) => row.block.toLowerCase() === block)).at(-1)!;
    const share = latest.liveSpurs / latest.positions;
    return share < floor ? [{ block: latest.block, share: percent(pane, share), year: latest.year }] : [];
  });
  return html`<p id="below-floor">
    ${
      below.length === 0
        ? pane.say(SEASONS_TEXTS.noneBelow, { floor: percent(pane, floor) })
        : pane.say(SEASONS_TEXTS.below, {
            floor: percent(pane, floor),
            blocks: below.map((facts) => pane.say(SEASONS_TEXTS.blockShare, facts)),
          })
    }
  </p>`;
}

/** Sums of the rows, winter by winter, oldest first. */
function yearsOf(rows: readonly WinterRow[]) {
  const years = [...new Set(rows.map(({ year }) => year))].sort((one, other) => one - other);
  return years.map((year) => {
    const own = rows.filter((row) => row.year === year);
    const sum = (column: "liveSpurs" | "positions" | "gaps" | "liveTrunks") =>
      own.reduce((total, row) => total + row[column], 0);
    return {
      block: own[0].block,
      year,
      liveSpurs: sum("liveSpurs"),
      positions: sum("positions"),
      gaps: sum("gaps"),
      liveTrunks: sum("liveTrunks"),
    };
  });
}

const floorOf = (season: Season) => season.settings.floorOfLiveSpurs;

const percent = (pane: Pane, share: number) => threeDigits(share * 100, pane.state.language);
