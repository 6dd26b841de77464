import {
  block,
  formats,
  note,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  title,
  type SheetDescription,
} from "../../writer";
import { mostDays } from "./stockPlan";

const first = 6;
const last = first + mostDays - 1;

/** Power day by day: mains, then generators while their fuel lasts. */
export const fuelPlan: SheetDescription = {
  name: "Fuel plan",
  columns: [13, 12, 14, 16, 16, 16, 16],
  tab: tabColours.result,
  freezeAt: `A${first}`,
  print: { titleRows: "5:5" },
  cells: {
    A1: title("Power and fuel, day by day"),
    A2: subtitle(
      "Generators carry all plants in the hours without mains, as long as there is fuel above what is kept.",
      {
        across: 7,
      },
    ),
    A3: note("Test runs are not counted. Fuel that comes on a day can be burned that day.", { across: 7 }),
    ...block("A5", [
      [
        "Date",
        "Mains [h]",
        "Fuel came [L]",
        "Generators [h]",
        "Fuel burned [L]",
        "Fuel at the close [L]",
        "Power for the plants [h]",
      ].map((words) => tableHeader(words)),
      ...Array.from({ length: mostDays }, (_, index) => {
        const row = first + index;
        const before = index === 0 ? "Fuel" : `F${row - 1}`;
        const day = (formula: string): string => `=IF(${index + 1}>PlanDays,"",${formula})`;
        return [
          null,
          null,
          null,
          tableCell(day(`MIN(24-B${row},GeneratorsOn*MAX(0,${before}+C${row}-FuelKeep)/FuelHourly)`), {
            format: formats.oneDecimal,
          }),
          tableCell(day(`D${row}*FuelHourly`), { format: formats.whole }),
          tableCell(day(`${before}+C${row}-E${row}`), { format: formats.whole }),
          tableCell(day(`B${row}+D${row}`), { format: formats.oneDecimal }),
        ];
      }),
    ]),
    A6: {
      ...tableCell("=SEQUENCE(PlanDays,1,FirstDay)"),
      spill: { formats: [formats.date], room: mostDays },
    },
    B6: {
      ...tableCell(
        '=IF(COUNTIFS(OutageFrom,"<="&A6#,OutageTo,">="&A6#)=0,24,MINIFS(OutageHours,OutageFrom,"<="&A6#,OutageTo,">="&A6#))',
      ),
      spill: { formats: [formats.oneDecimal], room: mostDays },
    },
    C6: {
      ...tableCell("=SUMIFS(FuelAmounts,FuelDates,A6#)"),
      spill: { formats: [formats.whole], room: mostDays },
    },
  },
  conditional: [
    { range: `B${first}:B${last}`, when: `=AND(ISNUMBER(B${first}),B${first}<24)`, mark: "attention" },
    { range: `G${first}:G${last}`, when: `=AND(ISNUMBER(G${first}),G${first}<24)`, mark: "danger" },
  ],
};

export const fuelNames = {
  FuelClose: `Fuel plan!F${first}:F${last}`,
  DarkHours: `Fuel plan!G${first}:G${last}`,
};
