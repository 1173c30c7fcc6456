import { TEXTS } from "./texts";

/** What the desk page's server says on the command line. */
export const DESK_SERVER = TEXTS.deskServer;
