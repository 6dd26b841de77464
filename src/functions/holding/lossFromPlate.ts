import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres, shareADay } from "../../arguments/quantity";
import { choice } from "../../arguments/text";
import { oxygenPerNitrogenLoss } from "../../models/holding";

export const args = cellArguments({
  capacity: litres.positive(),
  share_a_day: shareADay,
  stated_for: choice(["oxygen", "nitrogen"]).default(defaults.stated_for),
});

/**
 * Standing loss of a vessel in litres of oxygen a day from the share that its plate states, which is often one of nitrogen.
 *
 * @customfunction LOSS_FROM_PLATE
 * @param capacity Liquid the vessel holds when full [L]
 * @param share_a_day Share of the capacity lost a day, as the plate states it [1/day]
 * @param [stated_for] Liquid that the plate's share is of: oxygen or nitrogen
 * @returns Standing loss of oxygen [L/day]
 */
export function lossFromPlate(capacity: any[][], share_a_day: any[][], stated_for?: any[][]): any[][] {
  return eachCell(
    args,
    [capacity, share_a_day, stated_for],
    (given) => given.capacity * given.share_a_day * (given.stated_for === "nitrogen" ? oxygenPerNitrogenLoss : 1),
  );
}

export const about: About = {
  gives: "liquid a day",
  rule: `capacity × share a day; of a share stated for nitrogen × ${oxygenPerNitrogenLoss}`,
  range:
    "Capacity and share above 0; 1.5 % is 0.015 or 1.5%, and a bare number above 0.2 is #VALUE!. From nitrogen the true loss may be up to 6 % larger. A plate states a new vessel with a sound vacuum, standing still and full, at sea level: use, shaking and age add to it, so weigh for LOSS_FROM_READINGS.",
  source:
    "Heat to boil a litre of nitrogen over one of oxygen at 1 atm, 0.6603, times their distances from 300 K, 0.9424: Span et al. 2000, J. Phys. Chem. Ref. Data 29:1361; Schmidt & Wagner 1985",
  examples: [
    { formula: "=OXYGEN.LOSS_FROM_PLATE(180,0.015)", result: 2.7, source: "180 × 0.015" },
    {
      formula: '=OXYGEN.LOSS_FROM_PLATE(180,"1.5 %/day","nitrogen")',
      result: 1.6794,
      tolerance: 0.001,
      note: "A plate that states nitrogen: oxygen boils slower",
      source: "180 × 0.015 × 0.6603 × 0.9424",
    },
    {
      formula: "=OXYGEN.LOSS_FROM_PLATE(180,1.5)",
      result: { error: "#VALUE!", words: "looks like a percent" },
      source: "By the rule: 1.5 times its content a day is no vessel",
    },
  ],
  seeAlso: ["DAILY_LOSS", "LOSS_FROM_READINGS", "HEAT_LEAK", "VESSEL_HOURS"],
  caution:
    "A loss above the plate's, or frost on the outside, may be a failing vacuum: take the vessel out of use and ask the maker or a licensed service.",
};
