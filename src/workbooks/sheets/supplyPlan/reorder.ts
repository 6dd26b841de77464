import { firstDay } from "../../scenario/velmar";
import {
  answer,
  block,
  formats,
  headingRow,
  input,
  label,
  note,
  output,
  subtitle,
  tabColours,
  table,
  tableHeader,
  tableInput,
  title,
  unit,
  type SheetDescription,
} from "../../writer";
import { dateEntry, numberEntry, wholeEntry } from "../entries";

/** Invented issues of full cylinders in the four weeks before the plan. */
const issued = [6, 4, 7, 5, 9, 3, 2, 6, 8, 5, 6, 7, 4, 1, 7, 5, 6, 10, 6, 3, 4, 8, 6, 5, 7, 9, 4, 3];

/** The cylinder store: levels and orders from its own log; and how long the liquid lasts without power. */
export const reorder: SheetDescription = {
  name: "Reorder",
  columns: [13, 12, 3, 42, 14, 16, 14, 12],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { pagesHigh: 1 },
  cells: {
    A1: title("Reorder and days of supply"),
    A2: subtitle(
      "Full cylinders in the store, kept as second supply and for transport; and the liquid, should all making stop.",
      { across: 8 },
    ),
    ...block("A4", [
      headingRow("Log", 2),
      [tableHeader("Day"), tableHeader("Cylinders issued")],
      ...issued.map((count, index) => [
        tableInput(firstDay - issued.length + index, {
          format: formats.date,
          validation: dateEntry("Day", "One row a day, in any order."),
        }),
        tableInput(count, {
          format: formats.whole,
          validation: numberEntry("Issued", "Full cylinders issued that day; 0 where none was.", 0, 10000),
        }),
      ]),
    ]),
    ...block("D4", [
      headingRow("Cylinder store", 5),
      [
        label("Full cylinders on hand"),
        input(52, {
          name: "CylindersOnHand",
          format: formats.whole,
          validation: wholeEntry("On hand", "Full cylinders counted on the as-of date.", 0, 100000),
        }),
        unit("cylinders"),
      ],
      [
        label("Ordered, not yet here"),
        input(0, {
          name: "CylindersOnOrder",
          format: formats.whole,
          validation: wholeEntry("On order", "Ordered and not yet received.", 0, 100000),
        }),
        unit("cylinders"),
      ],
      [
        label("Places in the store"),
        input(128, {
          name: "CylinderPlaces",
          format: formats.whole,
          validation: wholeEntry("Places", "Full cylinders the store may hold.", 1, 100000),
        }),
        unit("cylinders"),
      ],
      [
        label("Lot (one rack)"),
        input(8, {
          name: "CylinderLot",
          format: formats.whole,
          validation: wholeEntry("Lot", "Cylinders that come together.", 1, 1000),
        }),
        unit("cylinders"),
      ],
      [
        label("Gas one cylinder gives"),
        input(6800, {
          name: "CylinderContent",
          format: formats.whole,
          validation: numberEntry("Content", "Litres of gas at 21.1 °C that one full cylinder gives.", 1, 100000),
        }),
        unit("L gas"),
      ],
      [
        label("Days from order to shelf"),
        input(7, {
          name: "LeadDays",
          format: formats.oneDecimal,
          validation: numberEntry("Lead time", "Days from ordering to having it, on average.", 0.1, 365),
        }),
        unit("days"),
      ],
      [
        label("Spread of that"),
        input(1.5, {
          name: "LeadSpread",
          format: formats.oneDecimal,
          validation: numberEntry(
            "Spread",
            "Standard deviation of the lead time in days; 0 if it never varies.",
            0,
            100,
          ),
        }),
        unit("days"),
      ],
      [
        label("Days from one look to the next"),
        input(3, {
          name: "ReviewDays",
          format: formats.oneDecimal,
          validation: numberEntry("Review", "Days between two counts.", 0, 365),
        }),
        unit("days"),
      ],
      [
        label("Share of waits without running out"),
        input(0.98, {
          name: "StockLevel",
          format: formats.percent,
          validation: numberEntry(
            "Share",
            "Share of waits for an order in which the store does not run out.",
            0.5,
            0.9999,
          ),
        }),
        unit("of waits"),
      ],
      [
        label("Emergency stock lasts"),
        input(2, {
          name: "EmergencyDays",
          format: formats.oneDecimal,
          validation: numberEntry("Emergency", "Days of mean use never touched for routine.", 0, 365),
        }),
        unit("days"),
      ],
    ]),
    ...block("D16", [headingRow("From the log", 5)]),
    D17: table("=OXYGEN.DEMAND_FROM_LOG(A6:A33,B6:B33)", {
      spill: { formats: [formats.whole, formats.whole, formats.twoDecimals, formats.twoDecimals, formats.whole] },
    }),
    ...block("D20", [headingRow("Levels to keep (cylinders)", 5)]),
    D21: table("=OXYGEN.STOCK_LEVELS(F18,G18,LeadDays,ReviewDays,StockLevel,EmergencyDays,LeadSpread)", {
      spill: { formats: [undefined, formats.oneDecimal] },
    }),
    F22: { ...unit("Days of mean use, never for routine."), across: 3 },
    F23: { ...unit("Against a busy wait and a late boat."), across: 3 },
    F24: { ...unit("Order when on hand plus on order falls to this."), across: 3 },
    F25: { ...unit("Order so much that this is reached."), across: 3 },
    ...block("D27", [
      headingRow("What to do", 5),
      [
        label("Order?"),
        answer('=IF(CylindersOnHand+CylindersOnOrder<=E24,"ORDER NOW","not yet")', { name: "OrderNow" }),
      ],
      [
        label("Order, in whole racks that fit"),
        output(
          '=IF(OrderNow="ORDER NOW",OXYGEN.ORDER_QUANTITY(CylindersOnHand,CylindersOnOrder,E25,CylinderLot,CylinderPlaces-CylindersOnHand-CylindersOnOrder),0)',
          { name: "OrderCylinders", format: formats.whole },
        ),
        unit("cylinders"),
      ],
      [
        label("Cylinders last, at mean use"),
        output("=OXYGEN.DAYS_OF_SUPPLY(CylindersOnHand,F18,0)", { name: "CylinderDays", format: formats.days }),
        null,
        note("Nothing kept back.", { across: 2 }),
      ],
      [
        label("Store empty on, at mean use"),
        output("=OXYGEN.STOCK_OUT_ON(AsOf,CylindersOnHand,F18,0)", { format: formats.date }),
      ],
      [
        label("Chance to run out before an order comes"),
        output("=OXYGEN.STOCK_OUT_CHANCE(CylindersOnHand,F18,G18,LeadDays,LeadSpread)", {
          format: formats.percentOneDecimal,
        }),
        null,
        note("If ordered today.", { across: 2 }),
      ],
      [
        label("Cylinders for one day of the whole hospital"),
        output("=OXYGEN.CYLINDERS_NEEDED(NetNeed*OXYGEN.EXPANSION_RATIO(),CylinderContent)", { format: formats.whole }),
        unit("cylinders"),
        note("Should all liquid fail; a tenth is left in each.", { across: 2 }),
      ],
    ]),
    ...block("D35", [
      headingRow("Liquid, should all making and power stop today", 5),
      [
        label("Mean day, boil-off counted"),
        output("=OXYGEN.DAYS_OF_SUPPLY(Opening,GrossNeed,OXYGEN.DAILY_LOSS(Room,EmptyDays))", {
          name: "LiquidDays",
          format: formats.days,
        }),
        null,
        note("From the level on Inputs, gross draw, nothing kept back.", { across: 2 }),
      ],
      [
        label("Reserve kept back"),
        output("=OXYGEN.DAYS_OF_SUPPLY(Opening,GrossNeed,OXYGEN.DAILY_LOSS(Room,EmptyDays),ReserveLitres)", {
          format: formats.days,
        }),
      ],
    ]),
    ...block("A39", [headingRow("When racks must come, at mean use", 2)]),
    A40: table("=OXYGEN.DELIVERY_DATES(PlanDates,F18+0*PlanDates,CylindersOnHand,3*CylinderLot,E23)", {
      spill: { formats: [formats.date, formats.whole], room: 26 },
    }),
    D40: note(
      "Latest dates, three racks a boat, so that the store never closes a day below the safety level. Order a lead time before each. A use that swings needs the reorder level above, not this list.",
      { across: 5 },
    ),
  },
  conditional: [{ range: "E28", when: '=E28="ORDER NOW"', mark: "danger" }],
};
