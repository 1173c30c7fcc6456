import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** What is to be done about a vine's trunks, by urgency. */
export const TRUNK_RENEWAL: Readonly<Record<string, Text>> = {
  noTrunk: t(
    "No trunk lives: keep about five suckers, none thicker than a little finger, and train one.",
    "Ningún tronco vive: dejar unos cinco chupones, ninguno más grueso que un meñique, y formar uno.",
    "Aucun tronc ne vit : garder environ cinq gourmands, pas plus gros qu'un petit doigt, et en former un.",
  ),
  lastTrunkHurt: t(
    "The only live trunk is hurt: bring up {bringUp} from suckers before it is lost.",
    "El único tronco vivo está dañado: criar {bringUp} de chupones antes de perderlo.",
    "Le seul tronc vivant est touché : en élever {bringUp} de gourmands avant de le perdre.",
  ),
  oneTrunk: t(
    "One live trunk: bring up {bringUp} more from a sucker.",
    "Un solo tronco vivo: criar {bringUp} más de un chupón.",
    "Un seul tronc vivant : en élever {bringUp} de plus d'un gourmand.",
  ),
  everyTrunkHurt: t(
    "All {live} live trunks are hurt: bring up {bringUp} from suckers.",
    "Los {live} troncos vivos están dañados: criar {bringUp} de chupones.",
    "Les {live} troncs vivants sont touchés : en élever {bringUp} de gourmands.",
  ),
  hurtTrunk: t(
    "{live} live trunks, of which {replace} is hurt: bring up {bringUp} and replace it once the new one stands.",
    "{live} troncos vivos, de ellos el {replace} dañado: criar {bringUp} y reemplazarlo cuando el nuevo esté.",
    "{live} troncs vivants, dont le {replace} touché : en élever {bringUp} et le remplacer quand le nouveau tient.",
  ),
  belowWanted: t(
    "{live} live trunks, {wanted} wanted: bring up {bringUp} from suckers.",
    "{live} troncos vivos, {wanted} deseados: criar {bringUp} de chupones.",
    "{live} troncs vivants, {wanted} voulus : en élever {bringUp} de gourmands.",
  ),
  none: t("Enough trunks.", "Troncos suficientes.", "Assez de troncs."),
  takeOut: t(
    "Take out dead trunk {takeOut}.",
    "Sacar el tronco muerto {takeOut}.",
    "Enlever le tronc mort {takeOut}.",
  ),
};

/** What a cordon that stays needs. */
export const CORDON_RENEWAL: Readonly<Record<string, Text>> = {
  keep: t("{cordon} needs nothing.", "{cordon} no necesita nada.", "{cordon} n'a besoin de rien."),
  extend: t(
    "Extend {cordon} by {length}, with the thick part of a cane at its end.",
    "Alargar {cordon} {length}, con la parte gruesa de un sarmiento en su punta.",
    "Allonger {cordon} de {length}, avec la partie épaisse d'un sarment à son bout.",
  ),
  replace: t(
    "Renew {cordon} ({triggers}): lay a cane that starts nearer the head than the dead stretch.",
    "Renovar {cordon} ({triggers}): tender un sarmiento que salga más cerca de la cabeza que el tramo muerto.",
    "Renouveler {cordon} ({triggers}) : coucher un sarment qui part plus près de la tête que la partie morte.",
  ),
};

/** What asks for a new cordon. */
export const RENEWAL_TRIGGERS: Readonly<Record<string, Text>> = {
  tooFewSpurs: t("too few spurs", "pocos pitones", "trop peu de coursons"),
  deadArea: t("a dead area", "una zona muerta", "une zone morte"),
  poorSpurs: t("badly placed spurs", "pitones mal ubicados", "coursons mal placés"),
};

/** The cane to look for. */
export const CANE_WANTED: Text = t(
  "Cane wanted: {least} to {most} thick, thick enough over {length}; the outer half of a cane is thin and weak, so fill the wire in stages.",
  "Sarmiento deseado: {least} a {most} de grueso, bastante grueso a lo largo de {length}; la mitad exterior es fina y débil, así que llenar el alambre por etapas.",
  "Sarment voulu : {least} à {most} d'épaisseur, assez épais sur {length} ; la moitié extérieure est mince et faible, donc remplir le fil par étapes.",
);
