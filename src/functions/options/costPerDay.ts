import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days, sameUnit } from "../../arguments/quantity";
import { costPerDay as moneyPerDay } from "../../models/options";

export const args = cellArguments({
  buy: sameUnit,
  life_days: days.positive(),
  running: sameUnit,
  crew: sameUnit.default(defaults.crew),
});

/**
 * Cost of an option for each day of its life, in whatever money is used throughout.
 *
 * @customfunction COST_PER_DAY
 * @param buy Price, with carriage and setting up
 * @param life_days Days it will serve [days]
 * @param running Fuel, parts and service a day
 * @param [crew] Pay of the people who run it a day
 * @returns Cost [money/day]
 */
export function costPerDay(buy: any[][], life_days: any[][], running: any[][], crew?: any[][]): any[][] {
  return eachCell(args, [buy, life_days, running, crew], (given) =>
    moneyPerDay(given.buy, given.life_days, given.running, given.crew),
  );
}

export const about: About = {
  gives: "money a day",
  rule: "buy / life + running + crew",
  range: `Life above 0. One currency throughout; no interest and no resale value. The crew is not counted where it is left out. ${blankAsZero}`,
  source: "Plain arithmetic (straight-line depreciation)",
  examples: [
    {
      formula: "=OXYGEN.COST_PER_DAY(73000,3650,45,100)",
      result: 165,
      note: "20 a day for the plant, 45 to run it, 100 for its crew",
      source: "73000 / 3650 + 45 + 100",
    },
    {
      formula: "=OXYGEN.COST_PER_DAY(9000,90,30)",
      result: 130,
      note: "A mission of three months",
      source: "9000 / 90 + 30",
    },
  ],
  seeAlso: ["BREAK_EVEN_DAYS", "OPTION_TABLE"],
};
