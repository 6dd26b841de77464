import { rounding } from "./exceeds";
import { cutDownThings } from "./wholeNumbers";

// Liquid in L; the draw ratio is L drawn for each L filled, 1 or more.

/** Liquid to draw [L] for a fill [L]. */
export const grossDraw = (netFill: number, drawRatio: number): number => netFill * drawRatio;

/** Fill [L] that a drawn amount [L] gives. */
export const netFill = (drawn: number, drawRatio: number): number => drawn / drawRatio;

/** Liquid [L] that a fill [L] loses as gas. */
export const transferLoss = (fill: number, drawRatio: number): number => fill * (drawRatio - 1);

/** Whole fills from what stands above a level to keep [L]. */
export const fillsAvailable = (level: number, fillEach: number, keep: number, drawRatio: number): number =>
  cutDownThings(Math.max(0, level - keep) / (fillEach * drawRatio));

/** One vessel's turn. */
export interface VesselFill {
  /** Place in the list, from 0 */
  readonly index: number;
  /** L that go into it */
  readonly fill: number;
  /** L drawn for it */
  readonly draw: number;
  /** L left in the stock */
  readonly stockAfter: number;
}

/**
 * Fills vessels to the brim of their capacity, the emptiest share first and equal ones in list order, until the stock is
 * down to what is kept; the last may get a part fill, the rest get 0. Shares are compared at twelve digits, so that 0.7 of
 * 7 L ties with 1 of 10 L; a stock within rounding of what is kept is down to it.
 */
export function fillOrder(
  levels: readonly number[],
  capacities: readonly number[],
  stock: number,
  keep: number,
  drawRatio: number,
): VesselFill[] {
  const share = (index: number): number => Math.round((levels[index]! / capacities[index]!) * 1e12);
  const order = levels.map((_, index) => index).sort((a, b) => share(a) - share(b) || a - b);
  const noise = rounding * stock;
  let left = stock;
  return order.map((index) => {
    const room = Math.max(0, capacities[index]! - levels[index]!);
    const available = Math.max(0, left - keep);
    const whole = room * drawRatio;
    const fits = whole <= available + noise;
    const draw = fits ? whole : available;
    if (draw > 0) left = available - draw > noise ? left - draw : keep;
    return { index, fill: fits ? room : draw / drawRatio, draw, stockAfter: left };
  });
}
