import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasRange } from "../../arguments/oxygenState";
import { gasLitres, waterVolume } from "../../arguments/quantity";
import { invalid } from "../../cells/cellValues";
import { cylinderContent, cylinderPressure as pressureOf, cylinderPressureRange } from "../../models/cylinder";

export const args = cellArguments({
  water_volume: waterVolume,
  content: gasLitres,
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Pressure at which a cylinder holds a content of gas, as a real gas.
 *
 * @customfunction CYLINDER_PRESSURE
 * @param water_volume Water volume of the cylinder, stamped on its shoulder [L]
 * @param content Gas in it at 21.1 °C and 101.325 kPa, with what stays at 0 bar gauge [L]
 * @param [temperature] Temperature of the gas [°C]
 * @returns Pressure, gauge [bar]
 */
export function cylinderPressure(water_volume: any[][], content: any[][], temperature?: any[][]): any[][] {
  return eachCell(args, [water_volume, content, temperature], (given) => {
    const at = (pressure: number): number => cylinderContent(given.water_volume, pressure, given.temperature);
    const least = at(cylinderPressureRange.least);
    const most = at(cylinderPressureRange.most);
    if (given.content < least * (1 - 1e-9)) {
      return invalid(
        `content ${formatNumber(given.content)} L is less than the ${formatNumber(at(0))} L that stay in at 0 bar gauge; add what stays in`,
      );
    }
    if (given.content > most * (1 + 1e-9)) {
      return invalid(
        `content ${formatNumber(given.content)} L would need more than ${formatNumber(cylinderPressureRange.most)} bar; at most ${formatNumber(most)} L go into this water_volume`,
      );
    }
    return Math.min(
      cylinderPressureRange.most,
      Math.max(cylinderPressureRange.least, pressureOf(given.water_volume, given.content, given.temperature)),
    );
  });
}

export const about: About = {
  gives: "gauge pressure",
  rule: "pressure of oxygen at the density content × density at 21.1 °C and 101.325 kPa / water volume",
  range: `${gasRange}; outside is #VALUE!. The result is gauge over 1.01325 bar. Below 0 the content is less than stays in an open cylinder: most likely that part, about one water volume, was left out. The cylinder's own filling pressure is the limit: see its stamp.`,
  source: "Equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175)",
  examples: [
    {
      formula: "=OXYGEN.CYLINDER_PRESSURE(50,50)",
      result: 0,
      tolerance: 1e-6,
      note: "An open cylinder",
      source: "One water volume of gas at 1 atm stays in",
    },
    {
      formula: '=OXYGEN.CYLINDER_PRESSURE(4.7,692.5,"70 °F")',
      result: 138.93,
      tolerance: 0.3,
      source: "2015 psi; Z = 0.9387 from the equation of state, outside this project",
    },
    {
      formula: "=OXYGEN.CYLINDER_PRESSURE(46.7,6500,35)",
      result: 140.1439,
      tolerance: 0.05,
      note: "The same content at 21.1 °C shows 131.61 bar",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["CYLINDER_CONTENT", "SETTLED_PRESSURE", "CYLINDER_FILL_MINUTES"],
  caution:
    "Never fill above the pressure stamped on the cylinder. Filling is for trained people, under local rules and the maker's manual.",
};
