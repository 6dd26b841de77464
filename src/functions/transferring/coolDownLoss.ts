import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { metal as metalWord } from "../../arguments/metal";
import { metalCelsius } from "../../arguments/oxygenState";
import { fraction, kilograms } from "../../arguments/quantity";
import { coolDownLoss as lossOf } from "../../models/metals";

export const args = cellArguments({
  metal_mass: kilograms,
  metal: metalWord,
  start_temperature: metalCelsius.default(defaults.start_temperature),
  vapour_use: fraction.default(defaults.vapour_use),
});

/**
 * Oxygen that boils off to cool a warm vessel, hose or fitting down before liquid stays in it.
 *
 * @customfunction COOL_DOWN_LOSS
 * @param metal_mass Metal that the liquid cools, such as the inner vessel and the hose [kg]
 * @param metal What it is made of: stainless, aluminium or copper
 * @param [start_temperature] Temperature of the metal before [°C]
 * @param [vapour_use] Share of the vapour's cold that cools metal too, from 0 for latent heat only to 1 for all of it
 * @returns Oxygen boiled off [kg]
 */
export function coolDownLoss(
  metal_mass: any[][],
  metal: any[][],
  start_temperature?: any[][],
  vapour_use?: any[][],
): any[][] {
  return eachCell(args, [metal_mass, metal, start_temperature, vapour_use], (given) =>
    lossOf(given.metal_mass, given.metal, given.start_temperature, given.vapour_use),
  );
}

export const about: About = {
  gives: "mass",
  rule: "metal mass × ∫ c dT / (heat of vaporisation + vapour use × (enthalpy of vapour at T − of saturated vapour)), from the boiling point at 1 atm to the start temperature",
  range:
    "Metal up to 60 °C, warmer is #VALUE!; at or below −183 °C nothing boils. Specific heats within 5 %. Vapour use 0 is the most oxygen, 1 the least. Properties are those of pure oxygen.",
  source:
    "Heat balance; specific heats: NIST Cryogenic Material Properties (304 stainless, 6061-T6 aluminium, copper); properties: Schmidt & Wagner 1985",
  examples: [
    {
      formula: '=OXYGEN.COOL_DOWN_LOSS(10,"stainless")',
      result: 3.8,
      tolerance: 0.12,
      source: "NIST polynomial integrated and divided by 213 kJ/kg, evaluated independently: 0.380 kg/kg",
    },
    {
      formula: '=OXYGEN.COOL_DOWN_LOSS(10,"aluminum",21.1,1)',
      result: 5.15,
      tolerance: 0.12,
      note: "All the cold of the vapour used",
      source: "NIST polynomial and vapour enthalpies, evaluated independently: 0.515 kg/kg",
    },
    {
      formula: '=OXYGEN.COOL_DOWN_LOSS(10,"copper",-183)',
      result: 0,
      note: "Already cold",
      source: "By the rule: below the boiling point at 1 atm there is nothing to cool",
    },
  ],
  seeAlso: ["ESTIMATED_DRAW", "FLASH_LOSS", "LIQUID_FROM_MASS"],
  caution:
    "The gas of a cool-down comes fast and cold: fill slowly, stay clear of the vent, keep the place ventilated, and follow the maker's manual.",
};
