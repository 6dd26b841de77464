/**
 * A stock of liquid run day by day. All liquid in litres, times in hours, dates as serials of the 1900 system.
 *
 * The order inside a day: what boils off while the power is away, what is drawn, what a delivery brings, what the plants
 * make; so that what arrives or is made today can be drawn from tomorrow. Where it can be drawn the same day, the delivery
 * comes before the drawing. The vessels of all plants are pooled into one room, which is an approximation: two half-full
 * vessels are not one full one.
 */
import { RunningSum, exactSum } from "./exactSum";
import { type KindDays, type PlantKind, isOn, kindDays } from "./makingHours";

export interface StockPlanInput {
  /** Serial of the first day; days follow without gaps. */
  readonly firstDate: number;
  /** L a day at the patient, one a day. */
  readonly need: readonly number[];
  /** L offered a day, one a day. */
  readonly received: readonly number[];
  /** 0 to 24, one a day. */
  readonly powerHours: readonly number[];
  readonly plants: readonly PlantKind[];
  readonly opening: number;
  /** L drawn per L needed */
  readonly drawRatio: number;
  /** Days in which a full room without power boils away. */
  readonly emptyDays: number;
  /** Hours after an outage until liquid accumulates again. */
  readonly restartHours: number;
  /** What arrives or is made today can be drawn today. */
  readonly sameDay: boolean;
}

/** One day; opening + made + received = drawn + boilOff + vented + closing, exactly. */
export interface StockPlanDay {
  readonly date: number;
  readonly opening: number;
  readonly made: number;
  readonly received: number;
  readonly drawn: number;
  readonly boilOff: number;
  readonly vented: number;
  readonly closing: number;
  readonly short: number;
  readonly heldBack: number;
  readonly room: number;
}

/** Room of the plants switched on by a date [L]. */
export const roomOn = (plants: readonly PlantKind[], date: number): number =>
  exactSum(plants.filter((kind) => isOn(kind, date)).map(({ count, capacity }) => count * capacity));

/** What one day does to the stock, by the order inside a day. Kept and run again, so that many days cost little. */
export class DayFlows {
  boilOff = 0;
  drawn = 0;
  short = 0;
  vented = 0;
  made = 0;
  closing = 0;

  /**
   * @param loss what boils off if there is as much
   * @param canMake what the plants make if there is room
   */
  run(
    opening: number,
    loss: number,
    wanted: number,
    received: number,
    canMake: number,
    room: number,
    sameDay: boolean,
  ): void {
    const boilOff = Math.min(opening, loss);
    const kept = opening - boilOff;
    let drawn: number;
    let fitted: number;
    if (sameDay) {
      fitted = Math.min(received, room - kept);
      drawn = Math.min(wanted, kept + fitted + canMake);
    } else {
      drawn = Math.min(wanted, kept);
      fitted = Math.min(received, room - (kept - drawn));
    }
    // Below 0 where liquid of the same day's making is drawn.
    const left = kept - drawn + fitted;
    const made = Math.min(canMake, room - left);
    this.boilOff = boilOff;
    this.drawn = drawn;
    this.short = wanted - drawn;
    this.vented = received - fitted;
    this.made = made;
    this.closing = left + made;
  }
}

/**
 * What is known of every day before the stock is run: amounts as they are and, beside them, brought to a whole multiple of
 * `step`, a power of two so small (under 1e-12 of the sum of all amounts) that all sums stay inside 53 bits. Additions of
 * such amounts have no rounding, and the balance is exact in every row and in every sum of rows. A shortfall no larger
 * than that step's noise is none.
 */
export class PlanDays {
  readonly days: number;
  readonly kinds: readonly KindDays[];
  readonly opening: number;
  readonly noise: number;
  /** Room [L] */
  readonly room: Float64Array;
  /** Boil-off if there is as much [L], as it is and stepped */
  readonly exactLoss: Float64Array;
  readonly loss: Float64Array;
  /** Gross need [L], as it is and stepped */
  readonly gross: Float64Array;
  readonly wanted: Float64Array;
  /** What the plants make if there is room [L], as it is and stepped */
  readonly exactMake: Float64Array;
  readonly canMake: Float64Array;

  private constructor(
    readonly input: StockPlanInput,
    private readonly step: number,
  ) {
    const { firstDate, plants, powerHours, need } = input;
    const days = need.length;
    this.days = days;
    this.kinds = plants.map((kind) => kindDays(kind, input.restartHours, firstDate, powerHours));
    this.noise = step * noisySteps(input);
    this.room = new Float64Array(days);
    this.exactLoss = new Float64Array(days);
    this.gross = new Float64Array(days);
    this.exactMake = new Float64Array(days);
    for (let day = 0; day < days; day++) {
      const room = new RunningSum();
      const makes = new RunningSum();
      for (let index = 0; index < plants.length; index++) {
        const kind = plants[index]!;
        if (!isOn(kind, firstDate + day)) continue;
        room.add(kind.count * kind.capacity);
        makes.add(kind.count * kind.rate * this.kinds[index]!.hours[day]!);
      }
      this.room[day] = this.stepped(room.total);
      this.exactLoss[day] = (this.room[day]! / input.emptyDays) * (1 - powerHours[day]! / 24);
      this.gross[day] = need[day]! * input.drawRatio;
      this.exactMake[day] = makes.total;
    }
    this.loss = this.exactLoss.map((amount) => this.stepped(amount));
    this.wanted = this.gross.map((amount) => this.stepped(amount));
    this.canMake = this.exactMake.map((amount) => this.stepped(amount));
    this.opening = Math.min(this.stepped(input.opening), this.room[0]!);
  }

  /**
   * Undefined when the amounts are too large to add up. The opening must not be above the room of the first day.
   *
   * @param besides amounts that may come in besides those of the input [L]
   */
  static of(input: StockPlanInput, besides = 0): PlanDays | undefined {
    const step = PlanDays.stepOf(input, besides);
    return step === undefined ? undefined : new PlanDays(input, step);
  }

  /** The step of an input's amounts; undefined when they are too large. */
  private static stepOf(input: StockPlanInput, besides: number): number | undefined {
    const days = input.need.length;
    const largest =
      besides +
      input.opening +
      exactSum(input.received) +
      exactSum(input.need) * input.drawRatio +
      exactSum(input.plants.map(({ count, rate, capacity }) => count * (rate * 24 * days + capacity)));
    return largest <= 1e300 ? powerOfTwoFrom(largest) * 2 ** -51 : undefined;
  }

  /** A shortfall up to this is none. */
  static noiseOf(input: StockPlanInput): number | undefined {
    const step = PlanDays.stepOf(input, 0);
    return step === undefined ? undefined : step * noisySteps(input);
  }

  stepped(amount: number): number {
    return Math.round(amount / this.step) * this.step;
  }
}

const noisySteps = ({ need, plants }: StockPlanInput): number => 4 * (need.length + plants.length);

/** The least power of two that is not below a number, by exact doubling, since logarithms differ between engines. */
function powerOfTwoFrom(number: number): number {
  let power = 1;
  while (power < number) power *= 2;
  while (power > 1e-270 && power / 2 >= number) power /= 2;
  return power;
}

/** Runs the plan. Undefined when the amounts are too large to add up. */
export function stockPlan(input: StockPlanInput): StockPlanDay[] | undefined {
  const plan = PlanDays.of(input);
  if (!plan) return undefined;
  const flows = new DayFlows();
  const rows: StockPlanDay[] = [];
  let { opening } = plan;
  for (let day = 0; day < plan.days; day++) {
    const received = plan.stepped(input.received[day]!);
    const room = plan.room[day]!;
    const canMake = plan.canMake[day]!;
    flows.run(opening, plan.loss[day]!, plan.wanted[day]!, received, canMake, room, input.sameDay);
    const { made, drawn, boilOff, vented, closing, short } = flows;
    rows.push({
      date: input.firstDate + day,
      opening,
      made,
      received,
      drawn,
      boilOff,
      vented,
      closing,
      short: short <= plan.noise ? 0 : short,
      heldBack: canMake - made,
      room,
    });
    opening = closing;
  }
  return rows;
}

/** Date of the first shortfall, or undefined. */
export const firstShortDate = (rows: readonly StockPlanDay[]): number | undefined =>
  rows.find(({ short }) => short > 0)?.date;
