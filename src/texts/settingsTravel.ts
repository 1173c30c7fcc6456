import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Sentences for settings that come from another workbook, and for older Settings tables. */
export const SETTINGS_TRAVEL = {
  title: t("Figures of another workbook", "Cifras de otro libro", "Chiffres d'un autre classeur"),
  intro: t(
    "Compare this workbook's figures with those of another one of the farm and copy the ones you want. The other workbook is only read.",
    "Compare las cifras de este libro con las de otro de la finca y copie las que quiera. El otro libro solo se lee.",
    "Comparez les chiffres de ce classeur à ceux d'un autre de la ferme et copiez ceux que vous voulez. L'autre classeur est seulement lu.",
  ),
  file: t(
    "Choose a workbook (.xlsx or .csv)",
    "Elegir un libro (.xlsx o .csv)",
    "Choisir un classeur (.xlsx ou .csv)",
  ),
  noTable: t(
    "There is no Settings table in {file}.",
    "No hay tabla de ajustes en {file}.",
    "Il n'y a pas de tableau de réglages dans {file}.",
  ),
  same: t(
    "Every figure of {file} is the same as here.",
    "Todas las cifras de {file} son iguales a las de aquí.",
    "Tous les chiffres de {file} sont les mêmes qu'ici.",
  ),
  differ: t(
    "{count} figures differ from {file}. Ticked ones are copied.",
    "{count} cifras difieren de {file}. Se copian las marcadas.",
    "{count} chiffres diffèrent de {file}. Les cochés sont copiés.",
  ),
  difference: t(
    "{setting}: here {here} {unit}, there {there} {unit}",
    "{setting}: aquí {here} {unit}, allí {there} {unit}",
    "{setting} : ici {here} {unit}, là-bas {there} {unit}",
  ),
  thereBy: t("Changed there by {by}, {on}", "Cambiado allí por {by}, {on}", "Changé là-bas par {by}, {on}"),
  show: t("Show what moves", "Mostrar qué se mueve", "Montrer ce qui bouge"),
  copy: t("Copy {count} figures", "Copiar {count} cifras", "Copier {count} chiffres"),
  nothingTicked: t("Tick at least one figure.", "Marque al menos una cifra.", "Cochez au moins un chiffre."),
  copied: t(
    "{count} figures were copied from {file}.",
    "Se copiaron {count} cifras de {file}.",
    "{count} chiffres ont été copiés de {file}.",
  ),
  older: t(
    "This Settings table has an older shape. Bringing it up to date changes no value and leaves every cell of yours as it is.",
    "Esta tabla de ajustes tiene una forma anterior. Ponerla al día no cambia ningún valor y deja sus celdas como están.",
    "Ce tableau de réglages a une forme plus ancienne. Le mettre à jour ne change aucune valeur et laisse vos cellules telles quelles.",
  ),
  moreNames: t("{names} and {more} more", "{names} y {more} más", "{names} et {more} de plus"),
  upgrade: t("Bring it up to date", "Ponerla al día", "Le mettre à jour"),
  upgraded: t(
    "The Settings table is up to date.",
    "La tabla de ajustes está al día.",
    "Le tableau de réglages est à jour.",
  ),
  undo: t("Undo", "Deshacer", "Annuler"),
  undone: t(
    "The Settings table is as it was.",
    "La tabla de ajustes está como antes.",
    "Le tableau de réglages est comme avant.",
  ),
  left: t(
    "{count} cells were changed by somebody else meanwhile and left alone.",
    "Otra persona cambió {count} celdas entretanto; se dejaron como están.",
    "{count} cellules ont été changées par quelqu'un d'autre entre-temps et laissées telles quelles.",
  ),
} as const;
