import { argumentWords } from "../../src/sheet/functionHints";

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
