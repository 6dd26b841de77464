import {
  block,
  formats,
  headingRow,
  input,
  label,
  link,
  note,
  output,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  title,
  unit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { numberEntry } from "../entries";

/** The longest plan, and the rows its days stand in. */
export const mostDays = 120;
export const firstPlanRow = 21;
export const lastPlanRow = firstPlanRow + mostDays - 1;
const headRow = firstPlanRow - 1;

const days = (letter: string): string => `'Stock plan'!${letter}${firstPlanRow}#`;
const need = `INDEX('Stock plan'!B${headRow}#,SEQUENCE(PlanDays,1,2),2)`;

/** The arguments of a plan: deliveries by day, plants, opening. */
const planOf = (received: string, plants = "PlanPlants", opening = "Opening"): string =>
  `${days("A")},${need},${received},${days("G")},${plants},${opening},DrawRatio,EmptyDays,RestartHours,SameDay`;

export const shownPlan = `'Stock plan'!J${headRow}#`;
export const shownArguments = planOf(`IF(DeliveryCase="as moved",${days("F")},${days("E")})`);
export const restOfArguments = shownArguments;

interface Case {
  words: string;
  /** How the case is called on the summary. */
  name: string;
  plan: string;
  varied?: string;
}

const late = "SUMIFS(DeliveryAmounts,MovedDates," + days("A") + "-1)";

export const cases: readonly Case[] = [
  { words: "as ordered", name: "Ordered", plan: planOf(days("E")), varied: planOf(days("E")) },
  { words: "as moved", name: "Moved", plan: planOf(days("F")), varied: planOf(days("F")) },
  { words: "as moved, each a day late", name: "Late", plan: planOf(late) },
  {
    words: "as moved, one plant fewer",
    name: "Fewer",
    plan: planOf(days("F"), "PlanPlantsFewer", "MIN(Opening,RoomFewer)"),
  },
];

export const caseRow = (index: number): number => 6 + index;
/** A figure of a case: 1 first short date, 2 short, 3 lowest stock, 4 its date, 5 vented, 6 days below the reserve. */
export const caseFigure = (index: number, figure: number): string =>
  `INDEX('Stock plan'!D${caseRow(index)}#,1,${figure})`;

const columnOf = (number: number): string => `INDEX(p,SEQUENCE(PlanDays,1,2),${number})`;

/** One run of the plan gives all six, so that no figure can be of another plan than its neighbour. */
const figures = (plan: string): string =>
  `=LET(p,OXYGEN.STOCK_PLAN(${plan}),day,${columnOf(1)},close,${columnOf(8)},short,${columnOf(9)},CHOOSE({1,2,3,4,5,6},IF(SUM(short)>0,INDEX(day,IFERROR(MATCH(1,IF(short>0,1,0),0),1)),"none"),SUM(short),IF(SUM(short)>0,0,MIN(close)),INDEX(day,IFERROR(MATCH(1,IF(short>0,1,0),0),MATCH(MIN(close),close,0))),SUM(${columnOf(7)}),SUM(IF(close<ReserveLitres,1,0))))`;

const figureFormats = [formats.date, formats.whole, formats.whole, formats.date, formats.whole, formats.whole];

const litres = formats.oneDecimal;

const section = (words: string, columns: number): CellDescription[] => headingRow(words, columns);

/** Every day of the plan, for the deliveries chosen, and four cases side by side. */
export const stockPlan: SheetDescription = {
  name: "Stock plan",
  columns: [12, 6, 11, 13, 12, 12, 12, 12, 11, 12, 11, 11, 12, 11, 11, 11, 11, 11, 12, 11],
  tab: tabColours.result,
  freezeAt: `B${firstPlanRow}`,
  print: { orientation: "landscape", titleRows: `${headRow}:${headRow}` },
  cells: {
    A1: title("Stock plan, day by day"),
    A2: subtitle(
      "Liquid in all plants together, in litres. Left: what goes in (demand is net, need is gross). Right: what comes out, for the deliveries chosen on Inputs.",
      { across: 16 },
    ),
    R1: link("Inputs!A1", "To the inputs", "Deliveries, outages, plants"),
    ...block("A4", [
      section("Cases", 10),
      [
        tableHeader("Deliveries", { across: 3 }),
        null,
        null,
        ...[
          "First short date",
          "Short in all [L]",
          "Lowest stock [L]",
          "on",
          "Vented in all [L]",
          "Days below reserve",
          "Plants for no shortage",
        ].map((words) => tableHeader(words)),
      ],
      ...cases.map(({ words, plan, varied, name }) => [
        tableCell(words, { across: 3 }),
        null,
        null,
        { ...tableCell(figures(plan)), spill: { formats: figureFormats } },
        null,
        null,
        null,
        null,
        null,
        ...(varied
          ? [
              tableCell(
                `=IF(ISERROR(${caseFigure(
                  cases.findIndex((one) => one.name === name),
                  2,
                )}),${caseFigure(
                  cases.findIndex((one) => one.name === name),
                  2,
                )},IFNA(OXYGEN.PLANTS_FOR_PLAN(${varied}),"over 20"))`,
                { format: formats.whole, align: "right", name: `PlantsFor${name}` },
              ),
            ]
          : []),
      ]),
    ]),
    ...block("A11", [
      [
        label("Reserve", { across: 3 }),
        null,
        null,
        output("=ReserveDays*GrossNeed", { format: formats.litres, name: "ReserveLitres" }),
        note("Short: gross litres that could not be drawn. Vented: delivered and did not fit.", { across: 8 }),
      ],
      [
        label("Last day of the plan", { across: 3 }),
        null,
        null,
        output("=FirstDay+PlanDays-1", { format: formats.date, name: "LastDay" }),
        note("Plants for no shortage: fewest of the first kind on Inputs, the others as they are.", { across: 8 }),
      ],
      [
        label("One batch of liquid", { across: 3 }),
        null,
        null,
        input(50, {
          name: "Batch",
          format: formats.whole,
          validation: numberEntry("Batch", "Litres that come together, for the deliveries wanted.", 1, 20000),
        }),
        unit("L"),
      ],
      [
        label("Deliveries wanted", { across: 3 }),
        null,
        null,
        output(
          `=IFNA(LET(d,OXYGEN.DELIVERIES_NEEDED(${days("A")},${need},${days("G")},PlanPlants,Opening,Batch,ReserveLitres,DrawRatio,EmptyDays,RestartHours,SameDay),IF(ROWS(d)=1,"none",(ROWS(d)-1)&", "&TEXT(SUM(INDEX(d,SEQUENCE(ROWS(d)-1,1,2),2)),"0")&" L")),"no dates help")`,
          { across: 2, name: "DeliveriesWanted" },
        ),
        null,
        note(
          "In whole batches, so that no day is short or closes below the reserve, if none were ordered; dates below.",
          { across: 8 },
        ),
      ],
      [
        note(
          "Received counts what was offered, vented part included. Held back: the plants were full and waited in standby. opening + made + received = drawn + boil-off + vented + closing, in every row.",
          { across: 16 },
        ),
      ],
    ]),
    [`A${headRow}`]: tableHeader("Date"),
    ...block(`D${headRow}`, [
      [
        tableHeader("Need gross [L]"),
        tableHeader("Offered as ordered"),
        tableHeader("Offered as moved"),
        tableHeader("Power [h]"),
        tableHeader("Reserve [L]"),
      ],
    ]),
    [`A${firstPlanRow}`]: {
      ...tableCell("=SEQUENCE(PlanDays,1,FirstDay)"),
      spill: { formats: [formats.date], room: mostDays },
    },
    [`B${headRow}`]: table(
      "=OXYGEN.SURGE_DEMAND(NetNeed*(1+Margin),PlanDays,SurgeStart,SurgeFactor,SurgeRise,SurgeHold,SurgeFall)",
      { spill: { formats: [formats.whole, litres], room: mostDays + 1 } },
    ),
    [`D${firstPlanRow}`]: {
      ...tableCell(`=OXYGEN.GROSS_DRAW(${need},DrawRatio)`),
      spill: { formats: [litres], room: mostDays },
    },
    [`E${firstPlanRow}`]: {
      ...tableCell(`=SUMIFS(DeliveryAmounts,OrderedDates,A${firstPlanRow}#)`),
      spill: { formats: [formats.whole], room: mostDays },
    },
    [`F${firstPlanRow}`]: {
      ...tableCell(`=SUMIFS(DeliveryAmounts,MovedDates,A${firstPlanRow}#)`),
      spill: { formats: [formats.whole], room: mostDays },
    },
    [`G${firstPlanRow}`]: {
      ...tableCell("=INDEX('Fuel plan'!G6:G125,SEQUENCE(PlanDays))"),
      spill: { formats: [formats.oneDecimal], room: mostDays },
    },
    [`H${firstPlanRow}`]: {
      ...tableCell(`=ReserveLitres+0*A${firstPlanRow}#`),
      spill: { formats: [formats.whole], room: mostDays },
    },
    [`J${headRow}`]: table(`=OXYGEN.STOCK_PLAN(${shownArguments})`, {
      spill: { formats: [formats.date, litres], room: mostDays + 1 },
    }),
    J17: table(`=OXYGEN.PLAN_TOTALS(J${headRow}#)`, { spill: { formats: [litres] } }),
    A17: note("Totals of the plan; balance 0 says the table is whole:", { across: 8 }),
  },
  conditional: [
    {
      range: `J${firstPlanRow}:T${lastPlanRow}`,
      when: `=AND(ISNUMBER($R${firstPlanRow}),$R${firstPlanRow}>0)`,
      mark: "danger",
      last: true,
    },
    {
      range: `Q${firstPlanRow}:Q${lastPlanRow}`,
      when: `=AND(ISNUMBER($Q${firstPlanRow}),$Q${firstPlanRow}<$H${firstPlanRow})`,
      mark: "attention",
    },
    {
      range: `G${firstPlanRow}:G${lastPlanRow}`,
      when: `=AND(ISNUMBER($G${firstPlanRow}),$G${firstPlanRow}<24)`,
      mark: "attention",
    },
    { range: `E${firstPlanRow}:F${lastPlanRow}`, when: `=E${firstPlanRow}=0`, mark: "muted" },
    { range: "D6:D9", when: "=ISNUMBER(D6)", mark: "danger" },
  ],
};
