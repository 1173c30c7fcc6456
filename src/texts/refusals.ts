import type { Text } from "./language";
import { OUTLOOK_REFUSALS } from "./outlookRefusals";

/** One sentence per refusal code of src/domain: it names the argument, what was given and what was expected. */
export const REFUSALS: Readonly<Record<string, Text>> = {
  ...OUTLOOK_REFUSALS,
  outside: {
    en: "{argument} must lie between {least} and {most} {unit}, but is {value}.",
    es: "{argument} debe estar entre {least} y {most} {unit}, pero es {value}.",
    fr: "{argument} doit être compris entre {least} et {most} {unit}, mais vaut {value}.",
  },
  notWhole: {
    en: "{argument} must be a whole number from {least} to {most}, but is {value}.",
    es: "{argument} debe ser un número entero de {least} a {most}, pero es {value}.",
    fr: "{argument} doit être un nombre entier de {least} à {most}, mais vaut {value}.",
  },
  formulaNotBalanced: {
    en: 'The formula must read like 30+10 (nodes for the first pound, then for each further pound), but is "{value}".',
    es: 'La fórmula debe leerse como 30+10 (yemas por la primera libra y por cada libra más), pero es "{value}".',
    fr: "La formule doit se lire comme 30+10 (yeux pour la première livre, puis par livre de plus), mais vaut « {value} ».",
  },
  belowOnePound: {
    en: "The prunings weigh {value} lb: no source seen says how many nodes to leave below one pound; choose flat or pro rata to get our own figure.",
    es: "La poda pesa {value} lb: ninguna fuente vista dice cuántas yemas dejar por debajo de una libra; elija fijo o proporcional para una cifra nuestra.",
    fr: "Le bois de taille pèse {value} lb : aucune source vue ne dit combien d'yeux laisser sous une livre ; choisissez fixe ou proportionnel pour un chiffre à nous.",
  },
  leastAboveMost: {
    en: "The least number of nodes ({least}) is above the most ({most}).",
    es: "El mínimo de yemas ({least}) es mayor que el máximo ({most}).",
    fr: "Le minimum d'yeux ({least}) dépasse le maximum ({most}).",
  },
  noPrunings: {
    en: "The prunings weigh nothing, so no crop load can be given: weigh the prunings of the same vines.",
    es: "La poda pesa cero, así que no hay relación de carga: pese la poda de las mismas plantas.",
    fr: "Le bois de taille pèse zéro, donc pas de rapport de charge : pesez le bois des mêmes ceps.",
  },
  noBudsCut: {
    en: "No bud was cut, so nothing can be said about injury.",
    es: "No se cortó ninguna yema, así que no se puede decir nada del daño.",
    fr: "Aucun bourgeon n'a été coupé, on ne peut donc rien dire des dégâts.",
  },
  unknownInjuryRule: {
    en: '"{value}" is not an injury rule; known are: {known}.',
    es: '"{value}" no es una regla de daño; se conocen: {known}.',
    fr: "« {value} » n'est pas une règle de dégâts ; sont connues : {known}.",
  },
  cornellAbove80: {
    en: "{percent} % of the primary buds are dead: what Cornell 2014 says above 80 % was not seen, so it gives no number here.",
    es: "El {percent} % de las yemas primarias está muerto: lo que Cornell 2014 dice por encima del 80 % no se vio, así que no da cifra aquí.",
    fr: "{percent} % des bourgeons primaires sont morts : ce que dit Cornell 2014 au-dessus de 80 % n'a pas été vu, donc pas de chiffre ici.",
  },
  msuBetween15And20: {
    en: "{percent} % of the primary buds are dead: MSU 2002 covers up to 15 % and from 20 %, but nothing between.",
    es: "El {percent} % de las yemas primarias está muerto: MSU 2002 cubre hasta 15 % y desde 20 %, pero nada entre medio.",
    fr: "{percent} % des bourgeons primaires sont morts : MSU 2002 couvre jusqu'à 15 % et dès 20 %, mais rien entre les deux.",
  },
  msuAbove50: {
    en: "{percent} % of the primary buds are dead: above 50 % MSU 2002 gives no number but says to take off only unmanageable growth, wait until after budbreak, then prune lightly to the live nodes wanted.",
    es: "El {percent} % de las yemas primarias está muerto: por encima del 50 % MSU 2002 no da cifra, sino que pide quitar solo lo inmanejable, esperar a después de la brotación y podar ligero hasta las yemas vivas deseadas.",
    fr: "{percent} % des bourgeons primaires sont morts : au-dessus de 50 % MSU 2002 ne donne pas de chiffre mais dit de n'ôter que le bois ingérable, d'attendre après le débourrement, puis de tailler légèrement aux yeux vivants voulus.",
  },
  purdueTwoRows: {
    en: "{percent} % of the primary buds are dead: Purdue's table prints that share in two rows, one giving {first} nodes and the other {second}; it does not say which holds.",
    es: "El {percent} % de las yemas primarias está muerto: la tabla de Purdue pone esa parte en dos filas, una con {first} yemas y otra con {second}; no dice cuál vale.",
    fr: "{percent} % des bourgeons primaires sont morts : le tableau de Purdue met cette part dans deux lignes, l'une donnant {first} yeux et l'autre {second} ; il ne dit pas laquelle vaut.",
  },
  purdueAbove50: {
    en: "{percent} % of the primary buds are dead: above 50 % Purdue gives no number but asks for minimal pruning.",
    es: "El {percent} % de las yemas primarias está muerto: por encima del 50 % Purdue no da cifra, sino que pide una poda mínima.",
    fr: "{percent} % des bourgeons primaires sont morts : au-dessus de 50 % Purdue ne donne pas de chiffre mais demande une taille minimale.",
  },
  northernGrapesNoNumber: {
    en: "{percent} % of the primary buds are dead: above 20 % Northern Grapes 2014 says to leave more nodes, but not how many.",
    es: "El {percent} % de las yemas primarias está muerto: por encima del 20 % Northern Grapes 2014 pide dejar más yemas, pero no dice cuántas.",
    fr: "{percent} % des bourgeons primaires sont morts : au-dessus de 20 % Northern Grapes 2014 dit de laisser plus d'yeux, mais pas combien.",
  },
  allDead: {
    en: "Every primary bud is dead: no number of nodes makes up for that.",
    es: "Todas las yemas primarias están muertas: ningún número de yemas lo compensa.",
    fr: "Tous les bourgeons primaires sont morts : aucun nombre d'yeux ne le compense.",
  },
  tooFewVines: {
    en: "{value} counted vines are too few to say how sure a mean is; at least {needed} are needed.",
    es: "{value} plantas contadas son muy pocas para decir cuán segura es una media; se necesitan al menos {needed}.",
    fr: "{value} ceps comptés sont trop peu pour dire la sûreté d'une moyenne ; il en faut au moins {needed}.",
  },
  spursAbovePositions: {
    en: "Block {block}, row {row}, vine {vine}: {value} live spurs on {most} positions cannot be.",
    es: "Cuartel {block}, hilera {row}, planta {vine}: {value} pitones vivos en {most} posiciones no puede ser.",
    fr: "Parcelle {block}, rang {row}, cep {vine} : {value} coursons vivants sur {most} emplacements, c'est impossible.",
  },
  nothingToScore: {
    en: "Nothing that was counted on cordon {cordon} can be scored; its live spurs and length are needed at least.",
    es: "Nada de lo contado en el cordón {cordon} se puede puntuar; hacen falta al menos pitones vivos y largo.",
    fr: "Rien de ce qui a été compté sur le cordon {cordon} ne peut être noté ; il faut au moins les coursons vivants et la longueur.",
  },
  noVineSpacing: {
    en: "The Blocks sheet names no vine spacing, which the rule by length needs.",
    es: "La hoja Cuarteles no indica la distancia entre plantas, que la regla por longitud necesita.",
    fr: "La feuille Parcelles n'indique pas l'écartement des ceps, dont la règle par longueur a besoin.",
  },
  noVineWeighed: {
    en: "No vine of the block was weighed, so a balanced formula has nothing to go by.",
    es: "No se pesó ninguna planta del cuartel, así que la fórmula no tiene de qué partir.",
    fr: "Aucun cep de la parcelle n'a été pesé : la formule n'a pas de base.",
  },
};
