import type { Check, CheckContext, FindingKind } from "./check";
import type { SurveyTable } from "../season/season";
import { choiceId, NO_PLACE } from "../season/vinePlaces";

const positionsAppeared: FindingKind = { code: "positionsAppeared", severity: "ask", action: "lookAtVine" };
const trunkChangedPlace: FindingKind = { code: "trunkChangedPlace", severity: "ask", action: "lookAtVine" };
const vineCameBack: FindingKind = { code: "vineCameBack", severity: "ask", action: "mendRegister" };

/**
 * This year's sheets against last year's: a cordon that has gained positions without growing longer, a cordon that
 * hangs on another trunk, a vine that was missing and bears without having been replanted.
 */
export const LAST_YEAR: Check = {
  id: "lastYear",
  kinds: [positionsAppeared, trunkChangedPlace, vineCameBack],
  sheets: ["cordons", "vines"],
  scope: "survey",
  prepare(table, context) {
    const [past] = context.season.pastTables(table.shape.id);
    if (!past) return undefined;
    return table.shape.id === "vines"
      ? compareVines(table, past, context)
      : compareCordons(table, past, context);
  },
};

function compareCordons(
  table: SurveyTable,
  past: SurveyTable,
  context: CheckContext,
): ReturnType<Check["prepare"]> {
  const trunk = table.column("trunk");
  const positions = table.column("positions");
  const pastTrunk = past.column("trunk")?.numbers;
  const pastPositions = past.column("positions")?.numbers;
  if (!trunk || !positions || !pastTrunk || !pastPositions) return undefined;
  const lengths = table.column("length")?.numbers;
  const pastLengths = past.column("length")?.numbers;
  const mostMore = context.season.settings.lastYearMostPositionsMore;
  const keyOf = context.places.cordonKeys(table);
  const pastKeyOf = context.places.cordonKeys(past);
  const before = new Map<number, number>();
  for (let i = 0; i < past.rowCount; i++) {
    const key = pastKeyOf(i);
    if (key !== undefined && !before.has(key)) before.set(key, i);
  }
  return (from, to, report) => {
    for (let i = from; i < to; i++) {
      const key = keyOf(i);
      const last = key === undefined ? undefined : before.get(key);
      if (last === undefined) continue;
      const where = { season: past.winter ?? "", otherSheet: past.sheet, otherRow: past.sheetRow(last) };
      if (trunk.numbers[i] !== pastTrunk[last]) {
        if (trunk.numbers[i] >= 1 && pastTrunk[last] >= 1)
          report(trunkChangedPlace, i, trunk, { ...where, before: pastTrunk[last], now: trunk.numbers[i] });
        continue;
      }
      const grown = lengths && pastLengths ? lengths[i] / pastLengths[last] : 1;
      const room = Math.max(0, Number.isFinite(grown) ? grown - 1 : 0) * pastPositions[last];
      if (positions.numbers[i] - pastPositions[last] > mostMore + Math.ceil(room))
        report(positionsAppeared, i, positions, {
          ...where,
          before: pastPositions[last],
          now: positions.numbers[i],
        });
    }
  };
}

function compareVines(
  table: SurveyTable,
  past: SurveyTable,
  context: CheckContext,
): ReturnType<Check["prepare"]> {
  const status = table.column("status");
  const pastStatus = past.column("status");
  if (!status || !pastStatus) return undefined;
  const keys = context.places.keysOf(table);
  const missing = new Map<number, number>();
  context.places.keysOf(past).forEach((key, i) => {
    if (key !== NO_PLACE && choiceId(pastStatus, i) === "missing") missing.set(key, i);
  });
  return (from, to, report) => {
    for (let i = from; i < to; i++) {
      const last = missing.get(keys[i]);
      if (last === undefined || choiceId(status, i) !== "bearing") continue;
      report(vineCameBack, i, status, {
        season: past.winter ?? "",
        otherSheet: past.sheet,
        otherRow: past.sheetRow(last),
      });
    }
  };
}
