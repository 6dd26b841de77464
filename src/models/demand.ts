/** Flow of several kinds together [L/min]: Σ count × flow × share in use at once. */
export const demandFlow = (counts: readonly number[], flows: readonly number[], useShare: number): number =>
  counts.reduce((sum, count, kind) => sum + count * flows[kind]!, 0) * useShare;

/** Gas a day [L/day] of a flow [L/min] that runs `hours` of the day [h]. */
export const dailyGas = (flow: number, hours: number): number => flow * 60 * hours;

/**
 * Flow a pipeline is laid out for [L/min]: the first bed in full, each further bed at its own flow and share.
 * Form of HTM 02-01 part A and GB 50751-2012: Q = first + (n − 1) × next × share.
 */
export const designFlow = (beds: number, firstFlow: number, nextFlow: number, useShare: number): number =>
  beds === 0 ? 0 : firstFlow + (beds - 1) * nextFlow * useShare;

/** Share of a surge that is reached on a day: 0 before and after, 1 while it holds, straight in between. */
export function surgeShare(day: number, startDay: number, rise: number, hold: number, fall: number): number {
  const since = day - startDay + 1;
  if (since <= 0) return 0;
  if (since <= rise) return since / rise;
  if (since <= rise + hold) return 1;
  if (since < rise + hold + fall) return 1 - (since - rise - hold) / fall;
  return 0;
}

/**
 * Mean number of patients there on each day of an outbreak who came during it: mean(t) = Σ arrivals(t − k)·e^(−k/stay),
 * the mean of an Mt/G/∞ queue with exponential stays (Eick, Massey & Whitt, Operations Research 41 (1993) 731), each day's
 * arrivals counted in full on their day.
 *
 * @param stay Mean stay [days]
 */
export function outbreakMeans(arrivals: readonly number[], stay: number): number[] {
  const stayOn = Math.exp(-1 / stay);
  let there = 0;
  return arrivals.map((came) => {
    there = came + there * stayOn;
    return there;
  });
}

export interface LogSummary {
  /** First to last day, both counted */
  readonly days: number;
  readonly daysWithRecord: number;
  /** Over the days with a record */
  readonly mean: number;
  /** Sample standard deviation, n − 1; undefined for a single day */
  readonly sd: number | undefined;
  readonly most: number;
}

/** Daily use from a log of dated amounts; several records of a day are added up first. */
export function summariseLog(dates: readonly number[], amounts: readonly number[]): LogSummary {
  const byDay = new Map<number, number>();
  let first = Infinity;
  let last = -Infinity;
  dates.forEach((day, row) => {
    byDay.set(day, (byDay.get(day) ?? 0) + amounts[row]!);
    first = Math.min(first, day);
    last = Math.max(last, day);
  });
  const daily = [...byDay.values()];
  const mean = daily.reduce((sum, amount) => sum + amount, 0) / daily.length;
  const squares = daily.reduce((sum, amount) => sum + (amount - mean) ** 2, 0);
  return {
    days: last - first + 1,
    daysWithRecord: daily.length,
    mean,
    sd: daily.length < 2 ? undefined : Math.sqrt(squares / (daily.length - 1)),
    most: daily.reduce((most, amount) => Math.max(most, amount), 0),
  };
}
