import { functions } from "../../src/catalogue/generated/functions";
import { catalogue } from "../../src/catalogue/catalogue";
import type { Example, ExampleError } from "../../src/arguments/about";
import { createEngine } from "../../src/engine/engine";
import { cellJson } from "../../src/engine/cellText";
import { isEngineError, type EngineValue } from "../../src/engine/engineValue";
import { namespace } from "../../src/cells/namespace";
import { toStored, toTyped } from "../../src/cells/storedFormula";

const examples = catalogue.flatMap(({ examples }) => examples);
const engine = createEngine(functions);
let results: EngineValue[][][];
beforeAll(async () => {
  results = await engine.calculate(examples.map(({ formula }) => formula));
});
afterAll(() => engine.dispose());

const expectCell = (value: EngineValue, expected: unknown, tolerance: number | undefined): void => {
  if (typeof expected === "object") {
    const { error, words } = expected as ExampleError;
    expect(value).toMatchObject({ error, message: expect.stringContaining(words) });
    return;
  }
  if (typeof expected !== "number") {
    expect(cellJson(value)).toEqual(expected);
    return;
  }
  const margin = tolerance ?? 1e-9 * Math.max(1, Math.abs(expected));
  const got = cellJson(value);
  expect(typeof got).toBe("number");
  expect(Math.abs((got as number) - expected)).toBeLessThanOrEqual(margin);
};

// Each example names its own source in its function's file.
test.each(examples.map((example, index): [string, Example, number] => [example.formula, example, index]))(
  "the engine computes %s as its page says",
  (_, { result, tolerance }, index) => {
    const table = results[index]!;
    if (typeof result === "object" && !Array.isArray(result)) {
      const value = table[0]![0]!;
      expect(isEngineError(value)).toBe(true);
      expect(value).toMatchObject({ error: result.error, message: expect.stringContaining(result.words) });
      return;
    }
    const expected = Array.isArray(result) ? result : [[result]];
    expect([table.length, table[0]!.length]).toEqual([expected.length, expected[0]!.length]);
    expected.forEach((row, down) => row.forEach((cell, right) => expectCell(table[down]![right]!, cell, tolerance)));
  },
);

test("every function has its name in the engine and its form in a file", () => {
  const ids = functions.map(([id]) => id);
  expect(ids.map((id) => `${namespace}.${id}`).filter((name) => !engine.functionNames.includes(name))).toEqual([]);
  for (const id of ids) {
    const typed = `=${namespace}.${id}(A1)`;
    expect(toStored(typed)).toBe(`_xldudf_${namespace}_${id.replace(/\./g, "_")}(A1)`);
    expect(toTyped(toStored(typed), ids)).toBe(typed);
  }
});
