/**
 * What somebody wrote in a note or a comment, in one line; one that names its writer itself names nobody twice.
 *
 * @example
 * saidBy("Cleo", "Cleo:\ncount again") // "Cleo: count again"
 */
export function saidBy(author: string | undefined, text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  const isNamed = !author || line.startsWith(`${author}:`);
  return isNamed ? line : `${author}: ${line}`;
}
