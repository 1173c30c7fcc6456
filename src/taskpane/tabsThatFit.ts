/** Room for Excel's own button in the top right corner. */
const CORNER = 38;
/** Left and right of each tab's words together, in which the pane's styles agree. */
const PADDING = 11;

let measure: CanvasRenderingContext2D | null | undefined;

/** The pages whose tabs fit beside More in a pane of that width; the chosen page is always one of them. */
export function tabsThatFit<Page extends string>(
  pages: readonly Page[],
  chosen: Page,
  name: (page: Page) => string,
  more: string,
  { width, fontFamily }: { readonly width: number; readonly fontFamily: string },
): readonly Page[] {
  measure ??= document.createElement("canvas").getContext("2d");
  if (measure) measure.font = `600 12px ${fontFamily}`;
  const wide = (words: string) => Math.ceil(measure?.measureText(words).width ?? 7 * words.length) + PADDING;
  let room = width - CORNER - wide(more) - (pages.includes(chosen) ? 0 : wide(name(chosen)));
  const fit: Page[] = [];
  for (const [at, page] of pages.entries()) {
    const own = pages.includes(chosen) && pages.indexOf(chosen) > at ? wide(name(chosen)) : 0;
    if (wide(name(page)) + own > room) break;
    room -= wide(name(page));
    fit.push(page);
  }
  return fit.includes(chosen) ? fit : [...fit, chosen];
}
