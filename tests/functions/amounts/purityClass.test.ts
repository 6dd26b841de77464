import fc from "fast-check";
import { purityClass } from "../../../src/functions/amounts/purityClass";
import { errorOf, oneCell } from "../oneCell";

const classOf = (purity: unknown) => oneCell(purityClass, purity);

test("limits of the monographs: Ph. Eur. 99.5 %, USP 99.0 %, oxygen 93 of both 90.0 to 96.0 % with its ends", () => {
  expect([0.995, 0.9949999, 0.99, 0.9899999].map(classOf)).toEqual([
    "oxygen (Ph. Eur.); oxygen (USP)",
    "oxygen (USP)",
    "oxygen (USP)",
    "outside every class",
  ]);
  expect([0.96, 0.9600001, 0.9, 0.8999999].map(classOf)).toEqual([
    "oxygen 93 (Ph. Eur., USP)",
    "outside every class",
    "oxygen 93 (Ph. Eur., USP)",
    "outside every class",
  ]);
  expect([1, 0.21, 0].map(classOf)).toEqual([
    "oxygen (Ph. Eur.); oxygen (USP)",
    "outside every class",
    "outside every class",
  ]);
});

test("a percent reads as its fraction at every limit", () => {
  for (const [percent, purity] of [
    ["90%", 0.9],
    ["96%", 0.96],
    ["99%", 0.99],
    ["99.5%", 0.995],
  ] as const)
    expect(classOf(percent)).toBe(classOf(purity));
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1000 }), (tenths) => classOf(`${tenths / 10}%`) === classOf(tenths / 1000)),
  );
});

test("above 1 is refused", () => {
  expect(errorOf(purityClass, 93)).toMatch(/#VALUE! purity must be between 0 and 1; 93 looks like a percent/);
});
