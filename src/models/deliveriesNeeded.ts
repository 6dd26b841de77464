/** Which deliveries, in whole batches, a stock plan needs beside its plants. */
import type { Delivery } from "./coverage";
import { exactSum } from "./exactSum";
import { type StockPlanInput, DayFlows, PlanDays } from "./stockPlan";

/** A day that no delivery makes whole: its date, and what is still short and what is below the level to keep on it [L]. */
export interface DayNotHelped {
  readonly date: number;
  readonly short: number;
  readonly below: number;
}

/** Days run in all before the search is given up: some tenths of a second. */
const mostDaysRun = 2e7;

/** A stock plan with batches in it, and what they change. */
class Search {
  readonly batches: Int32Array;
  /** Days run so far, over all tries. */
  daysRun = 0;
  private readonly openings: Float64Array;
  private readonly closings: Float64Array;
  private readonly batch: number;
  private readonly flows = new DayFlows();

  constructor(
    private readonly plan: PlanDays,
    batch: number,
    private readonly keep: number,
  ) {
    this.batches = new Int32Array(plan.days);
    this.openings = new Float64Array(plan.days);
    this.closings = new Float64Array(plan.days);
    this.batch = plan.stepped(batch);
  }

  private runDay(day: number, opening: number, more: number): void {
    const { plan } = this;
    this.daysRun++;
    this.flows.run(
      opening,
      plan.loss[day]!,
      plan.wanted[day]!,
      (this.batches[day]! + more) * this.batch,
      plan.canMake[day]!,
      plan.room[day]!,
      plan.input.sameDay,
    );
  }

  get short(): number {
    return this.flows.short > this.plan.noise ? this.flows.short : 0;
  }

  get below(): number {
    const below = this.keep - this.flows.closing;
    return below > this.plan.noise ? below : 0;
  }

  /** What is short and what is below the level to keep on the day run last. */
  get lacking(): number {
    return this.short + this.below;
  }

  /** Runs the plan from a day on, up to and with the first day that lacks something; undefined when none does. */
  runFrom(first: number): number | undefined {
    for (let day = first; day < this.plan.days; day++) {
      this.openings[day] = day === 0 ? this.plan.opening : this.closings[day - 1]!;
      this.runDay(day, this.openings[day]!, 0);
      this.closings[day] = this.flows.closing;
      if (this.lacking > 0) return day;
    }
    return undefined;
  }

  /** What `target` lacks with so many batches more on a day. */
  lackingWith(day: number, more: number, target: number): number {
    let opening = this.openings[day]!;
    for (let each = day; each <= target; each++) {
      this.runDay(each, opening, each === day ? more : 0);
      opening = this.flows.closing;
    }
    return this.lacking;
  }

  /** Fewest batches more on a day that make the target whole, or undefined. More never lack more. */
  fewestOn(day: number, target: number): number | undefined {
    // So many fill the room from empty.
    const most = Math.ceil(this.plan.room[day]! / this.batch) + 1;
    let enough = 1;
    while (this.lackingWith(day, enough, target) > 0) {
      if (enough >= most) return undefined;
      // Whether any number serves is asked before the number is looked for.
      if (enough === 1 && this.lackingWith(day, most, target) > 0) return undefined;
      enough = Math.min(most, enough * 2);
    }
    let few = Math.floor(enough / 2);
    while (enough - few > 1) {
      const middle = Math.floor((few + enough) / 2);
      if (this.lackingWith(day, middle, target) > 0) few = middle;
      else enough = middle;
    }
    return enough;
  }

  /** What is vented more over the whole plan with so many batches more on a day. */
  ventedMoreWith(day: number, more: number): number {
    const { plan } = this;
    let before = this.openings[day]!;
    let after = before;
    let ventedMore = 0;
    for (let each = day; each < plan.days; each++) {
      this.runDay(each, before, 0);
      before = this.flows.closing;
      ventedMore -= this.flows.vented;
      this.runDay(each, after, each === day ? more : 0);
      after = this.flows.closing;
      ventedMore += this.flows.vented;
      // From here on the two are one.
      if (after === before) break;
    }
    return ventedMore > plan.noise ? ventedMore : 0;
  }

  /** The latest day up to the target, and the fewest batches on it, that make the target whole and vent nothing more. */
  wholeWithoutVenting(target: number): Delivery | undefined {
    for (let day = target; day >= 0 && this.daysRun < mostDaysRun; day--) {
      const batches = this.fewestOn(day, target);
      if (batches !== undefined && this.ventedMoreWith(day, batches) === 0) return { day, batches };
    }
    return undefined;
  }

  /**
   * One batch on the day on which it lessens what the target lacks and vents least, the latest of several. Where one batch
   * boils off before it is of use, twice as many are tried.
   */
  lessLacking(target: number, lacking: number): Delivery | undefined {
    const { room, noise } = this.plan;
    for (let batches = 1; (batches - 1) * this.batch <= room[target]!; batches *= 2) {
      let best: Delivery | undefined;
      let leastVented = Infinity;
      for (let day = target; day >= 0 && leastVented > 0 && this.daysRun < mostDaysRun; day--) {
        if (this.lackingWith(day, batches, target) >= lacking - noise) continue;
        const vented = this.ventedMoreWith(day, batches);
        if (vented >= leastVented - noise) continue;
        best = { day, batches };
        leastVented = vented;
      }
      if (best) return best;
    }
    return undefined;
  }
}

/**
 * Whole batches beside the plants, so that no day is short or closes below `keep`: for the first day that does, the latest
 * day up to it on which the fewest batches make it whole and vent nothing more; where there is none, a batch at a time on
 * the day that helps and vents least. Then the plan is run again. The plan's own deliveries are left out.
 *
 * @returns the deliveries in order of date, a day that can't be helped, or why there is no answer
 */
export function deliveriesNeeded(
  input: StockPlanInput,
  batch: number,
  keep: number,
): Delivery[] | DayNotHelped | "too large" | "too long" {
  const { need, drawRatio } = input;
  const plan = PlanDays.of({ ...input, received: [] }, exactSum(need) * drawRatio + keep + batch);
  if (!plan) return "too large";
  const search = new Search(plan, batch, keep);
  let from = 0;
  for (;;) {
    const target = search.runFrom(from);
    if (target === undefined) break;
    const { short, below, lacking } = search;
    const found = search.wholeWithoutVenting(target) ?? search.lessLacking(target, lacking);
    if (search.daysRun >= mostDaysRun) return "too long";
    if (!found) return { date: input.firstDate + target, short, below };
    search.batches[found.day]! += found.batches;
    from = found.day;
  }
  const deliveries: Delivery[] = [];
  search.batches.forEach((batches, day) => {
    if (batches > 0) deliveries.push({ day, batches });
  });
  return deliveries;
}
