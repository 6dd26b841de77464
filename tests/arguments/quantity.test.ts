import fc from "fast-check";
import {
  absoluteKpa,
  celsius,
  emptyDays,
  minutes,
  shareADay,
  waterVolume,
  count,
  fraction,
  gaugeBar,
  litres,
  litresPerHour,
  litresPerMinute,
  metresHigh,
  days,
  kilograms,
  kilowatts,
  months,
} from "../../src/arguments/quantity";
import { liquidGauge, reliefGauge } from "../../src/arguments/oxygenState";
import { text } from "../../src/arguments/text";
import type { Quantity } from "../../src/arguments/quantity";
import { CellError } from "../../src/cells/cellValues";
import { evenly } from "../evenly";

const read = (quantity: Quantity, cell: unknown): unknown => quantity.read(cell, "x");
const words = (quantity: Quantity<any>, cell: unknown): string => {
  const result = quantity.read(cell, "x");
  expect(result).toBeInstanceOf(CellError);
  expect((result as CellError).code).toBe("#VALUE!");
  return (result as CellError).message;
};

describe("text with a unit", () => {
  /** NIST SP 811 (2008), appendix B.8: exact factors, and B.6 for the temperature scales. */
  it.each([
    [litres, "10 gal", 37.85411784],
    [metresHigh, "5000 ft", 1524],
    [kilograms, "1 lb", 0.45359237],
    [gaugeBar, "35 psi", 2.413165],
    [celsius, "85 °F", 29.444444],
    [celsius, "-40 °F", -40],
    [celsius, "300 K", 26.85],
    [kilowatts, "1 hp", 0.7456999],
    [litresPerMinute, "1 ft3/min", 28.316846592],
  ] as [Quantity, string, number][])("%# %s", (quantity, text, expected) => {
    expect(read(quantity, text)).toBeCloseTo(expected, 5);
  });

  it.each([
    [days, "36 h", 1.5],
    [days, "2 d", 2],
    [litresPerHour, "36 L/day", 1.5],
    [litresPerMinute, "0.6 m³/h", 10],
    [fraction, "93%", 0.93],
    [months, "1 year", 12],
    [litres, "1e2 l", 100],
    [litres, " .5 m3 ", 500],
    [celsius, "−5 °C", -5],
  ] as [Quantity, string, number][])("%# %s", (quantity, text, expected) => {
    expect(read(quantity, text)).toBeCloseTo(expected, 9);
  });

  it("reads its own base unit back exactly", () => {
    fc.assert(fc.property(evenly(0, 1e9), (value) => read(litres, `${value} L`) === value));
  });
});

describe("the errors' words", () => {
  it.each([
    [litres, "35 psi", /x "35 psi" is a pressure; wanted is an amount of liquid in L/],
    [litres, "fast", /x "fast" is not a number/],
    [litres, "5", /looks like a number; enter it as a number/],
    [litres, "1,500 L", /thousands separator/],
    [litres, "1,5 L", /decimal comma/],
    [litres, "5 parsecs", /unit "parsecs" is not known/],
    [litres, true, /x is TRUE/],
    [litres, null, /x is blank/],
    [litres, "  ", /x is blank/],
    [litres, -1, /x must be 0 L or more; this is -1/],
    [litres, Infinity, /not a finite number/],
    [fraction, 93, /between 0 and 1; 93 looks like a percent: enter 93% or 0.93/],
    [fraction, 193, /between 0 and 1; this is 193/],
    [count, 2.5, /whole number; this is 2.5/],
    [celsius, "-300 °C", /-273.15 °C or more/],
  ] as [Quantity, unknown, RegExp][])("%# %p", (quantity, cell, pattern) => {
    expect(words(quantity, cell)).toMatch(pattern);
  });
});

it("keeps limits that stand apart from the limit itself", () => {
  const level = fraction.inside(0, 1);
  expect(read(level, 0)).toBeInstanceOf(CellError);
  expect(read(level, 1)).toBeInstanceOf(CellError);
  expect(read(level, 1 - Number.EPSILON)).toBe(1 - Number.EPSILON);
  expect(read(litres.positive(), 0)).toBeInstanceOf(CellError);
  expect(read(litres.positive(), 1e-300)).toBe(1e-300);
});

it("takes the number out of Excel's data types and passes errors on", () => {
  expect(read(litres, { type: "FormattedNumber", basicValue: 5, numberFormat: "0.0" })).toBe(5);
  const error = { type: "Error", basicType: "Error", basicValue: "#DIV/0!" };
  expect(read(litres, error)).toBe(error);
});

it("refuses a blank, and offers the way out where the argument may be left out", () => {
  const way = expect.stringMatching(/^x is blank: enter 7, or leave the argument out of the formula$/);
  for (const blank of [null, ""])
    expect(litres.default({ value: 7, unit: "L", source: "made up" }).read(blank, "x")).toMatchObject({ message: way });
  expect(litres.mayBeOmitted().read(undefined, "x")).toMatchObject({
    message: "x is blank: enter a value, or leave the argument out of the formula",
  });
  expect(litres.orBlank().read("", "x")).toBeUndefined();
});

it("takes a number beyond an end by rounding only for the end, and one beside a whole number for it", () => {
  expect(read(litres, 0.3 - 0.1 - 0.2)).toBe(0);
  expect(read(fraction, 0.1 + 0.2 + 0.7 + 2e-16)).toBe(1);
  expect(read(count, 0.3 / 0.1)).toBe(3);
  expect(words(litres, -1e-9)).toContain("x must be 0 L or more");
  expect(words(fraction, 1.000001)).toContain("x must be between 0 and 1");
  expect(words(count, 2.999999)).toContain("x must be a whole number");
});

it("leaves an end that is not in the range outside, however near", () => {
  expect(words(litres.positive(), 0)).toContain("more than 0");
  expect(words(fraction.fromToBelow(0, 1), 1)).toContain("under 1");
  expect(words(fraction.aboveTo(0.21, 1), 0.21)).toContain("above 0.21");
});

it("says how to enter a unit that was forgotten, where the number is in range with it", () => {
  const air = celsius.between(-90, 60);
  expect(words(air, 95)).toMatch(/this is 95 \(if that is in °F, enter "95 °F"\)$/);
  expect(words(air, 500)).toMatch(/this is 500$/);
  expect(words(air, "95 °C")).toMatch(/this is 95$/);
  expect(words(metresHigh.between(-500, 11000), 12000)).toMatch(/\(if that is in ft, enter "12000 ft"\)$/);
  expect(words(litres, -5)).toMatch(/this is -5$/);
});

describe("a likely slip is refused with the reading offered", () => {
  it.each([
    ["a time of day as minutes", minutes, 1 / 12, 'looks like a time of day; enter 120 or "2 h"'],
    ["a gas content as water volume", waterVolume, 6800, "is this the gas content?"],
    ["the same with its unit", waterVolume, "6.8 m3", "is this the gas content?"],
    ["psi as bar", liquidGauge, 22, 'write "22 psi", or "22 bar" if it is bar'],
    ["psi as bar at a relief valve", reliefGauge, 15, 'write "15 psi"'],
    ["a share a day as days", emptyDays, 0.015, 'enter "1.5 %/day"'],
    ["a percent as a share a day", shareADay, 1.5, "enter 1.5% or 0.015"],
    ["inches of mercury as kPa", absoluteKpa, 29.92, 'write "29.92 inHg"'],
    ["psi as kPa", absoluteKpa, 14.7, 'write "14.7 psia"'],
    ["a gas flow as make rate", litresPerHour, "10 L/min", "is a gas flow"],
    ["a make rate as gas flow", litresPerMinute, "1.5 L/h", "DELIVERED_FLOW"],
    ["a point that may part thousands", litres, "1.500 L", 'write "1.5 L" or "1500 L"'],
  ])("%s", (_case, quantity, cell, words) => {
    expect(quantity.read(cell, "x")).toMatchObject({ message: expect.stringContaining(words) });
  });

  it.each([
    ["a typed 0", minutes, 0, 0],
    ["part of a minute as text", minutes, "30 s", 0.5],
    ["one minute", minutes, 1, 1],
    ["a large cylinder", waterVolume, 250, 250],
    ["psi as text", liquidGauge, "22 psi", 22 * 0.0689475729316836],
    ["bar as text", liquidGauge, "20 bar", 20],
    ["a bare 14.9 bar", liquidGauge, 14.9, 14.9],
    ["the share a plate states", emptyDays, "1.5 %/day", 100 / 1.5],
    ["the same without the blank", emptyDays, "1.5%/day", 100 / 1.5],
    ["half a day", emptyDays, 0.5, 0.5],
    ["a fifth a day", shareADay, 0.2, 0.2],
    ["inHg as text", absoluteKpa, "29.92 inHg", 29.92 * 3.386389],
    ["psi read as absolute", absoluteKpa, "14.7 psi", 14.7 * 6.89475729316836],
    ["three digits behind a 0", litres, "0.500 L", 0.5],
    ["a fraction whose thousandfold is none", fraction, "1.500 %", 0.015],
    ["four digits", litres, "1.5000 L", 1.5],
  ])("%s passes", (_case, quantity, cell, value) => {
    expect(quantity.read(cell, "x")).toBeCloseTo(value, 10);
  });
});

it("quotes numbers as given, and text up to 40 characters", () => {
  expect(fraction.read(20260301, "x")).toMatchObject({ message: expect.stringContaining("20260301") });
  expect((litres.read("z".repeat(5000), "x") as unknown as CellError).message.length).toBeLessThan(250);
  expect((litres.read(`5 ${"z".repeat(5000)}`, "x") as unknown as CellError).message.length).toBeLessThan(300);
});

it("says what a picture or linked data is, whose fallback value is an error", () => {
  const picture = { type: "WebImage", basicType: "Error", basicValue: "#VALUE!" };
  expect(litres.read(picture, "x")).toMatchObject({ message: expect.stringContaining("picture or linked data") });
  expect(text.read(picture, "x")).toMatchObject({ message: expect.stringContaining("picture or linked data") });
});
