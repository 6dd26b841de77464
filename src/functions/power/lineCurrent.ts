import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { phases, refuseTwoPhases } from "../../arguments/phases";
import { fraction, kilowatts, volts } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { lineCurrent as currentOf } from "../../models/electricity";

export const args = cellArguments({
  power: kilowatts,
  voltage: volts,
  power_factor: fraction.aboveTo(0, 1).default(defaults.power_factor),
  phases,
});

/**
 * Current in each line of a supply at a load.
 *
 * @customfunction LINE_CURRENT
 * @param power Load [kW]
 * @param voltage Supply voltage, from line to line with three phases [V]
 * @param [power_factor] Power factor of the load
 * @param [phases] Phases of the supply, 1 or 3
 * @returns Current in each line [A]
 */
export function lineCurrent(power: any[][], voltage: any[][], power_factor?: any[][], phases?: any[][]): any[][] {
  return eachCell(
    args,
    [power, voltage, power_factor, phases],
    (given) => refuseTwoPhases(given.phases) ?? currentOf(given.power, given.voltage, given.power_factor, given.phases),
  );
}

export const about: About = {
  gives: "current",
  rule: "1000 × kW / (V × power factor), and √3 × V in place of V with three phases",
  range: `Voltage above 0, power factor above 0 to 1, phases 1 or 3. A three-phase load is taken as balanced; starting current is not in it. A load of lower power factor than the default draws more. ${blankAsZero}`,
  source: `Definition of active power, P = V I cos φ and P = √3 V I cos φ; power factor: ${defaults.power_factor.source}`,
  examples: [
    { formula: "=OXYGEN.LINE_CURRENT(4.8,240,1)", result: 20, note: "A pure resistance", source: "4800 / 240" },
    {
      formula: "=OXYGEN.LINE_CURRENT(4.8,240)",
      result: 4800 / (240 * defaults.power_factor.value),
      note: "The same power, drawn by motors",
      source: `4800 / (240 × ${defaults.power_factor.value})`,
    },
    {
      formula: "=OXYGEN.LINE_CURRENT(10,400,0.8,3)",
      result: 18.0421959,
      tolerance: 1e-6,
      note: "Three phases",
      source: "10 000 / (1.7320508 × 400 × 0.8)",
    },
  ],
  seeAlso: ["CIRCUIT_NEEDED", "CABLE_DROP", "POWER_LOAD", "START_KVA"],
  caution:
    "A planning figure. A licensed electrician sizes and connects the supply, and the local electrical code decides.",
};
