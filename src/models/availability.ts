/** Availability of a machine from the hours it was up and down. */
import { symmetricBetaPoint } from "./symmetricBeta";

/** A time down, in days of a serial. */
export interface Stop {
  readonly from: number;
  readonly to: number;
}

export interface Availability {
  readonly availability: number;
  readonly stops: number;
  /** h */
  readonly meanUp: number;
  /** h */
  readonly meanDown: number;
  readonly cautious: number;
}

/** Chance that the true availability is below the cautious one. */
const risk = 0.05;

/** Stops of the time from `from` to `to` [days], at least one. */
export function availabilityOf(stops: readonly Stop[], from: number, to: number): Availability {
  const down = 24 * stops.reduce((sum, stop) => sum + (stop.to - stop.from), 0);
  const up = Math.max(0, 24 * (to - from) - down);
  const count = stops.length;
  // With F = (1 − y)/y this is U/(U + D·F): Trivedi, Probability and Statistics (2001), 10.2.
  const y = symmetricBetaPoint(risk, count);
  return {
    availability: up / (up + down),
    stops: count,
    meanUp: up / count,
    meanDown: down / count,
    cautious: (up * y) / (up * y + down * (1 - y)),
  };
}
