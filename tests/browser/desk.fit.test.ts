import { PAGE_NAMES } from "../../src/texts/pane";
import { misfits } from "./misfits";
import { openDesk } from "./openDesk";

/** A window of 1280 x 720, and the same at 200 %. */
const WINDOWS = [
  { width: 1280, height: 720 },
  { width: 640, height: 360 },
];

test.each([
  ["clean", ["en", "es", "fr"]],
  ["mistakes", ["en"]],
] as const)(
  "every page beside the grid of the %s season fits a window of 1280 x 720, and the same at 200 %%, in %s",
  async (season, languages) => {
    const desk = await openDesk(season, WINDOWS[0]);
    const { page, pane } = desk;
    await pane.locator("#season-picture").waitFor();
    const found: string[] = [];
    const resize = async (window: (typeof WINDOWS)[number]) => {
      await page.setViewportSize(window);
      await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 50))));
    };
    for (const language of languages) {
      if (language !== "en") {
        await pane.locator("fluent-dropdown#language").click();
        await pane.locator(`fluent-option[value=${language}]`).click();
        await page.locator(`html[lang=${language}]`).waitFor();
      }
      for (const id of Object.keys(PAGE_NAMES)) {
        await desk.goToPage(id);
        await pane.locator("fluent-progress-bar").waitFor({ state: "detached" });
        for (const window of WINDOWS) {
          await resize(window);
          const name = `${id} ${language} ${window.width}`;
          found.push(...(await misfits(page)).map((misfit) => `${name}: ${misfit}`));
          const [area, grid] = await Promise.all([pane.boundingBox(), page.locator("#grid").boundingBox()]);
          if (area!.width < 320 || area!.height < window.height / 2 || area!.y + area!.height > window.height)
            found.push(`${name}: the pane has ${area!.width} x ${area!.height} from ${area!.y}`);
          if (grid!.width < window.width / 3) found.push(`${name}: the grid has ${grid!.width}`);
          if (id === "season") await desk.picture(`desk-${season}-${window.width}-${language}`);
        }
        await resize(WINDOWS[0]);
      }
    }
    expect(found).toEqual([]);
  },
);
