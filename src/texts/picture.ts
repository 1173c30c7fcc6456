import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Texts of the picture of a vine. */
export const PICTURE_TEXTS = {
  title: t("Drawing of the vine to scale.", "Dibujo de la planta a escala.", "Dessin du cep à l'échelle."),
  cordon: t(
    "{side} {cordon}: {length}, {spurs} live spurs, longest gap {gap}, trunk {trunk}, {verdict}.",
    "{side} {cordon}: {length}, {spurs} pitones vivos, hueco más largo {gap}, tronco {trunk}, {verdict}.",
    "{side} {cordon} : {length}, {spurs} coursons vivants, plus long vide {gap}, tronc {trunk}, {verdict}.",
  ),
  key: t(
    "Drawn from the counts: solid stays, dashed goes, dotted is asked about; ticks are live spurs, hatching the longest gap (where it lies is not on the sheet).",
    "Dibujado según los conteos: continuo queda, rayado se corta, punteado se pregunta; las marcas son pitones vivos, el sombreado el hueco más largo (la hoja no dice dónde está).",
    "Dessiné d'après les comptages : plein reste, tirets part, pointillé à voir ; les traits sont des coursons vivants, les hachures le plus long vide (la feuille ne dit pas où).",
  ),
  unknown: t("not counted", "sin contar", "pas compté"),
} as const satisfies Record<string, Text>;
