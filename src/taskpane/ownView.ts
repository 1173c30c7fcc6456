const PREFIX = "cordonbook.";

/** A person's own view of things (a name to fill in, a walk seen), kept on this machine only; "" where nothing is. */
export function remembered(key: string): string {
  try {
    return localStorage.getItem(PREFIX + key) ?? "";
  } catch {
    return "";
  }
}

/** Remembers it on this machine; where the browser keeps nothing, it is asked again. */
export function remember(key: string, value: string): void {
  try {
    localStorage.setItem(PREFIX + key, value);
  } catch {
    return;
  }
}
