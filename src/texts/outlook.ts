import type { Text } from "./language";

/** Stages of a season, as headings. */
export const STAGE_NAMES = {
  winter: { en: "Winter: nodes left", es: "Invierno: yemas dejadas", fr: "Hiver : yeux laissés" },
  shoots: { en: "Shoots counted", es: "Brotes contados", fr: "Pousses comptées" },
  clusters: { en: "Clusters counted", es: "Racimos contados", fr: "Grappes comptées" },
  lagPhase: {
    en: "Lag phase: clusters weighed",
    es: "Fase de pausa: racimos pesados",
    fr: "Phase de pause : grappes pesées",
  },
  harvest: { en: "Harvest", es: "Cosecha", fr: "Récolte" },
} as const satisfies Readonly<Record<string, Text>>;

/** Sources of spread, in words. */
export const SPREAD_SOURCES = {
  vines: { en: "which vines were counted", es: "qué plantas se contaron", fr: "quels ceps ont été comptés" },
  buds: { en: "which buds were cut", es: "qué yemas se cortaron", fr: "quels bourgeons ont été coupés" },
  budbreak: { en: "budbreak of this year", es: "la brotación de este año", fr: "le débourrement de l'année" },
  clustersPerShoot: {
    en: "clusters a shoot of this year",
    es: "los racimos por brote de este año",
    fr: "les grappes par pousse de l'année",
  },
  clusterWeight: { en: "weight of a cluster", es: "el peso del racimo", fr: "le poids d'une grappe" },
  lagMultiplier: {
    en: "growth from lag phase to harvest",
    es: "el crecimiento desde la fase de pausa",
    fr: "la croissance depuis la phase de pause",
  },
  missing: { en: "missing vines", es: "las plantas faltantes", fr: "les ceps manquants" },
} as const satisfies Readonly<Record<string, Text>>;

/** What more of a sample would bring: {more} {minutes} {low} {high} {percent}. */
export const NEXT_STEPS = {
  vines: {
    en: "Count {more} more vines ({minutes} min): {low} to {high}, {percent} % either way.",
    es: "Contar {more} plantas más ({minutes} min): de {low} a {high}, {percent} % a cada lado.",
    fr: "Compter {more} ceps de plus ({minutes} min) : de {low} à {high}, {percent} % de part et d'autre.",
  },
  canes: {
    en: "Cut the buds of {more} more canes ({minutes} min): {low} to {high}, {percent} % either way.",
    es: "Cortar las yemas de {more} sarmientos más ({minutes} min): de {low} a {high}, {percent} % a cada lado.",
    fr: "Couper les bourgeons de {more} sarments de plus ({minutes} min) : de {low} à {high}, {percent} % de part et d'autre.",
  },
  clusters: {
    en: "Weigh {more} more clusters ({minutes} min): {low} to {high}, {percent} % either way.",
    es: "Pesar {more} racimos más ({minutes} min): de {low} a {high}, {percent} % a cada lado.",
    fr: "Peser {more} grappes de plus ({minutes} min) : de {low} à {high}, {percent} % de part et d'autre.",
  },
} as const satisfies Readonly<Record<string, Text>>;

/** What the sheets lack for an outlook, by the code in outlookInputs. */
export const OUTLOOK_LACKS: Readonly<Record<string, Text>> = {
  vinesOfBlock: {
    en: "How many vines the block has is not known: fill in Vines in the Blocks sheet, or list them in the Vines sheet.",
    es: "No se sabe cuántas plantas tiene el cuartel: llene Plantas en la hoja Cuarteles o enumérelas en la hoja Plantas.",
    fr: "Le nombre de ceps de la parcelle n'est pas connu : remplissez Ceps dans la feuille Parcelles, ou listez-les dans la feuille Ceps.",
  },
  clusterWeight: {
    en: "No cluster weight: fill in the Blocks sheet; none was published for most cold-hardy cultivars.",
    es: "Falta el peso del racimo: llénelo en la hoja Cuarteles; no hay dato publicado para la mayoría de las variedades resistentes al frío.",
    fr: "Pas de poids de grappe : remplissez la feuille Parcelles ; rien n'a été publié pour la plupart des cépages rustiques.",
  },
  countedVines: {
    en: "Fewer than two vines have counts: decide their cordons, or count shoots or clusters on a drawn sample.",
    es: "Menos de dos plantas tienen conteos: decida sus cordones, o cuente brotes o racimos en una muestra.",
    fr: "Moins de deux ceps ont des comptages : décidez de leurs cordons, ou comptez pousses ou grappes sur un échantillon.",
  },
  decidedVines: {
    en: "The cordons of fewer than two vines are decided, so the nodes left are not known.",
    es: "Los cordones de menos de dos plantas están decididos, así que no se sabe cuántas yemas quedan.",
    fr: "Les cordons de moins de deux ceps sont décidés, les yeux laissés ne sont donc pas connus.",
  },
  budCuts: {
    en: "No buds were cut in this block: every node is taken as alive, so the winter's figure is too high after a hard one.",
    es: "No se cortaron yemas en este cuartel: se toman todas por vivas; tras un invierno duro la cifra es demasiado alta.",
    fr: "Aucun bourgeon n'a été coupé ici : tous les yeux sont tenus pour vivants ; après un hiver dur le chiffre est trop haut.",
  },
  register: {
    en: "The Vines sheet lists no vine of this block: no vine is taken as missing.",
    es: "La hoja Plantas no tiene plantas de este cuartel: ninguna se toma por faltante.",
    fr: "La feuille Ceps ne liste aucun cep de cette parcelle : aucun n'est tenu pour manquant.",
  },
  rowsOfVines: {
    en: "Rows cannot be taken as strata, because the Vines sheet does not list every vine: the counted vines are taken as drawn at random.",
    es: "No se pueden tomar hileras como estratos porque la hoja Plantas no las enumera todas: se toman como elegidas al azar.",
    fr: "Les rangs ne peuvent servir de strates car la feuille Ceps ne liste pas tous les ceps : ils sont tenus pour tirés au hasard.",
  },
};

/** Names of the groups of vines for thinning, lightest first. */
export const THINNING_GROUPS: readonly Text[] = [
  { en: "light vines", es: "plantas ligeras", fr: "ceps légers" },
  { en: "middle vines", es: "plantas medias", fr: "ceps moyens" },
  { en: "heavy vines", es: "plantas cargadas", fr: "ceps chargés" },
];

/** Where crop load lies against its range: {load} {low} {high} {range}. */
export const CROP_LOAD_VERDICTS = {
  below: {
    en: "Crop load {load} lies below {low} to {high} ({range}): the vines could carry more.",
    es: "La relación de carga {load} está por debajo de {low} a {high} ({range}): las plantas podrían llevar más.",
    fr: "Le rapport de charge {load} est sous {low} à {high} ({range}) : les ceps pourraient porter plus.",
  },
  within: {
    en: "Crop load {load} lies within {low} to {high} ({range}).",
    es: "La relación de carga {load} está dentro de {low} a {high} ({range}).",
    fr: "Le rapport de charge {load} est dans {low} à {high} ({range}).",
  },
  above: {
    en: "Crop load {load} lies above {low} to {high} ({range}): overcropped for the size of the vines.",
    es: "La relación de carga {load} está por encima de {low} a {high} ({range}): demasiada carga para el tamaño de las plantas.",
    fr: "Le rapport de charge {load} est au-dessus de {low} à {high} ({range}) : trop de charge pour la taille des ceps.",
  },
} as const satisfies Readonly<Record<string, Text>>;

/** Said beside a crop load verdict when the range of the crop reaches over a limit. */
export const CROP_LOAD_UNSURE: Text = {
  en: "The range of the crop reaches over a limit, so this may turn.",
  es: "El rango de la cosecha pasa de un límite, así que esto puede cambiar.",
  fr: "La fourchette de la récolte dépasse une limite, cela peut donc changer.",
};

/** Why missing vines are not counted as zero. */
export const MISSING_TWICE: Text = {
  en: "Count bearing vines only. A missing vine counted as 0 and taken off again as missing is lost twice: with {percent} % missing the crop comes out {percent} % too low.",
  es: "Cuente solo plantas productivas. Una planta faltante contada como 0 y descontada otra vez se pierde dos veces: con {percent} % faltante la cosecha sale {percent} % baja.",
  fr: "Ne comptez que les ceps en production. Un cep manquant compté 0 puis retiré encore est perdu deux fois : avec {percent} % de manquants la récolte sort {percent} % trop basse.",
};

/** What handbooks say to count, beside the calculated number: {vines} {clusters} {percent}. */
export const HANDBOOK_SAMPLES: Readonly<Record<string, Text>> = {
  wsu2006: {
    en: "WSU 2006: {vines} vines for 5 %; that is the sample for a share of one half, not for a mean.",
    es: "WSU 2006: {vines} plantas para 5 %; esa es la muestra para una proporción de la mitad, no para una media.",
    fr: "WSU 2006 : {vines} ceps pour 5 % ; c'est l'échantillon pour une part de moitié, pas pour une moyenne.",
  },
  iowa2011: {
    en: "Iowa State 2011: all clusters on {vines} vines and {clusters} weighed, for 15 %; a little light by the formula.",
    es: "Iowa State 2011: todos los racimos de {vines} plantas y {clusters} pesados, para 15 %; algo escaso según la fórmula.",
    fr: "Iowa State 2011 : toutes les grappes de {vines} ceps et {clusters} pesées, pour 15 % ; un peu juste selon la formule.",
  },
  iowa2013: {
    en: "Iowa State 2013: {clusters} clusters weighed at lag phase.",
    es: "Iowa State 2013: {clusters} racimos pesados en fase de pausa.",
    fr: "Iowa State 2013 : {clusters} grappes pesées en phase de pause.",
  },
};

/** A figure of the farm's own, proposed: {figure} {cultivar} {years} {now} {value} {percent}. */
export const FARM_FIGURES: Readonly<Record<string, Text>> = {
  clustersPerShoot: { en: "Clusters a shoot", es: "Racimos por brote", fr: "Grappes par pousse" },
  budbreak: { en: "Budbreak", es: "Brotación", fr: "Débourrement" },
  clusterWeight: { en: "Cluster weight", es: "Peso del racimo", fr: "Poids de grappe" },
  lagMultiplier: {
    en: "Lag phase multiplier",
    es: "Multiplicador de la fase de pausa",
    fr: "Multiplicateur de la phase de pause",
  },
};

/** How a proposed figure was made. */
export const FARM_FIGURE_WEIGHT: Text = {
  en: "{years} years of your own count {percent} %, the usual figure {usual} the rest.",
  es: "{years} años propios cuentan {percent} %, la cifra usual {usual} el resto.",
  fr: "{years} années à vous comptent {percent} %, le chiffre usuel {usual} le reste.",
};
