/** How far an action has come, and what it does. */
export interface Progress {
  readonly text: string;
  /** 0 to 1. */
  readonly done: number;
}
