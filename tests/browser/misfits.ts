import type { Page } from "playwright-core";

/**
 * What in the pane does not fit: wider than the pane or moved sideways, words broken in two, text cut off, heads of columns that
 * do not stand over them, cells whose texts touch, and a row of tabs that is out of sight or not one row, wherever the
 * pane is scrolled to. Each with its words.
 */
export function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const area = document.querySelector("#pane")!;
    const host = area.shadowRoot ? area : [...area.children].find((child) => child.shadowRoot)!;
    const root = host.shadowRoot!;
    const found: string[] = [];
    const right = host.getBoundingClientRect().left + host.clientWidth;
    const tell = (what: string, element: Element) =>
      found.push(
        `${what}: ${element.id || element.className || element.tagName} ${(element.textContent ?? "").replace(/\s+/g, " ").trim().slice(0, 60)}`,
      );
    const isUnseen = (element: Element) =>
      element.closest(".unseen, details:not([open]) > :not(summary)") !== null;
    /** Left and right of what is written in a cell; undefined where nothing is. */
    const written = (cell: Element) => {
      const walker = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
      const sides: number[] = [];
      for (let text = walker.nextNode(); text; text = walker.nextNode()) {
        const range = document.createRange();
        range.selectNodeContents(text);
        if (text.parentElement?.closest(".unseen, option") === null && text.nodeValue?.trim())
          for (const { left, right: end } of range.getClientRects()) sides.push(left, end);
      }
      return sides.length > 0 ? [Math.min(...sides), Math.max(...sides)] : undefined;
    };

    if (host.scrollWidth > host.clientWidth) tell("the pane is moved sideways", host);
    if (document.documentElement.scrollWidth > document.documentElement.clientWidth)
      found.push("the page is moved sideways");
    for (const element of root.querySelectorAll<HTMLElement>(".pane *")) {
      if (isUnseen(element) || element.getClientRects().length === 0) continue;
      const { overflowX } = getComputedStyle(element);
      const isWide = (one: Element | null) => one !== null && one.getBoundingClientRect().right > right + 1;
      if (isWide(element)) {
        if (!isWide(element.parentElement)) tell("wider than the pane", element);
      } else if (overflowX !== "visible" && element.scrollWidth > element.clientWidth + 1)
        tell(overflowX === "auto" || overflowX === "scroll" ? "moved sideways" : "cut off", element);
    }

    const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const parent = text.parentElement;
      if (!parent || parent.tagName === "STYLE" || parent.closest("code, svg") || isUnseen(parent)) continue;
      for (const { 0: word, index } of (text.nodeValue ?? "").matchAll(/[\p{L}\p{N}]{2,}/gu)) {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        const lines = [...range.getClientRects()].map(({ top }) => Math.round(top));
        if (new Set(lines).size > 1) tell(`broken word ${word}`, parent);
      }
    }

    for (const table of root.querySelectorAll("table")) {
      if (table.getClientRects().length === 0) continue;
      const heads = [...table.querySelectorAll("thead tr:last-child > *")];
      for (const row of table.querySelectorAll("tbody tr")) {
        if (row.children.length === heads.length)
          for (const [at, cell] of [...row.children].entries()) {
            const head = heads[at];
            if (head.textContent?.trim() === "" || cell.textContent?.trim() === "") continue;
            if (getComputedStyle(head).textAlign !== getComputedStyle(cell).textAlign)
              tell("head not over its column", head);
          }
        const sides = [...row.children].map(written);
        for (const [at, cell] of sides.slice(1).entries())
          if (cell && sides[at] && sides[at][1] > cell[0] - 2)
            tell("touches the next cell", row.children[at]);
      }
    }

    const tabs = [...root.querySelectorAll("fluent-tab, #tab-more")];
    const middles = tabs.map((tab) => {
      const { top, bottom } = tab.getBoundingClientRect();
      return Math.round((top + bottom) / 2);
    });
    if (Math.max(...middles) - Math.min(...middles) > 6) found.push("more than one row of tabs");
    for (const [at, tab] of tabs.slice(1).entries())
      if (tab.getBoundingClientRect().left < tabs[at].getBoundingClientRect().right - 0.5)
        tell("tabs overlap", tab);
    for (const tab of tabs) {
      const { right: end, top } = tab.getBoundingClientRect();
      if (end > right - 34 && top < host.getBoundingClientRect().top + 32)
        tell("under the host's button", tab);
    }
    host.scrollTop = host.scrollHeight;
    const { top, bottom } = tabs[0].getBoundingClientRect();
    if (top < host.getBoundingClientRect().top - 1 || bottom > innerHeight) found.push("tabs out of sight");
    host.scrollTop = 0;
    return [...new Set(found)];
  });
}
