import { t, type FunctionText } from "./functionText";
import { CONFIDENCE, HIGH, LOW } from "./shared";

export const BUDINJURY_TEXT: FunctionText = {
  description: t(
    "Share of dead primary buds in a sample of cut buds, with the range that holds the block's true share at the stated confidence.",
    "Proporción de yemas primarias muertas en una muestra de yemas cortadas, con el rango que contiene la proporción verdadera del cuartel.",
    "Part de bourgeons primaires morts dans un échantillon de bourgeons coupés, avec la fourchette qui contient la vraie part de la parcelle.",
  ),
  parameters: {
    dead: {
      label: t("dead", "muertas", "morts"),
      description: t(
        "Nodes with a dead primary bud.",
        "Yemas con la primaria muerta.",
        "Yeux au bourgeon primaire mort.",
      ),
    },
    cut: {
      label: t("cut", "cortadas", "coupés"),
      description: t(
        "All nodes cut; 50 to 100 a block, from many canes.",
        "Todas las yemas cortadas; de 50 a 100 por cuartel, de muchos sarmientos.",
        "Tous les yeux coupés ; 50 à 100 par parcelle, sur beaucoup de sarments.",
      ),
    },
    confidence: CONFIDENCE,
    method: {
      label: t("method", "método", "méthode"),
      description: t(
        "Wilson (if left out) or Clopper-Pearson, which is wider and never too sure.",
        "Wilson (si se omite) o Clopper-Pearson, más ancho y nunca demasiado seguro.",
        "Wilson (si omis) ou Clopper-Pearson, plus large et jamais trop sûr.",
      ),
    },
  },
  results: { share: t("dead share", "proporción muerta", "part morte"), low: LOW, high: HIGH },
};

export const NODESAFTERINJURY_TEXT: FunctionText = {
  description: t(
    "Nodes to leave so that winter injury is made up for, by one named rule. The rules disagree; where a rule's source says nothing, the answer is #N/A with a sentence.",
    "Yemas que dejar para compensar el daño de invierno, según una regla con nombre. Las reglas discrepan; donde la fuente calla, la respuesta es #N/A con una frase.",
    "Yeux à laisser pour compenser les dégâts d'hiver, selon une règle nommée. Les règles divergent ; où la source se tait, la réponse est #N/A avec une phrase.",
  ),
  parameters: {
    nodes: {
      label: t("nodes", "yemas", "yeux"),
      description: t(
        "Node budget of the uninjured vine.",
        "Presupuesto de yemas de la planta sin daño.",
        "Budget d'yeux du cep indemne.",
      ),
    },
    dead_share: {
      label: t("dead share", "proporción muerta", "part morte"),
      description: t(
        "Share of dead primary buds, 0 to 1, as BUDINJURY gives it.",
        "Proporción de yemas primarias muertas, de 0 a 1, como la da BUDINJURY.",
        "Part de bourgeons primaires morts, de 0 à 1, comme la donne BUDINJURY.",
      ),
    },
    rule: {
      label: t("rule", "regla", "règle"),
      description: t(
        "Cornell 2014, MSU 2002, Purdue, Northern Grapes 2014 or compensation.",
        "Cornell 2014, MSU 2002, Purdue, Northern Grapes 2014 o compensation.",
        "Cornell 2014, MSU 2002, Purdue, Northern Grapes 2014 ou compensation.",
      ),
    },
  },
  results: { nodes: t("nodes", "yemas", "yeux") },
};
