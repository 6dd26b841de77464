import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange } from "../../arguments/oxygenState";
import { litresPerMinute, waterVolume } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { gasToFill } from "../../models/cylinder";
import { exceeds } from "../../models/exceeds";

export const args = cellArguments({
  water_volume: waterVolume,
  from_pressure: gasGauge,
  to_pressure: gasGauge,
  fill_flow: litresPerMinute.positive(),
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Minutes to fill a cylinder from one pressure to another at a steady flow, as a real gas.
 *
 * @customfunction CYLINDER_FILL_MINUTES
 * @param water_volume Water volume of the cylinder, stamped on its shoulder [L]
 * @param from_pressure Pressure at the start, gauge [bar]
 * @param to_pressure Pressure at the end, settled, gauge [bar]
 * @param fill_flow Gas flow into the cylinder: the booster's, or the plant's where that is less [L/min]
 * @param [temperature] Temperature to which the gas settles [°C]
 * @returns Minutes of filling [min]
 */
export function cylinderFillMinutes(
  water_volume: any[][],
  from_pressure: any[][],
  to_pressure: any[][],
  fill_flow: any[][],
  temperature?: any[][],
): any[][] {
  return eachCell(args, [water_volume, from_pressure, to_pressure, fill_flow, temperature], (given) =>
    exceeds(given.from_pressure, given.to_pressure)
      ? invalid(
          `to_pressure ${formatNumber(given.to_pressure)} bar is below from_pressure ${formatNumber(given.from_pressure)} bar; a fill goes up`,
        )
      : Math.max(0, gasToFill(given.water_volume, given.from_pressure, given.to_pressure, given.temperature)) /
        given.fill_flow,
  );
}

export const about: About = {
  gives: "minutes",
  rule: "(content at the end pressure − content at the start pressure) / fill flow",
  range: `Bar gauge; ${gasRange}, outside and an end below the start are #VALUE!. A booster can't pass on more than the plant supplies: enter the smaller flow. Time to cool is not in it. ${gaugeAtAltitude}`,
  source: "Equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175)",
  examples: [
    {
      formula: '=OXYGEN.CYLINDER_FILL_MINUTES(4.7,0,"2015 psi",11)',
      result: 62.5,
      tolerance: 0.15,
      source: "Z = 0.9387 at 2015 psi and 70 °F, outside this project: (692.5 − 4.7)/11",
    },
    {
      formula: "=OXYGEN.CYLINDER_FILL_MINUTES(10,100,100,11)",
      result: 0,
      note: "Full already",
      source: "The rule stated",
    },
    {
      formula: "=OXYGEN.CYLINDER_FILL_MINUTES(46.7,20,140,12,35)",
      result: 463.2556,
      tolerance: 0.1,
      note: "Warm gas fills it with less: 494.9 min at 21.1 °C",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["CYLINDERS_PER_DAY", "CYLINDER_CONTENT", "CASCADE_FILL"],
  caution:
    "Filling oxygen cylinders kills when oil, grease, haste or a wrong cylinder is about: trained and licensed people only, slowly, with clean fittings, in-date cylinders and the maker's manual.",
};
