import type { Step } from "../workbook/desk/steps";

/** The file that is on the page, and which of the samples it is, if any. */
export interface KeptFile {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly sampleId: string | undefined;
}

/** What an earlier visit left behind: a file, and what was done to it, in order. */
export interface LeftWork extends KeptFile {
  /** When the last of it was done, in milliseconds since 1970. */
  readonly at: number;
  readonly steps: readonly Step[];
}

const DATABASE = "cordonbook.kept";
/** When the last step was done by work; the file by work; each step by its work and number. */
const STORES = ["works", "files", "steps"] as const;
type Stores = Readonly<Record<(typeof STORES)[number], IDBObjectStore>>;

/** Milliseconds in which a page that is being left gives up its work. */
const GIVES_UP_WITHIN = 300;

/**
 * Keeps what is done to a workbook on this machine, as it is done: the file as it was opened and every step after it.
 * Each open page holds the lock of its own work, so that no other takes it over.
 */
export class WorkKeeper {
  private id: string | undefined;
  private steps = 0;
  private unlock: () => void = () => {};
  private waiting = 0;
  private hasFailed = false;

  private constructor(private readonly database: IDBDatabase | undefined) {}

  /** Where the browser keeps nothing, a keeper that holds nothing. */
  static async open(): Promise<WorkKeeper> {
    try {
      const request = indexedDB.open(DATABASE, 1);
      request.onupgradeneeded = () => STORES.forEach((name) => request.result.createObjectStore(name));
      return new WorkKeeper(await answerOf(request));
    } catch {
      return new WorkKeeper(undefined);
    }
  }

  /** False while something that was done would be lost with the page. */
  get holdsAll(): boolean {
    return this.database !== undefined && !this.hasFailed && this.waiting === 0;
  }

  /** The newest work that no open page holds, which goes on being kept here. */
  async takeUp(): Promise<LeftWork | undefined> {
    if (!this.database) return undefined;
    const { works } = this.stores("readonly");
    const [ids, times] = await Promise.all([answerOf(works.getAllKeys()), answerOf(works.getAll())]);
    const newest = ids
      .map((id, index) => ({ id: String(id), at: Number(times[index]) }))
      .sort((one, other) => other.at - one.at);
    for (const { id, at } of newest) {
      if (!(await this.lock(id))) continue;
      const { files, steps } = this.stores("readonly");
      const [file, texts] = await Promise.all([
        answerOf(files.get(id) as IDBRequest<KeptFile>),
        answerOf(steps.getAll(stepsOf(id)) as IDBRequest<string[]>),
      ]);
      this.id = id;
      this.steps = texts.length;
      return {
        ...file,
        at,
        steps: texts.map((text) => JSON.parse(text) as Step),
      };
    }
    return undefined;
  }

  /** Keeps what was done to this file, which is the same until `forget`. */
  keep(file: KeptFile, done: readonly Step[]): void {
    if (!this.database || this.hasFailed) return;
    const isNew = this.id === undefined;
    const id = (this.id ??= `${Date.now()} ${Math.random()}`);
    if (isNew) void this.lock(id);
    try {
      const { works, files, steps } = this.stores("readwrite");
      works.put(Date.now(), id);
      if (isNew) files.put(file, id);
      for (const step of done) steps.put(JSON.stringify(step), [id, this.steps++]);
      this.follow(works.transaction);
    } catch {
      this.hasFailed = true;
    }
  }

  /** Forgets what was kept last; what is kept next is another work. */
  forget(): Promise<void> {
    return this.leave()();
  }

  /** Leaves what was kept last for a later visit, or until the answer is called, which forgets it. */
  leave(): () => Promise<void> {
    const { id, unlock } = this;
    this.id = undefined;
    this.steps = 0;
    return async () => {
      if (id === undefined || !this.database) return;
      const { works, files, steps } = this.stores("readwrite");
      await Promise.all([works.delete(id), files.delete(id), steps.delete(stepsOf(id))].map(answerOf));
      unlock();
    };
  }

  private follow(transaction: IDBTransaction): void {
    this.waiting++;
    transaction.oncomplete = () => this.waiting--;
    transaction.onabort = () => {
      this.waiting--;
      this.hasFailed = true;
    };
  }

  private stores(mode: IDBTransactionMode): Stores {
    const transaction = this.database!.transaction(STORES, mode);
    return Object.fromEntries(STORES.map((name) => [name, transaction.objectStore(name)])) as Stores;
  }

  /** True where this page has the work for itself now, and until it is left or unlocked. */
  private async lock(id: string): Promise<boolean> {
    if (!("locks" in navigator)) return true;
    return new Promise((tell) => {
      const held = (lock: Lock | null) => {
        tell(lock !== null);
        return new Promise<void>((resolve) => (this.unlock = resolve));
      };
      const signal = AbortSignal.timeout(GIVES_UP_WITHIN);
      navigator.locks.request(`${DATABASE} ${id}`, { signal }, held).catch(() => tell(false));
    });
  }
}

function stepsOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, Infinity]);
}

function answerOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("IndexedDB"));
  });
}
