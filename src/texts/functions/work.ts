import { t, type FunctionText } from "./functionText";

export const PRUNINGHOURS_TEXT: FunctionText = {
  description: t(
    "Hours of work and days of the crew for pruning a number of vines.",
    "Horas de trabajo y días de cuadrilla para podar un número de plantas.",
    "Heures de travail et journées d'équipe pour tailler un nombre de ceps.",
  ),
  parameters: {
    vines: {
      label: t("vines", "plantas", "ceps"),
      description: t("Vines to prune.", "Plantas por podar.", "Ceps à tailler."),
    },
    minutes: {
      label: t("minutes", "minutos", "minutes"),
      description: t(
        "Minutes that one person needs for a vine.",
        "Minutos que una persona necesita por planta.",
        "Minutes nécessaires à une personne par cep.",
      ),
    },
    crew: {
      label: t("crew", "cuadrilla", "équipe"),
      description: t("People at work: 1 if left out.", "Personas: 1 si se omite.", "Personnes : 1 si omis."),
    },
    hours_a_day: {
      label: t("hours a day", "horas por día", "heures par jour"),
      description: t(
        "Hours that each works in a day: 8 if left out.",
        "Horas de trabajo por día: 8 si se omite.",
        "Heures de travail par jour : 8 si omis.",
      ),
    },
  },
  results: {
    hours: t("hours", "horas", "heures"),
    crewDays: t("crew days", "días de cuadrilla", "journées d'équipe"),
  },
};

export const VERSION_TEXT: FunctionText = {
  description: t(
    "Version of the add-in that calculates this workbook; when it shows #NAME? the add-in is not there.",
    "Versión del complemento que calcula este libro; si muestra #¿NOMBRE? el complemento no está.",
    "Version du complément qui calcule ce classeur ; s'il affiche #NOM? le complément est absent.",
  ),
  parameters: {},
  results: { version: t("version", "versión", "version") },
};
