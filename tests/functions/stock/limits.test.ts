import { daysOfSupply } from "../../../src/functions/stock/daysOfSupply";
import { economicOrder } from "../../../src/functions/stock/economicOrder";
import { expectedShortage } from "../../../src/functions/stock/expectedShortage";
import { fillRate } from "../../../src/functions/stock/fillRate";
import { orderQuantity } from "../../../src/functions/stock/orderQuantity";
import { orderUpTo } from "../../../src/functions/stock/orderUpTo";
import { reorderPoint } from "../../../src/functions/stock/reorderPoint";
import { reserveForOutage } from "../../../src/functions/stock/reserveForOutage";
import { safetyStock } from "../../../src/functions/stock/safetyStock";
import { shareOut } from "../../../src/functions/stock/shareOut";
import { sparesToKeep } from "../../../src/functions/stock/sparesToKeep";
import { stockLevels } from "../../../src/functions/stock/stockLevels";
import { stockOutChance } from "../../../src/functions/stock/stockOutChance";
import { stockOutOn } from "../../../src/functions/stock/stockOutOn";
import { errorOf, oneCell } from "../oneCell";
import { checkLimits, type Limit } from "../checkLimits";

const amount = (argument: string): Limit => ({
  argument,
  low: 0,
  high: "open",
  why: "a stock is never less than none",
});
const more = (argument: string, why: string): Limit => ({ argument, low: 0, high: "open", why, endsOut: "low" });
const time = (argument: string): Limit => ({ argument, low: 0, high: "open", why: "a time is never negative" });
const safeLevel: Limit = {
  argument: "level",
  low: 0.5,
  high: 1,
  why: "below half a safety stock would be negative; certainty takes no end of stock",
  endsOut: "high",
};
const mean = more("mean", "a blank read as 0 would flatter");
const spread = amount("sd");
const lead = more("lead_days", "a blank read as 0 would flatter");

checkLimits(
  "DAYS_OF_SUPPLY",
  daysOfSupply,
  ["stock", "daily_use", "daily_loss", "keep"],
  [90, 6, 2, 10],
  [amount("stock"), amount("daily_use"), amount("daily_loss"), amount("keep")],
);
checkLimits(
  "STOCK_OUT_ON",
  stockOutOn,
  ["as_of", "stock", "daily_use", "daily_loss", "keep"],
  [46082, 90, 6, 2, 10],
  [amount("daily_use"), amount("daily_loss"), amount("keep")],
);
checkLimits(
  "SAFETY_STOCK",
  safetyStock,
  ["mean", "sd", "lead_days", "level", "lead_sd"],
  [30, 5, 10, 0.95, 1],
  [mean, spread, lead, safeLevel, time("lead_sd")],
);
checkLimits(
  "REORDER_POINT",
  reorderPoint,
  ["mean", "sd", "lead_days", "level", "lead_sd"],
  [30, 5, 10, 0.95, 1],
  [mean, spread, lead, safeLevel, time("lead_sd")],
);
checkLimits(
  "ORDER_UP_TO",
  orderUpTo,
  ["mean", "sd", "lead_days", "review_days", "level", "lead_sd"],
  [30, 5, 10, 7, 0.95, 1],
  [mean, spread, lead, time("review_days"), safeLevel, time("lead_sd")],
);
checkLimits(
  "STOCK_LEVELS",
  stockLevels,
  ["mean", "sd", "lead_days", "review_days", "level", "emergency_days", "lead_sd"],
  [30, 5, 10, 7, 0.95, 3, 1],
  [mean, spread, lead, time("review_days"), safeLevel, time("emergency_days"), time("lead_sd")],
);
checkLimits(
  "ORDER_QUANTITY",
  orderQuantity,
  ["on_hand", "on_order", "up_to", "lot", "room"],
  [10, 5, 100, 10, 200],
  [
    amount("on_hand"),
    amount("on_order"),
    amount("up_to"),
    { argument: "room", low: 0, high: "open", why: "a full store has room for nothing" },
  ],
);
checkLimits(
  "ORDER_QUANTITY",
  orderQuantity,
  ["on_hand", "on_order", "up_to", "lot"],
  [10, 5, 100, 10],
  [more("lot", "a lot holds something")],
);
checkLimits(
  "STOCK_OUT_CHANCE",
  stockOutChance,
  ["stock", "mean", "sd", "days", "days_sd"],
  [300, 30, 5, 10, 1],
  [amount("stock"), mean, spread, time("days"), time("days_sd")],
);
checkLimits(
  "EXPECTED_SHORTAGE",
  expectedShortage,
  ["reorder_point", "mean_lead_demand", "sd_lead_demand"],
  [110, 100, 10],
  [amount("reorder_point"), more("mean_lead_demand", "a blank read as 0 would flatter"), amount("sd_lead_demand")],
);
checkLimits(
  "FILL_RATE",
  fillRate,
  ["order_quantity", "reorder_point", "mean_lead_demand", "sd_lead_demand"],
  [50, 110, 100, 10],
  [
    more("order_quantity", "an order brings something"),
    amount("reorder_point"),
    more("mean_lead_demand", "a blank read as 0 would flatter"),
    amount("sd_lead_demand"),
  ],
);
checkLimits(
  "ECONOMIC_ORDER",
  economicOrder,
  ["yearly_use", "order_cost", "holding_cost"],
  [200, 50, 2],
  [amount("yearly_use"), amount("order_cost"), more("holding_cost", "without a cost of holding no order is too large")],
);
checkLimits(
  "SPARES_TO_KEEP",
  sparesToKeep,
  ["mean_lead_demand", "level"],
  [4, 0.95],
  [
    {
      argument: "mean_lead_demand",
      low: 0,
      high: 1e6,
      why: "a blank read as 0 would flatter; a million is beyond any plan",
      endsOut: "low",
    },
    { argument: "level", low: 0, high: 1, why: "a chance between never and certainty", endsOut: "both" },
  ],
);
checkLimits(
  "SHARE_OUT",
  shareOut,
  ["supply", "stocks", "daily_uses"],
  [20, 12, 3],
  [amount("supply"), amount("stocks"), amount("daily_uses")],
);
checkLimits(
  "RESERVE_FOR_OUTAGE",
  reserveForOutage,
  ["daily_need", "mean_outage_hours", "level", "restart_hours", "capacity", "draw_ratio", "empty_days"],
  [24, 5, 0.9, 3, 110, 1.3, 9],
  [
    amount("daily_need"),
    more("mean_outage_hours", "an outage lasts"),
    { argument: "level", low: 0, high: 1, why: "no outage to any but the very longest", endsOut: "high" },
    time("restart_hours"),
    more("capacity", "a vessel holds something"),
    { argument: "draw_ratio", low: 1, high: "open", why: "more is never filled than is drawn" },
    { argument: "empty_days", low: 0.5, high: "open", why: "a bare number under half a day looks like a share a day" },
  ],
);

test("SHARE_OUT: a lot holds something", () => {
  expect(errorOf(shareOut, 20, 12, 3, "Ridge", 0)).toMatch(/#VALUE! lot must be more than 0/);
  expect(errorOf(shareOut, 20, 12, 3, "Ridge", 1e-9)).toMatch(/#VALUE! lot is so small/);
  expect(oneCell(shareOut, 20, 12, 3, "Ridge", 0.002)).toBe("site");
});
