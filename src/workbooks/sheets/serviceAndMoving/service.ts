import {
  block,
  formats,
  headingRow,
  label,
  link,
  note,
  output,
  tabColours,
  table,
  tableCell,
  tableHeader,
  tableInput,
  text,
  title,
  unit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import type { BookCheck } from "../../checks";
import { dateInput, dateRule } from "../dateInput";
import { numberInput, numberRule } from "../numberInput";

/** Task, last date, months, last hours, interval hours, part, quantity; null where there is none. */
export type Task = readonly [
  task: string,
  lastDate: number,
  months: number | null,
  lastHours: number | null,
  intervalHours: number | null,
  part: string | null,
  quantity: number | null,
];

export interface SiteService {
  sheet: string;
  site: string;
  harsh: number;
  why: string;
  readings: readonly [firstDate: number, firstHours: number, lastDate: number, lastHours: number];
  tasks: readonly Task[];
}

const firstTask = 14;
const taskRoom = 10;
const lastTask = firstTask + taskRoom - 1;
const listRow = lastTask + 4;
const listRoom = 26;
const partRoom = 12;

/** Where the parts of a site's sheet stand, for the order. */
export const partCells = (sheet: string): { parts: string; quantities: string } => ({
  parts: `'${sheet}'!$H$${listRow + 1}:$H$${listRow + partRoom - 1}`,
  quantities: `'${sheet}'!$I$${listRow + 1}:$I$${listRow + partRoom - 1}`,
});
/** TRUE if the list of a site's sheet refuses an input; no service at all (#N/A) is an answer. */
export const isRefused = (sheet: string): string => `IFERROR(ERROR.TYPE('${sheet}'!$A$${listRow})=3,FALSE)`;
/** The state of each service of the list. */
export const stateCells = (sheet: string): string => `'${sheet}'!$D$${listRow + 1}:$D$${listRow + listRoom - 1}`;

const rule = (words: string): CellDescription[] => headingRow(words, 9);

const taskRow = (task: Task | undefined): CellDescription[] => {
  const [name, lastDate, months, lastHours, intervalHours, part, quantity] = task ?? [];
  const number = (value: number | null | undefined, format: string): CellDescription =>
    value == null ? tableInput(undefined, { format }) : tableInput(value, { format });
  return [
    tableInput(name),
    tableInput(lastDate, { format: formats.date }),
    number(months, formats.whole),
    number(lastHours, formats.whole),
    number(intervalHours, formats.whole),
    intervalHours == null ? tableInput() : tableInput("=$C$7+(FromDay-$B$7)*$B$8", { format: formats.whole }),
    intervalHours == null ? tableInput() : tableInput("=$B$8", { format: formats.oneDecimal }),
    part == null ? tableInput() : tableInput(part),
    number(quantity, "General"),
  ];
};

/** The days of the list without its heading. */
const dates = `INDEX(A${listRow}#,SEQUENCE(ROWS(A${listRow}#)-1,1,2),1)`;
/** Empty while the list holds an error instead of services. */
const ifListed = (formula: string): string => `=IF(ROWS(A${listRow}#)=1,"",${formula})`;

export const serviceSheet = ({ sheet, site, harsh, why, readings, tasks }: SiteService): SheetDescription => ({
  name: sheet,
  columns: [34, 24, 12, 16, 16, 13, 13, 26, 12],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title(`Service at ${site}`),
    A2: text("Tasks and intervals come from the maker's manual; these are invented.", { across: 9 }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("Running time and conditions"),
      [
        label("First reading of the hour meter"),
        dateInput(readings[0], "First reading", "Day of the first reading of the hour meter."),
        numberInput(
          readings[1],
          "First reading",
          { words: "Hours on the meter that day.", least: 0, most: 1000000, unit: "h" },
          { format: formats.whole },
        ),
        unit("h"),
      ],
      [
        label("Last reading of the hour meter"),
        dateInput(readings[2], "Last reading", "Day of the last reading of the hour meter."),
        numberInput(
          readings[3],
          "Last reading",
          { words: "Hours on the meter that day.", least: 0, most: 1000000, unit: "h" },
          { format: formats.whole },
        ),
        unit("h"),
      ],
      [
        label("Running time"),
        output("=OXYGEN.HOURS_PER_DAY(B6,C6,B7,C7)", { format: formats.oneDecimal }),
        unit("h/day"),
      ],
      [
        label("Share of the intervals that is left"),
        numberInput(
          harsh,
          "Harsh conditions",
          {
            words:
              "Share of each interval that harsh conditions leave: 100 % as in the manual, less for dust, salt or heat.",
            least: 0.1,
            most: 1,
          },
          { format: formats.percent },
        ),
        unit("share"),
        note(`${why} Own planning default, no source: the manual's figure for harsh conditions goes first.`, {
          across: 5,
        }),
      ],
    ]),
    ...block("A11", [
      rule("Tasks"),
      [
        text(
          "By months and, where the meter counts too, by running hours: whichever comes first. Where hours alone count, enter 240 months. Don't leave a row between.",
          { across: 9 },
        ),
      ],
      [
        "task",
        "last done",
        "months",
        "meter then, h",
        "every … hours",
        "meter now, h",
        "h/day",
        "part",
        "quantity",
      ].map((words) => tableHeader(words)),
      ...Array.from({ length: taskRoom }, (_, at) => taskRow(tasks[at])),
    ]),
    ...block(`A${listRow - 2}`, [rule("What is due, and the parts for it")]),
    [`A${listRow - 1}`]: note(
      "Days from the sheet Quarter. An overdue task stands once, with the day it was due; after it is done, enter the day above.",
      { across: 9 },
    ),
    [`A${listRow}`]: table(`=OXYGEN.SERVICE_LIST(A${firstTask}:I${lastTask},FromDay,ToDay,$B$9)`, {
      spill: { room: listRoom, formats: [formats.date, undefined, formats.whole] },
      align: "left",
    }),
    [`D${listRow}`]: tableHeader("state today"),
    [`D${listRow + 1}`]: tableCell(ifListed(`OXYGEN.SERVICE_STATUS(AsOf,${dates},WarnDays,GraceDays)`), {
      align: "center",
      spill: { room: listRoom - 1 },
    }),
    [`E${listRow}`]: tableHeader("do it on the visit of"),
    [`E${listRow + 1}`]: tableCell(
      ifListed(
        `IFNA(OXYGEN.VISIT_FOR(AsOf,${dates},Visits,GraceDays),IF(MAX(Visits)<AsOf,"no visit planned","late: "&TEXT(MIN(IF(Visits>=AsOf,Visits,73050)),"yyyy-mm-dd")))`,
      ),
      {
        align: "center",
        spill: { room: listRoom - 1, formats: [formats.date] },
      },
    ),
    [`H${listRow}`]: table(`=OXYGEN.PARTS_NEEDED(A${firstTask}:I${lastTask},FromDay,ToDay,$B$9)`, {
      spill: { room: partRoom, formats: [undefined, "General"] },
    }),
  },
  validations: [
    {
      range: `A${firstTask}:A${lastTask}`,
      rule: { kind: "textLength", most: 40 },
      prompt: { title: "Task", words: "Name of the task, up to 40 letters." },
      refusal: { title: "Task", words: "Enter a name of up to 40 letters." },
    },
    { range: `B${firstTask}:B${lastTask}`, ...dateRule("Last done", "Day on which it was last done.", true) },
    {
      range: `C${firstTask}:C${lastTask}`,
      ...numberRule("Months", {
        words: "Months between services; 240 if only hours count.",
        least: 1,
        most: 240,
        whole: true,
      }),
      blankPasses: true,
    },
    {
      range: `D${firstTask}:D${lastTask}`,
      ...numberRule("Meter then", {
        words: "Hour meter when it was last done.",
        least: 0,
        most: 1000000,
        unit: "h",
      }),
      blankPasses: true,
    },
    {
      range: `E${firstTask}:E${lastTask}`,
      ...numberRule("Every … hours", {
        words: "Running hours between services; empty if only months count.",
        least: 1,
        most: 100000,
        unit: "h",
      }),
      blankPasses: true,
    },
    {
      range: `F${firstTask}:F${lastTask}`,
      ...numberRule("Meter now", {
        words: "Hour meter on the first day of the quarter: the cells reckon it from the last reading above.",
        least: 0,
        most: 1000000,
        unit: "h",
      }),
      blankPasses: true,
    },
    {
      range: `G${firstTask}:G${lastTask}`,
      ...numberRule("Hours a day", {
        words: "Running time a day where hours count: =$B$8 takes it from above.",
        least: 0.01,
        most: 24,
        unit: "h/day",
      }),
      blankPasses: true,
    },
    {
      range: `H${firstTask}:H${lastTask}`,
      rule: { kind: "textLength", most: 30 },
      prompt: { title: "Part", words: "Part that each service takes, named as on the sheet Quarter; empty if none." },
      refusal: { title: "Part", words: "Enter a name of up to 30 letters." },
    },
    {
      range: `I${firstTask}:I${lastTask}`,
      ...numberRule("Quantity", { words: "How many of the part each service takes.", least: 0.01, most: 1000 }),
      blankPasses: true,
    },
  ],
  conditional: [
    { range: `A${listRow + 1}:E${listRow + listRoom - 1}`, when: `$D${listRow + 1}="overdue"`, mark: "danger" },
    {
      range: `A${listRow + 1}:E${listRow + listRoom - 1}`,
      when: `OR($D${listRow + 1}="in grace",$D${listRow + 1}="due soon")`,
      mark: "attention",
    },
    {
      range: `E${listRow + 1}:E${listRow + listRoom - 1}`,
      when: `ISTEXT(E${listRow + 1})*(E${listRow + 1}<>"")`,
      mark: "attention",
    },
  ],
});

const tableOf = (sheet: string, columns: readonly string[], what: string) => ({
  sheet,
  first: firstTask,
  last: lastTask,
  columns,
  what,
});
export const tasksOf = (sheet: string) => tableOf(sheet, ["A", "B", "C"], "Tasks");
export const metersOf = (sheet: string) => tableOf(sheet, ["D", "E", "F", "G"], "Hour meters");
export const partsOf = (sheet: string) => tableOf(sheet, ["H", "I"], "Parts of tasks");

/** What no entry's own rule sees on a site's sheet. */
export const serviceChecks = (sheet: string): BookCheck[] => {
  const on = `'${sheet}'!`;
  const fault = (cell: string, what: string, isWrong: string, words: string): BookCheck => ({
    at: `${sheet}!${cell}`,
    what,
    formula: `=IF(${isWrong},"${sheet}!${cell} ${words}","ok")`,
  });
  const task = (letter: string): string => `${on}${letter}${firstTask}:${letter}${lastTask}`;
  return [
    fault("B7", "Last reading", `${on}B7<=${on}B6`, "is not after the first reading"),
    fault(
      "B7",
      "Last reading",
      `(${on}B7>AsOf)+(${on}B7<AsOf-92)>0`,
      "is after today or over three months old: read the meter",
    ),
    fault("C7", "Last reading", `${on}C7<${on}C6`, "is below the first reading"),
    fault("B8", "Running time", `ISERROR(${on}B8)`, "has no answer: see the readings above it"),
    fault(
      `B${firstTask}`,
      "Last done",
      `SUM(IF(ISNUMBER(${task("B")}),IF((${task("B")}>AsOf)+(${task("B")}<AsOf-3700)>0,1,0),0))>0`,
      "begins days of which one is after today or over ten years ago",
    ),
    fault(
      `D${firstTask}`,
      "Meter then",
      `SUM(IF(ISNUMBER(${task("D")}),IF(${task("D")}>${on}C7,1,0),0))>0`,
      "begins readings of which one is above the last reading of the meter",
    ),
    fault(
      `F${firstTask}`,
      "Meter now",
      `SUM(IF(${task("E")}="",0,IF(${task("F")}=${on}C7+(FromDay-${on}B7)*${on}B8,0,1)+IF(${task("G")}=${on}B8,0,1)))>0`,
      "begins meters that no longer follow the readings above: put the formulas back",
    ),
    fault(`A${listRow}`, "What is due", isRefused(sheet), "refuses an entry: click it, then the sign beside it"),
    fault(
      `D${listRow + 1}`,
      "State today",
      `SUMPRODUCT(--ISERROR(${stateCells(sheet)}))>0`,
      "begins states of which one has no answer",
    ),
  ];
};
