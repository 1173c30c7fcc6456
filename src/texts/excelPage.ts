import type { Text } from "./language";

/** What the add-in's page says when it cannot start in Excel. */
export const EXCEL_PAGE = {
  noOffice: {
    en: "Microsoft's Office script could not be loaded, so Cordonbook cannot reach the workbook. Check the network and open the pane again.",
    es: "No se pudo cargar el script de Office de Microsoft y Cordonbook no llega al libro. Revise la red y abra el panel otra vez.",
    fr: "Le script Office de Microsoft n'a pas pu être chargé : Cordonbook n'a pas accès au classeur. Vérifiez le réseau et rouvrez le volet.",
  },
  notInExcel: {
    en: "This page works inside Excel only. Without Excel, use the page that npm start opens.",
    es: "Esta página solo funciona dentro de Excel. Sin Excel, use la página que abre npm start.",
    fr: "Cette page ne fonctionne que dans Excel. Sans Excel, utilisez la page qu'ouvre npm start.",
  },
  tooOld: {
    en: "This Excel is too old for Cordonbook: it lacks {missing}. It works in Excel on the web, Microsoft 365, and Office LTSC 2021 or later.",
    es: "Este Excel es demasiado antiguo para Cordonbook: le falta {missing}. Funciona en Excel en la web, Microsoft 365 y Office LTSC 2021 o posterior.",
    fr: "Cet Excel est trop ancien pour Cordonbook : il lui manque {missing}. Il faut Excel sur le web, Microsoft 365 ou Office LTSC 2021 ou plus récent.",
  },
} as const satisfies Record<string, Text>;
