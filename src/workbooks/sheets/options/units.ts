import {
  formats,
  link,
  note,
  output,
  tabColours,
  tableCell,
  tableHeader,
  text,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { kindRows, mostUnits, optionCount, optionRows } from "./inputs";

const firstRow = 9;
const lastRow = firstRow + mostUnits - 1;
const pairs = [
  ["B", "C"],
  ["D", "E"],
  ["F", "G"],
  ["H", "I"],
  ["J", "K"],
].slice(0, optionCount) as [string, string][];

/** The kind of each numbered unit: those of the first kind first. */
const ofKind = (at: number, letter: string, none: string): string => {
  const row = optionRows.first + at;
  const [first, second, third] = [kindRows.first, kindRows.first + 1, kindRows.first + 2];
  const unit = `$A$${firstRow}:$A$${lastRow}`;
  return (
    `IF(${unit}<=Inputs!$B$${row},Inputs!$${letter}$${first},` +
    `IF(${unit}<=SUM(Inputs!$B$${row}:$C$${row}),Inputs!$${letter}$${second},` +
    `IF(${unit}<=SUM(Inputs!$B$${row}:$D$${row}),Inputs!$${letter}$${third},${none})))`
  );
};

export const supplyChance = (at: number): string => `Units!$${pairs[at]![0]}$6`;

export const unitsSheet: SheetDescription = {
  name: "Units",
  columns: [34, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13],
  tab: tabColours.result,
  freezeAt: `B${firstRow}`,
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("Chance of enough supply, unit by unit"),
    A2: text(
      "Each plant works or stands still by itself. The chance is exact over all ways in which plants can fail; stock, outages and faults that hit all plants at once are not in it.",
      { across: 11 },
    ),
    A3: link("Start!A1", "Back to the start"),
    A5: note("option"),
    A6: note("chance that the working plants make the mean need, gross"),
    A7: note("share of the need with the largest plant down; may pass 100 %"),
    A8: tableHeader("unit"),
    [`A${firstRow}`]: tableCell(`=SEQUENCE(${mostUnits})`, {
      align: "center",
      spill: { formats: [formats.whole], room: mostUnits },
    }),
    ...Object.fromEntries(
      pairs.flatMap(([output_, works], at): [string, CellDescription][] => {
        const made = `${output_}${firstRow}:${output_}${lastRow}`;
        return [
          [`${output_}5`, tableHeader(`=Inputs!$A$${optionRows.first + at}`, { across: 2 })],
          [
            `${output_}6`,
            output(`=OXYGEN.SUPPLY_CHANCE(${made},${works}${firstRow}:${works}${lastRow},DrawnNeed)`, {
              across: 2,
              align: "center",
              format: formats.percentOneDecimal,
            }),
          ],
          [
            `${output_}7`,
            output(`=OXYGEN.ONE_UNIT_DOWN(${made},DrawnNeed)`, { across: 2, align: "center", format: formats.percent }),
          ],
          [`${output_}8`, tableHeader("makes L/day")],
          [`${works}8`, tableHeader("works, share of time")],
          [
            `${output_}${firstRow}`,
            tableCell(`=24*${ofKind(at, "K", "0")}`, { spill: { formats: [formats.oneDecimal], room: mostUnits } }),
          ],
          [
            `${works}${firstRow}`,
            tableCell(`=${ofKind(at, "J", "1")}`, { spill: { formats: [formats.percent], room: mostUnits } }),
          ],
        ];
      }),
    ),
    [`A${lastRow + 2}`]: note(
      "A unit that makes 0 is not there. Shares of the time are the crew's own records or a guess: a guess of 95 % for 90 % makes every option look safer than it is.",
      { across: 11 },
    ),
  },
  conditional: [
    {
      range: `B${firstRow}:K${lastRow}`,
      when: `SUM(INDEX($A${firstRow}:$K${firstRow},1,2*INT(COLUMN(B${firstRow})/2)))=0`,
      mark: "muted",
    },
    { range: "B6:K6", when: "AND(ISNUMBER(B6),B6<LeastChance)", mark: "attention" },
    { range: "B7:K7", when: "AND(ISNUMBER(B7),B7<1)", mark: "attention" },
  ],
};
