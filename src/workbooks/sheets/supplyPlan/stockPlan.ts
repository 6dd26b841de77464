import {
  block,
  formats,
  link,
  note,
  output,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  title,
  type SheetDescription,
} from "../../writer";

/** Days of the plan and the rows they stand in. */
export const planDays = 60;
export const firstPlanRow = 11;
export const lastPlanRow = firstPlanRow + planDays - 1;

const rows = (column: string): string => `Stock plan!${column}${firstPlanRow}:${column}${lastPlanRow}`;

export const planNames = {
  PlanDates: rows("A"),
  PlanNeed: rows("C"),
  ReceivedOrdered: rows("E"),
  ReceivedMoved: rows("F"),
  PowerHours: rows("G"),
  /** With its header, as PLAN_TOTALS takes it. */
  PlanTable: `Stock plan!J${firstPlanRow - 1}:T${lastPlanRow}`,
  PlanClosing: rows("Q"),
  PlanShort: rows("R"),
};

const planOf = (received: string): string =>
  `PlanDates,PlanNeed,${received},PowerHours,PlanPlants,Opening,DrawRatio,EmptyDays,RestartHours,SameDay`;

const caseRow = (words: string, received: string, suffix: string) => [
  tableCell(words, { across: 2 }),
  null,
  // An #N/A that came from an input must not read as "no shortfall".
  output(
    `=IF(ISERROR(ShortLitres${suffix}),ShortLitres${suffix},IFNA(OXYGEN.FIRST_SHORT_DATE(${planOf(received)}),"none"))`,
    {
      format: formats.date,
      align: "right",
      name: `FirstShort${suffix}`,
    },
  ),
  tableCell(`=INDEX(OXYGEN.PLAN_TOTALS(OXYGEN.STOCK_PLAN(${planOf(received)})),2,8)`, {
    format: formats.whole,
    name: `ShortLitres${suffix}`,
  }),
  tableCell(`=INDEX(OXYGEN.PLAN_TOTALS(OXYGEN.STOCK_PLAN(${planOf(received)})),2,6)`, {
    format: formats.whole,
    name: `Vented${suffix}`,
  }),
  tableCell(
    `=SUMPRODUCT(--(INDEX(OXYGEN.STOCK_PLAN(${planOf(received)}),SEQUENCE(${planDays},1,2),8)<ReserveLitres))`,
    { format: formats.whole, name: `LowDays${suffix}` },
  ),
  tableCell(
    `=IF(ISERROR(ShortLitres${suffix}),ShortLitres${suffix},IFNA(OXYGEN.PLANTS_FOR_PLAN(${planOf(received)}),"over 20"))`,
    { format: formats.whole, align: "right", name: `PlantsFor${suffix}` },
  ),
];

const litres = formats.oneDecimal;
const chosen = 'IF(DeliveryCase="as moved",ReceivedMoved,ReceivedOrdered)';

/** Sixty days of liquid in the plants. */
export const stockPlan: SheetDescription = {
  name: "Stock plan",
  columns: [11.5, 6, 12.5, 11, 11, 11.5, 11, 11, 2, 11.5, 9.5, 9, 9.5, 9, 9, 9, 9.5, 9, 10, 9],
  tab: tabColours.result,
  freezeAt: "B11",
  print: { orientation: "landscape", titleRows: "10:10", area: "A1:T73" },
  cells: {
    A1: title("Stock plan, day by day"),
    A2: subtitle(
      "Liquid in all plants together, in litres. Left: what goes in (demand is net, need is gross). Right: what comes out, for the deliveries chosen on Inputs.",
      { across: 16 },
    ),
    R1: link("Inputs!A1", "To the inputs", "Deliveries, outages, plants"),
    ...block("A4", [
      [
        tableHeader("Deliveries", { across: 2 }),
        null,
        ...[
          "First short date",
          "Short in all [L]",
          "Vented in all [L]",
          "Days below reserve",
          "Plants for no shortage",
          "Reserve [L]",
        ].map((words) => tableHeader(words)),
      ],
      [
        ...caseRow("as ordered", "ReceivedOrdered", "Ordered"),
        tableCell("=ReserveDays*GrossNeed", { format: formats.whole, name: "ReserveLitres" }),
      ],
      caseRow("as moved", "ReceivedMoved", "Moved"),
    ]),
    J4: note("Short: gross litres that could not be drawn. Vented: delivered and did not fit.", { across: 11 }),
    J5: note("Plants for no shortage: fewest of the first kind on Inputs, the second kind as it is.", { across: 11 }),
    J6: note(
      "Received counts what was offered, vented part included. Held back: the plants were full and waited in standby.",
      { across: 11 },
    ),
    J7: note("opening + made + received = drawn + boil-off + vented + closing, in every row.", { across: 11 }),
    A7: note("Below reserve: the closing stock is under the reserve, so the next day may run short.", { across: 8 }),
    A8: note("The table on the right shows the deliveries:", { across: 5 }),
    F8: { ...tableCell("=DeliveryCase"), across: 3 },
    ...block("A10", [
      [
        tableHeader("Date"),
        null,
        null,
        tableHeader("Need gross [L]"),
        tableHeader("Offered as ordered"),
        tableHeader("Offered as moved"),
        tableHeader("Power [h]"),
        tableHeader("Reserve [L]"),
      ],
    ]),
    A11: { ...tableCell(`=SEQUENCE(${planDays},1,FirstDay)`), spill: { formats: [formats.date] } },
    B10: table(
      `=OXYGEN.SURGE_DEMAND(NetNeed*(1+Margin),${planDays},SurgeStart,SurgeFactor,SurgeRise,SurgeHold,SurgeFall)`,
      { spill: { formats: [formats.whole, litres] } },
    ),
    D11: { ...tableCell("=OXYGEN.GROSS_DRAW(PlanNeed,DrawRatio)"), spill: { formats: [litres] } },
    E11: { ...tableCell("=SUMIFS(DeliveryAmounts,OrderedDates,PlanDates)"), spill: { formats: [formats.whole] } },
    F11: { ...tableCell("=SUMIFS(DeliveryAmounts,MovedDates,PlanDates)"), spill: { formats: [formats.whole] } },
    G11: {
      ...tableCell(
        '=IF(COUNTIFS(OutageFrom,"<="&PlanDates,OutageTo,">="&PlanDates)=0,24,MINIFS(OutageHours,OutageFrom,"<="&PlanDates,OutageTo,">="&PlanDates))',
      ),
      spill: { formats: [formats.oneDecimal] },
    },
    H11: { ...tableCell("=ReserveLitres+0*PlanDates"), spill: { formats: [formats.whole] } },
    J10: table(`=OXYGEN.STOCK_PLAN(${planOf(chosen)})`, { spill: { formats: [formats.date, litres] } }),
    J72: table("=OXYGEN.PLAN_TOTALS(PlanTable)", { spill: { formats: [litres] } }),
    A72: note("Totals of the 60 days; balance 0 says the table is whole:", { across: 8 }),
  },
  conditional: [
    { range: `J${firstPlanRow}:T${lastPlanRow}`, when: `=$R${firstPlanRow}>0`, mark: "danger", last: true },
    { range: `Q${firstPlanRow}:Q${lastPlanRow}`, when: `=$Q${firstPlanRow}<$H${firstPlanRow}`, mark: "attention" },
    { range: `G${firstPlanRow}:G${lastPlanRow}`, when: `=$G${firstPlanRow}<24`, mark: "attention" },
    { range: `E${firstPlanRow}:F${lastPlanRow}`, when: `=E${firstPlanRow}=0`, mark: "muted" },
    { range: `C5:C6`, when: `=ISNUMBER(C5)`, mark: "danger" },
  ],
};
