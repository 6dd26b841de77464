import { functions } from "../../src/catalogue/generated/functions";
import { createEngine, type Engine } from "../../src/engine/engine";
import { allBooks, checkedBooks, openBook, shown, type Book } from "./openBook";

/** Entries that may be blank without a word, and why. */
const mayBeBlank: Readonly<Record<string, readonly RegExp[]>> = {
  // Who made a copy and what a site is called decide no figure.
  all: [/^Start!/],
};

/** Books whose headlines do not hang on a check total yet. */
const withoutTotal = ["function-checks", "options", "quick-checks", "service-and-moving", "this-excel"];

let engine: Engine;
beforeAll(() => {
  engine = createEngine(functions);
});
afterAll(() => engine.dispose());

test("every book has a check total, or is named here", () => {
  expect([...checkedBooks, ...withoutTotal.filter((name) => !checkedBooks.includes(name))].sort()).toEqual(
    [...allBooks].sort(),
  );
});

/** What is said after one entry is cleared: by the checks alone where they see it, else by every headline. */
const quiet = async (book: Book, at: string): Promise<string[]> => {
  if ((await book.faults({ [at]: null })).length > 0) return [];
  const headlines = await book.headlines({ [at]: null });
  return [...headlines].flatMap(([name, value]) => {
    const isSaid = shown(value).startsWith("CHECK INPUTS") || shown(value) !== shown(book.saved.get(name));
    return isSaid ? [] : [`${at} cleared: ${name} still says ${shown(value)}`];
  });
};

describe.each(checkedBooks)("%s", (name) => {
  test("says what to check when any entry is cleared", async () => {
    const book = openBook(name, engine);
    const passes = [...mayBeBlank.all!, ...(mayBeBlank[name] ?? [])];
    const entries = book.entries.filter(({ at }) => !passes.some((pass) => pass.test(at)));
    expect(entries.length).toBeGreaterThan(0);
    const calm: string[] = [];
    for (const { at } of entries) calm.push(...(await quiet(book, at)));
    expect(calm).toEqual([]);
  }, 120_000);

  test("shows in the headlines what the checks find", async () => {
    const book = openBook(name, engine);
    // Evenly over the entries: the whole way from an entry through the checks to every headline.
    const step = Math.max(1, Math.floor(book.entries.length / 6));
    for (const { at } of book.entries.filter((_, index) => index % step === 0)) {
      if ((await book.faults({ [at]: null })).length === 0) continue;
      for (const [, value] of await book.headlines({ [at]: null })) expect(shown(value)).toMatch(/^CHECK INPUTS/);
    }
  }, 120_000);
});
