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
  title,
  unit,
  type SheetDescription,
} from "../../writer";
import { numberEntry, quantityEntry, wholeEntry } from "../entries";

/** The cylinder store: levels and orders from its own log; and how long the liquid lasts without power. */
export const reorder: SheetDescription = {
  name: "Reorder",
  columns: [13, 12, 3, 42, 16, 16, 14, 12],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { titleRows: "1:1", breaksBefore: [27] },
  cells: {
    A1: title("Reorder and days of supply"),
    A2: subtitle(
      "Full cylinders in the store, kept as second supply and for transport; and the liquid, should all making stop.",
      { across: 8 },
    ),
    ...block("D4", [
      headingRow("Cylinder store", 5),
      [
        label("Full cylinders on hand"),
        input(52, {
          name: "CylindersOnHand",
          format: formats.whole,
          validation: wholeEntry("On hand", "Full cylinders counted on the as-of date.", 0, 5000),
        }),
        unit("cylinders"),
      ],
      [
        label("Ordered, not yet here"),
        input(0, {
          name: "CylindersOnOrder",
          format: formats.whole,
          validation: wholeEntry("On order", "Ordered and not yet received.", 0, 5000),
        }),
        unit("cylinders"),
      ],
      [
        label("Places in the store"),
        input(128, {
          name: "CylinderPlaces",
          format: formats.whole,
          validation: wholeEntry("Places", "Full cylinders the store may hold.", 1, 5000),
        }),
        unit("cylinders"),
      ],
      [
        label("Lot (one rack)"),
        input(8, {
          name: "CylinderLot",
          format: formats.whole,
          validation: wholeEntry("Lot", "Cylinders that come together.", 1, 200),
        }),
        unit("cylinders"),
      ],
      [
        label("Gas one cylinder gives"),
        input(6800, {
          name: "CylinderContent",
          format: formats.whole,
          validation: numberEntry("Content", "Litres of gas at 21.1 °C that one full cylinder gives.", 100, 15000),
        }),
        unit("L gas"),
      ],
      [
        label("Days from order to shelf"),
        input(7, {
          name: "LeadDays",
          format: formats.oneDecimal,
          validation: quantityEntry("Lead time", "Days from ordering to having it, on average.", 0.5, 120),
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
            30,
          ),
        }),
        unit("days"),
      ],
      [
        label("Days from one look to the next"),
        input(3, {
          name: "ReviewDays",
          format: formats.oneDecimal,
          validation: numberEntry("Review", "Days between two counts.", 0, 60),
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
          validation: numberEntry("Emergency", "Days of mean use never touched for routine.", 0, 60),
        }),
        unit("days"),
      ],
    ]),
    ...block("D16", [headingRow("From the log", 5)]),
    D17: table("=OXYGEN.DEMAND_FROM_LOG(IssueDates,IssueCounts)", {
      spill: { formats: [formats.whole, formats.whole, formats.twoDecimals, formats.twoDecimals, formats.whole] },
    }),
    ...block("D20", [headingRow("Levels to keep (cylinders)", 5)]),
    D21: table(
      "=OXYGEN.STOCK_LEVELS(INDEX(D17#,2,3),INDEX(D17#,2,4),LeadDays,ReviewDays,StockLevel,EmergencyDays,LeadSpread)",
      {
        spill: { formats: [undefined, formats.oneDecimal] },
      },
    ),
    F22: { ...unit("Days of mean use, never for routine."), across: 3 },
    F23: { ...unit("Against a busy wait and a late boat."), across: 3 },
    F24: { ...unit("Order when on hand plus on order falls to this."), across: 3 },
    F25: { ...unit("Order so much that this is reached."), across: 3 },
    ...block("D27", [
      headingRow("What to do", 5),
      [
        label("Order?"),
        answer('=IF(CylindersOnHand+CylindersOnOrder<=INDEX(D21#,4,2),"ORDER NOW","not yet")', { name: "OrderNow" }),
      ],
      [
        label("Order, in whole racks that fit"),
        output(
          '=IF(OrderNow="ORDER NOW",OXYGEN.ORDER_QUANTITY(CylindersOnHand,CylindersOnOrder,INDEX(D21#,5,2),CylinderLot,CylinderPlaces-CylindersOnHand-CylindersOnOrder),0)',
          { name: "OrderCylinders", format: formats.whole },
        ),
        unit("cylinders"),
      ],
      [
        label("Cylinders last, at mean use"),
        output("=OXYGEN.DAYS_OF_SUPPLY(CylindersOnHand,INDEX(D17#,2,3),0)", {
          name: "CylinderDays",
          format: formats.days,
        }),
        null,
        note("Nothing kept back.", { across: 2 }),
      ],
      [
        label("Store empty on, at mean use"),
        output("=OXYGEN.STOCK_OUT_ON(AsOf,CylindersOnHand,INDEX(D17#,2,3),0)", { format: formats.date }),
      ],
      [
        label("Chance to run out before an order comes"),
        output("=OXYGEN.STOCK_OUT_CHANCE(CylindersOnHand,INDEX(D17#,2,3),INDEX(D17#,2,4),LeadDays,LeadSpread)", {
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
      [
        label("Cylinders last if all liquid fails"),
        output("=OXYGEN.CYLINDER_MINUTES(CylindersOnHand*CylinderContent,MeanFlow*(1+Margin))/1440", {
          name: "CylindersAlone",
          format: formats.days,
        }),
        null,
        note("The whole hospital's mean flow with margin; a tenth is left in each.", { across: 2 }),
      ],
    ]),
    ...block("D37", [
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
      [
        label("Mean outage here"),
        input(16, {
          name: "MeanOutage",
          format: formats.oneDecimal,
          validation: quantityEntry("Mean outage", "Mean hours that power is away once it fails.", 0.5, 240),
        }),
        unit("h"),
      ],
      [
        label("Reserve that covers outages"),
        output(
          "=OXYGEN.RESERVE_FOR_OUTAGE(NetNeed*(1+Margin),MeanOutage,Level,RestartHours,Room,DrawRatio,EmptyDays)",
          {
            name: "OutageReserve",
            format: formats.litres,
          },
        ),
        null,
        note('="In the share of outages set on Demand. The plan keeps "&TEXT(ReserveLitres,"0")&" L."', { across: 2 }),
      ],
    ]),
    ...block("A44", [headingRow("When racks must come, at mean use", 3)]),
    A45: table(
      "=OXYGEN.DELIVERY_DATES('Stock plan'!A21#,INDEX(D17#,2,3)+0*'Stock plan'!A21#,CylindersOnHand,3*CylinderLot,INDEX(D21#,3,2))",
      {
        spill: { formats: [formats.date, formats.whole], room: 40 },
      },
    ),
    D45: note(
      "Latest dates, three racks a boat, so that the store never closes a day below the safety level. Order a lead time before each. A use that swings needs the reorder level above, not this list.",
      { across: 5 },
    ),
  },
  conditional: [{ range: "E28", when: '=E28="ORDER NOW"', mark: "danger" }],
};
