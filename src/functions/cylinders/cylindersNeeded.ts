import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, gasLitres } from "../../arguments/quantity";
import { cylindersNeeded as cylindersFor } from "../../models/cylinderUse";

export const args = cellArguments({
  gas: gasLitres,
  content: gasLitres.positive(),
  keep_share: fraction.fromToBelow(0, 1).default(defaults.keep_share),
});

/**
 * Whole cylinders to bring for an amount of gas, with a share kept in each; rounded up.
 *
 * @customfunction CYLINDERS_NEEDED
 * @param gas Gas needed [L]
 * @param content Gas in one full cylinder [L]
 * @param [keep_share] Share that stays in each cylinder
 * @returns Cylinders
 */
export function cylindersNeeded(gas: any[][], content: any[][], keep_share?: any[][]): any[][] {
  return eachCell(args, [gas, content, keep_share], (given) =>
    cylindersFor(given.gas, given.content, given.keep_share),
  );
}

export const about: About = {
  gives: "count",
  rule: "gas / (content × (1 − keep share)), rounded up to whole cylinders",
  range:
    "Content above 0; keep share from 0 to under 1. No gas takes no cylinder. A content of CYLINDER_CONTENT counts what can't leave the cylinder, about one water volume: keep share 0 would count on it.",
  source: "Plain arithmetic; the reserve of a tenth is an own planning default",
  examples: [
    {
      formula: "=OXYGEN.CYLINDERS_NEEDED(7000,1000)",
      result: Math.ceil(7000 / (1000 * (1 - defaults.keep_share.value))),
      source: "7000/(1000 × (1 − keep share)), rounded up",
    },
    { formula: "=OXYGEN.CYLINDERS_NEEDED(2160000,7000,0)", result: 309, source: "2160/7 = 308.57, rounded up" },
  ],
  seeAlso: ["CYLINDERS_TO_OWN", "CYLINDER_MINUTES", "DEMAND_TABLE", "JOURNEY_GAS"],
  caution:
    "A planning figure: bring spare cylinders and regulators, secured upright for the journey as the carrier and local rules ask.",
};
