import type { Place } from "../book";
import { labelOf } from "../labels";
import { finding, givenArguments, type Context, type Rule } from "../rule";
import type { Finding } from "../workbook";

const name = "input not used";

/** What inputs of an argument are called, besides its own name. */
const alsoCalled: Readonly<Record<string, readonly string[]>> = {
  draw_ratio: ["drawn per litre filled", "litres drawn per litre filled", "gross to net"],
  empty_days: ["days to boil empty", "days until boiled empty", "boils empty in"],
  start_delay: ["hours until liquid", "start up delay", "delay until liquid"],
  source_purity: ["purity of the source", "oxygen purity", "product purity"],
  restart_hours: ["hours to restart", "restart time"],
};

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[([][^()[\]]*[)\]]/g, " ")
    .replace(/,.*$/, " ")
    .replace(/[_\-–:]/g, " ")
    .replace(/\s+/g, " ")
    .trim();

/** Inputs by what they are called: labelled numbers and names that stand for one cell. */
function inputsOf({ book }: Context): Map<string, Place & { readonly value: number }> {
  const inputs = new Map<string, Place & { readonly value: number }>();
  for (const sheet of book.workbook.sheets) {
    sheet.cells.forEach((cell, address) => {
      if (cell.formula !== undefined || typeof cell.value !== "number") return;
      const place = book.placeOf(sheet.name, address);
      if (book.spillOver(place)) return;
      const label = labelOf(book, place);
      if (label) {
        const called = plain(label.text);
        if (!inputs.has(called)) inputs.set(called, { ...place, value: cell.value });
      }
    });
  }
  book.workbook.names.forEach((_, defined) => {
    const meaning = book.meaningOf(defined);
    if (meaning?.kind !== "reference" || meaning.sheet === undefined) return;
    const place = { sheet: meaning.sheet, row: meaning.top, column: meaning.left };
    const value = book.cell(place)?.value;
    if (typeof value === "number") inputs.set(plain(defined), { ...place, value });
  });
  return inputs;
}

export const ignoredInput: Rule = {
  name,
  looksFor: "A default that is taken although the workbook holds an input of that name.",
  find(context) {
    const inputs = inputsOf(context);
    const found: Finding[] = [];
    for (const { formula, record, argument, expression } of givenArguments(context)) {
      const { default: standard } = argument;
      if (expression !== undefined || typeof standard !== "number") continue;
      // A neutral 0 or 1 under a general name ("level", "plants") is left out on purpose as often as not.
      if ((standard === 0 || standard === 1) && alsoCalled[argument.name] === undefined) continue;
      const called = [plain(argument.name), ...(alsoCalled[argument.name] ?? [])];
      const input = called.map((each) => inputs.get(each)).filter((each) => each !== undefined)[0];
      if (!input) continue;
      found.push(
        finding(
          name,
          input.value === standard ? "look" : "danger",
          formula,
          `${record.id} leaves ${argument.name} out and takes ${standard}, although the workbook holds ${input.value} under that name`,
          [input],
        ),
      );
    }
    return found;
  },
};
