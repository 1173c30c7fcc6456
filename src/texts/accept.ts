import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Texts for accepting all settled vines of a block in one step. */
export const ACCEPT_TEXTS = {
  chooseBlock: t(
    "Choose a block to accept all its settled vines in one step.",
    "Elija un cuartel para aceptar de una vez todas sus plantas sin preguntas.",
    "Choisissez une parcelle pour accepter d'un coup tous ses ceps sans question.",
  ),
  progress: t(
    "{block}: {accepted} of {all} vines accepted in the sheet, {open} settled and not yet accepted, {ask} with a question left.",
    "{block}: {accepted} de {all} plantas aceptadas en la hoja, {open} sin preguntas y aún no aceptadas, {ask} con una pregunta pendiente.",
    "{block} : {accepted} ceps sur {all} acceptés dans la feuille, {open} sans question et pas encore acceptés, {ask} avec une question ouverte.",
  ),
  progressName: t("Vines accepted", "Plantas aceptadas", "Ceps acceptés"),
  ask: t(
    "Accept the settled vines: {vines}",
    "Aceptar las plantas sin preguntas: {vines}",
    "Accepter les ceps sans question : {vines}",
  ),
  title: t("Accept {block}", "Aceptar {block}", "Accepter {block}"),
  wouldWrite: t(
    "Would write in the column Fixed choice: cells {cells}, vines {vines}. Vines with a question left: {ask}; they are not touched. Cells that hold something are not touched either.",
    "Escribiría en la columna Decisión fija: celdas {cells}, plantas {vines}. Plantas con una pregunta pendiente: {ask}; no se tocan. Las celdas que ya tienen algo tampoco se tocan.",
    "Écrirait dans la colonne Choix fixé : cellules {cells}, ceps {vines}. Ceps avec une question ouverte : {ask} ; on n'y touche pas. Les cellules déjà remplies restent aussi telles quelles.",
  ),
  unreadable: t(
    "Passed over, because the cell for the fixed choice holds a formula or another word: vines {unreadable}.",
    "Se pasan por alto, porque la celda de la decisión fija tiene una fórmula u otra palabra: plantas {unreadable}.",
    "Laissés de côté, car la cellule du choix fixé contient une formule ou un autre mot : ceps {unreadable}.",
  ),
  by: t("Your name or initials", "Su nombre o iniciales", "Votre nom ou vos initiales"),
  byHelp: t(
    "The name goes into the log of runs, where that is switched on.",
    "El nombre va al registro de acciones, si está activado.",
    "Le nom va au journal des actions, s'il est activé.",
  ),
  noName: t(
    "Write your name or initials first; nothing was written.",
    "Escriba primero su nombre o iniciales; no se escribió nada.",
    "Écrivez d'abord votre nom ou vos initiales ; rien n'a été écrit.",
  ),
  yes: t("Yes, write {cells} cells", "Sí, escribir {cells} celdas", "Oui, écrire {cells} cellules"),
  done: t(
    "{block} accepted by {by}: vines {vines}, cells written {cells} in the column Fixed choice.",
    "{block} aceptado por {by}: plantas {vines}, celdas escritas {cells} en la columna Decisión fija.",
    "{block} accepté par {by} : ceps {vines}, cellules écrites {cells} dans la colonne Choix fixé.",
  ),
  meanwhile: t(
    "Cell {cell} of sheet {sheet} was changed meanwhile; nothing was accepted. Next step: decide again.",
    "La celda {cell} de la hoja {sheet} cambió entretanto; no se aceptó nada. Siguiente paso: decida otra vez.",
    "La cellule {cell} de la feuille {sheet} a changé entre-temps ; rien n'a été accepté. Prochaine étape : décidez encore.",
  ),
  takeBack: t("Take back: {block} accepted", "Deshacer: {block} aceptado", "Annuler : {block} accepté"),
  takenBack: t(
    "Taken back: {cells} cells of {block} hold what they held before.",
    "Deshecho: {cells} celdas de {block} tienen lo que tenían antes.",
    "Annulé : {cells} cellules de {block} contiennent ce qu'elles avaient avant.",
  ),
  partlyBack: t(
    "{cells} cells of {block} hold what they held before; left alone, because somebody changed them since: {left}. Next step: decide again.",
    "{cells} celdas de {block} tienen lo que tenían antes; sin tocar, porque alguien las cambió después: {left}. Siguiente paso: decida otra vez.",
    "{cells} cellules de {block} contiennent ce qu'elles avaient avant ; laissées, car quelqu'un les a changées depuis : {left}. Prochaine étape : décidez encore.",
  ),
} as const satisfies Record<string, Text>;
