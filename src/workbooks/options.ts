import { optionsSheet } from "./sheets/options/comparison";
import { inputChecks, inputNames, inputsSheet, optionTable, wardTable } from "./sheets/options/inputs";
import { mixSheet } from "./sheets/options/mixAndMoney";
import { outageSheet } from "./sheets/options/outage";
import { sensitivitySheet } from "./sheets/options/sensitivity";
import { startSheet } from "./sheets/options/start";
import { unitsSheet } from "./sheets/options/units";
import { workingsSheet } from "./sheets/options/workings";
import { noRowTwice, rowsWhole, withChecks } from "./checks";
import type { WorkbookDescription } from "./writer";

/** An analyst's comparison of ways to supply one hospital. */
export const workbook: WorkbookDescription = withChecks(
  {
    properties: {
      title: "Supply options",
      subject: "Ways to supply a field hospital with oxygen, tested and side by side",
      description: "Invented scenario. Needs the add-in Oxygen Supply Functions to recalculate.",
      keywords: "oxygen, options, best mix, break-even",
    },
    names: inputNames,
    sheets: [startSheet, inputsSheet, optionsSheet, outageSheet, unitsSheet, mixSheet, sensitivitySheet, workingsSheet],
  },
  {
    checks: [
      rowsWhole(wardTable),
      noRowTwice(wardTable, ["A"]),
      rowsWhole(optionTable),
      noRowTwice(optionTable, ["A"]),
      ...inputChecks,
    ],
    answers: [
      { at: "Inputs!B14:B16", what: "Need" },
      { at: "Inputs!K41:K43", what: "Make at this site" },
      { at: "Workings!E6:I10", what: "Loads, fuel and prices" },
      { at: "Workings!B14:I18", what: "Figures of the options" },
      { at: "Units!B6:K7", what: "Chance of enough" },
      { at: "Outage!E10:I10", what: "Outage, day by day" },
      { at: "Outage!E7:I7", what: "First short days" },
      { at: "Options!A10", what: "Options side by side" },
      { at: "Options!B33:B34", what: "Score" },
      { at: "Mix and money!B40", what: "Break-even" },
      { at: "Heat and height!B12", what: "Plants by heat and height" },
    ],
  },
);
