import { normalCdf, normalDensity, normalQuantile } from "./normalDistribution";
import { cutDownThings, roundUpThings } from "./wholeNumbers";

// Amounts are in any one unit throughout; mean and sd are of one day's demand; times are days. Demand of different days
// is taken as independent and its total as normal, as in the textbooks named beside each rule.

/** Days until `stock` is down to `keep`; 0 when it is there already. The caller refuses no use and no loss. */
export const daysOfSupply = (stock: number, dailyUse: number, dailyLoss: number, keep: number): number =>
  stock <= keep ? 0 : (stock - keep) / (dailyUse + dailyLoss);

/**
 * Standard deviation of the demand over a time that varies: √(days·sd² + mean²·daysSd²).
 * Silver, Pyke and Peterson, Inventory Management and Production Planning and Scheduling, demand over a random lead time.
 */
const demandDeviation = (mean: number, sd: number, days: number, daysSd: number): number =>
  Math.hypot(Math.sqrt(days) * sd, mean * daysSd);

/** z·σ of the demand over `days`; `level` is the chance that it suffices, from 0.5 to under 1. */
export const safetyStock = (mean: number, sd: number, days: number, level: number, daysSd: number): number =>
  normalQuantile(level) * demandDeviation(mean, sd, days, daysSd);

/** Mean demand over `days` plus the safety stock for them: a reorder point, or an order-up-to level with the review time in. */
export const stockTarget = (mean: number, sd: number, days: number, level: number, daysSd: number): number =>
  mean * days + safetyStock(mean, sd, days, level, daysSd);

/** Chance that normal demand over `days` is above `stock`; without any spread it is 0 or 1. */
export function stockOutChance(stock: number, mean: number, sd: number, days: number, daysSd: number): number {
  const spread = demandDeviation(mean, sd, days, daysSd);
  if (spread === 0) return mean * days > stock ? 1 : 0;
  return normalCdf((mean * days - stock) / spread);
}

/**
 * Expected shortage in a lead time, the normal loss function: σ·(φ(z) − z·(1 − Φ(z))), z = (reorder point − mean)/σ.
 * Far above the mean the two terms cancel to rounding; nothing below 0 is answered.
 */
export function expectedShortage(reorderPoint: number, meanLeadDemand: number, sdLeadDemand: number): number {
  if (sdLeadDemand === 0) return Math.max(0, meanLeadDemand - reorderPoint);
  const z = (reorderPoint - meanLeadDemand) / sdLeadDemand;
  return sdLeadDemand * Math.max(0, normalDensity(z) - z * normalCdf(-z));
}

/** Economic order quantity: √(2·use·order cost/holding cost). Harris, Factory 10 (1913). */
export const economicOrder = (yearlyUse: number, orderCost: number, holdingCost: number): number =>
  Math.sqrt(((2 * yearlyUse) / holdingCost) * orderCost);

/** Whole lots that cover what is missing, rounded up; then no more whole lots than fit in the room that is left. */
export function orderQuantity(missing: number, lot: number, room: number | undefined): number {
  if (missing <= 0) return 0;
  const lots = roundUpThings(missing / lot);
  return lot * (room === undefined ? lots : Math.min(lots, cutDownThings(room / lot)));
}
