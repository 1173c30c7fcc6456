import { t, type FindingText } from "./findingText";

const LOOK = t(
  "Look at the vine; if it is true, set the finding aside.",
  "Mire la planta; si es cierto, aparte el hallazgo.",
  "Regarder le cep ; si c'est vrai, mettre la remarque de côté.",
);

/** Findings about cordons in their vine and its space, decisions and last year's counts. */
export const VINE_FINDINGS: Readonly<Record<string, FindingText>> = {
  cordonTooLong: {
    title: t("Longer than its space", "Más largo que su espacio", "Plus long que sa place"),
    sentence: t(
      "{value}{unit} of cordon where the vine spacing gives {share}{unit} a side, and no missing vine beside it is known.",
      "{value}{unit} de cordón donde la distancia entre plantas da {share}{unit} por lado, y no se conoce planta faltante al lado.",
      "{value}{unit} de cordon là où l'espacement donne {share}{unit} par côté, et aucun cep manquant à côté n'est connu.",
    ),
    why: t(
      "It grows into the next vine, or the length is wrong.",
      "Crece dentro de la planta vecina, o el largo está mal.",
      "Il pousse dans le cep voisin, ou la longueur est fausse.",
    ),
    remedy: LOOK,
  },
  cordonIntoGap: {
    title: t(
      "Led into a missing vine's place",
      "Llevado al lugar de una planta faltante",
      "Conduit à la place d'un cep manquant",
    ),
    sentence: t(
      "{value}{unit} of cordon where a side has {share}{unit}; vine {gap} beside it is missing, so it may fill its place.",
      "{value}{unit} de cordón donde un lado tiene {share}{unit}; la planta {gap} al lado falta, así que puede ocupar su lugar.",
      "{value}{unit} de cordon là où un côté a {share}{unit} ; le cep {gap} à côté manque, il peut occuper sa place.",
    ),
    why: t(
      "Worth knowing before the missing vine is replanted.",
      "Conviene saberlo antes de replantar la faltante.",
      "Bon à savoir avant de replanter le cep manquant.",
    ),
    remedy: t(
      "Nothing, if the cordon was led there on purpose.",
      "Nada, si el cordón se llevó allí a propósito.",
      "Rien, si le cordon y a été conduit exprès.",
    ),
  },
  cordonTooShort: {
    title: t("Far shorter than its space", "Mucho más corto que su espacio", "Bien plus court que sa place"),
    sentence: t(
      "{value}{unit} of sound cordon where the vine spacing gives {share}{unit} a side.",
      "{value}{unit} de cordón sano donde la distancia entre plantas da {share}{unit} por lado.",
      "{value}{unit} de cordon sain là où l'espacement donne {share}{unit} par côté.",
    ),
    why: t(
      "Wire without a cordon bears nothing, or the length is wrong.",
      "El alambre sin cordón no produce nada, o el largo está mal.",
      "Le fil sans cordon ne porte rien, ou la longueur est fausse.",
    ),
    remedy: LOOK,
  },
  blockUnlikeSpacing: {
    title: t(
      "Lengths do not fit the spacing",
      "Los largos no cuadran con la distancia",
      "Longueurs et espacement ne concordent pas",
    ),
    sentence: t(
      "The block's cordons are {median}{unit} long in the middle, but its vine spacing gives {share}{unit} a side.",
      "Los cordones del cuartel miden {median}{unit} en el centro, pero su distancia entre plantas da {share}{unit} por lado.",
      "Les cordons de la parcelle font {median}{unit} au milieu, mais son espacement donne {share}{unit} par côté.",
    ),
    why: t(
      "The unit in a header or the vine spacing is wrong, and with it every figure by length.",
      "La unidad de un encabezado o la distancia está mal, y con ella toda cifra por largo.",
      "L'unité d'un en-tête ou l'espacement est faux, et avec lui tout chiffre par longueur.",
    ),
    remedy: t(
      "Check the unit in the header of the length and the vine spacing in the Blocks sheet.",
      "Revise la unidad en el encabezado del largo y la distancia en la hoja de cuarteles.",
      "Vérifier l'unité dans l'en-tête de la longueur et l'espacement dans la feuille des parcelles.",
    ),
  },
  diameterUnusual: {
    title: t("Unusual thickness", "Grosor inusual", "Grosseur inhabituelle"),
    sentence: t(
      "{column} is {value}{unit}; cordons are {least} to {most}{unit} thick.",
      "{column} es {value}{unit}; los cordones miden de {least} a {most}{unit}.",
      "{column} vaut {value}{unit} ; les cordons font de {least} à {most}{unit}.",
    ),
    why: t(
      "A wrong thickness moves the choice of the cordon.",
      "Un grosor equivocado cambia la elección del cordón.",
      "Une grosseur fausse change le choix du cordon.",
    ),
    remedy: LOOK,
  },
  nodesUnusual: {
    title: t(
      "Unusual number of nodes a spur",
      "Número inusual de yemas por pitón",
      "Nombre d'yeux par courson inhabituel",
    ),
    sentence: t(
      "{column} is {value}; spurs are cut to {least} to {most} nodes.",
      "{column} es {value}; los pitones se cortan a entre {least} y {most} yemas.",
      "{column} vaut {value} ; les coursons sont taillés à {least} à {most} yeux.",
    ),
    why: t(
      "Shoots and crop are counted from it.",
      "De ahí se calculan brotes y cosecha.",
      "Pousses et récolte en sont calculées.",
    ),
    remedy: LOOK,
  },
  missingAsZero: {
    title: t("Missing vine counted as 0", "Planta faltante contada como 0", "Cep manquant compté 0"),
    sentence: t(
      "The vine is missing, yet {column} is 0.",
      "La planta falta, pero {column} es 0.",
      "Le cep manque, pourtant {column} vaut 0.",
    ),
    why: t(
      "The block would lose the vine twice: once in the mean of the counted vines, once as a missing vine.",
      "El cuartel perdería la planta dos veces: una en la media de las contadas y otra como faltante.",
      "La parcelle perdrait le cep deux fois : une dans la moyenne des ceps comptés, une comme manquant.",
    ),
    remedy: t(
      "Leave the count of a missing vine blank.",
      "Deje vacío el conteo de una planta faltante.",
      "Laisser vide le comptage d'un cep manquant.",
    ),
  },
  missingVineCounted: {
    title: t("Count on a missing vine", "Conteo en una planta faltante", "Comptage sur un cep manquant"),
    sentence: t(
      "The vine is called missing, yet {column} is {value}.",
      "La planta figura como faltante, pero {column} es {value}.",
      "Le cep est dit manquant, pourtant {column} vaut {value}.",
    ),
    why: t(
      "Either the vine stands, or the count belongs to another vine.",
      "O la planta está en pie, o el conteo es de otra planta.",
      "Ou le cep est debout, ou le comptage est celui d'un autre cep.",
    ),
    remedy: LOOK,
  },
  trunksUnusual: {
    title: t("Unusual number of trunks", "Número inusual de troncos", "Nombre de troncs inhabituel"),
    sentence: t(
      "{column} is {value}; vines carry {most} trunks at most.",
      "{column} es {value}; las plantas llevan {most} troncos como máximo.",
      "{column} vaut {value} ; les ceps portent {most} troncs au plus.",
    ),
    why: t(
      "A wrong trunk number joins cordons that do not belong together.",
      "Un número de tronco equivocado junta cordones que no van juntos.",
      "Un faux numéro de tronc réunit des cordons qui ne vont pas ensemble.",
    ),
    remedy: LOOK,
  },
  sideFromOneTrunk: {
    title: t("A side from one trunk only", "Un lado de un solo tronco", "Un côté d'un seul tronc"),
    sentence: t(
      "All live candidates of the {choice} side come from trunk {trunk}, though the vine has another.",
      "Todos los candidatos vivos del lado {choice} salen del tronco {trunk}, aunque la planta tiene otro.",
      "Tous les candidats vivants du côté {choice} partent du tronc {trunk}, bien que le cep en ait un autre.",
    ),
    why: t(
      "The choice on this side cannot spread the risk over two trunks.",
      "En este lado la elección no puede repartir el riesgo entre dos troncos.",
      "De ce côté, le choix ne peut pas répartir le risque sur deux troncs.",
    ),
    remedy: t(
      "Check the trunk numbers; else think of laying a cane from the other trunk.",
      "Revise los números de tronco; si no, piense en tender un sarmiento del otro.",
      "Vérifier les numéros de tronc ; sinon, penser à coucher un sarment de l'autre.",
    ),
  },
  trunksAboveRegister: {
    title: t(
      "More live trunks than the register says",
      "Más troncos vivos que en el registro",
      "Plus de troncs vivants que dans le registre",
    ),
    sentence: t(
      "Live cordons stand on trunks {trunks}, but the Vines sheet says {living} live trunks.",
      "Hay cordones vivos en los troncos {trunks}, pero la hoja de plantas dice {living} troncos vivos.",
      "Des cordons vivants sont sur les troncs {trunks}, mais la feuille des ceps dit {living} troncs vivants.",
    ),
    why: t(
      "Either a trunk number or the register is wrong, and trunks to renew are chosen by it.",
      "O un número de tronco o el registro está mal, y con él se eligen los troncos a renovar.",
      "Ou un numéro de tronc ou le registre est faux, et on choisit par lui les troncs à renouveler.",
    ),
    remedy: LOOK,
  },
  deadCordonStays: {
    title: t("A dead cordon is to stay", "Un cordón muerto ha de quedar", "Un cordon mort doit rester"),
    sentence: t(
      "Decided to stay, but the cordon or its trunk is dead or has no live spur.",
      "Decidido que queda, pero el cordón o su tronco está muerto o sin pitón vivo.",
      "Décidé qu'il reste, mais le cordon ou son tronc est mort ou sans courson vivant.",
    ),
    why: t(
      "The side would bear nothing, and the live candidate would be cut for good.",
      "El lado no produciría nada y se cortaría el candidato vivo para siempre.",
      "Le côté ne porterait rien, et le candidat vivant serait coupé pour toujours.",
    ),
    remedy: t(
      "Decide again, at the vine.",
      "Decida de nuevo, en la planta.",
      "Décider à nouveau, devant le cep.",
    ),
  },
  sickCordonStays: {
    title: t(
      "A diseased cordon is to stay",
      "Un cordón enfermo ha de quedar",
      "Un cordon malade doit rester",
    ),
    sentence: t(
      "Decided to stay, but the cordon or its trunk is called diseased.",
      "Decidido que queda, pero el cordón o su tronco figura como enfermo.",
      "Décidé qu'il reste, mais le cordon ou son tronc est dit malade.",
    ),
    why: t(
      "Disease goes on from a cordon into the trunk.",
      "La enfermedad pasa del cordón al tronco.",
      "La maladie passe du cordon au tronc.",
    ),
    remedy: t(
      "Ask whoever decided whether they knew.",
      "Pregunte a quien decidió si lo sabía.",
      "Demander à qui a décidé s'il le savait.",
    ),
  },
  twoStayOnSide: {
    title: t(
      "Two cordons stay on one side",
      "Dos cordones quedan en un lado",
      "Deux cordons restent d'un côté",
    ),
    sentence: t(
      "A second cordon is to stay on the {choice} side; the first stands in row {otherRow} of the sheet.",
      "Un segundo cordón ha de quedar en el lado {choice}; el primero está en la fila {otherRow} de la hoja.",
      "Un second cordon doit rester du côté {choice} ; le premier est à la ligne {otherRow} de la feuille.",
    ),
    why: t(
      "One cordon a side fills the wire; two shade each other.",
      "Un cordón por lado llena el alambre; dos se dan sombra.",
      "Un cordon par côté remplit le fil ; deux se font de l'ombre.",
    ),
    remedy: t("Decide on one of the two.", "Decida por uno de los dos.", "Décider pour l'un des deux."),
  },
  positionsAppeared: {
    title: t(
      "Positions that were not there last year",
      "Posiciones que el año pasado no estaban",
      "Emplacements absents l'an dernier",
    ),
    sentence: t(
      "{now} positions, but {before} in {season} (sheet{otherSheet}, row {otherRow}), and the cordon has not grown that much.",
      "{now} posiciones, pero {before} en {season} (hoja{otherSheet}, fila {otherRow}), y el cordón no creció tanto.",
      "{now} emplacements, mais {before} en {season} (feuille{otherSheet}, ligne {otherRow}), et le cordon n'a pas tant grandi.",
    ),
    why: t(
      "Positions do not come back on old wood; one of the two counts is of another cordon.",
      "Las posiciones no vuelven en madera vieja; uno de los dos conteos es de otro cordón.",
      "Les emplacements ne reviennent pas sur du vieux bois ; l'un des comptages est d'un autre cordon.",
    ),
    remedy: LOOK,
  },
  trunkChangedPlace: {
    title: t(
      "Another trunk than last year",
      "Otro tronco que el año pasado",
      "Un autre tronc que l'an dernier",
    ),
    sentence: t(
      "Trunk {now}, but trunk {before} in {season} (sheet{otherSheet}, row {otherRow}).",
      "Tronco {now}, pero tronco {before} en {season} (hoja{otherSheet}, fila {otherRow}).",
      "Tronc {now}, mais tronc {before} en {season} (feuille{otherSheet}, ligne {otherRow}).",
    ),
    why: t(
      "A cordon stays on its trunk; trunks were numbered from the other end, or the letters changed.",
      "Un cordón sigue en su tronco; se numeró desde el otro lado o cambiaron las letras.",
      "Un cordon reste sur son tronc ; les troncs ont été numérotés de l'autre bout, ou les lettres ont changé.",
    ),
    remedy: LOOK,
  },
  vineCameBack: {
    title: t(
      "Missing last year, bearing now",
      "Faltante el año pasado, ahora en producción",
      "Manquant l'an dernier, en production",
    ),
    sentence: t(
      "The vine was missing in {season} (sheet{otherSheet}, row {otherRow}) and is called bearing now.",
      "La planta faltaba en {season} (hoja{otherSheet}, fila {otherRow}) y ahora figura en producción.",
      "Le cep manquait en {season} (feuille{otherSheet}, ligne {otherRow}) et est dit en production.",
    ),
    why: t(
      "A vine does not bear in the year after planting.",
      "Una planta no produce al año de plantarse.",
      "Un cep ne produit pas l'année après la plantation.",
    ),
    remedy: t(
      "Correct the status: replanted, young or missing.",
      "Corrija la situación: replantada, joven o faltante.",
      "Corriger la situation : replanté, jeune ou manquant.",
    ),
  },
};
