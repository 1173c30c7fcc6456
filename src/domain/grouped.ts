/**
 * Items that belong together, in the order in which their keys are met.
 *
 * @example
 * [...grouped([1, 2, 3, 4], (n) => n % 2 === 0)] // [[false, [1, 3]], [true, [2, 4]]]
 */
export function grouped<T, K>(items: Iterable<T>, keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
