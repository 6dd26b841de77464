import {
  block,
  caution,
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
import { plants } from "../../scenario/velmar";
import { dateLimits } from "../dateInput";
import { numberInput } from "../numberInput";

const firstRow = 14;
const room = 30;
const lastRow = firstRow + room - 1;

/** Day and level of the log, with slips: a day twice, a level over the brim, a comma for a point, a jump. */
const readings: readonly [day: number, level: number | string][] = [
  [46062, 74],
  [46063, 81],
  [46064, 86],
  [46065, 90],
  [46066, 95],
  [46066, 97],
  [46067, 101],
  [46068, 142],
  [46069, 108],
  [46070, "110,5"],
  [46071, 113],
  [46072, 61],
  [46073, 68],
  [46074, 74],
  [46075, 79],
  [46076, 79],
  [46077, 79],
  [46078, 88],
];

/** A full vessel left standing without draw, level by weight. */
const standing: readonly [time: number, level: number][] = [
  [46050 + 8 / 24, 124.1],
  [46050 + 20 / 24, 117.8],
  [46051 + 8 / 24, 111.2],
  [46051 + 20 / 24, 104.3],
  [46052 + 8 / 24, 98.2],
  [46052 + 20 / 24, 91.5],
];
const standingFirst = 48;
const standingLast = standingFirst + 7;

export const logTable = { sheet: "Log", first: firstRow, last: lastRow, columns: ["A", "B"], what: "Log" };
export const standingTable = {
  sheet: "Log",
  first: standingFirst,
  last: standingLast,
  columns: ["A", "B"],
  what: "Standing loss",
};

const rule = (words: string, columns = 8): CellDescription[] => headingRow(words, columns);

/** The log of one vessel: what can't be right in it, and its standing loss. */
export const logSheet: SheetDescription = {
  name: "Log",
  columns: [22, 16, 14, 3, 9, 17, 52, 12],
  tab: tabColours.result,
  freezeAt: "A4",
  // A log grows by rows put in, which a protected sheet refuses.
  protect: false,
  print: { orientation: "portrait", pagesHigh: 1 },
  cells: {
    A1: title("Log of one vessel"),
    A2: text(
      "Type what the crew wrote, slips and all. Find the slips first; correct the log only after someone has looked.",
      { across: 8 },
    ),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("The vessel"),
      [
        label("Liquid when full"),
        numberInput(
          plants.large.capacity,
          "Liquid when full",
          { words: "Liquid the vessel holds when full, in L.", least: 1, most: 100000, unit: "L" },
          { name: "LogCapacity", format: formats.whole },
        ),
        unit("L"),
      ],
      [
        label("Most it can rise"),
        numberInput(
          60,
          "Most rise",
          {
            words: "Most that the plant and deliveries can add in a day, in L.",
            least: 0,
            most: 100000,
            unit: "L/day",
          },
          { name: "MostRise", format: formats.whole },
        ),
        unit("L/day"),
        null,
        note("From the plant's make at this site.", { across: 4 }),
      ],
      [
        label("Most it can fall"),
        numberInput(
          45,
          "Most fall",
          { words: "Most that can be drawn and lost in a day, in L.", least: 0, most: 100000, unit: "L/day" },
          { name: "MostFall", format: formats.whole },
        ),
        unit("L/day"),
        null,
        note("Gross draw and boil-off of the busiest day.", { across: 4 }),
      ],
    ]),
    A10: caution(
      "Caution: a level that falls too fast may be a leak, not a slip. Go and look, without flames or grease, before you correct the log.",
      { across: 8 },
    ),
    ...block("A12", [rule("Log and what can't be right")]),
    A13: tableHeader("day"),
    B13: tableHeader("level L"),
    C13: tableHeader("cell check"),
    ...Object.fromEntries(
      Array.from({ length: room }, (_, at) => {
        const [day, level] = readings[at] ?? [];
        return [
          [`A${firstRow + at}`, tableInput(day, { format: formats.date })],
          [`B${firstRow + at}`, tableInput(level, { format: formats.oneDecimal, align: "right" })],
        ] as [string, CellDescription][];
      }).flat(),
    ),
    [`C${firstRow}`]: tableCell(
      `=IF(B${firstRow}:B${lastRow}="","",IF(OXYGEN.VALUE_CHECK(B${firstRow}:B${lastRow},"level")="ok","ok","look"))`,
      { align: "center", spill: { room } },
    ),
    E13: table(`=OXYGEN.LOG_FAULTS(A${firstRow}:A${lastRow},B${firstRow}:B${lastRow},LogCapacity,MostRise,MostFall)`, {
      wrap: true,
      spill: { room: 12, formats: [formats.whole, formats.date, undefined] },
    }),
    E25: note("Row counts the log's rows from its first day.", { across: 4 }),
    ...block("A45", [
      rule("Standing loss, from readings without draw"),
      [
        text(
          "Level or weight of the closed-off vessel at several times, venting, with the plant off. Longer is better: three days or more.",
          { across: 8 },
        ),
      ],
      [tableHeader("time"), tableHeader("level L")],
    ]),
    ...Object.fromEntries(
      Array.from({ length: standingLast - standingFirst + 1 }, (_, at) => {
        const [time, level] = standing[at] ?? [];
        return [
          [`A${standingFirst + at}`, tableInput(time, { format: formats.dateTime })],
          [`B${standingFirst + at}`, tableInput(level, { format: formats.oneDecimal })],
        ] as [string, CellDescription][];
      }).flat(),
    ),
    E47: table(
      `=OXYGEN.LOSS_FROM_READINGS(FILTER(A${standingFirst}:A${standingLast},B${standingFirst}:B${standingLast}<>""),FILTER(B${standingFirst}:B${standingLast},B${standingFirst}:B${standingLast}<>""))`,
      { spill: { formats: [formats.twoDecimals, formats.twoDecimals, "0.000"], room: 2 } },
    ),
    E50: label("Days in which a full one empties itself", { across: 2 }),
    G50: output("=LogCapacity/E48", { format: formats.oneDecimal, align: "left" }),
    E51: note(
      "Common practice, no source: 8 to 10 days for a full plant vessel without power. Take your own figure as empty days.",
      { across: 4 },
    ),
    E52: note("r² well under 1: something was drawn, or the gauge sticks. Measure again.", { across: 4 }),
  },
  validations: [
    {
      range: `A${firstRow}:A${lastRow}`,
      rule: { kind: "date", ...dateLimits },
      prompt: { title: "Day", words: "Day of the reading, in order, as the log has it." },
      refusal: { title: "Day", words: "Enter a date from 2000-01-01 to 2099-12-31.", weight: "warning" },
    },
    {
      range: `B${firstRow}:B${lastRow}`,
      rule: { kind: "number", least: 0, most: 100000 },
      prompt: { title: "Level", words: "Liquid in the vessel as the log has it, in L." },
      refusal: {
        title: "Level",
        words: "That is no level in litres. Keep it only to have it listed as a fault.",
        weight: "warning",
      },
    },
    {
      range: `A${standingFirst}:A${standingLast}`,
      rule: { kind: "date", ...dateLimits },
      prompt: { title: "Time", words: "Day and time of the reading, such as 2026-01-28 08:00." },
      refusal: { title: "Time", words: "Enter a date and time from 2000-01-01 to 2099-12-31." },
    },
    {
      range: `B${standingFirst}:B${standingLast}`,
      rule: { kind: "number", least: 0, most: 100000 },
      prompt: { title: "Level", words: "Liquid in the vessel at that time, in L." },
      refusal: { title: "Level", words: "Enter litres from 0 to 100,000." },
    },
  ],
  charts: [
    {
      kind: "line",
      title: "Level as logged",
      from: "E27",
      to: "G43",
      categories: `Log!A${firstRow}:A${lastRow}`,
      dates: true,
      series: [{ name: "level", values: `Log!B${firstRow}:B${lastRow}` }],
      x: { title: "day" },
      y: { title: "liquid [L]", least: 0 },
      altText: "Line of the logged levels over the days; slips stand out as jumps and gaps.",
    },
  ],
  conditional: [
    { range: `C${firstRow}:C${lastRow}`, when: `C${firstRow}="look"`, mark: "attention" },
    { range: "E14:G24", when: 'AND($G14<>"",$G14<>"no fault found")', mark: "attention" },
    { range: `A${firstRow}:B${lastRow}`, when: `COUNTIF($E$14:$E$24,ROW()-${firstRow - 1})>0`, mark: "attention" },
  ],
};
