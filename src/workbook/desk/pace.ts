/** How far the opening of a file has come. */
export interface Opened {
  /** The sheet that is read; undefined before the first. */
  readonly sheet: string | undefined;
  /** The last row of it that was read. */
  readonly row: number;
}

/** How long reading may hold the page, in milliseconds. */
const SLICE = 12;

/** Work on the page that lets it draw and take input in between, tells how far it has come, and can be stopped. */
export class Pace {
  private end = performance.now() + SLICE;
  private opened: Opened = { sheet: undefined, row: 0 };

  /**
   * @param signal ends the work: the next breath rejects with its reason
   * @param onProgress told at every breath
   */
  constructor(
    private readonly signal: AbortSignal | undefined,
    private readonly onProgress: (opened: Opened) => void = () => {},
  ) {}

  at(opened: Opened): void {
    this.opened = opened;
  }

  /** Lets the page draw and take input where it was held long enough. */
  async breathe(): Promise<void> {
    this.signal?.throwIfAborted();
    if (performance.now() < this.end) return;
    this.onProgress(this.opened);
    await new Promise((resolve) => setTimeout(resolve));
    this.signal?.throwIfAborted();
    this.end = performance.now() + SLICE;
  }

  /** The same chunks, with a breath after each. */
  async *chunks(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
    for await (const chunk of chunks) {
      yield chunk;
      await this.breathe();
    }
  }
}
