import type { Example, FunctionRecord } from "./record";
import { holdsDates, shownValue } from "./shownValue";

/** What an example gives, as help shows it. */
export type ExampleResult =
  | { readonly kind: "value"; readonly text: string }
  | { readonly kind: "error"; readonly code: string; readonly words: string }
  | { readonly kind: "table"; readonly head?: readonly string[]; readonly rows: readonly (readonly string[])[] };

/** A table function's first row is its header; a spilled range has none. */
export function exampleResult({ result }: Example, { unit, table }: FunctionRecord["result"]): ExampleResult {
  if (Array.isArray(result)) {
    const head = table ? (result[0] ?? []).map((cell) => shownValue(cell, "")) : undefined;
    const rows = (table ? result.slice(1) : result).map((row) =>
      row.map((cell, column) => shownValue(cell, head ? (head[column] ?? "") : unit)),
    );
    return { kind: "table", ...(head && { head }), rows };
  }
  if (typeof result === "object") return { kind: "error", code: result.error, words: result.words };
  const measure = unit === "" || holdsDates(unit) ? "" : ` ${unit}`;
  return { kind: "value", text: shownValue(result, unit) + measure };
}
