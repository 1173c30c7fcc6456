import type { Finding } from "../../survey/checks/finding";
import { sortFindings } from "../../survey/checks/setAside";
import { ASIDE_TEXTS, FINDINGS_SHEET_TEXTS } from "../../texts/pane";
import type { Pane } from "../pane";
import { writeResult } from "../writeResult";
import { writtenDate } from "../writtenDate";
import { findingsSheet } from "../../workbook/results/findingsSheet";
import { remedyOf, sentenceOf } from "./findingTexts";

/** Writes the findings into a sheet of our own, in place of what stood there; those set aside come last. */
export async function writeFindings(pane: Pane, findings: readonly Finding[]): Promise<void> {
  const { language } = pane.state;
  const { aside } = sortFindings(pane.state.check.findings ?? [], pane.state.check.entries);
  const asides = new Map(aside.map(({ finding, entry }) => [finding, entry]));
  const content = findingsSheet([...findings, ...asides.keys()], {
    language,
    date: writtenDate(pane.today, language),
    sentence: (finding) => sentenceOf(finding, language),
    remedy: (finding) => remedyOf(finding.code, language),
    setAside: (finding) => {
      const entry = asides.get(finding);
      return entry === undefined ? "" : pane.say(ASIDE_TEXTS.entry, { ...entry });
    },
  });
  await writeResult(pane, content, FINDINGS_SHEET_TEXTS.sheet);
}
