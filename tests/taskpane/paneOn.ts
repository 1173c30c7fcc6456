import { FIRST_CARE_STATE } from "../../src/taskpane/care/careState";
import { FIRST_CHECK_STATE } from "../../src/taskpane/check/firstCheckState";
import { FIRST_CREW_STATE } from "../../src/taskpane/crew/crewState";
import { FIRST_DECIDE_STATE } from "../../src/taskpane/decide/decideState";
import { FIRST_FUNCTIONS_STATE } from "../../src/taskpane/functions/functionsState";
import { FIRST_GAPS_STATE } from "../../src/taskpane/gaps/gapsState";
import { FIRST_NODES_STATE } from "../../src/taskpane/nodes/nodesState";
import { FIRST_OUTLOOK_STATE } from "../../src/taskpane/outlook/outlookState";
import type { Pane, PaneState } from "../../src/taskpane/pane";
import { FIRST_SEASON_STATE } from "../../src/taskpane/season/seasonState";
import { FIRST_SETTINGS_STATE } from "../../src/taskpane/settings/settingsState";
import { say } from "../../src/texts/language";
import type { SurveyWorkbook } from "../../src/workbook/surveyWorkbook";
import { heldSeasonOf } from "./heldSeasonOf";

/** A day in February 2026. */
const TODAY = 46_063;

/** The pane over a workbook without being drawn: its actions change its state and tell what they did. */
export function paneOn(workbook: SurveyWorkbook): Pane {
  let state: PaneState = {
    page: "season",
    version: 0,
    language: "en",
    width: 320,
    announced: "",
    season: FIRST_SEASON_STATE,
    check: FIRST_CHECK_STATE,
    nodes: FIRST_NODES_STATE,
    gaps: FIRST_GAPS_STATE,
    decide: FIRST_DECIDE_STATE,
    crew: FIRST_CREW_STATE,
    outlook: FIRST_OUTLOOK_STATE,
    settings: FIRST_SETTINGS_STATE,
    functions: FIRST_FUNCTIONS_STATE,
    care: FIRST_CARE_STATE,
  };
  const watches = new Map<string, () => Promise<void>>();
  const pane = {
    workbook,
    held: heldSeasonOf(workbook),
    today: TODAY,
    get state() {
      return state;
    },
    change: (next: (now: PaneState) => PaneState) => void (state = next(state)),
    say: (text, facts) => say(text, state.language, facts),
    tell: (intent, text, facts) =>
      pane.change((now) => ({ ...now, message: { intent, text: say(text, now.language, facts) } })),
    announce: () => undefined,
    keepWatch: (name, stop) => void watches.set(name, stop),
    async endWatch(name) {
      await watches.get(name)?.();
      watches.delete(name);
    },
  } as Partial<Pane> as Pane;
  return pane;
}
