import type { Setting } from "./setting";
import { figure, oneOf, share } from "./figure";

/** Settings for thresholds of the checks. */
export const CHECK_SETTINGS: readonly Setting[] = [
  oneOf("Unit system", "from headers", ["from headers", "US", "metric"], "ours", {
    en: "Unit of lengths and weights under headers that name none: US (ft, in, lb), metric (m, mm, kg), or that of the headers which do name one.",
    es: "Unidad de largos y pesos bajo encabezados sin unidad: US (ft, in, lb), metric (m, mm, kg), o la de los encabezados que sí la nombran.",
    fr: "Unité des longueurs et poids sous les en-têtes sans unité : US (ft, in, lb), metric (m, mm, kg), ou celle des en-têtes qui en nomment une.",
  }),
  figure("Least distance between spurs", 2, "in", "ours", [0.5, 12], {
    en: "Spur positions closer than this on average cannot be right; published spacings begin at 3 in (Minnesota 2022).",
    es: "Posiciones más juntas que esto en promedio no pueden ser; las distancias publicadas empiezan en 3 in (Minnesota 2022).",
    fr: "Des emplacements plus serrés que cela en moyenne sont impossibles ; les distances publiées commencent à 3 in (Minnesota 2022).",
  }),
  figure("Unlike its block: spread", 4, "times", "ours", [2, 20], {
    en: "A value this many times the block's usual spread away from its middle is asked about (median and median deviation; Iglewicz and Hoaglin 1993 begin at 3.5, from memory).",
    es: "Se pregunta por un valor tan lejos del centro de su cuartel, en veces la dispersión usual (mediana; Iglewicz y Hoaglin 1993 empiezan en 3,5, de memoria).",
    fr: "On demande pour une valeur si loin du milieu de sa parcelle, en multiples de l'écart habituel (médiane ; Iglewicz et Hoaglin 1993 commencent à 3,5, de mémoire).",
  }),
  figure("Unlike its block: least values", 12, "values", "ours", [5, 1000], {
    en: "A block with fewer values than this is too small to say what is usual in it.",
    es: "Un cuartel con menos valores que esto es demasiado chico para saber qué es usual.",
    fr: "Une parcelle avec moins de valeurs que cela est trop petite pour dire ce qui y est habituel.",
  }),
  figure("Walk order: most vines out of order", 0.2, "share", "ours", [0, 0.5], {
    en: "When more of a row's vines than this stand out of order, the sheet was sorted another way and its order is not judged.",
    es: "Si más plantas de la hilera que esta parte están fuera de orden, la hoja se ordenó de otra manera y no se juzga.",
    fr: "Si plus de ceps du rang que cette part sont hors d'ordre, la feuille a été triée autrement et son ordre n'est pas jugé.",
  }),
  figure("Cordon length: most of its space", 1.35, "times", "ours", [1, 5], {
    en: "A cordon longer than this many times its side's share of the vine spacing is asked about.",
    es: "Se pregunta por un cordón más largo que tantas veces la parte de su lado en el espacio de la planta.",
    fr: "On demande pour un cordon plus long que ce multiple de la part de son côté dans l'espace du cep.",
  }),
  figure("Cordon length: least of its space", 0.4, "times", "ours", [0, 1], {
    en: "A sound cordon of a bearing vine shorter than this many times its side's share is asked about.",
    es: "Se pregunta por un cordón sano de una planta en producción más corto que tantas veces su parte.",
    fr: "On demande pour un cordon sain d'un cep en production plus court que ce multiple de sa part.",
  }),
  figure("Cordon diameter, least", 0.25, "in", "ours", [0, 6], {
    en: "A thinner cordon is asked about; wood for spurs and canes is 5/16 to 1/2 in thick (Westover 2016).",
    es: "Se pregunta por un cordón más delgado; la madera para pitones y cargadores mide 5/16 a 1/2 in (Westover 2016).",
    fr: "On demande pour un cordon plus mince ; le bois des coursons et des longs bois fait 5/16 à 1/2 in (Westover 2016).",
  }),
  figure("Cordon diameter, most", 3, "in", "ours", [0.5, 6], {
    en: "A thicker cordon is asked about. No published limit was seen.",
    es: "Se pregunta por un cordón más grueso. No se vio límite publicado.",
    fr: "On demande pour un cordon plus gros. Aucune limite publiée n'a été vue.",
  }),
  figure("Nodes a spur, least", 1, "nodes", "common practice", [0, 15], {
    en: "Fewer nodes a spur than this are asked about.",
    es: "Se pregunta si hay menos yemas por pitón que esto.",
    fr: "On demande s'il y a moins d'yeux par courson que cela.",
  }),
  figure("Nodes a spur, most", 4, "nodes", "ours", [1, 15], {
    en: "More nodes a spur than this are asked about; two to three are usual (UMN 2022), four before a second pass.",
    es: "Se pregunta si hay más yemas por pitón que esto; lo usual es dos a tres (UMN 2022), cuatro antes de una segunda pasada.",
    fr: "On demande s'il y a plus d'yeux par courson que cela ; deux à trois sont d'usage (UMN 2022), quatre avant un second passage.",
  }),
  figure("Trunks a vine, most", 4, "trunks", "msu2002", [1, 12], {
    en: "A vine with more trunks is asked about: two are usual, up to four on very tender cultivars.",
    es: "Se pregunta por una planta con más troncos: lo usual es dos, hasta cuatro en variedades muy sensibles.",
    fr: "On demande pour un cep avec plus de troncs : deux sont d'usage, jusqu'à quatre pour les cépages très sensibles.",
  }),
  figure("Season of counts: first month", 11, "month", "common practice", [1, 12], {
    en: "Cordons and buds are counted on dormant vines from this month on.",
    es: "Los cordones y las yemas se cuentan en plantas en reposo desde este mes.",
    fr: "Les cordons et les bourgeons se comptent sur des ceps au repos à partir de ce mois.",
  }),
  figure("Season of counts: last month", 5, "month", "common practice", [1, 12], {
    en: "Cordons and buds are counted up to this month.",
    es: "Los cordones y las yemas se cuentan hasta este mes.",
    fr: "Les cordons et les bourgeons se comptent jusqu'à ce mois.",
  }),
  share("Counted row: least share of its vines", 0.5, "ours", {
    en: "In a row of which this share was counted, a vine without a cordon is asked about; below it the row is still being counted.",
    es: "En una hilera de la que se contó esta parte se pregunta por una planta sin cordón; por debajo aún se está contando.",
    fr: "Dans un rang dont cette part est comptée, on demande pour un cep sans cordon ; en dessous, le rang est encore en cours.",
  }),
  figure("Copied down: unlikelihood", 6, "powers of ten", "ours", [3, 20], {
    en: "Neighbouring vines with equal numbers are asked about when chance makes such a run less than once in ten to this power.",
    es: "Se pregunta por plantas vecinas con números iguales cuando el azar las da menos de una vez en diez elevado a esta cifra.",
    fr: "On demande pour des ceps voisins aux nombres égaux quand le hasard les donne moins d'une fois sur dix puissance ce chiffre.",
  }),
  figure("Swapped columns: least rows", 3, "rows", "ours", [2, 50], {
    en: "So many rows that only fit with two columns exchanged are taken for a stretch of swapped columns.",
    es: "Tantas filas que solo cuadran con dos columnas cambiadas se toman por un tramo de columnas cambiadas.",
    fr: "Autant de lignes qui ne concordent qu'avec deux colonnes échangées passent pour une suite de colonnes échangées.",
  }),
  figure("Digit preference: least values", 40, "values", "ours", [10, 1000], {
    en: "A counter with fewer values is not judged.",
    es: "No se juzga a quien tiene menos valores.",
    fr: "Une personne avec moins de valeurs n'est pas jugée.",
  }),
  figure("Digit preference: share more than others", 0.25, "share", "ours", [0.05, 1], {
    en: "A counter is asked whose values end in 0 or 5 more often than those of the others by at least this share.",
    es: "Se pregunta a quien tiene valores terminados en 0 o 5 al menos en esta parte más que los demás.",
    fr: "On demande à qui a des valeurs finissant par 0 ou 5 au moins dans cette part de plus que les autres.",
  }),
  figure("Digit preference: standard errors", 5, "times", "ours", [2, 20], {
    en: "And the difference must be this many times what chance makes of it.",
    es: "Y la diferencia debe ser tantas veces lo que da el azar.",
    fr: "Et l'écart doit être tant de fois ce que donne le hasard.",
  }),
  figure("Counter unlike others: standard errors", 5, "times", "ours", [2, 20], {
    en: "A counter whose rows differ from the others' in the same blocks by this many times what chance makes of it is asked about.",
    es: "Se pregunta por quien difiere de los demás en los mismos cuarteles tantas veces lo que da el azar.",
    fr: "On demande pour qui diffère des autres dans les mêmes parcelles de tant de fois ce que donne le hasard.",
  }),
  figure("Counter unlike others: least difference", 0.15, "share", "ours", [0.01, 2], {
    en: "And the difference must be at least this share of the others' figure.",
    es: "Y la diferencia debe ser al menos esta parte de la cifra de los demás.",
    fr: "Et l'écart doit faire au moins cette part du chiffre des autres.",
  }),
  figure("Last year: most positions more", 2, "positions", "ours", [0, 20], {
    en: "A cordon with more new positions than this, beyond what its growth in length gives, is asked about.",
    es: "Se pregunta por un cordón con más posiciones nuevas que esto, aparte de lo que da su crecimiento en largo.",
    fr: "On demande pour un cordon avec plus de nouveaux emplacements que cela, au-delà de ce que donne son allongement.",
  }),
];
