import { block, formats, note, subtitle, tabColours, table, title, type SheetDescription } from "../../writer";
import { mostDays, shownPlan } from "./stockPlan";

/** What was read against what was planned. */
export const planAndLog: SheetDescription = {
  name: "Plan and log",
  columns: [16, 16, 16, 16],
  tab: tabColours.result,
  freezeAt: "A5",
  print: { titleRows: "4:4" },
  cells: {
    A1: title("Plan against log"),
    A2: subtitle(
      "Liquid planned and read at the close of a day, in litres. The last row is what the plan drifts off a day.",
      {
        across: 4,
      },
    ),
    A4: table(
      `=IF(COUNT(ReadDates)=0,"No reading yet: fill in Logs.",OXYGEN.PLAN_AGAINST_LOG(${shownPlan},ReadDates,ReadLevels))`,
      { spill: { formats: [formats.date, formats.oneDecimal], room: mostDays } },
    ),
    ...block("F4", [
      [
        note("A drift below 0: more goes than planned. Look for a leak, a wrong draw ratio, more patients.", {
          across: 4,
        }),
      ],
    ]),
  },
};
