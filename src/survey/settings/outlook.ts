import { CROP_LOAD_RANGES } from "../../domain/outlook/cropLoadRanges";
import type { Text } from "../../texts/language";
import type { Setting } from "./setting";
import { figure, oneOf, share } from "./figure";

const MEMORY = "from memory, unverified";

const minutes = (id: string, value: number, meaning: Text): Setting =>
  figure(id, value, "min", MEMORY, [0.1, 240], meaning);

const RANGE_WORDS: Readonly<Record<string, Text>> = {
  "single canopy": { en: "single canopies", es: "follajes sencillos", fr: "feuillages simples" },
  "divided canopy": { en: "divided canopies", es: "follajes divididos", fr: "feuillages divisés" },
  hybrids: { en: "hybrids", es: "híbridos", fr: "hybrides" },
  Concord: { en: "Concord", es: "Concord", fr: "Concord" },
};

const cropLoadLimits = CROP_LOAD_RANGES.flatMap(({ name, low, high, source }): Setting[] => {
  const words = RANGE_WORDS[name];
  const limit = (id: string, value: number, meaning: Text): Setting =>
    figure(`${id} crop load, ${name}`, value, "", source, [0, 100], meaning);
  return [
    limit("Least", low, {
      en: `Crop over prunings below which ${words.en} could carry more.`,
      es: `Cosecha sobre poda por debajo de la cual los ${words.es} podrían llevar más.`,
      fr: `Récolte sur bois de taille sous lequel les ${words.fr} pourraient porter plus.`,
    }),
    limit("Most", high, {
      en: `Crop over prunings above which ${words.en} are overcropped for their size.`,
      es: `Cosecha sobre poda por encima de la cual los ${words.es} llevan demasiado para su tamaño.`,
      fr: `Récolte sur bois de taille au-dessus duquel les ${words.fr} portent trop pour leur taille.`,
    }),
  ];
});

/** Settings for crop outlook, sampling and crop load. */
export const OUTLOOK_SETTINGS: readonly Setting[] = [
  share("Usual budbreak", 0.85, MEMORY, {
    en: "Share of live nodes that grow a shoot, for blocks that give none.",
    es: "Parte de las yemas vivas que brotan, para cuarteles que no la dan.",
    fr: "Part des yeux vivants qui donnent une pousse, pour les parcelles qui n'en donnent pas.",
  }),
  figure("Budbreak, year to year", 0.06, "share", MEMORY, [0, 0.5], {
    en: "Spread of budbreak between years, in points: 0.06 is six points up or down in two years of three.",
    es: "Variación de la brotación entre años, en puntos: 0.06 son seis puntos arriba o abajo en dos años de tres.",
    fr: "Variation du débourrement entre années, en points : 0,06, c'est six points de plus ou de moins deux années sur trois.",
  }),
  figure("Usual clusters a shoot", 2, "", "common practice", [0.1, 6], {
    en: "Clusters on a shoot, for blocks that give none; no published figure for a cold-hardy cultivar was seen.",
    es: "Racimos por brote, para cuarteles que no los dan; no se vio cifra publicada de una variedad resistente al frío.",
    fr: "Grappes par pousse, pour les parcelles qui n'en donnent pas ; aucun chiffre publié d'un cépage rustique n'a été vu.",
  }),
  figure("Usual cluster weight", 0.25, "lb", "ours", [0.02, 3], {
    en: "What the farm's own cluster weights are drawn towards while years are few; no published weight of most cold-hardy cultivars was seen.",
    es: "Hacia lo que se acercan los pesos de racimo propios mientras hay pocos años; de casi ninguna variedad resistente al frío se vio un peso publicado.",
    fr: "Vers quoi tendent les poids de grappe de la ferme tant que les années sont peu nombreuses ; presque aucun poids publié d'un cépage rustique n'a été vu.",
  }),
  share("Cluster weight, between cultivars", 0.4, "ours", {
    en: "How far cultivars and farms lie around the usual cluster weight, over it; large, so that the farm's own years soon count.",
    es: "Cuánto se apartan variedades y fincas del peso de racimo usual; grande, para que pronto cuenten los años propios.",
    fr: "De combien cépages et fermes s'écartent du poids de grappe usuel ; grand, pour que comptent vite les années de la ferme.",
  }),
  share("Clusters a shoot, year to year", 0.25, "cornell2012", {
    en: "Spread of clusters a shoot between years, over the mean; the source says about 25 %, taken here as a standard deviation.",
    es: "Variación de racimos por brote entre años, sobre la media; la fuente dice cerca del 25 %, tomado aquí como desviación estándar.",
    fr: "Variation des grappes par pousse entre années, sur la moyenne ; la source dit environ 25 %, pris ici comme écart type.",
  }),
  share("Cluster weight, year to year", 0.2, MEMORY, {
    en: "Spread of the mean cluster weight between years, over the mean.",
    es: "Variación del peso medio del racimo entre años, sobre la media.",
    fr: "Variation du poids moyen d'une grappe entre années, sur la moyenne.",
  }),
  share("Cluster weight, between clusters", 0.4, MEMORY, {
    en: "Spread of single clusters in one block, over the mean; says how sure a sample of weighed clusters is.",
    es: "Variación entre racimos de un cuartel, sobre la media; dice cuán segura es una muestra de racimos pesados.",
    fr: "Variation entre grappes d'une parcelle, sur la moyenne ; dit la sûreté d'un échantillon de grappes pesées.",
  }),
  share("Worth of a secondary shoot", 0.38, "winesVines2015", {
    en: "Crop of a shoot from a secondary bud over that of one from a primary bud: 0.275 / 0.725, worked out from the 70 to 75 % of the source.",
    es: "Cosecha de un brote de yema secundaria frente a uno de primaria: 0.275 / 0.725, calculado del 70 a 75 % de la fuente.",
    fr: "Récolte d'une pousse de bourgeon secondaire sur celle d'un primaire : 0,275 / 0,725, tiré des 70 à 75 % de la source.",
  }),
  figure("Basal shoots a spur", 0, "", "ours", [0, 5], {
    en: "Shoots from buds that are not counted, for each spur; 0 until the farm has counted its own.",
    es: "Brotes de yemas no contadas, por pitón; 0 hasta que la finca los cuente.",
    fr: "Pousses de bourgeons non comptés, par courson ; 0 tant que la ferme ne les a pas comptées.",
  }),
  share("Worth of a basal shoot", 0.5, MEMORY, {
    en: "Clusters of a basal shoot over those of a counted one.",
    es: "Racimos de un brote basal frente a uno contado.",
    fr: "Grappes d'une pousse basale sur celles d'une pousse comptée.",
  }),
  figure("Lag phase multiplier", 2, "", "iowa2013", [1, 5], {
    en: 'Harvest weight over lag-phase weight of a cluster: a fixed 2 in Iowa, "not fixed" in Maryland, 2 for Willamette Pinot noir only by Wolfe.',
    es: 'Peso en cosecha sobre peso en fase de pausa: 2 fijo en Iowa, "no fijo" en Maryland, 2 solo para Pinot noir de Willamette según Wolfe.',
    fr: "Poids à la récolte sur poids en phase de pause : 2 fixe en Iowa, « pas fixe » au Maryland, 2 seulement pour le Pinot noir du Willamette selon Wolfe.",
  }),
  share("Lag phase multiplier, year to year", 0.1, MEMORY, {
    en: "Spread of the multiplier between years, over the mean.",
    es: "Variación del multiplicador entre años, sobre la media.",
    fr: "Variation du multiplicateur entre années, sur la moyenne.",
  }),
  figure("Clusters weighed", 100, "clusters", "iowa2013", [2, 100000], {
    en: "Clusters behind a weighed mean, where the Harvest sheet does not say; the source asks for 100 to 200.",
    es: "Racimos detrás de una media pesada, donde la hoja Cosecha no lo dice; la fuente pide 100 a 200.",
    fr: "Grappes derrière une moyenne pesée, où la feuille Récolte ne le dit pas ; la source en demande 100 à 200.",
  }),
  oneOf("Vines were drawn", "at random", ["at random", "by row"], "ours", {
    en: "How the counted vines were drawn: at random over the block, or a number in every row. By row only when it was done so.",
    es: "Cómo se eligieron las plantas contadas: at random (al azar en el cuartel) o by row (un número en cada hilera). Solo by row si se hizo así.",
    fr: "Comment les ceps comptés ont été tirés : at random (au hasard dans la parcelle) ou by row (un nombre par rang). By row seulement si c'était le cas.",
  }),
  figure("Spread between vines", 0.43, "share", "strickland1932", [0.01, 3], {
    en: "Standard deviation between vines over the mean, for planning a count; the yield of 125 vines in the source. A pilot of five vines or more replaces it.",
    es: "Desviación estándar entre plantas sobre la media, para planear un conteo; el rendimiento de 125 plantas en la fuente. Un piloto de cinco plantas o más lo reemplaza.",
    fr: "Écart type entre ceps sur la moyenne, pour prévoir un comptage ; le rendement de 125 ceps dans la source. Un essai sur cinq ceps ou plus le remplace.",
  }),
  figure("Margin of a count", 0.1, "share", "bcwgc", [0.001, 1], {
    en: "How near a block's mean should be known; the source calls an estimate within 10 % a good one.",
    es: "Con qué cercanía debe conocerse la media; la fuente llama buena a una estimación dentro del 10 %.",
    fr: "À combien près la moyenne doit être connue ; la source dit bonne une estimation à 10 % près.",
  }),
  figure("Spread between farms", 0.25, "share", "ours", [0.001, 1], {
    en: "How far farms lie around a published figure, over the figure; the larger, the sooner the farm's own years count.",
    es: "Cuánto se apartan las fincas de una cifra publicada; cuanto mayor, antes cuentan los años propios.",
    fr: "De combien les fermes s'écartent d'un chiffre publié ; plus il est grand, plus tôt comptent les années de la ferme.",
  }),
  figure("Budbreak, between farms", 0.06, "share", "ours", [0.001, 0.5], {
    en: "The same for budbreak, in points.",
    es: "Lo mismo para la brotación, en puntos.",
    fr: "De même pour le débourrement, en points.",
  }),
  figure("Lag phase multiplier, between farms", 0.1, "share", "ours", [0.001, 1], {
    en: "The same for the lag phase multiplier, over the multiplier.",
    es: "Lo mismo para el multiplicador de la fase de pausa.",
    fr: "De même pour le multiplicateur de la phase de pause.",
  }),
  oneOf(
    "Crop load range",
    "single canopy",
    CROP_LOAD_RANGES.map(({ name }) => name),
    "kliewer2005",
    {
      en: "Named range that crop over prunings is held against. The published ones are of vinifera in California.",
      es: "Rango con nombre con que se compara cosecha sobre poda. Los publicados son de vinifera en California.",
      fr: "Fourchette nommée à laquelle on compare récolte sur bois de taille. Celles publiées sont de vinifera en Californie.",
    },
  ),
  ...cropLoadLimits,
  figure("Clusters a vine in year 2", 0, "clusters", MEMORY, [0, 500], {
    en: "Most clusters to leave on a vine in the second year after planting.",
    es: "Máximo de racimos por planta en el segundo año tras la plantación.",
    fr: "Maximum de grappes à laisser sur un cep la deuxième année après la plantation.",
  }),
  figure("Clusters a vine in year 3", 10, "clusters", "winegrowersUk", [0, 500], {
    en: "Most clusters to leave on a vine in the third year; the source gives about 10 for the first crop.",
    es: "Máximo de racimos por planta en el tercer año; la fuente da unos 10 para la primera cosecha.",
    fr: "Maximum de grappes à laisser sur un cep la troisième année ; la source donne environ 10 pour la première récolte.",
  }),
  share("Floor of live spurs", 0.7, "ours", {
    en: "Live spurs over positions below which a block is to be rebuilt; no published share was seen.",
    es: "Pitones vivos sobre posiciones por debajo de lo cual hay que rehacer el cuartel; no se vio cifra publicada.",
    fr: "Coursons vivants sur emplacements sous lequel une parcelle est à refaire ; aucune part publiée n'a été vue.",
  }),
  minutes("Minutes to count a vine", 3, {
    en: "Minutes to find a drawn vine and count its shoots or clusters.",
    es: "Minutos para hallar una planta elegida y contar sus brotes o racimos.",
    fr: "Minutes pour trouver un cep tiré et compter ses pousses ou grappes.",
  }),
  minutes("Minutes to cut a cane", 4, {
    en: "Minutes to fetch a cane and cut and judge its buds.",
    es: "Minutos para traer un sarmiento y cortar y juzgar sus yemas.",
    fr: "Minutes pour prendre un sarment, couper et juger ses bourgeons.",
  }),
  minutes("Minutes to weigh a cluster", 0.5, {
    en: "Minutes to pick and weigh one cluster.",
    es: "Minutos para cosechar y pesar un racimo.",
    fr: "Minutes pour cueillir et peser une grappe.",
  }),
  figure("Minutes for a next step", 120, "min", "ours", [1, 10000], {
    en: "Time of one person that the outlook spends on paper, to say what would narrow its range most.",
    es: "Tiempo de una persona que la perspectiva gasta en el papel, para decir qué estrecharía más el rango.",
    fr: "Temps d'une personne que la prévision dépense sur le papier, pour dire ce qui resserrerait le plus la fourchette.",
  }),
];
