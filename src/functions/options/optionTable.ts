import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { count, fuelPerDay, kilograms, kilowatts, litres, litresPerDay, sameUnit } from "../../arguments/quantity";
import { table } from "../../arguments/range";
import { text } from "../../arguments/text";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { type Better, beatenBy } from "../../models/options";

export const args = tableArguments({
  options: table({
    name: text,
    mass: kilograms,
    pallets: count,
    kw: kilowatts,
    fuel_per_day: fuelPerDay,
    make_per_day: litresPerDay,
    stock: litres,
    cost_per_day: sameUnit,
    largest_unit: litresPerDay,
  }),
  daily_need: litresPerDay.positive(),
});

/** Of mass, pallets, kW, fuel, supply, days, one-down and cost. */
const better: readonly Better[] = ["less", "less", "less", "less", "more", "more", "more", "less"];

/**
 * Options of supply side by side, and which of them another beats in everything.
 *
 * @customfunction OPTION_TABLE
 * @param options One row an option: name, mass kg, pallets, kW, fuel L/day, make L/day, stock L, cost/day, largest unit L/day
 * @param daily_need Liquid drawn a day [L/day]
 * @returns Option, mass, pallets, kW, fuel/day, supply share, days of stock, one-down share, cost/day and the option that beats it
 */
export function optionTable(options: any[][], daily_need: any[][]): any[][] {
  return wholeTable(args, [options, daily_need], (given) => {
    const wrong = given.options.find((option) => exceeds(option.largest_unit, option.make_per_day));
    if (wrong) {
      return invalid(
        `options: the largest unit of "${wrong.name}" makes ${formatNumber(wrong.largest_unit)} L/day, more than the whole option's ${formatNumber(wrong.make_per_day)} L/day`,
      );
    }
    const measures = given.options.map((option) => [
      option.mass,
      option.pallets,
      option.kw,
      option.fuel_per_day,
      option.make_per_day / given.daily_need,
      option.stock / given.daily_need,
      Math.max(0, option.make_per_day - option.largest_unit) / given.daily_need,
      option.cost_per_day,
    ]);
    const winners = beatenBy(measures, better);
    return [
      [
        "option",
        "mass",
        "pallets",
        "kW",
        "fuel/day",
        "supply share",
        "days of stock",
        "one-down share",
        "cost/day",
        "beaten by",
      ],
      ...given.options.map((option, row) => [option.name, ...measures[row]!, given.options[winners[row]!]?.name ?? ""]),
    ];
  });
}

export const about: About = {
  rule: "supply share = make / need; days of stock = stock / need; one-down share = (make − largest unit) / need; beaten by = first option at least as good in all eight measures and better in one",
  range:
    "Need above 0, in litres drawn (what reaches patients × draw ratio). Shares may pass 1. Fewer mass, pallets, kW, fuel and cost, and more supply, days and one-down are better. Strike out beaten options before weighing the rest.",
  source: "Pareto dominance, a rule of decision theory in common use; the rest is plain arithmetic",
  examples: [
    {
      formula:
        '=OXYGEN.OPTION_TABLE({"two plants",1800,4,12,96,72,120,300,36;"one plant",900,2,6,48,36,60,160,36;"old pair",2000,5,12,96,72,120,320,36},40)',
      result: [
        [
          "option",
          "mass",
          "pallets",
          "kW",
          "fuel/day",
          "supply share",
          "days of stock",
          "one-down share",
          "cost/day",
          "beaten by",
        ],
        ["two plants", 1800, 4, 12, 96, 1.8, 3, 0.9, 300, ""],
        ["one plant", 900, 2, 6, 48, 0.9, 1.5, 0, 160, ""],
        ["old pair", 2000, 5, 12, 96, 1.8, 3, 0.9, 320, "two plants"],
      ],
      note: "The old pair is heavier and dearer and better in nothing",
    },
  ],
  seeAlso: ["BEATEN_BY", "OPTION_SCORE", "ONE_UNIT_DOWN", "COST_PER_DAY", "GROSS_DRAW"],
  caution:
    "Figures to compare with. An option that can't meet the need with its largest unit down needs stock or cylinders behind it; clinicians and engineers decide together.",
};
