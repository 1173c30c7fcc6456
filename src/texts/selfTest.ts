import type { Text } from "./language";

/** What each ability of Excel is for, by its id in src/workbook/excel/excelAbilities.ts. */
export const ABILITY_TEXTS: Readonly<Record<string, Text>> = {
  pane: {
    en: "Pane and functions run together.",
    es: "El panel y las funciones trabajan juntos.",
    fr: "Le volet et les fonctions marchent ensemble.",
  },
  functions: {
    en: "CORDON functions in cells.",
    es: "Funciones CORDON en las celdas.",
    fr: "Fonctions CORDON dans les cellules.",
  },
  tables: {
    en: "Reading count sheets and writing sheets of our own.",
    es: "Leer hojas de conteo y escribir hojas propias.",
    fr: "Lire les feuilles de relevé et écrire nos propres feuilles.",
  },
  marks: {
    en: "Marks on cells that can be taken off again.",
    es: "Marcas en celdas que se pueden quitar.",
    fr: "Marques sur les cellules, qui peuvent être ôtées.",
  },
  whileTyping: {
    en: "Judging rows while they are typed.",
    es: "Revisar filas mientras se escriben.",
    fr: "Juger les lignes pendant la saisie.",
  },
  pivot: {
    en: "PivotTable of gaps.",
    es: "Tabla dinámica de huecos.",
    fr: "Tableau croisé des vides.",
  },
  spill: {
    en: "Functions that fill a block of cells.",
    es: "Funciones que llenan un bloque de celdas.",
    fr: "Fonctions qui remplissent un bloc de cellules.",
  },
  keepsTables: {
    en: "Rewriting a sheet keeps its table (without it, formulas with table names become plain addresses).",
    es: "Al reescribir una hoja se conserva su tabla (sin ello, las fórmulas con nombres de tabla pasan a direcciones simples).",
    fr: "Réécrire une feuille garde son tableau (sans cela, les formules avec noms de tableau deviennent de simples adresses).",
  },
};

/** What the self-test adds where Excel lacks an ability, and what a cell said that asked for our functions. */
export const SELF_TEST = {
  missing: {
    en: "Not in this Excel ({set}); everything else works.",
    es: "No está en este Excel ({set}); lo demás funciona.",
    fr: "Pas dans cet Excel ({set}) ; tout le reste marche.",
  },
  tooOld: {
    en: "Not in this Excel ({set}), which is too old for Cordonbook.",
    es: "No está en este Excel ({set}), que es demasiado antiguo para Cordonbook.",
    fr: "Pas dans cet Excel ({set}), trop ancien pour Cordonbook.",
  },
  answers: {
    en: "A cell asked for =CORDON.VERSION() and got {shows}: the functions calculate.",
    es: "Una celda pidió =CORDON.VERSION() y recibió {shows}: las funciones calculan.",
    fr: "Une cellule a demandé =CORDON.VERSION() et a reçu {shows} : les fonctions calculent.",
  },
  otherVersion: {
    en: "A cell asked for =CORDON.VERSION() and got {shows}, another version than the pane's {version}. Close Excel and open it again.",
    es: "Una celda pidió =CORDON.VERSION() y recibió {shows}, otra versión que la del panel, {version}. Cierre Excel y ábralo otra vez.",
    fr: "Une cellule a demandé =CORDON.VERSION() et a reçu {shows}, une autre version que celle du volet, {version}. Fermez Excel et rouvrez-le.",
  },
  unknown: {
    en: "A cell asked for =CORDON.VERSION() and got #NAME?: this Excel has not loaded the functions yet. Close and open the workbook; if it stays so, ask whoever installed Cordonbook.",
    es: "Una celda pidió =CORDON.VERSION() y recibió #NAME?: este Excel aún no cargó las funciones. Cierre y abra el libro; si sigue igual, pregunte a quien instaló Cordonbook.",
    fr: "Une cellule a demandé =CORDON.VERSION() et a reçu #NAME? : cet Excel n'a pas encore chargé les fonctions. Fermez et rouvrez le classeur ; si cela persiste, demandez à qui a installé Cordonbook.",
  },
  waiting: {
    en: "A cell asked for =CORDON.VERSION() and still waits. Set calculation to automatic (Formulas tab) and try again.",
    es: "Una celda pidió =CORDON.VERSION() y sigue esperando. Ponga el cálculo en automático (pestaña Fórmulas) y repita.",
    fr: "Une cellule a demandé =CORDON.VERSION() et attend toujours. Mettez le calcul en automatique (onglet Formules), puis réessayez.",
  },
  error: {
    en: "A cell asked for =CORDON.VERSION() and got {shows}. Close and open the workbook; if it stays so, ask whoever installed Cordonbook.",
    es: "Una celda pidió =CORDON.VERSION() y recibió {shows}. Cierre y abra el libro; si sigue igual, pregunte a quien instaló Cordonbook.",
    fr: "Une cellule a demandé =CORDON.VERSION() et a reçu {shows}. Fermez et rouvrez le classeur ; si cela persiste, demandez à qui a installé Cordonbook.",
  },
} as const satisfies Record<string, Text>;
