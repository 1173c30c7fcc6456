import type { CsvSource } from "./csvSource";

/** Encodings of a byte a letter in which spreadsheets have written csv files: Windows, old Macs, DOS. */
export type OneByteEncoding = "windows-1252" | "macintosh" | "cp850";

/** The letters of DOS code page 850 from byte 128 on. */
const DOS_LETTERS =
  "ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜø£Ø×ƒáíóúñÑªº¿®¬½¼¡«»░▒▓│┤ÁÂÀ©╣║╗╝¢¥┐└┴┬├─┼ãÃ╚╔╩╦╠═╬¤ðÐÊËÈıÍÎÏ┘┌█▄¦Ì▀ÓßÔÒõÕµþÞÚÛÙýÝ¯´\u00ad±‗¾¶§÷¸°¨·¹³²■\u00a0";

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

/**
 * The encoding in which the names of a file read like words of our languages: that of Windows unless its letters make
 * none, as in Vi\u00a4edo, which DOS wrote for Vi\u00f1edo.
 */
export async function oneByteEncoding(source: CsvSource): Promise<OneByteEncoding> {
  const readings = (["windows-1252", "macintosh", "cp850"] as const).map((encoding) => ({
    encoding,
    decode: oneByteDecoder(encoding),
    likeness: 0,
    word: "",
  }));
  for await (const chunk of source.chunks())
    for (const reading of readings) {
      const text = reading.word + reading.decode(chunk);
      const end = lastWordStart(text);
      reading.likeness += likeness(text.slice(0, end));
      reading.word = text.length - end > LONGEST_WORD ? "" : text.slice(end);
    }
  for (const reading of readings) reading.likeness += likeness(reading.word);
  const [windows] = readings;
  if (windows.likeness >= 0) return windows.encoding;
  return readings.reduce((best, one) => (one.likeness > best.likeness ? one : best)).encoding;
}

const BETWEEN_WORDS = /[ \t\r\n,;|"\d]/;
const LONGEST_WORD = 1000;
const WORDS = /[^\s,;|"\d]+/g;
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
    for (let at = 0; at < word.length; at++)
      if (word.charCodeAt(at) > 127) sum += letterFits(word, at, isUpper);
  }
  return sum;
}

function letterFits(word: string, at: number, isUpper: boolean): number {
  const letter = word[at];
  const [before, after] = [word[at - 1] ?? "", word[at + 1] ?? ""];
  if (letter === "\u2019") return ELISION.test(word) ? 2 : -3;
  if (!/\p{L}/u.test(letter)) return /[A-Za-z]/.test(before) && /[A-Za-z]/.test(after) ? -3 : 0;
  const lower = letter.toLowerCase();
  if (lower === letter ? isUpper : !isUpper && before !== "") return -1;
  if (lower === "\u0153") return /[ui]/i.test(after) ? 2 : -1;
  if (lower === "\u00f1" || lower === "\u00e7") return VOWELS.test(after) ? 3 : -1;
  if (VOWELS.test(before) && VOWELS.test(after)) return 0;
  if ("\u00e1\u00e9\u00ed\u00f3\u00fa\u00e0\u00e8\u00ea\u00fc\u00f6\u00e4".includes(lower)) return 3;
  return "\u00f4\u00e2\u00ee\u00fb\u00ef\u00eb\u00f9\u00df".includes(lower) ? 2 : -1;
}
