import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { namesBeside } from "../../arguments/namesBeside";
import { litres, number } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { text } from "../../arguments/text";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { fillOrder as orderOf } from "../../models/transferring";

export const args = tableArguments({
  levels: column(litres),
  capacities: column(litres.positive()),
  stock: litres,
  keep: litres.default(defaults.keep),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
  names: list(text).mayBeOmitted(),
});

/**
 * In which order to fill several vessels from a limited stock, the emptiest share first, and how much each gets.
 *
 * @customfunction FILL_ORDER
 * @param levels Liquid in each vessel now, one column or one row [L]
 * @param capacities Liquid each vessel holds when full, in the same order [L]
 * @param stock Liquid in the store [L]
 * @param [keep] Liquid that stays in the store [L]
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @param [names] Name of each vessel, in the same order; its number in the list where omitted
 * @returns Table of one row a vessel in order of filling: vessel, fill, draw, stock after [L]
 */
export function fillOrder(
  levels: any[][],
  capacities: any[][],
  stock: any[][],
  keep?: any[][],
  draw_ratio?: any[][],
  names?: any[][],
): any[][] {
  return wholeTable(args, [levels, capacities, stock, keep, draw_ratio, names], (given) => {
    const vesselNames = namesBeside(given.names, levels, litres, given.levels);
    const unequal = sameLength({ levels: given.levels, capacities: given.capacities, names: vesselNames });
    if (unequal) return unequal;
    const nameOf = (index: number): string | number => vesselNames?.[index] ?? index + 1;
    for (let index = 0; index < given.levels.length; index++) {
      const of = ` of vessel ${nameOf(index)} in levels`;
      const wrong = levelAboveCapacity(given.levels[index]!, given.capacities[index]!, of);
      if (wrong) return wrong;
    }
    const turns = orderOf(given.levels, given.capacities, given.stock, given.keep, given.draw_ratio);
    return [
      ["vessel", "fill", "draw", "stock after"],
      ...turns.map(({ index, fill, draw, stockAfter }) => [nameOf(index), fill, draw, stockAfter]),
    ];
  });
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: ["text", "net liquid", "gross liquid", "liquid"],
  rule: "vessels by level / capacity, emptiest first, ties by list order; fill = capacity − level while stock − keep covers fill × draw ratio, the last a part, then 0",
  range: `Lists of equal length, each with a heading or without; a blank cell between filled ones or a level above its capacity is #VALUE!. Every vessel has a row, also a full one or one the stock doesn't reach. ${drawRatioOfPortables}`,
  source: "Own planning default; draw ratio: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.FILL_ORDER({10;2;20},{20;20;40},43)",
      result: [
        ["vessel", "fill", "draw", "stock after"],
        [2, 18, 18 * ratio, 43 - 18 * ratio],
        [1, 10, 10 * ratio, 43 - 28 * ratio],
        [3, (43 - 28 * ratio) / ratio, 43 - 28 * ratio, 0],
      ],
      note: "The tie goes by the list, and the last gets a part fill",
      source: `Shares 0.5, 0.1 and 0.5; drawn 18 and 10 L × ${ratio}, then what is left`,
    },
    {
      formula: '=OXYGEN.FILL_ORDER({0;30},{20;40},50,30,1.6,{"ward";"store"})',
      result: [
        ["vessel", "fill", "draw", "stock after"],
        ["ward", 12.5, 20, 30],
        ["store", 0, 0, 30],
      ],
      note: "30 L stay in the store",
      source: "20 L are left to draw: 20 / 1.6 = 12.5 L",
    },
  ],
  seeAlso: ["FILLS_AVAILABLE", "GROSS_DRAW", "VESSEL_HOURS"],
  caution:
    "An order by need is the ward's to give; this one only looks at levels. Fill to the maker's mark, never past it, with trained people.",
};
