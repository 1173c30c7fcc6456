import type { Text } from "./language";

/** Sentences for what only a workbook that is open in Excel can run into; part of WORKBOOK_PROBLEMS. */
export const EXCEL_PROBLEMS: Readonly<Record<string, Text>> = {
  halfWritten: {
    en: 'Excel refused to finish "{sheet}" and also to put it back. Use Undo, or close without saving; what stood there before is on the sheet "{kept}" if one is named.',
    es: 'Excel no dejó terminar "{sheet}" ni dejarla como estaba. Use Deshacer o cierre sin guardar; lo anterior está en la hoja "{kept}" si se nombra una.',
    fr: "Excel a refusé de terminer « {sheet} » et aussi de la remettre en état. Utilisez Annuler ou fermez sans enregistrer ; l'ancien contenu est sur la feuille « {kept} » si elle est nommée.",
  },
  marksHalfSet: {
    en: "Excel refused to finish the marks, and some may be missing. Run the check again; the cells themselves are unchanged.",
    es: "Excel no dejó terminar las marcas y pueden faltar algunas. Repita la revisión; las celdas mismas no cambiaron.",
    fr: "Excel a refusé de terminer le marquage ; il peut manquer des marques. Relancez le contrôle ; les cellules elles-mêmes n'ont pas changé.",
  },
  inTheWay: {
    en: 'Row {row} of the sheet "{sheet}" holds something that is not part of its table, where the new table would go. Move it, then run again; nothing was changed.',
    es: 'En la fila {row} de la hoja "{sheet}" hay algo ajeno a su tabla, justo donde iría la nueva. Muévalo y repita; no se cambió nada.',
    fr: "La ligne {row} de la feuille « {sheet} » contient quelque chose d'étranger à son tableau, là où irait le nouveau. Déplacez-le, puis recommencez ; rien n'a été changé.",
  },
  sheetKeepsChanging: {
    en: 'Rows of the sheet "{sheet}" came or went while it was read, three times over. Run again when your colleague has finished.',
    es: 'Mientras se leía la hoja "{sheet}" aparecieron o desaparecieron filas, tres veces. Repita cuando su colega haya terminado.',
    fr: "Des lignes de la feuille « {sheet} » sont apparues ou ont disparu pendant la lecture, trois fois de suite. Recommencez quand votre collègue aura fini.",
  },
  notAFormula: {
    en: 'What was to go into row {row}, column {column} of "{sheet}" is not a formula: it must begin with "=". Nothing was changed.',
    es: 'Lo que iba en la fila {row}, columna {column} de "{sheet}" no es una fórmula: debe empezar por "=". No se cambió nada.',
    fr: "Ce qui devait aller en ligne {row}, colonne {column} de « {sheet} » n'est pas une formule : elle doit commencer par « = ». Rien n'a été changé.",
  },
  pivotLost: {
    en: 'The PivotTable "{name}" cannot be refreshed: its source is gone or another one. Delete it, then run again to have it made anew.',
    es: 'La tabla dinámica "{name}" no se puede actualizar: su origen ya no existe o es otro. Bórrela y repita para crearla de nuevo.',
    fr: "Le tableau croisé « {name} » ne peut pas être actualisé : sa source a disparu ou a changé. Supprimez-le, puis recommencez pour le recréer.",
  },
  hiddenSheet: {
    en: 'The sheet "{sheet}" is hidden. Show it (right-click on a sheet tab, Unhide) and try again.',
    es: 'La hoja "{sheet}" está oculta. Muéstrela (clic derecho en una pestaña, Mostrar) e inténtelo de nuevo.',
    fr: "La feuille « {sheet} » est masquée. Affichez-la (clic droit sur un onglet, Afficher), puis réessayez.",
  },
  cellBeingEdited: {
    en: "A cell is being edited. Press Enter or Esc in the sheet and try again; nothing was changed.",
    es: "Hay una celda en edición. Pulse Entrar o Esc en la hoja e inténtelo de nuevo; no se cambió nada.",
    fr: "Une cellule est en cours de saisie. Appuyez sur Entrée ou Échap dans la feuille, puis réessayez ; rien n'a été changé.",
  },
  tooMuchAtOnce: {
    en: 'One row of "{sheet}" is too large for a single message to Excel. Shorten its longest text and run again; nothing was changed.',
    es: 'Una fila de "{sheet}" es demasiado grande para un solo mensaje a Excel. Acorte su texto más largo y repita; no se cambió nada.',
    fr: "Une ligne de « {sheet} » est trop grande pour un seul message à Excel. Raccourcissez son texte le plus long, puis recommencez ; rien n'a été changé.",
  },
  notInThisExcel: {
    en: "This copy of Excel cannot do that ({reason}); nothing was changed. The self-test in the pane lists what it can do.",
    es: "Esta copia de Excel no puede hacerlo ({reason}); no se cambió nada. La autoprueba del panel muestra lo que puede hacer.",
    fr: "Cette version d'Excel ne sait pas le faire ({reason}) ; rien n'a été changé. L'autotest du volet indique ce qu'elle sait faire.",
  },
  excelRefused: {
    en: "Excel refused ({reason}); nothing was changed. Try again, and if it stays so, save, close and open the workbook.",
    es: "Excel no lo permitió ({reason}); no se cambió nada. Inténtelo de nuevo y, si sigue igual, guarde, cierre y abra el libro.",
    fr: "Excel a refusé ({reason}) ; rien n'a été changé. Réessayez et, si cela persiste, enregistrez, fermez et rouvrez le classeur.",
  },
};
