import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { date, isoDay } from "../../arguments/date";
import { sameLength, tableArguments, wholeTable } from "../../arguments/eachCell";
import { planOfTable, planTable } from "../../arguments/planTable";
import { litres } from "../../arguments/quantity";
import { CellError, dateCell, noAnswer } from "../../cells/cellValues";
import { driftADay, planAgainstLog as compare } from "../../models/planTables";

export const args = tableArguments({ plan: planTable, dates: column(date), levels: column(litres) });

/**
 * Levels read against the closing stock planned, on the days of the log inside the plan. A reading counts as that of the
 * day's end.
 *
 * @customfunction PLAN_AGAINST_LOG
 * @param plan The table of STOCK_PLAN, with or without its header row
 * @param dates Days of the readings [date]
 * @param levels Liquid read in all plants together at the end of each of these days [L]
 * @returns One row a reading: date, planned, read, difference [L]; a last row with the drift a day [L/day]
 */
export function planAgainstLog(plan: any[][], dates: any[][], levels: any[][]): any[][] {
  return wholeTable(args, [plan, dates, levels], (given) => {
    const days = planOfTable(given.plan, "plan");
    if (days instanceof CellError) return days;
    const unequal = sameLength({ dates: given.dates, levels: given.levels });
    if (unequal) return unequal;
    const compared = compare(
      days,
      given.dates.map((day, index) => ({ date: day, level: given.levels[index]! })),
    );
    if (compared.length === 0) {
      return noAnswer(
        `no reading is inside the plan, which runs from ${isoDay(days[0]!.date)} to ${isoDay(days[days.length - 1]!.date)}`,
      );
    }
    return [
      ["date", "planned", "read", "difference"],
      ...compared.map((row) => [dateCell(row.date), row.planned, row.level, row.difference]),
      ["a day", "", "", driftADay(compared) ?? ""],
    ];
  });
}

export const about: About = {
  gives: ["date", "liquid", "liquid", "liquid"],
  rule: "difference = read − planned closing, so that a minus is less than planned; a day: slope of the differences over the dates by least squares",
  range:
    "The eleven columns of STOCK_PLAN; readings in any order, sorted by date here. Readings on other days are left out, and none inside the plan is #N/A. The slope takes three readings on two days or more, else its cell is empty. A level read in the morning belongs to the day before.",
  source: "Plain arithmetic; least squares: NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1, from memory",
  examples: [
    {
      formula:
        '=OXYGEN.PLAN_AGAINST_LOG({"2026-03-01",50,0,0,8,0,0,42,0,0,60;"2026-03-02",42,0,0,8,0,0,34,0,0,60;"2026-03-03",34,0,0,8,0,0,26,0,0,60;"2026-03-04",26,0,0,8,0,0,18,0,0,60},{"2026-03-01";"2026-03-02";"2026-03-04";"2026-03-09"},{41;32;14;3})',
      result: [
        ["date", "planned", "read", "difference"],
        [46082, 42, 41, -1],
        [46083, 34, 32, -2],
        [46085, 18, 14, -4],
        ["a day", "", "", -1],
      ],
      note: "One litre more is lost each day than planned; the reading of the ninth is outside the plan",
    },
    {
      formula: '=OXYGEN.PLAN_AGAINST_LOG({"2026-03-01",50,0,0,8,0,0,42,0,0,60},{"2026-03-09"},{3})',
      result: { error: "#N/A", words: "no reading is inside the plan" },
    },
  ],
  seeAlso: ["STOCK_PLAN", "LOG_FAULTS", "LOSS_FROM_READINGS", "BOOK_BALANCE", "LEVEL_FROM_WEIGHT"],
  caution:
    "A plan that reads too high day after day runs short before its date: find the leak, the loss or the use, and plan again from the level read.",
};
