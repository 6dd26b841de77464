import type { ArgumentRecord, FunctionRecord } from "../catalogue/record";
import { parseConstantFormula } from "../catalogue/constantFormula";
import { namespace } from "../cells/namespace";
import { readNumber } from "../cells/numberText";

/** What somebody typed for an argument, as a formula writes it and, where it is no reference, as the function gets it. */
export type TypedArgument =
  | { readonly kind: "omitted" }
  | { readonly kind: "constant"; readonly formula: string; readonly cells: unknown[][] }
  | { readonly kind: "reference"; readonly formula: string };

const sheet = "(?:'(?:[^']|'')+'!|[\\p{L}_][\\p{L}\\p{N}_.]*!)?";
const cell = "\\$?[A-Za-z]{1,3}\\$?[1-9]\\d{0,6}";
const reference = new RegExp(`^${sheet}(?:${cell}(?::${cell})?#?|\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3})$`, "u");
const name = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u;

const constant = (formula: string): TypedArgument | undefined => {
  try {
    const [cells] = parseConstantFormula(`=${namespace}.X(${formula})`).args;
    return Array.isArray(cells) ? { kind: "constant", formula, cells } : undefined;
  } catch {
    return undefined;
  }
};

const text = (words: string): TypedArgument => ({
  kind: "constant",
  formula: `"${words.replace(/"/g, '""')}"`,
  cells: [[words]],
});

/**
 * Reads a field of the form. A number may have the decimal sign of the host; a reference or a name of the workbook is one
 * only where a workbook is open; what is neither is a text, such as "20 gal".
 */
export function typedArgument(
  typed: string,
  { choices, kind }: Pick<ArgumentRecord, "choices" | "kind">,
  { decimalSign, inWorkbook }: { decimalSign: string; inWorkbook: boolean },
): TypedArgument {
  const words = typed.trim();
  if (words === "") return { kind: "omitted" };
  const signed = /^([+-]?)(.*?)(%?)$/.exec(
    decimalSign === "," ? words.replace(/^([+-]?\d*),(\d+%?)$/, "$1.$2") : words,
  )!;
  const value = readNumber(signed[2]!);
  if (value !== undefined) {
    const number = (signed[1] === "-" ? -value : value) / (signed[3] ? 100 : 1);
    return { kind: "constant", formula: `${signed[1] === "-" ? "-" : ""}${signed[2]}${signed[3]}`, cells: [[number]] };
  }
  if (/^(?:true|false)$/i.test(words)) return constant(words.toUpperCase())!;
  if (/^[{"]/.test(words)) return constant(words) ?? text(words);
  if (inWorkbook && reference.test(words)) return { kind: "reference", formula: words };
  if (inWorkbook && name.test(words) && !choices?.includes(words.toLowerCase()) && kind !== "text")
    return { kind: "reference", formula: words };
  return text(words);
}

const defaultText = (standing: ArgumentRecord["default"]): string => {
  if (typeof standing === "string") return `"${standing}"`;
  return standing === undefined ? "" : String(standing).toUpperCase();
};

/**
 * The call as it will stand in a cell, in English. Arguments left out at the end are not written; one left out before
 * another holds its default, because some programs hand a gap between two commas over as a blank.
 */
export function callFormula(
  { id, arguments: known }: Pick<FunctionRecord, "id" | "arguments">,
  args: readonly TypedArgument[],
): string {
  const kept = [...args];
  while (kept.length > 0 && kept[kept.length - 1]!.kind === "omitted") kept.pop();
  const written = kept.map((argument, index) =>
    argument.kind === "omitted" ? defaultText(known[index]?.default) : argument.formula,
  );
  return `=${namespace}.${id}(${written.join(",")})`;
}
