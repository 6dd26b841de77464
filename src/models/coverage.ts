/** How long a stock lasts down a list of daily needs, and when to bring more. Amounts in any one unit. */
import { rounding } from "./exceeds";
import { RunningSum } from "./exactSum";
import { roundUpThings } from "./wholeNumbers";

/**
 * Days a stock lasts down a list of daily needs, the last day in part. Undefined when something is left after the list;
 * a stock that ends with the list lasts as long as the list.
 */
export function daysCovered(stock: number, needs: readonly number[], dailyLoss: number): number | undefined {
  const noise = rounding * stock;
  const used = new RunningSum();
  for (let day = 0; day < needs.length; day++) {
    const use = needs[day]! + dailyLoss;
    const left = stock - used.total;
    if (use > left + noise) return day + Math.max(0, left) / use;
    used.add(use);
  }
  return stock - used.total <= noise ? needs.length : undefined;
}

export interface Delivery {
  /** Place in the list of days, from 0. */
  readonly day: number;
  readonly batches: number;
}

/**
 * Whole batches, each on the latest day that keeps the stock after every day's need at `keep` or more. With `sameDay` a
 * delivery counts on the day it comes, so that this day is the first that would fall below; else from the day after, so
 * that it is the one before.
 *
 * @returns the deliveries, or the place of the first day when that can't be covered in time
 */
export function deliveries(
  needs: readonly number[],
  opening: number,
  batch: number,
  keep: number,
  sameDay: boolean,
): Delivery[] | "first day" {
  const wanted = new RunningSum();
  wanted.add(keep);
  wanted.add(-opening);
  const found: Delivery[] = [];
  let brought = 0;
  for (let day = 0; day < needs.length; day++) {
    wanted.add(needs[day]!);
    const batches = Math.max(0, roundUpThings(wanted.total / batch));
    if (batches <= brought) continue;
    const comes = sameDay ? day : day - 1;
    if (comes < 0) return "first day";
    found.push({ day: comes, batches: batches - brought });
    brought = batches;
  }
  return found;
}
