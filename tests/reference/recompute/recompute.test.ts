/** The rows under tests/reference that say "computed" are worked out anew and agree to the digits that they are given with. */
import fs from "node:fs";
import path from "node:path";
import type { ReferenceRow } from "../rows";
import { recomputed } from "./answers";

const folder = path.join(__dirname, "..");
const rows = fs
  .readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .flatMap((file) => {
    const read = JSON.parse(fs.readFileSync(path.join(folder, file), "utf8")) as ReferenceRow[];
    if (!Array.isArray(read)) return [];
    return read.filter(({ provenance }) => provenance === "computed").map((row) => ({ file: file.slice(0, -5), row }));
  });

/** The nitrogen rows need the equation of Span et al. 2000; tests/reference/vesselsAndHoses.py makes them. */
const elsewhere = ["nitrogen-heat", "nitrogen-distance"];

/** Half a unit in the last digit that a row is given with. */
const lastDigit = (expected: number): number => {
  const [mantissa, exponent = "0"] = String(expected).split("e");
  return 0.5 * 10 ** (Number(exponent) - (mantissa!.split(".")[1]?.length ?? 0));
};

it("finds the rows", () => expect(rows.length).toBeGreaterThan(140));

it.each(rows.map((each) => [`${each.file} ${each.row.id}`, each] as const))("%s", (_name, { file, row }) => {
  const found = recomputed(file, row.id, row.inputs);
  if (elsewhere.includes(row.id)) {
    expect(found).toBeUndefined();
    return;
  }
  expect(Math.abs(found! - row.expected)).toBeLessThanOrEqual(
    Math.max(lastDigit(row.expected), 2.5e-6 * Math.abs(row.expected)),
  );
});
