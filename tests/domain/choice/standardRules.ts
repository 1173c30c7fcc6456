import { choiceRules } from "../../../src/survey/decide/choice/choiceRules";
import { defaultSettings } from "../../../src/survey/settings/settings";

/** The figures of the Settings sheet before a farm changes any. */
export const RULES = choiceRules(defaultSettings());
