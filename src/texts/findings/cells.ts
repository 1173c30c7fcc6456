import { t, type FindingText } from "./findingText";

/** Findings about single cells, columns and settings. */
export const CELL_FINDINGS: Readonly<Record<string, FindingText>> = {
  missingValue: {
    title: t(
      "Blank where a value is needed",
      "En blanco donde hace falta un valor",
      "Vide où il faut une valeur",
    ),
    sentence: t("{column} is blank.", "{column} está en blanco.", "{column} est vide."),
    why: t(
      "The row cannot be used without it.",
      "La fila no se puede usar sin este valor.",
      "La ligne ne peut pas servir sans cette valeur.",
    ),
    remedy: t(
      "Fill it in from the paper sheet, or count again.",
      "Complételo con la hoja de papel o cuente de nuevo.",
      "Le remplir d'après la feuille de papier, ou recompter.",
    ),
  },
  missingColumn: {
    title: t("A column is missing", "Falta una columna", "Il manque une colonne"),
    sentence: t(
      "The table has no column “{missing}”.",
      "La tabla no tiene la columna «{missing}».",
      "Le tableau n'a pas de colonne « {missing} ».",
    ),
    why: t(
      "Rows without it cannot be used.",
      "Las filas no se pueden usar sin ella.",
      "Les lignes ne peuvent pas servir sans elle.",
    ),
    remedy: t(
      "Add the column, or say which of your own columns it is.",
      "Agregue la columna o indique cuál de las suyas es.",
      "Ajouter la colonne, ou dire laquelle des vôtres c'est.",
    ),
  },
  columnTwice: {
    title: t("The same column twice", "La misma columna dos veces", "Deux fois la même colonne"),
    sentence: t(
      "The column “{wanted}” stands in the table twice; only the first is read.",
      "La columna «{wanted}» está dos veces en la tabla; solo se lee la primera.",
      "La colonne « {wanted} » figure deux fois dans le tableau ; seule la première est lue.",
    ),
    why: t(
      "Counts in the second column are not used.",
      "Los conteos de la segunda columna no se usan.",
      "Les comptages de la seconde colonne ne servent pas.",
    ),
    remedy: t(
      "Rename or remove one of the two.",
      "Cambie el nombre de una o elimínela.",
      "Renommer ou supprimer l'une des deux.",
    ),
  },
  numberAsText: {
    title: t("Number typed as text", "Número escrito como texto", "Nombre saisi comme texte"),
    sentence: t(
      "{column} shows “{value}”, but it is text and no number.",
      "{column} muestra «{value}», pero es texto y no un número.",
      "{column} affiche « {value} », mais c'est du texte et pas un nombre.",
    ),
    why: t(
      "A spreadsheet leaves such a cell out of sums without a word.",
      "La hoja de cálculo deja esa celda fuera de las sumas sin avisar.",
      "Le tableur laisse une telle cellule hors des sommes sans rien dire.",
    ),
    remedy: t("Type the number again.", "Escriba el número de nuevo.", "Saisir le nombre à nouveau."),
  },
  notANumber: {
    title: t("Not a number", "No es un número", "Pas un nombre"),
    sentence: t(
      "{column} holds “{value}” where a number belongs.",
      "{column} contiene «{value}» donde va un número.",
      "{column} contient « {value} » à la place d'un nombre.",
    ),
    why: t(
      "The row cannot be used without a number.",
      "La fila no se puede usar sin un número.",
      "La ligne ne peut pas servir sans un nombre.",
    ),
    remedy: t(
      "Enter the number; words belong into the note.",
      "Ponga el número; las palabras van en la nota.",
      "Saisir le nombre ; les mots vont dans la remarque.",
    ),
  },
  notADate: {
    title: t("No clear date", "Fecha poco clara", "Date peu claire"),
    sentence: t(
      "{column} holds “{value}”, which is no date or can be read two ways.",
      "{column} contiene «{value}», que no es una fecha o se puede leer de dos maneras.",
      "{column} contient « {value} », qui n'est pas une date ou peut se lire de deux façons.",
    ),
    why: t(
      "Day and month may be taken for each other.",
      "Se pueden confundir el día y el mes.",
      "Le jour et le mois peuvent être confondus.",
    ),
    remedy: t(
      "Type the date as year-month-day.",
      "Escriba la fecha como año-mes-día.",
      "Saisir la date sous la forme année-mois-jour.",
    ),
  },
  unknownWord: {
    title: t("Unknown word", "Palabra desconocida", "Mot inconnu"),
    sentence: t(
      "{column} says “{value}”; it must be one of: {words}.",
      "{column} dice «{value}»; debe ser una de: {words}.",
      "{column} indique « {value} » ; il faut l'un de ces mots : {words}.",
    ),
    why: t(
      "The word decides how the row is used.",
      "La palabra decide cómo se usa la fila.",
      "Le mot décide de l'usage de la ligne.",
    ),
    remedy: t("Pick one of the words.", "Elija una de las palabras.", "Choisir l'un des mots."),
  },
  errorCell: {
    title: t("The cell shows an error", "La celda muestra un error", "La cellule affiche une erreur"),
    sentence: t("{column} shows {value}.", "{column} muestra {value}.", "{column} affiche {value}."),
    why: t(
      "A formula failed, so there is no value to use.",
      "Falló una fórmula y no hay valor que usar.",
      "Une formule a échoué, il n'y a donc pas de valeur.",
    ),
    remedy: t(
      "Mend the formula or type the value.",
      "Corrija la fórmula o escriba el valor.",
      "Corriger la formule ou saisir la valeur.",
    ),
  },
  outsideLimits: {
    title: t("Outside what can be", "Fuera de lo posible", "Hors de ce qui est possible"),
    sentence: t(
      "{column} is {value}{unit}; it must lie between {least} and {most}{unit}.",
      "{column} es {value}{unit}; debe estar entre {least} y {most}{unit}.",
      "{column} vaut {value}{unit} ; il faut une valeur entre {least} et {most}{unit}.",
    ),
    why: t(
      "No vine has such a value, so it is a slip of the pen or the wrong unit.",
      "Ninguna planta tiene ese valor: es un error de escritura o de unidad.",
      "Aucun cep n'a cette valeur : c'est une faute de plume ou d'unité.",
    ),
    remedy: t(
      "Correct it from the paper sheet; look at the unit in the header.",
      "Corríjalo con la hoja de papel; mire la unidad del encabezado.",
      "Corriger d'après la feuille de papier ; regarder l'unité de l'en-tête.",
    ),
  },
  notWhole: {
    title: t("A count with a fraction", "Conteo con fracción", "Comptage avec une fraction"),
    sentence: t(
      "{column} is {value}, but it is counted in whole numbers.",
      "{column} es {value}, pero se cuenta en números enteros.",
      "{column} vaut {value}, mais se compte en nombres entiers.",
    ),
    why: t(
      "A fraction in a count is a slip or a value of another column.",
      "Una fracción en un conteo es un error o un valor de otra columna.",
      "Une fraction dans un comptage est une faute ou la valeur d'une autre colonne.",
    ),
    remedy: t(
      "Correct it from the paper sheet.",
      "Corríjalo con la hoja de papel.",
      "Corriger d'après la feuille de papier.",
    ),
  },
  settingUnknown: {
    title: t("Unknown setting", "Ajuste desconocido", "Réglage inconnu"),
    sentence: t(
      "“{setting}” is no setting that is used.",
      "«{setting}» no es un ajuste que se use.",
      "« {setting} » n'est pas un réglage utilisé.",
    ),
    why: t(
      "Changing it changes nothing; a mistyped name leaves the usual value in force.",
      "Cambiarlo no cambia nada; con un nombre mal escrito rige el valor usual.",
      "Le changer ne change rien ; un nom mal écrit laisse la valeur habituelle en vigueur.",
    ),
    remedy: t(
      "Correct the name, or leave the row if it is your own.",
      "Corrija el nombre, o deje la fila si es suya.",
      "Corriger le nom, ou laisser la ligne si elle est à vous.",
    ),
  },
  settingNotUsable: {
    title: t("Setting cannot be used", "El ajuste no se puede usar", "Réglage inutilisable"),
    sentence: t(
      "The value “{value}” of “{setting}” cannot be used (expected: {expected}); the usual value is in force.",
      "El valor «{value}» de «{setting}» no se puede usar (se espera: {expected}); rige el valor usual.",
      "La valeur « {value} » de « {setting} » ne peut pas servir (attendu : {expected}) ; la valeur habituelle est en vigueur.",
    ),
    why: t(
      "Results are not made with the figure that the sheet shows.",
      "Los resultados no usan la cifra que muestra la hoja.",
      "Les résultats n'emploient pas le chiffre que montre la feuille.",
    ),
    remedy: t("Correct the value.", "Corrija el valor.", "Corriger la valeur."),
  },
  settingTwice: {
    title: t("The same setting twice", "El mismo ajuste dos veces", "Deux fois le même réglage"),
    sentence: t(
      "“{setting}” is {value}{unit} here, and {otherValue}{otherUnit} in row {otherRow} of the sheet{otherSheet}; the latter is in force.",
      "«{setting}» es {value}{unit} aquí y {otherValue}{otherUnit} en la fila {otherRow} de la hoja{otherSheet}; rige este último valor.",
      "« {setting} » vaut {value}{unit} ici et {otherValue}{otherUnit} à la ligne {otherRow} de la feuille{otherSheet} ; c'est cette dernière valeur qui est en vigueur.",
    ),
    why: t(
      "Two values for one figure: somebody believes in the other.",
      "Dos valores para una cifra: alguien cuenta con el otro.",
      "Deux valeurs pour un chiffre : quelqu'un croit à l'autre.",
    ),
    remedy: t(
      "Remove one of the rows, or give both the same value where each file keeps its own settings.",
      "Elimine una de las filas, o dé a ambas el mismo valor si cada archivo lleva sus ajustes.",
      "Supprimer l'une des lignes, ou donner aux deux la même valeur si chaque fichier garde ses réglages.",
    ),
  },
};
