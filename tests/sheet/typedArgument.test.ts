/** Positions counted by hand; "|" marks the caret. */
import { argumentWords } from "../../src/sheet/functionHints";
import { typedArgument } from "../../src/sheet/typedArgument";

const at = (marked: string) => typedArgument(marked.replace("|", ""), marked.indexOf("|"));

test.each([
  ["=OXYGEN.HOURS_TO_FILL(|", "OXYGEN.HOURS_TO_FILL", 0],
  ["=OXYGEN.HOURS_TO_FILL(60,|", "OXYGEN.HOURS_TO_FILL", 1],
  ["=oxygen.hours_to_fill(60,1.5|,0)", "OXYGEN.HOURS_TO_FILL", 1],
  ["=SUM(OXYGEN.FULL_AT(1,2),|", "SUM", 1],
  ["=SUM(1,OXYGEN.FULL_AT(1,(2+3)*|", "OXYGEN.FULL_AT", 1],
  ['=F("a,b(",|', "F", 1],
  ["=F('My, sheet'!A1,|", "F", 1],
  ["=F({1,2;3,4},|", "F", 1],
  ["=F({1,|", "F", 0],
])("%s is argument %#", (marked, name, index) => {
  expect(at(marked)).toEqual({ name, index });
});

test.each(["OXYGEN.FULL_AT(|", "=1+|", "=(1,|", "=F(1)|", '=F("a|'])("%s is in no argument", (marked) => {
  expect(at(marked)).toBeNull();
});

test("an argument's words name its unit, choices and what is taken if it is left out", () => {
  const argument = {
    name: "level",
    description: "Liquid in it [L], 0 if omitted",
    unit: "L",
    optional: true,
    shape: "cell" as const,
    kind: "liquid" as const,
  };
  expect(argumentWords(argument)).toBe("Liquid in it [L], 0 if omitted");
  expect(argumentWords({ ...argument, description: "Liquid, in it [L]", optional: false })).toBe("Liquid, in it [L]");
  expect(argumentWords({ ...argument, description: "Rule", unit: "", shape: "range", choices: ["a", "b"] })).toBe(
    "Rule; one of a, b; a range; may be left out",
  );
});
