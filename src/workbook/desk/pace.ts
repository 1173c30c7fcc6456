/** How far the opening of a file has come. */
export interface Opened {
  /** The sheet that is read; undefined before the first. */
  readonly sheet: string | undefined;
  /** The last row of it that was read. */
  readonly row: number;
}

/** How long opening a file may hold the page, in milliseconds. */
const SLICE = 12;

/** Work on the page that lets it draw and take input in between, tells how far it has come, and can be stopped. */
export class Pace {
  private end: number;
  private opened: Opened = { sheet: undefined, row: 0 };
  /** Told at every breath. */
  onProgress: (opened: Opened) => void = () => {};

  /**
   * @param signal ends the work: the next breath rejects with its reason
   * @param slice milliseconds between two breaths
   */
  constructor(
    private readonly signal: AbortSignal | undefined,
    private readonly slice = SLICE,
  ) {
    this.end = performance.now() + slice;
  }

  at(opened: Opened): void {
    this.opened = opened;
  }

  /** Tells at once how far the opening has come. */
  tell(opened: Opened): void {
    this.at(opened);
    this.onProgress(opened);
  }

  /** Lets the page draw and take input where it was held long enough. */
  async breathe(): Promise<void> {
    this.signal?.throwIfAborted();
    if (performance.now() < this.end) return;
    this.onProgress(this.opened);
    await new Promise((resolve) => setTimeout(resolve));
    this.signal?.throwIfAborted();
    this.end = performance.now() + this.slice;
  }

  /** The same chunks, with a breath after each. */
  async *chunks(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
    for await (const chunk of chunks) {
      yield chunk;
      await this.breathe();
    }
  }
}
