import {
  answer,
  block,
  caution,
  formats,
  heading,
  input,
  label,
  note,
  output,
  subtitle,
  table,
  tableCell,
  tableHeader,
  tableInput,
  title,
  unit,
  type CachedCell,
  type Cells,
  type WorkbookDescription,
} from "../../src/workbooks/writer";
import { calculatedFrom } from "../workbooks/calculatedFrom";
import { capacityInput } from "../workbooks/openXmlDemo";

const fill: Cells = {
  A1: title("Filling one vessel"),
  A2: subtitle("An invented store in the island district of Velmar.", { across: 4 }),
  ...block("A4", [
    [heading("What you have"), heading(), heading(), heading()],
    [label("Capacity"), capacityInput, unit("L"), note("What the plate calls full.")],
    [label("Make rate"), input(1.5, { name: "MakeRate" }), unit("L/h")],
    [label("Level now"), input(0), unit("L")],
    [
      label("Metal of the line"),
      input("copper", { validation: { rule: { kind: "list", values: ["copper", "stainless"] } } }),
    ],
  ]),
  ...block("A10", [
    [heading("What comes out"), heading(), heading(), heading()],
    [label("Hours to full"), answer("=OXYGEN.HOURS_TO_FILL(Capacity,MakeRate,B7)")],
    [label("In days"), output("=B11/24", { format: formats.days })],
    [label("Overfull"), output("=OXYGEN.HOURS_TO_FILL(60,1.5,61)")],
    [label("Passed on"), output("=B13+1")],
    [label("No partner"), output("=NA()")],
    [label("Is slow"), output("=B11>24")],
  ]),
  A18: caution("Caution: oxygen feeds fire. Keep the room ventilated.", { across: 4 }),
};

const list: Cells = {
  A1: title("Several vessels"),
  ...block("A3", [
    [tableHeader("capacity"), tableHeader("rate"), tableHeader("hours")],
    ...[60, 120, 240].map((capacity) => [tableInput(capacity), tableInput(2)]),
  ]),
  C4: table("=OXYGEN.HOURS_TO_FILL(A4:A6,B4:B6)", { spill: { header: false } }),
  D4: tableCell("=SUM(C4:C6)"),
};

/** A small workbook with real functions, an entry rule, a spill, a conditional format, and errors with words. */
export const small: WorkbookDescription = {
  properties: { title: "Filling in Velmar", subject: "Trial", description: "A small workbook for tests." },
  sheets: [
    { name: "Fill", columns: [26, 16, 8, 44], cells: fill, freezeAt: "A4" },
    {
      name: "List",
      columns: [13, 12, 12, 12],
      cells: list,
      conditional: [{ range: "C4:C6", when: "=C4>100", mark: "danger" }],
    },
  ],
};

const hours: CachedCell[][] = [[3 + 60 / 2], [3 + 120 / 2], [3 + 240 / 2]];

/** Start delay (3 h) plus what is missing over the rate, by hand. */
export const smallValues = calculatedFrom({
  "Fill!B11": 43,
  "Fill!B12": 43 / 24,
  "Fill!B13": { error: "#VALUE!" },
  "Fill!B14": { error: "#VALUE!" },
  "Fill!B15": { error: "#N/A" },
  "Fill!B16": true,
  "List!C4": hours,
  "List!D4": 33 + 63 + 123,
});
