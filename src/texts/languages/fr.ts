import type { Texts } from "./en";

/** Every text in French. */
export const fr: Texts = {
  language: { name: "Français" },
  lengths: { inches: "po" },
  crops: { tons: "t courtes", tonsAnAcre: "t courtes/acre" },
  settingNames: {
    nodeRule: "Règle des yeux",
    belowOnePound: "Moins d'une livre",
    leastNodesAVine: "Minimum d'yeux par cep",
    mostNodesAVine: "Maximum d'yeux par cep",
    nodesByLength: "Yeux par longueur",
    injuryRule: "Règle de dégâts",
    intervalForDeadBuds: "Intervalle des bourgeons morts",
    confidenceOfRanges: "Confiance des fourchettes",
    spurSpacing: "Écart entre coursons",
    nodesASpur: "Yeux par courson",
    weightOfLiveSpurs: "Poids des coursons vivants",
    weightOfLongestGap: "Poids du plus long vide",
    weightOfSpurPlacing: "Poids de la place des coursons",
    weightOfSoundness: "Poids de l'état sanitaire",
    weightOfDiameter: "Poids du diamètre",
    spaceBetweenNeighbouringCordons: "Espace entre cordons voisins",
    gapThatScoresNothing: "Vide qui ne vaut rien",
    worthOfASpur: "Valeur d'un courson {direction}, {system}",
    soundnessOfAnInjuredCordon: "État d'un cordon abîmé",
    soundnessOfADiseasedCordon: "État d'un cordon malade",
    weakCordonDiameter: "Diamètre d'un cordon faible",
    fullCordonDiameter: "Diamètre d'un cordon plein",
    twoCordonsOnTwoTrunks: "Deux cordons sur deux troncs",
    costOfAnInjuredTrunk: "Coût d'un tronc abîmé",
    costOfADiseasedTrunk: "Coût d'un tronc malade",
    worthOfANewCane: "Valeur d'un nouveau sarment",
    shortestCordon: "Cordon le plus court",
    closeCall: "Cas serré",
    cordonsOnAVine: "Cordons par cep",
    blankCondition: "État non noté",
    trunksWantedOnAVine: "Troncs voulus par cep",
    trunkAgeThatRenews: "Âge du tronc à renouveler",
    emptyShareThatRenewsACordon: "Part vide qui renouvelle un cordon",
    badlyPlacedShareThatRenewsACordon: "Part mal placée qui renouvelle un cordon",
    spurHeightThatLowers: "Hauteur de courson à rabattre",
    thickShareOfANewCane: "Part épaisse d'un nouveau sarment",
    trunksLostAYear: "Troncs perdus par an",
    missingTrunksBroughtUpAYear: "Troncs manquants élevés par an",
    usualBudbreak: "Débourrement usuel",
    budbreakYearToYear: "Débourrement, d'une année à l'autre",
    usualClustersAShoot: "Grappes par pousse usuelles",
    usualClusterWeight: "Poids de grappe usuel",
    clusterWeightBetweenCultivars: "Poids de grappe, entre cépages",
    clustersAShootYearToYear: "Grappes par pousse, d'une année à l'autre",
    clusterWeightYearToYear: "Poids de grappe, d'une année à l'autre",
    clusterWeightBetweenClusters: "Poids de grappe, entre grappes",
    worthOfASecondaryShoot: "Valeur d'une pousse secondaire",
    secondariesAreWritten: "Les secondaires sont notées",
    basalShootsASpur: "Pousses basales par courson",
    worthOfABasalShoot: "Valeur d'une pousse basale",
    frostedNodesAsOne: "Yeux gelés comme un seul",
    lagPhaseMultiplier: "Multiplicateur de la phase de pause",
    lagPhaseMultiplierYearToYear: "Multiplicateur de la phase de pause, d'une année à l'autre",
    clustersWeighed: "Grappes pesées",
    vinesWereDrawn: "Les ceps ont été tirés au sort",
    spreadBetweenVines: "Dispersion entre ceps",
    marginOfACount: "Marge d'un comptage",
    spreadBetweenFarms: "Dispersion entre domaines",
    budbreakBetweenFarms: "Débourrement, entre domaines",
    lagPhaseMultiplierBetweenFarms: "Multiplicateur de la phase de pause, entre domaines",
    cropLoadRange: "Intervalle du rapport de charge",
    leastCropLoad: "Rapport de charge minimal, {range}",
    mostCropLoad: "Rapport de charge maximal, {range}",
    clustersAVineInYear2: "Grappes par cep la 2e année",
    clustersAVineInYear3: "Grappes par cep la 3e année",
    floorOfLiveSpurs: "Plancher de coursons vivants",
    minutesToCountAVine: "Minutes pour compter un cep",
    minutesToCutACane: "Minutes pour couper un sarment",
    minutesToWeighACluster: "Minutes pour peser une grappe",
    minutesForANextStep: "Minutes pour une étape de plus",
    leastGainOfANextStep: "Gain minimal d'une étape de plus",
    minutesAVinePruning: "Minutes par cep, taille",
    minutesAVineThinning: "Minutes par cep, éclaircissage des grappes",
    shootsByLength: "Pousses par longueur",
    minutesAVineShootThinning: "Minutes par cep, éclaircissage des pousses",
    crew: "Équipe",
    hoursADay: "Heures par jour",
    planLeastNodesASpur: "Plan : minimum d'yeux par courson",
    planMostNodesASpur: "Plan : maximum d'yeux par courson",
    tenderCultivars: "Cépages sensibles",
    fruitfulSecondaries: "Secondaires fertiles",
    doublePruning: "Double taille",
    doublePruningNodesOfTheFirstPass: "Double taille : yeux du premier passage",
    doublePruningTimeOfTheSecondPass: "Double taille : temps du second passage",
    pruningStarts: "Début de la taille",
    secondPassStarts: "Début du second passage",
    shootThinningStarts: "Début de l'éclaircissage des pousses",
    daysAWeek: "Jours par semaine",
    daysOff: "Jours chômés",
    ribbonStays: "Ruban, reste",
    ribbonAsk: "Ruban, à voir",
    vinesACardPage: "Ceps par page de fiche",
    unitSystem: "Système d'unités",
    leastDistanceBetweenSpurs: "Distance minimale entre coursons",
    unlikeItsBlockSpread: "Différent de sa parcelle : dispersion",
    unlikeItsBlockLeastValues: "Différent de sa parcelle : minimum de valeurs",
    unlikeItsBlockFewValuesTimes: "Différent de sa parcelle : fois le milieu de peu de valeurs",
    walkOrderMostVinesOutOfOrder: "Ordre de marche : maximum de ceps hors d'ordre",
    cordonLengthMostOfItsSpace: "Longueur de cordon : maximum de sa place",
    cordonLengthLeastOfItsSpace: "Longueur de cordon : minimum de sa place",
    cordonDiameterLeast: "Diamètre de cordon, minimum",
    cordonDiameterMost: "Diamètre de cordon, maximum",
    nodesASpurLeast: "Yeux par courson, minimum",
    nodesASpurMost: "Yeux par courson, maximum",
    trunksAVineMost: "Troncs par cep, maximum",
    cordonsAVineMost: "Cordons par cep, maximum",
    seasonOfCountsFirstMonth: "Saison des comptages : premier mois",
    seasonOfCountsLastMonth: "Saison des comptages : dernier mois",
    countedRowLeastShareOfItsVines: "Rang compté : part minimale de ses ceps",
    copiedDownUnlikelihood: "Recopié vers le bas : invraisemblance",
    swappedColumnsLeastRows: "Colonnes échangées : minimum de lignes",
    digitPreferenceLeastValues: "Préférence de chiffres : minimum de valeurs",
    digitPreferenceShareMoreThanOthers: "Préférence de chiffres : part au-dessus des autres",
    digitPreferenceStandardErrors: "Préférence de chiffres : erreurs types",
    counterUnlikeOthersStandardErrors: "Compteur différent des autres : erreurs types",
    counterUnlikeOthersLeastDifference: "Compteur différent des autres : différence minimale",
    lastYearMostPositionsMore: "An dernier : maximum de positions en plus",
  },
  settings: {
    budget: {
      nodeRule:
        "Règle des parcelles sans règle : formule comme 30+10 (américains ; hybrides français 20+10, nouveaux hybrides 20+20 selon la même source), par longueur ou un nombre d'yeux.",
      belowOnePound:
        "Ceps de moins d'une livre (0,45 kg) de bois : refuse (pas de chiffre ; aucune source vue ne les couvre), flat (les yeux de la première livre) ou pro rata (ceux-ci fois le poids).",
      leastNodesAVine:
        "Un budget plus bas est relevé à ce chiffre ; 0 n'en relève aucun. Aucune limite publiée n'a été vue.",
      mostNodesAVine:
        "Un budget plus haut est ramené à ce chiffre. Deux cordons hauts de 8 à 15 coursons à deux yeux en portent 32 à 60 ; Concord en porte 100 (Bates), ce qui vaut pour ce cépage.",
      nodesByLength:
        "Yeux par longueur d'écartement des ceps pour la règle par longueur ; la source donne 4 à 6 par pied (13 à 20 par mètre).",
      injuryRule:
        "Règle qui corrige pour les bourgeons primaires morts où la parcelle n'en nomme pas. Les règles divergent ; aucune moyenne.",
      intervalForDeadBuds:
        "Comment se fait la fourchette de la part de bourgeons morts : Wilson, ou Clopper-Pearson, plus large.",
      confidenceOfRanges:
        "Combien de fois la fourchette doit contenir le vrai chiffre : 0,9, c'est neuf parcelles sur dix.",
      spurSpacing:
        "Longueur de cordon par courson ; la source donne 3 à 5 po (8 à 13 cm), NC State 3 à 8 po (8 à 20 cm).",
      nodesASpur: "Yeux comptés par courson ; la source donne 2 à 3. Le bourgeon basal ne compte pas.",
    },
    checks: {
      unitSystem:
        "Unité des longueurs et poids sous les en-têtes sans unité : US (ft, in, lb), metric (m, mm, kg), ou celle des en-têtes qui en nomment une.",
      leastDistanceBetweenSpurs:
        "Des emplacements plus serrés que cela en moyenne sont impossibles ; les distances publiées commencent à 3 po, 8 cm (Minnesota 2022).",
      unlikeItsBlockSpread:
        "On demande pour une valeur si loin du milieu de sa parcelle, en multiples de l'écart habituel (médiane ; Iglewicz et Hoaglin 1993 commencent à 3,5, de mémoire).",
      unlikeItsBlockLeastValues:
        "Une parcelle avec moins de valeurs que cela est trop petite pour dire ce qui y est habituel.",
      unlikeItsBlockFewValuesTimes:
        "Avec seulement cinq valeurs ou guère plus, on demande dès tant de fois leur milieu, ou en dessous de sa part.",
      walkOrderMostVinesOutOfOrder:
        "Si plus de ceps du rang que cette part sont hors d'ordre, la feuille a été triée autrement et son ordre n'est pas jugé.",
      cordonLengthMostOfItsSpace:
        "On demande pour un cordon plus long que ce multiple de la part de son côté dans l'espace du cep.",
      cordonLengthLeastOfItsSpace:
        "On demande pour un cordon sain d'un cep en production plus court que ce multiple de sa part.",
      cordonDiameterLeast:
        "On demande pour un cordon plus mince ; le bois des coursons et des longs bois fait 5/16 à 1/2 po, 8 à 13 mm (Westover 2016).",
      cordonDiameterMost: "On demande pour un cordon plus gros. Aucune limite publiée n'a été vue.",
      nodesASpurLeast: "On demande s'il y a moins d'yeux par courson que cela.",
      nodesASpurMost:
        "On demande s'il y a plus d'yeux par courson que cela ; deux à trois sont d'usage (UMN 2022), quatre avant un second passage.",
      trunksAVineMost:
        "On demande pour un cep avec plus de troncs : deux sont d'usage, jusqu'à quatre pour les cépages très sensibles.",
      cordonsAVineMost:
        "Lignes de cordons à partir desquelles le numéro d'un cep a été recopié par erreur : le cep n'est pas décidé.",
      seasonOfCountsFirstMonth:
        "Les cordons et les bourgeons se comptent sur des ceps au repos à partir de ce mois.",
      seasonOfCountsLastMonth: "Les cordons et les bourgeons se comptent jusqu'à ce mois.",
      countedRowLeastShareOfItsVines:
        "Dans un rang dont cette part est comptée, on demande pour un cep sans cordon ; en dessous, le rang est encore en cours.",
      copiedDownUnlikelihood:
        "On demande pour des ceps voisins aux nombres égaux quand le hasard les donne moins d'une fois sur dix puissance ce chiffre.",
      swappedColumnsLeastRows:
        "Autant de lignes qui ne concordent qu'avec deux colonnes échangées passent pour une suite de colonnes échangées.",
      digitPreferenceLeastValues: "Une personne avec moins de valeurs n'est pas jugée.",
      digitPreferenceShareMoreThanOthers:
        "On demande à qui a des valeurs finissant par 0 ou 5 au moins dans cette part de plus que les autres.",
      digitPreferenceStandardErrors: "Et l'écart doit être tant de fois ce que donne le hasard.",
      counterUnlikeOthersStandardErrors:
        "On demande pour qui diffère des autres dans les mêmes parcelles de tant de fois ce que donne le hasard.",
      counterUnlikeOthersLeastDifference: "Et l'écart doit faire au moins cette part du chiffre des autres.",
      lastYearMostPositionsMore:
        "On demande pour un cordon avec plus de nouveaux emplacements que cela, au-delà de ce que donne son allongement.",
    },
    choice: {
      directions: ["vers le bas", "de côté", "vers le haut"],
      worthMeaning:
        "Valeur d'un courson {direction} dans ce mode ({system}). L'ordre est d'usage courant, le chiffre est de nous.",
      liveSpurs: "Poids des coursons vivants par rapport à ce que la longueur devrait porter.",
      longestGap: "Poids de la plus longue suite sans courson ; elle dure toute la vie du cordon.",
      spurPlacing: "Poids de l'orientation des coursons selon le mode de conduite.",
      soundness: "Poids de l'état du cordon lui-même.",
      diameter: "Poids de la grosseur du cordon.",
      spaceBetweenNeighbouringCordons:
        "Fil laissé libre entre les bouts de cordons voisins : une largeur de main selon la source ; le chiffre pour une main est de nous.",
      gapThatScoresNothing:
        "Une suite d'autant d'emplacements sans courson ne rapporte rien pour le plus long vide. Une place vide isolée est un courson qui manque, pas une suite.",
      weakCordonDiameter:
        "Jusque-là la grosseur ne rapporte rien : il n'est pas plus gros qu'un sarment, dont le bout épais fait 1/2 po (13 mm).",
      fullCordonDiameter: "Le maximum dès là : la grosseur d'un cordon en place depuis des années.",
      twoCordonsOnTwoTrunks:
        "Ce que gagnent deux cordons de deux troncs sur deux d'un seul : les deux cordons permanents ne doivent pas tenir à un seul tronc. Le chiffre est de nous.",
      costOfAnInjuredTrunk: "Ce que perd un cordon dont le tronc est abîmé.",
      costOfADiseasedTrunk: "Ce que perd un cordon dont le tronc est malade.",
      worthOfANewCane: "Un cordon qui vaut moins est coupé et un sarment est couché à sa place.",
      shortestCordon: "Plus court, c'est un reste à la tête, pas un cordon.",
      closeCall: "Deux plans pour un cep qui ne s'écartent pas davantage sont une question pour quelqu'un.",
      cordonsOnAVine: "Cordons permanents voulus : 2 veut dire un de chaque côté, 1 un seul cordon.",
      blankCondition:
        "Ce que veut dire un état vide : personne n'a regardé, ou l'équipe ne note que ce qui est abîmé.",
      soundnessOfAHurtCordon: "Entre un cordon mort (0) et un cordon sain (1).",
    },
    outlook: {
      rangeWords: {
        "single canopy": "feuillages simples",
        "divided canopy": "feuillages divisés",
        hybrids: "hybrides",
        Concord: "Concord",
      },
      leastCropLoad: "Récolte sur bois de taille sous lequel les {vines} pourraient porter plus.",
      mostCropLoad: "Récolte sur bois de taille au-dessus duquel les {vines} portent trop pour leur taille.",
      usualBudbreak: "Part des yeux vivants qui donnent une pousse, pour les parcelles qui n'en donnent pas.",
      budbreakYearToYear:
        "Variation du débourrement entre années, en points : 0,06, c'est six points de plus ou de moins deux années sur trois.",
      usualClustersAShoot:
        "Grappes par pousse, pour les parcelles qui n'en donnent pas ; aucun chiffre publié d'un cépage rustique n'a été vu.",
      usualClusterWeight:
        "Vers quoi tendent les poids de grappe de la ferme tant que les années sont peu nombreuses ; presque aucun poids publié d'un cépage rustique n'a été vu.",
      clusterWeightBetweenCultivars:
        "De combien cépages et fermes s'écartent du poids de grappe usuel ; grand, pour que comptent vite les années de la ferme.",
      clustersAShootYearToYear:
        "Variation des grappes par pousse entre années, sur la moyenne ; la source dit environ 25 %, pris ici comme écart type.",
      clusterWeightYearToYear:
        "Variation du poids moyen d'une grappe entre années, sur la moyenne : 0,25 x racine de (40 / 60) fait 0,204 selon la source.",
      clusterWeightBetweenClusters:
        "Variation entre grappes d'une parcelle, sur la moyenne ; dit la sûreté d'un échantillon de grappes pesées.",
      worthOfASecondaryShoot:
        "Récolte d'une pousse de bourgeon secondaire sur celle d'un primaire : 0,275 / 0,725, tiré des 70 à 75 % de la source, qui est de la plupart des cépages de l'Est et du Midwest. Une parcelle peut avoir le sien ; Concord, Niagara, Norton et Marquette en ont un publié.",
      secondariesAreWritten:
        "De quels yeux sont les secondaires vivants de la feuille des coupes : de tous, seulement sous des primaires morts, ou selon les comptages, qui demandent là où les deux conviennent.",
      basalShootsASpur:
        "Pousses de bourgeons non comptés, par courson ; 0 tant que la ferme ne les a pas comptées.",
      worthOfABasalShoot: "Grappes d'une pousse basale sur celles d'une pousse comptée.",
      frostedNodesAsOne:
        "Yeux comptés après le gel qui en disent autant qu'un seul tiré au sort, car les voisins partagent leur sort : 1 + 7 x 0,1 pour huit yeux d'un sarment semblables à 0,1.",
      lagPhaseMultiplier:
        "Poids à la récolte sur poids en phase de pause : 2 fixe en Iowa, « pas fixe » au Maryland, 2 seulement pour le Pinot noir du Willamette selon Wolfe.",
      lagPhaseMultiplierYearToYear:
        "Variation du multiplicateur entre années, sur la moyenne ; avec 0,1 entre fermes, elle fait les 0,18 en tout de la source.",
      clustersWeighed:
        "Grappes derrière une moyenne pesée, où la feuille Récolte ne le dit pas ; la source en demande 100 à 200.",
      vinesWereDrawn:
        "Comment les ceps comptés ont été tirés : at random (au hasard dans la parcelle) ou by row (un nombre par rang). By row seulement si c'était le cas.",
      spreadBetweenVines:
        "Écart type entre ceps sur la moyenne, pour prévoir un comptage ; le rendement de 125 ceps dans la source. Un essai sur cinq ceps ou plus le remplace.",
      marginOfACount:
        "À combien près la moyenne doit être connue ; la source dit bonne une estimation à 10 % près.",
      spreadBetweenFarms:
        "De combien les fermes s'écartent d'un chiffre publié ; plus il est grand, plus tôt comptent les années de la ferme.",
      budbreakBetweenFarms: "De même pour le débourrement, en points.",
      lagPhaseMultiplierBetweenFarms: "De même pour le multiplicateur de la phase de pause.",
      cropLoadRange:
        "Fourchette nommée à laquelle on compare récolte sur bois de taille. Feuillage simple et divisé sont de vinifera en Californie, Concord est de New York.",
      clustersAVineInYear2: "Maximum de grappes à laisser sur un cep la deuxième année après la plantation.",
      clustersAVineInYear3:
        "Maximum de grappes à laisser sur un cep la troisième année ; la source donne environ 10 pour la première récolte.",
      floorOfLiveSpurs:
        "Coursons vivants sur emplacements sous lequel une parcelle est à refaire ; aucune part publiée n'a été vue.",
      minutesToCountAVine: "Minutes pour trouver un cep tiré et compter ses pousses ou grappes.",
      minutesToCutACane: "Minutes pour prendre un sarment, couper et juger ses bourgeons.",
      minutesToWeighACluster: "Minutes pour cueillir et peser une grappe.",
      leastGainOfANextStep:
        "De quelle part une prochaine étape doit resserrer la fourchette pour valoir son temps.",
      minutesForANextStep:
        "Temps d'une personne que la prévision dépense sur le papier, pour dire ce qui resserrerait le plus la fourchette.",
    },
    plan: {
      planLeastNodesASpur: "Si le budget est petit, les coursons sont ramenés à ce nombre d'yeux.",
      planMostNodesASpur:
        "Si le fil porte trop peu de coursons, ils sont laissés au plus à cette longueur ; la source donne 2 à 3 yeux.",
      tenderCultivars:
        "Cépages ou parcelles taillés en dernier car l'hiver les touche le plus ; séparés par des virgules.",
      fruitfulSecondaries:
        "Cépages ou parcelles dont les bourgeons secondaires portent bien, à tailler d'abord ; séparés par des virgules.",
      doublePruning: "Cépages ou parcelles taillés en deux passages ; séparés par des virgules.",
      doublePruningNodesOfTheFirstPass:
        "Premier passage à autant de fois les yeux voulus ; la source donne 2 à 3 fois, le second peu après le débourrement.",
      doublePruningTimeOfTheSecondPass:
        "Part du temps de taille que prend le second passage ; le premier le prend en entier.",
      pruningStarts: "Premier jour de taille, comme date.",
      secondPassStarts: "Premier jour du second passage de la double taille, comme date.",
      shootThinningStarts:
        "Premier jour de l'éclaircissage des pousses, à environ 5 po (13 cm) de longueur, comme date.",
      daysAWeek: "Jours de la semaine où l'équipe taille, à partir du lundi.",
      daysOff: "Jours où personne ne taille, comme 2026-02-16, séparés par des virgules.",
      ribbonStays: "Couleur du ruban que la ferme noue au cordon qui reste.",
      ribbonAsk: "Couleur du ruban pour un cordon que quelqu'un doit voir d'abord.",
      vinesACardPage: "Ceps imprimés sur une page de la fiche.",
    },
    renewal: {
      trunksWantedOnAVine:
        "Troncs vivants qu'un cep devrait avoir : normalement 2, jusqu'à 4 pour les cépages très sensibles.",
      trunkAgeThatRenews:
        "À partir de cet âge un tronc est renouvelé par plan : tous les 10 à 12 ans même dans les meilleures conditions, souvent plus tôt.",
      emptyShareThatRenewsACordon:
        "Dès cette part de places sans courson vivant, le cordon est à renouveler. Une seule suite morte de cette part, et le cordon ne vaut pas plus qu'un nouveau sarment. Aucune source ne donne de part : Oregon State cite baisse de récolte, zones mortes, coursons mal placés et trop peu de coursons.",
      badlyPlacedShareThatRenewsACordon:
        "Dès cette part de coursons vivants mal orientés, le cordon est à renouveler. Aucune source ne donne de part.",
      spurHeightThatLowers:
        "À partir de cette hauteur au-dessus du cordon, les coursons sont rabattus sur un rameau proche. Aucune source ne donne de hauteur.",
      thickShareOfANewCane:
        "Part d'un sarment couchée en un an : sa moitié extérieure est mince et faible, le cordon s'allonge donc par étapes.",
      trunksLostAYear:
        "Part des troncs vivants que tue un hiver, pour la prévision ; les comptages de la ferme disent mieux.",
      missingTrunksBroughtUpAYear: "Part des ceps sous le nombre voulu qui ont un tronc de plus après un an.",
    },
    work: {
      minutesAVinePruning:
        "Minutes qu'il faut à une personne par cep : 80 ceps en 4 heures environ selon la source. Une minute par cep fait 13,45 heures par acre à 6 x 9 pieds (33 heures par hectare à 1,8 x 2,7 m ; Cornell labour) ; chronométrez votre équipe.",
      minutesAVineThinning:
        "Minutes qu'il faut à une personne pour ôter des grappes d'un cep ; chronométrez votre équipe.",
      shootsByLength:
        "Pousses laissées par longueur de fil à l'éclaircissage, vers 5 po (13 cm) de croissance : 6 par pied (20 par mètre) dans l'essai de la source ; Michigan State dit 15 par mètre, 4,57 par pied.",
      minutesAVineShootThinning:
        "Minutes qu'il faut à une personne pour ôter les pousses en trop d'un cep ; chronométrez votre équipe.",
      crew: "Personnes qui taillent en même temps.",
      hoursADay: "Heures de taille de chacun par jour d'hiver, pauses pour se réchauffer non comprises.",
    },
    ownFigure: "chiffre propre",
    settingChangeProblems: {
      noTable: "Il n'y a pas de tableau de réglages dans la feuille {sheet}.",
      unknown: "Il n'y a pas de réglage « {setting} ».",
      notANumber: "{setting} demande un nombre, mais « {value} » a été donné.",
      outside: "{setting} doit être compris dans {expected}, mais {value} a été donné.",
      notAChoice: "{setting} doit être l'un de {expected}, mais « {value} » a été donné.",
      wrongUnit:
        "{setting} figure dans la feuille avec une unité qui ne mesure pas la même chose que {expected}.",
    },
    settingsSteps: {
      names: "Les réglages renommés prennent leur nom actuel : {names}.",
      columns: "Colonnes pour ce qu'est chaque chiffre : {names}.",
      history: "Colonnes pour qui a changé un chiffre et quand : {names}.",
      rows: "Réglages que le tableau n'avait pas encore : {names}.",
    },
  },
  sheets: {
    sides: { left: "gauche", right: "droite", north: "nord", south: "sud", east: "est", west: "ouest" },
    conditions: { sound: "sain", injured: "abîmé", diseased: "malade", dead: "mort" },
    statuses: { bearing: "en production", young: "jeune", missing: "manquant", replanted: "replanté" },
    grapeKinds: {
      american: "américain",
      frenchHybrid: "franco-américain",
      newHybrid: "nouvel hybride",
      vinifera: "vinifera",
      table: "raisin de table sans pépins",
    },
    trainings: { highWire: "fil haut", upright: "pousses dressées", divided: "feuillage divisé" },
    block: { header: "Parcelle", help: "Nom de la parcelle, comme dans la feuille Parcelles." },
    row: { header: "Rang", help: "Numéro du rang dans la parcelle." },
    vine: { header: "Cep", help: "Numéro du cep dans le rang, compté depuis le début du rang." },
    countedBy: { header: "Compté par", help: "Initiales de la personne qui a compté." },
    countedOn: { header: "Date", help: "Jour du comptage." },
    cordons: {
      name: "Cordons",
      rowIs: "un cordon candidat",
      side: {
        header: "Côté",
        help: "Côté du cep : gauche ou droite en marchant depuis le cep 1, ou un point cardinal.",
      },
      cordon: { header: "Cordon", help: "Lettre du candidat sur ce cep : A, B, C." },
      trunk: {
        header: "Tronc",
        help: "Numéro du tronc d'où part le cordon ; 1 est le plus proche du début du rang.",
      },
      length: {
        header: "Longueur",
        help: "Longueur du cordon de la tête du cep à son bout ; unité dans l'en-tête.",
      },
      positions: { header: "Emplacements", help: "Places du cordon où un courson devrait se trouver." },
      liveSpurs: { header: "Coursons vivants", help: "Places qui portent un courson vivant." },
      longestGap: {
        header: "Plus long vide",
        help: "Plus longue suite sans courson vivant, en emplacements.",
      },
      spursDown: { header: "Coursons bas", help: "Coursons vivants tournés vers le bas." },
      spursLevel: { header: "Coursons de côté", help: "Coursons vivants tournés de côté." },
      spursUp: { header: "Coursons hauts", help: "Coursons vivants tournés vers le haut." },
      nodesPerSpur: {
        header: "Yeux par courson",
        help: "Yeux laissés par courson, le nombre habituel sur ce cordon.",
      },
      diameter: { header: "Diamètre", help: "Grosseur du cordon à mi-longueur ; unité dans l'en-tête." },
      gapFrom: {
        header: "Vide depuis la tête",
        help: "Places entre la tête et le début du plus long vide ; 0 s'il commence à la tête.",
      },
      canesNearHead: {
        header: "Sarments près de la tête",
        help: "Sarments près de la tête que l'on pourrait coucher : de l'été dernier, de 8 à 13 mm d'épaisseur, sains.",
      },
      spurHeight: {
        header: "Hauteur des coursons",
        help: "De combien les coursons sont montés au-dessus du cordon ; unité dans l'en-tête.",
      },
      condition: { header: "État", help: "Sain, abîmé par l'hiver, malade ou mort." },
      trunkCondition: {
        header: "État du tronc",
        help: "État du tronc d'où part le cordon ; laisser vide si personne n'a regardé.",
      },
      trunkYear: {
        header: "Année du tronc",
        help: "Année où le tronc dont part le cordon a été monté ; à laisser vide si personne ne la connaît.",
      },
      fixedChoice: {
        header: "Choix fixé",
        choices: {
          stays: "reste",
          goes: "part",
          cane: "coucher un sarment",
          recount: "recompter",
        },
        help: "Seulement si quelqu'un a décidé : reste, part, coucher un sarment (il part, sauf un sarment près de la tête, que l'on couche) ou recompter (tout le cep).",
      },
    },
    vines: {
      name: "Ceps",
      rowIs: "un cep",
      status: { header: "Situation", help: "En production, jeune, manquant ou replanté." },
      liveTrunks: { header: "Troncs vivants", help: "Troncs au bois vivant." },
      prunings: {
        header: "Bois de taille",
        help: "Poids du bois d'un an taillé, s'il a été pesé ; unité dans l'en-tête.",
      },
      clusters: { header: "Grappes", help: "Grappes comptées sur le cep, si elles l'ont été." },
      shoots: { header: "Pousses", help: "Pousses comptées après le débourrement, si elles l'ont été." },
      planted: {
        header: "Année de plantation",
        help: "Année où ce cep a été planté, si elle est postérieure à sa parcelle.",
      },
      prunedOn: { header: "Taillé le", help: "Jour où le cep a été taillé ; vide tant que c'est à faire." },
    },
    blocks: {
      name: "Parcelles",
      rowIs: "une parcelle",
      cultivar: { header: "Cépage", help: "Cépage planté." },
      planted: { header: "Année de plantation", help: "Année de plantation." },
      rows: { header: "Rangs", help: "Rangs de la parcelle." },
      vines: { header: "Places de cep", help: "Places de cep dans toute la parcelle, manquants compris." },
      rowSpacing: { header: "Entre rangs", help: "Distance entre rangs." },
      vineSpacing: { header: "Entre ceps", help: "Distance entre ceps dans le rang." },
      training: {
        header: "Mode de conduite",
        help: "Cordon sur fil haut, pousses dressées ou feuillage divisé.",
      },
      nodeRule: {
        header: "Règle des yeux",
        help: "Comment fixer le nombre d'yeux : formule comme 30+10, « par longueur » ou nombre fixe.",
      },
      injuryRule: {
        header: "Règle de dégâts",
        help: "Règle qui corrige pour les bourgeons morts, du nom de sa source.",
      },
      targetCrop: { header: "Récolte visée", help: "Récolte voulue, en tonnes par acre ou par hectare." },
      clusterWeight: { header: "Poids de grappe", help: "Poids d'une grappe mûre." },
      clustersPerShoot: { header: "Grappes par pousse", help: "Grappes portées en moyenne par une pousse." },
      budbreak: { header: "Débourrement", help: "Part des yeux comptés qui donnent une pousse." },
      grapeKind: {
        header: "Genre de raisin",
        help: "Américain, franco-américain, nouvel hybride, vinifera ou raisin de table sans pépins : les chiffres publiés de ce genre valent là où la parcelle n'a pas les siens.",
      },
      secondaryWorth: {
        header: "Valeur des secondaires",
        help: "Récolte d'une pousse de bourgeon secondaire sur celle d'un primaire, dans cette parcelle.",
      },
      basalShoots: {
        header: "Pousses basales",
        help: "Pousses de bourgeons non comptés, par courson de cette parcelle.",
      },
      basalWorth: {
        header: "Valeur basale",
        help: "Grappes d'une pousse basale sur celles d'une pousse comptée ; 0 où les bourgeons de la base ne portent pas.",
      },
      nodesASpur: {
        header: "Yeux par courson",
        help: "Yeux comptés laissés sur un courson de cette parcelle, au plus ; 1 où le bourgeon de la base porte.",
      },
      mostNodes: { header: "Yeux au plus", help: "Maximum d'yeux laissés sur un cep de cette parcelle." },
    },
    budCuts: {
      "7": { header: "Coupé par" },
      name: "Coupes de bourgeons",
      rowIs: "un sarment coupé",
      cane: { header: "Sarment", help: "Numéro du sarment." },
      nodesCut: { header: "Yeux coupés", help: "Yeux coupés sur ce sarment." },
      primariesAlive: { header: "Primaires vivants", help: "Yeux au bourgeon primaire vivant." },
      secondariesAlive: { header: "Secondaires vivants", help: "Yeux au bourgeon secondaire vivant." },
    },
    harvest: {
      name: "Récolte",
      rowIs: "une parcelle dans une année",
      year: { header: "Année", help: "Année de la récolte." },
      picked: { header: "Récolté", help: "Poids récolté dans la parcelle ; vide jusqu'à la récolte." },
      vinesPicked: { header: "Ceps récoltés", help: "Ceps récoltés." },
      clusterWeight: { header: "Poids de grappe", help: "Poids moyen d'une grappe à la récolte." },
      lagWeight: {
        header: "Poids de grappe en phase de pause",
        help: "Poids moyen d'une grappe quand la baie a cessé de grossir.",
      },
      clustersWeighed: { header: "Grappes pesées", help: "Grappes derrière le poids en phase de pause." },
      clustersPerShoot: { header: "Grappes par pousse", help: "Grappes par pousse, comptées." },
      budbreak: { header: "Débourrement", help: "Part des yeux qui ont poussé." },
      frostPrimaries: {
        header: "Gel : primaires",
        help: "Après un gel de printemps : yeux dont la pousse primaire vit.",
      },
      frostSecondaries: {
        header: "Gel : secondaires",
        help: "Après un gel de printemps : yeux où seule une pousse secondaire vit.",
      },
      frostTertiaries: {
        header: "Gel : tertiaires",
        help: "Après un gel de printemps : yeux où seule une pousse tertiaire vit ; vide s'il n'y en a pas.",
      },
      frostShootless: {
        header: "Gel : sans pousse",
        help: "Après un gel de printemps : yeux sans pousse vivante, quelle qu'en soit la cause.",
      },
    },
    settings: {
      name: "Réglages",
      rowIs: "un chiffre qui change un résultat",
      setting: { header: "Réglage", help: "Nom du chiffre ; ne pas changer." },
      value: { header: "Valeur", help: "Le chiffre de la ferme." },
      unit: { header: "Unité", help: "Unité de la valeur." },
      source: { header: "Source", help: "D'où vient le chiffre." },
      meaning: { header: "Signification", help: "Ce que fait le chiffre." },
      changedBy: { header: "Changé par", help: "Qui l'a changé en dernier." },
      changedOn: { header: "Changé le", help: "Quand il a été changé." },
    },
    note: { header: "Remarque", help: "Tout ce qu'il est bon de savoir." },
  },
  accept: {
    chooseBlock: "Choisissez une parcelle pour accepter d'un coup tous ses ceps décidés.",
    progress:
      "{block} : {accepted} {accepted:cep|ceps} sur {all} acceptés dans la feuille, {open} décidés et pas encore acceptés, {ask} avec une question ouverte.",
    progressName: "Ceps acceptés",
    ask: "Accepter les ceps décidés : {vines}",
    title: "Accepter {block}",
    wouldWrite:
      "Écrirait dans la colonne Choix fixé : cellules {cells}, ceps {vines}. Ceps avec une question ouverte : {ask} ; on n'y touche pas. Les cellules déjà remplies restent aussi telles quelles.",
    unreadable:
      "Laissés de côté, car la cellule du choix fixé contient une formule ou un autre mot : ceps {unreadable}.",
    by: "Votre nom ou vos initiales, si vous voulez",
    byHelp: "Le nom va au journal des actions, s'il est activé.",
    yes: "Oui, écrire {cells} {cells:cellule|cellules}",
    done: "{block} accepté : ceps {vines}, cellules écrites {cells} dans la colonne Choix fixé.",
    doneBy: "{block} accepté par {by} : ceps {vines}, cellules écrites {cells} dans la colonne Choix fixé.",
    meanwhile:
      "La cellule {cell} de la feuille {sheet} a changé entre-temps ; rien n'a été accepté. Prochaine étape : décidez encore.",
    takeBack: "Annuler : {block} accepté",
    takenBack: "Annulé : {cells} {cells:cellule|cellules} de {block} contiennent ce qu'elles avaient avant.",
    partlyBack:
      "{cells} {cells:cellule|cellules} de {block} contiennent ce qu'elles avaient avant ; laissées, car quelqu'un les a changées depuis : {left}. Prochaine étape : décidez encore.",
  },
  addinServer: {
    notHere:
      "Excel ne tourne que sur Windows et Mac : rien à démarrer sur cette machine ({platform}). Sans Excel, utilisez npm start ; pour Excel sur le web, placez dist/ sur un hôte HTTPS (DEVELOPERS.md).",
    notInstalled:
      "Le paquet facultatif {package} n'est pas installé sur cette machine. Lancez npm install {package}@{version} --no-save, puis recommencez.",
    notBuilt: "Le fichier {file} n'existe pas. Lancez d'abord npm run build.",
    serving:
      "Le complément est servi à l'adresse {address} (Ctrl+C pour l'arrêter). Son certificat a été créé sur cette machine et aucune autre ne lui fait confiance.",
    portTaken:
      "Le port {port} est pris par un autre programme. Le manifeste nomme ce port : arrêtez ce programme, ou construisez pour une autre adresse : npm run build -- --env address=https://localhost:PORT/ puis npm run serve -- --port PORT.",
    badPort: "--port doit être un nombre entier de 1 à 65535, mais vaut {given}.",
    trust:
      "Excel exige un certificat auquel cette machine fait confiance ; il en est créé un, ajouté aux certificats de confiance de votre compte. npm run excel:stop le retire.",
    stopped: "Le complément a été retiré d'Excel sur cette machine, ainsi que son certificat.",
    failed: "Échec : {problem}",
  },
  cards: {
    sheet: {
      title: "{block}, rang {row}",
      page: "page {page} sur {pages}",
      vines: "ceps {first} à {last}",
      made: "Fait le {date}",
      crew: "Équipe",
      day: "Jour",
      vine: "Cep",
      keep: "Reste",
      cut: "Couper",
      lay: "Coucher",
      nodes: "Yeux : par courson",
      notes: "Notes",
      done: "Fait",
      found: "Trouvé autrement",
      ribbonStays: "ruban {colour} : reste",
      ribbonAsk: "ruban {colour} : voir d'abord",
      cutRule: "Couper du bout vers le tronc.",
      or: "{cordon} / {others} ?",
      orNewCane: "{cordon} / sarm. ?",
      withTrunk: "{cordon}+T{trunk}",
      withSpur: "{cordon} ○",
      keepTrunk: "{cordon} · T{trunk}",
      sideStays: "{side} reste",
      sideCut: "{side} couper",
      caneLater: "un autre hiver : {from}",
      cane: "sarment : {from}",
      caneOf: "sarm. : {from} · {source}",
      bothOnOneTrunk: "2 sur T{trunk}",
      everyTrunkHurt: "troncs touchés",
      noLiveTrunk: "aucun tronc vivant",
      spursAt: "{spurs}×{nodes}",
      leave: "{nodes} : {plan}",
      onASpur: "{nodes}",
      shortage:
        "{block} : sur {vines} {vines:cep|ceps} de {all}, les coursons, au plus long, portent {short} yeux de moins que les budgets.",
      surplus: "✂ {spurs}",
      bringUp: "nouveaux troncs : {trunks}",
      trunkDue: "T{trunk} vieux ({age} a) : gardez un gourmand",
      trunkOut: "T{trunk} vieux ({age} a) : à enlever quand son remplaçant a 2-3 a",
      replace: "renouveler {cordon}",
      extend: "allonger {cordon} {length}",
      layOver: "{cordon} : sarment sur le vide après {from}",
      replaceLater: "renouveler {cordon} plus tard : pas de sarment",
      longerSpurs: "{cordon} : coursons longs à {from}",
      lowerSpurs: "{cordon} : rabattre les coursons au cordon",
      notDecided: "pas décidé",
      recount: "à recompter",
      toCount: "encore à compter",
      prunedOn: "fait {date}",
      cautions:
        "Porter lunettes et gants ; tenir les mains loin de la lame et du voisin. Se réchauffer avant que les doigts s'engourdissent ; attention à la glace, au fil et aux échelles. Protection des plaies et produits selon l'étiquette et les règles locales. Les chiffres conseillent ; un conseiller local et la personne au cep décident.",
      back: "Ce qui était différent se note dans les feuilles Cordons et Ceps : Choix fixé, État, Taillé le, Remarque.",
    },
    legend: {
      keepTrunk: "A · T1 : A reste, du tronc 1",
      ask: "A / B ? : voir d'abord, l'un d'eux reste",
      askCane: "A / sarm. ? : voir d'abord, A reste ou un sarment est couché",
      withTrunk: "A+T1 : couper A, ôter le tronc mort 1",
      withSpur: "A ○ : couper A, laisser un courson de rappel",
      backToCane: "A ⟂ : couper A jusqu'à son premier bon sarment",
      evenSpurs: "30 : 2 = 30 yeux, 2 par courson",
      spurs: "30 : 4×3 9×2 = 30 yeux : 4 coursons à 3, 9 à 2",
      surplus: "✂ 4 : ôter les 4 coursons les plus mal placés",
      trunk: "T1 : tronc 1",
    },
    open: {
      inBlock: "Reste à faire dans {block} : {parts}.",
      everywhere: "Reste à faire : {parts}.",
      parts: {
        wrong: "{wrong} {wrong:cellule|cellules} qui ne {wrong:peut|peuvent} être {wrong:juste|justes}",
        asked: "{asked} {asked:cep|ceps} à trancher",
        askedRecount: "{asked} {asked:cep|ceps} à trancher, dont {recount} à recompter",
        uncounted: "{uncounted} {uncounted:cep|ceps} sans compte",
        toAccept: "{toAccept} {toAccept:cep décidé, pas accepté|ceps décidés, pas acceptés}",
      },
      nothingInBlock: "Plus rien à faire dans {block} : chaque cep est compté, décidé et accepté.",
      nothingEverywhere: "Plus rien à faire : chaque cep est compté, décidé et accepté.",
    },
    changed: {
      only: "changements seuls",
      rowVoid: "Ne vaut plus sur la fiche de {block}, rang {row}, imprimée avant : {vines}.",
      cardVoid: "Ne vaut plus : toute la fiche de {block}, rang {row}, imprimée avant.",
      nothing: "Rien n'a changé depuis la dernière impression : les fiches distribuées restent valables.",
    },
    ribbons: {
      orange: "orange",
      blue: "bleu",
      red: "rouge",
      yellow: "jaune",
      green: "vert",
      white: "blanc",
      pink: "rose",
      purple: "pourpre",
      violet: "violet",
      black: "noir",
    },
    cardOrigins: { trunk: "T{trunk}", otherTrunk: "tronc nu", head: "tête", ground: "gourmand" },
    part: {
      spurs: "Coursons",
      stretch: "Plus long vide",
      placing: "Orientation",
      soundness: "État",
      diameter: "Diamètre",
    },
  },
  countPlan: {
    title: "Planifier un comptage",
    plan: "Planifier un comptage dans {block}",
    counted: "Ce qui est compté",
    clusters: "Grappes",
    shoots: "Pousses",
    prunings: "Bois de taille pesé",
    margin: "Marge, % de part et d'autre",
    badMargin: "La marge doit être un nombre de {least} à {most} %, mais « {value} » a été tapé.",
    noVines:
      "La feuille Ceps ne liste aucun cep en production de {block}. Prochaine étape : listez ses ceps avec rang, numéro et état.",
    vines:
      "Comptez {vines} des {all} ceps en production : la moyenne est alors à {margin} % près dans {confidence} cas sur 100 comme celui-ci.",
    pilot:
      "Variation entre ceps {percent} %, d'après {pilot} {pilot:cep|ceps} de cette parcelle qui ont un comptage.",
    setting:
      "Variation entre ceps {percent} %, d'après Réglages, car moins de {least} {least:cep|ceps} de cette parcelle ont un comptage.",
    handbooks: "Ce que disent les manuels à côté",
    walk: "Quels ceps, dans l'ordre du parcours",
    row: "Rang {row} : {vines}",
    drawn:
      "Tirés au hasard et répartis sur les rangs ; le tirage {seed} redonne cette liste. Comptez exactement ces ceps ; un cep manquant ou jeune est omis, pas compté 0.",
    other: "Tirer d'autres ceps",
    print: "Imprimer la liste",
    write: "Écrire la liste dans une feuille",
    sheet: "Ceps à compter",
    printTitle: "Ceps à compter : {block}",
    headRow: "Rang",
    headVine: "Cep",
    headNote: "Remarque",
    countedBy: "Compté par, jour :",
  },
  crew: {
    title: "Fiches pour l'équipe",
    intro:
      "Une fiche par rang : ce qui reste, ce qui est coupé et où, yeux par courson. Dessous : l'ordre de taille des parcelles et les ceps qui ont besoin d'un nouveau tronc.",
    make: "Faire les fiches",
    progress: "Avancement des fiches",
    sum: "{cards} {cards:fiche|fiches} pour {vines} {vines:cep|ceps} ; {done} de la taille est faite.",
    others:
      "{others} {others:autre cep|autres ceps} du registre y {others:est nommé|sont nommés} : {others:jeune, replanté ou manquant|jeunes, replantés ou manquants}.",
    none: "Aucun cep n'a été trouvé. Prochaine étape : remplissez la feuille Cordons ou Ceps.",
    row: "Rang",
    which: "Quoi imprimer",
    whichAll: "Toutes les fiches",
    whichChanged: "Seulement ce qui a changé depuis la dernière impression",
    paper: "Papier",
    cardLanguage: "Langue des fiches",
    print: "Imprimer {cards} {cards:fiche|fiches}",
    write: "Écrire la feuille des fiches",
    back: "Ce que l'équipe a trouvé autrement se note dans les feuilles Cordons et Ceps ; les fiches suivent.",
    work: "Ordre du travail",
    workSum: "Taille : il reste {hours} {hours:heure|heures}, {days} {days:jour|jours} de toute l'équipe.",
    workOrder: "Dans cet ordre : {blocks}.",
    thinningSum:
      "Après la taille, les pousses sont éclaircies à partir du {from} : {hours} {hours:heure|heures}, {days} {days:jour|jours} de toute l'équipe ({blocks}).",
    workSource:
      "D'abord parcelles résistantes et secondaires fertiles, les sensibles en dernier (Université de Géorgie, Bulletin 1505) ; listes et calendrier sont dans Réglages.",
    block: "Parcelle",
    left: "Ceps restants",
    hours: "Heures",
    crewDays: "Jours d'équipe",
    when: "Quand",
    done: "fait",
    only: "{block}",
    first: "{block}, premier passage",
    second: "{block}, second passage",
    thinning: "{block}, pousses éclaircies",
    calendarKey:
      "Les numéros sont les parcelles à leur tour. Hachuré : pas de travail selon les Réglages. Encadré : aujourd'hui.",
    dayRows: "{block}, rangs {first} à {last}",
    dayRow: "{block}, rang {first}",
    dayWork: "Travail",
    renewal: "Troncs à renouveler",
    renewalNone: "Aucun cep n'a besoin d'un nouveau tronc.",
    trunksDue:
      "Troncs à renouveler selon leur âge : {now} cet hiver, {nextWinter} l'hiver prochain ; troncs vivants sans année : {withoutYear}.",
    renewalSum: "{vines} {vines:cep a|ceps ont} besoin d'un nouveau tronc, les plus urgents d'abord.",
    trunksNotCounted: "Troncs vivants non comptés sur {vines} {vines:cep|ceps}.",
    forecast: "Cinq hivers à venir",
    forecastNote:
      "Avec {loss} des troncs perdus par an et un tronc de plus sur {up} des ceps en manque, selon Réglages. Les troncs d'un cep meurent souvent ensemble : c'est le côté optimiste.",
    year: "Hiver",
    now: "maintenant",
    enough: "Assez de troncs",
    short: "Trop peu",
    without: "Aucun",
  },
  desk: {
    page: {
      appName: "Cordonbook",
      workbook: "Classeur",
      openFile: "Ouvrir un fichier…",
      saveCopy: "Enregistrer une copie",
      printSheet: "Imprimer cette feuille",
      acceptedWords: "Mots acceptés",
      saved: "{name} a été créé avec tout ce qui a été changé ici ; cherchez-le dans vos téléchargements.",
      notKept: "La copie n'aura pas : {parts}.",
      notKeptParts: {
        addedSheets: "les feuilles ajoutées ou renommées ici ({where})",
        deletedSheets: "la suppression de feuilles ({where} y sera encore)",
        movedSheets: "le nouvel ordre des feuilles",
        moved:
          "ce qui va avec les lignes et colonnes insérées, supprimées ou déplacées (formats, notes, images et règles de saisie de {where} restent où ils étaient)",
        looks: "lettres, couleurs et traits mis ici ({where})",
        sizes: "largeurs, hauteurs, cellules masquées ou fusionnées et volets figés changés ici ({where})",
        notes: "notes écrites ici",
        tables: "tableaux créés, renommés ou rétrécis ici ({where})",
        names: "noms définis ici",
        filters: "filtres mis ici",
        protection: "protection mise ici",
        remarks:
          "des remarques, couleurs et formats de feuilles de Cordonbook dont les lignes ne sont plus là ({where})",
        formulas: "formules qu'aucun tableur ne pourrait lire ({where} ; elles deviennent du texte)",
        values: "formules ({where} ; la copie a ce qu'elles montrent)",
      },
      saveAnyway: "L'enregistrer quand même",
      doNotSave: "Ne pas enregistrer",
      notSaved: "Aucune copie n'a été faite : {problem}",
      copyName: "{name} (copie){ending}",
      restored: "{name} est tel que vous l'avez laissé sur cette machine, {when}.",
      goOn: "Continuer",
      discard: "Abandonner ce qui a été saisi",
      notRestored:
        "Ce que vous avez saisi dans {name} n'a pas pu être rétabli : {problem}. Cela reste gardé sur cette machine.",
      unsaved:
        "Ce qui a été changé sur la page n'est pas encore enregistré. Ouvrir quand même un autre classeur ?",
      gridLabel: "Feuille de calcul",
      paneLabel: "Volet Cordonbook",
      loading: "Ouverture de {name}…",
      stop: "Arrêter",
      calculating: "Calcul des formules…",
      calculated: "{done} sur {all}",
      doubtfulComma:
        "« {written} » est lu dans cette formule comme deux valeurs ; pour une décimale, écrivez {point}, ou séparez les valeurs par « ; ».",
      calculationStopped:
        "Le calcul des formules a été arrêté. Celles qui n'ont pas été atteintes montrent ce qu'elles montraient avant. Elles seront calculées au prochain changement.",
      openingRow: "Feuille {sheet}, ligne {row}",
      stopped: "L'ouverture de {name} a été arrêtée. Le classeur de la page n'a pas changé.",
      dropHere: "Déposez un classeur ou un fichier CSV pour l'ouvrir",
      close: "Fermer",
      idle: "Tout reste sur cette machine. Sélectionnez une cellule en erreur pour lire ce qui ne va pas.",
      keptOffline: "Cette page est désormais gardée sur cette machine : elle s'ouvre aussi sans réseau.",
      newerPage:
        "Une version plus récente de cette page est prête. Enregistrez votre travail, fermez tous les onglets de cette page et rouvrez-la.",
      sampleMissing:
        "Le classeur d'exemple {name} n'a pas pu être obtenu du serveur de cette page : {problem}. Réessayez quand il répond (sur cette machine : npm start).",
      notOpened: "Le fichier {name} n'a pas pu être ouvert : {problem}. Le classeur de la page est inchangé.",
    },
    sampleNames: {
      clean: "Larkmoor Bend (inventé) : une saison sans fautes",
      mistakes: "Larkmoor Bend (inventé) : saison avec des fautes",
      empty: "Une saison vide à remplir ({units}, {language})",
      US: "pieds et livres",
      metric: "métrique",
    },
  },
  deskServer: {
    ready: "Cordonbook est prêt à l'adresse {address} (Ctrl+C pour l'arrêter)",
    help: "npm start -- [--port NUMÉRO] [--no-open] : ouvre la page sans Excel sur cette machine seulement ; port {port} s'il est libre.",
    badOption: "Cordonbook n'a pas démarré : {problem} Les options sont --port NUMÉRO et --no-open.",
    badPort:
      "Cordonbook n'a pas démarré : --port doit être un nombre entier de 0 à 65535, mais vaut {given}.",
    oldNode:
      "Cordonbook n'a pas démarré : il lui faut Node {needed} ou plus récent, mais voici Node {found}.",
    notBuilt:
      "Cordonbook n'a pas démarré, car sa page n'a pas pu être construite (relancez npm ci s'il manque des paquets) : {problem}",
    noPort:
      "Cordonbook n'a pas démarré, car aucun port de cette machine n'a pu être ouvert à partir de {port} : {problem}",
  },
  excelPage: {
    notFetched: "Une partie de Cordonbook n'a pas pu être chargée. Vérifiez le réseau et réessayez.",
    noOffice:
      "Le script Office de Microsoft n'a pas pu être chargé : Cordonbook n'a pas accès au classeur. Vérifiez le réseau et rouvrez le volet.",
    notInExcel: "Cette page ne fonctionne que dans Excel. Sans Excel, utilisez la page qu'ouvre npm start.",
    tooOld:
      "Cet Excel est trop ancien pour Cordonbook : il lui manque {missing}. Il faut Excel sur le web, Microsoft 365 ou Office LTSC 2021 ou plus récent.",
  },
  excelProblems: {
    halfWritten:
      "Excel a refusé de terminer « {sheet} » et aussi de la remettre en état. Utilisez Annuler ou fermez sans enregistrer ; l'ancien contenu est sur la feuille « {kept} » si elle est nommée.",
    marksHalfSet:
      "Excel a refusé de terminer le marquage ; il peut manquer des marques. Relancez le contrôle ; les cellules elles-mêmes n'ont pas changé.",
    inTheWay:
      "La ligne {row} de la feuille « {sheet} » contient quelque chose d'étranger à son tableau, là où irait le nouveau. Déplacez-le, puis recommencez ; rien n'a été changé.",
    sheetKeepsChanging:
      "Des lignes de la feuille « {sheet} » sont apparues ou ont disparu pendant la lecture, trois fois de suite. Recommencez quand votre collègue aura fini.",
    notAFormula:
      "Ce qui devait aller en ligne {row}, colonne {column} de « {sheet} » n'est pas une formule : elle doit commencer par « = ». Rien n'a été changé.",
    pivotLost:
      "Le tableau croisé « {name} » ne peut pas être actualisé : sa source a disparu ou a changé. Supprimez-le, puis recommencez pour le recréer.",
    hiddenSheet:
      "La feuille « {sheet} » est masquée. Affichez-la (clic droit sur un onglet, Afficher), puis réessayez.",
    filteredTable:
      "Un filtre cache des lignes de la feuille « {sheet} », et Excel pourrait écrire dans d'autres lignes ; rien n'a été changé. Effacez le filtre (onglet Données, Effacer), puis recommencez.",
    mergedCell:
      "La ligne {row}, colonne {column} de la feuille « {sheet} » est dans des cellules fusionnées, qui ne gardent que leur première cellule ; rien n'a été modifié. Annulez la fusion (Accueil, Fusionner) et relancez.",
    overlap:
      "Sur la feuille « {sheet} », des cellules fusionnées, un autre tableau ou un tableau croisé dynamique occupent la place du tableau ; rien n'a été modifié. Déplacez-les ou annulez la fusion, puis relancez.",
    otherWorkbook:
      "Un autre classeur est passé devant, et Excel ne répond que pour celui qui est devant. Revenez à ce classeur, puis recommencez.",
    notPrinted:
      "Rien n'a été imprimé : ici le volet ne peut pas imprimer (c'est le cas dans Excel pour Mac). Prochaine étape : utilisez le bouton voisin qui écrit une feuille, puis imprimez cette feuille depuis Excel (Fichier, Imprimer).",
    cellBeingEdited:
      "Une cellule est en cours de saisie. Appuyez sur Entrée ou Échap dans la feuille, puis réessayez ; rien n'a été changé.",
    tooMuchAtOnce:
      "Une ligne de « {sheet} » est trop grande pour un seul message à Excel. Raccourcissez son texte le plus long, puis recommencez ; rien n'a été changé.",
    notInThisExcel:
      "Cette version d'Excel ne sait pas le faire ({reason}) ; rien n'a été changé. L'autotest du volet indique ce qu'elle sait faire.",
    excelRefused:
      "Excel a refusé ({reason}) ; rien n'a été changé. Réessayez et, si cela persiste, enregistrez, fermez et rouvrez le classeur.",
  },
  farmFigures: {
    take: "Utiliser {value}",
    takeName: "Utiliser {value} : {figure}",
    wouldWrite: "{value} serait écrit dans {where}. Rien n'est encore écrit.",
    cropMoves:
      "{block} ({stage}) : récolte probable {before} → {after} {unit} (fourchette {beforeLow} à {beforeHigh} → {afterLow} à {afterHigh})",
    cropComes:
      "{block} ({stage}) : récolte probable {after} {unit} (fourchette {afterLow} à {afterHigh}), là où rien ne peut être calculé maintenant",
    cropGoes:
      "{block} ({stage}) : plus aucune récolte ne peut être calculée ; maintenant elle est de {before} {unit} (fourchette {beforeLow} à {beforeHigh})",
    cropStays: "La prévision d'aucune parcelle ne bougerait.",
    yes: "Oui, l'écrire",
    taken: "{figure} vaut {value} désormais, écrit dans {where} par {by}, {on}.",
    undo: "Annuler",
    undone: "{figure} est comme avant.",
    meanwhile: "Quelqu'un d'autre a changé {where} entre-temps ; rien n'a été écrit. Regardez-le à nouveau.",
    noColumn:
      "La feuille {sheet} n'a pas de colonne « {header} » pour ce chiffre : ajoutez cet en-tête et recalculez la prévision.",
    formula:
      "{where} contient une formule ; elle est laissée telle quelle. Tapez-y d'abord une valeur, ou gardez la formule.",
    gone: "Les récoltes ne proposent plus ce chiffre. Recalculez la prévision.",
  },
  fileProblems: {
    noFile: "Le fichier « {file} » n'existe pas ; vérifiez son nom et son dossier.",
    noFiles: "Le dossier « {folder} » n'a aucun fichier .xlsx, .xlsm, .csv ou .tsv.",
    unreadableFile: "Le fichier « {file} » ne peut pas être ouvert ({reason}).",
    emptyFile: "Le fichier « {file} » est vide.",
    notAWorkbook:
      "« {file} » n'est pas un classeur .xlsx ; enregistrez-le comme classeur Excel (.xlsx) ou en csv, puis recommencez.",
    oldOrLockedFile:
      "« {file} » est un ancien classeur .xls ou a un mot de passe ; enregistrez-le en .xlsx sans mot de passe, puis recommencez.",
    lockedFile:
      "Des parties de « {file} » sont chiffrées ; enregistrez-le sans mot de passe, puis recommencez.",
    binaryWorkbook: "« {file} » est un classeur binaire (.xlsb) ; enregistrez-le en .xlsx, puis recommencez.",
    damagedFile:
      "« {file} » est abîmé : sa liste de parties ne correspond pas au fichier. Demandez qu'on le renvoie.",
    damagedPart:
      "« {file} » est abîmé : sa partie {part} ne peut pas être décompressée. Demandez qu'on le renvoie.",
    missingPart: "« {file} » est abîmé : il renvoie à une partie {part} qu'il ne contient pas.",
    badXml: "« {file} » est abîmé : sa partie {part} est mal formée.",
    tooManyParts:
      "« {file} » n'a pas été lu : il a plus de {most} parties, ce dont aucun classeur n'a besoin.",
    samePartTwice: "« {file} » n'a pas été lu : il a deux parties du nom {part}.",
    badPartName: "« {file} » n'a pas été lu : le nom de partie {part} sort du fichier.",
    unknownPacking:
      "« {file} » n'a pas été lu : sa partie {part} est compressée d'une façon étrangère aux classeurs.",
    expandsTooFar:
      "« {file} » n'a pas été lu : décompressé, il ferait {times} fois sa taille ; la limite est {most} (option --expansion).",
    sizeLies: "« {file} » n'a pas été lu : sa partie {part} n'a pas la taille que le fichier annonce.",
    tooLargeToHold: "« {file} » est trop grand pour tenir en mémoire ; utilisez la ligne de commande.",
    documentType:
      "« {file} » n'a pas été lu : sa partie {part} déclare un type de document, ce dont aucun classeur n'a besoin.",
    tooDeep: "« {file} » n'a pas été lu : sa partie {part} imbrique plus de {most} éléments.",
    tooMuchText: "« {file} » n'a pas été lu : {part} contient plus de {most} caractères en un seul endroit.",
    tooManyCells:
      "La feuille « {sheet} » de « {file} » couvre plus de {most} {most:cellule|cellules} ; effacez les cellules isolées loin du tableau, puis recommencez.",
    tooManyForPage:
      "« {file} » s'étend sur plus de {most} cellules, plus que cette page ne peut en montrer ; utilisez la ligne de commande.",
    tooManyOf:
      "« {file} » n'a pas été lu : sa partie {part} énumère plus de {most} entrées d'une même sorte, ce dont aucun classeur n'a besoin.",
    sheetsOnOnePart:
      "« {file} » n'a pas été lu : sa feuille « {sheet} » et une autre sont la même partie {part}.",
    inputTooLarge:
      "Ce qui est arrivé comme « {file} » n'a pas été lu : cela dépasse {most} Mo. Enregistrez-le comme fichier et nommez-le.",
    sameSheetTwice: "« {file} » est abîmé : il a deux feuilles du nom « {sheet} ».",
    rowPastLimit:
      "La feuille « {sheet} » de « {file} » est abîmée : la ligne {row} dépasse la dernière possible, {most}.",
    columnPastLimit:
      "La feuille « {sheet} » de « {file} » est abîmée : la cellule {cell} dépasse la dernière colonne possible, {most}.",
    rowTwice:
      "La feuille « {sheet} » de « {file} » est abîmée : la ligne {row} y est deux fois ou hors de l'ordre.",
    cellTwice:
      "La feuille « {sheet} » de « {file} » est abîmée : la cellule {cell} de la ligne {row} y est deux fois ou hors de l'ordre.",
    badCell:
      "La feuille « {sheet} » de « {file} » est abîmée : {cell} en ligne {row} n'est pas une cellule de cette ligne.",
    badNumber:
      "La feuille « {sheet} » de « {file} » est abîmée : la ligne {row} contient un nombre écrit {value}.",
    notText:
      "« {file} » n'est pas un fichier texte ; enregistrez-le en csv depuis le tableur, puis recommencez.",
    openQuote:
      "« {file} » n'a pas été lu : à partir de la ligne {row}, les guillemets ne se ferment pas comme il faut.",
    layoutUnknown:
      "« {file} » ne peut pas être modifié sur place : sa partie {part} a une forme qui n'est pas comprise. Rien n'a été changé.",
    signedFile: "« {file} » porte une signature numérique que tout changement romprait. Rien n'a été changé.",
    openElsewhere:
      "« {file} » est ouvert dans un autre programme ; fermez-le, puis recommencez. Rien n'a été changé.",
    changedMeanwhile: "Quelqu'un a enregistré « {file} » entre-temps ; recommencez. Rien n'a été changé.",
    diskFull: "Il n'y a plus de place sur le disque pour « {file} » ({reason}). Rien n'a été changé.",
    savedElsewhere:
      "Une autre exécution enregistre « {file} » en ce moment ; recommencez. Rien n'a été changé.",
    readOnlyFile:
      "« {file} » est en lecture seule ; levez cette protection, ou utilisez --save pour une copie. Rien n'a été changé.",
    ownerNotKept:
      "« {file} » appartient à quelqu'un d'autre, ce qui ne pourrait être gardé ; utilisez --save pour une copie. Rien n'a été changé.",
    mayNotWrite: "« {file} » ne peut pas être écrit ({reason}). Rien n'a été changé.",
    fileExists: "Un fichier « {file} » existe déjà ; nommez-en un autre avec --out. Rien n'a été changé.",
  },
  findings: {
    units: {
      times: "×",
      nodes: "yeux",
      positions: "emplacements",
      trunks: "troncs",
      years: "ans",
      clusters: "grappes",
      people: "personnes",
      date: "date",
      days: "jours",
      vines: "ceps",
      values: "valeurs",
      cordons: "cordons",
      month: "mois",
      "powers of ten": "puissances de dix",
      rows: "lignes",
      share: "part",
    },
    kinds: {
      missingValue: {
        title: "Vide où il faut une valeur",
        sentence: "{column} est vide.",
        why: "La ligne ne peut pas servir sans cette valeur.",
        remedy: "Le remplir d'après la feuille de papier, ou recompter.",
      },
      missingColumn: {
        title: "Il manque une colonne",
        sentence: "Le tableau n'a pas de colonne « {missing} ».",
        why: "Les lignes ne peuvent pas servir sans elle.",
        remedy: "Ajouter la colonne, ou dire laquelle des vôtres c'est.",
      },
      columnTwice: {
        title: "Deux fois la même colonne",
        sentence: "La colonne « {wanted} » figure deux fois dans le tableau ; seule la première est lue.",
        why: "Les comptages de la seconde colonne ne servent pas.",
        remedy: "Renommer ou supprimer l'une des deux.",
      },
      numberAsText: {
        title: "Nombre saisi comme texte",
        sentence: "{column} affiche « {value} », mais c'est du texte et pas un nombre.",
        why: "Le tableur laisse une telle cellule hors des sommes sans rien dire.",
        remedy: "Saisir le nombre à nouveau.",
      },
      notANumber: {
        title: "Pas un nombre",
        sentence: "{column} contient « {value} » à la place d'un nombre.",
        why: "La ligne ne peut pas servir sans un nombre.",
        remedy: "Saisir le nombre ; les mots vont dans la remarque.",
      },
      notADate: {
        title: "Date peu claire",
        sentence: "{column} contient « {value} », qui n'est pas une date ou peut se lire de deux façons.",
        why: "Le jour et le mois peuvent être confondus.",
        remedy: "Saisir la date sous la forme année-mois-jour.",
      },
      unknownWord: {
        title: "Mot inconnu",
        sentence: "{column} indique « {value} » ; il faut l'un de ces mots : {words}.",
        why: "Le mot décide de l'usage de la ligne.",
        remedy: "Choisir l'un des mots.",
      },
      errorCell: {
        title: "La cellule affiche une erreur",
        sentence: "{column} affiche {value}.",
        why: "Une formule a échoué, il n'y a donc pas de valeur.",
        remedy: "Corriger la formule ou saisir la valeur.",
      },
      outsideLimits: {
        title: "Hors de ce qui est possible",
        sentence: "{column} vaut {value}{unit} ; il faut une valeur entre {least} et {most}{unit}.",
        why: "Aucun cep n'a cette valeur : c'est une faute de plume ou d'unité.",
        remedy: "Corriger d'après la feuille de papier ; regarder l'unité de l'en-tête.",
      },
      notWhole: {
        title: "Comptage avec une fraction",
        sentence: "{column} vaut {value}, mais se compte en nombres entiers.",
        why: "Une fraction dans un comptage est une faute ou la valeur d'une autre colonne.",
        remedy: "Corriger d'après la feuille de papier.",
      },
      settingUnknown: {
        title: "Réglage inconnu",
        sentence: "« {setting} » n'est pas un réglage utilisé.",
        why: "Le changer ne change rien ; un nom mal écrit laisse la valeur habituelle en vigueur.",
        remedy: "Corriger le nom, ou laisser la ligne si elle est à vous.",
      },
      settingNotUsable: {
        title: "Réglage inutilisable",
        sentence:
          "La valeur « {value} » de « {setting} » ne peut pas servir (attendu : {expected}) ; la valeur habituelle est en vigueur.",
        why: "Les résultats n'emploient pas le chiffre que montre la feuille.",
        remedy: "Corriger la valeur.",
      },
      settingTwice: {
        title: "Deux fois le même réglage",
        sentence:
          "« {setting} » vaut {value}{unit} ici et {otherValue}{otherUnit} à la ligne {otherRow} de la feuille{otherSheet} ; c'est cette dernière valeur qui est en vigueur.",
        why: "Deux valeurs pour un chiffre : quelqu'un croit à l'autre.",
        remedy:
          "Supprimer l'une des lignes, ou donner aux deux la même valeur si chaque fichier garde ses réglages.",
      },
      columnsSwapped: {
        title: "Deux colonnes échangées",
        sentence:
          "{rows} {rows:ligne|lignes}, jusqu'à la ligne {lastRow} de la feuille, ne concordent que si {column} et {other} changent de place.",
        why: "Chaque chiffre de ces lignes est pris pour un autre.",
        remedy:
          "Comparer avec les en-têtes de la feuille de papier et échanger les deux colonnes dans ces lignes.",
      },
      unitSlip: {
        title: "Écrit dans une autre unité",
        sentence:
          "{column} vaut {value}{unit}, différent de sa parcelle ; pris pour {value} {meant}, c'est {converted}{unit} et convient ({rows} {rows:ligne|lignes}, jusqu'à la ligne {lastRow} de la feuille).",
        why: "Dans la mauvaise unité, tout chiffre qui en dépend est faux d'autant.",
        remedy: "Demander quel mètre ou quelle balance a servi et convertir les valeurs.",
      },
      totalDiffers: {
        title: "Total différent de ses parties",
        sentence: "Le total de {column} est {total}, ses parties font {sum} : écart {difference} ({made}).",
        why: "Des lignes ont été ajoutées ou changées après le total, ou une ligne y manque.",
        remedy: "Additionner à nouveau, ou remplacer le total saisi par une formule.",
      },
      placesDiffer: {
        title: "Les places diffèrent du registre",
        sentence:
          "{column} vaut {total}, mais la feuille des ceps en liste {sum} : écart {difference} ({made}).",
        why: "La récolte et les heures de la parcelle viennent de ses places de cep.",
        remedy: "Corriger le nombre, ou compléter la feuille des ceps.",
      },
      vineNeverCounted: {
        title: "Cep jamais compté",
        sentence:
          "Le cep est en production, mais aucun cordon n'y a été compté ; {counted} sur {vines} {vines:cep|ceps} du rang {counted:l'a|l'ont} été.",
        why: "Rien n'y serait décidé, ou ses comptages sont sous un autre numéro.",
        remedy: "Le compter, ou corriger sa situation dans la feuille des ceps.",
      },
      rowNeverCounted: {
        title: "Rang jamais compté",
        sentence:
          "Aucun des {vines} ceps en production de ce rang n'a été compté, alors que la plupart des rangs l'ont été.",
        why: "Une feuille a pu se perdre, ou être saisie sous un autre rang.",
        remedy: "Chercher la feuille de papier, ou compter le rang.",
      },
      digitPreference: {
        title: "Valeurs qui semblent devinées",
        sentence:
          "{own} % des {values} valeurs de {column} de {counter} finissent par 0 ou 5 ; celles des autres dans les mêmes parcelles, {others} %.",
        why: "De telles valeurs sont le plus souvent devinées ou arrondies, pas mesurées.",
        remedy: "Recompter ensemble quelques-uns de ces ceps.",
      },
      counterUnlikeOthers: {
        title: "Compte autrement que les autres",
        sentence:
          "{habit} de {counter} diffère de {percent} % des autres dans les mêmes parcelles, sur {vineyardRows} {vineyardRows:rang|rangs}.",
        why: "Quelqu'un compte selon une autre règle, et les cordons de rangs différents ne se comparent pas.",
        remedy: "Compter un cep ensemble et s'accorder sur la règle.",
      },
      unknownBlock: {
        title: "Parcelle inconnue",
        sentence: "La feuille des parcelles n'a pas de parcelle « {value} ».",
        why: "Ses lignes manquent dans les chiffres de la parcelle.",
        remedy: "Corriger le nom, ou ajouter la parcelle à sa feuille.",
      },
      unknownRow: {
        title: "La parcelle n'a pas ce rang",
        sentence: "La parcelle a {last} {last:rang|rangs}.",
        why: "Les comptages sont ceux d'un autre rang, auquel ils manquent.",
        remedy: "Corriger le numéro du rang, ou le nombre de rangs dans la feuille des parcelles.",
      },
      unknownVine: {
        title: "Le registre n'a pas ce cep",
        sentence: "La feuille des ceps n'a pas ce cep.",
        why: "Les comptages sont ceux d'un autre cep, auquel ils manquent.",
        remedy: "Corriger le rang et le cep, ou ajouter le cep à sa feuille.",
      },
      cordonOnMissingVine: {
        title: "Cordon sur un cep manquant",
        sentence: "La feuille des ceps dit ce cep manquant, mais un cordon y a été compté.",
        why: "Ou le registre, ou le numéro du cep est faux.",
        remedy: "Aller au cep : corriger sa situation, ou le numéro sur la feuille de comptage.",
      },
      sameCordonTwice: {
        title: "Deux fois le même cordon",
        sentence: "Ce cordon figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
        why: "Il serait compté deux fois, ou l'un des deux est d'un autre cep.",
        remedy: "Supprimer la copie, ou corriger cep, côté ou lettre.",
      },
      sameVineTwice: {
        title: "Deux fois le même cep",
        sentence: "Ce cep figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
        why: "La parcelle aurait un cep de trop, et on ne sait quelle ligne vaut.",
        remedy: "Supprimer la copie, ou corriger rang et cep.",
      },
      sameBlockTwice: {
        title: "Deux fois la même parcelle",
        sentence: "Cette parcelle figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
        why: "On ne sait quelles distances et quelles règles valent.",
        remedy: "Supprimer l'une des lignes.",
      },
      sameHarvestTwice: {
        title: "Une récolte sur deux lignes",
        sentence:
          "La récolte de cette parcelle pour l'année figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
        why: "Ce qui est cueilli sur plusieurs lignes d'une année est additionné ; la même cueillette deux fois doublerait l'année.",
        remedy:
          "Supprimer l'une des lignes si c'est la même cueillette ; si ce sont deux cueillettes, mettre la remarque de côté.",
      },
      outOfWalkOrder: {
        title: "Hors de l'ordre du parcours",
        sentence:
          "La ligne n'est pas là où l'équipe est passée devant ce cep (avant et après dans la feuille, rang/cep : {neighbours}).",
        why: "Un cep hors d'ordre est souvent un numéro mal saisi.",
        remedy: "Comparer rang et cep avec la feuille de papier.",
      },
      spursTooClose: {
        title: "Plus d'emplacements que de place",
        sentence:
          "{places} emplacements ne tiennent pas sur {length}{unit} de cordon ; à {distance} l'un de l'autre, il en tiendrait {fit}.",
        why: "La longueur ou les emplacements sont faux, ou la longueur est dans une autre unité.",
        remedy: "Vérifier la longueur et son unité, puis les emplacements.",
      },
      aliveAboveCut: {
        title: "Plus de bourgeons vivants que coupés",
        sentence:
          "{column} vaut {alive}, mais {cut:seul|seuls} {cut} {cut:œil a été coupé|yeux ont été coupés}.",
        why: "La part de bourgeons morts décide du nombre d'yeux gardés dans toute la parcelle.",
        remedy: "Demander à la personne qui a coupé le sarment, ou l'écarter.",
      },
      sideWithoutCordon: {
        title: "Rien d'un côté",
        sentence:
          "{rows} {rows:cordon est|cordons sont} du côté {choice} et aucun de l'autre, bien que presque tous les ceps de la parcelle aient les deux.",
        why: "Un cordon du mauvais côté est comparé à d'autres que les siens, et un côté qui devait rester est coupé.",
        remedy: "Regarder le cep et corriger le côté du cordon.",
      },
      harvestUnusual: {
        title: "Récolte très au-dessus des autres",
        sentence:
          "Cep par cep, {value}{unit} font {times} fois le milieu des {values} autres récoltes auxquelles on compare.",
        why: "La prévision et les chiffres propres en dépendent ; c'est le plus souvent un chiffre de trop.",
        remedy: "Vérifier les bons de livraison et corriger le poids.",
      },
      countLeftOut: {
        title: "Un comptage oublié",
        sentence: "{column} est vide ici et remplie dans {values} {values:autre ligne|autres lignes}.",
        why: "Un comptage oublié manque dans chaque moyenne.",
        remedy: "Compter à nouveau, ou mettre le constat de côté.",
      },
      vineWithoutCount: {
        title: "Rien de compté sur ce cep",
        sentence: "{counts} sont vides ici ; les {values} autres ceps les ont.",
        why: "Un cep passé sans être vu manque dans chaque moyenne, ou manque lui-même.",
        remedy: "Le compter, le dire manquant, ou mettre le constat de côté.",
      },
      totalUnlikeParts: {
        title: "Total différent de ses parts",
        sentence:
          "{column} vaut {total}, mais {parts} font {sum} ; la somme est juste sur {values} {values:autre ligne|autres lignes}.",
        why: "Ou le total ou une de ses parts est mal saisi.",
        remedy: "Regarder le papier, puis corriger la cellule fausse.",
      },
      cordonsAboveMost: {
        title: "Plus de lignes qu'un cep n'a de cordons",
        sentence: "{rows} lignes nomment ce cep ; un cep a {most} cordons au plus.",
        why: "Toutes seraient comparées entre elles, et les ceps auxquels elles appartiennent seraient sans fiche.",
        remedy: "Voir si le numéro du cep a été recopié vers le bas, et écrire celui de chaque ligne.",
      },
      extraCells: {
        title: "Plus de cellules que d'en-têtes",
        sentence:
          "La ligne a plus de cellules que d'en-têtes, ou un saut de ligne en son milieu : ses cellules peuvent se trouver sous d'autres en-têtes, rien n'en est donc utilisé.",
        why: "Une virgule ou un guillemet de trop décale toutes les cellules suivantes vers l'en-tête voisin.",
        remedy:
          "Ouvrir le fichier comme texte à cette ligne et enlever ce qui est de trop, ou séparer les deux lignes.",
      },
      struckOut: {
        title: "Barré",
        sentence: "C'est barré dans la feuille, et lu tel quel.",
        why: "La feuille ne dit pas si le trait retire le comptage ou le marque seulement comme fait.",
        remedy: "Demander à qui a compté : supprimer la ligne si elle ne compte pas, ou enlever le trait.",
      },
      otherNumberInComment: {
        title: "Un autre nombre en commentaire",
        sentence: "{column} vaut {value}, mais le commentaire de la cellule dit « {said} ».",
        why: "Seule la cellule est lue ; le commentaire peut être le comptage d'après.",
        remedy: "Demander à qui a compté, garder le bon nombre dans la cellule et enlever le commentaire.",
      },
      deadWithSpurs: {
        title: "Cordon mort avec des coursons vivants",
        sentence: "Le cordon est dit mort, mais {spurs} coursons vivants y sont comptés.",
        why: "On couperait un cordon vivant, ou on garderait un mort.",
        remedy: "Entailler l'écorce sur le cep et corriger la ligne.",
      },
      deadTrunkLiveCordon: {
        title: "Cordon vivant sur un tronc mort",
        sentence: "Le tronc est dit mort, mais son cordon a {spurs} coursons vivants.",
        why: "Ou le tronc vit, ou le cordon part d'un autre.",
        remedy: "Suivre le cordon jusqu'à son tronc et corriger la ligne.",
      },
      cordonIntoGap: {
        title: "Conduit à la place d'un cep manquant",
        sentence:
          "{value}{unit} de cordon là où un côté a {share}{unit} ; le cep {gap} à côté manque, il peut occuper sa place.",
        why: "Bon à savoir avant de replanter le cep manquant.",
        remedy: "Rien, si le cordon y a été conduit exprès.",
      },
      blockUnlikeSpacing: {
        title: "Longueurs et espacement ne concordent pas",
        sentence:
          "Les cordons de la parcelle font {median}{unit} au milieu, mais son espacement donne {share}{unit} par côté.",
        why: "L'unité d'un en-tête ou l'espacement est faux, et avec lui tout chiffre par longueur.",
        remedy:
          "Vérifier l'unité dans l'en-tête de la longueur et l'espacement dans la feuille des parcelles.",
      },
      missingAsZero: {
        title: "Cep manquant compté 0",
        sentence: "Le cep manque, pourtant {column} vaut 0.",
        why: "La parcelle perdrait le cep deux fois : une dans la moyenne des ceps comptés, une comme manquant.",
        remedy: "Laisser vide le comptage d'un cep manquant.",
      },
      sideFromOneTrunk: {
        title: "Un côté d'un seul tronc",
        sentence:
          "Tous les candidats vivants du côté {choice} partent du tronc {trunk}, bien que le cep en ait un autre.",
        why: "De ce côté, le choix ne peut pas répartir le risque sur deux troncs.",
        remedy: "Vérifier les numéros de tronc ; sinon, penser à coucher un sarment de l'autre.",
      },
      deadCordonStays: {
        title: "Un cordon mort doit rester",
        sentence: "Décidé qu'il reste, mais le cordon ou son tronc est mort ou sans courson vivant.",
        why: "Le côté ne porterait rien, et le candidat vivant serait coupé pour toujours.",
        remedy: "Décider à nouveau, devant le cep.",
      },
      sickCordonStays: {
        title: "Un cordon malade doit rester",
        sentence: "Décidé qu'il reste, mais le cordon ou son tronc est dit malade.",
        why: "La maladie passe du cordon au tronc.",
        remedy: "Demander à qui a décidé s'il le savait.",
      },
      twoStayOnSide: {
        title: "Deux cordons restent d'un côté",
        sentence:
          "Un second cordon doit rester du côté {choice} ; le premier est à la ligne {otherRow} de la feuille.",
        why: "Un cordon par côté remplit le fil ; deux se font de l'ombre.",
        remedy: "Décider pour l'un des deux.",
      },
      vineCameBack: {
        title: "Manquant l'an dernier, en production",
        sentence:
          "Le cep manquait en {season} (feuille{otherSheet}, ligne {otherRow}) et est dit en production.",
        why: "Un cep ne produit pas l'année après la plantation.",
        remedy: "Corriger la situation : replanté, jeune ou manquant.",
      },
    },
    sameRemedy: {
      ask: {
        remedy: "Demander à qui a compté ; si c'est vrai, mettre la remarque de côté.",
        kinds: {
          copiedDown: {
            title: "Les mêmes nombres sur plusieurs ceps",
            sentence:
              "{vines} {vines:cep|ceps} de suite, de {from} à {last}, portent les mêmes nombres dans toutes les colonnes.",
            why: "Des nombres recopiés n'ont pas été comptés.",
          },
        },
      },
      date: {
        remedy: "Corriger la date d'après la feuille de papier.",
        kinds: {
          dateInFuture: {
            title: "Date dans le futur",
            sentence: "{column} est {value}, après aujourd'hui ({today}) ; {rows} {rows:ligne|lignes}.",
            why: "Personne n'a compté un jour à venir : jour, mois ou année est mal saisi.",
          },
          dateOutOfSeason: {
            title: "Date hors saison",
            sentence:
              "{column} est {value}, hors des mois {firstMonth} à {lastMonth} où l'on compte les ceps au repos ; {rows} {rows:ligne|lignes}.",
            why: "Le jour et le mois ont peut-être changé de place.",
          },
          dateOtherYear: {
            title: "Date d'un autre hiver",
            sentence:
              "{column} est {value}, mais la feuille est de l'hiver {season} ; {rows} {rows:ligne|lignes}.",
            why: "Ou l'année est mal saisie, ou des lignes d'une vieille feuille sont entrées.",
          },
          dateOutOfWalkOrder: {
            title: "Date hors de l'ordre du parcours",
            sentence: "{column} est {value}, alors que le reste du rang a été parcouru le {usual}.",
            why: "Une date mal saisie, ou une ligne d'une autre feuille.",
          },
        },
      },
      countAgain: {
        remedy: "Regarder le cep, ou corriger le comptage d'après la feuille de papier.",
        kinds: {
          spursAbovePositions: {
            title: "Plus de coursons que d'emplacements",
            sentence:
              "{spurs} coursons vivants sur {positions} {positions:emplacement|emplacements}, c'est impossible.",
            why: "Un emplacement porte un courson au plus ; le cordon paraîtrait plus garni qu'il n'est.",
          },
          gapTooLong: {
            title: "Vide plus long que les emplacements vides",
            sentence:
              "Le plus long vide est de {gap}, mais seuls {missing} {missing:emplacement|emplacements} sur {positions} sont sans courson vivant.",
            why: "Un long vide compte contre un cordon toute sa vie ; s'il est faux, on coupe un bon cordon.",
          },
          gapBeyondEnd: {
            title: "Le vide commence trop loin",
            sentence:
              "Un vide de {gap} places qui commence à {from} de la tête finit au-delà de la dernière des {positions} places.",
            why: "L'endroit du vide décide si l'on couche un sarment par-dessus ou si l'on renouvelle tout le cordon.",
          },
          gapTooShort: {
            title: "Vide plus court que possible",
            sentence:
              "{missing} emplacements vides entre {spurs} coursons vivants laissent un vide d'au moins {least}, mais il est écrit {gap}.",
            why: "Un vide en réalité plus long fait paraître bon un mauvais cordon.",
          },
          directionsDoNotAddUp: {
            title: "Bas, côté et haut ne font pas le compte",
            sentence:
              "Les coursons bas, de côté et hauts font {sum}, mais il est écrit {spurs} coursons vivants.",
            why: "L'un des quatre comptages est faux, et le choix du cordon repose sur tous.",
          },
        },
      },
      look: {
        remedy: "Regarder le cep ; si c'est vrai, mettre la remarque de côté.",
        kinds: {
          cordonTooLong: {
            title: "Plus long que sa place",
            sentence:
              "{value}{unit} de cordon là où l'espacement donne {share}{unit} par côté, et aucun cep manquant à côté n'est connu.",
            why: "Il pousse dans le cep voisin, ou la longueur est fausse.",
          },
          cordonTooShort: {
            title: "Bien plus court que sa place",
            sentence: "{value}{unit} de cordon sain là où l'espacement donne {share}{unit} par côté.",
            why: "Le fil sans cordon ne porte rien, ou la longueur est fausse.",
          },
          diameterUnusual: {
            title: "Grosseur inhabituelle",
            sentence: "{column} vaut {value}{unit} ; les cordons font de {least} à {most}{unit}.",
            why: "Une grosseur fausse change le choix du cordon.",
          },
          nodesUnusual: {
            title: "Nombre d'yeux par courson inhabituel",
            sentence: "{column} vaut {value} ; les coursons sont taillés à {least} à {most} {most:œil|yeux}.",
            why: "Pousses et récolte en sont calculées.",
          },
          missingVineCounted: {
            title: "Comptage sur un cep manquant",
            sentence: "Le cep est dit manquant, pourtant {column} vaut {value}.",
            why: "Ou le cep est debout, ou le comptage est celui d'un autre cep.",
          },
          trunksUnusual: {
            title: "Nombre de troncs inhabituel",
            sentence: "{column} vaut {value} ; les ceps portent {most} {most:tronc|troncs} au plus.",
            why: "Un faux numéro de tronc réunit des cordons qui ne vont pas ensemble.",
          },
          trunksAboveRegister: {
            title: "Plus de troncs vivants que dans le registre",
            sentence:
              "Des cordons vivants sont sur les troncs {trunks}, mais la feuille des ceps dit {living} {living:tronc vivant|troncs vivants}.",
            why: "Ou un numéro de tronc ou le registre est faux, et on choisit par lui les troncs à renouveler.",
          },
          positionsAppeared: {
            title: "Emplacements absents l'an dernier",
            sentence:
              "{now} {now:emplacement|emplacements}, mais {before} en {season} (feuille{otherSheet}, ligne {otherRow}), et le cordon n'a pas tant grandi.",
            why: "Les emplacements ne reviennent pas sur du vieux bois ; l'un des comptages est d'un autre cordon.",
          },
          trunkChangedPlace: {
            title: "Un autre tronc que l'an dernier",
            sentence: "Tronc {now}, mais tronc {before} en {season} (feuille{otherSheet}, ligne {otherRow}).",
            why: "Un cordon reste sur son tronc ; les troncs ont été numérotés de l'autre bout, ou les lettres ont changé.",
          },
        },
      },
      compare: {
        remedy: "Comparer avec la feuille de papier ; si c'est vrai, mettre la remarque de côté.",
        kinds: {
          unlikeItsBlock: {
            title: "Différent de sa parcelle",
            sentence:
              "{column} vaut {value}{unit} ; le milieu de {values} valeurs de la parcelle est {median}{unit}.",
            why: "Si loin de ses voisines, une valeur est le plus souvent une faute : un chiffre de trop, une virgule perdue, une autre unité.",
          },
          trunkNotOfVine: {
            title: "Un tronc que le cep n'a pas",
            sentence:
              "Un cordon vivant sur le tronc {trunk} ; la feuille des ceps dit {living} {living:tronc vivant|troncs vivants}, et {dead} {dead:mort est compté|morts sont comptés}.",
            why: "Un cordon au mauvais numéro de tronc est gardé ou coupé avec le mauvais tronc.",
          },
          digitsSwapped: {
            title: "Chiffres d'une longueur échangés",
            sentence:
              "{value}{unit} avec {positions} {positions:emplacement|emplacements} ; {meant}{unit} irait comme sur les autres cordons de la parcelle.",
            why: "La longueur de cordon compte pour les vides et pour le fil rempli.",
          },
          positionsUnlikeLength: {
            title: "Emplacements et longueur ne concordent pas",
            sentence:
              "{value} emplacements sur {length}{unit} ; les cordons de la parcelle en portent environ {expected} sur cette longueur ({values} comparés).",
            why: "Les emplacements ou la longueur sont mal saisis, et la part de coursons vivants vient des deux.",
          },
        },
      },
    },
    habit: {
      spacing: "La distance entre emplacements",
      liveShare: "La part d'emplacements au courson vivant",
      length: "La longueur des cordons",
      diameter: "La grosseur des cordons",
      down: "La part de coursons vers le bas",
    },
    made: { typed: "saisi", formula: "par formule" },
    groups: {
      word: "« {value} »",
      kind: "{value}",
      counter: "compté par {value}",
      column: "{value}",
      sheet: "feuille {value}",
      bothWays: "se lit de deux façons",
      noYear: "sans année",
      heading: "{title} : {cause} ({findings})",
      cells: "Cellules : {cells}",
      becomes: "{from} devient {to}",
      orElse: "{change} (ou {other})",
      likely: "Probable : {changes}",
      certain: "Certain : {changes}",
      blank: "vide",
    },
    findingPlaces: {
      vine: "{block} rang {row} cep {vine}",
      row: "{block} rang {row}",
      block: "{block}",
      sheetRow: "Feuille {sheet} ligne {sheetRow}",
      sideCordon: "cordon {cordon} ({side})",
      cordon: "cordon {cordon}",
      side: "côté {side}",
      whole: "{place} : {sentence}",
      joined: "{place}, {detail}",
      otherSheet: " {name}",
    },
    severity: { wrong: "faux", ask: "à voir", note: "à noter" },
    action: {
      fillIn: "À remplir",
      correct: "À corriger dans la feuille",
      lookAtVine: "Regarder le cep",
      askCounter: "Demander à qui a compté",
      mendRegister: "Corriger le registre",
      mendSheet: "Corriger le tableau",
    },
  },
  functions: {
    budget: {
      nodebudget: {
        description:
          "Yeux à laisser sur un cep par taille équilibrée, d'après le poids du bois d'un an taillé et une formule comme 30+10. Sans arrondi.",
        parameters: {
          prunings: {
            label: "bois taillé",
            description:
              "Poids du bois d'un an taillé sur le cep, livres ou kilogrammes ; une colonne donne un budget par cep.",
          },
          formula: {
            label: "formule",
            description: "Yeux pour la première livre (454 g) et pour chaque livre de plus, comme « 30+10 ».",
          },
          least: {
            label: "minimum",
            description: "Nombre minimal d'yeux gardés par cep ; sans limite si omis.",
          },
          most: {
            label: "maximum",
            description: "Nombre maximal d'yeux gardés par cep ; sans limite si omis.",
          },
          below_one_pound: {
            label: "moins d'une livre",
            description:
              "Pour moins d'une livre, où aucune source ne tranche : refuse (pas de réponse), flat (le premier nombre de la formule) ou pro rata (ce nombre fois les livres). refuse si omis.",
          },
        },
        results: { nodes: "yeux" },
      },
      nodesbylength: {
        description:
          "Yeux à laisser sur une longueur de cordon ou de rang à densité fixe ; pour les ceps dont le bois n'est pas pesé. Sans arrondi.",
        parameters: {
          length: {
            label: "longueur",
            description: "Longueur de cordon, ou de rang occupée par le cep, pieds ou mètres.",
          },
          density: { label: "densité", description: "Yeux par pied ou par mètre." },
        },
        results: { nodes: "yeux" },
      },
      spurfit: {
        description:
          "Compare un budget d'yeux aux coursons que le cordon peut porter : coursons voulus, coursons possibles et yeux sans place.",
        parameters: {
          nodes: { label: "yeux", description: "Budget d'yeux du cep." },
          length: { label: "longueur", description: "Longueur d'un cordon, pieds ou mètres." },
          spacing: { label: "écart", description: "Cordon nécessaire par courson, pouces ou centimètres." },
          cordons: { label: "cordons", description: "Cordons de cette longueur sur le cep : 1 si omis." },
        },
        results: {
          spursWanted: "coursons voulus",
          spursThatFit: "coursons possibles",
          nodesShort: "yeux sans place",
        },
      },
    },
    callRefusals: {
      callRefusals: {
        missing: "{argument} manque : on attend {expected}.",
        isText: "{argument} est le texte « {value} »{place} : on attend {expected}.",
        isBoolean: "{argument} vaut {value}{place} : on attend {expected}.",
        isError: "{argument} est l'erreur {value}{place} : corrigez d'abord cette cellule.",
        outOfLimits: "{argument} vaut {value}{place} : on attend {expected}.",
        notAChoice: "{argument} est « {value} » : on attend l'un de {choices}.",
        oneCellOnly:
          "{argument} est une plage de {rows} lignes et {columns} colonnes : on attend une cellule.",
        oneColumnOnly: "{argument} est une plage de {columns} colonnes : on attend une colonne.",
        ragged:
          "{argument} a des lignes de longueur différente ({rowLengths} {rowLengths:cellule|cellules}) : on attend un rectangle.",
        differentLengths:
          "{argument} a {rows} lignes mais {other} en a {otherRows} : on attend des colonnes de même longueur.",
        noNumbers: "{argument} ne contient aucun nombre : on en attend au moins un.",
        notATable:
          "{argument} n'est pas une plage avec ligne d'en-tête : sélectionnez le tableau avec ses en-têtes, comme {suggestion}.",
        blanksAsZero:
          "{argument} est arrivé avec 0 dans la colonne « {heading} », comme certaines versions d'Excel transmettent les cellules vides : un comptage vide ne se distingue pas de 0 ici ; utilisez le volet.",
        notOurTable:
          "{argument} a trop peu d'en-têtes connus : sélectionnez le tableau avec ses en-têtes, comme {suggestion}.",
        noSuchColumn: "{argument} n'a pas de colonne « {column} ».",
        wrongCell:
          "{argument} : « {value} » dans la colonne « {column} »{place} n'est pas utilisable ; lancez la vérification pour voir pourquoi.",
        tooManyArguments: "CORDON.{name} prend au plus {most} arguments, mais {given} sont donnés.",
      },
      expected: {
        number: "un nombre de {least} à {most} {unit}",
        numberFrom: "un nombre d'au moins {least} {unit}",
        numberAboveZero: "un nombre supérieur à zéro, au plus {most} {unit}",
        numberAboveZeroOnly: "un nombre supérieur à zéro {unit}",
        whole: "un nombre entier de {least} à {most}",
        wholeFrom: "un nombre entier d'au moins {least}",
        share: "une part de {least} à {most} (35 % vaut 0,35)",
        text: "un texte",
        choice: "l'un de {choices}",
        table: "une plage avec sa ligne d'en-tête",
      },
      wholeTable: "{table}[#Tout]",
      placeInRange: " à la ligne {row} de la plage",
    },
    checks: {
      noFindings: "Aucun constat ; lignes lues : {rows}.",
      checkcounts: {
        description:
          "Ce qui manque, est impossible ou improbable dans un tableau de comptages : une ligne par constat, avec sa ligne dans la plage, sa colonne, sa certitude et une phrase.",
        parameters: {
          counts: {
            label: "comptages",
            description:
              "Le tableau avec sa ligne d'en-tête, comme Cordons[#Tout] ; un tableau Ceps ou Coupes de bourgeons convient aussi.",
          },
          settings: {
            label: "réglages",
            description: "Le tableau Réglages, pour les seuils de la ferme ; ceux d'origine si omis.",
          },
          blocks: {
            label: "parcelles",
            description: "Le tableau Parcelles, pour voir parcelles inconnues et écartements.",
          },
          vines: { label: "ceps", description: "Le tableau Ceps, pour voir les ceps hors registre." },
          unit: {
            label: "unité",
            description:
              "US ou metric, pour les colonnes dont l'en-tête ne nomme pas d'unité. Si omis : celle du tableau Réglages, sinon des autres en-têtes.",
          },
        },
        results: { row: "Ligne de la plage", column: "Colonne", severity: "Certitude", finding: "Constat" },
      },
    },
    choice: {
      settings: {
        label: "réglages",
        description: "Le tableau Réglages, pour les poids et repères de la ferme ; ceux d'origine si omis.",
      },
      blocks: {
        label: "parcelles",
        description:
          "Le tableau Parcelles, pour la conduite et l'écartement des ceps ; sans lui la position des coursons ne compte pas.",
      },
      cordonscore: {
        description:
          "Note de chaque cordon candidat entre 0 et 1 et ses parts. Ce qui n'a pas été compté est laissé de côté, jamais pris pour zéro ; bas et haut montrent ce qui reste ouvert.",
        parameters: {
          training: {
            label: "conduite",
            description:
              "highWire (fil haut), upright (pousses dressées) ou divided (feuillage divisé), si le tableau Parcelles manque ou ne le dit pas.",
          },
        },
        results: {
          score: "Note",
          low: "Bas",
          high: "Haut",
          spurs: "Coursons",
          stretch: "Plus long vide",
          placing: "Orientation",
          soundness: "État",
          diameter: "Diamètre",
        },
      },
      choosecordons: {
        description:
          "Quel cordon reste de chaque côté de chaque cep : reste, part ou demander, à côté de chaque ligne du tableau Cordons, avec sa note et la raison. Une proposition ; une personne décide.",
        parameters: {
          vines: {
            label: "ceps",
            description: "Le tableau Ceps, pour la situation du cep et ses troncs vivants.",
          },
        },
        results: { verdict: "Décision", score: "Note", reason: "Motif" },
      },
    },
    cordons: {
      cordonRows: {
        label: "cordons",
        description:
          "Le tableau Cordons avec sa ligne d'en-tête, comme Cordons[#Tout] ; les colonnes sont trouvées par leur en-tête.",
      },
      gapsbyrow: {
        description:
          "Emplacements de courson, coursons vivants et vides par parcelle et rang, d'après le tableau Cordons.",
        parameters: {
          which: {
            label: "lesquels",
            description:
              "all (si omis) : toutes les lignes. staying : cordons dont le Choix fixé dit reste. chosen : ceux qui restent selon le choix des cordons, comme dans le volet ; ceux qui seront coupés ne comptent pas.",
          },
          settings: {
            label: "réglages",
            description: "Le tableau Réglages, pour chosen ; les chiffres d'origine si omis.",
          },
          blocks: { label: "parcelles", description: "Le tableau Parcelles, pour chosen." },
          vines: { label: "ceps", description: "Le tableau Ceps, pour chosen." },
        },
        results: { share: "Part de vides" },
      },
    },
    crop: {
      shoots: {
        description:
          "Pousses à attendre sur un cep d'après les coursons laissés : celles des yeux comptés et celles de la base des coursons. Sans arrondi.",
        parameters: {
          spurs: { label: "coursons", description: "Coursons vivants laissés sur le cep." },
          budbreak: {
            label: "débourrement",
            description: "Part des yeux comptés qui donnent une pousse, de 0 à 1.",
          },
          basal_shoots: {
            label: "pousses de base",
            description: "Pousses issues d'yeux non comptés, par courson : 0 si omis.",
          },
        },
        results: { shoots: "pousses" },
      },
      clusters: {
        description: "Grappes à attendre sur un cep d'après ses pousses. Sans arrondi.",
        parameters: {
          shoots: { label: "pousses", description: "Pousses du cep." },
          clusters_per_shoot: {
            label: "grappes par pousse",
            description: "Grappes par pousse en moyenne ; environ deux chez un hybride fertile est courant.",
          },
        },
        results: { clusters: "grappes" },
      },
      vinecrop: {
        description: "Récolte d'un cep : ses grappes fois le poids d'une grappe, en livres ou kilogrammes.",
        parameters: { clusters: { label: "grappes", description: "Grappes du cep." } },
        results: { crop: "récolte par cep" },
      },
      vinedensity: {
        description:
          "Ceps par acre ou hectare d'après les écartements, comme si tout était planté. Sans arrondi : 9 sur 6 pieds est publié 807 et vaut 806,67.",
        parameters: {
          row_spacing: { label: "entre rangs", description: "Distance entre rangs, pieds ou mètres." },
          vine_spacing: {
            label: "entre ceps",
            description: "Distance entre ceps dans le rang, pieds ou mètres.",
          },
        },
        results: { density: "ceps par acre ou hectare" },
      },
      blockcrop: {
        description:
          "Récolte par acre (tonnes courtes) ou hectare (tonnes) d'après la récolte d'un cep en production, les ceps plantés et la part manquante. Rien n'est arrondi en route.",
        parameters: {
          vine_crop: {
            label: "récolte par cep",
            description: "Récolte d'un cep en production, livres ou kilogrammes.",
          },
          density: { label: "densité", description: "Ceps plantés par acre ou hectare." },
          missing_share: {
            label: "part manquante",
            description:
              "Part des ceps plantés manquants ou sans récolte : 0 si omis. À omettre si les manquants ont été comptés comme ceps sans grappes.",
          },
        },
        results: { crop: "récolte par acre ou hectare" },
      },
      cropload: {
        description:
          "Charge (indice de Ravaz) : poids de la récolte sur le poids du bois taillé l'hiver suivant, des mêmes ceps et dans la même unité.",
        parameters: {
          crop: { label: "récolte", description: "Poids de la récolte." },
          prunings: {
            label: "bois taillé",
            description: "Poids du bois d'un an taillé l'hiver suivant, dans la même unité.",
          },
        },
        results: { cropLoad: "charge" },
      },
      shootstoremove: {
        description:
          "Pousses à ôter d'un cep au printemps, et à garder, selon sa longueur de fil ; avec des minutes, aussi les heures d'une personne. Les pousses gardées sont arrondies vers le bas.",
        parameters: {
          shoots: {
            label: "pousses",
            description: "Pousses sur le cep, ou leur moyenne ; une colonne donne une réponse par cep.",
          },
          length: {
            label: "longueur",
            description: "Fil que le cep occupe, pieds ou mètres : sa distance sur le rang.",
          },
          density: {
            label: "densité",
            description:
              "Pousses voulues par pied ou mètre : 6 par pied (Wisconsin 2015), 15 par mètre (Michigan).",
          },
          vines: { label: "ceps", description: "Ceps éclaircis comme lui : 1 si omis." },
          minutes: {
            label: "minutes",
            description: "Minutes qu'il faut à une personne pour un cep ; sans elles, pas d'heures.",
          },
        },
        results: { remove: "enlever", keep: "garder", hours: "heures" },
      },
      clusterstoremove: {
        description:
          "Grappes à enlever par cep, et à garder, pour que la parcelle ne dépasse pas une récolte visée. Les grappes gardées sont arrondies vers le bas.",
        parameters: {
          target: {
            label: "objectif",
            description: "Récolte maximale voulue, tonnes courtes par acre ou tonnes par hectare.",
          },
          density: {
            label: "densité",
            description: "Ceps en production par acre ou hectare ; ôtez d'abord les manquants.",
          },
          counted: {
            label: "comptées",
            description: "Grappes sur le cep ; une colonne donne une réponse par cep.",
          },
        },
        results: { remove: "enlever", keep: "garder" },
      },
    },
    formulaProblems: {
      empty: "La formule est vide : on attend quelque chose comme {example}.",
      unknownFunction:
        "Il n'y a pas de fonction {name} (position {position}). Vouliez-vous dire {suggestion} ?",
      otherFunction:
        "{name} à la position {position} n'est pas une fonction CORDON, et seules celles-ci sont possibles ici.",
      noSheet:
        "{name} à la position {position} renvoie à une feuille, et il n'y en a pas ici : écrivez les chiffres, une colonne comme {1;2;3}.",
      tooLong: "La formule dépasse {most} caractères, ce qu'aucun tableur n'accepte.",
      tooDeep:
        "À la position {position}, plus de {most} parenthèses, appels ou signes sont imbriqués, ce qu'aucun tableur n'accepte.",
      tooLarge: "Le résultat est trop grand pour un nombre de tableur.",
      unclosedParenthesis: "La parenthèse ouverte à la position {position} n'est pas fermée.",
      unclosedBrace: "L'accolade ouverte à la position {position} n'est pas fermée.",
      unclosedText: "Le texte qui commence à la position {position} n'a pas de guillemet fermant.",
      missingParenthesis: "{name} demande une parenthèse ouvrante, à la position {position}.",
      unexpected: "« {found} » à la position {position} n'est pas attendu là.",
      unexpectedEnd: "La formule s'arrête à la position {position} où une valeur est attendue.",
      raggedArray: "Les lignes de la liste à la position {position} n'ont pas la même longueur.",
      notANumber:
        "On ne peut pas calculer avec « {value} » : un nombre est attendu des deux côtés de {operator}.",
      divisionByZero: "Un nombre est divisé par zéro.",
      differentSizes:
        "Des listes de {left} et {right} cellules ne peuvent pas être jointes par {operator} : même taille attendue.",
    },
    injury: {
      budinjury: {
        description:
          "Part de bourgeons primaires morts dans un échantillon de bourgeons coupés, avec la fourchette qui contient la vraie part de la parcelle.",
        parameters: {
          dead: { label: "bourgeons morts", description: "Yeux au bourgeon primaire mort." },
          cut: {
            label: "coupés",
            description: "Tous les yeux coupés ; 50 à 100 par parcelle, sur beaucoup de sarments.",
          },
          method: {
            label: "méthode",
            description: "Wilson (si omis) ou Clopper-Pearson, plus large et jamais trop sûr.",
          },
        },
        results: { share: "part morte" },
      },
      cropafterfrost: {
        description:
          "Part d'une récolte pleine qui reste après un gel de printemps, d'après les yeux comptés selon ce qui y vit encore : un primaire porte 1, un secondaire sa valeur, un tertiaire et un œil sans rameau 0 (Howell, Michigan State).",
        parameters: {
          primaries: { label: "primaires vivants", description: "Yeux au rameau primaire vivant." },
          secondaries: {
            label: "secondaires vivants",
            description: "Yeux au primaire mort et au secondaire vivant.",
          },
          tertiaries: { label: "tertiaires vivants", description: "Yeux où seul le tertiaire vit." },
          shootless: { label: "sans rameau", description: "Yeux sans rameau vivant." },
          secondary_worth: {
            label: "valeur d'un secondaire",
            description:
              "Récolte d'un secondaire sur celle d'un primaire, de 0 à 1 ; 0,35 si omis, que la source ne donne que pour Concord et Niagara. Norton, environ 0.",
          },
        },
        results: { share: "part de récolte" },
      },
      nodesafterinjury: {
        description:
          "Yeux à laisser pour compenser les dégâts d'hiver, selon une règle nommée. Les règles divergent ; où la source se tait, la réponse est #N/A avec une phrase. Au-dessus de la moitié morte, regardez d'abord les sarments et les troncs.",
        parameters: {
          nodes: { label: "yeux", description: "Budget d'yeux du cep indemne." },
          dead_share: {
            label: "part morte",
            description: "Part de bourgeons primaires morts, de 0 à 1, comme la donne BUDINJURY.",
          },
          rule: {
            label: "règle",
            description: "Cornell 2014, MSU 2002, Purdue, Northern Grapes 2014 ou compensation.",
          },
        },
        results: { nodes: "yeux" },
      },
    },
    outlook: {
      outlook: {
        description:
          "Ce que la taille laisse, par parcelle et par étape : grappes par cep et récolte d'un cep, d'une surface et de la parcelle, basse, probable et haute, avec la plus grande source de doute.",
        parameters: {
          vines: {
            label: "ceps",
            description:
              "Le tableau Ceps avec ses en-têtes : situation, et pousses ou grappes où elles ont été comptées.",
          },
          blocks: {
            label: "parcelles",
            description:
              "Le tableau Parcelles : écartements, ceps, poids de grappe, grappes par pousse, débourrement.",
          },
          settings: {
            label: "réglages",
            description:
              "Le tableau Réglages, pour la confiance et la variation entre années ; ceux d'origine si omis.",
          },
          cordons: {
            label: "cordons",
            description:
              "Le tableau Cordons, pour les yeux des cordons qui restent ; sans lui pas d'étape d'hiver.",
          },
          bud_cuts: {
            label: "coupes_de_bourgeons",
            description:
              "Le tableau Coupes de bourgeons, pour les dégâts d'hiver ; sans lui tout œil est tenu pour vivant.",
          },
          harvest: {
            label: "récolte",
            description: "Le tableau Récolte, pour le poids de grappe en phase de pause de cette saison.",
          },
          unit: {
            label: "unité",
            description:
              "US ou metric, pour la réponse et les colonnes dont l'en-tête ne nomme pas d'unité. Si omis : celle du tableau Réglages, sinon des autres en-têtes.",
          },
        },
        results: {
          block: "Parcelle",
          stage: "Étape",
          figure: "Chiffre",
          low: "Bas",
          likely: "Probable",
          high: "Haut",
          unit: "Unité",
          says: "Sur quoi il repose",
        },
      },
      outlookLines: {
        figures: {
          clusters: "grappes par cep",
          perVine: "récolte d'un cep",
          perArea: "récolte d'une surface",
          block: "récolte de la parcelle",
        },
        doubt: "Plus grand doute : {source}, {percent} %.",
      },
    },
    renewal: {
      renewalLines: {
        none: "Aucun cep n'a besoin d'un nouveau tronc.",
        notCounted: "Ceps dont les troncs vivants n'ont pas été comptés : {vines}.",
      },
      youngvine: {
        description:
          "Ce que les publications laissent sur un cep dans une de ses quatre premières années : pousses, grappes, cordons et leur allongement, coursons, yeux. Ce qu'aucune vue ne donne n'y est pas ; après la quatrième la réponse est #N/A.",
        parameters: {
          planted: {
            label: "année de plantation",
            description: "Année où le cep a été planté, comme 2024 ; c'est la première année de croissance.",
          },
          season: { label: "saison", description: "Année où finit cet hiver et où l'on récolte ensuite." },
          training: {
            label: "conduite",
            description:
              "Système de conduite : highWire, upright ou divided ; highWire si omis. Seule la quatrième année en dépend.",
          },
        },
        results: { what: "Quoi", least: "Moins", most: "Plus", source: "Source" },
      },
      trunkstorenew: {
        description:
          "Ceps qui ont besoin d'un nouveau tronc, les plus urgents d'abord : troncs vivants face au nombre voulu, troncs touchés et morts, et que faire.",
        parameters: {
          vines: {
            label: "ceps",
            description: "Le tableau Ceps avec sa ligne d'en-tête, comme Ceps[#Tout].",
          },
          settings: {
            label: "réglages",
            description: "Le tableau Réglages, pour le nombre de troncs voulu ; celui d'origine si omis.",
          },
          cordons: { label: "cordons", description: "Le tableau Cordons, pour l'état de chaque tronc." },
        },
        results: {
          order: "Ordre",
          block: "Parcelle",
          row: "Rang",
          vine: "Cep",
          liveTrunks: "Troncs vivants",
          bringUp: "Troncs à élever",
          what: "Que faire",
        },
      },
    },
    sampling: {
      vinestocount: {
        description:
          "Nombre minimal de ceps à compter pour connaître la moyenne d'une parcelle à une marge près, par le t de Student et pour une parcelle de cette taille.",
        parameters: {
          cv: {
            label: "cv",
            description:
              "Variation entre ceps : écart type sur moyenne, d'un comptage pilote ; 0,3 à 0,45 est courant.",
          },
          margin: { label: "marge", description: "Marge voulue, en part de la moyenne : 0,1 pour 10 %." },
          vines: {
            label: "ceps",
            description: "Ceps en production de la parcelle ; à omettre si elle est grande.",
          },
        },
        results: { vines: "ceps à compter" },
      },
      blockmean: {
        description:
          "Moyenne d'une parcelle d'après des comptages sur un échantillon aléatoire de ceps, avec la fourchette qui contient la vraie moyenne et le nombre de ceps comptés.",
        parameters: {
          counts: {
            label: "comptages",
            description: "Un comptage par cep ; les cellules vides sont des ceps non comptés.",
          },
          vines: {
            label: "ceps",
            description: "Ceps en production de la parcelle ; à omettre si elle est grande.",
          },
          zeros: {
            label: "zéros",
            description:
              "count (si omis) : un 0 est un comptage nul. skip : un 0 est un cep non compté ; à choisir où les cellules vides arrivent comme 0.",
          },
        },
        results: { mean: "moyenne", n: "ceps comptés" },
      },
    },
    shared: {
      unit: {
        label: "unité",
        description:
          "US (livres, pieds, pouces, acres) ou metric (kilogrammes, mètres, centimètres, hectares), pour ce qui entre et ce qui sort. US si omis.",
      },
      confidence: {
        label: "confiance",
        description: "À quelle fréquence la fourchette doit contenir la vraie valeur, en part : 0,9 si omis.",
      },
      low: "bas",
      high: "haut",
      nodesPerSpur: {
        label: "yeux par courson",
        description:
          "Yeux comptés laissés par courson ; ceux de la base ne comptent pas. Deux est l'usage courant.",
      },
      clusterWeight: {
        label: "poids de grappe",
        description: "Poids moyen d'une grappe mûre, livres ou kilogrammes.",
      },
    },
    units: {
      unitNames: {
        perLength: { US: "par pied", metric: "par mètre" },
        perMass: { US: "par livre", metric: "par kilo" },
        vinesPerArea: { US: "ceps par acre", metric: "ceps par hectare" },
        cropPerArea: { US: "tonnes courtes par acre", metric: "tonnes par hectare" },
      },
    },
    work: {
      pruninghours: {
        description: "Heures de travail et journées d'équipe pour tailler un nombre de ceps.",
        parameters: {
          vines: { label: "ceps", description: "Ceps à tailler." },
          minutes: { label: "minutes", description: "Minutes nécessaires à une personne par cep." },
          crew: { label: "équipe", description: "Personnes : 1 si omis." },
          hours_a_day: { label: "heures par jour", description: "Heures de travail par jour : 8 si omis." },
        },
        results: { hours: "heures", crewDays: "journées d'équipe" },
      },
      version: {
        description:
          "Version du complément qui calcule ce classeur ; s'il affiche #NOM? le complément est absent.",
        results: { version: "version" },
      },
    },
  },
  gapPivot: {
    countsSheet: "Relevé des vides",
    countsTitle: "Vides, cordon par cordon",
    pivotSheet: "Vides croisés",
    pivotTitle: "Tableau croisé des vides par parcelle et rang",
    pivotNote:
      "Disposez-le à votre gré : il sera actualisé sans changer sa mise en page. La part est la moyenne des cordons.",
    summaryTitle:
      "Vides par parcelle et rang (tableau simple : pas de tableaux croisés ici ; dans Excel, le même bouton en crée un)",
    sumPositions: "Tous les emplacements",
    sumLiveSpurs: "Tous les coursons vivants",
    sumGaps: "Tous les vides",
    meanShare: "Part moyenne de vides",
  },
  shootThinning: {
    thin: "Éclaircissez à {keep} pousses par cep : {counted} ont été comptées en moyenne, {remove} sont de trop ; environ {hours} h d'une personne pour la parcelle.",
    none: "Pas de pousses à éclaircir : {counted} ont été comptées par cep en moyenne, pas plus que n'en porte son fil.",
  },
  blockFigures: {
    figures: "Chiffres de cette parcelle : {figures}.",
    figure: "{figure} {value} ({from})",
    block: "feuille Parcelles",
    settings: "Réglages",
    settingsSource: "Réglages, {source}",
    published: "{grape} : {source}",
    derived: "tiré de {source}",
    noneOfKind:
      "Aucune valeur publiée d'une pousse secondaire n'a été vue pour {kind} ; les Réglages valent.",
  },
  outlook: {
    stageNames: {
      winter: "Hiver : yeux laissés",
      frost: "Après le gel : yeux comptés",
      shoots: "Pousses comptées",
      clusters: "Grappes comptées",
      lagPhase: "Phase de pause : grappes pesées",
      asCounted: "Hiver : yeux tels que comptés",
      harvest: "Récolte",
    },
    spreadSources: {
      vines: "quels ceps ont été comptés",
      buds: "quels bourgeons ont été coupés",
      budbreak: "le débourrement de l'année",
      clustersPerShoot: "les grappes par pousse de l'année",
      clusterWeight: "le poids d'une grappe",
      lagMultiplier: "la croissance depuis la phase de pause",
      missing: "les ceps manquants",
    },
    nextSteps: {
      none: "{minutes} minutes de comptage ou de pesée resserreraient la fourchette de moins de {percent} % : attendre l'étape suivante.",
      vines:
        "Compter {more} {more:cep|ceps} de plus ({minutes} min) : de {low} à {high}, {percent} % de part et d'autre.",
      canes:
        "Couper les bourgeons de {more} sarments de plus ({minutes} min) : de {low} à {high}, {percent} % de part et d'autre.",
      clusters:
        "Peser {more} {more:grappe|grappes} de plus ({minutes} min) : de {low} à {high}, {percent} % de part et d'autre.",
    },
    outlookLacks: {
      frostCounts:
        "Les yeux comptés après le gel demandent trois comptes : primaires vivants, secondaires seuls et sans pousse ; avec moins, aucune part de récolte n'est calculée.",
      vinesOfBlock:
        "Le nombre de ceps de la parcelle n'est pas connu : remplissez Ceps dans la feuille Parcelles, ou listez-les dans la feuille Ceps.",
      clusterWeight:
        "Pas de poids de grappe : remplissez la feuille Parcelles ; rien n'a été publié pour la plupart des cépages rustiques.",
      countedVines:
        "Moins de deux ceps ont des comptages : décidez de leurs cordons, ou comptez pousses ou grappes sur un échantillon.",
      decidedVines:
        "Les cordons de moins de deux ceps sont décidés, les yeux laissés ne sont donc pas connus.",
      budCuts:
        "Aucun bourgeon n'a été coupé ici : tous les yeux sont tenus pour vivants ; après un hiver dur le chiffre est trop haut.",
      secondaries:
        "Les secondaires vivants des coupes conviennent des deux façons, de tous les yeux et seulement sous des primaires morts : le réglage Secondaries are written dit laquelle vaut.",
      register: "La feuille Ceps ne liste aucun cep de cette parcelle : aucun n'est tenu pour manquant.",
      usualFigures:
        "Le débourrement ou les grappes par rameau manquent dans la feuille Parcelles : les chiffres usuels des Réglages en tiennent lieu, et la fourchette comprend aussi l'écart entre domaines.",
      fewVines:
        "Moins de cinq ceps portent un comptage : l'écart entre ceps est pris dans les Réglages, car si peu de ceps ne le montrent pas.",
      rowsOfVines:
        "Les rangs ne peuvent servir de strates car la feuille Ceps ne liste pas tous les ceps : ils sont tenus pour tirés au hasard.",
    },
    frostCounted:
      "Après le gel, {primaries} yeux sur {nodes} ont une pousse primaire vivante et {secondaries} seulement une secondaire, qui vaut {worth} : il reste {share} d'une récolte (Howell, Michigan State). Les pousses basales ne sont pas dans cette règle.",
    youngBlock: {
      bare: "Année {leaf} d'une jeune parcelle : au plus {clusters} {clusters:grappe|grappes} par cep.",
      carries:
        "Année {leaf} d'une jeune parcelle : au plus {clusters} {clusters:grappe|grappes} par cep ; elle en porte environ {likely}.",
    },
    otherSecondaries:
      "Lus de l'autre façon, les secondaires donneraient {other} grappes par cep, pas {clusters}.",
    thinningGroups: ["ceps légers", "ceps moyens", "ceps chargés"],
    cropLoadRanges: {
      "single canopy": "feuillage simple",
      "divided canopy": "feuillage divisé",
      hybrids: "hybrides",
      Concord: "Concord",
    },
    cropLoadVerdicts: {
      below:
        "Le rapport de charge {load} est sous {low} à {high} ({range}) : les ceps pourraient porter plus.",
      within: "Le rapport de charge {load} est dans {low} à {high} ({range}).",
      above:
        "Le rapport de charge {load} est au-dessus de {low} à {high} ({range}) : trop de charge pour la taille des ceps.",
    },
    cropLoadPairs: {
      following:
        "Récolte de {year} sur les bois de taille de l'hiver suivant, le couple des fourchettes publiées.",
      before:
        "Récolte probable de {year} sur les bois de taille de l'hiver précédent, qui n'est pas le couple des fourchettes publiées.",
    },
    cropLoadUnsure: "La fourchette de la récolte dépasse une limite, cela peut donc changer.",
    missingTwice:
      "Ne comptez que les ceps en production. Un cep manquant compté 0 puis retiré encore est perdu deux fois : avec {percent} % de manquants la récolte sort {percent} % trop basse.",
    handbookSamples: {
      wsu2006:
        "WSU 2006 : {vines} {vines:cep|ceps} pour 5 % ; c'est l'échantillon pour une part de moitié, pas pour une moyenne.",
      iowa2011:
        "Iowa State 2011 : toutes les grappes de {vines} {vines:cep|ceps} et {clusters} pesées, pour 15 % ; un peu juste selon la formule.",
      iowa2013: "Iowa State 2013 : {clusters} grappes pesées en phase de pause.",
    },
    farmFigures: {
      clustersPerShoot: "Grappes par pousse",
      budbreak: "Débourrement",
      clusterWeight: "Poids de grappe",
      lagMultiplier: "Multiplicateur de la phase de pause",
    },
    ownHarvests: {
      figure:
        "Vos propres récoltes, {years} de {first} à {last} : {least} à {most} {unit}, {mean} en moyenne.",
      allAbove:
        "Toutes les récoltes notées ({least} à {most} {unit}) dépassent cette fourchette de {low} à {high} : regardez les nœuds laissés, les grappes par rameau et le poids des grappes avant de vous y fier.",
      allBelow:
        "Toutes les récoltes notées ({least} à {most} {unit}) restent sous cette fourchette de {low} à {high} : regardez les nœuds laissés, les bourgeons morts, les grappes par rameau et le poids des grappes avant de vous y fier.",
      leftOut:
        "Aucune récolte notée ({least} à {most} {unit}) n'est dans cette fourchette de {low} à {high} ; certaines sont au-dessus, les autres au-dessous.",
      meanAbove:
        "Les récoltes notées font {mean} {unit} en moyenne, au-dessus de cette fourchette de {low} à {high} ; cette année serait petite.",
      meanBelow:
        "Les récoltes notées font {mean} {unit} en moyenne, au-dessous de cette fourchette de {low} à {high} ; cette année serait grande.",
    },
    farmFigureWeight:
      "{years} {years:année|années} à vous comptent {percent} %, le chiffre usuel {usual} le reste.",
  },
  outlookRefusals: {
    tooFewClusters:
      "{value} grappes pesées sont trop peu pour dire la sûreté de leur poids moyen ; il en faut au moins {needed}.",
    unknownCropLoadRange:
      "« {value} » n'est pas une fourchette connue de rapport de charge ; sont connues : {known}.",
    tooFewRows:
      "{value} {value:rang a été compté|rangs ont été comptés} deux hivers : trop peu pour dire à quelle vitesse se perdent les coursons ; il en faut au moins {needed}.",
    rowSpursAbovePositions:
      "Rang {row}, {year} : {value} coursons vivants sur {most} {most:emplacement|emplacements}, c'est impossible.",
  },
  overrule: {
    page: {
      heading: "Décider autrement",
      reason: "Raison, pour la remarque",
      noReason: "Notez d'abord pourquoi : la raison va dans la remarque à côté du cordon.",
      noNote:
        "La feuille {sheet} n'a pas de colonne Remarque, où va la raison. Prochaine étape : écrivez cet en-tête à côté du tableau, puis décidez encore.",
      takeBack: "Annuler : {outcome}",
      partlyBack:
        "Cellules qui contiennent de nouveau ce qu'elles avaient : {cells} ; laissées, car quelqu'un les a changées depuis : {left}. Prochaine étape : décidez encore.",
      takenBack: "Annulé : les cellules contiennent ce qu'elles avaient avant.",
      progress: "{block} : {decided} sur {vines} {vines:cep|ceps} {decided:décidé|décidés}",
      whatTurns: "Qu'est-ce qui le changerait ?",
      nothingTurns: "Aucun comptage à cinq près et aucun poids seul ne le changerait.",
      liveSpurs: "{side} {cordon} : {to} coursons vivants au lieu de {from}.",
      longestGap: "{side} {cordon} : un plus long vide de {to} au lieu de {from}.",
      figure: "Réglages, {figure} : {to} au lieu de {from}.",
      risk: "Combien dépend du comptage ?",
      riskFound:
        "{block} : si chaque comptage se trompait d'un, un autre cordon resterait sur {flips} des ceps ; sur {decided} de ceux décidés sans question ({of} {of:cep|ceps}, recomptés {draws} fois).",
    },
  },
  picture: {
    title: "Dessin du cep à l'échelle.",
    cordon:
      "{side} {cordon} : {length}, {spurs} coursons vivants, plus long vide {gap}, tronc {trunk}, {verdict}.",
    key: "Dessiné d'après les comptages : plein reste, tirets part, pointillé à voir ; les traits sont des coursons vivants, les hachures le plus long vide (la feuille ne dit pas où).",
    unknown: "non compté",
  },
  refusals: {
    tooManyWords:
      "La feuille \"{sheet}\" contient plus de {most} noms différents ; aucun domaine n'a autant de parcelles, de cordons, de bois et de compteurs. Voir si des notes ou des nombres se trouvent sous l'en-tête d'une telle colonne.",
    outside: "{argument} doit être compris entre {least} et {most} {unit}, mais vaut {value}.",
    notWhole: "{argument} doit être un nombre entier de {least} à {most}, mais vaut {value}.",
    formulaNotBalanced:
      "La formule doit se lire comme 30+10 (yeux pour la première livre, 0,45 kg, puis par livre de plus), mais vaut « {value} ».",
    belowOnePound:
      "Le bois de taille pèse {value} lb ({kilograms} kg) : aucune source vue ne dit combien d'yeux laisser sous une livre (0,45 kg) ; choisissez fixe ou proportionnel pour un chiffre à nous.",
    leastAboveMost: "Le minimum d'yeux ({least}) dépasse le maximum ({most}).",
    noPrunings: "Le bois de taille pèse zéro, donc pas de rapport de charge : pesez le bois des mêmes ceps.",
    noBudsCut: "Aucun bourgeon n'a été coupé, on ne peut donc rien dire des dégâts.",
    unknownInjuryRule: "« {value} » n'est pas une règle de dégâts ; sont connues : {known}.",
    cornellAbove80:
      "{percent} % des bourgeons primaires sont morts : ce que dit Cornell 2014 au-dessus de 80 % n'a pas été vu, donc pas de chiffre ici.",
    msuBetween15And20:
      "{percent} % des bourgeons primaires sont morts : MSU 2002 couvre jusqu'à 15 % et dès 20 %, mais rien entre les deux.",
    msuAbove50:
      "{percent} % des bourgeons primaires sont morts : au-dessus de 50 % MSU 2002 ne donne pas de chiffre mais dit de n'ôter que le bois ingérable, d'attendre après le débourrement, puis de tailler légèrement aux yeux vivants voulus. Regardez d'abord les sarments et les troncs.",
    purdueTwoRows:
      "{percent} % des bourgeons primaires sont morts : le tableau de Purdue met cette part dans deux lignes, l'une donnant {first} yeux et l'autre {second} ; il ne dit pas laquelle vaut.",
    purdueAbove50:
      "{percent} % des bourgeons primaires sont morts : au-dessus de 50 % Purdue ne donne pas de chiffre mais demande une taille minimale. Regardez d'abord les sarments et les troncs.",
    northernGrapesNoNumber:
      "{percent} % des bourgeons primaires sont morts : au-dessus de 20 % Northern Grapes 2014 dit de laisser plus d'yeux, mais pas combien.",
    allDead: "Tous les bourgeons primaires sont morts : aucun nombre d'yeux ne le compense.",
    tooFewVines:
      "{value} ceps comptés sont trop peu pour dire la sûreté d'une moyenne ; il en faut au moins {needed}.",
    spursAbovePositions:
      "Parcelle {block}, rang {row}, cep {vine} : {value} coursons vivants sur {most} {most:emplacement|emplacements}, c'est impossible.",
    nothingToScore:
      "Rien de ce qui a été compté sur le cordon {cordon} ne peut être noté ; il faut au moins les coursons vivants et la longueur.",
    noVineSpacing:
      "La feuille Parcelles n'indique pas l'écartement des ceps, dont la règle par longueur a besoin.",
    youngVine:
      "Un cep dans l'année {year} de sa croissance ne reçoit pas d'yeux par la règle de sa parcelle : pour les années 1 à 3 aucune publication vue n'en donne, et en année 4 un cordon haut a 8 à 15 coursons de 2 yeux (NC State).",
    vineNotYoung:
      "En {season}, un cep planté en {planted} n'est pas dans une de ses quatre premières années, les seules que traitent les publications sur les jeunes ceps.",
    youngVineTraining:
      "La publication sur la quatrième année ne porte que sur les cordons hauts (NC State) : elle ne dit rien de cette conduite.",
    noVineWeighed: "Aucun cep de la parcelle n'a été pesé : la formule n'a pas de base.",
  },
  renewal: {
    trunkRenewal: {
      noTrunk:
        "Aucun tronc ne vit : garder environ cinq gourmands, pas plus gros qu'un petit doigt, et en former un.",
      lastTrunkHurt: "Le seul tronc vivant est touché : en élever {bringUp} de gourmands avant de le perdre.",
      oneTrunk: "Un seul tronc vivant : en élever {bringUp} de plus d'un gourmand.",
      everyTrunkHurt: "Les {live} troncs vivants sont touchés : en élever {bringUp} de gourmands.",
      hurtTrunk:
        "Troncs vivants : {live} ; touché : tronc {replace}. En élever {bringUp} et enlever le touché quand le nouveau tient.",
      belowWanted: "{live} troncs vivants, {wanted} voulus : en élever {bringUp} de gourmands.",
      due: "Le tronc {trunk} est là depuis {age} {age:an|ans} : gardez une pousse basse sur lui ou un gourmand à sa place, et enlevez-le quand celle-ci a 2 à 3 ans.",
      dueStands:
        "Le tronc {trunk} est là depuis {age} {age:an|ans} et un plus jeune est à sa place : enlevez-le quand celui-ci a 2 à 3 ans.",
      none: "Assez de troncs.",
      takeOut: "Enlever le tronc mort {takeOut}.",
    },
    cordonRenewal: {
      extend: "Allonger {cordon} de {length}, avec la partie épaisse d'un sarment à son bout.",
      replace:
        "Renouveler {cordon} ({triggers}) : coucher un sarment qui part plus près de la tête que la partie morte.",
      replaceLater:
        "Renouveler {cordon} ({triggers}) un autre hiver : aucun sarment près de sa tête ne peut être couché maintenant ; y garder un courson de renouvellement.",
      layOver:
        "{cordon} a une zone morte de {places} {places:place|places} : coucher un sarment par-dessus, depuis le dernier courson avant elle, à {from} {from:place|places} de la tête.",
      longerSpurs:
        "{cordon} : laisser le courson de chaque côté de son vide de {places} {places:place|places} (à {from} {from:place|places} de la tête) plus long d'un nœud, dans les nœuds du cep.",
      lowerSpurs:
        "{cordon} : ses coursons sont à {height} au-dessus ; rabattre chacun sur un rameau près du cordon.",
      wantedToKeep:
        "Le maintien de {cordon} dépend de ce qui n'a pas été compté : {count}. Un sarment de bois vivant plus près de la tête pourrait être couché sur sa zone morte.",
      wanted: "La façon de renouveler {cordon} dépend de ce qui n'a pas été compté : {counts}.",
    },
    renewalCounts: {
      gapFrom: "à quelle distance de la tête se trouve son plus long vide",
      canesNearHead: "les sarments près de sa tête",
    },
    renewalTriggers: {
      tooFewSpurs: "trop peu de coursons",
      deadArea: "une zone morte",
      poorSpurs: "coursons mal placés",
    },
    youngVine: {
      year: "Année {year} de ce cep.",
      noNodes: "Aucune publication vue ne donne d'yeux à laisser sur un cep de cette année.",
      figures: { between: "{least} à {most}", just: "{most}", atMost: "{most} au plus" },
      rules: {
        shoots: "pousses à garder, les deux meilleures menées au fil",
        clusters: "grappes de fleurs à laisser",
        cordons: "meilleures pousses qui deviennent les cordons",
        growOn: "part d'un sarment que l'on couche, la plus épaisse",
        shootsOfCordon: "on élève des pousses du cordon",
        spurs: "coursons à laisser sur un cordon",
        nodesASpur: "yeux par courson",
        nodesACordon: "yeux par cordon",
      },
      cards: {
        first: "année 1 : 3 à 6 pousses, sans grappes",
        second:
          "année 2 : les 2 meilleures pousses deviennent cordons, un demi-sarment au plus, {clusters} {clusters:grappe|grappes} au plus",
        third:
          "année 3 : pousses du cordon, on avance d'un demi-sarment au plus, {clusters} {clusters:grappe|grappes} au plus",
        fourth: "année 4 : 8 à 15 coursons par cordon, de 2 yeux",
        otherTraining: "année 4 : aucune règle vue pour cette conduite",
      },
    },
    caneWanted:
      "Sarment voulu : {least} à {most} d'épaisseur, assez épais sur {length} ; la moitié extérieure est mince et faible, donc remplir le fil par étapes.",
  },
  changes: {
    sheet: "Modifications",
    title: "En quoi cette copie diffère de {file}",
    where: "Feuille",
    cell: "Cellule",
    before: "Avant",
    after: "Après",
    sure: "Certitude",
    certain: "certain",
    likely: "probable",
  },
  resultSheets: {
    remarksLost:
      "Ne sont plus sur la feuille {sheet}, car ce à côté de quoi ils étaient écrits n'y est plus : {remarks}.",
    looksLost:
      "Les couleurs et les formats de {cells} ne sont plus sur la feuille {sheet}, car ce qui s'y trouvait n'y est plus.",
    notesLeft:
      "Cet Excel ne montre pas les notes aux compléments : des lignes de la feuille {sheet} ont bougé et ses notes sont restées dans les cellules où elles étaient.",
    choice: "Choix des cordons",
    work: "Ce qui se fait",
    choiceTitle: "Quel cordon reste de chaque côté, et pourquoi",
    cards: "Fiches d'équipe",
    cardsTitle: "Que faire sur chaque cep, dans l'ordre de marche",
    made: "Fait le {date}",
    decision: "Décision",
    score: "Note",
    reason: "Motif",
    sheetRow: "Ligne de la feuille",
    stays: "Ce qui reste",
    cuts: "Ce qu'on coupe",
    notes: "Attention",
    aboutTitle: "Résultats de Cordonbook",
    aboutSource: "De {files}",
    about: "À propos",
    what: "Quoi",
  },
  runLog: {
    sheet: "Journal",
    title: "Qui a lancé quoi et quand (activé et désactivé dans le volet)",
    when: "Quand",
    who: "Qui",
    what: "Quoi",
    result: "Résultat",
  },
  season: { seasonSheet: "Hivers" },
  seasonPage: {
    title: "Où en est la saison",
    reading: "Lecture des feuilles",
    sum: "{vines} {vines:cep|ceps} dans {blocks} {blocks:parcelle|parcelles}.",
    next: "Étape suivante",
    then: "Ensuite",
    picture: "Ceps de chaque parcelle, étape par étape",
    steps: {
      counted: "Comptés",
      checked: "Vérifiés",
      decided: "Décidés",
      printed: "Imprimés",
      pruned: "Taillés",
    },
    hours: "reste {hours} h",
    stopped: "{wrong} {wrong:cellule|cellules} à corriger",
    share: "{done} sur {vines}",
    open: {
      layOut: "Préparer les feuilles : quelles parcelles, quels rangs et ceps sont à compter",
      count: "Compter les ceps : {uncounted} {uncounted:cep n'a|ceps n'ont} pas encore de comptage",
      mend: "Corriger {wrong} {wrong:cellule qui ne peut être juste|cellules qui ne peuvent être justes}",
      decide: "Répondre pour {asks} {asks:cep|ceps} : deux cordons se valent, ou une cellule manque",
      accept: "Accepter ce qui est décidé pour {toAccept} {toAccept:cep|ceps}",
      print: "Imprimer {cards} {cards:fiche|fiches} pour l'équipe",
      prune: "Tailler {toPrune} {toPrune:cep|ceps} et noter le jour à côté de chacun",
      harvest: "Noter à la vendange ce qui est venu",
    },
    go: {
      layOut: "Préparer les feuilles",
      count: "Imprimer des feuilles de comptage",
      mend: "Aller à la première cellule",
      decide: "Aller au premier cep",
      accept: "Voir ce qui serait écrit",
      print: "Aller aux fiches",
      prune: "Aller aux ceps",
      harvest: "Aller à la feuille de récolte",
    },
    wrongHere:
      "{wrong} {wrong:cellule qui ne peut être juste se trouve|cellules qui ne peuvent être justes se trouvent} dans des lignes utilisées ici.",
    layOut: {
      title: "Préparer les feuilles",
      why: "Rangs, ceps, côtés et lettres sont remplis dans l'ordre où vous marchez ; il ne reste qu'à saisir les comptages.",
      block: "Parcelle",
      rows: "Rangs",
      vinesARow: "Ceps par rang",
      cordonsAVine: "Cordons à compter par cep",
      training: "Mode de conduite",
      notSaid: "non précisé",
      backAndForth: "Un rang sur deux est parcouru au retour",
      make: "Préparer {block}",
      done: "{block} est préparée : {cordons} {cordons:ligne|lignes} dans {sheet}, {vines} {vines:cep|ceps} dans {vinesSheet}. Imprimez les feuilles de comptage ou saisissez les comptages.",
      unnamed: "Parcelle : il faut un nom.",
      named: "{block} est déjà préparée : choisissez un autre nom de parcelle.",
      whole: "{field} : il faut un nombre entier de 1 à {most}.",
      length: "{field} : il faut un nombre supérieur à 0, ou rien.",
      noSheet: "Ce classeur n'a pas de feuille {sheet} à préparer. Commencez d'abord une saison.",
      filled:
        "{sheet} {cell} est remplie, rien n'a donc été préparé. Videz d'abord les lignes sous le tableau.",
    },
    countSheet: {
      paper: "Papier",
      title: "Feuille de comptage",
      row: "{block}, rang {row}",
      counter: "Compté par",
      date: "Jour",
      tally: "Coursons vivants : cochez une case par courson",
    },
    empty: {
      title: "Ce qui est compté sur un cep",
      why: "De ces comptages découlent combien d'yeux laisser, quels cordons restent, et une fiche pour l'équipe.",
      drawing:
        "Un cep sur le fil avec deux troncs : le tronc 1 porte le cordon A à gauche, le tronc 2 le cordon B à droite. Sont marqués la longueur d'un cordon, ses coursons vivants, un vide et les deux troncs.",
      length: "longueur",
      spurs: "coursons vivants",
      gap: "vide",
      trunk: "tronc {trunk}",
      sample: "Voir une saison remplie",
      begin: "Commencer une saison",
      file: "Ouvrir un fichier",
      units: "Unités",
      us: "pieds, livres, acres",
      metric: "mètres, kilogrammes, hectares",
      language: "Langue des feuilles",
      inExcel:
        "Les deux s'ouvrent dans un classeur à part. Ouvrez le vôtre par le menu Fichier d'Excel ; ce volet le lit.",
    },
  },
  seasons: {
    title: "Hiver contre hiver",
    intro:
      "Coursons vivants, vides et troncs des cordons qui restent, sur les hivers gardés dans la feuille {sheet}.",
    undated:
      "Rien ne dit quel hiver a été compté : il ne peut pas encore être gardé. Prochaine étape : écrivez le jour du comptage dans la colonne Date de la feuille Cordons.",
    write: "Garder l'hiver {year} dans la feuille Hivers",
    notKept:
      "L'hiver {year} tel que compté diffère de la feuille ou n'y est pas encore. Le garder laisse les hivers d'avant tels quels.",
    kept: "L'hiver {year} est dans la feuille tel que compté maintenant.",
    sheetTitle: "Rangs de vigne, hiver par hiver",
    sheetNote:
      "Écrite par Cordonbook le {date}. Un hiver gardé de nouveau remplace ses propres lignes ; les autres restent. Vides en emplacements de courson.",
    foreign:
      "La feuille {sheet} n'a pas de tableau d'hivers lisible, elle est laissée telle quelle. Renommez-la pour garder des hivers.",
    lost: "{count} {count:ligne|lignes} de la feuille {sheet} {count:n'est pas complète et serait perdue|ne sont pas complètes et seraient perdues} ; rien n'a été écrit. Complétez-les ou effacez-les d'abord.",
    allRows: "Tous les rangs",
    year: "Hiver",
    share: "% des places",
    loss: "La parcelle perd {likely} % de ses coursons vivants par an ({low} à {high} % dans {confidence} cas sur 100 comme celui-ci), d'après {rows} {rows:rang|rangs} et {pairs} {pairs:paire|paires} d'hivers.",
    gain: "Sous 0, ce sont des coursons gagnés.",
    toFloor:
      "À ce rythme elle passe sous le plancher de {floor} % dans {likely} ans (au plus tôt {low}, au plus tard {high}).",
    never: "jamais",
    notReached: "À ce rythme elle ne passe pas sous le plancher de {floor} % ; au plus tôt dans {low} ans.",
    below: "Sous le plancher de {floor} % de coursons vivants : {blocks}. Y former de nouveaux cordons.",
    noneBelow:
      "Aucune parcelle n'est sous le plancher de {floor} % de coursons vivants (un réglage ; aucun plancher publié n'a été vu).",
    blockShare: "{block} ({share} %, hiver {year})",
  },
  selfTest: {
    ability: {
      pane: "Le volet et les fonctions marchent ensemble.",
      functions: "Fonctions CORDON dans les cellules.",
      tables: "Lire les feuilles de relevé et écrire nos propres feuilles.",
      marks: "Marques sur les cellules, qui peuvent être ôtées.",
      whileTyping: "Juger les lignes pendant la saisie.",
      pivot: "Tableau croisé des vides.",
      spill: "Fonctions qui remplissent un bloc de cellules.",
      notes:
        "Les notes d'une feuille de Cordonbook la suivent quand elle est réécrite ; sans cela elles restent dans leurs cellules.",
      oneUndo: "Un seul Annuler retire toutes les marques ou cellules d'un passage.",
    },
    answers: {
      missing: "Pas dans cet Excel ({set}) ; tout le reste marche.",
      tooOld: "Pas dans cet Excel ({set}), trop ancien pour Cordonbook.",
      answers: "Une cellule a demandé =CORDON.VERSION() et a reçu {shows} : les fonctions calculent.",
      otherVersion:
        "Une cellule a demandé =CORDON.VERSION() et a reçu {shows}, une autre version que celle du volet, {version}. Fermez Excel et rouvrez-le.",
      unknown:
        "Une cellule a demandé =CORDON.VERSION() et a reçu #NAME? : cet Excel n'a pas encore chargé les fonctions. Fermez et rouvrez le classeur ; si cela persiste, demandez à qui a installé Cordonbook.",
      waiting:
        "Une cellule a demandé =CORDON.VERSION() et attend toujours. Mettez le calcul en automatique (onglet Formules), puis réessayez.",
      error:
        "Une cellule a demandé =CORDON.VERSION() et a reçu {shows}. Fermez et rouvrez le classeur ; si cela persiste, demandez à qui a installé Cordonbook.",
    },
  },
  excelReport: {
    sheet: "Rapport Excel",
    title: "Rapport sur cet Excel",
    intro:
      "Essaie ce sur quoi Cordonbook s'appuie et écrit une feuille avec ce qui était attendu et ce qui a été vu, pour qui s'occupe de Cordonbook. Cela prend environ deux minutes, travaille sur des feuilles à part et ne touche aucune des vôtres.",
    before:
      "La liste d'Annuler est vidée et la boîte d'impression s'ouvre ; vous pouvez l'annuler. Pour essayer aussi la saisie : tapez dans une cellule, laissez-la ouverte, appuyez sur le bouton, puis quittez la cellule.",
    start: "Faire le rapport",
    trying: "Essai de ce que fait cet Excel",
    undo: "Appuyez une fois sur Ctrl+Z dans la feuille affichée maintenant (sur Mac, Cmd+Z), puis dites-le ici.",
    undoFact: "Et encore une fois : appuyez une fois sur Ctrl+Z dans la feuille (sur Mac, Cmd+Z).",
    pressed: "C'est fait",
    skip: "Laisser de côté",
    made: "Fait le {date} par Cordonbook {version}.",
    counts: "{same} comme attendu, {different} différents, {notTried} non essayés.",
    text: "Le rapport en texte",
    copy: "Copier le texte",
    copied: "Le texte du rapport est copié.",
    copyYourself:
      "Excel ne laisse pas le volet copier. Le texte est sélectionné : appuyez sur Ctrl+C (sur Mac, Cmd+C).",
    heads: {
      tried: "Ce qui a été essayé",
      expected: "Attendu",
      seen: "Vu",
      outcome: "Résultat",
      page: "Qui le dit",
    },
    outcomes: {
      same: "pareil",
      different: "différent",
      notTried: "non essayé",
    },
    says: {
      value: "{shows}",
      refused: "refusé : {shows}",
      nothing: "rien",
      notCalled: "la fonction n'a pas été appelée",
      notTold: "rien ; fermez le volet et rouvrez-le avant de contrôler pendant la saisie",
      notEditing: "aucune cellule n'était en cours de saisie",
      skipped: "laissé de côté",
    },
    rows: {
      build: { tried: "Numéro de la version", expected: "un numéro comme 16.0.14326" },
      platform: { tried: "Plateforme", expected: "PC, Mac ou OfficeOnline" },
      sets: { tried: "Ensembles de conditions les plus hauts", expected: "au moins {sets}" },
      editing: {
        tried: "Interroger Excel pendant la saisie d'une cellule",
        expected: "refusé avec InvalidOperationInCellEditMode jusqu'à ce que la cellule soit quittée",
      },
      undo: {
        tried: "Deux cellules écrites en une étape, puis Annuler une fois",
        expected: "les deux cellules sont à nouveau vides",
      },
      undoFact: {
        tried: "Une cellule écrite, un fait gardé dans le classeur, puis Annuler une fois",
        expected: "rien dans la cellule : garder un fait n'est pas parmi ce qui vide Annuler",
      },
      blank: { tried: "Comme quoi une cellule vide d'une plage arrive à une fonction", expected: "null" },
      error: { tried: "Comme quoi une cellule avec #N/A arrive à une fonction", expected: "#N/A" },
      errorInArray: {
        tried: "Un résultat avec un vide et une erreur parmi ses cellules",
        expected: "50, vide, une erreur, 40",
      },
      spill: { tried: "Les cellules qu'un résultat remplit", expected: "C1:C4" },
      spillBlocked: { tried: "Un résultat avec une cellule pleine sur son chemin", expected: "#SPILL!" },
      watch: {
        tried: "Deux veilles sur les cellules, la première retirée, une cellule changée",
        expected: "la seconde l'apprend : onChanged",
      },
      text: { tried: "Texte qui commence par =", expected: "il reste du texte : =1+1" },
      filterSeen: { tried: "Demander si un tableau est filtré", expected: "true" },
      filterWrite: {
        tried: "Écrire à travers des lignes cachées par un filtre",
        expected: "refusé avec FilteredRangeConflict",
      },
      marks: {
        tried: "Priorités d'une mise en forme conditionnelle nouvelle et de la précédente",
        expected: "0, 1 : la nouvelle vient en premier",
      },
      marksOff: {
        tried: "Une marque enlevée d'une cellule colorée",
        expected: "sa couleur #C0FFC0 et l'autre mise en forme restent, 1",
      },
      rewrite: {
        tried: "Une feuille à nous écrite à nouveau pendant qu'une formule y renvoie",
        expected: "la formule reste : ='…'!B2",
      },
      pivot: { tried: "Un tableau croisé de sommes", expected: "4, 6, 10" },
      chart: {
        tried: "Un graphique dessiné deux fois sur une feuille à nous",
        expected: "un graphique de 3 parties : 3",
      },
      print: { tried: "Imprimer depuis le volet", expected: "cela commence : beforeprint" },
      file: { tried: "Lire le classeur comme fichier", expected: "il commence par PK" },
    },
    otherwise: {
      undo: "la seconde cellule est à nouveau vide, la première contient encore 1",
      blank: "0",
      print: "rien : un Mac n'imprime pas depuis un volet",
    },
  },
  settingsTravel: {
    title: "Chiffres d'un autre classeur",
    intro:
      "Comparez les chiffres de ce classeur à ceux d'un autre de la ferme et copiez ceux que vous voulez. L'autre classeur est seulement lu.",
    file: "Choisir un classeur (.xlsx ou .csv)",
    noTable: "Il n'y a pas de tableau de réglages dans {file}.",
    same: "Tous les chiffres de {file} sont les mêmes qu'ici.",
    differ: "{count} {count:chiffre diffère|chiffres diffèrent} de {file}. Les cochés sont copiés.",
    difference: "{setting} : ici {here} {unit}, là-bas {there} {unit}",
    thereBy: "Changé là-bas par {by}, {on}",
    show: "Montrer ce qui bouge",
    copy: "Copier {count} {count:chiffre|chiffres}",
    nothingTicked: "Cochez au moins un chiffre.",
    copied: "{count} {count:chiffre a été copié|chiffres ont été copiés} de {file}.",
    older:
      "Ce tableau de réglages a une forme plus ancienne. Le mettre à jour ne change aucune valeur et laisse vos cellules telles quelles.",
    moreNames: "{names} et {more} de plus",
    upgrade: "Le mettre à jour",
    upgraded: "Le tableau de réglages est à jour.",
    undo: "Annuler",
    undone: "Le tableau de réglages est comme avant.",
    left: "{count} {count:cellule a été changée par quelqu'un d'autre entre-temps et laissée telle quelle|cellules ont été changées par quelqu'un d'autre entre-temps et laissées telles quelles}.",
  },
  upkeep: {
    copyTitle: "Pour ceux qui n'ont pas Cordonbook",
    copyIntro:
      "Ouvre une copie où chaque cellule avec une fonction CORDON contient sa valeur. Ce classeur reste tel quel.",
    copy: "Copie avec valeurs seulement",
    copied:
      "La copie est ouverte : {count} {count:cellule contient sa|cellules contiennent leur} valeur, dont {errors} une erreur.",
    openingTitle: "À l'ouverture de ce classeur",
    openingIntro:
      "Les collègues sans Cordonbook verraient chaque fois un avis d'Office ; laissez désactivé s'il y en a.",
    openingSwitch: "Démarrer Cordonbook avec ce classeur",
    pivot: "Tableau croisé des vides",
    pivotMade: "Le tableau croisé est sur la feuille {sheet}.",
    pivotRefreshed: "Le tableau croisé a été actualisé ; sa mise en page est restée la vôtre.",
    pivotTable: "Il n'y a pas de tableaux croisés ici ; les mêmes chiffres sont sur la feuille {sheet}.",
    readAgain: "Un collègue a modifié {sheets} pendant l'exécution ; la lecture a donc été refaite.",
    openingAsk: "Voir si c'est activé",
  },
  workbook: {
    noSheet:
      "Ce classeur n'a pas (ou plus) de feuille « {sheet} » ; rien n'a été changé. Choisissez à nouveau la feuille.",
    notOurs:
      "La feuille « {sheet} » n'a pas été créée par Cordonbook et reste telle quelle. Renommez-la, puis recommencez.",
    protectedSheet:
      "La feuille « {sheet} » est protégée ; rien n'a été changé. Ôtez la protection (onglet Révision), puis recommencez.",
    protectedWorkbook:
      "La structure de ce classeur est protégée : aucune feuille ne peut être ajoutée, renommée ou supprimée ; rien n'a été changé.",
    badSheetName:
      "« {sheet} » ne peut pas être un nom de feuille : 1 à 31 caractères, sans : \\ / ? * [ ] ni apostrophe au début ou à la fin.",
    badTable:
      "Le tableau destiné à la feuille « {sheet} » n'est pas cohérent (ligne {row} ; 0 désigne les en-têtes) ; rien n'a été écrit.",
    lastSheet:
      "La feuille « {sheet} » est la seule du classeur et ne peut pas être supprimée ; rien n'a été changé.",
    cannotPutBack:
      "La ligne {row}, colonne {column} de « {sheet} » contient une erreur saisie comme valeur, qu'on ne pourrait pas remettre exactement. Rien n'a été changé.",
  },
  choice: {
    atSide: {
      left: "à gauche",
      right: "à droite",
      north: "au nord",
      south: "au sud",
      east: "à l'est",
      west: "à l'ouest",
    },
    countWords: {
      spurs: "coursons vivants et longueur",
      stretch: "plus long vide",
      placing: "orientation des coursons",
      soundness: "état",
      diameter: "diamètre",
      trunk: "tronc",
    },
    countOf: "{count} de {cordon}",
    arguments: {
      spurs: "{mine} coursons vivants contre {theirs}",
      spursForLength: "{mine} coursons vivants sur {mineLength} contre {theirs} sur {theirsLength}",
      spursBeyondWire:
        "{mine} coursons vivants contre {theirs}, et {other} est plus long que son fil ({theirsLength} pour {wire})",
      noStretch: "aucun vide contre un de {theirs}",
      stretch: "plus long vide {mine} contre {theirs}",
      placingDown:
        "{mine} coursons sur {mineOf} tournés vers le bas ou de côté contre {theirs} sur {theirsOf}",
      placingUp: "{mine} coursons sur {mineOf} tournés vers le haut contre {theirs} sur {theirsOf}",
      placing: "ses coursons sont mieux orientés",
      soundness: "il est {mine}, {other} est {theirs}",
      diameter: "il est plus gros, {mine} contre {theirs}",
      ownTrunk: "il part du tronc {trunk}, ainsi les deux cordons ne tiennent pas au tronc {shared}",
      ownTrunkBesideCane: "il part du tronc {trunk} et le nouveau sarment d'en face d'un autre",
      trunkUnknown: "il part peut-être d'un tronc à lui, mais un tronc n'est pas noté",
      trunkCondition: "son tronc {trunk} est {mine}, le tronc {otherTrunk} est {theirs}",
      sameTrunkHurt: "son tronc est {mine}, celui de {other} est {theirs}",
      nothing: "rien de ce qui est noté",
    },
    weakPoints: {
      spurs: "il porte {spurs} coursons vivants là où son fil devrait en porter {carry}",
      stretch: "il a un vide de {gap} {gap:emplacement|emplacements}",
      deadStretch:
        "une suite de {gap} {gap:emplacement|emplacements} est morte, et il reste {spurs} {spurs:courson vivant|coursons vivants} là où son fil devrait en porter {carry}",
      placing: "{well} seulement de ses {spurs} coursons sont bien orientés",
      soundness: "il est {condition}",
      diameter: "il a {diameter} d'épaisseur, et {fullDiameter} suffisent",
      trunkCondition: "son tronc {trunk} est {trunkCondition}",
    },
    caneOrigins: {
      trunk: "depuis le tronc {trunk}",
      otherTrunk: "depuis le tronc vivant qui ne porte pas de cordon",
      head: "depuis la tête",
      ground: "depuis un gourmand du sol",
    },
    reasons: {
      better: "Garder {cordon} {at} : {mine}.",
      betterDespite: "Garder {cordon} {at} : {mine}. Pour {rival} : {theirs}.",
      onlyOne: "Garder {cordon} {at} : c'est le seul et il vaut la peine.",
      onlyOneCounted:
        "Garder {cordon} {at} : c'est le seul et il vaut la peine, avec {spurs} coursons vivants et un plus long vide de {gap}.",
      onlyOneSpurs:
        "Garder {cordon} {at} : c'est le seul et il vaut la peine, avec {spurs} coursons vivants.",
      building: "Garder {cordon} {at} : le cep est jeune et son cordon se forme encore.",
      fixedStays: "Garder {cordon} {at} : quelqu'un l'a décidé.",
      fixedStaysDead:
        "Garder {cordon} {at}, comme quelqu'un l'a décidé ; mais il est noté mort, lui ou son tronc : à revoir.",
      worse: "Couper {cordon} {at} ; {rival} est meilleur : {theirs}.",
      worseDespite: "Couper {cordon} {at} ; {rival} est meilleur : {theirs}. Pour {cordon} : {mine}.",
      fixedGoes: "Couper {cordon} {at} : quelqu'un l'a décidé.",
      fixedCane:
        "Couper {cordon} {at} jusqu'à un bon sarment près de la tête et coucher celui-ci : quelqu'un l'a décidé.",
      besideFixed: "Couper {cordon} {at} : quelqu'un a décidé que {rival} y reste.",
      dead: "Couper {cordon} {at} : il est mort.",
      trunkDead: "Couper {cordon} {at} : son tronc {trunk} est mort.",
      remnant: "Couper {cordon} {at} : à {length}, c'est un reste à la tête, pas un cordon.",
      notWorthKeeping: "Couper {cordon} {at} et coucher un sarment {from} : {weak}.",
      notWorthKeepingOwnTrunk:
        "Couper {cordon} {at} et coucher un sarment {from} : {weak}, et le nouveau sarment apporte un tronc à lui.",
      closeCall:
        "Regarder le cep : {cordon} et {rival} {at} se valent presque. Pour {cordon} : {mine}. Pour {rival} : {theirs}.",
      closeCallForMine:
        "Regarder le cep : {cordon} et {rival} {at} se valent presque. Pour {cordon} : {mine}.",
      closeCallForTheirs:
        "Regarder le cep : {cordon} et {rival} {at} se valent presque. Pour {rival} : {theirs}.",
      tie: "Regarder le cep : {cordon} et {rival} {at} sont égaux en tout ce qui est noté.",
      question: "Regarder le cep : {pairs}.{together}{arguments}",
      questionPair: "{cordon} ou {rival} {at}",
      questionCane: "{cordon} ou un nouveau sarment {at} : {weak}",
      questionFor: "Pour {cordon} : {mine}.",
      goTogether: "{cordon} va avec {mineWith}, {rival} avec {theirsWith}.",
      closeToNewCane:
        "Regarder le cep : {cordon} {at} vaut peut-être la peine, ou un nouveau sarment serait mieux ; {weak}.",
      missingCounts:
        "Y retourner : {cordon} et {rival} {at} ne se départagent pas avant d'avoir noté : {missing}.",
      missingCountsAlone: "Y retourner : {cordon} {at} ne se juge pas avant d'avoir noté : {missing}.",
      uncounted:
        "Compter ce cep : ni coursons vivants ni vides ne sont notés, et ses troncs seuls ne décident rien.",
      recount: "Recompter ce cep ; rien n'y est décidé avant que ces cellules soient justes : {cells}.",
      sidesUnclear:
        "Noter de nouveau le côté de {cordon} : les cordons d'un cep vont à gauche et à droite, ou de deux côtés opposés.",
      vineMissing: "Regarder la place : le cep est noté manquant, mais le cordon {cordon} y a été compté.",
      namedTwice: "Regarder la feuille : deux cordons {at} s'appellent {cordon}.",
    },
    sideLines: {
      layLater:
        "Aucun sarment ne peut être couché {at} cet hiver : aucun n'a été compté près de la tête sur {source}. Garder un courson de renouvellement à la tête de {source} et coucher son sarment l'hiver prochain.",
      stays: "{cordon} reste {at}.",
      ask: "{cordon} {at}, si la personne qui regarde est d'accord.",
      lay: "Coucher un sarment {at} {from}.",
      layAsk: "Coucher un sarment {at} {from}, si la personne qui regarde est d'accord.",
      layOf: "Coucher un sarment {at} {from} : un bon sarment de {source}, près de la tête.",
      layOfAsk:
        "Coucher un sarment {at} {from}, si la personne qui regarde est d'accord : un bon sarment de {source}, près de la tête.",
    },
    cutLines: {
      head: "Couper {cordon} {at} du bout jusqu'à la tête.",
      trunk: "Couper {cordon} {at} du bout jusqu'à la tête, et enlever le tronc mort {trunk}.",
      keepCane:
        "Couper {cordon} {at} du bout vers le tronc, et s'arrêter au premier bon sarment qui peut être couché.",
      renewing:
        "Couper {cordon} {at} du bout vers le tronc, et s'arrêter au premier bon sarment : il est gardé pour renouveler {renews}.",
      spur: "Couper {cordon} {at} du bout vers le tronc, et laisser à la tête un courson de rappel à deux yeux.",
    },
    vineNotes: {
      oneTrunk: "Un seul tronc vivant est noté pour ce cep ; en élever un second.",
      bothOnOneTrunk: "Les deux cordons tiennent au tronc {trunk}.",
      everyTrunkHurt:
        "Tous les troncs vivants de ce cep sont touchés ; élever des gourmands pour en refaire.",
      noLiveTrunk: "Aucun tronc de ce cep n'est vivant ; garder environ cinq gourmands et en former un.",
      trainingMissing:
        "Le mode de conduite de la parcelle n'est pas noté : l'orientation des coursons n'a pas compté.",
      leftOut: "Pas compté sur ce cep, donc sans poids : {parts}.",
      fixedTwice: "{cordons} {at} sont tous fixés pour rester.",
      uncounted: "Compter coursons vivants et vides de ce cep avant d'y couper quoi que ce soit.",
      recount: "Recompter ce cep avant d'y couper quoi que ce soit : {cells}.",
      sidesUnclear: "Les côtés de ce cep ne vont pas ensemble : rien n'est décidé.",
      vineMissing: "Le cep est noté manquant : rien n'est décidé.",
      vineYoung:
        "Le cep est jeune : ses cordons sont mesurés à leur seule longueur. Ce que les publications y laissent dépend de son année de plantation, qui n'est pas écrite ou remonte à plus de quatre ans.",
    },
    and: " ; ",
    conditionNotNoted: "sans dégât noté",
  },
  commandLine: {
    sentences: {
      noRows: "Il y a des en-têtes mais aucune ligne dans {files} : rien n’a été vérifié.",
      headsMissing: "Il n’y a pas de fichier {file} pour --heads.",
      headsNotJson: "{file} n’est pas du JSON, qu’il faut à --heads.",
      headsUnlike:
        '{file} ne convient pas à {place} ; --heads prend ce que check --format json propose sous reading.questions, comme {"heads": [{"sheet": "Pond", "shape": "cordons", "columns": {"Vn": "vine"}}]}.',
      sheetUnknown: "Il n’y a pas de feuille « {sheet} » ; proches ou connues : {sheets}.",
      tellHeads: "Pour le dire : --heads FICHIER.json avec {answers}",
      tellBlock: "Pour le dire : --block NOM",
      noTables:
        "Aucune feuille de comptage n’a été reconnue dans {files} (regardé : {sheets}). Un tableau a besoin d’en-têtes comme Parcelle, Rang, Cep, Côté, Cordon ; ce que signifient les vôtres se dit avec --heads FICHIER.json, un fichier qui contient {answers} avec chacun de vos en-têtes devant la colonne qu’il désigne : {columns}.",
      noHeadsAtAll:
        "Aucune feuille de comptage n’a été reconnue dans {files} (regardé : {sheets}). Écrire une ligne d’en-têtes au-dessus des comptages : Parcelle, Rang, Cep, Côté, Cordon, Tronc, Longueur (m), Emplacements, Coursons vivants.",
      repairOne: "--repair prend un seul classeur (.xlsx ou .xlsm) et en écrit une copie.",
      repairOut: "--repair écrit une copie : nommez-la avec --out FICHIER.xlsx, ou donnez --save.",
      repaired: "{cells} {cells:cellule modifiée|cellules modifiées} dans la copie",
      repairNothing: "Rien n’a pu être corrigé avec certitude, aucune copie n’a donc été écrite.",
      likelyLeft:
        "Modifications probables non faites : {cells} {cells:cellule|cellules} ; --also-likely les fait aussi.",
      more: "et {findings} de plus : {cells}",
      usage: "{program} COMMANDE ...",
      moreHelp: "Aide sur une commande : {program} COMMANDE --help",
      exitCodes:
        "Codes de sortie : 0 rien à signaler ou une valeur, 1 constats ou valeur d'erreur, 2 fichier ou commande illisible.",
      caution: "Les chiffres conseillent ; décide qui se tient devant le cep et connaît les règles locales.",
      checkSummary:
        "Contrôle les feuilles de comptage (.xlsx, .xlsm, .csv, un dossier ou - pour l'entrée standard) et nomme chaque cellule impossible.",
      chooseSummary:
        "Décide pour chaque cep quel cordon reste de chaque côté et dit pourquoi (code 1 : des ceps sont à voir).",
      gapsSummary: "Compte les emplacements sans courson vivant, rang par rang.",
      cardsSummary:
        "Écrit pour l'équipe ce qui reste et ce qu'on coupe sur chaque cep, dans l'ordre de marche.",
      newSummary:
        "Crée un classeur vide pour la saison d'un domaine : feuilles avec en-têtes, mots admis, Réglages, lignes à imprimer.",
      outlookSummary:
        "Dit quelle récolte laisse la taille, parcelle par parcelle : basse, probable et haute, et d'où vient le doute.",
      rowsSummary:
        "Écrit chaque ligne de cordons de n'importe quel nombre de fichiers dans un seul csv (métrique), pour des moteurs qui tiennent une région.",
      notAWorkbookName: "Le nom du nouveau classeur doit finir par .xlsx, mais est {file}.",
      noCordons:
        "Il n'y a pas de cordons dans {files} : il faut une feuille avec Parcelle, Rang, Cep, Côté, Cordon et comptages.",
      saved: "Enregistré sous {file}",
      savedInPlace: "Enregistré dans {file} ; tel qu'il était avant : {backup}",
      savedAlone:
        "{file} ne peut être complété sans risque (forme, protection ou signature) ; les résultats vont dans un classeur à part.",
      savedThroughLink: "{file} est un lien ; c'est {target} qui a été changé",
      savedOneName:
        "{file} avait {others} {others:autre nom|autres noms} sur ce disque (liens physiques) ; {others:il garde|ils gardent} l'ancien contenu.",
      passedOver: "Laissés de côté, car Cordonbook les a faits de {original} : {files}",
      otherFormats: "Laissés de côté, car ils sont d'un autre format : {files}",
      sameRows:
        "{file} et {other} ont les mêmes {rows} {rows:ligne|lignes} de cordons : l'un est-il une copie ? Retirez-le ou nommez les fichiers à lire ; --same-rows compte les deux.",
      outEnding:
        "Ce qui est écrit est un fichier {ending} : --out doit donc finir par {ending}, mais est {file}.",
      oneOption: "--{one} et --{other} disent deux choses différentes ; donnez l'une des deux.",
      inPlaceOne:
        "--in-place prend un seul classeur (.xlsx ou .xlsm) ; pour csv et plusieurs fichiers, utilisez --save ou --out.",
      formulaSummary: "Calcule une formule avec des fonctions CORDON et en imprime la valeur.",
      checked:
        "{wrong} faux, {ask} à demander, {note} {note:note|notes} dans {rows} {rows:ligne|lignes} de {tables} {tables:tableau|tableaux}.",
      checkedClean: "Rien à signaler dans {rows} {rows:ligne|lignes} de {tables} {tables:tableau|tableaux}.",
      setAside:
        "Mis de côté dans le classeur, donc pas comptés : {findings}. L'option --also-set-aside les énumère.",
      setAsideHeading: "Mis de côté, avec raison, nom et jour",
      csvRead: "{file} : lu en {encoding}, colonnes séparées par {delimiter}, signe décimal {decimal}",
      csvDoubt:
        "{file} : « {text} » a été lu avec une espace insécable, comme l'écrit Windows ; dans un fichier de DOS ce serait « {other} ». Lequel est juste ? Enregistrez le fichier en UTF-8 si c'est le second.",
      csvUndecided:
        "{file} : lu en {encoding}, colonnes séparées par {delimiter} ; ses virgules ou points peuvent être de décimales ou de milliers, ces cellules restent du texte",
      unknownCommand: "Il n'y a pas de commande « {command} » : sont connues {commands}.",
      wrongWords: "La commande {command} prend {takes} ; voir {command} --help.",
      badOption: "La commande {command} ne sait que faire de « {given} » ; ses options sont {options}.",
      badOptionWord: "--{option} prend l'un de {words}, et non « {given} ».",
      badNumber: "--{option} prend un nombre à partir de 1, et non « {given} ».",
      badDate: "--today prend un jour comme 2026-03-31, et non « {given} ».",
      ownMistake:
        "C'est une erreur de Cordonbook et non de votre fichier ; rien n'a été changé. Merci de signaler ce qui suit.",
    },
    option: {
      sheetOption: "ne lire que ces feuilles, séparées par des virgules, et Réglages",
      block: "parcelle des feuilles qui n’en nomment aucune",
      heads: "réponses sur les feuilles : en-têtes propres, unités, valeurs pour des feuilles entières",
      repair: "écrire une copie où ce qui est certain est corrigé, avec la liste de chaque modification",
      alsoLikely: "avec --repair : faire aussi les modifications seulement probables",
      format: "forme du résultat",
      language: "langue des phrases",
      severity: "laisser de côté ce qui pèse moins",
      alsoSetAside: "énumérer aussi les constats mis de côté dans le classeur",
      farm: "nom du domaine sur la première feuille",
      newUnits: "unités des en-têtes (US)",
      html: "écrire plutôt une page à imprimer",
      changed: "seulement les ceps dont la fiche diffère de la dernière impression, gardée dans le classeur",
      paper: "papier de cette page (Letter)",
      sameRows: "compter comme domaines distincts des fichiers aux mêmes lignes",
      save: "enregistrer aussi dans un nouveau classeur à côté du fichier",
      out: "enregistrer aussi dans ce nouveau classeur",
      inPlace: "ajouter nos feuilles au classeur même, après une copie",
      of: "tous les candidats, ou seulement ceux qui restent",
      today: "jour du contrôle, pour les dates à venir",
      units: "unités des en-têtes qui n'en nomment pas",
      expansion: "fois qu'un fichier peut grandir décompressé (200)",
    },
  },
  pane: {
    questions: {
      title: "Questions sur les feuilles",
      reading: "Ce qui a été lu, et ce qui ne l’a pas été",
      takeBack: "Annuler la dernière réponse",
      ownHeads: "Le dire colonne par colonne",
      leaveOut: "Ne pas lire la feuille",
      asProposed: "Prendre comme proposé",
      countAgain: "Sera recompté",
      yes: "Oui",
      kept: "Votre réponse est gardée sur la feuille Réponses de ce classeur.",
      takenBack: "La dernière réponse est retirée.",
    },
    mend: {
      all: "Tout changer : {cells}",
      one: "Changer",
      allOther: "Toutes de l'autre façon : {cells}",
      other: "Changer en {to}",
      done: "Cellules modifiées : {cells}.",
      partly: "Cellules modifiées : {cells}. Laissées car elles contiennent déjà autre chose : {left}.",
      takeBack: "Annuler la dernière modification : {cells}",
      back: "Cellules rétablies : {cells}.",
      partlyBack: "Cellules rétablies : {cells}. Laissées car modifiées depuis : {left}.",
    },
    pageNames: {
      season: "Saison",
      check: "Vérifier",
      nodes: "Yeux",
      gaps: "Vides",
      decide: "Choisir",
      crew: "Équipe",
      outlook: "Récolte",
      settings: "Réglages",
      functions: "Fonctions",
      care: "Entretien",
    },
    age: {
      working: "Le classeur a changé depuis ; ce résultat est en cours de recalcul.",
      older:
        "Le classeur a changé depuis ce calcul : rien n'en est imprimé, écrit ni accepté avant un nouveau calcul.",
      anew: "Recalculer",
      refused:
        "Le classeur a changé depuis ce calcul ; rien n'a donc été imprimé, écrit ni accepté. Regardez-le tel qu'il est maintenant et réessayez.",
      vineChanged:
        "Les lignes de ce cep ont changé depuis leur lecture ({cells}) ; rien n'a été écrit. Regardez le cep tel qu'il est maintenant et décidez à nouveau.",
    },
    everyPage: {
      more: "Plus",
      fetching: "Chargement de cette page…",
      fetchAgain: "Réessayer",
      pages: "Pages",
      language: "Langue",
      close: "Fermer",
      cancel: "Annuler",
      somethingWrong:
        "Cela n'a pas marché à cause d'une erreur du programme ; le classeur est resté tel quel. Réessayez et, si cela revient, notez ce que vous avez fait avant.",
      cancelled: "Arrêté ; rien n'a été changé.",
    },
    check: {
      title: "Vérifier les comptages",
      intro:
        "Lit les tableaux de comptage de ce classeur et montre ce qui manque, est impossible ou peu probable. Rien n'est changé.",
      check: "Vérifier",
      checkAgain: "Vérifier encore",
      chooseSheets: "Choisir les feuilles",
      sheetsFound: "Tableaux trouvés",
      sheetRows: "{sheet} : {shape}, {rows} {rows:ligne|lignes}",
      nothingFound:
        "Aucun tableau de comptage trouvé. Une feuille a besoin d'une ligne d'en-têtes comme Parcelle, Rang, Cep, Côté, Coursons vivants. Prochaine étape : notez les comptages sous ces en-têtes, ou dites ce que signifient les vôtres.",
      reading: "Lecture de {sheet}",
      checking: "Vérification",
      progress: "Avancement de la vérification",
      nothingCounted: "Aucun comptage n'est encore écrit, il n'y a donc rien à juger.",
      clean: "Rien à redire sur {rows} {rows:ligne|lignes}.",
      result: "{wrong} faux, {ask} à voir, {note} {note:note|notes} sur {rows} {rows:ligne|lignes}.",
      since: "Depuis la vérification d'avant : {gone} disparus, {come} nouveaux, {stayed} inchangés.",
      asideCount: "{aside} sont mis de côté.",
      gone: "Disparus depuis la précédente",
      come: "Nouveaux depuis la précédente",
      findings: "Constats",
      filter: "Filtrer",
      severity: "Certitude",
      sheet: "Feuille",
      counter: "Compté par",
      words: "Mots",
      all: "Tout",
      shown: "{shown} {shown:constat|constats} sur {all} passent le filtre.",
      more: "Afficher {more} de plus sur {all}",
      cell: "{sheet} {cell}",
      wentTo: "{cell} sur {sheet} est sélectionnée.",
      countedBy: "compté par {counter}",
      whatToDo: "Que faire : {remedy}",
      perRow: "Constats par rang",
      perCounter: "Constats par personne",
      rowHead: "Parcelle, rang",
      writeSheet: "Écrire la feuille Constats",
      sheetWritten: "La feuille {sheet} est écrite : {rows} {rows:ligne|lignes}.",
      sheetWithoutChart:
        "La feuille {sheet} est écrite : {rows} {rows:ligne|lignes}. Son graphique n'a pas pu y être tracé : les barres sont dans le volet.",
      mark: "Marquer les cellules",
      marked:
        "{cells} {cells:cellule marquée|cellules marquées}. Vos remplissages, notes et formats restent tels quels.",
      unmark: "Ôter les marques",
      unmarked: "Toutes les marques sont ôtées.",
      print: "Imprimer la liste",
      printTitle: "Constats sur les comptages",
      printDone: "Fait",
      printCell: "Cellule",
      printWhat: "Ce qui a été trouvé",
    },
    typing: {
      switch: "Vérifier pendant la saisie",
      title: "Lignes changées à l'instant",
      nothing:
        "Rien à redire pour l'instant. Chaque ligne est jugée quand vous quittez la cellule ; ce qui dépend d'autres lignes reste à la vérification complète.",
      large: "Beaucoup de lignes de {sheet} ont changé d'un coup. Appuyez sur Vérifier pour les juger.",
      colleague: "par un collègue",
    },
    aside: {
      setAside: "Mettre de côté",
      title: "Laisser ce constat tel quel",
      reason: "Pourquoi il peut rester",
      by: "Votre nom ou vos initiales",
      both: "Il faut la raison et le nom.",
      list: "Constats mis de côté",
      entry: "{reason} ({by}, {on})",
      takeBack: "Annuler",
      done: "Mis de côté ; il le reste dans ce classeur jusqu'à ce que les comptages changent.",
      takenBack: "Remis dans la liste.",
    },
    findingsSheet: {
      sheet: "Constats",
      title: "Constats sur les comptages",
      severity: "Certitude",
      where: "Feuille",
      cell: "Cellule",
      counter: "Compté par",
      what: "Ce qui a été trouvé",
      remedy: "Que faire",
      setAside: "Mis de côté : pourquoi et par qui",
      code: "Genre",
    },
    heads: {
      open: "Utiliser mes propres en-têtes",
      title: "Vos propres en-têtes",
      intro: "Dites une fois ce que signifient vos en-têtes ; c'est gardé dans ce classeur.",
      noHeads:
        "Aucune feuille de ce classeur n'a de ligne d'en-têtes. Prochaine étape : écrivez-en une au-dessus de vos comptages.",
      sheet: "Feuille",
      shape: "Une ligne représente",
      absent: "(absent de la feuille)",
      needed: "{head} (nécessaire)",
      unit: "Unité de {head}",
      unitByWire:
        "Sans doute {unit} : la valeur médiane {middle} est alors une longueur que les cordons ont entre leurs emplacements.",
      unitOfOthers: "Sans doute {unit} : l'unité des autres colonnes de ce classeur.",
      missing: "Il manque encore : {heads}.",
      keep: "Garder",
      forget: "Oublier",
      kept: "Gardé : {sheet} est maintenant lue avec vos en-têtes.",
      forgotten: "Oublié : {sheet} est lue par ses en-têtes tels quels.",
    },
    functions: {
      refusedTitle: "Ce qui est refusé",
      refused:
        "Tout ce qui n'est pas indiqué ci-dessus : une phrase nomme l'argument, ce qui a été donné et ce qui était attendu. Une cellule en erreur est refusée avec son erreur.",
      title: "Fonctions pour vos cellules",
      intro:
        "Chacune marche dans toute cellule de ce classeur. Ouvrez-en une, changez ses chiffres et mettez-la dans la cellule choisie.",
      cell: {
        title: "La cellule sélectionnée",
        shows: "{cell} de {sheet} affiche {value}.",
        empty: "{cell} de {sheet} est vide.",
        noFormula:
          "Aucune formule ne la remplit. Sélectionnez une cellule avec une fonction CORDON pour lire ce qu’elle a reçu et pourquoi elle répond ainsi.",
        noneOfOurs: "Sa formule n’utilise aucune fonction CORDON.",
        filledFrom: "Elle est remplie par la formule de",
        heading: "Elle donne ici l’en-tête d’une colonne.",
        here: "Elle donne ici {label} : {value}.",
        hereBlank: "Elle donne ici une cellule vide : sa ligne ne contient rien à calculer.",
        hereNothing: "Elle ne donne ici rien à afficher : il n’y a pas de chiffre pour cela.",
        one: "Elle donne {label} : {value}.",
        row: "Elle donne {values}.",
        block: "Elle donne {rows} {rows:ligne|lignes} sous {columns} {columns:en-tête|en-têtes}.",
        column:
          "Elle répond à {answered} lignes sur {rows} ; {blank} restent vides, {refused} sont refusées.",
        firstRefused: "La première refusée, à la ligne {row} de la plage : {sentence}",
        refused: "Elle donne {error} : {sentence}",
        notKnown:
          "{argument} n’est calculé que par le tableur ({written}), la réponse n’est donc pas répétée ici. Mettez cette partie dans une cellule à part pour la voir.",
        differs:
          "La cellule affiche {shows}, et la fonction répond {answers} à ces arguments : faites calculer le classeur (F9).",
        name: "La cellule affiche #NAME? (#NOM?) : la fonction n’est pas chargée. Ouvrez la page Entretien, qui répare ces cellules.",
        spill:
          "La cellule affiche #SPILL! (#PROPAGATION!) : quelque chose occupe les cellules dont le résultat a besoin. Videz les cellules à droite et en dessous.",
        busy: "La cellule affiche {shows} : le calcul est encore en cours.",
        otherError:
          "La cellule affiche {shows}, et la fonction répond {answers} à ces arguments : saisissez la formule de nouveau.",
        otherParts: "La cellule affiche {shows} : le reste de la formule en fait cela.",
        leftOut: "Omis : {names}.",
        leftOutAs: "{label} (vaut {value})",
        missing: "non donné",
        unknown: "calculé par le tableur, non lu ici",
        blankCell: "une cellule vide",
        share: "{value} ({percent} %)",
        several: "{rows} {rows:ligne|lignes} : {filled} remplies, {blanks} vides ; la première est {first}",
        noneFilled: "{rows} {rows:ligne|lignes}, toutes vides",
        withErrors: "{words} ; {errors} {errors:erreur|erreurs}",
        table:
          "{rows} {rows:ligne|lignes} sous {columns} {columns:en-tête|en-têtes}, à partir de {cell} de {sheet}",
        list: "{rows} {rows:ligne|lignes} sous {columns} {columns:en-tête|en-têtes}",
      },
      search: "Chercher",
      none: "Aucune fonction n'en parle. Essayez un autre mot, comme coursons, récolte ou dégâts.",
      found: "{found} fonctions sur {all}",
      parameters: "Ce qu'il lui faut",
      optional: "{label} (facultatif)",
      results: "Ce qu'elle donne",
      example: "Exemple",
      gives: "donne {value}",
      source: "Source de la valeur : {work}",
      formula: "Formule",
      insert: "Mettre dans la cellule",
      inserted: "La formule est dans {cell} de {sheet}.",
      place: {
        blank:
          "La formule se trouve en {cell} de {sheet} ; {blank} de {of}, la première cellule qu’elle lit, est vide : rien ne se voit tant qu’elle n’est pas remplie.",
        otherRule:
          "{block} ne fixe pas ses yeux par une formule de bois de taille mais par « {rule} ». Prenez NODESBYLENGTH, ou lisez le budget à la page Yeux.",
        severalFigures:
          "Les parcelles diffèrent ({figures}). Sélectionnez une cellule dans une ligne du tableau de {sheet} : le chiffre de sa propre parcelle est pris.",
        inTable:
          "Le résultat remplit plusieurs cellules, et dans un tableau Excel ne laisse pas de place pour cela. Sélectionnez une cellule vide à côté ou en dessous du tableau.",
      },
      noCell: "Aucune cellule n'est choisie. Choisissez une cellule vide, puis recommencez.",
      notEmpty:
        "{cell} de {sheet} contient déjà quelque chose et reste telle quelle. Choisissez une cellule vide, puis recommencez.",
      noFormula: "Une formule commence par = et un nom, comme {example}.",
    },
    walk: {
      step: "Étape {step} sur {steps}",
      next: "Suivant",
      back: "Retour",
      skip: "Passer",
      end: "Commencer",
      again: "Faire la visite",
    },
    walkSteps: [
      "Saison montre, parcelle par parcelle, où en est le travail, et un seul bouton mène à l'étape suivante. Les résultats de chaque page sont là sans être demandés ; seul ce qui écrit ou imprime a un bouton.",
      "Vérifier nomme chaque cellule qui manque, est impossible ou peu probable. Appuyez sur le nom d'une cellule : elle est sélectionnée et vous pouvez la corriger.",
      "Ce qui est vrai malgré tout est mis de côté avec une raison. La liste s'imprime pour l'équipe, s'écrit dans une feuille ou se marque dans les cellules ; les marques s'ôtent sans laisser de trace.",
      "Choisir pèse les cordons candidats de chaque cep et donne ses raisons ; les cas serrés sont à vous. Les fiches de l'équipe et l'ordre du travail en découlent, à la page Équipe.",
      "Vides montre où manquent des coursons, rang par rang et cep par cep, et combien cela a grandi depuis l'hiver passé.",
      "Récolte dit quelle récolte cela laisse, avec une fourchette et ce qui la resserrerait. Chaque chiffre est dans Réglages avec sa source.",
      "Les fonctions répondent à une question dans une cellule : yeux à laisser, dégâts avec leur intervalle, récolte d'un cep. Ouvrez-en une, changez ses chiffres, mettez-la dans une cellule.",
    ],
    gaps: {
      title: "Vides sur le fil",
      intro:
        "Un vide est une position du cordon sans courson vivant. Rien ne change tant que vous n'écrivez pas de feuille.",
      of: "Compter sur",
      staying: "les cordons qui restent",
      all: "tous les candidats",
      count: "Compter les vides",
      progress: "Avancement du comptage",
      deciding: "Choix des cordons qui restent",
      none: "Aucun cordon avec positions et coursons vivants. Prochaine étape : comptez ces deux colonnes dans la feuille Cordons.",
      sum: "Sur {of} : {missing} positions sur {positions} sont vides : {share}.",
      without:
        "Sur {without} {without:cep aucun candidat ne reste ; il n'est|ceps aucun candidat ne reste ; ils ne sont} dans aucune somme.",
      writeRows: "Écrire la feuille des vides",
      writeMap: "Écrire la carte des vides",
      perRow: "Rang par rang",
      since: "Le changement est depuis l'hiver {season}, sur les cordons comptés les deux fois.",
      gaps: "Vides",
      share: "Part",
      change: "Écart",
      ofPositions: "{gaps} sur {positions}",
      notCounted: "non compté",
      map: "Carte des vides",
      mapKey:
        "Une ligne est un rang, une colonne un cep. Le chiffre est en dixièmes entiers de ses positions vides : 0 moins d'un dixième, 5 la moitié, 10 toutes ; plus c'est foncé, plus il y en a. Un tiret est un cep dont aucun candidat ne reste. Appuyez sur une cellule, ou allez avec les flèches et appuyez sur Entrée : ses lignes sont sélectionnées dans la feuille et son rang est dessiné dessous.",
      cell: "Rang {row}, cep {vine} : {gaps} positions vides sur {positions}",
      noneStays: "Rang {row}, cep {vine} : aucun candidat ne reste",
      ledTo: "Rang {row}, cep {vine} : feuille {sheet}, ligne {sheetRow}",
      wire: "Le rang sur le fil",
      wireKey:
        "À l'échelle : épais reste sur le fil, tirets s'en va, pointillé à demander ; les petits traits sont des coursons vivants, les anneaux des positions vides, les hachures le plus long vide d'un cordon (au milieu si personne n'a noté où il commence), les traits verticaux des troncs. × cep manquant, ? rien de compté. Appuyez sur un cep pour y aller.",
      wireLine:
        "Ceps {first} à {last} : {bare} {bare:cordon|cordons} avec un vide, {missing} {missing:cep manquant|ceps manquants}.",
      vine: "Cep {vine}",
      missingVine: "Cep {vine} : manquant",
      noCounts: "Cep {vine} : aucun cordon compté",
      toCells: "Aller à ses cellules",
      toDecide: "Voir sur Choisir",
    },
    nodes: {
      title: "Yeux à laisser",
      intro:
        "Ce que l'hiver a fait aux bourgeons, et combien d'yeux chaque règle laisserait sur un cep au poids de taille moyen de la parcelle. Rien n'est modifié.",
      work: "Calculer les yeux",
      progress: "Avancement du calcul des yeux",
      none: "Aucune parcelle, coupe de bourgeons ni cep pesé n'a été trouvé. Étape suivante : pesez le bois de taille de quelques ceps sur la feuille Ceps, ou écrivez une règle d'yeux sur la feuille Parcelles.",
      winter: "Ce que l'hiver a fait",
      buds: "{dead} bourgeons primaires morts sur {cut} : {share}, entre {low} et {high}.",
      noBuds: "Aucune coupe de bourgeons : le nombre n'est pas corrigé des dégâts d'hiver.",
      overHalf:
        "{blocks} : plus de la moitié des bourgeons primaires sont morts. Regardez d'abord les sarments et les troncs, et le bois vivant sous l'écorce, avant de fixer un nombre.",
      byCultivar: "Par cépage",
      cultivar: "{cultivar} ({blocks})",
      leave: "Que laisser",
      leaves: "Laissez {nodes} {nodes:œil|yeux} par cep selon {rule}.",
      leavesCorrected: "Laissez {nodes} {nodes:œil|yeux} par cep selon {rule}, corrigé selon {injuryRule}.",
      noNumber: "Pas de nombre pour cette parcelle : {reason}",
      limitedLeast: "Relevé au minimum des réglages.",
      limitedMost: "Limité au maximum d'yeux par cep.",
      least: "Jamais moins de {least} {least:œil|yeux} par cep (Réglages).",
      byLength: "par longueur",
      noLeast: "Les réglages ne fixent pas de minimum d'yeux.",
      straddle:
        "L'intervalle des bourgeons morts franchit {edges}, où {injuryRule} change : {low} à sa borne basse, {high} à sa borne haute. D'autres coupes de bourgeons le diraient.",
      someNodes: "{nodes} {nodes:œil|yeux}",
      noAnswer: "pas de nombre",
      own: "la moyenne de {vines} ceps pesés, {mean} {unit}",
      oneWeighed: "un cep pesé, {mean} {unit}",
      rules: "Les règles côte à côte, avant dégâts",
      rulesKey: "D'après {basis}. La règle en vigueur est marquée.",
      noneWeighed: "aucun cep pesé",
      rule: "Règle",
      nodes: "Yeux",
      live: "Dont vivants",
      inForce: "{rule} (en vigueur)",
      injuryRules: "Le même corrigé des bourgeons morts, règle par règle",
      spurs: "Coursons qui les portent",
      carried:
        "{spurs} coursons restent par cep (moyenne de {vines} {vines:cep|ceps}) : à {usual} yeux chacun ils portent {held} ; à {most} chacun, {heldMost}.",
      enough: "Cela porte le nombre : {each} {each:œil|yeux} par courson.",
      short:
        "Il manque même alors {short} {short:œil|yeux} : couchez des sarments, gardez plus de bois ou acceptez un nombre plus petit.",
      noSpurs: "Aucun courson compté sur les cordons qui restent.",
      light: "Ceps à moins d'une livre (0,45 kg) de bois de taille",
      lightWhy:
        "Aucune source vue ne dit combien d'yeux porte un tel cep ; il veut être fortifié. Les réglages disent ce qui est fait.",
      lightVine: "Rang {row}, cep {vine} : {mass} {unit}",
      setting: "Réglages : {name}",
      caution:
        "Les chiffres conseillent ; ce que disent le conseiller de votre région et vos propres récoltes passe avant.",
    },
    gapSheet: {
      rowGaps: "Vides par rang",
      rowGapsTitle: "Vides par rang",
      gapMap: "Carte des vides",
      gapMapTitle: "Part de positions vides, cep par cep",
      vine: "Cep {vine}",
      vinesWithout: "Ceps sans cordon qui reste",
      bothWinters: "Cordons comptés les deux hivers",
      shareBefore: "Leur part l'hiver passé",
      shareNow: "Leur part maintenant",
    },
    settings: {
      title: "Chiffres qui changent des résultats",
      intro:
        "Chaque chiffre a sa source. Avant de garder un changement, le volet montre quels résultats il déplace.",
      read: "Lire les réglages",
      progress: "Avancement",
      comparing: "Comparaison des résultats",
      noTable:
        "Ce classeur n'a pas de tableau de réglages : chaque chiffre est celui de sa source. Garder un changement crée la feuille {sheet}.",
      search: "Chercher",
      none: "Aucun chiffre n'en parle. Essayez un autre mot.",
      value: "{value} {unit}",
      source: "Source : {source}",
      ownFigure: "La source donne {value} {unit}.",
      changed: "Changé par {by}, {on}",
      newValue: "Nouvelle valeur ({unit})",
      newWord: "Nouvelle valeur",
      by: "Votre nom ou vos initiales",
      byNeeded: "Écrivez votre nom ou vos initiales, pour que les autres sachent qui a changé le chiffre.",
      change: "Changer",
      show: "Montrer ce qui bouge",
      keep: "Garder",
      reset: "Revenir à la valeur de la source",
      nothingMoves: "Aucun choix et aucun constat de ce classeur ne bougerait.",
      budgetMoves: "{block} : {before} par cep → {after}",
      budgetsStay: "Aucune parcelle ne changerait de nombre d'yeux.",
      vinesMove: "{moved} sur {vines} {vines:cep|ceps} {moved:serait décidé|seraient décidés} autrement.",
      findingsMove:
        "{gone} {gone:constat disparaîtrait|constats disparaîtraient} et {come} {come:apparaîtrait|apparaîtraient}.",
      vineHead: "Cep",
      now: "Reste maintenant",
      then: "Resterait",
      firstOnes: "Les {shown} premiers sont listés.",
      kept: "Gardé : {setting} vaut {value}.",
      meanwhile:
        "Quelqu'un d'autre a changé {setting} entre-temps ; rien n'a été écrit. Regardez-le à nouveau.",
    },
    settingGroups: {
      budget: "Yeux et dégâts",
      choice: "Quel cordon reste",
      renewal: "Renouvellement des troncs et cordons",
      outlook: "Prévision de récolte",
      work: "Heures et journées",
      plan: "Plan du travail",
      checks: "Vérifications",
    },
    decide: {
      title: "Quel cordon reste",
      intro:
        "Un cep après l'autre : ce que disent ses comptages et les Réglages, et ce que vous décidez. Rien n'est écrit tant que vous n'appuyez pas sur un choix.",
      decide: "Décider les ceps",
      deciding: "Choix des cordons qui restent",
      progress: "Avancement du choix",
      none: "Aucun cep avec des cordons candidats. Prochaine étape : comptez-les dans la feuille Cordons, un par ligne.",
      write: "Écrire la feuille des choix",
      sum: "{all} {all:cep|ceps} : {ask} à voir, {lay} où l'on couche un sarment, {trunks} avec des troncs à renouveler.",
      caution:
        "Les chiffres conseillent ; qui est devant le cep décide. Regardez le bois avant de couper un cordon pour de bon.",
      show: "Montrer",
      ask: "à voir ({count})",
      lay: "un sarment est couché ({count})",
      trunks: "troncs à renouveler ({count})",
      all: "tous les ceps ({count})",
      block: "Parcelle",
      vine: "{block} rang {row} cep {vine}",
      fixed: "{outcome} : écrit dans la colonne des choix fixés de la feuille.",
      outcomes: {
        stays: "{cordon} reste",
        cane: "Coucher un sarment de {cordon}",
        none: "Aucun ne reste {at}",
        recount: "Recompter ce cep",
        free: "Redemander",
      },
      find: "Chercher un cep : parcelle, rang, cep",
      notFound:
        "Aucun cep ne répond à « {search} ». Écrivez la parcelle, le rang et le cep, comme dans {example}.",
      previous: "Cep précédent",
      next: "Cep suivant",
      position: "{at} sur {of}",
      notListed: "pas parmi les {of} de cette liste",
      stays: "Reste",
      kept: "Gardé",
      cut: "Coupé, dans cet ordre",
      keptSpur: "Un courson de renouvellement de {cordon} à la tête du tronc {trunk}.",
      keptCane: "Un sarment de {cordon} près de la tête, pour le côté : {side}.",
      keptWood: "Du bois vivant de {cordon}, qui renouvelle {renews} un autre hiver.",
      against: "Contre {cordon}, pour {rival} : {argument}.",
      nothingAgainst: "Aucun comptage ne parle contre.",
      recountCells: "À recompter, à cause de ces cellules :",
      decideVine: "Choisir",
      sideChoices: "Côté : {side}",
      wholeVine: "Le cep entier",
      rowPicture: "Rang {row} de {block}, cep par cep : {decided} décidés, {ask} à voir, {count} à compter.",
      rowKey: "Plein : décidé ; hachuré : à voir ; barré : à compter ; encadré : ce cep.",
      noColumn:
        "La feuille {sheet} n'a pas de colonne Choix fixé. Prochaine étape : écrivez cet en-tête à côté du tableau, puis décidez encore.",
    },
    outlook: {
      title: "Quelle récolte cela laisse",
      intro:
        "Des cordons qui restent aux pousses, grappes et récolte, avec une fourchette. Les comptages suivants la resserrent.",
      work: "Calculer la prévision",
      progress: "Avancement de la prévision",
      none: "Aucune parcelle trouvée. Prochaine étape : listez vos parcelles dans une feuille aux en-têtes Parcelle, Ceps, Entre rangs, Entre ceps, Poids de grappe.",
      caution:
        "Une prévision d'hiver se trompe souvent d'un tiers. Elle conseille ; gel, grêle, oiseaux et maladies n'y sont pas, et un conseiller local connaît votre lieu.",
      write: "Écrire la feuille Prévision de récolte",
      cannotSay: "On ne peut encore rien dire de cette parcelle ; ce qui manque est ci-dessous.",
      crop: "Probable {likely} {unit} ; de {low} à {high} dans {percent} cas sur 100 de ce genre.",
      stages: "Étape par étape",
      bar: "{stage} : bas {low}, probable {likely}, haut {high} {unit}.",
      aVine: "Un cep : environ {clusters} {clusters:grappe|grappes}, de {low} à {high} {unit}.",
      byPlan: "{stage}, selon le plan",
      harvests: "Vos propres récoltes",
      targetName: "objectif",
      axisKey:
        "Bande : de bas à haut, avec la récolte probable en travers ; bande en tirets : yeux tels que comptés, non selon le plan des fiches. Points : vos propres récoltes. Ligne en tirets : objectif.",
      stage: "Stade, en {unit}",
      low: "Bas",
      likely: "Probable",
      high: "Haut",
      target: "Objectif : {value} {unit}.",
      spread: "D'où vient le doute",
      steps: "Ce qui la resserrerait",
      load: "Rapport de charge",
      thinning: "Éclaircissage vers l'objectif",
      noThinning: "Les grappes comptées ne dépassent pas l'objectif : rien à enlever.",
      keep: "Chaque cep garde au plus {keep} {keep:grappe|grappes} ; environ {hours} {hours:heure|heures} d'une personne.",
      group: "Ceps",
      vines: "Combien",
      remove: "Enlever",
      left: "Restent",
      held: "{stage} : récolté {percent} % du probable, dans la fourchette.",
      missed: "{stage} : récolté {percent} % du probable, hors de la fourchette.",
      lacking: "Ce qui manque aux feuilles",
      figures: "Ce que disent vos récoltes",
      figure: "{figure}{cultivar} : {now} en vigueur, {value} d'après vos années.",
    },
    outlookSheet: {
      sheet: "Prévision de récolte",
      title: "Récolte attendue, par parcelle",
      stage: "Étape",
      confidence: "Confiance",
      clusters: "Grappes par cep",
      vineLow: "Cep, bas ({unit})",
      vineLikely: "Cep, probable ({unit})",
      vineHigh: "Cep, haut ({unit})",
      areaLow: "Surface, bas ({unit})",
      areaLikely: "Surface, probable ({unit})",
      areaHigh: "Surface, haut ({unit})",
      cropLow: "Parcelle, bas ({unit})",
      cropLikely: "Parcelle, probable ({unit})",
      cropHigh: "Parcelle, haut ({unit})",
      widest: "L'essentiel du doute",
      harvests: "Récoltes propres, moyenne ({unit})",
      againstHarvests: "Face aux récoltes propres",
      figures: "Chiffres employés",
      bar: "Barre du graphique",
      barName: "{block} : {stage}",
      toLikely: "Bas à probable ({unit})",
      toHigh: "Probable à haut ({unit})",
      chartTitle: "Récolte de la parcelle : basse, probable, haute",
      chartAxis: "Récolte ({unit})",
    },
    care: {
      title: "Entretien du classeur",
      progress: "Avancement",
      repairTitle: "Formules qui ne calculent plus",
      repairIntro:
        "Une formule tapée ou ouverte sans le complément peut rester à #NAME?. Elles sont d'abord montrées ; regarder ne change rien.",
      look: "Les chercher",
      looking: "Examen des feuilles",
      noRepairs: "Toutes nos formules sont bien écrites et calculent.",
      failing: "Nos formules qui affichent une erreur et ne se réparent pas d'ici : {cells}.",
      spill:
        "Affiche {shows} : quelque chose occupe les cellules dont le résultat a besoin. Videz les cellules à droite et en dessous.",
      error:
        "Affiche {shows} : ce qui lui est donné ne convient pas. Sélectionnez la cellule et ouvrez Fonctions, qui dit quoi.",
      found: "{cells} {cells:cellule peut être réparée|cellules peuvent être réparées}.",
      enterAgain: "Est saisie à nouveau telle quelle :",
      before: "Telle quelle",
      after: "Devient",
      repair: "Réparer {cells} {cells:cellule|cellules}",
      repaired:
        "{cells} {cells:cellule a été réparée|cellules ont été réparées} ; {left} {left:a été laissée car quelqu'un l'a changée|ont été laissées car quelqu'un les a changées} entre-temps.",
      undo: "Annuler la réparation",
      undone:
        "{cells} {cells:cellule est|cellules sont} comme avant ; {left} {left:a été laissée car quelqu'un l'a changée|ont été laissées car quelqu'un les a changées} entre-temps.",
      unknown: "{name} n'est pas une fonction de cette version ; la formule reste telle quelle.",
      testTitle: "Autotest",
      testIntro: "Essaie ce dont le complément a besoin ici, sur des feuilles à lui, ôtées ensuite.",
      test: "Lancer l'autotest",
      testing: "Test en cours",
      works: "marche",
      fails: "échoue",
      unsure: "pas vu",
      missing: "absent",
      version: "Cordonbook {version}, hôte : {host}.",
      calculates: "Le calcul lui-même.",
      reads: "Lire une feuille.",
      keeps: "Garder de petits faits dans le classeur.",
      writes: "Écrire une feuille à soi, texte comme texte.",
      inCells: "Fonctions CORDON dans les cellules.",
      notInCells:
        "Ouvrez le volet une fois avec les fonctions chargées, ou demandez à qui a installé le complément.",
      takesAway: "Ôter la feuille.",
      logTitle: "Qui a lancé quoi",
      logIntro: "Un petit journal dans le classeur, éteint tant que personne ne l'allume.",
      logAsk: "Montrer l'interrupteur",
      logSwitch: "Noter les lancements dans ce classeur",
      logCheck: "Vérifier",
      logWrite: "A écrit {sheet}",
    },
  },
  reading: {
    answers: {
      sheet: "Réponses",
      title: "Ce qui a été répondu sur les feuilles de ce classeur. Une ligne effacée est redemandée.",
      what: "Quoi",
      of: "De",
      answer: "Réponse",
      headOf: "en-tête dans {shape}",
      value: "valeur pour chaque ligne",
      leaveOut: "feuille non lue",
      unit: "unité",
      counterUnit: "unité d’un compteur",
      winter: "hiver",
      dateOrder: "ordre des dates",
      dayFirst: "jour en premier",
      monthFirst: "mois en premier",
      oddCounts: "comptages étranges pris comme proposé",
      recount: "comptages étranges à refaire",
    },
    notes: {
      mergedFilled:
        "Les cellules fusionnées valent pour toutes les lignes qu'elles couvrent ({areas} dans {sheets}).",
      filledDown:
        "Les clés écrites une fois par groupe valent jusqu'à la suivante : {columns} dans {sheets}.",
      keysAbove: "La parcelle ou le rang ont été pris dans les lignes au-dessus des en-têtes de {sheets}.",
      keysOfName: "La parcelle, le rang ou le côté ont été pris dans le nom de la feuille : {sheets}.",
      captions: "Les lignes entre les rangées de {sheets} ont été lues comme titres de parcelle et de rang.",
      labels: "{columns} ont été lus dans les étiquettes sous {head}, comme {examples} : {sheets}.",
      sidesOfNames:
        "Les côtés ont été lus dans la première lettre des noms de cordons, comme {examples} : {sheets}.",
      turned:
        "Une ligne contient plusieurs candidats dans {sheets} : {names} ont été lus chacun comme un cordon.",
      sideBySide: "Les tableaux côte à côte ont été lus l'un après l'autre : {sheets}.",
      secondHeads: "Les en-têtes plus bas ont été lus à part : {sheets}, ligne {row}.",
      twoParts: "{sheet} : les longueurs sont en deux colonnes, {head} et {second}, et ont été additionnées.",
      liveDerived: "Les coursons vivants ont été calculés comme {positions} moins {heads} dans {sheets}.",
      yearTaken: "Parmi les en-têtes avec une année, {head} a été pris dans {sheets}.",
      strokes:
        "{cells} {cells:comptage écrit en bâtons a été lu|comptages écrits en bâtons ont été lus}, comme {examples}.",
      worded:
        "{cells} {cells:comptage écrit avec un mot ou un signe a été lu|comptages écrits avec un mot ou un signe ont été lus}, comme {examples}.",
      ownUnits:
        "{cells} {cells:cellule a été lue dans l'unité qu'elle nomme|cellules ont été lues dans l'unité qu'elles nomment}, comme {examples}.",
      textNumbers:
        "{cells} {cells:nombre stocké comme texte a été lu comme nombre|nombres stockés comme texte ont été lus comme nombres}, par exemple {examples}.",
      datesSettled:
        "{cells} {cells:date lisible|dates lisibles} de deux façons {cells:a été lue|ont été lues} avec le {order}, comme le disent les autres jours du parcours ({examples}) : {sheets}.",
      totalLines:
        "{lines} {lines:ligne|lignes} de totaux {lines:n'a pas été lue comme comptage|n'ont pas été lues comme comptages} : {sheets}.",
      headsAgain:
        "{lines} {lines:ligne|lignes} d'en-têtes répétés n'{lines:a|ont} pas été {lines:lue|lues} comme comptages : {sheets}.",
      remarkLines:
        "{lines} {lines:ligne|lignes} avec une remarque dans une seule cellule n'{lines:a|ont} pas été {lines:lue|lues} comme comptages : {sheets}.",
      encodedTwice:
        "Le texte dont les lettres avaient été codées deux fois a été lu comme il devait l'être, dans {cells} {cells:cellule|cellules}, par exemple « {from} » comme « {to} » : {sheets}.",
      hiddenRows:
        "{lines} {lines:ligne masquée a été lue|lignes masquées ont été lues} comme les autres : {sheets}.",
      hiddenColumns: "Les colonnes masquées ont été lues comme les autres ({columns}) : {sheets}.",
      oneWinter:
        "Des comptages à quelques semaines d'écart sur des ceps différents ont été pris comme un seul hiver, {winter} : {sheets}.",
      plantingYear:
        "L'année dans le nom d'une feuille n'a pas été prise pour un hiver passé, car aucune autre feuille ne contient ses ceps : {sheets}.",
    },
    evidence: {
      name: "le nom de la feuille dit",
      sheets: "les comptages de ceps ou de bourgeons disent",
      today: "à la date d'aujourd'hui ce ne peut être que",
    },
    questions: {
      heads:
        "{sheets} : {rows} {rows:ligne se trouve sous des en-têtes inconnus et n'a pas été lue|lignes se trouvent sous des en-têtes inconnus et n'ont pas été lues}. {heads} sont-ils les colonnes {columns} ?",
      noHeads:
        "{sheet} : {rows} {rows:ligne ressemble à des comptages, mais aucun en-tête connu ne se trouve au-dessus, et elle n'a pas été lue|lignes ressemblent à des comptages, mais aucun en-tête connu ne se trouve au-dessus, et elles n'ont pas été lues}. Écrivez au-dessus des en-têtes comme Parcelle, Rang, Cep et Côté, ou laissez la feuille de côté.",
      head: "{sheets} : {head} {heads:est-il|sont-ils} la colonne {column} de cette saison ?",
      unit: "{sheets} : dans quelle unité {head} est-il écrit ? La colonne n'a pas été lue.",
      counterUnit:
        "{sheets} : {counter} semble avoir écrit {rows} {rows:valeur|valeurs} sous {head} en {likely} et non en {unit} ; {rows:elle n’a pas été lue|elles n’ont pas été lues}. Dans quelle unité {rows:est-elle|sont-elles}?",
      dateOrder:
        "{sheet} : {cells} {cells:date peut|dates peuvent} se lire avec le jour ou le mois d'abord et {cells:n'a pas été lue|n'ont pas été lues}. Lequel vient d'abord ?",
      noYear:
        "{sheets} : {cells} {cells:date|dates} comme {examples} {cells:ne porte|ne portent} pas d'année et {cells:n'a pas été lue|n'ont pas été lues}. De quel hiver {cells:est-elle|sont-elles} ?",
      winter:
        "{sheets} : {rows} {rows:ligne est datée de l'hiver|lignes sont datées de l'hiver} {winter} et {rows:n'est|ne sont} dans aucun résultat. {rows:Appartient-elle|Appartiennent-elles} à {likely} ?",
      otherWinter:
        "{sheets} : {rows} {rows:ligne est datée|lignes sont datées} de l'hiver {winter}, mais {by} l'hiver {likely}. Lequel est-ce ?",
      oddCounts:
        "{sheet} : {cells} {cells:cellule|cellules} de {columns} {cells:contient|contiennent} {kind}, comme {examples}, et {cells:n'a pas été lue|n'ont pas été lues}. Qu'a-t-on compté ?",
      keys: "{sheets} : aucune colonne, aucun titre ni nom n'indique {columns}. Laquelle est-ce ?",
      hidden:
        "{sheet} est masquée et ses comptages n'ont pas été lus. Affichez la feuille pour qu'ils soient lus, ou laissez-la de côté.",
    },
    leftOut: {
      otherHeads:
        "{sheet} n'a pas été lue : {rows:sa|ses} {rows} {rows:ligne se trouve|lignes se trouvent} sous d'autres en-têtes.",
      hidden: "{sheet} n'a pas été lue : elle est masquée.",
      notCounts: "{sheet} n'a pas été lue : elle ne contient pas de comptages.",
      notCalculated:
        "{sheet} : {rows} {rows:ligne contient des formules jamais calculées et n'a pas été lue|lignes contiennent des formules jamais calculées et n'ont pas été lues}. Ouvrez le fichier dans un tableur, laissez-le calculer, enregistrez-le et recommencez.",
      toCount:
        "{sheet} : {rows} {rows:ligne est préparée et vide ; son cep est compté|lignes sont préparées et vides ; leurs ceps sont comptés} dans d'autres feuilles.",
      pastWinter: "{sheet} : {rows} {rows:ligne appartient|lignes appartiennent} à l'hiver {winter}.",
      byAnswer: "{sheet} a été laissée de côté selon votre réponse.",
      total: "{sheet} : la colonne {head} contient des totaux et n'a pas été lue.",
      qualifier:
        "{sheet} : la colonne {head} porte sur autre chose que les comptages de cet hiver et n'a pas été lue.",
      otherColumn:
        "{sheet} : la colonne {head} n'a pas été lue : son en-tête n'est aucun de ceux qui sont connus.",
      asked: "{sheet} : la colonne {head} n'a pas été lue : une question à son sujet est ouverte.",
      repeated: "{sheet} : la colonne {head} n'a pas été lue : une autre colonne du même nom l'a été.",
      noHead: "{sheet} : la colonne {head} n'a pas été lue : aucun en-tête ne se trouve au-dessus.",
    },
    account: {
      read: "Lu : {files} {files:fichier|fichiers}, {sheets} {sheets:feuille|feuilles}, {tables} {tables:tableau|tableaux}, {columns} {columns:colonne|colonnes}, {rows} {rows:ligne|lignes}.",
      winters: "Pris comme comptages {count:de l'hiver|des hivers} {winters}.",
      notRead: "Non lu : {parts}.",
      open: "{questions} {questions:question reste ouverte|questions restent ouvertes}.",
      more: "{names} et {more} de plus",
      parts: {
        hidden: "{names} (masquée)",
        otherHeads: "{names} (autres en-têtes)",
        notCounts: "{names} (sans comptages)",
        notCalculated: "{lines} {lines:ligne|lignes} de {names} (formules jamais calculées)",
        toCount: "{lines} {lines:ligne vide|lignes vides} de {names} (comptées ailleurs)",
        pastWinter: "{lines} {lines:ligne|lignes} de {names} (un hiver passé)",
        byAnswer: "{names} (laissée de côté comme répondu)",
        total: "{count:la colonne|les colonnes} {names} (totaux)",
        qualifier: "{count:la colonne|les colonnes} {names} (pas des comptages de cet hiver)",
        otherColumn: "{count:la colonne|les colonnes} {names} (en-tête inconnu)",
        asked: "{count:la colonne|les colonnes} {names} (question ouverte)",
        repeated: "{count:la colonne|les colonnes} {names} (nommée deux fois)",
        noHead: "{count:la colonne|les colonnes} {names} (sans en-tête)",
        totalLines: "{lines} {lines:ligne|lignes} de totaux",
        headsAgain: "{lines} {lines:ligne|lignes} d'en-têtes répétés",
        remarkLines: "{lines} {lines:ligne|lignes} de remarques",
        otherFormat: "{names} (autre format)",
        copy: "{names} ({count:copie|copies} d'un autre fichier)",
      },
    },
    kinds: {
      sum: "des sommes",
      star: "des nombres avec une étoile",
      range: "des intervalles",
      about: "des nombres approximatifs",
      doubt: "des nombres avec un point d'interrogation",
      letter: "des lettres à la place de chiffres",
      share: "des pourcentages",
      fraction: "des fractions",
      remark: "des nombres avec une remarque",
      spaced: "deux nombres",
      measure: "des longueurs",
      date: "des dates",
      time: "des heures",
      yesNo: "VRAI ou FAUX",
      part: "une partie d'un tout",
    },
  },
  usedRows: {
    usedRows: {
      all: "Calculé avec {rows:la|les} {rows} {rows:ligne|lignes} des feuilles Cordons.",
      some: "Calculé avec {used} {rows:de la|des} {rows} {rows:ligne|lignes} des feuilles Cordons.",
      leftOut: "Laissées de côté : {leftOut}.",
      column: "{rows} où {column} {reason} (la première dans {sheet}, ligne {row})",
      sameVine: "{rows} à côté d'elles sur les mêmes ceps",
      toCount: "{rows} encore à compter (la première dans {sheet}, ligne {row})",
    },
    faultWords: {
      blank: "est vide",
      text: "est un nombre en texte",
      unreadable: "est illisible",
      error: "contient une erreur",
      outside: "dépasse ses limites",
      notWhole: "n'est pas un nombre entier",
      contradicted: "contredit une autre cellule de sa ligne",
      noColumn: "n'a pas de colonne",
      moved: "est dans une ligne qui a plus de cellules que d'en-têtes",
      tooMany: "figure sur plus de lignes qu'un cep n'a de cordons",
      marked: "demande de recompter le cep",
    },
  },
  heads: {
    gaps: "Vides",
    share: "Part",
    sheet: "Feuille",
    made: "Écrite par Cordonbook le {date} ; elle est réécrite à chaque fois : n'y tapez rien.",
  },
};
