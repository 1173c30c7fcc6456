import { LANGUAGES } from "../texts/language";
import { helpFile, helpPage } from "./helpPage";
import { functionsMetadata, metadataFile } from "./metadata";

/**
 * The files that a build makes from the registry in every language: what Excel lists the functions from, and the
 * page behind its "help on this function". Addresses in them are those of manifest.xml.
 *
 * @returns name and content of each
 * @example
 * functionFiles().map(([name]) => name).slice(2, 4) // ["functions.es.json", "functions.es.html"]
 */
export const functionFiles = (): readonly (readonly [name: string, content: string])[] =>
  LANGUAGES.flatMap((language) => [
    [metadataFile(language), JSON.stringify(functionsMetadata(language))] as const,
    [helpFile(language), helpPage(language)] as const,
  ]);
