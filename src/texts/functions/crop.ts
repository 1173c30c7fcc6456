import { t, type FunctionText } from "./functionText";
import { CLUSTER_WEIGHT, NODES_PER_SPUR, UNIT } from "./shared";

export const SHOOTS_TEXT: FunctionText = {
  description: t(
    "Shoots to expect on a vine from the spurs left on it: count shoots from the nodes and basal shoots from the buds at the base of the spurs. Not rounded.",
    "Brotes que esperar en una planta según los pitones que quedan: los de las yemas contadas y los de la base de los pitones. Sin redondear.",
    "Pousses à attendre sur un cep d'après les coursons laissés : celles des yeux comptés et celles de la base des coursons. Sans arrondi.",
  ),
  parameters: {
    spurs: {
      label: t("spurs", "pitones", "coursons"),
      description: t(
        "Live spurs left on the vine.",
        "Pitones vivos que quedan en la planta.",
        "Coursons vivants laissés sur le cep.",
      ),
    },
    nodes_per_spur: NODES_PER_SPUR,
    budbreak: {
      label: t("budbreak", "brotación", "débourrement"),
      description: t(
        "Share of the count nodes that grow a shoot, 0 to 1.",
        "Proporción de yemas contadas que brotan, de 0 a 1.",
        "Part des yeux comptés qui donnent une pousse, de 0 à 1.",
      ),
    },
    basal_shoots: {
      label: t("basal shoots", "brotes de base", "pousses de base"),
      description: t(
        "Shoots from buds that were not counted, on each spur: 0 if left out.",
        "Brotes de yemas no contadas, por pitón: 0 si se omite.",
        "Pousses issues d'yeux non comptés, par courson : 0 si omis.",
      ),
    },
  },
  results: { shoots: t("shoots", "brotes", "pousses") },
};

export const CLUSTERS_TEXT: FunctionText = {
  description: t(
    "Clusters to expect on a vine from its shoots. Not rounded.",
    "Racimos que esperar en una planta según sus brotes. Sin redondear.",
    "Grappes à attendre sur un cep d'après ses pousses. Sans arrondi.",
  ),
  parameters: {
    shoots: {
      label: t("shoots", "brotes", "pousses"),
      description: t("Shoots of the vine.", "Brotes de la planta.", "Pousses du cep."),
    },
    clusters_per_shoot: {
      label: t("clusters per shoot", "racimos por brote", "grappes par pousse"),
      description: t(
        "Mean clusters on a shoot; about two on a fruitful hybrid is common practice.",
        "Racimos por brote en promedio; unos dos en un híbrido fértil es lo habitual.",
        "Grappes par pousse en moyenne ; environ deux chez un hybride fertile est courant.",
      ),
    },
  },
  results: { clusters: t("clusters", "racimos", "grappes") },
};

export const VINECROP_TEXT: FunctionText = {
  description: t(
    "Crop of one vine: its clusters times the weight of a cluster, in pounds or kilograms.",
    "Cosecha de una planta: sus racimos por el peso de un racimo, en libras o kilos.",
    "Récolte d'un cep : ses grappes fois le poids d'une grappe, en livres ou kilogrammes.",
  ),
  parameters: {
    clusters: {
      label: t("clusters", "racimos", "grappes"),
      description: t("Clusters on the vine.", "Racimos de la planta.", "Grappes du cep."),
    },
    cluster_weight: CLUSTER_WEIGHT,
    unit: UNIT,
  },
  results: { crop: t("crop a vine", "cosecha por planta", "récolte par cep") },
};

export const VINEDENSITY_TEXT: FunctionText = {
  description: t(
    "Vines on an acre or hectare from the spacings, as if rows and vines filled it. Not rounded: 9 by 6 ft is printed as 807 and is 806.67.",
    "Plantas por acre o hectárea según las distancias, como si lo llenaran todo. Sin redondear: 9 por 6 pies se publica como 807 y es 806,67.",
    "Ceps par acre ou hectare d'après les écartements, comme si tout était planté. Sans arrondi : 9 sur 6 pieds est publié 807 et vaut 806,67.",
  ),
  parameters: {
    row_spacing: {
      label: t("row spacing", "entre hileras", "entre rangs"),
      description: t(
        "Distance between rows, feet or metres.",
        "Distancia entre hileras, pies o metros.",
        "Distance entre rangs, pieds ou mètres.",
      ),
    },
    vine_spacing: {
      label: t("vine spacing", "entre plantas", "entre ceps"),
      description: t(
        "Distance between vines in the row, feet or metres.",
        "Distancia entre plantas en la hilera, pies o metros.",
        "Distance entre ceps dans le rang, pieds ou mètres.",
      ),
    },
    unit: UNIT,
  },
  results: {
    density: t("vines an acre or hectare", "plantas por acre o hectárea", "ceps par acre ou hectare"),
  },
};

export const BLOCKCROP_TEXT: FunctionText = {
  description: t(
    "Crop on an acre (short tons) or a hectare (tonnes) from the crop of a bearing vine, the vines planted and the share that is missing. Nothing is rounded on the way.",
    "Cosecha por acre (toneladas cortas) o hectárea (toneladas) según la cosecha de una planta productiva, las plantas plantadas y la proporción que falta. No se redondea en el camino.",
    "Récolte par acre (tonnes courtes) ou hectare (tonnes) d'après la récolte d'un cep en production, les ceps plantés et la part manquante. Rien n'est arrondi en route.",
  ),
  parameters: {
    vine_crop: {
      label: t("vine crop", "cosecha por planta", "récolte par cep"),
      description: t(
        "Crop of a bearing vine, pounds or kilograms.",
        "Cosecha de una planta productiva, libras o kilos.",
        "Récolte d'un cep en production, livres ou kilogrammes.",
      ),
    },
    density: {
      label: t("density", "densidad", "densité"),
      description: t(
        "Vines planted on an acre or hectare.",
        "Plantas plantadas por acre o hectárea.",
        "Ceps plantés par acre ou hectare.",
      ),
    },
    missing_share: {
      label: t("missing share", "proporción faltante", "part manquante"),
      description: t(
        "Share of the planted vines that is missing or bears nothing: 0 if left out. Leave it out when missing vines were counted as vines without clusters.",
        "Proporción de plantas que faltan o no producen: 0 si se omite. Omítala si las faltantes se contaron como plantas sin racimos.",
        "Part des ceps plantés manquants ou sans récolte : 0 si omis. À omettre si les manquants ont été comptés comme ceps sans grappes.",
      ),
    },
    unit: UNIT,
  },
  results: {
    crop: t("crop an acre or hectare", "cosecha por acre o hectárea", "récolte par acre ou hectare"),
  },
};

export const CROPLOAD_TEXT: FunctionText = {
  description: t(
    "Crop load (Ravaz index): weight of the crop over the weight of the prunings of the winter after it, from the same vines and in the same unit.",
    "Carga (índice de Ravaz): peso de la cosecha entre el peso de la madera podada el invierno siguiente, de las mismas plantas y en la misma unidad.",
    "Charge (indice de Ravaz) : poids de la récolte sur le poids du bois taillé l'hiver suivant, des mêmes ceps et dans la même unité.",
  ),
  parameters: {
    crop: {
      label: t("crop", "cosecha", "récolte"),
      description: t("Weight of the crop.", "Peso de la cosecha.", "Poids de la récolte."),
    },
    prunings: {
      label: t("prunings", "madera podada", "bois taillé"),
      description: t(
        "Weight of the one-year prunings of the winter after, in the same unit.",
        "Peso de la madera de un año podada el invierno siguiente, en la misma unidad.",
        "Poids du bois d'un an taillé l'hiver suivant, dans la même unité.",
      ),
    },
  },
  results: { cropLoad: t("crop load", "carga", "charge") },
};

export const CLUSTERSTOREMOVE_TEXT: FunctionText = {
  description: t(
    "Clusters to take off each vine, and to keep, so that the block stays at or under a target crop. Kept clusters are rounded down.",
    "Racimos que quitar de cada planta, y que dejar, para que el cuartel no pase de una cosecha meta. Los que quedan se redondean hacia abajo.",
    "Grappes à enlever par cep, et à garder, pour que la parcelle ne dépasse pas une récolte visée. Les grappes gardées sont arrondies vers le bas.",
  ),
  parameters: {
    target: {
      label: t("target", "meta", "objectif"),
      description: t(
        "Most crop wanted, short tons an acre or tonnes a hectare.",
        "Cosecha máxima deseada, toneladas cortas por acre o toneladas por hectárea.",
        "Récolte maximale voulue, tonnes courtes par acre ou tonnes par hectare.",
      ),
    },
    density: {
      label: t("density", "densidad", "densité"),
      description: t(
        "Bearing vines on an acre or hectare; take missing vines off first.",
        "Plantas productivas por acre o hectárea; descuente antes las faltantes.",
        "Ceps en production par acre ou hectare ; ôtez d'abord les manquants.",
      ),
    },
    cluster_weight: CLUSTER_WEIGHT,
    counted: {
      label: t("counted", "contados", "comptées"),
      description: t(
        "Clusters on the vine now; a column gives an answer for each vine.",
        "Racimos que hay en la planta; una columna da una respuesta por planta.",
        "Grappes sur le cep ; une colonne donne une réponse par cep.",
      ),
    },
    unit: UNIT,
  },
  results: { remove: t("remove", "quitar", "enlever"), keep: t("keep", "dejar", "garder") },
};
