import { cutDownThings } from "./wholeNumbers";

/** A site with what it holds and what it uses a day, in one unit. */
export interface SharingSite {
  readonly stock: number;
  readonly dailyUse: number;
}

/**
 * Shares of a supply that go to the sites that run out first, until all that get some last equally long: share =
 * max(0, T × use − stock) with the T at which the shares make up the supply. A site without use gets nothing.
 * Max-min fair sharing by filling up the lowest: Bertsekas & Gallager, Data Networks, 2nd ed., section 6.5.2.
 *
 * @returns one share a site, or undefined when no site uses anything
 */
export function shareEvenly(supply: number, sites: readonly SharingSite[]): number[] | undefined {
  const using = sites
    .map((site, index) => ({ ...site, index, days: site.stock / site.dailyUse }))
    .filter(({ dailyUse }) => dailyUse > 0)
    .sort((one, other) => one.days - other.days || one.index - other.index);
  if (using.length === 0) return undefined;
  let [stocks, uses] = [0, 0];
  let days = 0;
  let served = 0;
  while (served < using.length) {
    stocks += using[served]!.stock;
    uses += using[served]!.dailyUse;
    served++;
    days = (supply + stocks) / uses;
    if (served === using.length || days <= using[served]!.days) break;
  }
  const shares = sites.map(() => 0);
  for (const { index, dailyUse, stock } of using.slice(0, served)) shares[index] = Math.max(0, days * dailyUse - stock);
  return shares;
}

/** Lots handed out one after the other, each to the site with the fewest days, ties by list order. */
export function shareLots(supply: number, lot: number, sites: readonly SharingSite[]): number[] | undefined {
  if (!sites.some(({ dailyUse }) => dailyUse > 0)) return undefined;
  const given = sites.map(() => 0);
  const lots = cutDownThings(supply / lot);
  for (let each = 0; each < lots; each++) {
    let neediest = -1;
    let fewest = Infinity;
    sites.forEach(({ stock, dailyUse }, index) => {
      const days = dailyUse > 0 ? (stock + given[index]! * lot) / dailyUse : Infinity;
      if (days < fewest) [fewest, neediest] = [days, index];
    });
    given[neediest]!++;
  }
  return given.map((count) => count * lot);
}
