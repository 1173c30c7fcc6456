import type { CellValue } from "../sheets/cell";
import type { ReadingNote } from "./readingAccount";
import type { SheetArea } from "./sheetArea";

/** The letters of DOS code page 850 from byte 128 on. */
export const DOS_LETTERS =
  "ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜø£Ø×ƒáíóúñÑªº¿®¬½¼¡«»░▒▓│┤ÁÂÀ©╣║╗╝¢¥┐└┴┬├─┼ãÃ╚╔╩╦╠═╬¤ðÐÊËÈıÍÎÏ┘┌█▄¦Ì▀ÓßÔÒõÕµþÞÚÛÙýÝ¯´\u00ad±‗¾¶§÷¸°¨·¹³²■\u00a0";

/**
 * What the bytes from 128 on show in Windows, on an old Mac and in DOS, by the tables of unicode.org (VENDORS/MICSFT and
 * APPLE), and in Latin-1, where each stands for itself.
 */
const CODE_PAGES = [
  "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ\u00a0¡¢£¤¥¦§¨©ª«¬\u00ad®¯°±²³´µ¶·¸¹º»¼½¾¿ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖ×ØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõö÷øùúûüýþÿ",
  "ÄÅÇÉÑÖÜáàâäãåçéèêëíìîïñóòôöõúùûü†°¢£§•¶ß®©™´¨≠ÆØ∞±≤≥¥µ∂∑∏π∫ªºΩæø¿¡¬√ƒ≈∆«»…\u00a0ÀÃÕŒœ–—“”‘’÷◊ÿŸ⁄€‹›ﬁﬂ‡·‚„‰ÂÊÁËÈÍÎÏÌÓÔ\uf8ffÒÚÛÙıˆ˜¯˘˙˚¸˝˛ˇ",
  DOS_LETTERS,
  String.fromCharCode(...Array.from({ length: 128 }, (_, at) => at + 128)),
].map((letters) => new Map([...letters].map((letter, at) => [letter, at + 128])));

/** Two letters beyond ASCII side by side, which words of our languages hardly have and twice encoded ones always. */
const SUSPECT = /[\u0080-\uffff]{2}/;
const RUNS = /[\u0080-\uffff]+/g;
/** What words of our languages are written with beyond ASCII. */
const OF_OUR_LANGUAGES = /^[\u00a0-\u00ffŒœŸ‘’“”–—…€½→←]+$/;

/**
 * A text whose UTF-8 was read letter by letter as Windows, an old Mac or DOS reads bytes, and written down again, as it
 * was meant. Only runs that decode in whole to letters of our languages are taken for such; anything else stays.
 *
 * @example
 * readOnce("CÃ´tÃ© droit") // "Côté droit"
 * @example
 * readOnce("Château") // "Château"
 */
export function readOnce(text: string): string {
  return SUSPECT.test(text) ? text.replace(RUNS, (run) => decodedRun(run) ?? run) : text;
}

function decodedRun(run: string): string | undefined {
  for (const page of CODE_PAGES) {
    const bytes = [...run].map((letter) => page.get(letter)?.toString(16));
    if (bytes.includes(undefined)) continue;
    try {
      const text = decodeURIComponent(`%${bytes.join("%")}`);
      if (OF_OUR_LANGUAGES.test(text)) return text;
    } catch {
      continue;
    }
  }
  return undefined;
}

/** Cells that were encoded twice, by sheet: how many, and the first of them. */
export class EncodedTwice {
  private readonly found = new Map<string, { cells: number; from: string; to: string }>();

  /** The cells of a row as they were meant; the row itself where none was encoded twice. */
  row(sheet: string, cells: readonly CellValue[]): readonly CellValue[] {
    let meant: CellValue[] | undefined;
    for (let at = 0; at < cells.length; at++) {
      const from = cells[at];
      if (typeof from !== "string") continue;
      const to = readOnce(from);
      if (to === from) continue;
      (meant ??= [...cells])[at] = to;
      const known = this.found.get(sheet);
      if (known) known.cells++;
      else this.found.set(sheet, { cells: 1, from, to });
    }
    return meant ?? cells;
  }

  area(area: SheetArea): SheetArea {
    const values = area.values.map((cells) => this.row(area.sheet, cells));
    return this.found.has(area.sheet) ? { ...area, values } : area;
  }

  /** Forgets a sheet that is read anew. */
  forget(sheet: string): void {
    this.found.delete(sheet);
  }

  notes(): ReadingNote[] {
    return [...this.found].map(([sheet, facts]) => ({ code: "encodedTwice", sheet, facts }));
  }
}
