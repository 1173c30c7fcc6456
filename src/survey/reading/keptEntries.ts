/** What one entry must be, as it comes out of JSON. */
export type Fits<Entry> = (value: unknown) => value is Entry;

/** A list whose parts are of these types, in this order. */
export function listOf<Entry extends readonly unknown[]>(
  ...types: readonly ("string" | "number")[]
): Fits<Entry> {
  return (value): value is Entry =>
    Array.isArray(value) &&
    value.length === types.length &&
    types.every((type, index) => typeof value[index] === type);
}

/**
 * The entries of a list that a workbook keeps as JSON text. Anybody can change what a workbook keeps, so every entry
 * is held against its shape; one that does not fit, or a text that is no list, counts as not kept.
 *
 * @example
 * keptEntries('[["a", 1], "b"]', listOf("string", "number")) // [["a", 1]]
 */
export function keptEntries<Entry>(text: string | undefined, fits: Fits<Entry>): Entry[] {
  const list = parsedJson(text);
  return Array.isArray(list) ? list.filter(fits) : [];
}

/** The one value that a workbook keeps as JSON text; undefined where it does not fit its shape. */
export function keptValue<Value>(text: string | undefined, fits: Fits<Value>): Value | undefined {
  const value = parsedJson(text);
  return fits(value) ? value : undefined;
}

function parsedJson(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}
