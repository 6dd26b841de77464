import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange } from "../../arguments/oxygenState";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { cylinderPressureRange, settledPressure as pressureOf } from "../../models/cylinder";

export const args = cellArguments({
  pressure: gasGauge,
  temperature: gasCelsius,
  settled_temperature: gasCelsius.default(defaults.settled_temperature),
});

/**
 * Pressure that a closed cylinder settles to when its gas comes to another temperature, as after a warm fill.
 *
 * @customfunction SETTLED_PRESSURE
 * @param pressure Pressure now, gauge [bar]
 * @param temperature Temperature of the gas now [°C]
 * @param [settled_temperature] Temperature it settles to [°C]
 * @returns Pressure then, gauge [bar]
 */
export function settledPressure(pressure: any[][], temperature: any[][], settled_temperature?: any[][]): any[][] {
  return eachCell(args, [pressure, temperature, settled_temperature], (given) => {
    const settled = pressureOf(given.pressure, given.temperature, given.settled_temperature);
    if (settled > cylinderPressureRange.most * (1 + 1e-9)) {
      return invalid(
        `pressure ${formatNumber(given.pressure)} bar would settle to ${formatNumber(settled)} bar, above the ${formatNumber(cylinderPressureRange.most)} bar that are reckoned here`,
      );
    }
    if (settled < cylinderPressureRange.least - 1e-9) {
      return invalid(
        `pressure ${formatNumber(given.pressure)} bar would settle to ${formatNumber(settled)} bar gauge, under the 0.5 bar absolute that are reckoned here: the cylinder is empty`,
      );
    }
    return Math.max(cylinderPressureRange.least, settled);
  });
}

export const about: About = {
  gives: "gauge pressure",
  rule: "pressure of oxygen at the settled temperature and the density it has now (constant volume)",
  range: `Bar gauge; ${gasRange} now and then, outside is #VALUE!. The cylinder's own stretch with heat is left out. The gas, not the wall, has to be at the temperature given: just filled, it is hotter than the wall. ${gaugeAtAltitude}`,
  source: "Equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175)",
  examples: [
    {
      formula: "=OXYGEN.SETTLED_PRESSURE(150,21.1)",
      result: 150,
      note: "No change of temperature",
      source: "The rule stated",
    },
    {
      formula: '=OXYGEN.SETTLED_PRESSURE("2173.8 psi","100 °F","70 °F")',
      result: 138.93,
      tolerance: 0.1,
      note: "A warm fill that settles to 2015 psi",
      source:
        "Isochore of the equation of state, computed outside this project: 2015 psi at 70 °F is 2173.8 psi at 100 °F",
    },
    {
      formula: "=OXYGEN.SETTLED_PRESSURE(140,45,10)",
      result: 119.6192,
      tolerance: 0.03,
      note: "What a warm fill shows on a cold morning; at 21.1 °C it would be 126.10 bar",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["CYLINDER_PRESSURE", "CYLINDER_CONTENT"],
  caution:
    "Heat raises the pressure: keep cylinders out of the sun and away from stoves, and never fill beyond what settles to the stamped pressure.",
};
