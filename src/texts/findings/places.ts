import { t, type FindingText } from "./findingText";

/** Findings about blocks, rows, vines and the order of the walk. */
export const PLACE_FINDINGS: Readonly<Record<string, FindingText>> = {
  unknownBlock: {
    title: t("Unknown block", "Cuartel desconocido", "Parcelle inconnue"),
    sentence: t(
      "The Blocks sheet has no block “{value}”.",
      "La hoja de cuarteles no tiene el cuartel «{value}».",
      "La feuille des parcelles n'a pas de parcelle « {value} ».",
    ),
    why: t(
      "Its rows are left out of the block's figures.",
      "Sus filas quedan fuera de las cifras del cuartel.",
      "Ses lignes manquent dans les chiffres de la parcelle.",
    ),
    remedy: t(
      "Correct the name, or add the block to the Blocks sheet.",
      "Corrija el nombre o agregue el cuartel a la hoja de cuarteles.",
      "Corriger le nom, ou ajouter la parcelle à sa feuille.",
    ),
  },
  unknownRow: {
    title: t("The block has no such row", "El cuartel no tiene esa hilera", "La parcelle n'a pas ce rang"),
    sentence: t(
      "The block has {last} rows.",
      "El cuartel tiene {last} hileras.",
      "La parcelle a {last} rangs.",
    ),
    why: t(
      "The counts belong to another row, whose own are missing.",
      "Los conteos son de otra hilera, a la que le faltan.",
      "Les comptages sont ceux d'un autre rang, auquel ils manquent.",
    ),
    remedy: t(
      "Correct the row number, or the number of rows in the Blocks sheet.",
      "Corrija el número de hilera o el de hileras en la hoja de cuarteles.",
      "Corriger le numéro du rang, ou le nombre de rangs dans la feuille des parcelles.",
    ),
  },
  unknownVine: {
    title: t(
      "The register has no such vine",
      "El registro no tiene esa planta",
      "Le registre n'a pas ce cep",
    ),
    sentence: t(
      "The Vines sheet has no such vine.",
      "La hoja de plantas no tiene esa planta.",
      "La feuille des ceps n'a pas ce cep.",
    ),
    why: t(
      "The counts belong to another vine, whose own are missing.",
      "Los conteos son de otra planta, a la que le faltan.",
      "Les comptages sont ceux d'un autre cep, auquel ils manquent.",
    ),
    remedy: t(
      "Correct row and vine, or add the vine to the Vines sheet.",
      "Corrija hilera y planta, o agregue la planta a su hoja.",
      "Corriger le rang et le cep, ou ajouter le cep à sa feuille.",
    ),
  },
  cordonOnMissingVine: {
    title: t("Cordon on a missing vine", "Cordón en una planta faltante", "Cordon sur un cep manquant"),
    sentence: t(
      "The Vines sheet calls this vine missing, but a cordon was counted on it.",
      "La hoja de plantas da esta planta por faltante, pero se contó un cordón en ella.",
      "La feuille des ceps dit ce cep manquant, mais un cordon y a été compté.",
    ),
    why: t(
      "Either the register or the vine number is wrong.",
      "O el registro o el número de planta está mal.",
      "Ou le registre, ou le numéro du cep est faux.",
    ),
    remedy: t(
      "Walk to the vine: correct its status, or the number on the count sheet.",
      "Vaya a la planta: corrija su situación o el número en la hoja de conteo.",
      "Aller au cep : corriger sa situation, ou le numéro sur la feuille de comptage.",
    ),
  },
  sameCordonTwice: {
    title: t("The same cordon twice", "El mismo cordón dos veces", "Deux fois le même cordon"),
    sentence: t(
      "This cordon stands already in row {otherRow} of the sheet{otherSheet}.",
      "Este cordón ya está en la fila {otherRow} de la hoja{otherSheet}.",
      "Ce cordon figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
    ),
    why: t(
      "It would be counted twice, or one of the two belongs to another vine.",
      "Se contaría dos veces, o uno de los dos es de otra planta.",
      "Il serait compté deux fois, ou l'un des deux est d'un autre cep.",
    ),
    remedy: t(
      "Remove the copy, or correct vine, side or letter.",
      "Elimine la copia o corrija planta, lado o letra.",
      "Supprimer la copie, ou corriger cep, côté ou lettre.",
    ),
  },
  sameVineTwice: {
    title: t("The same vine twice", "La misma planta dos veces", "Deux fois le même cep"),
    sentence: t(
      "This vine stands already in row {otherRow} of the sheet{otherSheet}.",
      "Esta planta ya está en la fila {otherRow} de la hoja{otherSheet}.",
      "Ce cep figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
    ),
    why: t(
      "The block would have a vine too many, and it is unclear which row holds.",
      "El cuartel tendría una planta de más, y no se sabe qué fila vale.",
      "La parcelle aurait un cep de trop, et on ne sait quelle ligne vaut.",
    ),
    remedy: t(
      "Remove the copy, or correct row and vine.",
      "Elimine la copia o corrija hilera y planta.",
      "Supprimer la copie, ou corriger rang et cep.",
    ),
  },
  sameBlockTwice: {
    title: t("The same block twice", "El mismo cuartel dos veces", "Deux fois la même parcelle"),
    sentence: t(
      "This block stands already in row {otherRow} of the sheet{otherSheet}.",
      "Este cuartel ya está en la fila {otherRow} de la hoja{otherSheet}.",
      "Cette parcelle figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
    ),
    why: t(
      "It is unclear which spacings and rules hold.",
      "No se sabe qué distancias y reglas valen.",
      "On ne sait quelles distances et quelles règles valent.",
    ),
    remedy: t("Remove one of the rows.", "Elimine una de las filas.", "Supprimer l'une des lignes."),
  },
  sameHarvestTwice: {
    title: t("The same harvest twice", "La misma cosecha dos veces", "Deux fois la même récolte"),
    sentence: t(
      "This block's harvest of the year stands already in row {otherRow} of the sheet{otherSheet}.",
      "La cosecha de este cuartel en ese año ya está en la fila {otherRow} de la hoja{otherSheet}.",
      "La récolte de cette parcelle pour l'année figure déjà à la ligne {otherRow} de la feuille{otherSheet}.",
    ),
    why: t(
      "The year would weigh twice in next winter's figures.",
      "El año pesaría dos veces en las cifras del próximo invierno.",
      "L'année pèserait deux fois dans les chiffres de l'hiver prochain.",
    ),
    remedy: t(
      "Remove one of the rows, or add the two pickings together.",
      "Elimine una de las filas o sume las dos recolecciones.",
      "Supprimer l'une des lignes, ou additionner les deux cueillettes.",
    ),
  },
  outOfWalkOrder: {
    title: t("Out of walk order", "Fuera del orden de recorrido", "Hors de l'ordre du parcours"),
    sentence: t(
      "The row does not stand where the crew passed this vine (before and after it in the sheet, row/vine: {neighbours}).",
      "La fila no está donde la cuadrilla pasó por esta planta (antes y después en la hoja, hilera/planta: {neighbours}).",
      "La ligne n'est pas là où l'équipe est passée devant ce cep (avant et après dans la feuille, rang/cep : {neighbours}).",
    ),
    why: t(
      "A vine out of order is often a mistyped row or vine number.",
      "Una planta fuera de orden suele ser un número mal escrito.",
      "Un cep hors d'ordre est souvent un numéro mal saisi.",
    ),
    remedy: t(
      "Compare row and vine with the paper sheet.",
      "Compare hilera y planta con la hoja de papel.",
      "Comparer rang et cep avec la feuille de papier.",
    ),
  },
};
