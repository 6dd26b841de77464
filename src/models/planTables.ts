/** What is read off the finished tables of stock plans. All liquid in litres. */
import { rounding } from "./exceeds";
import { exactSum } from "./exactSum";
import { fitStraightLine } from "./leastSquares";
import type { StockPlanDay } from "./stockPlan";

/** The figures of a day that have to add up. */
type Flows = Pick<StockPlanDay, "opening" | "made" | "received" | "drawn" | "boilOff" | "vented" | "closing" | "short">;

export interface PlanTotals extends Flows {
  /** What is amiss in the table, without sign: 0 when it is whole. */
  readonly balance: number;
}

/** Sum without sign, 0 where it is no more than the rounding of its terms. */
function amiss(terms: readonly number[]): number {
  const sum = Math.abs(exactSum(terms));
  return sum <= rounding * exactSum(terms.map(Math.abs)) ? 0 : sum;
}

/** Under this a balance is rounding [L]. */
const noBalance = 1e-9;

/**
 * Sums of a plan's days; opening of the first, closing of the last. The balance adds up, without sign, by how much each
 * row fails opening + made + received = drawn + boil-off + vented + closing, and by how much each opening differs from the
 * closing before; so that two wrong cells can't cancel out.
 */
export function planTotals(rows: readonly Flows[]): PlanTotals {
  const sum = (of: (row: Flows) => number): number => exactSum(rows.map(of));
  const balance = exactSum(
    rows.map((row, index) => {
      const ofRow = amiss([row.opening, row.made, row.received, -row.drawn, -row.boilOff, -row.vented, -row.closing]);
      return ofRow + (index === 0 ? 0 : amiss([row.opening, -rows[index - 1]!.closing]));
    }),
  );
  return {
    opening: rows[0]!.opening,
    made: sum((row) => row.made),
    received: sum((row) => row.received),
    drawn: sum((row) => row.drawn),
    boilOff: sum((row) => row.boilOff),
    vented: sum((row) => row.vented),
    closing: rows[rows.length - 1]!.closing,
    short: sum((row) => row.short),
    balance: balance < noBalance ? 0 : balance,
  };
}

/** Plans of several sites, added up day by day; their dates must be the same. */
export const plansTogether = (plans: readonly (readonly StockPlanDay[])[]): StockPlanDay[] =>
  plans[0]!.map(({ date }, day) => {
    const sum = (of: (row: StockPlanDay) => number): number => exactSum(plans.map((plan) => of(plan[day]!)));
    return {
      date,
      opening: sum((row) => row.opening),
      made: sum((row) => row.made),
      received: sum((row) => row.received),
      drawn: sum((row) => row.drawn),
      boilOff: sum((row) => row.boilOff),
      vented: sum((row) => row.vented),
      closing: sum((row) => row.closing),
      short: sum((row) => row.short),
      heldBack: sum((row) => row.heldBack),
      room: sum((row) => row.room),
    };
  });

export interface Reading {
  readonly date: number;
  /** Level read at the end of that day. */
  readonly level: number;
}

export interface ComparedReading extends Reading {
  readonly planned: number;
  /** Read − planned. */
  readonly difference: number;
}

/** Readings on the plan's days beside the closing planned, in order of date; other days are left out. */
export function planAgainstLog(
  plan: readonly Pick<StockPlanDay, "date" | "closing">[],
  readings: readonly Reading[],
): ComparedReading[] {
  const first = plan[0]!.date;
  return readings
    .filter(({ date }) => date >= first && date < first + plan.length)
    .map(({ date, level }) => {
      const planned = plan[date - first]!.closing;
      return { date, level, planned, difference: level - planned };
    })
    .map((row, index) => ({ row, index }))
    .sort((a, b) => a.row.date - b.row.date || a.index - b.index)
    .map(({ row }) => row);
}

/** By how much more the readings drift off the plan each day [L/day]: least squares; undefined under three readings. */
export const driftADay = (compared: readonly ComparedReading[]): number | undefined =>
  compared.length < 3
    ? undefined
    : fitStraightLine(
        compared.map(({ date }) => date),
        compared.map(({ difference }) => difference),
      )?.slope;
