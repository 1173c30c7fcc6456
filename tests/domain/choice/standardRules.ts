import { choiceRules } from "../../../src/survey/choice/choiceRules";
import { defaultSettings } from "../../../src/survey/settings";

/** The figures of the Settings sheet before a farm changes any. */
export const RULES = choiceRules(defaultSettings());
