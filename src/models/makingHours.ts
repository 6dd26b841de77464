/** Hours a day in which a plant makes liquid, after its start-up, outages and restarts. Times in hours, dates as serials. */

/** Plants of one kind. */
export interface PlantKind {
  readonly count: number;
  /** Serial of the moment they are switched on; their room counts from that day on. */
  readonly switchOn: number;
  /** Powered hours from switching on until liquid accumulates. */
  readonly startHours: number;
  /** L/h each */
  readonly rate: number;
  /** L each */
  readonly capacity: number;
}

export const isOn = ({ switchOn }: PlantKind, date: number): boolean => Math.floor(switchOn) <= date;

/** Hours between two moments, to the millisecond: a serial holds no more, and 8:00 must leave 16 h exactly. */
const hoursBetween = (from: number, to: number): number => Math.round((to - from) * 86_400_000) / 3_600_000;

/** What a plant still has before it. */
export interface WaitingState {
  readonly start: number;
  readonly restart: number;
  /** It has had power since it was switched on. */
  readonly begun: boolean;
}

/** Hours of start-up and restart that a plant still has before it. */
export class Waiting implements WaitingState {
  start: number;
  restart = 0;
  begun: boolean;

  constructor(
    private readonly kind: PlantKind,
    private readonly restartHours: number,
    firstDate: number,
  ) {
    const hoursBefore = Math.max(0, hoursBetween(kind.switchOn, firstDate));
    this.start = Math.max(0, kind.startHours - hoursBefore);
    this.begun = hoursBefore > 0;
  }

  takeOver({ start, restart, begun }: WaitingState): void {
    this.start = start;
    this.restart = restart;
    this.begun = begun;
  }

  isAs({ start, restart, begun }: WaitingState): boolean {
    return this.start === start && this.restart === restart && this.begun === begun;
  }

  /**
   * Hours of making on a day with so many hours of power. Start-up takes powered hours. An outage sets the restart hours
   * anew, unless start-up has not begun; what a day is too short for carries into the next. The day of switching on has
   * only the hours that are left of it.
   */
  makingHours(date: number, powerHours: number): number {
    const { kind } = this;
    if (!isOn(kind, date)) return 0;
    let left = powerHours;
    if (kind.switchOn > date) left = Math.min(left, hoursBetween(kind.switchOn, date + 1));
    if (left > 0) this.begun = true;
    if (powerHours < 24 && this.begun) this.restart = this.restartHours;
    const starting = Math.min(left, this.start);
    this.start -= starting;
    left -= starting;
    const restarting = Math.min(left, this.restart);
    this.restart -= restarting;
    return left - restarting;
  }
}

/** Day by day, how long a plant of a kind makes liquid. */
export interface KindDays {
  readonly hours: Float64Array;
  /** Its state on the morning of each day, and after the last. */
  readonly states: readonly WaitingState[];
}

export function kindDays(
  kind: PlantKind,
  restartHours: number,
  firstDate: number,
  powerHours: readonly number[],
): KindDays {
  const waiting = new Waiting(kind, restartHours, firstDate);
  const hours = new Float64Array(powerHours.length);
  let state: WaitingState = { start: waiting.start, restart: waiting.restart, begun: waiting.begun };
  const states = [state];
  for (let day = 0; day < powerHours.length; day++) {
    hours[day] = waiting.makingHours(firstDate + day, powerHours[day]!);
    if (!waiting.isAs(state)) state = { start: waiting.start, restart: waiting.restart, begun: waiting.begun };
    states.push(state);
  }
  return { hours, states };
}
