import type { Choice, Column, SheetId, SheetShape } from "./column";
import type { Text } from "../../texts/language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

const SIDES: readonly Choice[] = [
  { id: "left", word: t("left", "izquierda", "gauche"), also: ["l", "izq", "g"] },
  { id: "right", word: t("right", "derecha", "droite"), also: ["r", "der", "d"] },
  { id: "north", word: t("north", "norte", "nord"), also: ["n"] },
  { id: "south", word: t("south", "sur", "sud"), also: ["s"] },
  { id: "east", word: t("east", "este", "est"), also: ["e"] },
  { id: "west", word: t("west", "oeste", "ouest"), also: ["w", "o"] },
];

const CONDITIONS: readonly Choice[] = [
  { id: "sound", word: t("sound", "sano", "sain"), also: ["ok", "good", "bueno", "bon"] },
  {
    id: "injured",
    word: t("injured", "dañado", "abîmé"),
    also: ["hurt", "winter injury", "danado", "abime"],
  },
  { id: "diseased", word: t("diseased", "enfermo", "malade"), also: ["canker", "cancro", "chancre"] },
  { id: "dead", word: t("dead", "muerto", "mort"), also: [] },
];

const STATUSES: readonly Choice[] = [
  { id: "bearing", word: t("bearing", "en producción", "en production"), also: ["en produccion"] },
  { id: "young", word: t("young", "joven", "jeune"), also: [] },
  { id: "missing", word: t("missing", "faltante", "manquant"), also: ["falta", "dead vine"] },
  { id: "replanted", word: t("replanted", "replantada", "replanté"), also: ["replant", "replante"] },
];

const TRAININGS: readonly Choice[] = [
  {
    id: "highWire",
    word: t("high wire", "alambre alto", "fil haut"),
    also: ["high cordon", "top wire", "high wire cordon", "cordón alto", "cordon haut"],
  },
  {
    id: "upright",
    word: t("upright shoots", "brotes erguidos", "pousses dressées"),
    also: ["upright", "vsp", "mid wire", "low cordon"],
  },
  {
    id: "divided",
    word: t("divided canopy", "follaje dividido", "feuillage divisé"),
    also: ["gdc", "double curtain"],
  },
];

const block: Column = {
  id: "block",
  kind: "text",
  header: t("Block", "Cuartel", "Parcelle"),
  also: ["field", "lot", "bloque"],
  required: true,
  help: t(
    "Name of the block, as in the Blocks sheet.",
    "Nombre del cuartel, como en la hoja Cuarteles.",
    "Nom de la parcelle, comme dans la feuille Parcelles.",
  ),
  width: 14,
};
const row: Column = {
  id: "row",
  kind: "count",
  header: t("Row", "Hilera", "Rang"),
  also: ["row no", "row number", "fila", "numero de hilera"],
  required: true,
  least: 1,
  most: 2000,
  help: t(
    "Number of the row in the block.",
    "Número de la hilera en el cuartel.",
    "Numéro du rang dans la parcelle.",
  ),
  width: 7,
};
const vine: Column = {
  id: "vine",
  kind: "count",
  header: t("Vine", "Planta", "Cep"),
  also: ["vine no", "vine number", "cepa", "parra", "pied"],
  required: true,
  least: 1,
  most: 5000,
  help: t(
    "Number of the vine in the row, counted from the row's start.",
    "Número de la planta en la hilera, contado desde el inicio.",
    "Numéro du cep dans le rang, compté depuis le début du rang.",
  ),
  width: 7,
};
const countedBy: Column = {
  id: "countedBy",
  kind: "text",
  header: t("Counted by", "Contado por", "Compté par"),
  also: ["counter", "crew", "initials", "contador", "compteur"],
  required: false,
  help: t(
    "Initials of whoever counted.",
    "Iniciales de quien contó.",
    "Initiales de la personne qui a compté.",
  ),
  width: 12,
};
const countedOn: Column = {
  id: "countedOn",
  kind: "date",
  header: t("Date", "Fecha", "Date"),
  also: ["counted on", "day", "fecha de conteo", "date de comptage"],
  required: false,
  help: t("Day of the count.", "Día del conteo.", "Jour du comptage."),
  width: 12,
};

/** Shorthand for a count column. */
function count(id: string, header: Text, help: Text, rest: Partial<Column> = {}): Column {
  return { id, kind: "count", header, help, required: false, least: 0, most: 200, width: 10, ...rest };
}

const cordons: SheetShape = {
  id: "cordons",
  name: t("Cordons", "Cordones", "Cordons"),
  rowIs: t("a candidate cordon", "un cordón candidato", "un cordon candidat"),
  columns: [
    block,
    row,
    vine,
    {
      id: "side",
      kind: "choice",
      header: t("Side", "Lado", "Côté"),
      required: true,
      choices: SIDES,
      help: t(
        "Side of the vine on which the cordon lies: left or right as you walk the row from vine 1, or a compass side.",
        "Lado de la planta: izquierda o derecha al caminar desde la planta 1, o un punto cardinal.",
        "Côté du cep : gauche ou droite en marchant depuis le cep 1, ou un point cardinal.",
      ),
      width: 10,
    },
    {
      id: "cordon",
      kind: "text",
      header: t("Cordon", "Cordón", "Cordon"),
      also: ["candidate", "arm", "brazo", "bras"],
      required: true,
      help: t(
        "Letter of the candidate on this vine: A, B, C.",
        "Letra del candidato en esta planta: A, B, C.",
        "Lettre du candidat sur ce cep : A, B, C.",
      ),
      width: 9,
    },
    count(
      "trunk",
      t("Trunk", "Tronco", "Tronc"),
      t(
        "Number of the trunk that the cordon comes from, 1 nearest the row's start.",
        "Número del tronco del que sale el cordón; 1 es el más cercano al inicio.",
        "Numéro du tronc d'où part le cordon ; 1 est le plus proche du début du rang.",
      ),
      { required: true, least: 1, most: 8, width: 8 },
    ),
    {
      id: "length",
      kind: "length",
      header: t("Length", "Largo", "Longueur"),
      also: ["cordon length", "longitud"],
      required: true,
      least: 0,
      most: 6,
      help: t(
        "Length of the cordon from the head of the vine to its end; unit in the header.",
        "Largo del cordón desde la cabeza hasta la punta; unidad en el encabezado.",
        "Longueur du cordon de la tête du cep à son bout ; unité dans l'en-tête.",
      ),
      width: 12,
    },
    count(
      "positions",
      t("Positions", "Posiciones", "Emplacements"),
      t(
        "Places along the cordon where a spur should stand.",
        "Lugares del cordón donde debería haber un pitón.",
        "Places du cordon où un courson devrait se trouver.",
      ),
      { required: true, most: 60, also: ["spur positions", "posiciones de pitones"] },
    ),
    count(
      "liveSpurs",
      t("Live spurs", "Pitones vivos", "Coursons vivants"),
      t("Places with a live spur.", "Lugares con un pitón vivo.", "Places qui portent un courson vivant."),
      { required: true, most: 60, also: ["spurs", "living spurs", "pitones"] },
    ),
    count(
      "longestGap",
      t("Longest gap", "Hueco más largo", "Plus long vide"),
      t(
        "Longest stretch without a live spur, in positions.",
        "Tramo más largo sin pitón vivo, en posiciones.",
        "Plus longue suite sans courson vivant, en emplacements.",
      ),
      { most: 60, width: 12, also: ["gap", "largest gap"] },
    ),
    count(
      "spursDown",
      t("Spurs down", "Pitones abajo", "Coursons bas"),
      t(
        "Live spurs that point down.",
        "Pitones vivos que apuntan abajo.",
        "Coursons vivants tournés vers le bas.",
      ),
      { most: 60, width: 11, also: ["down"] },
    ),
    count(
      "spursLevel",
      t("Spurs level", "Pitones de lado", "Coursons de côté"),
      t(
        "Live spurs that point sideways.",
        "Pitones vivos que apuntan de lado.",
        "Coursons vivants tournés de côté.",
      ),
      { most: 60, width: 11, also: ["level", "sideways"] },
    ),
    count(
      "spursUp",
      t("Spurs up", "Pitones arriba", "Coursons hauts"),
      t(
        "Live spurs that point up.",
        "Pitones vivos que apuntan arriba.",
        "Coursons vivants tournés vers le haut.",
      ),
      { most: 60, width: 10, also: ["up"] },
    ),
    {
      id: "nodesPerSpur",
      kind: "number",
      header: t("Nodes a spur", "Yemas por pitón", "Yeux par courson"),
      also: ["nodes per spur", "buds per spur"],
      required: false,
      least: 0,
      most: 15,
      help: t(
        "Nodes left on a spur, the usual number on this cordon.",
        "Yemas dejadas en cada pitón, lo usual en este cordón.",
        "Yeux laissés par courson, le nombre habituel sur ce cordon.",
      ),
      width: 12,
    },
    {
      id: "diameter",
      kind: "shortLength",
      header: t("Diameter", "Diámetro", "Diamètre"),
      also: ["thickness", "grosor"],
      required: false,
      least: 0,
      most: 0.15,
      help: t(
        "Thickness of the cordon halfway along it; unit in the header.",
        "Grosor del cordón a la mitad; unidad en el encabezado.",
        "Grosseur du cordon à mi-longueur ; unité dans l'en-tête.",
      ),
      width: 14,
    },
    {
      id: "condition",
      kind: "choice",
      header: t("Condition", "Estado", "État"),
      also: ["soundness", "health", "condicion"],
      required: false,
      choices: CONDITIONS,
      help: t(
        "Sound, injured by winter, diseased or dead.",
        "Sano, dañado por el invierno, enfermo o muerto.",
        "Sain, abîmé par l'hiver, malade ou mort.",
      ),
      width: 11,
    },
    {
      id: "trunkCondition",
      kind: "choice",
      header: t("Trunk condition", "Estado del tronco", "État du tronc"),
      also: ["trunk health"],
      required: false,
      choices: CONDITIONS,
      help: t(
        "Condition of the trunk that the cordon comes from; leave it blank where nobody looked.",
        "Estado del tronco del que sale el cordón; en blanco si nadie lo miró.",
        "État du tronc d'où part le cordon ; laisser vide si personne n'a regardé.",
      ),
      width: 15,
    },
    {
      id: "fixedChoice",
      kind: "choice",
      header: t("Fixed choice", "Decisión fija", "Choix fixé"),
      also: ["decided", "decision"],
      required: false,
      choices: [
        { id: "stays", word: t("stays", "queda", "reste"), also: ["keep"] },
        { id: "goes", word: t("goes", "se corta", "part"), also: ["cut", "remove"] },
      ],
      help: t(
        "Only when a person has already decided: stays or goes.",
        "Solo si alguien ya decidió: queda o se corta.",
        "Seulement si quelqu'un a déjà décidé : reste ou part.",
      ),
      width: 12,
    },
    {
      id: "note",
      kind: "text",
      header: t("Note", "Nota", "Remarque"),
      also: ["notes", "remarks", "comment"],
      required: false,
      help: t("Anything worth knowing.", "Lo que convenga saber.", "Tout ce qu'il est bon de savoir."),
      width: 24,
    },
    countedBy,
    countedOn,
  ],
};

const vines: SheetShape = {
  id: "vines",
  name: t("Vines", "Plantas", "Ceps"),
  rowIs: t("a vine", "una planta", "un cep"),
  columns: [
    block,
    row,
    vine,
    {
      id: "status",
      kind: "choice",
      header: t("Status", "Situación", "Situation"),
      required: true,
      choices: STATUSES,
      help: t(
        "Bearing, young, missing or replanted.",
        "En producción, joven, faltante o replantada.",
        "En production, jeune, manquant ou replanté.",
      ),
      width: 14,
    },
    count(
      "liveTrunks",
      t("Live trunks", "Troncos vivos", "Troncs vivants"),
      t("Trunks with live wood.", "Troncos con madera viva.", "Troncs au bois vivant."),
      { most: 12, width: 12, also: ["trunks", "troncos", "troncs"] },
    ),
    {
      id: "prunings",
      kind: "mass",
      header: t("Prunings", "Poda", "Bois de taille"),
      also: ["prunings weight", "pruning weight", "peso de poda"],
      required: false,
      least: 0,
      most: 20,
      help: t(
        "Weight of the one-year wood cut off this vine, where it was weighed; unit in the header.",
        "Peso de la madera de un año podada, si se pesó; unidad en el encabezado.",
        "Poids du bois d'un an taillé, s'il a été pesé ; unité dans l'en-tête.",
      ),
      width: 14,
    },
    count(
      "clusters",
      t("Clusters", "Racimos", "Grappes"),
      t(
        "Clusters counted on the vine, where they were counted.",
        "Racimos contados en la planta, si se contaron.",
        "Grappes comptées sur le cep, si elles l'ont été.",
      ),
      { most: 1000, also: ["clusters counted", "cluster count"] },
    ),
    count(
      "shoots",
      t("Shoots", "Brotes", "Pousses"),
      t(
        "Shoots counted after budbreak, where they were counted.",
        "Brotes contados tras la brotación, si se contaron.",
        "Pousses comptées après le débourrement, si elles l'ont été.",
      ),
      { most: 1000, also: ["shoots counted", "shoot count"] },
    ),
    {
      id: "prunedOn",
      kind: "date",
      header: t("Pruned on", "Podada el", "Taillé le"),
      also: ["done on", "pruned"],
      required: false,
      help: t(
        "Day on which the vine was pruned; blank while it is still to do.",
        "Día en que se podó la planta; en blanco mientras falta.",
        "Jour où le cep a été taillé ; vide tant que c'est à faire.",
      ),
      width: 12,
    },
    {
      id: "note",
      kind: "text",
      header: t("Note", "Nota", "Remarque"),
      also: ["notes", "remarks", "comment"],
      required: false,
      help: t("Anything worth knowing.", "Lo que convenga saber.", "Tout ce qu'il est bon de savoir."),
      width: 24,
    },
    countedBy,
    countedOn,
  ],
};

const share = (id: string, header: Text, help: Text, rest: Partial<Column> = {}): Column => ({
  id,
  kind: "share",
  header,
  help,
  required: false,
  least: 0,
  most: 1,
  width: 11,
  ...rest,
});

const blocks: SheetShape = {
  id: "blocks",
  name: t("Blocks", "Cuarteles", "Parcelles"),
  rowIs: t("a block", "un cuartel", "une parcelle"),
  columns: [
    block,
    {
      id: "cultivar",
      kind: "text",
      header: t("Cultivar", "Variedad", "Cépage"),
      also: ["variety"],
      required: false,
      help: t("Cultivar planted.", "Variedad plantada.", "Cépage planté."),
      width: 16,
    },
    {
      id: "planted",
      kind: "year",
      header: t("Year planted", "Año de plantación", "Année de plantation"),
      also: ["planted"],
      required: false,
      least: 1850,
      most: 2100,
      help: t("Year the block was planted.", "Año de plantación.", "Année de plantation."),
      width: 13,
    },
    count(
      "rows",
      t("Rows", "Hileras", "Rangs"),
      t("Rows in the block.", "Hileras del cuartel.", "Rangs de la parcelle."),
      {
        least: 1,
        most: 2000,
        width: 8,
      },
    ),
    count(
      "vines",
      t("Vine places", "Lugares de planta", "Places de cep"),
      t(
        "Places for a vine in the whole block, missing vines counted in.",
        "Lugares de planta en todo el cuartel, con los faltantes.",
        "Places de cep dans toute la parcelle, manquants compris.",
      ),
      { least: 1, most: 1000000, also: ["vines", "number of vines"] },
    ),
    {
      id: "rowSpacing",
      kind: "length",
      header: t("Row spacing", "Entre hileras", "Entre rangs"),
      also: [],
      required: false,
      least: 0.5,
      most: 10,
      help: t("Distance between rows.", "Distancia entre hileras.", "Distance entre rangs."),
      width: 15,
    },
    {
      id: "vineSpacing",
      kind: "length",
      header: t("Vine spacing", "Entre plantas", "Entre ceps"),
      also: [],
      required: false,
      least: 0.3,
      most: 10,
      help: t(
        "Distance between vines in the row.",
        "Distancia entre plantas.",
        "Distance entre ceps dans le rang.",
      ),
      width: 15,
    },
    {
      id: "training",
      kind: "choice",
      header: t("Training system", "Sistema de conducción", "Mode de conduite"),
      also: ["training"],
      required: false,
      choices: TRAININGS,
      help: t(
        "Cordon on a high wire, upright shoots between catch wires, or a divided canopy.",
        "Cordón en alambre alto, brotes erguidos o follaje dividido.",
        "Cordon sur fil haut, pousses dressées ou feuillage divisé.",
      ),
      width: 16,
    },
    {
      id: "nodeRule",
      kind: "text",
      header: t("Node rule", "Regla de yemas", "Règle des yeux"),
      also: [],
      required: false,
      help: t(
        'How nodes are budgeted: a formula like 30+10, "by length" or a fixed number.',
        'Cómo se fija el número de yemas: fórmula como 30+10, "por largo" o número fijo.',
        "Comment fixer le nombre d'yeux : formule comme 30+10, « par longueur » ou nombre fixe.",
      ),
      width: 12,
    },
    {
      id: "injuryRule",
      kind: "text",
      header: t("Injury rule", "Regla de daño", "Règle de dégâts"),
      also: [],
      required: false,
      help: t(
        "Rule that corrects the budget for dead buds, named after its source.",
        "Regla que corrige por yemas muertas, con el nombre de su fuente.",
        "Règle qui corrige pour les bourgeons morts, du nom de sa source.",
      ),
      width: 14,
    },
    {
      id: "targetCrop",
      kind: "number",
      header: t("Target crop", "Cosecha meta", "Récolte visée"),
      also: [],
      required: false,
      least: 0,
      most: 100,
      help: t(
        "Crop wanted, in tons an acre or tonnes a hectare; unit in the header.",
        "Cosecha deseada, en toneladas por acre o por hectárea.",
        "Récolte voulue, en tonnes par acre ou par hectare.",
      ),
      width: 18,
    },
    {
      id: "clusterWeight",
      kind: "mass",
      header: t("Cluster weight", "Peso del racimo", "Poids de grappe"),
      also: [],
      required: false,
      least: 0,
      most: 3,
      help: t("Weight of a ripe cluster.", "Peso de un racimo maduro.", "Poids d'une grappe mûre."),
      width: 17,
    },
    {
      id: "clustersPerShoot",
      kind: "number",
      header: t("Clusters a shoot", "Racimos por brote", "Grappes par pousse"),
      also: ["clusters per shoot"],
      required: false,
      least: 0,
      most: 6,
      help: t(
        "Clusters that a shoot carries on average.",
        "Racimos que lleva un brote en promedio.",
        "Grappes portées en moyenne par une pousse.",
      ),
      width: 16,
    },
    share(
      "budbreak",
      t("Budbreak", "Brotación", "Débourrement"),
      t(
        "Share of counted nodes that grow a shoot.",
        "Parte de las yemas contadas que brotan.",
        "Part des yeux comptés qui donnent une pousse.",
      ),
    ),
  ],
};

const budCuts: SheetShape = {
  id: "budCuts",
  name: t("Bud cuts", "Cortes de yemas", "Coupes de bourgeons"),
  rowIs: t("a cane whose buds were cut", "un sarmiento cortado", "un sarment coupé"),
  columns: [
    block,
    { ...row, required: false },
    { ...vine, required: false },
    {
      id: "cane",
      kind: "text",
      header: t("Cane", "Sarmiento", "Sarment"),
      required: false,
      help: t("Number of the cane.", "Número del sarmiento.", "Numéro du sarment."),
      width: 8,
    },
    count(
      "nodesCut",
      t("Nodes cut", "Yemas cortadas", "Yeux coupés"),
      t("Nodes cut on this cane.", "Yemas cortadas en este sarmiento.", "Yeux coupés sur ce sarment."),
      { required: true, least: 1, most: 60, also: ["buds cut"] },
    ),
    count(
      "primariesAlive",
      t("Primaries alive", "Primarias vivas", "Primaires vivants"),
      t("Nodes with a live primary bud.", "Yemas con primaria viva.", "Yeux au bourgeon primaire vivant."),
      { required: true, most: 60, width: 14 },
    ),
    count(
      "secondariesAlive",
      t("Secondaries alive", "Secundarias vivas", "Secondaires vivants"),
      t(
        "Nodes with a live secondary bud.",
        "Yemas con secundaria viva.",
        "Yeux au bourgeon secondaire vivant.",
      ),
      { most: 60, width: 16 },
    ),
    {
      ...countedBy,
      header: t("Cut by", "Cortado por", "Coupé par"),
      also: ["counted by", "contado por", "compte par"],
    },
    countedOn,
  ],
};

const harvest: SheetShape = {
  id: "harvest",
  name: t("Harvest", "Cosecha", "Récolte"),
  rowIs: t("a block in a year", "un cuartel en un año", "une parcelle dans une année"),
  columns: [
    block,
    {
      id: "year",
      kind: "year",
      header: t("Year", "Año", "Année"),
      required: true,
      least: 1950,
      most: 2100,
      help: t("Year of the harvest.", "Año de la cosecha.", "Année de la récolte."),
      width: 8,
    },
    {
      id: "picked",
      kind: "mass",
      header: t("Picked", "Cosechado", "Récolté"),
      also: ["crop picked", "crop"],
      required: false,
      least: 0,
      most: 1e7,
      help: t(
        "Weight picked from the block; blank until harvest.",
        "Peso cosechado en el cuartel; vacío hasta la cosecha.",
        "Poids récolté dans la parcelle ; vide jusqu'à la récolte.",
      ),
      width: 14,
    },
    count(
      "vinesPicked",
      t("Vines picked", "Plantas cosechadas", "Ceps récoltés"),
      t("Vines that were picked.", "Plantas cosechadas.", "Ceps récoltés."),
      { most: 1000000, width: 12 },
    ),
    {
      id: "clusterWeight",
      kind: "mass",
      header: t("Cluster weight", "Peso del racimo", "Poids de grappe"),
      required: false,
      least: 0,
      most: 3,
      help: t(
        "Mean weight of a cluster at harvest.",
        "Peso medio de un racimo en cosecha.",
        "Poids moyen d'une grappe à la récolte.",
      ),
      width: 17,
    },
    {
      id: "lagWeight",
      kind: "mass",
      header: t(
        "Cluster weight at lag phase",
        "Peso del racimo en fase de reposo",
        "Poids de grappe en phase de pause",
      ),
      also: ["lag phase cluster weight"],
      required: false,
      least: 0,
      most: 3,
      help: t(
        "Mean weight of a cluster when berry growth paused.",
        "Peso medio del racimo cuando paró el crecimiento de la baya.",
        "Poids moyen d'une grappe quand la baie a cessé de grossir.",
      ),
      width: 27,
    },
    count(
      "clustersWeighed",
      t("Clusters weighed", "Racimos pesados", "Grappes pesées"),
      t(
        "Clusters behind the weight at lag phase.",
        "Racimos detrás del peso en fase de pausa.",
        "Grappes derrière le poids en phase de pause.",
      ),
      { most: 100000, width: 14 },
    ),
    {
      id: "clustersPerShoot",
      kind: "number",
      header: t("Clusters a shoot", "Racimos por brote", "Grappes par pousse"),
      also: ["clusters per shoot"],
      required: false,
      least: 0,
      most: 6,
      help: t("Clusters a shoot, counted.", "Racimos por brote, contados.", "Grappes par pousse, comptées."),
      width: 16,
    },
    share(
      "budbreak",
      t("Budbreak", "Brotación", "Débourrement"),
      t("Share of nodes that grew.", "Parte de las yemas que brotaron.", "Part des yeux qui ont poussé."),
    ),
  ],
};

const settings: SheetShape = {
  id: "settings",
  name: t("Settings", "Ajustes", "Réglages"),
  rowIs: t(
    "a figure that changes a result",
    "una cifra que cambia un resultado",
    "un chiffre qui change un résultat",
  ),
  columns: [
    {
      id: "setting",
      kind: "text",
      header: t("Setting", "Ajuste", "Réglage"),
      required: true,
      help: t(
        "Name of the figure; do not change it.",
        "Nombre de la cifra; no cambiar.",
        "Nom du chiffre ; ne pas changer.",
      ),
      width: 30,
    },
    {
      id: "value",
      kind: "text",
      header: t("Value", "Valor", "Valeur"),
      required: true,
      help: t("The farm's own figure.", "La cifra de la finca.", "Le chiffre de la ferme."),
      width: 12,
    },
    {
      id: "unit",
      kind: "text",
      header: t("Unit", "Unidad", "Unité"),
      required: false,
      help: t("Unit of the value.", "Unidad del valor.", "Unité de la valeur."),
      width: 14,
    },
    {
      id: "source",
      kind: "text",
      header: t("Source", "Fuente", "Source"),
      required: false,
      help: t("Where the figure comes from.", "De dónde viene la cifra.", "D'où vient le chiffre."),
      width: 44,
    },
    {
      id: "meaning",
      kind: "text",
      header: t("Meaning", "Significado", "Signification"),
      required: false,
      help: t("What the figure does.", "Qué hace la cifra.", "Ce que fait le chiffre."),
      width: 60,
    },
    {
      id: "changedBy",
      kind: "text",
      header: t("Changed by", "Cambiado por", "Changé par"),
      required: false,
      help: t("Who changed it last.", "Quién lo cambió.", "Qui l'a changé en dernier."),
      width: 14,
    },
    {
      id: "changedOn",
      kind: "date",
      header: t("Changed on", "Cambiado el", "Changé le"),
      required: false,
      help: t("When it was changed last.", "Cuándo se cambió.", "Quand il a été changé."),
      width: 12,
    },
  ],
};

/** The shape of every survey sheet: drives reading, checks, help, and the empty workbook. Limits of lengths are in metres, of masses in kilograms. */
export const SHEETS: Readonly<Record<SheetId, SheetShape>> = {
  blocks,
  cordons,
  vines,
  budCuts,
  harvest,
  settings,
};
