import { type AmountUnit, amountUnits } from "../models/amounts";
import { choice } from "./text";
import { spelt } from "./units";

const words = (names: string): string[] => names.toLowerCase().split(" ");
const litreSpellings = words(spelt.litre);
const gallonSpellings = [...words(spelt.gallon), "us gal", "us gallon", "us gallons"];
const cubicMetreSpellings = [
  ...words(spelt.cubicMetre),
  "m³",
  "cubic metre",
  "cubic metres",
  "cubic meter",
  "cubic meters",
];
const cubicFootSpellings = [...words(spelt.cubicFoot), "ft³", "cubic foot", "cubic feet", "cu ft"];

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
  kg: [...words(spelt.kilogram), "kgs", "kilo", "kilos", "kilogramme", "kilogrammes"],
  lb: words(spelt.pound),
};

// Without a prototype, so that no name every object has is taken for a spelling.
const aliases: Record<string, AmountUnit> = Object.create(null) as Record<string, AmountUnit>;
for (const unit of amountUnits) for (const spelling of spellings[unit]) aliases[spelling] = unit;

/** What an amount of oxygen is stated in: a state and a unit, or a mass. */
export const amountUnit = choice(amountUnits, aliases);
