import type { FunctionRecord } from "../../src/catalogue/record";
import { makeSearch } from "../../src/catalogue/searchFunctions";

const record = (id: string, description: string, argumentNames: string[] = [], group = "making"): FunctionRecord => ({
  id,
  group,
  description,
  arguments: argumentNames.map((name) => ({
    name,
    description: "",
    unit: "",
    optional: false,
    shape: "cell",
    kind: "value",
  })),
  result: { description: "", unit: "", table: false, gives: "value" },
  rule: "",
  range: "",
  source: "",
  examples: [{ formula: `=OXYGEN.${id}()`, result: 1 }],
  seeAlso: [],
  file: "",
});

const search = makeSearch([
  record("DAILY_LOSS", "Liquid that boils away in a day.", ["capacity"]),
  record("HOURS_TO_FILL", "Hours until a vessel is full.", ["capacity", "rate"]),
  record("FULL_AT", "Date and time at which a vessel is full.", ["start_time"]),
  record("FUEL_PER_DAY", "Fuel a generator burns.", ["load"]),
]);
const ids = (query: string): string[] => search(query).map(({ id }) => id);

it("gives everything in catalogue order for nothing typed", () => {
  expect(ids("  ")).toEqual(["DAILY_LOSS", "HOURS_TO_FILL", "FULL_AT", "FUEL_PER_DAY"]);
});

it.each([
  ["a whole id", "HOURS_TO_FILL", "HOURS_TO_FILL"],
  ["an id as typed in a cell", "=oxygen.full_at", "FULL_AT"],
  ["words of an id", "hours fill", "HOURS_TO_FILL"],
  ["the start of a word", "boil", "DAILY_LOSS"],
  ["an argument", "rate", "HOURS_TO_FILL"],
])("finds by %s", (_name, query, wanted) => {
  expect(ids(query)[0]).toBe(wanted);
});

it("finds by a word that means the same", () => {
  expect(ids("tank")).toEqual(expect.arrayContaining(["HOURS_TO_FILL", "FULL_AT"]));
  expect(ids("evaporation")).toEqual(["DAILY_LOSS"]);
  expect(ids("diesel")).toContain("FUEL_PER_DAY");
});

it("is content with any of the words, and puts what holds most of them first", () => {
  expect(ids("vessel hours")[0]).toBe("HOURS_TO_FILL");
  expect(ids("zebra vessel")).toEqual(ids("vessel"));
  expect(ids("zebra")).toEqual([]);
});

it("forgives one slip of the finger", () => {
  expect(ids("vesssel")).toEqual(ids("vessel"));
  expect(ids("generatro")).toEqual(ids("generator"));
});

it("passes over words of a question that name nothing", () => {
  expect(ids("How long does it take to fill a vessel?")).toEqual(ids("fill vessel"));
  expect(ids("how many hours until the vessel is full?")[0]).toBe("HOURS_TO_FILL");
  expect(ids("to")[0]).toBe("HOURS_TO_FILL");
});

it("puts a word of the id before the same word of the description", () => {
  expect(ids("full")[0]).toBe("FULL_AT");
});
