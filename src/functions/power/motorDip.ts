import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, kilovoltAmperes } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { motorDip as dipOf } from "../../models/electricity";

export const args = cellArguments({
  start_kva: kilovoltAmperes,
  generator_kva: kilovoltAmperes.positive(),
  reactance: fraction.aboveTo(0, 1).default(defaults.reactance),
});

/**
 * Share by which a running generator's voltage dips in the moment a motor starts on it. A dip above 0.3 drops out
 * contactors and can stall what runs: a larger set, a soft starter, or one motor after the other.
 *
 * @customfunction MOTOR_DIP
 * @param start_kva Apparent power the motor draws as it starts at full voltage, as START_KVA gives it without a dip [kVA]
 * @param generator_kva Rating of the generator [kVA]
 * @param [reactance] Subtransient reactance of the generator, X"d per unit on its data sheet, above 0 to 1
 * @returns Voltage lost over voltage before
 */
export function motorDip(start_kva: any[][], generator_kva: any[][], reactance?: any[][]): any[][] {
  return eachCell(args, [start_kva, generator_kva, reactance], (given) =>
    dipOf(given.start_kva, given.generator_kva, given.reactance),
  );
}

const reactance = defaults.reactance.value;

export const about: About = {
  gives: "fraction",
  rule: 'start kVA / (start kVA + generator kVA / X"d)',
  range: `Start kVA 0 or more, rating above 0. The first cycles, before the voltage regulator acts; cables and a transformer between make the motor's own dip larger. Motor and generator are added as if in phase, which is on the safe side. Motors that start together count together. The engine's speed may dip as well: that is not in it. ${blankAsZero}`,
  source:
    "Makers' guides to sizing sets, common practice, no source; the circuit is that of Sheldrake, Handbook of Electrical Engineering (2003), appendix G; a dip of 0.3 as the usual most: trade guides (read second hand)",
  examples: [
    {
      formula: "=OXYGEN.MOTOR_DIP(27,45)",
      result: 27 / (27 + 45 / reactance),
      note: "A motor of 3 hp and code letter K",
      source: `27 / (27 + 45 / ${reactance})`,
    },
    {
      formula: "=OXYGEN.MOTOR_DIP(27,{45;15},0.15)",
      result: [[27 / 327], [27 / 127]],
      note: "On two sets whose data sheets state 0.15",
      source: "27 / (27 + 300) and 27 / (27 + 100)",
    },
    {
      formula: "=OXYGEN.MOTOR_DIP(OXYGEN.START_KVA(5.5,8.99),20,0.25)",
      result: 0.4532,
      tolerance: 0.0001,
      note: "More than what runs will stand: a larger set or a soft starter",
      source: "by hand: 5.5 / 0.7457 × 8.99 = 66.307; 66.307 / (66.307 + 80)",
    },
  ],
  seeAlso: ["START_KVA", "GENERATORS_NEEDED", "POWER_LOAD", "LINE_CURRENT"],
  caution:
    "Oxygen plants, monitors and ventilators on the same set may stop at a dip that a motor rides through. Start motors before patients depend on the set, one at a time; its maker and a licensed electrician say what it bears.",
};
