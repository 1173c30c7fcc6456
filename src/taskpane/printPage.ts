import { html, render, type TemplateResult } from "lit";
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
  @page { margin: 14mm; }
`;

/**
 * Prints a page of its own, black on white, without the pane and without the workbook around it.
 *
 * @param title name of the printed document
 * @throws WorkbookProblem "notPrinted"
 */
export async function printPage(title: string, lang: string, content: TemplateResult): Promise<void> {
  const frame = printFrame();
  frame.title = title;
  document.body.append(frame);
  const paper = frame.contentDocument as Document;
  paper.title = title;
  paper.documentElement.lang = lang;
  const style = paper.createElement("style");
  style.textContent = STYLE;
  paper.head.append(style);
  render(html`${content}`, paper.body);
  await printAndRemove(frame, title);
}
