import { BELOW_ONE_POUND } from "../../domain/nodeBudget";
import { INJURY_RULES } from "../../domain/nodesAfterInjury";
import { INTERVAL_METHODS } from "../../domain/proportionInterval";
import type { Setting } from "./setting";
import { figure, oneOf, words } from "./figure";

/** Settings for node budgets, injury and spur fit. */
export const BUDGET_SETTINGS: readonly Setting[] = [
  words("Node rule", "30+10", "ohio2023", {
    en: "Rule for blocks that name none: a formula like 30+10 (American; French hybrids 20+10, new hybrids 20+20 by the same source), by length, or a number of nodes.",
    es: "Regla para cuarteles sin regla: fórmula como 30+10 (americanas; híbridos franceses 20+10, híbridos nuevos 20+20 según la misma fuente), por longitud o un número de yemas.",
    fr: "Règle des parcelles sans règle : formule comme 30+10 (américains ; hybrides français 20+10, nouveaux hybrides 20+20 selon la même source), par longueur ou un nombre d'yeux.",
  }),
  oneOf("Below one pound", "refuse", BELOW_ONE_POUND, "ours", {
    en: "Vines with less than a pound of prunings: refuse (no number; no source seen covers them), flat (the first pound's nodes) or proRata (those times the weight).",
    es: "Plantas con menos de una libra de poda: refuse (sin cifra; ninguna fuente vista las cubre), flat (las yemas de la primera libra) o proRata (esas por el peso).",
    fr: "Ceps de moins d'une livre de bois : refuse (pas de chiffre ; aucune source vue ne les couvre), flat (les yeux de la première livre) ou proRata (ceux-ci fois le poids).",
  }),
  figure("Least nodes a vine", 0, "nodes", "ours", [0, 500], {
    en: "A budget below this is raised to it; 0 raises none. No published limit was seen.",
    es: "Un presupuesto menor se sube a esta cifra; 0 no sube ninguno. No se vio límite publicado.",
    fr: "Un budget plus bas est relevé à ce chiffre ; 0 n'en relève aucun. Aucune limite publiée n'a été vue.",
  }),
  figure("Most nodes a vine", 60, "nodes", "from memory, unverified", [1, 500], {
    en: "A budget above this is cut to it. Often quoted as 50 to 60, Concord 90 and more; no published limit was seen.",
    es: "Un presupuesto mayor se recorta a esta cifra. Se oye 50 a 60, Concord 90 o más; no se vio límite publicado.",
    fr: "Un budget plus haut est ramené à ce chiffre. On cite 50 à 60, Concord 90 et plus ; aucune limite publiée n'a été vue.",
  }),
  figure("Nodes by length", 5, "nodes/ft", "ohio2023", [0, 18], {
    en: "Nodes on each foot of vine spacing for the rule by length; the source gives 4 to 6.",
    es: "Yemas por pie de separación entre plantas para la regla por longitud; la fuente da 4 a 6.",
    fr: "Yeux par pied d'écartement des ceps pour la règle par longueur ; la source donne 4 à 6.",
  }),
  oneOf("Injury rule", "Cornell 2014", INJURY_RULES, "cornell2014", {
    en: "Rule that corrects the budget for dead primary buds in blocks that name none. The rules disagree; none is averaged.",
    es: "Regla que corrige por yemas primarias muertas donde el cuartel no nombra otra. Las reglas discrepan; no se promedian.",
    fr: "Règle qui corrige pour les bourgeons primaires morts où la parcelle n'en nomme pas. Les règles divergent ; aucune moyenne.",
  }),
  oneOf("Interval for dead buds", "Wilson", INTERVAL_METHODS, "wilson1927", {
    en: "How the range around a share of dead buds is made: Wilson, or the wider Clopper-Pearson.",
    es: "Cómo se hace el rango de la parte de yemas muertas: Wilson, o el más ancho Clopper-Pearson.",
    fr: "Comment se fait la fourchette de la part de bourgeons morts : Wilson, ou Clopper-Pearson, plus large.",
  }),
  figure("Confidence of ranges", 0.9, "share", "ours", [0.5, 0.9999], {
    en: "How often a range shall hold the true figure: 0.9 is nine blocks in ten.",
    es: "Cuántas veces el rango debe contener la cifra real: 0.9 es nueve cuarteles de diez.",
    fr: "Combien de fois la fourchette doit contenir le vrai chiffre : 0,9, c'est neuf parcelles sur dix.",
  }),
  figure("Spur spacing", 4, "in", "klodd2022", [1, 24], {
    en: "Length of cordon for one spur; the source gives 3 to 5 in, NC State 3 to 8 in.",
    es: "Largo de cordón por pitón; la fuente da 3 a 5 in, NC State 3 a 8 in.",
    fr: "Longueur de cordon par courson ; la source donne 3 à 5 in, NC State 3 à 8 in.",
  }),
  figure("Nodes a spur", 2, "nodes", "klodd2022", [1, 15], {
    en: "Count nodes left on a spur; the source gives 2 to 3. The basal bud is not counted.",
    es: "Yemas contadas por pitón; la fuente da 2 a 3. La yema basal no se cuenta.",
    fr: "Yeux comptés par courson ; la source donne 2 à 3. Le bourgeon basal ne compte pas.",
  }),
];
