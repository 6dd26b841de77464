/**
 * A stock of liquid run day by day. All liquid in litres, times in hours, dates as serials of the 1900 system.
 *
 * Inside a day, in this order: what boils off while the power is away, what a delivery brings, what is drawn, what the
 * plants make. The vessels of all plants are pooled into one room, which is an approximation: two half-full vessels
 * are not one full one.
 */
import { exactSum } from "./exactSum";

/** Plants of one kind. */
export interface PlantKind {
  readonly count: number;
  /** Serial of the day they are switched on; they add room and liquid from then. */
  readonly switchOn: number;
  /** Powered hours from switching on until liquid accumulates. */
  readonly startHours: number;
  /** L/h each */
  readonly rate: number;
  /** L each */
  readonly capacity: number;
}

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
  /** Hours after an outage until liquid accumulates again; the kind's start-up hours when undefined. */
  readonly restartHours: number | undefined;
  /** What is made today can be drawn today. */
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
  exactSum(plants.filter(({ switchOn }) => switchOn <= date).map(({ count, capacity }) => count * capacity));

/** Hours of start-up and restart a kind still has before it. */
class Waiting {
  private restart = 0;
  private start: number;

  constructor(
    private readonly kind: PlantKind,
    private readonly restartHours: number,
    firstDate: number,
  ) {
    const hoursBefore = Math.max(0, firstDate - kind.switchOn) * 24;
    this.start = Math.max(0, kind.startHours - hoursBefore);
  }

  /**
   * Hours of making on a day with so many hours of power. Start-up takes powered hours; an outage adds the restart
   * hours, except where start-up had not begun; what a day is too short for carries into the next.
   */
  makingHours(date: number, powerHours: number): number {
    const { kind } = this;
    if (kind.switchOn > date) return 0;
    const notBegun = powerHours === 0 && this.start > 0 && this.start === kind.startHours;
    if (powerHours < 24 && !notBegun) this.restart = this.restartHours;
    let left = powerHours;
    const starting = Math.min(left, this.start);
    this.start -= starting;
    left -= starting;
    const restarting = Math.min(left, this.restart);
    this.restart -= restarting;
    return left - restarting;
  }
}

/**
 * Runs the plan. Undefined when the amounts are too large to add up. The opening must not be above the room of the
 * first day.
 *
 * Every amount is brought to a whole multiple of a power of two so small (under 1e-12 of the sum of all amounts) that
 * all sums stay inside 53 bits: then additions have no rounding and the balance is exact in every row and in every sum
 * of rows. A shortfall no larger than that step's noise is none.
 */
export function stockPlan(input: StockPlanInput): StockPlanDay[] | undefined {
  const { firstDate, plants, drawRatio, emptyDays, sameDay } = input;
  const days = input.need.length;
  const gross = input.need.map((need) => need * drawRatio);
  const largest =
    input.opening +
    exactSum(input.received) +
    exactSum(gross) +
    exactSum(plants.map(({ count, rate, capacity }) => count * (rate * 24 * days + capacity)));
  if (!Number.isFinite(largest) || largest > 1e300) return undefined;
  const step = 2 ** (Math.max(-900, Math.ceil(Math.log2(largest))) + 1 - 52);
  const stepped = (amount: number): number => Math.round(amount / step) * step;
  const noise = step * 4 * (days + plants.length);

  const waiting = plants.map((kind) => new Waiting(kind, input.restartHours ?? kind.startHours, firstDate));
  const rows: StockPlanDay[] = [];
  let opening = Math.min(stepped(input.opening), stepped(roomOn(plants, firstDate)));
  for (let index = 0; index < days; index++) {
    const date = firstDate + index;
    const power = input.powerHours[index]!;
    const room = stepped(roomOn(plants, date));
    const boilOff = Math.min(opening, stepped((room / emptyDays) * (1 - power / 24)));

    const kept = opening - boilOff;
    const received = stepped(input.received[index]!);
    const fitted = Math.min(received, room - kept);

    const canMake = stepped(
      exactSum(plants.map(({ count, rate }, kind) => count * rate * waiting[kind]!.makingHours(date, power))),
    );
    const wanted = stepped(gross[index]!);
    const drawn = Math.min(wanted, kept + fitted + (sameDay ? canMake : 0));
    const short = wanted - drawn;

    const left = kept + fitted - drawn;
    const made = Math.min(canMake, room - left);
    const closing = left + made;
    rows.push({
      date,
      opening,
      made,
      received,
      drawn,
      boilOff,
      vented: received - fitted,
      closing,
      short: short <= noise ? 0 : short,
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

/**
 * Fewest plants of the first kind, from 0 to `most`, with no shortfall. Numbers that leave less room than the opening
 * needs don't count. Each number is tried in turn: more plants are not always better, since a larger room boils off more
 * in an outage. "too large" as in `stockPlan`; undefined when no number serves.
 */
export function fewestPlants(input: StockPlanInput, most: number): number | "too large" | undefined {
  const [first, ...others] = input.plants;
  for (let count = 0; count <= most; count++) {
    const plants = [{ ...first!, count }, ...others];
    if (isAbove(input.opening, roomOn(plants, input.firstDate))) continue;
    const rows = stockPlan({ ...input, plants });
    if (!rows) return "too large";
    if (firstShortDate(rows) === undefined) return count;
  }
  return undefined;
}

/** Above by more than floating noise. */
export const isAbove = (amount: number, limit: number): boolean => amount > limit * (1 + 1e-12);

export interface PlanTotals {
  readonly opening: number;
  readonly made: number;
  readonly received: number;
  readonly drawn: number;
  readonly boilOff: number;
  readonly vented: number;
  readonly closing: number;
  readonly short: number;
  /** opening + made + received − drawn − boil-off − vented − closing: 0 when the table is whole. */
  readonly balance: number;
}

/** Sums of a plan's days [L]; opening of the first, closing of the last. */
export function planTotals(rows: readonly Omit<StockPlanDay, "heldBack" | "room">[]): PlanTotals {
  const sum = (of: (row: (typeof rows)[number]) => number): number => exactSum(rows.map(of));
  const opening = rows[0]!.opening;
  const closing = rows[rows.length - 1]!.closing;
  const flows = rows.flatMap((row) => [row.made, row.received, -row.drawn, -row.boilOff, -row.vented]);
  const terms = [opening, ...flows, -closing];
  const balance = exactSum(terms);
  const noise = 1e-12 * exactSum(terms.map(Math.abs));
  return {
    opening,
    made: sum((row) => row.made),
    received: sum((row) => row.received),
    drawn: sum((row) => row.drawn),
    boilOff: sum((row) => row.boilOff),
    vented: sum((row) => row.vented),
    closing,
    short: sum((row) => row.short),
    balance: Math.abs(balance) <= noise ? 0 : balance,
  };
}
