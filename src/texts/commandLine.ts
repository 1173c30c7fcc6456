import type { Text } from "./language";
import { TEXTS } from "./texts";

/** Sentences of the command line. */
export const COMMAND_LINE = TEXTS.commandLine.sentences as Readonly<Record<string, Text>>;

/** What the options mean, as the help shows it. */
export const OPTION_TEXTS = TEXTS.commandLine.option;
