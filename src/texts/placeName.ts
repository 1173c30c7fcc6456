/** Parts of the way from a row or vine to the next; letters stand on odd ones, decimals on even ones. */
export const PARTS_OF_A_WAY = 64;

/**
 * A row's or vine's place as its label: 12 and 12.5 as they are, 12a and C where letters made the place (placeOfLabel).
 *
 * @example
 * placeName(12 + 1 / 64) // "12a"
 * @example
 * placeName(3 + 63 / 64) // "C"
 */
export function placeName(place: number): number | string {
  const whole = Math.floor(place);
  const part = (place - whole) * PARTS_OF_A_WAY;
  if (part % 2 !== 1) return place;
  if (part === PARTS_OF_A_WAY - 1)
    return (whole > 26 ? letter((whole - 1) / 26) : "") + letter(((whole - 1) % 26) + 1);
  return whole + letter((part + 1) / 2).toLowerCase();
}

const letter = (number: number) => String.fromCharCode(64 + Math.floor(number));
