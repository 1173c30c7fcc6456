import type { Text } from "./language";
import { TEXTS } from "./texts";

/** Why a file could not be read: one sentence per code, naming the file and the place. */
export const FILE_PROBLEMS: Readonly<Record<string, Text>> = TEXTS.fileProblems;
