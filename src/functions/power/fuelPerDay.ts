import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fuelPerHour, hours as hoursRun } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";

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
  gives: "fuel a day",
  rule: "rate × hours × generators",
  range: `Hours from 0 to 24; more is #VALUE!. Generators that stand by don't count. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.FUEL_PER_DAY(4.5)",
      result: 4.5 * defaults.hours.value * defaults.generators.value,
      source: `4.5 × ${defaults.hours.value} × ${defaults.generators.value}`,
    },
    {
      formula: '=OXYGEN.FUEL_PER_DAY("1 gal/h",10,2)',
      result: 75.70823568,
      note: "Two for ten hours",
      source: "NIST SP 811: 1 US gal = 3.785 411 784 L; × 10 × 2",
    },
  ],
  seeAlso: ["FUEL_RATE", "FUEL_DAYS"],
};
