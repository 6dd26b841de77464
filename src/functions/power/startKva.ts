import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, kilowatts, kvaPerHorsepower } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { startKva as kvaAtStart } from "../../models/electricity";

export const args = cellArguments({
  motor_kw: kilowatts,
  code_letter_kva_per_hp: kvaPerHorsepower.positive(),
  voltage_dip: fraction.fromToBelow(0, 1).default(defaults.voltage_dip),
});

/**
 * Apparent power a motor draws in the moment it starts straight on the line.
 *
 * @customfunction START_KVA
 * @param motor_kw Power on the motor's rating plate [kW]
 * @param code_letter_kva_per_hp Upper figure of the code letter on the plate, such as 8.99 for K [kVA/hp]
 * @param [voltage_dip] Share by which the voltage dips as it starts
 * @returns Apparent power at start [kVA]
 */
export function startKva(motor_kw: any[][], code_letter_kva_per_hp: any[][], voltage_dip?: any[][]): any[][] {
  return eachCell(args, [motor_kw, code_letter_kva_per_hp, voltage_dip], (given) =>
    kvaAtStart(given.motor_kw, given.code_letter_kva_per_hp, given.voltage_dip),
  );
}

export const about: About = {
  gives: "apparent power",
  rule: "kW / 0.7457 × kVA per horsepower × (1 − dip)²",
  range: `Dip from 0 to under 1. Straight-on-line start with the rotor at rest; soft starters and frequency drives draw far less. Code letters, upper figures: G 6.29, H 7.09, J 7.99, K 8.99, L 9.99, M 11.19. ${blankAsZero}`,
  source:
    "NEC (NFPA 70) table 430.7(B), locked-rotor kVA per horsepower; starting kVA falls with the square of the voltage; 1 hp = 0.745 699 87 kW (NIST SP 811)",
  examples: [
    {
      formula: '=OXYGEN.START_KVA("3 hp",8.99)',
      result: 26.97,
      source: "NEC table 430.7(B), letter K: 3 × 8.99",
      note: "Three horsepower, code letter K",
    },
    {
      formula: '=OXYGEN.START_KVA("3 hp",8.99,0.3)',
      result: 13.2153,
      note: "With the voltage down by 30 %",
      source: "26.97 × 0.7²",
    },
  ],
  seeAlso: ["MOTOR_DIP", "POWER_LOAD", "GENERATORS_NEEDED", "LINE_CURRENT"],
  caution:
    "A generator too small to start a motor can stall with everything on it, oxygen plants and ventilators too. Ask its maker which motor it can start; a licensed electrician checks the set before patients depend on it.",
};
