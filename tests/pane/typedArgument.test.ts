import { localFormula } from "../../src/pane/localFormula";
import { callFormula, typedArgument } from "../../src/pane/typedArgument";

const plain = { kind: "number" as const };
const here = { decimalSign: ".", inWorkbook: true };

it.each([
  ["", { kind: "omitted" }],
  ["  ", { kind: "omitted" }],
  ["60", { kind: "constant", formula: "60", cells: [[60]] }],
  ["-1.50", { kind: "constant", formula: "-1.50", cells: [[-1.5]] }],
  ["93%", { kind: "constant", formula: "93%", cells: [[0.93]] }],
  ["true", { kind: "constant", formula: "TRUE", cells: [[true]] }],
  ["20 gal", { kind: "constant", formula: '"20 gal"', cells: [["20 gal"]] }],
  ['5" hose', { kind: "constant", formula: '"5"" hose"', cells: [['5" hose']] }],
  ["{1;2;3}", { kind: "constant", formula: "{1;2;3}", cells: [[1], [2], [3]] }],
  ["2026-03-01", { kind: "constant", formula: '"2026-03-01"', cells: [["2026-03-01"]] }],
  ["A1:B3", { kind: "reference", formula: "A1:B3" }],
  ["$A$1", { kind: "reference", formula: "$A$1" }],
  ["A5#", { kind: "reference", formula: "A5#" }],
  ["A:A", { kind: "reference", formula: "A:A" }],
  ["'My plan'!B4", { kind: "reference", formula: "'My plan'!B4" }],
  ["Capacity", { kind: "reference", formula: "Capacity" }],
])("reads %s in a workbook", (typed, wanted) => expect(typedArgument(typed, plain, here)).toEqual(wanted));

it("takes a cell's address for text where no workbook is open, and a choice for text everywhere", () => {
  expect(typedArgument("A1", plain, { ...here, inWorkbook: false })).toMatchObject({ formula: '"A1"' });
  expect(typedArgument("concrete", { kind: "text", choices: ["concrete"] }, here)).toMatchObject({
    formula: '"concrete"',
  });
});

it("reads a decimal comma where that is the host's sign, and only there", () => {
  expect(typedArgument("1,5", plain, { ...here, decimalSign: "," })).toEqual({
    kind: "constant",
    formula: "1.5",
    cells: [[1.5]],
  });
  expect(typedArgument("1,5", plain, here)).toMatchObject({ formula: '"1,5"' });
});

it("writes a call without what is left out at its end, and a default for what is left out before", () => {
  const args = ["60", "1.5", "", "2"].map((typed) => typedArgument(typed, plain, here));
  const argument = { description: "", unit: "", optional: true, shape: "cell", kind: "number" } as const;
  const known = [{}, {}, { default: 0 }, { default: 3 }].map((own, index) => ({
    ...argument,
    name: `a${index}`,
    ...own,
  }));
  const record = { id: "HOURS_TO_FILL", arguments: known };
  expect(callFormula(record, args)).toBe("=OXYGEN.HOURS_TO_FILL(60,1.5,0,2)");
  expect(callFormula(record, [...args.slice(0, 3), { kind: "omitted" }])).toBe("=OXYGEN.HOURS_TO_FILL(60,1.5)");
});

it("copies a formula with the host's separators, texts left alone", () => {
  expect(localFormula('=OXYGEN.HOURS_TO_FILL(60,"1.5 L/h",,0.5)', ",").text).toBe(
    '=OXYGEN.HOURS_TO_FILL(60;"1.5 L/h";;0,5)',
  );
  expect(localFormula("=OXYGEN.HOURS_TO_FILL(60,1.5)", ".").text).toBe("=OXYGEN.HOURS_TO_FILL(60,1.5)");
  expect(localFormula("=SUM({1,2},1.5)", ",")).toEqual({ text: "=SUM({1,2};1,5)", arrays: true });
});
