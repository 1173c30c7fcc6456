/**
 * Unit-branded numbers. Inside the calculation everything is metric: kilograms, metres, square metres, hectares.
 * US customary figures are converted where they enter and where they leave, with the exact international
 * definitions of the pound, foot and acre (NIST Special Publication 811).
 */
declare const unit: unique symbol;
type Quantity<Name extends string> = number & { readonly [unit]: Name };

/** Mass in kilograms. */
export type Kilograms = Quantity<"kg">;
/** Length in metres. */
export type Metres = Quantity<"m">;
/** Vines on one hectare. */
export type VinesPerHectare = Quantity<"vines/ha">;
/** Mass on one hectare, in kilograms. */
export type KilogramsPerHectare = Quantity<"kg/ha">;
/** A share between 0 and 1. */
export type Share = Quantity<"share">;

/** The two unit systems a sheet can be kept in. */
export type UnitSystem = "US" | "metric";

/** Kilograms in one avoirdupois pound, exact. */
export const KILOGRAMS_PER_POUND = 0.45359237;
/** Metres in one international foot, exact. */
export const METRES_PER_FOOT = 0.3048;
/** Square feet in one acre, exact. */
export const SQUARE_FEET_PER_ACRE = 43560;
/** Square metres in one hectare, exact. */
export const SQUARE_METRES_PER_HECTARE = 10000;
/** Pounds in one US (short) ton, exact. */
export const POUNDS_PER_TON = 2000;
/** Hectares in one acre: 43,560 square feet, exact. */
export const HECTARES_PER_ACRE =
  (SQUARE_FEET_PER_ACRE * METRES_PER_FOOT * METRES_PER_FOOT) / SQUARE_METRES_PER_HECTARE;

export const kilograms = (value: number) => value as Kilograms;
export const metres = (value: number) => value as Metres;
export const vinesPerHectare = (value: number) => value as VinesPerHectare;
export const kilogramsPerHectare = (value: number) => value as KilogramsPerHectare;

export const kilogramsFromPounds = (pounds: number) => kilograms(pounds * KILOGRAMS_PER_POUND);
export const poundsFromKilograms = (mass: Kilograms) => mass / KILOGRAMS_PER_POUND;
export const metresFromFeet = (feet: number) => metres(feet * METRES_PER_FOOT);
export const feetFromMetres = (length: Metres) => length / METRES_PER_FOOT;

/** A count on each metre of row or cordon: nodes, shoots, spurs. */
export type PerMetre = Quantity<"1/m">;

export const perMetre = (value: number) => value as PerMetre;
export const perMetreFromPerFoot = (value: number) => perMetre(value / METRES_PER_FOOT);
export const perFootFromPerMetre = (value: PerMetre) => value * METRES_PER_FOOT;
/** Inches are a twelfth of a foot: 0.0254 m, exact. */
export const metresFromInches = (inches: number) => metres((inches * METRES_PER_FOOT) / 12);
export const inchesFromMetres = (length: Metres) => (length / METRES_PER_FOOT) * 12;
export const vinesPerHectareFromPerAcre = (vines: number) => vinesPerHectare(vines / HECTARES_PER_ACRE);
export const vinesPerAcreFromPerHectare = (density: VinesPerHectare) => density * HECTARES_PER_ACRE;
/** Tonnes of 1000 kg. */
export const kilogramsPerHectareFromTonnes = (tonnes: number) => kilogramsPerHectare(tonnes * 1000);
export const tonnesPerHectare = (crop: KilogramsPerHectare) => crop / 1000;
/** Short tons of 2000 lb on one acre. */
export const kilogramsPerHectareFromTonsPerAcre = (tons: number) =>
  kilogramsPerHectare((tons * POUNDS_PER_TON * KILOGRAMS_PER_POUND) / HECTARES_PER_ACRE);
export const tonsPerAcreFromKilogramsPerHectare = (crop: KilogramsPerHectare) =>
  (crop * HECTARES_PER_ACRE) / (POUNDS_PER_TON * KILOGRAMS_PER_POUND);
