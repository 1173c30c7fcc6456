import type { Texts } from "./en";

/** Every text in Spanish. */
export const es: Texts = {
  language: { name: "Español" },
  lengths: { inches: "pulg" },
  crops: { tons: "t cortas", tonsAnAcre: "t cortas/acre" },
  settingNames: {
    nodeRule: "Regla de yemas",
    belowOnePound: "Menos de una libra",
    leastNodesAVine: "Mínimo de yemas por planta",
    mostNodesAVine: "Máximo de yemas por planta",
    nodesByLength: "Yemas por largo",
    injuryRule: "Regla de daño",
    intervalForDeadBuds: "Intervalo de yemas muertas",
    confidenceOfRanges: "Confianza de los rangos",
    spurSpacing: "Distancia entre pitones",
    nodesASpur: "Yemas por pitón",
    weightOfLiveSpurs: "Peso de los pitones vivos",
    weightOfLongestGap: "Peso del hueco más largo",
    weightOfSpurPlacing: "Peso de la posición de los pitones",
    weightOfSoundness: "Peso de la sanidad",
    weightOfDiameter: "Peso del diámetro",
    spaceBetweenNeighbouringCordons: "Espacio entre cordones vecinos",
    gapThatScoresNothing: "Hueco que no puntúa",
    worthOfASpur: "Valor de un pitón {direction}, {system}",
    soundnessOfAnInjuredCordon: "Sanidad de un cordón dañado",
    soundnessOfADiseasedCordon: "Sanidad de un cordón enfermo",
    weakCordonDiameter: "Diámetro de un cordón débil",
    fullCordonDiameter: "Diámetro de un cordón pleno",
    twoCordonsOnTwoTrunks: "Dos cordones en dos troncos",
    costOfAnInjuredTrunk: "Costo de un tronco dañado",
    costOfADiseasedTrunk: "Costo de un tronco enfermo",
    worthOfANewCane: "Valor de un sarmiento nuevo",
    shortestCordon: "Cordón más corto",
    closeCall: "Caso parejo",
    cordonsOnAVine: "Cordones por planta",
    blankCondition: "Estado en blanco",
    trunksWantedOnAVine: "Troncos deseados por planta",
    trunkAgeThatRenews: "Edad del tronco que se renueva",
    emptyShareThatRenewsACordon: "Parte vacía que renueva un cordón",
    badlyPlacedShareThatRenewsACordon: "Parte mal orientada que renueva un cordón",
    spurHeightThatLowers: "Altura de pitón que se rebaja",
    thickShareOfANewCane: "Parte gruesa de un sarmiento nuevo",
    trunksLostAYear: "Troncos perdidos por año",
    missingTrunksBroughtUpAYear: "Troncos faltantes criados por año",
    usualBudbreak: "Brotación usual",
    budbreakYearToYear: "Brotación, de año en año",
    usualClustersAShoot: "Racimos por brote usuales",
    usualClusterWeight: "Peso de racimo usual",
    clusterWeightBetweenCultivars: "Peso de racimo, entre variedades",
    clustersAShootYearToYear: "Racimos por brote, de año en año",
    clusterWeightYearToYear: "Peso de racimo, de año en año",
    clusterWeightBetweenClusters: "Peso de racimo, entre racimos",
    worthOfASecondaryShoot: "Valor de un brote secundario",
    secondariesAreWritten: "Las secundarias se anotan",
    basalShootsASpur: "Brotes basales por pitón",
    worthOfABasalShoot: "Valor de un brote basal",
    frostedNodesAsOne: "Yemas heladas como una",
    lagPhaseMultiplier: "Multiplicador de la fase de pausa",
    lagPhaseMultiplierYearToYear: "Multiplicador de la fase de pausa, de año en año",
    clustersWeighed: "Racimos pesados",
    vinesWereDrawn: "Las plantas se sortearon",
    spreadBetweenVines: "Dispersión entre plantas",
    marginOfACount: "Margen de un conteo",
    spreadBetweenFarms: "Dispersión entre fincas",
    budbreakBetweenFarms: "Brotación, entre fincas",
    lagPhaseMultiplierBetweenFarms: "Multiplicador de la fase de pausa, entre fincas",
    cropLoadRange: "Intervalo de relación de carga",
    leastCropLoad: "Relación de carga mínima, {range}",
    mostCropLoad: "Relación de carga máxima, {range}",
    clustersAVineInYear2: "Racimos por planta en el año 2",
    clustersAVineInYear3: "Racimos por planta en el año 3",
    floorOfLiveSpurs: "Piso de pitones vivos",
    minutesToCountAVine: "Minutos para contar una planta",
    minutesToCutACane: "Minutos para cortar un sarmiento",
    minutesToWeighACluster: "Minutos para pesar un racimo",
    minutesForANextStep: "Minutos para un paso más",
    leastGainOfANextStep: "Ganancia mínima de un paso más",
    minutesAVinePruning: "Minutos por planta, poda",
    minutesAVineThinning: "Minutos por planta, raleo de racimos",
    shootsByLength: "Brotes por largo",
    minutesAVineShootThinning: "Minutos por planta, raleo de brotes",
    crew: "Cuadrilla",
    hoursADay: "Horas por día",
    planLeastNodesASpur: "Plan: mínimo de yemas por pitón",
    planMostNodesASpur: "Plan: máximo de yemas por pitón",
    tenderCultivars: "Variedades sensibles",
    fruitfulSecondaries: "Secundarias fértiles",
    doublePruning: "Doble poda",
    doublePruningNodesOfTheFirstPass: "Doble poda: yemas de la primera pasada",
    doublePruningTimeOfTheSecondPass: "Doble poda: tiempo de la segunda pasada",
    pruningStarts: "Empieza la poda",
    secondPassStarts: "Empieza la segunda pasada",
    shootThinningStarts: "Empieza el raleo de brotes",
    daysAWeek: "Días por semana",
    daysOff: "Días libres",
    ribbonStays: "Cinta, queda",
    ribbonAsk: "Cinta, preguntar",
    vinesACardPage: "Plantas por página de tarjeta",
    unitSystem: "Sistema de unidades",
    leastDistanceBetweenSpurs: "Distancia mínima entre pitones",
    unlikeItsBlockSpread: "Distinto de su cuartel: dispersión",
    unlikeItsBlockLeastValues: "Distinto de su cuartel: mínimo de valores",
    unlikeItsBlockFewValuesTimes: "Distinto de su cuartel: veces el medio de pocos valores",
    walkOrderMostVinesOutOfOrder: "Orden de recorrido: máximo de plantas fuera de orden",
    cordonLengthMostOfItsSpace: "Largo de cordón: máximo de su espacio",
    cordonLengthLeastOfItsSpace: "Largo de cordón: mínimo de su espacio",
    cordonDiameterLeast: "Diámetro de cordón, mínimo",
    cordonDiameterMost: "Diámetro de cordón, máximo",
    nodesASpurLeast: "Yemas por pitón, mínimo",
    nodesASpurMost: "Yemas por pitón, máximo",
    trunksAVineMost: "Troncos por planta, máximo",
    cordonsAVineMost: "Cordones por planta, máximo",
    seasonOfCountsFirstMonth: "Temporada de conteos: primer mes",
    seasonOfCountsLastMonth: "Temporada de conteos: último mes",
    countedRowLeastShareOfItsVines: "Hilera contada: parte mínima de sus plantas",
    copiedDownUnlikelihood: "Rellenado hacia abajo: improbabilidad",
    swappedColumnsLeastRows: "Columnas cambiadas: mínimo de filas",
    digitPreferenceLeastValues: "Preferencia de cifras: mínimo de valores",
    digitPreferenceShareMoreThanOthers: "Preferencia de cifras: parte por encima de los otros",
    digitPreferenceStandardErrors: "Preferencia de cifras: errores estándar",
    counterUnlikeOthersStandardErrors: "Contador distinto de los otros: errores estándar",
    counterUnlikeOthersLeastDifference: "Contador distinto de los otros: diferencia mínima",
    lastYearMostPositionsMore: "Año pasado: máximo de posiciones de más",
  },
  settings: {
    budget: {
      nodeRule:
        "Regla para cuarteles sin regla: fórmula como 30+10 (americanas; híbridos franceses 20+10, híbridos nuevos 20+20 según la misma fuente), por longitud o un número de yemas.",
      belowOnePound:
        "Plantas con menos de una libra (0,45 kg) de poda: refuse (sin cifra; ninguna fuente vista las cubre), flat (las yemas de la primera libra) o pro rata (esas por el peso).",
      leastNodesAVine:
        "Un presupuesto menor se sube a esta cifra; 0 no sube ninguno. No se vio límite publicado.",
      mostNodesAVine:
        "Un presupuesto mayor se recorta a esta cifra. Dos cordones altos de 8 a 15 pitones de dos yemas llevan 32 a 60; Concord lleva 100 (Bates), lo que vale para ese cultivar.",
      nodesByLength:
        "Yemas por largo de separación entre plantas para la regla por longitud; la fuente da 4 a 6 por pie (13 a 20 por metro).",
      injuryRule:
        "Regla que corrige por yemas primarias muertas donde el cuartel no nombra otra. Las reglas discrepan; no se promedian.",
      intervalForDeadBuds:
        "Cómo se hace el rango de la parte de yemas muertas: Wilson, o el más ancho Clopper-Pearson.",
      confidenceOfRanges:
        "Cuántas veces el rango debe contener la cifra real: 0.9 es nueve cuarteles de diez.",
      spurSpacing:
        "Largo de cordón por pitón; la fuente da 3 a 5 pulg (8 a 13 cm), NC State 3 a 8 pulg (8 a 20 cm).",
      nodesASpur: "Yemas contadas por pitón; la fuente da 2 a 3. La yema basal no se cuenta.",
    },
    checks: {
      unitSystem:
        "Unidad de largos y pesos bajo encabezados sin unidad: US (ft, in, lb), metric (m, mm, kg), o la de los encabezados que sí la nombran.",
      leastDistanceBetweenSpurs:
        "Posiciones más juntas que esto en promedio no pueden ser; las distancias publicadas empiezan en 3 pulg, 8 cm (Minnesota 2022).",
      unlikeItsBlockSpread:
        "Se pregunta por un valor tan lejos del centro de su cuartel, en veces la dispersión usual (mediana; Iglewicz y Hoaglin 1993 empiezan en 3,5, de memoria).",
      unlikeItsBlockLeastValues:
        "Un cuartel con menos valores que esto es demasiado chico para saber qué es usual.",
      unlikeItsBlockFewValuesTimes:
        "Con solo cinco valores o poco más se pregunta por un valor desde tantas veces su medio, o por debajo de su parte.",
      walkOrderMostVinesOutOfOrder:
        "Si más plantas de la hilera que esta parte están fuera de orden, la hoja se ordenó de otra manera y no se juzga.",
      cordonLengthMostOfItsSpace:
        "Se pregunta por un cordón más largo que tantas veces la parte de su lado en el espacio de la planta.",
      cordonLengthLeastOfItsSpace:
        "Se pregunta por un cordón sano de una planta en producción más corto que tantas veces su parte.",
      cordonDiameterLeast:
        "Se pregunta por un cordón más delgado; la madera para pitones y cargadores mide 5/16 a 1/2 pulg, 8 a 13 mm (Westover 2016).",
      cordonDiameterMost: "Se pregunta por un cordón más grueso. No se vio límite publicado.",
      nodesASpurLeast: "Se pregunta si hay menos yemas por pitón que esto.",
      nodesASpurMost:
        "Se pregunta si hay más yemas por pitón que esto; lo usual es dos a tres (UMN 2022), cuatro antes de una segunda pasada.",
      trunksAVineMost:
        "Se pregunta por una planta con más troncos: lo usual es dos, hasta cuatro en variedades muy sensibles.",
      cordonsAVineMost:
        "Filas de cordones desde las que el número de una planta se rellenó por error: la planta no se decide.",
      seasonOfCountsFirstMonth: "Los cordones y las yemas se cuentan en plantas en reposo desde este mes.",
      seasonOfCountsLastMonth: "Los cordones y las yemas se cuentan hasta este mes.",
      countedRowLeastShareOfItsVines:
        "En una hilera de la que se contó esta parte se pregunta por una planta sin cordón; por debajo aún se está contando.",
      copiedDownUnlikelihood:
        "Se pregunta por plantas vecinas con números iguales cuando el azar las da menos de una vez en diez elevado a esta cifra.",
      swappedColumnsLeastRows:
        "Tantas filas que solo cuadran con dos columnas cambiadas se toman por un tramo de columnas cambiadas.",
      digitPreferenceLeastValues: "No se juzga a quien tiene menos valores.",
      digitPreferenceShareMoreThanOthers:
        "Se pregunta a quien tiene valores terminados en 0 o 5 al menos en esta parte más que los demás.",
      digitPreferenceStandardErrors: "Y la diferencia debe ser tantas veces lo que da el azar.",
      counterUnlikeOthersStandardErrors:
        "Se pregunta por quien difiere de los demás en los mismos cuarteles tantas veces lo que da el azar.",
      counterUnlikeOthersLeastDifference:
        "Y la diferencia debe ser al menos esta parte de la cifra de los demás.",
      lastYearMostPositionsMore:
        "Se pregunta por un cordón con más posiciones nuevas que esto, aparte de lo que da su crecimiento en largo.",
    },
    choice: {
      directions: ["hacia abajo", "de lado", "hacia arriba"],
      worthMeaning:
        "Lo que vale un pitón {direction} en este sistema ({system}). El orden es práctica común, la cifra es nuestra.",
      liveSpurs: "Cuánto cuentan los pitones vivos frente a los que el largo debería llevar.",
      longestGap: "Cuánto cuenta el tramo más largo sin pitón; dura toda la vida del cordón.",
      spurPlacing: "Cuánto cuenta hacia dónde apuntan los pitones según la conducción.",
      soundness: "Cuánto cuenta el estado del propio cordón.",
      diameter: "Cuánto cuenta el grosor del cordón.",
      spaceBetweenNeighbouringCordons:
        "Alambre libre entre las puntas de cordones vecinos: el ancho de una mano según la fuente; la cifra para una mano es nuestra.",
      gapThatScoresNothing:
        "Un tramo de tantas posiciones sin pitón no gana nada por el hueco más largo. Un lugar vacío suelto es un pitón que falta, no un tramo.",
      weakCordonDiameter:
        "Hasta aquí el grosor no gana nada: no es más grueso que un sarmiento, cuyo extremo grueso mide 1/2 pulg (13 mm).",
      fullCordonDiameter: "Desde aquí, todo: el grosor de un cordón que lleva años en su sitio.",
      twoCordonsOnTwoTrunks:
        "Lo que ganan dos cordones de dos troncos frente a dos de uno: los dos cordones permanentes no deben colgar de un solo tronco. La cifra es nuestra.",
      costOfAnInjuredTrunk: "Lo que pierde un cordón porque su tronco está dañado.",
      costOfADiseasedTrunk: "Lo que pierde un cordón porque su tronco está enfermo.",
      worthOfANewCane: "Un cordón que vale menos se corta y en su lugar se tiende un sarmiento.",
      shortestCordon: "Más corto que esto es un resto en la cabeza, no un cordón.",
      closeCall: "Dos planes para una planta que no distan más que esto son pregunta para una persona.",
      cordonsOnAVine: "Cordones permanentes deseados: 2 es uno por lado, 1 es un solo cordón.",
      blankCondition: "Qué significa un estado vacío: nadie miró, o la cuadrilla solo marca lo dañado.",
      soundnessOfAHurtCordon: "Entre un cordón muerto (0) y uno sano (1).",
    },
    outlook: {
      rangeWords: {
        "single canopy": "follajes simples",
        "divided canopy": "follajes divididos",
        hybrids: "híbridos",
        Concord: "Concord",
      },
      leastCropLoad: "Cosecha sobre poda por debajo de la cual los {vines} podrían llevar más.",
      mostCropLoad: "Cosecha sobre poda por encima de la cual los {vines} llevan demasiado para su tamaño.",
      usualBudbreak: "Parte de las yemas vivas que brotan, para cuarteles que no la dan.",
      budbreakYearToYear:
        "Variación de la brotación entre años, en puntos: 0.06 son seis puntos arriba o abajo en dos años de tres.",
      usualClustersAShoot:
        "Racimos por brote, para cuarteles que no los dan; no se vio cifra publicada de una variedad resistente al frío.",
      usualClusterWeight:
        "Hacia lo que se acercan los pesos de racimo propios mientras hay pocos años; de casi ninguna variedad resistente al frío se vio un peso publicado.",
      clusterWeightBetweenCultivars:
        "Cuánto se apartan variedades y fincas del peso de racimo usual; grande, para que pronto cuenten los años propios.",
      clustersAShootYearToYear:
        "Variación de racimos por brote entre años, sobre la media; la fuente dice cerca del 25 %, tomado aquí como desviación estándar.",
      clusterWeightYearToYear:
        "Variación del peso medio del racimo entre años, sobre la media: 0.25 x raíz de (40 / 60) da 0.204 según la fuente.",
      clusterWeightBetweenClusters:
        "Variación entre racimos de un cuartel, sobre la media; dice cuán segura es una muestra de racimos pesados.",
      worthOfASecondaryShoot:
        "Cosecha de un brote de yema secundaria frente a uno de primaria: 0.275 / 0.725, calculado del 70 a 75 % de la fuente, que es de la mayoría de los cultivares del este y del Medio Oeste. Un cuartel puede tener el suyo; Concord, Niagara, Norton y Marquette tienen uno publicado.",
      secondariesAreWritten:
        "De qué yemas son las secundarias vivas de la hoja de cortes: de todas, solo bajo primarias muertas, o según digan los conteos, que preguntan donde caben ambas.",
      basalShootsASpur: "Brotes de yemas no contadas, por pitón; 0 hasta que la finca los cuente.",
      worthOfABasalShoot: "Racimos de un brote basal frente a uno contado.",
      frostedNodesAsOne:
        "Yemas contadas tras la helada que dicen tanto como una sorteada sola, porque las vecinas comparten su suerte: 1 + 7 x 0.1 con ocho yemas por sarmiento parecidas en 0.1.",
      lagPhaseMultiplier:
        'Peso en cosecha sobre peso en fase de pausa: 2 fijo en Iowa, "no fijo" en Maryland, 2 solo para Pinot noir de Willamette según Wolfe.',
      lagPhaseMultiplierYearToYear:
        "Variación del multiplicador entre años, sobre la media; con 0.1 entre fincas hace los 0.18 en total de la fuente.",
      clustersWeighed:
        "Racimos detrás de una media pesada, donde la hoja Cosecha no lo dice; la fuente pide 100 a 200.",
      vinesWereDrawn:
        "Cómo se eligieron las plantas contadas: at random (al azar en el cuartel) o by row (un número en cada hilera). Solo by row si se hizo así.",
      spreadBetweenVines:
        "Desviación estándar entre plantas sobre la media, para planear un conteo; el rendimiento de 125 plantas en la fuente. Un piloto de cinco plantas o más lo reemplaza.",
      marginOfACount:
        "Con qué cercanía debe conocerse la media; la fuente llama buena a una estimación dentro del 10 %.",
      spreadBetweenFarms:
        "Cuánto se apartan las fincas de una cifra publicada; cuanto mayor, antes cuentan los años propios.",
      budbreakBetweenFarms: "Lo mismo para la brotación, en puntos.",
      lagPhaseMultiplierBetweenFarms: "Lo mismo para el multiplicador de la fase de pausa.",
      cropLoadRange:
        "Rango con nombre con que se compara cosecha sobre poda. Follaje sencillo y dividido son de vinifera en California, Concord es de Nueva York.",
      clustersAVineInYear2: "Máximo de racimos por planta en el segundo año tras la plantación.",
      clustersAVineInYear3:
        "Máximo de racimos por planta en el tercer año; la fuente da unos 10 para la primera cosecha.",
      floorOfLiveSpurs:
        "Pitones vivos sobre posiciones por debajo de lo cual hay que rehacer el cuartel; no se vio cifra publicada.",
      minutesToCountAVine: "Minutos para hallar una planta elegida y contar sus brotes o racimos.",
      minutesToCutACane: "Minutos para traer un sarmiento y cortar y juzgar sus yemas.",
      minutesToWeighACluster: "Minutos para cosechar y pesar un racimo.",
      leastGainOfANextStep: "En qué parte debe estrechar el rango un próximo paso para que valga su tiempo.",
      minutesForANextStep:
        "Tiempo de una persona que la perspectiva gasta en el papel, para decir qué estrecharía más el rango.",
    },
    plan: {
      planLeastNodesASpur: "Si el presupuesto es chico, los pitones se rebajan a estas yemas.",
      planMostNodesASpur:
        "Si el alambre lleva pocos pitones, se dejan a lo sumo de este largo; la fuente da 2 a 3 yemas.",
      tenderCultivars:
        "Variedades o cuarteles que se podan al final porque el invierno los daña más; separados por comas.",
      fruitfulSecondaries:
        "Variedades o cuarteles cuyas yemas secundarias dan buena fruta y pueden podarse primero; separados por comas.",
      doublePruning: "Variedades o cuarteles que se podan en dos pasadas; separados por comas.",
      doublePruningNodesOfTheFirstPass:
        "Primera pasada a tantas veces las yemas deseadas; la fuente da 2 a 3 veces, la segunda poco después de brotar.",
      doublePruningTimeOfTheSecondPass:
        "Parte del tiempo de poda que toma la segunda pasada; la primera toma todo.",
      pruningStarts: "Primer día de poda, como fecha.",
      secondPassStarts: "Primer día de la segunda pasada de la doble poda, como fecha.",
      shootThinningStarts:
        "Primer día del raleo de brotes, con unas 5 pulg (13 cm) de crecimiento, como fecha.",
      daysAWeek: "Días de la semana en que poda la cuadrilla, desde el lunes.",
      daysOff: "Días en que nadie poda, como 2026-02-16, separados por comas.",
      ribbonStays: "Color de la cinta que la finca ata al cordón que queda.",
      ribbonAsk: "Color de la cinta para un cordón que alguien debe mirar antes.",
      vinesACardPage: "Plantas impresas en una página de la tarjeta.",
    },
    renewal: {
      trunksWantedOnAVine:
        "Troncos vivos que una planta debería tener: normalmente 2, hasta 4 en variedades muy sensibles.",
      trunkAgeThatRenews:
        "Desde esta edad un tronco se renueva según plan: cada 10 a 12 años aun en las mejores condiciones, a menudo antes.",
      emptyShareThatRenewsACordon:
        "Desde esta parte de lugares sin pitón vivo, el cordón se renueva. Un solo tramo muerto de esa parte hace que el cordón no valga más que un sarmiento nuevo. Ninguna fuente da una cifra: Oregon State nombra menos cosecha, zonas muertas, pitones mal ubicados y pocos pitones.",
      badlyPlacedShareThatRenewsACordon:
        "Desde esta parte de pitones vivos mal orientados, el cordón se renueva. Ninguna fuente da una cifra.",
      spurHeightThatLowers:
        "Desde esta altura sobre el cordón, los pitones se rebajan a un brote cercano. Ninguna fuente da una altura.",
      thickShareOfANewCane:
        "Cuánto de un sarmiento se tiende en un año: su mitad exterior es fina y débil, así que el cordón se alarga por etapas.",
      trunksLostAYear:
        "Parte de troncos vivos que mata un invierno, para el pronóstico; los conteos de la finca dicen más.",
      missingTrunksBroughtUpAYear:
        "Parte de plantas por debajo de lo deseado en las que un año después hay un tronco más.",
    },
    work: {
      minutesAVinePruning:
        "Minutos que una persona necesita por planta: 80 plantas en unas 4 horas según la fuente. Un minuto por planta son 13,45 horas por acre a 6 x 9 pies (33 horas por hectárea a 1,8 x 2,7 m; Cornell labour); mida a su cuadrilla.",
      minutesAVineThinning:
        "Minutos que una persona necesita para quitar racimos de una planta; mida a su cuadrilla.",
      shootsByLength:
        "Brotes que quedan por largo de alambre al ralear, con unas 5 pulg (13 cm) de crecimiento: 6 por pie (20 por metro) en el ensayo de la fuente; Michigan State dice 15 por metro, 4,57 por pie.",
      minutesAVineShootThinning:
        "Minutos que una persona necesita para quitar los brotes que sobran de una planta; mida a su cuadrilla.",
      crew: "Personas que podan a la vez.",
      hoursADay: "Horas que cada persona poda en un día de invierno, sin las pausas para calentarse.",
    },
    ownFigure: "cifra propia",
    settingChangeProblems: {
      noTable: "No hay tabla de ajustes en la hoja {sheet}.",
      unknown: "No existe el ajuste «{setting}».",
      notANumber: "{setting} necesita un número, pero se dio «{value}».",
      outside: "{setting} debe estar entre {expected}, pero se dio {value}.",
      notAChoice: "{setting} debe ser uno de {expected}, pero se dio «{value}».",
      wrongUnit: "{setting} está en la hoja con una unidad que no mide lo mismo que {expected}.",
    },
    settingsSteps: {
      names: "Los ajustes renombrados reciben su nombre actual: {names}.",
      columns: "Columnas para lo que es cada cifra: {names}.",
      history: "Columnas para quién cambió una cifra y cuándo: {names}.",
      rows: "Ajustes que la tabla aún no tenía: {names}.",
    },
  },
  sheets: {
    sides: { left: "izquierda", right: "derecha", north: "norte", south: "sur", east: "este", west: "oeste" },
    conditions: { sound: "sano", injured: "dañado", diseased: "enfermo", dead: "muerto" },
    statuses: { bearing: "en producción", young: "joven", missing: "faltante", replanted: "replantada" },
    grapeKinds: {
      american: "americana",
      frenchHybrid: "francoamericana",
      newHybrid: "híbrido nuevo",
      vinifera: "vinífera",
      table: "uva de mesa sin semilla",
    },
    trainings: { highWire: "alambre alto", upright: "brotes erguidos", divided: "follaje dividido" },
    block: { header: "Cuartel", help: "Nombre del cuartel, como en la hoja Cuarteles." },
    row: { header: "Hilera", help: "Número de la hilera en el cuartel." },
    vine: { header: "Planta", help: "Número de la planta en la hilera, contado desde el inicio." },
    countedBy: { header: "Contado por", help: "Iniciales de quien contó." },
    countedOn: { header: "Fecha", help: "Día del conteo." },
    cordons: {
      name: "Cordones",
      rowIs: "un cordón candidato",
      side: {
        header: "Lado",
        help: "Lado de la planta: izquierda o derecha al caminar desde la planta 1, o un punto cardinal.",
      },
      cordon: { header: "Cordón", help: "Letra del candidato en esta planta: A, B, C." },
      trunk: {
        header: "Tronco",
        help: "Número del tronco del que sale el cordón; 1 es el más cercano al inicio.",
      },
      length: {
        header: "Largo",
        help: "Largo del cordón desde la cabeza hasta la punta; unidad en el encabezado.",
      },
      positions: { header: "Posiciones", help: "Lugares del cordón donde debería haber un pitón." },
      liveSpurs: { header: "Pitones vivos", help: "Lugares con un pitón vivo." },
      longestGap: { header: "Hueco más largo", help: "Tramo más largo sin pitón vivo, en posiciones." },
      spursDown: { header: "Pitones abajo", help: "Pitones vivos que apuntan abajo." },
      spursLevel: { header: "Pitones de lado", help: "Pitones vivos que apuntan de lado." },
      spursUp: { header: "Pitones arriba", help: "Pitones vivos que apuntan arriba." },
      nodesPerSpur: {
        header: "Yemas por pitón",
        help: "Yemas dejadas en cada pitón, lo usual en este cordón.",
      },
      diameter: { header: "Diámetro", help: "Grosor del cordón a la mitad; unidad en el encabezado." },
      gapFrom: {
        header: "Hueco desde la cabeza",
        help: "Posiciones entre la cabeza y el comienzo del hueco más largo; 0 si comienza en la cabeza.",
      },
      canesNearHead: {
        header: "Sarmientos junto a la cabeza",
        help: "Sarmientos junto a la cabeza que se podrían tender: del último verano, de 8 a 13 mm de grueso, sanos.",
      },
      spurHeight: {
        header: "Altura de pitones",
        help: "Cuánto han subido los pitones sobre el cordón; unidad en el encabezado.",
      },
      condition: { header: "Estado", help: "Sano, dañado por el invierno, enfermo o muerto." },
      trunkCondition: {
        header: "Estado del tronco",
        help: "Estado del tronco del que sale el cordón; en blanco si nadie lo miró.",
      },
      trunkYear: {
        header: "Año del tronco",
        help: "Año en que se formó el tronco del que sale el cordón; en blanco si nadie lo sabe.",
      },
      fixedChoice: {
        header: "Decisión fija",
        choices: {
          stays: "queda",
          goes: "se corta",
          cane: "tender un sarmiento",
          recount: "contar de nuevo",
        },
        help: "Solo si alguien ya decidió: queda, se corta, tender un sarmiento (se corta salvo un sarmiento cerca de la cabeza, que se tiende) o contar de nuevo (toda la planta).",
      },
    },
    vines: {
      name: "Plantas",
      rowIs: "una planta",
      status: { header: "Situación", help: "En producción, joven, faltante o replantada." },
      liveTrunks: { header: "Troncos vivos", help: "Troncos con madera viva." },
      prunings: {
        header: "Poda",
        help: "Peso de la madera de un año podada, si se pesó; unidad en el encabezado.",
      },
      clusters: { header: "Racimos", help: "Racimos contados en la planta, si se contaron." },
      shoots: { header: "Brotes", help: "Brotes contados tras la brotación, si se contaron." },
      planted: {
        header: "Año de plantación",
        help: "Año en que se plantó esta planta, si es posterior a su cuartel.",
      },
      prunedOn: { header: "Podada el", help: "Día en que se podó la planta; en blanco mientras falta." },
    },
    blocks: {
      name: "Cuarteles",
      rowIs: "un cuartel",
      cultivar: { header: "Variedad", help: "Variedad plantada." },
      planted: { header: "Año de plantación", help: "Año de plantación." },
      rows: { header: "Hileras", help: "Hileras del cuartel." },
      vines: {
        header: "Lugares de planta",
        help: "Lugares de planta en todo el cuartel, con los faltantes.",
      },
      rowSpacing: { header: "Entre hileras", help: "Distancia entre hileras." },
      vineSpacing: { header: "Entre plantas", help: "Distancia entre plantas." },
      training: {
        header: "Sistema de conducción",
        help: "Cordón en alambre alto, brotes erguidos o follaje dividido.",
      },
      nodeRule: {
        header: "Regla de yemas",
        help: 'Cómo se fija el número de yemas: fórmula como 30+10, "por largo" o número fijo.',
      },
      injuryRule: {
        header: "Regla de daño",
        help: "Regla que corrige por yemas muertas, con el nombre de su fuente.",
      },
      targetCrop: { header: "Cosecha meta", help: "Cosecha deseada, en toneladas por acre o por hectárea." },
      clusterWeight: { header: "Peso del racimo", help: "Peso de un racimo maduro." },
      clustersPerShoot: { header: "Racimos por brote", help: "Racimos que lleva un brote en promedio." },
      budbreak: { header: "Brotación", help: "Parte de las yemas contadas que brotan." },
      grapeKind: {
        header: "Tipo de uva",
        help: "Americana, francoamericana, híbrido nuevo, vinífera o uva de mesa sin semilla: las cifras publicadas de ese tipo valen donde el cuartel no tiene las suyas.",
      },
      secondaryWorth: {
        header: "Valor de secundarias",
        help: "Cosecha de un brote de yema secundaria frente a uno de primaria, en este cuartel.",
      },
      basalShoots: {
        header: "Brotes de base",
        help: "Brotes de yemas no contadas, por cada pitón de este cuartel.",
      },
      basalWorth: {
        header: "Valor de base",
        help: "Racimos de un brote de base frente a uno contado; 0 donde las yemas de base no dan fruta.",
      },
      nodesASpur: {
        header: "Yemas por pitón",
        help: "Yemas contadas que se dejan en un pitón de este cuartel, como máximo; 1 donde la yema de base da fruta.",
      },
      mostNodes: { header: "Yemas máximas", help: "Máximo de yemas en una planta de este cuartel." },
    },
    budCuts: {
      "7": { header: "Cortado por" },
      name: "Cortes de yemas",
      rowIs: "un sarmiento cortado",
      cane: { header: "Sarmiento", help: "Número del sarmiento." },
      nodesCut: { header: "Yemas cortadas", help: "Yemas cortadas en este sarmiento." },
      primariesAlive: { header: "Primarias vivas", help: "Yemas con primaria viva." },
      secondariesAlive: { header: "Secundarias vivas", help: "Yemas con secundaria viva." },
    },
    harvest: {
      name: "Cosecha",
      rowIs: "un cuartel en un año",
      year: { header: "Año", help: "Año de la cosecha." },
      picked: { header: "Cosechado", help: "Peso cosechado en el cuartel; vacío hasta la cosecha." },
      vinesPicked: { header: "Plantas cosechadas", help: "Plantas cosechadas." },
      clusterWeight: { header: "Peso del racimo", help: "Peso medio de un racimo en cosecha." },
      lagWeight: {
        header: "Peso del racimo en fase de reposo",
        help: "Peso medio del racimo cuando paró el crecimiento de la baya.",
      },
      clustersWeighed: { header: "Racimos pesados", help: "Racimos detrás del peso en fase de pausa." },
      clustersPerShoot: { header: "Racimos por brote", help: "Racimos por brote, contados." },
      budbreak: { header: "Brotación", help: "Parte de las yemas que brotaron." },
      frostPrimaries: {
        header: "Helada: primarias",
        help: "Tras una helada de primavera: yemas con el brote primario vivo.",
      },
      frostSecondaries: {
        header: "Helada: secundarias",
        help: "Tras una helada de primavera: yemas en que solo vive un brote secundario.",
      },
      frostTertiaries: {
        header: "Helada: terciarias",
        help: "Tras una helada de primavera: yemas en que solo vive un brote terciario; en blanco si no hay.",
      },
      frostShootless: {
        header: "Helada: sin brote",
        help: "Tras una helada de primavera: yemas sin brote vivo, sea cual sea la causa.",
      },
    },
    settings: {
      name: "Ajustes",
      rowIs: "una cifra que cambia un resultado",
      setting: { header: "Ajuste", help: "Nombre de la cifra; no cambiar." },
      value: { header: "Valor", help: "La cifra de la finca." },
      unit: { header: "Unidad", help: "Unidad del valor." },
      source: { header: "Fuente", help: "De dónde viene la cifra." },
      meaning: { header: "Significado", help: "Qué hace la cifra." },
      changedBy: { header: "Cambiado por", help: "Quién lo cambió." },
      changedOn: { header: "Cambiado el", help: "Cuándo se cambió." },
    },
    note: { header: "Nota", help: "Lo que convenga saber." },
  },
  accept: {
    chooseBlock: "Elija un cuartel para aceptar de una vez todas sus plantas decididas.",
    progress:
      "{block}: {accepted} de {all} plantas aceptadas en la hoja, {open} decididas y aún no aceptadas, {ask} con una pregunta pendiente.",
    progressName: "Plantas aceptadas",
    ask: "Aceptar las plantas decididas: {vines}",
    title: "Aceptar {block}",
    wouldWrite:
      "Escribiría en la columna Decisión fija: celdas {cells}, plantas {vines}. Plantas con una pregunta pendiente: {ask}; no se tocan. Las celdas que ya tienen algo tampoco se tocan.",
    unreadable:
      "Se pasan por alto, porque la celda de la decisión fija tiene una fórmula u otra palabra: plantas {unreadable}.",
    by: "Su nombre o iniciales, si quiere",
    byHelp: "El nombre va al registro de acciones, si está activado.",
    yes: "Sí, escribir {cells} {cells:celda|celdas}",
    done: "{block} aceptado: plantas {vines}, celdas escritas {cells} en la columna Decisión fija.",
    doneBy:
      "{block} aceptado por {by}: plantas {vines}, celdas escritas {cells} en la columna Decisión fija.",
    meanwhile:
      "La celda {cell} de la hoja {sheet} cambió entretanto; no se aceptó nada. Siguiente paso: decida otra vez.",
    takeBack: "Deshacer: {block} aceptado",
    takenBack: "Deshecho: {cells} {cells:celda|celdas} de {block} tienen lo que tenían antes.",
    partlyBack:
      "{cells} {cells:celda|celdas} de {block} tienen lo que tenían antes; sin tocar, porque alguien las cambió después: {left}. Siguiente paso: decida otra vez.",
  },
  addinServer: {
    notHere:
      "Excel solo funciona en Windows y Mac, así que en este equipo ({platform}) no hay nada que iniciar. Sin Excel use npm start; para Excel en la web ponga dist/ en un servidor HTTPS (DEVELOPERS.md).",
    notInstalled:
      "El paquete opcional {package} no está instalado en este equipo. Ejecute npm install {package}@{version} --no-save y repita.",
    notBuilt: "No existe {file}. Ejecute antes npm run build.",
    serving:
      "El complemento se sirve en {address} (se detiene con Ctrl+C). Su certificado se hizo en este equipo y ningún otro confía en él.",
    portTaken:
      "El puerto {port} lo usa otro programa. El manifiesto nombra ese puerto: detenga el programa o construya para otra dirección: npm run build -- --env address=https://localhost:PUERTO/ y luego npm run serve -- --port PUERTO.",
    badPort: "--port debe ser un número entero de 1 a 65535, pero es {given}.",
    trust:
      "Excel exige un certificado en el que confíe este equipo; ahora se crea uno y se añade a los certificados de confianza de su cuenta. npm run excel:stop lo quita.",
    stopped: "El complemento se quitó de Excel en este equipo, junto con su certificado.",
    failed: "No funcionó: {problem}",
  },
  cards: {
    sheet: {
      title: "{block}, hilera {row}",
      page: "página {page} de {pages}",
      vines: "plantas {first} a {last}",
      made: "Hecho el {date}",
      crew: "Cuadrilla",
      day: "Día",
      vine: "Planta",
      keep: "Queda",
      cut: "Cortar",
      lay: "Tender",
      nodes: "Yemas: por pitón",
      notes: "Notas",
      done: "Hecho",
      found: "Hallado distinto",
      ribbonStays: "cinta {colour}: queda",
      ribbonAsk: "cinta {colour}: mirar antes",
      cutRule: "Cortar desde la punta hacia el tronco.",
      or: "¿{cordon} / {others}?",
      orNewCane: "¿{cordon} / sarm.?",
      withTrunk: "{cordon}+T{trunk}",
      withSpur: "{cordon} ○",
      keepTrunk: "{cordon} · T{trunk}",
      sideStays: "{side} queda",
      sideCut: "{side} cortar",
      caneLater: "otro invierno: {from}",
      cane: "sarmiento: {from}",
      caneOf: "sarm.: {from} · {source}",
      bothOnOneTrunk: "ambos en T{trunk}",
      everyTrunkHurt: "troncos dañados",
      noLiveTrunk: "ningún tronco vivo",
      spursAt: "{spurs}×{nodes}",
      leave: "{nodes}: {plan}",
      onASpur: "{nodes}",
      shortage:
        "{block}: en {vines} de {all} plantas los pitones, cada uno tan largo como puede ser, llevan {short} yemas menos que los presupuestos.",
      surplus: "✂ {spurs}",
      bringUp: "troncos nuevos: {trunks}",
      trunkDue: "T{trunk} viejo ({age} a): deje un chupón",
      trunkOut: "T{trunk} viejo ({age} a): fuera cuando su relevo tenga 2-3 a",
      replace: "renovar {cordon}",
      extend: "alargar {cordon} {length}",
      layOver: "{cordon}: sarmiento sobre hueco tras {from}",
      replaceLater: "renovar {cordon} más tarde: hoy sin sarmiento",
      longerSpurs: "{cordon}: pitones largos en {from}",
      lowerSpurs: "{cordon}: bajar los pitones al cordón",
      notDecided: "sin decidir",
      recount: "contar de nuevo",
      toCount: "aún por contar",
      prunedOn: "hecha {date}",
      cautions:
        "Usar gafas y guantes; manos lejos de la hoja y de la otra persona. Calentarse antes de que los dedos se entumezcan; cuidado con hielo, alambre y escaleras. Protectores de heridas y productos solo según su etiqueta y las normas locales. Las cifras aconsejan; deciden un asesor local y quien está ante la planta.",
      back: "Lo hallado distinto se anota en las hojas Cordones y Plantas: Decisión fija, Estado, Podada el, Nota.",
    },
    legend: {
      keepTrunk: "A · T1: queda A, del tronco 1",
      ask: "¿A / B?: mirar antes, queda uno de ellos",
      askCane: "¿A / sarm.?: mirar antes, queda A o se tiende un sarmiento",
      withTrunk: "A+T1: cortar A, sacar el tronco muerto 1",
      withSpur: "A ○: cortar A, dejar un pitón de renovación",
      backToCane: "A ⟂: cortar A hasta su primer sarmiento bueno",
      evenSpurs: "30: 2 = 30 yemas, 2 en cada pitón",
      spurs: "30: 4×3 9×2 = 30 yemas: 4 pitones de 3, 9 de 2",
      surplus: "✂ 4: quitar los 4 pitones peor ubicados",
      trunk: "T1: tronco 1",
    },
    open: {
      inBlock: "Aún pendiente en {block}: {parts}.",
      everywhere: "Aún pendiente: {parts}.",
      parts: {
        wrong: "{wrong} {wrong:celda|celdas} que no pueden ser",
        asked: "{asked} {asked:planta|plantas} por responder",
        askedRecount: "{asked} {asked:planta|plantas} por responder, {recount} de ellas por contar de nuevo",
        uncounted: "{uncounted} {uncounted:planta|plantas} sin contar",
        toAccept: "{toAccept} {toAccept:planta decidida|plantas decididas} sin aceptar",
      },
      nothingInBlock: "Nada pendiente en {block}: cada planta está contada, decidida y aceptada.",
      nothingEverywhere: "Nada pendiente: cada planta está contada, decidida y aceptada.",
    },
    changed: {
      only: "solo cambios",
      rowVoid: "Ya no vale en la tarjeta de {block}, hilera {row}, impresa antes: {vines}.",
      cardVoid: "Ya no vale toda la tarjeta de {block}, hilera {row}, impresa antes.",
      nothing: "Nada cambió desde la última impresión: las tarjetas entregadas valen.",
    },
    ribbons: {
      orange: "naranja",
      blue: "azul",
      red: "roja",
      yellow: "amarilla",
      green: "verde",
      white: "blanca",
      pink: "rosa",
      purple: "morada",
      violet: "violeta",
      black: "negra",
    },
    cardOrigins: { trunk: "T{trunk}", otherTrunk: "tronco sin cordón", head: "cabeza", ground: "chupón" },
    part: {
      spurs: "Pitones",
      stretch: "Hueco más largo",
      placing: "Orientación",
      soundness: "Estado",
      diameter: "Diámetro",
    },
  },
  countPlan: {
    title: "Planear un conteo",
    plan: "Planear un conteo en {block}",
    counted: "Qué se cuenta",
    clusters: "Racimos",
    shoots: "Brotes",
    prunings: "Madera de poda pesada",
    margin: "Margen, % a cada lado",
    badMargin: "El margen debe ser un número de {least} a {most} %, pero se escribió «{value}».",
    noVines:
      "La hoja Plantas no tiene plantas productivas de {block}. Siguiente paso: anote sus plantas con hilera, número y estado.",
    vines:
      "Cuente {vines} de {all} plantas productivas: la media queda dentro de {margin} % en {confidence} de 100 casos así.",
    pilot:
      "Variación entre plantas {percent} %, de {pilot} {pilot:planta|plantas} de este cuartel con conteo.",
    setting:
      "Variación entre plantas {percent} %, de Ajustes, porque menos de {least} {least:planta|plantas} de este cuartel tienen conteo.",
    handbooks: "Lo que dicen los manuales al lado",
    walk: "Qué plantas, en el orden del recorrido",
    row: "Hilera {row}: {vines}",
    drawn:
      "Elegidas al azar y repartidas en las hileras; el sorteo {seed} da otra vez esta lista. Cuente justo esas plantas; la que falte o sea joven se omite, no se cuenta como 0.",
    other: "Sortear otras plantas",
    print: "Imprimir la lista",
    write: "Escribir la lista en una hoja",
    sheet: "Plantas por contar",
    printTitle: "Plantas por contar: {block}",
    headRow: "Hilera",
    headVine: "Planta",
    headNote: "Nota",
    countedBy: "Contado por, día:",
  },
  crew: {
    title: "Tarjetas para la cuadrilla",
    intro:
      "Una tarjeta por hilera: qué queda, qué se corta y dónde, yemas por pitón. Abajo: en qué orden se podan los cuarteles y qué plantas necesitan un tronco nuevo.",
    make: "Hacer las tarjetas",
    progress: "Avance de las tarjetas",
    sum: "{cards} {cards:tarjeta|tarjetas} para {vines} {vines:planta|plantas}; hecho el {done} de la poda.",
    others:
      "Nombran además {others} {others:planta|plantas} del registro: {others:joven, replantada o faltante|jóvenes, replantadas o faltantes}.",
    none: "No se encontró ninguna planta. Siguiente paso: llene la hoja Cordones o Plantas.",
    row: "Hilera",
    which: "Qué imprimir",
    whichAll: "Todas las tarjetas",
    whichChanged: "Solo lo que cambió desde la última impresión",
    paper: "Papel",
    cardLanguage: "Idioma de las tarjetas",
    print: "Imprimir {cards} {cards:tarjeta|tarjetas}",
    write: "Escribir hoja de tarjetas",
    back: "Lo que la cuadrilla halló distinto se anota en las hojas Cordones y Plantas; las tarjetas se ponen al día.",
    work: "Orden de trabajo",
    workSum: "Poda: quedan {hours} {hours:hora|horas}, {days} {days:día|días} de toda la cuadrilla.",
    workOrder: "En este orden: {blocks}.",
    thinningSum:
      "Tras la poda se ralean los brotes desde el {from}: {hours} {hours:hora|horas}, {days} {days:día|días} de toda la cuadrilla ({blocks}).",
    workSource:
      "Primero cuarteles resistentes y secundarias fértiles, al final los sensibles (Universidad de Georgia, Boletín 1505); las listas y el calendario están en Ajustes.",
    block: "Cuartel",
    left: "Plantas por podar",
    hours: "Horas",
    crewDays: "Días de cuadrilla",
    when: "Cuándo",
    done: "hecho",
    only: "{block}",
    first: "{block}, primera pasada",
    second: "{block}, segunda pasada",
    thinning: "{block}, raleo de brotes",
    calendarKey:
      "Los números son los cuarteles por su turno. Rayado: no se trabaja según Ajustes. Enmarcado: hoy.",
    dayRows: "{block}, hileras {first} a {last}",
    dayRow: "{block}, hilera {first}",
    dayWork: "Trabajo",
    renewal: "Troncos por renovar",
    renewalNone: "Ninguna planta necesita un tronco nuevo.",
    trunksDue:
      "Troncos que toca renovar por su edad: {now} este invierno, {nextWinter} el próximo; troncos vivos sin año: {withoutYear}.",
    renewalSum:
      "{vines} {vines:planta necesita|plantas necesitan} un tronco nuevo, las más urgentes primero.",
    trunksNotCounted: "No se contaron los troncos vivos de {vines} {vines:planta|plantas}.",
    forecast: "Cinco inviernos adelante",
    forecastNote:
      "Con {loss} de troncos perdidos al año y un tronco más en {up} de las plantas cortas, según Ajustes. Los troncos de una planta suelen morir juntos: es el lado optimista.",
    year: "Invierno",
    now: "ahora",
    enough: "Troncos suficientes",
    short: "Pocos",
    without: "Ninguno",
  },
  desk: {
    page: {
      appName: "Cordonbook",
      workbook: "Libro",
      openFile: "Abrir un archivo…",
      saveCopy: "Guardar una copia",
      printSheet: "Imprimir esta hoja",
      acceptedWords: "Palabras admitidas",
      saved: "Se creó {name} con todo lo que se cambió aquí; búsquelo entre sus descargas.",
      notKept: "La copia no tendrá: {parts}.",
      notKeptParts: {
        addedSheets: "las hojas añadidas o renombradas aquí ({where})",
        deletedSheets: "el borrado de hojas ({where} seguirá ahí)",
        movedSheets: "el nuevo orden de las hojas",
        moved:
          "lo que va con las filas y columnas insertadas, borradas o arrastradas (formatos, notas, imágenes y reglas de entrada de {where} se quedan donde estaban)",
        looks: "letras, colores y líneas puestos aquí ({where})",
        sizes: "anchos, altos, celdas ocultas o combinadas y paneles inmovilizados cambiados aquí ({where})",
        notes: "notas escritas aquí",
        tables: "tablas creadas, renombradas o estrechadas aquí ({where})",
        names: "nombres definidos aquí",
        filters: "filtros puestos aquí",
        protection: "protección puesta aquí",
        remarks: "notas, colores y formatos en hojas de Cordonbook cuyas filas ya no están ({where})",
        formulas: "fórmulas que ninguna hoja de cálculo podría leer ({where}; pasan a texto)",
        values: "fórmulas ({where}; la copia tiene lo que muestran)",
      },
      saveAnyway: "Guardarla de todos modos",
      doNotSave: "No guardar",
      notSaved: "No se hizo ninguna copia: {problem}",
      copyName: "{name} (copia){ending}",
      restored: "{name} está como lo dejó en este equipo, {when}.",
      goOn: "Seguir con ello",
      discard: "Descartar lo escrito",
      notRestored:
        "No se pudo recuperar lo que escribió en {name}: {problem}. Sigue guardado en este equipo.",
      unsaved: "Lo que se cambió en la página aún no está guardado. ¿Abrir otro libro de todos modos?",
      gridLabel: "Hoja de cálculo",
      paneLabel: "Panel de Cordonbook",
      loading: "Abriendo {name}…",
      stop: "Detener",
      calculating: "Calculando las fórmulas…",
      calculated: "{done} de {all}",
      doubtfulComma:
        "«{written}» se lee en esta fórmula como dos valores; para un decimal escriba {point}, o separe los valores con «;».",
      calculationStopped:
        "Se detuvo el cálculo de las fórmulas. Las que no se alcanzaron muestran lo que mostraban antes. Se calculan con el próximo cambio.",
      openingRow: "Hoja {sheet}, fila {row}",
      stopped: "Se detuvo la apertura de {name}. El libro de la página no ha cambiado.",
      dropHere: "Suelte aquí un libro o un archivo CSV para abrirlo",
      close: "Cerrar",
      idle: "Todo queda en este equipo. Seleccione una celda con error para leer qué pasa.",
      keptOffline: "Esta página queda guardada en este equipo: también se abre sin red.",
      newerPage:
        "Hay una versión más nueva de esta página. Guarde su trabajo, cierre todas las pestañas con esta página y ábrala otra vez.",
      sampleMissing:
        "No se pudo obtener el libro de ejemplo {name} de donde viene esta página: {problem}. Pruebe otra vez cuando ese servidor responda (en este equipo: npm start).",
      notOpened: "No se pudo abrir el archivo {name}: {problem}. El libro de la página no cambió.",
    },
    sampleNames: {
      clean: "Larkmoor Bend (inventado): una temporada limpia",
      mistakes: "Larkmoor Bend (inventado): temporada con errores",
      empty: "Una temporada vacía por llenar ({units}, {language})",
      US: "pies y libras",
      metric: "métrico",
    },
  },
  deskServer: {
    ready: "Cordonbook está listo en {address} (se detiene con Ctrl+C)",
    help: "npm start -- [--port NÚMERO] [--no-open]: abre la página sin Excel solo en este equipo; puerto {port} si está libre.",
    badOption: "Cordonbook no se inició: {problem} Las opciones son --port NÚMERO y --no-open.",
    badPort: "Cordonbook no se inició: --port debe ser un número entero de 0 a 65535, pero es {given}.",
    oldNode: "Cordonbook no se inició: necesita Node {needed} o posterior, pero este es Node {found}.",
    notBuilt:
      "Cordonbook no se inició porque no se pudo construir su página (ejecute npm ci otra vez si faltan paquetes): {problem}",
    noPort:
      "Cordonbook no se inició porque no se pudo abrir ningún puerto de este equipo desde el {port}: {problem}",
  },
  excelPage: {
    notFetched: "No se pudo cargar una parte de Cordonbook. Revise la red e inténtelo de nuevo.",
    noOffice:
      "No se pudo cargar el script de Office de Microsoft y Cordonbook no llega al libro. Revise la red y abra el panel otra vez.",
    notInExcel: "Esta página solo funciona dentro de Excel. Sin Excel, use la página que abre npm start.",
    tooOld:
      "Este Excel es demasiado antiguo para Cordonbook: le falta {missing}. Funciona en Excel en la web, Microsoft 365 y Office LTSC 2021 o posterior.",
  },
  excelProblems: {
    halfWritten:
      'Excel no dejó terminar "{sheet}" ni dejarla como estaba. Use Deshacer o cierre sin guardar; lo anterior está en la hoja "{kept}" si se nombra una.',
    marksHalfSet:
      "Excel no dejó terminar las marcas y pueden faltar algunas. Repita la revisión; las celdas mismas no cambiaron.",
    inTheWay:
      'En la fila {row} de la hoja "{sheet}" hay algo ajeno a su tabla, justo donde iría la nueva. Muévalo y repita; no se cambió nada.',
    sheetKeepsChanging:
      'Mientras se leía la hoja "{sheet}" aparecieron o desaparecieron filas, tres veces. Repita cuando su colega haya terminado.',
    notAFormula:
      'Lo que iba en la fila {row}, columna {column} de "{sheet}" no es una fórmula: debe empezar por "=". No se cambió nada.',
    pivotLost:
      'La tabla dinámica "{name}" no se puede actualizar: su origen ya no existe o es otro. Bórrela y repita para crearla de nuevo.',
    hiddenSheet:
      'La hoja "{sheet}" está oculta. Muéstrela (clic derecho en una pestaña, Mostrar) e inténtelo de nuevo.',
    filteredTable:
      'Un filtro oculta filas de la hoja "{sheet}" y Excel podría poner lo escrito en otras filas; no se cambió nada. Quite el filtro (pestaña Datos, Borrar) y repita.',
    mergedCell:
      "La fila {row}, columna {column} de la hoja «{sheet}» está en celdas combinadas, que solo guardan lo de su primera celda; no se cambió nada. Sepárelas (Inicio, Combinar) y ejecute de nuevo.",
    overlap:
      "En la hoja «{sheet}» hay celdas combinadas, otra tabla o una tabla dinámica donde iría la tabla; no se cambió nada. Muévalas o sepárelas y ejecute de nuevo.",
    otherWorkbook:
      "Otro libro pasó al frente y Excel solo responde por el que está delante. Vuelva a este libro y repita.",
    notPrinted:
      "No se imprimió nada: aquí el panel no puede imprimir (así es en Excel para Mac). Siguiente paso: use el botón de al lado que escribe una hoja e imprima esa hoja desde Excel (Archivo, Imprimir).",
    cellBeingEdited:
      "Hay una celda en edición. Pulse Entrar o Esc en la hoja e inténtelo de nuevo; no se cambió nada.",
    tooMuchAtOnce:
      'Una fila de "{sheet}" es demasiado grande para un solo mensaje a Excel. Acorte su texto más largo y repita; no se cambió nada.',
    notInThisExcel:
      "Esta copia de Excel no puede hacerlo ({reason}); no se cambió nada. La autoprueba del panel muestra lo que puede hacer.",
    excelRefused:
      "Excel no lo permitió ({reason}); no se cambió nada. Inténtelo de nuevo y, si sigue igual, guarde, cierre y abra el libro.",
  },
  farmFigures: {
    take: "Usar {value}",
    takeName: "Usar {value}: {figure}",
    wouldWrite: "Se escribiría {value} en {where}. Todavía no se escribe nada.",
    cropMoves:
      "{block} ({stage}): cosecha probable {before} → {after} {unit} (rango {beforeLow} a {beforeHigh} → {afterLow} a {afterHigh})",
    cropComes:
      "{block} ({stage}): cosecha probable {after} {unit} (rango {afterLow} a {afterHigh}), donde ahora no se puede calcular ninguna",
    cropGoes:
      "{block} ({stage}): ya no se puede calcular ninguna cosecha; ahora es {before} {unit} (rango {beforeLow} a {beforeHigh})",
    cropStays: "No se movería el pronóstico de ningún cuartel.",
    yes: "Sí, escribirlo",
    taken: "{figure} es {value} desde ahora, escrito en {where} por {by}, {on}.",
    undo: "Deshacer",
    undone: "{figure} está como antes.",
    meanwhile: "Otra persona cambió {where} entretanto; no se escribió nada. Mírelo otra vez.",
    noColumn:
      "La hoja {sheet} no tiene la columna «{header}» para esta cifra: añada ese encabezado y calcule el pronóstico otra vez.",
    formula: "{where} tiene una fórmula; se dejó como está. Escriba antes un valor ahí, o deje la fórmula.",
    gone: "Las cosechas ya no proponen esta cifra. Calcule el pronóstico otra vez.",
  },
  fileProblems: {
    noFile: 'No existe el archivo "{file}"; revise el nombre y la carpeta.',
    noFiles: 'La carpeta "{folder}" no tiene archivos .xlsx, .xlsm, .csv ni .tsv.',
    unreadableFile: 'No se puede abrir el archivo "{file}" ({reason}).',
    emptyFile: 'El archivo "{file}" está vacío.',
    notAWorkbook: '"{file}" no es un libro .xlsx; guárdelo como libro de Excel (.xlsx) o como csv y repita.',
    oldOrLockedFile:
      '"{file}" es un libro .xls antiguo o tiene contraseña; guárdelo como .xlsx sin contraseña y repita.',
    lockedFile: 'Hay partes de "{file}" cifradas; guárdelo sin contraseña y repita.',
    binaryWorkbook: '"{file}" es un libro binario (.xlsb); guárdelo como .xlsx y repita.',
    damagedFile:
      '"{file}" está dañado: su lista de partes no corresponde al archivo. Pida que lo envíen otra vez.',
    damagedPart:
      '"{file}" está dañado: su parte {part} no se puede descomprimir. Pida que lo envíen otra vez.',
    missingPart: '"{file}" está dañado: menciona una parte {part} que no tiene.',
    badXml: '"{file}" está dañado: su parte {part} está mal formada.',
    tooManyParts: '"{file}" no se leyó: tiene más de {most} partes, más de las que necesita un libro.',
    samePartTwice: '"{file}" no se leyó: tiene dos partes con el nombre {part}.',
    badPartName: '"{file}" no se leyó: el nombre de parte {part} sale del archivo.',
    unknownPacking: '"{file}" no se leyó: su parte {part} está comprimida de un modo que los libros no usan.',
    expandsTooFar:
      '"{file}" no se leyó: descomprimido ocuparía {times} veces su tamaño; el límite es {most} (opción --expansion).',
    sizeLies: '"{file}" no se leyó: su parte {part} no tiene el tamaño que el archivo declara.',
    tooLargeToHold: '"{file}" es demasiado grande para la memoria; use la línea de comandos.',
    documentType:
      '"{file}" no se leyó: su parte {part} declara un tipo de documento, que ningún libro necesita.',
    tooDeep: '"{file}" no se leyó: su parte {part} anida más de {most} elementos.',
    tooMuchText: '"{file}" no se leyó: {part} contiene más de {most} caracteres en un solo lugar.',
    tooManyCells:
      'La hoja "{sheet}" de "{file}" abarca más de {most} {most:celda|celdas}; borre las celdas sueltas lejos de la tabla y repita.',
    tooManyForPage:
      '"{file}" abarca más de {most} celdas, más de las que esta página puede mostrar; use la línea de comandos.',
    tooManyOf:
      '"{file}" no se leyó: su parte {part} enumera más de {most} entradas de un mismo tipo, más de las que necesita un libro.',
    sheetsOnOnePart: '"{file}" no se leyó: su hoja "{sheet}" y otra son la misma parte {part}.',
    inputTooLarge:
      'Lo que llegó como "{file}" no se leyó: ocupa más de {most} MB. Guárdelo como archivo e indíquelo.',
    sameSheetTwice: '"{file}" está dañado: tiene dos hojas con el nombre "{sheet}".',
    rowPastLimit:
      'La hoja "{sheet}" de "{file}" está dañada: la fila {row} pasa de la última posible, {most}.',
    columnPastLimit:
      'La hoja "{sheet}" de "{file}" está dañada: la celda {cell} pasa de la última columna posible, {most}.',
    rowTwice: 'La hoja "{sheet}" de "{file}" está dañada: la fila {row} está dos veces o fuera de orden.',
    cellTwice:
      'La hoja "{sheet}" de "{file}" está dañada: la celda {cell} de la fila {row} está dos veces o fuera de orden.',
    badCell:
      'La hoja "{sheet}" de "{file}" está dañada: {cell} en la fila {row} no es una celda de esa fila.',
    badNumber:
      'La hoja "{sheet}" de "{file}" está dañada: la fila {row} tiene un número escrito como {value}.',
    notText: '"{file}" no es un archivo de texto; guárdelo como csv desde la hoja de cálculo y repita.',
    openQuote: '"{file}" no se leyó: las comillas desde la fila {row} no cierran como deben.',
    layoutUnknown:
      '"{file}" no se puede cambiar en el sitio: su parte {part} tiene una forma que no se entiende. No se cambió nada.',
    signedFile: '"{file}" lleva una firma digital que cualquier cambio rompería. No se cambió nada.',
    openElsewhere: '"{file}" está abierto en otro programa; ciérrelo y repita. No se cambió nada.',
    changedMeanwhile: 'Alguien guardó "{file}" entretanto; repita. No se cambió nada.',
    diskFull: 'No hay espacio en el disco para "{file}" ({reason}). No se cambió nada.',
    savedElsewhere: 'Otra ejecución está guardando "{file}" en este momento; repita. No se cambió nada.',
    readOnlyFile:
      '"{file}" es de solo lectura; quítele esa marca o use --save para una copia. No se cambió nada.',
    ownerNotKept:
      '"{file}" pertenece a otra persona y no se podría conservar así; use --save para una copia. No se cambió nada.',
    mayNotWrite: 'No se puede escribir "{file}" ({reason}). No se cambió nada.',
    fileExists: 'Ya existe un archivo "{file}"; indique otro con --out. No se cambió nada.',
  },
  findings: {
    units: {
      times: "×",
      nodes: "yemas",
      positions: "posiciones",
      trunks: "troncos",
      years: "años",
      clusters: "racimos",
      people: "personas",
      date: "fecha",
      days: "días",
      vines: "plantas",
      values: "valores",
      cordons: "cordones",
      month: "mes",
      "powers of ten": "potencias de diez",
      rows: "filas",
      share: "parte",
    },
    kinds: {
      missingValue: {
        title: "En blanco donde hace falta un valor",
        sentence: "{column} está en blanco.",
        why: "La fila no se puede usar sin este valor.",
        remedy: "Complételo con la hoja de papel o cuente de nuevo.",
      },
      missingColumn: {
        title: "Falta una columna",
        sentence: "La tabla no tiene la columna «{missing}».",
        why: "Las filas no se pueden usar sin ella.",
        remedy: "Agregue la columna o indique cuál de las suyas es.",
      },
      columnTwice: {
        title: "La misma columna dos veces",
        sentence: "La columna «{wanted}» está dos veces en la tabla; solo se lee la primera.",
        why: "Los conteos de la segunda columna no se usan.",
        remedy: "Cambie el nombre de una o elimínela.",
      },
      numberAsText: {
        title: "Número escrito como texto",
        sentence: "{column} muestra «{value}», pero es texto y no un número.",
        why: "La hoja de cálculo deja esa celda fuera de las sumas sin avisar.",
        remedy: "Escriba el número de nuevo.",
      },
      notANumber: {
        title: "No es un número",
        sentence: "{column} contiene «{value}» donde va un número.",
        why: "La fila no se puede usar sin un número.",
        remedy: "Ponga el número; las palabras van en la nota.",
      },
      notADate: {
        title: "Fecha poco clara",
        sentence: "{column} contiene «{value}», que no es una fecha o se puede leer de dos maneras.",
        why: "Se pueden confundir el día y el mes.",
        remedy: "Escriba la fecha como año-mes-día.",
      },
      unknownWord: {
        title: "Palabra desconocida",
        sentence: "{column} dice «{value}»; debe ser una de: {words}.",
        why: "La palabra decide cómo se usa la fila.",
        remedy: "Elija una de las palabras.",
      },
      errorCell: {
        title: "La celda muestra un error",
        sentence: "{column} muestra {value}.",
        why: "Falló una fórmula y no hay valor que usar.",
        remedy: "Corrija la fórmula o escriba el valor.",
      },
      outsideLimits: {
        title: "Fuera de lo posible",
        sentence: "{column} es {value}{unit}; debe estar entre {least} y {most}{unit}.",
        why: "Ninguna planta tiene ese valor: es un error de escritura o de unidad.",
        remedy: "Corríjalo con la hoja de papel; mire la unidad del encabezado.",
      },
      notWhole: {
        title: "Conteo con fracción",
        sentence: "{column} es {value}, pero se cuenta en números enteros.",
        why: "Una fracción en un conteo es un error o un valor de otra columna.",
        remedy: "Corríjalo con la hoja de papel.",
      },
      settingUnknown: {
        title: "Ajuste desconocido",
        sentence: "«{setting}» no es un ajuste que se use.",
        why: "Cambiarlo no cambia nada; con un nombre mal escrito rige el valor usual.",
        remedy: "Corrija el nombre, o deje la fila si es suya.",
      },
      settingNotUsable: {
        title: "El ajuste no se puede usar",
        sentence:
          "El valor «{value}» de «{setting}» no se puede usar (se espera: {expected}); rige el valor usual.",
        why: "Los resultados no usan la cifra que muestra la hoja.",
        remedy: "Corrija el valor.",
      },
      settingTwice: {
        title: "El mismo ajuste dos veces",
        sentence:
          "«{setting}» es {value}{unit} aquí y {otherValue}{otherUnit} en la fila {otherRow} de la hoja{otherSheet}; rige este último valor.",
        why: "Dos valores para una cifra: alguien cuenta con el otro.",
        remedy: "Elimine una de las filas, o dé a ambas el mismo valor si cada archivo lleva sus ajustes.",
      },
      columnsSwapped: {
        title: "Dos columnas cambiadas",
        sentence:
          "{rows} {rows:fila|filas}, hasta la fila {lastRow} de la hoja, solo cuadran si {column} y {other} cambian de lugar.",
        why: "Cada cifra de estas filas se toma por otra.",
        remedy: "Compare con los encabezados de la hoja de papel y cambie las dos columnas en estas filas.",
      },
      unitSlip: {
        title: "Escrito en otra unidad",
        sentence:
          "{column} es {value}{unit}, distinto de su cuartel; tomado como {value} {meant} es {converted}{unit} y cuadra ({rows} {rows:fila|filas}, hasta la fila {lastRow} de la hoja).",
        why: "En la unidad equivocada, toda cifra hecha con él está mal en la misma medida.",
        remedy: "Pregunte qué cinta o balanza se usó y convierta los valores.",
      },
      totalDiffers: {
        title: "El total difiere de sus partes",
        sentence:
          "El total de {column} es {total}, sus partes suman {sum}: diferencia {difference} ({made}).",
        why: "Se agregaron o cambiaron filas después del total, o falta una fila en él.",
        remedy: "Sume de nuevo o cambie el total escrito por una fórmula.",
      },
      placesDiffer: {
        title: "Los lugares difieren del registro",
        sentence:
          "{column} es {total}, pero la hoja de plantas lista {sum}: diferencia {difference} ({made}).",
        why: "La cosecha y las horas del cuartel salen de sus lugares de planta.",
        remedy: "Corrija el número o complete la hoja de plantas.",
      },
      vineNeverCounted: {
        title: "Planta sin contar",
        sentence:
          "La planta está en producción, pero no se contó ningún cordón; de la hilera {counted:se contó|se contaron} {counted} de {vines} {vines:planta|plantas}.",
        why: "No se decidiría nada en ella, o sus conteos están bajo otro número.",
        remedy: "Cuéntela o corrija su situación en la hoja de plantas.",
      },
      rowNeverCounted: {
        title: "Hilera sin contar",
        sentence:
          "No se contó ninguna de las {vines} plantas en producción de esta hilera, y sí la mayoría de las hileras del cuartel.",
        why: "Puede haberse perdido una hoja o haberse escrito bajo otra hilera.",
        remedy: "Busque la hoja de papel o cuente la hilera.",
      },
      digitPreference: {
        title: "Valores que parecen estimados",
        sentence:
          "El {own} % de los {values} valores de {column} de {counter} termina en 0 o 5; de los demás en los mismos cuarteles, el {others} %.",
        why: "Los valores que terminan así suelen estimarse o redondearse, no medirse.",
        remedy: "Cuenten juntos de nuevo algunas de estas plantas.",
      },
      counterUnlikeOthers: {
        title: "Cuenta distinto de los demás",
        sentence:
          "{habit} de {counter} difiere un {percent} % de los demás en los mismos cuarteles, en {vineyardRows} {vineyardRows:hilera|hileras}.",
        why: "Alguien cuenta con otra regla y los cordones de distintas hileras no se pueden comparar.",
        remedy: "Cuenten una planta juntos y acuerden la regla.",
      },
      unknownBlock: {
        title: "Cuartel desconocido",
        sentence: "La hoja de cuarteles no tiene el cuartel «{value}».",
        why: "Sus filas quedan fuera de las cifras del cuartel.",
        remedy: "Corrija el nombre o agregue el cuartel a la hoja de cuarteles.",
      },
      unknownRow: {
        title: "El cuartel no tiene esa hilera",
        sentence: "El cuartel tiene {last} {last:hilera|hileras}.",
        why: "Los conteos son de otra hilera, a la que le faltan.",
        remedy: "Corrija el número de hilera o el de hileras en la hoja de cuarteles.",
      },
      unknownVine: {
        title: "El registro no tiene esa planta",
        sentence: "La hoja de plantas no tiene esa planta.",
        why: "Los conteos son de otra planta, a la que le faltan.",
        remedy: "Corrija hilera y planta, o agregue la planta a su hoja.",
      },
      cordonOnMissingVine: {
        title: "Cordón en una planta faltante",
        sentence: "La hoja de plantas da esta planta por faltante, pero se contó un cordón en ella.",
        why: "O el registro o el número de planta está mal.",
        remedy: "Vaya a la planta: corrija su situación o el número en la hoja de conteo.",
      },
      sameCordonTwice: {
        title: "El mismo cordón dos veces",
        sentence: "Este cordón ya está en la fila {otherRow} de la hoja{otherSheet}.",
        why: "Se contaría dos veces, o uno de los dos es de otra planta.",
        remedy: "Elimine la copia o corrija planta, lado o letra.",
      },
      sameVineTwice: {
        title: "La misma planta dos veces",
        sentence: "Esta planta ya está en la fila {otherRow} de la hoja{otherSheet}.",
        why: "El cuartel tendría una planta de más, y no se sabe qué fila vale.",
        remedy: "Elimine la copia o corrija hilera y planta.",
      },
      sameBlockTwice: {
        title: "El mismo cuartel dos veces",
        sentence: "Este cuartel ya está en la fila {otherRow} de la hoja{otherSheet}.",
        why: "No se sabe qué distancias y reglas valen.",
        remedy: "Elimine una de las filas.",
      },
      sameHarvestTwice: {
        title: "Una cosecha en dos filas",
        sentence:
          "La cosecha de este cuartel en ese año ya está en la fila {otherRow} de la hoja{otherSheet}.",
        why: "Lo recolectado en varias filas de un año se suma; la misma recolección dos veces duplicaría el año.",
        remedy:
          "Elimine una de las filas si es la misma recolección; si son dos recolecciones, aparte el hallazgo.",
      },
      outOfWalkOrder: {
        title: "Fuera del orden de recorrido",
        sentence:
          "La fila no está donde la cuadrilla pasó por esta planta (antes y después en la hoja, hilera/planta: {neighbours}).",
        why: "Una planta fuera de orden suele ser un número mal escrito.",
        remedy: "Compare hilera y planta con la hoja de papel.",
      },
      spursTooClose: {
        title: "Más posiciones de las que caben",
        sentence:
          "{places} posiciones no caben en {length}{unit} de cordón; a {distance} entre sí cabrían {fit}.",
        why: "El largo o las posiciones están mal, o el largo está en otra unidad.",
        remedy: "Revise el largo y su unidad, después las posiciones.",
      },
      aliveAboveCut: {
        title: "Más yemas vivas que cortadas",
        sentence: "{column} es {alive}, pero solo {cut:se cortó|se cortaron} {cut} {cut:yema|yemas}.",
        why: "La parte de yemas muertas decide cuántas yemas conserva todo el cuartel.",
        remedy: "Pregunte a quien cortó el sarmiento, o déjelo fuera.",
      },
      sideWithoutCordon: {
        title: "Nada en un lado",
        sentence:
          "{rows} {rows:cordón está|cordones están} en el lado {choice} y ninguno en el otro, aunque casi todas las plantas del cuartel tienen ambos.",
        why: "Un cordón en el lado equivocado se compara con los que no son, y se corta un lado que debía quedar.",
        remedy: "Mire la planta y corrija el lado del cordón.",
      },
      harvestUnusual: {
        title: "Cosecha muy por encima de las otras",
        sentence:
          "Planta por planta, {value}{unit} son {times} veces el valor central de las otras {values} cosechas con que se compara.",
        why: "De ella dependen la previsión y las cifras propias; casi siempre sobra un dígito.",
        remedy: "Búsquelo en las notas de entrega y corrija el peso.",
      },
      countLeftOut: {
        title: "Un conteo olvidado",
        sentence: "{column} está vacía aquí y llena en {values} {values:fila más|filas más}.",
        why: "Un conteo olvidado falta en cada promedio.",
        remedy: "Cuéntelo de nuevo, o aparte la observación.",
      },
      vineWithoutCount: {
        title: "Nada contado en esta planta",
        sentence: "{counts} están vacías aquí; las otras {values} plantas las tienen.",
        why: "Una planta que se pasó por alto falta en cada promedio, o falta ella misma.",
        remedy: "Cuéntela, anótela como faltante, o aparte la observación.",
      },
      totalUnlikeParts: {
        title: "Total distinto de sus partes",
        sentence:
          "{column} es {total}, pero {parts} suman {sum}; la suma es correcta en {values} {values:fila|filas} más.",
        why: "O el total o una de sus partes está mal escrito.",
        remedy: "Busque en el papel y corrija la celda equivocada.",
      },
      cordonsAboveMost: {
        title: "Más filas que cordones de una planta",
        sentence: "{rows} filas nombran esta planta; una planta tiene {most} cordones como máximo.",
        why: "Todas se compararían entre sí, y las plantas a las que pertenecen quedarían sin tarjeta.",
        remedy: "Mire si el número de planta se rellenó hacia abajo y escriba el de cada fila.",
      },
      extraCells: {
        title: "Más celdas que encabezados",
        sentence:
          "La línea tiene más celdas que encabezados, o un salto de línea dentro: sus celdas pueden estar bajo otros encabezados, por eso no se usa nada de ella.",
        why: "Una coma o comilla de más corre todas las celdas siguientes al encabezado vecino.",
        remedy: "Abra el archivo como texto en esta línea y quite lo que sobra, o separe las dos líneas.",
      },
      struckOut: {
        title: "Tachado",
        sentence: "Está tachado en la hoja, y se leyó tal cual.",
        why: "La hoja no dice si la raya quita el conteo o solo lo marca como hecho.",
        remedy: "Pregunte a quien contó: borre la fila si no vale, o quite la raya.",
      },
      otherNumberInComment: {
        title: "Otro número en un comentario",
        sentence: "{column} es {value}, pero el comentario de la celda dice “{said}”.",
        why: "Solo se lee la celda; el comentario puede ser el conteo posterior.",
        remedy: "Pregunte a quien contó, deje el número correcto en la celda y quite el comentario.",
      },
      deadWithSpurs: {
        title: "Cordón muerto con pitones vivos",
        sentence: "El cordón figura como muerto, pero tiene {spurs} pitones vivos contados.",
        why: "Se cortaría un cordón vivo o quedaría uno muerto.",
        remedy: "Raspe la corteza en la planta y corrija la fila.",
      },
      deadTrunkLiveCordon: {
        title: "Cordón vivo en un tronco muerto",
        sentence: "El tronco figura como muerto, pero su cordón tiene {spurs} pitones vivos.",
        why: "O el tronco vive o el cordón sale de otro.",
        remedy: "Siga el cordón hasta su tronco y corrija la fila.",
      },
      cordonIntoGap: {
        title: "Llevado al lugar de una planta faltante",
        sentence:
          "{value}{unit} de cordón donde un lado tiene {share}{unit}; la planta {gap} al lado falta, así que puede ocupar su lugar.",
        why: "Conviene saberlo antes de replantar la faltante.",
        remedy: "Nada, si el cordón se llevó allí a propósito.",
      },
      blockUnlikeSpacing: {
        title: "Los largos no cuadran con la distancia",
        sentence:
          "Los cordones del cuartel miden {median}{unit} en el centro, pero su distancia entre plantas da {share}{unit} por lado.",
        why: "La unidad de un encabezado o la distancia está mal, y con ella toda cifra por largo.",
        remedy: "Revise la unidad en el encabezado del largo y la distancia en la hoja de cuarteles.",
      },
      missingAsZero: {
        title: "Planta faltante contada como 0",
        sentence: "La planta falta, pero {column} es 0.",
        why: "El cuartel perdería la planta dos veces: una en la media de las contadas y otra como faltante.",
        remedy: "Deje vacío el conteo de una planta faltante.",
      },
      sideFromOneTrunk: {
        title: "Un lado de un solo tronco",
        sentence:
          "Todos los candidatos vivos del lado {choice} salen del tronco {trunk}, aunque la planta tiene otro.",
        why: "En este lado la elección no puede repartir el riesgo entre dos troncos.",
        remedy: "Revise los números de tronco; si no, piense en tender un sarmiento del otro.",
      },
      deadCordonStays: {
        title: "Un cordón muerto ha de quedar",
        sentence: "Decidido que queda, pero el cordón o su tronco está muerto o sin pitón vivo.",
        why: "El lado no produciría nada y se cortaría el candidato vivo para siempre.",
        remedy: "Decida de nuevo, en la planta.",
      },
      sickCordonStays: {
        title: "Un cordón enfermo ha de quedar",
        sentence: "Decidido que queda, pero el cordón o su tronco figura como enfermo.",
        why: "La enfermedad pasa del cordón al tronco.",
        remedy: "Pregunte a quien decidió si lo sabía.",
      },
      twoStayOnSide: {
        title: "Dos cordones quedan en un lado",
        sentence:
          "Un segundo cordón ha de quedar en el lado {choice}; el primero está en la fila {otherRow} de la hoja.",
        why: "Un cordón por lado llena el alambre; dos se dan sombra.",
        remedy: "Decida por uno de los dos.",
      },
      vineCameBack: {
        title: "Faltante el año pasado, ahora en producción",
        sentence:
          "La planta faltaba en {season} (hoja{otherSheet}, fila {otherRow}) y ahora figura en producción.",
        why: "Una planta no produce al año de plantarse.",
        remedy: "Corrija la situación: replantada, joven o faltante.",
      },
    },
    sameRemedy: {
      ask: {
        remedy: "Pregunte a quien contó; si es cierto, aparte el hallazgo.",
        kinds: {
          copiedDown: {
            title: "Los mismos números en varias plantas",
            sentence:
              "{vines} {vines:planta seguida|plantas seguidas}, de {from} a {last}, {vines:lleva|llevan} los mismos números en todas las columnas.",
            why: "Los números copiados hacia abajo no se contaron.",
          },
        },
      },
      date: {
        remedy: "Corrija la fecha con la hoja de papel.",
        kinds: {
          dateInFuture: {
            title: "Fecha en el futuro",
            sentence: "{column} es {value}, después de hoy ({today}); {rows} {rows:fila|filas}.",
            why: "Nadie contó en un día por venir: día, mes o año está mal escrito.",
          },
          dateOutOfSeason: {
            title: "Fecha fuera de temporada",
            sentence:
              "{column} es {value}, fuera de los meses {firstMonth} a {lastMonth} en que se cuentan plantas en reposo; {rows} {rows:fila|filas}.",
            why: "Puede que día y mes hayan cambiado de lugar.",
          },
          dateOtherYear: {
            title: "Fecha de otro invierno",
            sentence: "{column} es {value}, pero la hoja es del invierno {season}; {rows} {rows:fila|filas}.",
            why: "O el año está mal escrito o entraron filas de una hoja vieja.",
          },
          dateOutOfWalkOrder: {
            title: "Fecha fuera del orden de recorrido",
            sentence: "{column} es {value}, mientras que el resto de la hilera se recorrió el {usual}.",
            why: "Una fecha mal escrita o una fila de otra hoja.",
          },
        },
      },
      countAgain: {
        remedy: "Mire la planta o corrija el conteo con la hoja de papel.",
        kinds: {
          spursAbovePositions: {
            title: "Más pitones vivos que posiciones",
            sentence: "{spurs} pitones vivos en {positions} posiciones no puede ser.",
            why: "Cada posición lleva un pitón como máximo; el cordón parecería más lleno de lo que está.",
          },
          gapTooLong: {
            title: "Hueco más largo que las posiciones vacías",
            sentence:
              "El hueco más largo es {gap}, pero solo {missing} de {positions} posiciones están sin pitón vivo.",
            why: "Un hueco largo cuenta contra el cordón toda su vida; uno equivocado hace cortar un buen cordón.",
          },
          gapBeyondEnd: {
            title: "El hueco empieza demasiado lejos",
            sentence:
              "Un hueco de {gap} posiciones que empieza a {from} de la cabeza termina más allá de la última de {positions} posiciones.",
            why: "Dónde está el hueco decide si se tiende un sarmiento por encima o se renueva todo el cordón.",
          },
          gapTooShort: {
            title: "Hueco más corto de lo posible",
            sentence:
              "{missing} posiciones vacías entre {spurs} pitones vivos dejan un hueco de al menos {least}, pero dice {gap}.",
            why: "Un hueco que en verdad es más largo hace parecer bueno un mal cordón.",
          },
          directionsDoNotAddUp: {
            title: "Abajo, de lado y arriba no suman",
            sentence: "Los pitones abajo, de lado y arriba suman {sum}, pero dice {spurs} pitones vivos.",
            why: "Uno de los cuatro conteos está mal, y la elección del cordón depende de todos.",
          },
        },
      },
      look: {
        remedy: "Mire la planta; si es cierto, aparte el hallazgo.",
        kinds: {
          cordonTooLong: {
            title: "Más largo que su espacio",
            sentence:
              "{value}{unit} de cordón donde la distancia entre plantas da {share}{unit} por lado, y no se conoce planta faltante al lado.",
            why: "Crece dentro de la planta vecina, o el largo está mal.",
          },
          cordonTooShort: {
            title: "Mucho más corto que su espacio",
            sentence:
              "{value}{unit} de cordón sano donde la distancia entre plantas da {share}{unit} por lado.",
            why: "El alambre sin cordón no produce nada, o el largo está mal.",
          },
          diameterUnusual: {
            title: "Grosor inusual",
            sentence: "{column} es {value}{unit}; los cordones miden de {least} a {most}{unit}.",
            why: "Un grosor equivocado cambia la elección del cordón.",
          },
          nodesUnusual: {
            title: "Número inusual de yemas por pitón",
            sentence:
              "{column} es {value}; los pitones se cortan a entre {least} y {most} {most:yema|yemas}.",
            why: "De ahí se calculan brotes y cosecha.",
          },
          missingVineCounted: {
            title: "Conteo en una planta faltante",
            sentence: "La planta figura como faltante, pero {column} es {value}.",
            why: "O la planta está en pie, o el conteo es de otra planta.",
          },
          trunksUnusual: {
            title: "Número inusual de troncos",
            sentence: "{column} es {value}; las plantas llevan {most} {most:tronco|troncos} como máximo.",
            why: "Un número de tronco equivocado junta cordones que no van juntos.",
          },
          trunksAboveRegister: {
            title: "Más troncos vivos que en el registro",
            sentence:
              "Hay cordones vivos en los troncos {trunks}, pero la hoja de plantas dice {living} {living:tronco vivo|troncos vivos}.",
            why: "O un número de tronco o el registro está mal, y con él se eligen los troncos a renovar.",
          },
          positionsAppeared: {
            title: "Posiciones que el año pasado no estaban",
            sentence:
              "{now} {now:posición|posiciones}, pero {before} en {season} (hoja{otherSheet}, fila {otherRow}), y el cordón no creció tanto.",
            why: "Las posiciones no vuelven en madera vieja; uno de los dos conteos es de otro cordón.",
          },
          trunkChangedPlace: {
            title: "Otro tronco que el año pasado",
            sentence: "Tronco {now}, pero tronco {before} en {season} (hoja{otherSheet}, fila {otherRow}).",
            why: "Un cordón sigue en su tronco; se numeró desde el otro lado o cambiaron las letras.",
          },
        },
      },
      compare: {
        remedy: "Compare con la hoja de papel; si es cierto, aparte el hallazgo.",
        kinds: {
          unlikeItsBlock: {
            title: "Distinto de su cuartel",
            sentence:
              "{column} es {value}{unit}; el valor central de {values} en el cuartel es {median}{unit}.",
            why: "Tan lejos de sus vecinas suele ser un error: un dígito de más, una coma perdida, otra unidad.",
          },
          trunkNotOfVine: {
            title: "Un tronco que la planta no tiene",
            sentence:
              "Un cordón vivo en el tronco {trunk}; la hoja de plantas dice {living} {living:tronco vivo|troncos vivos}, y hay {dead} {dead:muerto contado|muertos contados}.",
            why: "Un cordón con un número de tronco equivocado se deja o se corta con el tronco equivocado.",
          },
          digitsSwapped: {
            title: "Cifras de un largo cambiadas de lugar",
            sentence:
              "{value}{unit} con {positions} {positions:posición|posiciones}; {meant}{unit} cuadraría como en los otros cordones del cuartel.",
            why: "El largo de cordón cuenta para los huecos y para el alambre que se llena.",
          },
          positionsUnlikeLength: {
            title: "Posiciones que no cuadran con el largo",
            sentence:
              "{value} posiciones en {length}{unit}; los cordones del cuartel llevan unas {expected} en ese largo ({values} comparados).",
            why: "Las posiciones o el largo están mal escritos, y de ambos sale la parte de pitones vivos.",
          },
        },
      },
    },
    habit: {
      spacing: "La distancia entre posiciones",
      liveShare: "La parte de posiciones con pitón vivo",
      length: "El largo de los cordones",
      diameter: "El grosor de los cordones",
      down: "La parte de pitones hacia abajo",
    },
    made: { typed: "escrito a mano", formula: "por fórmula" },
    groups: {
      word: "«{value}»",
      kind: "{value}",
      counter: "contado por {value}",
      column: "{value}",
      sheet: "hoja {value}",
      bothWays: "se lee de dos maneras",
      noYear: "sin año",
      heading: "{title}: {cause} ({findings})",
      cells: "Celdas: {cells}",
      becomes: "{from} pasa a {to}",
      orElse: "{change} (o {other})",
      likely: "Probable: {changes}",
      certain: "Seguro: {changes}",
      blank: "vacía",
    },
    findingPlaces: {
      vine: "{block} hilera {row} planta {vine}",
      row: "{block} hilera {row}",
      block: "{block}",
      sheetRow: "Hoja {sheet} fila {sheetRow}",
      sideCordon: "cordón {cordon} ({side})",
      cordon: "cordón {cordon}",
      side: "lado {side}",
      whole: "{place}: {sentence}",
      joined: "{place}, {detail}",
      otherSheet: " {name}",
    },
    severity: { wrong: "mal", ask: "preguntar", note: "nota" },
    action: {
      fillIn: "Completar",
      correct: "Corregir en la hoja",
      lookAtVine: "Mirar la planta",
      askCounter: "Preguntar a quien contó",
      mendRegister: "Arreglar el registro",
      mendSheet: "Arreglar la tabla",
    },
  },
  functions: {
    budget: {
      nodebudget: {
        description:
          "Yemas que dejar en una planta por poda equilibrada, según el peso de la madera de un año podada y una fórmula como 30+10. Sin redondear.",
        parameters: {
          prunings: {
            label: "madera podada",
            description:
              "Peso de la madera de un año podada, libras o kilos; una columna da un presupuesto por planta.",
          },
          formula: {
            label: "fórmula",
            description: "Yemas por la primera libra (454 g) y por cada libra más, como «30+10».",
          },
          least: {
            label: "mínimo",
            description: "Mínimo de yemas que conserva una planta; sin límite si se omite.",
          },
          most: {
            label: "máximo",
            description: "Máximo de yemas que conserva una planta; sin límite si se omite.",
          },
          below_one_pound: {
            label: "menos de una libra",
            description:
              "Para menos de una libra, donde ninguna fuente lo dice: refuse (sin respuesta), flat (el primer número de la fórmula) o pro rata (ese número por las libras). refuse si se omite.",
          },
        },
        results: { nodes: "yemas" },
      },
      nodesbylength: {
        description:
          "Yemas que dejar en un largo de cordón o hilera con densidad fija; para plantas cuya poda no se pesa. Sin redondear.",
        parameters: {
          length: {
            label: "largo",
            description: "Largo del cordón, o de la hilera que ocupa la planta, pies o metros.",
          },
          density: { label: "densidad", description: "Yemas por cada pie o metro." },
        },
        results: { nodes: "yemas" },
      },
      spurfit: {
        description:
          "Compara un presupuesto de yemas con los pitones que caben en el cordón: pitones deseados, pitones que caben y yemas sin lugar.",
        parameters: {
          nodes: { label: "yemas", description: "Presupuesto de yemas de la planta." },
          length: { label: "largo", description: "Largo de un cordón, pies o metros." },
          spacing: {
            label: "distancia",
            description: "Cordón necesario para cada pitón, pulgadas o centímetros.",
          },
          cordons: { label: "cordones", description: "Cordones de ese largo en la planta: 1 si se omite." },
        },
        results: {
          spursWanted: "pitones deseados",
          spursThatFit: "pitones que caben",
          nodesShort: "yemas sin lugar",
        },
      },
    },
    callRefusals: {
      callRefusals: {
        missing: "Falta {argument}: se espera {expected}.",
        isText: "{argument} es el texto «{value}»{place}: se espera {expected}.",
        isBoolean: "{argument} es {value}{place}: se espera {expected}.",
        isError: "{argument} es el error {value}{place}: corrija primero esa celda.",
        outOfLimits: "{argument} es {value}{place}: se espera {expected}.",
        notAChoice: "{argument} es «{value}»: se espera uno de {choices}.",
        oneCellOnly: "{argument} es un rango de {rows} filas y {columns} columnas: se espera una celda.",
        oneColumnOnly: "{argument} es un rango de {columns} columnas: se espera una columna.",
        ragged:
          "{argument} tiene filas de distinto largo ({rowLengths} {rowLengths:celda|celdas}): se espera un rectángulo.",
        differentLengths:
          "{argument} tiene {rows} filas pero {other} tiene {otherRows}: se esperan columnas del mismo largo.",
        noNumbers: "{argument} no contiene ningún número: se espera al menos uno.",
        notATable:
          "{argument} no es un rango con encabezados: seleccione la tabla con su fila de encabezados, como {suggestion}.",
        blanksAsZero:
          "{argument} llegó con 0 en la columna «{heading}», como algunas versiones de Excel entregan celdas vacías: aquí no se distingue un conteo vacío de 0; use el panel.",
        notOurTable:
          "{argument} tiene muy pocos encabezados conocidos: seleccione la tabla con su fila de encabezados, como {suggestion}.",
        noSuchColumn: "{argument} no tiene la columna «{column}».",
        wrongCell:
          "{argument}: «{value}» en la columna «{column}»{place} no se puede usar; haga la revisión para ver qué está mal.",
        tooManyArguments: "CORDON.{name} admite como máximo {most} argumentos, pero hay {given}.",
      },
      expected: {
        number: "un número de {least} a {most} {unit}",
        numberFrom: "un número de al menos {least} {unit}",
        numberAboveZero: "un número mayor que cero, máximo {most} {unit}",
        numberAboveZeroOnly: "un número mayor que cero {unit}",
        whole: "un número entero de {least} a {most}",
        wholeFrom: "un número entero de al menos {least}",
        share: "una proporción de {least} a {most} (35 % es 0,35)",
        text: "un texto",
        choice: "uno de {choices}",
        table: "un rango con su fila de encabezados",
      },
      wholeTable: "{table}[#Todo]",
      placeInRange: " en la fila {row} del rango",
    },
    checks: {
      noFindings: "Sin hallazgos; filas leídas: {rows}.",
      checkcounts: {
        description:
          "Lo que falta, es imposible o improbable en una tabla de conteos: una línea por hallazgo, con su fila en el rango, su columna, su certeza y una frase.",
        parameters: {
          counts: {
            label: "conteos",
            description:
              "La tabla con su fila de encabezados, como Cordones[#Todo]; también una tabla Plantas o Cortes de yemas.",
          },
          settings: {
            label: "ajustes",
            description: "La tabla Ajustes, con los umbrales de la finca; los incorporados si se omite.",
          },
          blocks: {
            label: "cuarteles",
            description: "La tabla Cuarteles, para ver cuarteles desconocidos y distancias.",
          },
          vines: { label: "plantas", description: "La tabla Plantas, para ver plantas fuera del registro." },
          unit: {
            label: "unidad",
            description:
              "US o metric, para columnas cuyo encabezado no nombra unidad. Si se omite: la de la tabla Ajustes o la de los otros encabezados.",
          },
        },
        results: { row: "Fila del rango", column: "Columna", severity: "Certeza", finding: "Hallazgo" },
      },
    },
    choice: {
      settings: {
        label: "ajustes",
        description:
          "La tabla Ajustes, con los pesos y referencias de la finca; los incorporados si se omite.",
      },
      blocks: {
        label: "cuarteles",
        description:
          "La tabla Cuarteles, por el sistema de conducción y la distancia entre plantas; sin ella no cuenta la posición de los pitones.",
      },
      cordonscore: {
        description:
          "Puntaje de cada cordón candidato entre 0 y 1 y sus partes. Lo que no se contó se deja fuera, nunca se toma por cero; bajo y alto muestran cuánto queda abierto el puntaje.",
        parameters: {
          training: {
            label: "conducción",
            description:
              "highWire (alambre alto), upright (brotes erguidos) o divided (follaje dividido), si la tabla Cuarteles falta o no lo dice.",
          },
        },
        results: {
          score: "Puntaje",
          low: "Bajo",
          high: "Alto",
          spurs: "Pitones",
          stretch: "Hueco más largo",
          placing: "Orientación",
          soundness: "Estado",
          diameter: "Diámetro",
        },
      },
      choosecordons: {
        description:
          "Qué cordón queda en cada lado de cada planta: queda, se corta o preguntar, junto a cada fila de la tabla Cordones, con su puntaje y la razón. Es una propuesta; decide una persona.",
        parameters: {
          vines: {
            label: "plantas",
            description: "La tabla Plantas, por la situación de la planta y sus troncos vivos.",
          },
        },
        results: { verdict: "Decisión", score: "Puntaje", reason: "Motivo" },
      },
    },
    cordons: {
      cordonRows: {
        label: "cordones",
        description:
          "La tabla Cordones con su fila de encabezados, como Cordones[#Todo]; las columnas se hallan por su encabezado.",
      },
      gapsbyrow: {
        description:
          "Posiciones de pitón, pitones vivos y huecos por cuartel e hilera, según la tabla Cordones.",
        parameters: {
          which: {
            label: "cuáles",
            description:
              "all (si se omite): todas las filas. staying: cordones cuya Decisión fija dice queda. chosen: los que quedan según la elección de cordones, como en el panel; los que se cortarán no cuentan.",
          },
          settings: {
            label: "ajustes",
            description: "La tabla Ajustes, para chosen; las cifras incorporadas si se omite.",
          },
          blocks: { label: "cuarteles", description: "La tabla Cuarteles, para chosen." },
          vines: { label: "plantas", description: "La tabla Plantas, para chosen." },
        },
        results: { share: "Proporción de huecos" },
      },
    },
    crop: {
      shoots: {
        description:
          "Brotes que esperar en una planta según los pitones que quedan: los de las yemas contadas y los de la base de los pitones. Sin redondear.",
        parameters: {
          spurs: { label: "pitones", description: "Pitones vivos que quedan en la planta." },
          budbreak: { label: "brotación", description: "Proporción de yemas contadas que brotan, de 0 a 1." },
          basal_shoots: {
            label: "brotes de base",
            description: "Brotes de yemas no contadas, por pitón: 0 si se omite.",
          },
        },
        results: { shoots: "brotes" },
      },
      clusters: {
        description: "Racimos que esperar en una planta según sus brotes. Sin redondear.",
        parameters: {
          shoots: { label: "brotes", description: "Brotes de la planta." },
          clusters_per_shoot: {
            label: "racimos por brote",
            description: "Racimos por brote en promedio; unos dos en un híbrido fértil es lo habitual.",
          },
        },
        results: { clusters: "racimos" },
      },
      vinecrop: {
        description: "Cosecha de una planta: sus racimos por el peso de un racimo, en libras o kilos.",
        parameters: { clusters: { label: "racimos", description: "Racimos de la planta." } },
        results: { crop: "cosecha por planta" },
      },
      vinedensity: {
        description:
          "Plantas por acre o hectárea según las distancias, como si lo llenaran todo. Sin redondear: 9 por 6 pies se publica como 807 y es 806,67.",
        parameters: {
          row_spacing: { label: "entre hileras", description: "Distancia entre hileras, pies o metros." },
          vine_spacing: {
            label: "entre plantas",
            description: "Distancia entre plantas en la hilera, pies o metros.",
          },
        },
        results: { density: "plantas por acre o hectárea" },
      },
      blockcrop: {
        description:
          "Cosecha por acre (toneladas cortas) o hectárea (toneladas) según la cosecha de una planta productiva, las plantas plantadas y la proporción que falta. No se redondea en el camino.",
        parameters: {
          vine_crop: {
            label: "cosecha por planta",
            description: "Cosecha de una planta productiva, libras o kilos.",
          },
          density: { label: "densidad", description: "Plantas plantadas por acre o hectárea." },
          missing_share: {
            label: "proporción faltante",
            description:
              "Proporción de plantas que faltan o no producen: 0 si se omite. Omítala si las faltantes se contaron como plantas sin racimos.",
          },
        },
        results: { crop: "cosecha por acre o hectárea" },
      },
      cropload: {
        description:
          "Carga (índice de Ravaz): peso de la cosecha entre el peso de la madera podada el invierno siguiente, de las mismas plantas y en la misma unidad.",
        parameters: {
          crop: { label: "cosecha", description: "Peso de la cosecha." },
          prunings: {
            label: "madera podada",
            description: "Peso de la madera de un año podada el invierno siguiente, en la misma unidad.",
          },
        },
        results: { cropLoad: "carga" },
      },
      shootstoremove: {
        description:
          "Brotes que quitar de una planta en primavera, y que dejar, según su largo de alambre; con minutos, también las horas de una persona. Los que quedan se redondean hacia abajo.",
        parameters: {
          shoots: {
            label: "brotes",
            description:
              "Brotes que hay en la planta, o su promedio; una columna da una respuesta por planta.",
          },
          length: {
            label: "largo",
            description: "Alambre que ocupa la planta, pies o metros: su distancia en la hilera.",
          },
          density: {
            label: "densidad",
            description:
              "Brotes que se quieren por pie o metro: 6 por pie (Wisconsin 2015), 15 por metro (Michigan).",
          },
          vines: { label: "plantas", description: "Plantas que se ralean como ella: 1 si se omite." },
          minutes: {
            label: "minutos",
            description: "Minutos que una persona necesita por planta; sin ellos no se dan horas.",
          },
        },
        results: { remove: "quitar", keep: "dejar", hours: "horas" },
      },
      clusterstoremove: {
        description:
          "Racimos que quitar de cada planta, y que dejar, para que el cuartel no pase de una cosecha meta. Los que quedan se redondean hacia abajo.",
        parameters: {
          target: {
            label: "meta",
            description: "Cosecha máxima deseada, toneladas cortas por acre o toneladas por hectárea.",
          },
          density: {
            label: "densidad",
            description: "Plantas productivas por acre o hectárea; descuente antes las faltantes.",
          },
          counted: {
            label: "contados",
            description: "Racimos que hay en la planta; una columna da una respuesta por planta.",
          },
        },
        results: { remove: "quitar", keep: "dejar" },
      },
    },
    formulaProblems: {
      empty: "La fórmula está vacía: se espera algo como {example}.",
      unknownFunction: "No existe la función {name} (posición {position}). ¿Quiso decir {suggestion}?",
      otherFunction:
        "{name} en la posición {position} no es una función CORDON, y aquí solo se pueden usar esas.",
      noSheet:
        "{name} en la posición {position} apunta a una hoja, y aquí no hay ninguna: escriba las cifras, una columna como {1;2;3}.",
      tooLong: "La fórmula tiene más de {most} caracteres, más de los que admite una hoja de cálculo.",
      tooDeep:
        "En la posición {position} hay más de {most} paréntesis, llamadas o signos unos dentro de otros, más de los que admite una hoja de cálculo.",
      tooLarge: "El resultado es demasiado grande para un número de una hoja de cálculo.",
      unclosedParenthesis: "El paréntesis abierto en la posición {position} no se cierra.",
      unclosedBrace: "La llave abierta en la posición {position} no se cierra.",
      unclosedText: "El texto que empieza en la posición {position} no tiene comilla de cierre.",
      missingParenthesis: "{name} necesita un paréntesis de apertura, en la posición {position}.",
      unexpected: "«{found}» en la posición {position} no se espera ahí.",
      unexpectedEnd: "La fórmula termina en la posición {position}, donde se espera un valor.",
      raggedArray: "Las filas de la lista en la posición {position} no tienen el mismo largo.",
      notANumber: "No se puede calcular con «{value}»: se espera un número a ambos lados de {operator}.",
      divisionByZero: "Un número se divide por cero.",
      differentSizes:
        "Las listas de {left} y {right} celdas no se pueden unir con {operator}: se espera el mismo tamaño.",
    },
    injury: {
      budinjury: {
        description:
          "Proporción de yemas primarias muertas en una muestra de yemas cortadas, con el rango que contiene la proporción verdadera del cuartel.",
        parameters: {
          dead: { label: "yemas muertas", description: "Yemas con la primaria muerta." },
          cut: {
            label: "cortadas",
            description: "Todas las yemas cortadas; de 50 a 100 por cuartel, de muchos sarmientos.",
          },
          method: {
            label: "método",
            description: "Wilson (si se omite) o Clopper-Pearson, más ancho y nunca demasiado seguro.",
          },
        },
        results: { share: "proporción muerta" },
      },
      cropafterfrost: {
        description:
          "Parte de una cosecha completa que queda tras una helada de primavera, contando yemas según lo que aún vive en cada una: una primaria rinde 1, una secundaria lo que vale, una terciaria y una sin brote 0 (Howell, Michigan State).",
        parameters: {
          primaries: { label: "primarias vivas", description: "Yemas con el brote primario vivo." },
          secondaries: {
            label: "secundarias vivas",
            description: "Yemas con la primaria muerta y la secundaria viva.",
          },
          tertiaries: { label: "terciarias vivas", description: "Yemas en las que solo vive la terciaria." },
          shootless: { label: "sin brote", description: "Yemas sin brote vivo." },
          secondary_worth: {
            label: "valor de una secundaria",
            description:
              "Cosecha de una secundaria sobre la de una primaria, de 0 a 1; 0,35 si se omite, que la fuente da solo para Concord y Niagara. Norton, cerca de 0.",
          },
        },
        results: { share: "parte de la cosecha" },
      },
      nodesafterinjury: {
        description:
          "Yemas que dejar para compensar el daño de invierno, según una regla con nombre. Las reglas discrepan; donde la fuente calla, la respuesta es #N/A con una frase. Por encima de la mitad muerta, mire primero sarmientos y troncos.",
        parameters: {
          nodes: { label: "yemas", description: "Presupuesto de yemas de la planta sin daño." },
          dead_share: {
            label: "proporción muerta",
            description: "Proporción de yemas primarias muertas, de 0 a 1, como la da BUDINJURY.",
          },
          rule: {
            label: "regla",
            description: "Cornell 2014, MSU 2002, Purdue, Northern Grapes 2014 o compensation.",
          },
        },
        results: { nodes: "yemas" },
      },
    },
    outlook: {
      outlook: {
        description:
          "Lo que deja la poda, por cuartel y etapa: racimos por planta y cosecha de una planta, de un área y del cuartel, baja, probable y alta, con la mayor fuente de duda.",
        parameters: {
          vines: {
            label: "plantas",
            description:
              "La tabla Plantas con sus encabezados: situación, y brotes o racimos donde se contaron.",
          },
          blocks: {
            label: "cuarteles",
            description:
              "La tabla Cuarteles: distancias, plantas, peso del racimo, racimos por brote, brotación.",
          },
          settings: {
            label: "ajustes",
            description:
              "La tabla Ajustes, por la confianza y la variación entre años; los incorporados si se omite.",
          },
          cordons: {
            label: "cordones",
            description:
              "La tabla Cordones, por las yemas en los cordones que quedan; sin ella no hay etapa de invierno.",
          },
          bud_cuts: {
            label: "cortes_de_yemas",
            description:
              "La tabla Cortes de yemas, por el daño de invierno; sin ella toda yema se toma por viva.",
          },
          harvest: {
            label: "cosecha",
            description: "La tabla Cosecha, por el peso del racimo en fase de pausa de esta temporada.",
          },
          unit: {
            label: "unidad",
            description:
              "US o metric, para la respuesta y para columnas cuyo encabezado no nombra unidad. Si se omite: la de la tabla Ajustes o la de los otros encabezados.",
          },
        },
        results: {
          block: "Cuartel",
          stage: "Etapa",
          figure: "Cifra",
          low: "Bajo",
          likely: "Probable",
          high: "Alto",
          unit: "Unidad",
          says: "En qué se apoya",
        },
      },
      outlookLines: {
        figures: {
          clusters: "racimos por planta",
          perVine: "cosecha de una planta",
          perArea: "cosecha de un área",
          block: "cosecha del cuartel",
        },
        doubt: "Mayor duda: {source}, {percent} %.",
      },
    },
    renewal: {
      renewalLines: {
        none: "Ninguna planta necesita un tronco nuevo.",
        notCounted: "Plantas sin troncos vivos contados: {vines}.",
      },
      youngvine: {
        description:
          "Lo que las publicaciones dejan en una planta en uno de sus primeros cuatro años: brotes, racimos, cordones y cuánto se alargan, pitones, yemas. Lo que ninguna vista da no aparece; tras el cuarto año la respuesta es #N/A.",
        parameters: {
          planted: {
            label: "año de plantación",
            description: "Año en que se plantó, como 2024; es el primer año de crecimiento.",
          },
          season: {
            label: "temporada",
            description: "Año en que termina este invierno y se cosecha después.",
          },
          training: {
            label: "conducción",
            description:
              "Sistema de conducción: highWire, upright o divided; highWire si se omite. Solo el cuarto año depende de él.",
          },
        },
        results: { what: "Qué", least: "Mínimo", most: "Máximo", source: "Fuente" },
      },
      trunkstorenew: {
        description:
          "Plantas que necesitan un tronco nuevo, las más urgentes primero: troncos vivos frente a los deseados, troncos dañados y muertos, y qué hacer.",
        parameters: {
          vines: {
            label: "plantas",
            description: "La tabla Plantas con su fila de encabezados, como Plantas[#Todo].",
          },
          settings: {
            label: "ajustes",
            description: "La tabla Ajustes, por el número de troncos deseado; el incorporado si se omite.",
          },
          cordons: { label: "cordones", description: "La tabla Cordones, para el estado de cada tronco." },
        },
        results: {
          order: "Orden",
          block: "Cuartel",
          row: "Hilera",
          vine: "Planta",
          liveTrunks: "Troncos vivos",
          bringUp: "Troncos por criar",
          what: "Qué hacer",
        },
      },
    },
    sampling: {
      vinestocount: {
        description:
          "Mínimo de plantas que contar para conocer la media de un cuartel con cierto margen, con la t de Student y para un cuartel de ese tamaño.",
        parameters: {
          cv: {
            label: "cv",
            description:
              "Variación entre plantas: desviación estándar sobre media, de un conteo piloto; de 0,3 a 0,45 es lo usual.",
          },
          margin: {
            label: "margen",
            description: "Margen deseado, como proporción de la media: 0,1 para un 10 %.",
          },
          vines: {
            label: "plantas",
            description: "Plantas productivas del cuartel; omítalo si el cuartel es grande.",
          },
        },
        results: { vines: "plantas que contar" },
      },
      blockmean: {
        description:
          "Media de un cuartel según conteos en una muestra al azar de sus plantas, con el rango que contiene la media verdadera y el número de plantas contadas.",
        parameters: {
          counts: {
            label: "conteos",
            description: "Un conteo por planta; las celdas vacías son plantas no contadas.",
          },
          vines: {
            label: "plantas",
            description: "Plantas productivas del cuartel; omítalo si el cuartel es grande.",
          },
          zeros: {
            label: "ceros",
            description:
              "count (si se omite): un 0 es un conteo de nada. skip: un 0 es una planta no contada; elíjalo donde las celdas vacías llegan como 0.",
          },
        },
        results: { mean: "media", n: "plantas contadas" },
      },
    },
    shared: {
      unit: {
        label: "unidad",
        description:
          "US (libras, pies, pulgadas, acres) o metric (kilos, metros, centímetros, hectáreas), para lo que entra y lo que sale. US si se omite.",
      },
      confidence: {
        label: "confianza",
        description:
          "Con qué frecuencia el rango debe contener el valor verdadero, como proporción: 0,9 si se omite.",
      },
      low: "bajo",
      high: "alto",
      nodesPerSpur: {
        label: "yemas por pitón",
        description:
          "Yemas contadas que se dejan por pitón; las de la base no se cuentan. Dos es lo habitual.",
      },
      clusterWeight: {
        label: "peso de racimo",
        description: "Peso medio de un racimo maduro, libras o kilos.",
      },
    },
    units: {
      unitNames: {
        perLength: { US: "por pie", metric: "por metro" },
        perMass: { US: "por libra", metric: "por kilo" },
        vinesPerArea: { US: "plantas por acre", metric: "plantas por hectárea" },
        cropPerArea: { US: "toneladas cortas por acre", metric: "toneladas por hectárea" },
      },
    },
    work: {
      pruninghours: {
        description: "Horas de trabajo y días de cuadrilla para podar un número de plantas.",
        parameters: {
          vines: { label: "plantas", description: "Plantas por podar." },
          minutes: { label: "minutos", description: "Minutos que una persona necesita por planta." },
          crew: { label: "cuadrilla", description: "Personas: 1 si se omite." },
          hours_a_day: { label: "horas por día", description: "Horas de trabajo por día: 8 si se omite." },
        },
        results: { hours: "horas", crewDays: "días de cuadrilla" },
      },
      version: {
        description:
          "Versión del complemento que calcula este libro; si muestra #¿NOMBRE? el complemento no está.",
        results: { version: "versión" },
      },
    },
  },
  gapPivot: {
    countsSheet: "Conteo de huecos",
    countsTitle: "Huecos, cordón por cordón",
    pivotSheet: "Huecos dinámica",
    pivotTitle: "Tabla dinámica de huecos por cuartel e hilera",
    pivotNote:
      "Ordénela como quiera: la próxima vez se actualiza y conserva su diseño. La parte es la media de los cordones.",
    summaryTitle:
      "Huecos por cuartel e hilera (tabla simple: aquí no hay tablas dinámicas; en Excel el mismo botón crea una)",
    sumPositions: "Todas las posiciones",
    sumLiveSpurs: "Todos los pitones vivos",
    sumGaps: "Todos los huecos",
    meanShare: "Parte media de huecos",
  },
  shootThinning: {
    thin: "Ralee los brotes a {keep} por planta: se contaron {counted} en promedio, sobran {remove}; unas {hours} h de una persona para el cuartel.",
    none: "No hay brotes que ralear: se contaron {counted} por planta en promedio, no más de lo que lleva su alambre.",
  },
  blockFigures: {
    figures: "Cifras de este cuartel: {figures}.",
    figure: "{figure} {value} ({from})",
    block: "hoja Cuarteles",
    settings: "Ajustes",
    settingsSource: "Ajustes, {source}",
    published: "{grape}: {source}",
    derived: "calculado de {source}",
    noneOfKind: "No se vio publicado el valor de un brote secundario para {kind}; valen los Ajustes.",
  },
  outlook: {
    stageNames: {
      winter: "Invierno: yemas dejadas",
      frost: "Tras la helada: yemas contadas",
      shoots: "Brotes contados",
      clusters: "Racimos contados",
      lagPhase: "Fase de pausa: racimos pesados",
      asCounted: "Invierno: yemas tal como se contaron",
      harvest: "Cosecha",
    },
    spreadSources: {
      vines: "qué plantas se contaron",
      buds: "qué yemas se cortaron",
      budbreak: "la brotación de este año",
      clustersPerShoot: "los racimos por brote de este año",
      clusterWeight: "el peso del racimo",
      lagMultiplier: "el crecimiento desde la fase de pausa",
      missing: "las plantas faltantes",
    },
    nextSteps: {
      none: "{minutes} minutos de contar o pesar estrecharían el rango menos de {percent} %: esperar a la próxima etapa.",
      vines: "Contar {more} plantas más ({minutes} min): de {low} a {high}, {percent} % a cada lado.",
      canes:
        "Cortar las yemas de {more} sarmientos más ({minutes} min): de {low} a {high}, {percent} % a cada lado.",
      clusters: "Pesar {more} racimos más ({minutes} min): de {low} a {high}, {percent} % a cada lado.",
    },
    outlookLacks: {
      frostCounts:
        "Las yemas contadas tras la helada piden tres conteos: primarias vivas, solo secundarias y sin brote; con menos no se calcula ninguna parte de cosecha.",
      vinesOfBlock:
        "No se sabe cuántas plantas tiene el cuartel: llene Plantas en la hoja Cuarteles o enumérelas en la hoja Plantas.",
      clusterWeight:
        "Falta el peso del racimo: llénelo en la hoja Cuarteles; no hay dato publicado para la mayoría de las variedades resistentes al frío.",
      countedVines:
        "Menos de dos plantas tienen conteos: decida sus cordones, o cuente brotes o racimos en una muestra.",
      decidedVines:
        "Los cordones de menos de dos plantas están decididos, así que no se sabe cuántas yemas quedan.",
      budCuts:
        "No se cortaron yemas en este cuartel: se toman todas por vivas; tras un invierno duro la cifra es demasiado alta.",
      secondaries:
        "Las secundarias vivas de los cortes caben de las dos maneras, de todas las yemas y solo bajo primarias muertas: el ajuste Secondaries are written dice cuál vale.",
      register: "La hoja Plantas no tiene plantas de este cuartel: ninguna se toma por faltante.",
      usualFigures:
        "La brotación o los racimos por brote no están en la hoja Cuarteles: valen las cifras usuales de Ajustes, y el intervalo incluye también la diferencia entre fincas.",
      fewVines:
        "Menos de cinco plantas tienen un conteo: cuánto difieren las plantas se toma de Ajustes, porque tan pocas no lo muestran.",
      rowsOfVines:
        "No se pueden tomar hileras como estratos porque la hoja Plantas no las enumera todas: se toman como elegidas al azar.",
    },
    frostCounted:
      "Tras la helada {primaries} de {nodes} yemas tienen vivo el brote primario y {secondaries} solo uno secundario, que vale {worth}: queda {share} de una cosecha (Howell, Michigan State). Los brotes de base no entran en esa regla.",
    youngBlock: {
      bare: "Año {leaf} de un cuartel joven: como máximo {clusters} {clusters:racimo|racimos} por planta.",
      carries:
        "Año {leaf} de un cuartel joven: como máximo {clusters} {clusters:racimo|racimos} por planta; lleva unos {likely}.",
    },
    otherSecondaries:
      "Leídas de la otra manera, las secundarias darían {other} racimos por cepa, no {clusters}.",
    thinningGroups: ["plantas ligeras", "plantas medias", "plantas cargadas"],
    cropLoadRanges: {
      "single canopy": "follaje simple",
      "divided canopy": "follaje dividido",
      hybrids: "híbridos",
      Concord: "Concord",
    },
    cropLoadVerdicts: {
      below:
        "La relación de carga {load} está por debajo de {low} a {high} ({range}): las plantas podrían llevar más.",
      within: "La relación de carga {load} está dentro de {low} a {high} ({range}).",
      above:
        "La relación de carga {load} está por encima de {low} a {high} ({range}): demasiada carga para el tamaño de las plantas.",
    },
    cropLoadPairs: {
      following:
        "Cosecha de {year} sobre los sarmientos del invierno siguiente, la pareja de los intervalos publicados.",
      before:
        "Cosecha probable de {year} sobre los sarmientos del invierno anterior, que no es la pareja de los intervalos publicados.",
    },
    cropLoadUnsure: "El rango de la cosecha pasa de un límite, así que esto puede cambiar.",
    missingTwice:
      "Cuente solo plantas productivas. Una planta faltante contada como 0 y descontada otra vez se pierde dos veces: con {percent} % faltante la cosecha sale {percent} % baja.",
    handbookSamples: {
      wsu2006:
        "WSU 2006: {vines} {vines:planta|plantas} para 5 %; esa es la muestra para una proporción de la mitad, no para una media.",
      iowa2011:
        "Iowa State 2011: todos los racimos de {vines} {vines:planta|plantas} y {clusters} pesados, para 15 %; algo escaso según la fórmula.",
      iowa2013: "Iowa State 2013: {clusters} racimos pesados en fase de pausa.",
    },
    farmFigures: {
      clustersPerShoot: "Racimos por brote",
      budbreak: "Brotación",
      clusterWeight: "Peso del racimo",
      lagMultiplier: "Multiplicador de la fase de pausa",
    },
    ownHarvests: {
      figure:
        "Sus propias cosechas, {years} de {first} a {last}: de {least} a {most} {unit}, {mean} en promedio.",
      allAbove:
        "Todas las cosechas registradas (de {least} a {most} {unit}) están por encima de este intervalo de {low} a {high}: revise los nudos dejados, los racimos por brote y el peso del racimo antes de fiarse.",
      allBelow:
        "Todas las cosechas registradas (de {least} a {most} {unit}) están por debajo de este intervalo de {low} a {high}: revise los nudos dejados, las yemas muertas, los racimos por brote y el peso del racimo antes de fiarse.",
      leftOut:
        "Ninguna cosecha registrada (de {least} a {most} {unit}) cae dentro de este intervalo de {low} a {high}; unas están por encima y otras por debajo.",
      meanAbove:
        "Las cosechas registradas promedian {mean} {unit}, por encima de este intervalo de {low} a {high}; este año sería pequeño.",
      meanBelow:
        "Las cosechas registradas promedian {mean} {unit}, por debajo de este intervalo de {low} a {high}; este año sería grande.",
    },
    farmFigureWeight:
      "{years} {years:año propio cuenta|años propios cuentan} {percent} %, la cifra usual {usual} el resto.",
  },
  outlookRefusals: {
    tooFewClusters:
      "{value} racimos pesados son muy pocos para decir cuán segura es la media; se necesitan al menos {needed}.",
    unknownCropLoadRange: '"{value}" no es un rango conocido de relación de carga; se conocen: {known}.',
    tooFewRows:
      "{value} {value:hilera tiene|hileras tienen} conteos de dos inviernos: no bastan para decir cuán rápido se pierden pitones; se necesitan al menos {needed}.",
    rowSpursAbovePositions: "Hilera {row}, {year}: {value} pitones vivos en {most} posiciones no puede ser.",
  },
  overrule: {
    page: {
      heading: "Decidir otra cosa",
      reason: "Motivo, para la nota",
      noReason: "Anote primero por qué: el motivo va a la nota junto al cordón.",
      noNote:
        "La hoja {sheet} no tiene la columna Nota, donde va el motivo. Siguiente paso: escriba ese encabezado junto a la tabla y decida otra vez.",
      takeBack: "Deshacer: {outcome}",
      partlyBack:
        "Celdas que vuelven a tener lo que tenían: {cells}; sin tocar, porque alguien las cambió después: {left}. Siguiente paso: decida otra vez.",
      takenBack: "Deshecho: las celdas tienen lo que tenían antes.",
      progress: "{block}: {decided} de {vines} {vines:planta decidida|plantas decididas}",
      whatTurns: "¿Qué lo cambiaría?",
      nothingTurns: "Ningún conteo a cinco o menos y ningún peso por sí solo lo cambiaría.",
      liveSpurs: "{side} {cordon}: {to} pitones vivos en vez de {from}.",
      longestGap: "{side} {cordon}: un hueco más largo de {to} en vez de {from}.",
      figure: "Ajustes, {figure}: {to} en vez de {from}.",
      risk: "¿Cuánto depende del conteo?",
      riskFound:
        "{block}: si cada conteo errara por uno, quedaría otro cordón en {flips} de las plantas; en {decided} de las decididas sin pregunta ({of} {of:planta|plantas}, recontadas {draws} veces).",
    },
  },
  picture: {
    title: "Dibujo de la planta a escala.",
    cordon:
      "{side} {cordon}: {length}, {spurs} pitones vivos, hueco más largo {gap}, tronco {trunk}, {verdict}.",
    key: "Dibujado según los conteos: continuo queda, rayado se corta, punteado se pregunta; las marcas son pitones vivos, el sombreado el hueco más largo (la hoja no dice dónde está).",
    unknown: "sin contar",
  },
  refusals: {
    tooManyWords:
      'La hoja "{sheet}" tiene más de {most} nombres distintos; ninguna finca tiene tantos cuarteles, cordones, sarmientos y contadores. Mire si hay notas o números bajo el encabezado de una de esas columnas.',
    outside: "{argument} debe estar entre {least} y {most} {unit}, pero es {value}.",
    notWhole: "{argument} debe ser un número entero de {least} a {most}, pero es {value}.",
    formulaNotBalanced:
      'La fórmula debe leerse como 30+10 (yemas por la primera libra, 0,45 kg, y por cada libra más), pero es "{value}".',
    belowOnePound:
      "La poda pesa {value} lb ({kilograms} kg): ninguna fuente vista dice cuántas yemas dejar por debajo de una libra (0,45 kg); elija fijo o proporcional para una cifra nuestra.",
    leastAboveMost: "El mínimo de yemas ({least}) es mayor que el máximo ({most}).",
    noPrunings: "La poda pesa cero, así que no hay relación de carga: pese la poda de las mismas plantas.",
    noBudsCut: "No se cortó ninguna yema, así que no se puede decir nada del daño.",
    unknownInjuryRule: '"{value}" no es una regla de daño; se conocen: {known}.',
    cornellAbove80:
      "El {percent} % de las yemas primarias está muerto: lo que Cornell 2014 dice por encima del 80 % no se vio, así que no da cifra aquí.",
    msuBetween15And20:
      "El {percent} % de las yemas primarias está muerto: MSU 2002 cubre hasta 15 % y desde 20 %, pero nada entre medio.",
    msuAbove50:
      "El {percent} % de las yemas primarias está muerto: por encima del 50 % MSU 2002 no da cifra, sino que pide quitar solo lo inmanejable, esperar a después de la brotación y podar ligero hasta las yemas vivas deseadas. Mire primero sarmientos y troncos.",
    purdueTwoRows:
      "El {percent} % de las yemas primarias está muerto: la tabla de Purdue pone esa parte en dos filas, una con {first} yemas y otra con {second}; no dice cuál vale.",
    purdueAbove50:
      "El {percent} % de las yemas primarias está muerto: por encima del 50 % Purdue no da cifra, sino que pide una poda mínima. Mire primero sarmientos y troncos.",
    northernGrapesNoNumber:
      "El {percent} % de las yemas primarias está muerto: por encima del 20 % Northern Grapes 2014 pide dejar más yemas, pero no dice cuántas.",
    allDead: "Todas las yemas primarias están muertas: ningún número de yemas lo compensa.",
    tooFewVines:
      "{value} plantas contadas son muy pocas para decir cuán segura es una media; se necesitan al menos {needed}.",
    spursAbovePositions:
      "Cuartel {block}, hilera {row}, planta {vine}: {value} pitones vivos en {most} posiciones no puede ser.",
    nothingToScore:
      "Nada de lo contado en el cordón {cordon} se puede puntuar; hacen falta al menos pitones vivos y largo.",
    noVineSpacing:
      "La hoja Cuarteles no indica la distancia entre plantas, que la regla por longitud necesita.",
    youngVine:
      "Una planta en el año {year} de su crecimiento no recibe yemas por la regla de su cuartel: para los años 1 a 3 no las da ninguna publicación vista, y en el año 4 un cordón alto tiene de 8 a 15 pitones de 2 yemas (NC State).",
    vineNotYoung:
      "En {season} una planta de {planted} no está en uno de sus primeros cuatro años, que es todo lo que tratan las publicaciones sobre plantas jóvenes.",
    youngVineTraining:
      "La publicación sobre el cuarto año es solo de cordones altos (NC State): no dice nada de esta conducción.",
    noVineWeighed: "No se pesó ninguna planta del cuartel, así que la fórmula no tiene de qué partir.",
  },
  renewal: {
    trunkRenewal: {
      noTrunk:
        "Ningún tronco vive: dejar unos cinco chupones, ninguno más grueso que un meñique, y formar uno.",
      lastTrunkHurt: "El único tronco vivo está dañado: criar {bringUp} de chupones antes de perderlo.",
      oneTrunk: "Un solo tronco vivo: criar {bringUp} más de un chupón.",
      everyTrunkHurt: "Los {live} troncos vivos están dañados: criar {bringUp} de chupones.",
      hurtTrunk:
        "Troncos vivos: {live}; dañado: tronco {replace}. Criar {bringUp} y sacar el dañado cuando el nuevo esté.",
      belowWanted: "{live} troncos vivos, {wanted} deseados: criar {bringUp} de chupones.",
      due: "El tronco {trunk} lleva {age} {age:año|años}: deje un brote bajo en él o un chupón en su lugar, y quítelo cuando este tenga de 2 a 3 años.",
      dueStands:
        "El tronco {trunk} lleva {age} {age:año|años} y uno más joven está en su lugar: quítelo cuando este tenga de 2 a 3 años.",
      none: "Troncos suficientes.",
      takeOut: "Sacar el tronco muerto {takeOut}.",
    },
    cordonRenewal: {
      extend: "Alargar {cordon} {length}, con la parte gruesa de un sarmiento en su punta.",
      replace:
        "Renovar {cordon} ({triggers}): tender un sarmiento que salga más cerca de la cabeza que el tramo muerto.",
      replaceLater:
        "Renovar {cordon} ({triggers}) en otro invierno: ahora no hay junto a su cabeza un sarmiento que tender; dejar allí un pitón de renovación.",
      layOver:
        "{cordon} tiene una zona muerta de {places} {places:posición|posiciones}: tender un sarmiento por encima, desde el último pitón anterior, a {from} {from:posición|posiciones} de la cabeza.",
      longerSpurs:
        "{cordon}: dejar el pitón a cada lado de su hueco de {places} {places:posición|posiciones} (a {from} {from:posición|posiciones} de la cabeza) un nudo más largo, dentro de los nudos de la cepa.",
      lowerSpurs:
        "{cordon}: sus pitones están {height} por encima; rebajar cada uno a un brote cerca del cordón.",
      wantedToKeep:
        "Si {cordon} puede quedar depende de lo que no se contó: {count}. Un sarmiento de madera viva más cerca de la cabeza podría tenderse sobre su zona muerta.",
      wanted: "Cómo renovar {cordon} depende de lo que no se contó: {counts}.",
    },
    renewalCounts: {
      gapFrom: "a qué distancia de la cabeza está su hueco más largo",
      canesNearHead: "los sarmientos junto a su cabeza",
    },
    renewalTriggers: {
      tooFewSpurs: "pocos pitones",
      deadArea: "una zona muerta",
      poorSpurs: "pitones mal ubicados",
    },
    youngVine: {
      year: "Año {year} de esta planta.",
      noNodes: "Ninguna publicación vista da yemas que dejar en una planta de este año.",
      figures: { between: "{least} a {most}", just: "{most}", atMost: "{most} como máximo" },
      rules: {
        shoots: "brotes que se dejan, los dos mejores llevados al alambre",
        clusters: "racimos de flor que se dejan",
        cordons: "mejores brotes que pasan a ser cordones",
        growOn: "parte de un sarmiento que se tiende, la gruesa",
        shootsOfCordon: "se crían brotes del cordón",
        spurs: "pitones que se dejan en un cordón",
        nodesASpur: "yemas por pitón",
        nodesACordon: "yemas por cordón",
      },
      cards: {
        first: "año 1: de 3 a 6 brotes, sin racimos",
        second:
          "año 2: los 2 mejores brotes pasan a cordones, medio sarmiento como máximo, {clusters} {clusters:racimo|racimos} como máximo",
        third:
          "año 3: brotes del cordón, se alarga medio sarmiento como máximo, {clusters} {clusters:racimo|racimos} como máximo",
        fourth: "año 4: de 8 a 15 pitones por cordón, de 2 yemas",
        otherTraining: "año 4: ninguna regla vista para esta conducción",
      },
    },
    caneWanted:
      "Sarmiento deseado: {least} a {most} de grueso, bastante grueso a lo largo de {length}; la mitad exterior es fina y débil, así que llenar el alambre por etapas.",
  },
  changes: {
    sheet: "Cambios",
    title: "En qué difiere esta copia de {file}",
    where: "Hoja",
    cell: "Celda",
    before: "Antes",
    after: "Después",
    sure: "Certeza",
    certain: "seguro",
    likely: "probable",
  },
  resultSheets: {
    remarksLost: "Ya no están en la hoja {sheet}, porque lo que tenían al lado ya no está: {remarks}.",
    looksLost:
      "Los colores y formatos de {cells} ya no están en la hoja {sheet}, porque lo que había allí ya no está.",
    notesLeft:
      "Este Excel no muestra las notas a los complementos: hay filas de la hoja {sheet} que se movieron y sus notas siguen en las celdas donde estaban.",
    choice: "Elección de cordones",
    work: "Qué se hace",
    choiceTitle: "Qué cordón queda en cada lado y por qué",
    cards: "Tarjetas de cuadrilla",
    cardsTitle: "Qué hacer en cada planta, en el orden de marcha",
    made: "Hecho el {date}",
    decision: "Decisión",
    score: "Puntaje",
    reason: "Motivo",
    sheetRow: "Fila de la hoja",
    stays: "Qué queda",
    cuts: "Qué se corta",
    notes: "Atención",
    aboutTitle: "Resultados de Cordonbook",
    aboutSource: "De {files}",
    about: "Acerca de",
    what: "Qué",
  },
  runLog: {
    sheet: "Registro",
    title: "Quién ejecutó qué y cuándo (se activa y desactiva en el panel)",
    when: "Cuándo",
    who: "Quién",
    what: "Qué",
    result: "Resultado",
  },
  season: { seasonSheet: "Inviernos" },
  seasonPage: {
    title: "Cómo va la temporada",
    reading: "Leyendo las hojas",
    sum: "{vines} {vines:planta|plantas} en {blocks} {blocks:cuartel|cuarteles}.",
    next: "Siguiente paso",
    then: "Después",
    picture: "Plantas de cada cuartel, paso a paso",
    steps: {
      counted: "Contadas",
      checked: "Revisadas",
      decided: "Decididas",
      printed: "Impresas",
      pruned: "Podadas",
    },
    hours: "faltan {hours} h",
    stopped: "{wrong} {wrong:celda|celdas} por corregir",
    share: "{done} de {vines}",
    open: {
      layOut: "Preparar las hojas: qué cuarteles, hileras y plantas se contarán",
      count: "Contar las plantas: {uncounted} {uncounted:planta aún no tiene|plantas aún no tienen} conteo",
      mend: "Corregir {wrong} {wrong:celda que no puede ser cierta|celdas que no pueden ser ciertas}",
      decide: "Responder por {asks} {asks:planta|plantas}: dos cordones están parejos o falta una celda",
      accept: "Aceptar lo decidido para {toAccept} {toAccept:planta|plantas}",
      print: "Imprimir {cards} {cards:tarjeta|tarjetas} para la cuadrilla",
      prune: "Podar {toPrune} {toPrune:planta|plantas} y anotar el día junto a cada una",
      harvest: "Anotar en la vendimia lo que se cosechó",
    },
    go: {
      layOut: "Preparar las hojas",
      count: "Imprimir hojas de conteo",
      mend: "Ir a la primera celda",
      decide: "Ir a la primera planta",
      accept: "Ver qué se escribiría",
      print: "Ir a las tarjetas",
      prune: "Ir a las plantas",
      harvest: "Ir a la hoja de vendimia",
    },
    wrongHere:
      "{wrong} {wrong:celda que no puede ser cierta está|celdas que no pueden ser ciertas están} en filas usadas aquí.",
    layOut: {
      title: "Preparar las hojas",
      why: "Hileras, plantas, lados y letras se llenan en el orden en que usted camina; después solo se escriben los conteos.",
      block: "Cuartel",
      rows: "Hileras",
      vinesARow: "Plantas por hilera",
      cordonsAVine: "Cordones por contar en cada planta",
      training: "Sistema de conducción",
      notSaid: "sin indicar",
      backAndForth: "Cada segunda hilera se recorre de vuelta",
      make: "Preparar {block}",
      done: "{block} está preparado: {cordons} {cordons:fila|filas} en {sheet}, {vines} {vines:planta|plantas} en {vinesSheet}. Imprima las hojas de conteo o escriba los conteos.",
      unnamed: "Cuartel: hace falta un nombre.",
      named: "{block} ya está preparado: elija otro nombre para el cuartel.",
      whole: "{field}: hace falta un número entero de 1 a {most}.",
      length: "{field}: hace falta un número mayor que 0, o nada.",
      noSheet: "Este libro no tiene la hoja {sheet} para preparar. Empiece primero una temporada.",
      filled:
        "{sheet} {cell} está ocupada, así que no se preparó nada. Vacíe primero las filas debajo de la tabla.",
    },
    countSheet: {
      paper: "Papel",
      title: "Hoja de conteo",
      row: "{block}, hilera {row}",
      counter: "Contado por",
      date: "Día",
      tally: "Pitones vivos: tache una casilla por pitón",
    },
    empty: {
      title: "Qué se cuenta en una planta",
      why: "De estos conteos salen cuántas yemas dejar, qué cordones quedan y una tarjeta para la cuadrilla.",
      drawing:
        "Una planta en el alambre con dos troncos: el tronco 1 lleva el cordón A a la izquierda, el tronco 2 el cordón B a la derecha. Se señalan el largo de un cordón, sus pitones vivos, un hueco y los dos troncos.",
      length: "largo",
      spurs: "pitones vivos",
      gap: "hueco",
      trunk: "tronco {trunk}",
      sample: "Ver una temporada llena",
      begin: "Empezar una temporada",
      file: "Abrir un archivo",
      units: "Unidades",
      us: "pies, libras, acres",
      metric: "metros, kilogramos, hectáreas",
      language: "Idioma de las hojas",
      inExcel:
        "Ambos se abren como un libro aparte. Abra el suyo con el menú Archivo de Excel; este panel lo lee.",
    },
  },
  seasons: {
    title: "Invierno contra invierno",
    intro:
      "Pitones vivos, huecos y troncos de los cordones que quedan, en los inviernos guardados en la hoja {sheet}.",
    undated:
      "Nada dice qué invierno se contó, así que aún no se puede guardar. Siguiente paso: escriba el día del conteo en la columna Fecha de la hoja Cordones.",
    write: "Guardar el invierno {year} en la hoja Inviernos",
    notKept:
      "El invierno {year} como está contado difiere de la hoja o aún no está en ella. Al guardarlo, los inviernos anteriores quedan como están.",
    kept: "El invierno {year} está en la hoja como está contado ahora.",
    sheetTitle: "Hileras, invierno por invierno",
    sheetNote:
      "Escrita por Cordonbook el {date}. Un invierno guardado otra vez reemplaza sus propias filas; los demás quedan. Huecos en posiciones de pitón.",
    foreign:
      "La hoja {sheet} no tiene una tabla de inviernos legible y se deja como está. Cámbiele el nombre para guardar inviernos.",
    lost: "{count} {count:fila|filas} de la hoja {sheet} {count:no está completa y se perdería|no están completas y se perderían}; no se escribió nada. Complételas o bórrelas antes.",
    allRows: "Todas las hileras",
    year: "Invierno",
    share: "% de lugares",
    loss: "El cuartel pierde {likely} % de sus pitones vivos al año (de {low} a {high} % en {confidence} de 100 casos así), según {rows} {rows:hilera|hileras} y {pairs} {pairs:par|pares} de inviernos.",
    gain: "Menos de 0 son pitones ganados.",
    toFloor: "A ese paso baja del mínimo de {floor} % en {likely} años (antes {low}, más tarde {high}).",
    never: "nunca",
    notReached: "A ese paso no baja del mínimo de {floor} %; lo más pronto en {low} años.",
    below: "Bajo el mínimo de {floor} % de pitones vivos: {blocks}. Forme ahí cordones nuevos.",
    noneBelow:
      "Ningún cuartel está bajo el mínimo de {floor} % de pitones vivos (un ajuste; no se vio un mínimo publicado).",
    blockShare: "{block} ({share} %, invierno {year})",
  },
  selfTest: {
    ability: {
      pane: "El panel y las funciones trabajan juntos.",
      functions: "Funciones CORDON en las celdas.",
      tables: "Leer hojas de conteo y escribir hojas propias.",
      marks: "Marcas en celdas que se pueden quitar.",
      whileTyping: "Revisar filas mientras se escriben.",
      pivot: "Tabla dinámica de huecos.",
      spill: "Funciones que llenan un bloque de celdas.",
      notes:
        "Las notas de una hoja de Cordonbook la acompañan cuando se escribe de nuevo; sin esto se quedan en sus celdas.",
      oneUndo: "Un solo Deshacer retira todas las marcas o celdas de una pasada.",
    },
    answers: {
      missing: "No está en este Excel ({set}); lo demás funciona.",
      tooOld: "No está en este Excel ({set}), que es demasiado antiguo para Cordonbook.",
      answers: "Una celda pidió =CORDON.VERSION() y recibió {shows}: las funciones calculan.",
      otherVersion:
        "Una celda pidió =CORDON.VERSION() y recibió {shows}, otra versión que la del panel, {version}. Cierre Excel y ábralo otra vez.",
      unknown:
        "Una celda pidió =CORDON.VERSION() y recibió #NAME?: este Excel aún no cargó las funciones. Cierre y abra el libro; si sigue igual, pregunte a quien instaló Cordonbook.",
      waiting:
        "Una celda pidió =CORDON.VERSION() y sigue esperando. Ponga el cálculo en automático (pestaña Fórmulas) y repita.",
      error:
        "Una celda pidió =CORDON.VERSION() y recibió {shows}. Cierre y abra el libro; si sigue igual, pregunte a quien instaló Cordonbook.",
    },
  },
  excelReport: {
    sheet: "Informe de Excel",
    title: "Informe sobre este Excel",
    intro:
      "Prueba aquello en lo que Cordonbook se apoya y escribe una hoja con lo que se esperaba y lo que se vio, para quien cuida de Cordonbook. Tarda unos dos minutos, trabaja en hojas propias y no toca ninguna de las suyas.",
    before:
      "Vacía la lista de Deshacer y abre el diálogo de impresión, que usted puede cancelar. Para probar también la escritura: escriba en una celda, déjela abierta, pulse el botón y salga luego de la celda.",
    start: "Hacer el informe",
    trying: "Se prueba lo que hace este Excel",
    undo: "Pulse Ctrl+Z una vez en la hoja que se muestra ahora (en Mac, Cmd+Z) y dígalo aquí.",
    undoFact: "Y una vez más: pulse Ctrl+Z una vez en la hoja (en Mac, Cmd+Z).",
    pressed: "Ya lo pulsé",
    skip: "Omitir esto",
    made: "Hecho el {date} por Cordonbook {version}.",
    counts: "{same} como se esperaba, {different} distintas, {notTried} sin probar.",
    text: "El informe como texto",
    copy: "Copiar el texto",
    copied: "El texto del informe está copiado.",
    copyYourself:
      "Excel no deja que el panel copie. El texto está seleccionado: pulse Ctrl+C (en Mac, Cmd+C).",
    heads: {
      tried: "Qué se probó",
      expected: "Se esperaba",
      seen: "Se vio",
      outcome: "Resultado",
      page: "Quién lo dice",
    },
    outcomes: {
      same: "igual",
      different: "distinto",
      notTried: "sin probar",
    },
    says: {
      value: "{shows}",
      refused: "rechazado: {shows}",
      nothing: "nada",
      notCalled: "no se llamó a la función",
      notTold: "nada; cierre el panel y ábralo otra vez antes de revisar al escribir",
      notEditing: "no se editaba ninguna celda",
      skipped: "omitido",
    },
    rows: {
      build: { tried: "Número de la compilación", expected: "un número como 16.0.14326" },
      platform: { tried: "Plataforma", expected: "PC, Mac u OfficeOnline" },
      sets: { tried: "Conjuntos de requisitos más altos", expected: "al menos {sets}" },
      editing: {
        tried: "Preguntar a Excel mientras se edita una celda",
        expected: "rechazado con InvalidOperationInCellEditMode hasta salir de la celda",
      },
      undo: {
        tried: "Dos celdas escritas en un paso, luego Deshacer una vez",
        expected: "ambas celdas están otra vez vacías",
      },
      undoFact: {
        tried: "Una celda escrita, un dato guardado en el libro, luego Deshacer una vez",
        expected: "nada en la celda: guardar un dato no figura entre lo que vacía Deshacer",
      },
      blank: { tried: "Cómo llega a una función una celda vacía de un rango", expected: "null" },
      error: { tried: "Cómo llega a una función una celda con #N/A", expected: "#N/A" },
      errorInArray: {
        tried: "Un resultado con un vacío y un error entre sus celdas",
        expected: "50, vacío, un error, 40",
      },
      spill: { tried: "Las celdas que llena un resultado", expected: "C1:C4" },
      spillBlocked: { tried: "Un resultado con una celda llena en su camino", expected: "#SPILL!" },
      watch: {
        tried: "Dos avisos de cambios, el primero retirado, una celda cambiada",
        expected: "el segundo se entera: onChanged",
      },
      text: { tried: "Texto que empieza por =", expected: "sigue siendo texto: =1+1" },
      filterSeen: { tried: "Preguntar si una tabla está filtrada", expected: "true" },
      filterWrite: {
        tried: "Escribir a través de filas ocultas por un filtro",
        expected: "rechazado con FilteredRangeConflict",
      },
      marks: {
        tried: "Prioridades de un formato condicional nuevo y del anterior",
        expected: "0, 1: el nuevo va primero",
      },
      marksOff: {
        tried: "Una marca quitada de una celda con color",
        expected: "quedan su color #C0FFC0 y el otro formato, 1",
      },
      rewrite: {
        tried: "Una hoja propia escrita otra vez mientras una fórmula apunta a ella",
        expected: "la fórmula queda: ='…'!B2",
      },
      pivot: { tried: "Una tabla dinámica de sumas", expected: "4, 6, 10" },
      chart: {
        tried: "Un gráfico dibujado dos veces en una hoja propia",
        expected: "un gráfico de 3 partes: 3",
      },
      print: { tried: "Imprimir desde el panel", expected: "empieza: beforeprint" },
      file: { tried: "Leer el libro como archivo", expected: "empieza por PK" },
    },
    otherwise: {
      undo: "la segunda celda está vacía otra vez, la primera aún tiene 1",
      blank: "0",
      print: "nada: un Mac no imprime desde un panel",
    },
  },
  settingsTravel: {
    title: "Cifras de otro libro",
    intro:
      "Compare las cifras de este libro con las de otro de la finca y copie las que quiera. El otro libro solo se lee.",
    file: "Elegir un libro (.xlsx o .csv)",
    noTable: "No hay tabla de ajustes en {file}.",
    same: "Todas las cifras de {file} son iguales a las de aquí.",
    differ: "{count} {count:cifra difiere|cifras difieren} de {file}. Se copian las marcadas.",
    difference: "{setting}: aquí {here} {unit}, allí {there} {unit}",
    thereBy: "Cambiado allí por {by}, {on}",
    show: "Mostrar qué se mueve",
    copy: "Copiar {count} {count:cifra|cifras}",
    nothingTicked: "Marque al menos una cifra.",
    copied: "Se {count:copió|copiaron} {count} {count:cifra|cifras} de {file}.",
    older:
      "Esta tabla de ajustes tiene una forma anterior. Ponerla al día no cambia ningún valor y deja sus celdas como están.",
    moreNames: "{names} y {more} más",
    upgrade: "Ponerla al día",
    upgraded: "La tabla de ajustes está al día.",
    undo: "Deshacer",
    undone: "La tabla de ajustes está como antes.",
    left: "Otra persona cambió {count} {count:celda entretanto; se dejó como está|celdas entretanto; se dejaron como están}.",
  },
  upkeep: {
    copyTitle: "Para quien no tiene Cordonbook",
    copyIntro:
      "Abre una copia en la que cada celda con una función CORDON tiene su valor. Este libro queda como está.",
    copy: "Copia solo con valores",
    copied:
      "La copia está abierta: {count} {count:celda tiene|celdas tienen} su valor, {errors} de ellas un error.",
    openingTitle: "Al abrir este libro",
    openingIntro: "Los colegas sin Cordonbook verían un aviso de Office cada vez; déjelo apagado si los hay.",
    openingSwitch: "Iniciar Cordonbook con este libro",
    pivot: "Tabla dinámica de huecos",
    pivotMade: "La tabla dinámica está en la hoja {sheet}.",
    pivotRefreshed: "La tabla dinámica se actualizó; su diseño sigue como lo dejó.",
    pivotTable: "Aquí no hay tablas dinámicas; las mismas cifras están en la hoja {sheet}.",
    readAgain: "Un colega cambió {sheets} durante la ejecución, así que se leyó otra vez.",
    openingAsk: "Ver si está activado",
  },
  workbook: {
    noSheet:
      'En este libro no hay (o ya no hay) una hoja "{sheet}"; no se cambió nada. Elija la hoja otra vez.',
    notOurs:
      'La hoja "{sheet}" no la hizo Cordonbook y por eso se deja como está. Cámbiele el nombre y repita.',
    protectedSheet:
      'La hoja "{sheet}" está protegida; no se cambió nada. Quite la protección (pestaña Revisar) y repita.',
    protectedWorkbook:
      "La estructura de este libro está protegida: no se pueden añadir, renombrar ni borrar hojas; no se cambió nada.",
    badSheetName:
      '"{sheet}" no puede ser el nombre de una hoja: de 1 a 31 caracteres, sin : \\ / ? * [ ] ni apóstrofo al principio o al final.',
    badTable:
      'La tabla para la hoja "{sheet}" no es coherente (fila {row}; 0 son los encabezados); no se escribió nada.',
    lastSheet: 'La hoja "{sheet}" es la única del libro y no se puede borrar; no se cambió nada.',
    cannotPutBack:
      'La fila {row}, columna {column} de "{sheet}" tiene un error escrito como valor, que no se podría reponer exactamente. No se cambió nada.',
  },
  choice: {
    atSide: {
      left: "a la izquierda",
      right: "a la derecha",
      north: "al norte",
      south: "al sur",
      east: "al este",
      west: "al oeste",
    },
    countWords: {
      spurs: "pitones vivos y largo",
      stretch: "hueco más largo",
      placing: "hacia dónde apuntan los pitones",
      soundness: "estado",
      diameter: "diámetro",
      trunk: "tronco",
    },
    countOf: "{count} de {cordon}",
    arguments: {
      spurs: "{mine} pitones vivos frente a {theirs}",
      spursForLength: "{mine} pitones vivos en {mineLength} frente a {theirs} en {theirsLength}",
      spursBeyondWire:
        "{mine} pitones vivos frente a {theirs}, y {other} es más largo que su alambre ({theirsLength} para {wire})",
      noStretch: "ningún hueco frente a uno de {theirs}",
      stretch: "hueco más largo {mine} frente a {theirs}",
      placingDown: "{mine} de {mineOf} pitones apuntan abajo o de lado frente a {theirs} de {theirsOf}",
      placingUp: "{mine} de {mineOf} pitones apuntan arriba frente a {theirs} de {theirsOf}",
      placing: "sus pitones apuntan mejor",
      soundness: "está {mine}, {other} está {theirs}",
      diameter: "es más grueso, {mine} frente a {theirs}",
      ownTrunk: "sale del tronco {trunk}, así los dos cordones no cuelgan del tronco {shared}",
      ownTrunkBesideCane: "sale del tronco {trunk} y el sarmiento nuevo de enfrente de otro",
      trunkUnknown: "quizá sale de un tronco propio, pero falta anotar un tronco",
      trunkCondition: "su tronco {trunk} está {mine}, el tronco {otherTrunk} está {theirs}",
      sameTrunkHurt: "su tronco está {mine}, el de {other} está {theirs}",
      nothing: "nada de lo anotado",
    },
    weakPoints: {
      spurs: "lleva {spurs} pitones vivos donde su alambre debería llevar {carry}",
      stretch: "tiene un hueco de {gap} {gap:posición|posiciones}",
      deadStretch:
        "un tramo de {gap} {gap:lugar|lugares} está muerto y {spurs:queda|quedan} {spurs} {spurs:pitón vivo|pitones vivos} donde su alambre debería llevar {carry}",
      placing: "solo {well} de sus {spurs} pitones apuntan bien",
      soundness: "está {condition}",
      diameter: "tiene {diameter} de grueso, y bastan {fullDiameter}",
      trunkCondition: "su tronco {trunk} está {trunkCondition}",
    },
    caneOrigins: {
      trunk: "desde el tronco {trunk}",
      otherTrunk: "desde el tronco vivo que no lleva cordón",
      head: "desde la cabeza",
      ground: "desde un chupón del suelo",
    },
    reasons: {
      better: "Dejar {cordon} {at}: {mine}.",
      betterDespite: "Dejar {cordon} {at}: {mine}. A favor de {rival}: {theirs}.",
      onlyOne: "Dejar {cordon} {at}: es el único ahí y vale la pena.",
      onlyOneCounted:
        "Dejar {cordon} {at}: es el único ahí y vale la pena, con {spurs} pitones vivos y un hueco más largo de {gap}.",
      onlyOneSpurs: "Dejar {cordon} {at}: es el único ahí y vale la pena, con {spurs} pitones vivos.",
      building: "Dejar {cordon} {at}: la planta es joven y su cordón aún se forma.",
      fixedStays: "Dejar {cordon} {at}: lo decidió una persona.",
      fixedStaysDead:
        "Dejar {cordon} {at}, como decidió una persona; pero consta como muerto, él o su tronco: mirar otra vez.",
      worse: "Cortar {cordon} {at}; {rival} es mejor: {theirs}.",
      worseDespite: "Cortar {cordon} {at}; {rival} es mejor: {theirs}. A favor de {cordon}: {mine}.",
      fixedGoes: "Cortar {cordon} {at}: lo decidió una persona.",
      fixedCane:
        "Cortar {cordon} {at} hasta un buen sarmiento cerca de la cabeza y tenderlo: lo decidió una persona.",
      besideFixed: "Cortar {cordon} {at}: una persona decidió que ahí queda {rival}.",
      dead: "Cortar {cordon} {at}: está muerto.",
      trunkDead: "Cortar {cordon} {at}: su tronco {trunk} está muerto.",
      remnant: "Cortar {cordon} {at}: con {length} es un resto en la cabeza, no un cordón.",
      notWorthKeeping: "Cortar {cordon} {at} y tender un sarmiento {from}: {weak}.",
      notWorthKeepingOwnTrunk:
        "Cortar {cordon} {at} y tender un sarmiento {from}: {weak}, y el sarmiento nuevo trae un tronco propio.",
      closeCall:
        "Mirar la planta: {cordon} y {rival} {at} están parejos. A favor de {cordon}: {mine}. A favor de {rival}: {theirs}.",
      closeCallForMine:
        "Mirar la planta: {cordon} y {rival} {at} están parejos. A favor de {cordon}: {mine}.",
      closeCallForTheirs:
        "Mirar la planta: {cordon} y {rival} {at} están parejos. A favor de {rival}: {theirs}.",
      tie: "Mirar la planta: {cordon} y {rival} {at} son iguales en todo lo anotado.",
      question: "Mirar la planta: {pairs}.{together}{arguments}",
      questionPair: "{cordon} o {rival} {at}",
      questionCane: "{cordon} o un sarmiento nuevo {at}: {weak}",
      questionFor: "A favor de {cordon}: {mine}.",
      goTogether: "{cordon} va con {mineWith}, {rival} con {theirsWith}.",
      closeToNewCane:
        "Mirar la planta: {cordon} {at} quizá valga la pena, o quizá sea mejor un sarmiento nuevo; {weak}.",
      missingCounts: "Volver a mirar: {cordon} y {rival} {at} no se distinguen sin anotar esto: {missing}.",
      missingCountsAlone: "Volver a mirar: {cordon} {at} no se puede juzgar sin anotar esto: {missing}.",
      uncounted:
        "Contar esta planta: no hay pitones vivos ni huecos anotados, y solo por sus troncos nada se decide.",
      recount:
        "Volver a contar esta planta; nada se decide en ella hasta que estas celdas estén bien: {cells}.",
      sidesUnclear:
        "Anotar otra vez el lado de {cordon}: los cordones de una planta van a izquierda y derecha, o a dos rumbos opuestos.",
      vineMissing: "Mirar el lugar: la planta consta como faltante, pero se contó el cordón {cordon}.",
      namedTwice: "Mirar la hoja: dos cordones {at} se llaman {cordon}.",
    },
    sideLines: {
      layLater:
        "No se puede tender ningún sarmiento {at} este invierno: no se contó ninguno junto a la cabeza en {source}. Dejar un pitón de renovación en la cabeza de {source} y tender su sarmiento el próximo invierno.",
      stays: "{cordon} queda {at}.",
      ask: "{cordon} {at}, si quien mira está de acuerdo.",
      lay: "Tender un sarmiento {at} {from}.",
      layAsk: "Tender un sarmiento {at} {from}, si quien mira está de acuerdo.",
      layOf: "Tender un sarmiento {at} {from}: uno bueno de {source}, cerca de la cabeza.",
      layOfAsk:
        "Tender un sarmiento {at} {from}, si quien mira está de acuerdo: uno bueno de {source}, cerca de la cabeza.",
    },
    cutLines: {
      head: "Cortar {cordon} {at} desde la punta hasta la cabeza.",
      trunk: "Cortar {cordon} {at} desde la punta hasta la cabeza, y sacar el tronco muerto {trunk}.",
      keepCane:
        "Cortar {cordon} {at} desde la punta hacia el tronco, y parar en el primer sarmiento bueno que se pueda tender.",
      renewing:
        "Cortar {cordon} {at} desde la punta hacia el tronco, y parar en el primer sarmiento bueno: se deja para renovar {renews}.",
      spur: "Cortar {cordon} {at} desde la punta hacia el tronco, y dejar en la cabeza un pitón de renovación de dos yemas.",
    },
    vineNotes: {
      oneTrunk: "Solo consta un tronco vivo en esta planta; criar un segundo.",
      bothOnOneTrunk: "Los dos cordones cuelgan del tronco {trunk}.",
      everyTrunkHurt:
        "Todos los troncos vivos de esta planta están dañados; criar chupones para otros nuevos.",
      noLiveTrunk: "Ningún tronco de esta planta vive; dejar unos cinco chupones y formar uno.",
      trainingMissing:
        "Falta el sistema de conducción del cuartel, así que no se pesó hacia dónde apuntan los pitones.",
      leftOut: "No contado en esta planta, así que no pesa: {parts}.",
      fixedTwice: "{cordons} {at} están todos fijados para quedar.",
      uncounted: "Contar pitones vivos y huecos de esta planta antes de cortar nada en ella.",
      recount: "Recontar esta planta antes de cortar nada en ella: {cells}.",
      sidesUnclear: "Los lados de esta planta no cuadran, así que no se decide nada.",
      vineMissing: "La planta consta como faltante, así que no se decide nada.",
      vineYoung:
        "La planta es joven: sus cordones se miden solo por su propio largo. Lo que las publicaciones dejan en ella depende de su año de plantación, que no está escrito o queda más de cuatro años atrás.",
    },
    and: "; ",
    conditionNotNoted: "sin daño anotado",
  },
  commandLine: {
    sentences: {
      noRows: "Hay encabezados pero ninguna fila en {files}: no se revisó nada.",
      headsMissing: "No hay un archivo {file} para --heads.",
      headsNotJson: "{file} no es JSON, que --heads necesita.",
      headsUnlike:
        '{file} no encaja en {place}; --heads toma lo que check --format json propone en reading.questions, como {"heads": [{"sheet": "Pond", "shape": "cordons", "columns": {"Vn": "vine"}}]}.',
      sheetUnknown: "No hay una hoja «{sheet}»; parecidas o conocidas: {sheets}.",
      tellHeads: "Para decirlo: --heads ARCHIVO.json con {answers}",
      tellBlock: "Para decirlo: --block NOMBRE",
      noTables:
        "No se reconoció ninguna hoja de conteo en {files} (se miró: {sheets}). Una tabla necesita encabezados como Cuartel, Hilera, Planta, Lado, Cordón; lo que significan los suyos se dice con --heads ARCHIVO.json, un archivo que contenga {answers} con cada encabezado suyo delante de la columna que significa: {columns}.",
      noHeadsAtAll:
        "No se reconoció ninguna hoja de conteo en {files} (se miró: {sheets}). Escriba una línea de encabezados sobre los conteos: Cuartel, Hilera, Planta, Lado, Cordón, Tronco, Largo (m), Posiciones, Pitones vivos.",
      repairOne: "--repair toma un solo libro (.xlsx o .xlsm) y escribe una copia.",
      repairOut: "--repair escribe una copia: nómbrela con --out ARCHIVO.xlsx, o ponga --save.",
      repaired: "{cells} {cells:celda cambiada|celdas cambiadas} en la copia",
      repairNothing: "Nada se pudo corregir con certeza, así que no se escribió ninguna copia.",
      likelyLeft:
        "Cambios probables que no se hicieron: {cells} {cells:celda|celdas}; --also-likely los hace también.",
      more: "y {findings} más: {cells}",
      usage: "{program} ORDEN ...",
      moreHelp: "Ayuda de una orden: {program} ORDEN --help",
      exitCodes:
        "Códigos de salida: 0 limpio o un valor, 1 hallazgos o un valor de error, 2 no se puede leer el archivo o la orden.",
      caution: "Las cifras aconsejan; decide quien está ante la planta y conoce las reglas locales.",
      checkSummary:
        "Revisa hojas de conteo (.xlsx, .xlsm, .csv, una carpeta o - para la entrada estándar) y nombra cada celda que no puede ser.",
      chooseSummary:
        "Decide en cada planta qué cordón queda en cada lado y dice por qué (código 1: hay plantas por mirar).",
      gapsSummary: "Cuenta las posiciones sin pitón vivo, hilera por hilera.",
      cardsSummary:
        "Escribe para la cuadrilla qué queda y qué se corta en cada planta, en el orden de marcha.",
      newSummary:
        "Crea un libro vacío para la temporada de una finca: hojas con encabezados, palabras admitidas, Ajustes y líneas para imprimir.",
      outlookSummary:
        "Dice qué cosecha deja la poda, cuartel por cuartel: baja, probable y alta, y de dónde viene la mayor duda.",
      rowsSummary:
        "Escribe cada fila de cordones de cualquier número de archivos en un solo csv (métrico), para motores que abarcan una región.",
      notAWorkbookName: "El nombre del libro nuevo debe terminar en .xlsx, pero es {file}.",
      noCordons:
        "No hay cordones en {files}: hace falta una hoja con Cuartel, Hilera, Planta, Lado, Cordón y conteos.",
      saved: "Guardado como {file}",
      savedInPlace: "Guardado en {file}; como estaba antes: {backup}",
      savedAlone:
        "No se puede añadir a {file} sin riesgo (forma, protección o firma); los resultados van en un libro propio.",
      savedThroughLink: "{file} es un enlace; lo que se cambió es {target}",
      savedOneName:
        "{file} tenía {others} {others:nombre|nombres} más en este disco (enlaces duros); {others:conserva|conservan} el contenido anterior.",
      passedOver: "Omitidos, porque Cordonbook los hizo de {original}: {files}",
      otherFormats: "Omitidos, porque son de otro formato: {files}",
      sameRows:
        "{file} y {other} tienen las mismas {rows} {rows:fila|filas} de cordones: ¿es uno una copia? Quítelo o nombre los archivos por leer; --same-rows cuenta ambos.",
      outEnding:
        "Lo que se escribe es un archivo {ending}, así que --out debe terminar en {ending}, pero es {file}.",
      oneOption: "--{one} y --{other} dicen cosas distintas; indique solo una.",
      inPlaceOne:
        "--in-place admite un solo libro (.xlsx o .xlsm); para csv y varios archivos use --save o --out.",
      formulaSummary: "Calcula una fórmula con funciones CORDON e imprime su valor.",
      checked:
        "{wrong} mal, {ask} por preguntar, {note} {note:nota|notas} en {rows} {rows:fila|filas} de {tables} {tables:tabla|tablas}.",
      checkedClean: "Nada que señalar en {rows} {rows:fila|filas} de {tables} {tables:tabla|tablas}.",
      setAside:
        "Apartados en el libro y por eso no contados: {findings}. La opción --also-set-aside los enumera.",
      setAsideHeading: "Apartados, con motivo, nombre y día",
      csvRead: "{file}: leído como {encoding}, columnas separadas por {delimiter}, signo decimal {decimal}",
      csvDoubt:
        "{file}: «{text}» se leyó con un espacio de no separación, como lo escribe Windows; en un archivo de DOS sería «{other}». ¿Cuál es? Guarde el archivo como UTF-8 si es lo segundo.",
      csvUndecided:
        "{file}: leído como {encoding}, columnas separadas por {delimiter}; sus comas o puntos pueden ser de decimales o de miles y esas celdas quedan como texto",
      unknownCommand: "No existe la orden «{command}»: se conocen {commands}.",
      wrongWords: "La orden {command} admite {takes}; vea {command} --help.",
      badOption: "La orden {command} no entiende «{given}»; sus opciones son {options}.",
      badOptionWord: "--{option} admite uno de {words}, no «{given}».",
      badNumber: "--{option} admite un número desde 1, no «{given}».",
      badDate: "--today admite un día como 2026-03-31, no «{given}».",
      ownMistake:
        "Esto es un error de Cordonbook, no de su archivo; no se cambió nada. Informe de lo que sigue.",
    },
    option: {
      sheetOption: "leer solo estas hojas, separadas por comas, y Ajustes",
      block: "cuartel de las hojas que no nombran ninguno",
      heads: "respuestas sobre las hojas: encabezados propios, unidades, valores para hojas enteras",
      repair: "escribir una copia con lo seguro corregido y una lista de cada cambio",
      alsoLikely: "con --repair: hacer también los cambios que solo son probables",
      format: "cómo se escribe el resultado",
      language: "idioma de las frases",
      severity: "omitir lo que pesa menos",
      alsoSetAside: "enumerar también los hallazgos apartados en el libro",
      farm: "nombre de la finca en la primera hoja",
      newUnits: "unidades de los encabezados (US)",
      html: "escribir en cambio una página para imprimir",
      changed: "solo plantas cuya tarjeta difiere de la última impresión, como la guarda el libro",
      paper: "papel de esa página (Letter)",
      sameRows: "contar como fincas distintas archivos con las mismas filas",
      save: "guardar también en un libro nuevo junto al archivo",
      out: "guardar también en este libro nuevo",
      inPlace: "añadir nuestras hojas al propio libro, tras una copia",
      of: "todos los candidatos o solo los que quedan",
      today: "día de la revisión, para fechas futuras",
      units: "unidades de los encabezados que no las nombran",
      expansion: "veces que puede crecer un archivo al descomprimirse (200)",
    },
  },
  pane: {
    questions: {
      title: "Preguntas sobre las hojas",
      reading: "Lo que se leyó y lo que no",
      takeBack: "Deshacer la última respuesta",
      ownHeads: "Decirlo columna por columna",
      leaveOut: "No leer la hoja",
      asProposed: "Tomar como se propone",
      countAgain: "Se contará de nuevo",
      yes: "Sí",
      kept: "Su respuesta queda en la hoja Respuestas de este libro.",
      takenBack: "Se retiró la última respuesta.",
    },
    mend: {
      all: "Cambiar todas: {cells}",
      one: "Cambiar",
      allOther: "Todas de la otra manera: {cells}",
      other: "Cambiar a {to}",
      done: "Celdas cambiadas: {cells}.",
      partly: "Celdas cambiadas: {cells}. Sin tocar porque ya contienen otra cosa: {left}.",
      takeBack: "Deshacer el último cambio: {cells}",
      back: "Celdas devueltas: {cells}.",
      partlyBack: "Celdas devueltas: {cells}. Sin tocar porque cambiaron después: {left}.",
    },
    pageNames: {
      season: "Temporada",
      check: "Revisar",
      nodes: "Yemas",
      gaps: "Huecos",
      decide: "Decidir",
      crew: "Cuadrilla",
      outlook: "Cosecha",
      settings: "Ajustes",
      functions: "Funciones",
      care: "Cuidado",
    },
    age: {
      working: "El libro cambió desde entonces; esto se está calculando de nuevo.",
      older:
        "El libro cambió desde que se calculó esto: nada de ello se imprime, se escribe ni se acepta hasta que se calcule de nuevo.",
      anew: "Calcular de nuevo",
      refused:
        "El libro cambió desde que se calculó esto, así que no se imprimió, escribió ni aceptó nada. Mírelo como está ahora e inténtelo otra vez.",
      vineChanged:
        "Las filas de esta planta cambiaron desde que se leyeron ({cells}); no se escribió nada. Mire la planta como está ahora y decida otra vez.",
    },
    everyPage: {
      more: "Más",
      fetching: "Se está cargando esta página…",
      fetchAgain: "Intentar de nuevo",
      pages: "Páginas",
      language: "Idioma",
      close: "Cerrar",
      cancel: "Cancelar",
      somethingWrong:
        "Esto no funcionó por un error del programa; el libro quedó como estaba. Inténtelo otra vez y, si se repite, anote lo que hizo antes.",
      cancelled: "Detenido; no se cambió nada.",
    },
    check: {
      title: "Revisar los conteos",
      intro:
        "Lee las tablas de conteo de este libro y muestra lo que falta, es imposible o poco probable. No cambia nada.",
      check: "Revisar conteos",
      checkAgain: "Revisar otra vez",
      chooseSheets: "Elegir hojas",
      sheetsFound: "Tablas de conteo encontradas",
      sheetRows: "{sheet}: {shape}, {rows} {rows:fila|filas}",
      nothingFound:
        "No se encontró ninguna tabla de conteo. Una hoja necesita una línea de encabezados como Cuartel, Hilera, Planta, Lado, Pitones vivos. Siguiente paso: anote los conteos bajo esos encabezados, o indique qué significan los suyos.",
      reading: "Leyendo {sheet}",
      checking: "Revisando",
      progress: "Avance de la revisión",
      nothingCounted: "Aún no hay conteos escritos, así que no hay nada que juzgar.",
      clean: "Nada que objetar en {rows} {rows:fila|filas}.",
      result: "{wrong} mal, {ask} por preguntar, {note} {note:nota|notas} en {rows} {rows:fila|filas}.",
      since: "Desde la revisión anterior: {gone} resueltos, {come} nuevos, {stayed} iguales.",
      asideCount: "{aside} están apartados.",
      gone: "Resueltos desde la anterior",
      come: "Nuevos desde la anterior",
      findings: "Hallazgos",
      filter: "Filtrar",
      severity: "Certeza",
      sheet: "Hoja",
      counter: "Contado por",
      words: "Palabras",
      all: "Todos",
      shown: "{shown} de {all} hallazgos pasan el filtro.",
      more: "Mostrar {more} más de {all}",
      cell: "{sheet} {cell}",
      wentTo: "{cell} en {sheet} está seleccionada.",
      countedBy: "contado por {counter}",
      whatToDo: "Qué hacer: {remedy}",
      perRow: "Hallazgos por hilera",
      perCounter: "Hallazgos por persona",
      rowHead: "Cuartel, hilera",
      writeSheet: "Escribir la hoja Hallazgos",
      sheetWritten: "Se escribió la hoja {sheet}: {rows} {rows:fila|filas}.",
      sheetWithoutChart:
        "Se escribió la hoja {sheet}: {rows} {rows:fila|filas}. Aquí no se pudo dibujar su gráfico: las barras están en el panel.",
      mark: "Marcar celdas",
      marked:
        "{cells} {cells:celda marcada|celdas marcadas}. Sus rellenos, notas y formatos quedan como están.",
      unmark: "Quitar marcas",
      unmarked: "Todas las marcas están quitadas.",
      print: "Imprimir lista",
      printTitle: "Hallazgos en los conteos",
      printDone: "Hecho",
      printCell: "Celda",
      printWhat: "Qué se encontró",
    },
    typing: {
      switch: "Revisar mientras escribo",
      title: "Filas cambiadas ahora",
      nothing:
        "Nada que objetar por ahora. Cada fila se juzga al salir de la celda; lo que depende de otras filas queda para la revisión completa.",
      large: "Muchas filas de {sheet} cambiaron a la vez. Pulse Revisar conteos para juzgarlas.",
      colleague: "por un colega",
    },
    aside: {
      setAside: "Apartar",
      title: "Dejar este hallazgo como está",
      reason: "Por qué puede quedar",
      by: "Su nombre o iniciales",
      both: "Hacen falta el motivo y el nombre.",
      list: "Hallazgos apartados",
      entry: "{reason} ({by}, {on})",
      takeBack: "Deshacer",
      done: "Apartado; así queda en este libro hasta que cambien los conteos.",
      takenBack: "Devuelto a la lista.",
    },
    findingsSheet: {
      sheet: "Hallazgos",
      title: "Hallazgos en los conteos",
      severity: "Certeza",
      where: "Hoja",
      cell: "Celda",
      counter: "Contado por",
      what: "Qué se encontró",
      remedy: "Qué hacer",
      setAside: "Apartado: por qué y por quién",
      code: "Clase",
    },
    heads: {
      open: "Usar mis propios encabezados",
      title: "Sus propios encabezados",
      intro: "Indique una vez qué significan sus encabezados; se guarda en este libro.",
      noHeads:
        "Ninguna hoja de este libro tiene una línea de encabezados. Siguiente paso: escriba una sobre sus conteos.",
      sheet: "Hoja",
      shape: "Una línea es",
      absent: "(no está en la hoja)",
      needed: "{head} (necesario)",
      unit: "Unidad de {head}",
      unitByWire:
        "Probablemente {unit}: el valor central {middle} es entonces un largo que los cordones tienen entre sus posiciones.",
      unitOfOthers: "Probablemente {unit}: la unidad de las otras columnas de este libro.",
      missing: "Todavía falta: {heads}.",
      keep: "Guardar",
      forget: "Olvidar",
      kept: "Guardado: {sheet} se lee ahora con sus encabezados.",
      forgotten: "Olvidado: {sheet} se lee por sus encabezados tal como están.",
    },
    functions: {
      refusedTitle: "Qué se rechaza",
      refused:
        "Todo lo que no figure arriba: una frase nombra el argumento, lo recibido y lo esperado. Una celda con error se rechaza con su error.",
      title: "Funciones para sus celdas",
      intro:
        "Cada una sirve en cualquier celda de este libro. Abra una, cambie las cifras y póngala en la celda elegida.",
      cell: {
        title: "La celda seleccionada",
        shows: "{cell} de {sheet} muestra {value}.",
        empty: "{cell} de {sheet} está vacía.",
        noFormula:
          "Ninguna fórmula la llena. Seleccione una celda con una función CORDON para leer qué recibió y por qué responde así.",
        noneOfOurs: "Su fórmula no usa ninguna función CORDON.",
        filledFrom: "La llena la fórmula de",
        heading: "Aquí da el encabezado de una columna.",
        here: "Aquí da {label}: {value}.",
        hereBlank: "Aquí da una celda vacía: en su fila no hay nada con qué calcular.",
        hereNothing: "Aquí no da nada que mostrar: no hay cifra para ello.",
        one: "Da {label}: {value}.",
        row: "Da {values}.",
        block: "Da {rows} {rows:fila|filas} bajo {columns} {columns:encabezado|encabezados}.",
        column: "Responde a {answered} de {rows} filas; {blank} quedan vacías, {refused} se rechazan.",
        firstRefused: "La primera rechazada, en la fila {row} del rango: {sentence}",
        refused: "Da {error}: {sentence}",
        notKnown:
          "{argument} solo lo calcula la hoja de cálculo ({written}), así que aquí no se repite la respuesta. Ponga esa parte en una celda propia para verla.",
        differs:
          "La celda muestra {shows}, y la función responde {answers} a estos argumentos: haga calcular el libro (F9).",
        name: "La celda muestra #NAME? (#¿NOMBRE?): la función no está cargada. Abra la página Cuidado, que repara esas celdas.",
        spill:
          "La celda muestra #SPILL! (#¡DESBORDAMIENTO!): hay algo en las celdas que necesita el resultado. Vacíe las celdas a la derecha y debajo.",
        busy: "La celda muestra {shows}: todavía se está calculando.",
        otherError:
          "La celda muestra {shows}, y la función responde {answers} a estos argumentos: introduzca la fórmula de nuevo.",
        otherParts: "La celda muestra {shows}: eso hace de ello el resto de la fórmula.",
        leftOut: "Omitidos: {names}.",
        leftOutAs: "{label} (vale {value})",
        missing: "no se dio",
        unknown: "lo calcula la hoja de cálculo, aquí no se lee",
        blankCell: "una celda vacía",
        share: "{value} ({percent} %)",
        several: "{rows} {rows:fila|filas}: {filled} con valor, {blanks} vacías; el primero es {first}",
        noneFilled: "{rows} {rows:fila|filas}, todas vacías",
        withErrors: "{words}; {errors} {errors:error|errores}",
        table:
          "{rows} {rows:fila|filas} bajo {columns} {columns:encabezado|encabezados}, desde {cell} de {sheet}",
        list: "{rows} {rows:fila|filas} bajo {columns} {columns:encabezado|encabezados}",
      },
      search: "Buscar",
      none: "Ninguna función trata de eso. Pruebe otra palabra, como pitones, cosecha o daño.",
      found: "{found} de {all} funciones",
      parameters: "Qué necesita",
      optional: "{label} (se puede omitir)",
      results: "Qué da",
      example: "Ejemplo",
      gives: "da {value}",
      source: "Fuente del valor: {work}",
      formula: "Fórmula",
      insert: "Poner en la celda",
      inserted: "La fórmula está en {cell} de {sheet}.",
      place: {
        blank:
          "La fórmula está en {cell} de {sheet}; {blank} de {of}, la primera celda que lee, está vacía, así que no se ve nada hasta que se llene.",
        otherRule:
          "{block} no fija sus yemas por una fórmula de madera podada sino por «{rule}». Tome NODESBYLENGTH, o lea el presupuesto en la página Yemas.",
        severalFigures:
          "Los cuarteles difieren ({figures}). Seleccione una celda en una fila de la tabla de {sheet}: se toma la cifra de su propio cuartel.",
        inTable:
          "El resultado llena varias celdas, y dentro de una tabla Excel no deja sitio para eso. Seleccione una celda vacía al lado o debajo de la tabla.",
      },
      noCell: "No hay ninguna celda elegida. Elija una celda vacía y repita.",
      notEmpty: "{cell} de {sheet} ya contiene algo y quedó como estaba. Elija una celda vacía y repita.",
      noFormula: "Una fórmula empieza con = y un nombre, como {example}.",
    },
    walk: {
      step: "Paso {step} de {steps}",
      next: "Siguiente",
      back: "Atrás",
      skip: "Saltar",
      end: "Empezar",
      again: "Mostrar el recorrido",
    },
    walkSteps: [
      "Temporada muestra, cuartel por cuartel, cuánto se ha hecho, y un solo botón lleva al siguiente paso. Los resultados de cada página están sin pedirlos; solo lo que escribe o imprime tiene botón.",
      "Revisar nombra cada celda que falta, es imposible o poco probable. Pulse el nombre de una celda: queda seleccionada y puede corregirla.",
      "Lo que aun así es cierto se aparta con un motivo. La lista se puede imprimir para la cuadrilla, escribir en una hoja o marcar en las celdas; las marcas se quitan sin dejar rastro.",
      "Decidir pesa los cordones candidatos de cada planta y da sus motivos; los casos dudosos son suyos. De ahí salen, en la página Cuadrilla, las tarjetas y el orden del trabajo.",
      "Huecos muestra dónde faltan pitones, hilera por hilera y planta por planta, y cuánto creció desde el invierno pasado.",
      "Cosecha dice qué cosecha deja eso, con un rango y qué lo estrecharía. Cada cifra está en Ajustes con su fuente.",
      "Las funciones responden a una pregunta en una celda: yemas que dejar, daño con su intervalo, cosecha de una planta. Abra una, cambie las cifras y póngala en una celda.",
    ],
    gaps: {
      title: "Huecos en el alambre",
      intro: "Un hueco es una posición del cordón sin pitón vivo. No cambia nada hasta que escriba una hoja.",
      of: "Contar en",
      staying: "los cordones que quedan",
      all: "todos los candidatos",
      count: "Contar huecos",
      progress: "Avance del conteo",
      deciding: "Decidiendo qué cordones quedan",
      none: "No se encontró ningún cordón con posiciones y pitones vivos. Siguiente paso: cuente esas dos columnas en la hoja Cordones.",
      sum: "En {of}: {missing} de {positions} posiciones están vacías: {share}.",
      without:
        "En {without} {without:planta no queda ningún candidato; no entra|plantas no queda ningún candidato; no entran} en las sumas.",
      writeRows: "Escribir hoja de huecos",
      writeMap: "Escribir mapa de huecos",
      perRow: "Hilera por hilera",
      since: "El cambio es desde el invierno {season}, en los cordones contados en ambos.",
      gaps: "Huecos",
      share: "Parte",
      change: "Diferencia",
      ofPositions: "{gaps} de {positions}",
      notCounted: "sin contar",
      map: "Mapa de huecos",
      mapKey:
        "Una línea es una hilera, una columna una planta. La cifra son décimos enteros de sus posiciones vacías: 0 menos de un décimo, 5 la mitad, 10 todas; cuanto más oscuro, más. Una raya es una planta sin candidato que quede. Pulse una celda, o vaya con las flechas y pulse Intro: sus filas quedan seleccionadas en la hoja y su hilera se dibuja abajo.",
      cell: "Hilera {row}, planta {vine}: {gaps} de {positions} posiciones vacías",
      noneStays: "Hilera {row}, planta {vine}: no queda ningún candidato",
      ledTo: "Hilera {row}, planta {vine}: hoja {sheet}, fila {sheetRow}",
      wire: "La hilera en el alambre",
      wireKey:
        "A escala: grueso queda en el alambre, a trazos se va, punteado se pregunta; los trazos cortos son pitones vivos, los anillos posiciones vacías, el rayado el hueco más largo de un cordón (en su mitad si nadie anotó dónde empieza), las líneas verticales troncos. × planta que falta, ? nada contado. Pulse una planta para ir a ella.",
      wireLine:
        "Plantas {first} a {last}: {bare} {bare:cordón|cordones} con hueco, {missing} {missing:planta falta|plantas faltan}.",
      vine: "Planta {vine}",
      missingVine: "Planta {vine}: falta",
      noCounts: "Planta {vine}: ningún cordón contado",
      toCells: "Ir a sus celdas",
      toDecide: "Ver en Decidir",
    },
    nodes: {
      title: "Yemas que dejar",
      intro:
        "Qué hizo el invierno con las yemas y cuántas dejaría cada regla en una planta con el peso medio de poda del cuartel. No se cambia nada.",
      work: "Calcular las yemas",
      progress: "Avance del cálculo de yemas",
      none: "No se encontró cuartel, corte de yemas ni planta pesada. Siguiente paso: pese la poda de algunas plantas en la hoja Plantas o escriba una regla de yemas en la hoja Cuarteles.",
      winter: "Qué hizo el invierno",
      buds: "{dead} de {cut} yemas primarias muertas: {share}, entre {low} y {high}.",
      noBuds: "Sin cortes de yemas: el número no se corrige por daño de invierno.",
      overHalf:
        "{blocks}: más de la mitad de las yemas primarias están muertas. Mire primero los sarmientos y los troncos, y la madera viva bajo la corteza, antes de fijar un número.",
      byCultivar: "Por variedad",
      cultivar: "{cultivar} ({blocks})",
      leave: "Qué dejar",
      leaves: "Deje {nodes} {nodes:yema|yemas} por planta según {rule}.",
      leavesCorrected:
        "Deje {nodes} {nodes:yema|yemas} por planta según {rule}, corregido según {injuryRule}.",
      noNumber: "Sin número para este cuartel: {reason}",
      limitedLeast: "Subido al mínimo de los ajustes.",
      limitedMost: "Limitado al máximo de yemas por planta.",
      least: "Nunca menos de {least} {least:yema|yemas} por planta (Ajustes).",
      byLength: "por longitud",
      noLeast: "Los ajustes no fijan un mínimo de yemas.",
      straddle:
        "El intervalo de yemas muertas pasa por {edges}, donde {injuryRule} cambia: {low} en su extremo bajo, {high} en el alto. Más cortes de yemas lo dirían.",
      someNodes: "{nodes} {nodes:yema|yemas}",
      noAnswer: "sin número",
      own: "la media de {vines} plantas pesadas, {mean} {unit}",
      oneWeighed: "una planta pesada, {mean} {unit}",
      rules: "Las reglas lado a lado, antes del daño",
      rulesKey: "Según {basis}. La regla vigente está marcada.",
      noneWeighed: "ninguna planta pesada",
      rule: "Regla",
      nodes: "Yemas",
      live: "De ellas vivas",
      inForce: "{rule} (vigente)",
      injuryRules: "Lo mismo corregido por yemas muertas, regla por regla",
      spurs: "Pitones que las llevan",
      carried:
        "Quedan {spurs} pitones por planta (media de {vines} {vines:planta|plantas}): con {usual} yemas cada uno llevan {held}; con {most} cada uno, {heldMost}.",
      enough: "Eso lleva el número: {each} {each:yema|yemas} por pitón.",
      short:
        "Aun así {short:falta|faltan} {short} {short:yema|yemas}: tienda sarmientos, guarde más madera o acepte un número menor.",
      noSpurs: "Sin pitones contados en cordones que quedan.",
      light: "Plantas con menos de una libra (0,45 kg) de poda",
      lightWhy:
        "Ninguna fuente vista dice cuántas yemas lleva una planta así; hay que fortalecerla. Los ajustes dicen qué se hace.",
      lightVine: "Hilera {row}, planta {vine}: {mass} {unit}",
      setting: "Ajustes: {name}",
      caution: "Las cifras aconsejan; antes está lo que digan el asesor de su región y sus propias cosechas.",
    },
    gapSheet: {
      rowGaps: "Huecos por hilera",
      rowGapsTitle: "Huecos por hilera",
      gapMap: "Mapa de huecos",
      gapMapTitle: "Parte de posiciones vacías, planta por planta",
      vine: "Planta {vine}",
      vinesWithout: "Plantas sin cordón que quede",
      bothWinters: "Cordones contados ambos inviernos",
      shareBefore: "Su parte el invierno pasado",
      shareNow: "Su parte ahora",
    },
    settings: {
      title: "Cifras que cambian resultados",
      intro: "Cada cifra tiene su fuente. Antes de guardar un cambio, el panel muestra qué resultados mueve.",
      read: "Leer los ajustes",
      progress: "Avance",
      comparing: "Comparando resultados",
      noTable:
        "Este libro no tiene tabla de ajustes: cada cifra es la de su fuente. Al guardar un cambio se crea la hoja {sheet}.",
      search: "Buscar",
      none: "Ninguna cifra trata de eso. Pruebe otra palabra.",
      value: "{value} {unit}",
      source: "Fuente: {source}",
      ownFigure: "La fuente tiene {value} {unit}.",
      changed: "Cambiado por {by}, {on}",
      newValue: "Valor nuevo ({unit})",
      newWord: "Valor nuevo",
      by: "Su nombre o iniciales",
      byNeeded: "Escriba su nombre o iniciales, para que otros sepan quién cambió la cifra.",
      change: "Cambiar",
      show: "Mostrar qué se mueve",
      keep: "Guardar",
      reset: "Volver al valor de la fuente",
      nothingMoves: "No se movería ninguna decisión ni ningún hallazgo de este libro.",
      budgetMoves: "{block}: {before} por planta → {after}",
      budgetsStay: "Ningún cuartel cambiaría su número de yemas.",
      vinesMove: "{moved} de {vines} {vines:planta|plantas} {moved:se decidiría|se decidirían} de otro modo.",
      findingsMove:
        "{gone:Desaparecería|Desaparecerían} {gone} {gone:hallazgo|hallazgos} y {come:aparecería|aparecerían} {come}.",
      vineHead: "Planta",
      now: "Queda ahora",
      then: "Quedaría",
      firstOnes: "Se muestran los primeros {shown}.",
      kept: "Guardado: {setting} es {value}.",
      meanwhile: "Otra persona cambió {setting} entretanto; no se escribió nada. Mírelo otra vez.",
    },
    settingGroups: {
      budget: "Yemas y daño",
      choice: "Qué cordón queda",
      renewal: "Renovación de troncos y cordones",
      outlook: "Pronóstico de cosecha",
      work: "Horas y jornales",
      plan: "Plan del trabajo",
      checks: "Revisiones",
    },
    decide: {
      title: "Qué cordón queda",
      intro:
        "Una planta tras otra: lo que dicen sus conteos y los Ajustes, y lo que usted decide. No se escribe nada hasta que pulse una decisión.",
      decide: "Decidir las plantas",
      deciding: "Decidiendo qué cordones quedan",
      progress: "Avance de la decisión",
      none: "No se encontró ninguna planta con cordones candidatos. Siguiente paso: cuéntelos en la hoja Cordones, uno por fila.",
      write: "Escribir hoja de decisión",
      sum: "{all} {all:planta|plantas}: {ask} por preguntar, {lay} donde se tiende un sarmiento, {trunks} con troncos que renovar.",
      caution:
        "Las cifras aconsejan; decide quien está ante la planta. Mire la madera antes de cortar un cordón para siempre.",
      show: "Mostrar",
      ask: "por preguntar ({count})",
      lay: "se tiende un sarmiento ({count})",
      trunks: "troncos que renovar ({count})",
      all: "todas las plantas ({count})",
      block: "Cuartel",
      vine: "{block} hilera {row} planta {vine}",
      fixed: "{outcome}: escrito en la columna de decisiones fijas de la hoja.",
      outcomes: {
        stays: "{cordon} queda",
        cane: "Tender un sarmiento de {cordon}",
        none: "Ninguno queda {at}",
        recount: "Contar de nuevo esta planta",
        free: "Volver a preguntar",
      },
      find: "Buscar una planta: cuartel, hilera, planta",
      notFound:
        "No se encuentra ninguna planta con «{search}». Escriba el cuartel, la hilera y la planta, como en {example}.",
      previous: "Planta anterior",
      next: "Planta siguiente",
      position: "{at} de {of}",
      notListed: "no está entre las {of} de esta lista",
      stays: "Queda",
      kept: "Se guarda",
      cut: "Se corta, en este orden",
      keptSpur: "Un pitón de renovación de {cordon} en la cabeza del tronco {trunk}.",
      keptCane: "Un sarmiento de {cordon} cerca de la cabeza, para el lado: {side}.",
      keptWood: "Madera viva de {cordon}, que renueva {renews} en otro invierno.",
      against: "Contra {cordon}, por {rival}: {argument}.",
      nothingAgainst: "Ningún conteo habla en contra.",
      recountCells: "Contar de nuevo, por estas celdas:",
      decideVine: "Decidir",
      sideChoices: "Lado: {side}",
      wholeVine: "Toda la planta",
      rowPicture:
        "Hilera {row} de {block}, planta por planta: {decided} decididas, {ask} por preguntar, {count} por contar.",
      rowKey: "Lleno: decidida; rayado: por preguntar; con cruz: por contar; con marco: esta planta.",
      noColumn:
        "La hoja {sheet} no tiene la columna Decisión fija. Siguiente paso: escriba ese encabezado junto a la tabla y decida otra vez.",
    },
    outlook: {
      title: "Qué cosecha deja eso",
      intro:
        "De los cordones que quedan a brotes, racimos y cosecha, con un rango. Los conteos posteriores lo estrechan.",
      work: "Calcular el pronóstico",
      progress: "Avance del pronóstico",
      none: "No se encontró ningún cuartel. Siguiente paso: anote sus cuarteles en una hoja con los encabezados Cuartel, Plantas, Entre hileras, Entre plantas, Peso del racimo.",
      caution:
        "Un pronóstico de invierno falla a menudo en un tercio. Aconseja; no incluye heladas, granizo, aves ni enfermedades, y un asesor local conoce su sitio.",
      write: "Escribir la hoja Pronóstico de cosecha",
      cannotSay: "Aún no se puede decir nada de este cuartel; abajo está lo que falta.",
      crop: "Probable {likely} {unit}; de {low} a {high} en {percent} de cada 100 casos así.",
      stages: "Etapa por etapa",
      bar: "{stage}: bajo {low}, probable {likely}, alto {high} {unit}.",
      aVine: "Una planta: unos {clusters} {clusters:racimo|racimos}, de {low} a {high} {unit}.",
      byPlan: "{stage}, según el plan",
      harvests: "Sus propias cosechas",
      targetName: "meta",
      axisKey:
        "Banda: de bajo a alto, con la cosecha probable cruzándola; banda a trazos: yemas tal como se contaron, no según el plan de las tarjetas. Puntos: sus propias cosechas. Línea a trazos: meta.",
      stage: "Etapa, en {unit}",
      low: "Bajo",
      likely: "Probable",
      high: "Alto",
      target: "Meta: {value} {unit}.",
      spread: "De dónde viene la duda",
      steps: "Qué lo estrecharía",
      load: "Relación de carga",
      thinning: "Aclareo hasta la meta",
      noThinning: "Los racimos contados no pasan de la meta: no hay que quitar nada.",
      keep: "Cada planta conserva como máximo {keep} {keep:racimo|racimos}; unas {hours} {hours:hora|horas} de una persona.",
      group: "Plantas",
      vines: "Cuántas",
      remove: "Quitar",
      left: "Quedan",
      held: "{stage}: se cosechó {percent} % de lo probable, dentro del rango.",
      missed: "{stage}: se cosechó {percent} % de lo probable, fuera del rango.",
      lacking: "Qué falta en las hojas",
      figures: "Lo que dicen sus cosechas",
      figure: "{figure}{cultivar}: {now} en uso, {value} según sus años.",
    },
    outlookSheet: {
      sheet: "Pronóstico de cosecha",
      title: "Cosecha esperada, por cuartel",
      stage: "Etapa",
      confidence: "Confianza",
      clusters: "Racimos por planta",
      vineLow: "Planta, bajo ({unit})",
      vineLikely: "Planta, probable ({unit})",
      vineHigh: "Planta, alto ({unit})",
      areaLow: "Superficie, bajo ({unit})",
      areaLikely: "Superficie, probable ({unit})",
      areaHigh: "Superficie, alto ({unit})",
      cropLow: "Cuartel, bajo ({unit})",
      cropLikely: "Cuartel, probable ({unit})",
      cropHigh: "Cuartel, alto ({unit})",
      widest: "La mayor duda",
      harvests: "Cosechas propias, promedio ({unit})",
      againstHarvests: "Frente a las cosechas propias",
      figures: "Cifras usadas",
      bar: "Barra del gráfico",
      barName: "{block}: {stage}",
      toLikely: "Bajo a probable ({unit})",
      toHigh: "Probable a alto ({unit})",
      chartTitle: "Cosecha del cuartel: baja, probable, alta",
      chartAxis: "Cosecha ({unit})",
    },
    care: {
      title: "Cuidado del libro",
      progress: "Avance",
      repairTitle: "Fórmulas que ya no calculan",
      repairIntro:
        "Una fórmula escrita o abierta sin el complemento puede quedar en #NAME?. Primero se muestran; mirar no cambia nada.",
      look: "Buscarlas",
      looking: "Revisando las hojas",
      noRepairs: "Todas nuestras fórmulas están bien escritas y calculan.",
      failing: "Fórmulas nuestras que muestran un error y no se reparan desde aquí: {cells}.",
      spill:
        "Muestra {shows}: hay algo en las celdas que el resultado necesita. Vacíe las celdas a la derecha y debajo.",
      error: "Muestra {shows}: lo que recibe no encaja. Seleccione la celda y abra Funciones, que dice qué.",
      found: "{cells} {cells:celda se puede|celdas se pueden} reparar.",
      enterAgain: "Se introduce otra vez tal cual:",
      before: "Está así",
      after: "Queda así",
      repair: "Reparar {cells} {cells:celda|celdas}",
      repaired:
        "Se {cells:reparó|repararon} {cells} {cells:celda|celdas}; {left} {left:se dejó porque alguien la cambió|se dejaron porque alguien las cambió} entretanto.",
      undo: "Deshacer la reparación",
      undone:
        "{cells} {cells:celda está|celdas están} como antes; {left} {left:se dejó porque alguien la cambió|se dejaron porque alguien las cambió} entretanto.",
      unknown: "{name} no es una función de esta versión; la fórmula queda como está.",
      testTitle: "Autoprueba",
      testIntro: "Prueba lo que el complemento necesita aquí, en hojas propias que luego se quitan.",
      test: "Hacer la autoprueba",
      testing: "Probando",
      works: "funciona",
      fails: "falla",
      unsure: "no se ve",
      missing: "falta",
      version: "Cordonbook {version}, anfitrión: {host}.",
      calculates: "El cálculo mismo.",
      reads: "Leer una hoja.",
      keeps: "Guardar pequeños datos en el libro.",
      writes: "Escribir una hoja propia, texto como texto.",
      inCells: "Funciones CORDON en las celdas.",
      notInCells:
        "Abra el panel una vez con las funciones cargadas, o pregunte a quien instaló el complemento.",
      takesAway: "Quitar la hoja otra vez.",
      logTitle: "Quién ejecutó qué",
      logIntro: "Un pequeño registro en el libro, apagado hasta que alguien lo encienda.",
      logAsk: "Mostrar el interruptor",
      logSwitch: "Anotar ejecuciones en este libro",
      logCheck: "Revisar",
      logWrite: "Escribió {sheet}",
    },
  },
  reading: {
    answers: {
      sheet: "Respuestas",
      title: "Lo que se respondió sobre las hojas de este libro. Una línea borrada se vuelve a preguntar.",
      what: "Qué",
      of: "De",
      answer: "Respuesta",
      headOf: "encabezado en {shape}",
      value: "valor para cada fila",
      leaveOut: "hoja no leída",
      unit: "unidad",
      counterUnit: "unidad de un contador",
      winter: "invierno",
      dateOrder: "orden de las fechas",
      dayFirst: "primero el día",
      monthFirst: "primero el mes",
      oddCounts: "conteos raros tomados como se propuso",
      recount: "conteos raros por contar de nuevo",
    },
    notes: {
      mergedFilled: "Las celdas combinadas valen para todas las filas que abarcan ({areas} en {sheets}).",
      filledDown: "Las claves escritas una vez por grupo valen hasta la siguiente: {columns} en {sheets}.",
      keysAbove: "El cuartel o la hilera se tomaron de las líneas sobre los encabezados en {sheets}.",
      keysOfName: "El cuartel, la hilera o el lado se tomaron del nombre de la hoja: {sheets}.",
      captions: "Las líneas entre las filas de {sheets} se leyeron como títulos de cuartel e hilera.",
      labels: "{columns} se leyeron de las etiquetas bajo {head}, como {examples}: {sheets}.",
      sidesOfNames:
        "Los lados se leyeron de la primera letra de los nombres de los cordones, como {examples}: {sheets}.",
      turned: "Una línea contiene varios candidatos en {sheets}: {names} se leyeron cada uno como un cordón.",
      sideBySide: "Las tablas que están una al lado de otra se leyeron una tras otra: {sheets}.",
      secondHeads: "Los encabezados más abajo se leyeron por separado: {sheets}, fila {row}.",
      twoParts: "{sheet}: los largos están en dos columnas, {head} y {second}, y se sumaron.",
      liveDerived: "Los pitones vivos se calcularon como {positions} menos {heads} en {sheets}.",
      yearTaken: "De los encabezados con año se tomó {head} en {sheets}.",
      strokes:
        "{cells:Se leyó|Se leyeron} {cells} {cells:conteo escrito|conteos escritos} con rayas, como {examples}.",
      worded:
        "{cells:Se leyó|Se leyeron} {cells} {cells:conteo escrito|conteos escritos} junto a una palabra o un signo, como {examples}.",
      ownUnits:
        "Se leyeron {cells} {cells:celda|celdas} en la unidad que ellas mismas nombran, como {examples}.",
      textNumbers:
        "{cells:Se leyó como número|Se leyeron como números} {cells} {cells:número guardado|números guardados} como texto, como {examples}.",
      datesSettled:
        "{cells} {cells:fecha|fechas} que se {cells:puede|pueden} leer de dos maneras se {cells:leyó|leyeron} así: {order}, como dicen los demás días del recorrido ({examples}): {sheets}.",
      totalLines:
        "{lines} {lines:línea|líneas} de totales no se {lines:leyó como conteo|leyeron como conteos}: {sheets}.",
      headsAgain:
        "{lines} {lines:línea|líneas} de encabezados repetidos no se {lines:leyó|leyeron} como conteos: {sheets}.",
      remarkLines:
        "{lines} {lines:línea|líneas} con una nota en una sola celda no se {lines:leyó|leyeron} como conteos: {sheets}.",
      encodedTwice:
        "El texto cuyas letras se habían codificado dos veces se leyó como debía ser, en {cells} {cells:celda|celdas}, por ejemplo “{from}” como “{to}”: {sheets}.",
      hiddenRows: "{lines} {lines:fila oculta se leyó|filas ocultas se leyeron} como las demás: {sheets}.",
      hiddenColumns: "Las columnas ocultas se leyeron como las demás ({columns}): {sheets}.",
      oneWinter:
        "Los conteos separados por pocas semanas en plantas distintas se tomaron como un solo invierno, {winter}: {sheets}.",
      plantingYear:
        "El año en el nombre de una hoja no se tomó como un invierno pasado, pues ninguna otra hoja contiene sus plantas: {sheets}.",
    },
    evidence: {
      name: "el nombre de la hoja dice",
      sheets: "los conteos de plantas o yemas dicen",
      today: "por la fecha de hoy solo puede ser",
    },
    questions: {
      heads:
        "{sheets}: {rows} {rows:fila está bajo encabezados desconocidos y no se leyó|filas están bajo encabezados desconocidos y no se leyeron}. ¿Son {heads} las columnas {columns}?",
      noHeads:
        "{sheet}: {rows} {rows:fila parece conteos, pero no tiene encima ningún encabezado conocido y no se leyó|filas parecen conteos, pero no tienen encima ningún encabezado conocido y no se leyeron}. Escriba encima encabezados como Cuartel, Hilera, Planta y Lado, o deje la hoja fuera.",
      head: "{sheets}: ¿{heads:es|son} {head} la columna {column} de esta temporada?",
      unit: "{sheets}: ¿en qué unidad está escrita {head}? La columna no se leyó.",
      counterUnit:
        "{sheets}: parece que {counter} escribió {rows} {rows:valor|valores} de {head} en {likely} y no en {unit}; no se {rows:leyó|leyeron}. ¿En qué unidad {rows:está|están}?",
      dateOrder:
        "{sheet}: {cells} {cells:fecha se puede|fechas se pueden} leer con el día o el mes primero y no se {cells:leyó|leyeron}. ¿Cuál va primero?",
      noYear:
        "{sheets}: {cells} {cells:fecha|fechas} como {examples} no {cells:lleva|llevan} año y no se {cells:leyó|leyeron}. ¿De qué invierno {cells:es|son}?",
      winter:
        "{sheets}: {rows} {rows:fila tiene fecha del invierno|filas tienen fecha del invierno} {winter} y no {rows:está|están} en ningún resultado. {rows:¿Pertenece|¿Pertenecen} a {likely}?",
      otherWinter:
        "{sheets}: {rows} {rows:fila lleva|filas llevan} fecha del invierno {winter}, pero {by} el invierno {likely}. ¿Cuál es?",
      oddCounts:
        "{sheet}: {cells} {cells:celda|celdas} de {columns} {cells:contiene|contienen} {kind}, como {examples}, y no se {cells:leyó|leyeron}. ¿Qué se contó?",
      keys: "{sheets}: ninguna columna, título o nombre indica {columns}. ¿Cuál es?",
      hidden:
        "{sheet} está oculta y sus conteos no se leyeron. Muestre la hoja para que se lean, o déjela fuera.",
    },
    leftOut: {
      otherHeads:
        "{sheet} no se leyó: {rows:su|sus} {rows} {rows:fila está|filas están} bajo otros encabezados.",
      hidden: "{sheet} no se leyó: está oculta.",
      notCounts: "{sheet} no se leyó: no contiene conteos.",
      notCalculated:
        "{sheet}: {rows} {rows:fila contiene fórmulas que nunca se calcularon y no se leyó|filas contienen fórmulas que nunca se calcularon y no se leyeron}. Abra el archivo en una hoja de cálculo, deje que calcule, guárdelo y ejecute esto de nuevo.",
      toCount:
        "{sheet}: {rows} {rows:fila está preparada y vacía; su planta está contada|filas están preparadas y vacías; sus plantas están contadas} en otras hojas.",
      pastWinter: "{sheet}: {rows} {rows:fila pertenece|filas pertenecen} al invierno {winter}.",
      byAnswer: "{sheet} se dejó fuera según su respuesta.",
      total: "{sheet}: la columna {head} contiene totales y no se leyó.",
      qualifier: "{sheet}: la columna {head} es de otra cosa que los conteos de este invierno y no se leyó.",
      otherColumn: "{sheet}: la columna {head} no se leyó: su encabezado no es ninguno conocido.",
      asked: "{sheet}: la columna {head} no se leyó: hay una pregunta abierta sobre ella.",
      repeated: "{sheet}: la columna {head} no se leyó: se leyó otra columna con ese nombre.",
      noHead: "{sheet}: la columna {head} no se leyó: no tiene encabezado.",
    },
    account: {
      read: "Leído: {files} {files:archivo|archivos}, {sheets} {sheets:hoja|hojas}, {tables} {tables:tabla|tablas}, {columns} {columns:columna|columnas}, {rows} {rows:fila|filas}.",
      winters: "Tomado como conteos {count:del invierno|de los inviernos} {winters}.",
      notRead: "No leído: {parts}.",
      open: "{questions} {questions:pregunta queda|preguntas quedan} por responder.",
      more: "{names} y {more} más",
      parts: {
        hidden: "{names} (oculta)",
        otherHeads: "{names} (otros encabezados)",
        notCounts: "{names} (sin conteos)",
        notCalculated: "{lines} {lines:fila|filas} de {names} (fórmulas nunca calculadas)",
        toCount: "{lines} {lines:fila vacía|filas vacías} de {names} (contadas en otras hojas)",
        pastWinter: "{lines} {lines:fila|filas} de {names} (un invierno pasado)",
        byAnswer: "{names} (fuera, como se respondió)",
        total: "{count:la columna|las columnas} {names} (totales)",
        qualifier: "{count:la columna|las columnas} {names} (no son conteos de este invierno)",
        otherColumn: "{count:la columna|las columnas} {names} (encabezado desconocido)",
        asked: "{count:la columna|las columnas} {names} (por preguntar)",
        repeated: "{count:la columna|las columnas} {names} (nombrada dos veces)",
        noHead: "{count:la columna|las columnas} {names} (sin encabezado)",
        totalLines: "{lines} {lines:línea|líneas} de totales",
        headsAgain: "{lines} {lines:línea|líneas} de encabezados repetidos",
        remarkLines: "{lines} {lines:línea|líneas} de notas",
        otherFormat: "{names} (otro formato)",
        copy: "{names} ({count:copia|copias} de otro archivo)",
      },
    },
    kinds: {
      sum: "sumas",
      star: "números con asterisco",
      range: "intervalos",
      about: "números aproximados",
      doubt: "números con signo de interrogación",
      letter: "letras en lugar de cifras",
      share: "porcentajes",
      fraction: "fracciones",
      remark: "números con un comentario",
      spaced: "dos números",
      measure: "longitudes",
      date: "fechas",
      time: "horas",
      yesNo: "VERDADERO o FALSO",
      part: "una parte de un todo",
    },
  },
  usedRows: {
    usedRows: {
      all: "Calculado con las {rows} {rows:fila|filas} de las hojas Cordones.",
      some: "Calculado con {used} de {rows} {rows:fila|filas} de las hojas Cordones.",
      leftOut: "Quedan fuera: {leftOut}.",
      column: "{rows} donde {column} {reason} (la primera en {sheet}, fila {row})",
      sameVine: "{rows} junto a ellas en las mismas plantas",
      toCount: "{rows} aún por contar (la primera en {sheet}, fila {row})",
    },
    faultWords: {
      blank: "está en blanco",
      text: "es un número guardado como texto",
      unreadable: "no se puede leer",
      error: "tiene un error",
      outside: "está fuera de sus límites",
      notWhole: "no es un número entero",
      contradicted: "contradice otra celda de su fila",
      noColumn: "no tiene columna",
      moved: "está en una línea con más celdas que encabezados",
      tooMany: "está en más filas que cordones tiene una planta",
      marked: "pide contar de nuevo la planta",
    },
  },
  heads: {
    gaps: "Huecos",
    share: "Parte",
    sheet: "Hoja",
    made: "Escrita por Cordonbook el {date}; se escribe de nuevo cada vez: no anote nada aquí.",
  },
};
