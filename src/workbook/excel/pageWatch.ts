/**
 * One kind of event of Excel, asked for once a page and handed to all who watch. A registration belongs to the request
 * context that made it (https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-events), so that a second one
 * that is taken back could silence the first; Excel therefore tells until the page is closed.
 */
export class PageWatch<Told> {
  private readonly listeners = new Set<(told: Told) => void>();
  private registration: Promise<void> | undefined;

  /** @param register asks Excel to tell; a refusal is tried again by the next who watches */
  constructor(private readonly register: () => Promise<void>) {}

  async watch(onTold: (told: Told) => void): Promise<() => Promise<void>> {
    const listener = (told: Told) => onTold(told);
    this.listeners.add(listener);
    this.registration ??= this.register();
    try {
      await this.registration;
    } catch (error) {
      this.listeners.delete(listener);
      this.registration = undefined;
      throw error;
    }
    return async () => void this.listeners.delete(listener);
  }

  /** Tells those who watch now, and still do once it is known what; without anybody nothing is looked up. */
  async tell(told: () => readonly Told[] | Promise<readonly Told[]>): Promise<void> {
    const listening = [...this.listeners];
    if (listening.length === 0) return;
    for (const one of await told())
      for (const listener of listening) if (this.listeners.has(listener)) listener(one);
  }
}
