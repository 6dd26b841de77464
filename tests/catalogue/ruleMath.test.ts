/** The typeset rule of a function, reckoned with the values of its examples, is the function: the page shows no other formula. */
import { argumentCells, parseConstantFormula } from "../../src/catalogue/constantFormula";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { mathML, ruleParts, type Term } from "../../src/catalogue/ruleMath";

const found = readCatalogue();
const callById = (id: string) => found.find(({ record }) => record.id === id)?.call;

class Unknown extends Error {}

function reckoned(term: Term, values: ReadonlyMap<string, number>): number {
  const of = (part: Term) => reckoned(part, values);
  switch (term.kind) {
    case "number":
      return Number(/^\d+(?: \d{3})*(?:\.\d+)?/.exec(term.text)![0].replace(/ /g, ""));
    case "name": {
      const value = values.get(term.text);
      if (value === undefined) throw new Unknown(term.text);
      return value;
    }
    case "group":
      return term.fence === "|" ? Math.abs(of(term.of)) : of(term.of);
    case "minus":
      return -of(term.of);
    case "root":
      return Math.sqrt(of(term.of));
    case "power":
      return of(term.base) ** of(term.exponent);
    case "call": {
      const known: Record<string, (...args: number[]) => number> = {
        min: Math.min,
        max: Math.max,
        ln: Math.log,
        exp: Math.exp,
        "round up": Math.ceil,
        INT: Math.floor,
        arctangent: (slope) => (Math.atan(slope) * 180) / Math.PI,
      };
      if (!known[term.name]) throw new Unknown(term.name);
      return known[term.name]!(...term.args.map(of));
    }
    case "pair": {
      const [left, right] = [of(term.left), of(term.right)];
      const signs: Record<string, number> = {
        "+": left + right,
        "−": left - right,
        "×": left * right,
        "/": left / right,
      };
      if (!(term.sign in signs)) throw new Unknown(term.sign);
      return signs[term.sign]!;
    }
    default:
      throw new Unknown(term.kind);
  }
}

const checked = found.flatMap(({ record, call }) => {
  const [part, after, ...more] = ruleParts(record.rule);
  const rounding = after && "text" in after ? after.text : "";
  // What else a rule says in words is beyond this check.
  if (!/^(?:|, rounded up[\w ]*|, cut down to whole \w+)$/.test(rounding)) return [];
  if (!part || !("formula" in part) || more.length > 0 || record.result.table) return [];
  return record.examples.flatMap((example) => {
    const cells = argumentCells(parseConstantFormula(example.formula), callById);
    const values = new Map<string, number>();
    record.arguments.forEach(({ name, default: standing }, index) => {
      const given =
        cells[index] === undefined ? standing : cells[index]!.length === 1 ? cells[index]![0]![0] : undefined;
      if (typeof given === "number") values.set(name.replace(/_/g, " "), given);
    });
    try {
      const exact = reckoned(part.formula, values);
      const wanted = /^, rounded up/.test(rounding)
        ? Math.ceil(exact)
        : /^, cut down/.test(rounding)
          ? Math.floor(exact)
          : exact;
      return [{ formula: example.formula, wanted, got: call(...cells)[0]![0] as unknown }];
    } catch (error) {
      if (error instanceof Unknown) return [];
      throw error;
    }
  });
});

it("reckons many functions by their typeset rules", () => {
  expect(new Set(checked.map(({ formula }) => /OXYGEN\.(\w+)/.exec(formula)![1])).size).toBeGreaterThanOrEqual(34);
});

it.each(checked.map((each) => [each.formula, each] as const))(
  "%s is what its rule says",
  (_formula, { wanted, got }) => {
    const value =
      typeof got === "object" && got !== null && "basicValue" in got ? (got as { basicValue: number }).basicValue : got;
    // Rules quote rounded constants, as ISO 2533's 5.25588.
    if (typeof value === "number" && Number.isFinite(wanted))
      expect(Math.abs(value - wanted)).toBeLessThan(1e-6 * Math.max(1, Math.abs(wanted)));
  },
);

it("loses no word of a rule", () => {
  const text = (term: Term): string => mathML(term).replace(/<[^>]*>/g, "");
  const bare = (words: string) =>
    words
      .replace(/[\s\u00a0()/^√Σ∑²³ⁿ23n]/g, "")
      .replace(/&lt;/g, "<")
      .replace(/&gt;/g, ">")
      .replace(/&amp;/g, "&");
  for (const { record } of found)
    expect(
      bare(
        ruleParts(record.rule)
          .map((part) => ("text" in part ? part.text : text(part.formula)))
          .join(""),
      ),
    ).toBe(bare(record.rule));
});

it.each([
  [
    "start delay + (capacity − level) / rate",
    '<math displaystyle="true"><mrow><mi>start\u00a0delay</mi><mo>+</mo><mfrac><mrow><mi>capacity</mi><mo>−</mo><mi>level</mi></mrow><mi>rate</mi></mfrac></mrow></math>',
  ],
  [
    "√(2 × a / b)",
    '<math displaystyle="true"><msqrt><mrow><mn>2</mn><mo>×</mo><mi>a</mi></mrow></msqrt></math>'.replace(
      "<mrow><mn>2</mn><mo>×</mo><mi>a</mi></mrow>",
      "<mfrac><mrow><mn>2</mn><mo>×</mo><mi>a</mi></mrow><mi>b</mi></mfrac>",
    ),
  ],
])("typesets %s", (rule, wanted) => {
  const [part] = ruleParts(rule);
  expect(part && "formula" in part && mathML(part.formula)).toBe(wanted);
});

it.each(["saturation temperature at pressure + 1.01325 bar", "the earlier of a and b", "Plain look-up"])(
  "leaves %s as words",
  (rule) => {
    expect(ruleParts(rule)).toEqual([{ text: rule }]);
  },
);
