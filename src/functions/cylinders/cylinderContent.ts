import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange } from "../../arguments/oxygenState";
import { waterVolume } from "../../arguments/quantity";
import { blankAsZero, gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { cylinderContent as contentOf, hotGas } from "../../models/cylinder";

export const args = cellArguments({
  water_volume: waterVolume,
  pressure: gasGauge,
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Gas in a cylinder, as a real gas, with what stays in it at 0 bar gauge.
 *
 * @customfunction CYLINDER_CONTENT
 * @param water_volume Water volume of the cylinder, stamped on its shoulder [L]
 * @param pressure Pressure, gauge [bar]
 * @param [temperature] Temperature of the gas [°C]
 * @returns Gas at 21.1 °C and 101.325 kPa [L]
 */
export function cylinderContent(water_volume: any[][], pressure: any[][], temperature?: any[][]): any[][] {
  return eachCell(args, [water_volume, pressure, temperature], (given) =>
    contentOf(given.water_volume, given.pressure, given.temperature),
  );
}

export const about: About = {
  gives: "gas",
  rule: "water volume × density of oxygen at pressure and temperature / its density at 21.1 °C and 101.325 kPa",
  range: `Bar gauge; ${gasRange}, water volume at most 250 L, outside is #VALUE!: count a bundle cylinder by cylinder. About one water volume stays in at 0 bar gauge and can't be used. ${hotGas} ${gaugeAtAltitude} 93 % product differs by about 1 %. ${blankAsZero}`,
  source: "Equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175)",
  examples: [
    {
      formula: "=OXYGEN.CYLINDER_CONTENT(50,0)",
      result: 50,
      tolerance: 1e-6,
      note: "What stays in an open cylinder",
      source: "Density at 0 bar gauge over itself",
    },
    {
      formula: '=OXYGEN.CYLINDER_CONTENT(4.7,"2015 psi")',
      result: 692.5,
      tolerance: 1.5,
      note: "A small portable cylinder; an ideal gas would be 650 L",
      source:
        "Z = 0.9387 at 2015 psi and 70 °F from the equation of state, outside this project: 4.7 × 2029.7/14.696/0.9387 × 0.99936",
    },
    {
      formula: "=OXYGEN.CYLINDER_CONTENT(46.7,137,40)",
      result: 6219.3,
      tolerance: 1,
      note: "In the sun; reckoned at 21.1 °C it would be 6770 L, 9 % too much",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
    {
      formula: '=OXYGEN.CYLINDER_CONTENT("244 ft3","2200 psi")',
      result: { error: "#VALUE!", words: "is this the gas content?" },
      note: "The gas content in place of the water volume",
      source: "The range stated",
    },
  ],
  seeAlso: ["MINUTES_ON_CYLINDER", "CYLINDER_PRESSURE", "CONTENT_BY_FACTOR", "CYLINDER_MINUTES", "COMPRESSIBILITY"],
  caution:
    "A gauge and a stamp, not this figure, say what a cylinder holds: read the pressure when the gas has settled to room temperature.",
};
