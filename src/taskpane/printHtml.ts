import { printAndRemove, printFrame } from "./printFrame";

/**
 * Prints a page that is whole in itself, without the pane and without the workbook around it.
 *
 * @param page a whole HTML document without scripts
 * @throws WorkbookProblem "notPrinted"
 */
export async function printHtml(page: string): Promise<void> {
  const frame = printFrame();
  const loaded = new Promise((resolve) => frame.addEventListener("load", resolve, { once: true }));
  frame.srcdoc = page;
  document.body.append(frame);
  await loaded;
  await printAndRemove(frame, (frame.contentDocument as Document).title);
}
