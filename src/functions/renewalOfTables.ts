import { renewalRules } from "../survey/decide/renewal/renewalRules";
import { trunkRenewalSentence } from "../survey/decide/renewal/renewalSentence";
import { trunksToRenew } from "../survey/decide/renewal/trunksToRenew";
import { RENEWAL_LINES } from "../texts/functions/renewal";
import { say, type Language } from "../texts/language";
import type { ResultRow } from "./cordonFunction";
import type { TableArgument } from "./parameter";
import { seasonOfTables } from "./seasonOfTables";
import { neededColumn } from "./surveyTable";
import { placeName } from "../texts/placeName";

const SHEETS = { vines: "vines", settings: "settings", cordons: "cordons" } as const;

/**
 * The vines of a Vines table that need a new trunk, most urgent first. One line says so when none does, and one says
 * how many vines were not counted.
 *
 * @example
 * renewalOfTables({ vines: readTable(functionNamed("TRUNKSTORENEW").parameters[0], [["Block", "Row", "Vine", "Status", "Live trunks"], ["A", 1, 1, "bearing", 1]]) }, "en")[0].bringUp // 1
 */
export function renewalOfTables(
  tables: {
    readonly vines: TableArgument;
    readonly settings?: TableArgument | undefined;
    readonly cordons?: TableArgument | undefined;
  },
  language: Language,
): readonly ResultRow[] {
  const season = seasonOfTables({ ...tables }, SHEETS);
  for (const id of ["block", "row", "vine", "liveTrunks"])
    neededColumn("vines", season.tables("vines")[0], id);
  const wanted = renewalRules(season.settings).trunksWanted;
  const { vines, notCounted } = trunksToRenew(season);
  const rows: ResultRow[] = vines.map(({ block, row, vine, liveTrunks, renewal }, index) => ({
    order: index + 1,
    block,
    row: placeName(row),
    vine: placeName(vine),
    liveTrunks,
    bringUp: renewal.bringUp,
    what: trunkRenewalSentence(renewal, liveTrunks, wanted, language),
  }));
  if (vines.length === 0) rows.push({ what: RENEWAL_LINES.none[language] });
  if (notCounted > 0) rows.push({ what: say(RENEWAL_LINES.notCounted, language, { vines: notCounted }) });
  return rows;
}
