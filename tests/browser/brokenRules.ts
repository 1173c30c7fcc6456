import { AxeBuilder } from "@axe-core/playwright";
import axe, { type Result } from "axe-core";
import type { Page } from "playwright-core";

/**
 * Rules of accessibility that a page and its frames break, each with every place, once all that was changed last is drawn
 * and no colour is on its way to another. A page without frames is given axe-core once, which takes longer than all its
 * rules; what is in order is not listed.
 *
 * @param parts only what stands within these selectors; the whole page where there are none
 * @param rules only these rules; all where there are none
 */
export async function brokenRules(
  page: Page,
  parts: readonly string[] = [],
  rules: readonly string[] = [],
): Promise<string[]> {
  await drawn(page);
  const broken =
    page.frames().length === 1 ? await inOnePage(page, parts, rules) : await inFrames(page, parts, rules);
  return broken.map(({ id, places }) => `${id}: ${places.join(" ")}`);
}

/**
 * Two frames of the screen: in the first the page hears of a change of its surroundings, in the second it shows what it made
 * of it. After them the ends of all transitions, those inside of elements too: an element may pass its colour on to its
 * content, whose own transition begins when that of the element has moved.
 */
async function drawn(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    const roots = (root: Document | ShadowRoot): (Document | ShadowRoot)[] => [
      root,
      ...[...root.querySelectorAll("*")].flatMap(({ shadowRoot }) => (shadowRoot ? roots(shadowRoot) : [])),
    ];
    // What is folded away has no frames, so its transitions never end.
    const isShown = (effect: AnimationEffect | null) =>
      effect instanceof KeyframeEffect && effect.target?.checkVisibility({ contentVisibilityAuto: true });
    const transitions = () =>
      roots(document)
        .flatMap((root) => root.getAnimations())
        .filter((animation) => animation instanceof CSSTransition && isShown(animation.effect));
    await frame();
    await frame();
    for (let running = transitions(); running.length > 0; running = transitions()) {
      await Promise.allSettled(running.map(({ finished }) => finished));
      await frame();
    }
  });
}

interface BrokenRule {
  readonly id: string;
  readonly places: readonly string[];
}

async function inOnePage(
  page: Page,
  parts: readonly string[],
  rules: readonly string[],
): Promise<readonly BrokenRule[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  return page.evaluate(
    async ([include, values]) => {
      const { run } = (window as unknown as { axe: typeof axe }).axe;
      const { violations } = await run(
        include.length > 0 ? { include: include.map((part) => [part]) } : document,
        {
          resultTypes: ["violations"],
          ...(values.length > 0 ? { runOnly: { type: "rule" as const, values: [...values] } } : {}),
        },
      );
      return violations.map(({ id, nodes }) => ({ id, places: nodes.map(({ html }) => html) }));
    },
    [[...parts], [...rules]] as const,
  );
}

async function inFrames(
  page: Page,
  parts: readonly string[],
  rules: readonly string[],
): Promise<readonly BrokenRule[]> {
  const builder = new AxeBuilder({ page }).options({ resultTypes: ["violations"] });
  if (rules.length > 0) builder.withRules([...rules]);
  for (const part of parts) builder.include(part);
  const { violations } = await builder.analyze();
  return violations.map(({ id, nodes }: Result) => ({ id, places: nodes.map(({ html }) => html) }));
}
