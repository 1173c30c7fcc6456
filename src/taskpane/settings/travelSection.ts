import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { SettingDifference } from "../../survey/settings/settingDifferences";
import { settingIn, settingOf, settingUnit } from "../../survey/settings/settings";
import { unitInWords } from "../../survey/checks/findingSentence";
import { upgradeSettings } from "../../survey/settings/upgradeSettings";
import { SETTINGS_TEXTS } from "../../texts/pane";
import { SETTINGS_STEPS } from "../../texts/settings";
import { SETTINGS_TRAVEL } from "../../texts/settingsTravel";
import { textField, tickField } from "../fields";
import { changePage } from "../changePage";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { isoDay } from "../../survey/reading/serialDate";
import { movedSummary } from "./movedSummary";
import type { OtherWorkbook, ReadSettings, SettingsState } from "./settingsState";
import {
  bringUpToDate,
  compareWith,
  copyTicked,
  showCopyMoves,
  tickDifference,
  undoTravel,
} from "./travelActions";

/** Names that are listed of those that a step adds. */
const NAMES_LISTED = 3;

/** What an older Settings table needs, with the button that does it; nothing for a table of the present shape. */
export function olderTable(pane: Pane, { table }: ReadSettings): TemplateResult | typeof nothing {
  const steps = table === undefined ? [] : (upgradeSettings(table.area)?.steps ?? []);
  if (steps.length === 0) return nothing;
  return html`<div id="older-settings" class="stack">
    <p>${pane.say(SETTINGS_TRAVEL.older)}</p>
    <ul>
      ${steps.map(
        ({ step, names }) =>
          html`<li class="small">${pane.say(SETTINGS_STEPS[step], { names: shortList(pane, names) })}</li>`,
      )}
    </ul>
    <div class="buttons">
      <fluent-button
        id="upgrade-settings"
        size="small"
        appearance="primary"
        @click=${() => void currentOnly(pane, "settings", () => bringUpToDate(pane))}
        >${pane.say(SETTINGS_TRAVEL.upgrade)}</fluent-button
      >
    </div>
  </div>`;
}

function shortList(pane: Pane, names: readonly string[]): string {
  const listed = names.slice(0, NAMES_LISTED).join(", ");
  const more = names.length - NAMES_LISTED;
  return more > 0 ? pane.say(SETTINGS_TRAVEL.moreNames, { names: listed, more }) : listed;
}

/** The part of the page that compares with another workbook and copies figures from it. */
export function travelSection(pane: Pane, page: SettingsState): TemplateResult {
  return html`<h2>${pane.say(SETTINGS_TRAVEL.title)}</h2>
    <p class="small quiet">${pane.say(SETTINGS_TRAVEL.intro)}</p>
    <div class="stack">
      <input
        id="other-workbook"
        type="file"
        hidden
        accept=".xlsx,.xlsm,.csv"
        @change=${(event: Event) => {
          const chosen = event.currentTarget as HTMLInputElement;
          const [file] = chosen.files ?? [];
          if (file) void pane.attempt(() => compareWith(pane, file)).then(() => (chosen.value = ""));
        }}
      />
      <div class="buttons">
        <fluent-button
          id="choose-workbook"
          size="small"
          @click=${() => (pane.root.querySelector("#other-workbook") as HTMLInputElement).click()}
          >${pane.say(SETTINGS_TRAVEL.file)}</fluent-button
        >
      </div>
      ${page.other === undefined ? nothing : differences(pane, page, page.other)}
      ${
        page.undo === undefined || page.undo.length === 0
          ? nothing
          : html`<div class="buttons">
              <fluent-button
                id="undo-travel"
                size="small"
                @click=${() => void pane.attempt(() => undoTravel(pane))}
                >${pane.say(SETTINGS_TRAVEL.undo)}</fluent-button
              >
            </div>`
      }
    </div>`;
}

function differences(pane: Pane, { by }: SettingsState, other: OtherWorkbook): TemplateResult {
  const { file, ticked, moved, problem } = other;
  const count = other.differences.length;
  if (count === 0) return html`<p role="status">${pane.say(SETTINGS_TRAVEL.same, { file })}</p>`;
  return html`<p role="status">${pane.say(SETTINGS_TRAVEL.differ, { count, file })}</p>
    <ul id="differences" class="plain">
      ${repeat(
        other.differences,
        ({ id }) => id,
        (each, index) => difference(pane, other, each, index),
      )}
    </ul>
    ${textField({
      id: "copy-by",
      label: pane.say(SETTINGS_TEXTS.by),
      value: by,
      onInput: (name) => changePage(pane, "settings", { by: name }),
    })}
    <p role="alert">${problem ?? nothing}</p>
    ${moved === undefined ? nothing : movedSummary(pane, moved)}
    <div class="buttons">
      ${
        moved === undefined
          ? html`<fluent-button
              id="show-copy-moves"
              size="small"
              appearance="primary"
              @click=${() => pane.start((signal) => showCopyMoves(pane, other, signal))}
              >${pane.say(SETTINGS_TRAVEL.show)}</fluent-button
            >`
          : html`<fluent-button
              id="copy-settings"
              size="small"
              appearance="primary"
              @click=${() => void currentOnly(pane, "settings", () => copyTicked(pane, other))}
              >${pane.say(SETTINGS_TRAVEL.copy, { count: ticked.size })}</fluent-button
            >`
      }
    </div>`;
}

function difference(
  pane: Pane,
  other: OtherWorkbook,
  { id, here, there }: SettingDifference,
  index: number,
): TemplateResult {
  const setting = settingOf(id);
  const units = pane.state.settings.read!.season.unitSystem;
  const unit = settingUnit(setting, units);
  const facts = {
    setting: pane.say(setting.name),
    unit: unit === "share" ? "" : unitInWords(unit, pane.state.language),
    here: settingIn(setting, here.value, units),
    there: settingIn(setting, there.value, units),
  };
  return html`<li>
    ${tickField({
      id: `difference-${index}`,
      label: pane.say(SETTINGS_TRAVEL.difference, facts).replace(/ +(?=,|$)/g, ""),
      ticked: other.ticked.has(id),
      onTick: () => tickDifference(pane, other, id),
    })}
    ${
      there.changedBy === ""
        ? nothing
        : html`<p class="small quiet">
            ${pane.say(SETTINGS_TRAVEL.thereBy, {
              by: there.changedBy,
              on: there.changedOn === undefined ? "" : isoDay(there.changedOn),
            })}
          </p>`
    }
  </li>`;
}
