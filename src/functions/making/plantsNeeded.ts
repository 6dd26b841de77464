import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fraction, gasPerDay, litresPerHour, number } from "../../arguments/quantity";
import { plantsNeeded as plantsFor } from "../../models/making";

export const args = cellArguments({
  daily_gas: gasPerDay,
  rate: litresPerHour.positive(),
  spare: count.default(defaults.spare),
  availability: fraction.aboveTo(0, 1).default(defaults.availability),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Plants to bring for a daily use of gas: enough that they supply it while each makes liquid only part of the time, and
 * the spare ones.
 *
 * @customfunction PLANTS_NEEDED
 * @param daily_gas Gas used at the patients each day [L/day]
 * @param rate Liquid one plant makes on site, net of standing loss [L/h]
 * @param [spare] Plants beyond those needed
 * @param [availability] Share of the time that a plant makes liquid
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Plants, spare ones included
 */
export function plantsNeeded(
  daily_gas: any[][],
  rate: any[][],
  spare?: any[][],
  availability?: any[][],
  draw_ratio?: any[][],
): any[][] {
  return eachCell(args, [daily_gas, rate, spare, availability, draw_ratio], (given) =>
    plantsFor(given.daily_gas, given.rate, given.spare, given.availability, given.draw_ratio),
  );
}

export const about: About = {
  rule: "round up(daily gas × draw ratio / (24 × rate × availability × gas from a litre of liquid)) + spare",
  range:
    "Rate above 0, availability above 0 and at most 1, draw ratio 1 or more. Take the rate at the site's altitude and heat (DERATED_RATE), not on the plate.",
  source:
    "Plain arithmetic; expansion ratio: Schmidt & Wagner 1985; availability: own planning default; draw ratio and spare: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.PLANTS_NEEDED(100000,1.5)",
      result: 6,
      source:
        "860.6 L/L (International Fire Code 2018, table G101.2): 100 000 × 1.25/(24 × 1.5 × 0.9 × 860.6) = 4.48, up to 5, and one spare",
    },
    { formula: '=OXYGEN.PLANTS_NEEDED("4 m3/h",1.5,0,1,1)', result: 4, source: "96 000/(36 × 860.6) = 3.10" },
  ],
  seeAlso: ["PLANT_LOADING", "DAILY_DEMAND", "DERATED_RATE", "ENOUGH_UNITS_CHANCE"],
  caution: "A planning figure: surges, outages and service come on top, and the clinician decides what patients get.",
};
