import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Where on the vine, by side. */
export const AT_SIDE: Readonly<Record<string, Text>> = {
  left: t("on the left", "a la izquierda", "à gauche"),
  right: t("on the right", "a la derecha", "à droite"),
  north: t("on the north side", "al norte", "au nord"),
  south: t("on the south side", "al sur", "au sud"),
  east: t("on the east side", "al este", "à l'est"),
  west: t("on the west side", "al oeste", "à l'ouest"),
};

/** A side by itself, as the head of a line. */
export const SIDE_WORDS: Readonly<Record<string, Text>> = {
  left: t("left", "izquierda", "gauche"),
  right: t("right", "derecha", "droite"),
  north: t("north", "norte", "nord"),
  south: t("south", "sur", "sud"),
  east: t("east", "este", "est"),
  west: t("west", "oeste", "ouest"),
};

export const VERDICT_WORDS: Readonly<Record<"stays" | "goes" | "ask", Text>> = {
  stays: t("stays", "queda", "reste"),
  goes: t("goes", "se corta", "part"),
  ask: t("ask", "preguntar", "à voir"),
};

export const CONDITION_WORDS: Readonly<Record<string, Text>> = {
  "": t("not noted as hurt", "sin daño anotado", "sans dégât noté"),
  sound: t("sound", "sano", "sain"),
  injured: t("injured", "dañado", "abîmé"),
  diseased: t("diseased", "enfermo", "malade"),
  dead: t("dead", "muerto", "mort"),
};

/** What must be counted, by part of the score. */
export const COUNT_WORDS: Readonly<Record<string, Text>> = {
  spurs: t("live spurs and length", "pitones vivos y largo", "coursons vivants et longueur"),
  stretch: t("longest gap", "hueco más largo", "plus long vide"),
  placing: t("where the spurs point", "hacia dónde apuntan los pitones", "orientation des coursons"),
  soundness: t("condition", "estado", "état"),
  diameter: t("diameter", "diámetro", "diamètre"),
  trunk: t("trunk", "tronco", "tronc"),
};

/** One count of one cordon. */
export const COUNT_OF: Text = t("{count} of {cordon}", "{count} de {cordon}", "{count} de {cordon}");

/** What speaks for a cordon over another. */
export const ARGUMENTS: Readonly<Record<string, Text>> = {
  spurs: t(
    "{mine} live spurs against {theirs}",
    "{mine} pitones vivos frente a {theirs}",
    "{mine} coursons vivants contre {theirs}",
  ),
  spursForLength: t(
    "{mine} live spurs on {mineLength} against {theirs} on {theirsLength}",
    "{mine} pitones vivos en {mineLength} frente a {theirs} en {theirsLength}",
    "{mine} coursons vivants sur {mineLength} contre {theirs} sur {theirsLength}",
  ),
  noStretch: t(
    "no gap against one of {theirs}",
    "ningún hueco frente a uno de {theirs}",
    "aucun vide contre un de {theirs}",
  ),
  stretch: t(
    "longest gap {mine} against {theirs}",
    "hueco más largo {mine} frente a {theirs}",
    "plus long vide {mine} contre {theirs}",
  ),
  placingDown: t(
    "{mine} of {mineOf} spurs point down or sideways against {theirs} of {theirsOf}",
    "{mine} de {mineOf} pitones apuntan abajo o de lado frente a {theirs} de {theirsOf}",
    "{mine} coursons sur {mineOf} tournés vers le bas ou de côté contre {theirs} sur {theirsOf}",
  ),
  placingUp: t(
    "{mine} of {mineOf} spurs point up against {theirs} of {theirsOf}",
    "{mine} de {mineOf} pitones apuntan arriba frente a {theirs} de {theirsOf}",
    "{mine} coursons sur {mineOf} tournés vers le haut contre {theirs} sur {theirsOf}",
  ),
  placing: t(
    "its spurs point the better way",
    "sus pitones apuntan mejor",
    "ses coursons sont mieux orientés",
  ),
  soundness: t(
    "it is {mine}, {other} is {theirs}",
    "está {mine}, {other} está {theirs}",
    "il est {mine}, {other} est {theirs}",
  ),
  diameter: t(
    "it is thicker, {mine} against {theirs}",
    "es más grueso, {mine} frente a {theirs}",
    "il est plus gros, {mine} contre {theirs}",
  ),
  ownTrunk: t(
    "it comes from trunk {trunk}, so that both cordons do not hang on trunk {shared}",
    "sale del tronco {trunk}, así los dos cordones no cuelgan del tronco {shared}",
    "il part du tronc {trunk}, ainsi les deux cordons ne tiennent pas au tronc {shared}",
  ),
  trunkUnknown: t(
    "it may come from a trunk of its own, but a trunk is not written down",
    "quizá sale de un tronco propio, pero falta anotar un tronco",
    "il part peut-être d'un tronc à lui, mais un tronc n'est pas noté",
  ),
  trunkCondition: t(
    "its trunk {trunk} is {mine}, trunk {otherTrunk} is {theirs}",
    "su tronco {trunk} está {mine}, el tronco {otherTrunk} está {theirs}",
    "son tronc {trunk} est {mine}, le tronc {otherTrunk} est {theirs}",
  ),
  sameTrunkHurt: t(
    "its trunk is {mine}, that of {other} is {theirs}",
    "su tronco está {mine}, el de {other} está {theirs}",
    "son tronc est {mine}, celui de {other} est {theirs}",
  ),
  nothing: t("nothing that was written down", "nada de lo anotado", "rien de ce qui est noté"),
};

/** What takes most from a cordon. */
export const WEAK_POINTS: Readonly<Record<string, Text>> = {
  spurs: t(
    "it carries {spurs} live spurs where its wire should carry {carry}",
    "lleva {spurs} pitones vivos donde su alambre debería llevar {carry}",
    "il porte {spurs} coursons vivants là où son fil devrait en porter {carry}",
  ),
  stretch: t(
    "it has a gap of {gap} positions",
    "tiene un hueco de {gap} posiciones",
    "il a un vide de {gap} emplacements",
  ),
  placing: t("its spurs point the wrong way", "sus pitones apuntan mal", "ses coursons sont mal orientés"),
  soundness: t("it is {condition}", "está {condition}", "il est {condition}"),
  diameter: t("it is too thin", "es demasiado fino", "il est trop mince"),
  trunkCondition: t(
    "its trunk {trunk} is {trunkCondition}",
    "su tronco {trunk} está {trunkCondition}",
    "son tronc {trunk} est {trunkCondition}",
  ),
};

/** Where a cane is laid from. */
export const CANE_ORIGINS: Readonly<Record<"trunk" | "otherTrunk" | "head" | "ground", Text>> = {
  trunk: t("from trunk {trunk}", "desde el tronco {trunk}", "depuis le tronc {trunk}"),
  otherTrunk: t(
    "from the live trunk that carries no cordon",
    "desde el tronco vivo que no lleva cordón",
    "depuis le tronc vivant qui ne porte pas de cordon",
  ),
  head: t("from the head", "desde la cabeza", "depuis la tête"),
  ground: t("from a sucker at the ground", "desde un chupón del suelo", "depuis un gourmand du sol"),
};

/** Why a cordon stays, goes or is asked about, by reason code. */
export const REASONS: Readonly<Record<string, Text>> = {
  better: t("Keep {cordon} {at}: {mine}.", "Dejar {cordon} {at}: {mine}.", "Garder {cordon} {at} : {mine}."),
  betterDespite: t(
    "Keep {cordon} {at}: {mine}. In favour of {rival}: {theirs}.",
    "Dejar {cordon} {at}: {mine}. A favor de {rival}: {theirs}.",
    "Garder {cordon} {at} : {mine}. Pour {rival} : {theirs}.",
  ),
  onlyOne: t(
    "Keep {cordon} {at}: it is the only one there and worth keeping.",
    "Dejar {cordon} {at}: es el único ahí y vale la pena.",
    "Garder {cordon} {at} : c'est le seul et il vaut la peine.",
  ),
  building: t(
    "Keep {cordon} {at}: the vine is young and its cordon is still being built.",
    "Dejar {cordon} {at}: la planta es joven y su cordón aún se forma.",
    "Garder {cordon} {at} : le cep est jeune et son cordon se forme encore.",
  ),
  fixedStays: t(
    "Keep {cordon} {at}: a person has decided it.",
    "Dejar {cordon} {at}: lo decidió una persona.",
    "Garder {cordon} {at} : quelqu'un l'a décidé.",
  ),
  fixedStaysDead: t(
    "Keep {cordon} {at}, as a person has decided; but it or its trunk is written down as dead, so look again.",
    "Dejar {cordon} {at}, como decidió una persona; pero consta como muerto, él o su tronco: mirar otra vez.",
    "Garder {cordon} {at}, comme quelqu'un l'a décidé ; mais il est noté mort, lui ou son tronc : à revoir.",
  ),
  worse: t(
    "Cut {cordon} {at}; {rival} is better: {theirs}.",
    "Cortar {cordon} {at}; {rival} es mejor: {theirs}.",
    "Couper {cordon} {at} ; {rival} est meilleur : {theirs}.",
  ),
  worseDespite: t(
    "Cut {cordon} {at}; {rival} is better: {theirs}. In favour of {cordon}: {mine}.",
    "Cortar {cordon} {at}; {rival} es mejor: {theirs}. A favor de {cordon}: {mine}.",
    "Couper {cordon} {at} ; {rival} est meilleur : {theirs}. Pour {cordon} : {mine}.",
  ),
  fixedGoes: t(
    "Cut {cordon} {at}: a person has decided it.",
    "Cortar {cordon} {at}: lo decidió una persona.",
    "Couper {cordon} {at} : quelqu'un l'a décidé.",
  ),
  besideFixed: t(
    "Cut {cordon} {at}: a person has decided that {rival} stays there.",
    "Cortar {cordon} {at}: una persona decidió que ahí queda {rival}.",
    "Couper {cordon} {at} : quelqu'un a décidé que {rival} y reste.",
  ),
  dead: t(
    "Cut {cordon} {at}: it is dead.",
    "Cortar {cordon} {at}: está muerto.",
    "Couper {cordon} {at} : il est mort.",
  ),
  trunkDead: t(
    "Cut {cordon} {at}: its trunk {trunk} is dead.",
    "Cortar {cordon} {at}: su tronco {trunk} está muerto.",
    "Couper {cordon} {at} : son tronc {trunk} est mort.",
  ),
  remnant: t(
    "Cut {cordon} {at}: at {length} it is a remnant at the head, not a cordon.",
    "Cortar {cordon} {at}: con {length} es un resto en la cabeza, no un cordón.",
    "Couper {cordon} {at} : à {length}, c'est un reste à la tête, pas un cordon.",
  ),
  notWorthKeeping: t(
    "Cut {cordon} {at} and lay a cane {from}: {weak}.",
    "Cortar {cordon} {at} y tender un sarmiento {from}: {weak}.",
    "Couper {cordon} {at} et coucher un sarment {from} : {weak}.",
  ),
  notWorthKeepingOwnTrunk: t(
    "Cut {cordon} {at} and lay a cane {from}: {weak}, and the new cane brings a trunk of its own.",
    "Cortar {cordon} {at} y tender un sarmiento {from}: {weak}, y el sarmiento nuevo trae un tronco propio.",
    "Couper {cordon} {at} et coucher un sarment {from} : {weak}, et le nouveau sarment apporte un tronc à lui.",
  ),
  closeCall: t(
    "Look at the vine: {cordon} and {rival} {at} are close. For {cordon}: {mine}. For {rival}: {theirs}.",
    "Mirar la planta: {cordon} y {rival} {at} están parejos. A favor de {cordon}: {mine}. A favor de {rival}: {theirs}.",
    "Regarder le cep : {cordon} et {rival} {at} se valent presque. Pour {cordon} : {mine}. Pour {rival} : {theirs}.",
  ),
  closeCallForMine: t(
    "Look at the vine: {cordon} and {rival} {at} are close. For {cordon}: {mine}.",
    "Mirar la planta: {cordon} y {rival} {at} están parejos. A favor de {cordon}: {mine}.",
    "Regarder le cep : {cordon} et {rival} {at} se valent presque. Pour {cordon} : {mine}.",
  ),
  closeCallForTheirs: t(
    "Look at the vine: {cordon} and {rival} {at} are close. For {rival}: {theirs}.",
    "Mirar la planta: {cordon} y {rival} {at} están parejos. A favor de {rival}: {theirs}.",
    "Regarder le cep : {cordon} et {rival} {at} se valent presque. Pour {rival} : {theirs}.",
  ),
  tie: t(
    "Look at the vine: {cordon} and {rival} {at} are equal in all that was written down.",
    "Mirar la planta: {cordon} y {rival} {at} son iguales en todo lo anotado.",
    "Regarder le cep : {cordon} et {rival} {at} sont égaux en tout ce qui est noté.",
  ),
  goTogether: t(
    "{cordon} goes with {mineWith}, {rival} with {theirsWith}.",
    "{cordon} va con {mineWith}, {rival} con {theirsWith}.",
    "{cordon} va avec {mineWith}, {rival} avec {theirsWith}.",
  ),
  closeToNewCane: t(
    "Look at the vine: {cordon} {at} may be worth keeping, or a new cane may be better; {weak}.",
    "Mirar la planta: {cordon} {at} quizá valga la pena, o quizá sea mejor un sarmiento nuevo; {weak}.",
    "Regarder le cep : {cordon} {at} vaut peut-être la peine, ou un nouveau sarment serait mieux ; {weak}.",
  ),
  missingCounts: t(
    "Look again: {cordon} and {rival} {at} cannot be told apart before this is written down: {missing}.",
    "Volver a mirar: {cordon} y {rival} {at} no se distinguen sin anotar esto: {missing}.",
    "Y retourner : {cordon} et {rival} {at} ne se départagent pas avant d'avoir noté : {missing}.",
  ),
  missingCountsAlone: t(
    "Look again: {cordon} {at} cannot be judged before this is written down: {missing}.",
    "Volver a mirar: {cordon} {at} no se puede juzgar sin anotar esto: {missing}.",
    "Y retourner : {cordon} {at} ne se juge pas avant d'avoir noté : {missing}.",
  ),
  recount: t(
    "Count this vine again; nothing is decided on it before these cells are right: {cells}.",
    "Volver a contar esta planta; nada se decide en ella hasta que estas celdas estén bien: {cells}.",
    "Recompter ce cep ; rien n'y est décidé avant que ces cellules soient justes : {cells}.",
  ),
  sidesUnclear: t(
    "Write down the side of {cordon} again: the cordons of a vine lie left and right, or on two opposite compass sides.",
    "Anotar otra vez el lado de {cordon}: los cordones de una planta van a izquierda y derecha, o a dos rumbos opuestos.",
    "Noter de nouveau le côté de {cordon} : les cordons d'un cep vont à gauche et à droite, ou de deux côtés opposés.",
  ),
  vineMissing: t(
    "Look at the place: the vine is listed as missing, but cordon {cordon} was counted on it.",
    "Mirar el lugar: la planta consta como faltante, pero se contó el cordón {cordon}.",
    "Regarder la place : le cep est noté manquant, mais le cordon {cordon} y a été compté.",
  ),
  namedTwice: t(
    "Look at the sheet: two cordons {at} are both named {cordon}.",
    "Mirar la hoja: dos cordones {at} se llaman {cordon}.",
    "Regarder la feuille : deux cordons {at} s'appellent {cordon}.",
  ),
};

/** What is done on a side. */
export const SIDE_LINES: Readonly<Record<"stays" | "ask" | "lay" | "layAsk", Text>> = {
  stays: t("{cordon} stays {at}.", "{cordon} queda {at}.", "{cordon} reste {at}."),
  ask: t(
    "{cordon} {at}, if the person who looks agrees.",
    "{cordon} {at}, si quien mira está de acuerdo.",
    "{cordon} {at}, si la personne qui regarde est d'accord.",
  ),
  lay: t("Lay a cane {at} {from}.", "Tender un sarmiento {at} {from}.", "Coucher un sarment {at} {from}."),
  layAsk: t(
    "Lay a cane {at} {from}, if the person who looks agrees.",
    "Tender un sarmiento {at} {from}, si quien mira está de acuerdo.",
    "Coucher un sarment {at} {from}, si la personne qui regarde est d'accord.",
  ),
};

/** One cut of the cut list. */
export const CUT_LINES: Readonly<Record<"head" | "trunk" | "keepCane", Text>> = {
  head: t(
    "Cut {cordon} {at} from the outer end back to the head.",
    "Cortar {cordon} {at} desde la punta hasta la cabeza.",
    "Couper {cordon} {at} du bout jusqu'à la tête.",
  ),
  trunk: t(
    "Cut {cordon} {at} from the outer end back to the head, and take out the dead trunk {trunk}.",
    "Cortar {cordon} {at} desde la punta hasta la cabeza, y sacar el tronco muerto {trunk}.",
    "Couper {cordon} {at} du bout jusqu'à la tête, et enlever le tronc mort {trunk}.",
  ),
  keepCane: t(
    "Cut {cordon} {at} from the outer end towards the trunk, and stop at the first good cane that can be laid.",
    "Cortar {cordon} {at} desde la punta hacia el tronco, y parar en el primer sarmiento bueno que se pueda tender.",
    "Couper {cordon} {at} du bout vers le tronc, et s'arrêter au premier bon sarment qui peut être couché.",
  ),
};

/** What holds for the vine as a whole. */
export const VINE_NOTES: Readonly<Record<string, Text>> = {
  oneTrunk: t(
    "One live trunk is written down for this vine; bring up a second.",
    "Solo consta un tronco vivo en esta planta; criar un segundo.",
    "Un seul tronc vivant est noté pour ce cep ; en élever un second.",
  ),
  bothOnOneTrunk: t(
    "Both cordons hang on trunk {trunk}.",
    "Los dos cordones cuelgan del tronco {trunk}.",
    "Les deux cordons tiennent au tronc {trunk}.",
  ),
  everyTrunkHurt: t(
    "Every live trunk of this vine is hurt; bring up suckers for new ones.",
    "Todos los troncos vivos de esta planta están dañados; criar chupones para otros nuevos.",
    "Tous les troncs vivants de ce cep sont touchés ; élever des gourmands pour en refaire.",
  ),
  noLiveTrunk: t(
    "No trunk of this vine is alive; keep about five suckers and train one.",
    "Ningún tronco de esta planta vive; dejar unos cinco chupones y formar uno.",
    "Aucun tronc de ce cep n'est vivant ; garder environ cinq gourmands et en former un.",
  ),
  trainingMissing: t(
    "The block's training system is not written down, so where the spurs point was not weighed.",
    "Falta el sistema de conducción del cuartel, así que no se pesó hacia dónde apuntan los pitones.",
    "Le mode de conduite de la parcelle n'est pas noté : l'orientation des coursons n'a pas compté.",
  ),
  leftOut: t(
    "Not counted on this vine, so not weighed: {parts}.",
    "No contado en esta planta, así que no pesa: {parts}.",
    "Pas compté sur ce cep, donc sans poids : {parts}.",
  ),
  fixedTwice: t(
    "{cordons} {at} are all fixed to stay.",
    "{cordons} {at} están todos fijados para quedar.",
    "{cordons} {at} sont tous fixés pour rester.",
  ),
  recount: t(
    "Recount this vine before anything is cut on it: {cells}.",
    "Recontar esta planta antes de cortar nada en ella: {cells}.",
    "Recompter ce cep avant d'y couper quoi que ce soit : {cells}.",
  ),
  sidesUnclear: t(
    "The sides of this vine do not fit together, so nothing is decided.",
    "Los lados de esta planta no cuadran, así que no se decide nada.",
    "Les côtés de ce cep ne vont pas ensemble : rien n'est décidé.",
  ),
  vineMissing: t(
    "The vine is listed as missing, so nothing is decided.",
    "La planta consta como faltante, así que no se decide nada.",
    "Le cep est noté manquant : rien n'est décidé.",
  ),
  vineYoung: t(
    "The vine is young: its cordons are measured by their own length only.",
    "La planta es joven: sus cordones se miden solo por su propio largo.",
    "Le cep est jeune : ses cordons sont mesurés à leur seule longueur.",
  ),
};

/** Joins the parts of one argument list. */
export const AND: Text = t("; ", "; ", " ; ");
