/** How many plants a stock plan takes. */
import { exceeds } from "./exceeds";
import { type StockPlanInput, DayFlows, firstShortDate, PlanDays, roomOn, stockPlan } from "./stockPlan";

/** The plan with another count of the first kind. */
export const withCount = (input: StockPlanInput, count: number): StockPlanInput => ({
  ...input,
  plants: [{ ...input.plants[0]!, count }, ...input.plants.slice(1)],
});

/**
 * Tells which counts of the first kind clearly run short, without their whole table: what one plant more adds to a day is
 * known before. A shortfall under a billionth of the largest amount is not told, since these sums are not exact.
 */
class QuickLook {
  private readonly others: PlanDays;
  private readonly oneMore: PlanDays;
  private readonly flows = new DayFlows();
  private readonly clear: number;

  constructor(
    private readonly input: StockPlanInput,
    most: number,
    noise: number,
  ) {
    this.others = PlanDays.of(withCount(input, 0))!;
    this.oneMore = PlanDays.of({ ...input, opening: 0, plants: [{ ...input.plants[0]!, count: 1 }] })!;
    let largest = input.opening;
    for (let day = 0; day < this.others.days; day++) {
      largest = Math.max(largest, this.others.gross[day]!, this.others.room[day]! + most * this.oneMore.room[day]!);
    }
    this.clear = Math.max(1e-9 * largest, noise);
  }

  runsShort(count: number): boolean {
    const { flows, clear } = this;
    const { received, sameDay } = this.input;
    const { gross, exactLoss, exactMake, room } = this.others;
    const { exactLoss: lossMore, exactMake: makeMore, room: roomMore } = this.oneMore;
    let { opening } = this.input;
    for (let day = 0; day < gross.length; day++) {
      flows.run(
        opening,
        exactLoss[day]! + count * lossMore[day]!,
        gross[day]!,
        received[day]!,
        exactMake[day]! + count * makeMore[day]!,
        room[day]! + count * roomMore[day]!,
        sameDay,
      );
      if (flows.short > clear) return true;
      opening = flows.closing;
    }
    return false;
  }
}

/**
 * Fewest plants of the first kind, from 0 to `most`, with no shortfall. Numbers that leave less room than the opening
 * needs don't count. Each number is tried in turn: more plants are not always better, since a larger room boils off more
 * in an outage. "too large" as in `stockPlan`; undefined when no number serves.
 */
export function fewestPlants(input: StockPlanInput, most: number): number | "too large" | undefined {
  const noise = PlanDays.noiseOf(withCount(input, most));
  if (noise === undefined) return "too large";
  const look = new QuickLook(input, most, noise);
  for (let count = 0; count <= most; count++) {
    const tried = withCount(input, count);
    if (exceeds(input.opening, roomOn(tried.plants, input.firstDate)) || look.runsShort(count)) continue;
    if (firstShortDate(stockPlan(tried)!) === undefined) return count;
  }
  return undefined;
}
