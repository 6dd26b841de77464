import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { phases, refuseTwoPhases } from "../../arguments/phases";
import { fraction, kilowatts, volts } from "../../arguments/quantity";
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
  rule: "1000 × kW / (V × power factor), and √3 × V in place of V with three phases",
  range:
    "Voltage above 0, power factor above 0 to 1, phases 1 or 3. A three-phase load is taken as balanced; starting current is not in it.",
  source:
    "Definition of active power, P = V I cos φ and P = √3 V I cos φ; power factor 0.8 is the usual rating of generating sets (ISO 8528-1, from memory)",
  examples: [
    { formula: "=OXYGEN.LINE_CURRENT(4.8,240,1)", result: 20, note: "A pure resistance" },
    { formula: "=OXYGEN.LINE_CURRENT(4.8,240)", result: 25, note: "The same power at power factor 0.8" },
    {
      formula: "=OXYGEN.LINE_CURRENT(10,400,0.8,3)",
      result: 18.0421959,
      tolerance: 1e-6,
      note: "Three phases: 10 000 / (1.7320508 × 400 × 0.8)",
    },
  ],
  seeAlso: ["CIRCUIT_NEEDED", "CABLE_DROP", "POWER_LOAD", "START_KVA"],
  caution:
    "A planning figure. A licensed electrician sizes and connects the supply, and the local electrical code decides.",
};
