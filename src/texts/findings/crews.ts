import { t, type FindingText } from "./findingText";

const ASK = t(
  "Ask whoever counted; if it is true, set the finding aside.",
  "Pregunte a quien contó; si es cierto, aparte el hallazgo.",
  "Demander à qui a compté ; si c'est vrai, mettre la remarque de côté.",
);
const DATE = t(
  "Correct the date from the paper sheet.",
  "Corrija la fecha con la hoja de papel.",
  "Corriger la date d'après la feuille de papier.",
);

/** Findings about how a sheet was counted and typed: copies, swaps, units, totals, dates and counters. */
export const CREW_FINDINGS: Readonly<Record<string, FindingText>> = {
  copiedDown: {
    title: t(
      "The same numbers down several vines",
      "Los mismos números en varias plantas",
      "Les mêmes nombres sur plusieurs ceps",
    ),
    sentence: t(
      "{vines} vines in a row, from {from} to {last}, carry the same numbers in every column.",
      "{vines} plantas seguidas, de {from} a {last}, llevan los mismos números en todas las columnas.",
      "{vines} ceps de suite, de {from} à {last}, portent les mêmes nombres dans toutes les colonnes.",
    ),
    why: t(
      "Numbers copied down were not counted.",
      "Los números copiados hacia abajo no se contaron.",
      "Des nombres recopiés n'ont pas été comptés.",
    ),
    remedy: ASK,
  },
  columnsSwapped: {
    title: t("Two columns swapped", "Dos columnas cambiadas", "Deux colonnes échangées"),
    sentence: t(
      "{rows} rows, to row {lastRow} of the sheet, only fit when {column} and {other} change places.",
      "{rows} filas, hasta la fila {lastRow} de la hoja, solo cuadran si {column} y {other} cambian de lugar.",
      "{rows} lignes, jusqu'à la ligne {lastRow} de la feuille, ne concordent que si {column} et {other} changent de place.",
    ),
    why: t(
      "Every figure of these rows is taken for another.",
      "Cada cifra de estas filas se toma por otra.",
      "Chaque chiffre de ces lignes est pris pour un autre.",
    ),
    remedy: t(
      "Compare with the heads of the paper sheet and exchange the two columns in these rows.",
      "Compare con los encabezados de la hoja de papel y cambie las dos columnas en estas filas.",
      "Comparer avec les en-têtes de la feuille de papier et échanger les deux colonnes dans ces lignes.",
    ),
  },
  unitSlip: {
    title: t("Written in another unit", "Escrito en otra unidad", "Écrit dans une autre unité"),
    sentence: t(
      "{column} is {value}{unit}, unlike its block; taken as {value} {meant} it is {converted}{unit} and fits ({rows} rows, to row {lastRow} of the sheet).",
      "{column} es {value}{unit}, distinto de su cuartel; tomado como {value} {meant} es {converted}{unit} y cuadra ({rows} filas, hasta la fila {lastRow} de la hoja).",
      "{column} vaut {value}{unit}, différent de sa parcelle ; pris pour {value} {meant}, c'est {converted}{unit} et convient ({rows} lignes, jusqu'à la ligne {lastRow} de la feuille).",
    ),
    why: t(
      "In the wrong unit every figure made from it is wrong by as much.",
      "En la unidad equivocada, toda cifra hecha con él está mal en la misma medida.",
      "Dans la mauvaise unité, tout chiffre qui en dépend est faux d'autant.",
    ),
    remedy: t(
      "Ask which tape or scale was used and convert the values.",
      "Pregunte qué cinta o balanza se usó y convierta los valores.",
      "Demander quel mètre ou quelle balance a servi et convertir les valeurs.",
    ),
  },
  totalDiffers: {
    title: t(
      "Total differs from its parts",
      "El total difiere de sus partes",
      "Total différent de ses parties",
    ),
    sentence: t(
      "The total of {column} is {total}, its parts make {sum}: {difference} apart ({made}).",
      "El total de {column} es {total}, sus partes suman {sum}: diferencia {difference} ({made}).",
      "Le total de {column} est {total}, ses parties font {sum} : écart {difference} ({made}).",
    ),
    why: t(
      "Rows were added or changed after the total was made, or a row is left out of it.",
      "Se agregaron o cambiaron filas después del total, o falta una fila en él.",
      "Des lignes ont été ajoutées ou changées après le total, ou une ligne y manque.",
    ),
    remedy: t(
      "Add up again, or replace the typed total by a formula.",
      "Sume de nuevo o cambie el total escrito por una fórmula.",
      "Additionner à nouveau, ou remplacer le total saisi par une formule.",
    ),
  },
  placesDiffer: {
    title: t(
      "Vine places differ from the register",
      "Los lugares difieren del registro",
      "Les places diffèrent du registre",
    ),
    sentence: t(
      "{column} is {total}, but the Vines sheet lists {sum}: {difference} apart ({made}).",
      "{column} es {total}, pero la hoja de plantas lista {sum}: diferencia {difference} ({made}).",
      "{column} vaut {total}, mais la feuille des ceps en liste {sum} : écart {difference} ({made}).",
    ),
    why: t(
      "Crop and hours of the block are counted from its vine places.",
      "La cosecha y las horas del cuartel salen de sus lugares de planta.",
      "La récolte et les heures de la parcelle viennent de ses places de cep.",
    ),
    remedy: t(
      "Correct the number, or complete the Vines sheet.",
      "Corrija el número o complete la hoja de plantas.",
      "Corriger le nombre, ou compléter la feuille des ceps.",
    ),
  },
  dateInFuture: {
    title: t("Date in the future", "Fecha en el futuro", "Date dans le futur"),
    sentence: t(
      "{column} is {value}, after today ({today}); {rows} rows.",
      "{column} es {value}, después de hoy ({today}); {rows} filas.",
      "{column} est {value}, après aujourd'hui ({today}) ; {rows} lignes.",
    ),
    why: t(
      "Nobody has counted on a day to come: day, month or year is mistyped.",
      "Nadie contó en un día por venir: día, mes o año está mal escrito.",
      "Personne n'a compté un jour à venir : jour, mois ou année est mal saisi.",
    ),
    remedy: DATE,
  },
  dateOutOfSeason: {
    title: t("Date out of season", "Fecha fuera de temporada", "Date hors saison"),
    sentence: t(
      "{column} is {value}, outside the months {firstMonth} to {lastMonth} in which dormant vines are counted; {rows} rows.",
      "{column} es {value}, fuera de los meses {firstMonth} a {lastMonth} en que se cuentan plantas en reposo; {rows} filas.",
      "{column} est {value}, hors des mois {firstMonth} à {lastMonth} où l'on compte les ceps au repos ; {rows} lignes.",
    ),
    why: t(
      "Day and month may have changed places.",
      "Puede que día y mes hayan cambiado de lugar.",
      "Le jour et le mois ont peut-être changé de place.",
    ),
    remedy: DATE,
  },
  dateOtherYear: {
    title: t("Date of another winter", "Fecha de otro invierno", "Date d'un autre hiver"),
    sentence: t(
      "{column} is {value}, but the sheet is of the winter {season}; {rows} rows.",
      "{column} es {value}, pero la hoja es del invierno {season}; {rows} filas.",
      "{column} est {value}, mais la feuille est de l'hiver {season} ; {rows} lignes.",
    ),
    why: t(
      "Either the year is mistyped or rows of an old sheet got in.",
      "O el año está mal escrito o entraron filas de una hoja vieja.",
      "Ou l'année est mal saisie, ou des lignes d'une vieille feuille sont entrées.",
    ),
    remedy: DATE,
  },
  dateOutOfWalkOrder: {
    title: t(
      "Date out of walk order",
      "Fecha fuera del orden de recorrido",
      "Date hors de l'ordre du parcours",
    ),
    sentence: t(
      "{column} is {value}, while the rest of the row was walked on {usual}.",
      "{column} es {value}, mientras que el resto de la hilera se recorrió el {usual}.",
      "{column} est {value}, alors que le reste du rang a été parcouru le {usual}.",
    ),
    why: t(
      "A mistyped date, or a row of another sheet.",
      "Una fecha mal escrita o una fila de otra hoja.",
      "Une date mal saisie, ou une ligne d'une autre feuille.",
    ),
    remedy: DATE,
  },
  vineNeverCounted: {
    title: t("Vine never counted", "Planta sin contar", "Cep jamais compté"),
    sentence: t(
      "The vine bears, but no cordon of it was counted; {counted} of {vines} vines of the row were.",
      "La planta está en producción, pero no se contó ningún cordón; de la hilera se contaron {counted} de {vines}.",
      "Le cep est en production, mais aucun cordon n'y a été compté ; {counted} ceps sur {vines} du rang l'ont été.",
    ),
    why: t(
      "Nothing would be decided on it, or its counts stand under another number.",
      "No se decidiría nada en ella, o sus conteos están bajo otro número.",
      "Rien n'y serait décidé, ou ses comptages sont sous un autre numéro.",
    ),
    remedy: t(
      "Count it, or correct its status in the Vines sheet.",
      "Cuéntela o corrija su situación en la hoja de plantas.",
      "Le compter, ou corriger sa situation dans la feuille des ceps.",
    ),
  },
  rowNeverCounted: {
    title: t("Row never counted", "Hilera sin contar", "Rang jamais compté"),
    sentence: t(
      "None of the {vines} bearing vines of this row was counted, while most rows of the block were.",
      "No se contó ninguna de las {vines} plantas en producción de esta hilera, y sí la mayoría de las hileras del cuartel.",
      "Aucun des {vines} ceps en production de ce rang n'a été compté, alors que la plupart des rangs l'ont été.",
    ),
    why: t(
      "A sheet may have been lost, or typed under another row.",
      "Puede haberse perdido una hoja o haberse escrito bajo otra hilera.",
      "Une feuille a pu se perdre, ou être saisie sous un autre rang.",
    ),
    remedy: t(
      "Look for the paper sheet, or count the row.",
      "Busque la hoja de papel o cuente la hilera.",
      "Chercher la feuille de papier, ou compter le rang.",
    ),
  },
  digitPreference: {
    title: t("Values that look guessed", "Valores que parecen estimados", "Valeurs qui semblent devinées"),
    sentence: t(
      "{own} % of the {values} values of {column} by {counter} end in 0 or 5; of the others' in the same blocks {others} %.",
      "El {own} % de los {values} valores de {column} de {counter} termina en 0 o 5; de los demás en los mismos cuarteles, el {others} %.",
      "{own} % des {values} valeurs de {column} de {counter} finissent par 0 ou 5 ; celles des autres dans les mêmes parcelles, {others} %.",
    ),
    why: t(
      "Values that end so are mostly guessed or rounded, not measured.",
      "Los valores que terminan así suelen estimarse o redondearse, no medirse.",
      "De telles valeurs sont le plus souvent devinées ou arrondies, pas mesurées.",
    ),
    remedy: t(
      "Count a few of these vines again together.",
      "Cuenten juntos de nuevo algunas de estas plantas.",
      "Recompter ensemble quelques-uns de ces ceps.",
    ),
  },
  counterUnlikeOthers: {
    title: t("Counts unlike the others", "Cuenta distinto de los demás", "Compte autrement que les autres"),
    sentence: t(
      "{habit} by {counter} differs by {percent} % from the others in the same blocks, over {vineyardRows} rows.",
      "{habit} de {counter} difiere un {percent} % de los demás en los mismos cuarteles, en {vineyardRows} hileras.",
      "{habit} de {counter} diffère de {percent} % des autres dans les mêmes parcelles, sur {vineyardRows} rangs.",
    ),
    why: t(
      "Somebody counts by another rule, so that cordons of different rows cannot be compared.",
      "Alguien cuenta con otra regla y los cordones de distintas hileras no se pueden comparar.",
      "Quelqu'un compte selon une autre règle, et les cordons de rangs différents ne se comparent pas.",
    ),
    remedy: t(
      "Count one vine together and agree on the rule.",
      "Cuenten una planta juntos y acuerden la regla.",
      "Compter un cep ensemble et s'accorder sur la règle.",
    ),
  },
};

/** What is compared between counters. */
export const HABIT_TEXTS = {
  spacing: t(
    "The distance between positions",
    "La distancia entre posiciones",
    "La distance entre emplacements",
  ),
  liveShare: t(
    "The share of positions with a live spur",
    "La parte de posiciones con pitón vivo",
    "La part d'emplacements au courson vivant",
  ),
  length: t("The length of cordons", "El largo de los cordones", "La longueur des cordons"),
  diameter: t("The thickness of cordons", "El grosor de los cordones", "La grosseur des cordons"),
  down: t(
    "The share of spurs that point down",
    "La parte de pitones hacia abajo",
    "La part de coursons vers le bas",
  ),
} as const;

/** How a total came about. */
export const MADE_TEXTS = {
  typed: t("typed", "escrito a mano", "saisi"),
  formula: t("by formula", "por fórmula", "par formule"),
} as const;
