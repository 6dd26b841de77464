import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fuelPerHour, hours as hoursRun } from "../../arguments/quantity";

export const args = cellArguments({
  rate: fuelPerHour,
  hours: hoursRun.between(0, 24).default(defaults.hours),
  generators: count.default(defaults.generators),
});

/**
 * Fuel that running generators burn in a day.
 *
 * @customfunction FUEL_PER_DAY
 * @param rate Fuel one generator burns [L/h]
 * @param [hours] Hours it runs a day [h]
 * @param [generators] Generators that run at once
 * @returns Fuel [L/day]
 */
export function fuelPerDay(rate: any[][], hours?: any[][], generators?: any[][]): any[][] {
  return eachCell(args, [rate, hours, generators], (given) => given.rate * given.hours * given.generators);
}

export const about: About = {
  rule: "rate × hours × generators",
  range: "Hours from 0 to 24; more is #VALUE!. Generators that stand by don't count.",
  source: "Plain arithmetic",
  examples: [
    { formula: "=OXYGEN.FUEL_PER_DAY(4)", result: 96, note: "One generator round the clock" },
    {
      formula: '=OXYGEN.FUEL_PER_DAY("1 gal/h",10,2)',
      result: 75.70823568,
      source: "NIST SP 811: 1 US gal = 3.785 411 784 L",
    },
  ],
  seeAlso: ["FUEL_RATE", "FUEL_DAYS"],
};
