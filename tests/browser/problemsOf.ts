import type { Page } from "playwright-core";

/** What a page throws or logs as an error from now on; the list grows as it happens. */
export function problemsOf(page: Page): string[] {
  const problems: string[] = [];
  page.on("pageerror", (problem) => problems.push(String(problem.stack ?? problem)));
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(message.text());
  });
  return problems;
}
