import type { CheckState } from "./checkState";
import { EVERYTHING } from "./findingFilter";
import { TYPING_OFF } from "./typingState";

export const FIRST_CHECK_STATE: CheckState = {
  typing: TYPING_OFF,
  entries: [],
  choosing: false,
  leftOut: new Set(),
  filter: EVERYTHING,
  open: new Map(),
};
