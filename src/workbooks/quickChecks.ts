import { checks } from "./sheets/quickChecks/checks";
import { notes } from "./sheets/quickChecks/notes";
import { start } from "./sheets/quickChecks/start";
import type { WorkbookDescription } from "./writer";

/** Single questions of the desk and the store, each with its own input cells. */
export const workbook: WorkbookDescription = {
  properties: {
    title: "Quick checks",
    subject: "Single questions on oxygen made, held, drawn and moved",
    description: "Invented figures. One question and one answer at a time with the OXYGEN functions.",
  },
  sheets: [start, checks, notes],
};
