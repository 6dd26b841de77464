import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { amountUnit } from "../../arguments/amountUnit";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, pureOxygenGas } from "../../arguments/oxygenState";
import { sameUnit } from "../../arguments/quantity";
import { convertAmount as convert } from "../../models/amounts";

export const args = cellArguments({
  amount: sameUnit,
  from: amountUnit,
  to: amountUnit,
  gas_temperature: gasCelsius.default(defaults.gas_temperature),
});

/**
 * The same amount of oxygen stated as liquid, gas or mass. Liquid boils at 1 atm, gas is at 1 atm and a temperature.
 *
 * @customfunction CONVERT_AMOUNT
 * @param amount Amount, as a bare number
 * @param from What it is stated in: liquid L, liquid gal, gas L, gas m3, gas ft3, kg or lb
 * @param to What is wanted: liquid L, liquid gal, gas L, gas m3, gas ft3, kg or lb
 * @param [gas_temperature] Temperature to which the gas is referred [°C]
 * @returns Amount in the unit asked for
 */
export function convertAmount(amount: any[][], from: any[][], to: any[][], gas_temperature?: any[][]): any[][] {
  return eachCell(args, [amount, from, to, gas_temperature], (given) =>
    convert(given.amount, given.from, given.to, given.gas_temperature),
  );
}

export const about: About = {
  gives: "amount",
  rule: "amount × kilograms in one of the first unit / kilograms in one of the second",
  range: `Gas at −40 to 60 °C, outside is #VALUE!. The gallon is the US gallon. A bare L or m3 is refused: say liquid or gas, which differ some 860 times. Some trades refer gas to 0, 15 or 20 °C: give that temperature; GAS_RESTATED goes from one to another. ${pureOxygenGas}`,
  source:
    "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen); NIST SP 811 (2008), appendix B.8, for the units",
  examples: [
    {
      formula: '=OXYGEN.CONVERT_AMOUNT(1,"liquid L","gas m3")',
      result: 0.861,
      tolerance: 0.001,
      source: "International Fire Code 2018, table G101.2",
    },
    {
      formula: '=OXYGEN.CONVERT_AMOUNT(100,"gas ft3",{"lb","liquid gal"})',
      result: [[8.281, 0.869]],
      tolerance: 0.004,
      source: "International Fire Code 2018, table G101.2",
    },
    {
      formula: '=OXYGEN.CONVERT_AMOUNT(1,"lb","gas m3")',
      result: 0.342,
      tolerance: 0.0005,
      source: "International Fire Code 2018, table G101.2",
    },
    {
      formula: '=OXYGEN.CONVERT_AMOUNT(10,"L","kg")',
      result: { error: "#VALUE!", words: 'from is "L"' },
      note: "Liquid or gas?",
      source: "The units it takes",
    },
    {
      formula: '=OXYGEN.CONVERT_AMOUNT(25,"liquid L","gas m3",0)',
      result: 19.96406,
      tolerance: 0.002,
      note: "As a trade counts it that refers gas to 0 °C",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["GAS_RESTATED", "GAS_FROM_LIQUID", "LIQUID_FROM_GAS", "LIQUID_MASS"],
};
