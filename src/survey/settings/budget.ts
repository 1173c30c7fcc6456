import type { Setting } from "../setting";
import { BELOW_ONE_POUND } from "../../domain/nodeBudget";
import { INJURY_RULES } from "../../domain/nodesAfterInjury";
import { INTERVAL_METHODS } from "../../domain/proportionInterval";

/** Settings for node budgets, injury and spur fit. */
export const BUDGET_SETTINGS: readonly Setting[] = [
  {
    id: "Node rule",
    value: "30+10",
    unit: "",
    source: "ohio2023",
    meaning: {
      en: "Rule for blocks that name none: a formula like 30+10 (American; French hybrids 20+10, new hybrids 20+20 by the same source), by length, or a number of nodes.",
      es: "Regla para cuarteles sin regla: fórmula como 30+10 (americanas; híbridos franceses 20+10, híbridos nuevos 20+20 según la misma fuente), por longitud o un número de yemas.",
      fr: "Règle des parcelles sans règle : formule comme 30+10 (américains ; hybrides français 20+10, nouveaux hybrides 20+20 selon la même source), par longueur ou un nombre d'yeux.",
    },
  },
  {
    id: "Below one pound",
    value: "refuse",
    unit: "",
    source: "ours",
    choices: BELOW_ONE_POUND,
    meaning: {
      en: "Vines with less than a pound of prunings: refuse (no number; no source seen covers them), flat (the first pound's nodes) or proRata (those times the weight).",
      es: "Plantas con menos de una libra de poda: refuse (sin cifra; ninguna fuente vista las cubre), flat (las yemas de la primera libra) o proRata (esas por el peso).",
      fr: "Ceps de moins d'une livre de bois : refuse (pas de chiffre ; aucune source vue ne les couvre), flat (les yeux de la première livre) ou proRata (ceux-ci fois le poids).",
    },
  },
  {
    id: "Least nodes a vine",
    value: 0,
    unit: "nodes",
    source: "ours",
    least: 0,
    most: 500,
    meaning: {
      en: "A budget below this is raised to it; 0 raises none. No published limit was seen.",
      es: "Un presupuesto menor se sube a esta cifra; 0 no sube ninguno. No se vio límite publicado.",
      fr: "Un budget plus bas est relevé à ce chiffre ; 0 n'en relève aucun. Aucune limite publiée n'a été vue.",
    },
  },
  {
    id: "Most nodes a vine",
    value: 60,
    unit: "nodes",
    source: "from memory, unverified",
    least: 1,
    most: 500,
    meaning: {
      en: "A budget above this is cut to it. Often quoted as 50 to 60, Concord 90 and more; no published limit was seen.",
      es: "Un presupuesto mayor se recorta a esta cifra. Se oye 50 a 60, Concord 90 o más; no se vio límite publicado.",
      fr: "Un budget plus haut est ramené à ce chiffre. On cite 50 à 60, Concord 90 et plus ; aucune limite publiée n'a été vue.",
    },
  },
  {
    id: "Nodes by length",
    value: 5,
    unit: "nodes/ft",
    source: "ohio2023",
    least: 0,
    most: 18,
    meaning: {
      en: "Nodes on each foot of vine spacing for the rule by length; the source gives 4 to 6.",
      es: "Yemas por pie de separación entre plantas para la regla por longitud; la fuente da 4 a 6.",
      fr: "Yeux par pied d'écartement des ceps pour la règle par longueur ; la source donne 4 à 6.",
    },
  },
  {
    id: "Injury rule",
    value: "Cornell 2014",
    unit: "",
    source: "cornell2014",
    choices: INJURY_RULES,
    meaning: {
      en: "Rule that corrects the budget for dead primary buds in blocks that name none. The rules disagree; none is averaged.",
      es: "Regla que corrige por yemas primarias muertas donde el cuartel no nombra otra. Las reglas discrepan; no se promedian.",
      fr: "Règle qui corrige pour les bourgeons primaires morts où la parcelle n'en nomme pas. Les règles divergent ; aucune moyenne.",
    },
  },
  {
    id: "Interval for dead buds",
    value: "Wilson",
    unit: "",
    source: "wilson1927",
    choices: INTERVAL_METHODS,
    meaning: {
      en: "How the range around a share of dead buds is made: Wilson, or the wider Clopper-Pearson.",
      es: "Cómo se hace el rango de la parte de yemas muertas: Wilson, o el más ancho Clopper-Pearson.",
      fr: "Comment se fait la fourchette de la part de bourgeons morts : Wilson, ou Clopper-Pearson, plus large.",
    },
  },
  {
    id: "Confidence of ranges",
    value: 0.9,
    unit: "share",
    source: "ours",
    least: 0.5,
    most: 0.9999,
    meaning: {
      en: "How often a range shall hold the true figure: 0.9 is nine blocks in ten.",
      es: "Cuántas veces el rango debe contener la cifra real: 0.9 es nueve cuarteles de diez.",
      fr: "Combien de fois la fourchette doit contenir le vrai chiffre : 0,9, c'est neuf parcelles sur dix.",
    },
  },
  {
    id: "Spur spacing",
    value: 4,
    unit: "in",
    source: "klodd2022",
    least: 1,
    most: 24,
    meaning: {
      en: "Length of cordon for one spur; the source gives 3 to 5 in, NC State 3 to 8 in.",
      es: "Largo de cordón por pitón; la fuente da 3 a 5 in, NC State 3 a 8 in.",
      fr: "Longueur de cordon par courson ; la source donne 3 à 5 in, NC State 3 à 8 in.",
    },
  },
  {
    id: "Nodes a spur",
    value: 2,
    unit: "nodes",
    source: "klodd2022",
    least: 1,
    most: 15,
    meaning: {
      en: "Count nodes left on a spur; the source gives 2 to 3. The basal bud is not counted.",
      es: "Yemas contadas por pitón; la fuente da 2 a 3. La yema basal no se cuenta.",
      fr: "Yeux comptés par courson ; la source donne 2 à 3. Le bourgeon basal ne compte pas.",
    },
  },
];
