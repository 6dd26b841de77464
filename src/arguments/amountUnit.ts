import { choice } from "./text";

/** What an amount of oxygen may be stated in. */
export const amountUnits = ["liquid L", "liquid gal", "gas L", "gas m3", "gas ft3", "kg", "lb"] as const;
type AmountUnit = (typeof amountUnits)[number];

const litreSpellings = ["l", "litre", "litres", "liter", "liters"];
const gallonSpellings = ["gal", "gallon", "gallons", "us gal", "usgal", "us gallon", "us gallons"];
const cubicMetreSpellings = ["m3", "m³", "cubic metre", "cubic metres", "cubic meter", "cubic meters", "cum"];
const cubicFootSpellings = ["ft3", "ft³", "cubic foot", "cubic feet", "cu ft", "cuft"];

/** "liquid gal", "gal liquid", "gal of liquid" … */
const withState = (states: readonly string[], spellings: readonly string[]): string[] => {
  const names: string[] = [];
  for (const state of states)
    for (const spelling of spellings)
      names.push(`${state} ${spelling}`, `${spelling} ${state}`, `${spelling} of ${state}`);
  return names;
};

const liquid = ["liquid", "liq", "lox"];
const gas = ["gas", "gaseous", "gox"];

/** Bare "L" or "m3" is not among them: it does not tell liquid from gas, which differ by a factor of 860. */
const spellings: Readonly<Record<AmountUnit, readonly string[]>> = {
  "liquid L": withState(liquid, litreSpellings),
  "liquid gal": withState(liquid, gallonSpellings),
  "gas L": withState(gas, litreSpellings),
  "gas m3": withState(gas, cubicMetreSpellings),
  "gas ft3": withState(gas, cubicFootSpellings),
  kg: ["kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"],
  lb: ["lbs", "pound", "pounds"],
};

// Without a prototype, so that no name every object has is taken for a spelling.
const aliases: Record<string, AmountUnit> = Object.create(null) as Record<string, AmountUnit>;
for (const unit of amountUnits) for (const spelling of spellings[unit]) aliases[spelling] = unit;

/** What an amount of oxygen is stated in: a state and a unit, or a mass. */
export const amountUnit = choice(amountUnits, aliases);
