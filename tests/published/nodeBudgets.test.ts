import { balancedFormula } from "../../src/domain/balancedFormula";
import { nodeBudget } from "../../src/domain/nodeBudget";
import { nodesByLength } from "../../src/domain/nodesByLength";
import { spurFit } from "../../src/domain/spurFit";
import {
  kilograms,
  kilogramsFromPounds,
  metres,
  metresFromFeet,
  metresFromInches,
  perFootFromPerMetre,
  perMetre,
  perMetreFromPerFoot,
  poundsFromKilograms,
} from "../../src/domain/units";
import { checkRows, EXACT, half } from "./checkRows";

const budget = (pounds: number, formula: string) => () =>
  nodeBudget(kilogramsFromPounds(pounds), balancedFormula(formula));
const byFoot = (feet: number, nodes: number) => () =>
  nodesByLength(metresFromFeet(feet), perMetreFromPerFoot(nodes));

const WV = "West Virginia Dept. of Agriculture, Growing Grapes in WV, p. 14";
const OHIO = "Smith, Ohio State University, Buckeye Appellation, March 2023";
const SPURS = "cooksplace.us, pruning 2013 part 2 (grower's column)";

checkRows("balanced pruning", [
  { why: "3 lb at 30+10 leave 50 buds", source: WV, ours: budget(3, "30+10"), published: 50, within: EXACT },
  {
    why: '2.55 lb of Catawba at 30+10 are "about 45 buds"; exact 45.5, so one bud is allowed',
    source: "Missouri State University Fruit Experiment Station, 20 Nov 2009",
    ours: budget(2.55, "30+10"),
    published: 45,
    within: 1,
  },
  {
    why: "2.55 lb at 30+10, not rounded",
    source: "derived from Missouri State University 2009",
    ours: budget(2.55, "30+10"),
    published: 45.5,
    within: EXACT,
  },
  {
    why: "1.5 lb at 20+20 leave 30 buds: part of a pound counts pro rata",
    source: "Auburn Citizen, Finger Lakes grape column, March 2021",
    ours: budget(1.5, "20+20"),
    published: 30,
    within: EXACT,
  },
  {
    why: "2 lb at 20+20 leave 40 buds",
    source: SPURS,
    ours: budget(2, "20+20"),
    published: 40,
    within: EXACT,
  },
  {
    why: "4 lb at 30+10 leave 60 buds",
    source: "98905.com, Growing grapes (grower's column)",
    ours: budget(4, "30+10"),
    published: 60,
    within: EXACT,
  },
  {
    why: "the first pound is the formula's first number",
    source: OHIO,
    ours: budget(1, "20+10"),
    published: 20,
    within: EXACT,
  },
  {
    why: "new hybrids 20+20 at 2.5 lb",
    source: "derived from Ohio State University 2023",
    ours: budget(2.5, "20+20"),
    published: 50,
    within: EXACT,
  },
  {
    why: "a paper's 454 g for the pound leaves a 4 lb vine 0.04 nodes apart",
    source: "derived: 4 x 0.454 kg against the exact pound",
    ours: () => nodeBudget(kilograms(4 * 0.454), balancedFormula("30+10")),
    published: 60,
    within: 0.04,
  },
]);

checkRows("nodes by length", [
  { why: "4 buds a foot at 5 ft are 20", source: OHIO, ours: byFoot(5, 4), published: 20, within: EXACT },
  {
    why: "6 buds a foot at 8 ft are 48, printed rounded to 50",
    source: OHIO,
    ours: byFoot(8, 6),
    published: 50,
    within: 2,
  },
  {
    why: "6 buds a foot at 8 ft, not rounded",
    source: `derived from ${OHIO}`,
    ours: byFoot(8, 6),
    published: 48,
    within: EXACT,
  },
  {
    why: "15 shoots a metre are 4.572 a foot",
    source: "Sabbatini, Michigan State University, vine balance; derived",
    ours: () => perFootFromPerMetre(perMetre(15)),
    published: 4.572,
    within: EXACT,
  },
  {
    why: "4 a foot are 13.12 a metre",
    source: "derived from the exact foot",
    ours: () => perMetreFromPerFoot(4),
    published: 13.12,
    within: half(2),
  },
  {
    why: "5 a foot are 16.40 a metre",
    source: "derived from the exact foot",
    ours: () => perMetreFromPerFoot(5),
    published: 16.4,
    within: half(2),
  },
  {
    why: "6 shoots a foot are 19.7 a metre",
    source: "Atucha and Wimmer, University of Wisconsin-Madison; derived",
    ours: () => perMetreFromPerFoot(6),
    published: 19.7,
    within: half(1),
  },
  {
    why: "1 kg/m of prunings is 0.671969 lb/ft",
    source: "derived from the exact pound and foot",
    ours: () => poundsFromKilograms(kilograms(1)) / perMetreFromPerFoot(1),
    published: 0.671969,
    within: half(6),
  },
  {
    why: "0.5 kg/m of prunings is 0.34 lb/ft",
    source: "Kliewer and Dokoozlian 2005, AJEV 56:170-181; derived",
    ours: () => poundsFromKilograms(kilograms(0.5)) / perMetreFromPerFoot(1),
    published: 0.34,
    within: half(2),
  },
  {
    why: "9 nodes for each kilogram are 4.1 a pound",
    source: "Lider, Kasimatis and Kliewer 1975, AJEV 26(4):175-178; derived",
    ours: () => 9 * kilogramsFromPounds(1),
    published: 4.1,
    within: half(1),
  },
  {
    why: "22 nodes for each kilogram are 10.0 a pound",
    source: "Lider, Kasimatis and Kliewer 1975, AJEV 26(4):175-178; derived",
    ours: () => 22 * kilogramsFromPounds(1),
    published: 10,
    within: half(1),
  },
]);

const sides = (inches: number) => spurFit(40, 2, metresFromFeet(3), metresFromInches(inches), 2);

checkRows("spurs that fit", [
  {
    why: "40 buds want 20 two-bud spurs",
    source: SPURS,
    ours: () => sides(6).spursWanted,
    published: 20,
    within: EXACT,
  },
  {
    why: "6 in apart leave 6 spurs a side",
    source: SPURS,
    ours: () => sides(6).spursThatFit / 2,
    published: 6,
    within: EXACT,
  },
  {
    why: "5 in apart leave 7 spurs a side",
    source: SPURS,
    ours: () => sides(5).spursThatFit / 2,
    published: 7,
    within: EXACT,
  },
  {
    why: "so 16 buds of the 40 find no place",
    source: `derived from ${SPURS}`,
    ours: () => sides(6).nodesShort,
    published: 16,
    within: EXACT,
  },
  {
    why: "or 12 at the closer spacing",
    source: `derived from ${SPURS}`,
    ours: () => sides(5).nodesShort,
    published: 12,
    within: EXACT,
  },
  {
    why: "50 buds are ten five-bud spurs",
    source: WV,
    ours: () => spurFit(50, 5, metres(2), metres(0.1)).spursWanted,
    published: 10,
    within: EXACT,
  },
]);
