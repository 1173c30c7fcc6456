/** Characters of cell contents that go into one message; the web's limit for a whole message is 5 MB. */
const CHARACTERS_A_MESSAGE = 500_000;

/**
 * Splits what is to be written into batches that each fit into one message; an item that is too long by itself is a
 * batch of its own.
 *
 * @param charactersOf length of an item in the message, about
 * @param most items of a batch
 */
export function messageBatches<Item>(
  items: readonly Item[],
  charactersOf: (item: Item) => number,
  most = Infinity,
): Item[][] {
  const batches: Item[][] = [];
  let characters = Infinity;
  for (const item of items) {
    const size = charactersOf(item);
    if (characters + size > CHARACTERS_A_MESSAGE || batches[batches.length - 1].length >= most) {
      batches.push([]);
      characters = 0;
    }
    batches[batches.length - 1].push(item);
    characters += size;
  }
  return batches;
}
