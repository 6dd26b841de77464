import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { gasLitres, litresPerMinute, sameUnit } from "../../arguments/quantity";
import { namesBeside } from "../../arguments/namesBeside";
import { list } from "../../arguments/range";
import { text } from "../../arguments/text";
import { dailyGas } from "../../models/demand";
import { expansionRatio, gasReferenceCelsius, standardAtmosphere, zeroCelsius } from "../../models/oxygen";
import { roundUpThings } from "../../models/wholeNumbers";

export const args = tableArguments({
  names: list(text),
  counts: list(sameUnit),
  flows: list(litresPerMinute),
  cylinder_content: gasLitres.positive().default(defaults.cylinder_content),
});

/**
 * Demand of each kind of patient or bed and of all together: as flow, as gas and liquid a day, and in cylinders.
 *
 * @customfunction DEMAND_TABLE
 * @param names What each kind is called
 * @param counts How many there are of each kind, in the same order; an average may have decimals
 * @param flows Flow of one of each kind, in the same order [L/min]
 * @param [cylinder_content] Gas that one cylinder gives [L]
 * @returns A row for each kind and a total: kind, count, flow each, L/min, m3/h, L/day, liquid L/day, cylinders/day
 */
export function demandTable(names: any[][], counts: any[][], flows: any[][], cylinder_content?: any[][]): any[][] {
  return wholeTable(args, [names, counts, flows, cylinder_content], (given) => {
    const kinds = namesBeside(given.names, counts, sameUnit, given.counts)!;
    const unequal = sameLength({ names: kinds, counts: given.counts, flows: given.flows });
    if (unequal) return unequal;
    const gasPerLiquid = expansionRatio(standardAtmosphere, zeroCelsius + gasReferenceCelsius, standardAtmosphere);
    const amounts = (flow: number): number[] => {
      const gas = dailyGas(flow, 24);
      return [flow, flow * 0.06, gas, gas / gasPerLiquid, roundUpThings(gas / given.cylinder_content)];
    };
    const each = given.counts.map((count, kind) => count * given.flows[kind]!);
    const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
    return [
      ["kind", "count", "flow each", "L/min", "m3/h", "L/day", "liquid L/day", "cylinders/day"],
      ...kinds.map((name, kind) => [name, given.counts[kind]!, given.flows[kind]!, ...amounts(each[kind]!)]),
      ["total", sum(given.counts), "", ...amounts(sum(each))],
    ];
  });
}

export const about: About = {
  gives: ["text", "amount", "gas flow", "gas flow", "number", "gas a day", "net liquid a day", "count"],
  rule: "count × flow; L/day = L/min × 1440; liquid = gas / expansion ratio; cylinders = gas / content, rounded up",
  range: `Counts and flows 0 or more. Gas litres at 21.1 °C and 101.325 kPa, liquid as it stands open to the air; losses in transfer are not in it (GROSS_DRAW). Cylinders are rounded up in each row, and the total's own sum is rounded up, so the rows may add up to more. ${blankAsZero}`,
  source:
    "Plain arithmetic; expansion ratio from the equation of state of Schmidt & Wagner 1985, Fluid Phase Equilib. 19:175; content of a cylinder as CONSTANTS gives it",
  examples: [
    {
      formula: '=OXYGEN.DEMAND_TABLE({"severe";"critical"},{75;25},{10;30})',
      result: [
        ["kind", "count", "flow each", "L/min", "m3/h", "L/day", "liquid L/day", "cylinders/day"],
        ["severe", 75, 10, 750, 45, 1080000, 1254.9, Math.ceil(1080000 / defaults.cylinder_content.value)],
        ["critical", 25, 30, 750, 45, 1080000, 1254.9, Math.ceil(1080000 / defaults.cylinder_content.value)],
        ["total", 100, "", 1500, 90, 2160000, 2509.8, Math.ceil(2160000 / defaults.cylinder_content.value)],
      ],
      tolerance: 0.9,
      source:
        "liquid by the International Fire Code 2018, table G101.2: 1 gal of liquid is 115.05 ft³ of gas; the rest is plain arithmetic",
      note: "Cylinders are rounded up in each row and again in the total",
    },
    {
      formula: '=OXYGEN.DEMAND_TABLE({"ward";"theatre"},{9;2},{4;6},3400)',
      result: [
        ["kind", "count", "flow each", "L/min", "m3/h", "L/day", "liquid L/day", "cylinders/day"],
        ["ward", 9, 4, 36, 2.16, 51840, 60.2, 16],
        ["theatre", 2, 6, 12, 0.72, 17280, 20.1, 6],
        ["total", 11, "", 48, 2.88, 69120, 80.3, 21],
      ],
      tolerance: 0.05,
      note: "Cylinders of 3400 L: 15.2, 5.1 and together 20.3",
      source:
        "liquid by the International Fire Code 2018, table G101.2, 860.6 L of gas a litre; the rest is plain arithmetic",
    },
  ],
  seeAlso: ["DEMAND_FLOW", "DAILY_DEMAND", "LIQUID_FROM_GAS", "CYLINDERS_NEEDED"],
  caution:
    "A planning figure; the clinician decides what each patient gets. Cylinders and cold liquid can injure: keep to local codes and the maker's manual.",
};
