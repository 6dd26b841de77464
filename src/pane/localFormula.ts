import { tokensOf } from "../cells/formulaTokens";

/**
 * A formula as it is typed where the decimal sign is a comma: arguments parted by semicolons, numbers with a comma. Array
 * constants stay as they are, since languages part their columns by different signs; `arrays` says that there are some.
 */
export function localFormula(formula: string, decimalSign: string): { text: string; arrays: boolean } {
  if (decimalSign !== ",") return { text: formula, arrays: false };
  let arrays = false;
  const text = tokensOf(formula)
    .map(({ kind, text: piece }) => {
      if (kind === "comma") return ";";
      if (kind === "number") return piece.replace(".", ",");
      if (kind === "array") arrays = true;
      return piece;
    })
    .join("");
  return { text, arrays };
}
