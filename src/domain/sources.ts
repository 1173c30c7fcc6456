/** A published work that a figure or rule was taken from. */
export interface Source {
  /** How it is named on a sheet: "Cornell 2014". */
  readonly name: string;
  readonly work: string;
  /** "seen": the number stood in the source. "derived": worked out from seen numbers. "memory": unverified. */
  readonly mark: "seen" | "derived" | "memory";
}

/** Every source that a figure of the project cites, by id. */
export const SOURCES = {
  ohio2023: {
    name: "Ohio State 2023",
    work: "Smith, Ohio State University, Buckeye Appellation, March 2023: pruning formulas by grape type, 4 to 6 buds a foot (table after the Midwest Grape Production Guide, Bulletin 919)",
    mark: "seen",
  },
  wvda: {
    name: "West Virginia",
    work: "West Virginia Department of Agriculture: Growing Grapes in WV, p. 14",
    mark: "seen",
  },
  missouri2009: {
    name: "Missouri State 2009",
    work: "Missouri State University Fruit Experiment Station, 20 Nov 2009: balanced pruning of Catawba",
    mark: "seen",
  },
  fingerLakes2021: {
    name: "Finger Lakes 2021",
    work: "Auburn Citizen, Finger Lakes grape column, March 2021",
    mark: "seen",
  },
  odaniel2012: {
    name: "O'Daniel 2012",
    work: "O'Daniel, Archbold and Kurtural 2012, American Journal of Enology and Viticulture 63(2):284-290: balanced pruning severity on Traminette",
    mark: "seen",
  },
  aipperspach2020: {
    name: "Aipperspach 2020",
    work: "Aipperspach, Hammond and Hatterman-Valenti 2020, Horticulturae 6(1):18: Frontenac gris and Marquette with 20, 30 and 40 nodes",
    mark: "seen",
  },
  sabbatini: {
    name: "MSU vine balance",
    work: "Sabbatini, Michigan State University: vine balance, 15 viable shoots a metre of row",
    mark: "seen",
  },
  thullLubyMarquette: {
    name: "UMN Marquette",
    work: "Thull and Luby, University of Minnesota: Marquette and Frontenac, Ten Viticulture Tips",
    mark: "seen",
  },
  thullLubyBrianna: {
    name: "UMN Brianna",
    work: "Thull and Luby, University of Minnesota: Brianna and La Crescent, Ten Viticulture Tips",
    mark: "seen",
  },
  klodd2022: {
    name: "UMN 2022",
    work: "Klodd, University of Minnesota Extension, The Grapevine Magazine, November 2022: frequently asked questions for pruning grapevines",
    mark: "seen",
  },
  ncState: {
    name: "NC State",
    work: "NC State Extension Gardener Handbook, figure 14-33: high-wire cordon, spurs 3 to 8 in apart",
    mark: "seen",
  },
  westover2016: {
    name: "Westover 2016",
    work: "Westover, Wines & Vines, May 2016, p. 29: spur spacing and wood diameter",
    mark: "seen",
  },
  cornell2014: {
    name: "Cornell 2014",
    work: "Cornell Cooperative Extension, Northern New York Grape Update, 28 Feb 2014: Evaluating bud injury and adjusting pruning",
    mark: "seen",
  },
  msu2002: {
    name: "MSU 2002",
    work: "Zabadal, Michigan State University Extension E-2774, 2002: Growing table grapes (bulletin inferred from title and figures of the copy)",
    mark: "seen",
  },
  purdueDoublePruning: {
    name: "Purdue",
    work: "Purdue University: Double pruning grapevines for spring frost protection",
    mark: "seen",
  },
  northernGrapes2014: {
    name: "Northern Grapes 2014",
    work: "Particka, Northern Grapes Project, April 2014: Assessing bud injury and adjusting pruning",
    mark: "seen",
  },
  compensation: {
    name: "compensation",
    work: "nodes / (1 - share of dead primary buds): worked out, no publication seen states it",
    mark: "derived",
  },
  winesVines2015: {
    name: "Wines & Vines 2015",
    work: "Wines & Vines, October 2015, p. 76: the primary bud carries 70 to 75 % of the node's crop",
    mark: "seen",
  },
  fiolaBuds: {
    name: "Maryland",
    work: "Fiola, University of Maryland Extension: Assessing grapevine bud damage",
    mark: "seen",
  },
  cornell2012: {
    name: "Cornell 2012",
    work: "Martinson, Lakso and Bates, Cornell University 2012: Bud fruitfulness and yield",
    mark: "seen",
  },
  dami: {
    name: "Ohio State yields",
    work: "Dami, Ohio State University: How to Estimate Grape Yields; Dami and Sabbatini 2012, HYG-1434",
    mark: "seen",
  },
  kliewer2005: {
    name: "Kliewer 2005",
    work: "Kliewer and Dokoozlian 2005, American Journal of Enology and Viticulture 56:170-181: leaf area and crop weight ratios",
    mark: "seen",
  },
  kurtural2006: {
    name: "Kurtural 2006",
    work: "Kurtural, Dami and Taylor 2006, HortTechnology 16(2):233-240: pruning and cluster thinning of Chambourcin",
    mark: "seen",
  },
  iowa2011: {
    name: "Iowa State 2011",
    work: "Iowa State University Extension, Wine Grower News 178, 5 Aug 2011: 10 to 15 vines and 100 clusters for 15 %",
    mark: "seen",
  },
  iowa2013: {
    name: "Iowa State 2013",
    work: "Iowa State University Extension, Wine Grower News 247, 5 Jul 2013: lag phase, multiplier 2, 100 to 200 clusters",
    mark: "seen",
  },
  fiolaCrop: {
    name: "Maryland crop estimation",
    work: "Fiola, University of Maryland Extension: Crop Estimation, Timely Viticulture",
    mark: "seen",
  },
  wolfe: {
    name: "Wolfe",
    work: "Wolfe, Good Fruit Grower: predicting wine grape crops (lag-phase doubling after Price, Oregon)",
    mark: "seen",
  },
  bcwgc: {
    name: "BC Best Practices",
    work: "British Columbia Wine Grape Council, Best Practices Guide: crop estimation",
    mark: "seen",
  },
  wsu2006: {
    name: "WSU 2006",
    work: "Washington State University, Yield Estimation, July 2006",
    mark: "seen",
  },
  strickland1932: {
    name: "Strickland 1932",
    work: "Strickland 1932, Journal of Agriculture of Victoria 30:584-593, uniformity trial of 125 vines (agridat)",
    mark: "seen",
  },
  oger2023: {
    name: "Oger 2023",
    work: "Oger, Laurent, Vismara and Tisseyre, OENO One: How to better estimate bunch number at vineyard level?",
    mark: "seen",
  },
  cornellLabour: {
    name: "Cornell labour",
    work: "Martinson, Vanden Heuvel and Preszler, Cornell University: Canopy and crop management, what do they cost",
    mark: "seen",
  },
  uw2015: {
    name: "UW 2015",
    work: "Atucha and Wimmer, University of Wisconsin-Madison: training trial with 6 shoots a foot, Verona 2015",
    mark: "seen",
  },
  cochran1977: {
    name: "Cochran 1977",
    work: "Cochran 1977, Sampling Techniques, third edition",
    mark: "memory",
  },
  wilson1927: {
    name: "Wilson 1927",
    work: "Wilson 1927, Journal of the American Statistical Association 22:209-212",
    mark: "memory",
  },
  clopper1934: {
    name: "Clopper-Pearson 1934",
    work: "Clopper and Pearson 1934, Biometrika 26:404-413",
    mark: "memory",
  },
  klodd2020: {
    name: "UMN 2020",
    work: "Klodd, Thull and Clark, University of Minnesota, November 2020: Building new grapevine cordons (part of the text seen)",
    mark: "seen",
  },
  kloddSuckers: {
    name: "UMN suckers",
    work: "Klodd, University of Minnesota Enology: a vine dead to the ground, about five suckers kept and one trained",
    mark: "seen",
  },
  howell: {
    name: "Howell, MSU",
    work: "Howell, Michigan State University: Estimating grapevine potential productivity after spring frost or winter bud damage (a secondary bears 35 % of the primary's crop on Concord and Niagara, a tertiary none)",
    mark: "seen",
  },
  vinews2020: {
    name: "Missouri Vinews 2020",
    work: "Volenberg, University of Missouri, Vinews 2020 No. 5, 25 May 2020: basal buds of Vivant bear, those of Norton do not",
    mark: "seen",
  },
  vinews2023: {
    name: "Missouri Vinews 2023",
    work: "University of Missouri, Vinews 2023 No. 1: half of Norton's primary buds dead is about half of the yield lost",
    mark: "seen",
  },
  frioni2017: {
    name: "Frioni 2017",
    work: "Frioni et al. 2017, Scientia Horticulturae 219:302-309: Marquette after frost killed more than 80 % of primary shoots; the next year yielded 61 % more, so 0.62 of a crop was left, and a secondary is worth (0.62 - 0.2) / 0.8",
    mark: "derived",
  },
  batesConcord: {
    name: "Bates",
    work: "Bates, Cornell University: Vine size, pruning severity and vine balance, and Vine size: magic number 15 (Concord: 100 nodes balance 1.5 to 2.5 lb of prunings, 120 nearly always overcrop; crop load 15 balanced, below 10 undercropped, above 20 overcropped)",
    mark: "seen",
  },
  awri2022: {
    name: "AWRI 2022",
    work: "Australian Wine Research Institute, Technical Review 259, 2022: of the variation between years 60 % lies in bunches a vine, 40 % in their weight; with 0.25 for bunches, weight varies 0.25 x sqrt(40 / 60)",
    mark: "derived",
  },
  delaFuente2015: {
    name: "de la Fuente 2015",
    work: "de la Fuente et al. 2015, OENO One 49(1): berries at lag phase weigh 40 to 60 % of their final weight; the spread of the multiplier is worked out from that, about 0.18 in all",
    mark: "derived",
  },
  growerLog2008: {
    name: "grower's log 2008",
    work: "A grower's log, 2008: 80 vines pruned in about 4 hours",
    mark: "derived",
  },
  skinkis: {
    name: "Oregon State",
    work: "Skinkis, Oregon State University Extension: How to renew a grapevine cordon (yield decline, dead areas, poor spur locations, too few spurs; no percentage given)",
    mark: "seen",
  },
  uw2016: {
    name: "UW-Madison 2016",
    work: "University of Wisconsin-Madison Fruit Program, 13 May 2016: Establishing cold-hardy grapevines on a spur-pruned high cordon system (year 1: roots and trunk shoots, flowers and fruit removed; part of the text seen)",
    mark: "seen",
  },
  amberg: {
    name: "Amberg nursery",
    work: "Amberg Grapevines (nursery), The first three years: 3 to 6 shoots kept in year 1, fruit removed after bloom, two shoots to the top wire",
    mark: "seen",
  },
  vanDerLinden2010: {
    name: "UMN 2010",
    work: "van der Linden, University of Minnesota Extension 2010, Pruning grape vines in Minnesota: in year 2 the two best shoots become the cordons, in year 3 shoots grow from the cordon",
    mark: "seen",
  },
  missouriTrunks: {
    name: "Missouri State trunks",
    work: "Missouri State University, Trunk cold injury: trunks of different age, the oldest goes when its renewal is 2 to 3 years old",
    mark: "seen",
  },
  winegrowersUk: {
    name: "Winegrowers UK",
    work: "winegrowers.info, Training, year 3 onwards: at most about 10 bunches on a vine in its first crop year",
    mark: "seen",
  },
} satisfies Readonly<Record<string, Source>>;

export type SourceId = keyof typeof SOURCES;
