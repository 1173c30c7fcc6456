/** A part of the page that the keyboard goes to as a whole. */
export interface PagePart {
  readonly element: HTMLElement;
  /** Puts the keyboard into it. */
  enter(): void;
}

/**
 * F6 goes round the parts of the page, Shift+F6 the other way. The grid takes Tab for its cells, so Escape and then Tab
 * leaves it for the part after it, with Shift for the one before; an Escape that ends the typing of a cell only ends that.
 */
export function keyboardWalk(parts: readonly PagePart[], grid: HTMLElement, isTyping: () => boolean): void {
  let isLeaving = false;
  const within = () => parts.findIndex(({ element }) => element.contains(document.activeElement));
  addEventListener(
    "keydown",
    (event) => {
      const isFromGrid = grid.contains(document.activeElement);
      const leaves = event.key === "Tab" && isLeaving && isFromGrid;
      if (event.key === "F6" || leaves) {
        event.preventDefault();
        event.stopPropagation();
        const step = event.shiftKey ? -1 : 1;
        const from = within();
        const to = from < 0 ? (event.shiftKey ? parts.length - 1 : 0) : from + step + parts.length;
        parts[to % parts.length].enter();
      }
      if (event.key !== "Shift") isLeaving = event.key === "Escape" && isFromGrid && !isTyping();
    },
    { capture: true },
  );
  grid.addEventListener("pointerdown", () => (isLeaving = false), { capture: true });
}
