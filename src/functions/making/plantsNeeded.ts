import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fraction, gasPerDay, litresPerHour, number } from "../../arguments/quantity";
import { blankAsZero, drawRatioOfPortables } from "../../arguments/whereCautionEnds";
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

const [ratio, availability, spare] = [defaults.draw_ratio.value, defaults.availability.value, defaults.spare.value];
const ofAvailability = (each: number): number => Math.ceil((150000 * ratio) / (48 * each * 860.6));

export const about: About = {
  gives: "count",
  rule: "round up(daily gas × draw ratio / (24 × rate × availability × gas from a litre of liquid)) + spare",
  range: `Rate above 0, availability above 0 and at most 1, draw ratio 1 or more. Take the rate at the site's altitude and heat (DERATED_RATE), not on the plate. ${drawRatioOfPortables} ${blankAsZero}`,
  source: `Plain arithmetic; expansion ratio: Schmidt & Wagner 1985; availability: ${defaults.availability.source}; draw ratio: ${defaults.draw_ratio.source}; spare: ${defaults.spare.source}`,
  examples: [
    {
      formula: "=OXYGEN.PLANTS_NEEDED(150000,2)",
      result: Math.ceil((150000 * ratio) / (48 * availability * 860.6)) + spare,
      source: `860.6 L/L (International Fire Code 2018, table G101.2): 150 000 × ${ratio} / (24 × 2 × ${availability} × 860.6), rounded up, and ${spare} spare`,
    },
    {
      formula: "=OXYGEN.PLANTS_NEEDED(150000,2,0,{0.9,0.6})",
      result: [[ofAvailability(0.9), ofAvailability(0.6)]],
      note: "Without a spare; worse plants need more of them",
      source: `860.6 L/L as above: 150 000 × ${ratio} / (48 × 0.9 × 860.6) and / (48 × 0.6 × 860.6), rounded up`,
    },
    {
      formula: '=OXYGEN.PLANTS_NEEDED("4 m3/h",1.5,0,1,{1,1.4})',
      result: [[4, 5]],
      source: "96 000 / (36 × 860.6) = 3.10; 1.4 times that is 4.34",
    },
  ],
  seeAlso: ["PLANT_LOADING", "DAILY_DEMAND", "DERATED_RATE", "ENOUGH_UNITS_CHANCE"],
  caution: "A planning figure: surges, outages and service come on top, and the clinician decides what patients get.",
};
