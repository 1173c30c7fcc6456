import { randomSource } from "../../../sample-workbooks/make/randomSource";
import { FINDING_KINDS } from "../../../src/survey/checks/checks";
import { allFindings } from "../../../src/survey/checks/checkSeason";
import type { Finding, Severity } from "../../../src/survey/checks/finding";
import { readSeason } from "../../../src/survey/reading/readSeason";
import { Field, type Mistake, type Planted } from "../../../sample-workbooks/make/mistakes/mistake";
import { MISTAKES } from "../../../sample-workbooks/make/mistakes/mistakes";
import type { Season } from "../../../sample-workbooks/make/season";
import { plausibleSeason } from "./plausibleSeason";
import { seasonAreas } from "./seasonAreas";

/** How well one kind of finding does. */
export interface KindQuality {
  readonly code: string;
  readonly severity: Severity;
  readonly planted: number;
  /** Planted mistakes that a finding of this kind names, or of one that says the same as rightly. */
  readonly found: number;
  /** Planted mistakes that a finding of this or any other kind names. */
  readonly named: number;
  /** Findings of this kind in seasons without a mistake. */
  readonly falseAlarms: number;
}

export interface Quality {
  readonly seasons: number;
  /** Rows of the clean seasons: cordons, vines, bud cuts. */
  readonly cleanRows: number;
  readonly kinds: readonly KindQuality[];
  /** Findings "wrong" or "ask" in clean seasons. */
  readonly falseAlarms: number;
  /** Planted mistakes that this kind of finding missed, for looking at them. */
  readonly missed: readonly { readonly code: string; readonly seed: number; readonly row: unknown }[];
  readonly alarms: readonly { readonly seed: number; readonly finding: Finding }[];
}

const GROUPS: readonly Mistake["group"][] = ["cell", "vine", "stretch", "sheet"];

/**
 * Checks plausible seasons without mistakes and the same seasons with mistakes planted, and counts per kind of finding
 * what was found, missed and alleged. Season k starts from `seed + k`.
 */
export function measureQuality(seasons: number, seed: number): Quality {
  const tally = new Map<string, { planted: number; found: number; named: number; falseAlarms: number }>();
  for (const code of FINDING_KINDS.keys())
    tally.set(code, { planted: 0, found: 0, named: 0, falseAlarms: 0 });
  const missed: { code: string; seed: number; row: unknown }[] = [];
  const alarms: { seed: number; finding: Finding }[] = [];
  let cleanRows = 0;
  for (let k = 0; k < seasons; k++) {
    const clean = plausibleSeason(randomSource(seed + k));
    cleanRows += clean.cordons.rows.length + clean.vines.rows.length + clean.budCuts.rows.length;
    for (const finding of check(clean)) {
      tally.get(finding.code)!.falseAlarms++;
      alarms.push({ seed: seed + k, finding });
    }
    for (const group of GROUPS)
      for (const batch of batchesOf(group)) {
        const season = plausibleSeason(randomSource(seed + k));
        const field = new Field(season, randomSource(seed * 7 + k));
        const planted = batch.flatMap((mistake) => {
          const place = mistake.plant(season, field);
          return place ? [{ ...mistake, place }] : [];
        });
        const findings = check(season);
        for (const { code, also, place } of planted) {
          const kind = tally.get(code)!;
          kind.planted++;
          const here = findings.filter((finding) => namesOne(finding, place));
          if (here.length > 0) kind.named++;
          if (here.some((finding) => finding.code === code || finding.code === also)) kind.found++;
          else missed.push({ code, seed: seed + k, row: place.rows[0] });
        }
      }
  }
  const kinds = [...tally].map(([code, counts]) => ({
    code,
    severity: FINDING_KINDS.get(code)!.severity,
    ...counts,
  }));
  return {
    seasons,
    cleanRows,
    kinds,
    falseAlarms: alarms.filter(({ finding }) => finding.severity !== "note").length,
    missed,
    alarms,
  };
}

/** Whole-sheet mistakes come one to a season; the others share one. */
function batchesOf(group: Mistake["group"]): Mistake[][] {
  const own = MISTAKES.filter((mistake) => mistake.group === group);
  return group === "sheet" ? own.map((mistake) => [mistake]) : [own];
}

function check(season: Season): Finding[] {
  return allFindings(readSeason(seasonAreas(season)), { today: season.today });
}

function namesOne(finding: Finding, { sheet, rows }: Planted): boolean {
  if (finding.sheet !== sheet.name) return false;
  if (rows.length === 0) return finding.row === 1;
  return rows.some((row) => {
    const index = sheet.rows.indexOf(row);
    const below = sheet.below.indexOf(row);
    return finding.row === (index >= 0 ? index + 2 : sheet.rows.length + below + 2);
  });
}
