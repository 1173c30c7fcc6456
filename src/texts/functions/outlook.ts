import { t, type FunctionText } from "./functionText";

export const OUTLOOK_TEXT: FunctionText = {
  description: t(
    "What the pruning leaves, block by block and stage by stage: clusters a vine and the crop of a vine, of an area and of the block, low, likely and high, with the largest source of doubt.",
    "Lo que deja la poda, por cuartel y etapa: racimos por planta y cosecha de una planta, de un área y del cuartel, baja, probable y alta, con la mayor fuente de duda.",
    "Ce que la taille laisse, par parcelle et par étape : grappes par cep et récolte d'un cep, d'une surface et de la parcelle, basse, probable et haute, avec la plus grande source de doute.",
  ),
  parameters: {
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "The Vines table with its headings: status, and shoots or clusters where they were counted.",
        "La tabla Plantas con sus encabezados: situación, y brotes o racimos donde se contaron.",
        "Le tableau Ceps avec ses en-têtes : situation, et pousses ou grappes où elles ont été comptées.",
      ),
    },
    blocks: {
      label: t("blocks", "cuarteles", "parcelles"),
      description: t(
        "The Blocks table: spacings, vines, cluster weight, clusters a shoot, budbreak.",
        "La tabla Cuarteles: distancias, plantas, peso del racimo, racimos por brote, brotación.",
        "Le tableau Parcelles : écartements, ceps, poids de grappe, grappes par pousse, débourrement.",
      ),
    },
    settings: {
      label: t("settings", "ajustes", "réglages"),
      description: t(
        "The Settings table, for confidence and how figures vary from year to year; the built-in ones if left out.",
        "La tabla Ajustes, por la confianza y la variación entre años; los incorporados si se omite.",
        "Le tableau Réglages, pour la confiance et la variation entre années ; ceux d'origine si omis.",
      ),
    },
    cordons: {
      label: t("cordons", "cordones", "cordons"),
      description: t(
        "The Cordons table, for the nodes left on the cordons that stay; without it there is no winter stage.",
        "La tabla Cordones, por las yemas en los cordones que quedan; sin ella no hay etapa de invierno.",
        "Le tableau Cordons, pour les yeux des cordons qui restent ; sans lui pas d'étape d'hiver.",
      ),
    },
    bud_cuts: {
      label: t("bud_cuts", "cortes_de_yemas", "coupes_de_bourgeons"),
      description: t(
        "The Bud cuts table, for winter injury; without it every node is taken as alive.",
        "La tabla Cortes de yemas, por el daño de invierno; sin ella toda yema se toma por viva.",
        "Le tableau Coupes de bourgeons, pour les dégâts d'hiver ; sans lui tout œil est tenu pour vivant.",
      ),
    },
    harvest: {
      label: t("harvest", "cosecha", "récolte"),
      description: t(
        "The Harvest table, for this season's cluster weight at lag phase.",
        "La tabla Cosecha, por el peso del racimo en fase de pausa de esta temporada.",
        "Le tableau Récolte, pour le poids de grappe en phase de pause de cette saison.",
      ),
    },
    unit: {
      label: t("unit", "unidad", "unité"),
      description: t(
        "US or metric, for the answer and for columns whose heading names no unit. If left out: the Settings table's, else that of the other headings.",
        "US o metric, para la respuesta y para columnas cuyo encabezado no nombra unidad. Si se omite: la de la tabla Ajustes o la de los otros encabezados.",
        "US ou metric, pour la réponse et les colonnes dont l'en-tête ne nomme pas d'unité. Si omis : celle du tableau Réglages, sinon des autres en-têtes.",
      ),
    },
  },
  results: {
    block: t("Block", "Cuartel", "Parcelle"),
    stage: t("Stage", "Etapa", "Étape"),
    figure: t("Figure", "Cifra", "Chiffre"),
    low: t("Low", "Bajo", "Bas"),
    likely: t("Likely", "Probable", "Probable"),
    high: t("High", "Alto", "Haut"),
    unit: t("Unit", "Unidad", "Unité"),
    says: t("What it rests on", "En qué se apoya", "Sur quoi il repose"),
  },
};

/** Lines of the answer. */
export const OUTLOOK_LINES = {
  figures: {
    clusters: t("clusters a vine", "racimos por planta", "grappes par cep"),
    perVine: t("crop of a vine", "cosecha de una planta", "récolte d'un cep"),
    perArea: t("crop of an area", "cosecha de un área", "récolte d'une surface"),
    block: t("crop of the block", "cosecha del cuartel", "récolte de la parcelle"),
  },
  doubt: t(
    "Largest doubt: {source}, {percent} %.",
    "Mayor duda: {source}, {percent} %.",
    "Plus grand doute : {source}, {percent} %.",
  ),
} as const;
