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

type Input = Place & { readonly value: number };

/**
 * Inputs by what they are called: labelled numbers and names that stand for one cell. A word that labels several numbers
 * is no name of one input.
 */
function inputsOf({ book }: Context): Map<string, Input> {
  const inputs = new Map<string, Input | "several">();
  const add = (called: string, input: Input): void => {
    const known = inputs.get(called);
    inputs.set(called, known === undefined || (known !== "several" && known.value === input.value) ? input : "several");
  };
  for (const sheet of book.workbook.sheets) {
    sheet.cells.forEach((cell, address) => {
      if (cell.formula !== undefined || typeof cell.value !== "number") return;
      const place = book.placeOf(sheet.name, address);
      if (book.spillOver(place)) return;
      const label = labelOf(book, place);
      if (label) add(plain(label.text), { ...place, value: cell.value });
    });
  }
  book.workbook.names.forEach((_, defined) => {
    const meaning = book.meaningOf(defined);
    if (meaning?.kind !== "reference" || meaning.sheet === undefined) return;
    const place = { sheet: meaning.sheet, row: meaning.top, column: meaning.left };
    const value = book.cell(place)?.value;
    if (typeof value === "number") add(plain(defined), { ...place, value });
  });
  const found = new Map<string, Input>();
  inputs.forEach((input, called) => {
    if (input !== "several") found.set(called, input);
  });
  return found;
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
      // A general word ("level", "pressure", "plants") names many numbers besides this argument.
      if (argument.name.indexOf("_") < 0) continue;
      const called = [plain(argument.name), ...(alsoCalled[argument.name] ?? [])];
      const input = called.map((each) => inputs.get(each)).filter((each) => each !== undefined)[0];
      if (!input || input.value === standard) continue;
      found.push(
        finding(
          name,
          "danger",
          formula,
          `${record.id} leaves ${argument.name} out and takes ${standard}, although the workbook holds ${input.value} under that name`,
          [input],
        ),
      );
    }
    return found;
  },
};
