import { EXCEL_PROBLEMS } from "./excelProblems";
import { FILE_PROBLEMS } from "./fileProblems";
import type { Text } from "./language";

/** One sentence per code of WorkbookProblem: what could not be done, where, and what to do about it. */
export const WORKBOOK_PROBLEMS: Readonly<Record<string, Text>> = {
  noSheet: {
    en: 'There is no sheet "{sheet}" in this workbook (any more); nothing was changed. Choose the sheet again.',
    es: 'En este libro no hay (o ya no hay) una hoja "{sheet}"; no se cambió nada. Elija la hoja otra vez.',
    fr: "Ce classeur n'a pas (ou plus) de feuille « {sheet} » ; rien n'a été changé. Choisissez à nouveau la feuille.",
  },
  notOurs: {
    en: 'The sheet "{sheet}" was not made by Cordonbook, so it is left as it is. Rename it and run again.',
    es: 'La hoja "{sheet}" no la hizo Cordonbook y por eso se deja como está. Cámbiele el nombre y repita.',
    fr: "La feuille « {sheet} » n'a pas été créée par Cordonbook et reste telle quelle. Renommez-la, puis recommencez.",
  },
  protectedSheet: {
    en: 'The sheet "{sheet}" is protected; nothing was changed. Take the protection off (Review tab) and run again.',
    es: 'La hoja "{sheet}" está protegida; no se cambió nada. Quite la protección (pestaña Revisar) y repita.',
    fr: "La feuille « {sheet} » est protégée ; rien n'a été changé. Ôtez la protection (onglet Révision), puis recommencez.",
  },
  protectedWorkbook: {
    en: "The structure of this workbook is protected, so no sheet can be added, renamed or deleted; nothing was changed.",
    es: "La estructura de este libro está protegida: no se pueden añadir, renombrar ni borrar hojas; no se cambió nada.",
    fr: "La structure de ce classeur est protégée : aucune feuille ne peut être ajoutée, renommée ou supprimée ; rien n'a été changé.",
  },
  badSheetName: {
    en: '"{sheet}" cannot be the name of a sheet: 1 to 31 characters, none of : \\ / ? * [ ] and no apostrophe at either end.',
    es: '"{sheet}" no puede ser el nombre de una hoja: de 1 a 31 caracteres, sin : \\ / ? * [ ] ni apóstrofo al principio o al final.',
    fr: "« {sheet} » ne peut pas être un nom de feuille : 1 à 31 caractères, sans : \\ / ? * [ ] ni apostrophe au début ou à la fin.",
  },
  badTable: {
    en: 'The table for the sheet "{sheet}" does not hold together (row {row}; 0 is its headers); nothing was written.',
    es: 'La tabla para la hoja "{sheet}" no es coherente (fila {row}; 0 son los encabezados); no se escribió nada.',
    fr: "Le tableau destiné à la feuille « {sheet} » n'est pas cohérent (ligne {row} ; 0 désigne les en-têtes) ; rien n'a été écrit.",
  },
  lastSheet: {
    en: 'The sheet "{sheet}" is the only one in the workbook, so it cannot be deleted; nothing was changed.',
    es: 'La hoja "{sheet}" es la única del libro y no se puede borrar; no se cambió nada.',
    fr: "La feuille « {sheet} » est la seule du classeur et ne peut pas être supprimée ; rien n'a été changé.",
  },
  ...FILE_PROBLEMS,
  cannotPutBack: {
    en: 'Row {row}, column {column} of "{sheet}" holds an error that was typed as a value, so it could not be put back exactly. Nothing was changed.',
    es: 'La fila {row}, columna {column} de "{sheet}" tiene un error escrito como valor, que no se podría reponer exactamente. No se cambió nada.',
    fr: "La ligne {row}, colonne {column} de « {sheet} » contient une erreur saisie comme valeur, qu'on ne pourrait pas remettre exactement. Rien n'a été changé.",
  },
  ...EXCEL_PROBLEMS,
};
