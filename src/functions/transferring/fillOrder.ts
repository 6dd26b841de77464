import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { litres, number } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { text } from "../../arguments/text";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
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
    // Any text may be a name, so whether the names have a header is told by the levels beside them.
    const headers = levels.length * levels[0]!.length - given.levels.length;
    const vesselNames = given.names?.slice(headers);
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

export const about: About = {
  rule: "vessels by level / capacity, emptiest first, ties by list order; fill = capacity − level while stock − keep covers fill × draw ratio, the last a part, then 0",
  range:
    "Lists of equal length, all with a header text or all without; a blank cell or a level above its capacity is #VALUE!. Every vessel has a row, also a full one or one the stock doesn't reach.",
  source: "Own planning default; draw ratio: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.FILL_ORDER({10;2;20},{20;20;40},40)",
      result: [
        ["vessel", "fill", "draw", "stock after"],
        [2, 18, 22.5, 17.5],
        [1, 10, 12.5, 5],
        [3, 4, 5, 0],
      ],
      note: "Shares 0.5, 0.1 and 0.5; the tie goes by the list, and the last gets a part fill",
    },
    {
      formula: '=OXYGEN.FILL_ORDER({0;30},{20;40},50,30,1.25,{"ward";"store"})',
      result: [
        ["vessel", "fill", "draw", "stock after"],
        ["ward", 16, 20, 30],
        ["store", 0, 0, 30],
      ],
      note: "30 L stay in the store",
    },
  ],
  seeAlso: ["FILLS_AVAILABLE", "GROSS_DRAW", "VESSEL_HOURS"],
  caution:
    "An order by need is the ward's to give; this one only looks at levels. Fill to the maker's mark, never past it, with trained people.",
};
