import { setTheme } from "@fluentui/web-components";
import { webDarkTheme, webLightTheme } from "@fluentui/tokens";

export type PaneTheme = "light" | "dark";

/**
 * Gives an element Fluent's light or dark tokens and, without a fixed theme, follows the system's own setting.
 * Forced colours need no tokens: the browser replaces them.
 *
 * @returns a function that stops following
 */
export function followTheme(element: HTMLElement, fixed?: PaneTheme): () => void {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const apply = () => {
    const theme = fixed ?? (dark.matches ? "dark" : "light");
    element.dataset.theme = theme;
    element.style.colorScheme = theme;
    setTheme(theme === "dark" ? webDarkTheme : webLightTheme, element);
  };
  apply();
  if (fixed !== undefined) return () => undefined;
  dark.addEventListener("change", apply);
  return () => dark.removeEventListener("change", apply);
}
