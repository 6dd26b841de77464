import { tokensOf } from "./formulaTokens";

export interface CallAtCaret {
  /** Name of the innermost function around the caret, in capitals. */
  readonly name: string;
  /** Which argument, from 0. */
  readonly index: number;
}

/** The function call the caret is in and which of its arguments, while the formula is still being typed. */
export const callAtCaret = (formula: string, caret: number): CallAtCaret | undefined => {
  if (formula.charAt(0) !== "=") return undefined;
  const tokens = tokensOf(formula.slice(1, caret));
  const calls: { name: string; index: number }[] = [];
  tokens.forEach(({ kind }, position) => {
    const before = tokens[position - 1];
    if (kind === "open") calls.push({ name: before && before.kind === "name" ? before.text : "", index: 0 });
    else if (kind === "close") calls.pop();
    else if (kind === "comma" && calls.length > 0) calls[calls.length - 1]!.index++;
  });
  const last = tokens[tokens.length - 1];
  if (last && last.isOpen && last.kind !== "array") return undefined;
  const inner = calls[calls.length - 1];
  return inner && inner.name ? { name: inner.name.toUpperCase(), index: inner.index } : undefined;
};
