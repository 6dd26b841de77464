import { firstDay } from "../../scenario/velmar";
import {
  block,
  formats,
  headingRow,
  subtitle,
  tabColours,
  tableHeader,
  tableInput,
  title,
  type SheetDescription,
} from "../../writer";
import { dateEntry, mayStayEmpty, numberEntry, wholeEntry } from "../entries";

/** Invented issues of full cylinders in the four weeks before the plan. */
const issued = [6, 4, 7, 5, 9, 3, 2, 6, 8, 5, 6, 7, 4, 1, 7, 5, 6, 10, 6, 3, 4, 8, 6, 5, 7, 9, 4, 3];

export const logRows = { first: 6, last: 95 };
const count = logRows.last - logRows.first + 1;

/** What was issued and read, day by day; open for pasting. */
export const logs: SheetDescription = {
  name: "Logs",
  columns: [14, 14, 4, 14, 14],
  tab: tabColours.input,
  freezeAt: "A6",
  protect: false,
  print: { titleRows: "5:5" },
  cells: {
    A1: title("Logs"),
    A2: subtitle("90 rows each; spare rows stay blank. Not protected, so that a log can be pasted in as values.", {
      across: 5,
    }),
    ...block("A4", [headingRow("Cylinders issued", 2)]),
    ...block("D4", [headingRow("Liquid read", 2)]),
    ...block("A5", [
      [tableHeader("Day"), tableHeader("Issued")],
      ...Array.from({ length: count }, (_, index) => [
        tableInput(index < issued.length ? firstDay - issued.length + index : undefined, {
          format: formats.date,
          validation: dateEntry("Day", "One row a day, in any order.", true),
        }),
        tableInput(issued[index], {
          format: formats.whole,
          validation: mayStayEmpty(wholeEntry("Issued", "Full cylinders issued that day; 0 where none was.", 0, 500)),
        }),
      ]),
    ]),
    ...block("D5", [
      [tableHeader("Evening of"), tableHeader("Liquid [L]")],
      ...Array.from({ length: count }, () => [
        tableInput(undefined, {
          format: formats.date,
          validation: dateEntry("Evening of", "The day at whose close all plants were read.", true),
        }),
        tableInput(undefined, {
          format: formats.whole,
          validation: mayStayEmpty(numberEntry("Liquid", "Liquid in all plants together, in litres.", 0, 100000)),
        }),
      ]),
    ]),
  },
};

const column = (letter: string): string => `Logs!${letter}${logRows.first}:${letter}${logRows.last}`;

export const logNames = {
  IssueDates: column("A"),
  IssueCounts: column("B"),
  ReadDates: column("D"),
  ReadLevels: column("E"),
};
