/** How many values from here on, this one included, are the same as this one. */
export function stretch(values: ArrayLike<number>, index: number): number {
  let end = index + 1;
  while (end < values.length && values[end] === values[index]) end++;
  return end - index;
}
