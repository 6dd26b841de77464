import { tokensOf, type TokenKind } from "../cells/formulaTokens";

/** Why a formula can't even be read, "" if it can. */
export const syntaxWords = (formula: string): string => {
  const tokens = tokensOf(formula.replace(/^=/, ""));
  if (tokens.every(({ kind }) => kind === "space")) return "the formula is empty";
  if (tokens.some(({ kind, isOpen }) => kind === "quoted" && isOpen)) return "a text lacks its closing quotation mark";
  const count = (kind: TokenKind): number => tokens.filter((token) => token.kind === kind).length;
  const open = count("open") - count("close");
  if (open > 0) return `${open} closing parenthes${open === 1 ? "is is" : "es are"} missing`;
  if (open < 0) return "there is a closing parenthesis too many";
  // "0x10", "5kg", "1.2.3": digits and letters that run together are neither a number nor a name.
  const joined = tokens.findIndex(
    ({ kind }, index) => kind === "number" && /^(?:name|number|reference)$/.test(tokens[index + 1]?.kind ?? ""),
  );
  if (joined >= 0) return `${tokens[joined]!.text}${tokens[joined + 1]!.text} is neither a number nor a name`;
  return "";
};
