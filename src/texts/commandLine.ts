import type { Text } from "./language";

/** Sentences of the command line. */
export const COMMAND_LINE: Readonly<Record<string, Text>> = {
  unknownCommand: {
    en: "There is no command “{command}”: known are {commands}.",
    es: "No existe la orden «{command}»: se conocen {commands}.",
    fr: "Il n'y a pas de commande « {command} » : sont connues {commands}.",
  },
  formulaUsage: {
    en: "The command formula takes one formula in quotation marks, such as {example}.",
    es: "La orden formula admite una fórmula entre comillas, como {example}.",
    fr: "La commande formula prend une formule entre guillemets, comme {example}.",
  },
};
