import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { fuelPerHour, kilowatts, share } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { type CellError, invalid } from "../../cells/cellValues";
import { fuelBetween } from "../../models/electricity";

export const args = cellArguments({
  load: kilowatts,
  unit_power: kilowatts.positive(),
  load_points: list(share.between(0, 2)),
  fuel_points: list(fuelPerHour),
});

/** The maker's points in rising order of load, or what is wrong with them. */
function readPoints(
  loadPoints: readonly number[],
  fuelPoints: readonly number[],
): { loads: number[]; fuels: number[] } | CellError {
  const unequal = sameLength({ load_points: loadPoints, fuel_points: fuelPoints });
  if (unequal) return unequal;
  if (loadPoints.length < 2) return invalid("load_points has one point; enter two or more of the maker's points");
  const order = loadPoints.map((_, index) => index).sort((a, b) => loadPoints[a]! - loadPoints[b]!);
  const loads = order.map((index) => loadPoints[index]!);
  const fuels = order.map((index) => fuelPoints[index]!);
  for (let point = 1; point < loads.length; point++) {
    if (loads[point] === loads[point - 1])
      return invalid(`load_points holds ${formatNumber(loads[point]!)} twice; each load once`);
    if (fuels[point]! < fuels[point - 1]!) {
      return invalid(
        `fuel_points falls from ${formatNumber(fuels[point - 1]!)} to ${formatNumber(fuels[point]!)} L/h as the load rises; check the order of both lists`,
      );
    }
  }
  return { loads, fuels };
}

/**
 * Fuel a generator burns at a load, between the points its maker states.
 *
 * @customfunction FUEL_RATE
 * @param load Load on one generator [kW]
 * @param unit_power Full power of one generator, to which the points refer [kW]
 * @param load_points Loads of the maker's points as shares of full power, such as 0.5, 0.75 and 1
 * @param fuel_points Fuel at each of these points [L/h]
 * @returns Fuel [L/h]
 */
export function fuelRate(load: any[][], unit_power: any[][], load_points: any[][], fuel_points: any[][]): any[][] {
  return eachCell(args, [load, unit_power, load_points, fuel_points], (given) => {
    const points = readPoints(given.load_points, given.fuel_points);
    if (!("loads" in points)) return points;
    const { loads, fuels } = points;
    const loadShare = given.load / given.unit_power;
    return (
      fuelBetween(loadShare, loads, fuels) ??
      invalid(
        `load of ${formatNumber(given.load)} kW is ${formatNumber(loadShare)} of unit_power, outside load_points, the maker's points from ${formatNumber(loads[0]!)} to ${formatNumber(loads[loads.length - 1]!)}`,
      )
    );
  });
}

export const about: About = {
  gives: "fuel an hour",
  rule: "straight line between the maker's two points on either side of load / unit power",
  range:
    "From the lowest to the highest of the maker's points; outside is #VALUE!, never drawn on. Two points or more, in any order, each load once and at most 2, fuel not falling as the load rises.",
  source: "Linear interpolation; the points are the maker's. Published fuel charts differ by 20 % either way",
  examples: [
    {
      formula: '=OXYGEN.FUEL_RATE(5,8,{0.5;0.75;1},{"0.39 gal/h";"0.54 gal/h";"0.69 gal/h"})',
      result: 1.76,
      tolerance: 0.001,
      source: "published diesel generator fuel chart, 8 kW row (points read, interpolation by hand: 0.465 gal/h)",
    },
    {
      formula: "=OXYGEN.FUEL_RATE(12,20,{0.25,0.5,0.75,1},{2.3,3.4,4.9,6.1})",
      result: 4,
      note: "At 0.6 of full power",
      source: "3.4 + 1.5 × 0.1 / 0.25",
    },
    {
      formula: "=OXYGEN.FUEL_RATE(2,20,{0.25,0.5,0.75,1},{2.3,3.4,4.9,6.1})",
      result: { error: "#VALUE!", words: "outside load_points" },
      note: "Below the maker's lowest point",
      source: "2 / 20 = 0.1, under 0.25",
    },
  ],
  seeAlso: ["FUEL_PER_DAY", "FUEL_DAYS", "GENERATORS_NEEDED"],
  caution: "Fuel and oxygen stores are kept well apart; the local fire code and the makers' manuals say how far.",
};
