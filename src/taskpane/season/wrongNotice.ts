import { html, nothing, type TemplateResult } from "lit";
import type { Finding } from "../../survey/checks/finding";
import type { SheetId } from "../../survey/sheets/column";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import { sentenceOf } from "../check/findingTexts";
import { jumpButton } from "../jumpButton";
import type { PageId, Pane } from "../pane";

/** Sheets whose rows go into what a page shows. */
const USES: Partial<Readonly<Record<PageId, readonly SheetId[]>>> = {
  nodes: ["cordons", "vines", "blocks", "budCuts"],
  gaps: ["cordons", "vines", "blocks"],
  decide: ["cordons", "vines", "blocks"],
  crew: ["cordons", "vines", "blocks", "budCuts"],
  outlook: ["cordons", "vines", "blocks", "budCuts", "harvest"],
};
const LISTED = 10;

/** Open findings that call a cell wrong in rows that a page uses, folded below one sentence. */
export function wrongNotice(pane: Pane, page: PageId): TemplateResult | typeof nothing {
  const { picture, version } = pane.state.season;
  const uses = USES[page];
  if (picture === undefined || uses === undefined || version !== pane.state.version) return nothing;
  const sheets = new Set(uses.flatMap((id) => picture.season.tables(id).map(({ sheet }) => sheet)));
  const wrong = picture.wrong.filter(({ sheet }) => sheets.has(sheet));
  if (wrong.length === 0) return nothing;
  return html`<details id="wrong-here" class="wrong-here">
    <summary>${pane.say(SEASON_TEXTS.wrongHere, { wrong: wrong.length })}</summary>
    <ul class="small plain stack">
      ${wrong.slice(0, LISTED).map((finding) => line(pane, finding))}
    </ul>
  </details>`;
}

function line(pane: Pane, finding: Finding): TemplateResult {
  const { sheet, row, columnNumber } = finding;
  return html`<li>
    ${jumpButton(pane, { sheet, row, column: Math.max(1, columnNumber) })}
    ${sentenceOf(finding, pane.state.language)}
  </li>`;
}
