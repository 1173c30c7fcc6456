/**
 * Prints a page that is whole in itself, without the pane and without the workbook around it.
 *
 * @param page a whole HTML document without scripts
 */
export async function printHtml(page: string): Promise<void> {
  const frame = document.createElement("iframe");
  frame.style.cssText = "position:fixed;inset:auto 0 0 auto;inline-size:0;block-size:0;border:0";
  frame.setAttribute("aria-hidden", "true");
  const loaded = new Promise((resolve) => frame.addEventListener("load", resolve, { once: true }));
  frame.srcdoc = page;
  document.body.append(frame);
  await loaded;
  const view = frame.contentWindow as Window;
  const titleBefore = document.title;
  view.addEventListener("afterprint", () => {
    document.title = titleBefore;
    setTimeout(() => frame.remove(), 0);
  });
  document.title = view.document.title;
  view.focus();
  view.print();
}
