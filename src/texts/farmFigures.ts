import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Taking a figure that the farm's own harvests propose. */
export const FARM_FIGURE_TEXTS = {
  take: t("Use {value}", "Usar {value}", "Utiliser {value}"),
  takeName: t("Use {value}: {figure}", "Usar {value}: {figure}", "Utiliser {value} : {figure}"),
  wouldWrite: t(
    "{value} would be written to {where}. Nothing is written yet.",
    "Se escribiría {value} en {where}. Todavía no se escribe nada.",
    "{value} serait écrit dans {where}. Rien n'est encore écrit.",
  ),
  cropMoves: t(
    "{block}: likely crop {before} → {after} {unit} (range {beforeLow} to {beforeHigh} → {afterLow} to {afterHigh})",
    "{block}: cosecha probable {before} → {after} {unit} (rango {beforeLow} a {beforeHigh} → {afterLow} a {afterHigh})",
    "{block} : récolte probable {before} → {after} {unit} (fourchette {beforeLow} à {beforeHigh} → {afterLow} à {afterHigh})",
  ),
  cropStays: t(
    "No block's crop outlook would move.",
    "No se movería el pronóstico de ningún cuartel.",
    "La prévision d'aucune parcelle ne bougerait.",
  ),
  yes: t("Yes, write it", "Sí, escribirlo", "Oui, l'écrire"),
  taken: t(
    "{figure} is {value} from now on, written to {where} by {by}, {on}.",
    "{figure} es {value} desde ahora, escrito en {where} por {by}, {on}.",
    "{figure} vaut {value} désormais, écrit dans {where} par {by}, {on}.",
  ),
  undo: t("Undo", "Deshacer", "Annuler"),
  undone: t("{figure} is as it was.", "{figure} está como antes.", "{figure} est comme avant."),
  meanwhile: t(
    "Somebody else changed {where} meanwhile, so nothing was written. Look at it again.",
    "Otra persona cambió {where} entretanto; no se escribió nada. Mírelo otra vez.",
    "Quelqu'un d'autre a changé {where} entre-temps ; rien n'a été écrit. Regardez-le à nouveau.",
  ),
  noColumn: t(
    "The sheet {sheet} has no column “{header}” to take this figure: add that head, then work out the outlook again.",
    "La hoja {sheet} no tiene la columna «{header}» para esta cifra: añada ese encabezado y calcule el pronóstico otra vez.",
    "La feuille {sheet} n'a pas de colonne « {header} » pour ce chiffre : ajoutez cet en-tête et recalculez la prévision.",
  ),
  formula: t(
    "{where} holds a formula; it was left alone. Type a value there first, or keep the formula.",
    "{where} tiene una fórmula; se dejó como está. Escriba antes un valor ahí, o deje la fórmula.",
    "{where} contient une formule ; elle est laissée telle quelle. Tapez-y d'abord une valeur, ou gardez la formule.",
  ),
  gone: t(
    "The harvests no longer propose this figure. Work out the outlook again.",
    "Las cosechas ya no proponen esta cifra. Calcule el pronóstico otra vez.",
    "Les récoltes ne proposent plus ce chiffre. Recalculez la prévision.",
  ),
} as const satisfies Record<string, Text>;
