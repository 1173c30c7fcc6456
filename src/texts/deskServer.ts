import type { Text } from "./language";

/** What the desk page's server says on the command line. */
export const DESK_SERVER = {
  ready: {
    en: "Cordonbook is ready at {address} (stop it with Ctrl+C)",
    es: "Cordonbook está listo en {address} (se detiene con Ctrl+C)",
    fr: "Cordonbook est prêt à l'adresse {address} (Ctrl+C pour l'arrêter)",
  },
  help: {
    en: "npm start -- [--port NUMBER] [--no-open]: opens the page without Excel on this machine only; port {port} unless another program has it.",
    es: "npm start -- [--port NÚMERO] [--no-open]: abre la página sin Excel solo en este equipo; puerto {port} si está libre.",
    fr: "npm start -- [--port NUMÉRO] [--no-open] : ouvre la page sans Excel sur cette machine seulement ; port {port} s'il est libre.",
  },
  badOption: {
    en: "Cordonbook was not started: {problem} Options are --port NUMBER and --no-open.",
    es: "Cordonbook no se inició: {problem} Las opciones son --port NÚMERO y --no-open.",
    fr: "Cordonbook n'a pas démarré : {problem} Les options sont --port NUMÉRO et --no-open.",
  },
  badPort: {
    en: "Cordonbook was not started: --port must be a whole number from 0 to 65535, but is {given}.",
    es: "Cordonbook no se inició: --port debe ser un número entero de 0 a 65535, pero es {given}.",
    fr: "Cordonbook n'a pas démarré : --port doit être un nombre entier de 0 à 65535, mais vaut {given}.",
  },
  oldNode: {
    en: "Cordonbook was not started: it needs Node {needed} or newer, but this is Node {found}.",
    es: "Cordonbook no se inició: necesita Node {needed} o posterior, pero este es Node {found}.",
    fr: "Cordonbook n'a pas démarré : il lui faut Node {needed} ou plus récent, mais voici Node {found}.",
  },
  notBuilt: {
    en: "Cordonbook was not started, because its page could not be built (run npm ci again if packages are missing): {problem}",
    es: "Cordonbook no se inició porque no se pudo construir su página (ejecute npm ci otra vez si faltan paquetes): {problem}",
    fr: "Cordonbook n'a pas démarré, car sa page n'a pas pu être construite (relancez npm ci s'il manque des paquets) : {problem}",
  },
  noPort: {
    en: "Cordonbook was not started, because no port of this machine could be opened from {port} on: {problem}",
    es: "Cordonbook no se inició porque no se pudo abrir ningún puerto de este equipo desde el {port}: {problem}",
    fr: "Cordonbook n'a pas démarré, car aucun port de cette machine n'a pu être ouvert à partir de {port} : {problem}",
  },
} satisfies Record<string, Text>;
