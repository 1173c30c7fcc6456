import { t, type FindingText } from "./findingText";

const COUNT_AGAIN = t(
  "Look at the vine, or correct the count from the paper sheet.",
  "Mire la planta o corrija el conteo con la hoja de papel.",
  "Regarder le cep, ou corriger le comptage d'après la feuille de papier.",
);

/** Findings about the counts of one cordon. */
export const SPUR_FINDINGS: Readonly<Record<string, FindingText>> = {
  spursAbovePositions: {
    title: t(
      "More live spurs than positions",
      "Más pitones vivos que posiciones",
      "Plus de coursons que d'emplacements",
    ),
    sentence: t(
      "{spurs} live spurs on {positions} positions cannot be.",
      "{spurs} pitones vivos en {positions} posiciones no puede ser.",
      "{spurs} coursons vivants sur {positions} emplacements, c'est impossible.",
    ),
    why: t(
      "A position carries one spur at most; the cordon would look fuller than it is.",
      "Cada posición lleva un pitón como máximo; el cordón parecería más lleno de lo que está.",
      "Un emplacement porte un courson au plus ; le cordon paraîtrait plus garni qu'il n'est.",
    ),
    remedy: COUNT_AGAIN,
  },
  gapTooLong: {
    title: t(
      "Gap longer than the empty positions",
      "Hueco más largo que las posiciones vacías",
      "Vide plus long que les emplacements vides",
    ),
    sentence: t(
      "The longest gap is {gap}, but only {missing} of {positions} positions are without a live spur.",
      "El hueco más largo es {gap}, pero solo {missing} de {positions} posiciones están sin pitón vivo.",
      "Le plus long vide est de {gap}, mais seuls {missing} emplacements sur {positions} sont sans courson vivant.",
    ),
    why: t(
      "A long gap counts against a cordon for its whole life; a wrong one gets a good cordon cut.",
      "Un hueco largo cuenta contra el cordón toda su vida; uno equivocado hace cortar un buen cordón.",
      "Un long vide compte contre un cordon toute sa vie ; s'il est faux, on coupe un bon cordon.",
    ),
    remedy: COUNT_AGAIN,
  },
  gapTooShort: {
    title: t("Gap shorter than it can be", "Hueco más corto de lo posible", "Vide plus court que possible"),
    sentence: t(
      "{missing} empty positions between {spurs} live spurs leave a gap of at least {least}, but {gap} is written.",
      "{missing} posiciones vacías entre {spurs} pitones vivos dejan un hueco de al menos {least}, pero dice {gap}.",
      "{missing} emplacements vides entre {spurs} coursons vivants laissent un vide d'au moins {least}, mais il est écrit {gap}.",
    ),
    why: t(
      "A gap that is really longer makes a poor cordon look good.",
      "Un hueco que en verdad es más largo hace parecer bueno un mal cordón.",
      "Un vide en réalité plus long fait paraître bon un mauvais cordon.",
    ),
    remedy: COUNT_AGAIN,
  },
  directionsDoNotAddUp: {
    title: t(
      "Down, level and up do not add up",
      "Abajo, de lado y arriba no suman",
      "Bas, côté et haut ne font pas le compte",
    ),
    sentence: t(
      "Spurs down, level and up make {sum}, but {spurs} live spurs are written.",
      "Los pitones abajo, de lado y arriba suman {sum}, pero dice {spurs} pitones vivos.",
      "Les coursons bas, de côté et hauts font {sum}, mais il est écrit {spurs} coursons vivants.",
    ),
    why: t(
      "One of the four counts is wrong, and the choice of the cordon rests on all of them.",
      "Uno de los cuatro conteos está mal, y la elección del cordón depende de todos.",
      "L'un des quatre comptages est faux, et le choix du cordon repose sur tous.",
    ),
    remedy: COUNT_AGAIN,
  },
  spursTooClose: {
    title: t(
      "More positions than fit",
      "Más posiciones de las que caben",
      "Plus d'emplacements que de place",
    ),
    sentence: t(
      "{places} positions cannot stand on {length}{unit} of cordon; at {distance} apart {fit} would fit.",
      "{places} posiciones no caben en {length}{unit} de cordón; a {distance} entre sí cabrían {fit}.",
      "{places} emplacements ne tiennent pas sur {length}{unit} de cordon ; à {distance} l'un de l'autre, il en tiendrait {fit}.",
    ),
    why: t(
      "Length or positions are wrong, or the length is in another unit.",
      "El largo o las posiciones están mal, o el largo está en otra unidad.",
      "La longueur ou les emplacements sont faux, ou la longueur est dans une autre unité.",
    ),
    remedy: t(
      "Check the length and its unit, then the positions.",
      "Revise el largo y su unidad, después las posiciones.",
      "Vérifier la longueur et son unité, puis les emplacements.",
    ),
  },
  aliveAboveCut: {
    title: t(
      "More buds alive than cut",
      "Más yemas vivas que cortadas",
      "Plus de bourgeons vivants que coupés",
    ),
    sentence: t(
      "{column} is {alive}, but only {cut} nodes were cut.",
      "{column} es {alive}, pero solo se cortaron {cut} yemas.",
      "{column} vaut {alive}, mais seuls {cut} yeux ont été coupés.",
    ),
    why: t(
      "The share of dead buds decides how many nodes the whole block keeps.",
      "La parte de yemas muertas decide cuántas yemas conserva todo el cuartel.",
      "La part de bourgeons morts décide du nombre d'yeux gardés dans toute la parcelle.",
    ),
    remedy: t(
      "Ask whoever cut the cane, or leave the cane out.",
      "Pregunte a quien cortó el sarmiento, o déjelo fuera.",
      "Demander à la personne qui a coupé le sarment, ou l'écarter.",
    ),
  },
  deadWithSpurs: {
    title: t(
      "Dead cordon with live spurs",
      "Cordón muerto con pitones vivos",
      "Cordon mort avec des coursons vivants",
    ),
    sentence: t(
      "The cordon is called dead, but {spurs} live spurs are counted on it.",
      "El cordón figura como muerto, pero tiene {spurs} pitones vivos contados.",
      "Le cordon est dit mort, mais {spurs} coursons vivants y sont comptés.",
    ),
    why: t(
      "A live cordon would be cut, or a dead one kept.",
      "Se cortaría un cordón vivo o quedaría uno muerto.",
      "On couperait un cordon vivant, ou on garderait un mort.",
    ),
    remedy: t(
      "Cut into the bark at the vine and correct the row.",
      "Raspe la corteza en la planta y corrija la fila.",
      "Entailler l'écorce sur le cep et corriger la ligne.",
    ),
  },
  deadTrunkLiveCordon: {
    title: t(
      "Live cordon on a dead trunk",
      "Cordón vivo en un tronco muerto",
      "Cordon vivant sur un tronc mort",
    ),
    sentence: t(
      "The trunk is called dead, but its cordon has {spurs} live spurs.",
      "El tronco figura como muerto, pero su cordón tiene {spurs} pitones vivos.",
      "Le tronc est dit mort, mais son cordon a {spurs} coursons vivants.",
    ),
    why: t(
      "Either the trunk lives or the cordon hangs on another one.",
      "O el tronco vive o el cordón sale de otro.",
      "Ou le tronc vit, ou le cordon part d'un autre.",
    ),
    remedy: t(
      "Follow the cordon to its trunk and correct the row.",
      "Siga el cordón hasta su tronco y corrija la fila.",
      "Suivre le cordon jusqu'à son tronc et corriger la ligne.",
    ),
  },
};
