import { type Language, LANGUAGES, type Text } from "./language";
import type { Texts } from "./languages/en";
import { type FetchedPart, fetchTexts, LANGUAGE_FILES } from "./languages/languages";

/** The shape of a language's file with a text of every language where the file has its own. */
type EveryLanguage<Part> = Part extends string
  ? Text
  : { readonly [Key in keyof Part]: EveryLanguage<Part[Key]> };

type Tree = { [Key in string]?: string | Tree };

const tree: Tree = {};
for (const language of LANGUAGES) place(LANGUAGE_FILES[language], language, tree);

/** Every text a person sees, in every language, under the keys of src/texts/languages. */
export const TEXTS = tree as unknown as EveryLanguage<Texts>;

const brought = new Set<FetchedPart>();

/** Fetches the texts of a language, where a page does not have them yet; until then they cannot be said. */
export async function bringTexts(part: FetchedPart, language: Language): Promise<void> {
  brought.add(part);
  takeTexts(await fetchTexts(part, language), language);
}

/** Puts the texts of one language, or a part of them, beside those that are here. */
export function takeTexts(texts: object, language: Language): void {
  place(texts, language, tree);
}

/** Fetches in another language what has been fetched so far. */
export async function bringLanguage(language: Language): Promise<void> {
  await Promise.all([...brought].map((part) => bringTexts(part, language)));
}

/** Puts texts beside those of the other languages; an empty one only has its key made. */
function place(texts: object, language: Language, into: Tree): void {
  for (const [key, part] of Object.entries(texts) as [string, object | string | null][]) {
    if (part === null) continue;
    const there = (into[key] ??= Array.isArray(part) ? ([] as unknown as Tree) : {}) as Tree;
    if (typeof part !== "string") place(part, language, there);
    else if (part !== "") there[language] = part;
  }
}
