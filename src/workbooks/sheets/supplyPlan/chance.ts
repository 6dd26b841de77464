import {
  block,
  caution,
  formats,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  title,
  type SheetDescription,
} from "../../writer";
import { mostDays, shownArguments } from "./stockPlan";

const weeks = Math.ceil(mostDays / 7);
const headRow = 5;
export const weekRows = { first: headRow + 1, last: headRow + weeks };

/** The plan repeated with chance. */
export const chance: SheetDescription = {
  name: "Chance",
  columns: [13, 14, 14, 12, 12, 12, 4, 8, 13, 16, 2, 10],
  tab: tabColours.result,
  freezeAt: `A${headRow + 1}`,
  print: { titleRows: `${headRow}:${headRow}` },
  cells: {
    A1: title("Chance of running short"),
    A2: subtitle(
      "The plan shown on Stock plan, run 1,000 times with needs, plants and deliveries that vary as Inputs says. Closing stock in litres: one run in twenty below low, half below middle, one in twenty above high.",
      { across: 10 },
    ),
    A3: caution(
      "Caution: chance of what is entered only. Leaks, strikes, a second outage and a wrong entry are not in it.",
      {
        across: 10,
      },
    ),
    [`A${headRow}`]: table(`=OXYGEN.PLAN_CHANCE(${shownArguments},NeedSpread,Availability,RepairDays,LateDays)`, {
      spill: {
        formats: [formats.date, formats.percentOneDecimal, formats.percentOneDecimal, formats.whole],
        room: mostDays + 1,
      },
    }),
    ...block(`H${headRow}`, [
      ["Week", "to", "Short by then"].map((words) => tableHeader(words)),
      ...Array.from({ length: weeks }, (_, index) => {
        const day = `MIN(PlanDays,${7 * (index + 1)})`;
        const within = (formula: string): string => `=IF(${7 * index + 1}>PlanDays,"",${formula})`;
        return [
          tableCell(within(`${index + 1}`), { format: formats.whole }),
          tableCell(within(`FirstDay+${day}-1`), { format: formats.date }),
          tableCell(within(`INDEX(A${headRow}#,1+${day},3)`), { format: formats.percentOneDecimal }),
        ];
      }),
    ]),
    L1: tableCell(`=INDEX(A${headRow}#,1+PlanDays,3)`, { name: "ShortChance", format: formats.percentOneDecimal }),
  },
};
