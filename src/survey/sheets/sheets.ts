import { GRAPE_KINDS, type GrapeKind } from "../../domain/grapeFigures";
import { INJURY_RULE_NAMES } from "../../domain/injuryRules";
import { TRAININGS, type Training } from "../../domain/choice/trainingSystems";
import { NODE_RULE_FORMS } from "./nodeRules";
import type { Choice, Column, SheetId, SheetShape } from "./column";
import type { Text } from "../../texts/language";
import { TEXTS } from "../../texts/texts";

const WORDS = TEXTS.sheets;

const SIDES: readonly Choice[] = [
  {
    id: "left",
    word: WORDS.sides.left,
    also: ["l", "lh", "lt", "lft", "izq", "izda", "izdo", "izquierdo", "i", "g", "gau", "←", "⬅", "<", "<-"],
  },
  {
    id: "right",
    word: WORDS.sides.right,
    also: [
      "r",
      "rh",
      "rt",
      "rgt",
      "der",
      "dcha",
      "dcho",
      "derecho",
      "d",
      "dr",
      "droit",
      "dte",
      "→",
      "➡",
      ">",
      "->",
    ],
  },
  { id: "north", word: WORDS.sides.north, also: ["n"] },
  { id: "south", word: WORDS.sides.south, also: ["s"] },
  { id: "east", word: WORDS.sides.east, also: ["e"] },
  { id: "west", word: WORDS.sides.west, also: ["w", "o"] },
];

const CONDITIONS: readonly Choice[] = [
  {
    id: "sound",
    word: WORDS.conditions.sound,
    also: [
      "ok",
      "good",
      "fine",
      "healthy",
      "live",
      "alive",
      "bueno",
      "buena",
      "sana",
      "vivo",
      "viva",
      "bon",
      "bonne",
      "saine",
      "vivant",
      "vivante",
    ],
  },
  {
    id: "injured",
    word: WORDS.conditions.injured,
    also: [
      "hurt",
      "winter injury",
      "winter damage",
      "winter kill",
      "winterkill",
      "winter killed",
      "frost damage",
      "frost damaged",
      "broken",
      "damaged",
      "frost",
      "frosted",
      "frozen",
      "cracked",
      "split",
      "helado",
      "helada",
      "danada",
      "quebrado",
      "quebrada",
      "roto",
      "rota",
      "rajado",
      "gele",
      "gelee",
      "abimee",
      "fendu",
      "casse",
      "cassee",
    ],
  },
  {
    id: "diseased",
    word: WORDS.conditions.diseased,
    also: [
      "canker",
      "sick",
      "gall",
      "crown gall",
      "trunk disease",
      "enferma",
      "cancro",
      "agalla",
      "chancre",
      "eutypa",
    ],
  },
  {
    id: "dead",
    word: WORDS.conditions.dead,
    also: ["dry", "died", "muerta", "seco", "seca", "morte", "sec", "seche"],
  },
];

const STATUSES: readonly Choice[] = [
  {
    id: "bearing",
    word: WORDS.statuses.bearing,
    also: ["in bearing", "mature", "producing", "adult", "adulta", "adulte", "productive"],
  },
  { id: "young", word: WORDS.statuses.young, also: ["new", "baby", "nueva", "nuevo"] },
  {
    id: "missing",
    word: WORDS.statuses.missing,
    also: ["falta", "fallo", "falla", "gone", "no vine", "dead vine", "absent", "absente", "manquante"],
  },
  {
    id: "replanted",
    word: WORDS.statuses.replanted,
    also: ["replant", "replante", "repuesta", "replantee", "remplace"],
  },
];

/** Other accepted spellings of each training system; its words stand in the texts. */
const TRAINING_SPELLINGS: Readonly<Record<Training, readonly string[]>> = {
  highWire: ["high cordon", "top wire", "high wire cordon", "cordón alto", "cordon haut"],
  upright: ["upright", "vsp", "mid wire", "low cordon"],
  divided: ["gdc", "double curtain"],
};

const TRAINING_CHOICES: readonly Choice[] = TRAININGS.map((id) => ({
  id,
  word: WORDS.trainings[id],
  also: TRAINING_SPELLINGS[id],
}));

const INJURY_RULE_CHOICES: readonly Choice[] = INJURY_RULE_NAMES.map((id) => ({
  id,
  word: { en: id, es: id, fr: id },
}));

const GRAPE_KIND_SPELLINGS: Readonly<Record<GrapeKind, readonly string[]>> = {
  american: ["labrusca", "american grape", "americaine"],
  frenchHybrid: ["french hybrid", "french-american hybrid", "french american"],
  newHybrid: ["cold hardy hybrid", "cold-hardy hybrid", "new hybrids"],
  vinifera: ["vitis vinifera", "european"],
  table: ["table grape", "seedless table", "seedless"],
};

const GRAPE_KIND_CHOICES: readonly Choice[] = GRAPE_KINDS.map((id) => ({
  id,
  word: WORDS.grapeKinds[id],
  also: GRAPE_KIND_SPELLINGS[id],
}));

const block: Column = {
  id: "block",
  kind: "text",
  ...WORDS.block,
  also: ["field", "lot", "bloque"],
  required: true,
  width: 14,
};
const row: Column = {
  id: "row",
  kind: "count",
  ...WORDS.row,
  also: ["row no", "row number", "fila", "numero de hilera"],
  required: true,
  least: 1,
  most: 2000,
  width: 7,
};
const vine: Column = {
  id: "vine",
  kind: "count",
  ...WORDS.vine,
  also: ["vine no", "vine number", "cepa", "parra", "pied"],
  required: true,
  least: 1,
  most: 5000,
  width: 7,
};
const countedBy: Column = {
  id: "countedBy",
  kind: "text",
  ...WORDS.countedBy,
  also: ["counter", "crew", "initials", "contador", "compteur"],
  required: false,
  width: 12,
};
const countedOn: Column = {
  id: "countedOn",
  kind: "date",
  ...WORDS.countedOn,
  also: ["counted on", "day", "fecha de conteo", "date de comptage"],
  required: false,
  width: 12,
};
const note: Column = {
  id: "note",
  kind: "text",
  ...WORDS.note,
  also: [
    "notes",
    "remark",
    "remarks",
    "comment",
    "comments",
    "obs",
    "observaciones",
    "observations",
    "comentario",
    "commentaire",
  ],
  required: false,
  width: 24,
};

/** Shorthand for a count column. */
function count(id: string, header: Text, help: Text, rest: Partial<Column> = {}): Column {
  return { id, kind: "count", header, help, required: false, least: 0, most: 200, width: 10, ...rest };
}

const cordons: SheetShape = {
  id: "cordons",
  name: WORDS.cordons.name,
  rowIs: WORDS.cordons.rowIs,
  columns: [
    block,
    row,
    vine,
    {
      id: "side",
      kind: "choice",
      ...WORDS.cordons.side,
      required: true,
      choices: SIDES,
      width: 10,
    },
    {
      id: "cordon",
      kind: "text",
      ...WORDS.cordons.cordon,
      also: ["candidate", "arm", "brazo", "bras"],
      required: true,
      width: 9,
    },
    count("trunk", WORDS.cordons.trunk.header, WORDS.cordons.trunk.help, {
      required: true,
      least: 1,
      most: 8,
      width: 8,
    }),
    {
      id: "length",
      kind: "length",
      ...WORDS.cordons.length,
      also: ["cordon length", "longitud"],
      required: true,
      least: 0,
      most: 6,
      width: 12,
    },
    count("positions", WORDS.cordons.positions.header, WORDS.cordons.positions.help, {
      required: true,
      most: 60,
      also: [
        "spur positions",
        "possible spurs",
        "spur sites",
        "posiciones de pitones",
        "pitones posibles",
        "coursons possibles",
      ],
    }),
    count("liveSpurs", WORDS.cordons.liveSpurs.header, WORDS.cordons.liveSpurs.help, {
      required: true,
      most: 60,
      also: [
        "spurs",
        "living spurs",
        "spurs live",
        "spurs alive",
        "live",
        "alive",
        "pitones",
        "vivos",
        "coursons",
        "vivants",
      ],
    }),
    count("longestGap", WORDS.cordons.longestGap.header, WORDS.cordons.longestGap.help, {
      most: 60,
      width: 12,
      also: [
        "gap",
        "largest gap",
        "biggest gap",
        "hueco",
        "hueco mayor",
        "mayor hueco",
        "vide",
        "plus grand vide",
      ],
    }),
    count("spursDown", WORDS.cordons.spursDown.header, WORDS.cordons.spursDown.help, {
      most: 60,
      width: 11,
      also: ["down"],
    }),
    count("spursLevel", WORDS.cordons.spursLevel.header, WORDS.cordons.spursLevel.help, {
      most: 60,
      width: 11,
      also: ["level", "sideways"],
    }),
    count("spursUp", WORDS.cordons.spursUp.header, WORDS.cordons.spursUp.help, {
      most: 60,
      width: 10,
      also: ["up"],
    }),
    {
      id: "nodesPerSpur",
      kind: "number",
      ...WORDS.cordons.nodesPerSpur,
      also: ["nodes per spur", "buds per spur"],
      required: false,
      least: 0,
      most: 15,
      width: 12,
    },
    {
      id: "diameter",
      kind: "shortLength",
      ...WORDS.cordons.diameter,
      also: ["thickness", "grosor"],
      required: false,
      least: 0,
      most: 0.15,
      width: 14,
    },
    {
      id: "condition",
      kind: "choice",
      ...WORDS.cordons.condition,
      also: ["soundness", "health", "condicion"],
      required: false,
      choices: CONDITIONS,
      width: 11,
    },
    {
      id: "trunkCondition",
      kind: "choice",
      ...WORDS.cordons.trunkCondition,
      also: ["trunk health"],
      required: false,
      choices: CONDITIONS,
      width: 15,
    },
    {
      id: "fixedChoice",
      kind: "choice",
      header: WORDS.cordons.fixedChoice.header,
      also: ["decided", "decision"],
      required: false,
      choices: [
        {
          id: "stays",
          word: WORDS.cordons.fixedChoice.choices.stays,
          also: ["keep"],
        },
        {
          id: "goes",
          word: WORDS.cordons.fixedChoice.choices.goes,
          also: ["cut", "remove"],
        },
        { id: "cane", word: WORDS.cordons.fixedChoice.choices.cane },
        { id: "recount", word: WORDS.cordons.fixedChoice.choices.recount },
      ],
      help: WORDS.cordons.fixedChoice.help,
      width: 12,
    },
    note,
    countedBy,
    countedOn,
    count("gapFrom", WORDS.cordons.gapFrom.header, WORDS.cordons.gapFrom.help, {
      most: 60,
      also: ["gap starts at", "gap begins", "hueco desde", "vide depuis"],
    }),
    count("canesNearHead", WORDS.cordons.canesNearHead.header, WORDS.cordons.canesNearHead.help, {
      most: 30,
      also: ["renewal canes", "usable canes", "sarmientos útiles", "sarments utiles"],
    }),
    {
      id: "spurHeight",
      kind: "shortLength",
      ...WORDS.cordons.spurHeight,
      also: ["height of spurs", "spur length", "altura pitones", "hauteur coursons"],
      required: false,
      least: 0,
      most: 1,
      width: 12,
    },
    {
      id: "trunkYear",
      kind: "year",
      ...WORDS.cordons.trunkYear,
      also: [
        "year of trunk",
        "trunk laid up",
        "trunk since",
        "trunk trained",
        "tronco desde",
        "año de formación del tronco",
        "tronc depuis",
        "année de formation du tronc",
      ],
      required: false,
      least: 1850,
      most: 2100,
      width: 11,
    },
  ],
};

const vines: SheetShape = {
  id: "vines",
  name: WORDS.vines.name,
  rowIs: WORDS.vines.rowIs,
  columns: [
    block,
    row,
    vine,
    {
      id: "status",
      kind: "choice",
      ...WORDS.vines.status,
      required: true,
      choices: STATUSES,
      width: 14,
    },
    count("liveTrunks", WORDS.vines.liveTrunks.header, WORDS.vines.liveTrunks.help, {
      most: 12,
      width: 12,
      also: ["trunks", "troncos", "troncs"],
    }),
    {
      id: "prunings",
      kind: "mass",
      ...WORDS.vines.prunings,
      also: ["prunings weight", "pruning weight", "peso de poda"],
      required: false,
      least: 0,
      most: 20,
      width: 14,
    },
    count("clusters", WORDS.vines.clusters.header, WORDS.vines.clusters.help, {
      most: 1000,
      also: ["clusters counted", "cluster count"],
    }),
    count("shoots", WORDS.vines.shoots.header, WORDS.vines.shoots.help, {
      most: 1000,
      also: ["shoots counted", "shoot count"],
    }),
    {
      id: "prunedOn",
      kind: "date",
      ...WORDS.vines.prunedOn,
      also: ["done on", "pruned"],
      required: false,
      width: 12,
    },
    note,
    countedBy,
    countedOn,
    {
      id: "planted",
      kind: "year",
      ...WORDS.vines.planted,
      also: [
        "planted",
        "planted in",
        "planting year",
        "plant year",
        "replant year",
        "year replanted",
        "replanted in",
        "plantada en",
        "año de replante",
        "planté en",
        "année de replantation",
      ],
      required: false,
      least: 1850,
      most: 2100,
      width: 13,
    },
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

const blockFigure = (
  id: string,
  words: { readonly header: Text; readonly help: Text },
  [least, most]: readonly [least: number, most: number],
): Column => ({ id, kind: "number", ...words, required: false, least, most, width: 13 });

const blocks: SheetShape = {
  id: "blocks",
  name: WORDS.blocks.name,
  rowIs: WORDS.blocks.rowIs,
  columns: [
    block,
    {
      id: "cultivar",
      kind: "text",
      ...WORDS.blocks.cultivar,
      also: ["variety"],
      required: false,
      width: 16,
    },
    {
      id: "planted",
      kind: "year",
      ...WORDS.blocks.planted,
      also: ["planted"],
      required: false,
      least: 1850,
      most: 2100,
      width: 13,
    },
    count("rows", WORDS.blocks.rows.header, WORDS.blocks.rows.help, {
      least: 1,
      most: 2000,
      width: 8,
    }),
    count("vines", WORDS.blocks.vines.header, WORDS.blocks.vines.help, {
      least: 1,
      most: 1000000,
      also: ["vines", "number of vines"],
    }),
    {
      id: "rowSpacing",
      kind: "length",
      ...WORDS.blocks.rowSpacing,
      also: [],
      required: false,
      least: 0.5,
      most: 10,
      width: 15,
    },
    {
      id: "vineSpacing",
      kind: "length",
      ...WORDS.blocks.vineSpacing,
      also: [],
      required: false,
      least: 0.3,
      most: 10,
      width: 15,
    },
    {
      id: "training",
      kind: "choice",
      ...WORDS.blocks.training,
      also: ["training"],
      required: false,
      choices: TRAINING_CHOICES,
      width: 16,
    },
    {
      id: "nodeRule",
      kind: "text",
      ...WORDS.blocks.nodeRule,
      also: [],
      required: false,
      forms: NODE_RULE_FORMS,
      width: 12,
    },
    {
      id: "injuryRule",
      kind: "choice",
      ...WORDS.blocks.injuryRule,
      also: [],
      required: false,
      choices: INJURY_RULE_CHOICES,
      width: 14,
    },
    {
      id: "targetCrop",
      kind: "number",
      ...WORDS.blocks.targetCrop,
      also: [],
      required: false,
      least: 0,
      most: 100,
      width: 18,
    },
    {
      id: "clusterWeight",
      kind: "mass",
      ...WORDS.blocks.clusterWeight,
      also: [],
      required: false,
      least: 0,
      most: 3,
      width: 17,
    },
    {
      id: "clustersPerShoot",
      kind: "number",
      ...WORDS.blocks.clustersPerShoot,
      also: ["clusters per shoot"],
      required: false,
      least: 0,
      most: 6,
      width: 16,
    },
    share("budbreak", WORDS.blocks.budbreak.header, WORDS.blocks.budbreak.help),
    {
      id: "grapeKind",
      kind: "choice",
      ...WORDS.blocks.grapeKind,
      also: ["grape kind", "type of grape", "tipo de uva", "type de raisin"],
      required: false,
      choices: GRAPE_KIND_CHOICES,
      width: 15,
    },
    share("secondaryWorth", WORDS.blocks.secondaryWorth.header, WORDS.blocks.secondaryWorth.help, {
      width: 15,
    }),
    blockFigure("basalShoots", WORDS.blocks.basalShoots, [0, 5]),
    share("basalWorth", WORDS.blocks.basalWorth.header, WORDS.blocks.basalWorth.help, { width: 15 }),
    blockFigure("nodesASpur", WORDS.blocks.nodesASpur, [1, 15]),
    blockFigure("mostNodes", WORDS.blocks.mostNodes, [1, 500]),
  ],
};

const budCuts: SheetShape = {
  id: "budCuts",
  name: WORDS.budCuts.name,
  rowIs: WORDS.budCuts.rowIs,
  columns: [
    block,
    { ...row, required: false },
    { ...vine, required: false },
    {
      id: "cane",
      kind: "text",
      ...WORDS.budCuts.cane,
      required: false,
      width: 8,
    },
    count("nodesCut", WORDS.budCuts.nodesCut.header, WORDS.budCuts.nodesCut.help, {
      required: true,
      least: 1,
      most: 60,
      also: ["buds cut"],
    }),
    count("primariesAlive", WORDS.budCuts.primariesAlive.header, WORDS.budCuts.primariesAlive.help, {
      required: true,
      most: 60,
      width: 14,
    }),
    count("secondariesAlive", WORDS.budCuts.secondariesAlive.header, WORDS.budCuts.secondariesAlive.help, {
      most: 60,
      width: 16,
    }),
    {
      ...countedBy,
      header: WORDS.budCuts["7"].header,
      also: ["counted by", "contado por", "compte par"],
    },
    countedOn,
  ],
};

/** Nodes counted after a spring frost, each by the best that lives on it. */
export const FROST_COUNTS = [
  "frostPrimaries",
  "frostSecondaries",
  "frostTertiaries",
  "frostShootless",
] as const;

const harvest: SheetShape = {
  id: "harvest",
  name: WORDS.harvest.name,
  rowIs: WORDS.harvest.rowIs,
  columns: [
    block,
    {
      id: "year",
      kind: "year",
      ...WORDS.harvest.year,
      required: true,
      least: 1950,
      most: 2100,
      width: 8,
    },
    {
      id: "picked",
      kind: "mass",
      ...WORDS.harvest.picked,
      also: ["crop picked", "crop"],
      required: false,
      least: 0,
      most: 1e7,
      width: 14,
    },
    count("vinesPicked", WORDS.harvest.vinesPicked.header, WORDS.harvest.vinesPicked.help, {
      most: 1000000,
      width: 12,
    }),
    {
      id: "clusterWeight",
      kind: "mass",
      ...WORDS.harvest.clusterWeight,
      required: false,
      least: 0,
      most: 3,
      width: 17,
    },
    {
      id: "lagWeight",
      kind: "mass",
      ...WORDS.harvest.lagWeight,
      also: ["lag phase cluster weight"],
      required: false,
      least: 0,
      most: 3,
      width: 27,
    },
    count("clustersWeighed", WORDS.harvest.clustersWeighed.header, WORDS.harvest.clustersWeighed.help, {
      most: 100000,
      width: 14,
    }),
    {
      id: "clustersPerShoot",
      kind: "number",
      ...WORDS.harvest.clustersPerShoot,
      also: ["clusters per shoot"],
      required: false,
      least: 0,
      most: 6,
      width: 16,
    },
    share("budbreak", WORDS.harvest.budbreak.header, WORDS.harvest.budbreak.help),
    ...FROST_COUNTS.map((id) =>
      count(id, WORDS.harvest[id].header, WORDS.harvest[id].help, { most: 100000, width: 14 }),
    ),
  ],
};

const settings: SheetShape = {
  id: "settings",
  name: WORDS.settings.name,
  rowIs: WORDS.settings.rowIs,
  columns: [
    {
      id: "setting",
      kind: "text",
      ...WORDS.settings.setting,
      required: true,
      width: 30,
    },
    {
      id: "value",
      kind: "text",
      ...WORDS.settings.value,
      required: true,
      width: 12,
    },
    {
      id: "unit",
      kind: "text",
      ...WORDS.settings.unit,
      required: false,
      width: 14,
    },
    {
      id: "source",
      kind: "text",
      ...WORDS.settings.source,
      required: false,
      width: 44,
    },
    {
      id: "meaning",
      kind: "text",
      ...WORDS.settings.meaning,
      required: false,
      width: 60,
    },
    {
      id: "changedBy",
      kind: "text",
      ...WORDS.settings.changedBy,
      required: false,
      width: 14,
    },
    {
      id: "changedOn",
      kind: "date",
      ...WORDS.settings.changedOn,
      required: false,
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
