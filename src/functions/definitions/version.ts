import { VERSION_TEXT } from "../../texts/functions/work";
import { cordonFunction, oneValue } from "../cordonFunction";
import { PROJECT_VERSION } from "../version";

export const VERSION = cordonFunction({
  id: "VERSION",
  texts: VERSION_TEXT,
  parameters: [],
  result: oneValue("version"),
  examples: [
    {
      formula: "=CORDON.VERSION()",
      gives: [[PROJECT_VERSION]],
      within: 0,
      source: { work: "package.json", mark: "published" },
    },
  ],
  run: () => PROJECT_VERSION,
});
