import type { Language } from "../texts/language";
import { helpFile, helpPage } from "./helpPage";
import { functionsMetadata, metadataFile } from "./metadata";

/**
 * The files that a build makes from the registry for one language: what Excel lists the functions from, and the page
 * behind its "help on this function". Addresses in them are those of manifest.xml.
 *
 * @returns name and content of each
 * @example
 * functionFiles("es").map(([name]) => name) // ["functions.es.json", "functions.es.html"]
 */
export const functionFiles = (language: Language): readonly (readonly [name: string, content: string])[] => [
  [metadataFile(language), JSON.stringify(functionsMetadata(language))],
  [helpFile(language), helpPage(language)],
];
