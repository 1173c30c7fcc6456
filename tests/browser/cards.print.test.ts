import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Browser } from "playwright-core";
import { crewCards } from "../../src/survey/decide/cards/crewCards";
import { decideSeason } from "../../src/survey/decide/decideSeason";
import { isAsked } from "../../src/survey/decide/isAsked";
import { isCounted, seasonStands } from "../../src/survey/decide/plan/seasonStands";
import { workPlan } from "../../src/survey/decide/plan/workPlan";
import { shootThinning } from "../../src/survey/crop/vinesOfBlocks";
import { LANGUAGES } from "../../src/texts/language";
import { cardsHtml, type CardsPrint, type Paper } from "../../src/workbook/results/cardsHtml";
import { inventedSeason, seasonOfFarm } from "../survey/decide/cards/season";
import { startChromium } from "./chromium";

const farm = inventedSeason();
const season = seasonOfFarm(farm);
const decided = [...decideSeason(season)];
const cards = crewCards(season, decided);
const work = workPlan(season, shootThinning(season));
const { blocks } = seasonStands(season, decided, [], { cards, work }, () => false);
const pagesWanted = cards.reduce((sum, { vines }) => sum + Math.ceil(vines.length / 25), 0);
const print: CardsPrint = {
  language: "en",
  unitSystem: "US",
  paper: "A4",
  date: "2 February 2026",
  farm: "Larkmoor Bend Vineyard (invented)",
  ribbons: { stays: "orange", ask: "blue" },
  vinesAPage: 25,
  stands: blocks,
  voided: ["Void on the card of North Bench, row 1, printed before: 4, 7."],
};

/** Pages of a PDF as Chromium writes it. */
const pageCount = (pdf: Buffer) => [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
const keep = path.join(process.cwd(), ".cache", "cards");

describe("crew cards on paper", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
    mkdirSync(keep, { recursive: true });
  });
  afterAll(() => browser?.close());

  const papers: readonly Paper[] = ["A4", "Letter"];
  test.each(papers.flatMap((paper) => LANGUAGES.map((language) => ({ paper, language }))))(
    "the whole invented season fits 25 vines to a page of $paper in $language",
    async ({ paper, language }) => {
      const page = await browser.newPage();
      await page.setContent(cardsHtml(cards, { ...print, paper, language }));
      const pdf = await page.pdf({ preferCSSPageSize: true });
      writeFileSync(path.join(keep, `${paper}-${language}.pdf`), pdf);
      expect(pageCount(pdf)).toBe(pagesWanted);
      const wide = await page.$$eval(
        "td, th",
        (cells) => cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).length,
      );
      expect(wide).toBe(0);
      await page.addStyleTag({ content: "th, td { overflow-wrap: normal !important; }" });
      const broken = await page.$$eval("td, th", (cells) =>
        cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent),
      );
      expect(broken).toEqual([]);
      await page.close();
    },
  );

  test("each page says what is open on its block and what the signs on it mean, and no other", async () => {
    const page = await browser.newPage();
    await page.setContent(cardsHtml(cards, print));
    const pages = await page.$$eval("section", (sections) =>
      sections.map((section) => ({
        block: section.querySelector("h1")!.textContent!.replace(/, row .*/, ""),
        open: section.querySelector(".open")!.textContent!,
        legend: [...section.querySelectorAll(".signs span")].map((sign) => sign.textContent!),
        lines: [...section.querySelectorAll("tbody td")].map((cell) => cell.textContent!).join(" "),
      })),
    );
    for (const { block, open, legend, lines } of pages) {
      const asked = decided.filter((vine) => vine.block === block && isCounted(vine) && isAsked(vine)).length;
      const answered = decided.filter((vine) => vine.block === block && isCounted(vine)).length - asked;
      expect(open).toContain(`Still open in ${block}: ${asked} vines to answer for`);
      expect(open).toContain(`${answered} vines decided but not accepted`);
      const said = legend.join("|").replaceAll("\u00a0", " ");
      expect([
        /A ○/.test(said),
        /A⟂|A ⟂/.test(said),
        /✂/.test(said),
        /A\+T1/.test(said),
        / \/ B \?/.test(said),
      ]).toEqual([
        /○/.test(lines),
        /⟂/.test(lines),
        /✂/.test(lines),
        /\w\+T\d/.test(lines),
        / \/ [A-F]\s\?/.test(lines),
      ]);
    }
    expect(await page.getByText("Void on the card of North Bench").count()).toBe(1);
    await page.close();
  });

  test("every vine of the season is on exactly one line, in walk order", async () => {
    const page = await browser.newPage();
    await page.setContent(cardsHtml(cards, print));
    const vines = await page.$$eval("td.vine", (cells) => cells.map((cell) => cell.textContent));
    expect(vines).toEqual(cards.flatMap(({ vines: own }) => own.map(({ vine }) => String(vine))));
    expect(vines).toHaveLength(farm.vines.length);
    await page.close();
  });

  test("what stands in a sheet never becomes part of the page", async () => {
    const evil = `<img src=x onerror="document.title='taken'">`;
    const page = await browser.newPage();
    const html = cardsHtml(
      [{ ...cards[0], block: evil, vines: [{ ...cards[0].vines[0], remarks: [evil] }] }],
      {
        ...print,
        farm: evil,
        ribbons: { stays: `"><b id=b>`, ask: evil },
      },
    );
    await page.setContent(html);
    expect(await page.$$eval("img, #b, script", (found) => found.length)).toBe(0);
    expect(await page.title()).not.toBe("taken");
    expect(await page.locator("h1").innerText()).toContain(evil);
    await page.close();
  });

  test("the type is large enough for gloves and dusk: what stays is never under ten points and mostly twelve or more", async () => {
    const page = await browser.newPage();
    await page.setContent(cardsHtml(cards, print));
    const sizes = await page.$$eval("td.stays", (cells) =>
      cells.map((cell) => (parseFloat(getComputedStyle(cell).fontSize) * 72) / 96),
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(10);
    expect(sizes.filter((size) => size >= 12).length / sizes.length).toBeGreaterThan(0.66);
    await page.close();
  });
});
