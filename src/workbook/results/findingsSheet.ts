import { SEVERITY_TEXTS } from "../../texts/findings";
import { cellName } from "../../survey/sheets/cellName";
import type { Finding } from "../../survey/checks/finding";
import { FINDINGS_SHEET_TEXTS as TEXTS } from "../../texts/pane";
import { say, type Language } from "../../texts/language";
import type { OwnSheet } from "../surveyWorkbook";

export interface FindingsSheetOptions {
  readonly language: Language;
  /** The day of the check as a person writes it. */
  readonly date: string;
  readonly sentence: (finding: Finding) => string;
  readonly remedy: (finding: Finding) => string;
  /** Why and by whom a finding was set aside; "" for one that was not. */
  readonly setAside: (finding: Finding) => string;
}

/** The sheet that lists the findings: a table that the next run writes anew. */
export function findingsSheet(findings: readonly Finding[], options: FindingsSheetOptions): OwnSheet {
  const text = (name: keyof typeof TEXTS) => TEXTS[name][options.language];
  return {
    sheet: text("sheet"),
    title: [text("title"), say(TEXTS.made, options.language, { date: options.date })],
    headers: [
      text("severity"),
      text("where"),
      text("cell"),
      text("block"),
      text("row"),
      text("vine"),
      text("counter"),
      text("what"),
      text("remedy"),
      text("setAside"),
      text("code"),
    ],
    about: {
      thing: [text("block"), text("row"), text("vine")],
      kind: [text("where"), text("code")],
      cell: [text("cell")],
    },
    columns: [
      { width: 10 },
      { width: 12 },
      { width: 8 },
      { width: 14 },
      { width: 7 },
      { width: 7 },
      { width: 11 },
      { width: 60, wrap: true },
      { width: 40, wrap: true },
      { width: 24, wrap: true },
      { width: 18 },
    ],
    rows: findings.map((finding) => [
      SEVERITY_TEXTS[finding.severity][options.language],
      finding.sheet,
      cellName(finding.row, finding.columnNumber || 1),
      word(finding.facts.block),
      word(finding.facts.row),
      word(finding.facts.vine),
      word(finding.facts.countedBy),
      options.sentence(finding),
      options.remedy(finding),
      options.setAside(finding),
      finding.code,
    ]),
  };
}

function word(fact: Finding["facts"][string] | undefined): string | number | null {
  return typeof fact === "string" || typeof fact === "number" ? fact : null;
}
