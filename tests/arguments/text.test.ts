import { choice, flag, text } from "../../src/arguments/text";
import { CellError } from "../../src/cells/cellValues";

const metal = choice(["stainless", "aluminium"], { aluminum: "aluminium" });

it("takes the words of a list, their other spellings and any case", () => {
  expect(metal.read("Stainless", "metal")).toBe("stainless");
  expect(metal.read(" ALUMINUM ", "metal")).toBe("aluminium");
});

it.each(["iron", "constructor", "toString", "__proto__", 5, true])("refuses %p and lists the words", (cell) => {
  const result = metal.read(cell, "metal");
  expect(result).toBeInstanceOf(CellError);
  expect((result as unknown as CellError).message).toMatch(/^metal is .*enter stainless or aluminium/);
});

it.each([
  [true, true],
  ["yes", true],
  [1, true],
  ["FALSE", false],
  [0, false],
])("reads %p as a flag", (cell, expected) => {
  expect(flag.read(cell, "x")).toBe(expected);
});

it.each(["maybe", "constructor", 2])("refuses %p as a flag", (cell) => {
  expect(flag.read(cell, "x")).toBeInstanceOf(CellError);
});

it("takes a number as the digits of a text", () => {
  expect(text.read(12, "x")).toBe("12");
});
