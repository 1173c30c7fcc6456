import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Texts for overruling an answer, taking a decision back, and asking what it hangs on. */
export const OVERRULE_TEXTS = {
  heading: t("Overrule", "Decidir otra cosa", "Décider autrement"),
  reason: t("Reason, for the note", "Motivo, para la nota", "Raison, pour la remarque"),
  overrule: t("{cordon} stays instead", "Queda {cordon} en su lugar", "{cordon} reste à la place"),
  noReason: t(
    "Write down why first: the reason goes into the note beside the cordon.",
    "Anote primero por qué: el motivo va a la nota junto al cordón.",
    "Notez d'abord pourquoi : la raison va dans la remarque à côté du cordon.",
  ),
  noNote: t(
    "The sheet {sheet} has no column Note, where the reason goes. Next step: write that head beside its table, then decide again.",
    "La hoja {sheet} no tiene la columna Nota, donde va el motivo. Siguiente paso: escriba ese encabezado junto a la tabla y decida otra vez.",
    "La feuille {sheet} n'a pas de colonne Remarque, où va la raison. Prochaine étape : écrivez cet en-tête à côté du tableau, puis décidez encore.",
  ),
  takeBack: t("Take back: {cordon} stays", "Deshacer: {cordon} queda", "Annuler : {cordon} reste"),
  partlyBack: t(
    "Cells that hold again what they held before: {cells}; left alone, because somebody changed them since: {left}. Next step: decide again.",
    "Celdas que vuelven a tener lo que tenían: {cells}; sin tocar, porque alguien las cambió después: {left}. Siguiente paso: decida otra vez.",
    "Cellules qui contiennent de nouveau ce qu'elles avaient : {cells} ; laissées, car quelqu'un les a changées depuis : {left}. Prochaine étape : décidez encore.",
  ),
  takenBack: t(
    "Taken back: the cells hold what they held before {cordon} was fixed.",
    "Deshecho: las celdas tienen lo que tenían antes de fijar {cordon}.",
    "Annulé : les cellules contiennent ce qu'elles avaient avant de fixer {cordon}.",
  ),
  progress: t(
    "{block}: {decided} of {vines} vines decided",
    "{block}: {decided} de {vines} plantas decididas",
    "{block} : {decided} ceps sur {vines} décidés",
  ),
  whatTurns: t("What would turn it?", "¿Qué lo cambiaría?", "Qu'est-ce qui le changerait ?"),
  nothingTurns: t(
    "No single count up to five away and no single weight would turn it.",
    "Ningún conteo a cinco o menos y ningún peso por sí solo lo cambiaría.",
    "Aucun comptage à cinq près et aucun poids seul ne le changerait.",
  ),
  liveSpurs: t(
    "{side} {cordon}: {to} live spurs instead of {from}.",
    "{side} {cordon}: {to} pitones vivos en vez de {from}.",
    "{side} {cordon} : {to} coursons vivants au lieu de {from}.",
  ),
  longestGap: t(
    "{side} {cordon}: a longest gap of {to} instead of {from}.",
    "{side} {cordon}: un hueco más largo de {to} en vez de {from}.",
    "{side} {cordon} : un plus long vide de {to} au lieu de {from}.",
  ),
  figure: t(
    "Settings, {figure}: {to} instead of {from}.",
    "Ajustes, {figure}: {to} en vez de {from}.",
    "Réglages, {figure} : {to} au lieu de {from}.",
  ),
  risk: t("How much hangs on counting?", "¿Cuánto depende del conteo?", "Combien dépend du comptage ?"),
  riskFound: t(
    "{block}: were every count off by one, another cordon would stay on {flips} of the vines; on {decided} of those that are decided without a question ({of} vines, counted anew {draws} times).",
    "{block}: si cada conteo errara por uno, quedaría otro cordón en {flips} de las plantas; en {decided} de las decididas sin pregunta ({of} plantas, recontadas {draws} veces).",
    "{block} : si chaque comptage se trompait d'un, un autre cordon resterait sur {flips} des ceps ; sur {decided} de ceux décidés sans question ({of} ceps, recomptés {draws} fois).",
  ),
} as const satisfies Record<string, Text>;

/** Names of the figures as the Settings sheet has them. */
export const FIGURE_NAMES = {
  spurs: "Weight of live spurs",
  stretch: "Weight of longest gap",
  placing: "Weight of spur placing",
  soundness: "Weight of soundness",
  diameter: "Weight of diameter",
  twoTrunks: "Two cordons on two trunks",
  newCane: "Worth of a new cane",
  injuredTrunk: "Cost of an injured trunk",
  diseasedTrunk: "Cost of a diseased trunk",
} as const;
