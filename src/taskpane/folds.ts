/** Which items of an accordion are open, by their data-key, after the accordion has changed them. */
export function foldsOf(event: Event): (readonly [key: string, open: boolean])[] {
  const items = [...(event.currentTarget as HTMLElement).children] as (HTMLElement & { expanded: boolean })[];
  return items.map(({ dataset, expanded }) => [dataset.key ?? "", expanded] as const);
}
