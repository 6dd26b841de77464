import { tokensOf } from "./formulaTokens";

/**
 * A formula as Excel shows it after it was typed: names of known functions (`isFunction` is asked in capitals), addresses
 * of cells, TRUE and FALSE in capitals, everything else (numbers, texts, spaces) as it came.
 */
export const typedFormula = (formula: string, isFunction: (name: string) => boolean): string => {
  const tokens = tokensOf(formula);
  return tokens
    .map(({ kind, text }, index) => {
      const next = tokens[index + 1];
      if (kind === "name") {
        const upper = text.toUpperCase();
        const isCall = next !== undefined && next.kind === "open" && isFunction(upper);
        return isCall || upper === "TRUE" || upper === "FALSE" ? upper : text;
      }
      if (kind !== "reference" || text.indexOf("[") >= 0) return text;
      const mark = text.lastIndexOf("!") + 1;
      return text.slice(0, mark) + text.slice(mark).toUpperCase();
    })
    .join("");
};
