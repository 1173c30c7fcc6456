/** Opens a dialog when it has come onto the page; given to lit's `ref` on the dialog. */
export function showOnce(element: Element | undefined): void {
  if (element === undefined) return;
  requestAnimationFrame(() => {
    if (element.isConnected) (element as HTMLElement & { show(): void }).show();
  });
}
