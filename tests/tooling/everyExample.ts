/** Prints the examples that do not give what they state, a line each, and then how many were computed. */
import { evaluateCall, parseConstantFormula } from "../../src/catalogue/constantFormula";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { exampleDifference } from "../exampleDifference";

const found = readCatalogue();
const calls = new Map(found.map(({ record, call }) => [record.id, call]));
const examples = found.flatMap(({ record }) => record.examples);
for (const example of examples) {
  const got = evaluateCall(parseConstantFormula(example.formula), (id) => calls.get(id));
  const difference = exampleDifference(example, got as never[][]);
  if (difference !== undefined) console.log(difference);
}
console.log(`computed: ${examples.length}`);
