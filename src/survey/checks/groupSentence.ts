import { FINDING_TEXTS, GROUP_TEXTS } from "../../texts/findings";
import { sameText, say, type Language, type Text } from "../../texts/language";
import { TEXTS } from "../../texts/texts";
import { isoDay, isPlausibleDay } from "../reading/serialDate";
import { isCellError } from "../sheets/cell";
import type { Finding } from "./finding";
import type { FindingCause, FindingGroup } from "./findingGroups";
import { findingSentence } from "./findingSentence";
import type { CellMend } from "./mendOf";

/** A group as a heading: kind, cause and how many findings. */
export function groupHeading({ code, cause, findings }: FindingGroup, language: Language): string {
  return say(GROUP_TEXTS.heading, language, {
    title: say(FINDING_TEXTS[code].title, language),
    cause: causeInWords(cause, findings[0], language),
    findings: findings.length,
  });
}

function causeInWords({ by, value }: FindingCause, finding: Finding, language: Language): string {
  const kinds: Readonly<Record<string, Text>> = {
    ...TEXTS.reading.kinds,
    bothWays: GROUP_TEXTS.bothWays,
    noYear: GROUP_TEXTS.noYear,
  };
  if (by === "kind") return say(kinds[value], language);
  if (finding.code === "missingColumn") return findingSentence(finding, language);
  return say(GROUP_TEXTS[by], language, { value: value.replace(/\s*\([^)]*\)/g, "") });
}

/** What would be changed: each change that is different once, three at most. */
export function mendSentence(mends: readonly CellMend[], language: Language): string {
  const changes = [...new Set(mends.map((mend) => changeInWords(mend, language)))];
  const shown = changes.length > MOST_SHOWN ? [...changes.slice(0, MOST_SHOWN), "…"] : changes;
  return say(mends.every(({ isCertain }) => isCertain) ? GROUP_TEXTS.certain : GROUP_TEXTS.likely, language, {
    changes: shown,
  });
}

const MOST_SHOWN = 3;

/** A change of one cell: what it holds and what it would hold. */
export function changeInWords({ from, to, other }: CellMend, language: Language): string {
  const written = (value: CellMend["from"]) => {
    if (value === null || value === "") return say(GROUP_TEXTS.blank, language);
    if (typeof value === "number")
      return isPlausibleDay(value) ? isoDay(value) : say(NUMBER, language, { value });
    return say(GROUP_TEXTS.word, language, { value: isCellError(value) ? value.error : String(value) });
  };
  const change = say(GROUP_TEXTS.becomes, language, { from: written(from), to: written(to) });
  return other === undefined ? change : say(GROUP_TEXTS.orElse, language, { change, other: written(other) });
}

const NUMBER = sameText("{value}");
