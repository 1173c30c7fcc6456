import { mustLieBetween } from "./refusal";
import { SQUARE_METRES_PER_HECTARE, vinesPerHectare, type Metres, type VinesPerHectare } from "./units";

/**
 * Vines on a hectare from the spacings, as if rows and vines filled the area without headlands. Not rounded: publishers
 * round (9 x 6 ft is printed as 807 vines an acre and is 806.67), and what is rounded here is a vine off after the
 * missing vines are taken off. A planted layout of whole rows differs too: 11 rows of 64 vines at 7 x 9 ft are 704
 * vines where the formula says 691 an acre (Iowa State University, "Cost of Establishing a Vineyard in Iowa").
 *
 * `rowSpacing`, `vineSpacing`: metres, 0.3 to 20.
 *
 * @example
 * vinesPerAcreFromPerHectare(vineDensity(metresFromFeet(9), metresFromFeet(6))) // 806.67
 * vineDensity(metres(2.5), metres(1.5)) // 2666.67
 */
export function vineDensity(rowSpacing: Metres, vineSpacing: Metres): VinesPerHectare {
  mustLieBetween("row_spacing", rowSpacing, 0.3, 20, "m");
  mustLieBetween("vine_spacing", vineSpacing, 0.3, 20, "m");
  return vinesPerHectare(SQUARE_METRES_PER_HECTARE / (rowSpacing * vineSpacing));
}
