import * as z from "zod/mini";

const LIST = z.array(z.unknown());

/**
 * The entries of a list that a workbook keeps as JSON text. Anybody can change what a workbook keeps, so every entry
 * is held against its shape; one that does not fit, or a text that is no list, counts as not kept.
 *
 * @example
 * keptEntries('[["a", 1], "b"]', z.tuple([z.string(), z.number()])) // [["a", 1]]
 */
export function keptEntries<Entry>(text: string | undefined, shape: z.ZodMiniType<Entry>): Entry[] {
  const list = LIST.safeParse(parsedJson(text));
  if (!list.success) return [];
  return list.data.flatMap((entry) => {
    const fitting = shape.safeParse(entry);
    return fitting.success ? [fitting.data] : [];
  });
}

/** The one value that a workbook keeps as JSON text; undefined where it does not fit its shape. */
export function keptValue<Value>(text: string | undefined, shape: z.ZodMiniType<Value>): Value | undefined {
  return shape.safeParse(parsedJson(text)).data;
}

function parsedJson(text: string | undefined): unknown {
  try {
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}
