/**
 * Sixteen characters that stand for a text: two 32-bit FNV-1a sums with different starts (Fowler, Noll, Vo, 1991).
 * Good enough to tell the findings of a workbook apart; no secret.
 *
 * @example
 * shortHash("a") // "e40c292ce50c2abf"
 */
export function shortHash(text: string): string {
  return fnv1a(text, 0x811c9dc5) + fnv1a(text, 0x811c9dc4);
}

const PRIME = 0x01000193;

function fnv1a(text: string, start: number): string {
  let sum = start;
  for (const byte of new TextEncoder().encode(text)) sum = Math.imul(sum ^ byte, PRIME);
  return (sum >>> 0).toString(16).padStart(8, "0");
}
