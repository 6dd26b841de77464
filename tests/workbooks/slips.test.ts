import { functions } from "../../src/catalogue/generated/functions";
import { createEngine, type Engine } from "../../src/engine/engine";
import { openBook, shown, type Book } from "./openBook";
import { slips, type Slip } from "./slips";

let engine: Engine;
beforeAll(() => {
  engine = createEngine(functions);
});
afterAll(() => engine.dispose());

test("there are at least sixty, and most must stop every headline", () => {
  const all = Object.values(slips).flat();
  expect(all.length).toBeGreaterThanOrEqual(60);
  expect(all.filter(([, , changed]) => changed === undefined).length).toBeGreaterThanOrEqual(60);
});

const wrong = async (book: Book, [words, changes, changed]: Slip): Promise<string[]> => {
  if (changed === undefined && (await book.faults(changes)).length > 0) return [];
  const headlines = await book.headlines(changes);
  const expected: [string, RegExp][] = changed
    ? Object.entries(changed)
    : [...headlines.keys()].map((name) => [name, /^CHECK INPUTS/]);
  return expected.flatMap(([name, wanted]) => {
    const said = shown(headlines.get(name));
    return wanted.test(said) ? [] : [`${words}: ${name} says ${said}`];
  });
};

test.each(Object.keys(slips))(
  "no slip in %s leaves a headline reassuring",
  async (name) => {
    const book = openBook(name, engine);
    const found: string[] = [];
    for (const slip of slips[name]!) found.push(...(await wrong(book, slip)));
    expect(found).toEqual([]);
  },
  120_000,
);
