import { optionsSheet } from "./sheets/options/comparison";
import { inputsSheet } from "./sheets/options/inputs";
import { mixSheet } from "./sheets/options/mixAndMoney";
import { outageSheet } from "./sheets/options/outage";
import { sensitivitySheet } from "./sheets/options/sensitivity";
import { startSheet } from "./sheets/options/start";
import { unitsSheet } from "./sheets/options/units";
import { workingsSheet } from "./sheets/options/workings";
import type { WorkbookDescription } from "./writer";

/** An analyst's comparison of four ways to supply one hospital. */
export const workbook: WorkbookDescription = {
  properties: {
    title: "Supply options",
    subject: "Four ways to supply a field hospital with oxygen, side by side",
    description: "Invented scenario. Needs the add-in Oxygen Supply Functions to recalculate.",
    keywords: "oxygen, options, best mix, break-even",
  },
  sheets: [startSheet, inputsSheet, optionsSheet, outageSheet, unitsSheet, mixSheet, sensitivitySheet, workingsSheet],
};
