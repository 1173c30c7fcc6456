import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** What a shared workbook has in Excel, the PivotTable of gaps, and a colleague met on the way. */
export const UPKEEP_TEXTS = {
  copyTitle: t(
    "For people without Cordonbook",
    "Para quien no tiene Cordonbook",
    "Pour ceux qui n'ont pas Cordonbook",
  ),
  copyIntro: t(
    "Opens a copy in which every cell with a CORDON function holds its value. This workbook stays as it is.",
    "Abre una copia en la que cada celda con una función CORDON tiene su valor. Este libro queda como está.",
    "Ouvre une copie où chaque cellule avec une fonction CORDON contient sa valeur. Ce classeur reste tel quel.",
  ),
  copy: t("Copy with values only", "Copia solo con valores", "Copie avec valeurs seulement"),
  copied: t(
    "The copy is open: {count} cells hold their values, {errors} of them an error.",
    "La copia está abierta: {count} celdas tienen su valor, {errors} de ellas un error.",
    "La copie est ouverte : {count} cellules contiennent leur valeur, dont {errors} une erreur.",
  ),
  openingTitle: t("When this workbook is opened", "Al abrir este libro", "À l'ouverture de ce classeur"),
  openingIntro: t(
    "Colleagues without Cordonbook would see a notice of Office each time; leave it off where there are some.",
    "Los colegas sin Cordonbook verían un aviso de Office cada vez; déjelo apagado si los hay.",
    "Les collègues sans Cordonbook verraient chaque fois un avis d'Office ; laissez désactivé s'il y en a.",
  ),
  openingSwitch: t(
    "Start Cordonbook with this workbook",
    "Iniciar Cordonbook con este libro",
    "Démarrer Cordonbook avec ce classeur",
  ),
  pivot: t("Pivot of gaps", "Tabla dinámica de huecos", "Tableau croisé des vides"),
  pivotMade: t(
    "The PivotTable is on the sheet {sheet}.",
    "La tabla dinámica está en la hoja {sheet}.",
    "Le tableau croisé est sur la feuille {sheet}.",
  ),
  pivotRefreshed: t(
    "The PivotTable was refreshed; its layout is as you left it.",
    "La tabla dinámica se actualizó; su diseño sigue como lo dejó.",
    "Le tableau croisé a été actualisé ; sa mise en page est restée la vôtre.",
  ),
  pivotTable: t(
    "There are no PivotTables here; the same figures stand on the sheet {sheet}.",
    "Aquí no hay tablas dinámicas; las mismas cifras están en la hoja {sheet}.",
    "Il n'y a pas de tableaux croisés ici ; les mêmes chiffres sont sur la feuille {sheet}.",
  ),
  readAgain: t(
    "A colleague changed {sheets} during the run, so it was read again.",
    "Un colega cambió {sheets} durante la ejecución, así que se leyó otra vez.",
    "Un collègue a modifié {sheets} pendant l'exécution ; la lecture a donc été refaite.",
  ),
  openingAsk: t("Look whether it is on", "Ver si está activado", "Voir si c'est activé"),
} as const satisfies Record<string, Text>;
