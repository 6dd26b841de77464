import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius } from "../../arguments/oxygenState";
import { gasLitres } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { gasRestated as restated } from "../../models/amounts";

export const args = cellArguments({
  gas: gasLitres,
  from_temperature: gasCelsius,
  to_temperature: gasCelsius.default(defaults.to_temperature),
});

/**
 * The same gas counted at another temperature: a normal or standard volume brought to the one that all functions use.
 *
 * @customfunction GAS_RESTATED
 * @param gas Gas as it is stated, at 101.325 kPa [L]
 * @param from_temperature Temperature at which it is stated: 0 for Nm³, 15, 20 or 21.1 by the trade [°C]
 * @param [to_temperature] Temperature at which it is wanted [°C]
 * @returns The same gas at that temperature and 101.325 kPa [L]
 */
export function gasRestated(gas: any[][], from_temperature: any[][], to_temperature?: any[][]): any[][] {
  return eachCell(args, [gas, from_temperature, to_temperature], (given) =>
    restated(given.gas, given.from_temperature, given.to_temperature),
  );
}

export const about: About = {
  gives: "gas",
  rule: "gas × (to temperature + 273.15) / (from temperature + 273.15), both at 101.325 kPa",
  range: `−40 to 60 °C; outside is #VALUE!. An ideal gas; real oxygen differs by at most 0.15 %. It restates a count, not the state in a vessel: see GAS_DENSITY for pressure. A flow is restated by the same ratio. Ask the supplier which temperature is meant: "Nm³" is mostly 0 °C, but not always. ${blankAsZero}`,
  source: "Law of Charles and Gay-Lussac, any textbook of physics; kelvin by the International System of Units",
  examples: [
    {
      formula: '=OXYGEN.GAS_RESTATED("1 m3",0)',
      result: 1077.4,
      tolerance: 0.3,
      note: "One Nm³ is 7.7 % more litres here",
      source:
        "A table of gases by mass (read): 1.4291 kg in a normal cubic metre at 0 °C, 0.03756 kg in a cubic foot at 70 °F; 1.4291/0.03756 × 28.3168",
    },
    {
      formula: "=OXYGEN.GAS_RESTATED({4300;4300},{15;20})",
      result: [[4391.02898], [4316.13508]],
      tolerance: 0.00001,
      source: "4300 × 294.25/288.15 and 4300 × 294.25/293.15",
    },
    {
      formula: "=OXYGEN.GAS_RESTATED(2942.5,21.1,0)",
      result: 2731.5,
      tolerance: 1e-9,
      note: "Litres of these functions as a supplier's normal litres",
      source: "2942.5 × 273.15/294.25",
    },
  ],
  seeAlso: ["CONVERT_AMOUNT", "GAS_FROM_LIQUID", "GAS_DENSITY"],
};
