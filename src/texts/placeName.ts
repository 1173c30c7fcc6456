/** Parts of the way from a row or vine to the next; letters stand on odd ones, decimals on even ones. */
export const PARTS_OF_A_WAY = 64;

/** Numbers behind each letter of labels such as A121; the numbers behind B begin where those behind A end. */
export const NUMBERS_A_LETTER = 315;
/** Where labels stand on the way to the next place: of a letter alone, of a letter and a number. */
export const AT_LETTER = PARTS_OF_A_WAY - 1;
export const AT_LETTER_AND_NUMBER = PARTS_OF_A_WAY - 3;

/** True for a place that a letter made, alone or before a number: it stands among its like and not among numbers. */
export function isLettered(place: number): boolean {
  const part = (place - Math.floor(place)) * PARTS_OF_A_WAY;
  return part === AT_LETTER || part === AT_LETTER_AND_NUMBER;
}

/**
 * A row's or vine's place as its label: 12 and 12.5 as they are; 12a, C and A121 where letters made the place
 * (placeOfLabel).
 *
 * @example
 * placeName(12 + 1 / 64) // "12a"
 * @example
 * placeName(3 + 63 / 64) // "C"
 * @example
 * placeName(315 + 7 + 61 / 64) // "B7"
 */
export function placeName(place: number): number | string {
  const whole = Math.floor(place);
  const part = (place - whole) * PARTS_OF_A_WAY;
  if (part % 2 !== 1) return place;
  if (part === AT_LETTER_AND_NUMBER)
    return letter(1 + (whole - 1) / NUMBERS_A_LETTER) + (1 + ((whole - 1) % NUMBERS_A_LETTER));
  if (part === AT_LETTER)
    return (whole > 26 ? letter((whole - 1) / 26) : "") + letter(((whole - 1) % 26) + 1);
  return whole + letter((part + 1) / 2).toLowerCase();
}

const letter = (number: number) => String.fromCharCode(64 + Math.floor(number));
