/** How many plants a stock plan takes. */
import { type StockPlanInput, DayFlows, firstShortDate, isAbove, PlanDays, roomOn, stockPlan } from "./stockPlan";

/** The plan with another count of the first kind. */
export const withCount = (input: StockPlanInput, count: number): StockPlanInput => ({
  ...input,
  plants: [{ ...input.plants[0]!, count }, ...input.plants.slice(1)],
});

/**
 * Tells which counts of the first kind clearly run short, without their whole table: what one plant more adds to a day is
 * known before. A shortfall under a billionth of all amounts is not told, since these sums are not exact.
 */
class QuickLook {
  private readonly others: PlanDays;
  private readonly oneMore: PlanDays;
  private readonly flows = new DayFlows();
  private readonly clear: number;

  constructor(
    private readonly input: StockPlanInput,
    most: PlanDays,
  ) {
    this.others = PlanDays.of(withCount(input, 0))!;
    this.oneMore = PlanDays.of({ ...input, opening: 0, plants: [{ ...input.plants[0]!, count: 1 }] })!;
    this.clear = Math.max(1e-9 * largestOf(most), most.noise);
  }

  runsShort(count: number): boolean {
    const { others, oneMore, flows, input, clear } = this;
    const { received, sameDay } = input;
    let opening = input.opening;
    for (let day = 0; day < others.days; day++) {
      flows.run(
        opening,
        others.exactLoss[day]! + count * oneMore.exactLoss[day]!,
        others.gross[day]!,
        received[day]!,
        others.exactMake[day]! + count * oneMore.exactMake[day]!,
        others.room[day]! + count * oneMore.room[day]!,
        sameDay,
      );
      if (flows.short > clear) return true;
      opening = flows.closing;
    }
    return false;
  }
}

const largestOf = ({ gross, room, opening }: PlanDays): number => {
  let largest = opening;
  for (let day = 0; day < gross.length; day++) largest = Math.max(largest, gross[day]!, room[day]!);
  return largest;
};

/**
 * Fewest plants of the first kind, from 0 to `most`, with no shortfall. Numbers that leave less room than the opening
 * needs don't count. Each number is tried in turn: more plants are not always better, since a larger room boils off more
 * in an outage. "too large" as in `stockPlan`; undefined when no number serves.
 */
export function fewestPlants(input: StockPlanInput, most: number): number | "too large" | undefined {
  const mostPlan = PlanDays.of(withCount(input, most));
  if (!mostPlan) return "too large";
  const look = new QuickLook(input, mostPlan);
  for (let count = 0; count <= most; count++) {
    const tried = withCount(input, count);
    if (isAbove(input.opening, roomOn(tried.plants, input.firstDate)) || look.runsShort(count)) continue;
    if (firstShortDate(stockPlan(tried)!) === undefined) return count;
  }
  return undefined;
}
