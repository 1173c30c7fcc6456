import { DOS_LETTERS } from "../../survey/reading/encodedTwice";
import { unitNamed } from "../../survey/sheets/unit";
import type { CsvSource } from "./csvSource";

/** Encodings of a byte a letter in which spreadsheets have written csv files: Windows, old Macs, DOS. */
export type OneByteEncoding = "windows-1252" | "macintosh" | "cp850";

/** What turns the bytes of a file into text, chunk by chunk. */
export function oneByteDecoder(encoding: OneByteEncoding): (chunk?: Uint8Array) => string {
  if (encoding !== "cp850") {
    const decoder = new TextDecoder(encoding);
    return (chunk) => decoder.decode(chunk, { stream: chunk !== undefined });
  }
  return (chunk) =>
    Array.from(chunk ?? [], (byte) =>
      byte < 128 ? String.fromCharCode(byte) : DOS_LETTERS[byte - 128],
    ).join("");
}

/** What a file of a byte a letter was taken for. */
export interface LikelyEncoding {
  readonly encoding: OneByteEncoding;
  /** A word with a no-break space of Windows that could be one with an \u00e1 of DOS, where nothing in the file tells. */
  readonly doubt?: { readonly text: string; readonly other: string };
}

/**
 * The encoding in which the names of a file read like words of our languages: that of Windows unless its letters make
 * none, as in Vi\u00a4edo, which DOS wrote for Vi\u00f1edo, or its no-break spaces part what are no words, as in Guzm n.
 */
export async function oneByteEncoding(source: CsvSource): Promise<LikelyEncoding> {
  const readings = (["windows-1252", "macintosh", "cp850"] as const).map((encoding) => ({
    encoding,
    decode: oneByteDecoder(encoding),
    likeness: 0,
    word: "",
  }));
  const [windows, , dos] = readings;
  let spaced: string | undefined;
  for await (const chunk of source.chunks())
    for (const reading of readings) {
      const text = reading.word + reading.decode(chunk);
      const end = lastWordStart(text);
      const words = text.slice(0, end);
      reading.likeness += likeness(words);
      if (reading === windows && words.includes(NO_BREAK)) spaced ??= couldBeOneWord(words);
      reading.word = text.length - end > LONGEST_WORD ? "" : text.slice(end);
    }
  for (const reading of readings) reading.likeness += likeness(reading.word);
  if (windows.likeness < 0)
    return { encoding: readings.reduce((best, one) => (one.likeness > best.likeness ? one : best)).encoding };
  spaced ??= couldBeOneWord(windows.word);
  return spaced !== undefined && windows.likeness === 0 && dos.likeness > 0
    ? { encoding: windows.encoding, doubt: { text: spaced, other: spaced.replaceAll(NO_BREAK, "\u00e1") } }
    : { encoding: windows.encoding };
}

const BETWEEN_WORDS = /[ \t\r\n,;|"\d]/;
const LONGEST_WORD = 1000;
const WORDS = /[^ \t\r\n,;|"\d]+/g;
/** What Windows writes between words that stay together; the same byte is \u00e1 in DOS. */
const NO_BREAK = "\u00a0";
/** Two consonants with which words of our languages begin. */
const BEGINNING =
  /^(?:[bcfgkptdvw]r|[bcfgkps]l|[cgkps]n|[cgprstw]h|s[ckmpqtw]|[tdz]w|ts|ps|pt|qu|ll|mc|[^aeiouy][aeiouy\u00df-\u00ff]|[aeiouy\u00df-\u00ff])/i;
const BEYOND_ASCII = /[\u0080-\uffff]/;
const ELISION = /^(?:[cdjlmnst]|\p{L}{0,5}qu)\u2019\p{L}/iu;
const VOWELS = /[aeiouy\u00e0-\u00ff]/i;

/** Where the word begins with which a text ends, and which may go on. */
function lastWordStart(text: string): number {
  let start = text.length;
  while (start > 0 && !BETWEEN_WORDS.test(text[start - 1])) start--;
  return start;
}

/** How well the letters beyond ASCII fit into the words around them; below zero where they make none. */
function likeness(text: string): number {
  let sum = 0;
  for (const [word] of text.matchAll(WORDS)) {
    if (!BEYOND_ASCII.test(word)) continue;
    const plain = word.replace(/[^A-Za-z]/g, "");
    if (plain.length < 2) continue;
    const isUpper = plain === plain.toUpperCase();
    if (mayBeOneWord(word) && !word.split(NO_BREAK).every(isWordLike)) sum -= 3;
    for (let at = 0; at < word.length; at++)
      if (word.charCodeAt(at) > 127 && word[at] !== NO_BREAK) sum += letterFits(word, at, isUpper);
  }
  return sum;
}

/** True for a text in which every no-break space could be a letter: small ones follow it. */
function mayBeOneWord(word: string): boolean {
  return /^\p{L}*(?:\u00a0\p{Ll}+)+$/u.test(word);
}

/** The first word that could go on with \u00e1 where a no-break space stands, also behind its last letter as in Panam\u00e1. */
function couldBeOneWord(text: string): string | undefined {
  return [...text.matchAll(WORDS)].find(
    ({ 0: word, index }) =>
      mayBeOneWord(word) || (/\p{L}\u00a0$/u.test(word) && !/\d/.test(text[index + word.length] ?? "")),
  )?.[0];
}

/** True for a unit and for letters with a vowel that begin as words do. */
function isWordLike(part: string): boolean {
  if (part === "") return true;
  const isUnit = part === part.toLowerCase() && unitNamed(part) !== undefined;
  return isUnit || (VOWELS.test(part) && BEGINNING.test(part));
}

function letterFits(word: string, at: number, isUpper: boolean): number {
  const letter = word[at];
  const [before, after] = [word[at - 1] ?? "", word[at + 1] ?? ""];
  if (letter === "\u2019") return ELISION.test(word) ? 2 : -3;
  if (!/\p{L}/u.test(letter))
    return /[A-Za-z]/.test(after) && (/[A-Za-z\u00a0]/.test(before) || "\u00a4\u00a5".includes(letter))
      ? -3
      : 0;
  const lower = letter.toLowerCase();
  if (lower === letter ? isUpper : !isUpper && before !== "") return -1;
  if (lower === "\u0153") return /[ui]/i.test(after) ? 2 : -1;
  if (lower === "\u00f1" || lower === "\u00e7") return VOWELS.test(after) ? 3 : -1;
  if (VOWELS.test(before) && VOWELS.test(after)) return 0;
  if ("\u00e1\u00e9\u00ed\u00f3\u00fa\u00e0\u00e8\u00ea\u00fc\u00f6\u00e4".includes(lower)) return 3;
  return "\u00f4\u00e2\u00ee\u00fb\u00ef\u00eb\u00f9\u00df".includes(lower) ? 2 : -1;
}
