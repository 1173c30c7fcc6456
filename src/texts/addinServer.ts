import { TEXTS } from "./texts";

/** What the scripts say that try the add-in on one machine. */
export const ADDIN_SERVER = TEXTS.addinServer;
