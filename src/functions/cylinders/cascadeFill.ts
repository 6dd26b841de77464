import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange } from "../../arguments/oxygenState";
import { bankVolume, waterVolume } from "../../arguments/quantity";
import { blankAsZero, gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { cascadeFill as fill } from "../../models/cylinder";

export const args = tableArguments({
  water_volume: waterVolume,
  pressure: gasGauge,
  bank_volumes: column(bankVolume),
  bank_pressures: column(gasGauge),
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Filling a cylinder from banks by letting each in turn come to one pressure with it, lowest bank first.
 *
 * @customfunction CASCADE_FILL
 * @param water_volume Water volume of the cylinder to fill [L]
 * @param pressure Pressure in it at the start, gauge [bar]
 * @param bank_volumes Water volume of each bank [L]
 * @param bank_pressures Pressure of each bank, gauge [bar]
 * @param [temperature] Temperature to which the gas settles [°C]
 * @returns Table in order of use: bank (its place in the list), bank after in bar gauge, cylinder after in bar gauge
 */
export function cascadeFill(
  water_volume: any[][],
  pressure: any[][],
  bank_volumes: any[][],
  bank_pressures: any[][],
  temperature?: any[][],
): any[][] {
  return wholeTable(args, [water_volume, pressure, bank_volumes, bank_pressures, temperature], (given) => {
    const uneven = sameLength({ bank_volumes: given.bank_volumes, bank_pressures: given.bank_pressures });
    if (uneven) return uneven;
    return [
      ["bank", "bank after", "cylinder after"],
      ...fill(given.water_volume, given.pressure, given.bank_volumes, given.bank_pressures, given.temperature).map(
        ({ bank, bankAfter, cylinderAfter }) => [bank + 1, bankAfter, cylinderAfter],
      ),
    ];
  });
}

export const about: About = {
  gives: ["count", "gauge pressure", "gauge pressure"],
  rule: "lowest bank first: density after = (cylinder volume × its density + bank volume × its density) / both volumes, at one temperature",
  range: `Bar gauge; ${gasRange}, outside is #VALUE!. A bank may hold more than one cylinder: give their volume together. A bank that is not above the cylinder is not opened and is listed unchanged; equal banks go in list order. Settled pressures: while filling, the cylinder is warmer and shows more. ${gaugeAtAltitude} ${blankAsZero}`,
  source: "Mass balance; equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175)",
  examples: [
    {
      formula: "=OXYGEN.CASCADE_FILL(10,8.98675,{50},{148.98675},20)",
      result: [
        ["bank", "bank after", "cylinder after"],
        [1, 125.9797, 125.9797],
      ],
      tolerance: 0.05,
      note: "150 and 10 bar absolute",
      source: "126.9929 bar absolute by the equation of state, computed outside this project",
    },
    {
      formula: "=OXYGEN.CASCADE_FILL(10,80,{50;50},{50;80})",
      result: [
        ["bank", "bank after", "cylinder after"],
        [1, 50, 80],
        [2, 80, 80],
      ],
      note: "No bank is above the cylinder: none is opened",
      source: "The rule stated",
    },
    {
      formula: "=OXYGEN.CASCADE_FILL(10.2,15,{46.7},{140},35)",
      result: [
        ["bank", "bank after", "cylinder after"],
        [1, 117.7447, 117.7447],
      ],
      tolerance: 0.03,
      note: "Settled on a hot day; at 21.1 °C it would be 117.93 bar",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["CYLINDER_CONTENT", "CYLINDER_FILL_MINUTES", "SETTLED_PRESSURE"],
  caution:
    "Opening a valve fast onto low pressure heats oxygen enough to set fittings alight. Cascade filling is for trained and licensed people: slowly, oil-free, never above the stamped pressure.",
};
