import { block, label, link, tabColours, table, text, title, type SheetDescription } from "../../writer";
import { findRecord } from "../../../catalogue/catalogue";
import { choiceInput } from "../choiceInput";

const steps = findRecord("CAUTIONS")!.arguments[0]!.choices!;

/** The usual cautions of one step, to read aloud before the work. */
export const cautionsSheet: SheetDescription = {
  name: "Cautions",
  columns: [18, 110],
  tab: tabColours.reference,
  freezeAt: "A6",
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("Before you begin"),
    A2: text("Choose the step and read its cautions to the crew. They replace neither the manual nor training.", {
      across: 2,
    }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A4", [
      [label("Step"), choiceInput("drain", "Step", steps, "The work you are about to begin.", { name: "Step" })],
    ]),
    A6: table("=OXYGEN.CAUTIONS(Step)", { wrap: true, spill: { room: 12 } }),
  },
};
