import { withoutControls } from "../withoutControls";
import type { UnitSystem } from "../../domain/units";
import {
  cardLegend,
  cardLine,
  openSentence,
  shortageSentences,
  sideWord,
  type CardLine,
  type SideWords,
} from "../../survey/decide/cards/cardWords";
import type { CrewCard } from "../../survey/decide/cards/crewCards";
import { openOnCards, type BlockStands } from "../../survey/decide/plan/seasonStands";
import { wordKey } from "../../survey/sheets/words";
import { CARD_TEXTS, CHANGED_TEXTS, RIBBON_COLOURS, RIBBON_TEXTS } from "../../texts/cards";
import { CREW_TEXTS } from "../../texts/crew";
import { say, type Language } from "../../texts/language";
import { placeName } from "../../texts/placeName";

export type Paper = "A4" | "Letter";

/** How the cards are printed. */
export interface CardsPrint {
  readonly language: Language;
  readonly unitSystem: UnitSystem;
  readonly paper: Paper;
  /** The day as a person writes it. */
  readonly date: string;
  /** Name of the farm, shown on every page; may be empty. */
  readonly farm: string;
  /** The farm's own words for its ribbons. */
  readonly ribbons: { readonly stays: string; readonly ask: string };
  readonly vinesAPage: number;
  /** How far the work is, for what is still open at the head of each page; left out where nobody has counted it. */
  readonly stands?: readonly BlockStands[];
  /** Where only vines that changed are printed: what holds no more of cards printed before, a sentence each. */
  readonly voided?: readonly string[];
  /** What the cards were worked out from, a line a sentence, at the foot of the last page. */
  readonly account?: readonly string[];
}

/**
 * The crew cards as one page of HTML that needs nothing else: print it. Every word from a sheet is escaped.
 *
 * @param cards one a row; a card of more vines than fit goes on over several pages
 */
export function cardsHtml(cards: readonly CrewCard[], print: CardsPrint): string {
  const title = [print.farm, CREW_TEXTS.title[print.language]].filter((part) => part !== "").join(": ");
  const shortages = new Map(shortageSentences(cards, print.language));
  const pages = cards.flatMap((card, index) => {
    const voided = index === 0 ? print.voided : print.voided && [];
    const shortage = shortages.get(card.block) ?? "";
    shortages.delete(card.block);
    const isLast = index === cards.length - 1;
    return pagesOf(card, { ...print, voided, account: isLast ? print.account : [] }, shortage);
  });
  return `<!doctype html>
<html lang="${print.language}">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>${style(print)}</style>
</head>
<body>
${pages.join("\n")}
</body>
</html>
`;
}

/**
 * Text as it stands in HTML, inside an element or a quoted attribute.
 *
 * @example
 * escaped("<A & \"B\">") // "&lt;A &amp; &quot;B&quot;&gt;"
 */
export function escaped(text: string): string {
  return withoutControls(text).replace(/[&<>"']/g, (sign) => ENTITIES[sign]);
}

/** The same where no line begins with a sign that ends a word: French has a space before some. */
function lineOf(text: string): string {
  return escaped(text.replace(BEFORE_SIGN, "\u00a0"));
}

const BEFORE_SIGN = / (?=[:;?!=○⟂](?: |$))/g;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const PAGE: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
};
const MARGIN = 8;
/** Millimetres of a page beside its rows and the sentences whose lines are counted: ribbons, column heads. */
const AROUND_ROWS = 23.5;
const MILLIMETRES_A_POINT = 25.4 / 72;
/** Type sizes in points that a page is tried with, largest first; the cells are multiples of it. */
const SIZES = [11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6] as const;
const FOOT = { size: 7.5, line: 1.15 } as const;
const TYPE = { vine: 1.7, stays: 1.4, cane: 1.05, cut: 1.3, nodes: 1.05, notes: 0.85 } as const;
const LINE = 1.12;
/** The title, in points, and the share of the page that it may take in width. */
const TITLE = { size: 19, line: 1.1, share: 0.65 } as const;
/** Type of what else stands above the rows, in points. */
const HEAD = { size: 9, signs: 8 } as const;

function style({ paper }: CardsPrint): string {
  return `
@page { size: ${paper} portrait; margin: ${MARGIN}mm; }
* { box-sizing: border-box; }
body { margin: 0; font: 10pt/${LINE} "Liberation Sans", Arial, Helvetica, sans-serif; color: #000; background: #fff;
  -webkit-print-color-adjust: exact; print-color-adjust: exact; }
section { break-after: page; }
section:last-child { break-after: auto; }
header { display: flex; justify-content: space-between; align-items: baseline; gap: 4mm; }
h1 { font-size: ${TITLE.size}pt; line-height: ${TITLE.line}; margin: 0; flex: none; max-inline-size: ${100 * TITLE.share}%; }
header p, .legend p, .open, .signs { margin: 0; font-size: ${HEAD.size}pt; }
.open { font-weight: 700; border: 0.3mm solid #000; padding: 0.4mm 1mm; }
.signs { font-size: ${HEAD.signs}pt; margin: 0.5mm 0 0.8mm; }
.signs span { white-space: nowrap; margin-inline-end: 3mm; }
.legend { display: flex; flex-wrap: wrap; gap: 0.6mm 5mm; margin: 0.8mm 0; align-items: center; }
table { border-collapse: collapse; inline-size: 100%; table-layout: fixed; }
thead { display: table-header-group; }
th { font-size: 8pt; text-align: left; vertical-align: bottom; border: 0.3mm solid #000; padding: 0.6mm 1mm; overflow-wrap: anywhere; }
td { border: 0.3mm solid #000; padding: 0.2mm 1mm; vertical-align: middle; overflow-wrap: anywhere; }
tr { break-inside: avoid; }
tbody tr:nth-child(5n) td { border-block-end-width: 0.8mm; }
.line { display: block; }
.vine { font-size: ${TYPE.vine}em; font-weight: 700; text-align: center; }
.stays { font-size: ${TYPE.stays}em; font-weight: 700; }
.cane { font-size: ${TYPE.cane / TYPE.stays}em; }
.cut { font-size: ${TYPE.cut}em; }
.nodes { font-size: ${TYPE.nodes}em; font-weight: 700; text-align: center; }
.notes { font-size: ${TYPE.notes}em; }
.second { border-inline-start-width: 0.8mm; }
.ribbon { display: inline-block; inline-size: 3.6mm; block-size: 3.6mm; border: 0.3mm solid #000; vertical-align: -0.3mm; margin-inline-end: 1mm; }
.done { text-align: center; }
.box { display: inline-block; inline-size: 5.5mm; block-size: 5.5mm; border: 0.5mm solid #000; vertical-align: middle; }
.gone td { background: #e6e6e6; }
footer { margin-block-start: 1.2mm; font-size: ${FOOT.size}pt; line-height: ${FOOT.line}; break-inside: avoid; }
footer p { margin: 0 0 0.5mm; }
`;
}

/** Share of the page's width in percent. */
const WIDTHS = { vine: 7, stays: 15, cut: 9, nodes: 12, notes: 14, done: 7, found: 12 } as const;
/** Width of a letter as a share of the type size, in a wide face. */
const BOLD_LETTER = 0.68;
const LETTER = 0.6;
/** Letters that the swatch before a word takes. */
const SWATCH = "■■";

/** Heads of the two sides of a card: left and right, or two compass sides. */
function sidesOf(lines: readonly CardLine[]): readonly [string, string] {
  const pairs = [
    ["left", "right"],
    ["north", "south"],
    ["east", "west"],
  ] as const;
  const count = (pair: readonly string[]) =>
    lines.reduce(
      (sum, { keep, cut, lay }) =>
        sum + [...keep, ...cut, ...lay].filter(({ side }) => pair.includes(side)).length,
      0,
    );
  return [...pairs].sort((first, second) => count(second) - count(first))[0];
}

/** What is written on one side of a vine; entries of a side that the card has no column for stand in the first one. */
function onSide(
  parts: readonly SideWords[],
  index: number,
  sides: readonly [string, string],
  language: Language,
): SideWords[] {
  return parts.flatMap((part) => {
    const column = sides.indexOf(part.side);
    if (column >= 0) return column === index ? [part] : [];
    return index === 0 ? [{ ...part, words: `${sideWord(part.side, language)} ${part.words}` }] : [];
  });
}

/**
 * The largest type with which the rows of a page fit on it, and the height of a row. Widths of letters are estimated on
 * the wide side, so that a page never runs over by one line.
 */
function fit(
  lines: readonly CardLine[],
  sides: readonly [string, string],
  print: CardsPrint,
  said: {
    readonly title: string;
    readonly foot: readonly string[];
    readonly open: readonly string[];
    readonly signs: readonly string[];
  },
): { size: number; row: number } {
  const { width, height } = PAGE[print.paper];
  const tall = (
    texts: readonly string[],
    points: number,
    line: number,
    gap: number,
    letter = LETTER,
    share = 1,
  ) => {
    const type = points * MILLIMETRES_A_POINT;
    const letters = Math.floor(((width - 2 * MARGIN) * share - 2) / (letter * type));
    return texts.reduce((sum, text) => sum + linesOf(text, letters) * type * line + gap, 0);
  };
  const signs = [CARD_TEXTS.cutRule[print.language], ...said.signs];
  const room =
    height -
    2 * MARGIN -
    AROUND_ROWS -
    tall([said.title], TITLE.size, TITLE.line, 0, BOLD_LETTER, TITLE.share) -
    tall(said.foot, FOOT.size, FOOT.line, 0.5) -
    tall(said.open, HEAD.size, LINE, 1.4, BOLD_LETTER) -
    tall([signs.map((sign) => `${sign}--`.replaceAll(" ", "\u00a0")).join(" ")], HEAD.signs, LINE, 0);
  const shareOfRoom = room / Math.max(lines.length, print.vinesAPage);
  const heightOf = (words: readonly string[], type: number, percent: number, size: number) => {
    const letter = (type === TYPE.notes ? LETTER : BOLD_LETTER) * type * size * MILLIMETRES_A_POINT;
    const cell = ((width - 2 * MARGIN) * percent) / 100 - 2.2;
    const count = words.reduce((sum, text) => sum + linesOf(text, Math.max(1, Math.floor(cell / letter))), 0);
    return count * type * size * LINE * MILLIMETRES_A_POINT;
  };
  const rowAt = (line: CardLine, size: number) => {
    const cells = [0, 1].flatMap((index) => {
      const own = (parts: readonly SideWords[]) =>
        onSide(parts, index, sides, print.language).map(({ words }) => words);
      const stays = own(line.keep).map((words) => SWATCH + words);
      const canes = own(line.lay).map((words) => SWATCH + words);
      return [
        heightOf(stays, TYPE.stays, WIDTHS.stays, size) + heightOf(canes, TYPE.cane, WIDTHS.stays, size),
        heightOf(own(line.cut), TYPE.cut, WIDTHS.cut, size),
      ];
    });
    const nodes = heightOf(line.nodes, TYPE.nodes, WIDTHS.nodes, size);
    const notes = heightOf([line.notes.join("; ")], TYPE.notes, WIDTHS.notes, size);
    return Math.max(6.4, ...cells, nodes, notes) + 0.8;
  };
  const total = (size: number) =>
    lines.reduce((sum, line) => sum + Math.max(shareOfRoom, rowAt(line, size)), 0);
  const tight = (size: number) => lines.reduce((sum, line) => sum + rowAt(line, size), 0);
  const size = SIZES.find((one) => tight(one) <= room) ?? SIZES[SIZES.length - 1];
  const row =
    total(size) <= room
      ? shareOfRoom
      : Math.max(0, shareOfRoom - (total(size) - room) / Math.max(1, lines.length));
  return { size, row };
}

/** Lines that a text takes when so many letters stand on one; a longer word is broken. */
function linesOf(text: string, letters: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.replace(BEFORE_SIGN, "\u00a0").split(" ")) {
    if (used > 0 && used + 1 + word.length <= letters) used += 1 + word.length;
    else {
      if (used > 0) lines++;
      lines += Math.max(0, Math.ceil(word.length / letters) - 1);
      used = word.length % letters || Math.min(word.length, letters);
    }
  }
  return lines;
}

/** @param shortage what the spurs of the block lack, said on the first page of the block; else empty */
function pagesOf(card: CrewCard, print: CardsPrint, shortage: string): string[] {
  const { language, vinesAPage, ribbons } = print;
  const pages = Math.max(1, Math.ceil(card.vines.length / vinesAPage));
  return Array.from({ length: pages }, (_, page) => {
    const vines = card.vines.slice(page * vinesAPage, (page + 1) * vinesAPage);
    const lines = vines.map((vine) => cardLine(vine, language, print.unitSystem));
    const sides = sidesOf(lines);
    const account = page === pages - 1 ? (print.account ?? []) : [];
    const signs = cardLegend(vines, language);
    const stands = print.stands?.filter(({ block }) => wordKey(block) === wordKey(card.block));
    const open = [
      ...(stands ? [openSentence(openOnCards(stands), language, card.block)] : []),
      ...(page === 0 ? (print.voided ?? []) : []),
    ];
    const facts = {
      block: card.block,
      row: card.row,
      page: page + 1,
      pages,
      first: vines.length > 0 ? placeName(vines[0].vine) : "",
      last: vines.length > 0 ? placeName(vines.at(-1)!.vine) : "",
    };
    const words = (name: keyof typeof CARD_TEXTS, more = {}) =>
      lineOf(say(CARD_TEXTS[name], language, { ...facts, ...more }));
    const heads: readonly [width: number, head: string, first?: boolean][] = [
      [WIDTHS.vine, words("vine")],
      ...sides.flatMap((side): [number, string, boolean?][] => [
        [WIDTHS.stays, words("sideStays", { side: sideWord(side, language) }), true],
        [WIDTHS.cut, words("sideCut", { side: sideWord(side, language) })],
      ]),
      [WIDTHS.nodes, words("nodes"), true],
      [WIDTHS.notes, words("notes")],
      [WIDTHS.done, words("done")],
      [WIDTHS.found, words("found")],
    ];
    const foot = [
      ...(page === 0 && shortage !== "" ? [shortage] : []),
      CARD_TEXTS.cautions[language],
      CARD_TEXTS.back[language],
      ...account,
    ];
    const { size, row: rowHeight } = fit(lines, sides, print, {
      title: say(CARD_TEXTS.title, language, facts),
      foot,
      open,
      signs,
    });
    return `<section>
<header><h1>${words("title")}</h1><p>${print.voided ? CHANGED_TEXTS.only[language] : words("vines")} · ${words("page")}</p><p>${escaped(print.farm)}<br>${words("made", { date: print.date })}</p></header>
<div class="legend">
<p>${swatch(ribbons.stays)}${words("ribbonStays", { colour: ribbonWord(ribbons.stays, language) })}</p>
<p>${swatch(ribbons.ask)}${words("ribbonAsk", { colour: ribbonWord(ribbons.ask, language) })}</p>
<p>${words("crew")} ________________ ${words("day")} ____________</p>
</div>
${open.map((sentence) => `<p class="open">${lineOf(sentence)}</p>`).join("\n")}
<p class="signs"><span><b>${words("cutRule")}</b></span> ${signs.map((sign) => `<span>${lineOf(sign)}</span>`).join(" ")}</p>
<table style="font-size:${size}pt">
<colgroup>${heads.map(([width]) => `<col style="inline-size:${width}%">`).join("")}</colgroup>
<thead><tr>${heads.map(([, head, first]) => `<th scope="col"${first ? ' class="second"' : ""}>${head}</th>`).join("")}</tr></thead>
<tbody>
${lines.map((line, index) => row(line, vines[index].status === "missing", rowHeight, sides, print)).join("\n")}
</tbody>
</table>
<footer>${foot.map((sentence) => `<p>${lineOf(sentence)}</p>`).join("")}</footer>
</section>`;
  });
}

function row(
  line: CardLine,
  missing: boolean,
  height: number,
  sides: readonly [string, string],
  print: CardsPrint,
): string {
  const { ribbons, language } = print;
  const span = (words: string, kind = "line") => `<span class="${kind}">${words}</span>`;
  const marked = ({ words, ask }: SideWords, kind?: string) =>
    span(`${swatch(ask ? ribbons.ask : ribbons.stays)}${lineOf(words)}${ask && kind ? "\u00a0?" : ""}`, kind);
  const cells = [0, 1].map((index) => {
    const own = (parts: readonly SideWords[]) => onSide(parts, index, sides, language);
    const stays = own(line.keep)
      .map((part) => marked(part))
      .join("");
    const canes = own(line.lay)
      .map((part) => marked(part, "line cane"))
      .join("");
    const cut = own(line.cut)
      .map(({ words }) => span(lineOf(words)))
      .join("");
    return `<td class="stays second">${stays}${canes}</td><td class="cut">${cut}</td>`;
  });
  const nodes = line.nodes.map((part) => span(lineOf(part))).join("");
  const box = missing ? "" : '<span class="box"></span>';
  return `<tr${missing ? ' class="gone"' : ""} style="block-size:${height.toFixed(2)}mm"><td class="vine">${placeName(line.vine)}</td>${cells.join("")}<td class="nodes second">${nodes}</td><td class="notes">${lineOf(line.notes.join("; "))}</td><td class="done">${box}</td><td></td></tr>`;
}

/** The colour of a ribbon where its word is known; a white square else. The word always stands beside it. */
function swatch(word: string): string {
  const ribbon = ribbonOf(word);
  return `<span class="ribbon" style="background:${ribbon ? RIBBON_COLOURS[ribbon].colour : "#ffffff"}"></span>`;
}

/** The word for a ribbon in the language of the print where it is known; else the farm's own. */
function ribbonWord(word: string, language: Language): string {
  const ribbon = ribbonOf(word);
  return ribbon ? RIBBON_TEXTS[ribbon][language] : word;
}

function ribbonOf(word: string): keyof typeof RIBBON_COLOURS | undefined {
  const wanted = word.trim().toLowerCase();
  return (Object.keys(RIBBON_COLOURS) as (keyof typeof RIBBON_COLOURS)[]).find(
    (ribbon) => ribbon === wanted || RIBBON_COLOURS[ribbon].also.includes(wanted),
  );
}
