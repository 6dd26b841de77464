import { defaults, inWords } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange } from "../../arguments/oxygenState";
import { gaugeBar, litresPerMinute, waterVolume } from "../../arguments/quantity";
import { blankAsZero, gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { hotGas, minutesOnCylinder as minutesOn } from "../../models/cylinder";

export const args = cellArguments({
  water_volume: waterVolume,
  pressure: gasGauge,
  flow: litresPerMinute.positive(),
  keep_pressure: gaugeBar.between(0, 300).default(defaults.keep_pressure),
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Minutes that a cylinder lasts at a flow until its gauge is down to the pressure that is kept, as a real gas.
 *
 * @customfunction MINUTES_ON_CYLINDER
 * @param water_volume Water volume of the cylinder, stamped on its shoulder [L]
 * @param pressure Pressure now, gauge [bar]
 * @param flow Gas flow out of it [L/min]
 * @param [keep_pressure] Pressure at which it is changed, gauge [bar]
 * @param [temperature] Temperature of the gas [°C]
 * @returns Minutes until that pressure is reached [min]
 */
export function minutesOnCylinder(
  water_volume: any[][],
  pressure: any[][],
  flow: any[][],
  keep_pressure?: any[][],
  temperature?: any[][],
): any[][] {
  return eachCell(args, [water_volume, pressure, flow, keep_pressure, temperature], (given) =>
    minutesOn(given.water_volume, given.pressure, given.flow, given.keep_pressure, given.temperature),
  );
}

export const about: About = {
  gives: "minutes",
  rule: "water volume × (density at the pressure − density at the kept pressure) / density at 21.1 °C and 101.325 kPa / flow; 0 at or below the kept pressure",
  range: `Bar gauge; ${gasRange}, kept pressure 0 to 300 bar, water volume at most 250 L; outside is #VALUE!. The default pressure kept, ${inWords(defaults.keep_pressure)}, is where duration rules stop (200 psi); some regulators lose their flow earlier. ${hotGas} ${gaugeAtAltitude} ${blankAsZero}`,
  source:
    "Equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175); the pressure kept is that of cylinder duration rules, 200 psi (emergency-medical teaching texts)",
  examples: [
    {
      formula: "=OXYGEN.MINUTES_ON_CYLINDER(46.7,137,8,14)",
      result: 758.94,
      tolerance: 0.2,
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
    {
      formula: '=OXYGEN.MINUTES_ON_CYLINDER(4.7,"1500 psi",6,"200 psi",35)',
      result: 69.279,
      tolerance: 0.03,
      note: "In a hot ambulance; 73.7 min if it were 21.1 °C",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
    {
      formula: "=OXYGEN.MINUTES_ON_CYLINDER(10.2,{13;20},10,20)",
      result: [[0], [0]],
      note: "Under and at the pressure kept: change it now",
      source: "The rule stated",
    },
  ],
  seeAlso: ["CYLINDER_CONTENT", "CONTENT_BY_FACTOR", "CYLINDER_MINUTES", "JOURNEY_GAS"],
  caution:
    "A planning figure: a flow that is turned up, a leak or a stuck gauge ends it sooner. Watch the gauge, change early and keep the next cylinder at hand. The clinician sets the flow.",
};
