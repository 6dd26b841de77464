import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { count, fuelPerDay, kilograms, kilowatts, litres, litresPerDay, sameUnit } from "../../arguments/quantity";
import { blankAsZero, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { table } from "../../arguments/range";
import { text } from "../../arguments/text";
import { invalid } from "../../cells/cellValues";
import { defaults, inWords } from "../../models/defaults";
import { exceeds } from "../../models/exceeds";
import { type Better, beatenBy, daysOfStock } from "../../models/options";

/** The tenth column, the loss, may be left out whole. */
const columnsWithoutLoss = 9;

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
    loss_per_day: litresPerDay.orBlank(),
  }).orWidth(columnsWithoutLoss),
  daily_need: litresPerDay.positive(),
});

const headings = [
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
];

/** Of mass, pallets, kW, fuel, supply, days, one-down and cost. */
const better: readonly Better[] = ["less", "less", "less", "less", "more", "more", "more", "less"];

/**
 * Options of supply side by side, and which of them another beats in everything.
 *
 * @customfunction OPTION_TABLE
 * @param options One row an option: name, mass kg, pallets, kW, fuel L/day, make L/day, stock L, cost/day, largest unit L/day, and if wanted the loss of the stock L/day
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
    const withLoss = options[0]!.length > columnsWithoutLoss;
    const unknown = withLoss && given.options.find((option) => option.loss_per_day === undefined);
    if (unknown) {
      return invalid(
        `options: the loss per day of "${unknown.name}" is blank; enter it for every option, or leave the whole column out`,
      );
    }
    const measures = given.options.map((option) => [
      option.mass,
      option.pallets,
      option.kw,
      option.fuel_per_day,
      option.make_per_day / given.daily_need,
      daysOfStock(option.stock, given.daily_need, option.loss_per_day ?? option.stock / defaults.empty_days.value),
      Math.max(0, option.make_per_day - option.largest_unit) / given.daily_need,
      option.cost_per_day,
    ]);
    const winners = beatenBy(measures, better);
    return [
      headings,
      ...given.options.map((option, row) => [option.name, ...measures[row]!, given.options[winners[row]!]?.name ?? ""]),
    ];
  });
}

const stockOf120 = 120 / (40 + 120 / defaults.empty_days.value);

export const about: About = {
  gives: ["text", "mass", "count", "power", "fuel a day", "fraction", "days", "fraction", "money a day", "text"],
  rule: "supply share = make / need; days of stock = stock / (need + loss); one-down share = (make − largest unit) / need; beaten by = first option at least as good in all eight measures and better in one",
  range: `Need above 0, in litres drawn (what reaches patients × draw ratio): GROSS_DRAW. The loss is what the filled stock loses to boil-off a day; without its column each stock is taken to be empty by itself in ${inWords(defaults.empty_days)}, the default of empty_days. ${emptyDaysOfOthers} Days of stock takes the loss as the same each day and nothing made; DAYS_UNTIL_EMPTY follows one vessel. Shares may pass 1. Fewer mass, pallets, kW, fuel and cost, and more supply, days and one-down are better. Strike out beaten options before weighing the rest. ${blankAsZero}`,
  source: "Pareto dominance, a rule of decision theory in common use; the rest is plain arithmetic of the stated rule",
  examples: [
    {
      formula:
        '=OXYGEN.OPTION_TABLE({"two plants",1800,4,12,96,72,120,300,36;"one plant",900,2,6,48,36,60,160,36;"old pair",2000,5,12,96,72,120,320,36},40)',
      result: [
        headings,
        ["two plants", 1800, 4, 12, 96, 1.8, stockOf120, 0.9, 300, ""],
        ["one plant", 900, 2, 6, 48, 0.9, 60 / (40 + 60 / defaults.empty_days.value), 0, 160, ""],
        ["old pair", 2000, 5, 12, 96, 1.8, stockOf120, 0.9, 320, "two plants"],
      ],
      note: "The old pair is heavier and dearer and better in nothing",
      source: "72/40, 36/40; 120/(40 + 120/empty_days), 60/(40 + 60/empty_days); (72 − 36)/40, (36 − 36)/40",
    },
    {
      formula: '=OXYGEN.OPTION_TABLE({"plant",950,2,7,50,45,90,170,45,5;"tank",700,1,0,0,0,220,410,0,4},40)',
      result: [headings, ["plant", 950, 2, 7, 50, 1.125, 2, 0, 170, ""], ["tank", 700, 1, 0, 0, 0, 5, 0, 410, ""]],
      note: "With losses of 5 and 4 L/day: 90/(40 + 5) and 220/(40 + 4) days",
      source: "Plain arithmetic of the stated rule",
    },
  ],
  seeAlso: ["BEATEN_BY", "OPTION_SCORE", "ONE_UNIT_DOWN", "COST_PER_DAY", "GROSS_DRAW"],
  caution:
    "Figures to compare with. An option that can't meet the need with its largest unit down needs stock or cylinders behind it; clinicians and engineers decide together.",
};
