import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fuelLitres, fuelPerDay } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  fuel: fuelLitres,
  fuel_per_day: fuelPerDay.positive(),
  keep: fuelLitres.default(defaults.keep),
});

/**
 * Days that a store of fuel lasts.
 *
 * @customfunction FUEL_DAYS
 * @param fuel Fuel in store [L]
 * @param fuel_per_day Fuel burnt a day [L/day]
 * @param [keep] Fuel that is not to be touched, or can't be drawn [L]
 * @returns Days [days]
 */
export function fuelDays(fuel: any[][], fuel_per_day: any[][], keep?: any[][]): any[][] {
  return eachCell(
    args,
    [fuel, fuel_per_day, keep],
    (given) => Math.max(0, given.fuel - given.keep) / given.fuel_per_day,
  );
}

export const about: About = {
  gives: "days",
  rule: "(fuel − keep) / fuel per day, at least 0",
  range: `Fuel per day above 0. 0 where the store is not above what is kept. The last of a tank is often water and dirt: keep some. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    { formula: "=OXYGEN.FUEL_DAYS(1000,96)", result: 1000 / 96, source: "1000 / 96" },
    {
      formula: "=OXYGEN.FUEL_DAYS(1000,90,100)",
      result: 10,
      note: "The last 100 L stay in the tank",
      source: "(1000 − 100) / 90",
    },
  ],
  seeAlso: ["FUEL_PER_DAY", "FUEL_RATE"],
  caution:
    "A planning figure: dip the tanks, and have more fuel, or oxygen that needs no power, at hand before this runs out.",
};
