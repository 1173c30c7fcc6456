import type { Text } from "./language";

const t = (en: string, es: string, fr: string): Text => ({ en, es, fr });

/** Words of the crew cards, short enough for a cell. */
export const CARD_TEXTS = {
  title: t("{block}, row {row}", "{block}, hilera {row}", "{block}, rang {row}"),
  page: t("page {page} of {pages}", "página {page} de {pages}", "page {page} sur {pages}"),
  vines: t("vines {first} to {last}", "plantas {first} a {last}", "ceps {first} à {last}"),
  made: t("Made on {date}", "Hecha el {date}", "Faite le {date}"),
  crew: t("Crew", "Cuadrilla", "Équipe"),
  day: t("Day", "Día", "Jour"),
  vine: t("Vine", "Planta", "Cep"),
  keep: t("Stays", "Queda", "Reste"),
  cut: t("Cut", "Cortar", "Couper"),
  lay: t("Lay a cane", "Tender", "Coucher"),
  nodes: t("Nodes a spur", "Yemas por pitón", "Yeux par courson"),
  notes: t("Notes", "Notas", "Notes"),
  done: t("Done", "Hecho", "Fait"),
  found: t("Found different", "Hallado distinto", "Trouvé autrement"),
  ribbonStays: t("{colour} ribbon: stays", "cinta {colour}: queda", "ruban {colour} : reste"),
  ribbonAsk: t("{colour} ribbon: look first", "cinta {colour}: mirar antes", "ruban {colour} : voir d'abord"),
  cutRule: t(
    "Cut from the outer end towards the trunk. ⟂: stop at the first good cane. T1: trunk 1. +T1: take dead trunk 1 out.",
    "Cortar desde la punta hacia el tronco. ⟂: parar en el primer sarmiento bueno. T1: tronco 1. +T1: sacar el tronco muerto 1.",
    "Couper du bout vers le tronc. ⟂ : s'arrêter au premier bon sarment. T1 : tronc 1. +T1 : enlever le tronc mort 1.",
  ),
  or: t("{cordon} / {others} ?", "¿{cordon} / {others}?", "{cordon} / {others} ?"),
  orNewCane: t("{cordon} / cane ?", "¿{cordon} / sarm.?", "{cordon} / sarm. ?"),
  withTrunk: t("{cordon}+T{trunk}", "{cordon}+T{trunk}", "{cordon}+T{trunk}"),
  keepTrunk: t("{cordon} · T{trunk}", "{cordon} · T{trunk}", "{cordon} · T{trunk}"),
  sideStays: t("{side} stays", "{side} queda", "{side} reste"),
  sideCut: t("{side} cut", "{side} cortar", "{side} couper"),
  cane: t("cane: {from}", "sarmiento: {from}", "sarment : {from}"),
  spursAt: t("{spurs} × {nodes}", "{spurs} × {nodes}", "{spurs} × {nodes}"),
  short: t("(−{short})", "(−{short})", "(−{short})"),
  shortRule: t(
    "(−10) under nodes: nodes of the budget that the spurs cannot hold; leave some spurs longer or keep a cane.",
    "(−10) bajo yemas: yemas del presupuesto que no caben en los pitones; dejar algunos más largos o un sarmiento.",
    "(−10) sous les yeux : yeux du budget que les coursons ne peuvent porter ; en laisser de plus longs ou garder un sarment.",
  ),
  surplus: t("✂ {spurs}", "✂ {spurs}", "✂ {spurs}"),
  surplusRule: t(
    "✂ 4 under nodes: cut off so many of the worst placed spurs.",
    "✂ 4 bajo yemas: quitar tantos de los pitones peor ubicados.",
    "✂ 4 sous les yeux : ôter autant des coursons les plus mal placés.",
  ),
  bringUp: t("new trunks: {trunks}", "troncos nuevos: {trunks}", "nouveaux troncs : {trunks}"),
  renew: t("renew {cordon}", "renovar {cordon}", "renouveler {cordon}"),
  extend: t("extend {cordon} {length}", "alargar {cordon} {length}", "allonger {cordon} {length}"),
  missing: t("missing", "faltante", "manquant"),
  young: t("young", "joven", "jeune"),
  replanted: t("replanted", "replantada", "replanté"),
  notDecided: t("not decided", "sin decidir", "pas décidé"),
  prunedOn: t("done {date}", "hecha {date}", "fait {date}"),
  cautions: t(
    "Wear eye protection and gloves; keep hands clear of the blade and of the next person. Warm up before fingers go numb; mind ice, wire and ladders. Wound protection and sprays only by their label and local rules. The figures advise; a local adviser and the person at the vine decide.",
    "Usar gafas y guantes; manos lejos de la hoja y de la otra persona. Calentarse antes de que los dedos se entumezcan; cuidado con hielo, alambre y escaleras. Protectores de heridas y productos solo según su etiqueta y las normas locales. Las cifras aconsejan; deciden un asesor local y quien está ante la planta.",
    "Porter lunettes et gants ; tenir les mains loin de la lame et du voisin. Se réchauffer avant que les doigts s'engourdissent ; attention à la glace, au fil et aux échelles. Protection des plaies et produits selon l'étiquette et les règles locales. Les chiffres conseillent ; un conseiller local et la personne au cep décident.",
  ),
  back: t(
    "What you found different goes into the Cordons and Vines sheets: Fixed choice, Condition, Pruned on, Note.",
    "Lo hallado distinto se anota en las hojas Cordones y Plantas: Decisión fija, Estado, Podada el, Nota.",
    "Ce qui était différent se note dans les feuilles Cordons et Ceps : Choix fixé, État, Taillé le, Remarque.",
  ),
} as const satisfies Record<string, Text>;

/** Origins of a cane, short. */
export const CARD_ORIGINS = {
  trunk: t("T{trunk}", "T{trunk}", "T{trunk}"),
  otherTrunk: t("bare trunk", "tronco sin cordón", "tronc nu"),
  head: t("head", "cabeza", "tête"),
  ground: t("sucker", "chupón", "gourmand"),
} as const satisfies Record<string, Text>;

/** The parts of a cordon's score, as heads of columns. */
export const PART_TEXTS = {
  spurs: t("Spurs", "Pitones", "Coursons"),
  stretch: t("Longest gap", "Hueco más largo", "Plus long vide"),
  placing: t("Placing", "Ubicación", "Orientation"),
  soundness: t("Soundness", "Estado", "État"),
  diameter: t("Diameter", "Diámetro", "Diamètre"),
} as const satisfies Record<string, Text>;

/** Words that a farm may use for the colour of its ribbon, with the colour that is shown beside them. */
export const RIBBON_COLOURS: Readonly<Record<string, readonly string[]>> = {
  "#f57c00": ["orange", "naranja"],
  "#1565c0": ["blue", "azul", "bleu"],
  "#c62828": ["red", "rojo", "roja", "rouge"],
  "#f9d71c": ["yellow", "amarillo", "amarilla", "jaune"],
  "#2e7d32": ["green", "verde", "vert"],
  "#ffffff": ["white", "blanco", "blanca", "blanc"],
  "#e91e8c": ["pink", "rosa", "rose"],
  "#7b1fa2": ["purple", "violet", "morado", "morada", "violeta"],
  "#000000": ["black", "negro", "negra", "noir"],
};
