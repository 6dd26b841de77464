/**
 * A stock plan run again and again with chance in it: needs that swing, plants that break down and deliveries that come
 * late. Without any of the three it is the stock plan to the last digit.
 */
import { Waiting, isOn } from "./makingHours";
import { RandomNumbers } from "./randomNumbers";
import { naturalLog } from "./logarithm";
import { type StockPlanInput, DayFlows, PlanDays } from "./stockPlan";

export interface PlannedDelivery {
  /** Place in the list of days, from 0. */
  readonly day: number;
  readonly amount: number;
}

export interface Chances {
  /** Each row of what is received, with its day. */
  readonly deliveries: readonly PlannedDelivery[];
  /** Standard deviation of a day's need as a share of it. */
  readonly needSpread: number;
  /** Share of days on which a plant works, above 0. */
  readonly availability: number;
  /** Mean days until a plant that is down works again, 1 or more. */
  readonly repairDays: number;
  /** Mean days by which a delivery is late. */
  readonly lateDays: number;
  readonly runs: number;
  readonly seed: number;
}

export interface ChanceDay {
  readonly date: number;
  /** Share of runs that are short on that day, and on that day or before. */
  readonly short: number;
  readonly shortBy: number;
  /** 5th, 50th and 95th percentile of the closing stock [L]. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Most plants that are run one by one. */
export const mostPlants = 1000;

/** Most runs of a plan at a time: so that the answer takes a second or so and its closings some tens of megabytes. */
export const mostRuns = (days: number, plants: number, deliveries: number): number =>
  Math.max(1, Math.floor(4e7 / (days * (plants + 8) + deliveries * 4)));

/** Chance a day that a working plant goes down, so that in the long run it works for its share of days. Above 1 there is none. */
export const downChance = (availability: number, repairDays: number): number =>
  (1 - availability) / (availability * repairDays);

/** Streams of chance of their own, so that a plan with other plants or deliveries meets the same needs. */
const streams = { need: 0, plants: 1, deliveries: 2 };

/** A chance as the whole number under which the generator's numbers fall that often. */
const threshold = (chance: number): number => Math.round(chance * 4294967296);

/** Every plant of every kind, up or down by the day, over one run. */
class Plants {
  /** What the plants that are down or still start again make less than planned, and boil off more [L]. */
  notMade = 0;
  boiledMore = 0;
  private readonly kindOf: Int32Array;
  private readonly down: Uint8Array;
  /** Differs from its kind's state in the plan: it is down, or still waits after it was. */
  private readonly apart: Uint8Array;
  private readonly waiting: readonly Waiting[];
  private readonly worksAtFirst: number;
  private readonly fails: number;
  private readonly repaired: number;

  constructor(
    private readonly plan: PlanDays,
    chances: Chances,
    private readonly numbers: RandomNumbers,
  ) {
    const { plants, restartHours, firstDate } = plan.input;
    const kindOf: number[] = [];
    plants.forEach(({ count }, kind) => {
      for (let plant = 0; plant < count; plant++) kindOf.push(kind);
    });
    this.kindOf = Int32Array.from(kindOf);
    this.down = new Uint8Array(kindOf.length);
    this.apart = new Uint8Array(kindOf.length);
    this.waiting = kindOf.map((kind) => new Waiting(plants[kind]!, restartHours, firstDate));
    this.worksAtFirst = threshold(chances.availability);
    this.fails = threshold(downChance(chances.availability, chances.repairDays));
    this.repaired = threshold(1 / chances.repairDays);
  }

  run(day: number): void {
    const { numbers, down, apart } = this;
    this.notMade = 0;
    this.boiledMore = 0;
    for (let plant = 0; plant < down.length; plant++) {
      const number = numbers.next();
      if (day === 0) {
        down[plant] = number < this.worksAtFirst ? 0 : 1;
        apart[plant] = 0;
      } else if (down[plant] === 1) {
        if (number < this.repaired) down[plant] = 0;
      } else if (number < this.fails) {
        down[plant] = 1;
      }
      if (down[plant] === 1 || apart[plant] === 1) this.runApart(plant, day);
    }
  }

  private runApart(plant: number, day: number): void {
    const { input, kinds } = this.plan;
    const kind = input.plants[this.kindOf[plant]!]!;
    const planned = kinds[this.kindOf[plant]!]!;
    const waiting = this.waiting[plant]!;
    const date = input.firstDate + day;
    if (this.apart[plant] === 0) {
      waiting.takeOver(planned.states[day]!);
      this.apart[plant] = 1;
    }
    const power = input.powerHours[day]!;
    const isDown = this.down[plant] === 1;
    const hours = waiting.makingHours(date, isDown ? 0 : power);
    this.notMade += kind.rate * (planned.hours[day]! - hours);
    if (isDown) {
      if (isOn(kind, date)) this.boiledMore += ((kind.capacity / input.emptyDays) * power) / 24;
      return;
    }
    if (waiting.isAs(planned.states[day + 1]!)) this.apart[plant] = 0;
  }
}

/** The share `part` of the way through sorted values, linear between them (as PERCENTILE.INC). */
function percentile(sorted: Float64Array, part: number): number {
  const place = (sorted.length - 1) * part;
  const below = Math.floor(place);
  const low = sorted[below]!;
  return below + 1 < sorted.length ? low + (sorted[below + 1]! - low) * (place - below) : low;
}

/** Undefined when the amounts are too large to add up. The opening must not be above the room of the first day. */
export function planChance(input: StockPlanInput, chances: Chances): ChanceDay[] | undefined {
  const plan = PlanDays.of(input);
  if (!plan) return undefined;
  const { days, noise } = plan;
  const { runs, seed, needSpread, lateDays, deliveries } = chances;
  const needs = RandomNumbers.seeded(seed, streams.need);
  const late = RandomNumbers.seeded(seed, streams.deliveries);
  const plants =
    chances.availability < 1 ? new Plants(plan, chances, RandomNumbers.seeded(seed, streams.plants)) : undefined;
  const shape = 1 / (needSpread * needSpread);
  const logOfStays = naturalLog(lateDays / (1 + lateDays) || 1);

  const received = new Float64Array(days);
  const arrive = (isLate: boolean): void => {
    received.fill(0);
    for (const { day, amount } of deliveries) {
      const arrives = day + (isLate ? late.geometric(logOfStays) : 0);
      if (arrives < days) received[arrives]! += amount;
    }
  };
  arrive(false);

  const shortOn = new Int32Array(days);
  const firstShortOn = new Int32Array(days);
  const closings = new Float64Array(days * runs);
  const flows = new DayFlows();
  for (let run = 0; run < runs; run++) {
    if (lateDays > 0) arrive(true);
    let opening = plan.opening;
    let hasBeenShort = false;
    for (let day = 0; day < days; day++) {
      let wanted = plan.wanted[day]!;
      if (needSpread > 0) wanted = plan.stepped((plan.gross[day]! * needs.gamma(shape)) / shape);
      let canMake = plan.canMake[day]!;
      let loss = plan.loss[day]!;
      if (plants) {
        plants.run(day);
        if (plants.notMade !== 0) canMake = Math.max(0, plan.stepped(plan.exactMake[day]! - plants.notMade));
        if (plants.boiledMore > 0) loss = plan.stepped(plan.exactLoss[day]! + plants.boiledMore);
      }
      flows.run(opening, loss, wanted, plan.stepped(received[day]!), canMake, plan.room[day]!, input.sameDay);
      opening = flows.closing;
      closings[day * runs + run] = opening;
      if (flows.short > noise) {
        shortOn[day]!++;
        if (!hasBeenShort) firstShortOn[day]!++;
        hasBeenShort = true;
      }
    }
  }

  const rows: ChanceDay[] = [];
  let shortBy = 0;
  for (let day = 0; day < days; day++) {
    shortBy += firstShortOn[day]!;
    const sorted = closings.subarray(day * runs, (day + 1) * runs).sort();
    rows.push({
      date: input.firstDate + day,
      short: shortOn[day]! / runs,
      shortBy: shortBy / runs,
      low: percentile(sorted, 0.05),
      middle: percentile(sorted, 0.5),
      high: percentile(sorted, 0.95),
    });
  }
  return rows;
}
