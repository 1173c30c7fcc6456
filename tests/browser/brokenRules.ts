import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

/**
 * Rules of accessibility that a page and its frames break, each with every place. A page without frames is looked at in
 * one piece, without a second page that only puts results together, and what is in order is not listed: both cost more
 * than the rules.
 *
 * @param rules only these rules; all where there are none
 */
export async function brokenRules(
  page: Page,
  parts: readonly string[] = [],
  rules: readonly string[] = [],
): Promise<string[]> {
  const builder = new AxeBuilder({ page })
    .setLegacyMode(page.frames().length === 1)
    .options({ resultTypes: ["violations"] });
  if (rules.length > 0) builder.withRules([...rules]);
  for (const part of parts) builder.include(part);
  const { violations } = await builder.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}
