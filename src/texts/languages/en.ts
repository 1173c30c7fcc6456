/** Every text in English: what the other languages must say, key by key. Words in braces are filled in; keep them. */
export const en = {
  language: { name: "English" },
  lengths: { inches: "in" },
  crops: { tons: "tons", tonsAnAcre: "tons/acre" },
  settingNames: {
    nodeRule: "Node rule",
    belowOnePound: "Below one pound",
    leastNodesAVine: "Least nodes a vine",
    mostNodesAVine: "Most nodes a vine",
    nodesByLength: "Nodes by length",
    injuryRule: "Injury rule",
    intervalForDeadBuds: "Interval for dead buds",
    confidenceOfRanges: "Confidence of ranges",
    spurSpacing: "Spur spacing",
    nodesASpur: "Nodes a spur",
    weightOfLiveSpurs: "Weight of live spurs",
    weightOfLongestGap: "Weight of longest gap",
    weightOfSpurPlacing: "Weight of spur placing",
    weightOfSoundness: "Weight of soundness",
    weightOfDiameter: "Weight of diameter",
    spaceBetweenNeighbouringCordons: "Space between neighbouring cordons",
    gapThatScoresNothing: "Gap that scores nothing",
    worthOfASpur: "Worth of a spur {direction}, {system}",
    soundnessOfAnInjuredCordon: "Soundness of an injured cordon",
    soundnessOfADiseasedCordon: "Soundness of a diseased cordon",
    weakCordonDiameter: "Weak cordon diameter",
    fullCordonDiameter: "Full cordon diameter",
    twoCordonsOnTwoTrunks: "Two cordons on two trunks",
    costOfAnInjuredTrunk: "Cost of an injured trunk",
    costOfADiseasedTrunk: "Cost of a diseased trunk",
    worthOfANewCane: "Worth of a new cane",
    shortestCordon: "Shortest cordon",
    closeCall: "Close call",
    cordonsOnAVine: "Cordons on a vine",
    blankCondition: "Blank condition",
    trunksWantedOnAVine: "Trunks wanted on a vine",
    trunkAgeThatRenews: "Trunk age that renews",
    emptyShareThatRenewsACordon: "Empty share that renews a cordon",
    badlyPlacedShareThatRenewsACordon: "Badly placed share that renews a cordon",
    spurHeightThatLowers: "Spur height that lowers",
    thickShareOfANewCane: "Thick share of a new cane",
    trunksLostAYear: "Trunks lost a year",
    missingTrunksBroughtUpAYear: "Missing trunks brought up a year",
    usualBudbreak: "Usual budbreak",
    budbreakYearToYear: "Budbreak, year to year",
    usualClustersAShoot: "Usual clusters a shoot",
    usualClusterWeight: "Usual cluster weight",
    clusterWeightBetweenCultivars: "Cluster weight, between cultivars",
    clustersAShootYearToYear: "Clusters a shoot, year to year",
    clusterWeightYearToYear: "Cluster weight, year to year",
    clusterWeightBetweenClusters: "Cluster weight, between clusters",
    worthOfASecondaryShoot: "Worth of a secondary shoot",
    secondariesAreWritten: "Secondaries are written",
    basalShootsASpur: "Basal shoots a spur",
    worthOfABasalShoot: "Worth of a basal shoot",
    frostedNodesAsOne: "Frosted nodes as one",
    lagPhaseMultiplier: "Lag phase multiplier",
    lagPhaseMultiplierYearToYear: "Lag phase multiplier, year to year",
    clustersWeighed: "Clusters weighed",
    vinesWereDrawn: "Vines were drawn",
    spreadBetweenVines: "Spread between vines",
    marginOfACount: "Margin of a count",
    spreadBetweenFarms: "Spread between farms",
    budbreakBetweenFarms: "Budbreak, between farms",
    lagPhaseMultiplierBetweenFarms: "Lag phase multiplier, between farms",
    cropLoadRange: "Crop load range",
    leastCropLoad: "Least crop load, {range}",
    mostCropLoad: "Most crop load, {range}",
    clustersAVineInYear2: "Clusters a vine in year 2",
    clustersAVineInYear3: "Clusters a vine in year 3",
    floorOfLiveSpurs: "Floor of live spurs",
    minutesToCountAVine: "Minutes to count a vine",
    minutesToCutACane: "Minutes to cut a cane",
    minutesToWeighACluster: "Minutes to weigh a cluster",
    minutesForANextStep: "Minutes for a next step",
    leastGainOfANextStep: "Least gain of a next step",
    minutesAVinePruning: "Minutes a vine, pruning",
    minutesAVineThinning: "Minutes a vine, thinning",
    shootsByLength: "Shoots by length",
    minutesAVineShootThinning: "Minutes a vine, shoot thinning",
    crew: "Crew",
    hoursADay: "Hours a day",
    planLeastNodesASpur: "Plan: least nodes a spur",
    planMostNodesASpur: "Plan: most nodes a spur",
    tenderCultivars: "Tender cultivars",
    fruitfulSecondaries: "Fruitful secondaries",
    doublePruning: "Double pruning",
    doublePruningNodesOfTheFirstPass: "Double pruning: nodes of the first pass",
    doublePruningTimeOfTheSecondPass: "Double pruning: time of the second pass",
    pruningStarts: "Pruning starts",
    secondPassStarts: "Second pass starts",
    shootThinningStarts: "Shoot thinning starts",
    daysAWeek: "Days a week",
    daysOff: "Days off",
    ribbonStays: "Ribbon, stays",
    ribbonAsk: "Ribbon, ask",
    vinesACardPage: "Vines a card page",
    unitSystem: "Unit system",
    leastDistanceBetweenSpurs: "Least distance between spurs",
    unlikeItsBlockSpread: "Unlike its block: spread",
    unlikeItsBlockLeastValues: "Unlike its block: least values",
    unlikeItsBlockFewValuesTimes: "Unlike its block: times the middle of few values",
    walkOrderMostVinesOutOfOrder: "Walk order: most vines out of order",
    cordonLengthMostOfItsSpace: "Cordon length: most of its space",
    cordonLengthLeastOfItsSpace: "Cordon length: least of its space",
    cordonDiameterLeast: "Cordon diameter, least",
    cordonDiameterMost: "Cordon diameter, most",
    nodesASpurLeast: "Nodes a spur, least",
    nodesASpurMost: "Nodes a spur, most",
    trunksAVineMost: "Trunks a vine, most",
    cordonsAVineMost: "Cordons a vine, most",
    seasonOfCountsFirstMonth: "Season of counts: first month",
    seasonOfCountsLastMonth: "Season of counts: last month",
    countedRowLeastShareOfItsVines: "Counted row: least share of its vines",
    copiedDownUnlikelihood: "Copied down: unlikelihood",
    swappedColumnsLeastRows: "Swapped columns: least rows",
    digitPreferenceLeastValues: "Digit preference: least values",
    digitPreferenceShareMoreThanOthers: "Digit preference: share more than others",
    digitPreferenceStandardErrors: "Digit preference: standard errors",
    counterUnlikeOthersStandardErrors: "Counter unlike others: standard errors",
    counterUnlikeOthersLeastDifference: "Counter unlike others: least difference",
    lastYearMostPositionsMore: "Last year: most positions more",
  },
  settings: {
    budget: {
      nodeRule:
        "Rule for blocks that name none: a formula like 30+10 (American; French hybrids 20+10, new hybrids 20+20 by the same source), by length, or a number of nodes.",
      belowOnePound:
        "Vines with less than a pound (0.45 kg) of prunings: refuse (no number; no source seen covers them), flat (the first pound's nodes) or pro rata (those times the weight).",
      leastNodesAVine: "A budget below this is raised to it; 0 raises none. No published limit was seen.",
      mostNodesAVine:
        "A budget above this is cut to it. Two high-wire cordons of 8 to 15 two-bud spurs hold 32 to 60; Concord carries 100 (Bates), which stands for that cultivar.",
      nodesByLength:
        "Nodes on each length of vine spacing for the rule by length; the source gives 4 to 6 on a foot (13 to 20 on a metre).",
      injuryRule:
        "Rule that corrects the budget for dead primary buds in blocks that name none. The rules disagree; none is averaged.",
      intervalForDeadBuds:
        "How the range around a share of dead buds is made: Wilson, or the wider Clopper-Pearson.",
      confidenceOfRanges: "How often a range shall hold the true figure: 0.9 is nine blocks in ten.",
      spurSpacing:
        "Length of cordon for one spur; the source gives 3 to 5 in (8 to 13 cm), NC State 3 to 8 in (8 to 20 cm).",
      nodesASpur: "Count nodes left on a spur; the source gives 2 to 3. The basal bud is not counted.",
    },
    checks: {
      unitSystem:
        "Unit of lengths and weights under headers that name none: US (ft, in, lb), metric (m, mm, kg), or that of the headers which do name one.",
      leastDistanceBetweenSpurs:
        "Spur positions closer than this on average cannot be right; published spacings begin at 3 in, 8 cm (Minnesota 2022).",
      unlikeItsBlockSpread:
        "A value this many times the block's usual spread away from its middle is asked about (median and median deviation; Iglewicz and Hoaglin 1993 begin at 3.5, from memory).",
      unlikeItsBlockLeastValues:
        "A block with fewer values than this is too small to say what is usual in it.",
      unlikeItsBlockFewValuesTimes:
        "With only five values or little more a value is asked about from this many times their middle on, or below its part.",
      walkOrderMostVinesOutOfOrder:
        "When more of a row's vines than this stand out of order, the sheet was sorted another way and its order is not judged.",
      cordonLengthMostOfItsSpace:
        "A cordon longer than this many times its side's share of the vine spacing is asked about.",
      cordonLengthLeastOfItsSpace:
        "A sound cordon of a bearing vine shorter than this many times its side's share is asked about.",
      cordonDiameterLeast:
        "A thinner cordon is asked about; wood for spurs and canes is 5/16 to 1/2 in thick, 8 to 13 mm (Westover 2016).",
      cordonDiameterMost: "A thicker cordon is asked about. No published limit was seen.",
      nodesASpurLeast: "Fewer nodes a spur than this are asked about.",
      nodesASpurMost:
        "More nodes a spur than this are asked about; two to three are usual (UMN 2022), four before a second pass.",
      trunksAVineMost:
        "A vine with more trunks is asked about: two are usual, up to four on very tender cultivars.",
      cordonsAVineMost:
        "Rows of cordons from which on the number of a vine was filled down by mistake: the vine is not decided.",
      seasonOfCountsFirstMonth: "Cordons and buds are counted on dormant vines from this month on.",
      seasonOfCountsLastMonth: "Cordons and buds are counted up to this month.",
      countedRowLeastShareOfItsVines:
        "In a row of which this share was counted, a vine without a cordon is asked about; below it the row is still being counted.",
      copiedDownUnlikelihood:
        "Neighbouring vines with equal numbers are asked about when chance makes such a run less than once in ten to this power.",
      swappedColumnsLeastRows:
        "So many rows that only fit with two columns exchanged are taken for a stretch of swapped columns.",
      digitPreferenceLeastValues: "A counter with fewer values is not judged.",
      digitPreferenceShareMoreThanOthers:
        "A counter is asked whose values end in 0 or 5 more often than those of the others by at least this share.",
      digitPreferenceStandardErrors: "And the difference must be this many times what chance makes of it.",
      counterUnlikeOthersStandardErrors:
        "A counter whose rows differ from the others' in the same blocks by this many times what chance makes of it is asked about.",
      counterUnlikeOthersLeastDifference:
        "And the difference must be at least this share of the others' figure.",
      lastYearMostPositionsMore:
        "A cordon with more new positions than this, beyond what its growth in length gives, is asked about.",
    },
    choice: {
      directions: ["down", "level", "up"],
      worthMeaning:
        "What a spur that points {direction} is worth on this system ({system}). The order is common practice, the figure ours.",
      liveSpurs: "How much live spurs against what the length should carry count in a cordon's score.",
      longestGap: "How much the longest stretch without a spur counts; it stays for the cordon's whole life.",
      spurPlacing: "How much the direction of the spurs counts for the training system.",
      soundness: "How much the condition of the cordon itself counts.",
      diameter: "How much the thickness of the cordon counts.",
      spaceBetweenNeighbouringCordons:
        "Wire left free between the ends of neighbouring cordons: one hand's width in the source; the figure for a hand is ours.",
      gapThatScoresNothing:
        "A stretch of so many positions without a spur earns nothing for the longest gap. One empty place by itself is a missing spur and no stretch.",
      weakCordonDiameter:
        "Up to here a cordon earns nothing for its thickness: it is no thicker than a cane, of which the thick end is 1/2 in (13 mm).",
      fullCordonDiameter: "From here on full marks: the thickness of a cordon that has stood for years.",
      twoCordonsOnTwoTrunks:
        "What two cordons from two trunks earn over two from one: the two permanent cordons should not hang on one trunk. The figure is ours.",
      costOfAnInjuredTrunk: "What a cordon loses because its trunk is injured.",
      costOfADiseasedTrunk: "What a cordon loses because its trunk is diseased.",
      worthOfANewCane: "A cordon that is worth less than this goes and a cane is laid in its place.",
      shortestCordon: "Shorter than this it is a remnant at the head, not a cordon.",
      closeCall: "Two plans for a vine that lie no further apart than this are a question for a person.",
      cordonsOnAVine: "Permanent cordons wanted: 2 is one on each side, 1 is a single cordon.",
      blankCondition: "What an empty condition means: nobody looked, or the crew only marks what is hurt.",
      soundnessOfAHurtCordon: "Between a dead cordon (0) and a sound one (1).",
    },
    outlook: {
      rangeWords: {
        "single canopy": "single canopies",
        "divided canopy": "divided canopies",
        hybrids: "hybrids",
        Concord: "Concord",
      },
      leastCropLoad: "Crop over prunings below which {vines} could carry more.",
      mostCropLoad: "Crop over prunings above which {vines} are overcropped for their size.",
      usualBudbreak: "Share of live nodes that grow a shoot, for blocks that give none.",
      budbreakYearToYear:
        "Spread of budbreak between years, in points: 0.06 is six points up or down in two years of three.",
      usualClustersAShoot:
        "Clusters on a shoot, for blocks that give none; no published figure for a cold-hardy cultivar was seen.",
      usualClusterWeight:
        "What the farm's own cluster weights are drawn towards while years are few; no published weight of most cold-hardy cultivars was seen.",
      clusterWeightBetweenCultivars:
        "How far cultivars and farms lie around the usual cluster weight, over it; large, so that the farm's own years soon count.",
      clustersAShootYearToYear:
        "Spread of clusters a shoot between years, over the mean; the source says about 25 %, taken here as a standard deviation.",
      clusterWeightYearToYear:
        "Spread of the mean cluster weight between years, over the mean: 0.25 x sqrt(40 / 60) is 0.204 by the source.",
      clusterWeightBetweenClusters:
        "Spread of single clusters in one block, over the mean; says how sure a sample of weighed clusters is.",
      worthOfASecondaryShoot:
        "Crop of a shoot from a secondary bud over that of one from a primary bud: 0.275 / 0.725, worked out from the 70 to 75 % of the source, which is of most eastern and Midwest cultivars. Blocks may have their own; Concord, Niagara, Norton and Marquette have published ones.",
      secondariesAreWritten:
        "Which nodes the live secondaries of the Bud cuts sheet are of: of all nodes, under dead primaries only, or as the counts tell, which asks where they fit both.",
      basalShootsASpur:
        "Shoots from buds that are not counted, for each spur; 0 until the farm has counted its own.",
      worthOfABasalShoot: "Clusters of a basal shoot over those of a counted one.",
      frostedNodesAsOne:
        "Nodes counted after frost that tell as much as one drawn alone, because neighbours share their fate: 1 + 7 x 0.1 for eight nodes of a cane that are alike by 0.1.",
      lagPhaseMultiplier:
        'Harvest weight over lag-phase weight of a cluster: a fixed 2 in Iowa, "not fixed" in Maryland, 2 for Willamette Pinot noir only by Wolfe.',
      lagPhaseMultiplierYearToYear:
        "Spread of the multiplier between years, over the mean; with 0.1 between farms it makes the 0.18 in all of the source.",
      clustersWeighed:
        "Clusters behind a weighed mean, where the Harvest sheet does not say; the source asks for 100 to 200.",
      vinesWereDrawn:
        "How the counted vines were drawn: at random over the block, or a number in every row. By row only when it was done so.",
      spreadBetweenVines:
        "Standard deviation between vines over the mean, for planning a count; the yield of 125 vines in the source. A pilot of five vines or more replaces it.",
      marginOfACount:
        "How near a block's mean should be known; the source calls an estimate within 10 % a good one.",
      spreadBetweenFarms:
        "How far farms lie around a published figure, over the figure; the larger, the sooner the farm's own years count.",
      budbreakBetweenFarms: "The same for budbreak, in points.",
      lagPhaseMultiplierBetweenFarms: "The same for the lag phase multiplier, over the multiplier.",
      cropLoadRange:
        "Named range that crop over prunings is held against. Single and divided canopies are of vinifera in California, Concord is of New York.",
      clustersAVineInYear2: "Most clusters to leave on a vine in the second year after planting.",
      clustersAVineInYear3:
        "Most clusters to leave on a vine in the third year; the source gives about 10 for the first crop.",
      floorOfLiveSpurs:
        "Live spurs over positions below which a block is to be rebuilt; no published share was seen.",
      minutesToCountAVine: "Minutes to find a drawn vine and count its shoots or clusters.",
      minutesToCutACane: "Minutes to fetch a cane and cut and judge its buds.",
      minutesToWeighACluster: "Minutes to pick and weigh one cluster.",
      leastGainOfANextStep: "By which share a next step must narrow the range so that it is worth its time.",
      minutesForANextStep:
        "Time of one person that the outlook spends on paper, to say what would narrow its range most.",
    },
    plan: {
      planLeastNodesASpur: "Where the budget is small, spurs are cut back to this many nodes.",
      planMostNodesASpur:
        "Where the wire carries too few spurs, they are left this long at most; the source gives 2 to 3 nodes.",
      tenderCultivars:
        "Cultivars or blocks that are pruned last because winter hurts them most; commas between them.",
      fruitfulSecondaries:
        "Cultivars or blocks whose secondary buds bear well, so that they may be pruned first; commas between them.",
      doublePruning: "Cultivars or blocks that are pruned in two passes; commas between them.",
      doublePruningNodesOfTheFirstPass:
        "First pass to this many times the nodes wanted; the source gives 2 to 3 times, the second pass shortly after budbreak.",
      doublePruningTimeOfTheSecondPass:
        "Share of the pruning time that the second pass takes; the first takes all of it.",
      pruningStarts: "First day of pruning, as a date.",
      secondPassStarts: "First day of the second pass of double pruning, as a date.",
      shootThinningStarts:
        "First day on which shoots are thinned, at about 5 in (13 cm) of growth, as a date.",
      daysAWeek: "Days of the week on which the crew prunes, from Monday on.",
      daysOff: "Days on which nobody prunes, as 2026-02-16, commas between them.",
      ribbonStays: "Colour of the ribbon that the farm ties to a cordon that stays.",
      ribbonAsk: "Colour of the ribbon for a cordon that somebody must look at first.",
      vinesACardPage: "Vines printed on one page of a crew card.",
    },
    renewal: {
      trunksWantedOnAVine: "Live trunks a vine should have: normally 2, up to 4 for very tender cultivars.",
      trunkAgeThatRenews:
        "From this age on a trunk is renewed by plan: every 10 to 12 years even under the best conditions, often sooner.",
      emptyShareThatRenewsACordon:
        "From this share of places without a live spur on, a cordon is to be renewed. One dead stretch of that share makes a cordon worth no more than a new cane. No source gives a share: Oregon State names yield decline, dead areas, poor spur locations and too few spurs.",
      badlyPlacedShareThatRenewsACordon:
        "From this share of live spurs that point the wrong way on, a cordon is to be renewed. No source gives a share.",
      spurHeightThatLowers:
        "From this height above the cordon on, spurs are cut back to a shoot near it. No source gives a height.",
      thickShareOfANewCane:
        "How much of a cane is laid in one year: its outer half is thin and weak, so a cordon is extended in stages.",
      trunksLostAYear:
        "Share of live trunks that a winter kills, for the forecast of renewal; the farm's own counts tell better.",
      missingTrunksBroughtUpAYear:
        "Share of vines below the wanted number on which one trunk more is standing after a year.",
    },
    work: {
      minutesAVinePruning:
        "Minutes one person needs to prune a vine: 80 vines in about 4 hours by the source. One minute a vine is 13.45 hours an acre at 6 x 9 ft (33 hours a hectare at 1.8 x 2.7 m; Cornell labour); time your own crew.",
      minutesAVineThinning: "Minutes one person needs to take clusters off a vine; time your own crew.",
      shootsByLength:
        "Shoots left on a length of wire when shoots are thinned, at about 5 in (13 cm) of growth: 6 a foot (20 a metre) in the trial of the source; Michigan State says 15 a metre, 4.57 a foot.",
      minutesAVineShootThinning:
        "Minutes one person needs to rub surplus shoots off a vine; time your own crew.",
      crew: "People who prune at the same time.",
      hoursADay: "Hours each person prunes in a winter day, breaks for warming up not counted.",
    },
    ownFigure: "own figure",
    settingChangeProblems: {
      noTable: "There is no Settings table in the sheet {sheet}.",
      unknown: "There is no setting “{setting}”.",
      notANumber: "{setting} needs a number, but “{value}” was given.",
      outside: "{setting} must lie within {expected}, but {value} was given.",
      notAChoice: "{setting} must be one of {expected}, but “{value}” was given.",
      wrongUnit: "{setting} stands in the sheet with a unit that does not measure the same as {expected}.",
    },
    settingsSteps: {
      names: "Settings that were renamed get their present names: {names}.",
      columns: "Columns for what each figure is: {names}.",
      history: "Columns for who changed a figure and when: {names}.",
      rows: "Settings that the table did not have yet: {names}.",
    },
  },
  sheets: {
    sides: { left: "left", right: "right", north: "north", south: "south", east: "east", west: "west" },
    conditions: { sound: "sound", injured: "injured", diseased: "diseased", dead: "dead" },
    statuses: { bearing: "bearing", young: "young", missing: "missing", replanted: "replanted" },
    grapeKinds: {
      american: "American",
      frenchHybrid: "French-American",
      newHybrid: "new hybrid",
      vinifera: "vinifera",
      table: "seedless table grape",
    },
    trainings: { highWire: "high wire", upright: "upright shoots", divided: "divided canopy" },
    block: { header: "Block", help: "Name of the block, as in the Blocks sheet." },
    row: { header: "Row", help: "Number of the row in the block." },
    vine: { header: "Vine", help: "Number of the vine in the row, counted from the row's start." },
    countedBy: { header: "Counted by", help: "Initials of whoever counted." },
    countedOn: { header: "Date", help: "Day of the count." },
    cordons: {
      name: "Cordons",
      rowIs: "a candidate cordon",
      side: {
        header: "Side",
        help: "Side of the vine on which the cordon lies: left or right as you walk the row from vine 1, or a compass side.",
      },
      cordon: { header: "Cordon", help: "Letter of the candidate on this vine: A, B, C." },
      trunk: {
        header: "Trunk",
        help: "Number of the trunk that the cordon comes from, 1 nearest the row's start.",
      },
      length: {
        header: "Length",
        help: "Length of the cordon from the head of the vine to its end; unit in the header.",
      },
      positions: { header: "Positions", help: "Places along the cordon where a spur should stand." },
      liveSpurs: { header: "Live spurs", help: "Places with a live spur." },
      longestGap: { header: "Longest gap", help: "Longest stretch without a live spur, in positions." },
      spursDown: { header: "Spurs down", help: "Live spurs that point down." },
      spursLevel: { header: "Spurs level", help: "Live spurs that point sideways." },
      spursUp: { header: "Spurs up", help: "Live spurs that point up." },
      nodesPerSpur: {
        header: "Nodes a spur",
        help: "Nodes left on a spur, the usual number on this cordon.",
      },
      diameter: { header: "Diameter", help: "Thickness of the cordon halfway along it; unit in the header." },
      gapFrom: {
        header: "Gap from head",
        help: "Positions between the head and the beginning of the longest gap; 0 when it begins at the head.",
      },
      canesNearHead: {
        header: "Canes near head",
        help: "Canes near the head that could be laid: of last summer, 5/16 to 1/2 in thick, sound.",
      },
      spurHeight: {
        header: "Spur height",
        help: "How high the spurs have come to stand above the cordon; unit in the header.",
      },
      condition: { header: "Condition", help: "Sound, injured by winter, diseased or dead." },
      trunkCondition: {
        header: "Trunk condition",
        help: "Condition of the trunk that the cordon comes from; leave it blank where nobody looked.",
      },
      trunkYear: {
        header: "Trunk year",
        help: "Year in which the trunk that the cordon comes from was laid up; leave it blank where nobody knows.",
      },
      fixedChoice: {
        header: "Fixed choice",
        choices: {
          stays: "stays",
          goes: "goes",
          cane: "lay a cane",
          recount: "count again",
        },
        help: "Only when a person has decided: stays, goes, lay a cane (it goes, but for a cane near the head that is laid) or count again (the whole vine).",
      },
    },
    vines: {
      name: "Vines",
      rowIs: "a vine",
      status: { header: "Status", help: "Bearing, young, missing or replanted." },
      liveTrunks: { header: "Live trunks", help: "Trunks with live wood." },
      prunings: {
        header: "Prunings",
        help: "Weight of the one-year wood cut off this vine, where it was weighed; unit in the header.",
      },
      clusters: { header: "Clusters", help: "Clusters counted on the vine, where they were counted." },
      shoots: { header: "Shoots", help: "Shoots counted after budbreak, where they were counted." },
      planted: {
        header: "Year planted",
        help: "Year in which this vine was planted, where that is later than its block.",
      },
      prunedOn: {
        header: "Pruned on",
        help: "Day on which the vine was pruned; blank while it is still to do.",
      },
    },
    blocks: {
      name: "Blocks",
      rowIs: "a block",
      cultivar: { header: "Cultivar", help: "Cultivar planted." },
      planted: { header: "Year planted", help: "Year the block was planted." },
      rows: { header: "Rows", help: "Rows in the block." },
      vines: {
        header: "Vine places",
        help: "Places for a vine in the whole block, missing vines counted in.",
      },
      rowSpacing: { header: "Row spacing", help: "Distance between rows." },
      vineSpacing: { header: "Vine spacing", help: "Distance between vines in the row." },
      training: {
        header: "Training system",
        help: "Cordon on a high wire, upright shoots between catch wires, or a divided canopy.",
      },
      nodeRule: {
        header: "Node rule",
        help: 'How nodes are budgeted: a formula like 30+10, "by length" or a fixed number.',
      },
      injuryRule: {
        header: "Injury rule",
        help: "Rule that corrects the budget for dead buds, named after its source.",
      },
      targetCrop: {
        header: "Target crop",
        help: "Crop wanted, in tons an acre or tonnes a hectare; unit in the header.",
      },
      clusterWeight: { header: "Cluster weight", help: "Weight of a ripe cluster." },
      clustersPerShoot: { header: "Clusters a shoot", help: "Clusters that a shoot carries on average." },
      budbreak: { header: "Budbreak", help: "Share of counted nodes that grow a shoot." },
      grapeKind: {
        header: "Kind of grape",
        help: "American, French-American, new hybrid, vinifera or seedless table grape: figures published for that kind stand in where the block has none.",
      },
      secondaryWorth: {
        header: "Secondary worth",
        help: "Crop of a shoot from a secondary bud over that of one from a primary bud, for this block.",
      },
      basalShoots: {
        header: "Basal shoots",
        help: "Shoots from buds that are not counted, for each spur of this block.",
      },
      basalWorth: {
        header: "Basal worth",
        help: "Clusters of a basal shoot over those of a counted one; 0 where basal buds do not bear.",
      },
      nodesASpur: {
        header: "Nodes a spur",
        help: "Count nodes left on a spur of this block, and the most; 1 where the basal bud bears.",
      },
      mostNodes: { header: "Most nodes", help: "Most nodes left on a vine of this block." },
    },
    budCuts: {
      "7": { header: "Cut by" },
      name: "Bud cuts",
      rowIs: "a cane whose buds were cut",
      cane: { header: "Cane", help: "Number of the cane." },
      nodesCut: { header: "Nodes cut", help: "Nodes cut on this cane." },
      primariesAlive: { header: "Primaries alive", help: "Nodes with a live primary bud." },
      secondariesAlive: { header: "Secondaries alive", help: "Nodes with a live secondary bud." },
    },
    harvest: {
      name: "Harvest",
      rowIs: "a block in a year",
      year: { header: "Year", help: "Year of the harvest." },
      picked: { header: "Picked", help: "Weight picked from the block; blank until harvest." },
      vinesPicked: { header: "Vines picked", help: "Vines that were picked." },
      clusterWeight: { header: "Cluster weight", help: "Mean weight of a cluster at harvest." },
      lagWeight: {
        header: "Cluster weight at lag phase",
        help: "Mean weight of a cluster when berry growth paused.",
      },
      clustersWeighed: { header: "Clusters weighed", help: "Clusters behind the weight at lag phase." },
      clustersPerShoot: { header: "Clusters a shoot", help: "Clusters a shoot, counted." },
      budbreak: { header: "Budbreak", help: "Share of nodes that grew." },
      frostPrimaries: {
        header: "Frost: primaries",
        help: "After a spring frost: nodes whose primary shoot lives.",
      },
      frostSecondaries: {
        header: "Frost: secondaries",
        help: "After a spring frost: nodes on which only a secondary shoot lives.",
      },
      frostTertiaries: {
        header: "Frost: tertiaries",
        help: "After a spring frost: nodes on which only a tertiary shoot lives; blank for none.",
      },
      frostShootless: {
        header: "Frost: shootless",
        help: "After a spring frost: nodes without a living shoot, whatever killed it.",
      },
    },
    settings: {
      name: "Settings",
      rowIs: "a figure that changes a result",
      setting: { header: "Setting", help: "Name of the figure; do not change it." },
      value: { header: "Value", help: "The farm's own figure." },
      unit: { header: "Unit", help: "Unit of the value." },
      source: { header: "Source", help: "Where the figure comes from." },
      meaning: { header: "Meaning", help: "What the figure does." },
      changedBy: { header: "Changed by", help: "Who changed it last." },
      changedOn: { header: "Changed on", help: "When it was changed last." },
    },
    note: { header: "Note", help: "Anything worth knowing." },
  },
  accept: {
    chooseBlock: "Choose a block to accept all its decided vines in one step.",
    progress:
      "{block}: {accepted} of {all} vines accepted in the sheet, {open} decided and not yet accepted, {ask} with a question left.",
    progressName: "Vines accepted",
    ask: "Accept the decided vines: {vines}",
    title: "Accept {block}",
    wouldWrite:
      "Would write in the column Fixed choice: cells {cells}, vines {vines}. Vines with a question left: {ask}; they are not touched. Cells that hold something are not touched either.",
    unreadable:
      "Passed over, because the cell for the fixed choice holds a formula or another word: vines {unreadable}.",
    by: "Your name or initials, if you like",
    byHelp: "The name goes into the log of runs, where that is switched on.",
    yes: "Yes, write {cells} {cells:cell|cells}",
    done: "{block} accepted: vines {vines}, cells written {cells} in the column Fixed choice.",
    doneBy: "{block} accepted by {by}: vines {vines}, cells written {cells} in the column Fixed choice.",
    meanwhile:
      "Cell {cell} of sheet {sheet} was changed meanwhile; nothing was accepted. Next step: decide again.",
    takeBack: "Take back: {block} accepted",
    takenBack: "Taken back: {cells} {cells:cell|cells} of {block} hold what they held before.",
    partlyBack:
      "{cells} {cells:cell|cells} of {block} hold what they held before; left alone, because somebody changed them since: {left}. Next step: decide again.",
  },
  addinServer: {
    notHere:
      "Excel runs on Windows and Mac only, so there is nothing to start on this machine ({platform}). Without Excel use npm start; for Excel on the web put dist/ on an HTTPS host (DEVELOPERS.md).",
    notInstalled:
      "The optional package {package} is not installed on this machine. Run npm install {package}@{version} --no-save, then try again.",
    notBuilt: "There is no {file}. Run npm run build first.",
    serving:
      "The add-in is served at {address} (stop it with Ctrl+C). Its certificate was made on this machine and no other trusts it.",
    portTaken:
      "Port {port} is in use by another program. The manifest names this port, so stop that program, or build for another address: npm run build -- --env address=https://localhost:PORT/ and then npm run serve -- --port PORT.",
    badPort: "--port must be a whole number from 1 to 65535, but is {given}.",
    trust:
      "Excel asks for a certificate that this machine trusts; one is made and added to your own account's trusted certificates now. npm run excel:stop takes it away again.",
    stopped: "The add-in was taken out of Excel on this machine, and its certificate with it.",
    failed: "That did not work: {problem}",
  },
  cards: {
    sheet: {
      title: "{block}, row {row}",
      page: "page {page} of {pages}",
      vines: "vines {first} to {last}",
      made: "Made on {date}",
      crew: "Crew",
      day: "Day",
      vine: "Vine",
      keep: "Stays",
      cut: "Cut",
      lay: "Lay a cane",
      nodes: "Nodes: a spur",
      notes: "Notes",
      done: "Done",
      found: "Found different",
      ribbonStays: "{colour} ribbon: stays",
      ribbonAsk: "{colour} ribbon: look first",
      cutRule: "Cut from the outer end towards the trunk.",
      or: "{cordon} / {others} ?",
      orNewCane: "{cordon} / cane ?",
      withTrunk: "{cordon}+T{trunk}",
      withSpur: "{cordon} ○",
      keepTrunk: "{cordon} · T{trunk}",
      sideStays: "{side} stays",
      sideCut: "{side} cut",
      caneLater: "next winter: {from}",
      cane: "cane: {from}",
      caneOf: "cane: {from} · {source}",
      bothOnOneTrunk: "both on T{trunk}",
      everyTrunkHurt: "all trunks hurt",
      noLiveTrunk: "no live trunk",
      spursAt: "{spurs}×{nodes}",
      leave: "{nodes}: {plan}",
      onASpur: "{nodes}",
      shortage:
        "{block}: on {vines} of {all} vines the spurs, each as long as it may be, hold {short} nodes fewer than the budgets.",
      surplus: "✂ {spurs}",
      bringUp: "new trunks: {trunks}",
      trunkDue: "T{trunk} old ({age} y): keep a sucker",
      trunkOut: "T{trunk} old ({age} y): out once its renewal is 2-3 y",
      replace: "renew {cordon}",
      extend: "extend {cordon} {length}",
      layOver: "{cordon}: cane over gap after {from}",
      replaceLater: "renew {cordon} later: no cane now",
      longerSpurs: "{cordon}: longer spurs at {from}",
      lowerSpurs: "{cordon}: spurs back to the cordon",
      notDecided: "not decided",
      recount: "recount",
      toCount: "still to be counted",
      prunedOn: "done {date}",
      cautions:
        "Wear eye protection and gloves; keep hands clear of the blade and of the next person. Warm up before fingers go numb; mind ice, wire and ladders. Wound protection and sprays only by their label and local rules. The figures advise; a local adviser and the person at the vine decide.",
      back: "What you found different goes into the Cordons and Vines sheets: Fixed choice, Condition, Pruned on, Note.",
    },
    legend: {
      keepTrunk: "A · T1: A stays, on trunk 1",
      ask: "A / B ?: look first, one of them stays",
      askCane: "A / cane ?: look first, A stays or a cane is laid",
      withTrunk: "A+T1: cut A, take dead trunk 1 out",
      withSpur: "A ○: cut A, leave a renewal spur",
      backToCane: "A ⟂: cut A back to its first good cane",
      evenSpurs: "30: 2 = 30 nodes, 2 on each spur",
      spurs: "30: 4×3 9×2 = 30 nodes: 4 spurs of 3, 9 of 2",
      surplus: "✂ 4: cut off the 4 worst placed spurs",
      trunk: "T1: trunk 1",
    },
    open: {
      inBlock: "Still open in {block}: {parts}.",
      everywhere: "Still open: {parts}.",
      parts: {
        wrong: "{wrong} {wrong:cell|cells} that cannot be right",
        asked: "{asked} {asked:vine|vines} to answer for",
        askedRecount: "{asked} {asked:vine|vines} to answer for, {recount} of them to be counted again",
        uncounted: "{uncounted} {uncounted:vine|vines} not counted",
        toAccept: "{toAccept} {toAccept:vine|vines} decided but not accepted",
      },
      nothingInBlock: "Nothing is open in {block}: every vine is counted, decided and accepted.",
      nothingEverywhere: "Nothing is open: every vine is counted, decided and accepted.",
    },
    changed: {
      only: "only what changed",
      rowVoid: "Void on the card of {block}, row {row}, printed before: {vines}.",
      cardVoid: "Void, the whole card of {block}, row {row}, printed before.",
      nothing: "Nothing changed since the last print: the cards in hand hold.",
    },
    ribbons: {
      orange: "orange",
      blue: "blue",
      red: "red",
      yellow: "yellow",
      green: "green",
      white: "white",
      pink: "pink",
      purple: "purple",
      violet: "violet",
      black: "black",
    },
    cardOrigins: { trunk: "T{trunk}", otherTrunk: "bare trunk", head: "head", ground: "sucker" },
    part: {
      spurs: "Spurs",
      stretch: "Longest gap",
      placing: "Placing",
      soundness: "Soundness",
      diameter: "Diameter",
    },
  },
  countPlan: {
    title: "Plan a count",
    plan: "Plan a count in {block}",
    counted: "What is counted",
    clusters: "Clusters",
    shoots: "Shoots",
    prunings: "Prunings weighed",
    margin: "Margin, % either way",
    badMargin: "The margin must be a number from {least} to {most} %, but “{value}” was typed.",
    noVines:
      "The Vines sheet lists no bearing vine of {block}. Next step: list its vines with row, number and status.",
    vines:
      "Count {vines} of {all} bearing vines: the mean then lies within {margin} % in {confidence} of 100 cases like this.",
    pilot:
      "Spread between vines {percent} %, from {pilot} {pilot:vine|vines} of this block that carry a count.",
    setting:
      "Spread between vines {percent} %, from Settings, because fewer than {least} {least:vine|vines} of this block carry a count.",
    handbooks: "What handbooks say beside it",
    walk: "Which vines, in the order of a walk",
    row: "Row {row}: {vines}",
    drawn:
      "Drawn by chance and spread over the rows; draw {seed} gives this list again. Count the very vines drawn; one found missing or young is left out, not counted as 0.",
    other: "Draw other vines",
    print: "Print the list",
    write: "Write the list to a sheet",
    sheet: "Vines to count",
    printTitle: "Vines to count: {block}",
    headRow: "Row",
    headVine: "Vine",
    headNote: "Note",
    countedBy: "Counted by, day:",
  },
  crew: {
    title: "Cards for the crew",
    intro:
      "A card a row: what stays, what is cut and where, nodes a spur. Below: in what order the blocks are pruned, and which vines need a new trunk.",
    make: "Make the cards",
    progress: "Progress of the cards",
    sum: "{cards} {cards:card|cards} for {vines} {vines:vine|vines}; {done} of the pruning is done.",
    others:
      "{others} more {others:vine|vines} of the register {others:is|are} named on them: young, replanted or missing.",
    none: "No vine was found. Next step: fill in the Cordons or Vines sheet.",
    row: "Row",
    which: "What to print",
    whichAll: "All cards",
    whichChanged: "Only what changed since the last print",
    paper: "Paper",
    cardLanguage: "Language of the cards",
    print: "Print {cards} {cards:card|cards}",
    write: "Write Crew cards sheet",
    back: "What the crew found different goes into the Cordons and Vines sheets; the cards follow.",
    work: "Order of work",
    workSum: "Pruning: {hours} {hours:hour|hours} left, {days} {days:day|days} of the whole crew.",
    workOrder: "In this order: {blocks}.",
    thinningSum:
      "After pruning, shoots are thinned from {from} on: {hours} {hours:hour|hours}, {days} {days:day|days} of the whole crew ({blocks}).",
    workSource:
      "Hardy blocks and fruitful secondaries first, tender ones last (University of Georgia, Bulletin 1505); the lists and the crew's calendar stand in Settings.",
    block: "Block",
    left: "Vines left",
    hours: "Hours",
    crewDays: "Crew days",
    when: "When",
    done: "done",
    only: "{block}",
    first: "{block}, first pass",
    second: "{block}, second pass",
    thinning: "{block}, shoots thinned",
    calendarKey: "The numbers are blocks in their turn. Hatched: not worked by Settings. Framed: today.",
    dayRows: "{block}, rows {first} to {last}",
    dayRow: "{block}, row {first}",
    dayWork: "Work",
    renewal: "Trunks to renew",
    renewalNone: "No vine needs a new trunk.",
    trunksDue:
      "Trunks due by their age: {now} this winter, {nextWinter} next winter; live trunks without a year: {withoutYear}.",
    renewalSum: "{vines} {vines:vine needs|vines need} a new trunk, most urgent first.",
    trunksNotCounted: "Live trunks were not counted on {vines} {vines:vine|vines}.",
    forecast: "Five winters ahead",
    forecastNote:
      "At {loss} of the trunks lost a year and one trunk more on {up} of the short vines, both from Settings. Trunks of one vine often die together, so this is the bright side.",
    year: "Winter",
    now: "now",
    enough: "Enough trunks",
    short: "Too few",
    without: "None",
  },
  desk: {
    page: {
      appName: "Cordonbook",
      workbook: "Workbook",
      openFile: "Open a file…",
      saveCopy: "Save a copy",
      printSheet: "Print this sheet",
      acceptedWords: "Accepted words",
      saved: "{name} was made with everything that was changed here; look for it among your downloads.",
      notKept: "The copy will not hold: {parts}.",
      notKeptParts: {
        addedSheets: "the sheets added or renamed here ({where})",
        deletedSheets: "the deletion of sheets ({where} will still be there)",
        movedSheets: "the new order of the sheets",
        moved:
          "what goes with rows and columns that were inserted, deleted or dragged (formats, notes, pictures and rules for typing on {where} stay where they were)",
        looks: "letters, colours and lines set here ({where})",
        sizes: "widths, heights, hidden or merged cells and frozen panes changed here ({where})",
        notes: "notes written here",
        tables: "tables made, renamed or narrowed here ({where})",
        names: "names defined here",
        filters: "filters set here",
        protection: "protection set here",
        remarks: "remarks, colours and formats on sheets of Cordonbook whose rows are gone ({where})",
        formulas: "formulas that no spreadsheet could read ({where}; they become text)",
        values: "formulas ({where}; the copy holds what they show)",
      },
      saveAnyway: "Save it all the same",
      doNotSave: "Do not save",
      notSaved: "No copy was made: {problem}",
      copyName: "{name} (copy){ending}",
      restored: "{name} is as you left it on this machine, {when}.",
      goOn: "Go on with it",
      discard: "Discard what was typed",
      notRestored:
        "What you typed in {name} could not be restored: {problem}. It stays kept on this machine.",
      unsaved: "What was changed on the page is not saved yet. Open another workbook all the same?",
      gridLabel: "Spreadsheet",
      paneLabel: "Cordonbook pane",
      loading: "Opening {name}…",
      stop: "Stop",
      calculating: "Working out the formulas…",
      calculated: "{done} of {all}",
      doubtfulComma:
        "“{written}” in this formula is read as two values; for a decimal write {point}, or put ; between the values.",
      calculationStopped:
        "Working out the formulas was stopped. Those that were not reached show what they showed before. They are worked out at the next change.",
      openingRow: "Sheet {sheet}, row {row}",
      stopped: "Opening {name} was stopped. The workbook on the page is unchanged.",
      dropHere: "Drop a workbook or CSV file to open it",
      close: "Close",
      idle: "Everything stays on this machine. Select a cell with an error to read what is wrong.",
      keptOffline: "This page is now kept on this machine: it also opens without a network.",
      newerPage:
        "A newer version of this page is ready. Save your work, close every tab that shows this page, and open it again.",
      sampleMissing:
        "The sample workbook {name} could not be fetched from where this page comes from: {problem}. Try again once that server answers (on this machine: npm start).",
      notOpened: "The file {name} could not be opened: {problem}. The workbook on the page is unchanged.",
    },
    sampleNames: {
      clean: "Larkmoor Bend (invented): a clean season",
      mistakes: "Larkmoor Bend (invented): season with mistakes",
      empty: "An empty season to fill in ({units}, {language})",
      US: "feet and pounds",
      metric: "metric",
    },
  },
  deskServer: {
    ready: "Cordonbook is ready at {address} (stop it with Ctrl+C)",
    help: "npm start -- [--port NUMBER] [--no-open]: opens the page without Excel on this machine only; port {port} unless another program has it.",
    badOption: "Cordonbook was not started: {problem} Options are --port NUMBER and --no-open.",
    badPort: "Cordonbook was not started: --port must be a whole number from 0 to 65535, but is {given}.",
    oldNode: "Cordonbook was not started: it needs Node {needed} or newer, but this is Node {found}.",
    notBuilt:
      "Cordonbook was not started, because its page could not be built (run npm ci again if packages are missing): {problem}",
    noPort:
      "Cordonbook was not started, because no port of this machine could be opened from {port} on: {problem}",
  },
  excelPage: {
    notFetched: "Part of Cordonbook could not be fetched. Check the network and try again.",
    noOffice:
      "Microsoft's Office script could not be loaded, so Cordonbook cannot reach the workbook. Check the network and open the pane again.",
    notInExcel: "This page works inside Excel only. Without Excel, use the page that npm start opens.",
    tooOld:
      "This Excel is too old for Cordonbook: it lacks {missing}. It works in Excel on the web, Microsoft 365, and Office LTSC 2021 or later.",
  },
  excelProblems: {
    halfWritten:
      'Excel refused to finish "{sheet}" and also to put it back. Use Undo, or close without saving; what stood there before is on the sheet "{kept}" if one is named.',
    marksHalfSet:
      "Excel refused to finish the marks, and some may be missing. Run the check again; the cells themselves are unchanged.",
    inTheWay:
      'Row {row} of the sheet "{sheet}" holds something that is not part of its table, where the new table would go. Move it, then run again; nothing was changed.',
    sheetKeepsChanging:
      'Rows of the sheet "{sheet}" came or went while it was read, three times over. Run again when your colleague has finished.',
    notAFormula:
      'What was to go into row {row}, column {column} of "{sheet}" is not a formula: it must begin with "=". Nothing was changed.',
    pivotLost:
      'The PivotTable "{name}" cannot be refreshed: its source is gone or another one. Delete it, then run again to have it made anew.',
    hiddenSheet: 'The sheet "{sheet}" is hidden. Show it (right-click on a sheet tab, Unhide) and try again.',
    filteredTable:
      'Rows of the sheet "{sheet}" are filtered out of sight, and Excel may put what is written there into other rows; nothing was changed. Clear the filter (Data tab, Clear) and run again.',
    mergedCell:
      'Row {row}, column {column} of the sheet "{sheet}" lies in merged cells, which keep what stands in their first cell only; nothing was changed. Unmerge them (Home tab, Merge) and run again.',
    overlap:
      'On the sheet "{sheet}" merged cells, another table or a PivotTable lie where the table would go; nothing was changed. Move them or unmerge them, then run again.',
    otherWorkbook:
      "Another workbook came to the front, and Excel answers only for the one in front. Go back to this workbook and run again.",
    notPrinted:
      "Nothing was printed: here the pane may not print (so it is in Excel for Mac). Next step: use the button beside it that writes a sheet, and print that sheet from Excel (File, Print).",
    cellBeingEdited:
      "A cell is being edited. Press Enter or Esc in the sheet and try again; nothing was changed.",
    tooMuchAtOnce:
      'One row of "{sheet}" is too large for a single message to Excel. Shorten its longest text and run again; nothing was changed.',
    notInThisExcel:
      "This copy of Excel cannot do that ({reason}); nothing was changed. The self-test in the pane lists what it can do.",
    excelRefused:
      "Excel refused ({reason}); nothing was changed. Try again, and if it stays so, save, close and open the workbook.",
  },
  farmFigures: {
    take: "Use {value}",
    takeName: "Use {value}: {figure}",
    wouldWrite: "{value} would be written to {where}. Nothing is written yet.",
    cropMoves:
      "{block} ({stage}): likely crop {before} → {after} {unit} (range {beforeLow} to {beforeHigh} → {afterLow} to {afterHigh})",
    cropComes:
      "{block} ({stage}): likely crop {after} {unit} (range {afterLow} to {afterHigh}), where none can be worked out now",
    cropGoes:
      "{block} ({stage}): no crop can be worked out any more; now it is {before} {unit} (range {beforeLow} to {beforeHigh})",
    cropStays: "No block's crop outlook would move.",
    yes: "Yes, write it",
    taken: "{figure} is {value} from now on, written to {where} by {by}, {on}.",
    undo: "Take back",
    undone: "{figure} is as it was.",
    meanwhile: "Somebody else changed {where} meanwhile, so nothing was written. Look at it again.",
    noColumn:
      "The sheet {sheet} has no column “{header}” to take this figure: add that head, then work out the outlook again.",
    formula: "{where} holds a formula; it was left alone. Type a value there first, or keep the formula.",
    gone: "The harvests no longer propose this figure. Work out the outlook again.",
  },
  fileProblems: {
    noFile: 'There is no file "{file}"; check its name and folder.',
    noFiles: 'The folder "{folder}" has no .xlsx, .xlsm, .csv or .tsv file.',
    unreadableFile: 'The file "{file}" cannot be opened ({reason}).',
    emptyFile: 'The file "{file}" is empty.',
    notAWorkbook:
      '"{file}" is not a workbook of the .xlsx kind; save it as Excel workbook (.xlsx) or as csv and try again.',
    oldOrLockedFile:
      '"{file}" is an old .xls workbook or has a password; save it as .xlsx without a password and try again.',
    lockedFile: 'Parts of "{file}" are encrypted; save it without a password and try again.',
    binaryWorkbook: '"{file}" is a binary workbook (.xlsb); save it as .xlsx and try again.',
    damagedFile: '"{file}" is damaged: its list of parts does not fit the file. Ask for it to be sent again.',
    damagedPart: '"{file}" is damaged: its part {part} cannot be unpacked. Ask for it to be sent again.',
    missingPart: '"{file}" is damaged: it refers to a part {part} that it does not have.',
    badXml: '"{file}" is damaged: its part {part} is not well-formed.',
    tooManyParts: '"{file}" was not read: it has more than {most} parts, which no workbook needs.',
    samePartTwice: '"{file}" was not read: it has two parts of the name {part}.',
    badPartName: '"{file}" was not read: the part name {part} leads out of the file.',
    unknownPacking: '"{file}" was not read: its part {part} is packed in a way that workbooks do not use.',
    expandsTooFar:
      '"{file}" was not read: unpacked it would be {times} times its size; the limit is {most} (option --expansion).',
    sizeLies: '"{file}" was not read: its part {part} is not of the size that the file says.',
    tooLargeToHold: '"{file}" is too large to be held in memory; use the command line.',
    documentType: '"{file}" was not read: its part {part} declares a document type, which no workbook needs.',
    tooDeep: '"{file}" was not read: its part {part} nests more than {most} elements.',
    tooMuchText: '"{file}" was not read: {part} holds more than {most} characters in one place.',
    tooManyCells:
      'Sheet "{sheet}" of "{file}" spans more than {most} {most:cell|cells}; clear stray cells far from the table and try again.',
    tooManyForPage:
      '"{file}" spans more than {most} cells, which is more than this page can show; use the command line.',
    tooManyOf:
      '"{file}" was not read: its part {part} lists more than {most} entries of one kind, which no workbook needs.',
    sheetsOnOnePart: '"{file}" was not read: its sheet "{sheet}" and another one are the same part {part}.',
    inputTooLarge:
      'What came in as "{file}" was not read: it is larger than {most} MB. Save it as a file and name that.',
    sameSheetTwice: '"{file}" is damaged: it has two sheets of the name "{sheet}".',
    rowPastLimit: 'Sheet "{sheet}" of "{file}" is damaged: row {row} lies past the last possible row {most}.',
    columnPastLimit:
      'Sheet "{sheet}" of "{file}" is damaged: cell {cell} lies past the last possible column {most}.',
    rowTwice: 'Sheet "{sheet}" of "{file}" is damaged: row {row} stands twice or out of order.',
    cellTwice:
      'Sheet "{sheet}" of "{file}" is damaged: cell {cell} in row {row} stands twice or out of order.',
    badCell: 'Sheet "{sheet}" of "{file}" is damaged: {cell} in row {row} is not a cell of that row.',
    badNumber: 'Sheet "{sheet}" of "{file}" is damaged: row {row} has a number written as {value}.',
    notText: '"{file}" is not a text file; save it as csv from the spreadsheet and try again.',
    openQuote: '"{file}" was not read: the quotation marks from row {row} on do not close as they should.',
    layoutUnknown:
      '"{file}" cannot be changed in place: its part {part} is laid out in a way that is not understood. Nothing was changed.',
    signedFile: '"{file}" carries a digital signature, which any change would break. Nothing was changed.',
    openElsewhere: '"{file}" is open in another program; close it there and run again. Nothing was changed.',
    changedMeanwhile: '"{file}" was saved by somebody else meanwhile; run again. Nothing was changed.',
    diskFull: 'There is no room on the disk for "{file}" ({reason}). Nothing was changed.',
    savedElsewhere: '"{file}" is being saved by another run at this moment; run again. Nothing was changed.',
    readOnlyFile: '"{file}" is read-only; take that off it, or use --save for a copy. Nothing was changed.',
    ownerNotKept:
      '"{file}" belongs to somebody else, which could not be kept; use --save for a copy. Nothing was changed.',
    mayNotWrite: '"{file}" cannot be written ({reason}). Nothing was changed.',
    fileExists: 'There is a file "{file}" already; name another one with --out. Nothing was changed.',
  },
  findings: {
    units: {
      times: "×",
      nodes: "nodes",
      positions: "positions",
      trunks: "trunks",
      years: "years",
      clusters: "clusters",
      people: "people",
      date: "date",
      days: "days",
      vines: "vines",
      values: "values",
      cordons: "cordons",
      month: "month",
      "powers of ten": "powers of ten",
      rows: "rows",
      share: "share",
    },
    kinds: {
      missingValue: {
        title: "Blank where a value is needed",
        sentence: "{column} is blank.",
        why: "The row cannot be used without it.",
        remedy: "Fill it in from the paper sheet, or count again.",
      },
      missingColumn: {
        title: "A column is missing",
        sentence: "The table has no column “{missing}”.",
        why: "Rows without it cannot be used.",
        remedy: "Add the column, or say which of your own columns it is.",
      },
      columnTwice: {
        title: "The same column twice",
        sentence: "The column “{wanted}” stands in the table twice; only the first is read.",
        why: "Counts in the second column are not used.",
        remedy: "Rename or remove one of the two.",
      },
      numberAsText: {
        title: "Number typed as text",
        sentence: "{column} shows “{value}”, but it is text and no number.",
        why: "A spreadsheet leaves such a cell out of sums without a word.",
        remedy: "Type the number again.",
      },
      notANumber: {
        title: "Not a number",
        sentence: "{column} holds “{value}” where a number belongs.",
        why: "The row cannot be used without a number.",
        remedy: "Enter the number; words belong into the note.",
      },
      notADate: {
        title: "No clear date",
        sentence: "{column} holds “{value}”, which is no date or can be read two ways.",
        why: "Day and month may be taken for each other.",
        remedy: "Type the date as year-month-day.",
      },
      unknownWord: {
        title: "Unknown word",
        sentence: "{column} says “{value}”; it must be one of: {words}.",
        why: "The word decides how the row is used.",
        remedy: "Pick one of the words.",
      },
      errorCell: {
        title: "The cell shows an error",
        sentence: "{column} shows {value}.",
        why: "A formula failed, so there is no value to use.",
        remedy: "Mend the formula or type the value.",
      },
      outsideLimits: {
        title: "Outside what can be",
        sentence: "{column} is {value}{unit}; it must lie between {least} and {most}{unit}.",
        why: "No vine has such a value, so it is a slip of the pen or the wrong unit.",
        remedy: "Correct it from the paper sheet; look at the unit in the header.",
      },
      notWhole: {
        title: "A count with a fraction",
        sentence: "{column} is {value}, but it is counted in whole numbers.",
        why: "A fraction in a count is a slip or a value of another column.",
        remedy: "Correct it from the paper sheet.",
      },
      settingUnknown: {
        title: "Unknown setting",
        sentence: "“{setting}” is no setting that is used.",
        why: "Changing it changes nothing; a mistyped name leaves the usual value in force.",
        remedy: "Correct the name, or leave the row if it is your own.",
      },
      settingNotUsable: {
        title: "Setting cannot be used",
        sentence:
          "The value “{value}” of “{setting}” cannot be used (expected: {expected}); the usual value is in force.",
        why: "Results are not made with the figure that the sheet shows.",
        remedy: "Correct the value.",
      },
      settingTwice: {
        title: "The same setting twice",
        sentence:
          "“{setting}” is {value}{unit} here, and {otherValue}{otherUnit} in row {otherRow} of the sheet{otherSheet}; the latter is in force.",
        why: "Two values for one figure: somebody believes in the other.",
        remedy: "Remove one of the rows, or give both the same value where each file keeps its own settings.",
      },
      columnsSwapped: {
        title: "Two columns swapped",
        sentence:
          "{rows} {rows:row|rows}, to row {lastRow} of the sheet, only fit when {column} and {other} change places.",
        why: "Every figure of these rows is taken for another.",
        remedy: "Compare with the heads of the paper sheet and exchange the two columns in these rows.",
      },
      unitSlip: {
        title: "Written in another unit",
        sentence:
          "{column} is {value}{unit}, unlike its block; taken as {value} {meant} it is {converted}{unit} and fits ({rows} {rows:row|rows}, to row {lastRow} of the sheet).",
        why: "In the wrong unit every figure made from it is wrong by as much.",
        remedy: "Ask which tape or scale was used and convert the values.",
      },
      totalDiffers: {
        title: "Total differs from its parts",
        sentence: "The total of {column} is {total}, its parts make {sum}: {difference} apart ({made}).",
        why: "Rows were added or changed after the total was made, or a row is left out of it.",
        remedy: "Add up again, or replace the typed total by a formula.",
      },
      placesDiffer: {
        title: "Vine places differ from the register",
        sentence: "{column} is {total}, but the Vines sheet lists {sum}: {difference} apart ({made}).",
        why: "Crop and hours of the block are counted from its vine places.",
        remedy: "Correct the number, or complete the Vines sheet.",
      },
      vineNeverCounted: {
        title: "Vine never counted",
        sentence:
          "The vine bears, but no cordon of it was counted; {counted} of {vines} {vines:vine|vines} of the row were.",
        why: "Nothing would be decided on it, or its counts stand under another number.",
        remedy: "Count it, or correct its status in the Vines sheet.",
      },
      rowNeverCounted: {
        title: "Row never counted",
        sentence:
          "None of the {vines} bearing vines of this row was counted, while most rows of the block were.",
        why: "A sheet may have been lost, or typed under another row.",
        remedy: "Look for the paper sheet, or count the row.",
      },
      digitPreference: {
        title: "Values that look guessed",
        sentence:
          "{own} % of the {values} values of {column} by {counter} end in 0 or 5; of the others' in the same blocks {others} %.",
        why: "Values that end so are mostly guessed or rounded, not measured.",
        remedy: "Count a few of these vines again together.",
      },
      counterUnlikeOthers: {
        title: "Counts unlike the others",
        sentence:
          "{habit} by {counter} differs by {percent} % from the others in the same blocks, over {vineyardRows} {vineyardRows:row|rows}.",
        why: "Somebody counts by another rule, so that cordons of different rows cannot be compared.",
        remedy: "Count one vine together and agree on the rule.",
      },
      unknownBlock: {
        title: "Unknown block",
        sentence: "The Blocks sheet has no block “{value}”.",
        why: "Its rows are left out of the block's figures.",
        remedy: "Correct the name, or add the block to the Blocks sheet.",
      },
      unknownRow: {
        title: "The block has no such row",
        sentence: "The block has {last} {last:row|rows}.",
        why: "The counts belong to another row, whose own are missing.",
        remedy: "Correct the row number, or the number of rows in the Blocks sheet.",
      },
      unknownVine: {
        title: "The register has no such vine",
        sentence: "The Vines sheet has no such vine.",
        why: "The counts belong to another vine, whose own are missing.",
        remedy: "Correct row and vine, or add the vine to the Vines sheet.",
      },
      cordonOnMissingVine: {
        title: "Cordon on a missing vine",
        sentence: "The Vines sheet calls this vine missing, but a cordon was counted on it.",
        why: "Either the register or the vine number is wrong.",
        remedy: "Walk to the vine: correct its status, or the number on the count sheet.",
      },
      sameCordonTwice: {
        title: "The same cordon twice",
        sentence: "This cordon stands already in row {otherRow} of the sheet{otherSheet}.",
        why: "It would be counted twice, or one of the two belongs to another vine.",
        remedy: "Remove the copy, or correct vine, side or letter.",
      },
      sameVineTwice: {
        title: "The same vine twice",
        sentence: "This vine stands already in row {otherRow} of the sheet{otherSheet}.",
        why: "The block would have a vine too many, and it is unclear which row holds.",
        remedy: "Remove the copy, or correct row and vine.",
      },
      sameBlockTwice: {
        title: "The same block twice",
        sentence: "This block stands already in row {otherRow} of the sheet{otherSheet}.",
        why: "It is unclear which spacings and rules hold.",
        remedy: "Remove one of the rows.",
      },
      sameHarvestTwice: {
        title: "A harvest in two rows",
        sentence:
          "This block's harvest of the year stands already in row {otherRow} of the sheet{otherSheet}.",
        why: "What was picked in several rows of a year is added up; the same picking twice would double the year.",
        remedy:
          "Remove one of the rows if it is the same picking; if they are two pickings, set the finding aside.",
      },
      outOfWalkOrder: {
        title: "Out of walk order",
        sentence:
          "The row does not stand where the crew passed this vine (before and after it in the sheet, row/vine: {neighbours}).",
        why: "A vine out of order is often a mistyped row or vine number.",
        remedy: "Compare row and vine with the paper sheet.",
      },
      spursTooClose: {
        title: "More positions than fit",
        sentence:
          "{places} positions cannot stand on {length}{unit} of cordon; at {distance} apart {fit} would fit.",
        why: "Length or positions are wrong, or the length is in another unit.",
        remedy: "Check the length and its unit, then the positions.",
      },
      aliveAboveCut: {
        title: "More buds alive than cut",
        sentence: "{column} is {alive}, but only {cut} {cut:node was|nodes were} cut.",
        why: "The share of dead buds decides how many nodes the whole block keeps.",
        remedy: "Ask whoever cut the cane, or leave the cane out.",
      },
      sideWithoutCordon: {
        title: "Nothing on one side",
        sentence:
          "{rows} {rows:cordon stands|cordons stand} on the {choice} side and none on the other, though nearly all vines of the block have both.",
        why: "A cordon on the wrong side is weighed against the wrong ones, and one side is cut that should stay.",
        remedy: "Look at the vine and correct the side of the cordon.",
      },
      harvestUnusual: {
        title: "Harvest far above the others",
        sentence:
          "Vine by vine, {value}{unit} is {times} times the middle of the {values} other harvests that it is held against.",
        why: "The crop outlook and the vine's own figures rest on it; mostly it is a digit too many.",
        remedy: "Look it up in the delivery notes and correct the weight.",
      },
      countLeftOut: {
        title: "One count left out",
        sentence: "{column} is blank here and filled in the other {values} {values:row|rows}.",
        why: "A count that was forgotten is missing in every mean.",
        remedy: "Count it again, or set the finding aside.",
      },
      vineWithoutCount: {
        title: "Nothing counted on this vine",
        sentence: "{counts} are all blank here; the other {values} vines have them.",
        why: "A vine that was passed by is missing in every mean, or is missing itself.",
        remedy: "Count it, call it missing, or set the finding aside.",
      },
      totalUnlikeParts: {
        title: "Total unlike its parts",
        sentence:
          "{column} is {total}, but {parts} add up to {sum}; the sum is right in {values} other {values:row|rows}.",
        why: "Either the total or one of its parts is mistyped.",
        remedy: "Look up the paper, then correct the cell that is wrong.",
      },
      cordonsAboveMost: {
        title: "More rows than a vine has cordons",
        sentence: "{rows} rows name this vine; a vine has {most} cordons at most.",
        why: "All of them would be weighed against each other, and the vines that they belong to would have no card.",
        remedy: "Look whether the vine number was filled down, and write each row’s own.",
      },
      extraCells: {
        title: "More cells than heads",
        sentence:
          "The line has more cells than there are heads, or a line break within it: its cells may stand under the wrong heads, so none of it is used.",
        why: "A comma or a quote too many moves every cell behind it to the next head.",
        remedy: "Open the file as text at this line and take out what is too much, or part the two lines.",
      },
      struckOut: {
        title: "Struck out",
        sentence: "Struck out in the sheet, and read as it stands.",
        why: "The sheet does not say whether the line takes the count away or only marks it as done.",
        remedy: "Ask who counted: delete the row if it does not count, or take the line away.",
      },
      otherNumberInComment: {
        title: "Another number in a comment",
        sentence: "{column} is {value}, but the comment on it says “{said}”.",
        why: "Only the cell is read; the comment may be the later count.",
        remedy: "Ask who counted, keep the right number in the cell and take the comment away.",
      },
      deadWithSpurs: {
        title: "Dead cordon with live spurs",
        sentence: "The cordon is called dead, but {spurs} live spurs are counted on it.",
        why: "A live cordon would be cut, or a dead one kept.",
        remedy: "Cut into the bark at the vine and correct the row.",
      },
      deadTrunkLiveCordon: {
        title: "Live cordon on a dead trunk",
        sentence: "The trunk is called dead, but its cordon has {spurs} live spurs.",
        why: "Either the trunk lives or the cordon hangs on another one.",
        remedy: "Follow the cordon to its trunk and correct the row.",
      },
      cordonIntoGap: {
        title: "Led into a missing vine's place",
        sentence:
          "{value}{unit} of cordon where a side has {share}{unit}; vine {gap} beside it is missing, so it may fill its place.",
        why: "Worth knowing before the missing vine is replanted.",
        remedy: "Nothing, if the cordon was led there on purpose.",
      },
      blockUnlikeSpacing: {
        title: "Lengths do not fit the spacing",
        sentence:
          "The block's cordons are {median}{unit} long in the middle, but its vine spacing gives {share}{unit} a side.",
        why: "The unit in a header or the vine spacing is wrong, and with it every figure by length.",
        remedy: "Check the unit in the header of the length and the vine spacing in the Blocks sheet.",
      },
      missingAsZero: {
        title: "Missing vine counted as 0",
        sentence: "The vine is missing, yet {column} is 0.",
        why: "The block would lose the vine twice: once in the mean of the counted vines, once as a missing vine.",
        remedy: "Leave the count of a missing vine blank.",
      },
      sideFromOneTrunk: {
        title: "A side from one trunk only",
        sentence:
          "All live candidates of the {choice} side come from trunk {trunk}, though the vine has another.",
        why: "The choice on this side cannot spread the risk over two trunks.",
        remedy: "Check the trunk numbers; else think of laying a cane from the other trunk.",
      },
      deadCordonStays: {
        title: "A dead cordon is to stay",
        sentence: "Decided to stay, but the cordon or its trunk is dead or has no live spur.",
        why: "The side would bear nothing, and the live candidate would be cut for good.",
        remedy: "Decide again, at the vine.",
      },
      sickCordonStays: {
        title: "A diseased cordon is to stay",
        sentence: "Decided to stay, but the cordon or its trunk is called diseased.",
        why: "Disease goes on from a cordon into the trunk.",
        remedy: "Ask whoever decided whether they knew.",
      },
      twoStayOnSide: {
        title: "Two cordons stay on one side",
        sentence:
          "A second cordon is to stay on the {choice} side; the first stands in row {otherRow} of the sheet.",
        why: "One cordon a side fills the wire; two shade each other.",
        remedy: "Decide on one of the two.",
      },
      vineCameBack: {
        title: "Missing last year, bearing now",
        sentence:
          "The vine was missing in {season} (sheet{otherSheet}, row {otherRow}) and is called bearing now.",
        why: "A vine does not bear in the year after planting.",
        remedy: "Correct the status: replanted, young or missing.",
      },
    },
    sameRemedy: {
      ask: {
        remedy: "Ask whoever counted; if it is true, set the finding aside.",
        kinds: {
          copiedDown: {
            title: "The same numbers down several vines",
            sentence:
              "{vines} {vines:vine|vines} in a row, from {from} to {last}, carry the same numbers in every column.",
            why: "Numbers copied down were not counted.",
          },
        },
      },
      date: {
        remedy: "Correct the date from the paper sheet.",
        kinds: {
          dateInFuture: {
            title: "Date in the future",
            sentence: "{column} is {value}, after today ({today}); {rows} {rows:row|rows}.",
            why: "Nobody has counted on a day to come: day, month or year is mistyped.",
          },
          dateOutOfSeason: {
            title: "Date out of season",
            sentence:
              "{column} is {value}, outside the months {firstMonth} to {lastMonth} in which dormant vines are counted; {rows} {rows:row|rows}.",
            why: "Day and month may have changed places.",
          },
          dateOtherYear: {
            title: "Date of another winter",
            sentence: "{column} is {value}, but the sheet is of the winter {season}; {rows} {rows:row|rows}.",
            why: "Either the year is mistyped or rows of an old sheet got in.",
          },
          dateOutOfWalkOrder: {
            title: "Date out of walk order",
            sentence: "{column} is {value}, while the rest of the row was walked on {usual}.",
            why: "A mistyped date, or a row of another sheet.",
          },
        },
      },
      countAgain: {
        remedy: "Look at the vine, or correct the count from the paper sheet.",
        kinds: {
          spursAbovePositions: {
            title: "More live spurs than positions",
            sentence: "{spurs} live spurs on {positions} positions cannot be.",
            why: "A position carries one spur at most; the cordon would look fuller than it is.",
          },
          gapTooLong: {
            title: "Gap longer than the empty positions",
            sentence:
              "The longest gap is {gap}, but only {missing} of {positions} positions are without a live spur.",
            why: "A long gap counts against a cordon for its whole life; a wrong one gets a good cordon cut.",
          },
          gapBeyondEnd: {
            title: "Gap begins too far out",
            sentence:
              "A gap of {gap} positions that begins {from} from the head ends beyond the last of {positions} positions.",
            why: "Where the gap lies decides whether a cane is laid over it or the whole cordon is renewed.",
          },
          gapTooShort: {
            title: "Gap shorter than it can be",
            sentence:
              "{missing} empty positions between {spurs} live spurs leave a gap of at least {least}, but {gap} is written.",
            why: "A gap that is really longer makes a poor cordon look good.",
          },
          directionsDoNotAddUp: {
            title: "Down, level and up do not add up",
            sentence: "Spurs down, level and up make {sum}, but {spurs} live spurs are written.",
            why: "One of the four counts is wrong, and the choice of the cordon rests on all of them.",
          },
        },
      },
      look: {
        remedy: "Look at the vine; if it is true, set the finding aside.",
        kinds: {
          cordonTooLong: {
            title: "Longer than its space",
            sentence:
              "{value}{unit} of cordon where the vine spacing gives {share}{unit} a side, and no missing vine beside it is known.",
            why: "It grows into the next vine, or the length is wrong.",
          },
          cordonTooShort: {
            title: "Far shorter than its space",
            sentence: "{value}{unit} of sound cordon where the vine spacing gives {share}{unit} a side.",
            why: "Wire without a cordon bears nothing, or the length is wrong.",
          },
          diameterUnusual: {
            title: "Unusual thickness",
            sentence: "{column} is {value}{unit}; cordons are {least} to {most}{unit} thick.",
            why: "A wrong thickness moves the choice of the cordon.",
          },
          nodesUnusual: {
            title: "Unusual number of nodes a spur",
            sentence: "{column} is {value}; spurs are cut to {least} to {most} {most:node|nodes}.",
            why: "Shoots and crop are counted from it.",
          },
          missingVineCounted: {
            title: "Count on a missing vine",
            sentence: "The vine is called missing, yet {column} is {value}.",
            why: "Either the vine stands, or the count belongs to another vine.",
          },
          trunksUnusual: {
            title: "Unusual number of trunks",
            sentence: "{column} is {value}; vines carry {most} {most:trunk|trunks} at most.",
            why: "A wrong trunk number joins cordons that do not belong together.",
          },
          trunksAboveRegister: {
            title: "More live trunks than the register says",
            sentence:
              "Live cordons stand on trunks {trunks}, but the Vines sheet says {living} live {living:trunk|trunks}.",
            why: "Either a trunk number or the register is wrong, and trunks to renew are chosen by it.",
          },
          positionsAppeared: {
            title: "Positions that were not there last year",
            sentence:
              "{now} {now:position|positions}, but {before} in {season} (sheet{otherSheet}, row {otherRow}), and the cordon has not grown that much.",
            why: "Positions do not come back on old wood; one of the two counts is of another cordon.",
          },
          trunkChangedPlace: {
            title: "Another trunk than last year",
            sentence: "Trunk {now}, but trunk {before} in {season} (sheet{otherSheet}, row {otherRow}).",
            why: "A cordon stays on its trunk; trunks were numbered from the other end, or the letters changed.",
          },
        },
      },
      compare: {
        remedy: "Compare with the paper sheet; if it is true, set the finding aside.",
        kinds: {
          unlikeItsBlock: {
            title: "Unlike its block",
            sentence: "{column} is {value}{unit}; the middle of {values} in the block is {median}{unit}.",
            why: "So far from its neighbours a value is mostly a slip: a digit too many, a lost decimal point, another unit.",
          },
          trunkNotOfVine: {
            title: "A trunk that the vine does not have",
            sentence:
              "A live cordon on trunk {trunk}; the Vines sheet says {living} live {living:trunk|trunks}, and {dead} dead {dead:one is|ones are} counted.",
            why: "A cordon on a wrong trunk number is kept or cut with the wrong trunk.",
          },
          digitsSwapped: {
            title: "Digits of a length exchanged",
            sentence:
              "{value}{unit} with {positions} {positions:position|positions}; {meant}{unit} would fit them as the block's other cordons do.",
            why: "Length of cordon is counted for gaps and for the wire that is filled.",
          },
          positionsUnlikeLength: {
            title: "Positions unlike the length",
            sentence:
              "{value} positions on {length}{unit}; the block's cordons carry about {expected} on that length ({values} compared).",
            why: "The positions or the length are mistyped, and the share of live spurs is counted from both.",
          },
        },
      },
    },
    habit: {
      spacing: "The distance between positions",
      liveShare: "The share of positions with a live spur",
      length: "The length of cordons",
      diameter: "The thickness of cordons",
      down: "The share of spurs that point down",
    },
    made: { typed: "typed", formula: "by formula" },
    groups: {
      word: "“{value}”",
      kind: "{value}",
      counter: "counted by {value}",
      column: "{value}",
      sheet: "sheet {value}",
      bothWays: "read two ways",
      noYear: "without a year",
      heading: "{title}: {cause} ({findings})",
      cells: "Cells: {cells}",
      becomes: "{from} becomes {to}",
      orElse: "{change} (or {other})",
      likely: "Likely: {changes}",
      certain: "Certain: {changes}",
      blank: "blank",
    },
    findingPlaces: {
      vine: "{block} row {row} vine {vine}",
      row: "{block} row {row}",
      block: "{block}",
      sheetRow: "Sheet {sheet} row {sheetRow}",
      sideCordon: "{side} cordon {cordon}",
      cordon: "cordon {cordon}",
      side: "{side} side",
      whole: "{place}: {sentence}",
      joined: "{place}, {detail}",
      otherSheet: " {name}",
    },
    severity: { wrong: "wrong", ask: "ask", note: "note" },
    action: {
      fillIn: "Fill in",
      correct: "Correct in the sheet",
      lookAtVine: "Look at the vine",
      askCounter: "Ask whoever counted",
      mendRegister: "Mend the register",
      mendSheet: "Mend the table",
    },
  },
  functions: {
    budget: {
      nodebudget: {
        description:
          "Nodes to leave on a vine by balanced pruning, from the weight of its one-year prunings and a formula such as 30+10. Not rounded.",
        parameters: {
          prunings: {
            label: "prunings",
            description:
              "Weight of the one-year wood cut from the vine, pounds or kilograms; a column gives a budget for each vine.",
          },
          formula: {
            label: "formula",
            description: 'Nodes for the first pound (454 g) and for each further pound, such as "30+10".',
          },
          least: {
            label: "least",
            description: "Fewest nodes a vine keeps, whatever it weighs; no limit if left out.",
          },
          most: { label: "most", description: "Most nodes a vine keeps; no limit if left out." },
          below_one_pound: {
            label: "below one pound",
            description:
              "For prunings below one pound, where no source says: refuse (no answer), flat (the formula's first number) or pro rata (that number times the pounds). refuse if left out.",
          },
        },
        results: { nodes: "nodes" },
      },
      nodesbylength: {
        description:
          "Nodes to leave on a length of cordon or row at a fixed density; for vines whose prunings are not weighed. Not rounded.",
        parameters: {
          length: {
            label: "length",
            description: "Length of cordon, or of row that the vine fills, feet or metres.",
          },
          density: { label: "density", description: "Nodes on each foot or metre of it." },
        },
        results: { nodes: "nodes" },
      },
      spurfit: {
        description:
          "Compares a node budget with the spurs for which the cordon has room: spurs wanted, spurs that fit, and nodes that find no place.",
        parameters: {
          nodes: { label: "nodes", description: "Node budget of the vine." },
          length: { label: "length", description: "Length of one cordon, feet or metres." },
          spacing: { label: "spacing", description: "Cordon needed for each spur, inches or centimetres." },
          cordons: { label: "cordons", description: "Cordons of that length on the vine: 1 if left out." },
        },
        results: { spursWanted: "spurs wanted", spursThatFit: "spurs that fit", nodesShort: "nodes short" },
      },
    },
    callRefusals: {
      callRefusals: {
        missing: "{argument} is missing: expected {expected}.",
        isText: "{argument} is the text “{value}”{place}: expected {expected}.",
        isBoolean: "{argument} is {value}{place}: expected {expected}.",
        isError: "{argument} is the error {value}{place}: put that cell right first.",
        outOfLimits: "{argument} is {value}{place}: expected {expected}.",
        notAChoice: "{argument} is “{value}”: expected one of {choices}.",
        oneCellOnly: "{argument} is a range of {rows} rows and {columns} columns: expected one cell.",
        oneColumnOnly: "{argument} is a range of {columns} columns: expected one column.",
        ragged:
          "{argument} has rows of different length ({rowLengths} {rowLengths:cell|cells}): expected a rectangle.",
        differentLengths:
          "{argument} has {rows} rows but {other} has {otherRows}: expected columns of the same length.",
        noNumbers: "{argument} holds no number: expected at least one.",
        notATable:
          "{argument} is not a range with a heading row: select the table with its headings, such as {suggestion}.",
        blanksAsZero:
          "{argument} arrived with 0 in the column “{heading}”, as some versions of Excel hand over blank cells: a blank count cannot be told from 0 here, so use the pane.",
        notOurTable:
          "{argument} has too few headings that are known here: select the table with its headings, such as {suggestion}.",
        noSuchColumn: "{argument} has no column “{column}”.",
        wrongCell:
          "{argument}: “{value}” in the column “{column}”{place} cannot be used; run the check to see what is wrong.",
        tooManyArguments: "CORDON.{name} takes at most {most} arguments, but {given} are given.",
      },
      expected: {
        number: "a number from {least} to {most} {unit}",
        numberFrom: "a number of at least {least} {unit}",
        numberAboveZero: "a number above zero, at most {most} {unit}",
        numberAboveZeroOnly: "a number above zero {unit}",
        whole: "a whole number from {least} to {most}",
        wholeFrom: "a whole number of at least {least}",
        share: "a share from {least} to {most} (35 % is 0.35)",
        text: "a text",
        choice: "one of {choices}",
        table: "a range with its heading row",
      },
      wholeTable: "{table}[#All]",
      placeInRange: " in row {row} of the range",
    },
    checks: {
      noFindings: "No finding; rows read: {rows}.",
      checkcounts: {
        description:
          "What is missing, impossible or unlikely in a table of counts: a line for each finding, with its row in the range, its column, how sure it is and a sentence.",
        parameters: {
          counts: {
            label: "counts",
            description:
              "The table with its heading row, such as Cordons[#All]; a Vines or Bud cuts table works too.",
          },
          settings: {
            label: "settings",
            description: "The Settings table, for the farm's own thresholds; the built-in ones if left out.",
          },
          blocks: {
            label: "blocks",
            description: "The Blocks table, so that unknown blocks and spacings are seen.",
          },
          vines: {
            label: "vines",
            description: "The Vines table, so that vines outside the register are seen.",
          },
          unit: {
            label: "unit",
            description:
              "US or metric, for columns whose heading names no unit. If left out: the Settings table's, else that of the other headings.",
          },
        },
        results: { row: "Row of the range", column: "Column", severity: "How sure", finding: "Finding" },
      },
    },
    choice: {
      settings: {
        label: "settings",
        description:
          "The Settings table, for the farm's own weights and references; the built-in ones if left out.",
      },
      blocks: {
        label: "blocks",
        description:
          "The Blocks table, for training system and vine spacing; without it the placing of spurs does not count.",
      },
      cordonscore: {
        description:
          "Score of each candidate cordon between 0 and 1 and the parts it is made of. What was not counted is left out, never taken for zero; low and high show how far that leaves the score open.",
        parameters: {
          training: {
            label: "training",
            description: "highWire, upright or divided, where the Blocks table is not given or does not say.",
          },
        },
        results: {
          score: "Score",
          low: "Low",
          high: "High",
          spurs: "Spurs",
          stretch: "Longest gap",
          placing: "Placing",
          soundness: "Soundness",
          diameter: "Diameter",
        },
      },
      choosecordons: {
        description:
          "Which cordon stays on each side of each vine: stays, goes or ask, beside each row of the Cordons table, with its score and the reason. A proposal; a person decides at the vine.",
        parameters: {
          vines: {
            label: "vines",
            description: "The Vines table, for the status of a vine and its live trunks.",
          },
        },
        results: { verdict: "Decision", score: "Score", reason: "Reason" },
      },
    },
    cordons: {
      cordonRows: {
        label: "cordons",
        description:
          "The Cordons table with its heading row, such as Cordons[#All]; columns are found by their headings.",
      },
      gapsbyrow: {
        description:
          "Spur positions, live spurs and gaps for each block and row of vines, from the Cordons table.",
        parameters: {
          which: {
            label: "which",
            description:
              "all (if left out): every row. staying: cordons whose Fixed choice says stays. chosen: those that stay by the cordon choice, as in the pane; candidates that will be cut do not count.",
          },
          settings: {
            label: "settings",
            description: "The Settings table, for chosen; the built-in figures if left out.",
          },
          blocks: { label: "blocks", description: "The Blocks table, for chosen." },
          vines: { label: "vines", description: "The Vines table, for chosen." },
        },
        results: { share: "Share of gaps" },
      },
    },
    crop: {
      shoots: {
        description:
          "Shoots to expect on a vine from the spurs left on it: count shoots from the nodes and basal shoots from the buds at the base of the spurs. Not rounded.",
        parameters: {
          spurs: { label: "spurs", description: "Live spurs left on the vine." },
          budbreak: { label: "budbreak", description: "Share of the count nodes that grow a shoot, 0 to 1." },
          basal_shoots: {
            label: "basal shoots",
            description: "Shoots from buds that were not counted, on each spur: 0 if left out.",
          },
        },
        results: { shoots: "shoots" },
      },
      clusters: {
        description: "Clusters to expect on a vine from its shoots. Not rounded.",
        parameters: {
          shoots: { label: "shoots", description: "Shoots of the vine." },
          clusters_per_shoot: {
            label: "clusters per shoot",
            description: "Mean clusters on a shoot; about two on a fruitful hybrid is common practice.",
          },
        },
        results: { clusters: "clusters" },
      },
      vinecrop: {
        description: "Crop of one vine: its clusters times the weight of a cluster, in pounds or kilograms.",
        parameters: { clusters: { label: "clusters", description: "Clusters on the vine." } },
        results: { crop: "crop a vine" },
      },
      vinedensity: {
        description:
          "Vines on an acre or hectare from the spacings, as if rows and vines filled it. Not rounded: 9 by 6 ft is printed as 807 and is 806.67.",
        parameters: {
          row_spacing: { label: "row spacing", description: "Distance between rows, feet or metres." },
          vine_spacing: {
            label: "vine spacing",
            description: "Distance between vines in the row, feet or metres.",
          },
        },
        results: { density: "vines an acre or hectare" },
      },
      blockcrop: {
        description:
          "Crop on an acre (short tons) or a hectare (tonnes) from the crop of a bearing vine, the vines planted and the share that is missing. Nothing is rounded on the way.",
        parameters: {
          vine_crop: { label: "vine crop", description: "Crop of a bearing vine, pounds or kilograms." },
          density: { label: "density", description: "Vines planted on an acre or hectare." },
          missing_share: {
            label: "missing share",
            description:
              "Share of the planted vines that is missing or bears nothing: 0 if left out. Leave it out when missing vines were counted as vines without clusters.",
          },
        },
        results: { crop: "crop an acre or hectare" },
      },
      cropload: {
        description:
          "Crop load (Ravaz index): weight of the crop over the weight of the prunings of the winter after it, from the same vines and in the same unit.",
        parameters: {
          crop: { label: "crop", description: "Weight of the crop." },
          prunings: {
            label: "prunings",
            description: "Weight of the one-year prunings of the winter after, in the same unit.",
          },
        },
        results: { cropLoad: "crop load" },
      },
      shootstoremove: {
        description:
          "Shoots to rub off a vine in spring, and to keep, by its length of wire; with minutes also the hours of one person. Kept shoots are rounded down.",
        parameters: {
          shoots: {
            label: "shoots",
            description: "Shoots on the vine now, or their mean; a column gives an answer for each vine.",
          },
          length: {
            label: "length",
            description: "Wire that the vine fills, feet or metres: its spacing in the row.",
          },
          density: {
            label: "density",
            description:
              "Shoots wanted on each foot or metre of it: 6 a foot (Wisconsin 2015), 15 a metre (Michigan).",
          },
          vines: { label: "vines", description: "Vines thinned like it: 1 if left out." },
          minutes: {
            label: "minutes",
            description: "Minutes that one person needs for a vine; without them no hours are given.",
          },
        },
        results: { remove: "remove", keep: "keep", hours: "hours" },
      },
      clusterstoremove: {
        description:
          "Clusters to take off each vine, and to keep, so that the block stays at or under a target crop. Kept clusters are rounded down.",
        parameters: {
          target: {
            label: "target",
            description: "Most crop wanted, short tons an acre or tonnes a hectare.",
          },
          density: {
            label: "density",
            description: "Bearing vines on an acre or hectare; take missing vines off first.",
          },
          counted: {
            label: "counted",
            description: "Clusters on the vine now; a column gives an answer for each vine.",
          },
        },
        results: { remove: "remove", keep: "keep" },
      },
    },
    formulaProblems: {
      empty: "The formula is empty: expected something like {example}.",
      unknownFunction: "There is no function {name} (position {position}). Did you mean {suggestion}?",
      otherFunction:
        "{name} at position {position} is not a CORDON function, and only those can be used here.",
      noSheet:
        "{name} at position {position} points into a sheet, and there is none here: write the figures themselves, a column as {1;2;3}.",
      tooLong: "The formula is longer than {most} characters, which no spreadsheet takes.",
      tooDeep:
        "At position {position} more than {most} parentheses, calls or signs stand inside one another, which no spreadsheet takes.",
      tooLarge: "The result is too large for a number of a spreadsheet.",
      unclosedParenthesis: "The parenthesis opened at position {position} is not closed.",
      unclosedBrace: "The brace opened at position {position} is not closed.",
      unclosedText: "The text that begins at position {position} has no closing quotation mark.",
      missingParenthesis: "{name} needs an opening parenthesis after it, at position {position}.",
      unexpected: "“{found}” at position {position} is not expected there.",
      unexpectedEnd: "The formula ends at position {position} where a value is expected.",
      raggedArray: "The rows of the list at position {position} are not of the same length.",
      notANumber: "“{value}” cannot be calculated with: expected a number on both sides of {operator}.",
      divisionByZero: "A number is divided by zero.",
      differentSizes:
        "Lists of {left} and {right} cells cannot be joined by {operator}: expected the same size.",
    },
    injury: {
      budinjury: {
        description:
          "Share of dead primary buds in a sample of cut buds, with the range that holds the block's true share at the stated confidence.",
        parameters: {
          dead: { label: "dead buds", description: "Nodes with a dead primary bud." },
          cut: { label: "cut", description: "All nodes cut; 50 to 100 a block, from many canes." },
          method: {
            label: "method",
            description: "Wilson (if left out) or Clopper-Pearson, which is wider and never too sure.",
          },
        },
        results: { share: "dead share" },
      },
      cropafterfrost: {
        description:
          "Share of a full crop left after a spring frost, from a count of nodes by what still lives on each: a primary bears 1, a secondary its worth, a tertiary and a shootless node 0 (Howell, Michigan State).",
        parameters: {
          primaries: { label: "primaries alive", description: "Nodes whose primary shoot lives." },
          secondaries: {
            label: "secondaries alive",
            description: "Nodes whose primary is dead and whose secondary lives.",
          },
          tertiaries: { label: "tertiaries alive", description: "Nodes on which only the tertiary lives." },
          shootless: { label: "shootless", description: "Nodes without a living shoot." },
          secondary_worth: {
            label: "worth of a secondary",
            description:
              "Crop of a secondary over that of a primary, 0 to 1; 0.35 if left out, which the source has for Concord and Niagara alone. Norton about 0.",
          },
        },
        results: { share: "share of a crop" },
      },
      nodesafterinjury: {
        description:
          "Nodes to leave so that winter injury is made up for, by one named rule. The rules disagree; where a rule's source says nothing, the answer is #N/A with a sentence. Above half dead look at canes and trunks first.",
        parameters: {
          nodes: { label: "nodes", description: "Node budget of the uninjured vine." },
          dead_share: {
            label: "dead share",
            description: "Share of dead primary buds, 0 to 1, as BUDINJURY gives it.",
          },
          rule: {
            label: "rule",
            description: "Cornell 2014, MSU 2002, Purdue, Northern Grapes 2014 or compensation.",
          },
        },
        results: { nodes: "nodes" },
      },
    },
    outlook: {
      outlook: {
        description:
          "What the pruning leaves, block by block and stage by stage: clusters a vine and the crop of a vine, of an area and of the block, low, likely and high, with the largest source of doubt.",
        parameters: {
          vines: {
            label: "vines",
            description:
              "The Vines table with its headings: status, and shoots or clusters where they were counted.",
          },
          blocks: {
            label: "blocks",
            description: "The Blocks table: spacings, vines, cluster weight, clusters a shoot, budbreak.",
          },
          settings: {
            label: "settings",
            description:
              "The Settings table, for confidence and how figures vary from year to year; the built-in ones if left out.",
          },
          cordons: {
            label: "cordons",
            description:
              "The Cordons table, for the nodes left on the cordons that stay; without it there is no winter stage.",
          },
          bud_cuts: {
            label: "bud_cuts",
            description: "The Bud cuts table, for winter injury; without it every node is taken as alive.",
          },
          harvest: {
            label: "harvest",
            description: "The Harvest table, for this season's cluster weight at lag phase.",
          },
          unit: {
            label: "unit",
            description:
              "US or metric, for the answer and for columns whose heading names no unit. If left out: the Settings table's, else that of the other headings.",
          },
        },
        results: {
          block: "Block",
          stage: "Stage",
          figure: "Figure",
          low: "Low",
          likely: "Likely",
          high: "High",
          unit: "Unit",
          says: "What it rests on",
        },
      },
      outlookLines: {
        figures: {
          clusters: "clusters a vine",
          perVine: "crop of a vine",
          perArea: "crop of an area",
          block: "crop of the block",
        },
        doubt: "Largest doubt: {source}, {percent} %.",
      },
    },
    renewal: {
      renewalLines: {
        none: "No vine needs a new trunk.",
        notCounted: "Vines whose live trunks were not counted: {vines}.",
      },
      youngvine: {
        description:
          "What publications say is left on a vine in one of its first four years: shoots, clusters, cordons and how far they grow on, spurs, nodes. What no publication seen gives is not there; after the fourth year the answer is #N/A.",
        parameters: {
          planted: {
            label: "year planted",
            description: "Year in which the vine was planted, such as 2024; it is the first year of growth.",
          },
          season: {
            label: "season",
            description: "Year in which this winter ends and the next crop is picked.",
          },
          training: {
            label: "training",
            description:
              "Training system: highWire, upright or divided; highWire if left out. Only the fourth year depends on it.",
          },
        },
        results: { what: "What", least: "Least", most: "Most", source: "Source" },
      },
      trunkstorenew: {
        description:
          "Vines that need a new trunk, most urgent first: live trunks against the number wanted, hurt and dead trunks, and what to do.",
        parameters: {
          vines: {
            label: "vines",
            description: "The Vines table with its heading row, such as Vines[#All].",
          },
          settings: {
            label: "settings",
            description: "The Settings table, for the number of trunks wanted; the built-in one if left out.",
          },
          cordons: { label: "cordons", description: "The Cordons table, for the condition of each trunk." },
        },
        results: {
          order: "Order",
          block: "Block",
          row: "Row",
          vine: "Vine",
          liveTrunks: "Live trunks",
          bringUp: "Trunks to bring up",
          what: "What to do",
        },
      },
    },
    sampling: {
      vinestocount: {
        description:
          "Fewest vines to count so that a block's mean is known to within a margin, by Student's t and for a block of the given size.",
        parameters: {
          cv: {
            label: "cv",
            description:
              "Spread between vines: standard deviation over mean, from a pilot count; 0.3 to 0.45 is usual.",
          },
          margin: {
            label: "margin",
            description: "Margin wanted, as a share of the mean: 0.1 for within 10 %.",
          },
          vines: {
            label: "vines",
            description: "Bearing vines in the block; leave it out when the block is large.",
          },
        },
        results: { vines: "vines to count" },
      },
      blockmean: {
        description:
          "Mean of a block from counts on a random sample of its vines, with the range that holds the block's true mean, and the number of vines counted.",
        parameters: {
          counts: {
            label: "counts",
            description: "One count a vine; blank cells are vines that were not counted.",
          },
          vines: {
            label: "vines",
            description: "Bearing vines in the block; leave it out when the block is large.",
          },
          zeros: {
            label: "zeros",
            description:
              "count (if left out): a 0 is a count of nothing. skip: a 0 is a vine not counted; choose it where blank cells arrive as 0.",
          },
        },
        results: { mean: "mean", n: "vines counted" },
      },
    },
    shared: {
      unit: {
        label: "unit",
        description:
          "US (pounds, feet, inches, acres) or metric (kilograms, metres, centimetres, hectares), for what goes in and what comes out. US if left out.",
      },
      confidence: {
        label: "confidence",
        description: "How often such a range should hold the true figure, as a share: 0.9 if left out.",
      },
      low: "low",
      high: "high",
      nodesPerSpur: {
        label: "nodes per spur",
        description:
          "Count nodes left on a spur; the compressed buds at its base are not counted. Two is common practice.",
      },
      clusterWeight: {
        label: "cluster weight",
        description: "Mean weight of a ripe cluster, pounds or kilograms.",
      },
    },
    units: {
      unitNames: {
        perLength: { US: "a foot", metric: "a metre" },
        perMass: { US: "a pound", metric: "a kilogram" },
        vinesPerArea: { US: "vines an acre", metric: "vines a hectare" },
        cropPerArea: { US: "tons an acre", metric: "tonnes a hectare" },
      },
    },
    work: {
      pruninghours: {
        description: "Hours of work and days of the crew for pruning a number of vines.",
        parameters: {
          vines: { label: "vines", description: "Vines to prune." },
          minutes: { label: "minutes", description: "Minutes that one person needs for a vine." },
          crew: { label: "crew", description: "People at work: 1 if left out." },
          hours_a_day: {
            label: "hours a day",
            description: "Hours that each works in a day: 8 if left out.",
          },
        },
        results: { hours: "hours", crewDays: "crew days" },
      },
      version: {
        description:
          "Version of the add-in that calculates this workbook; when it shows #NAME? the add-in is not there.",
        results: { version: "version" },
      },
    },
  },
  gapPivot: {
    countsSheet: "Gap counts",
    countsTitle: "Gaps, cordon by cordon",
    pivotSheet: "Gaps pivot",
    pivotTitle: "PivotTable of gaps by block and row",
    pivotNote:
      "Arrange it as you like: the next run refreshes it and leaves its layout alone. The share is the mean of the cordons.",
    summaryTitle:
      "Gaps by block and row (a plain table: there are no PivotTables here; in Excel the same button makes one)",
    sumPositions: "All positions",
    sumLiveSpurs: "All live spurs",
    sumGaps: "All gaps",
    meanShare: "Mean share of gaps",
  },
  shootThinning: {
    thin: "Thin shoots to {keep} a vine: {counted} were counted on average, so {remove} go; about {hours} h of one person for the block.",
    none: "No shoots to thin: {counted} were counted on a vine on average, no more than its wire carries.",
  },
  blockFigures: {
    figures: "Figures of this block: {figures}.",
    figure: "{figure} {value} ({from})",
    block: "Blocks sheet",
    settings: "Settings",
    settingsSource: "Settings, {source}",
    published: "{grape}: {source}",
    derived: "worked out from {source}",
    noneOfKind: "No published worth of a secondary shoot was seen for {kind}; Settings stands in.",
  },
  outlook: {
    stageNames: {
      winter: "Winter: nodes left",
      frost: "After frost: nodes counted",
      shoots: "Shoots counted",
      clusters: "Clusters counted",
      lagPhase: "Lag phase: clusters weighed",
      asCounted: "Winter: nodes as counted",
      harvest: "Harvest",
    },
    spreadSources: {
      vines: "which vines were counted",
      buds: "which buds were cut",
      budbreak: "budbreak of this year",
      clustersPerShoot: "clusters a shoot of this year",
      clusterWeight: "weight of a cluster",
      lagMultiplier: "growth from lag phase to harvest",
      missing: "missing vines",
    },
    nextSteps: {
      none: "{minutes} minutes of counting or weighing would narrow the range by less than {percent} %: wait for the next stage.",
      vines: "Count {more} more vines ({minutes} min): {low} to {high}, {percent} % either way.",
      canes: "Cut the buds of {more} more canes ({minutes} min): {low} to {high}, {percent} % either way.",
      clusters: "Weigh {more} more clusters ({minutes} min): {low} to {high}, {percent} % either way.",
    },
    outlookLacks: {
      frostCounts:
        "Nodes counted after frost need three counts: living primaries, secondaries only, and shootless; no share of a crop is worked out from fewer.",
      vinesOfBlock:
        "How many vines the block has is not known: fill in Vines in the Blocks sheet, or list them in the Vines sheet.",
      clusterWeight:
        "No cluster weight: fill in the Blocks sheet; none was published for most cold-hardy cultivars.",
      countedVines:
        "Fewer than two vines have counts: decide their cordons, or count shoots or clusters on a drawn sample.",
      decidedVines: "The cordons of fewer than two vines are decided, so the nodes left are not known.",
      budCuts:
        "No buds were cut in this block: every node is taken as alive, so the winter's figure is too high after a hard one.",
      secondaries:
        "The live secondaries of the bud cuts fit both ways of writing them, of all nodes and under dead primaries only: the setting Secondaries are written says which is meant.",
      register: "The Vines sheet lists no vine of this block: no vine is taken as missing.",
      usualFigures:
        "Budbreak or clusters a shoot are not in the Blocks sheet: the usual figures of Settings stand for them, and the range holds the spread between farms too.",
      fewVines:
        "Fewer than five vines carry a count: how far vines differ is taken from Settings, because so few do not show it.",
      rowsOfVines:
        "Rows cannot be taken as strata, because the Vines sheet does not list every vine: the counted vines are taken as drawn at random.",
    },
    frostCounted:
      "After frost {primaries} of {nodes} nodes have a living primary shoot and {secondaries} only a secondary, worth {worth}: {share} of a crop is left (Howell, Michigan State). Basal shoots are not in that rule.",
    youngBlock: {
      bare: "Year {leaf} of a young block: at most {clusters} {clusters:cluster|clusters} a vine.",
      carries:
        "Year {leaf} of a young block: at most {clusters} {clusters:cluster|clusters} a vine; it carries about {likely}.",
    },
    otherSecondaries:
      "Read the other way, the secondaries would give {other} clusters a vine, not {clusters}.",
    thinningGroups: ["light vines", "middle vines", "heavy vines"],
    cropLoadRanges: {
      "single canopy": "single canopy",
      "divided canopy": "divided canopy",
      hybrids: "hybrids",
      Concord: "Concord",
    },
    cropLoadVerdicts: {
      below: "Crop load {load} lies below {low} to {high} ({range}): the vines could carry more.",
      within: "Crop load {load} lies within {low} to {high} ({range}).",
      above: "Crop load {load} lies above {low} to {high} ({range}): overcropped for the size of the vines.",
    },
    cropLoadPairs: {
      following:
        "Crop of {year} over the prunings of the winter after it, the pair that published ranges are of.",
      before:
        "Likely crop of {year} over the prunings of the winter before it, which is not the pair that published ranges are of.",
    },
    cropLoadUnsure: "The range of the crop reaches over a limit, so this may turn.",
    missingTwice:
      "Count bearing vines only. A missing vine counted as 0 and taken off again as missing is lost twice: with {percent} % missing the crop comes out {percent} % too low.",
    handbookSamples: {
      wsu2006:
        "WSU 2006: {vines} {vines:vine|vines} for 5 %; that is the sample for a share of one half, not for a mean.",
      iowa2011:
        "Iowa State 2011: all clusters on {vines} {vines:vine|vines} and {clusters} weighed, for 15 %; a little light by the formula.",
      iowa2013: "Iowa State 2013: {clusters} clusters weighed at lag phase.",
    },
    farmFigures: {
      clustersPerShoot: "Clusters a shoot",
      budbreak: "Budbreak",
      clusterWeight: "Cluster weight",
      lagMultiplier: "Lag phase multiplier",
    },
    ownHarvests: {
      figure:
        "Your own harvests, {years} from {first} to {last}: {least} to {most} {unit}, {mean} on average.",
      allAbove:
        "Every harvest on record ({least} to {most} {unit}) lies above this range of {low} to {high}: look at nodes left, clusters a shoot and cluster weight before you trust it.",
      allBelow:
        "Every harvest on record ({least} to {most} {unit}) lies below this range of {low} to {high}: look at nodes left, dead buds, clusters a shoot and cluster weight before you trust it.",
      leftOut:
        "No harvest on record ({least} to {most} {unit}) lies within this range of {low} to {high}; some lie above it, some below.",
      meanAbove:
        "The harvests on record average {mean} {unit}, above this range of {low} to {high}; this year would be a small one.",
      meanBelow:
        "The harvests on record average {mean} {unit}, below this range of {low} to {high}; this year would be a large one.",
    },
    farmFigureWeight:
      "{years} {years:year|years} of your own count {percent} %, the usual figure {usual} the rest.",
  },
  outlookRefusals: {
    tooFewClusters:
      "{value} weighed clusters are too few to say how sure their mean weight is; at least {needed} are needed.",
    unknownCropLoadRange: '"{value}" is not a named range of crop load; known are: {known}.',
    tooFewRows:
      "{value} {value:row has|rows have} counts of two winters, too few to say how fast spurs are lost; at least {needed} are needed.",
    rowSpursAbovePositions: "Row {row}, {year}: {value} live spurs on {most} positions cannot be.",
  },
  overrule: {
    page: {
      heading: "Overrule",
      reason: "Reason, for the note",
      noReason: "Write down why first: the reason goes into the note beside the cordon.",
      noNote:
        "The sheet {sheet} has no column Note, where the reason goes. Next step: write that head beside its table, then decide again.",
      takeBack: "Take back: {outcome}",
      partlyBack:
        "Cells that hold again what they held before: {cells}; left alone, because somebody changed them since: {left}. Next step: decide again.",
      takenBack: "Taken back: the cells hold what they held before.",
      progress: "{block}: {decided} of {vines} {vines:vine|vines} decided",
      whatTurns: "What would turn it?",
      nothingTurns: "No single count up to five away and no single weight would turn it.",
      liveSpurs: "{side} {cordon}: {to} live spurs instead of {from}.",
      longestGap: "{side} {cordon}: a longest gap of {to} instead of {from}.",
      figure: "Settings, {figure}: {to} instead of {from}.",
      risk: "How much hangs on counting?",
      riskFound:
        "{block}: were every count off by one, another cordon would stay on {flips} of the vines; on {decided} of those that are decided without a question ({of} {of:vine|vines}, counted anew {draws} times).",
    },
  },
  picture: {
    title: "Drawing of the vine to scale.",
    cordon: "{side} {cordon}: {length}, {spurs} live spurs, longest gap {gap}, trunk {trunk}, {verdict}.",
    key: "Drawn from the counts: solid stays, dashed goes, dotted is asked about; ticks are live spurs, hatching the longest gap (where it lies is not on the sheet).",
    unknown: "not counted",
  },
  refusals: {
    tooManyWords:
      'The sheet "{sheet}" holds more than {most} different names; no farm has as many blocks, cordons, canes and counters. Look whether remarks or numbers stand under the head of such a column.',
    outside: "{argument} must lie between {least} and {most} {unit}, but is {value}.",
    notWhole: "{argument} must be a whole number from {least} to {most}, but is {value}.",
    formulaNotBalanced:
      'The formula must read like 30+10 (nodes for the first pound, 0.45 kg, then for each further pound), but is "{value}".',
    belowOnePound:
      "The prunings weigh {value} lb ({kilograms} kg): no source seen says how many nodes to leave below one pound (0.45 kg); choose flat or pro rata to get our own figure.",
    leastAboveMost: "The least number of nodes ({least}) is above the most ({most}).",
    noPrunings:
      "The prunings weigh nothing, so no crop load can be given: weigh the prunings of the same vines.",
    noBudsCut: "No bud was cut, so nothing can be said about injury.",
    unknownInjuryRule: '"{value}" is not an injury rule; known are: {known}.',
    cornellAbove80:
      "{percent} % of the primary buds are dead: what Cornell 2014 says above 80 % was not seen, so it gives no number here.",
    msuBetween15And20:
      "{percent} % of the primary buds are dead: MSU 2002 covers up to 15 % and from 20 %, but nothing between.",
    msuAbove50:
      "{percent} % of the primary buds are dead: above 50 % MSU 2002 gives no number but says to take off only unmanageable growth, wait until after budbreak, then prune lightly to the live nodes wanted. Look at canes and trunks first.",
    purdueTwoRows:
      "{percent} % of the primary buds are dead: Purdue's table prints that share in two rows, one giving {first} nodes and the other {second}; it does not say which holds.",
    purdueAbove50:
      "{percent} % of the primary buds are dead: above 50 % Purdue gives no number but asks for minimal pruning. Look at canes and trunks first.",
    northernGrapesNoNumber:
      "{percent} % of the primary buds are dead: above 20 % Northern Grapes 2014 says to leave more nodes, but not how many.",
    allDead: "Every primary bud is dead: no number of nodes makes up for that.",
    tooFewVines: "{value} counted vines are too few to say how sure a mean is; at least {needed} are needed.",
    spursAbovePositions:
      "Block {block}, row {row}, vine {vine}: {value} live spurs on {most} positions cannot be.",
    nothingToScore:
      "Nothing that was counted on cordon {cordon} can be scored; its live spurs and length are needed at least.",
    noVineSpacing: "The Blocks sheet names no vine spacing, which the rule by length needs.",
    youngVine:
      "A vine in year {year} of its growth is not given nodes by the rule of its block: nodes for years 1 to 3 are in no publication seen, and in year 4 a high-wire cordon has 8 to 15 spurs of 2 nodes (NC State).",
    vineNotYoung:
      "In {season} a vine planted in {planted} is not in one of its first four years, which is all that the publications on young vines cover.",
    youngVineTraining:
      "The publication on the fourth year is of high-wire cordons only (NC State): it says nothing about this training system.",
    noVineWeighed: "No vine of the block was weighed, so a balanced formula has nothing to go by.",
  },
  renewal: {
    trunkRenewal: {
      noTrunk: "No trunk lives: keep about five suckers, none thicker than a little finger, and train one.",
      lastTrunkHurt: "The only live trunk is hurt: bring up {bringUp} from suckers before it is lost.",
      oneTrunk: "One live trunk: bring up {bringUp} more from a sucker.",
      everyTrunkHurt: "All {live} live trunks are hurt: bring up {bringUp} from suckers.",
      hurtTrunk:
        "Live trunks: {live}; hurt: trunk {replace}. Bring up {bringUp} and take the hurt one out once the new one stands.",
      belowWanted: "{live} live trunks, {wanted} wanted: bring up {bringUp} from suckers.",
      due: "Trunk {trunk} has stood {age} {age:year|years}: keep a shoot low on it or a sucker in its place, and take it out when that is 2 to 3 years old.",
      dueStands:
        "Trunk {trunk} has stood {age} {age:year|years} and a younger one stands in its place: take it out once that is 2 to 3 years old.",
      none: "Enough trunks.",
      takeOut: "Take out dead trunk {takeOut}.",
    },
    cordonRenewal: {
      extend: "Extend {cordon} by {length}, with the thick part of a cane at its end.",
      replace: "Renew {cordon} ({triggers}): lay a cane that starts nearer the head than the dead stretch.",
      replaceLater:
        "Renew {cordon} ({triggers}) in a later winter: no cane near its head could be laid now, so keep a renewal spur there.",
      layOver:
        "{cordon} has a dead area of {places} {places:place|places}: lay a cane over it, from the last spur before it, {from} {from:place|places} from the head.",
      longerSpurs:
        "{cordon}: leave the spur on either side of its gap of {places} {places:place|places} ({from} {from:place|places} from the head) a node longer, within the nodes of the vine.",
      lowerSpurs: "{cordon}: its spurs stand {height} above it; cut each back to a shoot near the cordon.",
      wantedToKeep:
        "Whether {cordon} can be kept depends on what was not counted: {count}. A cane from living wood nearer the head could be laid over its dead area.",
      wanted: "How {cordon} is renewed depends on what was not counted: {counts}.",
    },
    renewalCounts: {
      gapFrom: "how far its longest gap lies from the head",
      canesNearHead: "the canes near its head",
    },
    renewalTriggers: {
      tooFewSpurs: "too few spurs",
      deadArea: "a dead area",
      poorSpurs: "badly placed spurs",
    },
    youngVine: {
      year: "Year {year} of this vine.",
      noNodes: "No publication seen gives nodes to leave on a vine of this year.",
      figures: { between: "{least} to {most}", just: "{most}", atMost: "{most} at most" },
      rules: {
        shoots: "shoots to keep, the best two of them led to the wire",
        clusters: "flower clusters to leave",
        cordons: "best shoots that become the cordons",
        growOn: "share of a cane that is laid, its thick part",
        shootsOfCordon: "shoots from the cordon are grown",
        spurs: "spurs to leave on a cordon",
        nodesASpur: "nodes on a spur",
        nodesACordon: "nodes on a cordon",
      },
      cards: {
        first: "year 1: 3 to 6 shoots, no clusters",
        second:
          "year 2: the 2 best shoots become cordons, half a cane at most, {clusters} {clusters:cluster|clusters} at most",
        third:
          "year 3: shoots of the cordon, on by half a cane at most, {clusters} {clusters:cluster|clusters} at most",
        fourth: "year 4: 8 to 15 spurs a cordon, 2 nodes each",
        otherTraining: "year 4: no rule seen for this training",
      },
    },
    caneWanted:
      "Cane wanted: {least} to {most} thick, thick enough over {length}; the outer half of a cane is thin and weak, so fill the wire in stages.",
  },
  changes: {
    sheet: "Changes",
    title: "What this copy holds otherwise than {file}",
    where: "Sheet",
    cell: "Cell",
    before: "Before",
    after: "After",
    sure: "How sure",
    certain: "certain",
    likely: "likely",
  },
  resultSheets: {
    remarksLost:
      "Not on the sheet {sheet} any more, because what they were written beside is not: {remarks}.",
    looksLost:
      "Colours and formats of {cells} are not on the sheet {sheet} any more, because what stood there is not.",
    notesLeft:
      "This Excel shows no notes to add-ins: rows of the sheet {sheet} moved, and notes on it stand at the cells where they stood.",
    choice: "Cordon choice",
    work: "What is done",
    choiceTitle: "Which cordon stays on each side, and why",
    cards: "Crew cards",
    cardsTitle: "What to do on each vine, in walking order",
    made: "Made on {date}",
    decision: "Decision",
    score: "Score",
    reason: "Reason",
    sheetRow: "Sheet row",
    stays: "What stays",
    cuts: "What is cut",
    notes: "Look out for",
    aboutTitle: "Results of Cordonbook",
    aboutSource: "From {files}",
    about: "About",
    what: "What",
  },
  runLog: {
    sheet: "Run log",
    title: "Who ran what when (switched on and off in the pane)",
    when: "When",
    who: "Who",
    what: "What",
    result: "Result",
  },
  season: { seasonSheet: "Winters" },
  seasonPage: {
    title: "Where the season stands",
    reading: "Reading the sheets",
    sum: "{vines} {vines:vine|vines} in {blocks} {blocks:block|blocks}.",
    next: "Next step",
    then: "Then",
    picture: "Vines of each block, step by step",
    steps: {
      counted: "Counted",
      checked: "Checked",
      decided: "Decided",
      printed: "Printed",
      pruned: "Pruned",
    },
    hours: "{hours} h left",
    stopped: "{wrong} {wrong:cell|cells} to mend",
    share: "{done} of {vines}",
    open: {
      layOut: "Lay out the sheets: which blocks, rows and vines are to be counted",
      count: "Count the vines: {uncounted} {uncounted:vine has|vines have} no count yet",
      mend: "Mend {wrong} {wrong:cell|cells} that cannot be right",
      decide: "Answer for {asks} {asks:vine|vines}: two cordons are close, or a cell is missing",
      accept: "Accept what is decided for {toAccept} {toAccept:vine|vines}",
      print: "Print {cards} {cards:card|cards} for the crew",
      prune: "Prune {toPrune} {toPrune:vine|vines}, and write the day beside each",
      harvest: "Write down at harvest what came",
    },
    go: {
      layOut: "Lay out the sheets",
      count: "Print count sheets",
      mend: "Go to the first cell",
      decide: "Go to the first vine",
      accept: "See what would be written",
      print: "Go to the cards",
      prune: "Go to the vines",
      harvest: "Go to the Harvest sheet",
    },
    wrongHere: "{wrong} {wrong:cell|cells} that cannot be right {wrong:stands|stand} in rows used here.",
    layOut: {
      title: "Lay out the sheets",
      why: "Rows, vines, sides and letters are filled in, in the order in which you walk; then only the counts are typed.",
      block: "Block",
      rows: "Rows of vines",
      vinesARow: "Vines a row",
      cordonsAVine: "Cordons to count on a vine",
      training: "Training system",
      notSaid: "not said",
      backAndForth: "Every second row is walked back",
      make: "Lay out {block}",
      done: "{block} is laid out: {cordons} {cordons:row|rows} on {sheet}, {vines} {vines:vine|vines} on {vinesSheet}. Print the count sheets, or type the counts in.",
      unnamed: "Block: a name is needed.",
      named: "{block} is laid out already: choose another name for the block.",
      whole: "{field}: a whole number from 1 to {most} is needed.",
      length: "{field}: a number above 0 is needed, or nothing.",
      noSheet: "This workbook has no sheet {sheet} to lay out. Begin a season first.",
      filled: "{sheet} {cell} is filled, so nothing was laid out. Empty the rows below the table first.",
    },
    countSheet: {
      paper: "Paper",
      title: "Count sheet",
      row: "{block}, row {row}",
      counter: "Counted by",
      date: "Day",
      tally: "Live spurs: strike one box a spur",
    },
    empty: {
      title: "What is counted on a vine",
      why: "From these counts follow how many nodes to leave, which cordons stay, and a card for the crew.",
      drawing:
        "A vine on a wire with two trunks: trunk 1 carries cordon A to the left, trunk 2 cordon B to the right. Marked are the length of a cordon, its live spurs, a gap, and the two trunks.",
      length: "length",
      spurs: "live spurs",
      gap: "gap",
      trunk: "trunk {trunk}",
      sample: "See a filled season",
      begin: "Begin a season",
      file: "Open a file",
      units: "Units",
      us: "feet, pounds, acres",
      metric: "metres, kilograms, hectares",
      language: "Language of the sheets",
      inExcel: "Both open as a workbook of their own. Open yours with Excel's File menu; this pane reads it.",
    },
  },
  seasons: {
    title: "Winter against winter",
    intro:
      "Live spurs, gaps and trunks of the cordons that stay, over the winters kept on the sheet {sheet}.",
    undated:
      "Nothing says which winter was counted, so it cannot be kept yet. Next step: write the day of the count into the column Date of the Cordons sheet.",
    write: "Keep winter {year} on the Winters sheet",
    notKept:
      "Winter {year} as counted now differs from the sheet or is not on it yet. Earlier winters stay as they are when it is kept.",
    kept: "Winter {year} stands on the sheet as it is counted now.",
    sheetTitle: "Rows of vines, winter by winter",
    sheetNote:
      "Written by Cordonbook on {date}. A winter that is kept again replaces its own rows; other winters stay. Lengths of gaps in spur positions.",
    foreign:
      "The sheet {sheet} has no table of winters that can be read, so it is left alone. Rename it to keep winters.",
    lost: "{count} {count:row|rows} of the sheet {sheet} {count:is not complete, so it|are not complete, so they} would be lost; nothing was written. Complete or delete them first.",
    allRows: "All rows",
    year: "Winter",
    share: "% of positions",
    loss: "The block loses {likely} % of its live spurs a year ({low} to {high} % in {confidence} of 100 cases like this), by {rows} {rows:row|rows} and {pairs} {pairs:pair|pairs} of winters.",
    gain: "Below 0 means spurs gained.",
    toFloor:
      "At that pace it falls below the floor of {floor} % in {likely} years (earliest {low}, latest {high}).",
    never: "never",
    notReached: "At that pace it does not fall below the floor of {floor} %; earliest in {low} years.",
    below: "Below the floor of {floor} % live spurs: {blocks}. Bring up new cordons there.",
    noneBelow:
      "No block lies below the floor of {floor} % live spurs (a setting; no published floor was seen).",
    blockShare: "{block} ({share} %, winter {year})",
  },
  selfTest: {
    ability: {
      pane: "Pane and functions run together.",
      functions: "CORDON functions in cells.",
      tables: "Reading count sheets and writing sheets of our own.",
      marks: "Marks on cells that can be taken off again.",
      whileTyping: "Judging rows while they are typed.",
      pivot: "PivotTable of gaps.",
      spill: "Functions that fill a block of cells.",
      notes:
        "Notes on a sheet of Cordonbook go along when it is written again; without this they stay at their cells.",
      oneUndo: "One Undo takes back all marks or cells of a run.",
    },
    answers: {
      missing: "Not in this Excel ({set}); everything else works.",
      tooOld: "Not in this Excel ({set}), which is too old for Cordonbook.",
      answers: "A cell asked for =CORDON.VERSION() and got {shows}: the functions calculate.",
      otherVersion:
        "A cell asked for =CORDON.VERSION() and got {shows}, another version than the pane's {version}. Close Excel and open it again.",
      unknown:
        "A cell asked for =CORDON.VERSION() and got #NAME?: this Excel has not loaded the functions yet. Close and open the workbook; if it stays so, ask whoever installed Cordonbook.",
      waiting:
        "A cell asked for =CORDON.VERSION() and still waits. Set calculation to automatic (Formulas tab) and try again.",
      error:
        "A cell asked for =CORDON.VERSION() and got {shows}. Close and open the workbook; if it stays so, ask whoever installed Cordonbook.",
    },
  },
  excelReport: {
    sheet: "Excel report",
    title: "Report about this Excel",
    intro:
      "Tries what Cordonbook relies on and writes a sheet with what was expected and what was seen, for whoever looks after Cordonbook. It takes about two minutes, works on sheets of its own and touches none of yours.",
    before:
      "It clears the list of Undo and opens the print dialog, which you can cancel. To have typing tried too: type in a cell, leave it open, press the button, then leave the cell.",
    start: "Make the report",
    trying: "Trying what this Excel does",
    undo: "Press Ctrl+Z once in the sheet that is shown now (on a Mac Cmd+Z), then say so here.",
    undoFact: "And once more: press Ctrl+Z once in the sheet (on a Mac Cmd+Z).",
    pressed: "I have pressed it",
    skip: "Leave this out",
    made: "Made on {date} by Cordonbook {version}.",
    counts: "{same} as expected, {different} different, {notTried} not tried.",
    text: "The report as text",
    copy: "Copy the text",
    copied: "The text of the report is copied.",
    copyYourself: "Excel does not let the pane copy. The text is selected: press Ctrl+C (on a Mac Cmd+C).",
    heads: {
      tried: "What was tried",
      expected: "Expected",
      seen: "Seen",
      outcome: "Result",
      page: "Says who",
    },
    outcomes: {
      same: "same",
      different: "different",
      notTried: "not tried",
    },
    says: {
      value: "{shows}",
      refused: "refused: {shows}",
      nothing: "nothing",
      notCalled: "the function was not called",
      notTold: "nothing; close the pane and open it again before you check while typing",
      notEditing: "no cell was being edited",
      skipped: "left out",
    },
    rows: {
      build: { tried: "Number of the build", expected: "a number such as 16.0.14326" },
      platform: { tried: "Platform", expected: "PC, Mac or OfficeOnline" },
      sets: { tried: "Highest requirement sets", expected: "at least {sets}" },
      editing: {
        tried: "Asking Excel while a cell is being edited",
        expected: "refused with InvalidOperationInCellEditMode until the cell is left",
      },
      undo: {
        tried: "Two cells written as one step, then Undo once",
        expected: "both cells are empty again",
      },
      undoFact: {
        tried: "A cell written, a fact kept in the workbook, then Undo once",
        expected: "nothing in the cell: keeping a fact is not among what clears Undo",
      },
      blank: { tried: "As what a blank cell of a range reaches a function", expected: "null" },
      error: { tried: "As what a cell with #N/A reaches a function", expected: "#N/A" },
      errorInArray: {
        tried: "A result with a blank and an error among its cells",
        expected: "50, blank, an error, 40",
      },
      spill: { tried: "The cells that a result fills", expected: "C1:C4" },
      spillBlocked: { tried: "A result with a full cell in its way", expected: "#SPILL!" },
      watch: {
        tried: "Two watches over cells, the first taken back, a cell changed",
        expected: "the second is told: onChanged",
      },
      text: { tried: "Text that begins with =", expected: "it stays text: =1+1" },
      filterSeen: { tried: "Asking whether a table is filtered", expected: "true" },
      filterWrite: {
        tried: "Writing through rows that a filter hides",
        expected: "refused with FilteredRangeConflict",
      },
      marks: {
        tried: "Priorities of a new conditional format and of the one before",
        expected: "0, 1: the new one comes first",
      },
      marksOff: {
        tried: "A mark taken off a coloured cell",
        expected: "its colour #C0FFC0 and the 1 other format stay",
      },
      rewrite: {
        tried: "A sheet of ours written again while a formula elsewhere points at it",
        expected: "the formula stays: ='…'!B2",
      },
      pivot: { tried: "A PivotTable of sums", expected: "4, 6, 10" },
      chart: { tried: "A chart drawn twice on a sheet of ours", expected: "one chart of 3 parts: 3" },
      print: { tried: "Printing from the pane", expected: "it begins: beforeprint" },
      file: { tried: "Reading the workbook as a file", expected: "it begins with PK" },
    },
    otherwise: {
      undo: "the second cell is empty again, the first still holds 1",
      blank: "0",
      print: "nothing: a Mac does not print from a pane",
    },
  },
  settingsTravel: {
    title: "Figures of another workbook",
    intro:
      "Compare this workbook's figures with those of another one of the farm and copy the ones you want. The other workbook is only read.",
    file: "Choose a workbook (.xlsx or .csv)",
    noTable: "There is no Settings table in {file}.",
    same: "Every figure of {file} is the same as here.",
    differ: "{count} {count:figure differs|figures differ} from {file}. Ticked ones are copied.",
    difference: "{setting}: here {here} {unit}, there {there} {unit}",
    thereBy: "Changed there by {by}, {on}",
    show: "Show what moves",
    copy: "Copy {count} {count:figure|figures}",
    nothingTicked: "Tick at least one figure.",
    copied: "{count} {count:figure was|figures were} copied from {file}.",
    older:
      "This Settings table has an older shape. Bringing it up to date changes no value and leaves every cell of yours as it is.",
    moreNames: "{names} and {more} more",
    upgrade: "Bring it up to date",
    upgraded: "The Settings table is up to date.",
    undo: "Take back",
    undone: "The Settings table is as it was.",
    left: "{count} {count:cell was|cells were} changed by somebody else meanwhile and left alone.",
  },
  upkeep: {
    copyTitle: "For people without Cordonbook",
    copyIntro:
      "Opens a copy in which every cell with a CORDON function holds its value. This workbook stays as it is.",
    copy: "Copy with values only",
    copied:
      "The copy is open: {count} {count:cell holds its value|cells hold their values}, {errors} of them an error.",
    openingTitle: "When this workbook is opened",
    openingIntro:
      "Colleagues without Cordonbook would see a notice of Office each time; leave it off where there are some.",
    openingSwitch: "Start Cordonbook with this workbook",
    pivot: "Pivot of gaps",
    pivotMade: "The PivotTable is on the sheet {sheet}.",
    pivotRefreshed: "The PivotTable was refreshed; its layout is as you left it.",
    pivotTable: "There are no PivotTables here; the same figures stand on the sheet {sheet}.",
    readAgain: "A colleague changed {sheets} during the run, so it was read again.",
    openingAsk: "Look whether it is on",
  },
  workbook: {
    noSheet:
      'There is no sheet "{sheet}" in this workbook (any more); nothing was changed. Choose the sheet again.',
    notOurs:
      'The sheet "{sheet}" was not made by Cordonbook, so it is left as it is. Rename it and run again.',
    protectedSheet:
      'The sheet "{sheet}" is protected; nothing was changed. Take the protection off (Review tab) and run again.',
    protectedWorkbook:
      "The structure of this workbook is protected, so no sheet can be added, renamed or deleted; nothing was changed.",
    badSheetName:
      '"{sheet}" cannot be the name of a sheet: 1 to 31 characters, none of : \\ / ? * [ ] and no apostrophe at either end.',
    badTable:
      'The table for the sheet "{sheet}" does not hold together (row {row}; 0 is its headers); nothing was written.',
    lastSheet:
      'The sheet "{sheet}" is the only one in the workbook, so it cannot be deleted; nothing was changed.',
    cannotPutBack:
      'Row {row}, column {column} of "{sheet}" holds an error that was typed as a value, so it could not be put back exactly. Nothing was changed.',
  },
  choice: {
    atSide: {
      left: "on the left",
      right: "on the right",
      north: "on the north side",
      south: "on the south side",
      east: "on the east side",
      west: "on the west side",
    },
    countWords: {
      spurs: "live spurs and length",
      stretch: "longest gap",
      placing: "where the spurs point",
      soundness: "condition",
      diameter: "diameter",
      trunk: "trunk",
    },
    countOf: "{count} of {cordon}",
    arguments: {
      spurs: "{mine} live spurs against {theirs}",
      spursForLength: "{mine} live spurs on {mineLength} against {theirs} on {theirsLength}",
      spursBeyondWire:
        "{mine} live spurs against {theirs}, and {other} is longer than its wire ({theirsLength} for {wire})",
      noStretch: "no gap against one of {theirs}",
      stretch: "longest gap {mine} against {theirs}",
      placingDown: "{mine} of {mineOf} spurs point down or sideways against {theirs} of {theirsOf}",
      placingUp: "{mine} of {mineOf} spurs point up against {theirs} of {theirsOf}",
      placing: "its spurs point the better way",
      soundness: "it is {mine}, {other} is {theirs}",
      diameter: "it is thicker, {mine} against {theirs}",
      ownTrunk: "it comes from trunk {trunk}, so that both cordons do not hang on trunk {shared}",
      ownTrunkBesideCane: "it comes from trunk {trunk} and the new cane across from another",
      trunkUnknown: "it may come from a trunk of its own, but a trunk is not written down",
      trunkCondition: "its trunk {trunk} is {mine}, trunk {otherTrunk} is {theirs}",
      sameTrunkHurt: "its trunk is {mine}, that of {other} is {theirs}",
      nothing: "nothing that was written down",
    },
    weakPoints: {
      spurs: "it carries {spurs} live spurs where its wire should carry {carry}",
      stretch: "it has a gap of {gap} {gap:position|positions}",
      deadStretch:
        "one stretch of {gap} {gap:place|places} is dead, and {spurs} live {spurs:spur is|spurs are} left where its wire should carry {carry}",
      placing: "only {well} of its {spurs} spurs point the right way",
      soundness: "it is {condition}",
      diameter: "it is {diameter} thick, and {fullDiameter} is thick enough",
      trunkCondition: "its trunk {trunk} is {trunkCondition}",
    },
    caneOrigins: {
      trunk: "from trunk {trunk}",
      otherTrunk: "from the live trunk that carries no cordon",
      head: "from the head",
      ground: "from a sucker at the ground",
    },
    reasons: {
      better: "Keep {cordon} {at}: {mine}.",
      betterDespite: "Keep {cordon} {at}: {mine}. In favour of {rival}: {theirs}.",
      onlyOne: "Keep {cordon} {at}: it is the only one there and worth keeping.",
      onlyOneCounted:
        "Keep {cordon} {at}: it is the only one there and worth keeping, with {spurs} live spurs and a longest gap of {gap}.",
      onlyOneSpurs:
        "Keep {cordon} {at}: it is the only one there and worth keeping, with {spurs} live spurs.",
      building: "Keep {cordon} {at}: the vine is young and its cordon is still being built.",
      fixedStays: "Keep {cordon} {at}: a person has decided it.",
      fixedStaysDead:
        "Keep {cordon} {at}, as a person has decided; but it or its trunk is written down as dead, so look again.",
      worse: "Cut {cordon} {at}; {rival} is better: {theirs}.",
      worseDespite: "Cut {cordon} {at}; {rival} is better: {theirs}. In favour of {cordon}: {mine}.",
      fixedGoes: "Cut {cordon} {at}: a person has decided it.",
      fixedCane: "Cut {cordon} {at} back to a good cane near the head and lay that: a person has decided it.",
      besideFixed: "Cut {cordon} {at}: a person has decided that {rival} stays there.",
      dead: "Cut {cordon} {at}: it is dead.",
      trunkDead: "Cut {cordon} {at}: its trunk {trunk} is dead.",
      remnant: "Cut {cordon} {at}: at {length} it is a remnant at the head, not a cordon.",
      notWorthKeeping: "Cut {cordon} {at} and lay a cane {from}: {weak}.",
      notWorthKeepingOwnTrunk:
        "Cut {cordon} {at} and lay a cane {from}: {weak}, and the new cane brings a trunk of its own.",
      closeCall:
        "Look at the vine: {cordon} and {rival} {at} are close. For {cordon}: {mine}. For {rival}: {theirs}.",
      closeCallForMine: "Look at the vine: {cordon} and {rival} {at} are close. For {cordon}: {mine}.",
      closeCallForTheirs: "Look at the vine: {cordon} and {rival} {at} are close. For {rival}: {theirs}.",
      tie: "Look at the vine: {cordon} and {rival} {at} are equal in all that was written down.",
      question: "Look at the vine: {pairs}.{together}{arguments}",
      questionPair: "{cordon} or {rival} {at}",
      questionCane: "{cordon} or a new cane {at}: {weak}",
      questionFor: "For {cordon}: {mine}.",
      goTogether: "{cordon} goes with {mineWith}, {rival} with {theirsWith}.",
      closeToNewCane:
        "Look at the vine: {cordon} {at} may be worth keeping, or a new cane may be better; {weak}.",
      missingCounts:
        "Look again: {cordon} and {rival} {at} cannot be told apart before this is written down: {missing}.",
      missingCountsAlone:
        "Look again: {cordon} {at} cannot be judged before this is written down: {missing}.",
      uncounted:
        "Count this vine: neither live spurs nor gaps are written down, and by its trunks alone nothing is decided.",
      recount: "Count this vine again; nothing is decided on it before these cells are right: {cells}.",
      sidesUnclear:
        "Write down the side of {cordon} again: the cordons of a vine lie left and right, or on two opposite compass sides.",
      vineMissing: "Look at the place: the vine is listed as missing, but cordon {cordon} was counted on it.",
      namedTwice: "Look at the sheet: two cordons {at} are both named {cordon}.",
    },
    sideLines: {
      layLater:
        "No cane {at} can be laid this winter: none was counted near the head on {source}. Keep a renewal spur at the head of {source} and lay its cane next winter.",
      stays: "{cordon} stays {at}.",
      ask: "{cordon} {at}, if the person who looks agrees.",
      lay: "Lay a cane {at} {from}.",
      layAsk: "Lay a cane {at} {from}, if the person who looks agrees.",
      layOf: "Lay a cane {at} {from}: a good cane of {source}, near the head.",
      layOfAsk:
        "Lay a cane {at} {from}, if the person who looks agrees: a good cane of {source}, near the head.",
    },
    cutLines: {
      head: "Cut {cordon} {at} from the outer end back to the head.",
      trunk: "Cut {cordon} {at} from the outer end back to the head, and take out the dead trunk {trunk}.",
      keepCane:
        "Cut {cordon} {at} from the outer end towards the trunk, and stop at the first good cane that can be laid.",
      renewing:
        "Cut {cordon} {at} from the outer end towards the trunk, and stop at the first good cane: it is kept to renew {renews}.",
      spur: "Cut {cordon} {at} from the outer end towards the trunk, and leave a renewal spur of two nodes at the head.",
    },
    vineNotes: {
      oneTrunk: "One live trunk is written down for this vine; bring up a second.",
      bothOnOneTrunk: "Both cordons hang on trunk {trunk}.",
      everyTrunkHurt: "Every live trunk of this vine is hurt; bring up suckers for new ones.",
      noLiveTrunk: "No trunk of this vine is alive; keep about five suckers and train one.",
      trainingMissing:
        "The block's training system is not written down, so where the spurs point was not weighed.",
      leftOut: "Not counted on this vine, so not weighed: {parts}.",
      fixedTwice: "{cordons} {at} are all fixed to stay.",
      uncounted: "Count live spurs and gaps on this vine before anything is cut on it.",
      recount: "Recount this vine before anything is cut on it: {cells}.",
      sidesUnclear: "The sides of this vine do not fit together, so nothing is decided.",
      vineMissing: "The vine is listed as missing, so nothing is decided.",
      vineYoung:
        "The vine is young: its cordons are measured by their own length only. What publications leave on it depends on its year planted, which is not written or more than four years back.",
    },
    and: "; ",
    conditionNotNoted: "not noted as hurt",
  },
  commandLine: {
    sentences: {
      noRows: "There are heads but no rows in {files}: nothing was checked.",
      headsMissing: "There is no file {file} for --heads.",
      headsNotJson: "{file} is no JSON, which --heads needs.",
      headsUnlike:
        '{file} does not fit at {place}; --heads takes what check --format json proposes under reading.questions, such as {"heads": [{"sheet": "Pond", "shape": "cordons", "columns": {"Vn": "vine"}}]}.',
      sheetUnknown: "There is no sheet “{sheet}”; near it or known: {sheets}.",
      tellHeads: "To tell it: --heads FILE.json with {answers}",
      tellBlock: "To tell it: --block NAME",
      noTables:
        "No count sheet was recognised in {files} (looked at: {sheets}). A table needs heads such as Block, Row, Vine, Side, Cordon; what your own heads mean can be told with --heads FILE.json, a file that holds {answers} with each of your heads before the column that it means: {columns}.",
      noHeadsAtAll:
        "No count sheet was recognised in {files} (looked at: {sheets}). Write a line of heads above the counts: Block, Row, Vine, Side, Cordon, Trunk, Length (ft), Positions, Live spurs.",
      repairOne: "--repair takes one workbook (.xlsx or .xlsm) and writes a copy of it.",
      repairOut: "--repair writes a copy: name it with --out FILE.xlsx, or give --save.",
      repaired: "Changed in the copy: {cells} {cells:cell|cells}",
      repairNothing: "Nothing could be mended for certain, so no copy was written.",
      likelyLeft:
        "Likely changes that were not made: {cells} {cells:cell|cells}; --also-likely makes them too.",
      more: "and {findings} more: {cells}",
      usage: "{program} COMMAND ...",
      moreHelp: "Help on one command: {program} COMMAND --help",
      exitCodes:
        "Exit codes: 0 clean or a value, 1 findings or an error value, 2 the file or the words cannot be read.",
      caution: "Figures advise; whoever stands at the vine and knows the local rules decides.",
      checkSummary:
        "Checks count sheets (.xlsx, .xlsm, .csv, a folder, or - for standard input) and names each cell that cannot be right.",
      chooseSummary:
        "Decides on every vine which cordon stays on each side, and says why (exit code 1: some vines need a look).",
      gapsSummary: "Counts positions without a live spur, row by row of vines.",
      cardsSummary: "Writes for the crew what stays and what is cut on every vine, in walking order.",
      newSummary:
        "Makes an empty workbook for a farm's season: sheets with headers, accepted words, Settings, lines to print.",
      outlookSummary:
        "Says what crop the pruning leaves, block by block: low, likely and high, and what most of the doubt comes from.",
      rowsSummary:
        "Writes every cordon row of any number of files as one csv (metric), for engines that hold a whole region.",
      notAWorkbookName: "The new workbook's name must end in .xlsx, but is {file}.",
      noCordons:
        "There are no cordons in {files}: this needs a sheet with Block, Row, Vine, Side, Cordon and counts.",
      saved: "Saved as {file}",
      savedInPlace: "Saved in {file}; as it was before: {backup}",
      savedAlone:
        "{file} cannot be added to without risk (layout, protection or signature), so the results get a workbook of their own.",
      savedThroughLink: "{file} is a link; what was changed is {target}",
      savedOneName:
        "{file} had {others} more {others:name|names} on this disk (hard links); {others:it keeps|they keep} the old content.",
      passedOver: "Passed over, because Cordonbook made them of {original}: {files}",
      otherFormats: "Passed over, because they are of another format: {files}",
      sameRows:
        "{file} and {other} hold the same {rows} {rows:row|rows} of cordons: is one a copy? Take it away or name the files to read; --same-rows counts both.",
      outEnding: "What is written is a {ending} file, so --out must end in {ending}, but is {file}.",
      oneOption: "--{one} and --{other} say two different things; give one of them.",
      inPlaceOne:
        "--in-place takes one workbook (.xlsx or .xlsm); for csv and several files use --save or --out.",
      formulaSummary: "Calculates one formula with CORDON functions and prints its value.",
      checked:
        "{wrong} wrong, {ask} to ask about, {note} {note:note|notes} in {rows} {rows:row|rows} of {tables} {tables:table|tables}.",
      checkedClean: "Nothing found in {rows} {rows:row|rows} of {tables} {tables:table|tables}.",
      setAside:
        "Set aside in the workbook, so not counted: {findings}. The option --also-set-aside lists them.",
      setAsideHeading: "Set aside, with reason, name and day",
      csvRead: "{file}: read as {encoding}, columns apart by {delimiter}, decimal sign {decimal}",
      csvDoubt:
        "{file}: “{text}” was read with a no-break space, as Windows writes it; in a file from DOS it would be “{other}”. Which is right? Save the file as UTF-8 where it is the second.",
      csvUndecided:
        "{file}: read as {encoding}, columns apart by {delimiter}; its commas or points may be of decimals or of thousands, so such cells stay text",
      unknownCommand: "There is no command “{command}”: known are {commands}.",
      wrongWords: "The command {command} takes {takes}; see {command} --help.",
      badOption: "The command {command} cannot do anything with “{given}”; its options are {options}.",
      badOptionWord: "--{option} takes one of {words}, not “{given}”.",
      badNumber: "--{option} takes a number from 1 up, not “{given}”.",
      badDate: "--today takes a day such as 2026-03-31, not “{given}”.",
      ownMistake:
        "This is a mistake in Cordonbook, not in your file; nothing was changed. Please report what follows.",
    },
    option: {
      sheetOption: "read only these sheets, apart by commas, and Settings",
      block: "block of sheets that name none",
      heads: "answers about the sheets: own heads, units, values for whole sheets",
      repair: "write a copy in which what is certain is mended, with a list of every change",
      alsoLikely: "with --repair: also make the changes that are only likely",
      format: "how the result is written",
      language: "language of the sentences",
      severity: "leave out what weighs less",
      alsoSetAside: "list findings set aside in the workbook too",
      farm: "name of the farm on the first sheet",
      newUnits: "units in the headers (US)",
      html: "write a page to print instead",
      changed: "only vines whose card differs from the last print, as the workbook keeps it",
      paper: "paper of that page (Letter)",
      sameRows: "count files that hold the same rows as farms apart",
      save: "also save into a new workbook beside the file",
      out: "also save into this new workbook",
      inPlace: "add our sheets to the workbook itself, after a backup",
      of: "all candidates, or only the cordons that stay",
      today: "day of the check, for dates in the future",
      units: "units of headers that name none",
      expansion: "times that a file may grow when unpacked (200)",
    },
  },
  pane: {
    questions: {
      title: "Questions about the sheets",
      reading: "What was read, and what not",
      takeBack: "Take the last answer back",
      ownHeads: "Tell column by column",
      leaveOut: "Leave the sheet out",
      asProposed: "Take as proposed",
      countAgain: "Will be counted again",
      yes: "Yes",
      kept: "Your answer is kept on the sheet Answers of this workbook.",
      takenBack: "The last answer is taken back.",
    },
    mend: {
      all: "Change all: {cells}",
      one: "Change",
      allOther: "All the other way: {cells}",
      other: "Change to {to}",
      done: "Cells changed: {cells}.",
      partly: "Cells changed: {cells}. Left alone because they hold something else by now: {left}.",
      takeBack: "Take back the last change: {cells}",
      back: "Cells brought back: {cells}.",
      partlyBack: "Cells brought back: {cells}. Left alone because they were changed since: {left}.",
    },
    pageNames: {
      season: "Season",
      check: "Check",
      nodes: "Nodes",
      gaps: "Gaps",
      decide: "Decide",
      crew: "Crew",
      outlook: "Crop",
      settings: "Settings",
      functions: "Functions",
      care: "Care",
    },
    age: {
      working: "The workbook has changed since; this is being worked out anew.",
      older:
        "The workbook has changed since this was worked out: nothing of it is printed, written or accepted until it is worked out anew.",
      anew: "Work out anew",
      refused:
        "The workbook has changed since this was worked out, so nothing was printed, written or accepted. Look at it as it is now and try again.",
      vineChanged:
        "The rows of this vine were changed since they were read ({cells}); nothing was written. Look at the vine as it is now and decide again.",
    },
    everyPage: {
      more: "More",
      fetching: "Fetching this page…",
      fetchAgain: "Try again",
      pages: "Pages",
      language: "Language",
      close: "Close",
      cancel: "Cancel",
      somethingWrong:
        "This did not work because of a mistake in the program; the workbook was left as it was. Try again, and if it comes back, write down what you did before.",
      cancelled: "Stopped; nothing was changed.",
    },
    check: {
      title: "Check the counts",
      intro:
        "Reads the survey tables of this workbook and lists what is missing, impossible or unlikely. Nothing is changed.",
      check: "Check counts",
      checkAgain: "Check again",
      chooseSheets: "Choose sheets",
      sheetsFound: "Survey tables found",
      sheetRows: "{sheet}: {shape}, {rows} {rows:row|rows}",
      nothingFound:
        "No survey table was found. A sheet needs a line of column heads such as Block, Row, Vine, Side, Live spurs. Next step: type your counts under such heads, or tell which of your own heads mean what.",
      reading: "Reading {sheet}",
      checking: "Checking",
      progress: "Progress of the check",
      nothingCounted: "No counts are written yet, so there is nothing to judge.",
      clean: "Nothing to object to in {rows} {rows:row|rows}.",
      result: "{wrong} wrong, {ask} to ask about, {note} {note:note|notes} in {rows} {rows:row|rows}.",
      since: "Since the check before: {gone} gone, {come} new, {stayed} as before.",
      asideCount: "{aside} are set aside.",
      gone: "Gone since the check before",
      come: "New since the check before",
      findings: "Findings",
      filter: "Filter",
      severity: "How sure",
      sheet: "Sheet",
      counter: "Counted by",
      words: "Words",
      all: "All",
      shown: "{shown} of {all} findings pass the filter.",
      more: "Show {more} more of {all}",
      cell: "{sheet} {cell}",
      wentTo: "{cell} on {sheet} is selected.",
      countedBy: "counted by {counter}",
      whatToDo: "What to do: {remedy}",
      perRow: "Findings per row",
      perCounter: "Findings per counter",
      rowHead: "Block, row",
      writeSheet: "Write Findings sheet",
      sheetWritten: "The sheet {sheet} was written: {rows} {rows:row|rows}.",
      sheetWithoutChart:
        "The sheet {sheet} was written: {rows} {rows:row|rows}. No chart could be drawn on it here: its bars stand in the pane.",
      mark: "Mark cells",
      marked:
        "{cells} {cells:cell is|cells are} marked. Fills, notes and formats of your own stay as they are.",
      unmark: "Take marks off",
      unmarked: "All marks are off.",
      print: "Print list",
      printTitle: "Findings in the counts",
      printDone: "Done",
      printCell: "Cell",
      printWhat: "What was found",
    },
    typing: {
      switch: "Check while I type",
      title: "Rows changed just now",
      nothing:
        "Nothing to object to so far. Each row is judged when you leave its cell; what needs other rows is left to the full check.",
      large: "Many rows of {sheet} changed at once. Press Check counts to have them judged.",
      colleague: "by a colleague",
    },
    aside: {
      setAside: "Set aside",
      title: "Let this finding stand",
      reason: "Why it may stand",
      by: "Your name or initials",
      both: "Reason and name are both needed.",
      list: "Findings set aside",
      entry: "{reason} ({by}, {on})",
      takeBack: "Take back",
      done: "Set aside; it stays so in this workbook until the counts change.",
      takenBack: "Taken back into the list.",
    },
    findingsSheet: {
      sheet: "Findings",
      title: "Findings in the counts",
      severity: "How sure",
      where: "Sheet",
      cell: "Cell",
      counter: "Counted by",
      what: "What was found",
      remedy: "What to do",
      setAside: "Set aside, why and by whom",
      code: "Kind",
    },
    heads: {
      open: "Use my own column heads",
      title: "Your own column heads",
      intro: "Say once what your heads mean; it is kept in this workbook.",
      noHeads:
        "No sheet of this workbook has a line of column heads. Next step: write one above your counts.",
      sheet: "Sheet",
      shape: "One line of it is",
      absent: "(not on the sheet)",
      needed: "{head} (needed)",
      unit: "Unit of {head}",
      unitByWire:
        "Likely {unit}: the middle value {middle} is then a length that cordons have between their positions.",
      unitOfOthers: "Likely {unit}: the unit of the other columns of this workbook.",
      missing: "Still needed: {heads}.",
      keep: "Keep",
      forget: "Forget",
      kept: "Kept: {sheet} is now read with your own heads.",
      forgotten: "Forgotten: {sheet} is read by its heads as they stand.",
    },
    functions: {
      refusedTitle: "What is refused",
      refused:
        "Anything but what stands above: one sentence names the argument, what was given and what was expected. An error cell is refused with its error.",
      title: "Functions for your cells",
      intro:
        "Each works in any cell of this workbook. Open one, change its figures, and put it into the selected cell.",
      cell: {
        title: "The selected cell",
        shows: "{cell} on {sheet} shows {value}.",
        empty: "{cell} on {sheet} is empty.",
        noFormula:
          "No formula fills it. Select a cell with a CORDON function to read what it was given and why it answers as it does.",
        noneOfOurs: "Its formula uses no CORDON function.",
        filledFrom: "It is filled by the formula in",
        heading: "Here it gives the heading of a column.",
        here: "Here it gives {label}: {value}.",
        hereBlank: "Here it gives an empty cell: its row holds nothing to calculate with.",
        hereNothing: "Here it gives nothing that can be shown: there is no figure for it.",
        one: "It gives {label}: {value}.",
        row: "It gives {values}.",
        block: "It gives {rows} {rows:row|rows} under {columns} {columns:heading|headings}.",
        column: "It answers {answered} of {rows} rows; {blank} stay empty, {refused} are refused.",
        firstRefused: "First refused, in row {row} of the range: {sentence}",
        refused: "It gives {error}: {sentence}",
        notKnown:
          "{argument} is worked out by the spreadsheet alone ({written}), so the answer is not repeated here. Put that part into a cell of its own to see it.",
        differs:
          "The cell shows {shows}, and the function answers {answers} to these arguments: let the workbook calculate (F9).",
        name: "The cell shows #NAME?: the function is not loaded. Open the page Care, which repairs such cells.",
        spill:
          "The cell shows #SPILL!: something stands in the cells that the result needs. Clear the cells to the right and below.",
        busy: "The cell shows {shows}: it is still being calculated.",
        otherError:
          "The cell shows {shows}, and the function answers {answers} to these arguments: enter the formula again.",
        otherParts: "The cell shows {shows}: the rest of the formula makes that of it.",
        leftOut: "Left out: {names}.",
        leftOutAs: "{label} (counts as {value})",
        missing: "not given",
        unknown: "worked out by the spreadsheet, not read here",
        blankCell: "an empty cell",
        share: "{value} ({percent} %)",
        several: "{rows} {rows:row|rows}: {filled} filled, {blanks} empty; the first is {first}",
        noneFilled: "{rows} {rows:row|rows}, all empty",
        withErrors: "{words}; {errors} {errors:error|errors}",
        table: "{rows} {rows:row|rows} under {columns} {columns:heading|headings}, from {cell} on {sheet}",
        list: "{rows} {rows:row|rows} under {columns} {columns:heading|headings}",
      },
      search: "Search",
      none: "No function is about that. Try another word, such as spurs, crop or injury.",
      found: "{found} of {all} functions",
      parameters: "What it needs",
      optional: "{label} (may be left out)",
      results: "What it gives",
      example: "Example",
      gives: "gives {value}",
      source: "Source of the value: {work}",
      formula: "Formula",
      insert: "Put into the cell",
      inserted: "The formula stands in {cell} on {sheet}.",
      place: {
        blank:
          "The formula stands in {cell} on {sheet}; {blank} on {of}, the first cell that it reads, is blank, so there is nothing to see until it is filled.",
        otherRule:
          "{block} does not budget its nodes by a formula of prunings but by “{rule}”. Take NODESBYLENGTH, or read the budget on the page Nodes.",
        severalFigures:
          "The blocks differ ({figures}). Select a cell in a row of the table on {sheet}: its block's own figure is taken.",
        inTable:
          "The result fills several cells, and inside a table Excel leaves no room for that. Select an empty cell beside or below the table.",
      },
      noCell: "No cell is selected. Select an empty cell, then try again.",
      notEmpty:
        "{cell} on {sheet} already holds something and was left as it is. Select an empty cell, then try again.",
      noFormula: "A formula begins with = and a name, such as {example}.",
    },
    walk: {
      step: "Step {step} of {steps}",
      next: "Next",
      back: "Back",
      skip: "Skip",
      end: "Begin",
      again: "Show me around",
    },
    walkSteps: [
      "Season shows block by block how far the work is, and leads to the next step with one button. Results on every page are there without being asked for; only what writes or prints has a button.",
      "Check names each cell that is missing, impossible or unlikely. Press the name of a cell: it is selected, and you can mend it.",
      "What is true all the same is set aside with a reason. The list can be printed for the crew, written into a sheet, or marked in the cells; marks come off again without a trace.",
      "Decide weighs the candidate cordons of each vine and gives its reasons; close calls are yours. Cards for the crew and the order of work follow from it on the page Crew.",
      "Gaps shows where spurs are missing, row by row and vine by vine, and how that grew since last winter.",
      "Crop says what crop that leaves, with a range and what would narrow it. Every figure behind it stands in Settings with its source.",
      "Functions answer a single question in a cell: nodes to leave, injury with its interval, crop of a vine. Open one, change its figures, put it into a cell.",
    ],
    gaps: {
      title: "Gaps on the wire",
      intro:
        "A gap is a position on a cordon without a live spur. Nothing is changed until you write a sheet.",
      of: "Count on",
      staying: "the cordons that stay",
      all: "every candidate",
      count: "Count gaps",
      progress: "Progress of the count",
      deciding: "Deciding which cordons stay",
      none: "No cordon with positions and live spurs was found. Next step: count these two columns on the Cordons sheet.",
      sum: "On {of}: {missing} of {positions} positions are empty: {share}.",
      without:
        "On {without} {without:vine no candidate stays; it is|vines no candidate stays; they are} in no sum.",
      writeRows: "Write Row gaps sheet",
      writeMap: "Write Gap map sheet",
      perRow: "Row by row",
      since: "The change is since winter {season}, over the cordons counted in both.",
      gaps: "Gaps",
      share: "Share",
      change: "Difference",
      ofPositions: "{gaps} of {positions}",
      notCounted: "not counted",
      map: "Gap map",
      mapKey:
        "A line is a row, a column is a vine. The digit is whole tenths of its positions that are empty: 0 under a tenth, 5 a half, 10 all; the darker, the more. A dash is a vine of which no candidate stays. Press a cell, or walk with the arrow keys and press Enter: its rows are selected in the sheet and its row is drawn below.",
      cell: "Row {row}, vine {vine}: {gaps} of {positions} positions empty",
      noneStays: "Row {row}, vine {vine}: no candidate stays",
      ledTo: "Row {row}, vine {vine}: sheet {sheet}, row {sheetRow}",
      wire: "The row on the wire",
      wireKey:
        "To scale: thick stays on the wire, dashed goes, dotted is asked about; short strokes are live spurs, rings are empty positions, hatching is a cordon's longest gap (in its middle where nobody wrote where it begins), upright lines are trunks. × missing vine, ? nothing counted. Press a vine to go to it.",
      wireLine:
        "Vines {first} to {last}: {bare} {bare:cordon|cordons} with a gap, {missing} missing {missing:vine|vines}.",
      vine: "Vine {vine}",
      missingVine: "Vine {vine}: missing",
      noCounts: "Vine {vine}: no cordon counted",
      toCells: "Go to its cells",
      toDecide: "See on Decide",
    },
    nodes: {
      title: "Nodes to leave",
      intro:
        "What the winter did to the buds, and how many nodes each rule would leave on a vine of the block's mean prunings. Nothing is changed.",
      work: "Work out the nodes",
      progress: "Progress of the nodes",
      none: "No block, bud cut or weighed vine was found. Next step: weigh the prunings of some vines on the Vines sheet, or write a node rule on the Blocks sheet.",
      winter: "What the winter did",
      buds: "{dead} of {cut} primary buds dead: {share}, between {low} and {high}.",
      noBuds: "No bud cuts: the budget is not corrected for winter injury.",
      overHalf:
        "{blocks}: more than half of the primary buds are dead. Look at canes and trunks first, and at live wood under the bark, before a budget is set.",
      byCultivar: "By cultivar",
      cultivar: "{cultivar} ({blocks})",
      leave: "What to leave",
      leaves: "Leave {nodes} {nodes:node|nodes} on a vine by {rule}.",
      leavesCorrected: "Leave {nodes} {nodes:node|nodes} on a vine by {rule}, corrected by {injuryRule}.",
      noNumber: "No number for this block: {reason}",
      limitedLeast: "Raised to the least of Settings.",
      limitedMost: "Held at the most nodes a vine.",
      least: "Never fewer than {least} {least:node|nodes} on a vine (Settings).",
      byLength: "by length",
      noLeast: "Settings sets no least number of nodes.",
      straddle:
        "The range of dead buds reaches over {edges}, where {injuryRule} changes: {low} at its low end, {high} at its high end. More bud cuts would tell.",
      someNodes: "{nodes} {nodes:node|nodes}",
      noAnswer: "no number",
      own: "the mean of {vines} weighed vines, {mean} {unit}",
      oneWeighed: "one weighed vine, {mean} {unit}",
      rules: "Rules side by side, before injury",
      rulesKey: "By {basis}. The rule in force is marked.",
      noneWeighed: "no weighed vine yet",
      rule: "Rule",
      nodes: "Nodes",
      live: "Of these alive",
      inForce: "{rule} (in force)",
      injuryRules: "The same corrected for dead buds, rule by rule",
      spurs: "Spurs that carry it",
      carried:
        "{spurs} spurs stay on a vine (mean of {vines} {vines:vine|vines}): at {usual} nodes each they hold {held}, at {most} each {heldMost}.",
      enough: "That carries the budget: {each} {each:node|nodes} on a spur.",
      short:
        "{short} {short:node is|nodes are} short even then: lay canes, keep more wood, or accept a smaller budget.",
      noSpurs: "No spur counts of cordons that stay.",
      light: "Vines below one pound (0.45 kg) of prunings",
      lightWhy:
        "No source seen says how many nodes such a vine carries; it wants to be built up. Settings says what is done.",
      lightVine: "Row {row}, vine {vine}: {mass} {unit}",
      setting: "Settings: {name}",
      caution: "Figures advise; what your region's adviser and your own harvests say comes first.",
    },
    gapSheet: {
      rowGaps: "Row gaps",
      rowGapsTitle: "Gaps by row of vines",
      gapMap: "Gap map",
      gapMapTitle: "Share of empty positions, vine by vine",
      vine: "Vine {vine}",
      vinesWithout: "Vines without a cordon that stays",
      bothWinters: "Cordons counted in both winters",
      shareBefore: "Their share last winter",
      shareNow: "Their share now",
    },
    settings: {
      title: "Figures that change results",
      intro: "Each figure has a source. Before a change is kept, the pane shows which results it moves.",
      read: "Read the settings",
      progress: "Progress",
      comparing: "Comparing results",
      noTable:
        "This workbook has no Settings table, so every figure is its source's. Keeping a change makes the sheet {sheet}.",
      search: "Search",
      none: "No figure is about that. Try another word.",
      value: "{value} {unit}",
      source: "Source: {source}",
      ownFigure: "The source has {value} {unit}.",
      changed: "Changed by {by}, {on}",
      newValue: "New value ({unit})",
      newWord: "New value",
      by: "Your name or initials",
      byNeeded: "Write your name or initials, so that others know who changed the figure.",
      change: "Change",
      show: "Show what moves",
      keep: "Keep",
      reset: "Back to the source's value",
      nothingMoves: "No decision and no finding of this workbook would move.",
      budgetMoves: "{block}: {before} to leave on a vine → {after}",
      budgetsStay: "No block's node budget would move.",
      vinesMove: "{moved} of {vines} {vines:vine|vines} would be decided otherwise.",
      findingsMove: "{gone} {gone:finding|findings} would go and {come} would come.",
      vineHead: "Vine",
      now: "Stays now",
      then: "Would stay",
      firstOnes: "The first {shown} are listed.",
      kept: "Kept: {setting} is {value}.",
      meanwhile: "{setting} was changed by somebody else meanwhile; nothing was written. Look at it again.",
    },
    settingGroups: {
      budget: "Node budget and injury",
      choice: "Which cordon stays",
      renewal: "Renewal of trunks and cordons",
      outlook: "Crop outlook",
      work: "Hours and crew days",
      plan: "Plan of the work",
      checks: "Checks",
    },
    decide: {
      title: "Which cordon stays",
      intro:
        "One vine after the other: what its counts and the Settings say, and what you decide. Nothing is written until you press a choice.",
      decide: "Decide the vines",
      deciding: "Deciding which cordons stay",
      progress: "Progress of the decision",
      none: "No vine with candidate cordons was found. Next step: count them on the Cordons sheet, a row each.",
      write: "Write Cordon choice sheet",
      sum: "{all} {all:vine|vines}: {ask} to ask about, {lay} where a cane is laid, {trunks} with trunks to renew.",
      caution:
        "Figures advise; whoever stands at the vine decides. Look at the wood before a cordon is cut for good.",
      show: "Show",
      ask: "to ask about ({count})",
      lay: "a cane is laid ({count})",
      trunks: "trunks to renew ({count})",
      all: "every vine ({count})",
      block: "Block",
      vine: "{block} row {row} vine {vine}",
      fixed: "{outcome}: written into the sheet's column for fixed choices.",
      outcomes: {
        stays: "{cordon} stays",
        cane: "Lay a cane of {cordon}",
        none: "None stays {at}",
        recount: "Count this vine again",
        free: "Ask again",
      },
      find: "Find a vine: block, row, vine",
      notFound: "No vine is found by “{search}”. Write the block, the row and the vine, as in {example}.",
      previous: "Previous vine",
      next: "Next vine",
      position: "{at} of {of}",
      notListed: "not among the {of} of this list",
      stays: "Stays",
      kept: "Kept",
      cut: "Cut, in this order",
      keptSpur: "A renewal spur of {cordon} at the head of trunk {trunk}.",
      keptCane: "A cane of {cordon} near the head, for the {side} side.",
      keptWood: "Living wood of {cordon}, which renews {renews} in a later winter.",
      against: "Against {cordon}, for {rival}: {argument}.",
      nothingAgainst: "No count speaks against it.",
      recountCells: "Count again, because of these cells:",
      decideVine: "Decide",
      sideChoices: "Side: {side}",
      wholeVine: "Whole vine",
      rowPicture:
        "Row {row} of {block}, vine by vine: {decided} decided, {ask} to ask about, {count} to count.",
      rowKey: "Full: decided; hatched: to ask about; crossed: to count; framed: this vine.",
      noColumn:
        "The sheet {sheet} has no column Fixed choice. Next step: write that head beside its table, then decide again.",
    },
    outlook: {
      title: "What crop that leaves",
      intro: "From the cordons that stay to shoots, clusters and crop, with a range. Later counts narrow it.",
      work: "Work out the outlook",
      progress: "Progress of the outlook",
      none: "No block was found. Next step: list your blocks on a sheet with the heads Block, Vines, Row spacing, Vine spacing, Cluster weight.",
      caution:
        "A winter outlook often misses by a third. It advises; frost, hail, birds and disease are not in it, and a local adviser knows your site.",
      write: "Write Crop outlook sheet",
      cannotSay: "Nothing can be said of this block yet; what is lacking stands below.",
      crop: "Likely {likely} {unit}; {low} to {high} in {percent} of 100 cases like this.",
      stages: "Stage by stage",
      bar: "{stage}: low {low}, likely {likely}, high {high} {unit}.",
      aVine: "A vine: about {clusters} {clusters:cluster|clusters}, {low} to {high} {unit}.",
      byPlan: "{stage}, by the plan",
      harvests: "Your own harvests",
      targetName: "target",
      axisKey:
        "Band: low to high, with the likely crop across it; dashed band: nodes as counted, not by the plan of the cards. Dots: your own harvests. Dashed line: target.",
      stage: "Stage, in {unit}",
      low: "Low",
      likely: "Likely",
      high: "High",
      target: "Target: {value} {unit}.",
      spread: "Where the doubt comes from",
      steps: "What would narrow it",
      load: "Crop load",
      thinning: "Thinning to the target",
      noThinning: "The counted clusters lie at or under the target: nothing has to go.",
      keep: "Every vine keeps at most {keep} {keep:cluster|clusters}; about {hours} {hours:hour|hours} of one person.",
      group: "Vines",
      vines: "How many",
      remove: "Take off",
      left: "Left",
      held: "{stage}: picked {percent} % of the likely crop, within its range.",
      missed: "{stage}: picked {percent} % of the likely crop, outside its range.",
      lacking: "What the sheets lack",
      figures: "What your own harvests say",
      figure: "{figure}{cultivar}: {now} in force, {value} by your own years.",
    },
    outlookSheet: {
      sheet: "Crop outlook",
      title: "Crop to expect, block by block",
      stage: "Stage",
      confidence: "Confidence",
      clusters: "Clusters a vine",
      vineLow: "Vine, low ({unit})",
      vineLikely: "Vine, likely ({unit})",
      vineHigh: "Vine, high ({unit})",
      areaLow: "Area, low ({unit})",
      areaLikely: "Area, likely ({unit})",
      areaHigh: "Area, high ({unit})",
      cropLow: "Block, low ({unit})",
      cropLikely: "Block, likely ({unit})",
      cropHigh: "Block, high ({unit})",
      widest: "Most of the doubt",
      harvests: "Own harvests, mean ({unit})",
      againstHarvests: "Against own harvests",
      figures: "Figures used",
      bar: "Bar of the chart",
      barName: "{block}: {stage}",
      toLikely: "Low to likely ({unit})",
      toHigh: "Likely to high ({unit})",
      chartTitle: "Crop of the block: low, likely, high",
      chartAxis: "Crop ({unit})",
    },
    care: {
      title: "Care of the workbook",
      progress: "Progress",
      repairTitle: "Formulas that no longer calculate",
      repairIntro:
        "A formula that was typed or opened without the add-in may stay at #NAME?. They are shown first; nothing is changed by looking.",
      look: "Look for them",
      looking: "Looking through the sheets",
      noRepairs: "Every formula of ours is well written and calculates.",
      failing: "Formulas of ours that show an error and cannot be repaired from here: {cells}.",
      spill:
        "Shows {shows}: something stands in the cells that the result needs. Clear the cells to the right and below.",
      error:
        "Shows {shows}: what it is given does not fit. Select the cell and open Functions, which says what.",
      found: "{cells} {cells:cell|cells} can be repaired.",
      enterAgain: "Is entered again as it stands:",
      before: "Stands there",
      after: "Becomes",
      repair: "Repair {cells} {cells:cell|cells}",
      repaired:
        "{cells} {cells:cell was|cells were} repaired; {left} {left:was|were} left alone because somebody changed them meanwhile.",
      undo: "Take the repair back",
      undone:
        "{cells} {cells:cell is as it was|cells are as they were}; {left} {left:was|were} left alone because somebody changed them meanwhile.",
      unknown: "{name} is not a function of this version; the formula is left as it is.",
      testTitle: "Self-test",
      testIntro: "Tries what the add-in needs here, on sheets of its own that are taken away again.",
      test: "Run the self-test",
      testing: "Testing",
      works: "works",
      fails: "fails",
      unsure: "not seen",
      missing: "lacking",
      version: "Cordonbook {version}, host: {host}.",
      calculates: "The calculation itself.",
      reads: "Reading a sheet.",
      keeps: "Keeping small facts in the workbook.",
      writes: "Writing a sheet of its own, text as text.",
      inCells: "CORDON functions in cells.",
      notInCells: "Open the pane once with the functions loaded, or ask who installed the add-in.",
      takesAway: "Taking the sheet away again.",
      logTitle: "Who ran what",
      logIntro: "A small log in the workbook, off until somebody switches it on.",
      logAsk: "Show the switch",
      logSwitch: "Write down runs in this workbook",
      logCheck: "Check",
      logWrite: "Wrote {sheet}",
    },
  },
  reading: {
    answers: {
      sheet: "Answers",
      title: "What was answered about the sheets of this workbook. A line that is deleted is asked again.",
      what: "What",
      of: "Of",
      answer: "Answer",
      headOf: "head in {shape}",
      value: "value for every row",
      leaveOut: "sheet left out",
      unit: "unit",
      counterUnit: "unit of one counter",
      winter: "winter",
      dateOrder: "order of dates",
      dayFirst: "day first",
      monthFirst: "month first",
      oddCounts: "odd counts taken as proposed",
      recount: "odd counts to be counted again",
    },
    notes: {
      mergedFilled: "Merged cells count for all rows that they stand over ({areas} in {sheets}).",
      filledDown: "Keys written once a group count down to the next: {columns} in {sheets}.",
      keysAbove: "Block or row were taken from the lines above the heads in {sheets}.",
      keysOfName: "Block, row or side were taken from the name of the sheet: {sheets}.",
      captions: "Lines between the rows in {sheets} were read as captions of block and row.",
      labels: "{columns} were read from the labels under {head}, such as {examples}: {sheets}.",
      sidesOfNames:
        "Sides were read from the first letters of the names of cordons, such as {examples}: {sheets}.",
      turned: "One line holds several candidates in {sheets}: {names} were each read as a cordon.",
      sideBySide: "Tables that stand side by side were read one after the other: {sheets}.",
      secondHeads: "Heads further down were read as their own: {sheets}, row {row}.",
      twoParts: "{sheet}: lengths stand in two columns, {head} and {second}, and were added.",
      liveDerived: "Live spurs were worked out as {positions} less {heads} in {sheets}.",
      yearTaken: "Of heads with a year, {head} was taken in {sheets}.",
      strokes: "{cells} {cells:count|counts} written as strokes {cells:was|were} read, such as {examples}.",
      worded:
        "{cells} {cells:count|counts} written beside a word or sign {cells:was|were} read, such as {examples}.",
      ownUnits:
        "{cells} {cells:cell that names its|cells that name their} own unit {cells:was|were} read in it, such as {examples}.",
      textNumbers:
        "{cells} {cells:number that is stored as text was read as a number|numbers that are stored as text were read as numbers}, such as {examples}.",
      datesSettled:
        "{cells} {cells:date|dates} that can be read two ways {cells:was|were} read with the {order}, as the other days of the walk say ({examples}): {sheets}.",
      totalLines: "{lines} {lines:line|lines} of totals {lines:was|were} not read as counts: {sheets}.",
      headsAgain:
        "{lines} {lines:line|lines} of heads that {lines:comes|come} again {lines:was|were} not read as counts: {sheets}.",
      remarkLines:
        "{lines} {lines:line|lines} with a remark in one cell {lines:was|were} not read as counts: {sheets}.",
      encodedTwice:
        "Text whose letters had been encoded twice was read as it was meant, in {cells} {cells:cell|cells}, such as “{from}” as “{to}”: {sheets}.",
      hiddenRows: "{lines} hidden {lines:row was|rows were} read like the others: {sheets}.",
      hiddenColumns: "Hidden columns were read like the others ({columns}): {sheets}.",
      oneWinter:
        "Counts a few weeks apart on different vines were taken as the one winter {winter}: {sheets}.",
      plantingYear:
        "The year in the name of a sheet was not taken as a past winter, since no other sheet holds its vines: {sheets}.",
    },
    evidence: {
      name: "the name of the sheet says",
      sheets: "counts of vines or buds say",
      today: "by the day of today it can only be",
    },
    questions: {
      heads:
        "{sheets}: {rows} {rows:row stands under heads that are not known and was|rows stand under heads that are not known and were} not read. Are {heads} the columns {columns}?",
      noHeads:
        "{sheet}: {rows} {rows:row looks like counts, but stands under no head that is known, and was|rows look like counts, but stand under no head that is known, and were} not read. Write heads such as Block, Row, Vine and Side above, or leave the sheet out.",
      head: "{sheets}: {heads:is|are} {head} the column {column} of this season?",
      unit: "{sheets}: in which unit is {head} written? The column was not read.",
      counterUnit:
        "{sheets}: {counter} seems to have written {rows} {rows:value|values} under {head} in {likely} and not in {unit}; {rows:it was|they were} not read. In which unit {rows:is it|are they}?",
      dateOrder:
        "{sheet}: {cells} {cells:date|dates} can be read with the day or the month first and {cells:was|were} not read. Which comes first?",
      noYear:
        "{sheets}: {cells} {cells:date|dates} such as {examples} {cells:names|name} no year and {cells:was|were} not read. Of which winter {cells:is it|are they}?",
      winter:
        "{sheets}: {rows} {rows:row is dated in the winter|rows are dated in the winter} {winter} and {rows:stands|stand} in no result. {rows:Does it|Do they} belong to {likely}?",
      otherWinter:
        "{sheets}: {rows} {rows:row is|rows are} dated in the winter {winter}, but {by} the winter {likely}. Which is it?",
      oddCounts:
        "{sheet}: {cells} {cells:cell|cells} of {columns} {cells:holds|hold} {kind}, such as {examples}, and {cells:was|were} not read. What was counted?",
      keys: "{sheets}: no column, caption or name tells {columns}. Which is it?",
      hidden:
        "{sheet} is hidden and its counts were not read. Show the sheet to have them read, or leave it out.",
    },
    leftOut: {
      otherHeads: "{sheet} was not read: its {rows} {rows:row stands|rows stand} under other heads.",
      hidden: "{sheet} was not read: it is hidden.",
      notCounts: "{sheet} was not read: it holds no counts.",
      notCalculated:
        "{sheet}: {rows} {rows:row holds formulas that were never calculated and was|rows hold formulas that were never calculated and were} not read. Open the file in a spreadsheet, let it calculate, save it, and run this again.",
      toCount:
        "{sheet}: {rows} {rows:row is laid out and blank; its vine is|rows are laid out and blank; their vines are} counted in other sheets.",
      pastWinter: "{sheet}: {rows} {rows:row belongs|rows belong} to the winter {winter}.",
      byAnswer: "{sheet} was left out as you answered.",
      total: "{sheet}: the column {head} holds totals and was not read.",
      qualifier:
        "{sheet}: the column {head} is of something else than this winter's counts and was not read.",
      otherColumn: "{sheet}: the column {head} was not read: its head is none that is known.",
      asked: "{sheet}: the column {head} was not read: a question about it is open.",
      repeated: "{sheet}: the column {head} was not read: another column of that name was.",
      noHead: "{sheet}: the column {head} was not read: no head stands above it.",
    },
    account: {
      read: "Read: {files} {files:file|files}, {sheets} {sheets:sheet|sheets}, {tables} {tables:table|tables}, {columns} {columns:column|columns}, {rows} {rows:row|rows}.",
      winters: "Taken as counts of the {count:winter|winters} {winters}.",
      notRead: "Not read: {parts}.",
      open: "{questions} {questions:question is|questions are} open.",
      more: "{names} and {more} more",
      parts: {
        hidden: "{names} (hidden)",
        otherHeads: "{names} (other heads)",
        notCounts: "{names} (no counts)",
        notCalculated: "{lines} {lines:row|rows} of {names} (formulas never calculated)",
        toCount: "{lines} blank {lines:row|rows} of {names} (counted elsewhere)",
        pastWinter: "{lines} {lines:row|rows} of {names} (a past winter)",
        byAnswer: "{names} (left out as answered)",
        total: "the {count:column|columns} {names} (totals)",
        qualifier: "the {count:column|columns} {names} (not of this winter's counts)",
        otherColumn: "the {count:column|columns} {names} (no known head)",
        asked: "the {count:column|columns} {names} (asked)",
        repeated: "the {count:column|columns} {names} (named twice)",
        noHead: "the {count:column|columns} {names} (without a head)",
        totalLines: "{lines} {lines:line|lines} of totals",
        headsAgain: "{lines} {lines:line|lines} of repeated heads",
        remarkLines: "{lines} {lines:line|lines} of remarks",
        otherFormat: "{names} (another format)",
        copy: "{names} ({count:a copy|copies} of another file)",
      },
    },
    kinds: {
      sum: "sums",
      star: "numbers with a star",
      range: "ranges",
      about: "rough numbers",
      doubt: "numbers with a question mark",
      letter: "letters in place of digits",
      share: "per cents",
      fraction: "fractions",
      remark: "numbers with a remark",
      spaced: "two numbers",
      measure: "lengths",
      date: "dates",
      time: "times",
      yesNo: "TRUE or FALSE",
      part: "a part of a whole",
    },
  },
  usedRows: {
    usedRows: {
      all: "Worked out from all {rows} {rows:row|rows} of the Cordons sheets.",
      some: "Worked out from {used} of {rows} {rows:row|rows} of the Cordons sheets.",
      leftOut: "Left out: {leftOut}.",
      column: "{rows} where {column} {reason} (first in {sheet}, row {row})",
      sameVine: "{rows} beside those on the same vines",
      toCount: "{rows} still to be counted (first in {sheet}, row {row})",
    },
    faultWords: {
      blank: "is blank",
      text: "is a number stored as text",
      unreadable: "cannot be read",
      error: "holds an error",
      outside: "is outside its limits",
      notWhole: "is no whole number",
      contradicted: "contradicts another cell of its row",
      noColumn: "has no column",
      moved: "stands in a line with more cells than heads",
      tooMany: "stands on more rows than a vine has cordons",
      marked: "asks to count the vine again",
    },
  },
  heads: {
    gaps: "Gaps",
    share: "Share",
    sheet: "Sheet",
    made: "Written by Cordonbook on {date}; it is written anew with each run, so do not type here.",
  },
};

export type Texts = typeof en;
