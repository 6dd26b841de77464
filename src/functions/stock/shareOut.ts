import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { sameLength, tableArguments, wholeTable } from "../../arguments/eachCell";
import { namesBeside } from "../../arguments/namesBeside";
import { sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { text } from "../../arguments/text";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid, noAnswer } from "../../cells/cellValues";
import { shareEvenly, shareLots } from "../../models/shareOut";
import { cutDownThings } from "../../models/wholeNumbers";

export const args = tableArguments({
  supply: sameUnit,
  stocks: column(sameUnit),
  daily_uses: column(sameUnit),
  names: list(text).mayBeOmitted(),
  lot: sameUnit.positive().mayBeOmitted(),
});

/** More lots than anybody hands out one by one. */
const mostLots = 10000;

/**
 * Share a supply out between sites so that those that run out first are served first, until all last equally long. Any
 * one unit will do: litres, cylinders, kilograms.
 *
 * @customfunction SHARE_OUT
 * @param supply What is to hand for all sites together, in any one unit
 * @param stocks What each site holds now, one column or one row, in the same unit
 * @param daily_uses What each site uses a day, in the same order and unit; of liquid as drawn, with what boils away
 * @param [names] Name of each site, in the same order; its number in the list where omitted
 * @param [lot] Size of a lot that can't be parted, such as 1 cylinder, in the same unit
 * @returns Table of one row a site: site, share, days after
 */
export function shareOut(
  supply: any[][],
  stocks: any[][],
  daily_uses: any[][],
  names?: any[][],
  lot?: any[][],
): any[][] {
  return wholeTable(args, [supply, stocks, daily_uses, names, lot], (given) => {
    const siteNames = namesBeside(given.names, stocks, sameUnit, given.stocks);
    const unequal = sameLength({ stocks: given.stocks, daily_uses: given.daily_uses, names: siteNames });
    if (unequal) return unequal;
    const sites = given.stocks.map((stock, index) => ({ stock, dailyUse: given.daily_uses[index]! }));
    if (given.lot !== undefined && cutDownThings(given.supply / given.lot) > mostLots)
      return invalid(
        `lot is so small that supply holds more than ${mostLots} of them; enter a larger lot or leave it out`,
      );
    const shares =
      given.lot === undefined ? shareEvenly(given.supply, sites) : shareLots(given.supply, given.lot, sites);
    if (!shares) return noAnswer("no site uses anything a day, so nothing says who needs it; check daily_uses");
    return [
      ["site", "share", "days after"],
      ...sites.map(({ stock, dailyUse }, index) => [
        siteNames?.[index] ?? index + 1,
        shares[index]!,
        dailyUse > 0 ? (stock + shares[index]!) / dailyUse : "",
      ]),
    ];
  });
}

export const about: About = {
  gives: ["text", "amount", "days"],
  rule: "share = max(0, days × daily use − stock), with the days at which the shares make up the supply; with a lot, whole lots one after the other to the site with the fewest days, ties by list order",
  range: `Amounts 0 or more in one unit, lists of equal length with a heading or without. A site with no use gets nothing and its days are empty; what is left under a lot stays in the supply; no site using anything is #N/A. ${blankAsZero}`,
  source:
    "Max-min fair sharing: Bertsekas & Gallager, Data Networks, 2nd ed., section 6.5.2 (from memory); days as the measure: common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.SHARE_OUT(90,{12;60;20},{6;10;8},{"Ridge";"Harbour";"Mill"})',
      result: [
        ["site", "share", "days after"],
        ["Ridge", 6 * (182 / 24) - 12, 182 / 24],
        ["Harbour", 10 * (182 / 24) - 60, 182 / 24],
        ["Mill", 8 * (182 / 24) - 20, 182 / 24],
      ],
      note: "All three last equally long",
      source: "(90 + 12 + 60 + 20) / (6 + 10 + 8) = 182 / 24 days",
    },
    {
      formula: "=OXYGEN.SHARE_OUT(30,{12;90;20},{6;10;8})",
      result: [
        ["site", "share", "days after"],
        [1, 6 * (62 / 14) - 12, 62 / 14],
        [2, 0, 9],
        [3, 8 * (62 / 14) - 20, 62 / 14],
      ],
      note: "The second lasts nine days as it is and gets nothing",
      source: "(30 + 12 + 20) / (6 + 8) = 62 / 14 days, under 90 / 10",
    },
    {
      formula: "=OXYGEN.SHARE_OUT(7,{3;4},{2;3},,1)",
      result: [
        ["site", "share", "days after"],
        [1, 3, 3],
        [2, 4, 8 / 3],
      ],
      note: "Whole cylinders, one by one to the site with the fewest days; evenly it would be 2.6 and 4.4",
      source: "Days of both before each cylinder: 3/2 4/3, 3/2 5/3, 4/2 5/3, 4/2 6/3, 5/2 6/3, 5/2 7/3, 5/2 8/3",
    },
  ],
  seeAlso: ["DAYS_OF_SUPPLY", "PLANS_TOGETHER", "FILL_ORDER", "DELIVERY_DATES"],
  caution:
    "It shares by days alone: who is sickest, who can be moved and how long a road takes are for people to decide. Count every site's stock on the same day.",
};
