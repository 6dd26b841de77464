import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, liquidGauge } from "../../arguments/oxygenState";
import { litresPerMinute } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { vaporiserDuty as dutyOf } from "../../models/amounts";

export const args = cellArguments({
  flow: litresPerMinute,
  gas_temperature: gasCelsius.default(defaults.gas_temperature),
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Heat that a vaporiser must give to turn liquid from a vessel into gas at a flow.
 *
 * @customfunction VAPORISER_DUTY
 * @param flow Gas drawn, counted at 21.1 °C and 101.325 kPa [L/min]
 * @param [gas_temperature] Temperature at which the gas leaves the vaporiser [°C]
 * @param [pressure] Pressure of the vessel and in the vaporiser, gauge [bar]
 * @returns Heat [kW]
 */
export function vaporiserDuty(flow: any[][], gas_temperature?: any[][], pressure?: any[][]): any[][] {
  return eachCell(args, [flow, gas_temperature, pressure], (given) =>
    dutyOf(given.flow, given.gas_temperature, given.pressure),
  );
}

export const about: About = {
  gives: "power",
  rule: "flow × density of the gas at 21.1 °C, 101.325 kPa × (enthalpy of the gas − of the boiling liquid, both at the vessel's pressure)",
  range: `Gas −40 to 60 °C; pressure 0.5 to 25 bar absolute, entered as bar gauge; outside is #VALUE!. Take the largest flow, not the mean. An ambient vaporiser gives what air, frost and wind allow: cold, wet weather and hours of use halve it or worse (common practice, no source), so set it against the maker's figure for your climate. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "First law for steady flow; properties: Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175",
  examples: [
    {
      formula: "=OXYGEN.VAPORISER_DUTY(100)",
      result: 0.885878,
      tolerance: 0.0005,
      note: "100 L/min from an open vessel",
      source: "Schmidt & Wagner 1985, enthalpies evaluated independently",
    },
    {
      formula: '=OXYGEN.VAPORISER_DUTY("3.6 m3/h",-20,4)',
      result: 0.436505,
      tolerance: 0.0003,
      note: "60 L/min at 4 bar, cold gas",
      source: "Schmidt & Wagner 1985, enthalpies evaluated independently",
    },
  ],
  seeAlso: ["LATENT_HEAT", "GAS_FROM_LIQUID", "DELIVERED_FLOW", "HOSE_DROP"],
  caution:
    "A vaporiser that is too small sends liquid and cold gas down the line, which breaks hoses and regulators and burns: watch for frost on the outlet, fit what shuts off at low temperature, and let a licensed fitter choose it by the maker's manual and local codes.",
};
