import { html, nothing, type TemplateResult } from "lit";
import type { UnitSystem } from "../../domain/units";
import { repeat } from "lit/directives/repeat.js";
import { isSameFigure } from "../../survey/settings/setting";
import {
  SETTINGS_BY_AREA,
  settingIn,
  settingUnit,
  shownValue,
  type Setting,
} from "../../survey/settings/settings";
import { sourceName } from "../../survey/settings/settingsTable";
import { SHEETS } from "../../survey/sheets/sheets";
import { PANE_TEXTS, SETTING_GROUPS, SETTINGS_TEXTS } from "../../texts/pane";
import { choiceField, textField } from "../fields";
import { foldsOf } from "../folds";
import { remembered } from "../ownView";
import { changePage } from "../changePage";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { progressBar } from "../progressBar";
import { unitInWords } from "../../survey/checks/findingSentence";
import { isoDay } from "../../survey/reading/serialDate";
import { movedSummary } from "./movedSummary";
import { keepSetting, readSettingsOf, showMoved } from "./settingsActions";
import type { ReadSettings, SettingEdit, SettingsState } from "./settingsState";
import { olderTable, travelSection } from "./travelSection";

export { readSettingsAnew } from "./settingsActions";

const GROUPS = Object.entries(SETTINGS_BY_AREA) as [keyof typeof SETTINGS_BY_AREA, readonly Setting[]][];

/** The page for the figures that change results. */
export function settingsPage(pane: Pane): TemplateResult {
  const page = pane.state.settings;
  return html`<h1>${pane.say(SETTINGS_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(SETTINGS_TEXTS.intro)}</p>
    ${
      page.progress === undefined
        ? nothing
        : progressBar(pane, pane.say(SETTINGS_TEXTS.progress), page.progress)
    }
    ${
      page.read === undefined
        ? page.progress === undefined
          ? html`<div class="buttons">
              <fluent-button
                id="read-settings"
                appearance="primary"
                @click=${() => {
                  changePage(pane, "settings", { by: page.by || remembered("name") });
                  pane.start((signal) => readSettingsOf(pane, signal));
                }}
                >${pane.say(SETTINGS_TEXTS.read)}</fluent-button
              >
            </div>`
          : nothing
        : figures(pane, page, page.read)
    }`;
}

function figures(pane: Pane, page: SettingsState, read: ReadSettings): TemplateResult {
  const groups = GROUPS.map(([id, settings]) => ({
    id,
    settings: settings.filter((setting) => isAbout(setting, page.search, pane)),
  })).filter(({ settings }) => settings.length > 0);
  return html`${
      read.table !== undefined
        ? nothing
        : html`<fluent-message-bar intent="info" layout="singleline"
            >${pane.say(SETTINGS_TEXTS.noTable, { sheet: pane.say(SHEETS.settings.name) })}</fluent-message-bar
          >`
    }
    ${olderTable(pane, read)}
    ${textField({
      id: "setting-search",
      label: pane.say(SETTINGS_TEXTS.search),
      value: page.search,
      onInput: (search) => changePage(pane, "settings", { search }),
    })}
    <p class="small" role="status">${groups.length === 0 ? pane.say(SETTINGS_TEXTS.none) : nothing}</p>
    <fluent-accordion
      @change=${(event: Event) =>
        changePage(pane, "settings", {
          open: new Set(foldsOf(event).flatMap(([key, open]) => (open ? [key] : []))),
        })}
    >
      ${repeat(
        groups,
        ({ id }) => id,
        ({ id, settings }) =>
          html`<fluent-accordion-item
            block
            marker-position="end"
            headinglevel="2"
            data-key=${id}
            .expanded=${page.open.has(id)}
          >
            <span slot="heading" class="heading">${pane.say(SETTING_GROUPS[id])} (${settings.length})</span>
            ${
              page.open.has(id)
                ? html`<ul class="plain">
                    ${repeat(
                      settings,
                      (setting) => setting.id,
                      (setting) => figure(pane, page, read, setting),
                    )}
                  </ul>`
                : nothing
            }
          </fluent-accordion-item>`,
      )}
    </fluent-accordion>
    ${travelSection(pane, page)}`;
}

function isAbout({ name, meaning }: Setting, search: string, pane: Pane): boolean {
  const text = `${Object.values(name).join(" ")} ${pane.say(meaning)}`.toLowerCase();
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

function figure(pane: Pane, page: SettingsState, read: ReadSettings, setting: Setting): TemplateResult {
  const units = read.season.unitSystem;
  const own = shownValue(setting.id, read.season.settings);
  const value = settingIn(setting, own, units);
  const unit = unitInWords(settingUnit(setting, units), pane.state.language);
  const isOwn = !isSameFigure(own, setting.value);
  const entry = read.table?.entries.find((one) => one.setting === setting);
  const editing = page.edit?.id === setting.id ? page.edit : undefined;
  return html`<li class="finding">
    <div class="beside">
      <h3 class="wide">${pane.say(setting.name)}</h3>
      ${
        editing === undefined
          ? html`<fluent-button
              class="change"
              size="small"
              aria-label=${`${pane.say(SETTINGS_TEXTS.change)}: ${pane.say(setting.name)}`}
              @click=${() => changePage(pane, "settings", { edit: { id: setting.id, typed: written(pane, value) } })}
              >${pane.say(SETTINGS_TEXTS.change)}</fluent-button
            >`
          : nothing
      }
    </div>
    <p>${pane.say(SETTINGS_TEXTS.value, { value, unit })}</p>
    <p class="small">${pane.say(setting.meaning)}</p>
    <p class="small quiet">${pane.say(SETTINGS_TEXTS.source, { source: sourceName(setting) })}</p>
    ${
      isOwn
        ? html`<p class="small quiet">
            ${pane.say(SETTINGS_TEXTS.ownFigure, { value: settingIn(setting, setting.value, units), unit })}
          </p>`
        : nothing
    }
    ${
      entry === undefined || entry.changedBy === ""
        ? nothing
        : html`<p class="small quiet">
            ${pane.say(SETTINGS_TEXTS.changed, {
              by: entry.changedBy,
              on: entry.changedOn === undefined ? "" : isoDay(entry.changedOn),
            })}
          </p>`
    }
    ${editing === undefined ? nothing : editor(pane, page, setting, editing, { unit, units, canReset: isOwn })}
  </li>`;
}

function written(pane: Pane, value: number | string): string {
  return typeof value === "number"
    ? new Intl.NumberFormat(pane.state.language, { useGrouping: false, maximumSignificantDigits: 12 }).format(
        value,
      )
    : value;
}

function editor(
  pane: Pane,
  { by }: SettingsState,
  setting: Setting,
  edit: SettingEdit,
  { unit, units, canReset }: { unit: string; units: UnitSystem; canReset: boolean },
): TemplateResult {
  const type = (typed: string) => changePage(pane, "settings", { edit: { id: edit.id, typed } });
  const id = "setting-value";
  return html`<div class="stack editor">
    ${
      setting.kind !== "oneOf"
        ? textField({
            id,
            label:
              setting.unit === ""
                ? pane.say(SETTINGS_TEXTS.newWord)
                : pane.say(SETTINGS_TEXTS.newValue, { unit }),
            value: edit.typed,
            onInput: type,
          })
        : choiceField({
            id,
            label: pane.say(SETTINGS_TEXTS.newWord),
            value: edit.typed,
            options: setting.choices.map((word) => ({ value: word, label: word })),
            onChoose: type,
          })
    }
    ${textField({
      id: "setting-by",
      label: pane.say(SETTINGS_TEXTS.by),
      value: by,
      onInput: (name) => changePage(pane, "settings", { by: name }),
    })}
    <p role="alert">${edit.problem ?? nothing}</p>
    ${edit.moved === undefined ? nothing : movedSummary(pane, edit.moved)}
    <div class="buttons">
      ${
        edit.moved === undefined
          ? html`<fluent-button
              id="show-moved"
              size="small"
              appearance="primary"
              @click=${() => pane.start((signal) => showMoved(pane, edit, signal))}
              >${pane.say(SETTINGS_TEXTS.show)}</fluent-button
            >`
          : html`<fluent-button
              id="keep-setting"
              size="small"
              appearance="primary"
              @click=${() => void currentOnly(pane, "settings", () => keepSetting(pane, edit))}
              >${pane.say(SETTINGS_TEXTS.keep)}</fluent-button
            >`
      }
      ${
        canReset
          ? html`<fluent-button
              id="reset-setting"
              size="small"
              @click=${() => {
                const sources = {
                  id: edit.id,
                  typed: written(pane, settingIn(setting, setting.value, units)),
                };
                pane.start((signal) => showMoved(pane, sources, signal));
              }}
              >${pane.say(SETTINGS_TEXTS.reset)}</fluent-button
            >`
          : nothing
      }
      <fluent-button
        id="leave-setting"
        size="small"
        @click=${() => changePage(pane, "settings", { edit: undefined })}
        >${pane.say(PANE_TEXTS.cancel)}</fluent-button
      >
    </div>
  </div>`;
}
