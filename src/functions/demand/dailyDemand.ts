import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { fraction, hours as hourCount, litresPerMinute, sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { dailyGas, demandFlow } from "../../models/demand";

export const args = cellArguments({
  counts: list(sameUnit),
  flows: list(litresPerMinute),
  hours: hourCount.between(0, 24).default(defaults.hours),
  use_share: fraction.default(defaults.use_share),
});

/**
 * Oxygen gas that patients or beds of several kinds use in a day.
 *
 * @customfunction DAILY_DEMAND
 * @param counts How many there are of each kind; an average may have decimals
 * @param flows Flow of one of each kind, in the same order [L/min]
 * @param [hours] Hours of the day that the flow runs [h]
 * @param [use_share] Share of them in use at once
 * @returns Oxygen gas a day [L/day]
 */
export function dailyDemand(counts: any[][], flows: any[][], hours?: any[][], use_share?: any[][]): any[][] {
  return eachCell(
    args,
    [counts, flows, hours, use_share],
    (given) =>
      sameLength({ counts: given.counts, flows: given.flows }) ??
      dailyGas(demandFlow(given.counts, given.flows, given.use_share), given.hours),
  );
}

export const about: About = {
  gives: "gas a day",
  rule: "Σ (count × flow) × 60 × hours × use share",
  range: `Counts and flows 0 or more, one flow for each count; hours 0 to 24. Gas litres at 21.1 °C and 101.325 kPa. Leaks, purging and what a vessel boils off are not in it. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.DAILY_DEMAND({75;25},{10;30})",
      result: 1500 * 60 * defaults.hours.value,
      note: "A hundred beds, 75 severe and 25 critical, day and night: 2160 m³",
      source: "(75 × 10 + 25 × 30) × 60 × hours",
    },
    {
      formula: "=OXYGEN.DAILY_DEMAND(1,10)",
      result: 14400,
      note: "One severe patient",
      source: "WHO interim guidance of 4 April 2020 (read second hand): 14,400 L a day",
    },
    {
      formula: "=OXYGEN.DAILY_DEMAND({6;2},{5;15},12,50%)",
      result: 21600,
      note: "Half of them at a time, 12 h a day",
      source: "60 × 60 × 12 × 0.5",
    },
  ],
  seeAlso: ["DEMAND_FLOW", "DEMAND_TABLE", "LIQUID_FROM_GAS", "PLANNED_FLOW"],
  caution: "A planning figure; the clinician decides what each patient gets. Keep a reserve for leaks and surges.",
};
