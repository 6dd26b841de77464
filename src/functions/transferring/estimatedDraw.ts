import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { metal as metalWord } from "../../arguments/metal";
import { metalCelsius, liquidGauge } from "../../arguments/oxygenState";
import { fraction, kilograms, litres } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { coolDownLoss, estimatedDraw as drawFor } from "../../models/metals";

export const args = cellArguments({
  net_fill: litres.as("net liquid"),
  from_pressure: liquidGauge,
  metal_mass: kilograms,
  metal: metalWord,
  start_temperature: metalCelsius.default(defaults.start_temperature),
  to_pressure: liquidGauge.default(defaults.to_pressure),
  vapour_use: fraction.default(defaults.vapour_use),
});

/**
 * Liquid that must be drawn for a fill, reckoned from what flashes off and what cools the metal.
 *
 * @customfunction ESTIMATED_DRAW
 * @param net_fill Liquid that ends up in the vessel [L]
 * @param from_pressure Pressure of the store, gauge [bar]
 * @param metal_mass Warm metal that the liquid cools, 0 for a cold vessel and hose [kg]
 * @param metal What it is made of: stainless, aluminium or copper
 * @param [start_temperature] Temperature of the metal before [°C]
 * @param [to_pressure] Pressure of the vessel while it is filled, gauge [bar]
 * @param [vapour_use] Share of the vapour's cold that cools metal too, from 0 for latent heat only to 1 for all of it
 * @returns Liquid drawn from the store [L]
 */
export function estimatedDraw(
  net_fill: any[][],
  from_pressure: any[][],
  metal_mass: any[][],
  metal: any[][],
  start_temperature?: any[][],
  to_pressure?: any[][],
  vapour_use?: any[][],
): any[][] {
  return eachCell(
    args,
    [net_fill, from_pressure, metal_mass, metal, start_temperature, to_pressure, vapour_use],
    (given) =>
      exceeds(given.to_pressure, given.from_pressure)
        ? invalid(
            `to_pressure of ${formatNumber(given.to_pressure)} bar is above from_pressure of ${formatNumber(given.from_pressure)} bar; liquid doesn't flow to a higher pressure: check which is which`,
          )
        : drawFor(
            given.net_fill,
            given.from_pressure,
            given.to_pressure,
            coolDownLoss(given.metal_mass, given.metal, given.start_temperature, given.vapour_use),
          ),
  );
}

export const about: About = {
  gives: "gross liquid",
  rule: "((net fill × density at the end + cool-down) / (1 − flash)) / density at the start",
  range: `Bar gauge; 0.5 to 25 bar absolute; metal up to 60 °C; outside is #VALUE!, as is an end pressure above the store's. Leaks, venting to keep the flow going and a long hose come on top, so compare with your own weights. Cool-down is reckoned at 1 atm. ${gaugeAtAltitude} Properties are those of pure oxygen.`,
  source:
    "Mass and heat balance; properties: Schmidt & Wagner 1985; specific heats: NIST Cryogenic Material Properties",
  examples: [
    {
      formula: '=OXYGEN.ESTIMATED_DRAW(20,"22 psi",6,"stainless")',
      result: 25,
      tolerance: 0.3,
      note: "The rule of thumb: about 25 L drawn for 20 L into a warm vessel with 6 kg of inner metal",
      source: "common practice, no source; by hand (20 × 1.1412 + 6 × 0.380)/(1 − 0.0790)/1.0911 = 24.98",
    },
    {
      formula: '=OXYGEN.ESTIMATED_DRAW(20.88129,"35 psi",0,"stainless")',
      result: 25,
      tolerance: 0.002,
      note: "Cold vessel: flash alone",
      source: "Schmidt & Wagner 1985, mass balance evaluated independently",
    },
    {
      formula: '=OXYGEN.ESTIMATED_DRAW(1.2,"22 psi",0.7,"stainless",35,"5 psi",0.5)',
      result: 1.5378,
      tolerance: 0.01,
      note: "A small portable vessel takes 1.28 times its fill even with half the cold of the vapour used",
      source: "Schmidt & Wagner 1985 and the NIST polynomial of 304 stainless, evaluated independently",
    },
  ],
  seeAlso: ["GROSS_DRAW", "DRAW_RATIO", "FLASH_LOSS", "COOL_DOWN_LOSS"],
  caution: "An estimate. Warm fills vent hard: fill slowly and by the maker's manual, with the protection it asks for.",
};
