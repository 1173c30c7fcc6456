import { ACTION_TEXTS } from "../../texts/findings";
import { html } from "lit";
import { cellName } from "../../survey/sheets/cellName";
import type { Finding } from "../../survey/checks/finding";
import { CHECK_TEXTS, FINDINGS_SHEET_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { printPage } from "../printPage";
import { writtenDate } from "../writtenDate";
import { ACTIONS } from "./checkState";
import { actionOf, sentenceOf } from "./findingTexts";

/** Prints the findings for a crew leader: by what is to be done, in the order of the sheets, with a box to tick. */
export async function printFindings(pane: Pane, findings: readonly Finding[]): Promise<void> {
  const { language } = pane.state;
  const title = pane.say(CHECK_TEXTS.printTitle);
  const groups = ACTIONS.map((action) => ({
    action,
    findings: findings.filter(({ code }) => actionOf(code) === action),
  })).filter((group) => group.findings.length > 0);
  await printPage(
    pane,
    title,
    html`<h1>${title}</h1>
      <p>${writtenDate(pane.today, language)}</p>
      ${groups.map(
        (group) =>
          html`<h2>${pane.say(ACTION_TEXTS[group.action])} (${group.findings.length})</h2>
            <table>
              <thead>
                <tr>
                  <th scope="col" class="box">${pane.say(CHECK_TEXTS.printDone)}</th>
                  <th scope="col">${pane.say(FINDINGS_SHEET_TEXTS.block)}</th>
                  <th scope="col">${pane.say(FINDINGS_SHEET_TEXTS.row)}</th>
                  <th scope="col">${pane.say(FINDINGS_SHEET_TEXTS.vine)}</th>
                  <th scope="col">${pane.say(CHECK_TEXTS.printCell)}</th>
                  <th scope="col">${pane.say(CHECK_TEXTS.printWhat)}</th>
                </tr>
              </thead>
              <tbody>
                ${group.findings.map(
                  (finding) =>
                    html`<tr>
                      <td></td>
                      <td>${finding.facts.block ?? ""}</td>
                      <td>${finding.facts.row ?? ""}</td>
                      <td>${finding.facts.vine ?? ""}</td>
                      <td>${finding.sheet} ${cellName(finding.row, finding.columnNumber || 1)}</td>
                      <td>${sentenceOf(finding, language)}</td>
                    </tr>`,
                )}
              </tbody>
            </table>`,
      )}`,
  );
}
