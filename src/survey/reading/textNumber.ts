/**
 * The number that a text shows, for telling "a number typed as text" from words. Decimal point or comma, thousands
 * separators only where they cannot be decimals, digits of any width, a trailing per cent sign; anything else is undefined.
 *
 * @example
 * textNumber("12,5") // 12.5
 * @example
 * textNumber("1,234.5") // 1234.5
 */
export function textNumber(text: string): number | undefined {
  const bare = text
    .replace(/[\s\u00a0\u202f]|'(?=\d{3}(?!\d))/g, "")
    .replace(/[０-９]/g, (digit) => digit.normalize("NFKC"));
  const percent = bare.endsWith("%");
  const digits = percent ? bare.slice(0, -1) : bare;
  const value = plain(digits);
  return value === undefined || !Number.isFinite(value) ? undefined : percent ? value / 100 : value;
}

function plain(digits: string): number | undefined {
  if (/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(digits)) return Number(digits.replace(",", "."));
  if (/^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(digits)) return Number(digits.replace(/,/g, ""));
  if (/^[+-]?\d{1,3}(\.\d{3})+(,\d+)?$/.test(digits))
    return Number(digits.replace(/\./g, "").replace(",", "."));
  return undefined;
}
