import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { reliefGauge } from "../../arguments/oxygenState";
import { fraction, litres } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { mostColdFill as mostFill } from "../../models/closedVessel";

export const args = cellArguments({
  brim_volume: litres.positive(),
  relief_pressure: reliefGauge,
  full_share: fraction.aboveTo(0, 1).default(defaults.full_share),
});

/**
 * Most cold liquid to fill into a closed vessel, so that warmed up to its relief pressure it still leaves vapour space.
 *
 * @customfunction MOST_COLD_FILL
 * @param brim_volume Volume of the vessel to the brim, vapour space included [L]
 * @param relief_pressure Pressure at which the relief valve opens, gauge [bar]
 * @param [full_share] Largest share of the volume that may be liquid at relief pressure
 * @returns Liquid, cold from 1 atm [L]
 */
export function mostColdFill(brim_volume: any[][], relief_pressure: any[][], full_share?: any[][]): any[][] {
  return eachCell(args, [brim_volume, relief_pressure, full_share], (given) =>
    mostFill(given.brim_volume, given.relief_pressure, given.full_share),
  );
}

export const about: About = {
  gives: "liquid",
  rule: "brim volume × full share × density of the liquid at relief pressure / density at 1 atm",
  range: `Relief pressure above 0, at most 23.98675 bar gauge, outside is #VALUE!. Liquid that comes in warmer than its boiling point at 1 atm is lighter: by weight the limit is the same. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source:
    "Own caution: for oxygen ADR, packing instruction P203 (5), asks for at most 98 % of the volume at filling, and for flammable gases that the liquid stay under 98 % up to the relief pressure; this takes the stricter of the two. Properties: Schmidt & Wagner 1985",
  examples: [
    {
      formula: '=OXYGEN.MOST_COLD_FILL(100,"35 psi")',
      result: 91.96884,
      tolerance: 0.01,
      source: "Schmidt & Wagner 1985, ratio of densities evaluated independently",
    },
    {
      formula: '=OXYGEN.MOST_COLD_FILL(185,"22 psi",0.95)',
      result: 168.044,
      tolerance: 0.03,
      note: "A vapour space of a twentieth left",
      source: "185 × 0.95 × 1091.136 / 1141.172, Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["HOURS_TO_PRESSURE", "LIQUID_DENSITY", "FILL_ORDER"],
  caution:
    "The fill limit on the vessel's plate, the maker's manual and the local code go before this figure. Never fill past the trycock or level mark.",
};
