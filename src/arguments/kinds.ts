/**
 * What a number is, beyond its unit: liquid drawn or liquid filled, gauge or absolute, an hour or a day. Every argument and
 * every result of the catalogue has a kind, so that a workbook can be checked for numbers used as what they are not.
 * Kinds of one group measure the same thing in the same unit; "any" kinds take and give whatever the caller means.
 */

interface KindWords {
  /** Completes "is …". */
  readonly words: string;
  readonly group: string;
}

const kind = (group: string, words: string): KindWords => ({ words, group });

export const kinds = {
  liquid: kind("liquid", "an amount of liquid"),
  "net liquid": kind("liquid", "liquid filled (net)"),
  "gross liquid": kind("liquid", "liquid drawn for a fill (gross)"),
  "liquid a day": kind("liquid a day", "liquid a day"),
  "net liquid a day": kind("liquid a day", "liquid needed a day (net)"),
  "gross liquid a day": kind("liquid a day", "liquid drawn a day (gross)"),
  gas: kind("gas", "an amount of gas"),
  "gas a day": kind("gas a day", "gas a day"),
  "gas flow": kind("gas flow", "a gas flow"),
  "make rate": kind("make rate", "a make rate of liquid"),
  "drain rate": kind("drain rate", "a drain rate"),
  mass: kind("mass", "a mass"),
  "gauge pressure": kind("gauge pressure", "a gauge pressure"),
  "gauge pressure in psi": kind("gauge pressure in psi", "a gauge pressure in psi"),
  "absolute pressure": kind("absolute pressure", "an absolute pressure"),
  "pressure difference": kind("pressure difference", "a pressure difference"),
  temperature: kind("temperature", "a temperature"),
  "loss a degree": kind("loss a degree", "a loss for each degree"),
  "water volume": kind("water volume", "a cylinder's water volume"),
  "room volume": kind("room volume", "a room volume"),
  "air flow": kind("air flow", "a flow of air"),
  fraction: kind("fraction", "a fraction"),
  "fraction a day": kind("fraction a day", "a share lost a day"),
  hours: kind("hours", "a time in hours"),
  minutes: kind("minutes", "a time in minutes"),
  days: kind("days", "a time in days"),
  months: kind("months", "a time in months"),
  "hours a day": kind("hours a day", "hours a day"),
  date: kind("date", "a date"),
  "date-time": kind("date", "a date with its time"),
  count: kind("count", "a count"),
  patients: kind("count", "patients at once"),
  "mean patients": kind("count", "patients on average"),
  money: kind("money", "an amount of money"),
  "money a day": kind("money a day", "money a day"),
  altitude: kind("altitude", "a height above the sea"),
  length: kind("length", "a length"),
  millimetres: kind("millimetres", "a length in millimetres"),
  area: kind("area", "an area"),
  "conductor area": kind("conductor area", "a conductor area"),
  angle: kind("angle", "an angle"),
  power: kind("power", "a power in kW"),
  watts: kind("watts", "a power or heat in W"),
  energy: kind("energy", "an energy in kWh"),
  "energy a litre": kind("energy a litre", "an energy a litre"),
  "heat a kilogram": kind("heat a kilogram", "a heat for each kilogram"),
  current: kind("current", "a current"),
  voltage: kind("voltage", "a voltage"),
  "apparent power": kind("apparent power", "an apparent power"),
  "apparent power a horsepower": kind("apparent power a horsepower", "a starting load"),
  fuel: kind("fuel", "an amount of fuel"),
  "fuel an hour": kind("fuel an hour", "fuel an hour"),
  "fuel a day": kind("fuel a day", "fuel a day"),
  "liquid density": kind("liquid density", "a density of liquid"),
  "gas density": kind("gas density", "a density of gas"),
  "cylinder factor": kind("cylinder factor", "a cylinder's size factor"),
  /** A ratio or another number without a unit. */
  number: kind("any", "a number"),
  /** An amount in whatever unit the caller uses throughout. */
  amount: kind("any", "an amount in the sheet's own unit"),
  text: kind("any", "text"),
  flag: kind("any", "TRUE or FALSE"),
  value: kind("any", "a value of any kind"),
} as const satisfies Record<string, KindWords>;

export type Kind = keyof typeof kinds;
