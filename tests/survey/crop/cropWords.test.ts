import { areaCropIn, blockCrop, threeDigits, vineCropIn } from "../../../src/survey/crop/cropWords";
import type { UnitSystem } from "../../../src/domain/units";

// A ton of 2000 lb is 907.18474 kg, an acre 0.40468564224 ha, a pound 0.45359237 kg: all exact by definition (NIST SP 811).
test.each<[UnitSystem, number, { value: number; unit: string }]>([
  ["US", 907.18474, { value: 1, unit: "tons" }],
  ["metric", 1500, { value: 1.5, unit: "t" }],
])("crop of a block in %s units", (units, mass, { value, unit }) => {
  expect(blockCrop(units, "en")(mass)).toEqual({ value: expect.closeTo(value, 12), unit });
});

test.each<[UnitSystem, number, { value: number; unit: string }]>([
  ["US", (3 * 907.18474) / 0.40468564224, { value: 3, unit: "tons/acre" }],
  ["metric", 10000, { value: 10, unit: "t/ha" }],
])("crop of an area in %s units", (units, mass, { value, unit }) => {
  expect(areaCropIn(mass, units, "en")).toEqual({ value: expect.closeTo(value, 12), unit });
});

test.each<[UnitSystem, number, { value: number; unit: string }]>([
  ["US", 0.45359237 * 12, { value: 12, unit: "lb" }],
  ["metric", 5.5, { value: 5.5, unit: "kg" }],
])("crop of a vine in %s units", (units, mass, { value, unit }) => {
  expect(vineCropIn(mass, units)).toEqual({ value: expect.closeTo(value, 12), unit });
});

test("three digits, whatever the size, as the language writes them", () => {
  expect([12.3456, 0.012345, 1234].map((value) => threeDigits(value, "en"))).toEqual([
    "12.3",
    "0.0123",
    "1,230",
  ]);
  expect(threeDigits(12.3456, "es")).toBe("12,3");
});
