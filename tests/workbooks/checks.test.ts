import { functions } from "../../src/catalogue/generated/functions";
import { createEngine, type Engine } from "../../src/engine/engine";
import { gated, gatedFigure, noRowTwice, rowsTogether, rowsWhole, withChecks } from "../../src/workbooks/checks";
import {
  choiceEntry,
  dateEntry,
  mayStayEmpty,
  numberEntry,
  quantityEntry,
  wholeEntry,
} from "../../src/workbooks/sheets/entries";
import { answer, block, input, output, tableHeader, tableInput, type Scalar } from "../../src/workbooks/writer";

const log = { sheet: "Some entries", first: 11, last: 15, columns: ["A", "B"], what: "Log" };
const march = (day: number): number => 46081 + day;

const book = withChecks(
  {
    properties: { title: "t", subject: "s", description: "d" },
    sheets: [
      {
        name: "Some entries",
        columns: [10, 10],
        cells: {
          B1: input(5, { validation: numberEntry("Stock", "Litres.", 0, 10), name: "Stock" }),
          B2: input(march(1), { validation: dateEntry("Read on", "The day.") }),
          B3: input("yes", { validation: choiceEntry("Powered", "yes or no.", ["yes", "no"]) }),
          B4: input("35 psi", { validation: quantityEntry("Pressure", "bar.", 0, 10) }),
          B5: output("=100/Stock"),
          D1: answer(gated('="lasts "&B5'), { name: "HeadlineLasts" }),
          D2: output(gatedFigure("B5"), { name: "HeadlineDays" }),
          ...block("A10", [
            [tableHeader("Day"), tableHeader("Count")],
            ...[1, 2, 3, 4, 5].map((row) => [
              tableInput(row < 4 ? march(row) : undefined, { validation: mayStayEmpty(dateEntry("Day", "A day.")) }),
              tableInput(row < 4 ? row : undefined, {
                validation: mayStayEmpty(wholeEntry("Count", "How many.", 0, 9)),
              }),
            ]),
          ]),
        },
      },
    ],
  },
  {
    checks: [rowsWhole(log), rowsTogether(log), noRowTwice(log)],
    answers: [{ at: "Some entries!B5", what: "What is left" }],
  },
);

const names = Object.fromEntries(
  book.sheets.flatMap(({ name: sheet, cells }) =>
    Object.entries(cells).flatMap(([at, { name }]) =>
      name ? [[name, `'${sheet}'!${at.replace(/(\D+)(\d+)/, "$$$1$$$2")}`]] : [],
    ),
  ),
);

let engine: Engine;
beforeAll(() => {
  engine = createEngine(functions);
});
afterAll(() => engine.dispose());

const headlines = async (changes: Readonly<Record<string, Scalar | null>>): Promise<unknown[]> => {
  const sheets = book.sheets.map(({ name, cells }, index) => ({
    name,
    cells: Object.fromEntries(
      Object.entries(cells).flatMap(([at, { value, formula }]): [string, { formula: string } | { value: Scalar }][] => {
        if (formula !== undefined) return [[at, { formula }]];
        const now = index === 0 && at in changes ? changes[at]! : (value ?? null);
        return now === null || now === "" ? [] : [[at, { value: now }]];
      }),
    ),
  }));
  const [entries] = await engine.calculateWorkbook(sheets, { names });
  return ["D1", "D2"].map((at) => entries!.cells[at]!.value);
};

test("a book without a fault shows its figures", async () => {
  expect(await headlines({})).toEqual(["lasts 20", 20]);
});

test("text with a unit passes where the functions read it", async () => {
  expect(await headlines({ B4: "2 bar" })).toEqual(["lasts 20", 20]);
});

test.each<[string, Record<string, Scalar | null>, RegExp]>([
  ["a blank", { B1: null }, /entries!B1 is blank \(Stock\)/],
  ["a number outside its ends", { B1: 50 }, /entries!B1 is 50\. Enter a number from 0 to 10/],
  ["a number with a letter behind", { B1: "5x" }, /entries!B1 holds text: 5x/],
  ["an error", { B1: "#N/A" }, /entries!B1 holds an error/],
  ["a truth value", { B1: true }, /entries!B1 is TRUE/],
  ["a day that is no date", { B2: 3 }, /entries!B2 is 3\. Enter a date/],
  ["a word that is no choice", { B3: "maybe" }, /entries!B3 is maybe\. Choose/],
  ["a choice left blank", { B3: null }, /entries!B3 is blank/],
  ["a unit without its blank", { B4: "35psi" }, /entries!B4 holds text: 35psi/],
  ["half a row", { B12: null }, /entries!A12 begins a row that is filled in part/],
  ["a row between others left blank", { A12: null, B12: null }, /entries!A12 is a blank row between/],
  ["a row twice", { A13: march(2), B13: 2 }, /entries!A13 begins a row that stands twice/],
  ["a part of a whole", { B13: 2.5 }, /entries!B13 is 2\.5\. Enter a whole number/],
  ["a heading typed over", { A10: 7 }, /entries!A10 begins headings that were typed over/],
  ["an answer that fails", { B1: 0 }, /entries!B5 has no answer/],
])("%s is named in the headline, and no figure stays", async (_, changes, words) => {
  const [headline, figure] = await headlines(changes);
  expect(headline).toMatch(/^CHECK INPUTS: Some entries!/);
  expect(headline).toMatch(words);
  expect(figure).toBe("CHECK INPUTS");
});
