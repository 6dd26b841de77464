import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { reliefGauge } from "../../arguments/oxygenState";
import { fraction, litres } from "../../arguments/quantity";
import { mostColdFill as mostFill } from "../../models/closedVessel";

export const args = cellArguments({
  capacity: litres.positive(),
  relief_pressure: reliefGauge,
  full_share: fraction.aboveTo(0, 1).default(defaults.full_share),
});

/**
 * Most cold liquid to fill into a closed vessel, so that warmed up to its relief pressure it still leaves vapour space.
 *
 * @customfunction MOST_COLD_FILL
 * @param capacity Volume of the vessel to the brim, vapour space included [L]
 * @param relief_pressure Pressure at which the relief valve opens, gauge [bar]
 * @param [full_share] Largest share of the volume that may be liquid at relief pressure
 * @returns Liquid, cold from 1 atm [L]
 */
export function mostColdFill(capacity: any[][], relief_pressure: any[][], full_share?: any[][]): any[][] {
  return eachCell(args, [capacity, relief_pressure, full_share], (given) =>
    mostFill(given.capacity, given.relief_pressure, given.full_share),
  );
}

export const about: About = {
  rule: "capacity × full share × density of the liquid at relief pressure / density at 1 atm",
  range:
    "Relief pressure 0 to 23.98675 bar gauge, outside is #VALUE!. Liquid that comes in warmer than its boiling point at 1 atm is lighter: by weight the limit is the same. Properties are those of pure oxygen; 93 % product holds argon and nitrogen.",
  source:
    "Filling-density rule of cryogenic vessels (98 % at relief pressure: 49 CFR 173.318, from memory); properties: Schmidt & Wagner 1985",
  examples: [
    {
      formula: '=OXYGEN.MOST_COLD_FILL(100,"35 psi")',
      result: 91.96884,
      tolerance: 0.01,
      source: "Schmidt & Wagner 1985, ratio of densities evaluated independently",
    },
    { formula: "=OXYGEN.MOST_COLD_FILL(100,0)", result: 98, tolerance: 0.001, note: "A vessel that is always open" },
  ],
  seeAlso: ["HOURS_TO_PRESSURE", "LIQUID_DENSITY", "FILL_ORDER"],
  caution:
    "The fill limit on the vessel's plate, the maker's manual and the local code go before this figure. Never fill past the trycock or level mark.",
};
