import { AxeBuilder } from "@axe-core/playwright";
import axe, { type Result } from "axe-core";
import type { Page } from "playwright-core";

/**
 * Rules of accessibility that a page and its frames break, each with every place. A page without frames is given axe-core
 * once, which takes longer than all its rules, and a moment to draw what was changed last; what is in order is not listed.
 *
 * @param parts only what stands within these selectors; the whole page where there are none
 * @param rules only these rules; all where there are none
 */
export async function brokenRules(
  page: Page,
  parts: readonly string[] = [],
  rules: readonly string[] = [],
): Promise<string[]> {
  const broken =
    page.frames().length === 1 ? await inOnePage(page, parts, rules) : await inFrames(page, parts, rules);
  return broken.map(({ id, places }) => `${id}: ${places.join(" ")}`);
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
      await new Promise((done) => setTimeout(done, 50));
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
