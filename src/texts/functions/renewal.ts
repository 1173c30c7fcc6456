import type { Text } from "../language";
import { t, type FunctionText } from "./functionText";

/** Lines of a renewal list that name no vine. */
export const RENEWAL_LINES: Readonly<Record<"none" | "notCounted", Text>> = {
  none: t(
    "No vine needs a new trunk.",
    "Ninguna planta necesita un tronco nuevo.",
    "Aucun cep n'a besoin d'un nouveau tronc.",
  ),
  notCounted: t(
    "Vines whose live trunks were not counted: {vines}.",
    "Plantas sin troncos vivos contados: {vines}.",
    "Ceps dont les troncs vivants n'ont pas été comptés : {vines}.",
  ),
};

export const TRUNKSTORENEW_TEXT: FunctionText = {
  description: t(
    "Vines that need a new trunk, most urgent first: live trunks against the number wanted, hurt and dead trunks, and what to do.",
    "Plantas que necesitan un tronco nuevo, las más urgentes primero: troncos vivos frente a los deseados, troncos dañados y muertos, y qué hacer.",
    "Ceps qui ont besoin d'un nouveau tronc, les plus urgents d'abord : troncs vivants face au nombre voulu, troncs touchés et morts, et que faire.",
  ),
  parameters: {
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t(
        "The Vines table with its heading row, such as Vines[#All].",
        "La tabla Plantas con su fila de encabezados, como Plantas[#Todo].",
        "Le tableau Ceps avec sa ligne d'en-tête, comme Ceps[#Tout].",
      ),
    },
    settings: {
      label: t("settings", "ajustes", "réglages"),
      description: t(
        "The Settings table, for the number of trunks wanted; the built-in one if left out.",
        "La tabla Ajustes, por el número de troncos deseado; el incorporado si se omite.",
        "Le tableau Réglages, pour le nombre de troncs voulu ; celui d'origine si omis.",
      ),
    },
    cordons: {
      label: t("cordons", "cordones", "cordons"),
      description: t(
        "The Cordons table, for the condition of each trunk.",
        "La tabla Cordones, para el estado de cada tronco.",
        "Le tableau Cordons, pour l'état de chaque tronc.",
      ),
    },
  },
  results: {
    order: t("Order", "Orden", "Ordre"),
    block: t("Block", "Cuartel", "Parcelle"),
    row: t("Row", "Hilera", "Rang"),
    vine: t("Vine", "Planta", "Cep"),
    liveTrunks: t("Live trunks", "Troncos vivos", "Troncs vivants"),
    bringUp: t("Trunks to bring up", "Troncos por criar", "Troncs à élever"),
    what: t("What to do", "Qué hacer", "Que faire"),
  },
};
