import { breakEvenDays } from "../../../src/functions/options/breakEvenDays";
import { costPerDay } from "../../../src/functions/options/costPerDay";
import { enoughUnitsChance } from "../../../src/functions/options/enoughUnitsChance";
import { oneUnitDown } from "../../../src/functions/options/oneUnitDown";
import { optionScore } from "../../../src/functions/options/optionScore";
import { optionTable } from "../../../src/functions/options/optionTable";
import { supplyChance } from "../../../src/functions/options/supplyChance";
import { checkLimits, type Limit } from "../checkLimits";

const money = (argument: string): Limit => ({ argument, low: 0, high: "open", why: "a cost is never negative" });
const share = (argument: string): Limit => ({ argument, low: 0, high: 1, why: "never to always" });

checkLimits(
  "COST_PER_DAY",
  costPerDay,
  ["buy", "life_days", "running", "crew"],
  [900, 90, 30, 10],
  [
    money("buy"),
    { argument: "life_days", low: 0, high: "open", why: "what is bought serves a while", endsOut: "low" },
    money("running"),
    money("crew"),
  ],
);
checkLimits(
  "BREAK_EVEN_DAYS",
  breakEvenDays,
  ["fixed_a", "daily_a", "fixed_b", "daily_b"],
  [900, 4, 600, 9],
  [money("fixed_a"), money("daily_a"), money("fixed_b"), money("daily_b")],
);
checkLimits(
  "ENOUGH_UNITS_CHANCE",
  enoughUnitsChance,
  ["units", "needed", "availability"],
  [5, 3, 0.9],
  [share("availability")],
);
checkLimits(
  "ONE_UNIT_DOWN",
  oneUnitDown,
  ["unit_outputs", "need"],
  [36, 30],
  [
    { argument: "unit_outputs", low: 0, high: "open", why: "a unit takes nothing" },
    { argument: "need", low: 0, high: "open", why: "a share of no need is nothing", endsOut: "low" },
  ],
);
checkLimits(
  "SUPPLY_CHANCE",
  supplyChance,
  ["unit_outputs", "availabilities", "need"],
  [36, 0.9, 30],
  [
    { argument: "unit_outputs", low: 0, high: "open", why: "a unit takes nothing" },
    share("availabilities"),
    { argument: "need", low: 0, high: "open", why: "no need is met by any" },
  ],
);
checkLimits(
  "OPTION_SCORE",
  optionScore,
  ["measures", "better", "weights"],
  [5, "more", 1],
  [{ argument: "weights", low: 0, high: "open", why: "all weights 0 would weigh nothing", endsOut: "low" }],
);

const option: readonly unknown[] = ["twin", 2000, 4, 14, 110, 90, 200, 410, 45, 25];
const cells = ["name", "mass", "pallets", "kw", "fuel per day", "make per day", "stock", "cost per day"];

test.each(cells.slice(1).map((name, index) => [name, index + 1] as const))(
  "OPTION_TABLE: %s is 0 or more",
  (name, column) => {
    const answer = (value: number): any =>
      optionTable([option.map((each, at) => (at === column ? value : each))], [[60]])[0]![0];
    expect(answer(-1)).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining(`options row 1, ${name} must be 0`),
    });
    // The make rate can't be below that of its largest unit.
    expect(answer(column === 5 ? 45 : 0)).toBe("option");
  },
);
test("OPTION_TABLE: the largest unit and the loss are 0 or more, and the need is above 0", () => {
  for (const column of [8, 9]) {
    const answer = (value: number): any =>
      optionTable([option.map((each, at) => (at === column ? value : each))], [[60]])[0]![0];
    expect(answer(-1)).toMatchObject({ code: "#VALUE!" });
    expect(answer(0)).toBe("option");
  }
  expect(optionTable([[...option]], [[0]])[0]![0]).toMatchObject({ code: "#VALUE!" });
});
