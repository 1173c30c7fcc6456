import { shootsToThin } from "../../src/domain/shootsToThin";
import { metres, metresFromFeet, perMetre, perMetreFromPerFoot } from "../../src/domain/units";
import { checkRows, EXACT } from "./checkRows";

const MSU = "Sabbatini, Michigan State University: vine balance, 15 viable shoots a metre of row";
const UW = "Atucha and Wimmer, University of Wisconsin-Madison 2015: adjusted to 6 shoots a foot";

checkRows("shoots to thin to", [
  {
    why: "one metre of row keeps 15",
    source: MSU,
    ours: () => shootsToThin(40, metres(1), perMetre(15)).keep,
    published: 15,
    within: EXACT,
  },
  {
    why: "6 ft at 15 a metre: 27.4, so 27 whole shoots",
    source: `${MSU}; by hand`,
    ours: () => shootsToThin(40, metresFromFeet(6), perMetre(15)).keep,
    published: 27,
    within: EXACT,
  },
  {
    why: "one foot keeps 6",
    source: UW,
    ours: () => shootsToThin(40, metresFromFeet(1), perMetreFromPerFoot(6)).keep,
    published: 6,
    within: EXACT,
  },
  {
    why: "6 ft at 6 a foot: of 50 counted 14 go",
    source: `${UW}; by hand`,
    ours: () => shootsToThin(50, metresFromFeet(6), perMetreFromPerFoot(6)).remove,
    published: 14,
    within: EXACT,
  },
]);
