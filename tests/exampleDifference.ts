import type { Example, ExampleError } from "../src/arguments/about";

/** A cell as a function or the functions script gives it: an error carries its code and its words. */
type GivenCell = number | string | boolean | { code: string; message: string } | { basicValue: unknown } | null;

const isError = (got: unknown, { error, words }: ExampleError): boolean =>
  typeof got === "object" &&
  got !== null &&
  "code" in got &&
  got.code === error &&
  "message" in got &&
  String(got.message).includes(words);

const differs = (
  got: unknown,
  wanted: number | string | boolean | ExampleError,
  tolerance: number | undefined,
): boolean => {
  if (typeof wanted === "object") return !isError(got, wanted);
  const value = typeof got === "object" && got !== null && "basicValue" in got ? got.basicValue : got;
  if (typeof wanted !== "number") return value !== wanted;
  return !(typeof value === "number" && Math.abs(value - wanted) <= (tolerance ?? Math.abs(wanted) * 1e-9 + 1e-12));
};

/** What is wrong with the result of an example; undefined when it is as stated. */
export function exampleDifference(
  { formula, result, tolerance }: Example,
  got: readonly (readonly GivenCell[])[],
): string | undefined {
  const told = (what: string): string => `${formula}: ${what}`;
  const wanted = Array.isArray(result) ? result : [[result]];
  if (got.length !== wanted.length || got.some((row, index) => row.length !== wanted[index]!.length))
    return told(`${got.length} rows in place of ${wanted.length}, or rows of another length`);
  for (const [row, line] of wanted.entries())
    for (const [column, cell] of line.entries())
      if (differs(got[row]![column], cell, tolerance))
        return told(`${JSON.stringify(got[row]![column])} in place of ${JSON.stringify(cell)}`);
  return undefined;
}
