import { html, type TemplateResult } from "lit";
import { settingOf, SETTINGS_BY_AREA, type SettingId } from "../survey/settings/settings";
import { NODES_TEXTS } from "../texts/pane";
import type { Pane } from "./pane";

/** The button that opens the page of settings at one figure. */
export function settingButton(pane: Pane, id: SettingId): TemplateResult {
  const name = settingOf(id).name[pane.state.language];
  const [area] = Object.entries(SETTINGS_BY_AREA).find(([, settings]) =>
    settings.some((setting) => setting.id === id),
  )!;
  return html`<fluent-button
    class="setting"
    size="small"
    @click=${() =>
      pane.change((state) => ({
        ...state,
        page: "settings",
        settings: { ...state.settings, search: name, open: new Set([area]) },
      }))}
    >${pane.say(NODES_TEXTS.setting, { name })}</fluent-button
  >`;
}
