import { catalogue } from "../../../src/catalogue/catalogue";
import { sourceOf } from "../../../src/functions/records/sourceOf";
import { editDistance, nearestName } from "../../../src/models/nearestName";
import { errorOf, oneCell } from "../oneCell";

test.each(catalogue.map((record) => [record.id, record.source] as const))(
  "%s answers the source its file names",
  (id, source) => {
    expect(oneCell(sourceOf, id)).toBe(source);
  },
);

test("namespace, case, a whole formula and spaces don't matter", () => {
  const source = oneCell(sourceOf, "BOOK_BALANCE");
  for (const name of ["oxygen.book_balance", " Book_Balance ", "=OXYGEN.BOOK_BALANCE(1,2,3,4,5,6)", "book balance"])
    expect(oneCell(sourceOf, name)).toBe(source);
});

test("an unknown name is #N/A with the nearest one", () => {
  expect(errorOf(sourceOf, "STOCK_PLN")).toBe('#N/A there is no function "STOCK_PLN"; did you mean STOCK_PLAN?');
  expect(errorOf(sourceOf, "oxygen.sevice_list")).toMatch(/did you mean SERVICE_LIST\?/);
  expect(errorOf(sourceOf, "CANNULA")).toMatch(/did you mean CANNULA_FIO2\?/);
  expect(errorOf(sourceOf, "weather")).toBe('#N/A there is no function "weather"');
});

/** The quickest of a few calls [ms]: what other programs take of the machine is left out. */
const quickest = (name: string): number =>
  Math.min(
    ...Array.from({ length: 5 }, () => {
      const started = performance.now();
      oneCell(sourceOf, name);
      return performance.now() - started;
    }),
  );

test("a cell full of text is answered as quickly as a line of it, with a short quotation", () => {
  const names = catalogue.map(({ id }) => id).join(" ");
  for (const long of [`STOCK_PLAN ${"too long ".repeat(3600)}`, `${names} `.repeat(10), "X".repeat(32000)]) {
    expect(long.length).toBeGreaterThan(20000);
    expect(quickest(long)).toBeLessThan(40 * quickest("STOCK_PLN"));
    expect(errorOf(sourceOf, long).length).toBeLessThan(140);
  }
  expect(errorOf(sourceOf, `STOCK_PLAN ${"too long ".repeat(3600)}`)).toMatch(
    /^#N\/A there is no function "STOCK_PLAN too long .{10,40}…"; did you mean STOCK_PLAN\?$/,
  );
});

// Levenshtein 1966; the words are the usual textbook example. A swap of neighbours counts one (Damerau 1964).
test("edit distance", () => {
  expect(editDistance("KITTEN", "SITTING")).toBe(3);
  expect(editDistance("", "ABC")).toBe(3);
  expect(editDistance("STOKC", "STOCK")).toBe(1);
  expect(nearestName("X", [])).toBeUndefined();
});
