import type { Setting } from "./setting";
import { figure, share } from "./figure";

/** Settings for the renewal of trunks and cordons. */
export const RENEWAL_SETTINGS: readonly Setting[] = [
  figure("Trunks wanted on a vine", 2, "trunks", "msu2002", [1, 6], {
    en: "Live trunks a vine should have: normally 2, up to 4 for very tender cultivars.",
    es: "Troncos vivos que una planta debería tener: normalmente 2, hasta 4 en variedades muy sensibles.",
    fr: "Troncs vivants qu'un cep devrait avoir : normalement 2, jusqu'à 4 pour les cépages très sensibles.",
  }),
  share("Empty share that renews a cordon", 0.33, "ours", {
    en: "From this share of places without a live spur on, a cordon is to be renewed. No source gives a share: Oregon State names yield decline, dead areas, poor spur locations and too few spurs.",
    es: "Desde esta parte de lugares sin pitón vivo, el cordón se renueva. Ninguna fuente da una cifra: Oregon State nombra menos cosecha, zonas muertas, pitones mal ubicados y pocos pitones.",
    fr: "Dès cette part de places sans courson vivant, le cordon est à renouveler. Aucune source ne donne de part : Oregon State cite baisse de récolte, zones mortes, coursons mal placés et trop peu de coursons.",
  }),
  share("Badly placed share that renews a cordon", 0.5, "ours", {
    en: "From this share of live spurs that point the wrong way on, a cordon is to be renewed. No source gives a share.",
    es: "Desde esta parte de pitones vivos mal orientados, el cordón se renueva. Ninguna fuente da una cifra.",
    fr: "Dès cette part de coursons vivants mal orientés, le cordon est à renouveler. Aucune source ne donne de part.",
  }),
  share("Thick share of a new cane", 0.5, "klodd2020", {
    en: "How much of a cane is laid in one year: its outer half is thin and weak, so a cordon is extended in stages.",
    es: "Cuánto de un sarmiento se tiende en un año: su mitad exterior es fina y débil, así que el cordón se alarga por etapas.",
    fr: "Part d'un sarment couchée en un an : sa moitié extérieure est mince et faible, le cordon s'allonge donc par étapes.",
  }),
  share("Trunks lost a year", 0.05, "ours", {
    en: "Share of live trunks that a winter kills, for the forecast of renewal; the farm's own counts tell better.",
    es: "Parte de troncos vivos que mata un invierno, para el pronóstico; los conteos de la finca dicen más.",
    fr: "Part des troncs vivants que tue un hiver, pour la prévision ; les comptages de la ferme disent mieux.",
  }),
  share("Missing trunks brought up a year", 0.5, "ours", {
    en: "Share of vines below the wanted number on which one trunk more is standing after a year.",
    es: "Parte de plantas por debajo de lo deseado en las que un año después hay un tronco más.",
    fr: "Part des ceps sous le nombre voulu qui ont un tronc de plus après un an.",
  }),
];
