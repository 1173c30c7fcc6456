import type { Text } from "../language";

/** What a person reads about one kind of finding. */
export interface FindingText {
  /** A few words for a list's heading. */
  readonly title: Text;
  /** What was found, with the finding's facts; the place in the vineyard stands before it. */
  readonly sentence: Text;
  /** Why it matters. */
  readonly why: Text;
  /** What to do about it. */
  readonly remedy: Text;
}

export const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });
