import { page } from "./sheets/thisExcel/page";
import type { WorkbookDescription } from "./writer";

/** What a new computer is asked first: does its Excel do what the other books count on? */
export const workbook: WorkbookDescription = {
  properties: {
    title: "This Excel",
    subject: "Whether an Excel and the oxygen supply functions work together",
    description: "To be opened first on a new computer. Ends in one line to read out or send.",
    keywords: "oxygen, functions, self-check, new computer",
  },
  sheets: [page],
};
