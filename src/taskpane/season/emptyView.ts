import { html, nothing, type TemplateResult } from "lit";
import type { UnitSystem } from "../../domain/units";
import { LANGUAGES, type Language } from "../../texts/language";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import { TEXTS } from "../../texts/texts";
import { changePage } from "../changePage";
import { choiceField } from "../fields";
import type { Pane, WaysOn } from "../pane";
import { countedVine } from "./countedVine";
import { layOutView } from "./layOutView";
import type { SeasonPicture } from "./seasonState";

const LANGUAGE_NAMES: Readonly<Record<Language, string>> = TEXTS.language.name;

/** A workbook without a count: what is counted on a vine, and the ways on. */
export function emptyView(pane: Pane, { season }: SeasonPicture): TemplateResult {
  const [blocks] = season.tables("blocks");
  const canLayOut = blocks !== undefined && season.tables("cordons").length > 0;
  return html`<h1>${pane.say(SEASON_TEXTS.empty.title)}</h1>
    ${countedVine(pane)}
    <p class="small quiet">${pane.say(SEASON_TEXTS.empty.why)}</p>
    ${canLayOut ? layOutView(pane, blocks) : nothing}
    ${pane.ways === undefined ? nothing : waysOn(pane, pane.ways, canLayOut)}`;
}

function waysOn(pane: Pane, ways: WaysOn, isBegun: boolean): TemplateResult {
  const { begin } = pane.state.season;
  const language = begin.language ?? pane.state.language;
  const button = (id: string, text: string, action: () => Promise<void> | void, first = false) =>
    html`<fluent-button
      id=${id}
      appearance=${first ? "primary" : "outline"}
      @click=${() => void pane.attempt(action)}
      >${text}</fluent-button
    >`;
  return html`<div class="pair">
      ${choiceField({
        id: "begin-units",
        label: pane.say(SEASON_TEXTS.empty.units),
        value: begin.units,
        options: [
          { value: "US", label: pane.say(SEASON_TEXTS.empty.us) },
          { value: "metric", label: pane.say(SEASON_TEXTS.empty.metric) },
        ],
        onChoose: (units) => changePage(pane, "season", { begin: { ...begin, units: units as UnitSystem } }),
      })}
      ${choiceField({
        id: "begin-language",
        label: pane.say(SEASON_TEXTS.empty.language),
        value: language,
        options: LANGUAGES.map((value) => ({ value, label: LANGUAGE_NAMES[value] })),
        onChoose: (chosen) =>
          changePage(pane, "season", { begin: { ...begin, language: chosen as Language } }),
      })}
    </div>
    <div class="buttons">
      ${button("way-begin", pane.say(SEASON_TEXTS.empty.begin), () => ways.begin(begin.units, language), !isBegun)}
      ${button("way-sample", pane.say(SEASON_TEXTS.empty.sample), () => ways.sample())}
      ${ways.file === undefined ? nothing : button("way-file", pane.say(SEASON_TEXTS.empty.file), ways.file)}
    </div>
    ${ways.file === undefined ? html`<p class="small quiet">${pane.say(SEASON_TEXTS.empty.inExcel)}</p>` : nothing}`;
}
