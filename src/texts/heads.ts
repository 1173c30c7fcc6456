import { TEXTS } from "./texts";

const { cordons, vines, harvest, block, row, vine, countedBy } = TEXTS.sheets;

/** Heads of columns that several sheets and pages have in common, the count sheets' own words among them. */
export const HEADS = {
  ...TEXTS.heads,
  block: block.header,
  row: row.header,
  vine: vine.header,
  side: cordons.side.header,
  cordon: cordons.cordon.header,
  trunk: cordons.trunk.header,
  countedBy: countedBy.header,
  positions: cordons.positions.header,
  liveSpurs: cordons.liveSpurs.header,
  longestGap: cordons.longestGap.header,
  liveTrunks: vines.liveTrunks.header,
  vines: vines.name,
  cordons: cordons.name,
  year: harvest.year.header,
};
