import { firstDay } from "../../scenario/velmar";
import {
  block,
  caution,
  formats,
  heading,
  headingRow,
  input,
  label,
  note,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  tableInput,
  title,
  unit,
  type CellDescription,
  type Scalar,
  type SheetDescription,
} from "../../writer";
import { dateEntry, mayStayEmpty, numberEntry, wholeEntry, wordsEntry } from "../entries";

type Task = readonly [
  task: string,
  last: number,
  months: number,
  lastHours?: number,
  interval?: number,
  hoursNow?: number,
  perDay?: number,
  part?: string,
  quantity?: number,
];

/** Invented tasks and intervals. */
const tasks: readonly Task[] = [
  ["Air intake filters", firstDay - 20, 1, undefined, undefined, undefined, undefined, "intake filter", 4],
  ["Compressor oil", firstDay - 46, 6, 9120, 1500, 10130, 22, "oil [L]", 18],
  ["Purity check against a meter", firstDay - 25, 1],
  ["Drive belts", firstDay - 100, 6, 8200, 3000, 10130, 22, "belt", 4],
  ["Relief valves: look and test", firstDay - 280, 12],
  ["Oxygen meter: calibrate", firstDay - 150, 6, undefined, undefined, undefined, undefined, "sensor", 1],
  ["Generator oil and filter", firstDay - 8, 6, 4210, 250, 4276, 8, "oil filter", 2],
  ["Transfer hoses: look, date", firstDay - 65, 3],
];

const taskRows = 15;
const firstRow = 10;
const lastRow = firstRow + taskRows - 1;
export const serviceRows = { first: firstRow, last: lastRow };
const listRow = lastRow + 4;

const taskLine = (index: number): CellDescription[] => {
  const task: readonly (Scalar | undefined)[] = tasks[index] ?? [];
  const row = firstRow + index;
  const rules = [
    wordsEntry("Task", "What is done."),
    dateEntry("Last done", "The day it was last done.", true),
    mayStayEmpty(wholeEntry("Months", "Months from one to the next, also where hours count.", 1, 60)),
    mayStayEmpty(numberEntry("Last hours", "Hour meter when it was last done; blank if months count.", 0, 1e6)),
    mayStayEmpty(numberEntry("Interval hours", "Running hours from one to the next.", 1, 1e6)),
    mayStayEmpty(
      numberEntry("Hours now", "Hour meter on the first day of the plan; blank if only months count.", 0, 1e6),
    ),
    mayStayEmpty(numberEntry("Hours a day", "Average running hours a day.", 0.1, 24)),
    wordsEntry("Part", "Part used each time; blank if none."),
    mayStayEmpty(numberEntry("Quantity", "How many each time.", 0, 10000)),
  ];
  const looks = [
    undefined,
    formats.date,
    formats.whole,
    formats.whole,
    formats.whole,
    formats.whole,
    formats.oneDecimal,
    undefined,
    formats.whole,
  ];
  return [
    ...rules.map((validation, column) =>
      tableInput(task[column], { validation, ...(looks[column] ? { format: looks[column] } : {}) }),
    ),
    tableCell(
      `=IF(A${row}="","",IF(COUNTA(D${row}:G${row})=0,OXYGEN.NEXT_SERVICE_DATE(B${row},C${row},Harsh),OXYGEN.SERVICE_DUE(FirstDay,B${row},C${row},D${row},E${row},F${row},G${row},Harsh)))`,
      { format: formats.date, align: "right" },
    ),
    tableCell(`=IF(A${row}="","",OXYGEN.SERVICE_STATUS(AsOf,J${row},WarnDays,Grace))`, { align: "center" }),
  ];
};

/** What is due in the sixty days, and the parts for it. */
export const service: SheetDescription = {
  name: "Service calendar",
  columns: [30, 12, 12, 10, 10, 11, 10, 15, 10, 13, 13],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { orientation: "landscape", titleRows: "1:1", breaksBefore: [26] },
  cells: {
    A1: title("Service calendar"),
    A2: subtitle(
      "Months count from the day it was last done, hours from the meter on the plan's first day; whichever comes first.",
      { across: 11 },
    ),
    ...block("A4", [
      headingRow("Rules", 11),
      [
        label("Share of the intervals left by dust and heat"),
        input(0.8, {
          name: "Harsh",
          format: formats.percent,
          validation: numberEntry(
            "Harsh conditions",
            "1 for clean and cool; 0.8 takes a fifth off every interval.",
            0.05,
            1,
          ),
        }),
        unit("share"),
        note("Own planning figure.", { across: 8 }),
      ],
      [
        label("Warn before"),
        input(7, {
          name: "WarnDays",
          format: formats.whole,
          validation: wholeEntry("Warn before", "Days before a date at which it says due soon.", 0, 365),
        }),
        unit("days"),
      ],
      [
        label("Grace after"),
        input(3, {
          name: "Grace",
          format: formats.whole,
          validation: wholeEntry("Grace", "Days after a date that are still let pass.", 0, 365),
        }),
        unit("days"),
      ],
    ]),
    ...block("A9", [
      [
        "Task",
        "Last done",
        "Months",
        "Hours at last",
        "Interval [h]",
        "Hours now",
        "Runs [h/day]",
        "Part",
        "Quantity",
        "Next due",
        "State as of date",
      ].map((words) => tableHeader(words)),
      ...Array.from({ length: taskRows }, (_, index) => taskLine(index)),
    ]),
    [`A${listRow - 2}`]: heading("Due in the days of the plan"),
    ...Object.fromEntries(["B", "C"].map((column) => [`${column}${listRow - 2}`, heading()])),
    [`A${listRow - 1}`]: note(
      "Dates count the shares above. A task already overdue stands first, once, with the date it was due.",
      { across: 6 },
    ),
    [`H${listRow - 2}`]: heading("Parts for it"),
    [`I${listRow - 2}`]: heading(),
    [`J${listRow - 2}`]: heading(),
    [`D${listRow - 2}`]: heading(),
    [`A${listRow}`]: table(
      "=LET(list,OXYGEN.SERVICE_LIST(ServiceTasks,FirstDay,LastDay,Harsh),INDEX(list,SEQUENCE(ROWS(list)),{2,1,3}))",
      {
        spill: { formats: [undefined, formats.date, formats.whole], room: 60 },
      },
    ),
    [`H${listRow}`]: table("=OXYGEN.PARTS_NEEDED(ServiceTasks,FirstDay,LastDay,Harsh)", {
      spill: { formats: [undefined, formats.whole], room: 12 },
    }),
    [`H${listRow + 14}`]: caution(
      "Caution: the maker's manual sets tasks and intervals. De-energise, vent and warm before opening anything; oxygen-clean parts only.",
      { across: 4 },
    ),
  },
  conditional: [
    { range: `K${firstRow}:K${lastRow}`, when: `=K${firstRow}="overdue"`, mark: "danger", last: true },
    {
      range: `K${firstRow}:K${lastRow}`,
      when: `=OR(K${firstRow}="due soon",K${firstRow}="in grace")`,
      mark: "attention",
    },
    {
      range: `A${listRow + 1}:C${listRow + 59}`,
      when: `=AND(ISNUMBER($B${listRow + 1}),$B${listRow + 1}<AsOf)`,
      mark: "danger",
    },
  ],
};

export const serviceNames = { ServiceTasks: `Service calendar!A${firstRow}:I${lastRow}` };
export const serviceListCell = `A${listRow}`;
