import { t, type FunctionText } from "./functionText";
import { NODES_PER_SPUR, UNIT } from "./shared";

export const NODEBUDGET_TEXT: FunctionText = {
  description: t(
    "Nodes to leave on a vine by balanced pruning, from the weight of its one-year prunings and a formula such as 30+10. Not rounded.",
    "Yemas que dejar en una planta por poda equilibrada, según el peso de la madera de un año podada y una fórmula como 30+10. Sin redondear.",
    "Yeux à laisser sur un cep par taille équilibrée, d'après le poids du bois d'un an taillé et une formule comme 30+10. Sans arrondi.",
  ),
  parameters: {
    prunings: {
      label: t("prunings", "madera podada", "bois taillé"),
      description: t(
        "Weight of the one-year wood cut from the vine, pounds or kilograms; a column gives a budget for each vine.",
        "Peso de la madera de un año podada, libras o kilos; una columna da un presupuesto por planta.",
        "Poids du bois d'un an taillé sur le cep, livres ou kilogrammes ; une colonne donne un budget par cep.",
      ),
    },
    formula: {
      label: t("formula", "fórmula", "formule"),
      description: t(
        'Nodes for the first pound (454 g) and for each further pound, such as "30+10".',
        "Yemas por la primera libra (454 g) y por cada libra más, como «30+10».",
        "Yeux pour la première livre (454 g) et pour chaque livre de plus, comme « 30+10 ».",
      ),
    },
    unit: UNIT,
    least: {
      label: t("least", "mínimo", "minimum"),
      description: t(
        "Fewest nodes a vine keeps, whatever it weighs; no limit if left out.",
        "Mínimo de yemas que conserva una planta; sin límite si se omite.",
        "Nombre minimal d'yeux gardés par cep ; sans limite si omis.",
      ),
    },
    most: {
      label: t("most", "máximo", "maximum"),
      description: t(
        "Most nodes a vine keeps; no limit if left out.",
        "Máximo de yemas que conserva una planta; sin límite si se omite.",
        "Nombre maximal d'yeux gardés par cep ; sans limite si omis.",
      ),
    },
    below_one_pound: {
      label: t("below one pound", "menos de una libra", "moins d'une livre"),
      description: t(
        "For prunings below one pound, where no source says: refuse (no answer), flat (the formula's first number) or proRata (that number times the pounds). refuse if left out.",
        "Para menos de una libra, donde ninguna fuente lo dice: refuse (sin respuesta), flat (el primer número de la fórmula) o proRata (ese número por las libras). refuse si se omite.",
        "Pour moins d'une livre, où aucune source ne tranche : refuse (pas de réponse), flat (le premier nombre de la formule) ou proRata (ce nombre fois les livres). refuse si omis.",
      ),
    },
  },
  results: { nodes: t("nodes", "yemas", "yeux") },
};

export const NODESBYLENGTH_TEXT: FunctionText = {
  description: t(
    "Nodes to leave on a length of cordon or row at a fixed density; for vines whose prunings are not weighed. Not rounded.",
    "Yemas que dejar en un largo de cordón o hilera con densidad fija; para plantas cuya poda no se pesa. Sin redondear.",
    "Yeux à laisser sur une longueur de cordon ou de rang à densité fixe ; pour les ceps dont le bois n'est pas pesé. Sans arrondi.",
  ),
  parameters: {
    length: {
      label: t("length", "largo", "longueur"),
      description: t(
        "Length of cordon, or of row that the vine fills, feet or metres.",
        "Largo del cordón, o de la hilera que ocupa la planta, pies o metros.",
        "Longueur de cordon, ou de rang occupée par le cep, pieds ou mètres.",
      ),
    },
    density: {
      label: t("density", "densidad", "densité"),
      description: t(
        "Nodes on each foot or metre of it.",
        "Yemas por cada pie o metro.",
        "Yeux par pied ou par mètre.",
      ),
    },
    unit: UNIT,
  },
  results: { nodes: t("nodes", "yemas", "yeux") },
};

export const SPURFIT_TEXT: FunctionText = {
  description: t(
    "Compares a node budget with the spurs for which the cordon has room: spurs wanted, spurs that fit, and nodes that find no place.",
    "Compara un presupuesto de yemas con los pitones que caben en el cordón: pitones deseados, pitones que caben y yemas sin lugar.",
    "Compare un budget d'yeux aux coursons que le cordon peut porter : coursons voulus, coursons possibles et yeux sans place.",
  ),
  parameters: {
    nodes: {
      label: t("nodes", "yemas", "yeux"),
      description: t(
        "Node budget of the vine.",
        "Presupuesto de yemas de la planta.",
        "Budget d'yeux du cep.",
      ),
    },
    nodes_per_spur: NODES_PER_SPUR,
    length: {
      label: t("length", "largo", "longueur"),
      description: t(
        "Length of one cordon, feet or metres.",
        "Largo de un cordón, pies o metros.",
        "Longueur d'un cordon, pieds ou mètres.",
      ),
    },
    spacing: {
      label: t("spacing", "distancia", "écart"),
      description: t(
        "Cordon needed for each spur, inches or centimetres.",
        "Cordón necesario para cada pitón, pulgadas o centímetros.",
        "Cordon nécessaire par courson, pouces ou centimètres.",
      ),
    },
    unit: UNIT,
    cordons: {
      label: t("cordons", "cordones", "cordons"),
      description: t(
        "Cordons of that length on the vine: 1 if left out.",
        "Cordones de ese largo en la planta: 1 si se omite.",
        "Cordons de cette longueur sur le cep : 1 si omis.",
      ),
    },
  },
  results: {
    spursWanted: t("spurs wanted", "pitones deseados", "coursons voulus"),
    spursThatFit: t("spurs that fit", "pitones que caben", "coursons possibles"),
    nodesShort: t("nodes short", "yemas sin lugar", "yeux sans place"),
  },
};
