/** A frame that nobody sees, for a page that is to be printed without the pane around it. */
export function printFrame(): HTMLIFrameElement {
  const frame = document.createElement("iframe");
  frame.style.cssText = "position:fixed;inset:auto 0 0 auto;inline-size:0;block-size:0;border:0";
  frame.setAttribute("aria-hidden", "true");
  return frame;
}

/** Prints what stands in the frame under a title of its own, and takes the frame away afterwards. */
export function printAndRemove(frame: HTMLIFrameElement, title: string): void {
  const view = frame.contentWindow as Window;
  const titleBefore = document.title;
  view.addEventListener("afterprint", () => {
    document.title = titleBefore;
    setTimeout(() => frame.remove(), 0);
  });
  document.title = title;
  view.focus();
  view.print();
}
