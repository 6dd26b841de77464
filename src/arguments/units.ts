/**
 * Units that text in a cell may carry, one measure a quantity. Factors are exact where NIST SP 811 (2008), appendix B.8,
 * marks them exact, and are otherwise derived from exact ones.
 */
import { type Kind } from "./kinds";
import { zeroCelsius } from "../models/referenceConditions";
import {
  barPerPsi,
  cubicFoot,
  foot,
  gallon,
  horsepower,
  inch,
  inchOfMercury,
  inchOfWater,
  millimetreOfMercury,
  millimetreOfWater,
  pound,
} from "../models/unitFactors";

/** value in base unit = number × factor + offset */
export interface Conversion {
  readonly factor: number;
  readonly offset?: number;
  /** value = factor / number: a time stated as a rate. */
  readonly inverse?: boolean;
}

export const convert = (amount: number, { factor, offset = 0, inverse }: Conversion): number =>
  inverse ? factor / amount : amount * factor + offset;

/** A kind of quantity: the unit of a bare number and the units that text may carry. */
export interface Measure {
  /** What such a number is, unless an argument says it more closely. */
  readonly kind: Kind;
  /** As in "is a pressure": used in error words. */
  readonly name: string;
  /** The unit of a bare number. */
  readonly unit: string;
  /** Spelling (normalised by `unitKey`) to conversion. */
  readonly units: ReadonlyMap<string, Conversion>;
  /** Two or three spellings to offer in error words. */
  readonly offer: string;
  /** The unit that a bare number out of range most often is in. */
  readonly mistakenFor?: string;
  /** Further words where the unit given measures something else. */
  readonly elsewhere?: (name: string) => string;
  /** Further words on a unit, normalised by `unitKey`, that is not read but often given. */
  readonly unknown?: (unit: string) => string;
}

/** Spellings are compared without case, spaces, superscripts or full stops. */
export const unitKey = (unit: string): string =>
  unit.toLowerCase().replace(/[\s.]/g, "").replace(/º/g, "°").replace(/²/g, "2").replace(/³/g, "3").replace(/μ/g, "µ");

type Spellings = Record<string, number | Conversion>;

/** Each key lists spellings parted by a blank; the value is a factor or a full conversion. */
function conversionsOf(spellings: Spellings): Map<string, Conversion> {
  const units = new Map<string, Conversion>();
  for (const names of Object.keys(spellings)) {
    const conversion = spellings[names]!;
    for (const spelling of names.split(" ")) {
      units.set(unitKey(spelling), typeof conversion === "number" ? { factor: conversion } : conversion);
    }
  }
  return units;
}

/** The conversions are laid out when text with a unit first comes in, so that Excel starts quickly. */
function measure(
  kind: Kind,
  name: string,
  unit: string,
  offer: string,
  spellings: () => Spellings,
  more: Pick<Measure, "mistakenFor" | "elsewhere" | "unknown"> = {},
): Measure {
  let units: ReadonlyMap<string, Conversion> | undefined;
  return {
    kind,
    name,
    unit,
    offer,
    ...more,
    get units() {
      units ??= conversionsOf(spellings());
      return units;
    },
  };
}

const per = (amounts: Spellings, times: Record<string, number>): Spellings => {
  const rates: Spellings = {};
  for (const amountNames of Object.keys(amounts)) {
    for (const timeNames of Object.keys(times)) {
      const spellings = amountNames.split(" ").map((amount) =>
        timeNames
          .split(" ")
          .map((time) => `${amount}/${time}`)
          .join(" "),
      );
      rates[spellings.join(" ")] = (amounts[amountNames] as number) / times[timeNames]!;
    }
  }
  return rates;
};

/** Spellings that amounts of oxygen are also stated in beside a state: "liquid gal". */
export const spelt = {
  litre: "L litre litres liter liters",
  gallon: "gal gallon gallons usgal",
  cubicMetre: "m3 cum",
  cubicFoot: "ft3 cuft",
  kilogram: "kg kilogram kilograms",
  pound: "lb lbs pound pounds",
};

const liquidAmounts: Spellings = {
  [spelt.litre]: 1,
  mL: 0.001,
  [spelt.cubicMetre]: 1000,
  [spelt.gallon]: gallon,
};
const volumes: Spellings = { [spelt.cubicMetre]: 1000, [spelt.cubicFoot]: cubicFoot };
const gasAmounts: Spellings = { [spelt.litre]: 1, mL: 0.001, ...volumes };
const hourNames = "h hr hour";
const dayNames = "d day";
const minuteNames = "min minute";
/** Liquid is made and used by the hour and the day; a flow a minute is one of gas. */
const hourly = { [hourNames]: 1, [dayNames]: 24 };

const durations = (base: number): Spellings => ({
  "s sec second seconds": 1 / 3600 / base,
  "min mins minute minutes": 1 / 60 / base,
  "h hr hrs hour hours": 1 / base,
  "d day days": 24 / base,
  "week weeks wk": 168 / base,
});

export const measures = {
  liquid: measure("liquid", "an amount of liquid", "L", "L or gal", () => liquidAmounts),
  gas: measure("gas", "an amount of gas", "L", "L, m3 or ft3", () => gasAmounts, {
    unknown: (unit) =>
      unit === "nm3" || unit === "nl" || unit === "sm3" || unit === "scf"
        ? "; a normal or standard volume is stated at a temperature of its own: write m3, L or ft3 and restate it with GAS_RESTATED"
        : "",
  }),
  vesselVolume: measure("water volume", "a volume", "L", "L, m3 or ft3", () => gasAmounts),
  room: measure("room volume", "a room volume", "m³", "m3 or ft3", () => ({
    [spelt.cubicMetre]: 1,
    [spelt.cubicFoot]: cubicFoot / 1000,
    [spelt.litre]: 0.001,
  })),
  makeRate: measure("make rate", "a make rate", "L/h", "L/h, L/day or gal/day", () => per(liquidAmounts, hourly)),
  dailyLiquid: measure("liquid a day", "a daily amount of liquid", "L/day", "L/day, L/h or gal/day", () =>
    per(liquidAmounts, { [hourNames]: 1 / 24, [dayNames]: 1 }),
  ),
  flow: measure(
    "gas flow",
    "a gas flow",
    "L/min",
    "L/min, m3/h or ft3/h",
    () => ({
      ...per(gasAmounts, { [minuteNames]: 1 }),
      ...per(volumes, { [hourNames]: 60, [dayNames]: 1440 }),
      "lpm slpm": 1,
      "cfh scfh": cubicFoot / 60,
      "cfm scfm": cubicFoot,
    }),
    {
      elsewhere: (name) =>
        name === "a make rate" ? "; DELIVERED_FLOW gives the gas flow that a make rate carries" : "",
    },
  ),
  drainRate: measure("drain rate", "a drain rate", "L/h", "L/h, L/min or gal/h", () =>
    per(liquidAmounts, { [minuteNames]: 1 / 60, ...hourly }),
  ),
  dailyGas: measure("gas a day", "a daily amount of gas", "L/day", "L/day, m3/h or L/min", () =>
    per(gasAmounts, { [minuteNames]: 1 / 1440, [hourNames]: 1 / 24, [dayNames]: 1 }),
  ),
  mass: measure("mass", "a mass", "kg", "kg or lb", () => ({
    [spelt.kilogram]: 1,
    "g gram grams": 0.001,
    "t tonne tonnes": 1000,
    [spelt.pound]: pound,
  })),
  gaugePressure: measure(
    "gauge pressure",
    "a pressure",
    "bar",
    "bar, psi or kPa (gauge)",
    () => ({
      "bar barg bar(g)": 1,
      mbar: 0.001,
      "psi psig psi(g)": barPerPsi,
      "kPa kPag kPa(g)": 0.01,
      "MPa MPag": 10,
      Pa: 1e-5,
    }),
    { mistakenFor: "psi" },
  ),
  pressureDifference: measure(
    "pressure difference",
    "a pressure difference",
    "mbar",
    "mbar, inH2O, kPa or psi",
    () => ({
      "mbar hPa": 1,
      bar: 1000,
      Pa: 0.01,
      kPa: 10,
      psi: barPerPsi * 1000,
      "inH2O inWC": inchOfWater * 10,
      "mmH2O mmWC": millimetreOfWater * 10,
      "cmH2O cmWC": millimetreOfWater * 100,
    }),
  ),
  gaugePsi: measure("gauge pressure in psi", "a pressure", "psi", "psi or bar (gauge)", () => ({
    "psi psig psi(g)": 1,
    "bar barg bar(g)": 1 / barPerPsi,
    "kPa kPag kPa(g)": 0.01 / barPerPsi,
    "MPa MPag": 10 / barPerPsi,
  })),
  absoluteKpa: measure(
    "absolute pressure",
    "an absolute pressure",
    "kPa",
    "kPa, hPa, mbar or inHg (absolute)",
    () => ({
      "kPa kPaa": 1,
      "hPa mbar": 0.1,
      Pa: 0.001,
      "bar bara": 100,
      "psia psi": barPerPsi * 100,
      inHg: inchOfMercury,
      mmHg: millimetreOfMercury,
    }),
    { mistakenFor: "hPa" },
  ),
  temperature: measure(
    "temperature",
    "a temperature",
    "°C",
    "°C or °F",
    () => ({
      "°C C degC celsius": 1,
      "°F F degF fahrenheit": { factor: 5 / 9, offset: -160 / 9 },
      "K kelvin": { factor: 1, offset: -zeroCelsius },
    }),
    { mistakenFor: "°F" },
  ),
  degreeLoss: measure("loss a degree", "a share for each degree", "1/°C", "1/°C or %/°C", () => ({
    "1/°C /°C": 1,
    "%/°C": 0.01,
    "1/°F /°F": 1.8,
    "%/°F": 0.018,
  })),
  altitude: measure(
    "altitude",
    "a height",
    "m",
    "m, km or ft",
    () => ({
      "m metre metres meter meters": 1,
      km: 1000,
      "ft feet foot": foot,
    }),
    { mistakenFor: "ft" },
  ),
  length: measure("length", "a length", "m", "m, cm, ft or in", () => ({
    "m metre metres meter meters": 1,
    cm: 0.01,
    mm: 0.001,
    km: 1000,
    "ft feet foot": foot,
    "in inch inches": inch,
  })),
  smallLength: measure("millimetres", "a length", "mm", "mm or in", () => ({
    "mm millimetre millimetres millimeter millimeters": 1,
    cm: 10,
    "m metre metres meter meters": 1000,
    "µm um micron microns": 0.001,
    "in inch inches": inch * 1000,
  })),
  area: measure("area", "an area", "m²", "m2 or ft2", () => ({ "m2 sqm": 1, "ft2 sqft": foot * foot })),
  wireArea: measure("conductor area", "a conductor area", "mm²", "mm2", () => ({ "mm2 sqmm": 1 })),
  angle: measure("angle", "an angle", "°", "° or deg", () => ({ "° deg degree degrees": 1 })),
  power: measure("power", "a power", "kW", "kW, W or hp", () => ({ kW: 1, W: 0.001, "hp horsepower": horsepower })),
  watts: measure("watts", "a power", "W", "W, kW or hp", () => ({
    W: 1,
    kW: 1000,
    "hp horsepower": horsepower * 1000,
  })),
  apparentPower: measure(
    "apparent power",
    "an apparent power",
    "kVA",
    "kVA or VA",
    () => ({ kVA: 1, VA: 0.001, MVA: 1000 }),
    { elsewhere: (name) => (name === "a power" ? "; kVA is kW divided by the power factor on the plate" : "") },
  ),
  energy: measure("energy", "an energy", "kWh", "kWh, Wh or MJ", () => ({ kWh: 1, Wh: 0.001, MJ: 1 / 3.6 }), {
    unknown: (unit) => (unit === "ah" ? "; a battery holds Ah × its volts / 1000 in kWh" : ""),
  }),
  apparentPerHorsepower: measure("apparent power a horsepower", "a starting load", "kVA/hp", "kVA/hp", () => ({
    "kVA/hp": 1,
  })),
  current: measure("current", "a current", "A", "A", () => ({ "A amp amps": 1, mA: 0.001 })),
  voltage: measure("voltage", "a voltage", "V", "V or kV", () => ({ "V volt volts": 1, kV: 1000 })),
  fuel: measure("fuel", "an amount of fuel", "L", "L or gal", () => liquidAmounts),
  fuelRate: measure("fuel an hour", "a fuel rate", "L/h", "L/h or gal/h", () =>
    per(liquidAmounts, { [minuteNames]: 1 / 60, ...hourly }),
  ),
  fuelPerDay: measure("fuel a day", "a daily amount of fuel", "L/day", "L/day, L/h or gal/day", () =>
    per(liquidAmounts, { [hourNames]: 1 / 24, [dayNames]: 1 }),
  ),
  days: measure("days", "a time", "days", "days, h or min", () => durations(24)),
  emptyDays: measure("days", "a time to boil empty", "days", "days, h or %/day", () => ({
    ...durations(24),
    "%/day %/d %aday percent/day": { factor: 100, inverse: true },
  })),
  hours: measure("hours", "a time", "h", "h, min or d", () => durations(1)),
  minutes: measure("minutes", "a time", "min", "min, h or d", () => durations(1 / 60)),
  months: measure("months", "a number of months", "months", "months or years", () => ({
    "month months mo": 1,
    "year years yr": 12,
  })),
  dailyShare: measure("fraction a day", "a share a day", "1/day", "%/day", () => ({
    "% percent %/day %/d %aday": 0.01,
    "1/day /day 1/d": 1,
  })),
  fraction: measure("fraction", "a fraction", "", "a fraction or a percent", () => ({ "%": 0.01, percent: 0.01 })),
} as const;

/** What the unit measures elsewhere, for the words of a refusal: "35 psi" given as a capacity "is a pressure". */
export function measuredBy(unit: string): string | undefined {
  const key = unitKey(unit);
  const names = Object.keys(measures) as (keyof typeof measures)[];
  const found = names.find((name) => measures[name].units.has(key));
  return found && measures[found].name;
}
