import { checksSheet } from "./sheets/functionChecks/checks";
import { startSheet } from "./sheets/functionChecks/start";
import { tablesSheet, wordTablesSheet } from "./sheets/functionChecks/tables";
import type { WorkbookDescription } from "./writer";

/** Every example of every function as a live formula beside the value it must give. */
export const workbook: WorkbookDescription = {
  properties: {
    title: "Function checks",
    subject: "Every worked example of the oxygen supply functions, compared with its expected value",
    description: "Needs the add-in Oxygen Supply Functions to recalculate. Says All ok when every check agrees.",
    keywords: "oxygen, functions, self-check",
  },
  sheets: [startSheet, checksSheet, tablesSheet, wordTablesSheet],
};
