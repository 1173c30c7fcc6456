import { WorkbookProblem } from "../workbook/surveyWorkbook";

/** How long after the call printing may begin; hosts that print begin within the call itself. */
const PATIENCE_MS = 1500;

/** A frame that nobody sees, for a page that is to be printed without the pane around it. */
export function printFrame(): HTMLIFrameElement {
  const frame = document.createElement("iframe");
  frame.style.cssText = "position:fixed;inset:auto 0 0 auto;inline-size:0;block-size:0;border:0";
  frame.setAttribute("aria-hidden", "true");
  return frame;
}

/**
 * Prints what stands in the frame under a title of its own, and takes the frame away afterwards. Excel for Mac, and a
 * frame that may show no dialogs, do nothing at all and say nothing
 * (https://html.spec.whatwg.org/multipage/timers-and-user-prompts.html#printing): then no beforeprint comes.
 *
 * @throws WorkbookProblem "notPrinted" when printing did not begin
 */
export async function printAndRemove(frame: HTMLIFrameElement, title: string): Promise<void> {
  const view = frame.contentWindow as Window;
  const titleBefore = document.title;
  const restore = () => {
    document.title = titleBefore;
    setTimeout(() => frame.remove(), 0);
  };
  const begun = new Promise<boolean>((resolve) => {
    view.addEventListener("beforeprint", () => resolve(true), { once: true });
    setTimeout(() => resolve(false), PATIENCE_MS);
  });
  view.addEventListener("afterprint", restore, { once: true });
  document.title = title;
  view.focus();
  view.print();
  if (await begun) return;
  restore();
  throw new WorkbookProblem("notPrinted");
}
