import { html, render, type TemplateResult } from "lit";
import { linesOfAccount } from "./linesOfAccount";
import type { Pane } from "./pane";
import { printAndRemove, printFrame } from "./printFrame";

const STYLE = `
  body { font: 10pt/1.35 system-ui, sans-serif; color: #000; background: #fff; margin: 0; }
  h1 { font-size: 14pt; margin: 0 0 4pt; }
  h2 { font-size: 11pt; margin: 10pt 0 3pt; break-after: avoid; }
  p { margin: 0 0 6pt; }
  table { border-collapse: collapse; width: 100%; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  th, td { border: 0.5pt solid #000; padding: 3pt 4pt; text-align: left; vertical-align: top; }
  .box { width: 14pt; }
  .account { font-size: 8pt; margin: 6pt 0 0; }
  @page { margin: 14mm; }
`;

/**
 * Prints a page of its own, black on white, without the pane and without the workbook around it; what was read stands at
 * its end.
 *
 * @param title name of the printed document
 * @throws WorkbookProblem "notPrinted"
 */
export async function printPage(pane: Pane, title: string, content: TemplateResult): Promise<void> {
  const frame = printFrame();
  frame.title = title;
  document.body.append(frame);
  const paper = frame.contentDocument as Document;
  paper.title = title;
  paper.documentElement.lang = pane.state.language;
  const style = paper.createElement("style");
  style.textContent = STYLE;
  paper.head.append(style);
  const account = linesOfAccount(pane);
  render(html`${content}${account.map((line) => html`<p class="account">${line}</p>`)}`, paper.body);
  await printAndRemove(frame, title);
}
